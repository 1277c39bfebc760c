"""``wyeline new``: a small starter model with comments, to begin from."""

from __future__ import annotations

import argparse
import os

from wyeline_grammar.sources import SourceError
from wyeline_linter.fixing import write_atomically

STARTERS = {
    ("site", "us-2023"): "starter.wye",
    ("site", "iec"): "starter_iec.wye",
    ("dwelling", "us-2023"): "starter_dwelling.wye",
    ("dwelling", "iec"): "starter_dwelling_iec.wye",
}
"""The model to begin from, by what it is of and the basis that it checks by."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("folder", metavar="DIR", help="the folder for the model; made where it is not there")
    bases, subjects = dict.fromkeys(basis for _, basis in STARTERS), dict.fromkeys(subject for subject, _ in STARTERS)
    parser.add_argument(
        "--basis", choices=bases, default="us-2023", help="the practice that it shows (default: us-2023)"
    )
    parser.add_argument("--of", choices=subjects, default="site", help="what it is a model of (default: site)")


def run(arguments: argparse.Namespace) -> int:
    from importlib import resources

    text = (
        resources.files("wyeline_grammar").joinpath(STARTERS[arguments.of, arguments.basis]).read_text(encoding="utf-8")
    )
    if not arguments.folder:
        raise SourceError('""', "an empty word names no folder")
    path = os.path.join(arguments.folder, "site.wye")
    if os.path.exists(path):
        raise SourceError(path, "there is a file already; nothing was written")
    try:
        os.makedirs(arguments.folder, exist_ok=True)
    except OSError as error:
        raise SourceError(arguments.folder, f"the folder could not be made ({error.strerror})") from None
    write_atomically(path, text)
    print(f"wrote {path}\nnext: wyeline check {path}")
    return 0
