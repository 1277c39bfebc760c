"""The phrases of a statement or a circuit, gathered into one body: each attribute once, each of the right kind."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.interpret import interpret, value_of
from wyeline_grammar.notation import ConductorSize, NotationError, Poles, Run, parse_poles, parse_run, parse_size
from wyeline_grammar.places import span_of
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.syntax import Phrase, Token

_TAKES_CONDUCTORS = frozenset({"feeder", "circuit"})
_TAKES_LEGS = frozenset({"circuit", "load"})


def unquoted(token: Token) -> str:
    """The text of a name or of a quoted text."""
    return token.text[1:-1] if token.kind == "TEXT" else token.text


def name_use(token: Token, row: int) -> m.NameUse:
    """A name with its place."""
    return m.NameUse(unquoted(token), span_of(row, token.start, token.end))


def place_of(token: Token, row: int) -> m.PositionRef:
    """The place in a board that a token names: ``7``, ``2,4``, or a label."""
    span = span_of(row, token.start, token.end)
    if token.kind == "NUMBER":
        return m.PositionRef((int(float(token.text)),), None, span)
    if token.kind == "LIST":
        return m.PositionRef(tuple(int(part) for part in token.text.split(",")), None, span)
    return m.PositionRef((), unquoted(token), span)


class BodyBuilder:
    """Collects phrases of one statement or circuit; what does not fit goes to ``problems``."""

    def __init__(self, place: str, problems: list[Problem]) -> None:
        self.place = place
        self.problems = problems
        self.facts: dict[str, m.Fact] = {}
        self.flags: dict[str, m.Span] = {}
        self.poles: Poles | None = None
        self.poles_span: m.Span | None = None
        self.conductors: m.Conductors | None = None
        self.raceway: m.Raceway | None = None
        self.leg_loads: list[m.LegLoad] = []
        self.description: str | None = None
        self.description_span: m.Span | None = None
        self._judged: list[int] = []
        """Problems of phrases judged by themselves, by their place in ``problems``."""
        self._twice: dict[int, tuple[m.Fact, Token, int]] = {}
        """By its place in ``problems``: a quantity without a key, its row, and the fact that says what it would."""

    def build(self) -> m.Body:
        if self._judged:
            from wyeline_grammar.out_of_place import beside  # only problems need it

            for i in self._judged:
                self.problems[i] = beside(self.problems[i], self.place, self.facts)
        if self._twice:
            from wyeline_grammar.repeated_quantities import second_quantity  # only problems need it

            for i, twice in self._twice.items():  # what is stated behind it counts as well
                self.problems[i] = second_quantity(self.place, self.facts, *twice)
        return m.Body(
            self.facts,
            self.flags,
            self.poles,
            self.poles_span,
            self.conductors,
            self.raceway,
            tuple(self.leg_loads),
            self.description,
            self.description_span,
        )

    @staticmethod
    def bare_value(token: Token) -> m.Value | None:
        """The value of one token that stands outside a phrase (in ``expect`` and in actions)."""
        return value_of(token)

    def add(self, row: int, phrases: Iterable[Phrase]) -> None:
        """Take the phrases of one line."""
        for phrase in phrases:
            form, tokens, _ = phrase
            span = span_of(row, tokens[0].start, tokens[-1].end)
            if form == "text":
                self._text(phrase, span)
            elif form == "in":
                self._in(phrase, span)
            elif form == "leg":
                self._leg(phrase, span)
            elif form == "conductors":
                self._conductors(phrase, span)
            else:
                self._attribute(phrase, span)

    def _attribute(self, phrase: Phrase, span: m.Span) -> None:
        got = interpret(self.place, phrase, span.line)
        if got.problems:
            self._judged += range(len(self.problems), len(self.problems) + len(got.problems))
            self.problems.extend(got.problems)
        if got.name is None:
            return
        if phrase.form in ("flag", "class"):
            if got.name in self.flags:
                self._repeated(f"`{got.name}`", span, self.flags[got.name])
            self.flags.setdefault(got.name, span)
            return
        if got.value is None:
            return
        poles = None
        if len(phrase.tokens) > 1:
            poles = next((parse_poles(t.text) for t in phrase.tokens if t.kind == "POLES"), None)
        if got.name in self.facts:
            if phrase.form == "quantity":
                self._second_quantity(self.facts[got.name], phrase.tokens[0], span.line)
            else:
                self._repeated(f"`{got.name}`", span, self.facts[got.name].span)
            return
        self.facts[got.name] = m.Fact(got.name, got.value, phrase.assumed, span, poles)
        if poles is not None and phrase.form == "quantity":
            self.poles, self.poles_span = poles, span

    def _text(self, phrase: Phrase, span: m.Span) -> None:
        if self.description_span is not None:
            self._repeated("a description in quotes", span, self.description_span)
            return
        self.description, self.description_span = unquoted(phrase.tokens[0]), span

    def _in(self, phrase: Phrase, span: m.Span) -> None:
        if self.place not in _TAKES_CONDUCTORS:
            self._misplaced("a raceway", span, "Wires run in a raceway: write `in …` on a feeder or a circuit.")
            return
        if self.raceway is not None:
            self._repeated("`in`", span, self.raceway.span)
            return
        size = next((" ".join(t.text.split()) for t in phrase.tokens if t.kind == "TRADE_SIZE"), None)
        stuff = phrase.tokens[-1]
        if stuff.kind in ("TRADE_SIZE", "IN"):
            return
        self.raceway = m.Raceway(size, stuff.text, _names_a_raceway(stuff, size), span)

    def _leg(self, phrase: Phrase, span: m.Span) -> None:
        if self.place not in _TAKES_LEGS:
            self._misplaced("`leg`", span, "A load per leg stands on a circuit or a load.")
            return
        name, value = phrase.tokens[1], value_of(phrase.tokens[2])
        leg = {"A": "A", "B": "B", "C": "C", "L1": "A", "L2": "B", "L3": "C"}.get(name.text)
        if leg is None or value is None:
            self.problems.append(
                Problem(
                    "value-not-understood",
                    f"`{name.text}` is no leg",
                    span.line,
                    name.start,
                    name.end,
                    found=name.text,
                    needed="A, B or C (L1, L2 or L3)",
                    why="A leg is one live wire of the board.",
                    change="Write the leg that this part of the load is on.",
                )
            )
            return
        twice = next((x for x in self.leg_loads if x.leg == leg), None)
        if twice is not None:
            self._repeated(f"leg {leg}", span, twice.span)
            return
        self.leg_loads.append(m.LegLoad(leg, value, span))

    def _conductors(self, phrase: Phrase, span: m.Span) -> None:
        if self.place not in _TAKES_CONDUCTORS:
            self._misplaced("conductors", span, "Wires belong to the feeder or circuit that uses them.")
            return
        if self.conductors is not None:
            self._repeated("a run of conductors", span, self.conductors.span, _as_further(phrase, span.line))
            return
        wires = _wires(tuple([token[:2] for token in phrase.tokens]))
        if wires is None:
            return
        sets, run, extras, marks, odd_roles, odd_marks = wires
        self.conductors = m.Conductors(sets, run, extras, marks, span)
        for i in odd_roles:
            self._unknown_role(phrase.tokens[i], span.line)
        for i in odd_marks:
            self._unknown_mark(phrase.tokens[i], span.line)

    def _unknown_role(self, token: Token, row: int) -> None:
        from wyeline_grammar.slip_fixes import PART_WORDS  # only problems need it

        self.problems.append(
            Problem(
                "value-not-understood",
                f"`{token.text}` is no conductor's part",
                row,
                token.start,
                token.end,
                found=token.text,
                needed="N (neutral), G (equipment ground), PE, PEN or IG (isolated ground)",
                why="The part decides what the wire is sized for and what a fault finds as its way back.",
                change="Write the part of this wire, as in `+ N #2 + G #8`.",
                remedies=tuple(
                    Remedy(f"Write `{part}`", (TextEdit(row, token.start, token.end, part),))
                    for part in (PART_WORDS.get(token.text.upper(), token.text.upper()),)
                    if part in _ROLES
                ),
            )
        )

    def _unknown_mark(self, token: Token, row: int) -> None:
        """A metal in another spelling, a word that the size says already, or a temperature, among insulations."""
        from wyeline_grammar.slip_fixes import METAL_WORDS  # only problems need it

        text = token.text
        metal = METAL_WORDS.get(text)
        spelled: tuple[str, ...]
        if metal:
            spelled, said = (metal,), f"`{text}` is written `{metal}`"
        elif text[0].isdigit():
            degrees = f"{text[:-1]} deg{text[-1]}"
            spelled = f"lug-temp {degrees}", f"ambient {degrees}"
            said = f"`{text}` does not say what it is the temperature of"
        else:
            spelled, said = ("",), f"`{text}` says nothing that the size does not"
        remedies = tuple(
            Remedy(
                f"Write `{s}`" if s else f"Leave out `{text}`",
                (TextEdit(row, token.start, token.end, s),),
                len(spelled) == 1,
            )
            for s in spelled
        )
        self.problems.append(
            Problem(
                "value-not-understood",
                said,
                row,
                token.start,
                token.end,
                found=f"`{text}` behind the conductors",
                needed="a metal (`Cu`, `Al`), an insulation such as `THWN-2`, or a type of cable such as `MC`",
                why="What a wire may carry is looked up by these marks; one that no table has hides the answer.",
                change=f"Write {' or '.join(f'`{s}`' for s in spelled)}." if spelled[0] else f"Leave out `{text}`.",
                remedies=remedies,
            )
        )

    def _repeated(self, what: str, span: m.Span, first: m.Span, remedies: tuple[Remedy, ...] = ()) -> None:
        where = "earlier on this line" if first.line == span.line else "on a line above"
        self.problems.append(
            Problem(
                "attribute-repeated",
                f"{what} is already stated {where}",
                span.line,
                span.start,
                span.end,
                found="two statements of one fact",
                needed="each fact once",
                why="Two values of one fact leave the reader, and every figure below, to guess which one holds.",
                change=" or ".join(remedy.title for remedy in remedies) or "Keep the right one and delete the other.",
                remedies=remedies,
            )
        )

    def _second_quantity(self, first: m.Fact, token: Token, row: int) -> None:
        from wyeline_grammar.repeated_quantities import second_quantity  # only problems need it

        self._twice[len(self.problems)] = first, token, row
        self.problems.append(second_quantity(self.place, self.facts, first, token, row))

    def _misplaced(self, what: str, span: m.Span, belongs: str) -> None:
        self.problems.append(
            Problem(
                "attribute-out-of-place",
                f"`{self.place}` does not take {what}",
                span.line,
                span.start,
                span.end,
                found=f"{what} on `{self.place}`",
                needed=belongs,
                why="A fact in the wrong place would be read by nothing.",
                change="Move it to where it belongs.",
            )
        )


def _as_further(phrase: Phrase, row: int) -> tuple[Remedy, ...]:
    """A run of one conductor behind another run, such as ``1#10 G``, as the further conductor that it must be."""
    from wyeline_grammar.slip_fixes import PART_WORDS  # only problems need it

    run, *marks = phrase.tokens
    if run.kind != "RUN" or parse_run(run.text).count != 1:
        return ()
    size = parse_run(run.text).size
    written = f"#{size.text}" if size.system == "awg" else size.text
    said = PART_WORDS.get(marks[0].text, marks[0].text) if marks else ""
    parts, end = ((said,), marks[0].end) if said in _ROLES else (("G", "N"), run.end)
    return tuple(
        Remedy(f"Write `+ {part} {written}`", (TextEdit(row, run.start, end, f"+ {part} {written}"),), len(parts) == 1)
        for part in parts
    )


