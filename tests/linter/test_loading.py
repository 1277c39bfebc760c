"""One number for what is carried beside what may be carried."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.loading import circuit_amps, feeder_amps, loading_of
from wyeline_linter.view import View

SITE = """\
utility GRID 480Y/277 fault 30 kA, x/r 8
transformer TX 480 3ph -> 208Y/120 75 kVA, z 4 %
panel LP-1 bus 225 A, main 200 A
  1        20 A 1p  1.2 kW   heating
  2,4      30 A 2p  2.08 kW  heating
  6,8,10   60 A 3p  36 kW    heating
  12       20 A 1p           receptacle
panel LP-2 bus 100 A
  1        20 A 1p  1.2 kW   heating
generator GEN 208Y/120 50 kW
panel LP-3 bus 100 A
  1,3,5    60 A 3p  30 kW    heating
feeder GRID -> TX 100 A 3p
feeder TX -> LP-1 200 A 3p
feeder A: LP-1.through -> LP-2
feeder GEN -> LP-3 100 A 3p
"""


@pytest.fixture
def view(tmp_path: Path) -> View:
    path = tmp_path / "site.wye"
    path.write_text(SITE.replace("  12       20 A 1p           receptacle\n", ""), "utf-8")
    return Analysis(str(path), Files()).view


def test_circuits_draw_what_their_nameplate_gives(view: View) -> None:
    # I = S/V on one leg, S/V between two, S/(sqrt 3 V) on three (common practice; 208 stands for 120 * sqrt 3)
    assert circuit_amps(view, "LP-1") == pytest.approx(
        {"1": 1200 / 120, "2,4": 2080 / (120 * math.sqrt(3)), "6,8,10": 36000 / 360}, rel=2e-3
    )
    assert circuit_amps(view, "NOWHERE") == {}


def test_the_fullest_leg_stands_beside_the_smallest_rating(view: View) -> None:
    board = loading_of(view, "LP-2")
    assert board is not None and (board.limit, board.unit, board.of) == (100, "A", "bus")
    assert board.carried == pytest.approx(10, rel=2e-3) and board.share == pytest.approx(0.1, rel=2e-3)
    board = loading_of(view, "LP-1")
    assert board is not None and (board.limit, board.of) == (200, "main")


def test_what_is_rated_in_power_is_judged_in_power(view: View) -> None:
    transformer, generator = loading_of(view, "TX"), loading_of(view, "GEN")
    assert transformer is not None and (transformer.limit, transformer.unit) == (75000, "VA")
    assert transformer.carried == pytest.approx(1200 + 1200 + 2080 + 36000, rel=1e-3)
    assert generator is not None and (generator.carried, generator.unit) == (pytest.approx(30000), "W")


def test_feeders_carry_what_hangs_on_them(view: View) -> None:
    feeders = view.model.feeders
    assert feeder_amps(view, feeders["A"]) == pytest.approx(10, rel=2e-3)
    through, into = feeder_amps(view, feeders["GRID -> TX"]), feeder_amps(view, feeders["TX -> LP-1"])
    assert through is not None and into is not None and through < into / 2


def test_one_unknown_load_leaves_what_is_above_it_unknown(tmp_path: Path) -> None:
    path = tmp_path / "site.wye"
    path.write_text(SITE, "utf-8")
    view = Analysis(str(path), Files()).view
    assert loading_of(view, "LP-1") is None and loading_of(view, "TX") is None
    assert feeder_amps(view, view.model.feeders["TX -> LP-1"]) is None
    assert loading_of(view, "LP-2") is not None
    assert "12" not in circuit_amps(view, "LP-1") and "1" in circuit_amps(view, "LP-1")
    assert loading_of(view, "NOWHERE") is None and loading_of(view, "GRID") is None
