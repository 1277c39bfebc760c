"""What sizing has to say when a drafter names a feeder or a piece of equipment: in words, and as edits of the model."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Feeder
from wyeline_linter.figures import ordered_feeders, ordered_names
from wyeline_linter.findings import Edit
from wyeline_linter.sizing.lines import Proposal, size_feeder
from wyeline_linter.sizing.machines import NOTHING_HANGS, Machine, size_generator, size_transformer
from wyeline_linter.sizing.prepared import NotSized

if TYPE_CHECKING:
    from wyeline_linter.analysis import Analysis

_MACHINES = ("transformer", "generator")


@dataclass(frozen=True, slots=True)
class Sizing:
    """What is proposed for one feeder, transformer or generator.

    ``title`` says it in a line; ``reasons`` what asked for it, row by row, or where ``sized`` is false what is missing;
    ``assumed`` what was taken without being written. Without ``edits`` there is nothing to write.
    """

    subject: str
    sized: bool
    title: str
    reasons: tuple[str, ...]
    assumed: tuple[str, ...]
    edits: tuple[Edit, ...]
    machine: bool = False

    @property
    def text(self) -> str:
        """The title with its reasons below it."""
        lines = [self.title, *(f"  - {reason}" for reason in self.reasons)]
        return "\n".join([*lines, *(f"  assumed: {text}" for text in self.assumed), ""])

    @property
    def written(self) -> str:
        """What the edits put into the model, in a line."""
        return self.title.partition(";")[0] if self.machine else self.title


def sizings(analysis: Analysis, name: str | None = None) -> Iterator[Sizing]:
    """What sizing proposes: for a feeder, for equipment and the feeders at it, or without a name for all of the model.

    Raises KeyError with the name where nothing is called so.
    """
    feeders, machines = _named(analysis, name)
    for feeder in feeders:
        found = size_feeder(analysis.view, feeder, faults=True)
        yield _not_sized(found) if isinstance(found, NotSized) else _of_line(found)
    for machine in machines:
        yield _of_machine(_machine(analysis, machine))


def written_together(found: Iterable[Sizing]) -> tuple[list[Sizing], list[Edit]]:
    """Those of several sizings that can be written at once, with their edits: what two of them ask of one raceway is
    written once, and of two that differ about the same words the first counts."""
    taken: list[Edit] = []
    chosen: list[Sizing] = []
    for sizing in found:
        new = [edit for edit in sizing.edits if edit not in taken]
        if sizing.edits and not any(_clash(a, b) for a in new for b in taken):
            chosen.append(sizing)
            taken += new
    return chosen, taken


def _clash(a: Edit, b: Edit) -> bool:
    return a.block is b.block and (a.line, a.start) < (b.end_line, b.end) and (b.line, b.start) < (a.end_line, a.end)


def _named(analysis: Analysis, name: str | None) -> tuple[list[Feeder], list[str]]:
    view, model = analysis.view, analysis.model
    if name is None:
        machines = [n for n in ordered_names(view) if model.equipment[n].kind in _MACHINES]
        return ordered_feeders(view), machines
    if name in model.feeders:
        return [model.feeders[name]], []
    feeders = [*view.feeders_into(name), *view.feeders_out_of(name)]
    return feeders, [name] if model.equipment[name].kind in _MACHINES else []


def _machine(analysis: Analysis, name: str) -> Machine:
    view = analysis.view
    equipment = analysis.model.equipment[name]
    if equipment.kind == "transformer":
        return size_transformer(view, equipment)
    from wyeline_linter.studies.states import found_states

    normal, *scenarios = view.states_of_switches()
    best = size_generator(view, equipment, normal)
    if best.va is not None:
        best = _in_state(best, normal.name)
    unwritten = [zone.state for zone in found_states(view).zones]
    for state in (*scenarios, *unwritten):
        made = size_generator(view, equipment, state)
        if (made.va or 0.0) > (best.va or 0.0):
            best = _in_state(made, state.name)
        elif best.va is None and best.unknown == NOTHING_HANGS and made.unknown != NOTHING_HANGS:
            best = made
    return best


def _in_state(made: Machine, state: str) -> Machine:
    return made._replace(reasons=(f"in the switch state {state}", *made.reasons))


def _of_line(proposal: Proposal) -> Sizing:
    title = proposal.title if proposal.changes else f"`{proposal.subject}` is large enough as it is written"
    return Sizing(proposal.subject, True, title, proposal.reasons, proposal.assumed, proposal.edits)


def _not_sized(found: NotSized) -> Sizing:
    return Sizing(found.subject, False, f"`{found.subject}` cannot be sized:", found.reasons, (), ())


def _of_machine(machine: Machine) -> Sizing:
    subject = machine.subject
    if machine.va is None:
        return Sizing(subject, False, f"`{subject}` cannot be sized:", machine.unknown, (), (), True)
    stated = f"; {machine.stated_va / 1e3:g} kVA is written" if machine.stated_va is not None else ""
    small = machine.stated_va is not None and (machine.need_va or 0.0) > machine.stated_va * 1.0005
    title = f"`{subject}`: {machine.va / 1e3:.4g} kVA{stated}{', which is too small' if small else ''}"
    return Sizing(subject, True, title, machine.reasons, (), machine.edits, True)
