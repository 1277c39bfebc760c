"""Runs the command line in a process of its own, as a user (or a hostile caller) does."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

WYELINE = [sys.executable, "-m", "wyeline_linter.cli"]
LONGEST_S = 120.0
"""A run that takes longer counts as hung; every one takes a fraction of it."""


@dataclass(frozen=True)
class Ran:
    """What a run left: exit code, and what it wrote."""

    code: int
    out: str
    err: str

    @property
    def all(self) -> str:
        return self.out + self.err


def environment(**more: str) -> dict[str, str]:
    """The environment of a run; no cache unless one is asked for."""
    return {**os.environ, "WYELINE_CACHE": "off", "PYTHONIOENCODING": "utf-8", **more}


def wyeline(*arguments: str | Path, cwd: Path, env: Mapping[str, str] | None = None, **options: Any) -> Ran:
    """Run a command and look at what must hold of every run: a known exit code, and no traceback."""
    done = subprocess.run(
        [*WYELINE, *map(str, arguments)],
        cwd=cwd,
        env=environment(**(env or {})),
        capture_output=True,
        timeout=LONGEST_S,
        check=False,
        **options,
    )
    ran = Ran(done.returncode, done.stdout.decode("utf-8", "replace"), done.stderr.decode("utf-8", "replace"))
    assert ran.code in (0, 1, 2, 130), ran
    assert "Traceback" not in ran.all and "a fault of Wyeline" not in ran.all, ran
    return ran


def write(folder: Path, **files: str | bytes) -> None:
    """Files by name without ending; text as UTF-8."""
    for name, content in files.items():
        data = content.encode("utf-8", "surrogatepass") if isinstance(content, str) else content
        (folder / f"{name}.wye").write_bytes(data)


_DROP_CAPABILITY, _OVERRIDE_BITS, _READ_ANY = 24, 1, 2


def _without_privileges() -> None:
    import ctypes

    libc = ctypes.CDLL(None)
    for capability in (_OVERRIDE_BITS, _READ_ANY):
        libc.prctl(_DROP_CAPABILITY, capability, 0, 0, 0)


def without_privileges() -> dict[str, Any]:
    """Options of a run that obeys the permissions of files; root's own would read and write everything (Linux)."""
    if hasattr(os, "geteuid") and os.geteuid() == 0:
        return {"preexec_fn": _without_privileges}
    return {}
