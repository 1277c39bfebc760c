"""Kills, full disks, locked folders, changes in mid-run, interrupts, two processes at once: nothing lost or torn."""

from __future__ import annotations

import json
import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest
from command_line import WYELINE, environment, without_privileges, write, wyeline

resource = pytest.importorskip("resource", reason="limits of POSIX systems")
pytestmark = pytest.mark.skipif(os.name == "nt", reason="signals and limits of POSIX systems")

SLIPS = "utility U1 208Y/120  fault 10 kA, x/r 4\n" + "".join(
    f"panel P-{i} 208Y/120  bus 100 A, MLO\nfeeder U1 -> P-{i}  100A 3p\n" for i in range(60)
)
"""A text with a sure fix on every line."""

_KILLED_AT = """
import os, signal, sys, tempfile
where, count = sys.argv[1], 0
def die(*_a, **_k):
    os.kill(os.getpid(), signal.SIGKILL)
real_mkstemp, real_replace, real_fsync = tempfile.mkstemp, os.replace, os.fsync
if where == "made":
    def mkstemp(*a, **k):
        real_mkstemp(*a, **k); die()
    tempfile.mkstemp = mkstemp
elif where == "half":
    def fdopen(handle, *a, real=os.fdopen, **k):
        os.write(handle, b"utility U1 208Y/1"); die()
    os.fdopen = fdopen
elif where == "written":
    os.fsync = die
elif where == "before":
    os.replace = die
elif where == "after":
    def replace(a, b):
        real_replace(a, b); die()
    os.replace = replace
from wyeline_linter.cli import main
main(sys.argv[2:])
"""


def fixed_text(folder: Path) -> str:
    write(folder, twin=SLIPS)
    assert wyeline("check", "--fix", "twin.wye", cwd=folder).code in (0, 1)
    made = (folder / "twin.wye").read_text()
    (folder / "twin.wye").unlink()
    assert made != SLIPS and "main lugs" in made
    return made


@pytest.mark.parametrize("where", ["made", "half", "written", "before", "after"])
@pytest.mark.parametrize("command", [["check", "--fix"], ["format"]])
def test_a_kill_at_any_step_leaves_the_old_text_or_the_new(tmp_path: Path, where: str, command: list[str]) -> None:
    write(tmp_path, site=SLIPS)
    done = subprocess.run(
        [sys.executable, "-c", _KILLED_AT, where, *command, "site.wye"],
        cwd=tmp_path,
        env=environment(),
        capture_output=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == -signal.SIGKILL, done
    left = (tmp_path / "site.wye").read_text()
    assert (left == SLIPS) == (where != "after")
    assert left == SLIPS or left.count("\n") == SLIPS.count("\n")
    assert [p.name for p in tmp_path.glob("*.wye")] == ["site.wye"], (
        "what a kill leaves behind is never read as a model"
    )


def test_kills_at_random_moments(tmp_path: Path) -> None:
    new = fixed_text(tmp_path)
    rng = random.Random(3)
    for _ in range(8):
        write(tmp_path, site=SLIPS)
        process = subprocess.Popen(
            [*WYELINE, "check", "--fix", "site.wye"], cwd=tmp_path, env=environment(), stdout=subprocess.DEVNULL
        )
        time.sleep(rng.uniform(0.1, 1.2))
        process.kill()
        process.wait()
        left = (tmp_path / "site.wye").read_text()
        assert left in (SLIPS, new)


def _limited(size: int) -> Any:
    def limit() -> None:
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))

    return limit


def test_a_full_disk_changes_nothing_and_says_so(tmp_path: Path) -> None:
    write(tmp_path, site=SLIPS)
    for command in (["check", "--fix"], ["format"]):
        ran = wyeline(*command, "site.wye", cwd=tmp_path, preexec_fn=_limited(500))
        assert ran.code == 2 and "site.wye" in ran.err and "could not be written (File too large)" in ran.err
        assert (tmp_path / "site.wye").read_text() == SLIPS
        assert [p.name for p in tmp_path.iterdir()] == ["site.wye"]
    cache = tmp_path / "cache"
    ran = wyeline("check", "site.wye", cwd=tmp_path, env={"WYELINE_CACHE": str(cache)}, preexec_fn=_limited(500))
    assert ran.code == 1 and "known-slip" in ran.out, "a cache that cannot be written is no cache"
    assert not cache.exists() or not list(cache.iterdir())


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="Linux")
@pytest.mark.parametrize(
    "options", [["check"], ["check", "--format", "json"], ["show"], ["format", "--diff"], ["rules"]]
)
def test_output_that_cannot_be_written(tmp_path: Path, options: list[str]) -> None:
    write(tmp_path, site=SLIPS)
    paths = [] if options == ["rules"] else ["site.wye"]
    with open("/dev/full", "w") as full:
        done = subprocess.run(
            [*WYELINE, *options, *paths],
            cwd=tmp_path,
            env=environment(),
            stdout=full,
            stderr=subprocess.PIPE,
            timeout=60,
        )
    told = done.stderr.decode()
    assert done.returncode == 2 and told == "wyeline: the output could not be written (No space left on device)\n"


