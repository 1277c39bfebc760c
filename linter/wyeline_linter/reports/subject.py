"""What every part of a report reads: one judged model, its figures, and the anchors by which parts refer to another."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Mapping
from functools import cached_property
from typing import Any, Literal

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Body, Issue, ProjectStatement
from wyeline_linter import issues
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures, ordered_feeders, ordered_names
from wyeline_linter.network import NORMAL
from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.reports.diagram.svg import svg_id
from wyeline_linter.system_words import conductor_text
from wyeline_linter.view import View

BASIS_WORDS = {
    "us-2023": "NFPA 70 (NEC), 2023 edition",
    "iec": "IEC 60364 family; national rules are not in it",
}
NO_BASIS = "no code basis named: only the rules of physics were applied"
NO_CONCLUSION = (
    "No conclusion is drawn on device coordination, arc flash, listing of equipment combinations, hazardous locations, "
    "health care, fire pumps, pools or lightning protection. Bonding of neutrals, transfer poles, ground-fault "
    "protection and the smallest fault of generators: confirm with an engineer."
)


class Subject:
    """One model in one switch state."""

    def __init__(self, analysis: Analysis) -> None:
        self.analysis = analysis
        self.view: View = analysis.view
        self.root_folder = os.path.dirname(analysis.model.root)
        self._files: dict[str, str] = {}

    @property
    def scenario(self) -> str:
        return self.analysis.scenario or NORMAL

    @cached_property
    def figures(self) -> dict[str, Any]:
        """What ``wyeline show --json`` prints: the one source of every derived figure of a report."""
        return model_figures(self.view)

    def of(self, name: str) -> Mapping[str, Any]:
        """The figures of a piece of equipment."""
        found: Mapping[str, Any] = self.figures["equipment"].get(name, {})
        return found

    def of_feeder(self, key: str) -> Mapping[str, Any]:
        found: Mapping[str, Any] = self.figures["feeders"].get(key, {})
        return found

    @cached_property
    def equipment(self) -> list[Equipment]:
        """In the order of the files."""
        return [self.view.model.equipment[name] for name in ordered_names(self.view)]

    @cached_property
    def feeders(self) -> list[Feeder]:
        return ordered_feeders(self.view)

    # the project

    @cached_property
    def project_statement(self) -> ProjectStatement | None:
        projects = self.view.model.projects
        return projects[0][1] if projects else None

    @property
    def project_block(self) -> Block | None:
        projects = self.view.model.projects
        return projects[0][0] if projects else None

    @property
    def project_body(self) -> Body | None:
        return self.project_statement.body if self.project_statement is not None else None

    @cached_property
    def project(self) -> str:
        """The project's name; that of the root file without one."""
        name = self.project_statement.name if self.project_statement is not None else None
        return name.text if name is not None else os.path.basename(self.view.model.root)

    def project_text(self, key: str) -> str:
        return (self.project_body.text(key) or "") if self.project_body is not None else ""

    @cached_property
    def issues(self) -> tuple[Issue, ...]:
        """The issues that the project lists, the oldest first."""
        return issues.oldest_first(self.project_statement) if self.project_statement is not None else ()

    @cached_property
    def revision(self) -> str:
        """The revision as it prints: as stated, else the newest issue."""
        return issues.revision(self.project_statement) if self.project_statement is not None else ""

    @property
    def revision_mark(self) -> str:
        """The revision beside a mark on a drawing: its name alone."""
        return self.revision.removesuffix(f" ({issues.NOT_YET})")

    @cached_property
    def issue_date(self) -> str:
        """The day of the revision that prints; empty where it is not known."""
        return issues.issue_date(self.project_statement) if self.project_statement is not None else ""

    @property
    def drawn(self) -> str:
        """Who drew it; empty where nobody is named, so that a place to sign stays."""
        return issues.drawn_by(self.project_statement) if self.project_statement is not None else ""

    @property
    def checked(self) -> str:
        """Who checked it; empty where nobody is named, so that a place to sign stays."""
        return issues.checked_by(self.project_statement) if self.project_statement is not None else ""

    @property
    def basis_in_words(self) -> str:
        """The code edition that the rules and tables follow."""
        basis = self.view.basis
        return NO_BASIS if basis is None else f"{basis}: {BASIS_WORDS.get(basis, 'code tables of this name')}"

    @property
    def cautions(self) -> tuple[str, ...]:
        return (CAUTION, NO_CONCLUSION)

    @cached_property
    def practice(self) -> Literal["us", "iec"]:
        """``us`` or ``iec``: which names of legs and which paper are usual."""
        return "iec" if (self.view.derivation.practice or "us") == "iec" else "us"

    def legs(self, conductors: Iterable[str]) -> str:
        """Conductors as practice calls them: ``A B N`` or ``L1 L2 N``."""
        return " ".join(conductor_text(c, self.practice) for c in conductors)

    # anchors and places

    def place(self, place: Place) -> str:
        """``file:line``, the file as seen from the model's own folder, so that a report does not tell where it lay."""
        return f"{self.file(place.file)}:{place.row + 1}"

    def file(self, path: str) -> str:
        known = self._files.get(path)
        if known is None:
            try:
                relative = os.path.relpath(path, self.root_folder)
            except ValueError:  # another drive
                relative = path
            known = self._files[path] = relative.replace(os.sep, "/")
        return known

    def sheet_of(self, name: str) -> Callable[[str], str]:
        """Anchors of the working sheets of a piece of equipment or feeder, by the name of the figure."""
        return lambda figure: sheet_anchor(name, figure)


def about_equipment(name: str) -> str:
    """The key by which diagram, rows and sheets speak of the same piece of equipment."""
    return f"e {name}"


def about_feeder(key: str) -> str:
    return f"f {key}"


def about_circuit(board: str, place: str) -> str:
    return f"c {board} {place}"


def row_anchor(about: str) -> str:
    """The anchor of the row that lists a thing."""
    return svg_id(f"row {about}")


def sheet_anchor(name: str, figure: str) -> str:
    return svg_id(f"working {name} {figure}")
