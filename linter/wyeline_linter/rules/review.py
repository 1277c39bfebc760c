"""What a reviewer asks before an issue goes out: which verdicts rest on assumptions, and what the title block lacks."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Place
from wyeline_linter.findings import Finding, Fix, Safety, Severity, insert_below
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.studies.case import Assumption
    from wyeline_linter.view import View

_PROJECT = 'project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
_WIRED = (
    "feeder UTIL -> TX-1  70 A 3p  3#4 + G #8 Cu THWN-2  5 m  in 1 inch EMT\n"
    "utility UTIL 480 3ph  fault 22 kA, fault-min 15 kA, x/r 6\n"
)

ASSUMED = rule(
    name="assumption-behind-verdict",
    since="0.1",
    severity=Severity.ADVICE,
    scope="study",
    summary="Fault currents and voltages rest on a value that is marked as assumed.",
    why="Every figure below it is only as good as the assumption; it has to be replaced before anyone relies on them.",
    wrong=_PROJECT + _WIRED + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, assume z 4 %, x/r 2\n",
    right=_PROJECT + _WIRED + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n",
)


@ASSUMED.check
def assumption_behind_verdict(view: View) -> Iterator[Finding]:
    found: dict[tuple[str, str], Assumption] = {}
    for study in view.studies.for_faults():
        for assumption in study.assumed():
            if assumption.written and assumption.place is not None:
                found.setdefault((assumption.subject, assumption.text), assumption)
    for assumption in found.values():
        assert assumption.place is not None
        below = _below(view, assumption.subject)
        yield ASSUMED.finding(
            assumption.place,
            f"{assumption.in_words(view.length_text)}, is assumed; the figures of {below} below rest on it",
            found="a value marked `assume`",
            needed="the value from a nameplate, a letter or a drawing",
            change="Find out the value, write it, and take `assume` away.",
            subject=assumption.subject,
        )


def _below(view: View, subject: str) -> str:
    network = view.network
    feeder = view.model.feeders.get(subject)
    start = feeder.target.name if feeder is not None else subject
    count = sum(1 for name in network.order if name == start or start in network.above(name))
    return f"{count} piece{'s' * (count != 1)} of equipment"


ISSUE = rule(
    name="issue-data-missing",
    since="0.1",
    severity=Severity.ADVICE,
    scope="study",
    summary="The project does not say which issue of the model this is.",
    why="A schedule without its revision cannot be told from the one before, and both will be on site.",
    basis="both",
    wrong='project "Kiln hall"\n  basis us-2023\n  frequency 60 Hz\n'
    + _WIRED
    + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n",
    right=_PROJECT + _WIRED + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4 %, x/r 2\n",
    mends=True,
)


@ISSUE.check
def issue_data_missing(view: View) -> Iterator[Finding]:
    if not view.model.projects:
        return
    block, statement = view.model.projects[0]
    if "revision" in statement.body.facts or statement.issues or statement.name is None:
        return
    edit = insert_below(block, statement.last_line, '  revision "A"')
    yield ISSUE.finding(
        Place(block, statement.name.span),
        "the project does not state its revision",
        found="no `issue` and no `revision`",
        needed="either, as it prints on every report",
        change='Write `revision "B"` in the project block, or a list such as `issue B 2026-04-14 "for tender"`.',
        fixes=(Fix('Write `revision "A"`', (edit,), Safety.LOOK),),
    )
