"""Models for the tests of reports: the two examples, and small ones written where they are needed."""

from __future__ import annotations

import contextlib
import io
import json
from functools import cache
from pathlib import Path
from typing import Any

from wyeline_grammar.sources import Files, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.configuration import load_for
from wyeline_linter.reports.package import Package, Wishes

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
STATION = EXAMPLES / "field-station" / "station.wye"
DAIRY = EXAMPLES / "dairy-works" / "works.wye"

NASTY = '"><script>alert(1)</script> | [x](javascript:alert(2)) *b* `c` </style></template>'
"""A text that would leave every kind of quotation, were it not escaped."""


@cache
def package_of(root: Path, scenario: str | None = None, wishes: Wishes | None = None) -> Package:
    """A package of a model on disk, made once."""
    path = str(root)
    return Package(Analysis(path, Files(), workspace_of(path), scenario, load_for(path)), wishes)


def written(folder: Path, text: str) -> Path:
    """A model in a folder of its own."""
    root = folder / "plan.wye"
    root.write_text(text, "utf-8")
    return root


def nasty_model(folder: Path) -> Path:
    """A small model whose descriptions are an attack."""
    text = NASTY.replace('"', "'")
    return written(
        folder,
        f'''wye 1
project "{text}"
  basis us-2023
utility     GRID    480Y/277            fault 14 kA, x/r 4
switchboard MSB     480Y/277            bus 400 A, main 400 A, location "{text}"
panel       LP-1    480Y/277            bus 125 A, main lugs, spaces 12, "=HYPERLINK({text})"
  1       20 A 1p   1.8 kVA   lighting  "=1+1"
  2       20 A 1p   1.8 kVA   lighting  "{text}"
  3       20 A 1p             lighting  "no load is written"
  4       20 A 1p   1 kVA     lighting  "-5"
  5       20 A 1p   1 kVA     lighting  "@SUM(A1)"
  6       20 A 1p   1 kVA     lighting  "+cmd"
feeder GRID        -> MSB
feeder MSB         -> LP-1    100 A 3p
''',
    )


def printed(*arguments: str) -> str:
    """What a command prints on stdout."""
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        assert main(list(arguments)) == 0
    return out.getvalue()


@cache
def shown(root: Path, scenario: str | None = None) -> dict[str, Any]:
    """What ``wyeline show --json`` prints of a model."""
    more = ("--scenario", scenario) if scenario is not None else ()
    found: dict[str, Any] = json.loads(printed("show", str(root), "--json", *more))
    return found
