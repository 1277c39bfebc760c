"""No fix that is sure changes a rating, a size, a count or a voltage: what could mean two things is offered, not done.

What the spellings mean is common practice on drawings and name plates (no source), but where a standard is named.
"""

from __future__ import annotations

import random
import re
import time

import pytest

from wyeline_grammar.parser import parse_line
from wyeline_grammar.problems import Problem, Remedy
from wyeline_grammar.slip import Slip
from wyeline_grammar.slips import SLIPS
from wyeline_grammar.tokens import is_statement

F = "feeder MSB -> LP-5  "
IEC = "feeder HV -> UV  5G10mm2  24 m  "
OFFERED = {
    # volts and phases, or amperes and poles
    "motor P-5  460/3  15 hp": ["460 3ph", "460 A 3p"],
    "transformer TX-5  480/3 -> 208Y/120  75 kVA": ["480 3ph", "480 A 3p"],
    # one column of a board, or both
    "  2-6  space": ["2,4,6", "2,3,4,5,6"],
    "  1-4  space": ["1,2,3,4", "1,4"],
    "  1-3  20 A 3p spare": ["1,2,3", "1,3"],
    # a position and a current, or a current with a decimal comma
    "  1,20 A 1p  1.2 kVA lighting": ["1  20 A", "1.20 A"],
    # two sides of a transformer are not the two voltages of a delta whose one leg is high
    "transformer TX-5  480/240V 3PH  75 kVA": ["480 3ph -> 240 3ph", "480 3ph -> 240/120 3ph"],
    "transformer TX-5  480/240V 1PH  75 kVA": ["480 1ph -> 240 1ph", "480 1ph -> 120/240"],
    # a motor of two voltages has no winding with a middle
    "motor P-5  115/230V 1PH  2 hp": ["230 1ph", "115 1ph"],
    "motor P-5  230-460V 3PH  2 hp": ["460 3ph", "230 3ph"],
    # a neutral that is written is not dropped
    "panel LP-5  13.8kV 3PH 4W  bus 1200 A": ["13.8Y/7.97 kV", "13.8 kV 3ph"],
    "generator G-5  460V 3PH 4W  100 kVA": ["460Y/266", "460 3ph"],
    "panel LP-5  120/208V 3-wire  bus 100 A": ["208Y/120 1ph", "208 3ph"],
    "panel LP-5  240V 3-wire  bus 100 A": ["240 3ph", "120/240"],
    # a way of a three-phase board may take three poles
    "panel LP-5  400Y/230  bus 100 A, 12 ways": ["spaces 12", "spaces 36"],
    # one of the cores may be the protective conductor (IEC 60445 and cable marks of CENELEC HD 361, from memory)
    "  F1  16 A 1p  3 core 2.5mm2  24 m": ["3x2.5mm2", "3G2.5mm2"],
    # the conductor beside three cores may carry the neutral too (TN-C, IEC 60364-1)
    F + "3x95/50 mm2 Cu  30 m": ["3x95mm2 + PE 50mm2", "3x95mm2 + PEN 50mm2"],
    # a conduit or an insulation
    F + "3#8 Cu  30 m  PVC": ["in PVC", "PVC"],
    # bare in the ground or in a duct: reference methods D2 and D1 of IEC 60364-5-52
    IEC + "in the ground": ["method D2", "method D1"],
    "  6  20 A 1p  unused": ["spare", "space"],
    # the load of one outlet, or of all of them
    "  1  20 A 1p  (6) receptacles 1080 VA": ["count 6 receptacle 1080 VA", 'receptacle "(6) receptacles" 1080 VA'],
    "  1  20 A 1p  receptacle 6 outlets 1080 VA": ["receptacle count 6 1080 VA", 'receptacle "6 outlets" 1080 VA'],
    # what is denied is never stated, nor put into a note without the word that denies
    "disconnect DS-5  60 A 3p  not fused": ["DS-5  60 A 3p"],
    "disconnect DS-5  60 A 3p, unfused": ["DS-5  60 A 3p"],
    # the device's rating is not what it trips at; that is not said
    "  F1  RCBO 16 A 1p+N  2 kW lighting": ["16 A 1p+N"],
}
SURE = {
    F + "100AF/100AT 3p": F + "100 A 3p frame 100 A",
    F + "70AT/100AF 3P": F + "70 A 3p frame 100 A",
    F + "MCCB 100 A 3p  30 m": F + "100 A 3p  30 m",
    "  F1  MCB 16 A 1p  2 kW lighting": "  F1  16 A 1p  2 kW lighting",
    "panel LP-5  480Y/ 277  bus 225 A": "panel LP-5  480Y/277  bus 225 A",
    # short-time withstand current, IEC 61439-1, 3.8.10 (from memory)
    "switchboard MSB  400Y/230  bus 1250 A, Icw 50 kA": "switchboard MSB  400Y/230  bus 1250 A, withstand 50 kA",
    "panel LP-5  208Y/120  bus 225 A, rated 22 kAIC": "panel LP-5  208Y/120  bus 225 A, rated 22 kA",
    # the word says no class of load, so none is put behind
    "equipment X-5  480 3ph  10 kW": "load X-5  480 3ph  10 kW",
    # a keyword behind its value must not take the next one's
    "panel LP-5  208Y/120  100A main, 125A bus, 10k AIC": "panel LP-5  208Y/120  main 100A, bus 125A, rated 10 kA",
    IEC + "in 50 mm PVC in ground": IEC + "in 50 mm PVC method D1",
    "  2-4  20 A 2p spare": "  2,4  20 A 2p spare",
    "  5-9  20 A 3p spare": "  5,7,9  20 A 3p spare",
    "feeder LP-5 -> LP-6  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  4 m  feed thru":
    "feeder LP-5.through -> LP-6  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  4 m",
}  # fmt: skip
NOT_MENDED = (
    F + "350AF/400AT 3p",  # a trip above its frame
    F + "63-250 A 3p",  # no run of 63 wires
    "  F1  16 A 1p+N RCBO  2 kW lighting",  # the load is no residual current
    F + "2x100 A 3p",  # two of three poles, or two poles
    "service MSB  480Y/277  bus 400 A",  # a board must not become a source
    '  1  20 A 1p  (6) recept  "Office"  1.08 kVA',  # the load of one, or of all, and a description stands already
)


