"""Which calculation sheets there are, by the name of their figure, for equipment, feeders and circuits."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.studies.working_fault import fault_figure
from wyeline_linter.studies.working_flow import (
    branch_drop_figure,
    feeder_drop_figure,
    path_drop_figure,
    voltage_figure,
)
from wyeline_linter.working import Figure

if TYPE_CHECKING:
    from wyeline_linter.view import View

FIGURES = ("fault", "fault-min", "drop", "voltage", "three-phase", "line-line", "line-ground", "line-neutral")
"""What can be asked of a piece of equipment; of a feeder `drop`, `fault` and `fault-min` (at its end)."""


def study_sheet(view: View, name: str, figure: str, place: str = "") -> Figure:
    """The working of a study's figure. KeyError for an unknown name or circuit, ValueError for an unknown figure."""
    study = view.studies.normal
    feeder = view.model.feeders.get(name)
    equipment = view.equipment(name)
    if place:
        if equipment is None:
            raise KeyError(name)
        return _circuit(view, name, place, figure)
    if equipment is None and feeder is not None:
        if figure == "drop":
            return feeder_drop_figure(study, feeder)
        if figure in ("fault", "fault-min"):
            return fault_figure(study, feeder.target.name, largest=figure == "fault")
        raise ValueError(f"a feeder has no sheet for {figure}; there are drop, fault and fault-min")
    if equipment is None:
        raise KeyError(name)
    if figure in ("fault", "fault-min"):
        return fault_figure(study, name, largest=figure == "fault")
    if figure == "drop":
        return path_drop_figure(study, name)
    if figure == "voltage":
        return voltage_figure(study, name)
    if figure in FIGURES:
        return fault_figure(study, name, kind=figure)
    raise ValueError(f"no figure is called {figure}; there are {', '.join(FIGURES)}")


def _circuit(view: View, name: str, place: str, figure: str) -> Figure:
    from wyeline_linter.studies.branch import branch_drops

    if figure != "drop":
        raise ValueError(f"a circuit has no sheet for {figure}; there is drop")
    study, board = view.studies.normal, view.equipment(name)
    assert board is not None
    for drop in branch_drops(study, board):
        if drop.circuit.key == place:
            return branch_drop_figure(study, name, drop)
    if any(placed.key == place for placed in board.circuits):
        why = (f"circuit {place} of `{name}` lacks its load, its wires or their length",)
        return Figure("voltage drop", f"circuit {place} of {name}", "dU", None, "V", unknown=why)
    raise KeyError(f"{name} {place}")
