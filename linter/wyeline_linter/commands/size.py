"""``wyeline size``: sizes for feeders, transformers and generators with every reason, written only on request."""

from __future__ import annotations

import argparse
from collections.abc import Iterable

from wyeline_grammar.sources import Files, SourceError, read_text, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.commands.roots import one_root
from wyeline_linter.configuration import load_for
from wyeline_linter.findings import Edit
from wyeline_linter.fixing import apply_edits, write_together
from wyeline_linter.outputs.text import caution, shown_path
from wyeline_linter.sizing.asked import Sizing, sizings, written_together


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("name", metavar="NAME", nargs="?", help="a feeder, or equipment: itself and the feeders at it")
    parser.add_argument("--apply", action="store_true", help="write the sizes into the model's files")


def run(arguments: argparse.Namespace) -> int:
    files = Files()
    root = one_root(arguments.path, files)
    analysis = Analysis(root, files, workspace_of(root), configuration=load_for(root)).trusted()
    found = _asked(analysis, arguments.name)
    if arguments.apply:
        return _apply(found)
    verbose = arguments.name is not None
    for sizing in found:
        if verbose or _worth_saying(sizing):
            print(sizing.text)
    changing = [s for s in found if s.edits and not s.machine]
    if not changing and not verbose:
        print(_nothing_to_change(found))
    elif changing:
        words = " ".join(w for w in (arguments.path, _quoted(arguments.name)) if w)
        print(f"To write {'it' if len(changing) == 1 else 'them'} into the model: wyeline size {words} --apply\n")
    print(caution())
    return 0


def _nothing_to_change(found: list[Sizing]) -> str:
    """What is said of a whole model none of whose lines changes. What cannot be sized is not called large enough."""
    feeders = [sizing for sizing in found if not sizing.machine]
    if feeders and not any(sizing.sized for sizing in feeders):
        return "No feeder can be sized yet: `wyeline check` says what is missing; begin with what nothing feeds.\n"
    if not feeders:
        return "There is no feeder to size yet.\n"
    return "Every feeder that can be sized is large enough as it is written; name one for its reasons.\n"


def _quoted(name: str | None) -> str:
    import shlex

    return shlex.quote(name) if name else ""


def _asked(analysis: Analysis, name: str | None) -> list[Sizing]:
    """What sizing says of a name, of all without one. Raises SourceError with the nearest names."""
    try:
        return list(sizings(analysis, name))
    except KeyError:
        near = analysis.view.near_names(name or "")
        hint = f"; the nearest: {', '.join(near)}" if near else ""
        model = shown_path(analysis.model.root)
        raise SourceError(model, f"nothing in this model is called `{name}`{hint}") from None


def _worth_saying(sizing: Sizing) -> bool:
    """Of a whole model: what changes, and what is missing, medium-voltage cables left out."""
    if sizing.sized:
        return sizing.machine or bool(sizing.edits)
    return sizing.machine or not all("medium-voltage" in reason for reason in sizing.reasons)


def _apply(found: Iterable[Sizing]) -> int:
    chosen, together = written_together(found)
    titles = [sizing.written for sizing in chosen]
    edits: dict[str, list[Edit]] = {}
    for edit in together:
        edits.setdefault(edit.block.file, []).append(edit)
    if not edits:
        print("There is nothing to write: what can be sized is large enough.")
        return 0
    new = {path: apply_edits(read_text(path), list_of) for path, list_of in edits.items()}
    write_together(new.items())
    print(f"written to {', '.join(shown_path(p) for p in new)}:")
    for title in titles:
        print(f"  {title}")
    print(caution())
    return 0
