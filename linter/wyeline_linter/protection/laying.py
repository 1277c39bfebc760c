"""How a line lies: the air or ground around its wires, what else shares their raceway, and what of it nobody wrote."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_grammar.model import Body, RacewayStatement
from wyeline_linter.conductors import neutral_counts
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.shapes import Shape
from wyeline_linter.systems import System
from wyeline_linter.tables import Basis

if TYPE_CHECKING:
    from wyeline_linter.view import View

US_AMBIENT_C = IEC_AMBIENT_C = 30.0
"""Air temperature the tables are made for (NEC 310.16; IEC 60364-5-52), taken where none is written."""
IEC_GROUND_C = 20.0
"""Ground temperature the tables are made for (IEC 60364-5-52 B.52.15), taken where none is written."""
_OPEN = frozenset({"tray", "ladder", "basket"})

How = tuple[Laid | None, str, tuple[str, ...]]
"""How a line lies, or what is missing to tell; and remarks on values nobody wrote."""


def how_laid(
    view: View,
    tables: Basis,
    body: Body,
    raceway: RacewayStatement | None,
    wiring: Wiring,
    system: System,
    lug_c: int | None,
    device_a: float,
) -> How:
    """How the line of ``body`` lies, in ``raceway`` where that is declared; ``lug_c`` is what its terminals are marked
    for, ``device_a`` the device that protects it."""
    written = _Written(view, body, raceway)
    if tables.practice == "us":
        return _us(written, wiring, system, lug_c, device_a)
    return _iec(written, wiring, system)


class _Written:
    """What is written of a line; where it says nothing, what its raceway or the project says."""

    __slots__ = ("around", "assumed", "body", "grouped", "project", "raceway", "together")

    def __init__(self, view: View, body: Body, raceway: RacewayStatement | None) -> None:
        self.body, self.raceway = body, raceway
        self.around = raceway.body if raceway is not None else None
        self.project = view.model.project
        self.grouped = max(1, round(self.number("grouped") or 1))
        self.together = "together" in body.flags
        """Whether the grouped sets are this line's own."""
        self.assumed: list[str] = []

    def number(self, key: str) -> float | None:
        own = self.body.number(key)
        return own if own is not None or self.around is None else self.around.number(key)

    def method(self) -> str | None:
        return self.body.text("method") or (self.around.text("method") if self.around is not None else None)

    def buried(self) -> bool:
        return self.number("buried") is not None

    def of_project(self, key: str) -> float | None:
        """The line's own, else that of its raceway, else that of the project."""
        found = self.number(key)
        return self.project.number(key) if found is None else found

    def air_c(self, usual_c: float) -> float:
        found = self.of_project("ambient")
        if found is None:
            self.assumed.append(f"{usual_c:g} degC around the wires, as none is written")
            return usual_c
        return found

    def ground_c(self) -> float:
        """The project's ambient temperature is that of air, so it says nothing of the ground."""
        found = self.number("ambient")
        if found is None:
            self.assumed.append(f"{IEC_GROUND_C:g} degC in the ground, as none is written")
            return IEC_GROUND_C
        return found

    def stuff(self) -> str:
        own = self.body.raceway
        if own is not None and not own.named and own.stuff:
            return own.stuff
        return self.raceway.stuff if self.raceway is not None and self.raceway.stuff else ""


def _us(written: _Written, wiring: Wiring, system: System, lug_c: int | None, device_a: float) -> How:
    if written.body.raceway is None and not wiring.cable and written.method() is None and not written.buried():
        return None, "the raceway or cable it runs in", ()
    ambient_c = written.air_c(US_AMBIENT_C)
    loaded = loaded_wires(wiring, system)
    if written.together:
        beside = loaded * wiring.sets * (written.grouped - 1)
        return Laid(ambient_c, loaded, lug_c, device_a, beside=beside), "", tuple(written.assumed)
    return Laid(ambient_c, loaded * written.grouped, lug_c, device_a), "", tuple(written.assumed)


def _iec(written: _Written, wiring: Wiring, system: System) -> How:
    method = written.method()
    if method is None and written.buried():
        method = "D1" if written.body.raceway is not None else "D2"
    if method is None:
        return None, "its method of installation", ()
    in_ground = method in ("D1", "D2")
    ambient_c = written.ground_c() if in_ground else written.air_c(IEC_AMBIENT_C)
    soil = written.of_project("soil")
    if soil is None and in_ground:
        return None, "the thermal resistivity of the soil (`soil`)", ()
    stuff = written.stuff()
    arrangement = (
        stuff if stuff in ("tray", "ladder") else "tray" if stuff in _OPEN else "wall" if method == "C"
        else "tray" if method in ("E", "F") else "bunched"
    )  # fmt: skip
    grouped = written.grouped
    apart = grouped > 1 or not written.together
    """Whether the circuits of the group are those that are written, however many sets there are."""
    circuits = grouped if apart else wiring.sets
    if circuits > 1 and not stuff and arrangement != "bunched":
        written.assumed.append(
            f"the {circuits} lie in one layer, as on a {arrangement}, since nothing says that they are bunched"
        )
    loaded = 2 if len(system.legs) < 3 else 3
    among = None if apart else 0
    return Laid(ambient_c, loaded, None, 0.0, method, grouped, arrangement, soil, among), "", tuple(written.assumed)


def loaded_wires(wiring: Wiring, system: System) -> int:
    """Current-carrying wires of one set (NEC 310.15(E)): its legs, and the neutral where it counts whatever the loads
    are."""
    if wiring.neutral is None or not system.has_neutral:
        return wiring.legs
    counted = neutral_counts(legs=min(wiring.legs, 3), from_wye=from_wye(system), mostly_nonlinear=False)
    return wiring.legs + bool(counted.counts)


def from_wye(system: System) -> bool:
    """Whether the legs belong to a three-phase four-wire wye."""
    return system.shape in (Shape.WYE4, Shape.TWO_LEGS3, Shape.WYE3)


def raceway_of(view: View, body: Body) -> RacewayStatement | None:
    """The named raceway that it lies in, where that is declared."""
    raceway = body.raceway
    if raceway is None or not raceway.named:
        return None
    declared = view.model.lookup(raceway.stuff)
    statement = declared.statement if declared is not None else None
    return statement if isinstance(statement, RacewayStatement) else None


def shared_raceway(body: Body) -> str:
    """The name of the raceway that it lies in with others, or nothing."""
    return body.raceway.stuff if body.raceway is not None and body.raceway.named else ""


def is_wet(body: Body) -> bool:
    """Whether its wires lie where they may get wet: outdoors or in the ground."""
    return "outdoor" in body.flags or "buried" in body.facts
