"""Demands that were measured, against NEC 220.87 worked by hand (its text read at symmetryace.com, "NEC Code
Requirement": the highest demand of a year, or of 30 days, at 125 percent plus the new load)."""

from __future__ import annotations

from math import sqrt
from pathlib import Path

import pytest
from load_models import amps, analysed, viewed

from wyeline_linter.cli import main
from wyeline_linter.connected_load import load_below
from wyeline_linter.findings import Severity
from wyeline_linter.loads.demand_shares import DemandShares
from wyeline_linter.loads.leaf_loads import leaf_loads
from wyeline_linter.loads.sheets import load_figure
from wyeline_linter.network import scenario_state
from wyeline_linter.protection.currents import feeder_current
from wyeline_linter.view import View

SITE = (
    'project "Library"\n  basis BASIS\nutility U SYSTEM  fault 10 kA, x/r 4\nfeeder IN: U -> MDP  225 A 3p  existing\n'
    "panel MDP SYSTEM  bus 225 A, main 225 A, existing, MEASURED\n"
)
US, IEC = ("us-2023", "208Y/120"), ("iec", "400Y/230")


def text_of(measured: str, *rows: str, practice: tuple[str, str] = US) -> str:
    text = SITE.replace("BASIS", practice[0]).replace("SYSTEM", practice[1]).replace("MEASURED", measured)
    return text + "".join(f"{row}\n" for row in rows)


def site(measured: str, *rows: str, practice: tuple[str, str] = US) -> View:
    return viewed(text_of(measured, *rows, practice=practice))


def sized_va(view: View, name: str = "MDP") -> float:
    sizing = view.loads.counted(name).sizing
    assert sizing is not None
    return sizing.va.real


def rules_of(measured: str, *rows: str, practice: tuple[str, str] = US) -> set[str]:
    return {finding.rule for finding in analysed(text_of(measured, *rows, practice=practice)).findings()}


NEW = ("  2,4,6  50 A 3p  12 kW heating new", "  1  20 A 1p  1 kVA lighting new", "  7,9,11  20 A 3p  5 hp motor")


def test_the_measurement_at_125_percent_and_what_is_new() -> None:
    """220.87(2): 1.25 x 86 A x 208 V x sqrt(3) = 38,729 VA. New by Articles 215 and 430: 12,000 VA of heat, 1250 VA of
    lighting (125 %), a motor of 16.7 A (Table 430.250) at 125 % (430.24)."""
    view = site("measured 86 A, measured-over 365 d", *NEW)
    motor = sqrt(3) * 208 * 16.7
    by_hand = 1.25 * sqrt(3) * 208 * 86 + 12_000 + 1.25 * 1000 + 1.25 * motor
    assert sized_va(view) == pytest.approx(by_hand, rel=1e-4)
    assert amps(view, "MDP", "sizing")[0] == pytest.approx(
        1.25 * 86 + 12_000 / (sqrt(3) * 208) + 1.25 * 1000 / 120.09 + 1.25 * 16.7, rel=1e-3
    )
    assert abs(view.loads.counted("MDP").demand.va) == pytest.approx(
        sqrt(3) * 208 * 86 + 13_000 + 0.85 * motor, rel=0.03
    ), "what flows is the measurement itself"
    system = view.loads.system("MDP")
    assert system is not None
    current = feeder_current(view, view.model.equipment["MDP"], system)
    assert current.sizing_a == pytest.approx(amps(view, "MDP", "sizing")[0]), "what wires and devices are held against"


def test_what_stands_is_within_the_measurement_whatever_it_says() -> None:
    """A circuit, a motor and a board that stand already count in the measurement only, known or not; a large motor that
    stands gives no quarter of itself (430.24 is of the new ones)."""
    alone = sized_va(site("measured 86 A, measured-over 365 d", *NEW))
    view = site(
        "measured 86 A, measured-over 365 d",
        *NEW,
        "  3  20 A 1p  1.4 kVA lighting existing",
        "  5  20 A 1p  existing",
        "feeder MDP -> PUMP  100 A 3p  existing",
        "motor PUMP 200 3ph  25 hp, existing",
        "feeder MDP -> LP-2  100 A 3p  existing",
        "panel LP-2 208Y/120  bus 100 A, existing",
        "  1  20 A 1p  1.2 kVA receptacle existing",
        "  3  20 A 1p  existing",
    )
    assert sized_va(view) == pytest.approx(alone)
    assert not view.loads.nodes["MDP"].below.unknown and not view.loads.nodes["U"].below.unknown
    assert view.loads.nodes["LP-2"].below.unknown, "the feeder to a board behind is judged with its own load"


