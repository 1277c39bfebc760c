"""Whole lines as drafters type them (common practice, no source): the first fix of each problem, taken in turn, gives
the line that was meant, and no figure of it is lost on the way."""

from __future__ import annotations

import re

import pytest

from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import FeederStatement
from wyeline_grammar.problems import Problem, Remedy

BOARD = "panel UV-1 400Y/230\n"
US_BOARD = "panel LP-1 208Y/120\n"
MEANT = {
    "utility CITY 208Y/120  fault 22k": "utility CITY 208Y/120  fault 22 kA",
    "utility CITY 208Y/120  fault 30kAIC": "utility CITY 208Y/120  fault 30 kA",
    "utility NETZ 400Y/230  fault-min 2,5kA": "utility NETZ 400Y/230  fault-min 2.5 kA",
    "utility POCO 240/120 delta high leg B 3 phase": "utility POCO 240/120 3ph  high B",
    "panel MP 240V 3PH 4W wild leg, bus 400 A": "panel MP 240/120 3ph, bus 400 A",
    "disconnect DS-1 240/120 high leg delta B  400 A fuses": "disconnect DS-1 240/120 3ph  400 A fused",
    "panel LP-1 208Y/120  800A bus, 800A MCB, 35kAIC": "panel LP-1 208Y/120  bus 800A, main 800A, rated 35 kA",
    "panel LP-1 208Y/120  225A MLO, 42 ckt": "panel LP-1 208Y/120  bus 225 A, main lugs, spaces 42",
    "panel PB 120/240  100A main breaker": "panel PB 120/240  main 100 A",
    "panel UV-2 400Y/230  TT, earth rod 50 ohm, 40A RCD 300mA":
    "panel UV-2 400Y/230  earthing TT, resistance 50 ohm, bus 40A rcd 300mA",
    "transformer T1 45kva 240 delta to 208Y/120": "transformer T1 240 3ph -> 208Y/120  45 kVA",
    "transformer T1 480/208  75 kVA": "transformer T1 480 3ph -> 208Y/120  75 kVA",
    "generator GEN 208Y/120  100 kW 125 kVA": "generator GEN 208Y/120  pf 0.8 125 kVA",
    "generator GEN 208Y/120  125 kVA, pf 0.8, 100 kW": "generator GEN 208Y/120  125 kVA, pf 0.8,",
    "inverter PV-1 400Y/230  12 kWp": "inverter PV-1 400Y/230  12 kW",
    "charger EV-1 400Y/230  2 x 22 kW type 2": 'charger EV-1 400Y/230  22 kW count 2 note "type 2"',
    "motor M-1 240 3ph  3 hp existing to remain": "motor M-1 240 3ph  3 hp existing",
    "motor M-1 240 3ph\n  FLA 9.6": "motor M-1 240 3ph\n  fla 9.6 A",
    "feeder CITY POWER to MDP  2 sets of 4-500kcmil 60'": 'feeder "CITY POWER" -> MDP  2 sets 4x500kcmil 60 ft',
    "feeder from panel LP-1 to panel LP-2  100 A 3p": "feeder LP-1 -> LP-2  100 A 3p",
    "feeder HV - UV Nord  3x32A MCB C, NYY-J 4x10  45 m":
    'feeder HV -> "UV Nord"  32 A 3p curve C, 4x10mm2 NYY-J  45 m',
    "feeder Z1 -> HV NH00 63A  5x16 NYY-J  5 m": "feeder Z1 -> HV fuse gG 63A  5x16mm2 NYY-J  5 m",
    "feeder MSB -> PB A-C 100A 2p #3 Cu + #8 gnd  95ft": "feeder MSB[AC] -> PB 100A 2p 2#3 + G #8 Cu  95ft",
    "feeder PV-1 -> HV C20 3p 5x4mm2 12m on tray": "feeder PV-1 -> HV 20 A 3p curve C 5x4mm2 12m in tray",
    BOARD + "  F1 LS B16 L1 Steckdosen Büro 2,3kW 3x2,5mm² NYM-J 18m":
    BOARD + '  F1[L1] 16 A curve B "Steckdosen Büro" 2.3kW 3x2.5mm² NYM-J 18m',
    BOARD + "  F2[L2] B16A 1P+N Licht Halle 0,8 kW NYM-J 3x1,5 25m":
    BOARD + '  F2[L2] 16 A 1p+N curve B "Licht Halle" 0.8 kW 3x1.5mm2 NYM-J 25m',
    BOARD + '  F4 RCBO B16/30mA typ A "Store" 1.5kW 3G2.5 15m':
    BOARD + '  F4 16 A curve B, rcd 30 mA rcd-type A "Store" 1.5kW 3G2.5mm2 15m',
    BOARD + "  F5 L1,L2,L3 16A C 3P motor 5,5kW": BOARD + "  F5[L1 L2 L3] 16 A 3p curve C motor 5.5kW",
    BOARD + "  F6  16 A 1p+N  3G2,5 22 m": BOARD + "  F6  16 A 1p+N  3G2.5mm2 22 m",
    US_BOARD + "  1 20A 1P lighting exam rooms 1200VA": US_BOARD + '  1 20A 1p lighting "exam rooms" 1200VA',
    US_BOARD + "  7-9-11 50A 3P RTU-1 MCA 38A MOCP 50A": US_BOARD + '  7,9,11 50A 3p "RTU-1" mca 38A mocp 50A',
    US_BOARD + "  2 20A 1P receptacles classroom 102, 8 outlets":
    US_BOARD + '  2 20A 1p receptacle "classroom 102", count 8',
    US_BOARD + "  1 20 A 1p 10 A lighting": US_BOARD + "  1 20 A 1p draws 10 A lighting",
    US_BOARD + "  2,4 50 A 2p range 8 kW": US_BOARD + "  2,4 50 A 2p kitchen 8 kW",
}  # fmt: skip


