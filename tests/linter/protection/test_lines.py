"""Feeders and circuits as facts: which wire is for what, what protects it, and how many wires heat each other."""

from __future__ import annotations

import pytest
from line_models import IEC, LOW, PANEL, US, line_of, model, rules_of

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.protection.ampacities import bounds
from wyeline_linter.protection.currents import current_of, feeder_current, laid_with
from wyeline_linter.protection.lines import feeder_line, first_device_a
from wyeline_linter.protection.purposes import Purpose, purpose_of
from wyeline_linter.systems import Known
from wyeline_linter.tables import NotListed, Override


@pytest.mark.parametrize(
    ("written", "legs", "neutral", "ground", "role", "metal", "mark"),
    [
        ("3#3 + N #3 + G #8 Cu THWN-2", 3, "3", "8", "G", "Cu", "THWN-2"),
        ("4#3 + G #8 Al XHHW-2", 3, "3", "8", "G", "Al", "XHHW-2"),
        ("2 sets 3x250kcmil + N #4/0 + G #2", 3, "4/0", "2", "G", "Cu", None),
    ],
)
def test_us_wires(written: str, legs: int, neutral: str, ground: str, role: str, metal: str, mark: str | None) -> None:
    text = US + PANEL + f"feeder MSB -> LP-1  100 A 3p  {written}  20 m  in 3 inch EMT\n"
    wiring = line_of(text, "MSB -> LP-1").wiring
    assert (wiring.legs, wiring.neutral, wiring.ground, wiring.ground_role) == (legs, neutral, ground, role)
    assert (wiring.metal, wiring.insulation, wiring.metal_assumed) == (metal, mark, mark is None)


@pytest.mark.parametrize(
    ("row", "legs", "neutral", "ground", "metal", "temperatures"),
    [
        ("F1[L1]  16 A 1p+N curve B  1 kW heating  3G2.5mm2 Cu PVC", 1, "2.5 mm2", "2.5 mm2", "Cu", (70.0,)),
        ("F1      16 A 3p curve B  1 kW heating  5G2.5mm2 NYM-J", 3, "2.5 mm2", "2.5 mm2", "Cu", (70.0,)),
        ("F1      40 A 3p curve C  9 kW heating  3x25mm2 + PE 16mm2 Al XLPE", 3, None, "16 mm2", "Al", (90.0,)),
        ("F1      63 A 3p curve C  9 kW heating  3x16mm2 + PEN 16mm2 Cu", 3, "16 mm2", "16 mm2", "Cu", (70.0, 90.0)),
    ],
)
def test_iec_wires(
    row: str, legs: int, neutral: str | None, ground: str, metal: str, temperatures: tuple[float, ...]
) -> None:
    wiring = line_of(IEC + f"  {row}  20 m method C\n", "HV F1").wiring
    assert (wiring.legs, wiring.neutral, wiring.ground) == (legs, neutral, ground)
    assert (wiring.metal, wiring.temperatures_c) == (metal, temperatures)


def test_shared_wires_are_those_of_all_their_circuits() -> None:
    text = LOW + (
        "panel LP-2 208Y/120  bus 125 A, main 100 A, spaces 12\n"
        '  1  20 A 1p  1 kVA process tied "A"  3#12 + N #12 + G #12 Cu THWN-2  20 m  in 3/4 inch EMT\n'
        '  3  20 A 1p  1 kVA process tied "B"  with 1\n  5  20 A 1p  1 kVA process tied "C"  with 1\n'
        "feeder MSB -> LP-2  100 A 3p\n"
    )
    line = line_of(text, "LP-2 1")
    assert (line.wiring.legs, line.wiring.neutral) == (3, "12")
    assert line.laid is not None and line.laid.loaded == 3, "NEC 310.15(E)(1): the common neutral is not counted"


