"""Code actions: the findings' own fixes, accepting a finding, changes a drafter may ask for, fix all, and format.

Only what the rules know already is used here: clients ask for actions with every move of the cursor.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from wyeline_grammar.blocks import Block, TextFile
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import EquipmentStatement, FeederStatement
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter import refactorings
from wyeline_linter.accepting import to_offer
from wyeline_linter.analysis import Analysis
from wyeline_linter.file_splitting import Split, split_board, split_selected
from wyeline_linter.findings import Edit, Finding, Fix, Safety, insert_below
from wyeline_linter.fixing import choose
from wyeline_server.announced import EXTRACT, FIX_ALL, ORGANIZE, QUICK_FIX, REWRITE
from wyeline_server.diagnostics import overlaps
from wyeline_server.edits import of_text_edits, split_edit, workspace_edit
from wyeline_server.formatting import format_document
from wyeline_server.positions import Json
from wyeline_server.protocol import BadParametersError
from wyeline_server.server import WyelineServer

_AUTOMATIC = 2


def register(server: WyelineServer) -> None:
    server.on("textDocument/codeAction", answer)
    server.on_command("wyeline.applyEdit", apply_edit)


def answer(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    if found is None:
        return None
    path, file = found
    context = params.get("context") or {}
    only = context.get("only")
    wanted = tuple(str(kind) for kind in only) if isinstance(only, list) and only else None
    start, end = server.range_in(params, file)
    here = _Here(server, path, params["range"], context.get("diagnostics") or [])
    actions: list[Json] = []
    if _asked(QUICK_FIX, wanted):
        actions += here.quick_fixes()
    analysis = server.analysis_at(path)
    if analysis is not None and (_asked(EXTRACT, wanted) or _asked(REWRITE, wanted)):
        block = file.block_at(start[0])
        offered: list[Json] = []
        if start[0] < block.end_line and end[0] < block.end_line:
            offered += here.refactorings(analysis, block)
            if context.get("triggerKind") != _AUTOMATIC:  # searches that every move of the cursor cannot wait for
                offered += here.searched(analysis, file, block)
        if start != end:
            last = end[0] - 1 if end[1] == 0 else end[0]
            offered += here.split(lambda taken: split_selected(file, start[0], last, taken))
        actions += [a for a in offered if _asked(a["kind"], wanted)]
    if wanted is not None and _asked(FIX_ALL, wanted, by_name=True):
        actions += here.fix_all()
    if wanted is not None and _asked(ORGANIZE, wanted, by_name=True):
        edits = format_document(file, server.session.positions)
        if edits:
            actions.append({"title": "Format", "kind": ORGANIZE, "edit": of_text_edits(server, {path: edits})})
    if server.client_can("textDocument.codeAction.codeActionLiteralSupport") is None:
        return [{"title": a["title"], "command": "wyeline.applyEdit", "arguments": [a["edit"]]} for a in actions]
    return actions


def _asked(kind: str, wanted: tuple[str, ...] | None, *, by_name: bool = False) -> bool:
    """Whether a kind is wanted; actions on the whole file only where they are asked for."""
    if wanted is None:
        return not by_name
    return any(w == "" or kind == w or kind.startswith(w + ".") for w in wanted)


class _Here:
    """What can be done about a range of a file. ``shown`` are the diagnostics that the client shows there."""

    def __init__(self, server: WyelineServer, path: str, range_: Json, shown: list[Json]) -> None:
        self.server = server
        self.path = path
        self.shown = [d for d in shown if isinstance(d, dict)]
        self.start = (int(range_["start"]["line"]), int(range_["start"]["character"]))
        self.end = (int(range_["end"]["line"]), int(range_["end"]["character"]))

    def findings(self) -> list[tuple[Finding, Json]]:
        """The findings that the range touches, each with its range; of a cursor that touches none, those of its line:
        who types stands behind what was typed."""
        positions = self.server.session.positions
        near = [
            (finding, positions.span(finding.place.block, finding.place.span))
            for finding, _ in self.server.diagnostics.findings_in(self.path, (self.start[0], self.end[0]))
        ]
        touched = [(finding, range_) for finding, range_ in near if overlaps(range_, self.start, self.end)]
        if touched or self.start != self.end:
            return touched
        return [(finding, range_) for finding, range_ in near if range_["start"]["line"] == self.start[0]]

    def quick_fixes(self) -> Iterator[Json]:
        accepting: list[Json] = []
        for finding, range_ in self.findings():
            shown = [d for d in self.shown if d.get("code") == finding.rule and d.get("range") == range_]
            offered = [f for f in finding.fixes if f.safety is not Safety.SHOW and f.edits]
            for number, fix in enumerate(offered):
                action = self._action(fix.title, QUICK_FIX, fix.edits)
                if shown:
                    action["diagnostics"] = shown
                action["isPreferred"] = number == 0
                yield action
            accept = self._accepting(finding)
            if accept is not None:
                if shown:
                    accept["diagnostics"] = shown
                accepting.append(accept)
        yield from accepting

    def _accepting(self, finding: Finding) -> Json | None:
        """An ``allow`` below the statement; its reason is for the drafter to write."""
        if not to_offer(finding):
            return None
        block = finding.place.block
        statement = lower_block(block.lines)
        if not isinstance(statement, EquipmentStatement | FeederStatement) or statement.damaged:
            return None
        where = f" at {finding.position}" if finding.position else ""
        edit = insert_below(block, statement.last_line, f'  allow {finding.rule}{where} "say here why it is accepted"')
        return self._action(f"Accept `{finding.rule}` here, with a reason", QUICK_FIX, (edit,))

    def refactorings(self, analysis: Analysis, block: Block) -> Iterator[Json]:
        statement, view = lower_block(block.lines), analysis.view
        if isinstance(statement, EquipmentStatement) and statement.name is not None and not statement.is_type:
            equipment = view.equipment(statement.name.text)
            if equipment is not None and equipment.block is block:
                yield from self._of(refactorings.extract_type(view, equipment), EXTRACT)
        elif isinstance(statement, FeederStatement) and statement.source is not None:
            feeder = next((f for f in view.feeders_out_of(statement.source.name) if f.block is block), None)
            if feeder is not None:
                yield from self._of(refactorings.insert_panel(view, feeder), REWRITE)
                yield from self._of(refactorings.insert_transformer(view, feeder), REWRITE)

    def searched(self, analysis: Analysis, file: TextFile, block: Block) -> Iterator[Json]:
        """What is found by trying: circuits moved to even out the legs of a board, a board with all that it feeds."""
        statement, view = lower_block(block.lines), analysis.view
        if not isinstance(statement, EquipmentStatement) or statement.name is None or statement.is_type:
            return
        board = view.equipment(statement.name.text)
        if board is not None and board.block is block and board.kind in BOARDS:
            yield from self._of(refactorings.balance_legs(view, board), REWRITE)
            yield from self.split(lambda taken: split_board(view, file, board, taken))

    def split(self, find: Callable[[list[str]], Split | None]) -> Iterator[Json]:
        """Statements moved to a new file, where the client can create one."""
        server = self.server
        if "create" not in (server.client_can("workspace.workspaceEdit.resourceOperations") or ()):
            return
        if server.session.names.saved(self.path):
            found = find(list(server.session.documents))
            if found is not None:
                edit = split_edit(server, self.path, found)
                yield {"title": found.title, "kind": EXTRACT, "edit": edit}

    def fix_all(self) -> Iterator[Json]:
        """Every fix that changes only how something is written, at once."""
        findings = [finding for finding, _ in self.server.diagnostics.findings_in(self.path)]
        fixes = choose(findings, frozenset({Safety.SAFE})).fixes
        if fixes:
            edits = tuple(edit for fix in fixes for edit in fix.edits)
            yield self._action(f"Mend {len(fixes)} slip{'s' if len(fixes) > 1 else ''} of writing", FIX_ALL, edits)

    def _of(self, fix: Fix | None, kind: str) -> Iterator[Json]:
        if fix is not None:
            yield self._action(fix.title, kind, fix.edits)

    def _action(self, title: str, kind: str, edits: tuple[Edit, ...]) -> Json:
        return {"title": title, "kind": kind, "edit": workspace_edit(self.server, edits)}


def apply_edit(server: WyelineServer, arguments: list[Any]) -> None:
    """Have the client apply an edit: for clients that take commands as actions."""
    if not arguments or not isinstance(arguments[0], dict):
        raise BadParametersError("wyeline.applyEdit takes a workspace edit")
    server.protocol.ask("workspace/applyEdit", {"edit": arguments[0]})
