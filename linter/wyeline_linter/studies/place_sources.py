"""Sources and their earthing as elements of the circuit."""

from __future__ import annotations

import cmath
import math
from itertools import combinations

from wyeline_grammar.linking import Equipment, Model
from wyeline_grammar.model import Body
from wyeline_grammar.notation import VoltageForm
from wyeline_linter.circuit import EARTH, Bus, Network
from wyeline_linter.circuit.sequences import phase_matrix
from wyeline_linter.derive import Derivation
from wyeline_linter.earthing import Arrangement, EarthingKind
from wyeline_linter.network import has_bypass
from wyeline_linter.studies.source_impedance import (
    SourceData,
    converter_limit_a,
    drives_neutral,
    is_three_phase,
    line_v,
)
from wyeline_linter.systems import NEUTRAL, Known, System

PROTECTIVE = "G"
"""Name of the protective conductor's node at every bus."""
LEAST_OHM = 1e-9


def place_source(
    net: Network, name: str, bus: Bus, system: System, data: SourceData, degrees: float = 0.0
) -> int | None:
    """Put the electromotive forces of a source on its bus; returns the node of its star point, if it has one inside.

    ``degrees`` turns a machine that is synchronised to another source.
    """
    turn = cmath.rect(1.0, math.radians(degrees))
    z1 = data.z1 or 0j
    z2 = z1 if data.z2 is None else data.z2
    z0 = z1 if data.z0 is None else data.z0
    form = system.nominal.form
    if len(system.legs) == 3:
        return _three_legs(
            net, name, bus, system, (z1, z2, z0), turn, middle=data.z_middle if form is VoltageForm.HIGH_LEG4 else None
        )
    if form is VoltageForm.SPLIT3 and system.has_neutral:
        half = [(system.potential(leg) - system.potential(NEUTRAL)) * turn for leg in system.legs]
        net.coupled_source(
            name,
            (bus[system.legs[0]], bus[NEUTRAL]),
            (bus[NEUTRAL], bus[system.legs[1]]),
            (half[0], -half[1]),
            _halves(z1, data.z0),
        )
        return None
    if len(system.legs) == 2 and system.has_neutral:
        for leg in system.legs:
            e = (system.potential(leg) - system.potential(NEUTRAL)) * turn
            net.source(f"{name} {leg}", (bus[leg], bus[NEUTRAL]), e, z1 / 2)
        return None
    first, last = system.legs[0], NEUTRAL if system.has_neutral else system.legs[-1]
    net.source(name, (bus[first], bus[last]), (system.potential(first) - system.potential(last)) * turn, z1)
    return None


def source_ohm(name: str, system: System, data: SourceData) -> dict[str, tuple[complex, ...]]:
    """The impedances that :func:`place_source` gives to the sources of a name, by the names of these."""
    z1 = data.z1 or 0j
    if len(system.legs) == 3:
        z2 = z1 if data.z2 is None else data.z2
        star = drives_neutral(system) and system.nominal.form is not VoltageForm.HIGH_LEG4
        z0 = z1 if data.z0 is None or not star else data.z0
        own = {name: phase_matrix(z0, z1, z2)}
        if system.nominal.form is VoltageForm.HIGH_LEG4:
            own[f"{name} middle"] = (data.z_middle,)
        return own
    if system.nominal.form is VoltageForm.SPLIT3 and system.has_neutral:
        return {name: _halves(z1, data.z0)}
    if len(system.legs) == 2 and system.has_neutral:
        return {f"{name} {leg}": (z1 / 2,) for leg in system.legs}
    return {name: (z1,)}


def _halves(z1: complex, own: complex | None) -> tuple[complex, ...]:
    """Half against half of a centre-tapped supply: `own` at one half alone; both in series give the whole loop."""
    own = complex(1.5 * z1.real, 1.2 * z1.imag) / 4 if own is None else own
    shared = z1 / 2 - own
    return own, shared, shared, own


