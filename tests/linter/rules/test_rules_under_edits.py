"""After any run of edits, rules say what they say of the same text read afresh, related places and fixes included."""

from __future__ import annotations

import random

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis

SITE = """wye 1
project "Pier"
  basis us-2023
utility     QUAY    480Y/277            fault 28 kA, x/r 7
switchboard MSB     480Y/277            bus 800 A, main 800 A, spaces 30
feeder QUAY -> MSB  800 A 3p
transformer TX-1    480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2
feeder MSB -> TX-1  125 A 3p
type panel LAB  bus 225 A, main 225 A, spaces 42
panel       LP-1    like LAB
  1  20 A 1p  1.2 kVA receptacle  "Bench"
feeder TX-1 -> LP-1
generator   GEN     480Y/277            350 kVA, pf 0.8
transfer    ATS-1   400 A 4p
feeder MSB -> ATS-1.normal  400 A 3p
feeder GEN -> ATS-1.emergency  400 A 3p
panel       EP-1    480Y/277            bus 400 A, main lugs
feeder ATS-1 -> EP-1  400 A 3p
motor       P-1     460 3ph             15 hp, pf 0.86, eff 91 %
feeder EP-1 -> P-1  40 A 3p
scenario "Dark"
  off QUAY
"""
LINES = """panel LP-2 120/240 bus 100 A
feeder MSB -> LP-2 100 A 2p
feeder MSB[AB] -> LP-2 100 A 2p at 1,3
feeder MSB -> LP-2 100 A 2p at 5,7
feeder LP-1 -> LP-1
feeder EP-1 -> MSB 100 A 3p
feeder MSB -> EP-1 100 A 3p 3#1 + N #1 Cu 10 m in R-7
feeder A-1: MSB -> EP-1 100 A 3p, normally-open
feeder EP-1.through -> LP-2
feeder ATS-1 -> EP-1 500 A 3p
feeder MSB[CBA] -> EP-1 100 A 3p
feeder PV-1 -> MSB 100 A 3p
raceway R-7 2 inch EMT 20 m
type panel LAB 120/240 bus 400 A
type panel WET like LAB
panel LP-1 120/240 bus 100 A, spaces 12
panel EP-1 480Y/277 bus 400 A, main lugs
switchboard MSB 480Y/277 bus 800 A, spaces 30, numbering sequential
transformer TX-1 480 1ph -> 120/240 25 kVA
utility QUAY 480 3ph fault 28 kA, ground none
utility QUAY 400Y/230 earthing TT, resistance 2000 ohm
inverter PV-1 480 3ph 50 kW
motor P-2 460 3ph 5 hp, standby-of P-1
system S480 480Y/277 ground none
panel S480 480Y/277
interlock K-1 at-most 1, among A-1, P-1
meter TX-1
  2,4  20 A 2p 1 kVA heating with 1
  3  20 A 1p 1 kVA lighting in R-7
  7  20 A 1p space
  F1  16 A 1p 1 kW lighting
  allow unfed-equipment "later"
  claim parallel
  close A-1
  basis iec
// a comment""".split("\n")

WORKS = """wye 1
project "Works"
  basis iec
utility     NETT    400Y/230            fault 10 kA, x/r 4, earthing TN-S
feeder NETT -> HV   160 A 3p+N, rcd 300 mA, rcd-type A
panel       HV      400Y/230            bus 160 A, main 160 A
  F1  20 A 3p+N curve C, rcd 30 mA, rcd-type A  11 kW ev  "Point, yard"
  F2  16 A 3p curve C  3 kW drive fla 6 A  "Fan, loft"
disconnect  DS-1    40 A 3p
feeder HV -> DS-1   40 A 3p+N
panel       HV-2    400Y/230            bus 63 A, main 63 A
feeder DS-1 -> HV-2 40 A 3p+N, rcd 30 mA, rcd-type B
  claim rcd-in-charging-point "sheet E-7"
  F1  20 A 3p+N curve C  11 kW ev rdc-dd  "Point, quay"
charger     EV-1    400Y/230            11 kW, ev
feeder HV-2 -> EV-1 20 A 3p+N
inverter    PV-1    400Y/230            20 kW, limit 1.1 pu, grid-following
feeder PV-1 -> HV   40 A 3p+N"""
WORKS_LINES = """feeder NETT -> HV 160 A 3p+N, rcd 30 mA, rcd-type B
feeder NETT -> DS-1 160 A 3p+N, rcd 30 mA
feeder HV -> DS-1 40 A 3p+N, rcd 30 mA, rcd-type AC
feeder DS-1 -> HV-2 40 A 3p+N
feeder DS-1 -> EV-1 20 A 3p+N
panel DS-1 400Y/230 bus 63 A
busway DS-1 63 A
panel HV 400Y/230 bus 160 A, main 160 A, rcd 300 mA, rcd-type F
panel HV-2 400Y/230 bus 63 A, main 63 A, rcd 30 mA
transformer DS-1 400 3ph -> 400Y/230 40 kVA, z 4 %, x/r 2
charger EV-1 400Y/230 11 kW, ev rdc-dd
charger EV-1 400Y/230 -> 400 dc 11 kW, ev
ups EV-1 400Y/230 20 kVA
inverter PV-1 400Y/230 20 kW, grid-forming
feeder HV -> PV-1 40 A 3p+N, rcd 300 mA, rcd-type A
  claim no-direct-residual "sheet E-7"
  claim rcd-in-charging-point at F1 "sheet E-7"
  F3  20 A 3p+N curve C  11 kW ev  "Point, pier"
  F2  16 A 3p  spare
// a comment""".split("\n")


