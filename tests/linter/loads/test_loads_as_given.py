"""Loads as drafters write them become volt-amperes; what is missing stays unknown with its reason."""

from __future__ import annotations

import math

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.load_figures import load_figures
from wyeline_linter.loads.balance import MOST_MOVES, swaps, unbalance
from wyeline_linter.loads.leaf_loads import leaf_loads
from wyeline_linter.network import scenario_state
from wyeline_linter.view import View

US = 'project "X"\n  basis us-2023\n'
BOARD = "utility U 480Y/277  fault 20 kA, x/r 6\nswitchboard P 480Y/277  bus 800 A\nfeeder U -> P  800 A 3p\n"


def viewed(text: str) -> View:
    return Analysis("/m/model.wye", Files(lambda _: "wye 1\n" + text), "/m").view


def connected(text: str, name: str = "P") -> complex:
    view = viewed(text)
    assert not view.loads.nodes[name].below.unknown
    return view.loads.counted(name).connected.va


@pytest.mark.parametrize(
    ("circuit", "va"),
    [
        ("1  20 A 1p  1.2 kVA lighting", 1200),
        ("1  20 A 1p  180 VA count 6 receptacle", 1080),
        ("1,3,5  20 A 3p  8 kW process pf 0.8", 8000 + 6000j),
        ("1,3,5  20 A 3p  8 kW process pf 0.8 leading", 8000 - 6000j),
        ("1,3,5  20 A 3p  draws 10 A heating", 10 * 480 * math.sqrt(3)),
        ("1  20 A 1p  draws 10 A lighting", 10 * 480 / math.sqrt(3)),
        ("1,3,5  30 A 3p  7.46 kW motor eff 90 % pf 0.8", 7460 / 0.9 * (1 + 0.75j)),
        ("1,3  20 A 2p  leg A 1.2 kVA, leg B 0.9 kVA, lighting", 2100),
        ("1  20 A 1p  spare", 0),
        ("1  20 A 1p  2 kVA lighting future", 0),
    ],
)
def test_a_circuit(circuit: str, va: complex) -> None:
    assert connected(BOARD.replace("feeder U", f"  {circuit}\nfeeder U")) == pytest.approx(va)


def test_motor_flows_by_nameplate_and_is_sized_by_the_table() -> None:
    """25 hp, 460 V: 34 A (NEC 430.250); drawn 18642 W / 0.93 / 0.85 at 480 V is 28.4 A."""
    view = viewed(US + BOARD + "motor M 460 3ph  25 hp, pf 0.85, eff 93 %\nfeeder P -> M  70 A 3p\n")
    counted = view.loads.counted("M")
    assert abs(counted.demand.amps[0]) == pytest.approx(18642.5 / 0.93 / 0.85 / 480 / math.sqrt(3), rel=1e-4)
    assert counted.sizing is not None and abs(counted.sizing.amps[0]) == pytest.approx(1.25 * 34)


def test_of_several_motors_a_quarter_more_counts_for_one() -> None:
    """NEC 430.24 and Table 430.250: three of 10 hp at 460 V, 14 A each: 42 A and 3.5 A, in amperes and volt-amperes."""
    view = viewed(US + BOARD + "motor M 460 3ph  10 hp, pf 0.85, eff 90 %, count 3\nfeeder P -> M  70 A 3p\n")
    sizing = view.loads.counted("M").sizing
    assert sizing is not None and abs(sizing.amps[0]) == pytest.approx(45.5)
    assert abs(sizing.va) == pytest.approx(45.5 * 480 * math.sqrt(3))


def test_nameplate_mca_holds_its_quarter_already() -> None:
    view = viewed(US + BOARD + "load C 460 3ph  mca 62 A, mocp 80 A, cooling continuous\nfeeder P -> C  80 A 3p\n")
    sizing = view.loads.counted("P").sizing
    assert sizing is not None and abs(sizing.amps[0]) == pytest.approx(62.0)


def test_a_heater_of_another_nameplate_follows_the_voltage() -> None:
    """220 V heater on 208 V: 89.4 % (closed form, (V/Vn) squared)."""
    text = "utility U 208Y/120  fault 10 kA, x/r 4\nfeeder U[AB] -> H  40 A 2p\nload H 220 1ph  6 kW, heating\n"
    assert connected(text, "H") == pytest.approx(6000 * (208 / 220) ** 2)


def test_converters_draw_their_output_over_their_efficiency() -> None:
    """9 kW out of 94 %, 10 % of 20 kVA to recharge, input power factor 0.95: balanced on three legs."""
    text = BOARD + "ups UPS 480 3ph -> 208Y/120  20 kVA, eff 94 %, recharge 10 %\nfeeder P -> UPS  40 A 3p\n"
    text += "panel Q 208Y/120  bus 100 A\n  1  100 A 1p  9 kW it\nfeeder UPS -> Q  60 A 3p\n"
    view = viewed(text)
    va = view.loads.counted("P").connected.va
    assert va.real == pytest.approx(9000 / 0.94 + 2000)
    assert va.real / abs(va) == pytest.approx(0.95)
    amps = view.loads.counted("P").connected.amps
    assert [abs(i) for i in amps[:3]] == pytest.approx([abs(va) / 480 / math.sqrt(3)] * 3)


def test_missing_is_unknown_and_what_is_known_stays() -> None:
    text = BOARD + "motor M 460 3ph  15 hp, eff 91 %\nfeeder P -> M  40 A 3p\n"
    view = viewed(text.replace("feeder U", "  1,3,5  20 A 3p  9 kW heating\nfeeder U"))
    figures = load_figures(view, "P")
    assert figures is not None
    assert figures["connected"] is None
    assert figures["unknown"]["connected"] == ["`M` gives no power factor (pf), nor a current (fla)"]
    assert figures["known_va"] == pytest.approx(9000)
    assert load_figures(view, "U")["unknown"]["connected"] == figures["unknown"]["connected"]  # type: ignore[index]


