"""Fault currents read by equipment: largest and smallest, three-phase, leg to leg, leg to earth, leg to neutral."""

from __future__ import annotations

import math
from array import array
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import cached_property, partial
from itertools import combinations
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.circuit import Bus, ansi, iec60909
from wyeline_linter.studies.built import Built, Reasons
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.first_peaks import kappa_of, peaks_add_up
from wyeline_linter.studies.place_sources import PROTECTIVE
from wyeline_linter.system_words import conductor_text
from wyeline_linter.systems import NEUTRAL

if TYPE_CHECKING:
    from wyeline_linter.circuit import FaultStudy
    from wyeline_linter.circuit.layout import Bools, Floats, Ints
    from wyeline_linter.circuit.tied import TiedColumns
    from wyeline_linter.studies.working_fault import Worked

KINDS = ("three-phase", "line-line", "line-ground", "line-neutral")
WORDS = {
    "three-phase": "three legs together",
    "line-line": "two legs together",
    "line-ground": "a leg to earth",
    "line-neutral": "a leg to neutral",
}


@dataclass(frozen=True, slots=True)
class FaultCurrent:
    """One kind of fault at one place, on the legs where it is worst: amperes rms symmetrical, None where nothing limits
    it or none flows (``note`` says which), with the conductors tied and X/R of the loop (infinite where nothing damps
    it, or a converter holds it and ``note`` says so)."""

    kind: str
    amperes: float | None
    tied: tuple[str, ...]
    x_over_r: float | None
    note: str = ""
    kappa: float | None = None
    """Where several sources feed it under IEC practice: the sum of their first peaks over sqrt(2) times ``amperes``."""


TO_EARTH = frozenset({"line-ground", "line-neutral"})
"""Kinds that nobody can tell where the way back through earth or neutral is not known."""
TO_GROUND = "line-ground"
"""The kind that nobody can tell where an electrode on its way back is not known."""
ALIKE = 1e-8
"""Currents that differ by no more than this share are alike."""


class Deciding(NamedTuple):
    """The faults that decide at many places: A (not a number: none is known) and the number of their kind (-1: none);
    ``place`` by bus name."""

    place: dict[str, int]
    amperes: Floats
    kind: Ints


class WorstColumns:
    """One kind of fault at many buses, each on the conductors where it is worst.

    ``ties`` are the conductors that may be joined, each with its columns; ``factors`` the voltage factor of each bus;
    ``kappa`` gives, where several sources feed them, that of conductors.
    """

    def __init__(
        self,
        kind: str,
        ties: list[tuple[tuple[str, ...], TiedColumns]],
        factors: list[float],
        *,
        largest: bool,
        kappa: Callable[[tuple[str, ...]], Floats] | None = None,
    ) -> None:
        import numpy as np

        self.kind = kind
        self._ties = [(tied, columns.bare()) for tied, columns in ties]
        c = np.array(factors)
        most = ties[0][1].amperes * c
        worst = np.zeros(len(c), dtype=np.int64)
        for k, (_, columns) in enumerate(ties[1:], start=1):
            amperes = columns.amperes * c
            # Legs that are alike differ in the last digits only: the first of them is named.
            near = ALIKE * most
            beyond = amperes > most + near if largest else (amperes < most - near) & (amperes != 0.0)
            beyond |= np.isnan(most) & ~np.isnan(amperes)
            most = np.where(beyond, amperes, most)
            worst[beyond] = k
        self.amperes = array("d", most.tobytes())
        self._worst = array("b", worst.astype(np.int8).tobytes())
        ratios = np.array([columns.x_over_r for _, columns in ties])
        self._x_over_r = array("d", ratios[worst, np.arange(len(c))].tobytes())
        self._kappa: array[float] | None = None
        if kappa is not None:
            peaks = np.array([kappa(tied) for tied, _ in ties])
            self._kappa = array("d", peaks[worst, np.arange(len(c))].tobytes())

    def at(self, row: int, practice: str | None = None) -> FaultCurrent:
        """The fault at one bus; ``practice`` says how conductors are called."""
        tied, columns = self._ties[self._worst[row]]
        amperes, ratio = self.amperes[row], self._x_over_r[row]
        note, kappa = "", None if self._kappa is None else self._kappa[row]
        if amperes != amperes or amperes == 0.0:
            note = columns.why_nothing(row, [conductor_text(name, practice) for name in tied])
        return FaultCurrent(
            self.kind,
            None if amperes != amperes else amperes,
            tied,
            None if ratio != ratio else ratio,
            note,
            kappa if kappa == kappa else None,
        )


class Group(NamedTuple):
    """Buses with the same conductors and legs; at which of them the way back through earth and
    neutral is known, and that through electrodes too."""

    conductors: tuple[str, ...]
    legs: tuple[str, ...]
    buses: list[Bus]
    earth_known: Bools
    ground_known: Bools


