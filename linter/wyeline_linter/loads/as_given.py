"""One load as written: VA, W, hp, A or var, with power factor, efficiency and number, as volt-amperes drawn.

Two figures come out. What it draws at nominal voltage goes into load flow and the sums of connected load; the code's
figure goes into the sizing of conductors and devices, where a motor counts with the current of a table.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar.attributes import LOAD_CLASSES
from wyeline_grammar.model import Body, Fact
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.standard_ratings import motor_current_a
from wyeline_linter.tables import Looked
from wyeline_linter.tables.basis import Basis

Shares = tuple[float, float, float]
"""Shares of constant power, current and impedance; they add up to 1."""

CONSTANT_POWER: Shares = (1.0, 0.0, 0.0)
CONSTANT_IMPEDANCE: Shares = (0.0, 0.0, 1.0)

_IMPEDANCE_CLASSES = frozenset({"heating", "capacitor"})
"""Resistance heat and capacitors follow the voltage; motors, electronics and lighting hold their power (practice)."""
_MOTOR_LIKE = frozenset(
    {"motor", "drive", "cooling", "heat-pump", "pump", "fan", "elevator", "process", "fire-pump", "welding"}
)
_TURNING = frozenset({"motor", "cooling", "heat-pump", "pump", "fan", "elevator", "fire-pump"})
"""Classes that run machines without a rectifier between, unless their starter is one (common practice, no source)."""
_NOT_TURNING = frozenset({"drive", "ups", "charger", "heating"})
ASSUMED_PF_MOTOR = 0.85
"""Where no power factor is written for what is mostly motors (common practice, no source)."""
ASSUMED_PF = 1.0
"""Elsewhere W are counted as VA, as NEC 220.54 and 220.55 do for household equipment."""
ALWAYS_CONTINUOUS = frozenset({"lighting", "ev", "charger"})
"""Classes that run for hours without saying so (NEC 625.42 for vehicles; lighting and battery plants by practice)."""
KIND_CLASSES = frozenset({"motor", "drive", "charger", "capacitor", "ups"})
"""Kinds that say what class a load is of."""
_NO_LOAD_FLAGS = frozenset({"spare", "space"})


class Given(NamedTuple):
    """A load as read.

    ``va`` is drawn by all its units at nominal voltage (lag positive; None: unknown, with ``unknown``); ``code_va`` is
    what the code sizes by, before 125 % (None with ``unknown_code``). ``nameplate_code`` says that it holds the code's
    additions already (mca). ``how`` names the way it was read, for the working sheet.
    """

    va: complex | None
    code_va: float | None
    category: str
    continuous: bool
    units: int
    motor: bool
    shares: Shares
    how: str
    nameplate_code: bool = False
    unknown: tuple[str, ...] = ()
    unknown_code: tuple[str, ...] = ()


def category_of(body: Body, kind: str) -> str:
    """The class of a load: motor and drive by kind or flag, else the class written, else the kind; empty if none."""
    flags = body.flags
    if kind in ("motor", "drive", "capacitor", "ups"):
        return kind
    found = ""
    for flag in flags:
        if flag in KIND_CLASSES:
            return flag
        if flag in LOAD_CLASSES and not found:
            found = flag
    return found or (kind if kind in KIND_CLASSES else "")


def is_continuous(body: Body, category: str) -> bool:
    """Whether it counts as running three hours or more."""
    return "continuous" in body.flags or category in ALWAYS_CONTINUOUS


def has_no_load(body: Body) -> bool:
    """Whether it says itself that nothing is there yet."""
    return not _NO_LOAD_FLAGS.isdisjoint(body.flags)


def is_machine(body: Body, category: str) -> bool:
    """Whether it is counted as a machine that feeds a fault while it turns: by its class, or because its nameplate
    states what equipment with motors states, the least ampacity of its wires (mca; NEC 430.7(D), 440.4(B))."""
    return category in _TURNING or ("mca" in body.facts and category not in _NOT_TURNING)


def usual_pf(category: str) -> float:
    """The power factor taken where none is written."""
    return ASSUMED_PF_MOTOR if category in _MOTOR_LIKE else ASSUMED_PF


def shares_of(category: str) -> Shares:
    """How a class follows the voltage."""
    return CONSTANT_IMPEDANCE if category in _IMPEDANCE_CLASSES else CONSTANT_POWER


def read(
    body: Body,
    kind: str,
    who: str,
    *,
    volts: float,
    nominal_v: float,
    phases: int,
    basis: Basis | None,
    practice: str | None,
    motor_eff: float | None = None,
) -> Given:
    """Read a load that lies across ``volts`` (line to line where ``phases`` is 3, exact; ``nominal_v`` as written).

    ``who`` names it in reasons; ``motor_eff`` is the efficiency of the motor behind a drive.
    """
    category = category_of(body, kind)
    supply = _Supply(volts * (math.sqrt(3.0) if phases == 3 else 1.0), nominal_v, phases, basis)
    units = int(body.number("count") or 1)
    power = body.facts.get("power")
    shaft_w = power.number if power is not None and _is_shaft(power, kind, category) else None
    magnitude, how, reasons = _drawn(body, kind, category, who, supply, shaft_w, motor_eff)
    limit = limit_va(body, supply.per_ampere)
    if limit is not None and magnitude is not None and limit < magnitude:
        magnitude, how = limit, "limit"
    va = None
    if magnitude is not None:
        pf = body.number("pf") or usual_pf(category)
        va = _complex(magnitude, pf, category, leading="leading" in body.flags) * units
    code, code_reasons, plate = _code_va(magnitude, reasons, body.number("mca"), shaft_w, supply, practice)
    if not category and va is not None:
        code, code_reasons = None, (f"{who} does not say what kind of load it is",)
    return Given(
        va,
        None if code is None else code * units,
        category or "other",
        is_continuous(body, category),
        units,
        category in ("motor", "drive"),
        shares_of(category),
        how,
        plate,
        reasons,
        code_reasons,
    )


class _Supply(NamedTuple):
    """What a load lies across: VA per ampere, its volts as written, its phases, and whose motor tables count."""

    per_ampere: float
    nominal_v: float
    phases: int
    basis: Basis | None

    def table_va(self, shaft_w: float) -> float | None:
        """What a motor draws by the table of the basis; None where that holds none."""
        table = table_current_a(self.basis, shaft_w / HORSEPOWER_W, self.nominal_v, self.phases)
        return None if table is None else table.value * self.per_ampere


_Drawn = tuple[float | None, str, tuple[str, ...]]
"""VA of one unit, the way they were read, and the reasons where they are not known."""


def _drawn(
    body: Body,
    kind: str,
    category: str,
    who: str,
    supply: _Supply,
    shaft_w: float | None,
    motor_eff: float | None,
) -> _Drawn:
    power, mca = body.facts.get("power"), body.number("mca")
    if category == "capacitor":
        return (None, "var", (f"{who} states no kvar",)) if power is None else (power.number, "var", ())
    amperes, amps_key = _amperes(body, kind)
    if amps_key != "draws":
        if shaft_w is not None:
            return _from_shaft(shaft_w, body, kind, who, amperes, supply, motor_eff)
        if power is not None and power.value.dimension == "power":
            pf = body.number("pf") or usual_pf(category)
            return power.number / (body.number("eff") or 1.0) / pf, "w", ()
        if power is not None:
            return power.number, "va", ()
    if amperes is not None:
        return amperes * supply.per_ampere, "amperes", ()
    if mca is not None:
        return mca * supply.per_ampere, "mca", ()
    return None, "none", (f"{who} states no load",)


def told_in_amperes(body: Body, kind: str) -> bool:
    """Whether a current tells what it draws: as written, or of a motor by the table. Else it draws its VA at the
    voltage of its nameplate."""
    power = body.facts.get("power")
    if "draws" in body.facts or power is None:
        return True
    return _is_shaft(power, kind, category_of(body, kind)) and not {"eff", "pf"} <= body.facts.keys()


def _amperes(body: Body, kind: str) -> tuple[float | None, str]:
    for key in ("draws", "fla"):
        value = body.number(key)
        if value is not None:
            return value, key
    # On a drive an unkeyed current is its rated input, on anything else its device.
    return (body.number("rating"), "draws") if kind == "drive" and "rating" in body.facts else (None, "")


def _is_shaft(power: Fact, kind: str, category: str) -> bool:
    """Whether a power is meant at the shaft: horsepower always, watts of a motor or a drive too."""
    if power.value.dimension != "power":
        return False
    if power.value.text.endswith("hp"):
        return True
    return kind in ("motor", "drive") or category == "motor"


def _from_shaft(
    shaft_w: float,
    body: Body,
    kind: str,
    who: str,
    amperes: float | None,
    supply: _Supply,
    motor_eff: float | None,
) -> _Drawn:
    eff, pf = body.number("eff"), body.number("pf")
    if kind == "drive":
        eff = eff * motor_eff if eff is not None and motor_eff is not None else None
    if eff is not None and pf is not None:
        return shaft_w / eff / pf, "shaft", ()
    if amperes is not None:
        return amperes * supply.per_ampere, "amperes", ()
    table_va = supply.table_va(shaft_w)
    if table_va is not None:
        return table_va, "table", ()
    if eff is not None and kind == "drive":
        # A drive's rectifier takes hardly any reactive power: its current follows from the power alone.
        return shaft_w / eff / ASSUMED_PF_MOTOR, "shaft", ()
    lacks = [word for word, value in (("efficiency (eff)", eff), ("power factor (pf)", pf)) if value is None]
    return None, "none", (f"{who} gives no {' and no '.join(lacks)}, nor a current (fla)",)


def _complex(magnitude: float, pf: float, category: str, *, leading: bool) -> complex:
    if category == "capacitor":
        return complex(0.0, -magnitude)
    q = magnitude * math.sqrt(max(0.0, 1.0 - pf * pf))
    return complex(magnitude * pf, -q if leading else q)


def _code_va(
    magnitude: float | None,
    reasons: tuple[str, ...],
    mca: float | None,
    shaft_w: float | None,
    supply: _Supply,
    practice: str | None,
) -> tuple[float | None, tuple[str, ...], bool]:
    """VA to size by: the nameplate's mca, the motor table under US practice, else what it draws; never less than that.
    A motor that draws more than the table says is built for low speed or high torque, and its nameplate counts (NEC
    430.6(A)(1), from memory)."""
    if mca is not None and practice == "us":
        return max(mca * supply.per_ampere, magnitude or 0.0), (), True
    if shaft_w is not None and practice == "us":
        table_va = supply.table_va(shaft_w)
        if table_va is not None:
            return max(table_va, magnitude or 0.0), (), False
    return (None, reasons, False) if magnitude is None else (magnitude, (), False)


def limit_va(body: Body, per_ampere: float) -> float | None:
    """What an energy management system holds it to, in VA; None where nothing is written."""
    fact = body.facts.get("limit")
    if fact is None or not isinstance(fact.value.data, float | int):
        return None
    return fact.number * per_ampere if fact.value.dimension == "current" else fact.number


def table_current_a(basis: Basis | None, hp: float, nominal_v: float, phases: int) -> Looked[float] | None:
    """A motor's full-load current in the table of a basis; None where it holds none."""
    if basis is None or basis.practice != "us":
        return None
    return _table(basis.name, round(hp, 4), nominal_v, 3 if phases == 3 else 1)


@lru_cache(maxsize=4096)
def _table(basis_name: str, hp: float, nominal_v: float, phases: int) -> Looked[float] | None:
    from wyeline_linter.tables.basis import basis

    # Fractions of a horsepower pass through watts; the table knows them as fractions again.
    rows = round(hp * 12) / 12
    near = rows if rows and abs(rows - hp) < 2e-3 * max(hp, 1.0) else hp
    found = motor_current_a(basis(basis_name), near, nominal_v, 3 if phases == 3 else 1)
    return found if isinstance(found, Looked) else None
