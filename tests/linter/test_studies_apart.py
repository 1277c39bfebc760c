"""A large check studies in a process of its own: it says what one process says, whatever becomes of the other one."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from wyeline_linter.studies_apart import FEWEST, granted_cores

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="elsewhere a check is one process")

RUN = """
import os, signal, sys, time
def cores(count):
    os.sched_getaffinity = lambda process: set(range(count))
def quota(count):
    import wyeline_linter.studies_apart as apart
    apart.granted_cores = lambda: count
def refused():
    def fork(): raise OSError("no more processes")
    os.fork = fork
def in_studies(what):
    import wyeline_linter.analysis as analysis
    real, parent = analysis.Analysis.study_findings, os.getpid()
    def study_findings(self):
        what(os.getpid() != parent)
        return real(self)
    analysis.Analysis.study_findings = study_findings
def killed(copy):
    if copy: os.kill(os.getpid(), signal.SIGKILL)
def interrupted(copy):
    if copy: raise KeyboardInterrupt
def faulty(copy):
    raise RuntimeError("a slip of ours")
real_fork = os.fork
def told():
    process = real_fork()
    if process: print("copy", process, file=sys.stderr, flush=True)
    return process
os.fork = told
cores(2)
quota(2)
exec(sys.argv.pop(1))
from wyeline_linter.cli import main
sys.exit(main())
"""


HEAD = """\
wye 1
project "Long runs"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
  allow strict-drop-limit "nothing here starts"
utility U 480Y/277  fault 28 kA, fault-min 20 kA, x/r 7
switchboard MSB 480Y/277  bus 4000 A, rated 42 kA, lug-temp 75 degC
feeder U -> MSB  10 sets 3x600kcmil + N 600kcmil + G 500kcmil Cu THWN-2  3 m  in 4 inch EMT
"""


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A model just large enough, with findings of the studies, some of them accepted, and with expectations."""
    lines = [HEAD]
    for i in range(FEWEST):
        lines += [f"panel P-{i} 480Y/277  bus 100 A, rated 10 kA, lug-temp 75 degC"]
        lines += [f'  1  20 A 1p  {1600 + i} VA  lighting  "Lamps"  2#12 + G #12 Cu  {60 + i} m  in 1/2 inch EMT']
        lines += [f"feeder MSB -> P-{i}  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  {20 + i} m  in 1 inch EMT"]
        if i % 100 == 7:
            lines += ['  allow branch-drop-high "a store room"']
    lines += ["expect P-3 fault <= 1 kA", "expect P-300 drop <= 9 %", "expect P-5 fault <= 65 kA"]
    path = tmp_path_factory.mktemp("apart") / "site.wye"
    path.write_text("\n".join(lines) + "\n", "utf-8")
    return path


def checked(site: Path, first: str, *options: str) -> tuple[int, str, str]:
    """Exit code, output and errors of a check in whose process ``first`` was done before."""
    command = [sys.executable, "-c", RUN, first, "check", *options, str(site)]
    environment = {**os.environ, "WYELINE_CACHE": "off"}
    done = subprocess.run(command, env=environment, capture_output=True, text=True, timeout=60)
    return done.returncode, done.stdout, done.stderr


@pytest.fixture(scope="module")
def alone(site: Path) -> str:
    code, out, errors = checked(site, "cores(1)", "--format", "json")
    assert (code, errors) == (1, "")
    return out


def test_the_site_asks_what_the_copy_has_to_bring_back(alone: str) -> None:
    told: dict[str, Any] = json.loads(alone)
    rules = {finding["rule"] for finding in told["findings"]}
    assert {"branch-drop-high", "expectation-missed", "allowance-unused"} <= rules, rules
    assert {e["outcome"] for e in told["expectations"]} == {"met", "missed"}, told["expectations"]


@pytest.mark.parametrize("options", [["--format", "json"], ["--format", "sarif"], ["--show-allowed"], ["--statistics"]])
def test_two_processes_say_what_one_says(site: Path, options: list[str]) -> None:
    code, out, errors = checked(site, "cores(1)", *options)
    assert errors == ""
    again, twice, said = checked(site, "", *options)
    assert (again, twice) == (code, out)
    assert said.startswith("copy ")


@pytest.mark.parametrize("first", ["refused()", "in_studies(killed)", "in_studies(interrupted)"])
def test_where_the_copy_brings_no_answer_the_studies_run_here(site: Path, alone: str, first: str) -> None:
    code, out, errors = checked(site, first, "--format", "json")
    assert (code, out) == (1, alone)
    assert errors.count("\n") == errors.count("copy ") == (first != "refused()")


def test_a_fault_of_ours_is_told_once(site: Path) -> None:
    code, out, errors = checked(site, "in_studies(faulty)")
    assert (code, out) == (3, "")
    assert errors.count("a slip of ours") == 1


def test_a_container_with_the_time_of_one_core_makes_no_copy(site: Path, alone: str) -> None:
    assert checked(site, "cores(64); quota(1.0)", "--format", "json") == (1, alone, "")


@pytest.mark.parametrize(
    ("written", "cores"),
    [("max 100000\n", float("inf")), ("100000 100000\n", 1.0), ("150000 100000\n", 1.5), ("50000 100000\n", 0.5)]
    + [(unread, float("inf")) for unread in ("", "max", "1 0\n", "1 2 3\n", "\u00bd 2\n", "x y\n")],
)
def test_the_quota_of_a_container_is_read_as_the_kernel_writes_it(tmp_path: Path, written: str, cores: float) -> None:
    """Source: the Linux kernel's documentation, Control Group v2, ``cpu.max`` ("$MAX $PERIOD", "max": no limit)."""
    file = tmp_path / "cpu.max"
    file.write_text(written, "utf-8")
    assert granted_cores(str(file)) == cores
    assert granted_cores(str(tmp_path / "none")) == float("inf")


def test_a_small_model_is_checked_by_one_process(tmp_path: Path) -> None:
    small = tmp_path / "small.wye"
    small.write_text("wye 1\nutility U 480Y/277  fault 28 kA, x/r 7\n", "utf-8")
    assert checked(small, "")[2] == ""


def test_a_copy_whose_check_was_killed_ends(site: Path) -> None:
    code, _, errors = checked(site, "import wyeline_linter.analysis as a; a.Analysis._check_model = killed")
    assert code == -9
    word, process = errors.split()
    assert word == "copy"
    until = time.monotonic() + 30
    while _runs(process):
        assert time.monotonic() < until
        time.sleep(0.05)


def test_a_copy_with_an_answer_that_nobody_reads_any_more_ends(site: Path) -> None:
    """It has worked everything out when its check is killed, and its answer is more than a pipe holds."""
    late = """import wyeline_linter.analysis as a, wyeline_linter.finding_records as r
a.Analysis._check_model = killed
parent = os.getpid()
def study_findings(self):
    while os.getppid() == parent: time.sleep(0.01)
    return [None]
a.Analysis.study_findings = study_findings
r.to_record = lambda *_: "x" * 300_000"""
    code, _, errors = checked(site, late.replace("killed", "lambda *_: (time.sleep(0.5), os.kill(parent, 9))"))
    assert code == -9 and errors.split()[0] == "copy"


def _runs(process: str) -> bool:
    try:
        state = Path(f"/proc/{process}/stat").read_text().rpartition(") ")[2][0]
    except OSError:
        return False
    return state != "Z"  # ended, though nobody asked how
