"""What the server says that it can do, said once: the client is told before what carries it out is loaded.

A test holds it against what the features register.
"""

from __future__ import annotations

import logging
from typing import TYPE_CHECKING, Any

from lsprotocol import types
from pygls.capabilities import ServerCapabilitiesBuilder

if TYPE_CHECKING:
    from cattrs import Converter

logger = logging.getLogger(__name__)

METHODS = frozenset(
    f"textDocument/{name}"
    for name in """didOpen didChange didSave didClose hover completion signatureHelp declaration definition
    typeDefinition implementation references documentHighlight documentSymbol codeAction codeLens documentLink
    formatting rangeFormatting onTypeFormatting prepareRename rename foldingRange selectionRange prepareCallHierarchy
    semanticTokens/full semanticTokens/full/delta semanticTokens/range inlayHint""".split()
) | {
    "completionItem/resolve",
    "callHierarchy/incomingCalls",
    "callHierarchy/outgoingCalls",
    "workspace/symbol",
    "workspace/executeCommand",
    "workspace/didChangeConfiguration",
    "workspace/didChangeWatchedFiles",
    "workspace/didChangeWorkspaceFolders",
}
"""Answered to every client."""
PULLED = frozenset({"textDocument/diagnostic", "workspace/diagnostic"})
"""Answered to a client that pulls findings; others are pushed to."""
COMMANDS = tuple(f"wyeline.{name}" for name in "applyEdit connect partners size workingSheet picture preview".split())

QUICK_FIX, EXTRACT, REWRITE = "quickfix", "refactor.extract", "refactor.rewrite"
FIX_ALL, ORGANIZE = "source.fixAll", "source.organize"
ACTION_KINDS = (QUICK_FIX, EXTRACT, REWRITE, FIX_ALL, ORGANIZE)
TOKEN_TYPES = (
    "namespace type class enum enumMember variable property event function keyword modifier comment string number "
    "regexp operator parameter decorator"
).split()
TOKEN_MODIFIERS = ("declaration", "definition", "deprecated", "documentation")


def understood(client: dict[str, Any], converter: Converter) -> types.ClientCapabilities:
    """What a client says that it can do, typed; a part that does not fit its types is left out, not the whole."""
    parts = {}
    for name, part in client.items():
        try:
            converter.structure({name: part}, types.ClientCapabilities)
        except Exception:
            logger.info("capabilities that cannot be read: %s", name)
        else:
            parts[name] = part
    typed: types.ClientCapabilities = converter.structure(parts, types.ClientCapabilities)
    return typed


def encoding_for(client: types.ClientCapabilities) -> str:
    """The first encoding of positions that a client prefers and Wyeline knows."""
    chosen = ServerCapabilitiesBuilder.choose_position_encoding(client)
    return chosen.value if isinstance(chosen, types.PositionEncodingKind) else str(chosen)


def capabilities(client: types.ClientCapabilities, encoding: str, pulls: bool) -> types.ServerCapabilities:
    """What a client is told, as far as it can take it."""
    built: types.ServerCapabilities = ServerCapabilitiesBuilder(
        client,
        set(METHODS | PULLED if pulls else METHODS),
        _options(),
        list(COMMANDS),
        types.TextDocumentSyncKind.Incremental,
        None,
        encoding,
    ).build()  # type: ignore[no-untyped-call]
    return built


def _options() -> dict[str, Any]:
    legend = types.SemanticTokensLegend(token_types=TOKEN_TYPES, token_modifiers=list(TOKEN_MODIFIERS))
    return {
        "textDocument/didSave": types.SaveOptions(include_text=False),
        "textDocument/completion": types.CompletionOptions(
            trigger_characters=[" ", "[", ".", ">", "+", '"'], resolve_provider=True
        ),
        "textDocument/signatureHelp": types.SignatureHelpOptions(trigger_characters=[" "], retrigger_characters=[","]),
        "textDocument/codeAction": types.CodeActionOptions(code_action_kinds=list(ACTION_KINDS)),
        "textDocument/onTypeFormatting": types.DocumentOnTypeFormattingOptions(first_trigger_character="\n"),
        "textDocument/semanticTokens/full": legend,
        "textDocument/diagnostic": types.DiagnosticOptions(
            inter_file_dependencies=True, workspace_diagnostics=True, identifier="wyeline"
        ),
    }