def test_what_is_new_adds_wherever_it_hangs() -> None:
    """900 VA on a board that stands, 3 kVA behind a transformer that stands, 2 kVA on a board whose feeder is new, with
    all that was on it before; in the sum, and in the load flow, in which all is counted once."""
    alone = sized_va(site("measured 86 A, measured-over 365 d"))
    behind = (
        "measured 86 A, measured-over 365 d",
        "feeder MDP -> LP-2  100 A 3p  existing",
        "panel LP-2 208Y/120  bus 100 A, existing",
        "  1  20 A 1p  1.2 kVA receptacle existing",
        "  3  20 A 1p  0.9 kVA receptacle",
        "feeder MDP -> TX-1  60 A 3p  existing",
        "transformer TX-1 208 3ph -> 480Y/277  15 kVA, existing",
        "feeder TX-1 -> LP-3  existing",
        "panel LP-3 480Y/277  bus 100 A, existing",
        "  1,3,5  20 A 3p  4 kVA heating existing",
        "  2,4,6  20 A 3p  3 kVA heating",
        "feeder MDP -> LP-4  60 A 3p",
        "panel LP-4 208Y/120  bus 100 A, existing",
        "  1  20 A 1p  1.1 kVA receptacle existing",
        "  3  20 A 1p  0.9 kVA receptacle",
    )
    view = site(*behind)
    assert sized_va(view) == pytest.approx(alone + 900 + 3000 + 2000)
    assert "standing-load-counts-as-new" in rules_of(*behind)
    loads, unknown = leaf_loads(view)
    assert not unknown
    flows = sum(load.demand_share * load.va for load in loads)
    assert abs(flows) == pytest.approx(abs(view.loads.counted("U").demand.va)) == pytest.approx(alone / 1.25 + 5900)
    shares = DemandShares(view.loads)
    on_board = shares.beyond("LP-2")
    assert on_board is not None and on_board.judged_va == pytest.approx(2100) and on_board.va == pytest.approx(1200)
    through = shares.beyond("LP-3")
    assert through is not None and through.judged_va == pytest.approx(7000) and through.va == pytest.approx(4000)


def test_a_measurement_below_a_measurement() -> None:
    """The board above has its own: 1.25 x 150 A and what is new on both; the one below 1.25 x 40 A and what is new."""
    view = site(
        "measured 150 A, measured-over 365 d",
        "  1  20 A 1p  1 kVA receptacle",
        "feeder MDP -> LP-2  100 A 3p  existing",
        "panel LP-2 208Y/120  bus 100 A, existing, measured 40 A, measured-over 30 d",
        "  1  20 A 1p  1.2 kVA receptacle existing",
        "  2,4,6  20 A 3p  3 kVA heating",
    )
    volts = sqrt(3) * 208
    assert sized_va(view, "LP-2") == pytest.approx(1.25 * 40 * volts + 3000, rel=1e-4)
    assert sized_va(view) == pytest.approx(1.25 * 150 * volts + 1000 + 3000, rel=1e-4)
    flows = sum(load.demand_share * load.va for load in leaf_loads(view)[0])
    assert abs(flows) == pytest.approx(150 * volts + 4000, rel=1e-4)


def test_iec_takes_the_measurement_as_it_is() -> None:
    """IEC 60364-3 and 60364-4-43 433.1 size by the design current, which a measurement is: no 125 % (from memory)."""
    shop = ("measured 86 A", "  2,4,6  20 A 3p  9 kW heating")
    assert sized_va(site(*shop, practice=IEC)) == pytest.approx(sqrt(3) * 400 * 86 + 9000, rel=1e-4)
    assert not {name for name in rules_of(*shop, practice=IEC) if name.startswith("measure")}


@pytest.mark.parametrize(
    ("system", "measured", "va"),
    [
        ("208Y/120", "86 A", sqrt(3) * 208 * 86),
        ("480Y/277", "86 A", sqrt(3) * 480 * 86),
        ("480 3ph", "86 A", sqrt(3) * 480 * 86),
        ("208Y/120", "31 kVA", 31_000.0),
        ("208Y/120", "27 kW, pf 0.9", 30_000.0),
    ],
)
def test_amperes_kva_and_kw(system: str, measured: str, va: float) -> None:
    """Three-phase volt-amperes are sqrt(3) U I, and kW over the power factor; on every leg alike."""
    view = site(f"measured {measured}, measured-over 365 d", practice=("us-2023", system))
    assert sized_va(view) == pytest.approx(1.25 * va, rel=1e-3)
    a, b, c = amps(view, "MDP", "demand")[:3]
    assert a == pytest.approx(b) == pytest.approx(c)