def test_a_reader_that_goes_away_is_no_fault(tmp_path: Path) -> None:
    write(tmp_path, site=SLIPS * 20)
    process = subprocess.Popen(
        [*WYELINE, "check", "site.wye"], cwd=tmp_path, env=environment(), stdout=subprocess.PIPE, stderr=subprocess.PIPE
    )
    assert process.stdout is not None and process.stderr is not None
    process.stdout.readline()
    process.stdout.close()
    told = process.stderr.read()
    assert process.wait(60) in (0, 1) and told == b""
    process.stderr.close()


def test_a_folder_that_may_not_be_written(tmp_path: Path) -> None:
    write(tmp_path, site=SLIPS)
    tmp_path.chmod(0o555)
    try:
        for command in (["check", "--fix"], ["format"]):
            ran = wyeline(*command, "site.wye", cwd=tmp_path, **without_privileges())
            assert ran.code == 2 and "could not be written (Permission denied)" in ran.err
        env = {"WYELINE_CACHE": str(tmp_path / "cache")}
        assert wyeline("check", "site.wye", cwd=tmp_path, env=env, **without_privileges()).code == 1
    finally:
        tmp_path.chmod(0o755)
    assert (tmp_path / "site.wye").read_text() == SLIPS
    assert [p.name for p in tmp_path.iterdir()] == ["site.wye"]


_CHANGED_MEANWHILE = """
import sys
from wyeline_linter import fixing
real = fixing.fix_model
def slow(root, *a, **k):
    outcome = real(root, *a, **k)
    with open("site.wye", "a") as file:
        file.write("// a colleague saved this\\n")
    return outcome
fixing.fix_model = slow
from wyeline_linter.cli import main
sys.exit(main(["check", "--fix", "site.wye"]))
"""


def test_a_file_changed_during_the_run_is_not_overwritten(tmp_path: Path) -> None:
    write(tmp_path, site=SLIPS)
    done = subprocess.run(
        [sys.executable, "-c", _CHANGED_MEANWHILE], cwd=tmp_path, env=environment(), capture_output=True, timeout=60
    )
    assert done.returncode == 2 and b"site.wye: it was changed in the meantime; nothing was written" in done.stderr
    assert (tmp_path / "site.wye").read_text() == SLIPS + "// a colleague saved this\n"
    assert [p.name for p in tmp_path.iterdir()] == ["site.wye"]


def test_fixing_keeps_links_and_permissions(tmp_path: Path) -> None:
    write(tmp_path, real=SLIPS)
    (tmp_path / "real.wye").chmod(0o640)
    (tmp_path / "site.wye").symlink_to("real.wye")
    wyeline("check", "--fix", "site.wye", cwd=tmp_path)
    assert (tmp_path / "site.wye").is_symlink()
    assert "main lugs" in (tmp_path / "real.wye").read_text()
    assert (tmp_path / "real.wye").stat().st_mode & 0o777 == 0o640


@pytest.mark.parametrize("mask", [0o022, 0o077, 0o002])
def test_new_files_get_the_permissions_that_are_usual_here(tmp_path: Path, mask: int) -> None:
    write(tmp_path, site=SLIPS)
    for command in (
        ["report", "site.wye", "--only", "findings"],
        ["check", "site.wye", "--update-baseline"],
        ["new", "fresh"],
    ):
        wyeline(*command, cwd=tmp_path, preexec_fn=lambda: os.umask(mask))
    made = [p for p in tmp_path.rglob("*") if p.is_file() and p != tmp_path / "site.wye"]
    assert len(made) > 4
    assert {p.stat().st_mode & 0o777 for p in made} == {0o666 & ~mask}, made


def test_a_report_on_a_full_disk_leaves_the_old_one_and_no_piece_of_the_new(tmp_path: Path) -> None:
    write(tmp_path, site=SLIPS)
    for name in ("report.html", "csv/findings.csv"):
        (tmp_path / "report" / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / "report" / name).write_text("the old one")
    ran = wyeline("report", "site.wye", cwd=tmp_path, preexec_fn=_limited(500))
    assert ran.code == 2 and "could not be written (File too large)" in ran.err
    left = {p.name: p.read_text() for p in tmp_path.rglob("*") if p.is_file() and p.suffix != ".wye"}
    assert left == {"report.html": "the old one", "findings.csv": "the old one"}


def test_a_folder_that_vanished(tmp_path: Path) -> None:
    gone = tmp_path / "gone"
    gone.mkdir()
    for command in (["check", "."], ["check", "site.wye"], ["show", "."], ["format", "."]):
        ran = wyeline(
            *command, cwd=tmp_path, preexec_fn=lambda: (gone.mkdir(exist_ok=True), os.chdir(gone), gone.rmdir())
        )
        assert ran.code == 2 and "wyeline: " in ran.err


