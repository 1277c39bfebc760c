"""Lines that begin with the trade's word for something, and lines that begin with a word that nobody knows."""

from __future__ import annotations

import pytest

from wyeline_grammar.attributes import KINDS, STATEMENTS, doc_of
from wyeline_grammar.parser import parse_line
from wyeline_grammar.problems import Problem, Remedy
from wyeline_grammar.syntax import Line
from wyeline_grammar.trade_terms import TERMS
from wyeline_grammar.vocabulary import word_kind


def parse(text: str) -> Line:
    return parse_line(text, False)


def applied(text: str, remedy: Remedy) -> str:
    for edit in sorted(remedy.edits, reverse=True):
        text = text[: edit.start] + edit.text + text[edit.end :]
    return text


def only(text: str) -> Problem:
    (problem,) = parse(text).problems
    return problem


MEANT = {
    "ats ATS-1  400 A 4p": "transfer ATS-1  400 A 4p",
    "panelboard LP-5 208Y/120  bus 225 A": "panel LP-5 208Y/120  bus 225 A",
    "MDP MSB 480Y/277  bus 800 A": "switchboard MSB 480Y/277  bus 800 A",
    "supply NET 400Y/230  fault 10 kA": "utility NET 400Y/230  fault 10 kA",
    "pv PV-1 480Y/277  50 kW": "inverter PV-1 480Y/277  50 kW",
    "wallbox WB-1 400 3ph  11 kW": "charger WB-1 400 3ph  11 kW, ev",
    "switch S-1  60 A 3p": "disconnect S-1  60 A 3p",
    "switch S-1  480 3ph  60 A": "disconnect S-1  480 3ph  60 A",
    "cable MSB -> LP-1  100 A 3p": "feeder MSB -> LP-1  100 A 3p",
    "elevator EL-1 480 3ph  25 hp": "motor EL-1 480 3ph  25 hp, elevator",
    "pump P-1 460 3ph  15 hp  // by the owner": "motor P-1 460 3ph  15 hp, pump  // by the owner",
    "receptacle R-1 120 1ph  1 kW": "load R-1 120 1ph  1 kW, receptacle",
    "rtu RTU-1 480 3ph  mca 42 A, cooling": "load RTU-1 480 3ph  mca 42 A, cooling",
    "ahu AHU-1 480 3ph  5 hp": "motor AHU-1 480 3ph  5 hp, fan",
    "ahu AHU-1 480 3ph  mca 20 A": "load AHU-1 480 3ph  mca 20 A, fan",
    "range R-1 240 1ph  8 kW": "load R-1 240 1ph  8 kW",
}


@pytest.mark.parametrize(("wrong", "right"), [(w, r) for w, r in MEANT.items() if w != r])
def test_the_line_means_what_the_right_one_says(wrong: str, right: str) -> None:
    problem = only(wrong)
    assert problem.rule == "known-slip" and problem.remedies[0].sure
    assert applied(wrong, problem.remedies[0]) == right
    read, meant = parse(wrong), parse(right)
    assert not meant.problems
    assert (read.form, [t.text for t in read.head]) == (meant.form, [t.text for t in meant.head])
    assert [[t.text for t in p.tokens] for p in read.phrases] == [[t.text for t in p.tokens] for p in meant.phrases]
    places = [t for p in read.phrases for t in p.tokens]
    assert all(0 <= t.start < t.end <= len(wrong) for t in (*read.head, *places))


def test_a_detail_that_lost_its_indent_stays_a_detail() -> None:
    for text in ("lighting continuous", 'receptacle "Outlets"', "bus 225 A", "fuse J", "main 400 A", "switch UTIL-1"):
        assert only(text).remedies[0].title == "Indent the line"


def test_a_first_word_that_nobody_knows_is_told_every_kind() -> None:
    problem = only("gizmo G-1 480 3ph  5 kW")
    assert "no kind of equipment" in problem.message
    assert all(f"`{kind}`" in problem.needed for kind in ("utility", "transfer", "charger", "motor"))
    assert [(r.title, r.sure) for r in problem.remedies] == [("Write `load`", False)]
    assert only("gizmo G-1 480Y/277  bus 100 A").remedies[0].title == "Write `panel`"
    assert only("gizmo MSB -> LP-1  100 A 3p").remedies[0].title == "Write `feeder`"
    assert only("transfomer T-1 480 3ph -> 208Y/120").remedies[0].title == "Write `transformer`"


@pytest.mark.parametrize(
    ("wrong", "right"),
    [
        ("MSB -> LP-1  100 A 3p", "feeder MSB -> LP-1  100 A 3p"),
        ("MSB[AB] -> LP-1  100 A 2p", "feeder MSB[AB] -> LP-1  100 A 2p"),
        ('"Hall 2" -> LP-1  100 A 2p', 'feeder "Hall 2" -> LP-1  100 A 2p'),
        ("F-2: MSB -> LP-1", "feeder F-2: MSB -> LP-1"),
        ("T-1 480 3ph -> 208Y/120  75 kVA", "transformer T-1 480 3ph -> 208Y/120  75 kVA"),
    ],
)
def test_a_line_that_begins_with_a_name_is_read_with_the_word_that_it_lacks(wrong: str, right: str) -> None:
    problem = only(wrong)
    assert problem.rule == "known-slip" and problem.remedies[0].sure
    assert applied(wrong, problem.remedies[0]) == right
    read, meant = parse(wrong), parse(right)
    assert (read.form, [t.text for t in read.head]) == (meant.form, [t.text for t in meant.head])
    assert all(0 <= t.start <= t.end <= len(wrong) for p in read.phrases for t in p.tokens)


def test_of_a_name_and_a_voltage_the_likely_kinds_are_offered() -> None:
    for text, first in (("LP-1 208Y/120  bus 100 A", "panel"), ("GRID 480Y/277  fault 10 kA", "utility")):
        problem = only(text)
        assert problem.remedies[0].title == f"Write `{first} {text.split()[0]}`"
        assert not any(remedy.sure for remedy in problem.remedies)
    assert "no kind of equipment" in only("Netz NET 400Y/230  fault 10 kA").message


def test_a_device_as_a_line_of_its_own_is_told_where_devices_stand() -> None:
    for text in ("breaker CB-1 480Y/277  400 A", "mccb CB-1  400 A 3p", "fuse F-1 480 3ph"):
        problem = only(text)
        assert "on a feeder" in problem.needed and "`main`" in problem.needed
        assert [(r.title, r.sure) for r in problem.remedies] == [("Write `disconnect`", False)]
    assert only("main MDP 480Y/277  bus 400 A").remedies[0].title == "Write `panel`"


def test_terms_say_words_of_the_language_and_each_stands_once() -> None:
    spellings = [spelling for term in TERMS for spelling in term.spellings]
    assert len(spellings) == len(set(spellings))
    for term in TERMS:
        assert term.says and all(doc_of(word) for word in term.says), term
        assert not term.head or term.head in KINDS or term.head in STATEMENTS
    of_the_language = {spelling for spelling in spellings if word_kind(spelling) != "PLAIN"}
    assert of_the_language <= {"service", "range"}  # keys: before a name the supply, on a load what one cooks on
