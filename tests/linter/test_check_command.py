"""`wyeline check` in daily use: exit codes, stdin, outputs, statistics, and a cache that minds the configuration."""

from __future__ import annotations

import io
import json
import os
import re
import subprocess
import sys
import textwrap
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from wyeline_linter.cli import main
from wyeline_linter.outputs import FORMATS
from wyeline_linter.outputs.text import CAUTION

CLEAN = """utility     QUAY    480Y/277            fault 28 kA, x/r 7
feeder QUAY -> MSB  800 A 3p            2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu  12 m
switchboard MSB     480Y/277            bus 800 A, main 800 A, rated 42 kA
"""
WRONG = CLEAN + "panel       LP-1    208Y/120            bus 225 A\nfeeder MSB -> LP-1  100 A 3p\n"


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("WYELINE_CACHE", str(tmp_path / "cache"))
    (tmp_path / "site.wye").write_text(WRONG, "utf-8")
    return tmp_path


def test_exit_codes_are_those_of_the_readme(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / "clean.wye").write_text(CLEAN, "utf-8")
    assert main(["check", "clean.wye"]) == 0
    assert "no rule failed on the stated facts" in capsys.readouterr().out
    assert main(["check", "site.wye"]) == 1
    assert main(["check", "gone.wye"]) == 2
    (folder / "wyeline.toml").write_text("[rules]\nleg-voltage-mismach = 'off'\n", "utf-8")
    assert main(["check", "clean.wye"]) == 2
    error = capsys.readouterr().err
    assert "wyeline.toml:2:1: `leg-voltage-mismach` is no rule here; the nearest: `leg-voltage-mismatch`" in error


@pytest.mark.skipif(sys.platform == "win32", reason="pseudo-terminals are of POSIX")
@pytest.mark.parametrize(("wide", "most"), [(40, 80), (93, 93), (110, 110), (300, 120)])
def test_sentences_keep_to_the_terminal(folder: Path, wide: int, most: int) -> None:
    """Kept answers are of the width they were asked in; what goes elsewhere has 100 columns whatever the terminal."""
    import fcntl
    import pty
    import struct
    import termios

    command = [sys.executable, "-c", "from wyeline_linter.cli import main; main(['check', 'site.wye'])"]
    env = {k: v for k, v in os.environ.items() if k != "COLUMNS"}
    file = subprocess.run(command, capture_output=True, text=True, cwd=folder, env={**env, "COLUMNS": str(wide)})
    assert sentences(file.stdout) == 100
    for _ in range(2):
        ours, theirs = pty.openpty()
        fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", 24, wide, 0, 0))
        ran = subprocess.Popen(command, stdout=theirs, cwd=folder, env={**env, "NO_COLOR": "1"})
        os.close(theirs)
        shown = b""
        try:
            while piece := os.read(ours, 65536):
                shown += piece
        except OSError:  # Linux says so where the other end was closed
            pass
        ran.wait()
        os.close(ours)
        assert sentences(shown.decode().replace("\r\n", "\n")) == most


def sentences(text: str) -> int:
    """The columns that the caution, and every line of a finding but its first and the source, were wrapped to."""
    (columns,) = (n for n in (80, 93, 100, 110, 120) if textwrap.fill(CAUTION, n) in text)
    free = [line for line in text.split("\n") if " | " not in line and not line.startswith("site.wye:")]
    assert columns - 12 < max(map(len, free)) <= columns
    return columns


@pytest.mark.parametrize("name", FORMATS)
def test_every_format_goes_to_a_file_with_the_summary_printed(
    folder: Path, capsys: pytest.CaptureFixture[str], name: str
) -> None:
    assert main(["check", "site.wye", "--format", name, "--output", "made"]) == 1
    out = capsys.readouterr().out
    assert out.count("\n") == 1 and out.startswith("1 error") and out.endswith("(1 file)\n")
    text = (folder / "made").read_text("utf-8")
    assert "leg-voltage-mismatch" in text and "\x1b" not in text
    if name == "junit":
        ET.fromstring(text)
    elif name not in ("text", "github"):
        json.loads(text)
    assert main(["check", "site.wye", "--format", name]) == 1
    assert capsys.readouterr().out == text


