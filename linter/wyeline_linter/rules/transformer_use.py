"""Transformers and how they are used: as autotransformers, in parallel, and fed backwards."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.view import View

AUTO = rule(
    name="auto-transformer-limits",
    since="0.1",
    severity=Severity.WARNING,
    scope="transformer",
    basis="both",
    summary="An autotransformer stands where a neutral, or separate circuits, are expected from it.",
    why="An autotransformer joins its two sides: it makes no neutral of its own and separates nothing.",
    clause={"us": "450.4, 210.9, 215.11", "iec": "60364-5-55 552"},
    wrong='project "Annex"\n  basis us-2023\nutility UTIL 480 3ph  fault 14 kA, fault-min 9 kA, x/r 4, ground none\n'
    "transformer TX-1 480 3ph -> 600 3ph  45 kVA, z 4.2 %, connection auto\nfeeder UTIL -> TX-1  60 A 3p\n",
    right='project "Annex"\n  basis us-2023\nutility UTIL 480 3ph  fault 14 kA, fault-min 9 kA, x/r 4, ground B\n'
    "feeder UTIL -> DP  400 A 2p\npanel DP 480 3ph  bus 400 A\n",
)
PARALLEL = rule(
    name="parallel-units-mismatch",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="Transformers that run in parallel differ in ratio, shift or tap, or far in impedance or size.",
    why="The unit with the lower impedance takes more than its share, and unlike voltages drive a current in a circle.",
    clause={"us": "450.7", "iec": "60076-8"},
    wrong="utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\nfeeder UTIL -> MSB  400 A 3p\n"
    "switchboard MSB 480Y/277  bus 400 A\npanel LP-1 208Y/120  bus 400 A\n"
    "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\ntransformer TX-2 480 3ph -> 208Y/120  45 kVA, z 5.6 %\n"
    "feeder MSB -> TX-1  70 A 3p\nfeeder MSB -> TX-2  70 A 3p\n"
    "feeder TX-1 -> LP-1  150 A 3p\n  claim parallel\nfeeder TX-2 -> LP-1  150 A 3p\n  claim parallel\n",
    right="utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\nfeeder UTIL -> MSB  400 A 3p\n"
    "switchboard MSB 480Y/277  bus 400 A\npanel LP-1 208Y/120  bus 400 A\n"
    "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\ntransformer TX-2 480 3ph -> 208Y/120  45 kVA, z 4.3 %\n"
    "feeder MSB -> TX-1  70 A 3p\nfeeder MSB -> TX-2  70 A 3p\n"
    "feeder TX-1 -> LP-1  150 A 3p\n  claim parallel\nfeeder TX-2 -> LP-1  150 A 3p\n  claim parallel\n",
)
BACKFED = rule(
    name="backfed-transformer",
    since="0.1",
    severity=Severity.WARNING,
    scope="transformer",
    basis="us",
    summary="A step-up transformer is fed at its wye side, as a step-down unit used upside down is.",
    why="Confirm that the maker permits it; the wye point on the supply side must not be bonded to anything.",
    clause={"us": "450.11(B)"},
    wrong='project "Annex"\n  basis us-2023\nutility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4\n'
    "feeder UTIL -> DP  400 A 3p\npanel DP 208Y/120  bus 400 A\nmotor P-1 460 3ph  20 hp, pf 0.85, eff 91 %\n"
    "transformer TX-1 208 3ph -> 480 3ph  30 kVA, z 4.2 %, connection Yd1, ground B\nfeeder DP -> TX-1  110 A 3p\n"
    "feeder TX-1 -> P-1  60 A 2p\n",
    right='project "Annex"\n  basis us-2023\nutility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4\n'
    "feeder UTIL -> DP  400 A 3p\npanel DP 208Y/120  bus 400 A\nmotor P-1 460 3ph  20 hp, pf 0.85, eff 91 %\n"
    "transformer TX-1 208 3ph -> 480Y/277  30 kVA, z 4.2 %\nfeeder DP -> TX-1  110 A 3p\n"
    "feeder TX-1 -> P-1  60 A 3p\n",
)


@AUTO.check
def autotransformer(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind != "transformer" or equipment.body.text("connection") not in ("auto", "buck-boost"):
        return
    state = view.state(equipment.name)
    if state is None or not isinstance(state.arriving, Known) or not isinstance(state.system, Known):
        return
    ahead, behind = state.arriving.system, state.system.system
    if ahead.earth is not None and (ahead.has_neutral or not behind.has_neutral):
        return
    ungrounded = ahead.earth is None
    yield AUTO.finding(
        equipment.place_of("connection"),
        f"`{equipment.name}` is an autotransformer on a system without an earthed conductor"
        if ungrounded
        else f"`{equipment.name}` is an autotransformer, and a neutral is expected behind it",
        found=f"{ahead.nominal.text} -> {behind.nominal.text} by one winding",
        needed="an earthed conductor that runs through, or two windings",
        change="Choose a transformer of two windings.",
        subject=equipment.name,
        clause=clause_of(view, AUTO),
    )


@PARALLEL.check
def parallel_units(view: View) -> Iterator[Finding]:
    """Two transformers whose secondaries meet at one piece of equipment, both closed, by a claim."""
    for name in sorted(view.network.others):
        supply = view.network.supply.get(name)
        feeders = [f for f in (supply, *view.network.others[name]) if f is not None]
        units = [view.equipment(f.source.name) for f in feeders]
        pair = [u for u in units if u is not None and u.kind == "transformer"]
        if len(pair) < 2:
            continue
        first = pair[0]
        for other in pair[1:]:
            yield from _pair(view, first, other)


def _pair(view: View, first: Equipment, other: Equipment) -> Iterator[Finding]:
    hard, soft = [], []
    tap = [u.body.number("tap") or 0.0 for u in (first, other)]
    if abs(tap[0] - tap[1]) > 1e-6:
        hard.append(f"taps {100 * tap[0]:+g} % and {100 * tap[1]:+g} %")
    states = [view.state(u.name) for u in (first, other)]
    windings = [s.winding for s in states if s is not None and isinstance(s.winding, Transformed)]
    unnamed = [w.angle_unknown is not None for w in windings]
    nameless = ""
    if len(windings) == 2 and any(unnamed):
        # Two that say nothing may well be alike; one that says it beside one that does not is a question.
        nameless = "" if all(unnamed) else (first if unnamed[0] else other).name
    elif len(windings) == 2 and windings[0].shift_deg != windings[1].shift_deg:
        hard.append(f"shifts {windings[0].connection} and {windings[1].connection}")
    z = [u.body.number("z") for u in (first, other)]
    if z[0] is not None and z[1] is not None and abs(z[0] - z[1]) > 0.1 * min(z[0], z[1]):
        soft.append(f"impedances {100 * z[0]:g} % and {100 * z[1]:g} %")
    size = [u.body.number("power") for u in (first, other)]
    if size[0] is not None and size[1] is not None and max(size[0], size[1]) > 3 * min(size[0], size[1]):
        soft.append(f"sizes {size[0] / 1e3:g} and {size[1] / 1e3:g} kVA")
    if not hard and not soft and not nameless:
        return
    told = [f"unlike {'; '.join([*hard, *soft])}"] if hard or soft else []
    told += [f"no vector group written for `{nameless}`, so that its angle is unknown"] if nameless else []
    yield PARALLEL.finding(
        other.place,
        f"`{first.name}` and `{other.name}` run in parallel with {', and '.join(told)}",
        found="; ".join([*hard, *soft, *([f"no vector group of `{nameless}`"] if nameless else [])]),
        needed="one ratio, shift and tap; impedances within 10 %; sizes within 3 to 1",
        change="Choose like units, or run them apart.",
        subject=other.name,
        severity=Severity.ERROR if hard else Severity.WARNING,
        clause=clause_of(view, PARALLEL),
    )


@BACKFED.check
def backfed(view: View, equipment: Equipment) -> Iterator[Finding]:
    connection = equipment.body.text("connection") or ""
    if equipment.kind != "transformer" or connection[:1] not in ("Y",) or "d" not in connection:
        return
    primary, secondary = view.derivation.stated(equipment.primary), view.derivation.stated(equipment.secondary)
    if primary is None or secondary is None or primary.line_v >= secondary.line_v:
        return
    if any(c.name == "backfed" for c in equipment.statement.claims):
        return
    yield BACKFED.finding(
        equipment.place_of("connection"),
        f"`{equipment.name}` steps up from a wye winding: is it a step-down unit fed backwards?",
        found=f"{primary.text} -> {secondary.text}, {connection}",
        needed="a unit wound for it, or the maker's word (`claim backfed`)",
        change="Ask the maker, and write `claim backfed` where it is permitted.",
        subject=equipment.name,
        clause=clause_of(view, BACKFED),
    )
