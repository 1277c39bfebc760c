"""A pygls server that keeps the text and finds nothing: what the protocol layer costs by itself."""

from __future__ import annotations

from lsprotocol import types
from pygls.lsp.server import LanguageServer

server = LanguageServer("nothing", "1")


def _tell(ls: LanguageServer, uri: str, version: int | None) -> None:
    ls.text_document_publish_diagnostics(types.PublishDiagnosticsParams(uri=uri, version=version, diagnostics=[]))


@server.feature(types.TEXT_DOCUMENT_DID_OPEN)
def opened(ls: LanguageServer, params: types.DidOpenTextDocumentParams) -> None:
    _tell(ls, params.text_document.uri, params.text_document.version)


@server.feature(types.TEXT_DOCUMENT_DID_CHANGE)
def changed(ls: LanguageServer, params: types.DidChangeTextDocumentParams) -> None:
    _tell(ls, params.text_document.uri, params.text_document.version)


if __name__ == "__main__":
    server.start_io()
