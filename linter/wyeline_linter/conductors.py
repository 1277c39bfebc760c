"""What a conductor carries and what resists in it: ampacity with its corrections, resistance and reactance.

US practice (NEC 310, Chapter 9) and IEC practice (60364-5-52, 60228) side by side. Every function is pure, takes the
basis whose tables it reads, and returns its working as `Looked` values; what the tables do not hold is `NotListed`.
"""

from __future__ import annotations

import math
from typing import Literal, NamedTuple

from .conductor_sizes import area_mm2, circular_mils, is_metric, next_size_up, size_at_least, standard_sizes
from .tables import Basis, Looked, NotListed

__all__ = [
    "Ampacity",
    "Capacity",
    "Counted",
    "Impedance",
    "area_mm2",
    "capacity",
    "circular_mils",
    "effective_ohm_per_km",
    "impedance",
    "neutral_counts",
    "next_size_up",
    "nominal_ampacity",
    "service_impedance",
    "size_at_least",
    "small_conductor_device_a",
    "standard_sizes",
    "termination_column_c",
    "thermal_k",
    "voltage_drop_v",
]

Material = Literal["Cu", "Al"]
ConduitMaterial = Literal["pvc", "aluminum", "steel"]
Method = Literal["A1", "A2", "B1", "B2", "C", "D1", "D2", "E", "F"]
Arrangement = Literal["bunched", "wall", "ceiling", "tray", "ladder"]
DropCircuit = Literal["three-phase", "two-wire"]

KM_PER_KFT = 0.3048
TABLE_9_TEMPERATURE_C = 75.0


class Ampacity(NamedTuple):
    """Ampacity of one conductor of a set, US practice.

    `amps` is the smaller of the insulation column times the two factors and `termination.value`, the column of the
    terminals without factors (NEC 110.14(C)). Times the number of parallel sets it is that of the feeder.
    """

    amps: float
    insulation: Looked[float]
    ambient: Looked[float]
    bundling: Looked[float]
    termination: Looked[float]

    @property
    def looked(self) -> tuple[Looked[float], ...]:
        """The cells used, in the order of the calculation."""
        return self.insulation, self.ambient, self.bundling, self.termination


def nominal_ampacity(
    basis: Basis, size: str, material: Material, column_c: Literal[60, 75, 90]
) -> Looked[float] | NotListed:
    """Ampacity in one column of NEC 310.16, amperes, before any factor."""
    return basis.number("ampacity", (size,), f"{material.lower()}_{column_c}")


def ampacity(
    basis: Basis,
    size: str,
    material: Material,
    *,
    insulation_c: Literal[60, 75, 90],
    termination_c: Literal[60, 75, 90],
    ambient_c: float,
    current_carrying: int,
) -> Ampacity | NotListed:
    """Ampacity of one conductor in raceway, cable or earth (NEC 310.15, 310.16, 110.14(C)).

    `current_carrying` counts the loaded conductors in the same raceway or bundle (see `neutral_counts`). The terminal
    column is never above the insulation's.
    """
    column = nominal_ampacity(basis, size, material, insulation_c)
    if isinstance(column, NotListed):
        return column
    ambient = basis.number_up_to("ambient-correction", ambient_c, f"f{insulation_c}")
    if isinstance(ambient, NotListed):
        return ambient
    bundling = basis.number_up_to("bundling", current_carrying, "percent")
    if isinstance(bundling, NotListed):
        return bundling
    lug_c: Literal[60, 75, 90] = insulation_c if insulation_c < termination_c else termination_c
    termination = nominal_ampacity(basis, size, material, lug_c)
    if isinstance(termination, NotListed):
        return termination
    corrected_a = column.value * ambient.value * bundling.value / 100
    return Ampacity(min(corrected_a, termination.value), column, ambient, bundling, termination)


