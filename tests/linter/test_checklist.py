"""A checklist asks what the model does not hold, and shows what it holds or can derive (common practice, no source;
the sizes of NEC 250.66 and 250.102(C)(1) from memory)."""

from __future__ import annotations

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import Item, for_connection

MILL = """wye 1
project "Brick kiln"
  basis us-2023
utility GRID 480Y/277  fault 20 kA, fault-min 12 kA, x/r 6
switchboard SB 480Y/277  bus 800 A, main 600 A, rated 35 kA, service-equipment
transformer TX 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2
panel LP 208Y/120  bus 225 A, main 200 A, rated 10 kA, through-lugs
panel LQ 208Y/120  bus 225 A, main lugs, rated 10 kA
generator GEN 480Y/277  100 kVA, subtransient 12 %, sustained 3 pu, x/r 8
transfer ATS 480Y/277  200 A 4p, rated 30 kA, transition open
panel EP 480Y/277  bus 225 A, main lugs, rated 22 kA
  1,3,5  60 A 3p  30 kVA  heating  "Dryer"
inverter PV 480 3ph  20 kW, limit 1.1 pu, grid-following
feeder GRID -> SB  2 sets 3x350kcmil + N 350kcmil Cu THWN-2  15 m  in 3 inch RMC
feeder SB -> TX  125 A 3p  3#1 + G #6 Cu THWN-2  20 m  in 2 inch EMT
feeder TX -> LP  3#4/0 + N #4/0 + G #2 Cu THWN-2  6 m  in 3 inch EMT
feeder LP.through -> LQ  3#4/0 + N #4/0 + G #4 Cu THWN-2  6 m  in 3 inch EMT
feeder SB -> ATS.normal  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  10 m  in 2 inch EMT
feeder GEN -> ATS.emergency  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  10 m  in 2 inch EMT
feeder ATS -> EP  3#3 + N #3 + G #8 Cu THWN-2  assume 10 m  in 2 inch EMT
feeder SB -> PV  40 A 3p  3#8 + G #10 Cu THWN-2  10 m  in 1 inch EMT
"""


def items(text: str, name: str, kind: str | None = None) -> dict[str, bool]:
    view = Analysis("/m/site.wye", Files(lambda _: text), "/m").view
    made: tuple[Item, ...] = for_connection(view, "" if kind else name, name if kind else None, kind, solved=True)
    return {item.text: item.known for item in made}


def asked(found: dict[str, bool], word: str) -> list[str]:
    return [text for text, known in found.items() if not known and word in text]


def test_a_fault_current_that_is_known_is_shown_beside_the_rating() -> None:
    found = items(MILL, "TX", "transformer")
    (shown,) = [text for text, known in found.items() if known and text.startswith("fault current at `LP` ")]
    assert shown.endswith(", rated 10 kA")
    assert not asked(found, "fault current") and not asked(found, "label")
    unknown = items(MILL.replace("z 4 %, x/r 2", "x/r 2"), "TX", "transformer")
    assert asked(unknown, "fault current at the first board") and asked(unknown, "what z does its nameplate give?")


def test_losses_stand_for_x_over_r() -> None:
    found = items(MILL.replace("z 4 %, x/r 2", "z 4 %, loss 1.2 kW"), "TX", "transformer")
    assert found["x/r follows from its loss of 1.2 kW"]
    assert asked(items(MILL.replace(", x/r 2\n", "\n", 1), "TX", "transformer"), "x/r")


def test_sizes_that_the_tables_give_are_shown() -> None:
    found = items(MILL, "TX", "transformer")
    assert found["bonding jumper: #2 Cu or larger by the wires behind it (NEC 250.102(C))"]
    assert asked(found, "electrode") == [
        "size of the wire to the earth electrode: #2 Cu or larger by the wires behind it (NEC 250.66)"
    ]
    assert not asked(items(MILL.replace("x/r 2", "x/r 2, electrode #2"), "TX", "transformer"), "electrode")


def test_the_device_ahead_of_lugs_is_found() -> None:
    assert items(MILL, "LQ")["bus 225 A, behind 200 A at `LP`"]
    assert items(MILL, "EP")["bus 225 A, behind 100 A at `SB -> ATS.normal`"]
    bare = MILL.replace("main 200 A", "main lugs")
    assert asked(items(bare, "LQ"), "lugs only: which device ahead protects the 225 A bus?")


def test_a_transfer_switch_asks_only_what_may_happen() -> None:
    found = items(MILL, "ATS", "transfer")
    assert found["30 kVA of demand behind it; `GEN` is made for 100 kVA"]
    assert not asked(found, "phase order") and not asked(found, "withstand")
    small = items(MILL.replace("100 kVA, sub", "25 kVA, sub"), "ATS", "transfer")
    assert asked(small, "which of the 30 kVA go, as `GEN` is made for 25 kVA?")
    assert asked(items(MILL.replace(", transition open", ""), "ATS", "transfer"), "phase order")


def test_sources_are_asked_what_their_kind_has() -> None:
    generator = items(MILL, "GEN", "generator")
    assert generator["fault current that it gives: subtransient 12 %, sustained 3 pu"]
    assert asked(generator, "earthed") and not asked(generator, "harmonics")
    inverter = items(MILL, "PV", "inverter")
    assert set(inverter.values()) == {True}


def test_no_neutral_bond_is_asked_of_a_system_without_earth() -> None:
    cellar = """wye 1
project "Cellar"
  basis iec
  frequency 50 Hz
utility NET 400Y/230  fault 8 kA, fault-min 4 kA, r/x 0.3
transformer IT1 400 3ph -> 230 3ph  20 kVA, z 4 %, r/x 0.8, earthing IT
panel IP 230 3ph  bus 63 A, main 50 A
  1,3  16 A 2p  curve C  2 kW heating  "Heater"
feeder NET -> IT1  40 A 3p  curve C  4G10mm2 Cu XLPE  12 m  method B2
feeder IT1 -> IP  3x16mm2 + PE 16mm2 Cu XLPE  5 m  method B2
"""
    found = items(cellar, "IT1", "transformer")
    assert not asked(found, "bond") and not asked(found, "neutral")
    assert not [text for text in found if "NEC" in text]
    one_pole = items(cellar.replace("1,3  16 A 2p", "1  16 A 1p"), "IT1", "transformer")
    assert asked(one_pole, "what do the single-pole circuits of `IP` run between?")


def test_a_service_with_its_neutral_needs_no_ground_beside_it_and_a_guess_is_called_one() -> None:
    assert not asked(items(MILL, "SB"), "grounding")
    assert items(MILL, "EP")["32.8 ft long, as assumed"]
