"""Every place where a name is written, whatever part it plays there."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar.linking import Model
from wyeline_grammar.references import SCENARIOS, SHARED, names_of, references
from wyeline_grammar.sources import Files
from wyeline_grammar.tokens import spelled

MODEL = """\
system S480 480Y/277
raceway R-7 2 inch EMT
type panel LAB like BASE, bus 225 A
type panel BASE S480 spaces 42
utility GRID S480 fault 30 kA, x/r 8
transfer ATS-1 400 A 3p
panel "pump room" S480 like LAB
  2  20 A 1p 1 kVA "Sumps" 2#12 Cu 9 m in R-7
  4  20 A 1p 1 kVA "EMT" 2#12 Cu 9 m in EMT with 2
transformer TX S480 -> 208Y/120 75 kVA
panel LP-1 208Y/120 bus 225 A
motor P-1 460 3ph 15 hp
motor P-2 460 3ph 15 hp standby-of P-1 not-with P-3 P-4
feeder F-7: GRID -> ATS-1.normal 400 A 3p in R-7
feeder ATS-1 -> "pump room" 3#1 Cu
feeder "pump room".through[ABC] -> TX at 2,4
interlock KEY at-most 1, among F-7, ATS-1
scenario "Grid lost"
  off GRID
  open F-7
  close "pump room".through -> TX
  switch ATS-1.emergency
expect "pump room" -> TX drop <= 2 % in "Grid lost"
expect F-7 drop <= 3 %
  // GRID in a comment, and in a text:
load X 480 3ph 9 kW "GRID"
"""


@pytest.fixture
def model(tmp_path: Path) -> Model:
    path = tmp_path / "site.wye"
    path.write_text(MODEL, "utf-8")
    return Model(str(path), Files())


EVERYWHERE = {
    "S480": ["1 declared", "4 voltage", "5 voltage", "7 voltage", "10 voltage"],
    "R-7": ["2 declared", "8 raceway", "14 raceway"],
    "LAB": ["3 declared", "7 like"],
    "BASE": ["3 like", "4 declared"],
    "GRID": ["5 declared", "14 from", "19 action"],
    "ATS-1": ["6 declared", "14 to", "15 from", "17 among", "22 action"],
    "pump room": ["7 declared", "15 to", "16 from", "21 action", "23 expect"],
    "TX": ["10 declared", "16 to", "21 action", "23 expect"],
    "P-1": ["12 declared", "13 standby-of"],
    "P-4": ["13 not-with"],
    "F-7": ["14 declared", "17 among", "20 action", "24 expect"],
    "EMT": [],
}


@pytest.mark.parametrize("name", EVERYWHERE)
def test_every_place_of_a_name_is_found_with_its_part(model: Model, name: str) -> None:
    found = references(model, name)
    assert [f"{r.block.first_line + r.span.line + 1} {r.role}" for r in found] == EVERYWHERE[name]
    for r in found:
        assert r.block.lines[r.span.line][r.span.start : r.span.end] in (name, f'"{name}"')


def test_scenarios_have_names_of_their_own(model: Model) -> None:
    assert [r.role for r in references(model, "Grid lost", SCENARIOS)] == ["declared", "scenario"]
    assert references(model, "Grid lost", SHARED) == []


def test_a_word_that_was_read_as_what_it_meant_is_no_place_of_that_name() -> None:
    for line in ("feeder lp-1 -> TX", "panel lp-1 208Y/120", "feeder A -> ", "interlock K among A B tie"):
        for named in names_of((line,)):
            assert line[named.span.start : named.span.end].strip('"') == named.name


@settings(max_examples=60)
@given(st.text(st.characters(blacklist_characters='"\r\n', blacklist_categories=("Cs", "Cc")), min_size=1, max_size=8))
def test_a_spelled_name_reads_as_that_name(name: str) -> None:
    line = f"feeder {spelled(name)} -> {spelled(name)}"
    assert [n.name for n in names_of((line,))] == [name, name]
