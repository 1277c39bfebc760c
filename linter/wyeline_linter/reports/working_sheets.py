"""Working sheets: every derived figure that a report prints, laid out so that a pocket calculator can follow it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from wyeline_grammar.linking import Equipment
from wyeline_linter.loads.sheets import FIGURES, circuit_figure, equipment_figure, load_figure
from wyeline_linter.reports.subject import Subject, about_circuit, about_equipment, sheet_anchor
from wyeline_linter.working import Figure


@dataclass(frozen=True, slots=True)
class Sheet:
    """One figure with its working. ``anchor`` is what cells link to, ``about`` the equipment or circuit."""

    anchor: str
    about: str
    figure: Figure


def working_sheets(subject: Subject, report: Callable[[int], None] = lambda _: None) -> list[Sheet]:
    """All sheets in the order of the files; ``report`` hears how many pieces of equipment are done."""
    made: list[Sheet] = []
    for count, equipment in enumerate(subject.equipment, 1):
        made += _of_equipment(subject, equipment)
        report(count)
    return made


def _of_equipment(subject: Subject, equipment: Equipment) -> Iterator[Sheet]:
    name, about = equipment.name, about_equipment(equipment.name)
    node = subject.view.loads.nodes.get(name)
    if node is None:
        return
    if not equipment.circuits and any(not leaf.place for leaf in node.leaves):
        yield Sheet(sheet_anchor(name, "drawn"), about, equipment_figure(subject.view, name))
    if subject.of(name).get("load") is not None:
        for figure in FIGURES:
            yield Sheet(sheet_anchor(name, figure), about, load_figure(subject.view, name, figure))
    for leaf in node.leaves:
        if leaf.place:
            anchor = sheet_anchor(f"{name} {leaf.place}", "drawn")
            yield Sheet(anchor, about_circuit(name, leaf.place), circuit_figure(subject.view, name, leaf.place))