FLATS = """wye 1
project "Flats"
  basis us-2023
utility     UTIL    120/240             fault 10 kA, fault-min 6 kA, x/r 2
meter       KWH
panel       HOUSE   120/240             bus 225 A, main 200 A, rated 22 kA, lug-temp 75 degC, service-equipment
feeder UTIL -> KWH  2#2/0 + N #2/0 Cu THWN-2  10 m  in 2 inch PVC-40, lug-temp 75 degC
feeder KWH -> HOUSE  2#2/0 + N #2/0 Cu THWN-2  3 m  in 2 inch PVC-40, lug-temp 75 degC
  claim dwelling-unit
raceway     R-1     4 inch EMT          15 m
panel       GARAGE  120/240             bus 125 A, main 100 A, rated 22 kA, lug-temp 75 degC
panel       SHED    120/240             bus 125 A, main 100 A, rated 22 kA, lug-temp 75 degC
feeder HOUSE -> GARAGE  100 A 2p  15 m  in R-1
feeder HOUSE -> SHED  100 A 2p  2#4 + N #4 + G #8 Cu THWN-2  15 m  in R-1
  claim dwelling-unit
"""
FLATS_LINES = """  claim dwelling-unit
  allow dwelling-unproven "as agreed"
  allow leg-voltage-mismatch "as agreed"
  allow dangling-reference "later"
panel       GARAGE  208Y/120            bus 125 A, main 100 A
panel       SHED    120/240             bus 125 A, main 90 A, lug-temp 75 degC
panel       HOUSE   120/240             bus 225 A, main 90 A, lug-temp 75 degC
utility     UTIL    208Y/120            fault 10 kA, fault-min 6 kA, x/r 2
feeder HOUSE -> GARAGE  100 A 2p  2 sets 2#4 + N #4 + G #8 Cu THWN-2  15 m  in R-1
feeder HOUSE -> SHED  100 A 2p  15 m  in R-1
feeder KWH -> HOUSE  2#1/0 + N #1/0 Cu THWN-2  3 m  in 2 inch PVC-40
feeder UTIL -> HOUSE  2#1/0 + N #1/0 Cu THWN-2  3 m  in 2 inch PVC-40
raceway     R-1     2 inch EMT          15 m, ambient 45 degC
meter       KWH     future
// a comment""".split("\n")


def told(analysis: Analysis) -> list[object]:
    return [
        (
            f.rule,
            f.severity,
            f.message,
            f.needed,
            f.change,
            f.place.row,
            f.allowed,
            [r.place.row for r in f.related],
            [(x.title, [(e.block.first_line + e.line, e.start, e.text) for e in x.edits]) for x in f.fixes],
        )
        for f in analysis.findings()
    ]


@pytest.mark.parametrize("seed", range(40))
@pytest.mark.parametrize(
    ("site", "lines"), [(SITE, LINES), (WORKS, WORKS_LINES), (FLATS, FLATS_LINES)], ids=["us", "iec", "dwellings"]
)
def test_edited_and_read_afresh_agree(site: str, lines: list[str], seed: int) -> None:
    rng = random.Random(seed)
    files = Files(lambda _: site)
    analysis = Analysis("/m/site.wye", files, "/m")
    file = files.get("/m/site.wye")
    for _ in range(rng.randint(2, 6)):
        first = rng.randint(0, len(file.lines))
        last = min(first + rng.randint(0, 1), len(file.lines))
        went, came = file.replace_lines(first, last, [rng.choice(lines) for _ in range(rng.randint(0, 2))])
        analysis.edited(went, came)
        text = file.text
        assert told(analysis) == told(Analysis("/m/site.wye", Files(lambda _, text=text: text), "/m")), text  # type: ignore[misc]