def _three_legs(
    net: Network,
    name: str,
    bus: Bus,
    system: System,
    z: tuple[complex, complex, complex],
    turn: complex,
    *,
    middle: complex | None,
) -> int | None:
    legs = system.legs if system.rotation >= 0 else (system.legs[0], system.legs[2], system.legs[1])
    centre = sum(system.potential(leg) for leg in legs) / 3
    star: int | None = None
    if middle is not None:
        low = [leg for leg in system.legs if leg != system.high_leg]
        tap = net.inner_node(bus[NEUTRAL])
        net.core(f"{name} midpoint", (bus[low[0]], tap), ((tap, bus[low[1]]),), (1.0,), 0j, (0j,))
        net.source(f"{name} middle", (tap, bus[NEUTRAL]), 0j, middle)
    elif system.has_neutral:
        star = bus[NEUTRAL]
    elif drives_neutral(system):
        star = net.inner_node(bus[legs[0]])
    e = (system.potential(legs[0]) - centre) * turn
    net.three_phase_source(name, bus.pick(legs), star, e, z[0], z[1], z[2])
    return None if star is None or system.has_neutral else star


def place_earthing(
    net: Network,
    equipment: Equipment,
    bus: Bus,
    system: System,
    star: int | None,
    *,
    size: complex | None,
    electrode_ohm: float | None = None,
    source_ohm: float | None = None,
) -> None:
    """Tie a new system to earth the way it says: its protective conductor always, a live conductor where it is earthed.

    ``size`` is the impedance of an earthing resistor or reactor in ohm, ``electrode_ohm`` the resistance of the
    protective conductor's own electrode (TT), ``source_ohm`` that of the electrode at the source (R_B): in TN both
    conductors are tied together and share it.
    """
    name, earthing = equipment.name, system.earthing
    tied = bus[earthing.conductor] if earthing.conductor in bus.conductors else star
    if earthing.kind is EarthingKind.NONE or earthing.conductor is None:
        tied = None
    solid, apart = tied is not None and earthing.kind is EarthingKind.SOLID, is_tt(system)
    to_earth = electrode_ohm if apart else source_ohm if solid else None
    if to_earth:
        net.impedance(f"{name} earth", (bus[PROTECTIVE], EARTH), complex(to_earth))
    else:
        net.link(f"{name} earth", bus[PROTECTIVE], EARTH)
    if tied is None:
        return
    if solid and apart and source_ohm:
        net.impedance(f"{name} source earth", (tied, EARTH), complex(source_ohm))
    elif solid:
        net.link(f"{name} bond", tied, EARTH if apart or not to_earth else bus[PROTECTIVE])
    elif size is not None:
        net.impedance(f"{name} grounding impedance", (tied, EARTH), size if abs(size) > 0 else complex(LEAST_OHM))


def earthing_ohm(equipment: Equipment, system: System, declared: Body | None = None) -> complex | None:
    """Impedance of an earthing resistor or reactor from its ohms, or from the current it lets through; None without."""
    for key, unit in (("ground-resistor", 1.0 + 0j), ("ground-reactor", 1j)):
        fact = equipment.body.facts.get(key)
        if fact is None and declared is not None:
            fact = declared.facts.get(key)
        if fact is None or not isinstance(fact.value.data, float | int):
            continue
        if fact.value.dimension == "current":
            return unit * line_v(system) / math.sqrt(3.0) / fact.number
        return unit * fact.number
    return None


def place_converter(net: Network, equipment: Equipment, system: System, bus: Bus, c_factor: float) -> bool:
    """Put the fixed fault current of an inverter that follows the grid on its bus; False where none is stated.

    Currents of the whole network are read times the voltage factor at the fault, which raises the voltage of sources
    and no current that a converter limits (IEC 60909-0:2016, from memory): it is placed over ``c_factor``.
    """
    limit = converter_limit_a(equipment, system)
    if limit is None:
        return False
    legs = system.legs if is_three_phase(system) else (system.conductors[0], system.conductors[1])
    net.fault_current_source(equipment.name, bus.pick(legs), limit / c_factor)
    return True


def bypass_untold(model: Model, derivation: Derivation, ups: Equipment) -> bool:
    """Whether a UPS could go over to a bypass inside it, since it gives the voltage that it gets, and no feeder to its
    bypass is written."""
    state = derivation.states.get(ups.name)
    arriving, made = (state.arriving, state.system) if state is not None else (None, None)
    if has_bypass(model, ups) or not isinstance(arriving, Known) or not isinstance(made, Known):
        return False
    a, b = arriving.system, made.system
    if a.frequency_hz != b.frequency_hz or not set(b.conductors) <= set(a.conductors):
        return False
    return all(math.isclose(a.distance(x, y), b.distance(x, y), rel_tol=0.01) for x, y in combinations(b.conductors, 2))


def is_tt(system: System) -> bool:
    """Whether a fault to earth returns through earth electrodes."""
    return system.earthing.arrangement is Arrangement.TT
