"""What stands at a place; and no place of any text makes a feature fail."""

from __future__ import annotations

import contextlib
from pathlib import Path
from typing import Any

import pytest
from editing import DIFFICULT, ENCODINGS
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from marks import read

from wyeline_grammar.blocks import TextFile
from wyeline_server.places import at
from wyeline_server.protocol import RequestError
from wyeline_server.server import WyelineServer
from wyeline_server.session import Session

D = DIFFICULT
CASES = [
    ('panel "a $0b" 208Y/120', "TEXT", None, ("a b", "declared"), "panel"),
    ("panel P1 b$0us 225 A", "KEY", "key", None, "panel"),
    ("panel P1 bus $0225 A", "QUANTITY", "key", None, "panel"),
    ("panel P1$0 208Y/120", "NAME", None, ("P1", "declared"), "panel"),
    ("feeder A$0->B", "ARROW", None, ("A", "from"), "feeder"),
    ("feeder A.thr$0ough -> B", "PORT", None, None, "feeder"),
    ("feeder A -> B[A$0B]", "LEGS", None, None, "feeder"),
    ("panel P1\n  1  20 A 1p  li$0ghting", "FLAG", "flag", None, "circuit"),
    ("panel P1  $0  bus 3 A", None, None, None, "panel"),
    ("scenario S\n  switch A$0TS.normal", "PORT", None, ("ATS", "action"), "scenario"),
    ("panel P1 // P$01", None, None, None, "panel"),
    ("$0", None, None, None, ""),
]


@pytest.mark.parametrize("case", CASES, ids=[c[0] for c in CASES])
async def test_what_stands_there(case: tuple[str, str | None, str | None, tuple[str, str] | None, str]) -> None:
    text, kind, phrase, named, place = case
    fixture = read(text)
    cursor = fixture.cursors[0]
    here = at(TextFile("x", fixture.texts["site.wye"]), cursor.line, cursor.column)
    assert (here.token.kind if here.token else None) == kind
    assert (here.phrase.form if here.phrase else None) == phrase
    assert ((here.named.name, here.named.role) if here.named else None) == named
    assert here.place == place
    assert here.in_comment == ("//" in text)


_PIECES = st.sampled_from(
    [
        'panel "pump room" 208Y/120 like LAB', "type panel LAB like LAB", "feeder A -> A[AB]", 'feeder F: "',
        "  1,3 20 A 2p 1 kW with 2", "  like", "  allow x at 3 \"y\"", "// c", "/// d", "", "\t", "demolish",
        'include "no.wye"', 'include "', "scenario", '  open A -> ', "expect all panel drop <= 3 % in X", "system S S",
        "transformer T S -> ", "interlock K among", "raceway R", "  in R", f'panel "{D}"', "utility A 208Y/120", "wye",
        "feeder A.x.y -> ->", "  switch", "\ufeffpanel Q", "feeder : A -> B", "project", "panel", "type",
    ]
)  # fmt: skip
_METHODS = (
    "textDocument/declaration textDocument/definition textDocument/typeDefinition textDocument/implementation "
    "textDocument/references textDocument/documentHighlight textDocument/prepareRename textDocument/rename "
    "textDocument/documentSymbol textDocument/prepareCallHierarchy textDocument/codeLens textDocument/inlayHint "
    "textDocument/foldingRange textDocument/selectionRange textDocument/documentLink textDocument/formatting "
    "textDocument/rangeFormatting textDocument/onTypeFormatting textDocument/semanticTokens/full "
    "textDocument/semanticTokens/full/delta textDocument/semanticTokens/range"
).split()


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    lines=st.lists(_PIECES, max_size=8),
    place=st.tuples(st.integers(0, 9), st.integers(0, 30)),
    encoding=st.sampled_from(ENCODINGS),
)
async def test_no_text_makes_a_feature_fail(
    tmp_path: Path, lines: list[str], place: tuple[int, int], encoding: str
) -> None:
    server = _server(encoding)
    uri = (tmp_path / "a.wye").as_uri()
    server.session.open(uri, 1, "\n".join(lines))
    position = {"line": place[0], "character": place[1]}
    params: dict[str, Any] = {
        "textDocument": {"uri": uri},
        "position": position,
        "positions": [position],
        "range": {"start": {"line": 0, "character": 0}, "end": position},
        "newName": "NEW 1",
        "ch": "\n",
        "previousResultId": "1",
    }
    for method in _METHODS:
        with contextlib.suppress(RequestError):
            server.handlers[method](server, params)


class _Recording:
    """Collects handlers as the server would, without its guards."""

    def __init__(self, encoding: str) -> None:
        self.real = WyelineServer("test")
        self.real.session = Session(encoding)
        self.handlers: dict[str, Any] = {}

    def on(self, method: str, handler: Any, _options: Any = None) -> None:
        self.handlers[method] = handler

    def __getattr__(self, name: str) -> Any:
        return getattr(self.real, name)


def _server(encoding: str) -> Any:
    import importlib

    recording = _Recording(encoding)
    for name in "navigation rename symbols hierarchy lenses inlays folding selection links formatting tokens".split():
        importlib.import_module(f"wyeline_server.{name}").register(recording)
    return recording
