"""Every row of the table of slips: one finding, and an edit that gives the right line."""

from __future__ import annotations

import pytest

from wyeline_grammar.parser import parse_line
from wyeline_grammar.problems import Problem, Remedy
from wyeline_grammar.slip import Slip
from wyeline_grammar.slips import SLIPS
from wyeline_grammar.syntax import Line
from wyeline_grammar.tokens import is_statement


def parse(text: str) -> Line:
    return parse_line(text, not is_statement(text))


def apply(text: str, remedy: Remedy) -> str:
    (edit,) = remedy.edits
    return text[: edit.start] + edit.text + text[edit.end :]


def only(text: str) -> Problem:
    (problem,) = parse(text).problems
    return problem


@pytest.mark.parametrize("slip", SLIPS, ids=lambda slip: slip.name)
def test_row(slip: Slip) -> None:
    problem = only(slip.wrong)
    assert problem.rule == "known-slip" and problem.why == slip.why
    assert apply(slip.wrong, problem.remedies[0]) == slip.right
    right = parse(slip.right)
    assert right.problems == ()
    assert all((problem.message, problem.found, problem.needed, problem.change)) and "\n" not in problem.message
    if problem.remedies[0].sure:  # the line means what the right one says
        wrong = parse(slip.wrong)
        assert (wrong.form, [t.text for t in wrong.head]) == (right.form, [t.text for t in right.head])
        assert [(p.form, [t.text for t in p.tokens]) for p in wrong.phrases] == [
            (p.form, [t.text for t in p.tokens]) for p in right.phrases
        ]
        assert all(0 <= t.start < t.end <= len(slip.wrong) for t in wrong.head)


def test_what_feeds_a_board_is_asked_for_as_a_line_of_its_own() -> None:
    for text in ("panel LP-9 fed from MSB", "panel LP-9 208Y/120 bus 100 A, from MSB", "panel LP-9 supplied by MSB"):
        problem = only(text)
        assert "`feeder MSB -> LP-9`" in problem.message and "on a line of its own" in problem.change
        assert "fused" not in problem.change and not problem.remedies[0].sure


def test_a_bare_number_beside_wires_may_be_their_length() -> None:
    problem = only("feeder MSB -> LP-5  3#8 + G #10 Cu  40  in 1 inch EMT")
    assert [r.title for r in problem.remedies] == ["Write `40 m`", "Write `40 ft`", "Leave out `40`"]
    assert not any(r.sure for r in problem.remedies)
    known = only("feeder MSB -> LP-5  3#8 + G #10 Cu  40 m  40")
    assert [r.title for r in known.remedies] == ["Leave out `40`"]


def test_names_are_unique() -> None:
    assert len({slip.name for slip in SLIPS}) == len(SLIPS)


