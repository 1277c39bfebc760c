"""How a voltage system is tied to earth at its source: what is written, and what the notation implies."""

from __future__ import annotations

import enum
from typing import NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body
from wyeline_grammar.notation import Voltage, VoltageForm
from wyeline_grammar.vocabulary import BOARDS

LEGS = ("A", "B", "C")
NEUTRAL = "N"


class EarthingKind(enum.Enum):
    """How a system is tied to earth at its source."""

    SOLID = "solid"
    RESISTOR = "resistor"
    REACTOR = "reactor"
    NONE = "none"


class Arrangement(enum.Enum):
    """The arrangement of earth at the source and at the equipment (IEC 60364-1, clause 312.2)."""

    TN_S = "TN-S"
    TN_C = "TN-C"
    TN_C_S = "TN-C-S"
    TT = "TT"
    IT = "IT"


MIDPOINT = "mid"
"""`Earthing.conductor` when the middle of a winding is earthed and no wire is brought out from it."""


class Earthing(NamedTuple):
    """How a system is earthed.

    ``conductor`` is the earthed conductor of SOLID, RESISTOR and REACTOR: a leg (corner-grounded), ``"N"`` (also where
    the star point is earthed but no neutral runs), ``"+"``, ``"-"``, ``"M"`` or MIDPOINT. ``size`` is the figure behind
    ``ground-resistor 5 A`` or ``ground-reactor 3 ohm``, as text. ``stated`` tells a written earthing from the one the
    notation implies.
    """

    kind: EarthingKind
    conductor: str | None = None
    arrangement: Arrangement | None = None
    size: str | None = None
    stated: bool = True

    @property
    def solid(self) -> bool:
        return self.kind is EarthingKind.SOLID

    def same_as(self, other: Earthing) -> bool:
        """Whether both mean the same earthing, whoever wrote it; an arrangement left out differs from none."""
        if self.kind is not other.kind or self.conductor != other.conductor:
            return False
        return self.arrangement is other.arrangement or None in (self.arrangement, other.arrangement)


UNEARTHED = Earthing(EarthingKind.NONE, stated=False)
EARTHED_NEUTRAL = Earthing(EarthingKind.SOLID, NEUTRAL, stated=False)


def earthing_from_words(word: str, voltage: Voltage, *, size: str | None = None) -> Earthing:
    """Read the value of ``ground`` (``solid``, ``none``, a conductor), of ``earthing`` (``TN-S`` … ``IT``), or the keys
    ``resistor`` and ``reactor`` with their ``size``.

    ``solid`` means the neutral or star point; on direct current the ``-``. Raises ValueError for any other word.
    """
    middle = "-" if voltage.form is VoltageForm.DC2 else NEUTRAL
    if word == "none":
        return Earthing(EarthingKind.NONE)
    if word in ("solid", "bonded"):
        return Earthing(EarthingKind.SOLID, middle)
    if word in ("resistor", "reactor"):
        return Earthing(EarthingKind(word), middle, size=size)
    if word in (*LEGS, NEUTRAL, MIDPOINT, "+", "-", "M"):
        return Earthing(EarthingKind.SOLID, word)
    arrangement = Arrangement(word)
    if arrangement is Arrangement.IT:
        return Earthing(EarthingKind.NONE, None, arrangement)
    return Earthing(EarthingKind.SOLID, middle, arrangement)


def usual_earthing(voltage: Voltage) -> Earthing:
    """The earthing that a notation implies where nothing is stated.

    Notations with a neutral: solidly earthed at it. A two-wire source of 150 V or less: one wire earthed (US practice,
    NEC 250.20(B)(1)). Three-wire, other two-wire and DC: none. The result has ``stated`` False.
    """
    if voltage.has_neutral or (voltage.form is VoltageForm.TWO_WIRE and voltage.line_v <= 150.0):
        return EARTHED_NEUTRAL
    return UNEARTHED


EARTHED_APART = BOARDS | {"load", "motor", "charger"}
"""Kinds whose metal parts may have an electrode of their own."""


def own_electrode(equipment: Equipment | None) -> bool:
    """Whether a board or load says that its metal parts are earthed by an electrode of its own, whatever feeds it."""
    if equipment is None or equipment.kind not in EARTHED_APART or equipment.arrow:
        return False
    return equipment.body.text("earthing") == Arrangement.TT.value


def parts_electrode_ohm(equipment: Equipment, declared: Body | None) -> float | None:
    """The electrode of metal parts (R_A) behind what makes a TT system or a board with its own, in ohm; None: not
    written. ``declared`` is what is said of the declared system that it makes."""
    return _first(equipment, declared, ("resistance",))


def source_electrode_ohm(equipment: Equipment, declared: Body | None, *, tt: bool) -> float | None:
    """The electrode at what makes a system (R_B), in ohm; in TN it is the only one there is. None: not written."""
    return _first(equipment, declared, ("source-resistance",) if tt else ("source-resistance", "resistance"))


def _first(equipment: Equipment, declared: Body | None, keys: tuple[str, ...]) -> float | None:
    bodies = (equipment.body,) if declared is None else (equipment.body, declared)
    return next((ohm for body in bodies for key in keys if (ohm := body.number(key)) is not None), None)