def problems(text: str) -> tuple[Problem, ...]:
    return tuple(lower_block(tuple(text.split("\n"))).problems)


def mended(text: str, remedy: Remedy) -> str:
    lines = text.split("\n")
    for edit in sorted(remedy.edits, key=lambda e: (e.line, e.start), reverse=True):
        lines[edit.line] = lines[edit.line][: edit.start] + edit.text + lines[edit.line][edit.end :]
    return "\n".join(lines)


@pytest.mark.parametrize(("typed", "meant"), list(MEANT.items()), ids=lambda text: text.split("\n")[-1])
def test_the_first_fixes_give_the_line_that_was_meant(typed: str, meant: str) -> None:
    text, asked = typed, 0
    while (found := problems(text)) and asked < 9:
        assert found[0].change and found[0].remedies, found[0].message
        text, asked = mended(text, found[0].remedies[0]), asked + 1
    assert [re.sub(r"\s+", " ", line.rstrip()) for line in text.split("\n")] == [
        re.sub(r"\s+", " ", line) for line in meant.split("\n")
    ]


def test_the_ends_of_a_feeder_are_what_the_drafter_named() -> None:
    statement = lower_block(("feeder CITY POWER to MDP  60 ft",))
    assert isinstance(statement, FeederStatement) and statement.source is not None and statement.target is not None
    assert (statement.source.name, statement.target.name) == ("CITY POWER", "MDP")


def test_a_mark_behind_the_end_of_a_feeder_is_none_of_its_name() -> None:
    """Sizes of fuse-links: IEC 60269-2, from memory."""
    (problem,) = problems("feeder Z1 -> HV NH00 63A  24 m")
    assert [(r.title, r.sure) for r in problem.remedies] == [("Write `fuse gG`", False)]


def test_legs_are_moved_only_where_they_can_be_meant() -> None:
    assert not problems(BOARD + "  F1[L1]  16 A 1p+N  leg L1 1 kW")
    assert not problems(BOARD + "  F2  32 A 3p+N  leg L1 1 kW, leg L2 2 kW")
    (numbered,) = problems(US_BOARD + "  1,3  20 A 2p L1 1 kW")
    assert not numbered.remedies or "[" not in numbered.remedies[0].title
