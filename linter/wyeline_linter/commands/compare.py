"""``wyeline compare``: what changed between two versions of a model, what follows from it, and why."""

from __future__ import annotations

import argparse
import gc
import importlib

from wyeline_linter.findings import Severity
from wyeline_linter.printed_answers import show

_FORMATS = ("text", "markdown", "html", "json")


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("old", metavar="OLD", help="a folder, a file, a git revision, or a range such as main..HEAD")
    parser.add_argument(
        "new", metavar="NEW", nargs="?", help="the same; left out: the working tree, or the end of the range"
    )
    parser.add_argument(
        "--model", metavar="PATH", help="with git revisions: the model's file or folder (default: the current folder)"
    )
    parser.add_argument("--scenario", metavar="NAME", help="compare the model in this scenario instead of as normal")
    parser.add_argument("--format", choices=_FORMATS, default="text", help="how the comparison is written")
    parser.add_argument(
        "--fail-on",
        choices=[s.word for s in sorted(Severity, reverse=True)],
        default="error",
        help="the least gravity of a new consequence that makes the exit code 1 (default: error)",
    )


def run(arguments: argparse.Namespace) -> int:
    from wyeline_linter.review.comparison import compare_sides
    from wyeline_linter.review.revisions import sides

    if arguments.own_process:
        gc.disable()  # one short run: collecting costs more than it frees
    old, new = sides(arguments.old, arguments.new, arguments.model)
    found = compare_sides(old, new, arguments.scenario)
    writer = importlib.import_module(f"wyeline_linter.review.as_{arguments.format}")
    show(getattr(writer, arguments.format)(found).rstrip("\n") + "\n", exact=arguments.format != "text")
    threshold = Severity[arguments.fail_on.upper()]
    return 1 if any(c.gravity >= threshold for one in found for c in one.worse) else 0
