"""Whole processes with what each of them took: processor time, wall time, peak memory. POSIX only (``os.wait4``)."""

from __future__ import annotations

import ast
import math
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

BIN = Path(sys.executable).parent
WYELINE, CHECK_JSONSCHEMA, TAPLO, RUFF = (BIN / name for name in ("wyeline", "check-jsonschema", "taplo", "ruff"))


class Usage(NamedTuple):
    """One command: seconds of the clock, seconds of processor time (user and system) of all its processes, and their
    peak memory in MiB."""

    wall_s: float
    cpu_s: float
    peak_mib: float


class Program(NamedTuple):
    """A command, and what is done before it that is not its own time."""

    command: list[str]
    before: Callable[[], object] = lambda: None


def environment(root: Path) -> dict[str, str]:
    """Caches lie in ``root``; bytecode is kept, as after any installation, whatever the shell asks for."""
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return {**kept, "PYTHONPYCACHEPREFIX": str(root / "bytecode"), "WYELINE_CACHE": str(root / "cache")}


def measured(command: list[str], root: Path, limit_s: float = 600, *, together: bool = False) -> Usage:
    """Run a command to its end; ``together``: for the memory of its processes together, and not for its times.

    Raises TimeoutError beyond the limit, and RuntimeError where it ends otherwise than 0 or 1 (findings).
    """
    limit = f"{math.ceil(limit_s)}{'+' if together else ''}"
    done = subprocess.run(
        [sys.executable, str(Path(__file__).parent / "one_process.py"), limit, *command],
        env=environment(root),
        capture_output=True,
        text=True,
        check=True,
    )
    stopped, code, said, wall_s, cpu_s, peak_mib = ast.literal_eval(done.stdout)
    if stopped:
        raise TimeoutError(f"stopped after {limit_s:g} s")
    if code not in (0, 1):
        raise RuntimeError(f"{command} ended with {code}: {said}")
    return Usage(wall_s, cpu_s, peak_mib)


def start_programs(root: Path, small: Path) -> dict[str, Program]:
    """What starting costs; ``small`` is the root file of a model of some thirty pieces."""
    return {
        "python": Program([sys.executable, "-c", "pass"]),
        "version": Program([str(WYELINE), "--version"]),
        "small cold": Program([str(WYELINE), "check", str(small)], lambda: _forget(root)),
        "small unchanged": Program([str(WYELINE), "check", str(small)]),
    }


def check_programs(root: Path, folder: Path, faulty: Path | None) -> dict[str, Program]:
    """Checks of a whole model in every notation; ``folder`` holds it, ``faulty`` the same size full of faults."""
    check = [str(WYELINE), "check", str(folder / "site.wye")]
    schema = ["--schemafile", str(folder / "schema.json")]
    edited = sorted(folder.glob("board-*.wye"))[0]
    text = edited.read_text("utf-8")
    count = iter(range(1, 1000))

    def edit() -> None:
        changed = text.replace(" 900 VA ", f" {900 + next(count)} VA ", 1)
        assert changed != text
        edited.write_text(changed, "utf-8")

    def remark() -> None:
        edited.write_text(f"// looked through {next(count)}\n{text}", "utf-8")

    def as_it_was() -> None:
        edited.write_text(text, "utf-8")
        _forget(root)

    programs = {
        "cold": Program(check, as_it_was),
        "unchanged": Program(check),
        "one remark": Program(check, remark),
        "one edit": Program(check, edit),
        "schema yaml": Program([str(CHECK_JSONSCHEMA), *schema, str(folder / "site.yaml")]),
        "schema json": Program([str(CHECK_JSONSCHEMA), *schema, str(folder / "site.json")]),
        "schema toml": Program([str(CHECK_JSONSCHEMA), *schema, str(folder / "site.toml")]),
        "taplo": Program(
            [
                *(str(TAPLO), "lint", "--no-auto-config"),
                *("--schema", (folder / "schema.json").as_uri(), str(folder / "site.toml")),
            ]
        ),
        "ruff": Program([str(RUFF), "check", "--isolated", "--no-cache", "--quiet", str(folder / "site.py")]),
    }
    if faulty is not None:
        programs["faulty"] = Program([str(WYELINE), "check", str(faulty)], lambda: _forget(root))
    return programs


def _forget(root: Path) -> None:
    shutil.rmtree(root / "cache", ignore_errors=True)


def in_turn(
    programs: dict[str, Program], root: Path, rounds: int, limit_s: Callable[[str], float] = lambda _: 600.0
) -> tuple[dict[str, list[Usage]], dict[str, str]]:
    """Every program once a round, each round in the same order; and what was left out, with the reason.

    The caller runs each program once before, or lives with a first round that writes bytecode. Our own are run once
    more for their memory: a large check is two processes.
    """
    taken: dict[str, list[Usage]] = {}
    left_out: dict[str, str] = {}
    for _ in range(rounds):
        for name, program in programs.items():
            if name in left_out:
                continue
            program.before()
            try:
                taken.setdefault(name, []).append(measured(program.command, root, limit_s(name)))
            except (TimeoutError, RuntimeError) as reason:
                left_out[name] = str(reason)
                taken.pop(name, None)
    for name, usages in taken.items():
        if programs[name].command[0] == str(WYELINE):
            programs[name].before()
            peak_mib = measured(programs[name].command, root, limit_s(name), together=True).peak_mib
            taken[name] = [usage._replace(peak_mib=max(usage.peak_mib, peak_mib)) for usage in usages]
    return taken, left_out