class Alike:
    """The buses of a circuit whose faults can be told, by conductors and legs: ``at`` gives group and row by bus name,
    ``place`` the number among all of them."""

    def __init__(self, built: Built) -> None:
        import numpy as np

        found: dict[tuple[tuple[str, ...], tuple[str, ...]], list[Bus]] = {}
        for bus in built.network.buses:
            system = built.system_at.get(bus.name)
            if system is not None and bus.name not in built.unknown:
                found.setdefault((bus.conductors, system.legs), []).append(bus)
        self.groups: list[Group] = []
        self.at: dict[str, tuple[int, int]] = {}
        for (conductors, legs), buses in found.items():
            self.at |= {bus.name: (len(self.groups), row) for row, bus in enumerate(buses)}
            known = np.array([bus.name not in built.unknown_earth for bus in buses], dtype=np.bool_)
            ground = known & np.array([bus.name not in built.unknown_ground for bus in buses], dtype=np.bool_)
            self.groups.append(Group(conductors, legs, buses, known, ground))
        self.place = {name: k for k, name in enumerate(self.at)}


class FaultView:
    """The faults of one case by the names of the model."""

    def __init__(self, built: Built, study: FaultStudy | None, trouble: str | None, practice: str | None) -> None:
        self.built = built
        self.study = study
        self.trouble = trouble
        self.practice = practice
        self.mark = object()
        """Tells these faults from all others; what was worked out of them is kept with it, so that they can go."""
        self.worked: dict[str, Worked] = {}
        """The sheets of the faults that decide, by equipment, while nothing else that they say changes."""
        self._found: dict[str, dict[str, FaultCurrent]] = {}
        self._asked: tuple[list[str], Ints] | None = None
        """The names of equipment that were asked for together last, and their places."""

    @property
    def largest(self) -> bool:
        return self.built.case is Case.MAX

    # why not

    def reasons(self, name: str, *, entering: bool = False, kind: str | None = None) -> Reasons:
        """Why the faults at a piece of equipment (of one kind) are unknown; empty where they are known."""
        bus = self.bus(name, entering=entering)
        if bus is None:
            why = self.built.outside.get(f"{name} output") or self.built.outside.get(name)
            return why or (f"nothing feeds `{name}`",)
        return self.bus_reasons(bus, kind)

    def bus_reasons(self, bus: Bus, kind: str | None = None) -> Reasons:
        """The same by bus."""
        if self.trouble is not None:
            return (self.trouble,)
        why = self.built.unknown.get(bus.name, ())
        if why or kind not in TO_EARTH:
            return why
        earth = self.built.unknown_earth.get(bus.name, ())
        return earth if earth or kind != TO_GROUND else self.built.unknown_ground.get(bus.name, ())

    def bus(self, name: str, *, entering: bool = False) -> Bus | None:
        """The bus of a piece of equipment: its output, or its input."""
        if entering:
            return self.built.input_bus.get(name) or self.built.bus.get(name)
        return self.built.bus.get(name)

    # currents

    def at(self, name: str, *, entering: bool = False) -> dict[str, FaultCurrent]:
        """Every kind of fault that is known at a piece of equipment."""
        bus = self.bus(name, entering=entering)
        return self.at_bus(bus) if bus is not None else {}

    def at_bus(self, bus: Bus) -> dict[str, FaultCurrent]:
        """The same by bus."""
        if self.study is None:
            return {}
        found = self._found.get(bus.name)
        if found is None:
            group, row = self.alike.at.get(bus.name, (-1, 0))
            worst = self._worst[group] if group >= 0 else ()
            known = (columns for columns in worst if not self.bus_reasons(bus, columns.kind))
            found = {columns.kind: columns.at(row, self.practice) for columns in known}
            by = self.built.converter.get(bus.name)
            if by is not None:
                found = {kind: _held(fault, by) if fault.amperes else fault for kind, fault in found.items()}
            self._found[bus.name] = found
        return found

    def worst(self, name: str, *, entering: bool = False) -> FaultCurrent | None:
        """The fault that decides: the largest of all kinds, or the smallest; None where that is unknown."""
        bus = self.bus(name, entering=entering)
        return self.worst_at(bus) if bus is not None else None

    def worst_at(self, bus: Bus) -> FaultCurrent | None:
        """The same by bus. A kind that is unknown leaves the others to decide only if they are known to be more."""
        if self.study is None:
            return None
        place = self.deciding.place.get(bus.name)
        if place is None or self.deciding.kind[place] < 0:
            return None
        return self.at_bus(bus)[KINDS[self.deciding.kind[place]]]

    @cached_property
    def deciding(self) -> Deciding:
        """The fault that decides at every bus."""
        import numpy as np

        amperes, kinds = [np.zeros(0)], [np.zeros(0, dtype=np.int64)]
        alike = self.alike
        for group, worst in zip(alike.groups, self._worst, strict=self.study is not None):
            most, kind = np.full(len(group.buses), np.nan), np.full(len(group.buses), -1, dtype=np.int64)
            for columns in worst:
                here = np.array(columns.amperes)
                known = here > 0
                if columns.kind in TO_EARTH:
                    known &= group.ground_known if columns.kind == TO_GROUND else group.earth_known
                # Kinds that are alike differ in the last digits only: the first of them is named.
                beyond = here > most * (1 + ALIKE) if self.largest else here < most * (1 - ALIKE)
                taken = known & (beyond | (kind < 0))
                most[taken], kind[taken] = here[taken], KINDS.index(columns.kind)
            amperes.append(most)
            kinds.append(kind)
        return Deciding(alike.place, np.concatenate(amperes), np.concatenate(kinds))

    def deciding_at(self, names: Sequence[str]) -> tuple[Floats, Ints]:
        """The same at pieces of equipment, in their order: A (not a number: none is known) and number of the kind."""
        import numpy as np

        if self._asked is None or self._asked[0] != names:
            buses, place = self.built.bus, self.deciding.place
            at = [place.get(bus.name, -1) if (bus := buses.get(name)) is not None else -1 for name in names]
            self._asked = list(names), np.array(at, dtype=np.int64)
        at_bus = self._asked[1]
        amperes, kind = np.append(self.deciding.amperes, np.nan), np.append(self.deciding.kind, -1)
        return amperes[at_bus], kind[at_bus]

    @cached_property
    def ceilings(self) -> dict[str, str]:
        """By piece of equipment below a source that is taken as unlimited, that source."""
        ceiling = self.built.ceiling
        if not ceiling:
            return {}
        return {name: ceiling[bus.name] for name, bus in self.built.bus.items() if bus.name in ceiling}

    @property
    def alike(self) -> Alike:
        """The buses by what joins in their faults."""
        from wyeline_linter.studies.pair_columns import of_wiring

        return of_wiring(self.built, "fault places", lambda: Alike(self.built))

    @cached_property
    def _worst(self) -> list[list[WorstColumns]]:
        """Every kind at every bus, those that are alike solved together; each bus is read when asked for."""
        found: list[list[WorstColumns]] = []
        study = self.study
        for group in self.alike.groups if study is not None else ():
            assert study is not None
            places = study.places(group.buses)
            factors = [self.voltage_factor(bus) for bus in group.buses]
            kappa = partial(kappa_of, places, study.driven) if self.several else None
            found.append(
                [
                    WorstColumns(
                        kind, [(tied, places.tied(tied)) for tied in ties], factors, largest=self.largest, kappa=kappa
                    )
                    for kind, ties in _ties(group.conductors, group.legs)
                ]
            )
        if study is not None and self.several:
            vars(study).pop("driven", None)
        return found

    @property
    def several(self) -> bool:
        """Whether first peaks are sums over what feeds a fault."""
        return self.largest and peaks_add_up(self.practice, self.built.network)

    def voltage_factor(self, bus: Bus) -> float:
        """Voltage factor of IEC 60909-0 at the place of the fault; 1 in other practice."""
        if self.practice != "iec":
            return 1.0
        volts, tolerance = self.built.system_at[bus.name].nominal.line_v, self.built.tolerance_at(bus)
        return iec60909.c_max(volts, tolerance) if self.largest else iec60909.c_min(volts, tolerance)

    # what a current means for equipment

    def peak_a(self, fault: FaultCurrent) -> float | None:
        """First peak: IEC 60909-0 kappa, else half a cycle after the worst moment."""
        if fault.amperes is None or fault.x_over_r is None:
            return None
        if fault.kappa is not None and math.isfinite(fault.x_over_r):
            return fault.kappa * math.sqrt(2) * fault.amperes
        if self.practice == "iec":
            r_over_x = 1 / fault.x_over_r if fault.x_over_r > 0 else math.inf
            return iec60909.peak_current(fault.amperes, r_over_x)
        return fault.amperes * ansi.peak_factor(fault.x_over_r)

    def asymmetrical_a(self, fault: FaultCurrent) -> float | None:
        """rms current of the first half cycle with its direct part."""
        if fault.amperes is None or fault.x_over_r is None:
            return None
        return fault.amperes * ansi.rms_asymmetry_factor(fault.x_over_r)


def _held(fault: FaultCurrent, converter: str) -> FaultCurrent:
    """A fault whose current the control of a converter holds: its loop has no X over R, and no decay can be told from
    one. Without any the first peak is the most that it can be."""
    note = f"at most: `{converter}` holds the current, and no X/R can be told"
    return replace(fault, x_over_r=math.inf, note=note)


def _ties(conductors: tuple[str, ...], legs: tuple[str, ...]) -> list[tuple[str, list[tuple[str, ...]]]]:
    """The conductors that each kind of fault joins, every leg and pair of them."""
    ties: list[tuple[str, list[tuple[str, ...]]]] = []
    if len(legs) == 3:
        ties.append(("three-phase", [legs]))
    if len(legs) > 1:
        ties.append(("line-line", list(combinations(legs, 2))))
    ties.append(("line-ground", [(leg, PROTECTIVE) for leg in legs]))
    if NEUTRAL in conductors:
        ties.append(("line-neutral", [(leg, NEUTRAL) for leg in legs]))
    return ties
