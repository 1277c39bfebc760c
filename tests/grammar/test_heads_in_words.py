"""Heads in several words of the trade (common practice, no source): the kind in front, all that was said kept."""

from __future__ import annotations

import pytest

from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import EquipmentStatement
from wyeline_grammar.parser import parse_line
from wyeline_grammar.problems import Problem, Remedy


def only(text: str) -> Problem:
    (problem,) = parse_line(text, False).problems
    return problem


def applied(text: str, remedy: Remedy) -> str:
    for edit in sorted(remedy.edits, reverse=True):
        text = text[: edit.start] + edit.text + text[edit.end :]
    return text


MEANT = {
    "existing panel PA 208Y/120  bus 225 A": "panel PA 208Y/120  bus 225 A, existing",
    "(E) panel PA 208Y/120  bus 225 A": "panel PA 208Y/120  bus 225 A, existing",
    "NEW PANEL PA 208Y/120  bus 225 A": "panel PA 208Y/120  bus 225 A, new",
    "demo panel PA 208Y/120": "panel PA 208Y/120, demolish",
    "existing feeder MSB -> PA  100 A 3p": "feeder MSB -> PA  100 A 3p, existing",
    "existing main switchboard MSB 480Y/277": "switchboard MSB 480Y/277, existing",
    "main panel MP 208Y/120  // in the hall": 'panel MP 208Y/120, "Main panel"  // in the hall',
    "charging point EV-1 400 3ph  11 kW": 'charger EV-1 400 3ph  11 kW, ev, "Charging point"',
    "transfer switch ATS-1  200 A 4p": "transfer ATS-1  200 A 4p",
    "panel board LP-1 208Y/120": "panel LP-1 208Y/120",
    "exhaust fan EF-1 208 3ph  3 hp": 'motor EF-1 208 3ph  3 hp, fan, "Exhaust fan"',
    "new 45 kVA transformer T-1 480 3ph -> 208Y/120": "transformer T-1 480 3ph -> 208Y/120, 45 kVA, new",
    "ATS-2 automatic transfer switch  400 A 3p": "transfer ATS-2  400 A 3p",
    "LP-1 panel 208Y/120  bus 100 A": "panel LP-1 208Y/120  bus 100 A",
    "MDP switchboard 208Y/120  bus 800 A": "switchboard MDP 208Y/120  bus 800 A",
    'existing panel "Hall 2" 208Y/120': 'panel "Hall 2" 208Y/120, existing',
    "solar panel PV-1 400Y/230  12 kVA": 'inverter PV-1 400Y/230  12 kVA, "Solar panel"',
    "fire alarm panel FA-1 120 1ph  500 VA": 'load FA-1 120 1ph  500 VA, "Fire alarm panel"',
    "fire pump FP-1 480 3ph  40 hp": 'motor FP-1 480 3ph  40 hp, fire-pump, "Fire pump"',
    "existing heating load H-1 480 3ph  10 kW": 'load H-1 480 3ph  10 kW, existing, heating, "Heating load"',
    "demolish panel OLD": "panel OLD  demolish",
    "fused disconnect DS-1 60 A 3p": "disconnect DS-1 60 A 3p, fused",
    "static transfer switch STS-1  200 A 3p": "transfer STS-1  200 A 3p, static",
    "outdoor panel OP-1 208Y/120": "panel OP-1 208Y/120, outdoor",
    'main panel MP 208Y/120  "In the hall"': 'panel MP 208Y/120  "In the hall"',
}


@pytest.mark.parametrize(("wrong", "right"), list(MEANT.items()), ids=lambda text: text)
def test_the_line_means_what_the_right_one_says(wrong: str, right: str) -> None:
    problem = only(wrong)
    assert problem.rule == "known-slip" and problem.change
    assert applied(wrong, problem.remedies[0]) == right
    read, meant = parse_line(wrong, False), parse_line(right, False)
    assert not meant.problems
    assert (read.form, [t.text for t in read.head]) == (meant.form, [t.text for t in meant.head])
    assert [[t.text for t in p.tokens] for p in read.phrases] == [[t.text for t in p.tokens] for p in meant.phrases]
    assert all(0 <= t.start < t.end <= len(wrong) for t in (*read.head, *(t for p in read.phrases for t in p.tokens)))


def test_a_supply_that_rules_depend_on_is_for_the_drafter_to_say() -> None:
    """`emergency` brings the rules of NEC 700 with it."""
    problem = only("emergency panel EP-1 208Y/120  bus 100 A")
    assert [(r.title, r.sure) for r in problem.remedies] == [("Write `panel EP-1 ... emergency`", False)]
    statement = lower_block(("emergency panel EP-1 208Y/120  bus 100 A",))
    assert isinstance(statement, EquipmentStatement)  # known meanwhile, so that nothing that names it is lost
    generator = only("emergency generator GEN 208Y/120  100 kVA")
    assert applied("emergency generator GEN 208Y/120", generator.remedies[0]).startswith("generator GEN 208Y/120")
    assert generator.remedies[0].sure and "emergency," not in generator.message


@pytest.mark.parametrize("letter", ["E", "N", "F", "D", "R"])
def test_a_letter_alone_is_a_status_in_brackets_only(letter: str) -> None:
    """`D panel` may be called so; taken for one that goes, its sizes would be judged no more."""
    text = f"{letter} panel DP-1 208Y/120  bus 100 A"
    assert applied(text, only(text).remedies[0]) == f'panel DP-1 208Y/120  bus 100 A, "{letter} panel"'
    bracketed = only(f"({letter}) panel DP-1 208Y/120").remedies[0]
    assert bracketed.sure is (letter != "R") and f'"{letter}' not in bracketed.title


@pytest.mark.parametrize("word", ["auto", "buck-boost", "open-delta", "zigzag"])
def test_a_special_connection_of_a_transformer_is_written_as_such_and_looked_at(word: str) -> None:
    """A plain transformer makes a system of its own, with its own bond; an autotransformer does not (NEC 250.30)."""
    text = f"{word} transformer T-1 480 3ph -> 240 3ph"
    (remedy,) = only(text).remedies
    assert f", connection {word}, " in applied(text, remedy) and not remedy.sure
    assert only("isolation transformer T-1 480 3ph -> 240 3ph").remedies[0].sure


@pytest.mark.parametrize(
    "text", ["existing", "existing 100 A", 'lighting "Hall"', "lighting continuous", "main 400 A", "new location 3"]
)
def test_a_detail_that_lost_its_indent_stays_a_detail(text: str) -> None:
    assert only(text).remedies[0].title == "Indent the line"


def test_a_kind_inside_a_name_or_behind_one_is_none_of_the_head() -> None:
    assert "switchboard" not in only("load Foo bar switchboard LP-2  5 kW").message
    assert only("GEN -> ATS-1  100 A 3p").remedies[0].title == "Write `feeder GEN`"
