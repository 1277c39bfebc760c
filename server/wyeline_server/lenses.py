"""Code lenses above equipment: what it carries and what a fault may be beside its ratings, and the way to the working
of its figures.

What is unknown shows nothing. Each kind is switched by a setting (``SETTINGS``).
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.linking import Equipment
from wyeline_grammar.quantities import format_quantity
from wyeline_grammar.references import names_of
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.analysis import Analysis
from wyeline_linter.loading import Loading, loading_of
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer
from wyeline_server.solved_words import fault_beside_rating, fault_of, mark

SETTINGS = {
    "codeLens.loads": "Show above equipment what it carries beside its rating.",
    "codeLens.faults": "Show above equipment the largest fault current beside what it is rated for, once it is solved.",
    "codeLens.working": "Show above equipment the way to the working of its figures.",
}
"""The settings that switch lenses, all on unless set to false, with what each does."""

WORKING_SHEET = "wyeline.workingSheet"
_DIMENSIONS = {"A": "current", "VA": "apparent-power", "W": "power"}


def register(server: WyelineServer) -> None:
    server.on("textDocument/codeLens", _handler)


def lenses(server: WyelineServer, path: str, file: TextFile) -> list[Json]:
    """The lenses of a document, in the order of its lines."""
    analysis = server.analysis_at(path)
    if analysis is None:
        return []
    shown = {name for name in SETTINGS if server.setting(name, True)}
    if WORKING_SHEET not in server.command_handlers:
        shown.discard("codeLens.working")
    study = server.study_of(analysis) if "codeLens.faults" in shown else None
    made: list[Json] = []
    for count, equipment in enumerate(equipment_in(analysis, file) if shown else ()):
        if count % 256 == 0:
            server.stop_if_cancelled()
        commands: list[Json] = []
        loading = loading_of(analysis.view, equipment.name)
        if loading is not None and "codeLens.loads" in shown:
            commands.append({"title": in_words(loading), "command": ""})
        fault = fault_of(study, equipment)
        if study is not None and fault is not None and (fault.limit_a is not None or equipment.kind in BOARDS):
            commands.append({"title": fault_beside_rating(fault) + mark(study), "command": ""})
        if loading is not None and "codeLens.working" in shown:
            arguments = [server.session.uri_of(path), equipment.name]
            commands.append({"title": "show working", "command": WORKING_SHEET, "arguments": arguments})
        if commands:
            range_ = server.session.positions.span(equipment.block, equipment.statement.head)
            made += [{"range": range_, "command": command} for command in commands]
    return made


def equipment_in(analysis: Analysis, file: TextFile) -> Iterator[Equipment]:
    """The equipment that a file's blocks declare, in their order; of those that share a name the one that counts."""
    for block in file.blocks:
        for name in declared_by(block.lines):
            equipment = analysis.model.equipment.get(name)
            if equipment is not None and equipment.block is block:
                yield equipment


def declared_by(lines: tuple[str, ...]) -> tuple[str, ...]:
    """The name that a block declares, if it declares one."""
    return tuple(named.name for named in names_of(lines) if named.role == "declared")


def in_words(loading: Loading) -> str:
    """``load 143 A of main 200 A (72 %)``."""
    dimension = _DIMENSIONS[loading.unit]
    carried, limit = (format_quantity(value, dimension) for value in (_rounded(loading.carried), loading.limit))
    return f"load {carried} of {loading.of} {limit} ({100 * loading.share:.0f} %)"


def _rounded(value: float) -> float:
    return float(f"{value:.3g}")


def _handler(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    return lenses(server, *found) if found is not None else None