F = "feeder MSB -> LP-1  "
# Spellings that the reference lists, beyond the example of each row, and what they become.
SPELLINGS = {
    "  1  20 A 1P": "  1  20 A 1p",
    "  1  20 A/1P spare": "  1  20 A 1p spare",
    F + "3P 100 A": F + "100 A 3p",
    F + "3p 100 A": F + "100 A 3p",
    "panel LP-1  bus 1,200 A": "panel LP-1  bus 1200 A",
    F + "3x2,5 mm2": F + "3x2.5 mm2",
    "  2-4  20 A 2p spare": "  2,4  20 A 2p spare",
    "  2/4  20 A 2p spare": "  2,4  20 A 2p spare",
    "  12/14  20 A 2p spare": "  12,14  20 A 2p spare",
    "  1-5  20 A 3p spare": "  1,3,5  20 A 3p spare",
    F + "40 A 2p at 14, 16": F + "40 A 2p at 14,16",
    F + "3 #8": F + "3#8",
    F + "(3)#8": F + "3#8",
    F + "3-1/0": F + "3#1/0",
    F + "3x4/0 Cu": F + "3#4/0 Cu",
    F + "3#8 + 1 #10 G": F + "3#8 + G #10",
    F + "3#8 + N 250 MCM": F + "3#8 + N 250 kcmil",
    F + "3x250MCM": F + "3x250 kcmil",
    F + "30 m 2 inch EMT": F + "30 m in 2 inch EMT",
    'raceway R-1 2" EMT': "raceway R-1 2 inch EMT",
    "raceway R-1 2 in EMT": "raceway R-1 2 inch EMT",
    F + "400/350 A": F + "350 A frame 400 A",
    F + "16 A B 1p": F + "16 A 1p curve B",
    "feeder MSB > LP-1": "feeder MSB -> LP-1",
    "transformer TX-1  480 3ph to 208Y/120  75 kVA": "transformer TX-1  480 3ph -> 208Y/120  75 kVA",
    "transformer TX-1  480 3ph -> 208Y/120  37.5 KVA": "transformer TX-1  480 3ph -> 208Y/120  37.5 kVA",
    "motor P-1  460 3ph  15 hp, PF 0.8": "motor P-1  460 3ph  15 hp, pf 0.8",
    "motor P-1  460V-3ph  15 hp": "motor P-1  460 3ph  15 hp",
    "motor P-1  460V,3PH  15 hp": "motor P-1  460 3ph  15 hp",
    "panel LP-1  480Y/277V 3PH 4W  bus 225 A": "panel LP-1  480Y/277  bus 225 A",
    "panel LP-1  120/240V 1PH  bus 225 A": "panel LP-1  120/240  bus 225 A",
    "feeder msb -> LP-1": "feeder MSB -> LP-1",
    'panel Pump room 208Y/120': 'panel "Pump room" 208Y/120',
    "feeder MSB -> PUMP ROOM  30 m": 'feeder MSB -> "PUMP ROOM"  30 m',
    F + "3-250MCM + N #250 kcmil": F + "3x250kcmil + N 250kcmil",
    F + "(3) 500 kcmil": F + "3x500kcmil",
    F + "100/3": F + "100 A 3p",
    "panel LP-1  208Y/120  225A bus, main 100 A": "panel LP-1  208Y/120  bus 225A, main 100 A",
    "panel LP-1  208Y/120  AIC 22 kA": "panel LP-1  208Y/120  rated 22 kA",
    "transformer TX-1  480 3ph -> 208Y/120  75 kVA, Z=4%": "transformer TX-1  480 3ph -> 208Y/120  75 kVA, z 4%",
    "transformer TX-1  480V:208Y/120  75 kVA": "transformer TX-1  480 3ph -> 208Y/120  75 kVA",
    "xfmr TX-1  480 3ph -> 208Y/120  75 kVA": "transformer TX-1  480 3ph -> 208Y/120  75 kVA",
    "  1  20 A 1p  0.9 kVA  lights": "  1  20 A 1p  0.9 kVA  lighting",
    "bus 225 A": "  bus 225 A",
    "transfer ATS-1  150 A 4 pole": "transfer ATS-1  150 A 4p",
    F + "feed-through lugs": "feeder MSB.through -> LP-1",
    "feeder LP-1 through -> LP-2": "feeder LP-1.through -> LP-2",
    "panel LP-1  208Y/120  feed thru": "panel LP-1  208Y/120  through-lugs",
    F + "20 A 4p rcd type B 30 mA": F + "20 A 4p rcd 30 mA, rcd-type B",
    "  6  reserve": "  6  spare",
    "  2  C16  1.5 kW lighting": "  2  16 A curve C  1.5 kW lighting",
    F + "5G2.5  22 m RCD 30 mA": F + "5G2.5mm2  22 m rcd 30 mA",
    F + "3x2.5mm2  60 ft THHN": F + "3x2.5mm2 THHN  60 ft",
    "panel LP-1  208Y/120  service-entrance": "panel LP-1  208Y/120  service-equipment",
    "  5,7 30 A 2p 4.5 kW water-heater": "  5,7 30 A 2p 4.5 kW heating",
    "F2 20 A 1p spare": "  F2 20 A 1p spare",
    "  feeder MSB -> LP-1": "feeder MSB -> LP-1",
    "  20 A 1p  “Wet lab”": '  20 A 1p  "Wet lab"',
}  # fmt: skip


@pytest.mark.parametrize(("wrong", "right"), list(SPELLINGS.items()), ids=lambda text: text)
def test_spelling(wrong: str, right: str) -> None:
    problem = only(wrong)
    assert problem.rule == "known-slip"
    text = wrong
    for _ in range(4):  # a line with two slips is mended in two steps
        line = parse(text)
        if not line.problems:
            break
        text = apply(text, line.problems[0].remedies[0])
    assert text == right and parse(right).problems == ()


