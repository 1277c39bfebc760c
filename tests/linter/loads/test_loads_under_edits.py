"""Loads kept under edits equal loads added up from the start, and an edit goes up its own path only."""

from __future__ import annotations

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.loads.rollup import LoadBook

SITE = """wye 1
project "Mill"
  basis us-2023
utility     UTIL  480Y/277        fault 30 kA, x/r 8
switchboard MSB   480Y/277        bus 1200 A
feeder UTIL -> MSB  1200 A 3p
panel       LP-1  480Y/277        bus 225 A
  1  20 A 1p  2 kVA lighting
  3  20 A 1p  2 kVA lighting
  2,4,6  30 A 3p  9 kW heating continuous
feeder MSB -> LP-1  225 A 3p
transformer TX-1  480 3ph -> 208Y/120  75 kVA
feeder MSB -> TX-1  125 A 3p
panel       RP-1  208Y/120        bus 225 A
  1  20 A 1p  12 kVA receptacle
  3  20 A 1p  180 VA count 6 receptacle
  5,7  30 A 2p  4 kW kitchen
  8,10  20 A 2p  leg A 1.2 kVA, leg B 0.9 kVA, lighting
feeder TX-1 -> RP-1  225 A 3p
mcc         MCC   480 3ph         bus 600 A
feeder MSB -> MCC  400 A 3p
motor       P-1   460 3ph         25 hp, pf 0.85, eff 93 %
motor       P-2   460 3ph         30 hp, pf 0.86, eff 93 %, standby-of P-1
feeder MCC -> P-1  70 A 3p
feeder MCC -> P-2  80 A 3p
load        CH    480 3ph         90 kVA, cooling, not-with HTR
load        HTR   480 3ph         60 kW heating
feeder MSB -> CH  150 A 3p
feeder LP-1 -> HTR  100 A 3p
transformer TX-2  480 1ph -> 120/240  25 kVA
feeder MSB[AB] -> TX-2  70 A 2p
panel       UNIT  120/240         bus 125 A, dwelling optional, floor-area 900 ft2
  1,3  50 A 2p  12 kW kitchen
  5  20 A 1p  receptacle
feeder TX-2 -> UNIT  100 A 2p
panel       SUB   120/240         bus 60 A
  1  20 A 1p  lighting
  2,4  30 A 2p  5 kW heating
feeder UNIT -> SUB  60 A 2p
scenario "Night"
  shed LP-1
"""

CHANGES = [
    (7, "  1  20 A 1p  2.5 kVA lighting"),
    (8, "  3  20 A 1p  lighting"),
    (5, "panel       LP-1  480Y/277        bus 225 A, factor 0.8"),
    (10, "feeder MSB -> LP-1  225 A 3p  factor 0.7"),
    (11, "transformer TX-1  480 1ph -> 120/240  75 kVA"),
    (14, "  1  20 A 1p  9 kVA receptacle continuous"),
    (23, "motor       P-2   460 3ph         30 hp, pf 0.86, eff 93 %"),
    (22, "motor       P-1   460 3ph         25 hp, pf 0.85, eff 93 %, future"),
    (24, "feeder MSB -> P-1  70 A 3p"),
    (26, "load        CH    480 3ph         90 kVA, cooling"),
    (27, "load        HTR   480 3ph         120 kW heating"),
    (28, "feeder MSB -> CH  150 A 3p  normally-open"),
    (21, "feeder UTIL -> MCC  400 A 3p"),
    (21, ""),
    (27, "load        HTR-2 480 3ph         60 kW heating, not-with CH"),
    (32, "panel       UNIT  120/240         bus 125 A, dwelling standard, floor-area 120 m2, laundry 2"),
    (32, "panel       UNIT  120/240         bus 125 A, dwelling standard"),
    (32, "panel       UNIT  120/240         bus 125 A"),
    (33, "  1,3  50 A 2p  8 kW count 2 kitchen"),
    (35, "feeder MSB[A] -> UNIT  100 A 2p"),
    (36, "panel       SUB   120/240         bus 60 A, dwelling optional, floor-area 50 m2"),
    (38, "  2,4  30 A 2p  7 kVA cooling"),
    (39, "feeder TX-2 -> SUB  60 A 2p"),
    (4, "switchboard MSB   480Y/277        bus 1200 A, existing, measured 300 A"),
    (4, "switchboard MSB   480Y/277        bus 1200 A, existing, measured 200 kW"),
    (6, "panel       LP-1  480Y/277        bus 225 A, existing, measured 40 kVA, pf 0.9"),
    (6, "panel       LP-1  480Y/277        bus 225 A, existing"),
    (7, "  1  20 A 1p  2 kVA lighting existing"),
    (8, "  3  20 A 1p  lighting existing"),
    (10, "feeder MSB -> LP-1  225 A 3p  existing"),
    (12, "feeder MSB -> TX-1  125 A 3p  existing"),
    (14, "  1  20 A 1p  12 kVA receptacle existing"),
    (18, "feeder TX-1 -> RP-1  225 A 3p  existing"),
    (20, "feeder MSB -> MCC  400 A 3p  existing"),
    (22, "motor       P-1   460 3ph         25 hp, pf 0.85, eff 93 %, existing"),
    (24, "feeder MCC -> P-1  70 A 3p  existing"),
    (26, "load        CH    480 3ph         90 kVA, cooling, not-with HTR, existing"),
    (28, "feeder MSB -> CH  150 A 3p  existing"),
    (31, "feeder MSB[AB] -> TX-2  70 A 2p  existing"),
    (32, "panel       UNIT  120/240         bus 125 A, dwelling optional, floor-area 900 ft2, existing"),
    (33, "  1,3  50 A 2p  12 kW kitchen existing"),
    (35, "feeder TX-2 -> UNIT  100 A 2p  existing"),
]


def edited(analysis: Analysis, line: int, text: str) -> None:
    file = analysis.files.get(analysis.model.files[0])
    analysis.edited(*file.replace_lines(line, line + 1, [text]))


@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.sampled_from(CHANGES), min_size=1, max_size=6))
def test_loads_kept_under_edits_equal_a_fresh_sum(changes: list[tuple[int, str]]) -> None:
    analysis = Analysis("/m/mill.wye", Files(lambda _: SITE), "/m")
    kept = analysis.view.loads
    for line, text in changes:
        edited(analysis, line, text)
        assert analysis.view.loads is kept
        fresh = LoadBook(analysis.model, analysis.network, analysis.derivation)
        assert kept.nodes.keys() == fresh.nodes.keys()
        for name, node in fresh.nodes.items():
            assert kept.nodes[name][2:] == node[2:], name
            assert kept.counted(name) == fresh.counted(name), name


def test_an_edit_goes_up_its_own_path_only() -> None:
    analysis = Analysis("/m/mill.wye", Files(lambda _: SITE), "/m")
    book = analysis.view.loads
    before = book.runs
    edited(analysis, 14, "  1  20 A 1p  11 kVA receptacle")
    assert book.runs - before == 4, "RP-1, TX-1, MSB and UTIL"
    before = book.runs
    edited(analysis, 14, "  1  20 A 1p  11 kVA  receptacle")
    assert book.runs - before == 1, "the same load again changes nothing above"
