"""How long an earth fault may last on a line (IEC 60364-4-41 411.3.2)."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.earthing import own_electrode
from wyeline_linter.systems import NEUTRAL, SQRT3, Arrangement, System
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.protection.lines import Line

FIXED_A, SOCKETS_A = 32.0, 63.0
"""Last circuits of fixed equipment and of socket outlets up to here have the shorter time (IEC 60364-4-41:2017
411.3.2.2, from memory)."""
_NOMINAL = 0.99
"""The steps of the table are nominal voltages: 400 V over the square root of three is meant by its 230 V."""


def in_tt(line: Line) -> bool:
    """Whether a fault to earth on the line, or at its far end, returns through electrodes."""
    return line.system.earthing.arrangement is Arrangement.TT or own_electrode(line.target)


def is_short_timed(line: Line) -> bool:
    """Whether it is a last circuit that has less time than a distribution circuit."""
    if line.guard is None or (line.circuit is None and (line.target is None or line.target.kind not in LOAD_KINDS)):
        return False
    body = line.body if line.target is None else line.target.body
    return line.guard.amps <= (SOCKETS_A if "receptacle" in body.flags else FIXED_A)


def leg_to_neutral_v(system: System) -> float | None:
    """The nominal voltage of a leg to neutral, V, of one leg of several too; None without a neutral."""
    if not system.has_neutral:
        return None
    return max(system.nominal_v(leg, NEUTRAL) for leg in system.legs)


def longest_fault_s(line: Line) -> Looked[float] | None:
    """The longest time that an earth fault may last, in seconds, with its row; None where no table tells it, as behind
    an impedance to earth, on direct current, and in US practice. In an IT system it is that of two faults at once."""
    system = line.system
    if not system.frequency_hz or not system.legs:
        return None
    if system.earth is not None:
        volts = max(system.volts_to_ground(leg) for leg in system.legs)
    elif system.earthing.arrangement is Arrangement.IT:
        volts = leg_to_neutral_v(system) or system.widest_v / (SQRT3 if len(system.legs) == 3 else 1.0)
    else:
        return None
    column = "last_s" if is_short_timed(line) else "distribution_s"
    found = line.tables.number_up_to("disconnection-times", volts * _NOMINAL, column, ("TT" if in_tt(line) else "TN",))
    return found if isinstance(found, Looked) else None
