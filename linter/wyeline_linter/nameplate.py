"""Whether equipment made for one voltage may stand on a nominal system voltage."""

from __future__ import annotations

import enum
from functools import lru_cache
from typing import NamedTuple

from wyeline_grammar.notation import Voltage


class Fit(enum.Enum):
    """How a nameplate sits on a nominal voltage."""

    GOOD = "good"
    DOUBTFUL = "doubtful"
    WRONG = "wrong"


GOOD_WITHIN = 0.05
"""IEC 60034-1, 7.3: zone A is ±5 % of rated voltage."""
WRONG_BEYOND = 0.10
"""NEMA MG 1 (12.44, 20.14) and IEC 60034-1 zone B: ±10 % of rated voltage."""

MOTOR_NAMEPLATES = {
    120.0: 115.0,
    208.0: 200.0,
    240.0: 230.0,
    480.0: 460.0,
    600.0: 575.0,
    2400.0: 2300.0,
    4160.0: 4000.0,
    4800.0: 4600.0,
    6900.0: 6600.0,
}
"""Nominal system volts -> the motor nameplate made for it (NEMA MG 1; 2400, 4800 and 6900 from memory)."""

_MADE_FOR = {
    **{nominal: frozenset({plate}) for nominal, plate in MOTOR_NAMEPLATES.items()},
    230.0: frozenset({220.0, 240.0}),
    400.0: frozenset({380.0, 415.0}),
    690.0: frozenset({660.0}),
    277.0: frozenset({265.0}),
}
"""Nominal -> nameplates sold for it, though one of them (380 on 400) lies just beyond ±5 %. The IEC rows follow the
joining of 220, 230 and 240 V supplies into one nominal (IEC 60038); 265 on 277 is common practice, no source."""


def rated_near_v(plate: Voltage | None, volts: float, *, nema: bool) -> float:
    """The rated voltage of a motor on ``volts``: as its ``plate`` says (of a band the nearest), else with ``nema`` the
    one that motors are made with for this nominal voltage, else ``volts``."""
    if plate is not None:
        return min(max(volts, plate.line_v), plate.high_v or plate.line_v)
    return MOTOR_NAMEPLATES.get(round(volts), volts) if nema else volts


class NameplateVerdict(NamedTuple):
    """A nameplate on a nominal voltage.

    ``deviation_pct`` is (nominal - nameplate) / nameplate: positive where the equipment gets more than it was made for,
    0 inside a band. ``low_v`` and ``high_v`` are the nameplate's ends, equal for a single value.
    """

    fit: Fit
    deviation_pct: float
    nominal_v: float
    low_v: float
    high_v: float

    @property
    def heater_power_ratio(self) -> float:
        """Share of its rated power that a resistance heater gives: (V / Vn)², constant resistance."""
        return (1.0 + self.deviation_pct / 100.0) ** 2

    @property
    def plate_text(self) -> str:
        return f"{self.low_v:g} V" if self.low_v == self.high_v else f"{self.low_v:g} to {self.high_v:g} V"

    def why(self) -> str:
        """One plain sentence with the numbers."""
        if self.deviation_pct == 0.0:
            return f"{self.nominal_v:g} V is what {self.plate_text} equipment is made for"
        if self.fit is Fit.GOOD:
            return (
                f"{self.plate_text} equipment on {self.nominal_v:g} V is {self.deviation_pct:+.1f} % off, as intended"
            )
        sense = "more" if self.deviation_pct > 0 else "less"
        band = f"±{100 * WRONG_BEYOND:.0f} %"
        limit = f"within {band} but with no margin for the drop along the wire"
        if self.fit is Fit.WRONG:
            limit = f"outside {band}"
        return (
            f"{self.plate_text} equipment gets {abs(self.deviation_pct):.1f} % {sense} than its nameplate on "
            f"{self.nominal_v:g} V, {limit}; a heater gives {100 * self.heater_power_ratio:.1f} % of its power"
        )


@lru_cache(maxsize=4096)
def judge(nominal_v: float, low_v: float, high_v: float | None = None, *, tap_pct: float = 0.0) -> NameplateVerdict:
    """Judge a nameplate (a single value, or a band with ``high_v``) on a nominal or calculated voltage.

    ``tap_pct`` raises the nominal by a transformer's tap. Inside the band: good. Else the deviation from the nearer end
    decides: up to 5 % good, up to 10 % doubtful, beyond wrong. Raises ValueError for a voltage that is not positive.

    A 240 V heater on 208 V: -13.3 %, wrong, 75.1 % of its power.
    """
    top = low_v if high_v is None else high_v
    if nominal_v <= 0 or low_v <= 0 or top < low_v:
        raise ValueError(f"no voltages to compare: {nominal_v:g} V on {low_v:g} to {top:g} V")
    volts = nominal_v * (1.0 + tap_pct / 100.0)
    nearest = min(max(volts, low_v), top)
    deviation = (volts - nearest) / nearest
    paired = high_v is None and tap_pct == 0.0 and low_v in _MADE_FOR.get(nominal_v, frozenset())
    # The slack keeps a deviation of exactly 5 or 10 % from turning on the last bit of a float.
    if paired or abs(deviation) <= GOOD_WITHIN + 1e-6:
        fit = Fit.GOOD
    else:
        fit = Fit.DOUBTFUL if abs(deviation) <= WRONG_BEYOND + 1e-6 else Fit.WRONG
    return NameplateVerdict(fit, 100.0 * deviation, volts, low_v, top)