@pytest.mark.parametrize("read", ["site.wye", "part.wye", "wyeline.toml", "wyeline.baseline.json", "link.wye"])
def test_no_output_is_written_over_what_the_check_reads(
    folder: Path, capsys: pytest.CaptureFixture[str], read: str
) -> None:
    (folder / "part.wye").write_text("// nothing\n", "utf-8")
    (folder / "site.wye").write_text(WRONG + 'include "part.wye"\n', "utf-8")
    (folder / "link.wye").symlink_to("site.wye")
    before = {p: p.read_text("utf-8") for p in folder.glob("*.wye")}
    assert main(["check", "site.wye", "--output", read]) == 2
    assert f"{read}: the check reads this file itself" in capsys.readouterr().err
    assert {p: p.read_text("utf-8") for p in folder.glob("*.wye")} == before
    assert not (folder / "wyeline.toml").exists()


def test_what_is_kept_depends_on_the_configuration(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    def run() -> tuple[int, str]:
        code = main(["check", "site.wye", "--quiet", "--fail-on", "error"])
        return code, capsys.readouterr().out

    first = run()
    assert first[0] == 1
    toml = folder / "wyeline.toml"
    for word, code in (("off", 0), ("advice", 0), ("error", 1)):
        toml.write_text(f'[rules]\nleg-voltage-mismatch = "{word}"\n', "utf-8")
        fresh = run()
        assert fresh[0] == code
        assert run() == fresh  # from the cache
        assert (f"{word} leg-voltage-mismatch" in fresh[1]) == (word != "off")
        main(["check", "site.wye"])
        assert ("; 1 rule switched off (" in capsys.readouterr().out) == (word == "off")
    toml.unlink()
    assert run() == first


def test_a_warm_run_reads_no_configuration_and_no_rules(folder: Path) -> None:
    (folder / "wyeline.toml").write_text('[rules]\nlegs-unbalanced = "off"\n', "utf-8")
    (folder / "site.wye").write_text(
        CLEAN + 'panel LP-1 480Y/277  bus 225 A\n  allow unfed-equipment "later, 5 A"\n', "utf-8"
    )
    assert main(["check", "site.wye", "--update-baseline"]) == 0
    code = (
        "import sys\nfrom wyeline_linter.cli import main\ncode = main(['check', 'site.wye'])\n"
        "heavy = {'tomllib', 'lark', 'numpy', 'scipy', 'pint', 'wyeline_linter.analysis', 'xml', 'difflib',"
        " 'pygls', 'lsprotocol', 'asyncio', 'argparse', 'json', 're', 'typing', 'hashlib'}\n"
        "assert not heavy & sys.modules.keys(), heavy & sys.modules.keys()\n"
        "assert not [m for m in sys.modules if m.startswith('wyeline_linter.rules.')]\nsys.exit(code)\n"
    )
    subprocess.run([sys.executable, "-c", code], check=False, capture_output=True)  # fills the cache
    done = subprocess.run([sys.executable, "-c", code], check=False, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert "1 finding accepted" in done.stdout


def stdin(monkeypatch: pytest.MonkeyPatch, text: str) -> None:
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(text.encode()), encoding="utf-8"))


