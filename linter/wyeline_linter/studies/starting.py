"""What a motor does to the voltage while it starts: its locked-rotor impedance across the circuit, before and after."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body
from wyeline_linter.circuit import Bus
from wyeline_linter.circuit.nameplate import locked_rotor_z
from wyeline_linter.nameplate import rated_near_v

if TYPE_CHECKING:
    from wyeline_linter.loads.leaf_loads import LeafLoad
    from wyeline_linter.studies.study import StateStudy

SOFT = frozenset(
    {"VFD", "soft-start", "RVSS", "RVNR", "YD", "star-delta", "autotransformer", "part-winding", "two-speed"}
)
"""Starters that keep the start current down; how far is their maker's figure, so no dip is worked out for them."""
LOCKED_ROTOR_RATIO = 6.0
"""Locked-rotor over full-load current where neither `lra` nor a code letter is written (common practice)."""
LOCKED_ROTOR_PF = 0.30
"""Power factor of a motor at standstill (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Start:
    """A motor start: amperes drawn, what is left of the voltage at its terminals as a part of the voltage before."""

    name: str
    locked_rotor_a: float
    assumed: bool
    drawn_a: float
    kept: float
    bus: Bus
    tied: tuple[str, ...]
    z_ohm: complex

    @property
    def dip(self) -> float:
        return 1.0 - self.kept


def starts_direct(body: Body) -> bool:
    """Whether a motor is switched straight onto the supply."""
    return body.text("starter") not in SOFT


def starts_from(study: StateStudy, motors: Iterable[Standing]) -> list[Start]:
    """The start of each motor at standstill (the largest unit of it), those left out of which it cannot be told. Motors
    that are joined alike are worked out together."""
    from numpy import array

    faults = study.starting
    if faults.study is None:
        return []
    alike: dict[tuple[tuple[str, ...], tuple[str, ...]], list[Standing]] = {}
    for motor in motors:
        alike.setdefault((motor.bus.conductors, motor.tied), []).append(motor)
    found = []
    for (_, tied), group in alike.items():
        places = faults.study.places([motor.bus for motor in group])
        drawn = places.tied(tied, array([motor.z_ohm for motor in group])).amperes.tolist()
        found += [motor.start(amperes) for motor, amperes in zip(group, drawn, strict=True) if amperes == amperes]
    return found


@dataclass(frozen=True, slots=True)
class Standing:
    """A motor at standstill: its bus, the conductors it lies across, and its impedance between them."""

    name: str
    bus: Bus
    tied: tuple[str, ...]
    locked_rotor_a: float
    assumed: bool
    z_ohm: complex
    before_v: float
    """Volts across the impedance before the start."""

    def start(self, drawn_a: float) -> Start:
        kept = drawn_a * abs(self.z_ohm) / self.before_v
        return Start(self.name, self.locked_rotor_a, self.assumed, drawn_a, kept, self.bus, self.tied, self.z_ohm)


def at_standstill(study: StateStudy, equipment: Equipment, parts: list[LeafLoad]) -> Standing | None:
    """A motor as its start finds it; None where its bus or what it draws is not known."""
    faults = study.starting
    bus = faults.built.bus.get(equipment.name)
    if bus is None or faults.bus_reasons(bus) or not parts:
        return None
    tied = tuple(dict.fromkeys(c for load in parts for c in load.pair))
    system = faults.built.system_at[bus.name]
    volts = system.distance(tied[0], tied[1])
    phases = 3 if len(tied) == 3 else 1
    count = equipment.body.number("count") or 1.0
    va = sum(abs(load.va) for load in parts) / count
    lra = parts[0].locked_rotor_a
    running = va / volts / (3**0.5 if phases == 3 else 1.0)
    amperes = LOCKED_ROTOR_RATIO * running if lra is None else lra
    if amperes <= 0:
        return None
    rated_v = volts if lra is None else _rated_v(study, equipment, volts)
    from_letter = lra is not None and equipment.body.number("lra") is None
    # A code letter gives kVA per hp at the motor's own voltage; its current was told at the voltage of the place.
    at_rated_a = amperes * volts / rated_v if from_letter else amperes
    z = locked_rotor_z(rated_v, at_rated_a, LOCKED_ROTOR_PF, phases)
    before = volts / (3**0.5 if phases == 3 else 1.0)
    return Standing(equipment.name, bus, tied, amperes, lra is None, z, before)


def _rated_v(study: StateStudy, equipment: Equipment, volts: float) -> float:
    """The voltage at which a motor takes its locked-rotor current: that of its nameplate, which US practice writes
    below the ``volts`` of the place."""
    plate = study.derivation.stated(equipment.primary)
    return rated_near_v(plate, volts, nema=study.practice == "us")


def kept_elsewhere(study: StateStudy, start: Start, names: list[str]) -> dict[str, float]:
    """What is left of the voltage at other boards while the motor starts, worst pair of conductors, as a part."""
    faults = study.starting
    if faults.study is None:
        return {}
    fault = faults.study.buses([start.bus], start.tied, start.z_ohm)[0]
    during_v = faults.study.volts_during(start.bus, fault)
    found: dict[str, float] = {}
    for name in names:
        bus = faults.built.bus.get(name)
        if bus is None or faults.bus_reasons(bus):
            continue
        system = faults.built.system_at[bus.name]
        pairs = [(a, b) for k, a in enumerate(system.conductors) for b in system.conductors[k + 1 :]]
        kept = [
            abs(during_v[bus[a]] - during_v[bus[b]]) / nominal
            for a, b in pairs
            if (nominal := system.distance(a, b)) > 1e-6
        ]
        if kept:
            found[name] = float(min(kept))
    return found
