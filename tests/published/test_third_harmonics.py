"""Third harmonics in neutrals: the worked example of IEC 60364-5-52 Annex E, and hand sums for feeders.

The example is from memory: a three-phase circuit designed for 39 A, a four-core PVC cable on a wall (method C). Without
harmonics 6 mm2 (41 A) serves. With 20 % of third harmonic 39 / 0.86 = 45 A ask for 10 mm2. With 40 % the neutral has
39 x 0.4 x 3 = 46.8 A, and 46.8 / 0.86 = 54.4 A ask for 10 mm2. With 50 % it has 58.5 A, which alone ask for 16 mm2.
"""

from __future__ import annotations

import math

import pytest
from load_models import analysed, viewed

from wyeline_linter.load_figures import load_figures
from wyeline_linter.loads.sheets import load_figure
from wyeline_linter.protection.ampacities import bounds
from wyeline_linter.protection.currents import current_of, laid_with
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.sizing.lines import Proposal, size_feeder
from wyeline_linter.tables import NotListed
from wyeline_linter.view import View

IEC = """project "Quarry"
  basis iec
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, r/x 0.4, earthing TN-S
feeder NETT -> HV  4x95mm2 + PE 50mm2 Cu XLPE  6 m method C
switchboard HV 400Y/230  bus 250 A, incomer 160 A 4p
"""
US = """project "Quarry"
  basis us-2023
utility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB  2 sets 3#3/0 + N #3/0 Cu THWN-2  6 m  in 2 inch PVC-40
switchboard MSB 208Y/120  bus 400 A, main 400 A, lug-temp 75 degC
"""


def annex_e(third: str, wires: str = "5G6mm2") -> str:
    return IEC + (
        f"load RACKS 400Y/230  draws 39 A, it{third}\n"
        f"feeder HV -> RACKS  40 A 4p curve C  {wires} Cu PVC  20 m  method C\n"
    )


@pytest.mark.parametrize(
    ("third", "neutral_a", "needed_a", "wires"),
    [
        (", third-harmonic 10 %", 11.7, 39.0, "5G6mm2"),
        (", third-harmonic 20 %", 23.4, 45.3, "5G10mm2"),
        (", third-harmonic 40 %", 46.8, 54.4, "5G10mm2"),
        (", third-harmonic 50 %", 58.5, 58.5, "5G16mm2"),
    ],
)
def test_the_example_of_annex_e(third: str, neutral_a: float, needed_a: float, wires: str) -> None:
    analysis = analysed(annex_e(third))
    view = analysis.view
    feeder = analysis.model.feeders["HV -> RACKS"]
    line = feeder_line(view, feeder)
    assert line is not None
    current = current_of(view, line)
    assert current.neutral_a == pytest.approx(neutral_a)
    laid = laid_with(line, current)
    assert laid is not None
    held = bounds(line.tables, line.wiring, laid)
    assert not isinstance(held, NotListed)
    factor = held[0].amps / 41.0
    assert max(39.0, neutral_a) / factor == pytest.approx(needed_a, abs=0.1)
    sized = size_feeder(view, feeder)
    assert isinstance(sized, Proposal)
    assert (sized.wires or "5G6mm2 Cu PVC") == f"{wires} Cu PVC"