def test_stdin_stands_for_its_file(
    folder: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    plans = folder / "plans"
    plans.mkdir()
    (plans / "part.wye").write_text(CLEAN, "utf-8")
    (plans / "root.wye").write_text("this is not what is checked\n", "utf-8")
    (folder / "wyeline.toml").write_text('[paths."plans/*"]\nleg-voltage-mismatch = "warning"\n', "utf-8")
    stdin(monkeypatch, 'include "part.wye"\n' + WRONG.removeprefix(CLEAN))
    assert main(["check", "-", "--stdin-filename", "plans/root.wye", "--quiet"]) == 1
    out = capsys.readouterr().out
    assert re.search(r"^plans/root.wye:3:\d+: warning leg-voltage-mismatch", out, re.MULTILINE)
    stdin(monkeypatch, CLEAN)
    assert main(["check", "-"]) == 0
    assert "(1 file)" in capsys.readouterr().out
    stdin(monkeypatch, "panel \udcff".encode("utf-8", "surrogatepass").decode("latin-1"))
    assert main(["check", "-"]) in (1, 2)
    for refused in (["-", "site.wye"], ["-", "--fix"], ["site.wye", "--stdin-filename", "x.wye"], ["-", "--watch"]):
        assert main(["check", *refused]) == 2, refused


def test_statistics_count_by_rule(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / "site.wye").write_text(WRONG + "panel A 480Y/277 MLO\npanel B 480Y/277 MLO\n", "utf-8")
    assert main(["check", "site.wye", "--statistics"]) == 1
    rows = [line.split() for line in capsys.readouterr().out.splitlines()]
    assert ["2", "error", "known-slip"] in rows and ["1", "error", "leg-voltage-mismatch"] in rows
    counts = [int(row[0]) for row in rows if row[0].isdigit() and len(row) == 3]
    assert counts == sorted(counts, reverse=True)


EXPECTING = """project "Kiln hall"
  basis us-2023
  frequency 60 Hz, revision "A"
utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4
feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40
switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA, lug-temp 75 degC
expect DP fault <= 22 kA
expect DP fault <= 20 kA
expect NOBODY fault <= 1 kA
expect DP colour <= 1 kA
"""
"""The service's own 22 kA cannot be exceeded 6 m away (a wire only adds impedance), and 20 kA is: met, then missed."""


def test_expectations_are_told_in_every_output(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / "site.wye").write_text(EXPECTING, "utf-8")
    assert main(["check", "site.wye", "--format", "json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert [(e["line"], e["outcome"]) for e in told["expectations"]] == [
        (6, "met"),
        (7, "missed"),
        (8, "unknown"),
        (9, "unknown"),
    ]
    assert told["expectations"][1]["text"] == "expect DP fault <= 20 kA"
    assert told["summary"]["expectations"] == {"met": 1, "missed": 1, "unknown": 2}
    for name in ("text", "github"):  # the second from the cache
        main(["check", "site.wye", "--format", name])
        assert "expectations: 1 met, 1 missed, 2 unknown" in capsys.readouterr().out
    main(["check", "site.wye", "--format", "junit"])
    cases = [c for c in ET.fromstring(capsys.readouterr().out).iter("testcase") if c.get("classname") == "expect"]
    assert [len(list(c)) and next(iter(c)).tag for c in cases] == [0, "failure", "skipped", "skipped"]
    main(["check", "site.wye", "--format", "sarif"])
    run = json.loads(capsys.readouterr().out)["runs"][0]
    assert run["properties"]["expectations"] == {"met": 1, "missed": 1, "unknown": 2}
    assert "expectation-missed" in {r["ruleId"] for r in run["results"]}


def test_an_expectation_that_nothing_judges_is_never_met(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / "site.wye").write_text(EXPECTING, "utf-8")
    (folder / "wyeline.toml").write_text('[rules]\nexpectation-missed = "off"\n', "utf-8")
    main(["check", "site.wye", "--format", "json"])
    assert {e["outcome"] for e in json.loads(capsys.readouterr().out)["expectations"]} == {"unknown"}


def test_a_fault_of_ours_is_not_told_as_a_missing_scenario(
    folder: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object) -> None:
        raise KeyError("LP-1")

    monkeypatch.setattr("wyeline_linter.analysis.build", broken)
    assert main(["check", str(folder / "site.wye")]) == 3
    assert "a fault of Wyeline itself: KeyError" in capsys.readouterr().err


def test_a_file_behind_a_misspelt_include_is_part_of_its_model(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "site.wye").write_text(CLEAN + 'incl5de "north.wye"\n', "utf-8")
    (folder / "north.wye").write_text("feeder MSB -> LP-1  100 A 3p\npanel LP-1  208Y/120  bus 225 A\n", "utf-8")
    main(["check", ".", "--format", "json"])
    found = [(f["path"], f["rule"]) for f in json.loads(capsys.readouterr().out)["findings"]]
    assert ("site.wye", "unreadable-line") in found
    assert ("north.wye", "leg-voltage-mismatch") in found  # MSB is known there
    assert ("north.wye", "dangling-reference") not in found  # and the file is no second model


def test_what_other_models_say_is_not_lost_with_one_that_is_unreadable(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "binary.wye").write_bytes(b"\x00\x01")
    assert main(["check", "site.wye", "binary.wye", "--format", "sarif"]) == 2
    run = json.loads(capsys.readouterr().out)["runs"][0]
    assert [r["ruleId"] for r in run["results"] if r["level"] == "error"] == ["leg-voltage-mismatch"]
    (notice,) = run["invocations"][0]["toolExecutionNotifications"]
    assert "binary.wye" in notice["message"]["text"] and run["invocations"][0]["executionSuccessful"] is False
    assert main(["check", "site.wye", "binary.wye", "--update-baseline"]) == 2
    assert not (folder / "wyeline.baseline.json").exists()


def test_the_readme_names_every_key_of_the_json_output(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["check", "site.wye", "--format", "json"])
    data = json.loads(capsys.readouterr().out)
    section = (Path(__file__).parents[2] / "linter" / "README.md").read_text("utf-8")
    section = section.split("### `check --format json`")[1].split("\n## ")[0]
    finding = data["findings"][0]
    for key in (*data, *data["summary"], *finding, *data["statistics"][0]):
        assert f"`{key}`" in section, key
    for name in FORMATS:
        assert f"`{name}`" in (Path(__file__).parents[2] / "linter" / "README.md").read_text("utf-8")
    assert folder.exists()


def test_a_terminal_of_another_encoding_is_no_fault_and_programs_get_utf8(folder: Path) -> None:
    def run(name: str) -> subprocess.CompletedProcess[bytes]:
        words = [sys.executable, "-m", "wyeline_linter.cli", "check", "site.wye", "--format", name]
        where = {**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"}
        return subprocess.run(words, cwd=folder, env=where, capture_output=True, check=False)

    assert run("text").returncode == 1
    found = json.loads(run("json").stdout.decode("utf-8"))["findings"]
    assert any("120°" in f["found"] for f in found)


@pytest.mark.parametrize("site", ["field-station/station.wye", "dairy-works/works.wye", "broken/voltage-magnitude.wye"])
def test_the_readme_names_every_key_of_the_figures(site: str, capsys: pytest.CaptureFixture[str]) -> None:
    root = Path(__file__).parents[2]
    assert main(["show", str(root / "grammar" / "examples" / site), "--json"]) == 0
    figures = json.loads(capsys.readouterr().out)
    section = (root / "linter" / "README.md").read_text("utf-8").split("### `show --json`")[1].split("\n## ")[0]
    named = set(re.findall(r"`(\w+)`", section))
    free = {"to_ground_v", "amps", "leg_va", "unknown", "max", "min"}
    """Objects whose keys are names of conductors or figures."""

    def missing(data: object) -> set[str]:
        if isinstance(data, list):
            return {key for each in data for key in missing(each)}
        if not isinstance(data, dict):
            return set()
        below = {k for name, each in data.items() if name not in free for k in missing(each)}
        below |= {k for name in ("max", "min") if name in data for each in data[name].values() for k in missing(each)}
        return below | (data.keys() - named)

    kept = {key for each in (*figures["equipment"].values(), *figures["feeders"].values()) for key in missing(each)}
    assert not kept, "linter/README.md does not say what these are"


@pytest.mark.usefixtures("folder")
def test_sentences_keep_to_100_columns_and_source_lines_stay_whole(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", "site.wye"]) == 1
    lines = capsys.readouterr().out.splitlines()
    long = [line for line in lines if len(line) > 100]
    assert all(line.startswith("site.wye:") for line in long)  # place, rule and message stay one line for programs
    why = next(i for i, line in enumerate(lines) if line.startswith("  why:"))
    assert lines[why + 1].startswith(" " * 11) and lines[-1].endswith("Not for energised work.")
