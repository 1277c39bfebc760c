"""Feeders in a circle, and the wrong way round: whatever is offered leaves a model that has no more to say about it."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.fixing import apply_edits

SOURCE = """utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4
switchboard MSB 480Y/277  bus 400 A, main 400 A, rated 22 kA
feeder UTIL -> MSB  400 A 3p
"""
BOARDS = "".join(f"panel A-{i} 480Y/277  bus 100 A, main lugs, rated 22 kA\n" for i in (1, 2, 3))
IN = "feeder MSB -> A-1  100 A 3p\n"
RING = "feeder A-1 -> A-2  100 A 3p\nfeeder A-2 -> A-3  100 A 3p\nfeeder A-3 -> A-1  100 A 3p\n"


def wrong(text: str) -> list[Finding]:
    return [f for f in Analysis("/m/s.wye", Files(lambda _: text), "/m").findings() if f.severity >= Severity.WARNING]


@pytest.mark.parametrize(
    ("text", "rule", "offered"),
    [
        (
            BOARDS + IN + RING,
            "supply-loop",
            ["Let `A-3 -> A-1` stand open (`normally-open`)", "Leave out `A-3 -> A-1`"],
        ),
        (
            BOARDS + IN + RING.replace("A-3 -> A-1", "BACK: A-3 -> A-1"),
            "supply-loop",
            ["Let `BACK` stand open (`normally-open`)", "Leave out `BACK`"],
        ),
        (BOARDS + RING, "unfed-equipment", ["Feed `A-1` from `MSB` instead of from `A-3`"]),
        (
            BOARDS.replace("A-3", "MSB-3") + "feeder A-1 -> MSB  100 A 3p\nfeeder A-1 -> A-2  100 A 3p\n"
            "feeder MSB -> MSB-3  100 A 3p\n",
            "unfed-equipment",
            ["Turn `A-1 -> MSB` round"],
        ),
    ],
    ids=["a circle", "a circle with a label", "a circle without a source", "the wrong way round"],
)
def test_every_offer_gives_a_model_that_checks(text: str, rule: str, offered: list[str]) -> None:
    text = SOURCE + text
    (found,) = [f for f in wrong(text) if f.rule == rule]
    ready = [fix for fix in found.fixes if fix.safety.value == "needs a look"]
    assert [fix.title for fix in ready] == offered
    for fix in ready:
        made = apply_edits(text, fix.edits)
        assert wrong(made) == [], fix.title
        assert "\n\n" not in made


@pytest.mark.parametrize("label", ["", "BACK: "])
def test_a_feeder_that_a_scenario_names_is_not_left_out(label: str) -> None:
    named = label.rstrip(": ") or "A-3 -> A-1"
    text = SOURCE + BOARDS + IN + RING.replace("A-3 ->", f"{label}A-3 ->") + f'scenario "Round"\n  open {named}\n'
    (found,) = [f for f in wrong(text) if f.rule == "supply-loop"]
    assert [fix.title for fix in found.fixes] == [f"Let `{named}` stand open (`normally-open`)"]