@pytest.mark.parametrize(
    ("third", "wires", "found"),
    [
        ("", "5G6mm2", set()),  # nobody states a share: `it` alone names no factor
        (", third-harmonic 15 %", "5G6mm2", set()),
        (", third-harmonic 20 %", "5G6mm2", {"neutral-counts-as-loaded"}),
        (", third-harmonic 20 %", "5G10mm2", set()),
        (", third-harmonic 40 %", "5G6mm2", {"neutral-counts-as-loaded", "neutral-undersized"}),
        (", third-harmonic 40 %", "5G10mm2", set()),
        (", third-harmonic 50 %", "5G10mm2", {"neutral-undersized"}),
        (", third-harmonic 50 %", "5G16mm2", set()),
        # IEC 60364-5-52 524.2, from memory: no reduced neutral above 15 %.
        (", third-harmonic 10 %", "3x35mm2 + N 25mm2 + PE 16mm2", set()),
        (", third-harmonic 20 %", "3x35mm2 + N 25mm2 + PE 16mm2", {"neutral-undersized"}),
        # Legs beside a larger neutral keep the factor 0.86: 41 A x 0.86 is below the 40 A device.
        (", third-harmonic 50 %", "3x6mm2 + N 16mm2 + PE 6mm2", {"neutral-counts-as-loaded"}),
        (", third-harmonic 50 %", "3x10mm2 + N 16mm2 + PE 10mm2", set()),
    ],
)
def test_what_is_found_in_the_example(third: str, wires: str, found: set[str]) -> None:
    told = {f.rule for f in analysed(annex_e(third, wires)).findings()}
    assert told & {"neutral-counts-as-loaded", "neutral-undersized", "ampacity-short", "wire-underprotected"} == found


VOLTS = 400 / math.sqrt(3)


def board(rows: str, words: str = "", feeder: str = "") -> View:
    text = f"{IEC}panel UV 400Y/230  bus 125 A{words}\n{rows}feeder HV -> UV  100 A 4p curve C{feeder}\n"
    return viewed(text)


def neutral_of(view: View, name: str) -> dict[str, float]:
    load = load_figures(view, name)
    assert load is not None
    return load["neutral"]  # type: ignore[no-any-return]


def test_shares_of_several_loads_add_up_as_amperes() -> None:
    """By hand: legs of 10 A at 80 % and three legs of 20 A at 0 %: 8 A a leg, 24 A in the neutral, 24 / 90 of the line
    currents. 20 A more on one leg are left over at the fundamental: sqrt(20^2 + 24^2)."""
    racks = "".join(f"  F{n}[L{n}]  16 A 1p+N curve B  {10 * VOLTS:.6f} VA it third-harmonic 80 %\n" for n in (1, 2, 3))
    even = f"{racks}  F4  32 A 3p+N  {60 * VOLTS:.6f} VA heating third-harmonic 0 %\n"
    neutral = neutral_of(board(even), "UV")
    assert neutral["third_harmonic_a"] == pytest.approx(24.0)
    assert neutral["third_harmonic_part"] == pytest.approx(24 / 90)
    assert neutral["third_harmonic_unstated_va"] == 0
    assert neutral["demand_a"] == pytest.approx(24.0)
    view = board(f"{even}  F5[L1]  32 A 1p+N  {20 * VOLTS:.6f} VA process\n")
    assert neutral_of(view, "HV")["demand_a"] == pytest.approx(math.hypot(20.0, 24.0))
    assert neutral_of(view, "HV")["third_harmonic_unstated_va"] == pytest.approx(20 * VOLTS)
    sheet = load_figure(view, "HV", "neutral")
    assert sheet.value == pytest.approx(math.hypot(20.0, 24.0))
    assert any("states no third harmonic" in note for note in sheet.assumptions)


@pytest.mark.parametrize(
    ("words", "feeder", "share"), [(", third-harmonic 25 %", "", 0.25), ("", ", third-harmonic 30 %", 0.3)]
)
def test_what_a_board_or_its_feeder_says_stands_in_place_of_its_loads(words: str, feeder: str, share: float) -> None:
    """By hand: 3 x 20 A at that share, here and further up, with and without a demand factor of the board."""
    row = f"  F1  32 A 3p+N  {60 * VOLTS:.6f} VA it third-harmonic 80 %\n"
    for factor in ("", ", factor 50 %"):
        view = board(row, words + factor, feeder)
        for name in ("UV", "HV"):
            third = neutral_of(view, name)["third_harmonic_a"]
            assert third == pytest.approx(60 * share * (0.5 if factor else 1.0))


def test_the_neutral_of_one_leg_carries_no_more_than_the_leg() -> None:
    view = board(f"  F1[L2]  16 A 1p+N curve B  {10 * VOLTS:.6f} VA it third-harmonic 80 %\n")
    assert neutral_of(view, "UV")["demand_a"] == pytest.approx(10.0)
    assert load_figure(view, "UV", "neutral").value == pytest.approx(10.0)


