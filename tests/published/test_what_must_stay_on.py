"""What must never open, and what must last: PEN conductors, fire pumps, batteries of emergency supplies.

Clauses from memory: IEC 60364-5-54 543.4.3 and 60364-4-41 411.4.3 to 411.4.5 (a PEN is not switched, and no RCD stands
ahead of it); NEC 695.6(G) (no ground-fault protection in a fire pump's supply); NEC 700.12(C) (90 minutes).
"""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis


def told(text: str, rule: str) -> list[str]:
    found = Analysis("/m/site.wye", Files(lambda _: text), "/m").all_findings()
    return [f.message for f in found if f.rule == rule]


WORKS = """wye 1
project "Works"
  basis iec
utility NETZ 400Y/230  fault 10 kA, fault-min 6 kA, x/r 2, earthing TN-C
generator GEN 400Y/230  100 kVA, pf 0.8, subtransient 11 %, x2 13 %, x0 4 %, sustained 3 pu, x/r 9, earthing TN-C
transfer ATS 160 A {ats}, rated 15 kA, transition open
panel HV 400Y/230  bus 160 A, incomer {incomer}, rated 15 kA
disconnect D1 63 A {disconnect}
panel UV 400Y/230  bus 63 A, incomer switch, rated 10 kA
feeder NETZ -> ATS.normal  160 A 3p fuse gG  3x70mm2 + PEN 70mm2 Cu XLPE  20 m  method E
feeder GEN -> ATS.emergency  160 A 3p fuse gG  3x70mm2 + PEN 70mm2 Cu XLPE  20 m  method E
feeder ATS -> HV  3x70mm2 + PEN 70mm2 Cu XLPE  4 m  method E
feeder HV -> D1  63 A 3p fuse gG  3x16mm2 + PEN 16mm2 Cu XLPE  20 m  method E
feeder D1 -> UV  {last} Cu XLPE  20 m  method E
"""
CLOSED = {"ats": "3p", "incomer": "160 A 3p", "disconnect": "3p", "last": "3x16mm2 + PEN 16mm2"}


@pytest.mark.parametrize(
    ("given", "found"),
    [
        ({}, []),
        ({"ats": "4p"}, ["`ATS` opens the PEN that `ATS -> HV` carries on"]),
        ({"ats": "3p, neutral overlapping"}, ["`ATS` opens the PEN that `ATS -> HV` carries on"]),
        ({"incomer": "160 A 4p"}, ["`HV` opens the PEN that `HV -> D1` carries on"]),
        ({"disconnect": "4p"}, ["`D1` opens the PEN that `D1 -> UV` carries on"]),
        ({"disconnect": "4p", "last": "5G16mm2"}, []),  # N and PE part at its input
        ({"incomer": "160 A 3p, rcd 300 mA, rcd-type S"},
         [f"the RCD of `HV` stands ahead of the PEN of `{feeder}`" for feeder in ("HV -> D1", "D1 -> UV")]),
    ],
)  # fmt: skip
def test_nothing_opens_a_pen(given: dict[str, str], found: list[str]) -> None:
    assert told(WORKS.format(**(CLOSED | given)), "pen-conductor-bad") == found


TRIPS = "fire-pump-ground-fault-trip"
HALL = """wye 1
project "Hall"
  basis us-2023
utility UTIL 480Y/277  fault 20 kA, fault-min 12 kA, x/r 5
switchboard MSB 480Y/277  bus 1200 A, main 1200 A, rated 35 kA, service-equipment{main}
motor FP-1 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A, fire-pump
motor P-2 460 3ph  25 hp, pf 0.85, eff 93 %, lra 183 A
panel FH 480Y/277  bus 225 A, main lugs, rated 25 kA
  1,3,5  50 A 3p{row}  10 hp motor fire-pump lra 81 A  "Jockey"  3#8 + G #10 Cu THWN-2  10 m  in 3/4 inch RMC
feeder UTIL -> MSB  4 sets 3x350kcmil + N 350kcmil Cu THWN-2  8 m  in 3 inch PVC-40
feeder MSB -> FP-1  200 A 3p{own}  3#6 + G #6 Cu THWN-2  20 m  in 1-1/4 inch RMC
feeder MSB -> P-2  70 A 3p gfpe  3#6 + G #8 Cu THWN-2  20 m  in 1-1/4 inch RMC
feeder MSB -> FH  200 A 3p  3#3/0 + N #3/0 + G #6 Cu THWN-2  20 m  in 2 inch RMC
"""


