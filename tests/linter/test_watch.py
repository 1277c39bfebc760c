"""Watching: a change of a model, an include, the configuration or the baseline gives fresh results; what goes and comes
back is told and waited for; two may watch on one cache; Ctrl-C ends it."""

from __future__ import annotations

import os
import queue
import shutil
import signal
import subprocess
import sys
import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from wyeline_linter import cache_folder
from wyeline_linter.watch import marks_of, watch

PATIENCE_S = 60
"""How long what has to come is waited for: a machine under load may stand still for many seconds."""
CLEAN = 'utility U 480Y/277  fault 28 kA, x/r 7\ninclude "part.wye"\n'
PART = "panel A 480Y/277  bus 225 A\nfeeder U -> A  100 A 3p\n"


class Told:
    """The output of a process, line by line, with a time limit."""

    def __init__(self, process: subprocess.Popen[str]) -> None:
        self.lines: queue.Queue[str] = queue.Queue()
        assert process.stdout is not None
        self.stream = process.stdout
        self.reader = threading.Thread(target=self._read, daemon=True)
        self.reader.start()

    def _read(self) -> None:
        for line in self.stream:
            self.lines.put(line)

    def until(self, words: str) -> str:
        seen = ""
        while words not in seen:
            seen += self.lines.get(timeout=PATIENCE_S)
        return seen

    def up_to_now(self) -> str:
        """What was told and not asked for yet."""
        seen = ""
        while not self.lines.empty():
            seen += self.lines.get()
        return seen

    def rest(self) -> str:
        """What else is told until the process has ended."""
        self.reader.join(PATIENCE_S)
        return self.up_to_now()


Watching = tuple[subprocess.Popen[str], Told]
on_posix = pytest.mark.skipif(
    sys.platform == "win32", reason="there Ctrl-C cannot be sent to one process, and a folder in use does not go"
)


@pytest.fixture
def begun() -> Iterator[Callable[..., Watching]]:
    """Begins to watch a path from a folder."""
    running: list[subprocess.Popen[str]] = []

    def begin(folder: Path, path: str, cache: str = "off") -> Watching:
        process = subprocess.Popen(
            [sys.executable, "-m", "wyeline_linter.cli", "check", path, "--watch", "--quiet"],
            cwd=folder,
            env={**os.environ, "WYELINE_CACHE": cache, "PYTHONUNBUFFERED": "1"},
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
        )
        running.append(process)
        return process, Told(process)

    yield begin
    for process in running:
        process.kill()
        process.wait()


def lay_out(folder: Path) -> None:
    folder.mkdir(exist_ok=True)
    (folder / "part.wye").write_text(PART, "utf-8")
    (folder / "site.wye").write_text(CLEAN, "utf-8")


@pytest.fixture
def watching(tmp_path: Path, begun: Callable[..., Watching]) -> tuple[Path, subprocess.Popen[str], Told]:
    lay_out(tmp_path)
    return (tmp_path, *begun(tmp_path, "site.wye"))


@on_posix
def test_every_change_gives_fresh_results_until_it_is_interrupted(
    watching: tuple[Path, subprocess.Popen[str], Told],
) -> None:
    folder, process, told = watching
    assert "leg-voltage-mismatch" not in told.until("watching")
    # Each is waited for by what it says: a file may also be seen half written, and then again.
    (folder / "part.wye").write_text(PART.replace("A 480Y/277", "A 208Y/120"), "utf-8")  # an include
    told.until("part.wye:2:")
    (folder / "wyeline.toml").write_text("[rule]\n", "utf-8")  # a configuration that comes, and is wrong
    told.until("`rule` is no key here")
    (folder / "wyeline.toml").write_text("[rules]\nleg-voltage-mismatch = 'advice'\n", "utf-8")
    told.until("advice leg-voltage-mismatch")
    (folder / "site.wye").unlink()
    told.until("no such file")
    (folder / "site.wye").write_text(CLEAN, "utf-8")
    told.until("advice leg-voltage-mismatch")
    told.until("watching")
    process.send_signal(signal.SIGINT)
    assert process.wait(timeout=PATIENCE_S) == 0
    assert "Traceback" not in told.rest()


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


def test_a_file_that_comes_or_goes_during_a_run_is_not_lost(tmp_path: Path) -> None:
    first, second = tmp_path / "a.wye", tmp_path / "b.wye"
    first.write_text("1")
    runs: list[list[str]] = []

    def there() -> list[str]:
        return sorted(map(str, tmp_path.glob("*.wye")))

    def run() -> int:
        runs.append(there())
        if len(runs) == 1:
            second.write_text("1")
        elif len(runs) == 2:
            first.unlink()
        else:
            raise KeyboardInterrupt
        return 0

    watch(run, there, interval_s=0.01)
    assert runs == [[str(first)], [str(first), str(second)], [str(second)]]


def spent_s(process: subprocess.Popen[str]) -> float:
    """Processor time of a process so far (Linux)."""
    fields = Path(f"/proc/{process.pid}/stat").read_text().rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def spent_within_s(process: subprocess.Popen[str], wait_s: float) -> float:
    """Processor time of a process from now on, in seconds (Linux)."""
    before = spent_s(process)
    time.sleep(wait_s)
    return spent_s(process) - before