def termination_column_c(basis: Basis, device_a: float, marked_c: int | None) -> Looked[float] | NotListed:
    """Temperature column of the terminals (NEC 110.14(C)(1)), 60 or 75 degC.

    `marked_c` is what the terminals are marked for, None where nobody said: then 60 up to 100 A and 75 above.
    """
    limit = basis.constant("termination-60-limit")
    if isinstance(limit, NotListed):
        return limit
    if marked_c is not None:
        return Looked(float(marked_c), limit.table, f"terminals marked {marked_c} degC", limit.status)
    if device_a <= limit.value:
        return Looked(60.0, limit.table, f"up to {limit.value:g} A, terminals not marked", limit.status)
    return Looked(75.0, limit.table, f"above {limit.value:g} A", limit.status)


def small_conductor_device_a(basis: Basis, size: str, material: Material) -> Looked[float] | NotListed:
    """Largest device of a small conductor (NEC 240.4(D)); NotListed for sizes without that limit."""
    return basis.number("small-conductors", (size,), material.lower())


class Counted(NamedTuple):
    """Whether a neutral counts as current-carrying; None when a fact is missing. `why` is one plain sentence."""

    counts: bool | None
    why: str
    clause: str = "NEC 310.15(E)"


def neutral_counts(*, legs: int, from_wye: bool, mostly_nonlinear: bool | None) -> Counted:
    """Whether the neutral of a circuit with `legs` phase conductors is counted for bundling (NEC 310.15(E)).

    `from_wye`: the legs belong to a three-phase four-wire wye. `mostly_nonlinear`: the major part of the load is
    nonlinear, None where nobody said (only asked of four-wire wye circuits).
    """
    if legs == 1:
        return Counted(True, "with one leg the neutral carries the whole current")
    if legs == 2 and from_wye:
        return Counted(True, "from two legs of a wye the neutral carries about as much as a leg")
    if legs == 2:
        return Counted(False, "the neutral carries only the difference of the two legs")
    if not from_wye:
        return Counted(False, "the neutral carries only the unbalance")
    if mostly_nonlinear is None:
        return Counted(None, "whether most of the load is nonlinear is not stated")
    if mostly_nonlinear:
        return Counted(True, "harmonic currents of nonlinear loads add up in the neutral")
    return Counted(False, "the neutral carries only the unbalance of the three legs")


class Capacity(NamedTuple):
    """Current-carrying capacity of one conductor of a set, IEC practice: the table value times its factors."""

    amps: float
    table_value: Looked[float]
    factors: tuple[Looked[float], ...]
    around_count: int
    """How many of them, the first ones, are for the air or ground around it."""

    @property
    def looked(self) -> tuple[Looked[float], ...]:
        """The cells used, in the order of the calculation."""
        return (self.table_value, *self.factors)

    @property
    def around(self) -> tuple[Looked[float], ...]:
        """The factors for the air or ground around it."""
        return self.factors[: self.around_count]

    @property
    def beside(self) -> tuple[Looked[float], ...]:
        """The factors for what lies beside it, and for the third harmonic in its neutral."""
        return self.factors[self.around_count :]


