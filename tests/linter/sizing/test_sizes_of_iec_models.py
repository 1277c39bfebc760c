"""Random models of IEC practice, sized whole: what is written draws no new error, and sizing again changes nothing."""

from __future__ import annotations

import random
from collections import Counter

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.fixing import apply_edits
from wyeline_linter.sizing.asked import sizings, written_together

TRIPS = {"disconnection-too-slow", "it-second-fault-too-weak"}


def analysis(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def errors(made: Analysis) -> dict[tuple[str, str, str], Finding]:
    found = [f for f in made.all_findings() if f.severity is Severity.ERROR]
    return {(f.rule, f.subject, f.position): f for f in found}


def laid(rng: random.Random) -> str:
    method = rng.choice("A1 A2 B1 B2 C D1 D2 E F".split())
    text = f"method {method}" + (", buried 0.7 m" if method in ("D1", "D2") else "")
    if rng.random() < 0.4:
        text += f", grouped {rng.choice([2, 3, 4, 6, 9])}"
    if rng.random() < 0.3:
        text += f", ambient {rng.choice([10, 25, 35, 45, 50])} degC"
    if method in ("E", "F") and rng.random() < 0.5:
        text += rng.choice([", in ladder", ", in tray"])
    return text + (", together" if rng.random() < 0.1 else "")


def device(rng: random.Random) -> str:
    amps = rng.choice([16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400])
    pickup = f" pickup {amps * rng.choice([4, 6, 8, 10])} A" if amps >= 63 else ""
    curve = f" curve {rng.choice('BCD')}" if amps <= 125 else pickup
    return rng.choice([f"{amps} A 3p fuse gG", f"{amps} A 3p{curve}", f"{amps} A 3p{pickup}", ""])


def wires(rng: random.Random, live: int, *, pen: bool) -> str:
    size = rng.choice("1.5 2.5 4 6 10 16 25 35 50 70 95 120".split())
    metal = rng.choice(["Cu", "Cu", "Al"]) if float(size) >= 16 else "Cu"
    marks = f"{metal} {rng.choice(['PVC', 'XLPE'])}"
    return rng.choice(
        [
            "",
            f"{live}x{size}mm2 + PE {size}mm2 {marks}",
            f"{live + 1}G{size}mm2 {marks}",
            f"3x{size}mm2 + PEN {size}mm2 {marks}" if pen and live == 4 else "",
        ]
    )


def drawn(rng: random.Random) -> str:
    earthing = rng.choice(["TN-S", "TN-S", "TN-C-S", "TT, resistance 20 ohm, source-resistance 2 ohm", "IT"])
    volts, live = ("400 3ph", 3) if earthing == "IT" else ("400Y/230", 4)
    text = f"""project "Mill"
  basis iec
  frequency 50 Hz, ambient {rng.choice([20, 30, 40])} degC, soil {rng.choice([1, 1.5, 2.5])} K.m/W
  drop-branch {rng.choice([3, 4, 5])} %, drop-path {rng.choice([5, 8])} %, revision "A"
utility U {volts}  fault 12 kA, fault-min {rng.choice([3, 8])} kA, x/r 4, earthing {earthing}
switchboard B {volts}  bus 800 A, incomer {rng.choice(["400 A", "630 A", "switch"])}, rated 36 kA
feeder U -> B  400 A 3p  {rng.choice([1, 2, 3])} sets {live}x240mm2 + PE 120mm2 Cu XLPE  10 m  method F
"""
    for k in range(rng.choice([2, 4, 6])):
        kind = rng.choice(["panel", "load", "motor", "transformer", "capacitor"])
        if kind == "panel":
            text += f"panel P{k} {volts}  bus {rng.choice([125, 250, 400])} A, rated 25 kA, "
            text += f"incomer {rng.choice(['switch', '63 A', '125 A'])}\n"
            for c in range(rng.choice([0, 1, 4])):
                text += f"  F{c}  {rng.choice([16, 20, 32])} A 3p curve {rng.choice('BC')}  {rng.choice([1, 3, 6])} kW "
                text += f'{rng.choice(["heating", "process"])}  "Thing {c} of {k}"  4G6mm2 Cu PVC  20 m  {laid(rng)}\n'
        elif kind == "load":
            text += f"load P{k} 400 3ph  {rng.choice([2, 9, 20, 60])} kW, {rng.choice(['heating', 'process'])}\n"
        elif kind == "motor":
            text += f"motor P{k} 400 3ph  {rng.choice([3, 7.5, 15, 30])} kW, pf 0.85, eff 90 %, lra 60 A\n"
        elif kind == "capacitor":
            text += f"capacitor P{k} 400 3ph  25 kvar\n"
        else:
            text += f"transformer P{k} 400 3ph -> 230 3ph  {rng.choice([16, 40, 63])} kVA, connection Dd0, z 4 %, "
            text += "loss 700 W, earthing IT\n"
        run = wires(rng, live if kind == "panel" else 3, pen=earthing == "TN-C-S")
        text += f"feeder B -> P{k}  {device(rng)}  {run}  {rng.choice([4, 12, 30, 60, 120])} m  {laid(rng)}\n"
    return text


@pytest.mark.parametrize("seed", range(4))
def test_what_is_sized_draws_no_new_error(seed: int) -> None:
    rng = random.Random(seed)
    seen: Counter[str] = Counter()
    for _ in range(20):
        text = drawn(rng)
        made = analysis(text)
        before, proposed = errors(made), list(sizings(made))
        _, edits = written_together(proposed)
        after_text = apply_edits(text, edits)
        again = list(sizings(analysis(after_text)))
        assert not written_together(again)[1], after_text
        told = {s.subject: s.reasons for s in again}
        after = errors(analysis(after_text))
        for key, finding in after.items():
            rule, subject, position = key
            if key in before or position:
                continue  # of what was there, and of circuits, whose wires are not sized
            assert rule in TRIPS, (finding.message, after_text)
            assert any("no wires let" in reason for reason in told[subject]), (finding.message, told[subject])
            seen["out of reach"] += 1
        seen["mended"] += len(before.keys() - after.keys())
        seen["grown to trip"] += sum("earth fault: lets" in r for s in proposed for r in s.reasons)
        for finding in before.values():
            for fix in finding.fixes[:1]:
                if finding.rule in TRIPS and fix.title.startswith("Size "):
                    left = errors(analysis(apply_edits(text, fix.edits)))
                    assert (finding.rule, finding.subject, finding.position) not in left, (finding.message, fix.title)
                    seen["fix that trips"] += 1
    assert seen["mended"] > 10 and seen["grown to trip"] > 3, seen
