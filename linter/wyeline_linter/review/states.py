"""The worst of loads and faults over all switch states: what a generator, a tie or a bypass makes of them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_linter.network import NORMAL
from wyeline_linter.review.measures import FAULT, IN_WORST, LOAD, SMALLEST, Measured

if TYPE_CHECKING:
    from wyeline_linter.view import View

_FIGURES = {"load_a": LOAD, "fault_max_a": FAULT, "fault_min_a": SMALLEST}
_CLEARLY = 0.05
"""Share by which another state has to be worse than the normal one to be worth a line (common practice, no source)."""


def worst_measures(view: View) -> Iterator[Measured]:
    """Load, largest and smallest fault of all equipment in their worst state, A; nothing where there is one state only.

    Where no state is clearly worse than the normal one, it is the normal figure. Limits are left to the rules, which
    judge every state.
    """
    from wyeline_linter.studies.scenarios import when
    from wyeline_linter.studies.worst import equipment_states, worst

    if view.network.state.name != NORMAL or len(view.studies.every()) < 2:
        return
    for name in view.model.equipment:
        states = equipment_states(view, name)
        here = next((s.figures for s in states if s.state.name == NORMAL), {})
        for figure, found in worst(states).items():
            if figure in _FIGURES:
                normal = here.get(figure)
                near = normal is not None and abs(found.value - normal) < _CLEARLY * max(found.value, normal)
                value = normal if near and normal is not None else found.value
                state = "" if near else when(found.state).strip()
                yield Measured(name, _FIGURES[figure] + IN_WORST, float(value), "A", state=state)
