"""Loads, inverters and motors on the nodes of the circuit.

In the load flow every load counts by the part that its source counts of it (demand factors, over all that hangs on the
source): one state in which currents add up. ``judged`` adds what a single feeder has to carry beyond that. Motors feed
a fault with all that is connected.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Model
from wyeline_grammar.model import Body
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.circuit import ansi
from wyeline_linter.circuit.nameplate import from_magnitude
from wyeline_linter.derive import Derivation
from wyeline_linter.loads.as_given import told_in_amperes
from wyeline_linter.loads.conductors_of_loads import spread
from wyeline_linter.loads.leaf_loads import LeafLoad
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.nameplate import rated_near_v
from wyeline_linter.network import Network as Connectivity
from wyeline_linter.network import follows_grid
from wyeline_linter.studies.case import Assumption, Case
from wyeline_linter.studies.transformer_impedance import x_over_r

if TYPE_CHECKING:
    from wyeline_linter.studies.built import Built
    from wyeline_linter.studies.load_pieces import LoadPieces

CONDUCTORS = ("A", "B", "C", "N")
DRIVES = frozenset({"VFD"})
"""Starters behind which a motor adds nothing to a fault: current cannot flow back through a rectifier."""
MOTOR_X_OVER_R_SMALL, MOTOR_X_OVER_R_LARGE = 5.0, 10.0
"""X/R of motors below and from 50 hp where it is not stated (middle of the curves of IEEE Std 141, from memory)."""
IEC_STARTING_RATIO = 5.0
"""Locked-rotor over rated current where it is not stated (IEC 60909-0, groups of low-voltage motors, from memory)."""


def place_loads(
    made: Built, model: Model, network: Connectivity, loads: Iterable[LeafLoad] | LoadPieces, derivation: Derivation
) -> None:
    """Put running loads and inverters on their buses for a load flow, running motors for the largest fault."""
    if made.case is Case.FLOW:
        from wyeline_linter.studies.injections import injected

        made.network.loads = injected(made, loads)
        inverters = made.network.wiring.get("inverters")
        if not isinstance(inverters, tuple):
            inverters = tuple(name for name in network.root if follows_grid(model.equipment[name]))
            made.network.wiring["inverters"] = inverters
        for name in inverters:
            _place_inverter(made, model.equipment[name])
    elif made.case is Case.MAX:
        motors: dict[tuple[str, str], list[LeafLoad]] = {}
        for load in loads:
            if load.machine:
                motors.setdefault((load.element, load.place), []).append(load)
        assumed: list[tuple[float, Assumption]] = []
        for (name, place), parts in motors.items():
            assumed += _place_motor(made, model.equipment[name], place, parts, derivation)
        assumed.sort(key=lambda each: -each[0])  # a sheet shows the first ones: those that matter
        for name in dict.fromkeys(load.element for load in loads if load.category == MEASURED):
            text = f"that what was measured at `{name}` has no motors that feed a fault, but for those that are written"
            # It concerns every fault, so its subject is no place of the circuit.
            made.assumed.append(Assumption(f"measured at {name}", text, model.equipment[name].place))
        made.assumed += [assumption for _, assumption in assumed]


def _place_inverter(made: Built, equipment: Equipment) -> None:
    power, bus = equipment.body.number("power"), made.bus.get(equipment.name)
    if power is None or bus is None:
        return
    system = made.system_at[bus.name]
    for k, (i, j, part) in enumerate(spread(system, system.legs, complex(-power, 0.0)) or ()):
        pair = CONDUCTORS[i], CONDUCTORS[j]
        made.network.load(f"{equipment.name} {k}", bus.pair(pair), part, system.distance(*pair))


def _place_motor(
    made: Built, equipment: Equipment, place: str, parts: list[LeafLoad], derivation: Derivation
) -> list[tuple[float, Assumption]]:
    """Put a machine on its bus. Returns what is assumed of it, with its VA."""
    bus = made.bus.get(equipment.name)
    body = body_of(equipment, place)
    if bus is None or not adds_to_faults(body):
        return []
    nodes: tuple[str, ...] = tuple(dict.fromkeys(c for load in parts for c in load.pair))
    if any(c not in bus.conductors for c in nodes):
        return []
    name = f"{equipment.name} {place}" if place else equipment.name
    va = sum(abs(load.va) for load in parts)
    volts = made.system_at[bus.name].distance(nodes[0], nodes[1])
    plate = None if place else derivation.stated(equipment.primary)
    hp_alone = derivation.practice == "us" and parts[0].category == "motor"
    rated_v = rated_near_v(plate, volts, nema=hp_alone)
    if told_in_amperes(body, "" if place else equipment.kind):
        va *= rated_v / volts
    made.network.motor(name, bus.pick(nodes), motor_ohm(body, va, rated_v, len(nodes), derivation.practice))
    if "subtransient" in body.facts or "lra" in body.facts:
        return []
    what = "the motor " if parts[0].category == "motor" else ""
    counted = "" if what else ", counted as a running motor"
    text = f"the reactance of {what}`{name}` ({va / 1000:.3g} kVA){counted}, by its size (no subtransient, no lra)"
    return [(va, Assumption(name, text, equipment.place))]


def adds_to_faults(body: Body) -> bool:
    """Whether a running motor feeds a fault: not from behind a drive that cannot feed back."""
    return body.text("starter") not in DRIVES or "regenerative" in body.flags


def motor_ohm(body: Body, va: float, volts: float, conductors: int, practice: str | None) -> complex:
    """Impedance of a running motor as a fault sees it in its first cycle, ohm per phase (or across its two wires), from
    its VA at its rated volts.

    IEEE Std 141 by size under US practice, IEC 60909-0 by its locked-rotor current under IEC practice.
    """
    base = volts**2 / va
    lra = body.number("lra")
    rated_a = va / volts / (math.sqrt(3.0) if conductors == 3 else 1.0)
    ratio = x_over_r(body)
    if practice == "iec":
        starting = lra / rated_a if lra is not None else IEC_STARTING_RATIO
        return from_magnitude(base / starting, ratio if ratio is not None else 1 / 0.42)
    hp = (body.number("power") or va) / HORSEPOWER_W
    subtransient = body.number("subtransient")
    if subtransient is None and lra is not None:
        subtransient = (body.number("fla") or rated_a) / lra
    usual = MOTOR_X_OVER_R_LARGE if hp >= ansi.LARGE_MOTOR_HP else MOTOR_X_OVER_R_SMALL
    return from_magnitude(ansi.motor_first_cycle_pu(hp, subtransient) * base, ratio if ratio is not None else usual)


def body_of(equipment: Equipment, place: str) -> Body:
    """The phrases of a load: of a circuit of the board, or of the equipment itself."""
    for placed in equipment.circuits if place else ():
        if placed.key == place:
            return placed.circuit.body
    return equipment.body