def test_what_may_mean_two_things_is_for_the_writer_to_say() -> None:
    span = only("  9-13  20 A 3p  spare").remedies
    assert [(r.title, r.sure) for r in span] == [("Write `9,11,13`", True)]
    span = only("  9-19  space").remedies
    assert [(r.title, r.sure) for r in span] == [
        ("Write `9,11,13,15,17,19`", False),
        ("Write `9,10,11,12,13,14,15,16,17,18,19`", False),
    ]
    assert [r.title for r in only(F + "40 A 4p  5x10  45 m").remedies] == ["Write `5x10mm2`", "Write `5#10`"]


def test_what_a_word_nobody_knows_says_is_not_read_as_something_else() -> None:
    """`30 mA` behind `RCD` is no rating of the feeder, though another word of the line stopped the reading."""
    line = parse(F + "40 A 4p  blah  22 m  Rcdx 30 mA")
    assert [[t.text for t in p.tokens] for p in line.phrases][-1] != ["30 mA"]


def test_figure_that_may_mean_two_things_is_left_to_the_writer() -> None:
    problem = only("panel LP-1  bus 1,200 A, main 150 A")
    assert [(remedy.title, remedy.sure) for remedy in problem.remedies] == [
        ("Write `1200 A`", False),
        ("Write `1.200 A`", False),
    ]
    line = parse("panel LP-1  bus 1,200 A, main 150 A")
    assert [[t.text for t in p.tokens] for p in line.phrases] == [["main", "150 A"]]


def test_cooking_is_not_taken_for_cooling() -> None:
    """A kitchen has demand factors of its own (NEC 220.56), so which is meant is for the writer to say."""
    problem = only('  2,4  40 A 2p  8 kW  cooking  "Range"')
    assert [(remedy.title, remedy.sure) for remedy in problem.remedies] == [
        ("Write `kitchen`", False),
        ("Write `heating`", False),
    ]
    assert problem.message == "`cooking` is written `kitchen` or `heating`"


@pytest.mark.parametrize(
    ("line", "besides"),
    [
        ("  off GRID, GEN-1", "off GEN-1"),
        ("  switch ATS-1.emergency and ATS-2.emergency", "switch ATS-2.emergency"),
        ("  open GRID -> LP-1, GRID -> LP-2", "open GRID -> LP-2"),
        ("  shed CHILLER, P-1", "shed P-1"),
    ],
)
def test_a_second_name_behind_an_action_is_not_thrown_away_without_a_word(line: str, besides: str) -> None:
    problem = only(line)
    assert problem.needed == f"`{besides}` on a line of its own"
    assert problem.change.endswith(f"and write `{besides}` on a line of its own")
    assert not any(remedy.sure for remedy in problem.remedies)


def test_nothing_in_quotes_or_comments_is_a_slip() -> None:
    for text in ('  1  20 A 1p  "20A/1P, 3-#8, 15 HP"', "  1  20 A 1p  // 20A/1P, 3-#8 “x”"):
        assert parse(text).problems == ()
    assert only('  1  20A/1P  "3P 100 A, 15 HP"  // 3-#8').found == "`20A/1P`"


def test_slips_behind_a_slip_do_not_hide_what_the_line_means() -> None:
    line = parse("  1  20A/1P  1.2 KVA receptacle  “North”  1#12 140'")
    assert len(line.problems) == 1
    assert [[t.text for t in p.tokens] for p in line.phrases] == [
        ["20 A", "1p"], ["1.2 kVA"], ["receptacle"], ['"North"'], ["1#12"], ["140 ft"],
    ]  # fmt: skip


@pytest.mark.parametrize("text", ["  F1 16 A 1p+N", '  "Main" 150 A', "  1 20 A 1p"])
def test_sound_circuit_is_no_slip(text: str) -> None:
    assert parse(text).problems == () and parse(text).form == "circuit"


def test_what_only_looks_like_a_slip_stays() -> None:
    """A figure that is no voltage gets the general message; a name that is also a word of the trade is a name."""
    problem = only("panel LP-1  225  bus 225 A")
    assert problem.rule == "unreadable-line" and not any(remedy.sure for remedy in problem.remedies)
    assert only("GEN -> ATS-1  100 A 3p").remedies[0].title == "Write `feeder GEN`"
