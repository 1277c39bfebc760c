"""Working sheets: every derived figure that a report prints, laid out so that a pocket calculator can follow it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cached_property

from wyeline_grammar.linking import Equipment
from wyeline_linter.loads.sheets import AMOUNTS, circuit_figure, equipment_figure, load_figure
from wyeline_linter.loads.sheets import FIGURES as LOAD_FIGURES
from wyeline_linter.network import two_sided
from wyeline_linter.reports.ampacity_sheet import ampacity_figure
from wyeline_linter.reports.subject import Subject, about_circuit, about_equipment, about_feeder, sheet_anchor
from wyeline_linter.studies.sheets import study_sheet
from wyeline_linter.working import Figure, render


@dataclass(frozen=True)
class Sheet:
    """One figure with its working. ``anchor`` is what cells link to, ``about`` the equipment or circuit."""

    anchor: str
    about: str
    figure: Figure

    @property
    def title_and_body(self) -> tuple[str, str]:
        """The sheet as text."""
        return self._laid_out[1]

    @cached_property
    def _laid_out(self) -> tuple[list[int], tuple[str, str]]:
        """The lines that it names, and the text, made once for every format."""
        title, _, body = render(self.figure).partition("\n\n")
        return self._rows, (title, body)

    @property
    def _rows(self) -> list[int]:
        """The lines of the files that it names. They move with what is written above them, while the figure stays."""
        return [item.place.row for item in self.figure.inputs if item.place is not None]

    def says_what(self, other: Sheet) -> bool:
        """Whether the text of this sheet, where it was laid out already, is what that of another one would be."""
        if self.about != other.about or (self.figure is not other.figure and self.figure != other.figure):
            return False
        return "_laid_out" not in vars(self) or self._laid_out[0] == other._rows


def working_sheets(subject: Subject, report: Callable[[int], None] = lambda _: None) -> list[Sheet]:
    """All sheets in the order of the files; ``report`` hears how many pieces of equipment are done."""
    made: list[Sheet] = []
    for count, equipment in enumerate(subject.equipment, 1):
        made += _of_equipment(subject, equipment)
        report(count)
    for feeder in subject.feeders:
        carried = ampacity_figure(subject.view, feeder)
        if carried.known:
            made.append(Sheet(sheet_anchor(feeder.key, "ampacity"), about_feeder(feeder.key), carried))
        if subject.of_feeder(feeder.key).get("drop") is not None:
            figure = study_sheet(subject.view, feeder.key, "drop")
            made.append(Sheet(sheet_anchor(feeder.key, "drop"), about_feeder(feeder.key), figure))
    return made


_STUDIED = {"fault": "fault", "fault-min": "fault", "drop": "drop", "voltage": "voltage_under_load"}
"""Sheets of the studies for a piece of equipment, and the figure that has to be known for each."""


def _of_equipment(subject: Subject, equipment: Equipment) -> Iterator[Sheet]:
    name, about = equipment.name, about_equipment(equipment.name)
    node = subject.view.loads.nodes.get(name)
    if node is None:
        return
    if not equipment.circuits and any(not leaf.place for leaf in node.leaves):
        yield Sheet(sheet_anchor(name, "drawn"), about, equipment_figure(subject.view, name))
    if subject.of(name).get("load") is not None:
        for figure in LOAD_FIGURES:
            yield Sheet(sheet_anchor(name, figure), about, load_figure(subject.view, name, figure))
    elif two_sided(equipment) and not node.up.empty:  # a charger of a battery has no load at its own output
        for figure in AMOUNTS:
            yield Sheet(sheet_anchor(name, figure), about, load_figure(subject.view, name, figure))
    for figure in _STUDIED:
        if subject.of(name).get(_STUDIED[figure]) is not None:
            yield Sheet(sheet_anchor(name, figure), about, study_sheet(subject.view, name, figure))
    for leaf in node.leaves:
        if leaf.place:
            anchor = sheet_anchor(f"{name} {leaf.place}", "drawn")
            yield Sheet(anchor, about_circuit(name, leaf.place), circuit_figure(subject.view, name, leaf.place))