@pytest.mark.parametrize(
    ("board", "feeder", "loaded"),
    [
        # NEC 310.15(E), from memory: two legs of a wye count their neutral, a centre-tapped winding does not.
        ("panel P 208Y/120 1ph  bus 100 A", "MSB[AB] -> P", 3),
        ("panel P 208Y/120  bus 100 A", "MSB -> P", 3),
        ('panel P 208Y/120  bus 100 A\n  1  20 A 1p  1 kVA it "Rack"', "MSB -> P", 4),
    ],
)
def test_which_neutral_counts(board: str, feeder: str, loaded: int) -> None:
    poles = 2 if "[" in feeder else 3
    text = LOW + board + f"\nfeeder {feeder}  100 A {poles}p  {poles}#3 + N #3 + G #8 Cu THWN-2  9 m  in 2 inch EMT\n"
    analysis = model(text)
    line = feeder_line(analysis.view, analysis.model.feeders["MSB -> P"])
    assert line is not None
    laid = laid_with(line, current_of(analysis.view, line))
    assert laid is not None and laid.loaded == loaded


def test_purposes() -> None:
    text = US + (
        "motor P-1 460 3ph  10 hp\nfeeder MSB -> P-1  35 A 3p  3#10 + G #10 Cu THWN-2  9 m  in 1 inch EMT\n"
        "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n"
        "feeder MSB -> TX-1  60 A 3p  3#4 + G #8 Cu THWN-2  9 m  in 1 inch EMT\n"
        "panel LP-2 208Y/120  bus 125 A, main 125 A\n"
        "feeder TX-1 -> LP-2  3#1 + N #1 + G #6 Cu THWN-2  2 m  in 2 inch EMT\n"
    )
    analysis = model(text)
    found = {}
    for key, feeder in analysis.model.feeders.items():
        line = feeder_line(analysis.view, feeder)
        assert line is not None
        found[key] = purpose_of(analysis.view, line, current_of(analysis.view, line))
    assert found == {
        "UTIL -> MSB": Purpose.SERVICE,
        "MSB -> P-1": Purpose.MOTOR,
        "MSB -> TX-1": Purpose.PLAIN,
        "TX-1 -> LP-2": Purpose.SECONDARY,
    }


def test_a_missing_insulation_is_a_gap_only_where_it_decides() -> None:
    """60 degC is the least a wire may have: what holds by that column holds by any."""
    wires = "3#3 + N #3 + G #8 Cu  20 m  in 1-1/4 inch EMT\n"
    assert rules_of(US + PANEL + "feeder MSB -> LP-1  80 A 3p  " + wires.replace("G #8", "G #6")) == []
    hot = wires.replace("EMT", "EMT, ambient 45 degC")
    assert rules_of(US + PANEL + "feeder MSB -> LP-1  90 A 3p  " + hot) == ["installation-method-missing"]


def test_a_project_gives_a_row_its_own_value() -> None:
    """The row reaches the rules through the view's tables."""
    from wyeline_linter.configuration import Configuration, StatedOverride

    text = US + PANEL + "feeder MSB -> LP-1  110 A 3p  3#3 + N #3 + G #6 Cu THWN-2  20 m  in 1-1/4 inch EMT\n"
    assert rules_of(text) == ["wire-underprotected"]
    own = Override("ampacity", "3 Cu 75 degC", 112.0, "maker's cable, letter 4")
    configuration = Configuration(overrides=(StatedOverride(own, "us-2023", 0),))
    assert Analysis("/m/site.wye", Files(lambda _: text), "/m", None, configuration).findings() == []


EDITS = [
    "raceway R-7 2-1/2 inch EMT  30 m\n",
    "raceway R-7 1 inch EMT  30 m\n",
    "raceway R-7 2-1/2 inch EMT  30 m, ambient 50 degC\n",
    "feeder MSB -> LP-2  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n",
    "feeder MSB -> LP-2  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in 1-1/4 inch EMT\n",
    "panel LP-2 480Y/277  bus 125 A, main lugs\n",
    "panel LP-2 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n",
    "switchboard MSB 480Y/277  bus 400 A, main 400 A\n",
]


