"""Causes are found by undoing changes: one by one, in halves, and together where no single one is enough."""

from __future__ import annotations

import re

import pytest

from wyeline_linter.findings import Severity
from wyeline_linter.review import causes
from wyeline_linter.review.comparison import Comparison, compare_versions
from wyeline_linter.review.consequences import Consequence
from wyeline_linter.review.documents import Version

PANELS = 40


def site(panels: int = PANELS) -> str:
    lines = [
        'wye 1\nproject "Row of sheds"\n  basis us-2023',
        "utility     UTIL  480Y/277  fault 30 kA, x/r 8",
        "switchboard MSB   480Y/277  bus 4000 A, main 4000 A, rated 65 kA\nfeeder UTIL -> MSB  4000 A 3p",
    ]
    for i in range(panels):
        lines += [
            f"panel LP-{i}  480Y/277  bus 100 A, spaces 12",
            *(f'  {p}  20 A 1p  1 kVA lighting  "Shed {i} row {p}"' for p in (1, 3, 5)),
            f"feeder MSB -> LP-{i}  100 A 3p",
        ]
    return "\n".join(lines) + "\n"


def compared(old: str, new: str) -> Comparison:
    return compare_versions(*(Version("/m/site.wye", lambda _, text=text: text, "/m") for text in (old, new)))


def told(found: Comparison, subject: str, rule: str) -> Consequence:
    among = [c for c in found.worse if c.subject == subject and c.finding is not None and c.finding.rule == rule]
    assert len(among) == 1, [c.words for c in found.worse]
    return among[0]


@pytest.mark.parametrize("many", [False, True], ids=["one by one", "in halves"])
def test_either_of_two_changes_alone_would_do_it(many: bool) -> None:
    """A device ahead may be as large as the bus behind lugs: a smaller bus breaks that, a larger device as well."""
    old = site().replace("LP-3  480Y/277  bus 100 A", "LP-3  480Y/277  bus 100 A, main lugs")
    new = old.replace("bus 100 A, main lugs", "bus 90 A, main lugs")
    new = new.replace("feeder MSB -> LP-3  100 A 3p", "feeder MSB -> LP-3  125 A 3p")
    if many:
        new = re.sub(r"1 kVA (lighting  \"Shed 1\d row [135])", r"1.1 kVA \1", new)
        assert len(compared(old, new).changes) > causes.ONE_BY_ONE
    bare = told(compared(old, new), "LP-3", "lugs-only-unprotected")
    assert bare.together
    assert sorted(c.words for c in bare.because) == [
        "LP-3 had its bus changed from 100 to 90 A",
        "MSB -> LP-3 went from 100 to 125 A",
    ]
    assert bare.words.endswith("(undoing one of them is not enough)")


def test_a_finding_that_becomes_graver_is_news() -> None:
    """A winding at 80 % of its share draws a warning, above 100 % an error."""
    old = (
        'wye 1\nproject "Kiln house"\n  basis us-2023\nutility UTIL 480Y/277  fault 30 kA, x/r 8\n'
        "transformer T-1 480 3ph -> 208Y/120  30 kVA\nfeeder UTIL -> T-1  50 A 3p\n"
        "load KILN 208 3ph  26 kW, heating\nfeeder T-1 -> KILN  100 A 3p\n"
    )
    found = compared(old, old.replace("26 kW", "33 kW"))
    graver = told(found, "T-1", "transformer-overload")
    assert graver.gravity is Severity.ERROR
    assert [c.words for c in graver.because] == ["KILN went from 26 to 33 kW"]


def test_one_among_many_is_found_with_few_trials(monkeypatch: pytest.MonkeyPatch) -> None:
    judged = []
    take = causes.take
    monkeypatch.setattr(causes, "take", lambda *words: judged.append(1) or take(*words))
    old = site()
    # Every panel says something else; one of 120 changes overloads its circuit.
    new = old.replace('kVA lighting  "Shed', 'kVA lighting  "Hut').replace(
        '3  20 A 1p  1 kVA lighting  "Hut 17', '3  20 A 1p  9 kVA lighting  "Hut 17'
    )
    found = compared(old, new)
    assert len(found.changes) == 3 * PANELS
    high = told(found, "LP-17", "circuit-load-high")
    assert [c.subject for c in high.because] == ["LP-17"] and "from 1 to 9 kVA" in high.because[0].words
    assert len(judged) <= 20, "two trials a halving, log2(120) = 7 halvings, and a few more"
    assert not found.bounded


def test_the_bound_is_kept_and_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(causes, "MOST_TRIALS", 8)
    old = site()
    found = compared(old, old.replace("20 A 1p  1 kVA", "20 A 1p  9 kVA"))
    assert len(found.changes) == 3 * PANELS
    assert found.bounded
    assert all(c.because for c in found.worse), "what was not narrowed down is told as the group that undoes it"


def test_parts_that_add_up_are_each_named() -> None:
    """Three loads of 12 kVA raise the current of MSB; undoing one takes a third of that away."""
    old = site(4)
    new = re.sub(r"1 kVA (lighting  \"Shed [012] row 1\")", r"13 kVA \1", old)
    moved = next(c for c in compared(old, new).moved if c.subject == "MSB" and "demand load" in c.headline)
    assert moved.contributes and len(moved.because) == 3
    assert moved.words.endswith("(each has a part in it)")


def test_what_does_not_matter_is_no_cause() -> None:
    old = site(4)
    new = old.replace('1 kVA lighting  "Shed 2 row 1"', '9 kVA lighting  "Shed 2 row 1"')
    new = new.replace("Shed 1 row", "Hut 1 row").replace(
        "panel LP-0  480Y/277  bus 100 A", "panel LP-0  480Y/277  bus 125 A"
    )
    found = compared(old, new)
    high = told(found, "LP-2", "circuit-load-high")
    assert [c.words for c in high.because] == ["circuit 1 of LP-2 went from 1 to 9 kVA"]
