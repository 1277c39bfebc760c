"""What an `allow` and a baseline can take away, and what they cannot: the finding stays, and both places say why."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter import baseline as baselines
from wyeline_linter.accepting import beyond
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.configuration import BASELINE_NAME
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.registry import NotAccepted, all_rules
from wyeline_linter.verdicts import Cause

BY_HAND = {
    "slash-rating-misused", "device-voltage-low", "expectation-missed", "board-overloaded", "source-overloaded",
    "transformer-overload", "two-unit-bank-overload", "demand-applied-twice", "through-lugs-absent",
    "earthing-systems-joined", "overload-after-switching", "position-leg-conflict", "multi-pole-straddle",
    "grounded-leg-has-pole", "shared-neutral-same-leg", "interrupting-too-low", "earth-fault-exceeds-three-phase",
    "withstand-too-low", "second-supply", "supply-loop", "interlock-broken", "export-overload",
}  # fmt: skip
"""Errors of physics that somebody may answer for, with a reason that the model does not show."""
REFUSAL = """project "Shed"
utility UTIL 480Y/277  fault 10 kA, fault-min 8 kA, x/r 4
switchboard MSB 480Y/277  bus 400 A, main 400 A
panel LP-1 208Y/120  bus 125 A
feeder UTIL -> MSB
feeder MSB -> LP-1  100 A 3p
"""
ALLOW = '  allow leg-voltage-mismatch "the owner wants it so"\n'


def found(text: str) -> list[Finding]:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m").findings()


def test_every_error_of_physics_is_of_one_sort_or_the_other() -> None:
    rules = all_rules()
    errors = {r.name for r in rules.values() if r.basis == "physics" and r.severity is Severity.ERROR}
    sorts = {sort: {r.name for r in rules.values() if r.not_accepted is sort} for sort in NotAccepted}
    refused, unclear = sorts[NotAccepted.UNCONNECTED], sorts[NotAccepted.UNCLEAR]
    assert errors == refused | unclear | BY_HAND
    assert not (refused | unclear) & BY_HAND
    assert {cause.value for cause in Cause} & errors - {"second-supply", "supply-loop"} <= refused | unclear
    assert sorts[NotAccepted.OF_ACCEPTING] == {"allowance-unused", "allowance-stale", "baseline-excess"}
    assert {r.name for r in rules.values() if r.scope == "text"} - unclear == {"implausible-value"}


@pytest.mark.parametrize("at", ["feeder", "project"])
def test_a_refusal_stays_and_both_places_say_why(at: str) -> None:
    text = REFUSAL + ALLOW if at == "feeder" else REFUSAL.replace("\nutility", f"\n{ALLOW}utility", 1)
    by_rule = {f.rule: f for f in found(text)}
    refused, unused = by_rule["leg-voltage-mismatch"], by_rule["allowance-unused"]
    assert refused.allowed is None and refused.severity is Severity.ERROR
    assert "No `allow` can take this away: what cannot be connected stays so" in refused.why
    assert unused.message.startswith("no `allow` can take `leg-voltage-mismatch` away: what cannot be connected")
    line = unused.place.span.line + unused.place.block.first_line
    assert text.splitlines()[line].strip() == ALLOW.strip()
    assert len(found(text)) == len(found(REFUSAL)) + 1, "and nothing else"


def test_nor_does_it_take_away_what_is_not_clear() -> None:
    text = (
        REFUSAL.replace("208Y", "480Y").replace("/120 ", "/277 ")
        + 'panel LP-1 480Y/277\n  allow duplicate-tag "both"\n'
    )
    by_rule = {f.rule: f for f in found(text)}
    assert by_rule["duplicate-tag"].allowed is None
    assert "while the model does not say what is meant" in by_rule["duplicate-tag"].why
    assert "while the model does not say" in by_rule["allowance-unused"].message


def test_it_stays_when_a_configuration_makes_it_milder(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "wyeline.toml").write_text('[rules]\nleg-voltage-mismatch = "advice"\n', "utf-8")
    (tmp_path / "site.wye").write_text(REFUSAL + ALLOW, "utf-8")
    main(["check", str(tmp_path / "site.wye"), "--format", "json", "--no-cache"])
    told = {f["rule"]: f for f in json.loads(capsys.readouterr().out)["findings"]}
    assert told["leg-voltage-mismatch"]["severity"] == "advice" and told["leg-voltage-mismatch"]["allowed"] is None


@pytest.fixture
def site(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "wyeline.toml").write_text("", "utf-8")
    made = tmp_path / "site.wye"
    made.write_text(REFUSAL, "utf-8")
    return made


def test_a_baseline_does_not_take_it_in(site: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", "site.wye", "--update-baseline"]) == 0
    assert "; 1 finding that nobody can accept" in capsys.readouterr().err
    entries = json.loads((site.parent / BASELINE_NAME).read_text("utf-8"))["entries"]
    assert "leg-voltage-mismatch" not in {e["rule"] for e in entries}
    assert main(["check", "site.wye", "--quiet"]) == 1
    assert "error leg-voltage-mismatch" in capsys.readouterr().out


def test_an_older_baseline_says_so_at_its_line_until_it_is_pruned(
    site: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (refused,) = (f for f in found(REFUSAL) if beyond(f.rule))
    entry = baselines.Entry("site.wye", refused.rule, refused.subject, "", refused.message, refused.found, False)
    (site.parent / BASELINE_NAME).write_text(baselines.text_of([entry]), "utf-8")
    assert main(["check", "site.wye", "--format", "json"]) == 1
    told = {f["rule"]: f for f in json.loads(capsys.readouterr().out)["findings"]}
    assert told["leg-voltage-mismatch"]["allowed"] is None
    assert "No baseline can take this away" in told["leg-voltage-mismatch"]["why"]
    excess = told["baseline-excess"]
    assert excess["message"].startswith("no baseline can take `leg-voltage-mismatch` of `MSB -> LP-1`")
    assert excess["path"] == BASELINE_NAME and excess["range"]["start"]["line"] == 4
    main(["check", "site.wye", "--prune"])
    capsys.readouterr()
    main(["check", "site.wye", "--format", "json"])
    rules = {f["rule"] for f in json.loads(capsys.readouterr().out)["findings"]}
    assert "leg-voltage-mismatch" in rules and "baseline-excess" not in rules


def test_what_a_person_can_answer_for_is_accepted_as_ever() -> None:
    text = (
        REFUSAL.replace("208Y/120", "480Y/277") + "load OVEN 480 3ph  150 kVA, heating\nfeeder LP-1 -> OVEN  200 A 3p\n"
    )
    assert any(f.rule == "board-overloaded" and f.allowed is None for f in found(text))
    accepted = text.replace("bus 125 A\n", 'bus 125 A\n  allow board-overloaded "measured in May: 90 A"\n')
    assert all(f.allowed == "measured in May: 90 A" for f in found(accepted) if f.rule == "board-overloaded")
    assert not any(f.rule == "allowance-unused" for f in found(accepted))
