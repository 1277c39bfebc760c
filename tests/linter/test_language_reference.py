"""The examples of the language reference, run through the linter: a reader who copies one gets no surprise."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding

TEXT = (Path(__file__).parents[2] / "grammar" / "README.md").read_text(encoding="utf-8")
MODELS = re.findall(r"^```wye\n(.*?)^```", TEXT, re.DOTALL | re.MULTILINE)
FRAGMENTS = re.findall(r"^```wye fragment\n(.*?)^```", TEXT, re.DOTALL | re.MULTILINE)
# An example leaves out what it is not about; what then cannot be calculated is told, and is no fault of the example.
LEFT_OUT = {"impedance-missing", "fault-inputs-missing"}
# A fragment has neither its supply nor the other lines that it names.
ELSEWHERE = {"dangling-reference", "unfed-equipment", "include-unreadable", "unused-type"}


def found(tmp_path: Path, text: str) -> list[Finding]:
    root = tmp_path / "example.wye"
    root.write_text(text, "utf-8")
    return list(Analysis(str(root), Files(), str(tmp_path)).findings())


@pytest.mark.parametrize("text", MODELS)
def test_a_whole_model_has_no_finding_but_what_it_leaves_out(tmp_path: Path, text: str) -> None:
    assert [f.message for f in found(tmp_path, text) if f.rule not in LEFT_OUT] == []


@pytest.mark.parametrize("text", FRAGMENTS)
def test_a_fragment_has_no_fault_of_its_own(tmp_path: Path, text: str) -> None:
    wrong = [f for f in found(tmp_path, text) if f.rule not in ELSEWHERE and f.severity.word != "gap"]
    assert [f.message for f in wrong] == []
