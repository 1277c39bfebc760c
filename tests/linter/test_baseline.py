"""The baseline: what it accepts, what it never accepts, when it rots, and that it may not be larger than needed."""

from __future__ import annotations

import json
import random
from pathlib import Path

import pytest

from wyeline_grammar.sources import SourceError
from wyeline_linter import baseline as baselines
from wyeline_linter.cli import main
from wyeline_linter.configuration import BASELINE_NAME
from wyeline_linter.fingerprints import figures_of, fingerprint, moved, without_figures

KILN = """generator   GEN     208Y/120            30 kVA, pf 0.8
feeder GEN -> LP-1  100 A 3p
panel       LP-1    208Y/120            bus 225 A
  1,3,5  100 A 3p  28 kW heating  "Kiln"
"""
"""28 kW on 24 kW (30 kVA at 0.8): 116.7 %, an error of `source-overloaded`."""


@pytest.fixture
def site(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("WYELINE_CACHE", str(tmp_path / "cache"))
    path = tmp_path / "site.wye"
    path.write_text(KILN, "utf-8")
    return path


def check(capsys: pytest.CaptureFixture[str], *options: str) -> tuple[int, list[str]]:
    """The exit code of a check, and the rules that failed and are not accepted; gaps are left out."""
    capsys.readouterr()
    code = main(["check", "site.wye", "--format", "json", *options])
    out = capsys.readouterr().out
    found = json.loads(out)["findings"] if out else []
    return code, [f["rule"] for f in found if f["allowed"] is None and f["severity"] != "gap"]


def test_what_is_recorded_is_accepted_wherever_its_lines_go(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert check(capsys) == (1, ["source-overloaded"])
    assert check(capsys, "--update-baseline") == (0, [])
    assert check(capsys) == (0, [])
    site.write_text("// moved\n\n" + KILN, "utf-8")
    assert check(capsys) == (0, [])
    assert check(capsys, "--no-baseline") == (1, ["source-overloaded"])


def test_a_finding_whose_figures_moved_is_back(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    check(capsys, "--update-baseline")
    site.write_text(KILN.replace("28 kW", "29 kW"), "utf-8")  # 3.6 % more
    assert check(capsys) == (0, [])
    site.write_text(KILN.replace("28 kW", "30 kW"), "utf-8")  # 7.1 % more
    assert check(capsys) == (1, ["source-overloaded"])
    (site.parent / "wyeline.toml").write_text('[limits]\nallowance-change = "10 %"\n', "utf-8")
    assert check(capsys) == (0, [])


def test_it_fails_when_it_allows_more_than_it_needs_until_it_is_pruned(
    site: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    check(capsys, "--update-baseline")
    site.write_text(KILN.replace("28 kW", "12 kW"), "utf-8")
    assert check(capsys, "--fail-on", "error") == (1, ["baseline-excess"])
    capsys.readouterr()
    main(["check", "site.wye"])
    out = capsys.readouterr().out
    assert "wyeline.baseline.json:5:5: warning baseline-excess" in out and '| {"model": "site.wye"' in out.replace(
        "    {", "{"
    )
    assert check(capsys, "--prune") == (0, [])
    assert check(capsys) == (0, [])
    assert json.loads((site.parent / BASELINE_NAME).read_text("utf-8"))["entries"] == []


def test_pruning_never_adds(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (site.parent / BASELINE_NAME).write_text(baselines.text_of([]), "utf-8")
    assert check(capsys, "--prune") == (1, ["source-overloaded"])


def test_an_allowance_grows_stale_when_its_figures_move(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    allowed = KILN.replace("pf 0.8\n", 'pf 0.8\n  allow source-overloaded "the kiln rests while the pump runs"\n')
    site.write_text(allowed, "utf-8")
    assert check(capsys) == (0, [])
    check(capsys, "--update-baseline")
    (entry,) = json.loads((site.parent / BASELINE_NAME).read_text("utf-8"))["entries"]
    assert entry["allowance"] is True
    assert check(capsys) == (0, [])
    site.write_text(allowed.replace("28 kW", "34 kW"), "utf-8")
    assert check(capsys) == (1, ["allowance-stale"])
    capsys.readouterr()
    main(["check", "site.wye"])
    out = capsys.readouterr().out
    assert "34.0 kW" in out and "28.0 kW" in out and "5 % away" in out
    assert check(capsys, "--update-baseline") == (0, [])
    assert check(capsys) == (0, [])


def test_an_unknown_figure_is_never_accepted(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    unknown = (
        "transformer TX-1  208 3ph  45 kVA\nfeeder LP-1 -> TX-1  60 A 3p\npanel LP-2 208Y/120\nfeeder TX-1 -> LP-2\n"
    )
    site.write_text(KILN + unknown, "utf-8")
    check(capsys, "--update-baseline")
    assert check(capsys) == (0, [])
    assert main(["check", "site.wye", "--quiet"]) == 0
    assert "gap upstream-system-unknown" in capsys.readouterr().out


def test_the_first_run_says_what_it_accepts_by_severity(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (site.parent / "site.wye").write_text(KILN + 'panel A 208Y/120 bus 1 A\n  allow legs-unbalanced "later"\n', "utf-8")
    findings = json.loads(_printed(capsys, "--format", "json"))["findings"]
    counts = {w: sum(f["severity"] == w for f in findings) for w in ("error", "warning", "advice", "gap")}
    unused = sum(f["rule"] == "allowance-unused" for f in findings)
    assert counts["error"] > 0 < counts["warning"] and counts["gap"] > 0 < unused
    main(["check", "site.wye", "--update-baseline"])
    told = capsys.readouterr().err
    errors, warnings = counts["error"], counts["warning"] - unused
    assert (
        f" accepted as they are ({errors} error{'s' * (errors > 1)}, {warnings} warning{'s' * (warnings > 1)}" in told
    )
    assert f"; {counts['gap']} figures unknown (gaps are never accepted)" in told
    other = site.parent / "other.wye"
    other.write_text(KILN.replace("GEN", "G-2"), "utf-8")
    (site.parent / "wyeline.toml").write_text("", "utf-8")
    main(["check", "other.wye", "--update-baseline"])
    assert "(1 error of the models checked)" in capsys.readouterr().err


def _printed(capsys: pytest.CaptureFixture[str], *options: str) -> str:
    main(["check", "site.wye", *options])
    return capsys.readouterr().out


def test_models_that_are_not_checked_keep_their_entries(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (site.parent / "other.wye").write_text(KILN, "utf-8")
    (site.parent / "wyeline.toml").write_text("", "utf-8")
    assert main(["check", ".", "--update-baseline"]) == 0
    assert check(capsys) == (0, [])  # entries of other.wye are no excess here
    site.write_text(KILN.replace("28 kW", "12 kW"), "utf-8")
    assert check(capsys, "--prune")[0] == 0
    entries = json.loads((site.parent / BASELINE_NAME).read_text("utf-8"))["entries"]
    assert [e["model"] for e in entries] == ["other.wye"]


def test_several_alike_are_counted(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    twice = "\n".join(f"panel  X-{i}  208Y/120  bus 225 A, rated 800 kA" for i in (1, 2)) + "\n"
    site.write_text(KILN + twice.split("\n")[0] + "\n", "utf-8")
    check(capsys, "--update-baseline")
    assert check(capsys)[1] == []
    site.write_text(KILN + twice, "utf-8")
    assert "implausible-value" in check(capsys)[1]


def test_the_file_is_sorted_and_the_same_whatever_the_order() -> None:
    entries = [
        baselines.Entry("a.wye", rule, subject, "", "it is 3 A", "", False)
        for rule in ("x-y", "b-c")
        for subject in "QP"
    ]
    shuffled = list(entries)
    random.Random(7).shuffle(shuffled)
    text = baselines.text_of(entries)
    assert text == baselines.text_of(shuffled)
    lines = [line for line in text.split("\n") if '"rule"' in line]
    assert lines == sorted(lines) and len(lines) == 4


@pytest.mark.parametrize(
    "text", ["", "{", "[]", '{"version": 2, "entries": []}', '{"version": 1, "entries": [{"rule": "x"}]}', "[" * 100000]
)
def test_what_is_no_baseline_is_refused(site: Path, capsys: pytest.CaptureFixture[str], text: str) -> None:
    path = site.parent / BASELINE_NAME
    path.write_text(text, "utf-8")
    with pytest.raises(SourceError):
        baselines.load(str(path))
    assert main(["check", "site.wye"]) == 2
    assert BASELINE_NAME in capsys.readouterr().err
    assert check(capsys, "--update-baseline")[0] == 0
    assert check(capsys) == (0, [])


def test_contradictions_are_refused(site: Path) -> None:
    assert site.exists()
    for options in (["--prune"], ["--prune", "--update-baseline"], ["--no-baseline", "--prune"]):
        assert main(["check", "site.wye", *options]) == 2, options
    assert main(["check", "site.wye", "--scenario", "Dark", "--update-baseline"]) == 2


@pytest.mark.parametrize(
    ("text", "figures", "plain"),
    [
        ("`LP-1` has 14.3 kA, rated 10 kA", [14300.0, 10000.0], "`LP-1` has #, rated #"),
        ("950 A of `T 2`: 80 %", [950.0, 0.8], "# of `T 2`: #"),
        ("a 2-pole device on 480Y/277, 3p, #8", [], "a 2-pole device on 480Y/277, 3p, #8"),
        ("5 spaces on 1,3,5", [5.0], "# spaces on 1,3,5"),
    ],
)
def test_figures_and_the_text_without_them(text: str, figures: list[float], plain: str) -> None:
    assert figures_of(text) == pytest.approx(figures)
    assert without_figures(text) == plain


def test_figures_move_across_units_and_names_do_not_count() -> None:
    assert not moved("950 A", "0.98 kA", 0.05)
    assert moved("950 A", "1.1 kA", 0.05)
    assert moved("0 A", "1 A", 0.05)
    assert fingerprint("r", "s", "", "`A` 950 A") == fingerprint("r", "s", "", "`A` 1.1 kA")
    assert fingerprint("r", "s", "", "`A1` 950 A") != fingerprint("r", "s", "", "`A2` 950 A")
