"""The commands of ``wyeline``, one file each: ``add_arguments(parser)`` and ``run(arguments) -> exit code``."""

from __future__ import annotations

COMMANDS: dict[str, str] = {
    "check": "check models and say what does not work, and why",
    "show": "print the derived figures of equipment and feeders",
    "connect": "say why a connection cannot be made and what connects it",
    "compare": "say what changed between two versions of a model, what follows from it, and why",
    "report": "write the one-line diagram, schedules, tables and working sheets",
    "preview": "show diagram and findings in a browser and follow the files as they are saved",
    "size": "propose devices, wires, raceways, transformers and generators, with the reasons",
    "explain": "explain a rule, or show how a figure was worked out",
    "rules": "list the rules",
    "schema": "print the JSON Schema of what another command prints as JSON",
    "format": "set files in the fixed columns",
    "new": "write a small starter model to begin from",
}
"""Each name is a module of this package (``format`` is ``format_files``)."""