def capacity(
    basis: Basis,
    size: str,
    material: Material,
    *,
    insulation: Literal["PVC", "XLPE"],
    loaded: Literal[2, 3],
    method: Method,
    ambient_c: float,
    circuits: int = 1,
    arrangement: Arrangement = "bunched",
    spacing: str = "touching",
    soil_km_w: float | None = None,
    third_percent: float = 0.0,
) -> Capacity | NotListed:
    """Current-carrying capacity by IEC 60364-5-52 Annex B, amperes.

    `ambient_c` is the air temperature, or that of the ground for methods D1 and D2, where `soil_km_w` is the thermal
    resistivity of the soil in K.m/W and must be given. `circuits` counts the circuits grouped, this one included;
    `arrangement` says how they lie in air (`bunched` gives the least), `spacing` the clearance in the ground
    (`touching`, `one_diameter`, `m0125`, `m025`, `m05`; in ducts `touching`, `m025`, `m05`, `m1`). `third_percent` is
    the third harmonic of the line current that returns in a neutral beside three loaded wires (Annex E).
    """
    family = insulation.lower()
    buried = method in ("D1", "D2")
    if method in ("E", "F"):
        value = basis.number("capacity-free-air", (insulation, material, size), f"{method.lower()}_{loaded}")
    else:
        value = basis.number(f"capacity-{family}-{loaded}", (material, size), method.lower())
    if isinstance(value, NotListed):
        return value
    looked = [basis.number_up_to("ambient-ground" if buried else "ambient-air", ambient_c, family)]
    if buried:
        if soil_km_w is None:
            return NotListed("the thermal resistivity of the soil is not stated", value.table)
        looked.append(basis.number_up_to("soil", soil_km_w, method.lower()))
    around = len(looked)
    if circuits > 1:
        looked.append(_grouping(basis, method, circuits, arrangement, spacing))
    if third_percent and loaded == 3:
        # What adds up of many loads may lie a rounding above the share that all of them state, or above the last row.
        looked.append(basis.number_up_to("third-harmonic", min(round(third_percent, 6), 100.0), "factor"))
    factors: list[Looked[float]] = []
    for factor in looked:
        if isinstance(factor, NotListed):
            return factor
        factors.append(factor)
    return Capacity(value.value * math.prod(f.value for f in factors), value, tuple(factors), around)


def _grouping(
    basis: Basis, method: Method, circuits: int, arrangement: Arrangement, spacing: str
) -> Looked[float] | NotListed:
    if method == "D1":
        return basis.number_up_to("grouping-ducts", circuits, spacing)
    if method == "D2":
        return basis.number_up_to("grouping-buried", circuits, spacing)
    # Single layers lose nothing more beyond nine circuits (note to B.52.17); a bunch goes on warming.
    counted = circuits if arrangement == "bunched" else min(circuits, 9)
    return basis.number_up_to("grouping", counted, arrangement)


class Impedance(NamedTuple):
    """Resistance and reactance of one conductor per length, with the cells behind them.

    `temperature_c` is that of the conductor, None where the resistance is that of normal service.
    """

    r_ohm_per_km: float
    x_ohm_per_km: float
    looked: tuple[Looked[float], ...]
    temperature_c: float | None


def impedance(
    basis: Basis,
    size: str,
    material: Material,
    *,
    temperature_c: float,
    conduit: ConduitMaterial = "pvc",
    frequency_hz: float | None = None,
) -> Impedance | NotListed:
    """Resistance at a conductor temperature and reactance of one conductor, ohm per km.

    US: NEC Chapter 9 Table 9 (75 degC, 60 Hz), R2 = R1 (1 + a (T2 - 75)); `conduit` is the material around it. IEC:
    IEC 60228 at 20 degC, R = R20 (1 + a (T - 20)), with 0.08 mohm/m.
    The IEC values are direct-current ones: skin and proximity effect add about 3 percent at 240 mm2, 6 at 300 mm2.
    At another `frequency_hz` than that of the tables see :func:`at_frequency`.
    """
    if basis.practice == "us":
        r = basis.number("conductor-impedance", (size,), f"r_{material.lower()}_{conduit}")
        x = basis.number("conductor-impedance", (size,), "x_steel" if conduit == "steel" else "x_pvc")
        scale, base_c = 1 / KM_PER_KFT, TABLE_9_TEMPERATURE_C
    else:
        r = basis.number("conductor-properties", (size,), material.lower())
        x = basis.constant("cable-reactance")
        scale, base_c = 1.0, 20.0
    a = basis.constant(f"temperature-coefficient-{material.lower()}")
    if isinstance(r, NotListed):
        return r
    if isinstance(x, NotListed):
        return x
    if isinstance(a, NotListed):
        return a
    warm = 1 + a.value * (temperature_c - base_c)
    found = Impedance(r.value * scale * warm, x.value * scale, (r, x, a), temperature_c)
    return at_frequency(found, basis, frequency_hz)