def test_lines_follow_every_edit() -> None:
    """What is kept of a line goes with what it was built from: raceway, neighbours, both ends."""
    text = (
        US
        + PANEL
        + PANEL.replace("LP-1", "LP-2")
        + "raceway R-7 2 inch EMT  30 m\n"
        + (
            "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n"
            "feeder MSB -> LP-2  90 A 3p  3#3 + N #3 + G #8 Cu THWN-2  30 m  in R-7\n"
        )
    )
    files = Files(lambda _: text)
    analysis = Analysis("/m/site.wye", files, "/m")
    analysis.findings()
    seen = set()
    for edit in EDITS:
        head = edit.split("  ")[0].split(" ")[:2] if not edit.startswith("feeder") else edit.split("  ")[0].split(" ")
        lines = text.splitlines(keepends=True)
        at = next(i for i, row in enumerate(lines) if row.split(" ")[: len(head)] == head)
        lines[at] = edit
        text = "".join(lines)
        analysis.edited(*files.get("/m/site.wye").replace_text(text))
        fresh = [(f.rule, f.message, f.found) for f in model(text).findings()]
        assert [(f.rule, f.message, f.found) for f in analysis.findings()] == fresh, edit
        seen.update(rule for rule, _, _ in fresh)
    assert {"raceway-overfilled", "bundled-not-derated", "termination-too-hot"} <= seen


@pytest.mark.parametrize(
    ("basis", "system", "factor"),
    # NEC 690.8(B) and 705.28, from memory; IEC 60364-7-712 asks for its factor on the side of the modules, from memory.
    [("us-2023", "480Y/277", 1.25), ("iec", "400Y/230", 1.0)],
)
def test_what_an_inverter_delivers_is_continuous_under_the_nec_only(basis: str, system: str, factor: float) -> None:
    volts = system.partition("Y")[0]
    text = (
        f'project "Weir"\n  basis {basis}\nutility NET {system}  fault 20 kA, x/r 5\n'
        f"switchboard DP {system}  bus 400 A\nfeeder NET -> DP  400 A 3p\n"
        f"inverter PV-1 {volts} 3ph  60 kW, grid-following\nfeeder DP -> PV-1  125 A 3p\n"
    )
    view = Analysis("/m/site.wye", Files(lambda _: text), "/m").view
    state = view.state("DP")
    assert state is not None and isinstance(state.arriving, Known)
    current = feeder_current(view, view.model.equipment["PV-1"], state.arriving.system)
    assert current.design_a == pytest.approx(60_000 / float(volts) / 3**0.5)
    assert current.sizing_a == pytest.approx(factor * 60_000 / float(volts) / 3**0.5)


@pytest.mark.parametrize(
    ("row", "loaded", "amps"),
    [
        # IEC 60364-5-52 Tables B.52.2 and B.52.4, 2.5 mm2 Cu PVC on a wall (C): two loaded conductors, three.
        ("F1[L1]  16 A 1p+N curve B  1 kW heating  3G2.5mm2 Cu PVC", 2, 27.0),
        ("F1      16 A 3p curve B  1 kW heating  5G2.5mm2 Cu PVC", 3, 24.0),
    ],
)
def test_two_loaded_conductors_carry_more_than_three(row: str, loaded: int, amps: float) -> None:
    line = line_of(IEC + f"  {row}  20 m method C\n", "HV F1")
    assert line.laid is not None and line.laid.loaded == loaded
    held = bounds(line.tables, line.wiring, line.laid)
    assert not isinstance(held, NotListed)
    assert held[0].amps == held[1].amps == amps


@pytest.mark.parametrize(("written", "amps"), [("60 A fuse gG", 60.0), ("60 A, fused", 60.0), ("60 A", None)])
def test_a_disconnect_ends_a_line_in_a_device_where_it_has_fuses(written: str, amps: float | None) -> None:
    text = US + f"disconnect DS-1  {written}\nfeeder MSB -> DS-1  3#6 + G #10 Cu THWN-2  20 m  in 1 inch EMT\n"
    assert first_device_a(line_of(text, "MSB -> DS-1")) == amps
