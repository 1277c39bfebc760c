"""``wyeline show``: the derived figures of a model."""

from __future__ import annotations

import argparse
import json
import sys
from typing import Any, Literal

from wyeline_grammar.quantities import format_quantity
from wyeline_grammar.sources import Files, SourceError, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.commands.roots import roots_of
from wyeline_linter.configuration import load_for
from wyeline_linter.figures import model_figures
from wyeline_linter.load_figures import load_lines
from wyeline_linter.outputs.text import caution, shown_path, wrapped
from wyeline_linter.studies.study_figures import study_lines


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("name", nargs="?", metavar="NAME", help="one piece of equipment or one feeder")
    parser.add_argument("--json", action="store_true", help="figures in SI units for programs")
    parser.add_argument("--scenario", metavar="NAME", help="figures in this scenario instead of as normal")


def run(arguments: argparse.Namespace) -> int:
    files = Files()
    roots = roots_of([arguments.path], files)
    if len(roots) > 1:
        listed = ", ".join(shown_path(r) for r in roots)
        raise SourceError(arguments.path, f"this folder holds {len(roots)} models; name one: {listed}")
    configuration = load_for(roots[0])
    analysis = Analysis(roots[0], files, workspace_of(roots[0]), arguments.scenario, configuration).trusted()
    figures = model_figures(analysis.view, arguments.name)
    if arguments.name is not None and not figures["equipment"] and not figures["feeders"]:
        near = analysis.view.near_names(arguments.name)
        hint = f"; the nearest: {', '.join(near)}" if near else ""
        raise SourceError(shown_path(roots[0]), f"nothing in this model is called `{arguments.name}`{hint}")
    if arguments.json:
        json.dump(figures, sys.stdout, indent=2, ensure_ascii=False)
        print()
        return 0
    for name, entry in figures["equipment"].items():
        print(equipment_text(name, entry))
    for key, entry in figures["feeders"].items():
        print(feeder_text(key, entry, analysis.view.units))
    print(caution())
    return 0


def equipment_text(name: str, entry: dict[str, Any]) -> str:
    """One piece of equipment for people."""
    lines = [f"{name}  ({entry['kind']})" + (f'  "{entry["description"]}"' if entry["description"] else "")]
    if entry.get("arriving"):
        lines.append(wrapped(entry["arriving"]["in_words"], "  arriving  "))
    if entry["system"] is not None:
        word = "makes" if entry.get("arriving") else "voltage"
        lines.append(wrapped(entry["system"]["in_words"], f"  {word:<8}  "))
        pairs = entry["system"]["pairs"]
        lines.append(wrapped("  ".join(f"{'-'.join(p['between'])} {p['volts']:g} V" for p in pairs), " " * 12))
    lines += unknown_lines(entry)
    if entry.get("load"):
        lines += load_lines(entry["load"])
    lines += study_lines(entry)
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


def feeder_text(key: str, entry: dict[str, Any], units: Literal["si", "us"] = "si") -> str:
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
        lines.append(wrapped(f"{entry['carried']['in_words']}  on {' '.join(entry['legs'])}", "  carries   "))
    if entry["length_m"] is not None:
        lines.append(f"  length    {format_quantity(entry['length_m'], 'length', units)}")
    lines += study_lines(entry)
    lines += unknown_lines(entry)
    return "\n".join(lines) + "\n"
