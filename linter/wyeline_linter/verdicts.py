"""The answers to "may this be connected?": a yes with every way, a refusal with its physical cause, or neither.

Only the shapes of the answers stand here; `feeding` and `windings` fill them in, and so do the network's own refusals.
"""

from __future__ import annotations

import enum
from dataclasses import dataclass
from typing import NamedTuple

from wyeline_linter.nameplate import NameplateVerdict
from wyeline_linter.systems import System, volts_text


class Cause(enum.Enum):
    """The physical reasons for which a connection is refused."""

    MISSING_LEG = "missing-leg"
    LEG_VOLTAGE = "leg-voltage-mismatch"
    ANGLE = "two-phase-legs-not-split"
    NO_NEUTRAL = "neutral-absent-upstream"
    HIGH_LEG = "high-leg-to-neutral"
    NAMEPLATE = "nameplate-voltage-off"
    PHASE_COUNT = "phase-count-mismatch"
    FREQUENCY = "frequency-or-dc-mismatch"
    POLES = "pole-count-wrong"
    ONE_POLE = "one-pole-on-two-live-wires"
    WINDING_VOLTAGE = "winding-voltage-misfit"
    WINDING_COUNT = "winding-count-misfit"
    WINDING_CONNECTION = "winding-connection-unknown"
    SECOND_SUPPLY = "second-supply"
    LOOP = "supply-loop"
    UNKNOWN = "upstream-system-unknown"


class NoteKind(enum.Enum):
    """What deserves a word although the connection can be made."""

    NEIGHBOUR_NOMINAL = "neighbour-nominal"
    NAMEPLATE_OFF = "nameplate-voltage-off"
    REVERSED_ROTATION = "reversed-rotation"
    EARTHING_RESTATED = "earthing-restated"
    NEUTRAL_ON_IMPEDANCE = "impedance-ground-with-neutral-load"
    WINDING_OFF_NOMINAL = "winding-off-nominal"
    PRIMARY_STAR_FLOATS = "primary-star-floats"
    PRIMARY_STAR_TIED = "primary-star-tied"
    ZERO_SEQUENCE = "wye-wye-zero-sequence"


class Note(NamedTuple):
    """A remark that goes with a connection; ``text`` is one sentence with its numbers."""

    kind: NoteKind
    text: str


class PairCheck(NamedTuple):
    """One pair of conductors that was compared: volts needed between ``needs``, volts found between ``takes``."""

    needs: tuple[str, str]
    takes: tuple[str, str]
    needed_v: float
    found_v: float

    def in_words(self) -> str:
        return f"{self.takes[0]}–{self.takes[1]} is {volts_text(self.found_v)}, needed {volts_text(self.needed_v)}"


class LegMap(NamedTuple):
    """One way to connect: each needed conductor and the supply's conductor it goes to.

    ``system`` is what arrives: the supply restricted to these conductors, in the order of the need, under the supply's
    names. ``live_poles`` is the number of poles that open every live wire, ``earthed_leg`` is the solidly earthed leg
    among them.
    """

    pairs: tuple[tuple[str, str], ...]
    system: System
    reversed_rotation: bool
    uses_high_leg: bool
    earthed_leg: str | None
    live_poles: int
    worst_deviation_pct: float

    @property
    def legs(self) -> tuple[str, ...]:
        """The supply's legs that are taken, in order."""
        return self.system.legs

    @property
    def conductors(self) -> tuple[str, ...]:
        return self.system.conductors


@dataclass(frozen=True, slots=True)
class Feeds:
    """It can be connected. ``maps`` are all the ways, the supply's own order first; ``notes`` hold for every one."""

    maps: tuple[LegMap, ...]
    notes: tuple[Note, ...] = ()

    @property
    def best(self) -> LegMap:
        return self.maps[0]

    @property
    def only_choice(self) -> bool:
        """Whether all maps take the same conductors, so that no legs need to be written."""
        return len({frozenset(m.conductors) for m in self.maps}) == 1


@dataclass(frozen=True, slots=True)
class Refusal:
    """It cannot be connected, and why.

    ``found`` and ``needed`` are numbers first and carry no names, so that a finding reads "`MSB` gives {found}; `LP-1`
    wants {needed}". ``why`` is one or two plain sentences. ``compared`` are the pairs of the nearest try, ``fitting``
    the ways that would do with other legs or another device, ``nameplate`` the verdict on a load's nameplate.
    """

    cause: Cause
    found: str
    needed: str
    why: str
    compared: tuple[PairCheck, ...] = ()
    fitting: tuple[LegMap, ...] = ()
    nameplate: NameplateVerdict | None = None
    nearest: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Undecided:
    """It cannot be judged yet; ``reasons`` name what is missing. ``fitting`` are the ways still open."""

    reasons: tuple[str, ...]
    fitting: tuple[LegMap, ...] = ()


FeedVerdict = Feeds | Refusal | Undecided
