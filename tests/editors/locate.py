"""Where the editors are, and what happens when one is missing.

`.ci/install-editors` puts what does not come from Debian into ``$WYELINE_EDITORS`` (default /opt/wyeline-editors).
With the environment variable ``CI`` set a missing editor fails the test; without it the test is skipped.
"""

from __future__ import annotations

import os
import shutil
import sys
from pathlib import Path
from typing import NoReturn

import pytest

EDITORS = Path(os.environ.get("WYELINE_EDITORS", "/opt/wyeline-editors"))
TOP = Path(__file__).resolve().parents[2]
CONFIGS = TOP / "editor-configs"


def missing(what: str, install: str) -> NoReturn:
    """End the test: something that `.ci/install-editors` installs is not here."""
    message = f"{what} is missing: run .ci/install-editors {install}"
    if os.environ.get("CI"):
        pytest.fail(message)
    pytest.skip(message)


def program(name: str, install: str) -> str:
    """The path of an editor's program."""
    own = EDITORS / "bin" / name
    found = str(own) if own.exists() else shutil.which(name)
    return found or missing(name, install)


def server_folder() -> Path:
    """The folder that holds ``wyeline-server``: that of the Python that runs the tests, or on the PATH.

    ``$WYELINE_TEST_SERVER`` names another folder.
    """
    named = os.environ.get("WYELINE_TEST_SERVER")
    if named:
        return Path(named)
    beside = Path(sys.executable).parent / "wyeline-server"
    found = str(beside) if beside.exists() else shutil.which("wyeline-server")
    if not found:
        pytest.fail("wyeline-server is not installed: pip install -e .")
    return Path(found).parent


def node_modules(part: str) -> Path:
    """A folder of npm packages: ``extension`` (what builds the extension) or ``vscode`` (what runs it)."""
    folder = EDITORS / part / "node_modules"
    if not folder.is_dir():
        missing(str(folder), "vscode")
    return folder