_INTERRUPTED = """
import signal, sys
from wyeline_linter.cli import main
signal.signal(signal.SIGVTALRM, lambda *_: signal.raise_signal(signal.SIGINT))
signal.setitimer(signal.ITIMER_VIRTUAL, 0.2)  # of its own time on the processor: it is at work, however slowly
sys.exit(main())
"""


@pytest.mark.parametrize("command", [["check"], ["show"], ["format"], ["check", "--fix"]])
def test_an_interrupt_ends_with_130_and_changes_nothing(tmp_path: Path, command: list[str]) -> None:
    write(tmp_path, site="".join(SLIPS.replace("P-", f"P{i}-").replace("U1", f"U{i}") for i in range(150)))
    before = (tmp_path / "site.wye").read_text()
    process = subprocess.Popen(
        [sys.executable, "-c", _INTERRUPTED, *command, "site.wye"],
        cwd=tmp_path,
        env=environment(),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
    )
    _, told = process.communicate(timeout=120)
    assert process.returncode == 130 and told == b"wyeline: interrupted; nothing was changed half-way\n", told
    assert (tmp_path / "site.wye").read_text() == before
    assert [p.name for p in tmp_path.iterdir()] == ["site.wye"]


_PAUSED_AT_THIRD_FILE = """
import signal, sys, tempfile
real, asked = tempfile.mkstemp, []
def mkstemp(*a, **k):
    asked.append(k)
    if len(asked) == 3:
        print("at the third file", flush=True)
        signal.pause()
    return real(*a, **k)
tempfile.mkstemp = mkstemp
from wyeline_linter.cli import main
sys.exit(main())
"""


@pytest.mark.parametrize("how", [signal.SIGINT, signal.SIGTERM, signal.SIGKILL])
def test_a_report_that_ends_halfway_leaves_the_old_one_whole(tmp_path: Path, how: signal.Signals) -> None:
    """Never some files of the new model beside some of the old one."""
    write(tmp_path, site=SLIPS)
    assert wyeline("report", "site.wye", cwd=tmp_path).code == 0
    report = tmp_path / "report"
    old = {p: b"the old one" for p in report.rglob("*") if p.is_file()}
    for path, content in old.items():
        path.write_bytes(content)
    process = subprocess.Popen(
        [sys.executable, "-c", _PAUSED_AT_THIRD_FILE, "report", "site.wye"],
        cwd=tmp_path,
        env=environment(),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout is not None and process.stdout.readline() == b"at the third file\n"
    assert len(list(report.rglob("*.tmp"))) == 2
    process.send_signal(how)
    _, told = process.communicate(timeout=120)
    left = {p: p.read_bytes() for p in report.rglob("*") if p.is_file()}
    if how == signal.SIGINT:
        assert process.returncode == 130 and told == b"wyeline: interrupted; nothing was changed half-way\n", told
        assert left == old
    else:
        assert process.returncode == -how
        assert old.items() <= left.items()
        assert all(p.name.startswith(".wyeline-") for p in left.keys() - old.keys()), "and nobody takes those for it"


def test_many_processes_on_one_cache(tmp_path: Path) -> None:
    cache = tmp_path / "cache"
    for i in range(3):
        write(tmp_path, **{f"m{i}": SLIPS.replace("P-", f"P{i}-")})
    env = {**environment(), "WYELINE_CACHE": str(cache)}
    truth = [wyeline("check", f"m{i}.wye", cwd=tmp_path).out for i in range(3)]
    for _ in range(2):
        running = [
            (
                i % 3,
                subprocess.Popen([*WYELINE, "check", f"m{i % 3}.wye"], cwd=tmp_path, env=env, stdout=subprocess.PIPE),
            )
            for i in range(6)
        ]
        for i, process in running:
            out, _ = process.communicate(timeout=120)
            assert out.decode() == truth[i]
    kept = sorted(cache.iterdir())
    assert sorted(p.suffix for p in kept) == [".json"] * 3 + [".told"] * 3


def test_a_clock_that_jumps_gives_no_stale_answer(tmp_path: Path) -> None:
    env = {"WYELINE_CACHE": str(tmp_path / "cache")}
    write(tmp_path, site=SLIPS)
    first = wyeline("check", "site.wye", cwd=tmp_path, env=env).out
    write(tmp_path, site=SLIPS.replace("MLO", "main lugs"))
    os.utime(tmp_path / "site.wye", (0, 0))
    second = wyeline("check", "site.wye", cwd=tmp_path, env=env).out
    assert "known-slip" in first and second == wyeline("check", "site.wye", cwd=tmp_path).out != first
    os.utime(tmp_path / "site.wye", (2**33, 2**33))
    assert json.loads(wyeline("check", "--format", "json", "site.wye", cwd=tmp_path, env=env).out)