@pytest.mark.parametrize(
    "row",
    [
        "  F1[L1 L2]  16 A 2p  4 kVA it third-harmonic 80 %\n",  # between two legs: comes back on a leg
        "  F1  16 A 3p  9 kVA it third-harmonic 80 %  4G2.5mm2 Cu NYM-J  9 m method C\n",  # no neutral is pulled
    ],
)
def test_what_has_no_neutral_to_return_through_adds_nothing(row: str) -> None:
    assert neutral_of(board(row), "UV")["third_harmonic_a"] == 0.0


_BEHIND = (
    "panel LP 208Y/120  bus 225 A\n  1,3,5  60 A 3p  18 kVA it third-harmonic 40 %\n"
    "feeder TX -> LP  100 A 3p\npanel HP 480Y/277  bus 225 A\nfeeder HP -> TX  60 A 3p\n"
    "utility U 480Y/277  fault 10 kA, x/r 4\nfeeder U -> HP  225 A 3p\n"
)


@pytest.mark.parametrize(
    ("windings", "above"),
    [
        ("480 3ph -> 208Y/120  45 kVA", 0.0),  # a closed delta keeps the third harmonics of its legs to itself
        ("480Y/277 -> 208Y/120  45 kVA", 0.4 * 18e3 / (480 / math.sqrt(3))),  # wye-wye with its neutral passes them on
    ],
)
def test_what_passes_a_transformer(windings: str, above: float) -> None:
    """Closed form: third harmonics in step cannot flow into a winding connection without a neutral (zero sequence)."""
    view = viewed(f"transformer TX {windings}\n{_BEHIND}")
    assert neutral_of(view, "LP")["third_harmonic_a"] == pytest.approx(0.4 * 18e3 / (208 / math.sqrt(3)))
    assert neutral_of(view, "HP")["third_harmonic_a"] == pytest.approx(above, abs=1e-9)


def test_on_a_centre_tapped_winding_third_harmonics_cancel() -> None:
    """Closed form: 3 x 180 degrees is half a turn, so the two legs are as opposed as at the fundamental."""
    text = "utility U 120/240  fault 10 kA, x/r 4\nfeeder U -> P  100 A 2p\npanel P 120/240  bus 100 A\n"
    view = viewed(text + "".join(f"  {n}  20 A 1p  1.2 kVA it third-harmonic 60 %\n" for n in (1, 3)))
    neutral = neutral_of(view, "P")
    assert neutral["demand_a"] == pytest.approx(0.0, abs=1e-9)
    assert neutral["third_harmonic_a"] is None


def test_the_input_of_a_ups_draws_what_it_states() -> None:
    """12 kW at 95 % and power factor 0.95 are 13.3 kVA; 30 % of its three legs come together in the neutral."""
    text = US + "ups UPS-1 208Y/120 -> 208Y/120  20 kVA, eff 95 %, third-harmonic 30 %\n"
    text += "panel IT 208Y/120  bus 100 A\n  1,3,5  50 A 3p  12 kW it pf 1 third-harmonic 5 %\n"
    text += "feeder MSB -> UPS-1  70 A 3p\nfeeder UPS-1 -> IT  60 A 3p\n"
    view = viewed(text)
    assert neutral_of(view, "IT")["third_harmonic_a"] == pytest.approx(0.05 * 12e3 / (208 / math.sqrt(3)))
    drawn = 12e3 / 0.95 / 0.95 / (208 / math.sqrt(3))
    assert neutral_of(view, "MSB")["third_harmonic_a"] == pytest.approx(0.3 * drawn, rel=1e-3)


_UP = (
    "panel UP-1 208Y/120  bus 125 A, main 100 A, lug-temp 75 degC\n  1,3,5  90 A 3p  {kva} kVA {load}\n"
    "feeder MSB -> UP-1  100 A 3p  {wires} Cu THWN-2  20 m  in 2 inch EMT, ambient 38 degC\n"
)


