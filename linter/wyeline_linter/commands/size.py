"""``wyeline size``: sizes for feeders, transformers and generators with every reason, written only on request."""

from __future__ import annotations

import argparse
from collections.abc import Iterable

from wyeline_grammar.linking import Feeder
from wyeline_grammar.sources import Files, SourceError, read_text, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.commands.roots import one_root
from wyeline_linter.configuration import load_for
from wyeline_linter.figures import ordered_feeders, ordered_names
from wyeline_linter.findings import Edit
from wyeline_linter.fixing import apply_edits, write_atomically
from wyeline_linter.outputs.text import caution, shown_path
from wyeline_linter.sizing.lines import NotSized, Proposal, size_feeder
from wyeline_linter.sizing.machines import Machine, size_generator, size_transformer


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("name", metavar="NAME", nargs="?", help="a feeder, or equipment: itself and the feeders at it")
    parser.add_argument("--apply", action="store_true", help="write the sizes into the model's files")


def run(arguments: argparse.Namespace) -> int:
    files = Files()
    root = one_root(arguments.path, files)
    analysis = Analysis(root, files, workspace_of(root), configuration=load_for(root)).trusted()
    feeders, machines = _asked(analysis, arguments.name)
    sized = [size_feeder(analysis.view, f) for f in feeders]
    made = [_machine(analysis, name) for name in machines]
    found = [m for m in made if m is not None]
    proposals = [p for p in sized if isinstance(p, Proposal)]
    if arguments.apply:
        return _apply(proposals, found)
    verbose = arguments.name is not None
    for each in sized:
        text = _not_sized(each, verbose) if isinstance(each, NotSized) else _proposal(each, verbose)
        if text:
            print(text)
    for machine in found:
        print(_machine_text(machine))
    changing = [p for p in proposals if p.changes]
    if not changing and not verbose:
        print("Every feeder that can be sized is large enough as it is written; name one for its reasons.\n")
    elif changing:
        words = " ".join(w for w in (arguments.path, _quoted(arguments.name)) if w)
        print(f"To write {'it' if len(changing) == 1 else 'them'} into the model: wyeline size {words} --apply\n")
    print(caution())
    return 0


def _quoted(name: str | None) -> str:
    import shlex

    return shlex.quote(name) if name else ""


def _asked(analysis: Analysis, name: str | None) -> tuple[list[Feeder], list[str]]:
    """Feeders and equipment that a name means; all without one. Raises SourceError with the nearest names."""
    view, model = analysis.view, analysis.model
    if name is None:
        machines = [n for n in ordered_names(view) if model.equipment[n].kind in ("transformer", "generator")]
        return ordered_feeders(view), machines
    if name in model.feeders:
        return [model.feeders[name]], []
    if name in model.equipment:
        feeders = [*view.feeders_into(name), *view.feeders_out_of(name)]
        return feeders, [name] if model.equipment[name].kind in ("transformer", "generator") else []
    near = view.near_names(name)
    hint = f"; the nearest: {', '.join(near)}" if near else ""
    raise SourceError(shown_path(model.root), f"nothing in this model is called `{name}`{hint}")


def _machine(analysis: Analysis, name: str) -> Machine | None:
    view = analysis.view
    equipment = analysis.model.equipment[name]
    if equipment.kind == "transformer":
        return size_transformer(view, equipment)
    best: Machine | None = None
    for state in view.states_of_switches():
        made = size_generator(view, equipment, state)
        if best is None or (made.va or 0.0) > (best.va or 0.0):
            best = made if made.va is None else _in_state(made, state.name)
    return best


def _in_state(made: Machine, state: str) -> Machine:
    from dataclasses import replace

    return replace(made, reasons=(f"in the switch state {state}", *made.reasons))


def _proposal(proposal: Proposal, verbose: bool) -> str:
    if not proposal.changes and not verbose:
        return ""
    head = proposal.title if proposal.changes else f"`{proposal.subject}` is large enough as it is written"
    lines = [head, *(f"  - {reason}" for reason in proposal.reasons)]
    lines += [f"  assumed: {text}" for text in proposal.assumed]
    return "\n".join([*lines, ""])


def _not_sized(found: NotSized, verbose: bool) -> str:
    if not verbose and all("medium-voltage" in r for r in found.reasons):
        return ""
    return "\n".join([f"`{found.subject}` cannot be sized:", *(f"  - {r}" for r in found.reasons), ""])


def _machine_text(machine: Machine) -> str:
    if machine.va is None:
        return "\n".join([f"`{machine.subject}` cannot be sized:", *(f"  - {r}" for r in machine.unknown), ""])
    stated = f"; {machine.stated_va / 1e3:g} kVA is written" if machine.stated_va is not None else ""
    small = machine.stated_va is not None and (machine.need_va or 0.0) > machine.stated_va * 1.0005
    head = f"`{machine.subject}`: {machine.va / 1e3:.4g} kVA{stated}{', which is too small' if small else ''}"
    return "\n".join([head, *(f"  - {reason}" for reason in machine.reasons), ""])


def _apply(proposals: Iterable[Proposal], machines: Iterable[Machine]) -> int:
    edits: dict[str, list[Edit]] = {}
    titles = []
    for proposal in proposals:
        if proposal.changes:
            titles.append(proposal.title)
            for edit in proposal.edits:
                edits.setdefault(edit.block.file, []).append(edit)
    for machine in machines:
        if machine.edits:
            titles.append(f"`{machine.subject}`: {(machine.va or 0.0) / 1e3:g} kVA")
            for edit in machine.edits:
                edits.setdefault(edit.block.file, []).append(edit)
    if not edits:
        print("There is nothing to write: what can be sized is large enough.")
        return 0
    before = {path: read_text(path) for path in edits}
    new = {path: apply_edits(before[path], list_of) for path, list_of in edits.items()}
    written: list[str] = []
    try:
        for path, text in new.items():
            write_atomically(path, text)
            written.append(path)
    except SourceError:
        for path in written:  # all files or none
            write_atomically(path, before[path])
        raise
    print(f"written to {', '.join(shown_path(p) for p in new)}:")
    for title in titles:
        print(f"  {title}")
    print(caution())
    return 0