PUMPS = (
    US
    + BOARD
    + "".join(
        f"motor P-{i} 460 3ph  {hp} hp{more}\nfeeder P -> P-{i}  70 A 3p\n"
        for i, hp, more in ((1, 25, ""), (2, 25, ""), (3, 30, ", standby-of P-1 P-2"))
    )
)


def test_standby_counts_in_place_of_what_it_replaces() -> None:
    loads = viewed(PUMPS).loads
    assert loads.left_out("P") == {"P-1"}, "the standby unit is the larger, so it counts instead"
    assert loads.left_out("P-3") == frozenset(), "its own feeder carries it in full"
    sizing = loads.counted("P").sizing
    assert sizing is not None and abs(sizing.amps[0]) == pytest.approx(1.25 * 40 + 34)


def test_of_loads_that_exclude_each_other_the_larger_group_counts() -> None:
    text = BOARD + "load CH 480 3ph  90 kVA, cooling, not-with HA HB\nfeeder P -> CH  150 A 3p\n"
    for name, kw in (("HA", 50), ("HB", 60)):
        text += f"load {name} 480 3ph  {kw} kW, heating\nfeeder P -> {name}  100 A 3p\n"
    assert viewed(text).loads.left_out("P") == {"CH"}
    assert viewed(text.replace("60 kW", "30 kW")).loads.left_out("P") == {"HA", "HB"}


def test_switch_states_shed_scale_and_bring_standby_into_service() -> None:
    text = PUMPS + 'scenario "Dry"\n  shed P-1\nscenario "Half"\n  scale P 50 %\nscenario "Cut"\n  open P -> P-2\n'
    view = viewed(text)
    states = {s.name.text: scenario_state(view.model, s) for _, s in view.model.scenarios if s.name}
    assert view.loads_in(states["Dry"]).left_out("P") == {"P-2"}
    full, half = view.loads.counted("U"), view.loads_in(states["Half"]).counted("U")
    assert abs(half.demand.va) == pytest.approx(abs(full.demand.va) / 2)
    assert full.sizing is not None and half.sizing is not None
    assert abs(half.sizing.va) == pytest.approx(abs(full.sizing.va) / 2), "the quarter of the largest motor too"
    assert half.sizing.amps == pytest.approx([amps / 2 for amps in full.sizing.amps])
    running, _ = leaf_loads(view, states["Dry"])
    assert {load.element for load in running} == {"P-2", "P-3"} - view.loads_in(states["Dry"]).left_out("U")


def test_a_stated_factor_counts_once_and_the_nearest_holds() -> None:
    text = BOARD.replace("bus 800 A", "bus 800 A, factor 0.5") + "panel Q 480Y/277  bus 225 A, factor 0.8\n"
    text += "  1,3,5  30 A 3p  10 kW heating\n  2,4,6  30 A 3p  10 kW heating factor 0.9\nfeeder P -> Q  100 A 3p\n"
    loads = viewed(text).loads
    for name in ("Q", "P", "U"):
        assert abs(loads.counted(name).demand.va) == pytest.approx(17_000), name
    assert loads.nodes["Q"].twice == ("Q 2,4,6",)


def test_energy_management_holds_chargers_to_its_limit() -> None:
    text = (
        US
        + "utility U 208Y/120  fault 10 kA, x/r 4\npanel P 208Y/120  bus 225 A, limit 80 A\nfeeder U -> P  225 A 3p\n"
    )
    for i, legs in enumerate(("AB", "BC", "CA", "AB", "BC", "CA")):
        text += f"charger EV-{i} 208 1ph  9.6 kVA, ev\nfeeder P[{legs}] -> EV-{i}  60 A 2p\n"
    counted = viewed(text).loads.counted("U")
    assert abs(counted.demand.amps[0]) == pytest.approx(80.0, rel=1e-4)


def test_the_load_flow_gets_the_same_loads() -> None:
    view = viewed(PUMPS + "capacitor C 480 3ph  30 kvar\nfeeder P -> C  60 A 3p\n")
    running, unknown = leaf_loads(view)
    assert not unknown
    motors = sum(load.va for load in running if load.machine)
    assert motors == pytest.approx(view.loads.counted("P").connected.va)
    assert sum(load.va for load in running if load.category == "capacitor") == pytest.approx(-30e3j)
    assert {load.pair for load in running} == {("A", "B"), ("B", "C"), ("C", "A")}


def test_unbalance_and_the_swaps_that_mend_it() -> None:
    rows = "".join(f"  {p}  20 A 1p  {va} VA lighting\n" for p, va in
                   ((1, 3000), (2, 3000), (7, 2500), (3, 1500), (4, 1500), (5, 700), (6, 700), (8, 2000)))  # fmt: skip
    text = "utility U 208Y/120  fault 10 kA, x/r 4\nfeeder U -> P  100 A 3p\npanel P 208Y/120  bus 100 A, spaces 12\n"
    view = viewed(text + rows)
    from wyeline_linter.board_positions import positions_of

    board = view.model.equipment["P"]
    found = swaps(view.loads, board, positions_of(view, board))
    assert found is not None and len(found.moves) <= MOST_MOVES
    assert unbalance(found.before_a) > 0.8
    assert unbalance(found.after_a) < 0.1
    assert sum(found.after_a) == pytest.approx(sum(found.before_a))
