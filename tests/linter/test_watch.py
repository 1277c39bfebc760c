"""Watching: a change of a model, an include, the configuration or the baseline gives fresh results; Ctrl-C ends it."""

from __future__ import annotations

import os
import queue
import signal
import subprocess
import sys
import threading
from collections.abc import Iterator
from pathlib import Path

import pytest

from wyeline_linter.watch import marks_of, watch

CLEAN = 'utility U 480Y/277  fault 28 kA, x/r 7\ninclude "part.wye"\n'
PART = "panel A 480Y/277  bus 225 A\nfeeder U -> A  100 A 3p\n"


class Told:
    """The output of a process, line by line, with a time limit."""

    def __init__(self, process: subprocess.Popen[str]) -> None:
        self.lines: queue.Queue[str] = queue.Queue()
        assert process.stdout is not None
        self.stream = process.stdout
        threading.Thread(target=self._read, daemon=True).start()

    def _read(self) -> None:
        for line in self.stream:
            self.lines.put(line)

    def until(self, words: str) -> str:
        seen = ""
        while words not in seen:
            seen += self.lines.get(timeout=30)
        return seen


@pytest.fixture
def watching(tmp_path: Path) -> Iterator[tuple[Path, subprocess.Popen[str], Told]]:
    (tmp_path / "site.wye").write_text(CLEAN, "utf-8")
    (tmp_path / "part.wye").write_text(PART, "utf-8")
    process = subprocess.Popen(
        [sys.executable, "-m", "wyeline_linter.cli", "check", "site.wye", "--watch", "--quiet"],
        cwd=tmp_path,
        env={**os.environ, "WYELINE_CACHE": "off", "PYTHONUNBUFFERED": "1"},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )
    try:
        yield tmp_path, process, Told(process)
    finally:
        process.kill()
        process.wait()


@pytest.mark.skipif(sys.platform == "win32", reason="Ctrl-C cannot be sent to one process there")
def test_every_change_gives_fresh_results_until_it_is_interrupted(
    watching: tuple[Path, subprocess.Popen[str], Told],
) -> None:
    folder, process, told = watching
    assert "leg-voltage-mismatch" not in told.until("watching")
    (folder / "part.wye").write_text(PART.replace("A 480Y/277", "A 208Y/120"), "utf-8")  # an include
    assert "part.wye:2:" in told.until("watching")
    (folder / "wyeline.toml").write_text("[rule]\n", "utf-8")  # a configuration that comes, and is wrong
    assert "`rule` is no key here" in told.until("watching")
    (folder / "wyeline.toml").write_text("[rules]\nleg-voltage-mismatch = 'advice'\n", "utf-8")
    assert "advice leg-voltage-mismatch" in told.until("watching")
    (folder / "site.wye").unlink()
    assert "no such file" in told.until("watching")
    (folder / "site.wye").write_text(CLEAN, "utf-8")
    assert "advice leg-voltage-mismatch" in told.until("watching")
    process.send_signal(signal.SIGINT)
    assert process.wait(timeout=30) == 0
    assert "Traceback" not in told.until("\n")


def test_a_change_during_a_run_is_not_lost(tmp_path: Path) -> None:
    path = tmp_path / "a.wye"
    path.write_text("1")
    runs: list[str] = []

    def run() -> int:
        runs.append(path.read_text())
        if len(runs) == 1:
            path.write_text("12")  # while the first run is under way
        elif len(runs) == 2:
            raise KeyboardInterrupt
        return 0

    assert watch(run, lambda: [str(path)], interval_s=0.01) == 0
    assert runs == ["1", "12"]


def test_marks_tell_what_is_not_there(tmp_path: Path) -> None:
    path = tmp_path / "a"
    assert marks_of([str(path), "\0"]) == {str(path): None, "\0": None}