@pytest.mark.parametrize(
    ("given", "holders"),
    [
        ({}, []),
        ({"own": " gfpe"}, ["`MSB -> FP-1`"]),
        ({"own": " gfpe-pickup 100 A"}, ["`MSB -> FP-1`"]),
        ({"row": " gfpe"}, ["circuit 1,3,5 of `FH`"]),
        ({"main": ", gfpe, gfpe-pickup 800 A"}, ["`MSB`", "`MSB`"]),
    ],
)
def test_no_ground_fault_stops_a_fire_pump(given: dict[str, str], holders: list[str]) -> None:
    messages = told(HALL.format(**({"main": "", "own": "", "row": ""} | given)), TRIPS)
    assert [m.partition(" has ground-fault")[0] for m in messages] == holders


def test_the_other_input_of_a_transfer_switch_is_on_the_way_of_a_fire_pump() -> None:
    """The standby way is the pump's as well (NEC 695.6(G), from memory)."""
    set_ = "generator GEN 480Y/277  150 kVA\ntransfer ATS 480Y/277  200 A 3p\n"
    ways = "feeder MSB -> ATS.normal  200 A 3p\nfeeder GEN -> ATS.emergency  200 A 3p gfpe\n"
    own = HALL.format(main="", own="", row="").replace("feeder MSB -> FP-1", "feeder ATS -> FP-1")
    (message,) = told(own + set_ + ways, TRIPS)
    assert message == "`GEN -> ATS.emergency` has ground-fault protection, and stands ahead of the fire pump, `FP-1`"


SHELTER = """wye 1
project "Shelter"
  basis us-2023
utility UTIL 480Y/277  fault 20 kA, fault-min 12 kA, x/r 5
generator GEN 480Y/277  60 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, sustained 3 pu
  neutral floating
transfer ATS 100 A 3p, rated 30 kA
switchboard DP 480Y/277  bus 400 A, main 400 A, rated 25 kA
ups UPS-1 480Y/277  20 kVA, eff 95 %, limit 2 pu{autonomy}
panel EL-1 480Y/277  bus 100 A, main lugs, rated 22 kA
  1  20 A 1p  2 kVA lighting emergency  "Exit lights"  2#12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT
feeder UTIL -> DP  400 A 3p  3x500kcmil + N 500kcmil + G #3 Cu THWN-2  6 m  in 4 inch PVC-40
feeder {ahead} -> UPS-1  30 A 3p  3#10 + N #10 + G #10 Cu THWN-2  10 m  in 1 inch EMT
feeder UPS-1 -> EL-1  30 A 3p  3#10 + N #10 + G #10 Cu THWN-2  10 m  in 1 inch EMT
feeder DP -> ATS.normal  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  8 m  in 1-1/4 inch EMT
feeder GEN -> ATS.emergency  60 A 3p  3#6 + N #6 + G #10 Cu THWN-2  8 m  in 1-1/4 inch EMT
"""


@pytest.mark.parametrize(
    ("autonomy", "ahead", "short"),
    [
        (", autonomy 90 min", "DP", False),
        (", autonomy 1.5 h", "DP", False),
        (", autonomy 89 min", "DP", True),
        (", autonomy 10 min", "DP", True),
        ("", "DP", True),
        (", autonomy 10 min", "ATS", False),  # the set takes over
    ],
)
def test_a_battery_lasts_an_hour_and_a_half(autonomy: str, ahead: str, short: bool) -> None:
    text = SHELTER.format(autonomy=autonomy, ahead=ahead)
    assert bool(told(text, "emergency-battery-short")) is short
    assert told(text, "emergency-without-second-source") == []
    assert told(text.replace("us-2023", "iec"), "emergency-battery-short") == []
