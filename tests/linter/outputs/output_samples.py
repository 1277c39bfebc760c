"""Results for tests of outputs: every sort of finding, from a real check of invented models."""

from __future__ import annotations

from pathlib import Path

from wyeline_linter.expectations import Expectation
from wyeline_linter.findings import Severity
from wyeline_linter.judging import ConfigurationOf, judge
from wyeline_linter.outputs import Results
from wyeline_linter.result_cache import ResultCache

MODEL = """wye 1
utility     QUAY    480Y/277            fault 28 kA, x/r 7
include "halle é, 100 %.wye"
switchboard MSB     480Y/277            bus 800 A, main 800 A, rated 42 kA
feeder QUAY -> MSB  800 A 3p
panel       LP-1    208Y/120            bus 225 A, MLO
feeder MSB -> LP-1  100 A 3p
transformer TX-2    480 3ph             45 kVA, z 4 %, x/r 2
feeder MSB -> TX-2  60 A 3p
panel       LP-2    208Y/120            bus 225 A
feeder TX-2 -> LP-2
panel       LP-3    480Y/277            bus 225 A
  allow unfed-equipment "fed next year, see <RFI 12> & 13"
"""
INCLUDED = """panel       "P\U0001f50c1"  480Y/277           bus 100 A, mian 100 A
"""


def results(folder: Path) -> Results:
    """The model written into a folder and checked: errors, a gap, fixes, a related place, an accepted finding."""
    root = folder / "site.wye"
    root.write_text(MODEL, "utf-8")
    (folder / "halle é, 100 %.wye").write_text(INCLUDED, "utf-8")
    judged = judge(str(root), None, ResultCache(""), ConfigurationOf(str(root)))
    assert {f.severity for f in judged.findings} >= {Severity.ERROR, Severity.GAP}
    assert any(f.allowed for f in judged.findings) and any(f.related for f in judged.findings)
    assert any(f.fixes for f in judged.findings)
    expectations = [
        Expectation(str(root), 1, "expect MSB fault <= 42 kA", "met", ""),
        Expectation(str(root), 2, "expect LP-1 drop <= 3 %", "unknown", "no length is written"),
    ]
    return Results(
        judged.findings, judged.files, expectations, Severity.WARNING, True, [("gone.wye", "no such file")], []
    )
