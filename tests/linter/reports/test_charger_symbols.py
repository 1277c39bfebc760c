"""Which symbol a charger has on the one-line diagram: only those of vehicles are drawn as charging points."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.reports.diagram.glyphs import node_glyph
from wyeline_linter.reports.diagram.sketch import Kind
from wyeline_linter.reports.one_line import one_line
from wyeline_linter.reports.subject import Subject

SITE = """project "Depot"
  basis us-2023
utility UTIL 480Y/277  fault 14 kA, x/r 4
panel LP 480Y/277  bus 125 A, main 100 A
feeder UTIL -> LP
charger CH-1 {kind}
feeder LP -> CH-1  30 A 3p
"""


@pytest.mark.parametrize(
    ("kind", "symbol"),
    [
        ("480 3ph  20 kW, ev", Kind.CHARGING_POINT),
        ("480 3ph -> 125 dc  5 kW", Kind.CHARGER),
        ("480 3ph  12 kW", Kind.CHARGER),
    ],
)
def test_the_symbol_of_a_charger(kind: str, symbol: Kind) -> None:
    made = Analysis("/m/site.wye", Files(lambda _: SITE.format(kind=kind)), "/m")
    (node,) = (n for n in one_line(Subject(made)).nodes if "CH-1" in n.id)
    assert node.kind is symbol
    assert any(letter.text == "EV" for letter in node_glyph(node, "us").letters) == (symbol is Kind.CHARGING_POINT)
