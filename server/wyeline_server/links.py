"""Links in a document: included files, and the pages of rules that allowances name."""

from __future__ import annotations

import os
from typing import Any

from wyeline_grammar import model as m
from wyeline_grammar.blocks import TextFile
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.remembering import OfBlocks
from wyeline_grammar.sources import SourceError, resolve_include, workspace_of
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer


def register(server: WyelineServer) -> None:
    server.on("textDocument/documentLink", _handler)


def links(server: WyelineServer, path: str, file: TextFile) -> list[Json]:
    """Every link of a document."""
    session = server.session
    pages = server.setting("rules.pages", "").rstrip("/")
    tooltips = server.client_can("textDocument.documentLink.tooltipSupport", False)
    workspace = _workspace(server, path)
    made: list[Json] = []
    for block in file.blocks:
        for span, target, is_rule in _targets(block.lines):
            if is_rule:
                uri, tip = f"{pages}/{target}" if pages else "", "What this rule asks, and why"
            else:
                uri, tip = _included(server, path, target, workspace)
            if uri:
                link: Json = {"range": session.positions.span(block, span), "target": uri}
                if tooltips:
                    link["tooltip"] = tip
                made.append(link)
    return made


@OfBlocks
def _targets(lines: tuple[str, ...]) -> tuple[tuple[m.Span, str, bool], ...]:
    """(place, target, whether it is a rule) of what a block refers to outside of its text."""
    statement = lower_block(lines)
    if isinstance(statement, m.Include):
        if not statement.target:
            return ()
        span = statement.target_span
        return ((span._replace(start=span.start + 1, end=span.end - 1), statement.target, False),)
    allows: tuple[m.Allow, ...] = getattr(statement, "allows", ())
    return tuple((allow.rule_span, allow.rule, True) for allow in allows)


def _workspace(server: WyelineServer, path: str) -> str:
    """The folder that includes may not leave: that of the file's model."""
    analysis = server.analysis_at(path)
    return analysis.model.workspace if analysis is not None else workspace_of(path)


def _included(server: WyelineServer, path: str, target: str, workspace: str) -> tuple[str, str]:
    try:
        included = resolve_include(path, target, workspace)
    except SourceError:
        return "", ""
    there = os.path.exists(included) or included in server.session.documents
    return server.session.uri_of(included), "Open this file" if there else "There is no such file yet"


def _handler(server: WyelineServer, params: Any) -> list[Json] | None:
    found = server.file_in(params)
    return links(server, *found) if found is not None else None
