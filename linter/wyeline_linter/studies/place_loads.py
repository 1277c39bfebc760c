"""Loads and motors on the nodes of the circuit, from the book of loads of a switch state."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Model
from wyeline_grammar.model import Body
from wyeline_linter.circuit import ansi
from wyeline_linter.circuit.nameplate import from_magnitude
from wyeline_linter.derive import Derivation
from wyeline_linter.loads.conductors_of_loads import spread
from wyeline_linter.loads.leaves import Leaf
from wyeline_linter.network import Network as Connectivity
from wyeline_linter.network import follows_grid
from wyeline_linter.studies.case import Assumption, Case
from wyeline_linter.studies.transformer_impedance import x_over_r
from wyeline_linter.systems import System
from wyeline_grammar.units import HORSEPOWER_W

if TYPE_CHECKING:
    from wyeline_linter.circuit import Bus
    from wyeline_linter.loads.rollup import LoadBook
    from wyeline_linter.studies.build import Built

CONDUCTORS = ("A", "B", "C", "N")
SOFT_STARTERS = frozenset({"VFD"})
"""Starters behind which a motor adds nothing to a fault: current cannot flow back through a rectifier."""
MOTOR_X_OVER_R_SMALL, MOTOR_X_OVER_R_LARGE = 5.0, 10.0
"""X/R of motors below and from 50 hp where it is not stated (middle of the curves of IEEE Std 141, from memory)."""
IEC_STARTING_RATIO = 5.0
"""Locked-rotor over rated current where it is not stated (IEC 60909-0 for groups of low-voltage motors, from memory)."""


def place_loads(
    made: Built, model: Model, network: Connectivity, derivation: Derivation, book: LoadBook
) -> None:
    """Put every running load, inverter and motor on its bus: loads for a load flow, motors for the largest fault."""
    running = _Running(model, network, book)
    for name in network.order:
        equipment = model.equipment.get(name)
        if equipment is None or not running.on(name):
            continue
        bus = made.input_bus.get(name) or made.bus.get(name)
        if bus is None:
            continue
        system = made.system_at[bus.name]
        if made.case is Case.FLOW:
            _loads_at(made, equipment, bus, system, book, running)
        elif made.case is Case.MAX:
            for leaf in running.leaves(name):
                _motor(made, equipment, leaf, bus, system, derivation.practice)


class _Running:
    """Which loads run in a switch state, and at what share of their full value.

    Loads count at their connected value, without the demand factors of a code; a factor that is stated, a share that a
    scenario gives and what never runs together are heeded.
    """

    def __init__(self, model: Model, network: Connectivity, book: LoadBook) -> None:
        self.model, self.network, self.book = model, network, book
        self.share: dict[str, float] = {}
        self.factor: dict[str, float] = {}
        self.out: set[str] = set()
        scale = dict(network.state.scale)
        for name in network.order:
            equipment = model.equipment.get(name)
            if equipment is None:
                continue
            above = network.supplier.get(name)
            feeder = network.supply.get(name)
            share = self.share.get(above, 1.0) if above is not None else 1.0
            share *= scale.get(name, scale.get(feeder.key, 1.0) if feeder is not None else 1.0)
            if above is None and name in book.nodes:
                self.out |= book.left_out(name)
            gone = any(flag in ("future", "demolish") for flag in equipment.body.flags) or (
                feeder is not None and any(flag in ("future", "demolish") for flag in feeder.body.flags)
            )
            shed = name in network.state.shed or (feeder is not None and feeder.key in network.state.shed)
            self.share[name] = 0.0 if gone or shed else share
            self.factor[name] = self._factor(equipment, feeder.body if feeder is not None else None, above)

    def _factor(self, equipment: Equipment, feeder: Body | None, above: str | None) -> float:
        for key in ("factor", "diversity"):
            value = equipment.body.number(key)
            if value is not None:
                return value
        value = feeder.number("factor") if feeder is not None else None
        if value is not None:
            return value
        return self.factor.get(above, 1.0) if above is not None else 1.0

    def on(self, name: str) -> bool:
        return self.share.get(name, 0.0) > 0.0 and name not in self.out

    def leaves(self, name: str) -> tuple[Leaf, ...]:
        node = self.book.nodes.get(name)
        return node.leaves if node is not None else ()

    def weight(self, leaf: Leaf, name: str) -> float:
        own = leaf.key.factor if leaf.key.factor is not None else self.factor.get(name, 1.0)
        return own * self.share[name]


def _loads_at(
    made: Built, equipment: Equipment, bus: Bus, system: System, book: LoadBook, running: _Running
) -> None:
    name = equipment.name
    if follows_grid(equipment):
        _inverter(made, equipment, bus, system, running)
        return
    sums: dict[tuple[int, int, tuple[float, float, float]], complex] = {}
    for leaf in running.leaves(name):
        if leaf.given is None:
            continue
        weight = running.weight(leaf, name)
        for i, j, va in leaf.parts:
            key = (i, j, leaf.given.shares)
            sums[key] = sums.get(key, 0j) + va * weight
    node = book.nodes.get(name)
    if node is not None and not node.leaves and name in made.input_bus and equipment.kind != "transformer":
        # A converter draws what it delivers, its losses and its recharge.
        va = book.counted_above(name).connected.va
        for i, j, part in spread(system, system.legs, va) or ():
            sums[i, j, (1.0, 0.0, 0.0)] = part
    for k, ((i, j, shares), va) in enumerate(sums.items()):
        first, second = CONDUCTORS[i], CONDUCTORS[j]
        if va and first in bus.conductors and second in bus.conductors:
            volts = system.distance(first, second)
            made.network.load(f"{name} {k}", (bus[first], bus[second]), va, volts, shares)


def _inverter(made: Built, equipment: Equipment, bus: Bus, system: System, running: _Running) -> None:
    power = equipment.body.number("power")
    if power is None:
        return
    va = -complex(power, 0.0) * running.share[equipment.name]
    for k, (i, j, part) in enumerate(spread(system, system.legs, va) or ()):
        first, second = CONDUCTORS[i], CONDUCTORS[j]
        made.network.load(f"{equipment.name} {k}", (bus[first], bus[second]), part, system.distance(first, second))


def _motor(
    made: Built, equipment: Equipment, leaf: Leaf, bus: Bus, system: System, practice: str | None
) -> None:
    if leaf.given is None or leaf.key.category != "motor" or not leaf.parts:
        return
    body = _body_of(equipment, leaf)
    starter = body.text("starter")
    if starter in SOFT_STARTERS and "regenerative" not in body.flags:
        return
    va = sum(abs(part[2]) for part in leaf.parts)
    legs = leaf.legs
    volts = system.distance(legs[0], legs[1] if len(legs) > 1 else "N")
    z = motor_ohm(body, va, volts, len(legs), practice)
    nodes = bus.pick(legs) if len(legs) > 1 else (bus[legs[0]], bus["N"])
    made.network.motor(leaf.name, nodes, z)
    if "subtransient" not in body.facts and "lra" not in body.facts:
        text = f"the reactance of the motor `{leaf.name}`, by its size (no subtransient, no lra)"
        made.assumed.append(Assumption(leaf.name, text, equipment.place))


def motor_ohm(body: Body, va: float, volts: float, legs: int, practice: str | None) -> complex:
    """Impedance of a running motor as a fault sees it in its first cycle, ohm per phase (or across its two wires).

    IEEE Std 141 by size under US practice, IEC 60909-0 by its locked-rotor current otherwise.
    """
    base = volts**2 / va
    lra, fla = body.number("lra"), body.number("fla")
    rated_a = va / volts / (math.sqrt(3.0) if legs == 3 else 1.0)
    ratio = x_over_r(body)
    if practice == "iec":
        starting = lra / rated_a if lra is not None else IEC_STARTING_RATIO
        return from_magnitude(base / starting, ratio if ratio is not None else 1 / 0.42)
    hp = (body.number("power") or va) / HORSEPOWER_W
    subtransient = body.number("subtransient")
    if subtransient is None and lra is not None:
        subtransient = (fla or rated_a) / lra
    pu = ansi.motor_first_cycle_pu(hp, subtransient)
    usual = MOTOR_X_OVER_R_LARGE if hp >= ansi.LARGE_MOTOR_HP else MOTOR_X_OVER_R_SMALL
    return from_magnitude(pu * base, ratio if ratio is not None else usual)


def _body_of(equipment: Equipment, leaf: Leaf) -> Body:
    if leaf.place:
        for placed in equipment.circuits:
            if placed.key == leaf.place:
                return placed.circuit.body
    return equipment.body



