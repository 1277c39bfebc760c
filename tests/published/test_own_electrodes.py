"""Boards with an earth electrode of their own behind TN supplies, held to Ohm's law in the way of IEC 60364-4-41 411.5
(U0 over the loop through R_A and R_B; R_A times the residual current at most 50 V) and to the arrangements of IEC
60364-1 312.2. Both clauses from memory; voltage factors of IEC 60909-0 Table 1 (1.05, 0.95)."""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.fixing import apply_edits
from wyeline_linter.repair import solve
from wyeline_linter.sizing.lines import Proposal, size_feeder
from wyeline_linter.studies.case import Case

SITE = """wye 1
project "Garden"
  basis iec
  frequency 50 Hz, ambient 30 degC, revision "A"
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 1, {source}
panel HV 400Y/230  bus 63 A, incomer switch, rated 15 kA
feeder NETT -> HV  63 A 4p fuse gG  4x16mm2 + PE 16mm2 Cu XLPE  10 m method C
panel HUT 400Y/230  bus 63 A, incomer switch, rated 10 kA{board}
  F1[L1]  16 A 1p+N curve B{rcd}  1 kW receptacle  "Garden house"  3G2.5mm2 Cu PVC  10 m method C
feeder HV -> HUT  32 A 4p curve C  {wires} Cu XLPE  40 m method C
"""
ALONE = ", earthing TT, resistance {ohm} ohm"


def analysis(
    source: str = "earthing TN-S, source-resistance 2 ohm",
    board: str = ALONE.format(ohm=50),
    rcd: str = ", rcd 30 mA",
    wires: str = "4x6mm2",
    basis: str = "iec",
) -> Analysis:
    text = SITE.format(source=source, board=board, rcd=rcd, wires=wires).replace("basis iec", f"basis {basis}")
    return Analysis("/m/model.wye", Files(lambda _: text), "/m")


def rules(found: Analysis) -> list[str]:
    """What is told, but for housings ahead of RCDs: `test_tt_systems` is about these."""
    return [f.rule for f in found.all_findings() if f.rule != "tt-housing-ahead-of-rcd"]


def supply_ohm(volts: float, amperes: float) -> complex:
    return volts / amperes * complex(1, 1) / math.sqrt(2)


@pytest.mark.parametrize(
    ("source", "r_b"),
    [
        ("earthing TN-S, source-resistance 2 ohm", 2.0),
        ("earthing TN-C-S, resistance 3 ohm", 3.0),  # the one electrode that a TN system has is that of its source
        ("earthing TT, resistance 20 ohm, source-resistance 2 ohm", 2.0),
    ],
)
@pytest.mark.parametrize("r_a", [0.5, 50.0, 1600.0])
def test_faults_behind_an_electrode_by_hand(source: str, r_b: float, r_a: float) -> None:
    found = analysis(source, ALONE.format(ohm=r_a))
    study = found.view.studies.normal
    for largest, amperes, c in ((True, 10e3, 1.05), (False, 6e3, 0.95)):
        view = study.largest if largest else study.smallest
        lines = study.built(Case.MAX if largest else Case.MIN).lines
        wires = [lines[key].leg or 0j for key in ("NETT -> HV", "HV -> HUT")]
        volts = c * 400 / math.sqrt(3)
        net = supply_ohm(volts, amperes)
        at = view.at("HUT")
        assert at["line-neutral"].amperes == pytest.approx(volts / abs(net + 2 * sum(wires)), rel=1e-5)
        assert at["line-ground"].amperes == pytest.approx(volts / abs(net + sum(wires) + r_a + r_b), rel=1e-5)
        # The PE of the board ahead brings its faults back as before; in TT, the electrode of the supply's parts does.
        back = wires[0] if "TN" in source else wires[0] + 20 + r_b
        assert view.at("HV")["line-ground"].amperes == pytest.approx(volts / abs(net + wires[0] + back), rel=1e-5)


@pytest.mark.parametrize("source", ["earthing TN-S", "earthing TT, resistance 20 ohm"])
def test_what_is_not_written_of_the_source_leaves_earth_faults_alone_unknown(source: str) -> None:
    study = analysis(source).view.studies.normal
    assert "line-ground" not in study.smallest.at("HUT")
    assert "source's own electrode" in study.smallest.reasons("HUT", kind="line-ground")[0]
    assert study.smallest.at("HUT")["line-neutral"].amperes
    # The largest is bounded by the board's electrode alone.
    assert study.largest.at("HUT")["line-ground"].amperes == pytest.approx(1.05 * 230.94 / 50, rel=0.005)