@pytest.mark.parametrize(
    ("load", "counted"),
    [
        ("process", 3),
        ("process third-harmonic 30 %", 4),
        ("it", 4),  # the class stands for a share that nobody states
        ("it third-harmonic 5 %", 3),  # its power supplies are corrected
    ],
)
def test_which_neutral_counts_among_the_loaded_wires(load: str, counted: int) -> None:
    """NEC 310.15(E)(3): the neutral of a four-wire wye whose load is mostly nonlinear; 310.15(C)(1): 80 % for four to
    six. 3 AWG Cu at 90 degC: 115 A x 0.91 x 80 %."""
    analysis = analysed(US + _UP.format(kva=20, load=load, wires="3#3 + N #3 + G #8"))
    line = feeder_line(analysis.view, analysis.model.feeders["MSB -> UP-1"])
    assert line is not None
    laid = laid_with(line, current_of(analysis.view, line))
    assert laid is not None and laid.loaded == counted
    held = bounds(line.tables, line.wiring, laid)
    assert not isinstance(held, NotListed)
    assert held[0].bundled_a == pytest.approx(115 * 0.91 * (0.8 if counted == 4 else 1.0))


def test_a_neutral_above_its_legs_is_judged_under_us_practice_too() -> None:
    """By hand: 28 kVA at 208 V are 77.7 A a leg; at 50 % the neutral carries 116.6 A, and 1 AWG beside three more
    carries 145 x 0.91 x 80 % = 105.6 A; 1/0 carries 123.8 A."""
    load = "process third-harmonic 50 %"
    for wires, found in (("3#1 + N #1 + G #8", True), ("3#1 + N #1/0 + G #8", False)):
        analysis = analysed(US + _UP.format(kva=28, load=load, wires=wires))
        told = [f for f in analysis.findings() if f.rule == "neutral-undersized"]
        assert bool(told) is found
        if told:
            assert "116.6 A" in told[0].needed or "117 A" in told[0].needed
            assert told[0].fixes[0].title == "Make the neutral 1/0"
        sized = size_feeder(analysis.view, analysis.model.feeders["MSB -> UP-1"])
        assert isinstance(sized, Proposal)
        assert ("N #1/0" in sized.wires) is found, "sized in the place of the one that is too small, and kept else"


_HEAVY = "panel UV 400Y/230  bus 250 A\n  F1  250 A 3p+N curve C  {even}\n  F2[L1]  200 A 1p+N curve C  {alone}\n"


@pytest.mark.parametrize(
    ("even", "alone", "wires", "needed", "fix"),
    [
        # 44 kVA on one leg are 190.5 A; 50 mm2 carry 179 A on a wall (B.52.5), 120 mm2 more: the legs are no matter.
        (
            "20 kVA it third-harmonic 10 %", "44 kVA process third-harmonic 0 %",
            "3x120mm2 + N 50mm2 + PE 70mm2",
            "191 A: unequal load, and 8.66 A of third harmonic", "Make the neutral 120 mm2",
        ),
        # 3 x 100 A x 50 % are 150 A, beyond 25 mm2 and 35 mm2 too: one fix, not two.
        (
            "69.282 kVA it third-harmonic 50 %", "spare",
            "3x35mm2 + N 25mm2 + PE 16mm2", "150 A: the third harmonic", "Write `4x70mm2 + PE 35mm2 Cu PVC`",
        ),
    ],
)  # fmt: skip
def test_a_reduced_neutral_grows_as_far_as_it_has_to(even: str, alone: str, wires: str, needed: str, fix: str) -> None:
    """By hand, with the columns of IEC 60364-5-52 for method C (PVC: 35 mm2 119 A, 50 mm2 144 A, 70 mm2 184 A)."""
    kind, rated = ("XLPE", 250) if "120mm2" in wires else ("PVC", 100)
    feeder = f"feeder HV -> UV  {rated} A 4p  {wires} Cu {kind}  20 m  method C\n"
    told = [
        f for f in analysed(IEC + _HEAVY.format(even=even, alone=alone) + feeder).findings() if f.subject == "HV -> UV"
    ]
    found = [f for f in told if f.rule == "neutral-undersized"]
    assert [f.needed[: len(needed)] for f in found] == [needed]
    assert [f.title for f in found[0].fixes] == [fix]


