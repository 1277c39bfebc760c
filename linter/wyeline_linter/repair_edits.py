"""Repairs written down: feeder and equipment lines rewritten, new lines set in the fixed columns, new tags found.

Everything works on whole lines, so that a repair reads in a diff as the lines a drafter would have changed.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from wyeline_grammar.blocks import Block
from wyeline_grammar.formatter import format_lines
from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_grammar.model import End, Fact, Span
from wyeline_grammar.tokens import spelled
from wyeline_linter.edits_in_columns import smallest_edit
from wyeline_linter.findings import Edit, code_end, parting
from wyeline_linter.systems import LEGS

DEVICE_FACTS = (
    "rating",
    "frame",
    "pickup",
    "instantaneous",
    "delay",
    "gfpe-pickup",
    "curve",
    "fuse",
    "rcd",
    "rcd-type",
    "voltage",
    "at",
)
"""Facts of a feeder that speak of its device; they go when the device goes."""

_LEADING_COUNT = re.compile(r"(?:\d+[ \t]+sets?[ \t]+)?(?P<count>\d+)(?=[#x×G])")
_NUMBERED = re.compile(r"(?P<prefix>.*?)(?P<number>\d+)")
_PREFIXES = {"transformer": "TX-", "inverter": "FC-", "charger": "RECT-", "transfer": "ATS-"}


def legs_text(legs: Iterable[str]) -> str:
    """``[AB]``; direct current has no leg names, so nothing is written for it."""
    names = tuple(legs)
    return f"[{''.join(names)}]" if names and all(name in LEGS for name in names) else ""


def new_tag(model: Model, kind: str, target: str) -> str:
    """A tag that nothing bears, in the manner of the model: its own prefix and next number, or prefix and target.

    Names that differ only in case count as the same.
    """

    def free(name: str) -> bool:
        return not model.folded.get(name.casefold())

    names = [e.name for e in model.equipment.values() if e.kind == kind]
    matches = [match for match in map(_NUMBERED.fullmatch, names) if match is not None and match["prefix"]]
    if names and len(matches) * 2 < len(names):
        stems = [name.rpartition("-")[0] for name in names if "-" in name]
        if stems:
            stem = max(sorted(set(stems)), key=stems.count)
            bare = re.sub(r"[^A-Za-z0-9]+", "", target) if spelled(target) != target else target
            if free(f"{stem}-{bare}"):
                return f"{stem}-{bare}"
    prefixes = [match["prefix"] for match in matches]
    prefix = max(sorted(set(prefixes)), key=prefixes.count) if prefixes else _PREFIXES.get(kind, "X-")
    numbers = [int(m["number"]) for m in matches if m["prefix"] == prefix]
    number = max(numbers, default=0) + 1
    while not free(f"{prefix}{number}"):
        number += 1
    return f"{prefix}{number}"


class Draft:
    """Changes to lines of blocks, collected. Words are changed where they stand, so that a line which somebody laid out
    keeps its blanks; new lines are set in the fixed columns."""

    def __init__(self) -> None:
        self._parts: dict[Block, dict[int, list[tuple[int, int, str]]]] = {}
        self._below: dict[Block, dict[int, list[str]]] = {}
        self._above: dict[Block, list[str]] = {}

    def replace(self, block: Block, span: Span, text: str) -> None:
        """Put ``text`` in the place of a span; an empty one takes the words away."""
        self._parts.setdefault(block, {}).setdefault(span.line, []).append((span.start, span.end, text))

    def append(self, block: Block, line: int, text: str, comma: str = "") -> None:
        """Add a phrase at the end of a line, before its comment."""
        column = code_end(block.lines[line])
        blanks = parting(block.lines[line])
        self._parts.setdefault(block, {}).setdefault(line, []).append((column, column, f"{comma}{blanks}{text}"))

    def below(self, block: Block, line: int, lines: Iterable[str]) -> None:
        """New lines below a line: details of its statement, or statements of their own."""
        self._below.setdefault(block, {}).setdefault(line, []).extend(lines)

    def above(self, block: Block, lines: Iterable[str]) -> None:
        """New lines above a block and the comments that document it."""
        self._above.setdefault(block, []).extend(lines)

    def edits(self) -> tuple[Edit, ...]:
        found: list[Edit] = []
        for block in dict.fromkeys((*self._above, *self._parts, *self._below)):
            above = "".join(f"{text}\n" for text in format_lines(self._above.get(block, [])))
            if above and 0 not in self._parts.get(block, {}):
                found.append(Edit(block, 0, 0, 0, 0, above))
                above = ""
            parts = self._parts.get(block, {})
            added = self._below.get(block, {})
            for line in sorted({*parts, *added}):
                old = block.lines[line]
                below = "".join(f"\n{text}" for text in format_lines(added.get(line, [])))
                new = _spliced(old, parts.get(line, []))
                if line == 0 and line in parts:
                    new = above + new
                found.append(smallest_edit(block, line, new + below))
        return tuple(found)


_GAP = " \t\u00a0,"


def _spliced(text: str, pieces: list[tuple[int, int, str]]) -> str:
    joined: list[tuple[int, int, str]] = []
    for start, end, new in sorted(pieces, key=lambda piece: piece[:2]):
        if joined and not (new or joined[-1][2] or text[joined[-1][1] : start].strip(_GAP)):
            start = joined.pop()[0]  # words that go side by side go as one
        joined.append((start, end, new))
    for start, end, new in reversed(joined):
        head, tail = text[:start], text[end:]
        if not new:  # one of the two gaps around the words goes with them, of two the one that has a comma
            head, tail = head.rstrip(_GAP), tail.lstrip(_GAP)
            before, after = text[len(head) : start], text[end : len(text) - len(tail)]
            new = "" if not tail else before if not head or ("," in after and "," not in before) else after
        text = head + new + tail
    return text


# feeders


def set_source(draft: Draft, model: Model, feeder: Feeder, name: str, legs: str) -> None:
    """Let the feeder leave ``name`` (as spelt) on these legs (``[AB]`` or nothing), and be called so everywhere."""
    end = feeder.source
    last = end.legs_span.end if end.legs_span is not None else end.span.end
    draft.replace(feeder.block, Span(end.span.line, end.span.start, last), f"{name}{legs}")
    if name not in (end.text, spelled(end.text)):
        for block, source, _ in mentions(model, feeder):
            draft.replace(block, source.span, name)


def set_target(draft: Draft, model: Model, feeder: Feeder, name: str) -> None:
    """Let the feeder end at ``name`` (as spelt), and be called so everywhere."""
    draft.replace(feeder.block, feeder.target.span, name)
    for block, _, target in mentions(model, feeder):
        draft.replace(block, target.span, name)


def mentions(model: Model, feeder: Feeder) -> Iterator[tuple[Block, End, End]]:
    """Where scenarios and expectations call a feeder without a label by its ends."""
    if feeder.statement.label is not None:
        return
    ends = feeder.source.text, feeder.target.text
    for block, scenario in model.scenarios:
        for action in scenario.actions:
            if action.target is not None and (action.source.text, action.target.text) == ends:
                yield block, action.source, action.target
    for block, expect in model.expects:
        source, target = expect.source, expect.target
        if source is not None and target is not None and (source.text, target.text) == ends:
            yield block, source, target


def set_poles(draft: Draft, feeder: Feeder, poles: int, *, neutral: bool | None = None) -> None:
    """Give its device so many poles; ``neutral`` says whether it switches the neutral, None keeps that."""
    fact = feeder.body.facts.get("rating")
    if fact is None:
        return
    old = feeder.body.poles
    switched = (old is not None and old.switched_neutral) if neutral is None else neutral
    draft.replace(feeder.block, fact.span, f"{fact.value.text} {poles}p{'+N' if switched else ''}")


def drop_facts(draft: Draft, feeder: Feeder, names: Iterable[str]) -> None:
    for name in names:
        fact = feeder.body.facts.get(name)
        if fact is not None:
            draft.replace(feeder.block, fact.span, "")


def set_fact(draft: Draft, feeder: Feeder, name: str, text: str) -> None:
    """Put a phrase where the fact ``name`` stands, or at the end of the feeder's head line."""
    fact = feeder.body.facts.get(name)
    if fact is not None:
        draft.replace(feeder.block, fact.span, text)
    else:
        draft.append(feeder.block, feeder.statement.head.line, text)


