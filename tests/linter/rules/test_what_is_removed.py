"""What a project removes is not judged by sizes, and the position of a removed circuit is free for another.

That existing work which goes is outside the design is common practice, no source: plan reviewers ask that demolition
drawings show it, not that it meet the code of today.
"""

from __future__ import annotations

import pytest
from rule_models import analysis_of, check, rules_in

from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits

SITE = """wye 1
project "Clinic"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility UTIL 208Y/120  fault 42 kA, fault-min 30 kA, x/r 6
switchboard MSB 208Y/120  bus 800 A, main 800 A, rated 65 kA, lug-temp 75 degC, service-equipment
feeder UTIL -> MSB  2 sets 3x600kcmil + N 600kcmil Cu THWN-2  18 m  in 4 inch PVC-40
"""
OLD = """panel LP-9 208Y/120  bus 225 A, main 225 A, rated 10 kA, spaces 42{gone}
  1  20 A 1p  1.2 kVA lighting  "Old lobby"  2#14 + G #14 Cu  45 m
  2,4  20 A 2p  2 kVA heating  "Old heater"  2#12 + G #12 Cu  20 m  in 1/2 inch EMT
feeder MSB -> LP-9  225 A 3p  4#1/0 Cu THWN-2  6 m  in 1 inch EMT{way}
motor P-9 208 3ph  30 hp{gone}
feeder MSB -> P-9  400 A 3p  3#8 Cu THWN-2  6 m  in 1/2 inch EMT{way}
"""


def all_of(text: str) -> list[Finding]:
    return analysis_of(text).all_findings()


def about(text: str, *subjects: str) -> set[str]:
    return {f.rule for f in all_of(text) if f.subject in subjects}


def test_sizes_of_what_goes_are_not_judged() -> None:
    names = ("LP-9", "MSB -> LP-9", "P-9", "MSB -> P-9")
    stays = about(SITE + OLD.format(gone="", way=""), *names)
    assert {"interrupting-too-low", "wire-underprotected", "small-wire-limit", "motor-wire-small"} <= stays
    assert about(SITE + OLD.format(gone=", demolish", way=", demolish"), *names) == set()
    assert about(SITE + OLD.format(gone=", demolish", way=""), *names) == set()


def test_what_cannot_be_and_what_is_left_without_a_supply_is_told_all_the_same() -> None:
    text = SITE + OLD.format(gone=", demolish", way=", demolish").replace("LP-9 208Y/120", "LP-9 480Y/277")
    assert "leg-voltage-mismatch" in about(text, "MSB -> LP-9")
    assert "feeder-status-clash" in about(SITE + OLD.format(gone="", way=", demolish"), "MSB -> LP-9")


def test_a_removed_circuit_alone_is_not_judged_and_its_neighbour_with_its_number_is() -> None:
    feeder = "feeder MSB -> LP-9  225 A 3p  4#4/0 + G #4 Cu THWN-2  6 m  in 2-1/2 inch EMT\n"
    board = SITE + feeder + OLD.format(gone="", way="").split("feeder")[0]
    wrong = '  3  30 A 1p  1 kVA lighting  "{}"  2#12 + G #12 Cu  20 m  in 1/2 inch EMT{}\n'

    def told(*rows: str) -> list[int]:
        return [f.place.row for f in check(board + "".join(rows)) if f.rule == "small-wire-limit" and f.position == "3"]

    first = board.count("\n")
    assert told(wrong.format("Old", "")) == [first]
    assert told(wrong.format("Old", " demolish")) == []
    assert told(wrong.format("Old", " demolish"), wrong.format("New", "")) == [first + 1]
    assert told(wrong.format("New", ""), wrong.format("Old", " demolish")) == [first]


@pytest.mark.parametrize("removed_first", [True, False])
def test_the_position_of_a_removed_circuit_can_be_left_to_another(removed_first: bool) -> None:
    rows = [
        '  1  20 A 1p  1 kVA lighting  "Old lights"  2#12 + G #12 Cu  20 m  in 1/2 inch EMT demolish\n',
        '  1  20 A 1p  1 kVA lighting  "New lights"  2#12 + G #12 Cu  20 m  in 1/2 inch EMT\n',
    ]
    text = SITE + "panel LP-1 208Y/120  bus 225 A, main 225 A, rated 42 kA, spaces 42\n"
    text += "".join(rows if removed_first else reversed(rows))
    text += "feeder MSB -> LP-1  225 A 3p  4#4/0 + G #4 Cu THWN-2  6 m  in 2-1/2 inch EMT\n"
    (finding,) = (f for f in check(text) if f.rule == "position-occupied")
    assert finding.fixes[0].title == "Write `X1[A]` for the circuit that is removed"
    mended = apply_edits(text, finding.fixes[0].edits)
    assert '  X1[A]  20 A 1p  1 kVA lighting  "Old lights"' in mended
    assert "position-occupied" not in rules_in(mended)
    assert not [f for f in all_of(mended) if f.subject == "LP-1" and f.position == "X1[A]"]


def test_data_of_what_goes_are_not_asked_for() -> None:
    bare = "panel LP-9 208Y/120  bus 225 A{}\nfeeder MSB -> LP-9  225 A 3p{}\n"
    assert "impedance-missing" in about(SITE + bare.format("", ""), "MSB -> LP-9")
    assert about(SITE + bare.format(", demolish", ", demolish"), "MSB -> LP-9") == set()
