"""The shipped sites are clean but for what they explain in place; each broken model names its cause, once."""

from __future__ import annotations

from pathlib import Path

import pytest

from wyeline_grammar.formatter import format_text
from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.commands.new import STARTERS

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
CAUSES = {
    "already-fed": "second-supply",
    "alternating-or-direct": "frequency-or-dc-mismatch",
    "angle-120-208-not-120-240": "two-phase-legs-not-split",
    "device-poles": "one-pole-on-two-live-wires",
    "frequency": "frequency-or-dc-mismatch",
    "leg-missing": "missing-leg",
    "loop": "supply-loop",
    "no-neutral": "neutral-absent-upstream",
    "phase-count": "phase-count-mismatch",
    "position-on-another-leg": "position-leg-conflict",
    "position-taken": "position-occupied",
    "record-incomplete": "upstream-system-unknown",
    "slash-rating": "slash-rating-misused",
    "voltage-magnitude": "leg-voltage-mismatch",
    "windings-do-not-match": "winding-voltage-misfit",
}


def test_every_broken_model_has_its_cause_here() -> None:
    shipped = {path.stem for path in (EXAMPLES / "broken").glob("*.wye")} - {"slips"}
    assert shipped == CAUSES.keys()


@pytest.mark.parametrize("name", CAUSES)
def test_a_broken_model_draws_its_cause_and_nothing_else(name: str) -> None:
    findings = Analysis(str(EXAMPLES / "broken" / f"{name}.wye"), Files()).findings()
    assert [f.rule for f in findings] == [CAUSES[name]]


@pytest.mark.parametrize("path", ["field-station/station.wye", "dairy-works/works.wye"])
def test_the_sites_are_clean_but_for_what_they_accept(path: str) -> None:
    analysis = Analysis(str(EXAMPLES / path), Files())
    assert [f.rule for f in analysis.findings() if f.allowed is None] == []
    assert [f.rule for f in analysis.findings() if f.allowed is not None]


@pytest.mark.parametrize(("subject", "basis"), STARTERS)
def test_the_starter_models_are_clean_and_set_in_columns(
    subject: str, basis: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["new", str(tmp_path / "begun"), "--basis", basis, "--of", subject]) == 0
    starter = tmp_path / "begun" / "site.wye"
    assert f"next: wyeline check {starter}" in capsys.readouterr().out
    analysis = Analysis(str(starter), Files())
    assert analysis.all_findings() == [] and analysis.view.basis == basis
    text = starter.read_text("utf-8")
    assert format_text(text) == text
    assert main(["new", str(tmp_path / "begun")]) == 2  # never over a file that is there
