"""Fixtures that carry their expectations: the one reader of marks in the text.

    panel P1 480Y/277
    load Pump 208 1ph 2 kW
    //        ^^^^^^^ voltage-not-offered
    feeder P1[AB] -> Pu$0mp

``$0`` to ``$9`` are cursors; a line of ``//`` and carets marks columns of the line above it, with words behind them;
``//-- other.wye`` begins another file. Marks are taken out of the texts.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import NamedTuple

_CURSOR = re.compile(r"\$(\d)")
_CARETS = re.compile(r"//[ ]*(\^+)[ ]*(.*)")
_FILE = re.compile(r"//-- (\S+)")


class Place(NamedTuple):
    """A place in a fixture: columns in code points, lines from 0."""

    file: str
    line: int
    column: int


class Mark(NamedTuple):
    """Carets under a line, and what stands behind them."""

    file: str
    line: int
    start: int
    end: int
    text: str


@dataclass
class Fixture:
    """The texts of a fixture without marks, in their order; the first is the one that a test looks at."""

    texts: dict[str, str] = field(default_factory=dict)
    cursors: dict[int, Place] = field(default_factory=dict)
    marks: list[Mark] = field(default_factory=list)

    @property
    def first(self) -> str:
        return next(iter(self.texts))

    def line(self, place: Place | Mark) -> str:
        return self.texts[place.file].split("\n")[place.line]

    def marked(self, mark: Mark) -> str:
        """The words above a mark's carets."""
        return self.line(mark)[mark.start : mark.end]


def read(text: str, name: str = "site.wye") -> Fixture:
    """Read a fixture. Raises ValueError for carets without a line above them."""
    fixture = Fixture()
    lines: list[str] = []
    for line in text.split("\n"):
        header, carets = _FILE.fullmatch(line), _CARETS.fullmatch(line)
        if header:
            if lines:
                fixture.texts[name] = "\n".join([*lines, ""])
            name, lines = header[1], []
        elif carets:
            if not lines:
                raise ValueError(f"nothing stands above {line!r}")
            fixture.marks.append(Mark(name, len(lines) - 1, carets.start(1), carets.end(1), carets[2].strip()))
        else:
            while cursor := _CURSOR.search(line):
                fixture.cursors[int(cursor[1])] = Place(name, len(lines), cursor.start())
                line = line[: cursor.start()] + line[cursor.end() :]
            lines.append(line)
    fixture.texts[name] = "\n".join(lines)
    return fixture
