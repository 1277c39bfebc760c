"""Which question a circuit is built for: the same wires, with other temperatures, sources and machines."""

from __future__ import annotations

import enum
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from wyeline_grammar.linking import Place


class Case(enum.Enum):
    """``FLOW``: loads at running temperature. ``MAX``: cold wires, strongest sources, motors. ``MIN``: hot wires,
    weakest sources, no motors. ``START``: as the load flow, with the impedance that sources show while a motor starts.
    """

    FLOW = "load flow"
    MAX = "largest fault"
    MIN = "smallest fault"
    START = "motor start"


class Lack(enum.Enum):
    """What sort of fact a figure lacks; each sort is one rule's to report, at the place of the fact."""

    LENGTH = "length"
    IMPEDANCE = "impedance"
    SOURCE = "source"
    SMALLEST = "smallest"
    """Only the smallest faults need it."""
    EARTH = "earth"
    """Only faults to earth or neutral need it."""


@dataclass(frozen=True, slots=True)
class Missing:
    """A fact that is not written: whose (``subject``: equipment or feeder), where, and which, in words that complete
    "… is not known: " such as "the length of `MSB -> LP-1` is not written"."""

    lack: Lack
    subject: str
    text: str
    place: Place
    needed: str
    """What would be written, such as ``x/r 4``."""


@dataclass(frozen=True, slots=True)
class Assumption:
    """A value that was taken although nobody stated it, or that a writer marked with ``assume``."""

    subject: str
    text: str
    place: Place | None = None
    written: bool = False
    """Whether the writer marked it."""
    length_m: float | None = None
    """The length that was taken, said after the text in the unit of the schedules."""

    def in_words(self, length_text: Callable[[float], str]) -> str:
        """The text, with its length as ``length_text`` writes lengths."""
        return self.text if self.length_m is None else f"{self.text}, {length_text(self.length_m)}"


ROOM_C = 20.0
US_COLD_C = 25.0
US_RUNNING_C = 75.0
"""Conductor temperatures: coldest (for the largest fault) and running, US practice (NEC Chapter 9 Table 9 is at 75)."""
HOT_C = {"PVC": 160.0, "XLPE": 250.0}
"""Temperature at the end of a short circuit, for the smallest fault by IEC 60909-0 (the standard's end temperature)."""


def assumption_texts(assumed: Iterable[Assumption], length_text: Callable[[float], str]) -> tuple[str, ...]:
    """The assumptions as lines for a sheet, each once; ``length_text`` writes lengths."""
    return tuple(dict.fromkeys(a.in_words(length_text) for a in assumed))