def test_the_smallest_fault_to_neutral_of_a_tt_supply_is_its_loop() -> None:
    """Nothing of an electrode is in it: U0 over supply, leg and neutral."""
    study = analysis("earthing TT", board="", wires="5G6mm2").view.studies.normal
    wires = [study.built(Case.MIN).lines[key].leg or 0j for key in ("NETT -> HV", "HV -> HUT")]
    volts = 0.95 * 400 / math.sqrt(3)
    by_hand = volts / abs(supply_ohm(volts, 6e3) + 2 * sum(wires))
    assert study.smallest.at("HUT")["line-neutral"].amperes == pytest.approx(by_hand, rel=1e-5)


@pytest.mark.parametrize(
    ("ohm", "rcd", "found"),
    # 50 V / 30 mA = 1667 ohm, 50 V / 0.3 A = 166.7 ohm.
    [
        (1660, ", rcd 30 mA", []),
        (1670, ", rcd 30 mA", ["tt-needs-rcd"]),
        (50, "", ["tt-needs-rcd"]),
        (2, "", ["tt-needs-rcd"]),
    ],
)
def test_residual_current_devices_behind_it(ohm: float, rcd: str, found: list[str]) -> None:
    assert rules(analysis(board=ALONE.format(ohm=ohm), rcd=rcd)) == found


_OF_THE_SUPPLY = {"earth-fault-indicator-missing", "it-second-fault-too-weak", "pen-conductor-bad"}


@pytest.mark.parametrize(
    ("given", "found"),
    [
        ({}, []),
        ({"wires": "5G6mm2"}, ["earth-beside-own-electrode"]),
        ({"wires": "4x6mm2 + PE 6mm2"}, ["earth-beside-own-electrode"]),
        ({"wires": "3x16mm2 + PEN 16mm2", "source": "earthing TN-C"}, ["earth-beside-own-electrode"]),
        ({"board": "", "wires": "5G6mm2"}, []),
        ({"board": ""}, ["equipment-ground-missing"]),
        ({"board": ", earthing TN-S", "wires": "5G6mm2"}, ["board-earthing-unfit"]),
        ({"board": ", resistance 50 ohm", "wires": "5G6mm2"}, ["board-electrode-unused"]),
        ({"board": ", earthing TT"}, ["own-electrode-unknown"]),
        ({"source": "earthing TT, resistance 20 ohm", "board": ", earthing TN-S", "wires": "5G6mm2"},
         ["board-earthing-unfit"]),
        ({"source": "earthing IT", "wires": "5G6mm2"}, ["board-earthing-unfit"]),
    ],
)  # fmt: skip
def test_what_is_told(given: dict[str, str], found: list[str]) -> None:
    told = [r for r in rules(analysis(**given)) if r not in _OF_THE_SUPPLY]
    assert told == found


def test_a_us_model_is_told_that_earth_is_no_way_back() -> None:
    found = [f for f in analysis(basis="us-2023").all_findings() if f.rule == "board-earthing-unfit"]
    assert len(found) == 1
    assert "NEC" in found[0].message


@pytest.mark.parametrize(
    ("old", "new", "volts_over"),
    [("resistance 50 ohm", "resistance 60 ohm", 62), ("source-resistance 2", "source-resistance 7", 57)],
)
def test_an_edit_of_an_electrode_changes_the_fault(old: str, new: str, volts_over: float) -> None:
    """In a model that stands, and as a fresh check has it."""
    text = SITE.format(
        source="earthing TN-S, source-resistance 2 ohm", board=ALONE.format(ohm=50), rcd="", wires="4x6mm2"
    )
    files = Files(lambda _: text)
    found = Analysis("/m/model.wye", files, "/m")
    before = found.view.studies.normal.smallest.at("HUT")["line-ground"].amperes
    assert before == pytest.approx(0.95 * 230.94 / 52, rel=0.01)
    found.edited(*files.get("/m/model.wye").replace_text(text.replace(old, new)))
    after = found.view.studies.normal.smallest.at("HUT")["line-ground"].amperes
    assert after == pytest.approx(0.95 * 230.94 / volts_over, rel=0.01)


