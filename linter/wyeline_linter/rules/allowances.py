"""Allowances that silence nothing, and what a baseline accepts that has changed or gone."""

from __future__ import annotations

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Place
from wyeline_grammar.model import Allow
from wyeline_linter.findings import Finding, Fix, Safety, Severity, delete_line
from wyeline_linter.rules.registry import NotAccepted, Rule, rule

UNUSED = rule(
    name="allowance-unused",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    not_accepted=NotAccepted.OF_ACCEPTING,
    summary="An `allow` accepts a finding that is not there, or that nobody can accept.",
    why="An allowance that nothing needs would silence the next finding of that kind unseen.",
    wrong="utility UTIL 208Y/120  fault 10 kA, x/r 4\n"
    "feeder UTIL -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  6 m\n"
    'panel LP-1 208Y/120  bus 225 A\n  allow unfed-equipment "fed next year"\n',
    right="utility UTIL 208Y/120  fault 10 kA, x/r 4\n"
    "feeder UTIL -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  6 m\n"
    "panel LP-1 208Y/120  bus 225 A\n",
    mends=True,
)

_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  6 m\n"
_SPARE = 'spaces 2\n  allow few-spare-positions "a new panel stands beside it"\n'

STALE = rule(
    name="allowance-stale",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    not_accepted=NotAccepted.OF_ACCEPTING,
    summary="The figures under which a finding was accepted have changed since.",
    why="Who accepted it accepted those figures: 5 % over a limit is one judgement, half as much again is another.",
    wrong=_FED + f"// recorded in the baseline with spaces 4\npanel LP-1 208Y/120  bus 225 A, {_SPARE}"
    '  1  20 A 1p  1 kVA lighting  "Stairs"\n  2  20 A 1p  1 kVA lighting  "Yard"\n',
    right=_FED + f"// recorded in the baseline as it stands\npanel LP-1 208Y/120  bus 225 A, {_SPARE}"
    '  1  20 A 1p  1 kVA lighting  "Stairs"\n  2  20 A 1p  1 kVA lighting  "Yard"\n',
    beside=True,
)

EXCESS = rule(
    name="baseline-excess",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    not_accepted=NotAccepted.OF_ACCEPTING,
    summary="The baseline accepts a finding that is not there any more, or that nobody can accept.",
    why="An entry that nothing needs would silence the next finding of that kind unseen.",
    wrong=_FED + "// the baseline still accepts `unfed-equipment` of `LP-1`\npanel LP-1 208Y/120  bus 225 A\n",
    right=_FED + "// the baseline accepts nothing\npanel LP-1 208Y/120  bus 225 A\n",
    beside=True,
)


def unused_allowance(found: Rule, block: Block, allow: Allow, ran: bool, known: bool, never: str) -> Finding:
    """The finding for an allowance that silenced nothing; one for a rule that did not run, that is none, or whose
    findings nobody can accept (``never`` says why) says so."""
    place = Place(block, allow.rule_span)
    at = f" at {allow.place.key}" if allow.place is not None else ""
    if not known:
        message = f"no rule is called `{allow.rule}`"
        change = "Write the rule's name as the finding prints it; `wyeline rules` lists them."
    elif never:
        message = f"no `allow` can take `{allow.rule}` away: {never}"
        change = "Mend what that finding shows, and delete this line."
    elif not ran:
        message = f"`{allow.rule}` does not run under this project's basis, so nothing needs this allowance"
        change = "Delete the line, or state the basis under which the rule runs."
    else:
        message = f"nothing here needs `allow {allow.rule}{at}`"
        change = "Delete the line; the reason stays in the history of the file."
    fix = Fix("Delete the allowance", (delete_line(block, allow.span.line),), Safety.LOOK)
    return found.finding(
        place,
        message,
        found="an allowance of what nobody can accept" if never else "an allowance without its finding",
        needed="a finding that is a matter of judgement" if never else "a finding to accept",
        why="Accepting is for what a person can judge and answer for." if never else "",
        change=change,
        fixes=(fix,),
    )