class _Wires(NamedTuple):
    sets: int
    run: Run
    extras: tuple[tuple[str, ConductorSize], ...]
    marks: tuple[str, ...]
    odd_roles: tuple[int, ...]
    odd_marks: tuple[int, ...]


@lru_cache(maxsize=8192)
def _wires(pieces: tuple[tuple[str, str], ...]) -> _Wires | None:
    """What a phrase says, from the kinds and texts of its tokens; ``odd_roles`` are the tokens that name no part,
    ``odd_marks`` those that no metal, insulation or cable is called."""
    sets, extras, marks = 1, [], []
    run = None
    i = 0
    try:
        while i < len(pieces):
            kind, text = pieces[i]
            if kind == "SETS":
                sets = int(_digits(text))
            elif kind == "RUN":
                run = parse_run(text)
            elif kind == "PLUS" and i + 2 < len(pieces):
                extras.append((pieces[i + 1][1], parse_size(pieces[i + 2][1])))
                i += 2
            elif kind in ("NAME", "PLAIN"):
                marks.append(text)
            i += 1
    except NotationError:
        return None  # the tokens were cut by the same notation, so this cannot be; nothing to say twice
    if run is None:
        return None
    odd = [i for i in range(1, len(pieces)) if pieces[i - 1][0] == "PLUS" and pieces[i][1] not in _ROLES]
    no_marks = [i for i, (kind, text) in enumerate(pieces) if kind == "NAME" and _NO_MARK.fullmatch(text)]
    return _Wires(sets, run, tuple(extras), tuple(marks), tuple(odd), tuple(no_marks))


_NO_MARK = re.compile("CU|Copper|COPPER|AL|ALUM|Aluminum|ALUMINUM|AWG|KCMIL|MCM|[0-9]{2,3}[CF]")
"""Words of drawings behind conductors that say no mark, or another one (common practice, no source)."""
_ROLES = frozenset({"N", "G", "PE", "PEN", "IG"})


def _digits(text: str) -> str:
    return "".join(c for c in text if c.isdigit())


def _names_a_raceway(stuff: Token, size: str | None) -> bool:
    """`in R-7` names a declared raceway; `in EMT`, `in PVC-40` and `in ladder` say what it is made of."""
    return size is None and stuff.kind == "NAME" and stuff.text not in RACEWAY_STUFF


RACEWAY_STUFF = frozenset(
    """EMT RMC IMC FMC LFMC LFNC ENT HDPE PVC PVC-40 PVC-80 RTRC MC AC NM UF SE USE TC ladder tray basket trunking
    conduit duct wireway gutter""".split()
)
"""What a raceway or its like can be made of; any other name behind ``in`` is a declared raceway's."""