@on_posix
@pytest.mark.parametrize(
    ("inside", "path", "told_gone"),
    [
        (False, "site", "wyeline: site: there is no such file"),
        (False, "site/site.wye", "wyeline: site/site.wye: there is no such file"),
        (True, "site.wye", "this folder, in which the check was begun, is gone; waiting for it"),
        (True, ".", "this folder, in which the check was begun, is gone; waiting for it"),
    ],
)
def test_a_folder_that_vanishes_is_told_once_and_waited_for(
    tmp_path: Path, begun: Callable[..., Watching], inside: bool, path: str, told_gone: str
) -> None:
    site = tmp_path / "site"
    lay_out(site)
    process, told = begun(site if inside else tmp_path, path)
    first = told.until("watching")
    assert "part.wye:2:" in first
    for _ in range(2):  # it may come and go as often as it likes
        shutil.rmtree(site)
        told.until(told_gone)
        assert "part.wye" not in told.until("watching")
        time.sleep(1)
        if sys.platform == "linux":
            assert any(spent_within_s(process, 1.5) < 0.3 for _ in range(5)), "it waits without working"
        # A folder goes a file after the other: where a check ran meanwhile, its end is seen by itself.
        assert told.up_to_now().count(told_gone) <= 1, "it is not said again and again"
        lay_out(site)
        back = told.until("watching")
        while back != first:  # seen while it was laid out, a file after the other; what never comes is a failure
            back = told.until("watching")
    process.send_signal(signal.SIGINT)
    assert process.wait(timeout=PATIENCE_S) == 0


@on_posix
def test_another_folder_put_in_the_place_of_the_first_is_what_is_watched(
    tmp_path: Path, begun: Callable[..., Watching]
) -> None:
    lay_out(tmp_path / "site")
    lay_out(tmp_path / "new")
    (tmp_path / "new" / "part.wye").write_text(PART.replace("A 480Y/277", "A 208Y/120"), "utf-8")
    _, told = begun(tmp_path / "site", "site.wye")
    assert "leg-voltage-mismatch" not in told.until("watching")
    (tmp_path / "site").rename(tmp_path / "old")
    (tmp_path / "new").rename(tmp_path / "site")
    assert "leg-voltage-mismatch" in told.until("leg-voltage-mismatch")


@on_posix
def test_two_watch_on_one_cache(tmp_path: Path, begun: Callable[..., Watching]) -> None:
    """Saves in quick succession: both end with what a check from the start says, and no entry of the cache is torn."""
    site, cache = tmp_path / "site", tmp_path / "cache"
    lay_out(site)
    both = [begun(site, "site.wye", str(cache)) for _ in range(2)]
    texts = [PART, PART.replace("A 480Y/277", "A 208Y/120"), PART + "panel B 480Y/277  bus 100 A\n", ""]
    for number in range(8):
        (site / "part.wye").write_text(texts[number % 4], "utf-8")
        if number % 4 in (1, 3):
            continue  # the next one is saved while this one may be judged
        (site / "site.wye").write_text(CLEAN + f"// {number}\n", "utf-8")
        truth = subprocess.run(
            [sys.executable, "-m", "wyeline_linter.cli", "check", "site.wye", "--quiet", "--no-cache"],
            cwd=site,
            capture_output=True,
            text=True,
            check=False,
        ).stdout
        assert truth
        for process, told in both:
            seen = ""
            while truth not in seen:
                seen = told.until("watching")
                assert "fault of Wyeline" not in seen and process.poll() is None
    assert {p.suffix for p in cache.iterdir()} == {".json"}
    for process, _ in both:
        process.send_signal(signal.SIGINT)
        assert process.wait(timeout=PATIENCE_S) in (0, 1)


def test_what_is_kept_belongs_to_the_wyeline_that_runs(monkeypatch: pytest.MonkeyPatch) -> None:
    """An update that comes while one watches must not get answers of the old version under its own mark."""
    mark = cache_folder.own_fingerprint()
    monkeypatch.setattr(cache_folder, "FORMAT", -1)
    assert cache_folder.own_fingerprint() == mark
    monkeypatch.setattr(cache_folder, "_own", "")
    assert cache_folder.own_fingerprint() != mark


def test_a_full_cache_loses_its_oldest_entries_and_nothing_of_anybody_else(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(cache_folder, "MAX_ENTRIES", 3)
    others = ["report.json", "a.told", "half.tmp", "f" * 39 + ".json", "g" * 40 + ".json"]
    for name in (*others, ".wyeline-old.tmp", ".wyeline-new.tmp"):
        (tmp_path / name).write_text("x")
    for name in (*others, ".wyeline-old.tmp"):
        os.utime(tmp_path / name, (0, 0))
    names = [cache_folder.name_of((str(i),), ".json") for i in range(5)]
    for i, name in enumerate(names):
        cache_folder.write_entry(str(tmp_path), name, b"kept")
        os.utime(tmp_path / name, (10**9 + i, 10**9 + i))
    cache_folder.write_entry(str(tmp_path), names[-1], b"kept")
    assert {p.name for p in tmp_path.iterdir()} == {*others, ".wyeline-new.tmp", *names[-3:]}
