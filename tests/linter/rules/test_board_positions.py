"""Positions of boards and the legs that they are on."""

from __future__ import annotations

import pytest
from rule_models import analysis_of

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.board_positions import BoardPositions, Numbering, positions_of, spaces_of

ABC, AB = ("A", "B", "C"), ("A", "B")


@pytest.mark.parametrize(
    ("numbering", "legs", "positions", "expected"),
    [
        # Panelboard directories of US practice: rows 1/2, 3/4, 5/6 are A, B, C and so on down (common practice, from
        # memory; NEC 408.3(E) asks for A, B, C top to bottom).
        (Numbering(), ABC, (1, 2, 3, 4, 5, 6, 7, 8, 41, 42), "AABBCCAACC"),
        # Single-phase panels: the rows alternate between two legs.
        (Numbering(), AB, (1, 2, 3, 4, 5, 6, 7, 8), "AABBAABB"),
        (Numbering("sequential"), ABC, (1, 2, 3, 4, 5), "ABCAB"),
        # Two columns of six, numbered one after the other: 7 stands beside 1.
        (Numbering("column", 6), ABC, (1, 6, 7, 8, 12), "ACABC"),
        (Numbering(), ("B", "C"), (1, 3, 5), "BCB"),
        (Numbering(), ("A",), (1, 2, 9), "AAA"),
    ],
)
def test_legs_of_positions(
    numbering: Numbering, legs: tuple[str, ...], positions: tuple[int, ...], expected: str
) -> None:
    assert "".join(numbering.legs(positions, legs)) == expected


@pytest.mark.parametrize(
    ("numbering", "positions", "is_run"),
    [
        (Numbering(), (2, 4, 6), True),
        (Numbering(), (1, 2), False),
        (Numbering(), (4, 2), False),
        (Numbering("sequential"), (1, 2, 3), True),
        (Numbering("column", 6), (5, 6), True),
        (Numbering("column", 6), (6, 7), False),  # the bottom of one column and the top of the other
    ],
)
def test_runs(numbering: Numbering, positions: tuple[int, ...], is_run: bool) -> None:
    assert numbering.is_run(positions) is is_run


MODEL = """utility UTIL 208Y/120  fault 10 kA, x/r 4
feeder UTIL -> LP-1  100 A 3p
panel LP-1 208Y/120  bus 125 A, main 100 A, spaces 12
  1    20 A 1p  1 kVA lighting  "Stairs"
  2,4  20 A 2p  spare
  5    space
  F1[C]  20 A 1p  1 kVA lighting  "Yard"
  F2   20 A 3p  1 kVA heating  "Air curtain"
  F3   20 A 1p  1 kVA lighting  "Loft"
panel APT-1 208Y/120 1ph  bus 125 A
feeder LP-1 -> APT-1  60 A 2p at 7,9
"""


def board(text: str, name: str) -> BoardPositions:
    view = analysis_of(text).view
    equipment = view.equipment(name)
    assert equipment is not None
    return positions_of(view, equipment)


def test_what_takes_positions() -> None:
    found = board(MODEL, "LP-1")
    assert {o.key: found.legs_of(o) for o in found.occupants} == {
        "1": ("A",),
        "2,4": ("A", "B"),
        "5": ("C",),
        "F1": ("C",),
        "F2": ("A", "B", "C"),
        "F3": None,
        "7,9": ("A", "B"),
    }
    assert list(found.free_runs(1)) == [(3,), (5,), (6,), (8,), (10,), (11,), (12,)]
    assert list(found.free_runs(2)) == [(3, 5), (6, 8), (8, 10), (10, 12)]
    assert next(found.free_runs(2, frozenset({"C", "A"}))) == (6, 8)
    assert next(found.free_runs(1, frozenset({"B"}))) == (3,)


def test_positions_of_its_device_say_which_legs_a_feeder_takes() -> None:
    view = analysis_of(MODEL).view
    state = view.state("APT-1")
    assert state is not None
    assert state.system.system.legs == ("A", "B")  # type: ignore[union-attr]
    view = analysis_of(MODEL.replace("at 7,9", "at 6,8")).view
    assert view.state("APT-1").system.system.legs == ("C", "A")  # type: ignore[union-attr]


def test_a_panel_on_two_legs_alternates_between_them() -> None:
    text = MODEL.replace("at 7,9", "at 9,11") + ""
    found = board(text, "APT-1")
    assert found.legs == ("B", "C")
    assert found.numbering.legs((1, 3, 5), found.legs) == ("B", "C", "B")


def test_an_unfed_board_goes_by_its_notation() -> None:
    assert board("panel LP-9 120/240  bus 100 A\n", "LP-9").legs == AB
    assert board("panel LP-9  bus 100 A\n", "LP-9").legs == ()


def test_nothing_is_counted_up_to_a_number_of_spaces_that_no_board_has() -> None:
    text = 'panel P1 208Y/120  bus 225 A, spaces 999999999999999\n  13  20 A 1p  180 VA receptacle  "Room"\n'
    model = Analysis("/m/site.wye", Files(lambda _: text), "/m").model
    assert spaces_of(model.equipment["P1"]) is None
    for written, spaces in (("42", 42), ("999", 999), ("1001", None)):
        other = text.replace("999999999999999", written)
        assert spaces_of(Analysis("/m/site.wye", Files(lambda _, t=other: t), "/m").model.equipment["P1"]) == spaces


@pytest.mark.parametrize(
    ("row", "first"),
    [
        ('1  20 A 2p  1 kVA lighting  "Stairs"', "Make the device 1p"),
        ('1  20 A 2p  180 VA count 5 receptacle  "Bench"', "Make the device 1p"),
        ('1  20 A 2p  1.2 kVA lighting, voltage 208 1ph  "Canopy"', "Take 1,3"),
        ('1  20 A 2p  3 kVA receptacle  "More than 20 A at 120 V"', "Take 1,3"),
        ('1  30 A 2p  3 kW heating  "Water heater"', "Take 1,3"),
        ('1  20 A 3p  2 hp motor  "Fan"', "Take 1,3,5"),
        ('1  30 A 2p  2 kW heating, voltage 120 1ph  "Towel rails"', "Make the device 1p"),
    ],
)
def test_poles_or_positions_what_the_load_asks_for_is_offered_first(row: str, first: str) -> None:
    """208Y/120: 20 A at 120 V is 2.4 kVA."""
    board = (
        "utility U 208Y/120  fault 10 kA, x/r 4\npanel LP 208Y/120  bus 225 A, spaces 42\nfeeder U -> LP  225 A 3p\n"
    )
    text = board.replace("spaces 42\n", f"spaces 42\n  {row}\n")
    found = Analysis("/m/site.wye", Files(lambda _: text), "/m").findings()
    (wrong,) = [f for f in found if f.rule == "pole-count-wrong"]
    assert wrong.fixes[0].title == first and len(wrong.fixes) == 2