def table_hz(basis: Basis) -> float:
    """The frequency that the impedances of its tables are for."""
    return 60.0 if basis.practice == "us" else 50.0


def at_frequency(z: Impedance, basis: Basis, frequency_hz: float | None) -> Impedance:
    """Table values at another frequency: the reactance in proportion, the resistance by the skin effect of a round
    conductor (IEC 60287-1-1, 2.1.2, from memory). What neighbours and steel around it add is not counted."""
    base = table_hz(basis)
    if not frequency_hz or frequency_hz == base:
        return z
    r_ohm_per_m = z.r_ohm_per_km / 1000
    r = z.r_ohm_per_km * (1 + _skin(frequency_hz, r_ohm_per_m)) / (1 + _skin(base, r_ohm_per_m))
    return z._replace(r_ohm_per_km=r, x_ohm_per_km=z.x_ohm_per_km * frequency_hz / base)


def _skin(frequency_hz: float, r_ohm_per_m: float) -> float:
    """What the skin effect adds to a resistance, as a part of it."""
    x = math.sqrt(8e-7 * math.pi * frequency_hz / r_ohm_per_m)
    if x <= 2.8:
        return x**4 / (192 + 0.8 * x**4)
    return -0.136 - 0.0177 * x + 0.0563 * x * x if x <= 3.8 else 0.354 * x - 0.733


def service_impedance(
    basis: Basis, size: str, material: Material, frequency_hz: float | None = None
) -> Impedance | NotListed:
    """Impedance for voltage drop in normal service by IEC 60364-5-52 Annex G: resistivity over area, 0.08 mohm/m."""
    rho = basis.constant(f"service-resistivity-{material.lower()}")
    x = basis.constant("cable-reactance")
    if isinstance(rho, NotListed):
        return rho
    if isinstance(x, NotListed):
        return x
    if not is_metric(size):
        return NotListed(f"{rho.table} is used with sizes in mm2; {size} is not one", rho.table)
    return at_frequency(Impedance(rho.value / area_mm2(size), x.value, (rho, x), None), basis, frequency_hz)


def effective_ohm_per_km(z: Impedance, power_factor: float) -> float:
    """R cos(phi) + X sin(phi), the part of the impedance that a lagging current turns into voltage drop, ohm per km."""
    return z.r_ohm_per_km * power_factor + z.x_ohm_per_km * math.sqrt(max(0.0, 1 - power_factor**2))


def voltage_drop_v(
    z: Impedance, *, amps: float, length_m: float, power_factor: float, circuit: DropCircuit, sets: int = 1
) -> float:
    """Hand-formula voltage drop, volts (NEC Chapter 9 Table 9 note 2; IEC 60364-5-52 Annex G).

    `three-phase`: balanced, line to line, sqrt(3) I Ze L. `two-wire`: out and back, 2 I Ze L. `amps` is the whole
    current of all parallel sets. 100 A over 60.96 m of 1 AWG Cu in steel at 0.85 gives 5.75 V three-phase.
    """
    factor = math.sqrt(3) if circuit == "three-phase" else 2.0
    return factor * amps / sets * effective_ohm_per_km(z, power_factor) * length_m / 1000


def thermal_k(material: Material, *, initial_c: float, final_c: float) -> float:
    """Factor k of S = sqrt(I2t) / k from the temperatures, A.s0.5/mm2 (IEC 60364-5-54 Annex A).

    k = K sqrt(ln((b + final) / (b + initial))) with K = 226, b = 234.5 for copper and 148, 228 for aluminium (values
    of that annex, from memory). Copper from 70 to 160 degC gives 115.
    """
    if not -100 < initial_c < final_c:
        raise ValueError(f"the final temperature must be above the initial one, not {initial_c:g} to {final_c:g} degC")
    big_k, beta = (226.0, 234.5) if material == "Cu" else (148.0, 228.0)
    return big_k * math.sqrt(math.log((beta + final_c) / (beta + initial_c)))
