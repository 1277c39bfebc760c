"""The engine against ngspice, a general circuit simulator, as an independent solver.

For every transformer connection networks are drawn by hypothesis; node voltages under load and fault currents must
agree within 0.1 %.  Where CI runs, a missing ngspice is a failure.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import sqrt

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from ngspice_netlist import NEEDS_NGSPICE, run, solve_loaded, write
from transformer_connections import (
    Rating,
    autotransformer,
    buck_boost,
    centre_tapped,
    grounding_zigzag,
    high_leg_delta,
    open_delta,
    scott,
    single_phase,
    three_phase,
)

from wyeline_linter.circuit import EARTH, Bus, Network, Solved, solve_flow, study_faults

AGREEMENT = 1e-3
pytestmark = NEEDS_NGSPICE

EXAMPLES_A_CONNECTION = 3


@dataclass(frozen=True)
class Served:
    """What a connection offers: its secondary bus, node pairs for loads with their voltage, and faults."""

    bus: Bus
    pairs: tuple[tuple[str, str, float], ...]
    faults: tuple[str, ...]


Connect = Callable[[Network, Bus, float, Rating], Served]


def vector_group(group: str, *, bonded: bool = True) -> Connect:
    def connect(net: Network, high: Bus, v: float, rating: Rating) -> Served:
        star = "y" in group[1:] or "z" in group[1:]
        low = net.bus("low", "ABCN" if star else "ABC")
        high_neutral = high["N"] if group.startswith("YN") else None
        low_neutral = low["N"] if star else None
        three_phase(net, "T", high.pick("ABC"), high_neutral, low.pick("ABC"), low_neutral, v, 208, group, rating)
        if not star:
            return Served(low, (("A", "B", 208), ("B", "C", 208), ("C", "A", 208)), ("ABC", "BC"))
        if bonded:
            net.link("bond", low["N"], EARTH)
        if group[0] == "Y" and high_neutral is None and "y" in group[1:]:
            # Without primary neutral a wye/wye unit cannot carry a load from leg to neutral.
            return Served(low, (("A", "B", 208), ("C", "A", 208)), ("ABC", "CA"))
        pairs = (("A", "N", 120), ("C", "N", 120), ("A", "B", 208))
        return Served(low, pairs, ("ABC", "CA", "BN", *(["BE", "BCE"] if bonded else [])))

    return connect


def on_pair(first: str, second: str) -> Connect:
    def connect(net: Network, high: Bus, v: float, rating: Rating) -> Served:
        low = net.bus("low", "AN")
        across = v if second != "N" else v / sqrt(3)
        single_phase(net, "T", high.pair((first, second)), low.pair("AN"), across, 240, rating)
        net.link("bond", low["N"], EARTH)
        return Served(low, (("A", "N", 240),), ("AN", "AE"))

    return connect


def split(first: str, second: str) -> Connect:
    def connect(net: Network, high: Bus, v: float, rating: Rating) -> Served:
        low = net.bus("low", "ABN")
        across = v if second != "N" else v / sqrt(3)
        centre_tapped(net, "T", high.pair((first, second)), low.pick("AB"), low["N"], across, 120, rating)
        net.link("bond", low["N"], EARTH)
        return Served(low, (("A", "N", 120), ("B", "N", 120), ("A", "B", 240)), ("AB", "AN", "BE"))

    return connect


def open_bank(star: bool) -> Connect:
    def connect(net: Network, high: Bus, v: float, rating: Rating) -> Served:
        low = net.bus("low", "ABC")
        a, b, c, n = (high[leg] for leg in "ABCN")
        pairs = ((a, n), (b, n)) if star else ((a, b), (b, c))
        x, y, z = low.nodes
        open_delta(net, "T", pairs, ((x, y), (y, z)), v / sqrt(3) if star else v, 240, (rating, rating))
        net.link("corner", low["B"], EARTH)
        return Served(low, (("A", "B", 240), ("B", "C", 240), ("C", "A", 240)), ("ABC", "CA", "AE"))

    return connect


def high_leg(units: int) -> Connect:
    def connect(net: Network, high: Bus, v: float, rating: Rating) -> Served:
        low = net.bus("low", "ABCN")
        a, b, c = high.pick("ABC")
        pairs = ((a, c), (b, a), (c, b))[:units]
        high_leg_delta(net, "T", pairs, low.pick("ABC"), low["N"], v, 240, (rating,) * units)
        net.link("bond", low["N"], EARTH)
        return Served(low, (("A", "N", 120), ("C", "N", 120), ("B", "A", 240)), ("ABC", "AC", "AN", "BE"))

    return connect


def auto(net: Network, high: Bus, v: float, rating: Rating) -> Served:
    low = net.bus("low", "ABCN")
    for leg in "N":
        net.link(f"common {leg}", high[leg], low[leg])
    autotransformer(net, "T", high.pick("ABC"), low.pick("ABC"), low["N"], v / sqrt(3), 240, rating)
    return Served(low, (("A", "N", 240), ("B", "N", 240), ("B", "C", 416)), ("ABC", "AB", "AN"))


def booster(net: Network, high: Bus, v: float, rating: Rating) -> Served:
    low = net.bus("low", "ABC")
    a, b, c = high.pick("ABC")
    x, y, z = low.nodes
    # Two units in open delta: A and C are raised against B.
    buck_boost(net, "T.1", (a, b), x, v, v / 15, rating)
    buck_boost(net, "T.2", (c, b), z, v, v / 15, rating)
    net.link("through", b, y)
    return Served(low, (("A", "B", v * 1.05), ("C", "A", v * 1.05)), ("ABC", "CA", "AE"))


def made_neutral(net: Network, high: Bus, v: float, rating: Rating) -> Served:
    low = net.bus("low", "ABCN")
    three_phase(net, "T", high.pick("ABC"), None, low.pick("ABC"), None, v, 208, "Dd0", rating)
    grounding_zigzag(net, "Z", low.pick("ABC"), low["N"], 0.02 + 0.08j)
    net.impedance("grounding resistor", (low["N"], EARTH), 0.5 + 0j)
    return Served(low, (("A", "N", 120), ("A", "B", 208)), ("ABC", "AN", "AE", "BCE"))


def two_phase(net: Network, high: Bus, v: float, rating: Rating) -> Served:
    low = net.bus("low", "ABN")
    n = low["N"]
    scott(net, "T", high.pick("ABC"), (low["A"], n), (low["B"], n), v, 240, (rating, rating))
    net.link("bond", n, EARTH)
    return Served(low, (("A", "N", 240), ("B", "N", 240)), ("AN", "BN", "AB"))


CONNECTIONS: dict[str, Connect] = {
    **{
        group: vector_group(group)
        for group in ("Dyn1", "Dyn11", "Dyn5", "YNyn0", "Yyn6", "Dd0", "Dd6", "YNd1", "Yd11", "Dzn0", "Yzn11", "Yzn1")
    },
    "Dyn1 not bonded": vector_group("Dyn1", bonded=False),
    "single-phase on two legs": on_pair("B", "C"),
    "single-phase on leg and neutral": on_pair("C", "N"),
    "centre-tapped on two legs": split("A", "B"),
    "centre-tapped on leg and neutral": split("A", "N"),
    "open delta": open_bank(star=False),
    "open wye, open delta": open_bank(star=True),
    "high leg, three units": high_leg(3),
    "high leg, two units": high_leg(2),
    "wye autotransformer": auto,
    "buck-boost": booster,
    "grounding zigzag": made_neutral,
    "Scott": two_phase,
}

number = st.floats(min_value=0.0, max_value=1.0)


@pytest.mark.parametrize("connection", CONNECTIONS)
def test_voltages_and_faults(connection: str) -> None:
    @settings(
        max_examples=EXAMPLES_A_CONNECTION,
        deadline=None,
        derandomize=True,
        database=None,
        phases=[Phase.generate],  # shrinking would start ngspice hundreds of times
        suppress_health_check=list(HealthCheck),
    )
    @given(data=st.data())
    def compare(data: st.DataObject) -> None:
        draw = data.draw
        net = Network()
        v = draw(st.sampled_from([480.0, 400.0, 12470.0]))
        base = v * v / 1e6
        service, high = net.bus("service", "ABCN"), net.bus("high", "ABCN")
        z1 = complex(0.002 + 0.01 * draw(number), 0.01 + 0.05 * draw(number)) * base
        z0 = complex(0.002 + 0.01 * draw(number), 0.01 + 0.05 * draw(number)) * base
        net.three_phase_source("utility", service.pick("ABC"), service["N"], v / sqrt(3), z1, None, z0)
        net.link("service bond", service["N"], EARTH)
        net.line("feeder", service.nodes, high.nodes, run_matrix(draw, 4, base))
        rating = Rating(
            75e3,
            complex(0.01 + 0.03 * draw(number), 0.01 + 0.05 * draw(number)),
            tap=draw(st.sampled_from([1.0, 0.975, 1.05])),
            magnetising_pu=draw(st.sampled_from([0j, 0.005 - 0.02j])),
        )
        served = CONNECTIONS[connection](net, high, v, rating)
        end = net.bus("end", served.bus.conductors)
        base_low = served.pairs[0][2] ** 2 / 75e3
        net.line("branch", served.bus.nodes, end.nodes, run_matrix(draw, len(end.nodes), base_low))
        for k, (plus, minus, volt) in enumerate(served.pairs):
            s = 8e3 * complex(0.3 + draw(number), draw(number) - 0.2)
            shares = draw(st.sampled_from([(1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0), (0.5, 0.2, 0.3)]))
            net.load(f"load {k}", end.pair((plus, minus)), s, volt, shares)
        if draw(st.booleans()):
            legs = end.pick("ABC") if "C" in end.conductors else end.nodes[:2]
            net.motor("motor", legs, complex(0.3, 3) * base_low)
        check_flow(net)
        check_faults(net, served, end)

    compare()


def run_matrix(draw: Callable[..., float], k: int, base: float) -> list[complex]:
    """Impedances of a run: independent conductors, or coupled ones with earth return."""
    r, x = 0.002 + 0.02 * draw(number), 0.002 + 0.02 * draw(number)
    own = complex(r, x) * base
    if draw(st.booleans()):
        return [own] * k
    mutual = complex(0.3 * r * draw(number), (0.2 + 0.5 * draw(number)) * x) * base
    return [own * (1 + 0.1 * i) if i == j else mutual for i in range(k) for j in range(k)]


def check_flow(net: Network) -> None:
    flow = solve_flow(net)
    assert isinstance(flow, Solved)
    assert flow.selftest.passed
    volts = solve_loaded(net)
    for bus in net.buses:
        for i, a in enumerate(bus.nodes):
            for b in (*bus.nodes[:i], EARTH):
                mine = flow.voltage_between(a, b)
                if mine is not None:
                    scale = max(abs(mine), 0.01 * max(abs(flow.v[n] - flow.v[bus.nodes[0]]) for n in bus.nodes))
                    assert abs(mine - (volts[a] - volts[b])) <= AGREEMENT * scale, (bus.name, a, b)


def check_faults(net: Network, served: Served, end: Bus) -> None:
    study = study_faults(net)
    places = [(bus, tied) for bus in (served.bus, end) for tied in served.faults]
    before, _ = run(write(net, faulted=True), net)
    before[0] = 0j
    _, currents = run(write(net, faulted=True, before=before), net, [bus.pick(tied) for bus, tied in places])
    for (bus, tied), theirs in zip(places, currents, strict=True):
        fault = study.bus(bus, tied)
        assert fault.current_a is not None, (bus.name, tied, fault.note)
        assert abs(fault.conductor_a[0] - theirs) <= AGREEMENT * fault.current_a, (bus.name, tied)
