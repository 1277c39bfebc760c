"""What the code sizes by never counts less than what is drawn, on no conductor (NEC 215.2(A)(1): a feeder carries no
less than the load it supplies)."""

from __future__ import annotations

import random

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.view import View

CLASSES = "lighting receptacle heating cooling process kitchen ev pump welding".split()
FACTORS = ["", "", "pf 0.8", "pf 0.6", "pf 0.5, leading", "pf 0.9, leading"]
PLATES = ["", "", "eff 70 %, pf 0.7", "pf 0.5", "continuous", "factor 0.5"]
SYSTEMS = {"208Y/120": 200, "480Y/277": 460, "120/240": 230}


def viewed(text: str) -> View:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m").view


def drawn(rng: random.Random) -> str:
    """A panel with circuits and motors of every sort."""
    system = rng.choice(sorted(SYSTEMS))
    volts, phases = SYSTEMS[system], 1 if system == "120/240" else 3
    lines = [
        f'project "Foundry"\n  basis us-2023\n  frequency 60 Hz\nutility U {system}  fault 20 kA, x/r 4',
        f"panel P {system}  bus 400 A, main 400 A",
    ]
    at = 1
    for _ in range(rng.randint(0, 8)):
        poles = rng.randint(1, min(phases, 2) + (phases == 3))
        places = ",".join(str(at + 2 * i) for i in range(poles))
        at += 2 * poles
        size = f"{rng.randint(1, 90) / 10} {rng.choice(['kVA', 'kW'])}"
        words = f"{rng.choice(CLASSES)} {rng.choice(['', 'continuous'])} {rng.choice(FACTORS)}"
        lines.append(f"  {places}  60 A {poles}p  {size} {words}")
    lines.append(f"feeder U -> P  400 A {phases if phases == 3 else 2}p")
    for i in range(rng.randint(0, 4)):
        plate = rng.choice([*PLATES, f"fla {rng.randint(2, 90)} A", f"mca {rng.randint(5, 99)} A, mocp 100 A"])
        three = phases == 3 and rng.random() < 0.7
        horses = rng.choice(["1/2", "1", "3", "5", "7-1/2", "10"])
        lines.append(f"motor M-{i} {volts} {'3ph' if three else '1ph'}  {horses} hp, {plate}".rstrip(" ,"))
        lines.append(f"feeder P -> M-{i}  60 A {'3p' if three else '2p'}")
    if phases == 3 and rng.random() < 0.3:
        lines.append(f"capacitor C {system.split('Y')[0]} 3ph  {rng.randint(1, 30)} kvar\nfeeder P -> C  60 A 3p")
    return "\n".join(lines) + "\n"


@pytest.mark.parametrize("seed", range(40))
def test_it_counts_no_less_on_any_conductor(seed: int) -> None:
    rng = random.Random(seed)
    judged = 0
    for _ in range(10):
        text = drawn(rng)
        loads = viewed(text).loads
        for name, node in loads.nodes.items():
            counted = loads.counted(name)
            if node.below.unknown or node.below.unknown_code or counted.sizing is None:
                continue
            judged += 1
            pairs = [
                (counted.demand.va, counted.sizing.va),
                *zip(counted.demand.split, counted.sizing.split, strict=True),
                *zip(counted.demand.amps, counted.sizing.amps, strict=True),
            ]
            for draws, counts in pairs:
                assert abs(counts) >= abs(draws) * (1 - 1e-9) - 1e-9, (name, text)
    assert judged > 20


def test_a_motor_that_draws_more_than_the_table_counts_by_its_nameplate() -> None:
    """10 hp at 460 V: 14 A in NEC 430.250; built for low speed it draws 19 A, which counts (430.6(A)(1), from memory),
    with a quarter more for the one motor of the feeder (430.24)."""
    text = 'project "Mill"\n  basis us-2023\nutility U 480Y/277  fault 20 kA, x/r 4\nfeeder U -> M  40 A 3p\n'
    for plate, amps in (("fla 12 A", 14.0), ("fla 19 A", 19.0)):
        sizing = viewed(f"{text}motor M 460 3ph  10 hp, {plate}\n").loads.counted("M").sizing
        assert sizing is not None and abs(sizing.amps[0]) == pytest.approx(1.25 * amps)


def test_legs_of_unlike_power_factors() -> None:
    """Hand calculation: of 2 kVA at 0.5 lagging on A to B and 2 kVA at unity on C to A of 208 V each draws 9.62 A. On
    leg A both lie 30 degrees behind its voltage, so 19.2 A flow there; without their power factors it would be 16.7."""
    text = (
        'project "Mill"\n  basis us-2023\nutility U 208Y/120  fault 20 kA, x/r 4\npanel P 208Y/120  bus 100 A\n'
        "  1,3  20 A 2p  2 kVA heating pf 0.5\n  5,7  20 A 2p  2 kVA heating\nfeeder U -> P  100 A 3p\n"
    )
    counted = viewed(text).loads.counted("P")
    assert counted.sizing is not None
    most = max(abs(i) for i in counted.demand.amps[:3])
    assert most == pytest.approx(2 * 2000 / 207.846, rel=2e-3)
    assert max(abs(i) for i in counted.sizing.amps[:3]) >= most