@pytest.mark.parametrize("word", ["not", "Not", "NOT", "non", "no"])
@pytest.mark.parametrize("flag", ["fused", "outdoor", "service-equipment"])
def test_what_is_denied_never_comes_to_be_said(word: str, flag: str) -> None:
    text = f"disconnect DS-5  60 A 3p, {word} {flag}"
    (remedy,) = problem_of(text).remedies
    assert not remedy.sure and flag not in applied(text, remedy)
    assert not any(each.sure for each in problem_of(f"disconnect DS-5  60 A 3p, {word} seen").remedies)


@pytest.mark.parametrize("text", ["spaces 42,10kA", "sections 3,65kA", "small-appliance 2,20A"])
def test_a_comma_behind_a_count_parts_two_facts(text: str) -> None:
    line = parse_line(f"panel LP-5 208Y/120  {text}", False)
    assert not line.problems and len(line.phrases) == 2


def problem_of(text: str) -> Problem:
    (problem,) = parse_line(text, not is_statement(text)).problems
    return problem


def applied(text: str, remedy: Remedy) -> str:
    for edit in sorted(remedy.edits, key=lambda e: -e.start):
        text = text[: edit.start] + edit.text + text[edit.end :]
    return text


@pytest.mark.parametrize(("wrong", "offers"), list(OFFERED.items()), ids=lambda text: str(text))
def test_what_could_mean_two_things_is_offered(wrong: str, offers: list[str]) -> None:
    remedies = problem_of(wrong).remedies
    assert not any(remedy.sure for remedy in remedies)
    assert len(remedies) == len(offers)
    for remedy, offer in zip(remedies, offers, strict=True):
        assert offer in applied(wrong, remedy)