def test_an_edit_that_takes_the_electrode_away_brings_tn_back() -> None:
    text = SITE.format(source="earthing TN-S", board=ALONE.format(ohm=50), rcd="", wires="5G6mm2")
    files = Files(lambda _: text)
    found = Analysis("/m/model.wye", files, "/m")
    assert rules(found) == ["tt-needs-rcd", "earth-beside-own-electrode"]
    found.edited(*files.get("/m/model.wye").replace_text(text.replace(ALONE.format(ohm=50), "")))
    fresh = rules(analysis("earthing TN-S", board="", rcd="", wires="5G6mm2"))
    assert rules(found) == fresh == ["rcd-or-gfci-missing"]


@pytest.mark.parametrize(("board", "wires"), [(ALONE.format(ohm=50), "4x"), ("", "5G")])
def test_a_size_for_its_feeder_has_no_pe(board: str, wires: str) -> None:
    text = SITE.format(source="earthing TN-S", board=board, rcd=", rcd 30 mA", wires="4x6mm2").replace(
        "  4x6mm2 Cu XLPE  40 m", "  40 m"
    )
    found = Analysis("/m/model.wye", Files(lambda _: text), "/m")
    made = size_feeder(found.view, found.model.feeders["HV -> HUT"])
    assert isinstance(made, Proposal)
    assert wires in apply_edits(text, made.fix().edits).splitlines()[-1]


BESIDE = """panel UV 400Y/230  bus 63 A, incomer switch, rated 10 kA
feeder HV -> UV  32 A 4p  5G10mm2 Cu XLPE  9 m method C
panel PIER 400Y/230  bus 63 A, incomer 32 A, rated 10 kA{board}
"""


@pytest.mark.parametrize(("board", "wires"), [(ALONE.format(ohm=50), "4x"), ("", "5G")])
def test_a_proposed_feeder_has_no_pe(board: str, wires: str) -> None:
    site = SITE.format(source="earthing TN-S", board="", rcd=", rcd 30 mA", wires="5G6mm2")
    text = site + BESIDE.format(board=board)
    found = Analysis("/m/model.wye", Files(lambda _: text), "/m")
    lines = apply_edits(text, solve(found.view, "HV", "PIER")[0].edits).splitlines()
    (line,) = (row for row in lines if row.startswith("feeder HV") and "PIER" in row)
    assert wires in line


def test_leaving_out_what_a_board_cannot_have_leaves_no_electrode_behind() -> None:
    for given in ({"source": "earthing IT", "wires": "5G6mm2"}, {"basis": "us-2023"}):
        found = analysis(**given)
        (told,) = (f for f in found.all_findings() if f.rule == "board-earthing-unfit")
        text = apply_edits(found.files.get("/m/model.wye").text, told.fixes[0].edits)
        assert "resistance 50 ohm" not in text
        assert "earthing TT" not in text


def test_the_earth_of_an_inverter_hangs_on_the_electrode_of_the_board_that_it_delivers_to() -> None:
    """An inverter that follows the grid brings no earth of a supply along, and makes no system whose metal parts would
    want an electrode (IEC 60364-4-41 411.5.1, 60364-7-712, from memory)."""
    text = SITE.format(source="earthing TT", board="", rcd=", rcd 30 mA", wires="4x6mm2 + PE 6mm2")
    text = text.replace("rated 15 kA", "rated 15 kA, earthing TT, resistance 50 ohm").replace(" + PE 16mm2", "")
    text += "inverter PV 400Y/230  5 kVA, limit 1.1 pu, grid-following\n"
    text += "feeder PV -> HV  16 A 4p  5G4mm2 Cu XLPE  9 m method C\n"
    told = {f.rule for f in Analysis("/m/model.wye", Files(lambda _: text), "/m").findings()}
    assert not told & {"earth-beside-own-electrode", "own-electrode-unknown"}
    brought = text.replace("4x16mm2 Cu", "5G16mm2 Cu")
    told = {f.rule for f in Analysis("/m/model.wye", Files(lambda _: brought), "/m").findings()}
    assert "earth-beside-own-electrode" in told
