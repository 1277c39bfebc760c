"""Figures of the studies as plain data in SI units, for ``show``, hover, reports, review and programs."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Any

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.studies.flow import highest_of, lowest_of
from wyeline_linter.system_words import conductor_text, conductors_text

if TYPE_CHECKING:
    from wyeline_linter.circuit import Bus
    from wyeline_linter.studies.fault import FaultCurrent, FaultView
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

SIGNIFICANT = 7
"""Digits that are kept: beyond what any input is worth, short of the last bits of a solver."""


def rounded(value: float | None) -> float | None:
    """A number with the digits that are kept; None for what is no number."""
    if value is None or not math.isfinite(value):
        return None
    return float(f"{value:.{SIGNIFICANT}g}") + 0.0


def equipment_studies(view: View, equipment: Equipment) -> tuple[dict[str, Any], dict[str, list[str]]]:
    """``voltage_under_load``, ``drop`` and ``fault`` of fed equipment, and the reasons of what is unknown."""
    study, name = view.studies.normal, equipment.name
    figures: dict[str, Any] = {}
    unknown: dict[str, list[str]] = {}
    if not study.connectivity.fed(name):
        return figures, unknown

    def put(key: str, value: Any, reasons: tuple[str, ...]) -> None:
        figures[key] = value
        if value is None:
            unknown[key] = list(reasons) or ["not known"]

    volts = study.flow.volts(name)
    put("voltage_under_load", _volts(study, name) if volts else None, study.flow.reasons(name))
    whole, parts, reasons = study.path_drop(name)
    transformers, drop = study.flow.built.transformers, None
    if whole is not None:
        drop = {
            "part": rounded(whole),
            "feeders": [{"feeder": f.key, "volts": rounded(d.volts)} for f, d in parts],
            "transformers": [n for n in (*reversed([*study.connectivity.above(name)]), name) if n in transformers],
        }
    put("drop", drop, reasons)
    largest, smallest = study.largest, study.smallest
    put("fault", _faults(largest, smallest, largest.bus(name), smallest.bus(name)), largest.reasons(name))
    return figures, unknown


def feeder_studies(view: View, feeder: Feeder) -> tuple[dict[str, Any], dict[str, list[str]]]:
    """``current``, ``drop`` and ``fault_at_end`` of a closed feeder, and the reasons of what is unknown."""
    study, key = view.studies.normal, feeder.key
    figures: dict[str, Any] = {}
    unknown: dict[str, list[str]] = {}
    if key not in study.flow.built.ends:
        return figures, unknown
    why = list(study.flow.feeder_reasons(key))
    currents, drop, loss = study.judged.currents(feeder), study.judged.drop(feeder), study.flow.loss_w(key)
    figures["current"] = figures["drop"] = None
    if currents is not None:
        figures["current"] = {
            "amps": {c: rounded(abs(i)) for c, i in currents.items()},
            "largest_a": rounded(max(abs(i) for c, i in currents.items() if c != "N")),
            "neutral_a": rounded(abs(currents["N"]) if "N" in currents else None),
            "loss_w": rounded(loss),
            "load": _judged_load(study, feeder),
        }
    if drop is not None:
        figures["drop"] = {"between": list(drop.between), "volts": rounded(drop.volts), "part": rounded(drop.part)}
    for name in ("current", "drop"):
        if figures[name] is None:
            unknown[name] = why or ["not known"]
    largest, smallest = study.largest, study.smallest
    far = largest.built.ends[key][1]
    least = smallest.built.ends.get(key)
    end: dict[str, Any] | None = _faults(largest, smallest, far, least[1] if least is not None else None)
    if end is not None:
        end["largest_a"] = end["largest"]["amps"] if end["largest"] else None
        end["smallest_a"] = end["smallest"]["amps"] if end["smallest"] else None
    figures["fault_at_end"] = end
    if end is None:
        unknown["fault_at_end"] = list(largest.bus_reasons(far)) or ["not known"]
    return figures, unknown


def _judged_load(study: StateStudy, feeder: Feeder) -> dict[str, Any] | None:
    """The load that the current and the drop of a feeder are for."""
    beyond = study.judged.beyond(feeder)
    if beyond is None:
        return None
    return {
        "is": beyond.words.removeprefix("the "),
        "va": rounded(abs(beyond.judged_va)),
        "connected_va": rounded(abs(beyond.connected_va)),
    }


def _volts(study: StateStudy, name: str) -> dict[str, Any]:
    pairs = study.judged.volts(name)
    lowest, highest = lowest_of(pairs), highest_of(pairs)
    assert lowest is not None and highest is not None
    unbalance = study.flow.unbalance(name)
    return {
        "pairs": [
            {"between": list(p.between), "volts": rounded(p.volts), "nominal_v": rounded(p.nominal_v)} for p in pairs
        ],
        "lowest": {"between": list(lowest.between), "volts": rounded(lowest.volts), "part": rounded(lowest.per_unit)},
        "highest": {
            "between": list(highest.between),
            "volts": rounded(highest.volts),
            "part": rounded(highest.per_unit),
        },
        "unbalance": None
        if unbalance is None
        else {"deviation_part": rounded(unbalance.deviation), "negative_part": rounded(unbalance.negative)},
    }


def _faults(largest: FaultView, smallest: FaultView, bus: Bus | None, least: Bus | None) -> dict[str, Any] | None:
    """Both cases; None where neither is known."""
    of_max = largest.at_bus(bus) if bus is not None else {}
    of_min = smallest.at_bus(least) if least is not None else {}
    if not of_max and not of_min:
        return None
    worst = largest.worst_at(bus) if bus is not None else None
    weakest = smallest.worst_at(least) if least is not None else None
    unknown: dict[str, list[str]] = {}
    if not of_max and bus is not None:
        unknown["max"] = unknown["largest"] = list(largest.bus_reasons(bus))
    if not of_min and least is not None:
        unknown["min"] = unknown["smallest"] = list(smallest.bus_reasons(least))
    if bus is not None and "line-ground" not in of_max and of_max:
        unknown["earth"] = list(largest.bus_reasons(bus, "line-ground"))
    return {
        "max": {kind: _one(largest, fault) for kind, fault in of_max.items()},
        "min": {kind: _one(smallest, fault) for kind, fault in of_min.items()},
        "largest": None if worst is None else {**_one(largest, worst), "kind": worst.kind},
        "smallest": None if weakest is None else {**_one(smallest, weakest), "kind": weakest.kind},
        "ceiling": largest.built.ceiling.get(bus.name) if bus is not None else None,
        "unknown": unknown,
    }


def _one(view: FaultView, fault: FaultCurrent) -> dict[str, Any]:
    return {
        "amps": rounded(fault.amperes),
        "tied": list(fault.tied),
        "x_over_r": rounded(fault.x_over_r),
        "peak_a": rounded(view.peak_a(fault)),
        "asymmetrical_a": rounded(view.asymmetrical_a(fault)),
        "note": fault.note or None,
    }


def study_lines(entry: dict[str, Any], practice: str | None) -> list[str]:
    """The figures of the studies for people, as lines of ``wyeline show``."""
    lines = []
    volts, drop, fault = entry.get("voltage_under_load"), entry.get("drop"), entry.get("fault")
    if volts is not None:
        low = volts["lowest"]
        between = conductors_text(low["between"], practice, "-")
        text = f"{low['volts']:.1f} V between {between}, {100 * low['part']:.1f} % of nominal"
        if volts["unbalance"] is not None:
            text += f"; unbalance {100 * volts['unbalance']['deviation_part']:.2f} %"
        lines.append(f"  loaded    {text}")
    if drop is not None:
        if "volts" in drop:
            where = f" ({drop['volts']:.2f} V between {conductors_text(drop['between'], practice, '-')})"
        else:
            where = " in the wires from the source"
            if drop["transformers"]:
                where += f", without what {' and '.join(drop['transformers'])} loses (see loaded)"
        lines.append(f"  drop      {100 * drop['part']:.2f} %{where}")
    current = entry.get("current")
    if current is not None:
        amps = "  ".join(f"{conductor_text(c, practice)} {a:.1f} A" for c, a in current["amps"].items())
        load = current["load"]
        words = f"  for the {load['is']}, {load['va'] / 1e3:.2f} kVA" if load is not None else ""
        lines.append(f"  current   {amps}{words}")
    for word, found in (("fault", fault), ("at end", entry.get("fault_at_end"))):
        if found is None:
            continue
        for label, key, worst in (("max", "max", "largest"), ("min", "min", "smallest")):
            parts = [f"{kind} {one['amps'] / 1000:.3g} kA" for kind, one in found[key].items() if one["amps"]]
            if not parts:
                continue
            most = found[worst]
            more = ""
            if most is not None and label == "max" and most["peak_a"] is not None:
                ratio = f"X/R {most['x_over_r']:.1f}, peak" if most["x_over_r"] is not None else "peak at most"
                more = f"; {ratio} {most['peak_a'] / 1000:.3g} kA"
            ceiling = f" (a ceiling: `{found['ceiling']}` is unlimited)" if label == "max" and found["ceiling"] else ""
            lines.append(f"  {word:<8}  {label}: {', '.join(parts)}{more}{ceiling}")
    return lines