def set_wire_count(draft: Draft, feeder: Feeder, legs: int, neutral: bool) -> bool:
    """Let the run have one wire a leg, and a neutral; what is written keeps its sizes. False where nothing changed."""
    wires = feeder.body.conductors
    if wires is None:
        return False
    roles = {role for role, _ in wires.extras}
    apart = bool(roles & {"N", "PEN"})
    count = legs + (1 if neutral and not apart else 0) + (1 if wires.run.with_protective else 0)
    raw = feeder.block.lines[wires.span.line][wires.span.start : wires.span.end]
    match = _LEADING_COUNT.match(raw)
    if match is None or count == wires.run.count:
        return False
    start = wires.span.start + match.start("count")
    draft.replace(feeder.block, Span(wires.span.line, start, start + len(match["count"])), str(count))
    return True


# equipment


def set_voltage(draft: Draft, equipment: Equipment, text: str) -> None:
    """Write another voltage on a piece of equipment; one that comes from its type is written here and so replaced."""
    statement = equipment.statement
    side = statement.primary
    if side is not None:
        draft.replace(equipment.block, side.span, text)
    elif statement.name is not None:
        span = statement.name.span
        draft.replace(equipment.block, Span(span.line, span.end, span.end), f"  {text}")


def set_sides(draft: Draft, equipment: Equipment, primary: str, secondary: str) -> None:
    """Write both sides of a transformer."""
    statement = equipment.statement
    name = statement.name
    if name is None:
        return
    sides = [side for side in (statement.primary, statement.secondary) if side is not None]
    text = f"  {primary} -> {secondary}  "
    if not sides:
        draft.replace(equipment.block, Span(name.span.line, name.span.end, name.span.end), text)
        return
    first = name.span.end
    last = max(side.span.end for side in sides)
    if statement.arrow and len(sides) == 1:
        raw = equipment.block.lines[name.span.line]
        last = max(last, raw.find("->", first) + 2)
    draft.replace(equipment.block, Span(name.span.line, first, last), text)


def set_own_fact(draft: Draft, equipment: Equipment, name: str, text: str) -> None:
    """Put a phrase where the statement's own fact stands (one from a type is replaced by writing it here)."""
    fact: Fact | None = equipment.statement.body.facts.get(name)
    if fact is not None:
        draft.replace(equipment.block, fact.span, text)
    elif text:
        comma = "," if equipment.statement.body.facts else ""
        draft.append(equipment.block, equipment.statement.head.line, text, comma)
