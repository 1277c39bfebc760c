"""Sizes with their reasons: every step says what asked for it, the rules find nothing against a size that was proposed,
and nothing is written unless asked for."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.findings import Severity
from wyeline_linter.fixing import apply_edits
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.sizing.asked import sizings
from wyeline_linter.sizing.lines import Proposal, size_feeder
from wyeline_linter.sizing.machines import size_generator, size_transformer
from wyeline_linter.sizing.prepared import NotSized
from wyeline_linter.sizing.steps import Demand, drop_percent, ground_for, sized
from wyeline_linter.tables import NotListed, basis

US = """project "Quarry"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
  drop-branch 3 %, drop-path 5 %
utility UTIL 480Y/277  fault 60 kA, fault-min 40 kA, x/r 6
feeder UTIL -> MSB
switchboard MSB 480Y/277  bus 2000 A, main 2000 A, rated 65 kA, lug-temp 75 degC, gfpe, gfpe-pickup 1200 A
  claim arc-energy-reduction
"""
IEC = """project "Quarry"
  basis iec
  frequency 50 Hz, ambient 30 degC
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S
feeder NETT -> HV
panel HV 400Y/230  bus 800 A, main 630 A, rated 15 kA
"""


def model(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def proposal(text: str, key: str) -> Proposal:
    analysis = model(text)
    made = size_feeder(analysis.view, analysis.model.feeders[key])
    assert isinstance(made, Proposal), made
    return made


def panel(main: str) -> str:
    return f"panel LP-1 480Y/277  bus 800 A, main {main}, lug-temp 75 degC\n"


@pytest.mark.parametrize(
    ("main", "feeder", "wires", "governs"),
    [
        ("100 A", "100 A 3p  20 m  in EMT", "3#3 + N #3 + G #8 Cu THWN-2", ["device"]),
        # 2 AWG carries 95 A in the 60 degC column, and 100 A is the next standard rating (NEC 110.14(C), 240.4(B)).
        ("100 A", "100 A 3p  20 m  in EMT  lug-temp 60 degC", "3#2 + N #2 + G #8", ["device", "terminals"]),
        ("100 A", "100 A 3p  20 m  in EMT  ambient 52 degC", "3#2 + N #2 + G #8", ["device", "ambient"]),
        # Two such circuits side by side: six wires at 80 % (NEC 310.15(C)(1)).
        ("100 A", "100 A 3p  20 m  in EMT  grouped 3", "3#2 + N #2 + G #8", ["device", "bundling"]),
        # Two of 250 kcmil carry 510 A at 75 degC, and 600 A is the next standard rating.
        ("600 A", "600 A 3p  20 m  in EMT", "2 sets 3x250kcmil + N 250kcmil + G #1", ["parallel sets", "device"]),
    ],
)
def test_what_governs(main: str, feeder: str, wires: str, governs: list[str]) -> None:
    made = proposal(US + panel(main) + f"feeder MSB -> LP-1  {feeder}\n", "MSB -> LP-1")
    assert made.wires.startswith(wires), (made.wires, made.reasons)
    for word in governs:
        assert any(word in reason for reason in made.reasons), made.reasons
    assert all("[" in r or "parallel" in r or "neutral" in r or "%" in r for r in made.reasons), "each names its row"


def test_drop_enlarges_wires_and_ground_in_proportion() -> None:
    """A longer run asks for thicker wires, and the ground grows with their area (NEC 250.122(B))."""
    load = "load KILN 480 3ph  40 kVA, heating, lug-temp 75 degC\n"
    near = proposal(US + load + "feeder MSB -> KILN  60 A 3p  20 m  in EMT\n", "MSB -> KILN")
    far = proposal(US + load + "feeder MSB -> KILN  60 A 3p  300 m  in EMT\n", "MSB -> KILN")
    assert near.wires == "3#6 + G #10 Cu THWN-2"
    assert any("drop" in r and "target 3 %" in r for r in far.reasons)
    # 1 AWG over 6 AWG is 83690 / 26240 = 3.19; times 10 AWG (10380) is 33100 circular mils: 4 AWG has 41740.
    assert far.wires == "3#1 + G #4 Cu THWN-2", far.reasons
    assert any("enlarged 3.19 times" in r for r in far.reasons)


CASES = [
    US + panel("225 A") + "feeder MSB -> LP-1  225 A 3p  40 m  in EMT\n",
    US + panel("1000 A").replace("bus 800 A", "bus 1000 A") + "feeder MSB -> LP-1  40 m  in PVC-40\n",
    US + "load KILN 480 3ph  70 kVA, heating continuous\nfeeder MSB -> KILN  60 m  in EMT\n",
    US + "load KILN 480 3ph  70 kVA, heating continuous\nfeeder MSB -> KILN  60 m  in EMT, ambient 45 degC\n",
    US + "motor P-1 460 3ph  40 hp, pf 0.86, eff 93 %\nfeeder MSB -> P-1  60 m  in RMC\n",
    US + "load RTU-1 460 3ph  mca 52 A, mocp 70 A, cooling\nfeeder MSB -> RTU-1  60 m  in EMT\n",
    US + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %, x/r 1.5\nfeeder MSB[AB] -> TX-1  60 m  in EMT\n",
    US + 'panel UP-1 480Y/277  bus 100 A, main 100 A\n  1  20 A 1p  3 kVA it continuous "A"\n'
    '  3  20 A 1p  3 kVA it continuous "B"\n  5  20 A 1p  3 kVA it continuous "C"\n'
    "feeder MSB -> UP-1  100 A 3p  30 m  in EMT\n",
    IEC + "panel UV-1 400Y/230  bus 250 A, incomer 200 A\nfeeder HV -> UV-1  60 m method C, grouped 3\n",
    IEC + "load KILN 400 3ph  30 kW, heating\nfeeder HV -> KILN  60 m method B2\n",
    IEC + "load KILN 400 3ph  9 kW, heating\nfeeder HV -> KILN  16 A 3p curve B  20 m method B2\n",
]


@pytest.mark.parametrize("text", CASES)
def test_what_is_proposed_serves(text: str) -> None:
    """Applied, the proposal leaves no finding, and sizing again changes nothing."""
    analysis = model(text)
    key = next(reversed([k for k in analysis.model.feeders if k.split(" -> ")[0] in ("MSB", "HV")]))
    made = proposal(text, key)
    assert made.changes and made.wires
    after = apply_edits(text, made.edits)
    left = [f"{f.rule}: {f.message}" for f in model(after).findings()]
    assert left == [], after
    assert not proposal(after, key).changes, after


def test_a_gap_with_its_fix_stands_for_wires_that_are_not_written() -> None:
    text = US + panel("100 A") + "feeder MSB -> LP-1  100 A 3p  40 m  in EMT\n"
    (finding,) = model(text).findings()
    assert (finding.rule, finding.severity) == ("wires-not-sized", Severity.GAP)
    after = apply_edits(text, finding.fixes[0].edits)
    assert "100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  40 m  in 1-1/4 inch EMT" in after
    assert model(after).findings() == []
    assert model(text.replace("  40 m  in EMT", "")).findings() == [], "a sketch without routes is left in peace"


@pytest.mark.parametrize(
    ("written", "after"),
    [("25 A 3p", "350 A 3p"), ("25A, 3p", "350 A, 3p"), ("0.025 kA 3p", "350 A 3p")],
)
def test_a_device_below_its_load_is_sized_with_its_wires(written: str, after: str) -> None:
    """325 A of load (270 kVA at 480 V) on 25 A: never wires for the load alone, and the poles stay."""
    text = US + panel("400 A").replace("main 400 A, ", "") + '  1,3,5  400 A 3p  270 kVA heating  "Kiln"\n'
    line = f"feeder MSB -> LP-1  {written}  3#12 + N #12 + G #12 Cu THWN-2  12 m  in 1 inch EMT\n"
    made = proposal(text + line, "MSB -> LP-1")
    assert made.device == "350 A" and "less than the 324.8 A" in " ".join(made.reasons)
    mended = apply_edits(text + line, made.edits)
    # NEC 310.16: 500 kcmil Cu carries 380 A at 75 degC, 400 kcmil 335 A; 240.6(A) lists 350 A.
    assert f"feeder MSB -> LP-1  {after}  3x" in mended
    (offered,) = (f for f in model(text + line).findings() if f.rule == "small-wire-limit")
    assert offered.fixes[0].title == made.title
    rules = {f.rule for f in model(mended).all_findings() if f.subject == "MSB -> LP-1"}
    assert not rules & {"small-wire-limit", "continuous-load-margin", "continuous-wire-margin", "ampacity-short"}


def test_a_smaller_device_keeps_its_poles() -> None:
    text = US + panel("100 A") + "feeder MSB -> LP-1  25 A 3p  3#12 + N #12 + G #12 Cu THWN-2  12 m  in 1 inch EMT\n"
    (found,) = (f for f in model(text).findings() if f.rule == "small-wire-limit")
    fix = next(f for f in found.fixes if f.title == "Make the device 20 A")
    assert "MSB -> LP-1  20 A 3p  3#12" in apply_edits(text, fix.edits)


def test_what_is_missing_is_said() -> None:
    text = IEC + "load KILN 400 3ph  30 kW, heating\nfeeder HV -> KILN  60 m\n"
    analysis = model(text)
    made = size_feeder(analysis.view, analysis.model.feeders["HV -> KILN"])
    assert isinstance(made, NotSized) and "method of installation" in made.reasons[0]


def test_a_ground_never_exceeds_its_wires() -> None:
    """NEC 250.122(A): a large device on small motor wires asks for no ground larger than these."""
    tables = basis("us-2023")
    found = sized(tables, "Cu", 90.0, Laid(30.0, 3, 75, 90.0), Demand(90.0, sizing_a=42.5, exempt=True))
    assert not isinstance(found, NotListed) and found.size == "8"
    ground = ground_for(tables, 90.0, "Cu", found)
    assert not isinstance(ground, NotListed) and ground.size == "8"


def test_larger_sizes_lose_less() -> None:
    tables = basis("us-2023")
    lost = drop_percent(tables, "Cu", amps=50, length_m=100, volts=480, legs=3, pf=0.9, conduit="steel")
    values = [lost(1, size) for size in ("8", "6", "4", "2", "1/0", "3/0")]
    assert all(a is not None and b is not None and a > b for a, b in pairwise(values))
    assert lost(2, "8") == pytest.approx((values[0] or 0) / 2)


def test_a_transformer_by_its_fullest_leg() -> None:
    text = US + (
        "transformer TX-1 480 3ph -> 208Y/120\nfeeder MSB -> TX-1  60 A 3p\nfeeder TX-1 -> LP-2  100 A 3p\n"
        'panel LP-2 208Y/120  bus 225 A\n  1  60 A 1p  6 kVA heating "A"\n  3  20 A 1p  1 kVA heating "B"\n'
    )
    analysis = model(text)
    made = size_transformer(analysis.view, analysis.model.equipment["TX-1"])
    assert made.need_va == pytest.approx(18e3, rel=0.01), "6 kVA on one leg asks for three times that"
    assert made.va == 30e3
    assert "30 kVA" in apply_edits(text, made.edits)


def test_a_generator_by_the_start_of_its_largest_motor() -> None:
    """dip = X'd S / (S_g + X'd S): 100 kVA of locked rotor, 20 % transient, 20 % dip: 0.2 x 100 x 4 = 80 kVA."""
    amps = 100e3 / (480 * 3**0.5)
    text = (
        'project "Quarry"\n  basis us-2023\ngenerator GEN 480Y/277  50 kVA, pf 0.8, transient 20 %, dip 20 %\n'
        f"motor P-1 460 3ph  15 hp, pf 0.85, eff 90 %, lra {amps:.3f} A\nfeeder GEN -> P-1  50 A 3p\n"
    )
    analysis = model(text)
    made = size_generator(analysis.view, analysis.model.equipment["GEN"])
    assert made.need_va == pytest.approx(80e3, rel=1e-3), made.reasons


def test_the_command_writes_only_on_request(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "site.wye"
    text = US + panel("100 A") + "feeder MSB -> LP-1  100 A 3p  40 m  in EMT\n"
    path.write_text(text, encoding="utf-8", newline="")
    assert main(["size", str(path), "MSB -> LP-1"]) == 0
    shown = capsys.readouterr().out
    assert "3#3 + N #3 + G #8 Cu THWN-2" in shown and "310.16" in shown and "--apply" in shown
    assert path.read_text(encoding="utf-8") == text
    assert main(["size", str(path), "--apply"]) == 0
    assert "in 1-1/4 inch EMT" in path.read_text(encoding="utf-8")
    assert main(["size", str(path), "LP-9"]) == 2


def test_a_new_system_comes_with_its_bonding_and_electrode_conductors() -> None:
    """250 A asks for 250 kcmil (255 A; no next size up there), which asks for 2 AWG (NEC 250.66, 250.102(C)(1))."""
    from wyeline_linter.sizing.plain import earthing_of

    analysis = model(US + panel("250 A"))
    board = analysis.model.equipment["LP-1"]
    found = earthing_of(analysis.view, 250.0, board)
    assert found is not None and found.electrode == "#2"
    assert "250kcmil" in found.text and "jumper #2," in found.text and "electrode conductor #2 " in found.text
    assert earthing_of(model(IEC).view, 250.0, None) is None


def test_wires_grow_until_they_bear_the_fault_that_a_delay_lets_through() -> None:
    """S = I sqrt(t) / k (IEC 60364-4-43 434.5.2): the rule's own example, 16 mm2 behind 63 A, with 0.4 s."""
    from wyeline_linter.protection.lines import feeder_line
    from wyeline_linter.protection.withstand import withstand_of
    from wyeline_linter.rules.fault_times import THERMAL

    analysis = model(THERMAL.wrong)
    feeder = analysis.model.feeders["HV -> UV-1"]
    line = feeder_line(analysis.view, feeder)
    asked = withstand_of(analysis.view, line) if line is not None else None
    assert asked is not None and asked.seconds == 0.4
    assert asked.k == pytest.approx(143, abs=1)  # copper in XLPE (IEC 60364-4-43 Table 43A)
    assert asked.least_mm2 == pytest.approx(asked.amps * 0.4**0.5 / asked.k)
    found = size_feeder(analysis.view, feeder, faults=True)
    assert isinstance(found, Proposal) and any("fault withstand" in reason for reason in found.reasons)
    least = min(size for size in (25, 35, 50, 70, 95) if size >= asked.least_mm2)
    assert f"4x{least}mm2" in found.wires


def test_a_generator_behind_a_transfer_switch_is_sized_without_a_scenario_being_written() -> None:
    """Its load is that of the state in which the switch stands on its input."""
    analysis = model(
        "utility UTIL 480Y/277  fault 20 kA, fault-min 9 kA, x/r 4\ngenerator EG 480Y/277  pf 0.8\n"
        "transfer ATS-1  100 A 4p\npanel EP-1 480Y/277  bus 100 A, main 100 A\n  1,3,5  30 A 3p  20 kVA process\n"
        "feeder UTIL -> ATS-1.normal  100 A 3p\nfeeder EG -> ATS-1.emergency  100 A 3p\nfeeder ATS-1 -> EP-1\n"
    )
    (made,) = [s for s in sizings(analysis, "EG") if s.machine]
    assert made.sized and made.reasons[0] == "in the switch state with ATS-1 on emergency"
    assert any(reason.startswith("20 kVA") for reason in made.reasons)