@pytest.mark.parametrize(("wrong", "right"), list(SURE.items()), ids=lambda text: text)
def test_what_can_mean_one_thing_is_set_right(wrong: str, right: str) -> None:
    (remedy,) = problem_of(wrong).remedies
    assert remedy.sure and applied(wrong, remedy) == right
    assert not parse_line(right, not is_statement(right)).problems


@pytest.mark.parametrize("wrong", NOT_MENDED)
def test_what_nobody_can_know_is_not_mended(wrong: str) -> None:
    assert not any(remedy.sure for remedy in problem_of(wrong).remedies)


# Rows that write a figure in another way, or leave out what another figure says: each has its own example.
_CONVERT = frozenset(
    "leading-point ground-in-run feet-and-inches fraction-sign centimetres volts-phases-hertz decimal-comma "
    "decimal-comma-number decimal-comma-in-one-word decimal-comma-of-cores gauge-in-noughts voltage-of-a-nameplate "
    "voltage-in-one-word interrupting-rating minus-sign two-insulations positions thousands-comma laid-in-the-ground "
    "date-of-an-issue high-leg-of-a-delta measured-for-a-time measured-over-in-words".split()
)
_HEADS = (
    "feeder MSB -> LP-5", "panel LP-5 208Y/120", "panel LP-5", "motor P-5", "load L-5 480 3ph", "  1", "  1,3,5",
    "  F1", "transformer TX-5 480 3ph -> 208Y/120", "utility U-5 480Y/277", "  ", "disconnect DS-5", "transfer ATS-5",
)  # fmt: skip
_BITS = sorted(
    {part for slip in SLIPS for text in (slip.wrong, slip.right) for part in re.split(r"\s{2,}|,\s", text.strip())}
    | set("20/1 2/0 200/3 40/2 RCBO 16A B PVC EMT 3/4 1-1/4 4/0 480/277 240/120 3PH 4W 2-6 (2) MLO MCB - / +".split())
)


def _figures(text: str) -> list[float]:
    text = re.sub(r"m?m[2²]|ft[2²]|deg[CF]", " ", text)
    return sorted(float(figure) for figure in re.findall(r"\d+(?:\.\d+)?", text))


def test_a_sure_fix_keeps_every_figure() -> None:
    reasons = {slip.why for slip in SLIPS if slip.name in _CONVERT}
    chance = random.Random(20)
    kept = 0
    for _ in range(2000):
        parts = [chance.choice(_BITS) for _ in range(chance.randint(1, 3))]
        text = f"{chance.choice(_HEADS)} {chance.choice((' ', ', ', '  ')).join(parts)}"
        for problem in parse_line(text, not is_statement(text)).problems:
            assert 0 <= problem.start <= problem.end <= len(text)
            for remedy in problem.remedies:
                mended = applied(text, remedy)
                assert mended != text and "\n" not in mended
                if remedy.sure and problem.rule == "known-slip" and problem.why not in reasons:
                    assert _figures(mended) == _figures(text), (text, mended)
                    kept += 1
    assert kept > 200


_LONG = (
    "1 ",
    "12",
    "1-1/",
    "A ",
    "A, ",
    "NEMA 3R ",
    "room 1 ",
    "1 A bus ",
    "\t ",
    "(1)",
    "480Y/",
    "‘",
    "on A, ",
    "1,111,",
)


@pytest.mark.parametrize("slip", SLIPS, ids=lambda slip: slip.name)
def test_no_pattern_takes_long_over_a_long_line(slip: Slip) -> None:
    """Lines of 2,000 characters, the longest that are looked at for slips."""
    pattern, wrong = slip.pattern, slip.wrong
    for part in _LONG:
        middle = part * (1900 // len(part))
        for text in (middle, f"{F}{middle}!", wrong + middle, wrong[:-3] + middle + wrong[-3:]):
            started = time.process_time()
            for _ in pattern.finditer(text):
                pass
            assert time.process_time() - started < 0.5, text[:40]
