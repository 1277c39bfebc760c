"""A comparison as a comment on a pull request: what is grave in sight, details folded, and never too long."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence

from wyeline_linter.findings import Severity
from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.review.as_text import (
    FRESH,
    MOVED,
    NOTHING_FOLLOWS,
    UNCHANGED,
    UNEXPLAINED,
    notes,
    particulars,
    place,
    summary,
    title,
)
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.consequences import Consequence
from wyeline_linter.review.ordering import also, by_cause

MOST_CHARACTERS = 60_000
"""What the usual forges take as one comment is 65,536 characters or more; some room is left for a bot's own words."""
_LEAST = 2_000
"""Characters without which a model is rather left out than told."""
_FRAME = 200
"""Characters that a fold takes beside its lines."""
_TITLE = 300
"""Characters of a title."""
_NAMED = 3
"""Unchanged models that are named; the rest is counted."""
_OPEN = 20
"""Consequences in sight; the rest is folded."""
_MARKS = {Severity.ERROR: "**error**", Severity.WARNING: "**warning**", Severity.ADVICE: "advice", Severity.GAP: "gap"}


def markdown(found: Sequence[Comparison]) -> str:
    """Every model, shortened from the end of each so that the whole fits into one comment."""
    tail = f"\n<sub>{_plain(CAUTION)}</sub>\n"
    parts = [_Part(c) for c in found if c.changes or c.worse]
    same = [c for c in found if not c.changes and not c.worse]
    room = MOST_CHARACTERS - len(tail) - 2 * _LEAST
    shown = parts[: max(1, room // _LEAST)]
    out = [part.fitting(room // max(1, len(shown))) for part in shown]
    if len(shown) < len(parts):
        out.append(f"\n… and {len(parts) - len(shown)} more models, left out to keep this comment short")
    if same:
        names = ", ".join(_text(title(c)[:_TITLE]) for c in same[:_NAMED])
        names += f" and {len(same) - _NAMED} more" if len(same) > _NAMED else ""
        head = "" if parts else "### Electrical consequences: none\n"
        out.append(f"{head}\n{UNCHANGED} ({names})")
    return "\n".join(out) + "\n" + tail


class _Part:
    """One model as sections, the ones that may be cut last."""

    def __init__(self, comparison: Comparison) -> None:
        c = comparison
        gaps = f" {c.gaps} figure{'s' if c.gaps != 1 else ''} unknown." if c.gaps else ""
        told = _text(summary(c)) + "." if c.worse else NOTHING_FOLLOWS + gaps
        head = [f"### Electrical consequences: {_text(title(c)[:_TITLE])}", "", told]
        head += [f"\n> {_text(note)}" for note in notes(c)]
        self.head = "\n".join(head)
        shown, rest = c.worse[:_OPEN], c.worse[_OPEN:]
        self.sections: list[tuple[str, list[str]]] = [
            ("", [_line(one) for one in shown]),
            ("Further consequences", [_line(one) for one in rest]),
            ("What changed", [f"- *{x.kind.value}* {_text(x.words + place(x))}" for x in c.changes]),
            ("Why, and what mends it", [detail for one in c.worse if (detail := _detail(one))]),
            ("What is better", [f"- {_text(one.words + also(one))}" for one in c.better]),
            ("To issue anew", [f"- {_text(sheet.words)}" for sheet in c.sheets]),
            (FRESH, [f"- {_text(one.words)}" for one in c.fresh]),
            (MOVED, list(_moved(c.moved))),
        ]
        self.headings = {MOVED: len(by_cause(c.moved))}
        """Lines of a section that only head others, and are not counted."""

    def fitting(self, room: int) -> str:
        """As much as fits into so many characters; what is left out is counted."""
        out = [self.head]
        left = room - len(self.head) - _FRAME * sum(1 for _, lines in self.sections if lines)
        for name, lines in self.sections:
            if not lines:
                continue
            kept = []
            for line in lines:
                if left < len(line) + 1:
                    break
                left -= len(line) + 1
                kept.append(line)
            if len(kept) < len(lines):
                kept.append(f"- … and {len(lines) - len(kept)} more, left out to keep this comment short")
            body = "\n".join(kept)
            count = len(lines) - self.headings.get(name, 0)
            fold = f"<details><summary>{name} ({count})</summary>\n\n{body}\n\n</details>"
            out += ["", body if not name else fold]
        return "\n".join(out)


def _moved(found: Sequence[Consequence]) -> Iterator[str]:
    for cause, figures in by_cause(found).items():
        yield f"- {_text(cause or UNEXPLAINED)}:"
        yield from (f"  - {_text(one.headline)}" for one in figures)


def _line(one: Consequence) -> str:
    return f"- {_MARKS[one.gravity]} {_text(one.words + also(one))}"


def _detail(one: Consequence) -> str:
    said = particulars(one)
    if not said or one.finding is None:
        return ""
    lines = [f"- {_text(one.finding.message)}", *(f"  - {label}: {_text(words)}" for label, words in said)]
    return "\n".join(lines)


_CODE = re.compile(r"(?<!`)`([^`]{1,120})`(?!`)")


def _text(words: str) -> str:
    """Words of a model as they are: nothing in them is markup, a mention or a link."""
    pieces = _CODE.split(" ".join(words.split()))
    return "".join(_plain(piece) if i % 2 == 0 else f"`{piece}`" for i, piece in enumerate(pieces))


_ESCAPES: Iterable[tuple[str, str]] = (
    ("&", "&amp;"),
    ("<", "&lt;"),
    (">", "&gt;"),
    ("@", "&#64;"),
    ("#", "&#35;"),
    ("*", "\\*"),
    ("_", "\\_"),
    ("[", "\\["),
    ("]", "\\]"),
    ("|", "\\|"),
    ("~", "\\~"),
    ("://", ":&#47;/"),
)


def _plain(words: str) -> str:
    # The backslash first, and `#` apart from the entities that other signs become.
    words = words.replace("`", "'").replace("\\", "\\\\").replace("#", "\0")
    for sign, escaped in _ESCAPES:
        if sign != "#":
            words = words.replace(sign, escaped)
    return words.replace("\0", "&#35;")
