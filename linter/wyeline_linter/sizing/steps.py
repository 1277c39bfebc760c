"""Wires sized step by step: the smallest that serves, and at every enlargement what asked for it and by which row."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import NamedTuple

from wyeline_linter.conductor_sizes import area_mm2, standard_sizes
from wyeline_linter.conductors import ConduitMaterial, Material
from wyeline_linter.grounding_conductors import (
    bonding_jumper,
    equipment_ground,
    equipment_ground_enlarged,
    protective_conductor,
)
from wyeline_linter.protection.ampacities import Carries, Laid, carries, largest_device_a, small_wire_limit_a
from wyeline_linter.standard_ratings import DeviceKind
from wyeline_linter.tables import Basis, NotListed

MOST_SETS = 12
LARGEST_SET = {"us": "500 kcmil", "iec": "240 mm2"}
"""Above this size wires run in parallel sets (common practice, no source: larger ones are hard to pull and bend)."""
SMALLEST = {"us": {"Cu": "14", "Al": "12"}, "iec": {"Cu": "1.5 mm2", "Al": "16 mm2"}}
"""Smallest wires of a power circuit (NEC 310.3(A); IEC 60364-5-52 Table 52.2, from memory)."""
_SLACK = 1e-6


class Enlarged(NamedTuple):
    """One step: ``governed`` is the reason in one word, ``text`` says it with its numbers and table rows."""

    governed: str
    sets: int
    size: str
    text: str


class Tripping(NamedTuple):
    """The trip that the smallest earth fault has to reach: ``amps`` at the far end for (sets, size), of ``trip_a``.

    ``needed`` says what trips from there, and by which row; ``out_of_reach`` what to do where no wires reach it.
    """

    amps: Callable[[int, str], float]
    trip_a: float
    needed: str
    out_of_reach: str

    def trips(self, sets: int, size: str) -> bool:
        """Whether the device trips on it."""
        return self.amps(sets, size) >= self.trip_a


class Faults(NamedTuple):
    """What faults ask of wires: ``withstand_mm2`` is the least area of all sets together that bears the largest until
    its device clears it, ``tripping`` the smallest to earth. None: not known, or nothing."""

    withstand_mm2: float | None = None
    tripping: Tripping | None = None


NO_FAULTS = Faults()


class Demand(NamedTuple):
    """What wires are sized for.

    ``device_a`` protects them (0: none decides), ``design_a`` flows, ``sizing_a`` is the code's figure before factors;
    ``next_size_up`` as in NEC 240.4(B). ``exempt``: the device may exceed the ampacity (motors, units), so that only
    the load decides. ``drop`` gives the voltage drop in percent for (sets, size), against ``drop_limit``.
    ``faults`` is what faults ask of the wires. ``least_a`` is what a tap rule asks of them whatever their load,
    ``least_why`` says which. ``relief_a`` is the ampacity that is enough for the
    device of a dwelling unit (0: none), ``relief_why`` says of what. ``neutral_a`` flows in a neutral as large as a leg
    that carries third harmonics (0: none does).
    """

    device_a: float
    kind: DeviceKind = "breaker"
    design_a: float = 0.0
    sizing_a: float = 0.0
    next_size_up: bool = True
    exempt: bool = False
    drop: Callable[[int, str], float | None] | None = None
    drop_limit: float = 0.0
    faults: Faults = NO_FAULTS
    least_sets: int = 1
    least_a: float = 0.0
    least_why: str = ""
    relief_a: float = 0.0
    relief_why: str = ""
    neutral_a: float = 0.0


class Sized(NamedTuple):
    """Wires that serve. ``needed`` is the size that ampacity asks for, before drop and fault enlarged it."""

    sets: int
    size: str
    needed: str
    carries: Carries
    steps: tuple[Enlarged, ...] = ()


@lru_cache(maxsize=64)
def _usual_sizes(tables: Basis, metal: Material) -> tuple[str, ...]:
    """The sizes that power circuits are pulled with, smallest first."""
    practice = tables.practice
    low = area_mm2(SMALLEST[practice][metal]) * (1 - _SLACK)
    high = area_mm2(LARGEST_SET[practice]) * (1 + _SLACK)
    return tuple(s for s in standard_sizes(tables) if low <= area_mm2(s) <= high)


class _Search:
    def __init__(
        self, tables: Basis, metal: Material, insulation_c: float, cable_60: bool, laid: Laid, want: Demand
    ) -> None:
        self.tables, self.metal, self.laid, self.want = tables, metal, laid, want
        self.insulation_c, self.cable_60 = insulation_c, cable_60
        self.sizes = _usual_sizes(tables, metal)

    def at(self, sets: int, size: str) -> Carries | None:
        found = carries(self.tables, size, self.metal, self.insulation_c, self.cable_60, sets, self.laid)
        return None if isinstance(found, NotListed) else found

    def device_fits(self, amps: float) -> bool:
        want = self.want
        if not want.device_a or want.exempt:
            return True
        if want.relief_a:
            return amps >= want.relief_a * (1 - _SLACK)
        largest = largest_device_a(self.tables, amps, want.kind, next_size_up=want.next_size_up)
        return want.device_a <= largest * (1 + _SLACK)

    def stages(self, sets: int) -> list[tuple[str, Callable[[str, Carries], bool], Callable[[Carries], str]]]:
        """Every requirement in its order: a reason, whether a size meets it, and the words for the step."""
        want, tables = self.want, self.tables
        found: list[tuple[str, Callable[[str, Carries], bool], Callable[[Carries], str]]] = [
            (
                "load",
                lambda _, c: c.plain_a >= want.sizing_a - _SLACK,
                lambda c: f"carries {c.plain_a:.4g} A for the {want.sizing_a:.4g} A to size by ({c.table_words})",
            ),
            (
                "device",
                lambda s, c: (
                    self.device_fits(min(c.free_a, c.best_lugs_a))
                    and (want.exempt or want.device_a <= small_wire_limit_a(tables, s, self.metal, sets) + _SLACK)
                ),
                lambda c: (
                    f"carries {want.relief_a:.4g} A, {want.relief_why} ({c.table_words})"
                    if want.relief_a
                    else f"is protected by the {want.device_a:g} A device ({c.table_words})"
                ),
            ),
        ]
        if tables.practice == "us":
            found.append(
                (
                    "terminals",
                    lambda _, c: self.device_fits(min(c.free_a, c.lugs_a)) and c.lugs_a >= want.sizing_a - _SLACK,
                    lambda c: f"carries {c.lugs_a:.4g} A at terminals for {c.lug_c:g} degC ({c.looked[-1]})",
                )
            )
        found += [
            (
                "ambient",
                lambda _, c: self.device_fits(min(c.warm_a, c.lugs_a)) and c.warm_a >= want.design_a - _SLACK,
                lambda c: f"still carries {c.warm_a:.4g} A at {self.laid.ambient_c:g} degC around it ({c.looked[1]})",
            ),
            (
                "bundling",
                lambda _, c: self.device_fits(c.amps) and c.bundled_a >= want.design_a - _SLACK,
                lambda c: f"still carries {c.bundled_a:.4g} A {self._beside(c)}",
            ),
        ]
        if want.neutral_a:
            found.append(
                (
                    "neutral",
                    lambda _, c: c.amps >= want.neutral_a - _SLACK,
                    lambda c: f"carries {c.amps:.4g} A, and its neutral {want.neutral_a:.4g} A with the third harmonic",
                )
            )
        if want.least_a:
            found.append(
                (
                    "tap",
                    lambda _, c: c.amps >= want.least_a * (1 - _SLACK),
                    lambda c: f"carries {c.amps:.4g} A, and not less than {want.least_a:.4g} A: {want.least_why}",
                )
            )
        if tables.practice == "us" and sets > 1:
            found.append(
                (
                    "parallel rule",
                    lambda s, _: area_mm2(s) >= area_mm2("1/0") * (1 - _SLACK),
                    lambda _: "is the smallest that may run in parallel, 1/0 (NEC 310.10(G))",
                )
            )
        return found

    def _beside(self, c: Carries) -> str:
        where = "with its third harmonic" if self.laid.third_percent else "beside the others"
        return f"{where} ({' x '.join(map(str, c.beside))})"

    def run(self) -> Sized | NotListed:
        steps: list[Enlarged] = []
        for sets in range(self.want.least_sets, MOST_SETS + 1):
            found = self._with(sets, steps)
            if found is not None:
                return found
            if sets < MOST_SETS:
                most = LARGEST_SET[self.tables.practice]
                text = f"{sets + 1} sets: {sets} of {most}, the largest usually pulled, would not serve"
                steps = [Enlarged("parallel sets", sets + 1, "", text)]
        return NotListed(f"not even {MOST_SETS} sets of {self.sizes[-1]} serve {self.want.device_a:g} A")

    def _with(self, sets: int, before: list[Enlarged]) -> Sized | None:
        steps = list(before)
        index = 0
        for governed, meets, words in self.stages(sets):
            start = index
            while index < len(self.sizes):
                here = self.at(sets, self.sizes[index])
                if here is not None and meets(self.sizes[index], here):
                    break
                index += 1
            if index == len(self.sizes):
                return None
            if index != start or (governed == "load" and self.want.sizing_a > 0):
                here = self.at(sets, self.sizes[index])
                assert here is not None
                steps.append(Enlarged(governed, sets, self.sizes[index], words(here)))
        needed = self.sizes[index]
        after = self._drop(sets, index, steps)
        if after is None:
            return None
        index = after
        least = self.want.faults.withstand_mm2
        if least is not None:
            start = index
            while index < len(self.sizes) and sets * area_mm2(self.sizes[index]) < least * (1 - _SLACK):
                index += 1
            if index == len(self.sizes):
                return None
            if index != start:
                text = f"has the {least:.3g} mm2 that a fault asks for until the device clears it (S = I sqrt(t) / k)"
                steps.append(Enlarged("fault withstand", sets, self.sizes[index], text))
        index = self._tripping(sets, index, steps)
        final = self.at(sets, self.sizes[index])
        assert final is not None
        return Sized(sets, self.sizes[index], needed, final, tuple(steps))

    def _drop(self, sets: int, index: int, steps: list[Enlarged]) -> int | None:
        want = self.want
        if want.drop is None or want.drop_limit <= 0:
            return index
        start = index
        lost = want.drop(sets, self.sizes[index])
        if lost is None:
            return index
        while lost is not None and lost > want.drop_limit * (1 + _SLACK):
            index += 1
            if index == len(self.sizes):
                return None
            lost = want.drop(sets, self.sizes[index])
        if index != start:
            text = f"loses {lost:.2f} % of the voltage, target {want.drop_limit:g} %"
            steps.append(Enlarged("drop", sets, self.sizes[index], text))
        return index

    def _tripping(self, sets: int, index: int, steps: list[Enlarged]) -> int:
        """Wires that let the device trip on an earth fault; where none of the sizes would, nothing grows for it."""
        asked = self.want.faults.tripping
        if asked is None or not asked.trips(sets, self.sizes[-1]):
            return index
        start = index
        while not asked.trips(sets, self.sizes[index]):
            index += 1
        if index != start:
            amps = asked.amps(sets, self.sizes[index])
            text = f"lets an earth fault at the far end draw {amps:.4g} A, {asked.needed}"
            steps.append(Enlarged("earth fault", sets, self.sizes[index], text))
        return index


@lru_cache(maxsize=256)
def _next_smaller(tables: Basis, metal: Material, size: str) -> str | None:
    """The largest of the usual sizes below a size; None where there is none."""
    least = area_mm2(size) * (1 - _SLACK)
    return next((s for s in reversed(_usual_sizes(tables, metal)) if area_mm2(s) < least), None)


def serves(
    tables: Basis,
    metal: Material,
    insulation_c: float,
    laid: Laid,
    want: Demand,
    sets: int,
    size: str,
    *,
    cable_60: bool = False,
) -> bool:
    """Whether wires of a size in so many sets meet every requirement."""
    search = _Search(tables, metal, insulation_c, cable_60, laid, want)
    here = search.at(sets, size)
    if here is None or not all(meets(size, here) for _, meets, _ in search.stages(sets)):
        return False
    lost = want.drop(sets, size) if want.drop is not None and want.drop_limit > 0 else None
    if lost is not None and lost > want.drop_limit * (1 + _SLACK):
        return False
    least, tripping = want.faults
    if tripping is not None and not tripping.trips(sets, size) and tripping.trips(sets, search.sizes[-1]):
        return False
    return least is None or sets * area_mm2(size) >= least * (1 - _SLACK)


def generous(
    tables: Basis,
    metal: Material,
    insulation_c: float,
    laid: Laid,
    want: Demand,
    sets: int,
    size: str,
    *,
    cable_60: bool = False,
) -> bool:
    """Whether the next smaller size in as many sets carries what is wanted too; drop and fault do not count."""
    smaller = _next_smaller(tables, metal, size)
    if smaller is None:
        return False
    search = _Search(tables, metal, insulation_c, cable_60, laid, want)
    here = search.at(sets, smaller)
    if here is None or here.plain_a < want.sizing_a - _SLACK:  # what most wires fail by is looked at first
        return False
    return all(meets(smaller, here) for _, meets, _ in search.stages(sets))


def sized(
    tables: Basis, metal: Material, insulation_c: float, laid: Laid, want: Demand, *, cable_60: bool = False
) -> Sized | NotListed:
    """The smallest wires that serve, and why each step up was needed."""
    return _Search(tables, metal, insulation_c, cable_60, laid, want).run()


class Ground(NamedTuple):
    """A ground beside sized wires: its size in every set, and why."""

    size: str
    text: str


def ground_for(tables: Basis, device_a: float, metal: Material, found: Sized) -> Ground | NotListed:
    """The equipment ground or PE of sized wires, enlarged in proportion where drop or fault enlarged them."""
    if tables.practice == "iec":
        made = protective_conductor(tables, found.size, material=metal)
        if isinstance(made, NotListed):
            return made
        return Ground(made.size.value, f"PE {made.size.value}: {made.least_mm2:g} mm2 at the least ({made.looked[0]})")
    plain = equipment_ground(tables, device_a, metal)
    if isinstance(plain, NotListed):
        return plain
    if area_mm2(plain.value) > area_mm2(found.size):
        # Never larger than the wires it guards (NEC 250.122(A)).
        return Ground(found.size, f"ground {found.size}: as large as the wires; {plain} asks no more of it")
    if found.size == found.needed:
        return Ground(plain.value, f"ground {plain}")
    more = equipment_ground_enlarged(tables, device_a, metal, phase_needed=found.needed, phase_installed=found.size)
    if isinstance(more, NotListed):
        return more
    return Ground(
        more.size.value,
        f"ground {more.table_size}, enlarged {more.ratio:.2f} times like the wires to {more.size.value} (250.122(B))",
    )


def jumper_for(tables: Basis, metal: Material, found: Sized) -> Ground | NotListed:
    """The supply-side bonding jumper in each raceway behind a transformer (NEC 250.102(C), 250.30(A)(2))."""
    least = bonding_jumper(tables, found.size, 1, metal, metal)
    return least if isinstance(least, NotListed) else Ground(least.value, f"bonding jumper {least}")


def drop_percent(
    tables: Basis,
    metal: Material,
    *,
    amps: float,
    length_m: float,
    volts: float,
    legs: int,
    pf: float,
    conduit: ConduitMaterial,
    frequency_hz: float | None = None,
) -> Callable[[int, str], float | None]:
    """The hand formula's voltage drop in percent of ``volts`` for (sets, size) (NEC Chapter 9 Table 9; IEC Annex G)."""
    from wyeline_linter.conductors import impedance, service_impedance, voltage_drop_v

    def lost(sets: int, size: str) -> float | None:
        if tables.practice == "us":
            z = impedance(tables, size, metal, temperature_c=75.0, conduit=conduit, frequency_hz=frequency_hz)
        else:
            z = service_impedance(tables, size, metal, frequency_hz)
        if isinstance(z, NotListed) or not volts:
            return None
        circuit = "three-phase" if legs == 3 else "two-wire"
        drop = voltage_drop_v(z, amps=amps, length_m=length_m, power_factor=pf, circuit=circuit, sets=sets)  # type: ignore[arg-type]
        return 100 * drop / volts

    return lost