def test_size_keeps_no_neutral_that_is_too_small() -> None:
    """By hand as above: 191 A, and 50 mm2 carry 179 A; 8 AWG carry 50 A at 75 degC (NEC 310.16) for 66.9 A."""
    iec = IEC + _HEAVY.format(even="20 kVA it third-harmonic 10 %", alone="44 kVA process third-harmonic 0 %")
    iec += "feeder HV -> UV  250 A 4p  3x120mm2 + N 50mm2 + PE 70mm2 Cu XLPE  20 m  method C\n"
    us = US + "panel UV 208Y/120  bus 125 A, lug-temp 75 degC\n  1  100 A 1p  8 kVA process\n"
    us += "feeder MSB -> UV  100 A 3p  3#3 + N #8 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    for text, key, neutral in ((iec, "HV -> UV", "4x120mm2"), (us, "MSB -> UV", "N #3")):
        analysis = analysed(text)
        sized = size_feeder(analysis.view, analysis.model.feeders[key])
        assert isinstance(sized, Proposal)
        assert neutral in sized.wires


def test_a_pen_that_is_too_small_is_called_so_and_grows() -> None:
    """IEC 60364-5-52 524.2, from memory: no reduced neutral above 15 %."""
    text = IEC.replace("TN-S", "TN-C").replace("4x95mm2 + PE 50mm2", "3x95mm2 + PEN 95mm2")
    text += "load RACKS 400Y/230  draws 50 A, it, third-harmonic 50 %\n"
    text += "feeder HV -> RACKS  63 A 3p curve C  3x70mm2 + PEN 35mm2 Cu XLPE  20 m  method C\n"
    (told,) = [f for f in analysed(text).findings() if f.rule == "neutral-undersized" and f.subject == "HV -> RACKS"]
    assert told.fixes[0].title == "Make the PEN 70 mm2"
    assert told.fixes[0].edits[0].text == "3x70mm2 + PEN 70mm2 Cu XLPE"


def test_a_larger_neutral_takes_its_raceway_along() -> None:
    """By hand: 28 kVA at 50 % ask for 1/0 (see above); 3#1 + N #1/0 + G #8 fill 1-1/4 inch EMT by more than 40 %."""
    text = US + _UP.format(kva=28, load="process third-harmonic 50 %", wires="3#1 + N #1 + G #8")
    text = text.replace("in 2 inch EMT", "in 1-1/4 inch EMT")
    (told,) = [f for f in analysed(text).findings() if f.rule == "neutral-undersized"]
    assert [e.text for e in told.fixes[0].edits] == ["3#1 + N #1/0 + G #8 Cu THWN-2", "in 1-1/2 inch EMT"]


def test_a_neutral_of_one_set_is_not_kept_in_two() -> None:
    text = US.replace("2 sets 3#3/0 + N #3/0", "3x500kcmil + N 500kcmil").replace("2 inch", "4 inch")
    text += (
        "panel P 208Y/120  bus 400 A\n  1,3,5  350 A 3p  100 kVA it third-harmonic 30 %\nfeeder MSB -> P  400 A 3p\n"
    )
    analysis = analysed(text)
    sized = size_feeder(analysis.view, analysis.model.feeders["UTIL -> MSB"])
    assert isinstance(sized, Proposal)
    assert sized.wires.startswith("2 sets") and "500kcmil" not in sized.wires


@pytest.mark.parametrize(("load", "reduced_a"), [("lighting", 270.0), ("lighting third-harmonic 30 %", 300.0)])
def test_nonlinear_load_is_not_let_off(load: str, reduced_a: float) -> None:
    """NEC 220.61(B) counts 70 % of what exceeds 200 A; (C)(2) none of it where the load is nonlinear, on a four-wire
    wye. By hand: 300 A on one leg."""
    volts = 480 / math.sqrt(3)
    text = US.replace("208Y/120", "480Y/277") + "panel LP 480Y/277  bus 400 A\n"
    text += f"  1  400 A 1p  {300 * volts:.6f} VA {load}\nfeeder MSB -> LP  400 A 3p\n"
    assert neutral_of(viewed(text), "LP")["reduced_a"] == pytest.approx(reduced_a)


