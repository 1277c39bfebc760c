"""What can be claimed has a page of its own, whose words are those of the one list of claims."""

from __future__ import annotations

import pytest

from wyeline_linter.claims import EXCUSES
from wyeline_linter.cli import main


@pytest.mark.parametrize("name", EXCUSES)
def test_every_claim_is_explained(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", name]) == 0
    said = capsys.readouterr().out
    asked = EXCUSES[name]
    assert asked.text in said and asked.clause in said
    assert all(f"- {condition}" in said for condition in asked.conditions)
    assert f"`claim {name}" in said


def test_a_claim_that_is_misspelt_is_named(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", "clas-ii"]) == 2
    assert "class-ii" in capsys.readouterr().err
