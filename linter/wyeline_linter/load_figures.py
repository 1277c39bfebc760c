"""The loads of a piece of equipment as plain data, in SI units, for ``show``, hover, reports and programs."""

from __future__ import annotations

from typing import Any

from wyeline_linter.loads.balance import unbalance
from wyeline_linter.loads.buckets import VA
from wyeline_linter.loads.conductors_of_loads import INDEX
from wyeline_linter.loads.demand import NO_BASIS, Amount, Counted
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.loads.neutral import neutral_a, worst_neutral
from wyeline_linter.loads.third_harmonics import third_harmonic
from wyeline_linter.loads.winding_loads import winding_loads
from wyeline_linter.network import two_sided
from wyeline_linter.outputs.text import wrapped
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.shares import above_mean, share_text
from wyeline_linter.system_words import conductor_text
from wyeline_linter.systems import System
from wyeline_linter.view import View


def load_figures(view: View, name: str) -> dict[str, Any] | None:
    """What a piece of equipment carries; None where nothing is and nothing could be on it.

    Amounts are connected, demand and sizing: ``va`` and ``w`` in total, ``leg_va`` by the bookkeeping split of a panel
    schedule, ``amps`` by phasors at nominal voltage. An amount is None where a load below is unknown, with the reasons
    under ``unknown``; ``known_va`` is then what the known ones add up to.
    """
    book = view.loads
    node = book.nodes.get(name)
    if node is None or (node.below.empty and not node.leaves and not node.below.apart_va):
        return None
    system = book.system(name)
    counted = book.counted(name)
    unknown = list(node.below.unknown)
    figures: dict[str, Any] = {
        **_amounts(counted, system, unknown, list(node.below.unknown_code)),
        "known_va": abs(counted.connected.va),
        "by_class": [
            {
                "class": key.category,
                "continuous": key.continuous,
                "units": int(row[0].real),
                "connected_va": abs(row[VA]),
                "factor": counted.factors[key],
                "factor_stated": key.factor is not None and not key.dwelling and key.category != MEASURED,
                "of_dwelling": key.dwelling,
                "demand_va": counted.factors[key] * abs(row[VA]),
                "third_harmonic_part": key.third,
            }
            for key, row in sorted(book.rows(name)[0].items(), key=lambda item: str(item[0]))
        ],
        "left_out": sorted(book.left_out(name)),
        "apart_va": node.below.apart_va,
        "neutral": _neutral(view, name, system, counted, unknown),
        "unbalance": _unbalance(system, counted.demand, unknown),
    }
    if two_sided(view.model.equipment[name]):
        figures["arriving"] = arriving_load(view, name)
    windings = winding_loads(book, name)
    if windings:
        figures["windings"] = [
            {
                "between": [w.start, w.end],
                "part": w.part,
                "amps": None if unknown else w.amps,
                "limit_a": w.limit_a,
                "share": None if unknown else w.share,
            }
            for w in windings
        ]
    return figures


def _amounts(counted: Counted, system: System | None, unknown: list[str], code: list[str]) -> dict[str, Any]:
    no_sizing = list(merge_reasons(unknown, code)) if counted.sizing is not None else [NO_BASIS]
    reasons = {"connected": unknown, "demand": unknown, "sizing": no_sizing}
    amounts = {"connected": counted.connected, "demand": counted.demand, "sizing": counted.sizing}
    return {
        **{
            word: None if reasons[word] or amount is None else _amount(amount, system)
            for word, amount in amounts.items()
        },
        "unknown": {word: why for word, why in reasons.items() if why},
    }


def _amount(amount: Amount, system: System | None) -> dict[str, Any]:
    conductors = system.conductors if system is not None else ()
    legs = system.legs if system is not None else ()
    return {
        "va": abs(amount.va),
        "w": amount.va.real,
        "leg_va": {leg: abs(amount.split[INDEX[leg]]) for leg in legs if INDEX[leg] < len(amount.split)},
        "amps": {name: abs(amount.amps[INDEX[name]]) for name in conductors},
    }


def arriving_load(view: View, name: str) -> dict[str, Any]:
    """What a piece of equipment with two sides draws at its input, as plain data."""
    above, state = view.loads.nodes[name].up, view.state(name)
    arriving = getattr(state.arriving, "system", None) if state is not None else None
    return _amounts(view.loads.counted_above(name), arriving, list(above.unknown), list(above.unknown_code))


def _neutral(
    view: View, name: str, system: System | None, counted: Counted, unknown: list[str]
) -> dict[str, Any] | None:
    if system is None or not system.has_neutral or unknown:
        return None
    book = view.loads
    rows = book.rows(name)[0]
    worst = worst_neutral(system, rows, counted.factors, book.basis)
    third = third_harmonic(system, rows, counted.factors)
    return {
        "demand_a": neutral_a(counted.demand.amps, third),
        "worst_a": worst.unbalance_a if worst is not None else None,
        "worst_leg": worst.leg if worst is not None else None,
        "reduced_a": worst.reduced_a if worst is not None else None,
        "third_harmonic_a": third.neutral_a if third is not None else None,
        "third_harmonic_part": third.part if third is not None else None,
        "third_harmonic_unstated_va": third.unstated_va if third is not None else None,
    }


def _unbalance(system: System | None, demand: Amount, unknown: list[str]) -> float | None:
    if system is None or len(system.legs) < 2 or unknown or not set(system.legs) <= {"A", "B", "C"}:
        return None
    return unbalance(tuple(abs(demand.amps[INDEX[leg]]) for leg in system.legs))


def load_lines(load: dict[str, Any], practice: str | None) -> list[str]:
    """The same for people, one line an amount."""
    lines = []
    for word in ("connected", "demand", "sizing"):
        amount = load[word]
        if amount is None:
            if word == "sizing" and load["unknown"].get(word) == [NO_BASIS]:
                continue
            known = f" (what is known: {load['known_va'] / 1e3:.2f} kVA)" if word == "connected" else ""
            lines.append(wrapped(f"{'; '.join(load['unknown'][word])}{known}", f"  {word:<9} unknown: "))
            continue
        legs = "  ".join(f"{conductor_text(name, practice)} {value:.1f} A" for name, value in amount["amps"].items())
        lines.append(f"  {word:<9} {amount['va'] / 1e3:.2f} kVA   {legs}")
    if load["left_out"]:
        lines.append(f"  not with  {', '.join(load['left_out'])} (another runs in its place)")
    if load["unbalance"] is not None and load["unbalance"] > 0.005:
        lines.append(f"  unbalance {above_mean(load['unbalance'])}")
    neutral = load["neutral"]
    if neutral is not None and neutral["third_harmonic_a"]:
        part = share_text(neutral["third_harmonic_part"])
        third = f"{neutral['third_harmonic_a']:.1f} A, {part} of the line currents"
        lines.append(f"  neutral   {neutral['demand_a']:.1f} A with a third harmonic of {third}")
    worst = max((w for w in load.get("windings", ()) if w["share"] is not None), key=lambda w: w["share"], default=None)
    if worst is not None:
        where = f"{worst['part']} {'-'.join(worst['between'])}"
        share = f"{worst['amps']:.1f} A of {worst['limit_a']:.1f} A ({share_text(worst['share'])})"
        lines.append(f"  windings  {where}: {share}")
    return lines
