"""A server over stdio for every encoding; whatever it complains about fails the test."""

from __future__ import annotations

import gc
import sys
from collections.abc import AsyncIterator, Iterator
from pathlib import Path

import pytest
import pytest_asyncio
import pytest_lsp
from conversation import Conversation, Converse, Said, studies_over
from editing import ENCODINGS, SERVER, Client, Editor, capabilities
from lsprotocol import types
from pytest_asyncio import is_async_test
from pytest_lsp import ClientServerConfig

_CONFIG = ClientServerConfig(server_command=SERVER, client_factory=Client)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if "tests/server" in item.path.as_posix():
            if is_async_test(item):
                item.add_marker(pytest.mark.asyncio(loop_scope="session"), append=False)
            item.add_marker(pytest.mark.filterwarnings("error::pytest_lsp.LspSpecificationWarning"))


@pytest_lsp.fixture(config=_CONFIG, scope="session", params=ENCODINGS)
async def server(lsp_client: Client, request: pytest.FixtureRequest) -> AsyncIterator[None]:
    """One server for each encoding, told to push."""
    await lsp_client.initialize_session(types.InitializeParams(capabilities=capabilities(request.param)))
    yield
    await lsp_client.shutdown_session()


@pytest_lsp.fixture(config=_CONFIG, scope="session")
async def plain_server(lsp_client: Client) -> AsyncIterator[None]:
    """A server whose client says nothing about itself."""
    await lsp_client.initialize_session(types.InitializeParams(capabilities=types.ClientCapabilities()))
    yield
    await lsp_client.shutdown_session()


@pytest_asyncio.fixture(loop_scope="session")
async def converse() -> AsyncIterator[Converse]:
    """Begins conversations. All tests share a loop: whatever becomes of a test, nothing of it reaches the next one."""
    begun: list[Conversation] = []

    def begin(capabilities: Said) -> Conversation:
        begun.append(Conversation(capabilities))
        return begun[-1]

    interval_s = sys.getswitchinterval()
    yield begin
    for each in begun:
        await each.end()
    await studies_over()
    assert gc.isenabled() and sys.getswitchinterval() == interval_s


@pytest.fixture
def editor(server: Client, tmp_path: Path) -> Iterator[Editor]:
    """A user with an empty folder, in each encoding."""
    yield from _at_work(server, _encoding(server), tmp_path)


@pytest.fixture
def plain_editor(plain_server: Client, tmp_path: Path) -> Iterator[Editor]:
    """A user of an editor that knows nothing new: UTF-16, and no options."""
    yield from _at_work(plain_server, "utf-16", tmp_path)


def _encoding(client: Client) -> str:
    general = client.capabilities.general if client.capabilities else None
    assert general is not None and general.position_encodings
    return str(general.position_encodings[0].value)


def _at_work(client: Client, encoding: str, folder: Path) -> Iterator[Editor]:
    working = Editor(client, encoding, folder)
    yield working
    for name in list(working.texts):
        if name in working.versions:
            working.close(name)
    complaints = client.complaints()
    client.messages.clear()  # only what was seen: a complaint that comes late fails the next test
    client.stderr_lines.clear()
    assert not complaints, "\n".join(complaints)
