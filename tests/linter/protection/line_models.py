"""Models in memory for tests of lines: a US service of 400 A, an IEC board of 160 A, and what hangs on them."""

from __future__ import annotations

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.protection.circuits import circuit_lines
from wyeline_linter.protection.lines import Line, feeder_line

US = """project "Quarry"
  basis us-2023
utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB  3x500kcmil + N 500kcmil Cu THWN-2  6 m  in 4 inch PVC-40
switchboard MSB 480Y/277  bus 400 A, main 400 A, lug-temp 75 degC
"""
LOW = US.replace("480Y/277", "208Y/120")
IEC = """project "Quarry"
  basis iec
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S
feeder NETT -> HV  4x70mm2 + PE 35mm2 Cu XLPE  6 m method C
panel HV 400Y/230  bus 160 A, main 160 A
"""
PANEL = "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"


def model(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def rules_of(text: str) -> list[str]:
    return [f.rule for f in model(text).findings()]


def line_of(text: str, key: str) -> Line:
    """The line of a feeder by its key, or of a circuit by ``BOARD place``."""
    analysis = model(text)
    feeder = analysis.model.feeders.get(key)
    if feeder is not None:
        found = feeder_line(analysis.view, feeder)
        assert found is not None, [f.message for f in analysis.findings()]
        return found
    board, _, place = key.partition(" ")
    return next(x for x in circuit_lines(analysis.view, analysis.model.equipment[board]) if x.position == place)