@pytest.mark.parametrize(
    ("lines", "told"),
    [
        ("load M 400 3ph  9 kW, process, third-harmonic 20 %\nfeeder HV -> M  20 A 3p\n", ["M"]),
        ("load M 400 3ph  9 kW, process\nfeeder HV -> M  20 A 3p, third-harmonic 20 %\n", ["HV -> M"]),
        ("load M 400Y/230  9 kW, process\nfeeder HV -> M  20 A 4p, third-harmonic 20 %\n", []),
        ("load M 400 3ph  9 kW, process, third-harmonic 0 %\nfeeder HV -> M  20 A 3p\n", []),
        ("load M 400Y/230  9 kW, process, third-harmonic 9 %\nfeeder HV -> M  20 A 4p, third-harmonic 9 %\n", []),
        ("load M 400Y/230  9 kW, it, third-harmonic 9 %\nfeeder HV -> M  20 A 4p, third-harmonic 40 %\n", ["HV -> M"]),
        ("panel P  bus 63 A, third-harmonic 9 %\nfeeder HV -> P  20 A 4p, third-harmonic 40 %\n", ["HV -> P"]),
        ("panel P  bus 63 A, third-harmonic 20 %\nfeeder NOWHERE -> P  20 A 3p\n", []),  # its voltage is not known
        ("ups X 400 3ph -> 400Y/230  9 kVA, eff 94 %, third-harmonic 9 %\nfeeder HV -> X  20 A 3p\n", ["X"]),
        ("ups X 400Y/230 -> 400Y/230  9 kVA, eff 94 %, third-harmonic 9 %\nfeeder HV -> X  20 A 4p\n", []),
    ],
)
def test_a_share_that_counts_nowhere_is_told(lines: str, told: list[str]) -> None:
    """Closed form: without a neutral third harmonics in step have no way back (Kirchhoff)."""
    found = analysed(IEC + lines).findings()
    assert [f.subject for f in found if f.rule == "third-harmonic-not-counted"] == told


@pytest.mark.parametrize(
    ("status", "words", "told"),
    [("existing ", "", True), ("", "", False), ("existing ", ", third-harmonic 20 %", False)],
)
def test_a_share_within_a_measurement_is_told(status: str, words: str, told: bool) -> None:
    """NEC 220.87 counts amperes as measured: what existing circuits say of their current stands beside no load."""
    text = US + f"panel P 208Y/120  bus 225 A, existing, measured 86 A, measured-over 365 d{words}\n"
    text += f"  1,3,5  60 A 3p  {status}9 kVA it third-harmonic 40 %\nfeeder MSB -> P  225 A 3p existing\n"
    found = [f for f in analysed(text).findings() if f.rule == "third-harmonic-not-counted"]
    assert [(f.subject, f.position) for f in found] == [("P", "1,3,5")] * told
    assert all("within what was measured" in f.message for f in found)
    assert (neutral_of(viewed(text), "P")["third_harmonic_a"] is None) is told


@pytest.mark.parametrize(("share", "words", "told"), [(25, "", True), (25, ", double-neutral", False), (20, "", False)])
def test_a_board_is_told_of_a_neutral_that_harmonics_fill(share: int, words: str, told: bool) -> None:
    """By hand: 3 x 25 % are three quarters of a leg, 3 x 20 % are 60 %; the rule tells beyond 60 %."""
    view = f"{IEC}panel UV 400Y/230  bus 63 A{words}\n  F1  63 A 3p+N  33.3 kVA it third-harmonic {share} %\n"
    found = analysed(f"{view}feeder HV -> UV  63 A 4p curve C\n").findings()
    assert ("UV" in [f.subject for f in found if f.rule == "high-neutral-current"]) is told