def test_two_legs_and_neutral() -> None:
    """120/240 V: 2 x 120 V x 70 A; nobody measured the neutral, so at worst 70 A of one leg return in it (220.61)."""
    view = viewed(
        SITE.replace("BASIS", "us-2023").replace("SYSTEM", "120/240").replace("3p", "2p")
        .replace("MEASURED", "measured 70 A, measured-over 365 d")
    )  # fmt: skip
    assert sized_va(view) == pytest.approx(1.25 * 240 * 70)
    assert amps(view, "MDP", "demand")[:2] == pytest.approx((70, 70))
    worst = load_figure(view, "MDP", "neutral").by_leg[0]
    assert worst.value == pytest.approx(70)


def test_a_high_leg_counts_between_the_legs() -> None:
    """240 V delta: sqrt(3) x 240 V x 86 A; a high leg has no load to neutral that would make it 208 V."""
    view = site("measured 86 A, measured-over 365 d", practice=("us-2023", "240/120 high-leg B"))
    assert sized_va(view) == pytest.approx(1.25 * sqrt(3) * 240 * 86)
    assert amps(view, "MDP", "demand")[:3] == pytest.approx((86, 86, 86))


def test_what_a_ups_draws_is_new_by_its_new_loads() -> None:
    """One that stands: of 4 kW behind it 1 kW is new, a quarter of what it draws. A new one: all of it. What stands
    behind it need not say what it draws."""
    alone = sized_va(site("measured 86 A, measured-over 365 d"))
    rows = (
        "measured 86 A, measured-over 365 d",
        "feeder MDP -> UPS-1  60 A 3p  existing",
        "ups UPS-1 208Y/120  15 kVA, eff 80 %, existing",
        "feeder UPS-1 -> RP-1  60 A 3p  existing",
        "panel RP-1 208Y/120  bus 100 A, existing",
        "  1,3,5  20 A 3p  3 kW heating existing",
        "  2,4,6  20 A 3p  1 kW heating",
    )
    new = sized_va(site(*rows)) - alone
    fresh = sized_va(site(*(row.replace(", eff 80 %, existing", ", eff 80 %") for row in rows))) - alone
    assert fresh == pytest.approx(4 * new) and new > 1.25 * 1000 / 0.8
    untold = site(*rows, "  7  20 A 1p  existing")
    assert not untold.loads.nodes["MDP"].below.unknown and untold.loads.nodes["UPS-1"].below.unknown


def test_what_comes_later_stays_beside_the_measurement() -> None:
    annex = ("feeder MDP -> LP-2  100 A 3p", "panel LP-2 208Y/120  bus 100 A, future", "  1  20 A 1p  1.5 kVA lighting")
    view = site("measured 86 A, measured-over 365 d", "  3  20 A 1p  1 kVA lighting existing", *annex)
    assert view.loads.nodes["MDP"].below.apart_va == pytest.approx(1500)
    assert sized_va(view) == pytest.approx(sized_va(site("measured 86 A, measured-over 365 d")))


def test_a_board_without_load_counts_as_nothing_new() -> None:
    """Nor has an inverter that is planned for later hidden anything from the measurement."""
    empty = ("feeder MDP -> LP-2  100 A 3p", "panel LP-2 208Y/120  bus 100 A, existing", "  1  20 A 1p  spare existing")
    assert "standing-load-counts-as-new" not in rules_of("measured 86 A, measured-over 365 d", *empty)
    later = ("inverter PV-1 208 3ph  20 kW, limit 1.1 pu, grid-following, future", "feeder MDP -> PV-1  70 A 3p")
    assert "measured-beside-generation" not in rules_of("measured 86 A, measured-over 45 d", *later)


def test_kilowatts_alone_are_no_current() -> None:
    bill = ("measured 27 kW, measured-over 365 d", *NEW)
    view = site(*bill)
    assert "power factor" in view.loads.nodes["U"].below.unknown[0]
    assert load_figure(view, "MDP", "sizing").value is None
    assert "measured-power-factor-missing" in rules_of(*bill)


def test_the_sheet_adds_up_line_by_line() -> None:
    view = site('measured 86 A, measured-over 45 d, measured-by "logger 7"', *NEW, "  3  20 A 1p  lighting existing")
    sheet = load_figure(view, "MDP", "sizing")
    line = sheet.steps[0]
    assert line.source == "NEC 2023 220.87" and line.value == pytest.approx(sqrt(3) * 208 * 86, rel=1e-4)
    assert "86 A over 45 days (logger 7)" in line.name and "* 1.25" in sheet.formula and "220.87" in sheet.source
    notes = " ".join(sheet.assumptions)
    assert "not counted again: circuits 3" in notes and "less than a year" in notes
    assert "counted beside the measurement: circuits 2,4,6; 1; 7,9,11" in notes


