"""Whole processes with what each of them took: processor time, wall time, peak memory. POSIX only (``os.wait4``)."""

from __future__ import annotations

import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

BIN = Path(sys.executable).parent
WYELINE, CHECK_JSONSCHEMA = BIN / "wyeline", BIN / "check-jsonschema"


class Usage(NamedTuple):
    """One process: seconds of the clock, seconds of processor time (user and system), and peak memory in MiB."""

    wall_s: float
    cpu_s: float
    peak_mib: float


def environment(folder: Path) -> dict[str, str]:
    """Caches lie in ``folder``; bytecode is kept, as after any installation, whatever the shell asks for."""
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**kept, "PYTHONPYCACHEPREFIX": str(folder / "bytecode"), "WYELINE_CACHE": str(folder / "cache")}


def measured(command: list[str], folder: Path) -> Usage:
    """Run a command. Raises RuntimeError where it ends otherwise than 0 or 1 (findings)."""
    with tempfile.TemporaryFile() as errors:
        began = time.monotonic()
        process = subprocess.Popen(command, env=environment(folder), stdout=subprocess.DEVNULL, stderr=errors)
        _, status, usage = os.wait4(process.pid, 0)
        wall_s = time.monotonic() - began
        process.returncode = os.waitstatus_to_exitcode(status)
        if process.returncode not in (0, 1):
            errors.seek(0)
            raise RuntimeError(f"{command}: {errors.read().decode(errors='replace')[-400:]}")
    kib = usage.ru_maxrss / 1024 if sys.platform == "darwin" else usage.ru_maxrss
    return Usage(wall_s, usage.ru_utime + usage.ru_stime, kib / 1024)


def medians(taken: list[Usage]) -> Usage:
    """The median of each figure."""
    return Usage(*(statistics.median(values) for values in zip(*taken, strict=True)))


def command_line(folder: Path, root: Path, rounds: int, peers: tuple[str, ...] = ("yaml",)) -> dict[str, Usage]:
    """Medians by what ran; each round runs everything in turn. ``peers``: notations for check-jsonschema.

    The first round of all is thrown away: it writes bytecode.
    """
    taken: dict[str, list[Usage]] = {}
    check = [str(WYELINE), "check", str(root), "--quiet"]
    edited = min(folder.glob("board-*.wye"))
    text = edited.read_text("utf-8")
    schema = [str(CHECK_JSONSCHEMA), "--schemafile", str(folder / "schema.json")]

    def note(name: str, command: list[str], before: Callable[[], object] = lambda: None) -> None:
        before()
        taken.setdefault(name, []).append(measured(command, folder))

    for number in range(rounds + 1):
        note("python", [sys.executable, "-c", "pass"])
        note("version", [str(WYELINE), "--version"])
        note("cold", check, lambda: shutil.rmtree(folder / "cache", ignore_errors=True))
        note("unchanged", check)
        changed = text.replace("bus 2000 A, main 2000 A", f"bus 2000 A, main {1600 + number} A", 1)
        note("one edit", check, lambda changed=changed: edited.write_text(changed, "utf-8"))
        edited.write_text(text, "utf-8")
        for peer in peers:
            note(f"schema {peer}", [*schema, str(folder / f"site.{peer}")])
    return {name: medians(usages[1:]) for name, usages in taken.items()}
