"""Everything that is handed over of one model in one switch state: sheets of the diagram, tables, working sheets."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property

from wyeline_linter.analysis import Analysis
from wyeline_linter.reports.columns import Table, TableKind
from wyeline_linter.reports.diagram.papers import SheetSize
from wyeline_linter.reports.diagram.sheets import SheetSet, sheets_of
from wyeline_linter.reports.equipment_lists import (
    EQUIPMENT,
    GROUNDING,
    LABELS,
    TRANSFORMERS,
    equipment_list,
    grounding_list,
    label_list,
    transformer_list,
)
from wyeline_linter.reports.fault_and_drop import FAULTS, fault_and_drop
from wyeline_linter.reports.feeder_schedule import FEEDERS, feeder_schedule
from wyeline_linter.reports.issue_list import ISSUES, issue_list
from wyeline_linter.reports.load_summary import CLASSES, SUMMARY, load_classes, load_summary
from wyeline_linter.reports.one_line import ToDraw, paper_of, to_draw
from wyeline_linter.reports.panel_schedule import SCHEDULE, panel_schedules
from wyeline_linter.reports.review_tables import (
    ASSUMPTIONS,
    CHECKLISTS,
    EXPECTATIONS,
    FINDINGS,
    assumptions_and_gaps,
    checklists,
    expectations_table,
    findings_table,
)
from wyeline_linter.reports.since import CHANGES, Since, change_list
from wyeline_linter.reports.subject import Subject
from wyeline_linter.reports.working_sheets import Sheet, working_sheets

TABLE_KINDS: tuple[TableKind, ...] = (
    ISSUES,
    SCHEDULE,
    FEEDERS,
    SUMMARY,
    CLASSES,
    FAULTS,
    TRANSFORMERS,
    GROUNDING,
    EQUIPMENT,
    CHECKLISTS,
    FINDINGS,
    EXPECTATIONS,
    ASSUMPTIONS,
    LABELS,
)
"""Every table of a report, in the order in which they are handed over."""

DIAGRAM, WORKING = "diagram", "working"
EMPTY_PLACE = "_" * 12
"""Where somebody signs by hand."""
PARTS: tuple[str, ...] = (DIAGRAM, *(kind.name for kind in TABLE_KINDS), WORKING)
"""What ``--only`` takes."""

_BUILDERS: dict[str, Callable[[Subject], list[Table]]] = {
    ISSUES.name: lambda s: [issue_list(s)],
    SCHEDULE.name: panel_schedules,
    FEEDERS.name: lambda s: [feeder_schedule(s)],
    SUMMARY.name: lambda s: [load_summary(s)],
    CLASSES.name: lambda s: [load_classes(s)],
    FAULTS.name: lambda s: [fault_and_drop(s)],
    TRANSFORMERS.name: lambda s: [transformer_list(s)],
    GROUNDING.name: lambda s: [grounding_list(s)],
    EQUIPMENT.name: lambda s: [equipment_list(s)],
    CHECKLISTS.name: checklists,
    FINDINGS.name: lambda s: [findings_table(s)],
    EXPECTATIONS.name: lambda s: [expectations_table(s)],
    LABELS.name: lambda s: [label_list(s)],
}
_COUNTED_FOR_GAPS = frozenset({SCHEDULE.name, FEEDERS.name, SUMMARY.name, FAULTS.name, TRANSFORMERS.name})


@dataclass(frozen=True, slots=True)
class Wishes:
    """What is asked for: the parts (all of them by default), a date to print, the paper of the diagram and how high its
    smallest capitals are, and an earlier issue to mark changes against."""

    parts: frozenset[str] = frozenset(PARTS)
    date: str = ""
    paper: str = ""
    since: Since | None = None
    lettering_mm: float | None = None


@dataclass(slots=True)
class Made:
    """What took the longest to make of a model, for the next package of it: the diagram with all that it follows from,
    and the working sheets by their anchors."""

    diagram: tuple[ToDraw, SheetSet] | None = None
    sheets: Mapping[str, Sheet] = field(default_factory=dict)


class Package:
    """One model in one switch state. Each part is made when first asked for; of ``made``, what was made of the model as
    it was before, all is taken over that would be made the same again."""

    def __init__(
        self,
        analysis: Analysis,
        wishes: Wishes | None = None,
        progress: Callable[[str], None] = lambda _: None,
        made: Made | None = None,
    ) -> None:
        self.subject = Subject(analysis)
        self.wishes = wishes or Wishes()
        self._progress = progress
        self.made = made if made is not None else Made()

    @property
    def kinds(self) -> tuple[TableKind, ...]:
        """Every kind of table that may be handed over: that of changes first, where an earlier issue is named."""
        return TABLE_KINDS if self.wishes.since is None else (CHANGES, *TABLE_KINDS)

    def wants(self, part: str) -> bool:
        if part == ISSUES.name and not self.subject.issues:
            return False
        return part in self.wishes.parts or (part == CHANGES.name and self.wishes.since is not None)

    @property
    def paper(self) -> SheetSize:
        """The sheets of the diagram."""
        return paper_of(self.subject, self.wishes.paper, self.wishes.lettering_mm)

    @cached_property
    def diagram(self) -> SheetSet:
        """The one-line diagram on sheets."""
        self._progress("one-line diagram")
        linked = self.wants(EQUIPMENT.name) and self.wants(FEEDERS.name)
        drawn = to_draw(self.subject, self.date, self.paper, linked=linked, since=self.wishes.since)
        if self.made.diagram is None or self.made.diagram[0] != drawn:
            self.made.diagram = drawn, sheets_of(*drawn)
        return self.made.diagram[1]

    @cached_property
    def sheets(self) -> list[Sheet]:
        """All working sheets."""
        count = len(self.subject.equipment)
        before = self.made.sheets
        found = [
            known if (known := before.get(sheet.anchor)) is not None and known.says_what(sheet) else sheet
            for sheet in working_sheets(self.subject, lambda done: self._progress(f"working sheets {done} of {count}"))
        ]
        self.made.sheets = {sheet.anchor: sheet for sheet in found}
        return found

    @cached_property
    def anchors(self) -> frozenset[str]:
        """The working sheets that a cell may link to; none where they are not part of what is handed over."""
        return frozenset(sheet.anchor for sheet in self.sheets) if self.wants(WORKING) else frozenset()

    @cached_property
    def tables(self) -> list[Table]:
        """All tables that are asked for, in their order."""
        wanted = {name for name in _BUILDERS if self.wants(name)}
        gaps = self.wants(ASSUMPTIONS.name)
        made: dict[str, list[Table]] = {}
        for kind in TABLE_KINDS:
            if kind.name in wanted or (gaps and kind.name in _COUNTED_FOR_GAPS):
                self._progress(kind.title.lower())
                made[kind.name] = _BUILDERS[kind.name](self.subject)
        if gaps:
            self._progress(ASSUMPTIONS.title.lower())
            others = [t for kind in TABLE_KINDS if kind.name in _COUNTED_FOR_GAPS for t in made[kind.name]]
            made[ASSUMPTIONS.name] = [assumptions_and_gaps(self.subject, others, self.sheets)]
            wanted.add(ASSUMPTIONS.name)
        if self.wishes.since is not None:
            made[CHANGES.name] = [change_list(self.wishes.since)]
            wanted.add(CHANGES.name)
            for table in (t for kind in wanted for t in made[kind]):
                table.marked = self.wishes.since.marked
        return [table for kind in self.kinds if kind.name in wanted for table in made[kind.name]]

    def of(self, kind: TableKind) -> list[Table]:
        """The tables of one kind."""
        return [table for table in self.tables if table.kind is kind]

    @property
    def issue(self) -> tuple[str, ...]:
        """What tells one issue of a project from another: its number, revision and date, as far as they are given."""
        number, revision = self.subject.project_text("number"), self.subject.revision
        return tuple(text for text in (number, f"revision {revision}" if revision else "", self.date) if text)

    @property
    def date(self) -> str:
        """The date that is asked for, else the day of the issue."""
        return self.wishes.date or self.subject.issue_date

    @property
    def colophon(self) -> str:
        """The title block in one line: what it is, which issue of it, for whom, and who drew and checked it."""
        subject = self.subject
        client, engineer = (subject.project_text(key) for key in ("client", "engineer"))
        hands = (f"drawn {subject.drawn or EMPTY_PLACE}", f"checked {subject.checked or EMPTY_PLACE}")
        parts = (subject.project, *self.issue, f"for {client}" if client else "", *hands)
        return " \N{MIDDLE DOT} ".join(text for text in (*parts, f"engineer {engineer}" if engineer else "") if text)

    @property
    def caution(self) -> str:
        """What every sheet says: the caution, the code edition, and the switch state it shows."""
        return f"{self.foot} Switch state: {self.subject.scenario}."

    @property
    def foot(self) -> str:
        """What holds in every switch state: the caution and the code edition."""
        return f"{self.subject.cautions[0]} Basis: {self.subject.basis_in_words}."


def parts_named(words: Iterable[str]) -> frozenset[str]:
    """The parts of a report by name. Raises KeyError with the first word that names none."""
    found = [w for word in words for w in word.split(",") if w]
    for word in found:
        if word not in PARTS:
            raise KeyError(word)
    return frozenset(found) or frozenset(PARTS)