BEHIND = (
    "measured 86 A, measured-over 365 d",
    "  1  20 A 1p  1.2 kVA lighting existing",
    "  2,4,6  50 A 3p  12 kVA heating",
    "feeder MDP -> LP-2  100 A 3p  existing",
    "panel LP-2 208Y/120  bus 100 A, existing",
    "  1  20 A 1p  1.2 kVA receptacle existing",
    "  3  20 A 1p  0.9 kVA receptacle",
)


def test_a_first_size_of_what_feeds_it_counts_the_same() -> None:
    """What proposals of transformers begin with: 31 kVA that were measured, 12 and 0.9 kVA that are new."""
    rough = load_below(site(*BEHIND), "MDP")
    assert rough.va == pytest.approx(sqrt(3) * 208 * 86 + 12_900, rel=1e-4) and not rough.unknown


def test_a_schedule_sums_what_was_measured_and_what_is_new(tmp_path: Path) -> None:
    """The rows within the measurement show their loads and stand in no sum: 10,328 VA a leg, 4000 of heat, 900 on B."""
    model = tmp_path / "site.wye"
    model.write_text("wye 1\n" + text_of(*BEHIND))
    assert main(["report", str(model), "-o", str(tmp_path / "out"), "--only", "panel", "--format", "md"]) == 0
    lines = (tmp_path / "out" / "md" / "panel-MDP.md").read_text().splitlines()
    (old,) = (line for line in lines if line.startswith("| 1 |"))
    assert "within the measurement" in old and "1 200" in old
    (measured,) = (line for line in lines if "measured 86 A over 365 days" in line)
    (total,) = (line for line in lines if "Sum of the rows" in line)
    assert measured.count("10 328") == 3 and "14 328" in total and "15 228" in total
    (connected,) = (line for line in lines if "Connected, VA" in line)
    assert connected.count("14 328") == 2 and "15 228" in connected


def test_a_service_that_is_too_small_for_what_comes() -> None:
    """220.87(2): 1.25 x 150 A = 187.5 A; 12 kVA more are 33.3 A, 220.8 A on 225 A; 16 kVA more come to 231.9 A."""
    measured = "measured 150 A, measured-over 365 d"
    assert "board-overloaded" not in rules_of(measured, "  2,4,6  60 A 3p  12 kVA heating")
    assert "board-overloaded" in rules_of(measured, "  2,4,6  60 A 3p  16 kVA heating")
    assert "board-overloaded" in rules_of(measured + ", full-rated", "  2,4,6  60 A 3p  16 kVA heating")


def test_a_board_that_is_shed_or_runs_at_a_share() -> None:
    view = site(
        "measured 150 A, measured-over 365 d",
        "feeder MDP -> LP-2  100 A 3p  existing",
        "panel LP-2 208Y/120  bus 100 A, existing, measured 40 A, measured-over 30 d",
        'scenario "Night"\n  scale MDP 50 %\n  shed LP-2',
    )
    ((_, statement),) = view.model.scenarios
    night = scenario_state(view.model, statement)
    book = view.loads_in(night)
    assert abs(book.counted("U").demand.va) == pytest.approx(0.5 * sqrt(3) * 208 * 150, rel=1e-4)
    assert book.nodes["LP-2"].below.empty
    flows = sum(load.demand_share * load.va for load in leaf_loads(view, night)[0])
    assert abs(flows) == pytest.approx(0.5 * sqrt(3) * 208 * 150, rel=1e-4)


def test_a_factor_holds_for_what_is_new_alone() -> None:
    """A demand factor takes nothing off what is a demand already."""
    board = ("factor 0.5, measured 86 A, measured-over 365 d", "  2,4,6  50 A 3p  12 kW heating")
    assert sized_va(site(*board)) == pytest.approx(1.25 * sqrt(3) * 208 * 86 + 6000, rel=1e-4)
    assert "demand-applied-twice" not in rules_of(*board)


@pytest.mark.parametrize(
    ("over", "status", "severity"),
    [
        ("365 d", "existing", Severity.ERROR),
        ("365 d", "new", None),
        ("45 d", "existing", Severity.ERROR),
        ("45 d", "new", Severity.WARNING),
        ("", "existing", Severity.ERROR),
        ("", "new", None),
    ],
)
def test_generation_behind_a_measurement(over: str, status: str, severity: Severity | None) -> None:
    """The exception of 220.87, for recordings of less than a year, is for feeders and services without renewable
    generation; the demand of a year is not bound to that (from memory). Generation that stood there hid load from
    either."""
    rows = (
        f"inverter PV-1 208 3ph  20 kW, limit 1.1 pu, grid-following, {status}",
        f"feeder MDP -> PV-1  70 A 3p {status}",
    )
    found = analysed(text_of(f"measured 86 A{f', measured-over {over}' * bool(over)}", *rows)).findings()
    told = [finding.severity for finding in found if finding.rule == "measured-beside-generation"]
    assert told == ([] if severity is None else [severity])
