"""``wyeline report``: what the drafter hands over, as files in a folder."""

from __future__ import annotations

import argparse
import gc
import os
import sys
import time
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.sources import Files, SourceError, workspace_of
from wyeline_linter.commands.roots import one_root
from wyeline_linter.configuration import load_for
from wyeline_linter.fixing import write_together
from wyeline_linter.outputs.text import caution, shown_path, wrapped

if TYPE_CHECKING:
    from wyeline_linter.reports.diagram.papers import SheetSize
    from wyeline_linter.reports.diagram.sheets import SheetSet
    from wyeline_linter.reports.package import Package, Wishes
    from wyeline_linter.reports.since import Since

FORMATS = ("html", "csv", "md", "svg", "json")


def add_arguments(parser: argparse.ArgumentParser) -> None:
    from wyeline_linter.reports.diagram.papers import PAPERS

    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("-o", "--output", metavar="DIR", default="report", help="the folder to write (default: report)")
    parser.add_argument("--scenario", metavar="NAME", help="this switch state alone instead of the normal one first")
    parser.add_argument(
        "--only", metavar="PART", action="append", default=[], help="these parts only, with commas between them"
    )
    parser.add_argument("--format", choices=FORMATS, action="append", help="this format (again for more; default: all)")
    parser.add_argument(
        "--paper",
        metavar="SIZE",
        default="",
        help=f"paper of the diagram: {', '.join(PAPERS)} (default: wyeline.toml, else A3, in US practice tabloid)",
    )
    parser.add_argument(
        "--lettering",
        metavar="MM",
        help="height of the smallest capitals beside symbols of the diagram (default: 1.2 mm on A3 and tabloid, 1.5 mm "
        "on A2 and C, 1.8 mm on larger paper)",
    )
    parser.add_argument("--date", metavar="TEXT", default="", help="the date to print; without it none is printed")
    parser.add_argument(
        "--since",
        metavar="OLD",
        help="list and mark what changed since an earlier issue: a folder, a file or a git revision",
    )
    parser.add_argument(
        "--columns", action=_Columns, nargs=0, help="print what every column says and its source, alone"
    )


class _Columns(argparse.Action):
    """Prints the reference of all columns and ends: it is asked of no model."""

    def __call__(self, parser: argparse.ArgumentParser, *_: object) -> None:
        from wyeline_linter.printed_answers import show
        from wyeline_linter.reports.reference import reference_markdown

        show(reference_markdown(), exact=True)
        parser.exit()


def run(arguments: argparse.Namespace) -> int:
    if arguments.own_process:
        gc.disable()  # one short run: collecting costs more than it frees
    from wyeline_linter.reports.files_written import left_behind, report_files
    from wyeline_linter.reports.package import DIAGRAM, PARTS, Wishes, parts_named

    try:
        parts = parts_named(arguments.only)
    except KeyError as word:
        raise SourceError("--only", f"there is no part `{word.args[0]}`; there are {', '.join(PARTS)}") from None
    if not arguments.output:
        raise SourceError("--output", "an empty word names no folder")
    paper, lettering_mm = _paper(arguments.paper), _lettering_mm(arguments.lettering)
    root = one_root(arguments.path, Files())
    progress = Progress()
    formats = tuple(arguments.format or FORMATS)
    since = since_issue(arguments.since, root) if arguments.since is not None else None
    wishes = Wishes(parts, arguments.date, paper, since, lettering_mm)
    packages = packages_of(root, arguments.scenario, wishes, progress)
    names: list[str] = []

    def texts() -> Iterator[tuple[str, str]]:
        for name, text in report_files(packages, formats):
            progress(f"writing {name}")
            names.append(name)
            yield os.path.join(arguments.output, *name.split("/")), text

    try:
        written = write_together(texts())
    finally:
        progress.end()
    print(f"{written} file{'s' if written != 1 else ''} in {shown_path(os.path.abspath(arguments.output))}")
    if packages[0].wants(DIAGRAM) and {"html", "svg"} & set(formats):
        print(_sheets_told(packages[0].diagram, packages[0].paper))
    old = left_behind(arguments.output, names, parts)
    if old:
        print(wrapped(", ".join(old), "left there by an earlier report, no part of this one: "))
    print(caution())
    return 0


def _paper(word: str) -> str:
    """The word of a paper as it is listed. Raises SourceError where there is none of that name."""
    from wyeline_linter.reports.diagram.papers import PAPERS, paper_named

    named = paper_named(word)
    if word and named is None:
        raise SourceError("--paper", f"there is no paper `{word}`; there are {', '.join(PAPERS)}")
    return named or ""


def _lettering_mm(text: str | None) -> float | None:
    """Millimetres with or without their unit. Raises SourceError for anything else, and where nobody could read it."""
    from wyeline_linter.reports.diagram.papers import LETTERING_MM

    if text is None:
        return None
    low, high = LETTERING_MM
    try:
        found = float(text.removesuffix("mm"))
    except ValueError:
        found = 0.0
    if not low <= found <= high:
        raise SourceError("--lettering", f"`{text}` is no height from {low:g} mm to {high:g} mm")
    return found


def _sheets_told(diagram: SheetSet, size: SheetSize) -> str:
    count = len(diagram.sheets)
    least_mm = size.capitals_mm(min(sheet.scale for sheet in diagram.sheets))
    return f"one-line diagram: {count} sheet{'s' if count != 1 else ''} {size.name}, capitals {least_mm:.1f} mm and up"


def since_issue(old: str, root: str) -> Since:
    """What changed from an earlier issue to a model on disk. Raises SourceError where there is no such issue."""
    from wyeline_linter.review.comparison import versions_of
    from wyeline_linter.review.issue import since

    label, before, after = versions_of(old, root)
    return since(label, before, after)


def packages_of(
    root: str, scenario: str | None, wishes: Wishes, progress: Callable[[str], None] = lambda _: None
) -> list[Package]:
    """A package for the switch state that is asked for, or for the normal one and every scenario of the model.

    Raises SourceError where the root cannot be read or the model has no such scenario.
    """
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.network import NoSuchStateError
    from wyeline_linter.reports.package import Package

    files, workspace, configuration = Files(), workspace_of(root), load_for(root)
    try:
        first = Analysis(root, files, workspace, scenario, configuration).trusted()
    except NoSuchStateError:
        raise SourceError(shown_path(root), f"this model has no scenario `{scenario}`") from None
    made = [Package(first, wishes, progress)]
    if scenario is None:
        names = [s.name.text for _, s in first.model.scenarios if s.name is not None]
        others = (Analysis(root, files, workspace, name, configuration) for name in dict.fromkeys(names))
        made += (Package(analysis, wishes, progress) for analysis in others)
    return made


class Progress:
    """What is being done, on one line of stderr that is written over; silent for anything but a terminal, and at
    first, since a small report is done before anyone asks."""

    def __init__(self, patience_s: float = 0.5) -> None:
        self._shows = sys.stderr.isatty()
        self._next = time.monotonic() + patience_s
        self._width = 0

    def __call__(self, text: str) -> None:
        if not self._shows or time.monotonic() < self._next:
            return
        self._next = time.monotonic() + 0.1
        line = f"wyeline report: {text}"
        sys.stderr.write("\r" + line.ljust(self._width))
        sys.stderr.flush()
        self._width = len(line)

    def end(self) -> None:
        """Clear the line."""
        if self._width:
            sys.stderr.write("\r" + " " * self._width + "\r")
            sys.stderr.flush()
            self._width = 0
