"""The largest fault current of a piece of equipment over all switch states, as labels and schedules tell it."""

from __future__ import annotations

import math
from typing import NamedTuple

from wyeline_linter.network import NORMAL
from wyeline_linter.reports.columns import resolve
from wyeline_linter.reports.subject import Subject
from wyeline_linter.studies.scenarios import largest_faults, when
from wyeline_linter.studies.worst import equipment_states, worst

SAME = 1e-3
"""A state that is worse by less than this share is not told from the normal one."""


class LargestFault(NamedTuple):
    """Symmetrical amperes of the worst state and as normal; ``when`` names the state where it is not the normal one.

    ``amps`` is None where it is unknown, for the reasons ``unknown``.
    """

    amps: float | None
    normal_a: float | None
    when: str = ""
    unknown: tuple[str, ...] = ()


def largest_fault(subject: Subject, name: str) -> LargestFault:
    """Of the normal state and all others; in the report of one other state, of that one alone."""
    here, reasons = resolve(subject.of(name), "fault.largest.amps")
    if not isinstance(here, float | int):
        return LargestFault(None, None, unknown=reasons)
    if subject.scenario != NORMAL:
        return LargestFault(here, None)
    found = worst(equipment_states(subject.view, name)).get("fault_max_a")
    if found is None or (not found.unknown_in and found.value <= here * (1 + SAME)):
        return LargestFault(here, here)
    if found.unknown_in:
        reason = f"the fault current is not known in the state {' and '.join(f'`{s}`' for s in found.unknown_in)}"
        return LargestFault(None, here, unknown=(reason,))
    return LargestFault(found.value, here, when(found.state))


def largest_in_any_state_a(subject: Subject, name: str) -> float | None:
    """The largest of all states in which it is known, symmetrical amperes; None in the report of one other state, and
    where no state tells it. Unlike :func:`largest_fault` it does not say which state, nor where it is unknown."""
    if subject.scenario != NORMAL:
        return None
    found = largest_faults(subject.view)
    amps = float(found.amperes[found.row[name]])
    return None if math.isnan(amps) else amps
