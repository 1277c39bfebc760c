"""Why a connection cannot be made, and the least changes that make it.

`solve` searches edits by cost (uniform-cost search over `repair_routes`), applies each candidate to the texts in
memory, analyses the model again, and keeps the one to three cheapest that mend the connection and add no error.
`repairs_for` gives the same families unverified and fast, for the quick fixes of an editor.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import Item, for_connection
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.fixing import OverlapError, apply_edits
from wyeline_linter.repair_afterwards import larger_va, nearly_idle, warnings_of
from wyeline_linter.repair_legs_above import legs_further_up
from wyeline_linter.repair_link import Candidate, Link, candidates, link_of
from wyeline_linter.repair_stage import rewound
from wyeline_linter.repair_supply import (
    attribute_to_set,
    first_unknown,
    left_out,
    meeting,
    waiting_feeder,
    waiting_head,
    ways_to_keep_apart,
)
from wyeline_linter.systems import Known
from wyeline_linter.verdicts import Cause, Feeds, Refusal, Undecided
from wyeline_linter.view import View

MOST_SOLUTIONS = 3
MOST_TRIED = 12
"""Candidates verified at the most; each costs an incremental analysis."""


@dataclass(frozen=True, slots=True)
class Solution:
    """One complete way to make a connection.

    ``edits`` are whole or not at all; ``sized`` says where each size comes from; ``left`` is what only an engineer can
    give; ``comes_to_light`` are findings below the far end that nobody could see while it had no voltage; ``checklist``
    is filled from the model as mended.
    """

    title: str
    reason: str
    cost: int
    edits: tuple[Edit, ...]
    sized: tuple[str, ...]
    left: tuple[str, ...]
    checklist: tuple[Item, ...]
    comes_to_light: tuple[str, ...]
    family: str

    def fix(self) -> Fix:
        return Fix(self.title, self.edits, Safety.LOOK)


@dataclass(frozen=True, slots=True)
class Diagnosis:
    """A connection, judged. ``refusal`` is set where it cannot be made as it stands; ``unknown`` where nobody can tell
    yet (then ``at`` is where the missing fact belongs); neither where it works."""

    link: Link
    refusal: Refusal | None
    unknown: tuple[str, ...]
    at: str | None
    findings: tuple[Finding, ...]

    @property
    def works(self) -> bool:
        return self.refusal is None and not self.unknown and not self.findings


def repairs_for(view: View, feeder: Feeder) -> tuple[Fix, ...]:
    """Quick fixes of a feeder that is refused: the cheapest of each family, not verified. Empty where none is known."""
    target = view.equipment(feeder.target.name)
    if target is None or view.equipment(feeder.source.name) is None:
        return ()
    link = replace(link_of(view, feeder.source.name, target, feeder, feeder.target.port), hurried=True)
    if isinstance(link.verdict, Feeds):
        refusal = meeting(view, link)
        found = list(ways_to_keep_apart(view, link, refusal)) if refusal is not None else []
    else:
        found = _ways(view, link, everywhere=True)
    chosen: dict[str, Candidate] = {}
    for one in sorted(found, key=lambda c: c.cost):
        if one.family == "move" and not one.keeps_need:
            continue  # another board and another declaration: `connect` shows what that is worth, verified
        chosen.setdefault(one.family, one)
    return tuple(Fix(c.title, c.edits, Safety.LOOK) for c in list(chosen.values())[:MOST_SOLUTIONS])


def _ways(view: View, link: Link, *, everywhere: bool) -> list[Candidate]:
    found: list[Candidate] = []
    if isinstance(link.offered, Known):
        found = candidates(view, link, everywhere=everywhere)
        unit = rewound(view, link)
        if unit is not None:
            found.append(unit)
        found += left_out(view, link)
        found += legs_further_up(view, link)
    else:
        culprit, _ = first_unknown(view, link.source)
        made = attribute_to_set(view, culprit) if culprit is not None else None
        found = [made] if made is not None else []
    return sorted(found, key=lambda c: c.cost)


def feeder_between(view: View, source: str, target: str, port: str | None = None) -> Feeder | None:
    """The feeder from one name to another; of several, one that does not work."""
    found = [f for f in view.feeders_out_of(source) if f.target.name == target and port in (None, f.target.port)]

    def works(feeder: Feeder) -> bool:
        judged = view.feeder_state(feeder.key)
        return judged is not None and isinstance(judged.verdict, Feeds)

    return min(found, key=lambda f: (works(f), f.block.first_line), default=None)


def diagnose(view: View, source: str, target: Equipment, port: str | None = None) -> Diagnosis:
    """Whether and why (not) ``source`` feeds ``target``, by the feeder between them or by one not yet written."""
    feeder = feeder_between(view, source, target.name, port)
    link = link_of(view, source, target, feeder, port)
    if _unread(target):
        why = f"the statement of `{target.name}` is not read to its end, and names no voltage so far: mend it first"
        return Diagnosis(link, None, (why,), target.name, ())
    if isinstance(link.verdict, Refusal):
        return Diagnosis(link, link.verdict, (), None, ())
    meets = meeting(view, link)
    if meets is not None:
        return Diagnosis(link, meets, (), None, ())
    if isinstance(link.verdict, Undecided):
        culprit, refused = first_unknown(view, source)
        if isinstance(link.offered, Known):
            culprit, refused = None, None
        at = culprit.name if culprit is not None else refused.key if refused is not None else None
        return Diagnosis(link, None, link.verdict.reasons, at, ())
    state = view.state(target.name)
    if feeder is not None and state is not None and isinstance(state.winding, Refusal):
        return Diagnosis(link, state.winding, (), None, ())
    return Diagnosis(link, None, (), None, ())


def _unread(equipment: Equipment) -> bool:
    """Whether a voltage may be written on a line that is not read to its end: that is not the same as none."""
    return equipment.damaged and equipment.primary is None


def solve(view: View, source: str, target: str, port: str | None = None) -> list[Solution]:
    """The one to three cheapest verified ways to connect two names; empty where the model offers none.

    Where the connection works and only lacks its feeder, the feeder is the solution; where the trouble is further up,
    the solutions mend that. Raises KeyError for a name that is no equipment.
    """
    equipment = view.model.equipment[target]
    if _unread(equipment):
        return []
    return _solve(view, Trial(view), diagnose(view, source, equipment, port))


def _solve(view: View, trial: Trial, found: Diagnosis, depth: int = 0) -> list[Solution]:
    link = found.link
    if found.unknown and not isinstance(link.offered, Known) and depth < 8:
        _, refused = first_unknown(view, link.source)
        upper = view.equipment(refused.target.name) if refused is not None else None
        if refused is not None and upper is not None:
            further = diagnose(view, refused.source.name, upper, refused.target.port)
            return _solve(view, trial, further, depth + 1)
    ways: list[Candidate] = []
    supply = view.network.supply.get(link.target.name)
    plain = link.feeder is None and link.port is None and link.target.kind != "transfer"
    waiting = waiting_feeder(view, link.target.name) if plain else None
    solutions = _through_what_waits(view, trial, link, depth) if waiting is not None else []
    supply = supply or waiting
    instead = plain and supply is not None
    meets = found.refusal if not isinstance(link.verdict, Refusal) else None
    ways += ways_to_keep_apart(view, link, meets) if meets is not None else ()
    if instead:
        ways += _ways(view, replace(link, feeder=supply), everywhere=False)
    elif meets is None and (link.feeder is None or not isinstance(link.verdict, Feeds)):
        ways += _ways(view, link, everywhere=True)
    if link.feeder is not None:
        ways += _of_findings(trial, link, link.feeder, found.refusal)
    for candidate in sorted(ways, key=lambda c: c.cost)[:MOST_TRIED]:
        if len(solutions) == MOST_SOLUTIONS:
            break
        if any(s.family == candidate.family == "move" or s.edits == candidate.edits for s in solutions):
            continue
        made = trial.full_enough(candidate, link)
        if made is not None:
            solutions.append(made)
    return solutions


def _through_what_waits(view: View, trial: Trial, link: Link, depth: int) -> list[Solution]:
    """A feeder to the far end is there, and only its own source lacks one: the ways to feed that."""
    head = waiting_head(view, link.target.name)
    if head is None or head.name == link.source or depth >= 8:
        return []
    further = diagnose(view, link.source, head)
    if not further.works:
        return []
    way = f"`{head.name}` leads to `{link.target.name}` already"
    return [
        replace(one, title=f"{one.title}: {way}", family="through")
        for one in _solve(view, trial, further, depth + 1)[:1]
        if not one.comes_to_light
    ]


def findings_at(analysis: Analysis, link: Link) -> tuple[Finding, ...]:
    """Errors that the rules found at the feeder of a connection."""
    feeder = link.feeder
    if feeder is None:
        return ()
    return tuple(
        f for f in analysis.findings() if f.severity is Severity.ERROR and f.allowed is None and _is_at(f, feeder)
    )


def _is_at(finding: Finding, feeder: Feeder) -> bool:
    """Whether a finding is about a feeder; the feeder may be of another copy of the model."""
    place = finding.place
    return finding.subject == feeder.key or (
        place.file == feeder.block.file and place.block.first_line == feeder.block.first_line
    )


def _of_findings(trial: Trial, link: Link, feeder: Feeder, refusal: Refusal | None) -> list[Candidate]:
    """The rules' own fixes of what else is wrong at the feeder: positions, the device's rated voltage and the like."""
    found = []
    for finding in trial.analysis.findings():
        if finding.severity is not Severity.ERROR or finding.allowed is not None:
            continue
        if refusal is not None and finding.rule == refusal.cause.value:
            continue  # its fixes are those of this search
        if not _is_at(finding, feeder):
            continue
        for i, fix in enumerate(finding.fixes):
            if fix.safety is not Safety.SHOW and fix.edits:
                edits = trial.in_the_model(fix.edits)
                if edits is not None:
                    why = finding.why or finding.message
                    title = fix.title
                    found.append(Candidate(1 + i, finding.rule, title, why, edits, board=link.source, of_finding=True))
    return found


Fault = tuple[str, ...]


class Trial:
    """A copy of the model to try edits on: one full analysis, then an incremental one a candidate."""

    def __init__(self, view: View) -> None:
        store = view.model.store
        self.view = view
        self.texts = {path: store.get(path).text for path in view.model.files}

        def read(path: str) -> str:
            if path not in self.texts:
                raise SourceError(path, "there is no such file")
            return self.texts[path]

        self.files = Files(read)
        scenario = view.network.state.name
        named = {s.name.text for _, s in view.model.scenarios if s.name is not None}
        self.analysis = Analysis(
            view.model.root,
            self.files,
            view.model.workspace,
            scenario if scenario in named else None,
            view.configuration,
        )
        self.before = self._faults()
        self.warned = warnings_of(self.analysis)
        self.larger_va: float | None = None
        """What the transformer of the candidate that was verified last should have; None where it is large enough."""

    def in_the_model(self, edits: tuple[Edit, ...]) -> tuple[Edit, ...] | None:
        """Edits of the copy's blocks as edits of the model's own."""
        found = []
        for edit in edits:
            block = self.view.model.store.get(edit.block.file).block_at(edit.block.first_line)
            if block.lines != edit.block.lines:
                return None
            found.append(edit._replace(block=block))
        return tuple(found)

    def full_enough(self, candidate: Candidate, link: Link) -> Solution | None:
        """The candidate verified; through a larger transformer where the first one has no reserve and that helps."""
        self.larger_va = None
        made = self.verified(candidate, link)
        if made is None or self.larger_va is None or candidate.larger is None:
            return made
        other = candidate.larger(self.larger_va)
        return (self.verified(other, link) if other is not None else None) or made

    def verified(self, candidate: Candidate, link: Link) -> Solution | None:
        """The candidate as a solution if the model is better with it, else None. The copy is put back as it was."""
        texts: dict[str, list[Edit]] = {}
        for edit in candidate.edits:
            texts.setdefault(edit.block.file, []).append(edit)
        try:
            new = {path: apply_edits(self.texts[path], edits) for path, edits in texts.items()}
        except OverlapError:
            return None
        try:
            self._put(new)
            return self._judged(candidate, link)
        finally:
            self._put({path: self.texts[path] for path in new})

    def _put(self, texts: dict[str, str]) -> None:
        for path, text in texts.items():
            went, came = self.files.get(path).replace_text(text)
            if went or came:
                self.analysis.edited(went, came)

    def _judged(self, candidate: Candidate, link: Link) -> Solution | None:
        view = self.analysis.view
        after = self._faults()
        added = after - self.before
        touched = {link.target.name, candidate.inserted or link.target.name}
        if any(fault[0] in ("refused", "winding", "meets") and fault[-1] in touched for fault in after):
            return None
        if candidate.family != "attribute" and link.target.name not in view.network.root:
            return None
        mends = self.before - after
        if candidate.of_finding and not any(fault[0] == candidate.family for fault in mends):
            return None
        below = self._below(link.target.name)
        if link.feeder is not None and all(edit.block != link.feeder.block for edit in candidate.edits):
            below.add(link.feeder.key)  # as it stood: what is wrong with its wires could not be judged before
        light = [fault for fault in added if fault[-1] in below]
        if len(light) < len(added) or (light and not candidate.keeps_need):
            return None
        if added and not mends:
            return None
        kind = candidate.stage.kind if candidate.stage is not None else None
        left = candidate.left
        if kind == "transformer" and candidate.inserted is not None:
            self.larger_va = larger_va(view, candidate.inserted)
            idle = nearly_idle(view, candidate.inserted, link.target.name)
            left = (*left, idle) if idle else left
        left = (*left, *(text for about, text in warnings_of(self.analysis).items() if about not in self.warned))
        kind = "transfer" if candidate.family == "transfer" else kind
        return Solution(
            candidate.title,
            candidate.reason,
            candidate.cost + len(light),
            candidate.edits,
            candidate.sized,
            left,
            for_connection(view, link.target.name, candidate.inserted, kind),
            tuple(sorted(fault[1] for fault in light)),
            candidate.family,
        )

    def _below(self, name: str) -> set[str]:
        """What hangs on a name, itself not included but its circuits."""
        view = self.analysis.view
        found: set[str] = set()
        pending = [name]
        while pending:
            current = pending.pop()
            for feeder in view.feeders_out_of(current):
                if feeder.key not in found:
                    found |= {feeder.key, feeder.target.name}
                    pending.append(feeder.target.name)
        return found

    def _faults(self) -> Counter[Fault]:
        """What is wrong: (sort, words, what it is about)."""
        view = self.analysis.view
        found: Counter[Fault] = Counter()
        for key, state in view.derivation.feeders.items():
            feeder = view.model.feeders.get(key)
            if feeder is None:
                continue
            if isinstance(state.verdict, Refusal):
                found["refused", state.verdict.cause.value, feeder.target.name] += 1
            elif isinstance(state.verdict, Undecided) and isinstance(state.offered, Known):
                found["refused", Cause.UNKNOWN.value, feeder.target.name] += 1
        for name, at in view.derivation.states.items():
            if isinstance(at.winding, Refusal):
                found["winding", at.winding.why, name] += 1
        for name, others in view.network.others.items():
            found["meets", str(len(others)), name] += 1
        for finding in self.analysis.findings():
            if finding.severity is Severity.ERROR and finding.allowed is None:
                about = finding.subject or finding.place.block.lines[0]
                where = f" at {finding.position}" if finding.position else ""
                found[finding.rule, f"`{about}`{where}: {finding.rule}", about] += 1
        return found
