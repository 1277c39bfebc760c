"""Load calculations against printed worked examples in the style of NEC Annex D; the source stands beside each."""

from __future__ import annotations

import pytest
from load_models import amps, viewed

PROJECT = 'project "Example"\n  basis us-2023\n'
SPLIT = "utility U 120/240  fault 10 kA, x/r 4\nfeeder U -> P  225 A 2p\npanel P 120/240  bus 225 A, spaces 42\n"


def test_store_feeder() -> None:
    """Annex D3, store: receptacles 14,400 VA count 12,200; continuous 16,200 VA; 32,450 VA, 135 A at 240 V.

    Read in part at flylib.com (NEC 2005, Example D3(a)); the last line from memory, its arithmetic is exact.
    """
    view = viewed(
        PROJECT
        + SPLIT
        + "  1,3  90 A 2p  180 VA count 80  receptacle\n  2,4  60 A 2p  9 kVA lighting\n"
        + "  5,7  40 A 2p  6 kVA show-window continuous\n  6,8  20 A 2p  1.2 kVA sign continuous\n"
    )
    counted = view.loads.counted("P")
    assert abs(counted.connected.va) == pytest.approx(30_600.0)
    assert abs(counted.demand.va) == pytest.approx(28_400.0)
    assert counted.sizing is not None and counted.sizing.va.real == pytest.approx(32_450.0)
    assert amps(view, "P", "sizing")[0] == pytest.approx(135.2, abs=0.05)


def test_continuous_and_noncontinuous_store_conductors() -> None:
    """18,000 VA and 13,356 VA continuous at 120/240 V: 34,695 VA, 144 A (read at dev.tests.com, "Formulas" cards)."""
    view = viewed(PROJECT + SPLIT + "  1,3  100 A 2p  18 kVA process\n  2,4  90 A 2p  13356 VA lighting continuous\n")
    sizing = view.loads.counted("P").sizing
    assert sizing is not None and sizing.va.real == pytest.approx(34_695.0)
    assert amps(view, "P", "sizing")[1] == pytest.approx(144.6, abs=0.05)


def test_two_single_phase_motors() -> None:
    """7-1/2 hp and 5 hp, 230 V: 40 and 28 A, feeder 78 A (read at ar.scribd.com, "Feeder Conductor Size")."""
    text = PROJECT + SPLIT + "motor M-1 230 1ph  7-1/2 hp\nmotor M-2 230 1ph  5 hp\n"
    text += "feeder P[AB] -> M-1  90 A 2p\nfeeder P[AB] -> M-2  70 A 2p\n"
    view = viewed(text)
    assert amps(view, "M-1")[0] == pytest.approx(40.0)
    assert amps(view, "P", "sizing")[:2] == pytest.approx((78.0, 78.0))
    assert view.loads.rows("P")[1].name == "M-1"  # type: ignore[union-attr]


def test_three_phase_motors_count_the_largest_once() -> None:
    """NEC Annex D8, from memory: 34, 40 and 40 A at 460 V: feeder 1.25 x 40 + 40 + 34 = 124 A."""
    text = PROJECT + "utility U 480Y/277  fault 20 kA, x/r 6\nmcc P 480 3ph  bus 600 A\nfeeder U -> P  200 A 3p\n"
    for name, hp in (("M-1", 25), ("M-2", 30), ("M-3", 30)):
        text += f"motor {name} 460 3ph  {hp} hp\nfeeder P -> {name}  100 A 3p\n"
    view = viewed(text)
    assert amps(view, "P", "sizing")[:3] == pytest.approx((124.0,) * 3)
    assert amps(view, "M-1", "sizing")[0] == pytest.approx(42.5)
    assert amps(view, "U", "sizing")[:3] == pytest.approx((124.0,) * 3), "the quarter is added once, not at each level"


def test_dwelling_range_and_heat_currents() -> None:
    """Annex D5(b): 6 kW heat at 208 V 28.8 A (read at flylib.com)."""
    text = PROJECT + "utility U 208Y/120  fault 10 kA, x/r 4\nfeeder U -> P  225 A 3p\npanel P 208Y/120  bus 225 A\n"
    view = viewed(text + "  1,3  40 A 2p  6 kW heating\n")
    assert amps(view, "P")[0] == pytest.approx(28.8, abs=0.05)


def test_receptacle_factor_is_applied_once_over_the_union() -> None:
    """Two panels of 9 kVA: each counts whole (up to 10 kVA, NEC 220.47), the board 10 + 0.5 x 8 = 14 kVA, not 18."""
    text = PROJECT + "utility U 208Y/120  fault 10 kA, x/r 4\nfeeder U -> D  225 A 3p\npanel D 208Y/120  bus 225 A\n"
    for name in ("P-1", "P-2"):
        text += f"panel {name} 208Y/120  bus 100 A\n  1,3,5  60 A 3p  9 kVA receptacle\nfeeder D -> {name}  100 A 3p\n"
    loads = viewed(text).loads
    assert abs(loads.counted("P-1").demand.va) == pytest.approx(9000.0)
    assert abs(loads.counted("D").demand.va) == pytest.approx(14_000.0)
    assert abs(loads.counted("U").demand.va) == pytest.approx(14_000.0)


def test_transformer_full_load_at_its_rating() -> None:
    """75 kVA, 480 to 208Y/120: 90.2 A primary and 208.2 A secondary (arithmetic of the trade; public study notes)."""
    text = PROJECT + "utility U 480Y/277  fault 20 kA, x/r 6\nfeeder U -> T  125 A 3p\n"
    text += "transformer T 480 3ph -> 208Y/120  75 kVA\nfeeder T -> P  225 A 3p\npanel P 208Y/120  bus 225 A\n"
    view = viewed(text + "  1,3,5  225 A 3p  75 kVA heating\n")
    assert amps(view, "P")[0] == pytest.approx(208.2, abs=0.05)
    assert amps(view, "U")[0] == pytest.approx(90.2, abs=0.05)
