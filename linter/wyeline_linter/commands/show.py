"""``wyeline show``: the derived figures of a model."""

from __future__ import annotations

import argparse
import json
from collections.abc import Sequence
from typing import Any, Literal

from wyeline_grammar.quantities import format_quantity
from wyeline_grammar.sources import SourceError
from wyeline_linter.commands.one_model import analysis_of
from wyeline_linter.figures import figures_in_states
from wyeline_linter.load_figures import load_lines
from wyeline_linter.outputs.text import caution, shown_path, wrapped
from wyeline_linter.printed_answers import show
from wyeline_linter.studies.study_figures import study_lines
from wyeline_linter.studies.worst import WORDS as FIGURES
from wyeline_linter.system_words import conductors_text


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("name", nargs="?", metavar="NAME", help="one piece of equipment or one feeder")
    parser.add_argument("--json", action="store_true", help="figures in SI units for programs")
    parser.add_argument(
        "--scenario", metavar="NAME", help="figures in this scenario or switch state instead of as normal"
    )


def run(arguments: argparse.Namespace) -> int:
    analysis = analysis_of(arguments.path, arguments.scenario)
    figures = figures_in_states(analysis.view, arguments.name)
    if arguments.name is not None and not figures["equipment"] and not figures["feeders"]:
        near = analysis.view.near_names(arguments.name)
        hint = f"; the nearest: {', '.join(near)}" if near else ""
        raise SourceError(shown_path(analysis.model.root), f"nothing in this model is called `{arguments.name}`{hint}")
    if arguments.json:
        show(json.dumps(figures, indent=2, ensure_ascii=False) + "\n", exact=True)
        return 0
    words, basis = {s["state"]: s["words"] for s in figures["states"]}, analysis.view.basis
    for line in states_text(figures):
        print(line)
    for name, entry in figures["equipment"].items():
        print(equipment_text(name, entry, worst_text(entry, figures["state"], words), basis))
    for key, entry in figures["feeders"].items():
        worst = worst_text(entry, figures["state"], words)
        print(feeder_text(key, entry, analysis.view.units, worst, basis))
    print(caution())
    return 0


def states_text(figures: dict[str, Any]) -> list[str]:
    """Which switch states the figures under ``worst`` come from, and which are not looked at; nothing for one state."""
    others = [s["state"] for s in figures["states"] if s["state"] != figures["state"]]
    lines = []
    if others:
        lines.append(wrapped("; ".join((figures["state"], *others)), "Switch states: "))
    if figures["left_out"]:
        lines.append(wrapped("; ".join(figures["left_out"]), "Not looked at: "))
    if figures["unlocked_ties"]:
        ties = ", ".join(figures["unlocked_ties"])
        text = f"{ties}: no interlock names it, so that it closes only where one end is dead"
        lines.append(wrapped(text, "Stand open: "))
    return [*lines, ""] if lines else []


NEARLY = 0.005
"""A share by which a figure has to differ from that of the judged state to be named."""


def worst_text(entry: dict[str, Any], judged: str, words: dict[str, str]) -> list[str]:
    """The figures that another switch state makes worse, where that shows at the digits they are printed with."""
    parts = []
    here: dict[str, Any] = next((s for s in entry.get("states", ()) if s["state"] == judged), {})
    for figure, found in entry.get("worst", {}).items():
        word, times, unit, digits = FIGURES[figure]
        known, shown = here.get(figure), f"{times * found['value']:.{digits}f}"
        alike = known is not None and (
            abs(found["value"] - known) <= NEARLY * abs(known) or shown == f"{times * known:.{digits}f}"
        )
        if found["state"] != judged and not alike:
            parts.append(f"{word} {shown} {unit} {words[found['state']]}")
        if found["unknown_in"]:
            parts.append(f"{word} not known {' or '.join(words[s] for s in found['unknown_in'][:3])}")
    return [wrapped("; ".join(parts), "  worst     ")] if parts else []


def equipment_text(name: str, entry: dict[str, Any], worst: Sequence[str], practice: str | None) -> str:
    """One piece of equipment for people."""
    lines = [f"{name}  ({entry['kind']})" + (f'  "{entry["description"]}"' if entry["description"] else "")]
    if entry.get("arriving"):
        lines.append(wrapped(entry["arriving"]["in_words"], "  arriving  "))
    if entry["system"] is not None:
        word = "makes" if entry.get("arriving") else "voltage"
        lines.append(wrapped(entry["system"]["in_words"], f"  {word:<8}  "))
        pairs = [(conductors_text(p["between"], practice, "-"), p["volts"]) for p in entry["system"]["pairs"]]
        lines.append(wrapped("  ".join(f"{between} {volts:g} V" for between, volts in pairs), " " * 12))
    lines += unknown_lines(entry)
    if entry.get("load"):
        lines += load_lines(entry["load"], practice)
    lines += [*study_lines(entry, practice), *worst]
    if entry["path"]:
        lines.append(wrapped("  |  ".join(entry["path"]), "  path      "))
    return "\n".join(lines) + "\n"


def unknown_lines(entry: dict[str, Any]) -> list[str]:
    """What is not known, each figure by its words, with the reasons."""
    return [
        wrapped("; ".join(reasons), f"  {WORDS.get(figure, figure.replace('_', ' ')):<8}  unknown: ")
        for figure, reasons in entry["unknown"].items()
    ]


WORDS = {
    "voltage_under_load": "voltage under load",
    "fault_at_end": "fault at its end",
    "length_m": "length",
    "carried": "carries",
}
"""What programs call a figure, as people read it."""


def feeder_text(
    key: str, entry: dict[str, Any], units: Literal["si", "us"], worst: Sequence[str], practice: str | None
) -> str:
    """One feeder for people, lengths in the units asked for."""
    lines = [f"feeder {key}" + ("  (normally open)" if entry["normally_open"] else "")]
    if entry["refused"] is not None:
        refused = entry["refused"]
        lines += [
            wrapped(refused["why"], "  refused   "),
            wrapped(refused["found"], "  found     "),
            wrapped(refused["needed"], "  needed    "),
        ]
    elif entry["carried"] is not None:
        carried = entry["carried"]["in_words"]
        lines.append(wrapped(f"{carried}  on {conductors_text(entry['legs'], practice)}", "  carries   "))
    if entry["length_m"] is not None:
        lines.append(f"  length    {format_quantity(entry['length_m'], 'length', units)}")
    lines += [*study_lines(entry, practice), *worst]
    lines += unknown_lines(entry)
    return "\n".join(lines) + "\n"
