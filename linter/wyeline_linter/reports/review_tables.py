"""What a reviewer reads: findings with their allowances, assumptions and gaps, and checklists."""

from __future__ import annotations

from collections.abc import Iterable

from wyeline_grammar.linking import Equipment, Place
from wyeline_linter.checklist import QUESTIONS, Item, for_connection, readings_under
from wyeline_linter.expectations import expectations_of
from wyeline_linter.findings import Severity
from wyeline_linter.outputs import summary
from wyeline_linter.reports.columns import Table, TableKind, Value, whole, words
from wyeline_linter.reports.subject import Subject, about_equipment, about_feeder
from wyeline_linter.reports.working_sheets import Sheet
from wyeline_linter.studies.measures import MEASURES, measure
from wyeline_linter.studies.working_fault import NOT_NAMED
from wyeline_linter.working import State, value_text

FINDINGS = TableKind(
    "findings",
    "Findings",
    "What the rules found on the stated facts. No finding means that no rule of the checked set failed on them; it "
    "says nothing of what was not stated.",
    (
        words("severity", "Severity", "error, warning, advice or gap: a figure that could not be told.", "`check`"),
        words("rule", "Rule", "The rule; `wyeline explain RULE` says more.", "`wyeline check`"),
        words("subject", "About", "The equipment or feeder it is about, with the position.", "`check`"),
        words("message", "Finding", "What is wrong, in one sentence.", "`wyeline check`", wide=True),
        words("found", "Found", "What stands there.", "`wyeline check`", wide=True),
        words("needed", "Needed", "What was needed.", "`wyeline check`", wide=True),
        words("why", "Why", "Why it matters.", "`wyeline check`", wide=True),
        words("change", "Change", "What to change.", "`wyeline check`", wide=True),
        words("clause", "Clause", "Where to read on.", "`wyeline check`"),
        words("allowed", "Allowed because", "Why it is accepted.", "as written: allow", wide=True),
        words("place", "Place", "File and line.", "`wyeline check`"),
    ),
)

EXPECTATIONS = TableKind(
    "expectations",
    "Expectations",
    "What the design relies on, written down as `expect` statements and judged at each run.",
    (
        words("expectation", "Expectation", "The statement.", "as written: expect", wide=True),
        words("outcome", "Outcome", "met, missed or unknown.", "`wyeline check`"),
        words("found", "Found", "The figure; of several the one that comes nearest.", "`wyeline check`", wide=True),
        words("reason", "Why not", "Why it is not met.", "`wyeline check`", wide=True),
        words("place", "Place", "File and line.", "`wyeline check`"),
    ),
)

ASSUMPTIONS = TableKind(
    "assumptions-and-gaps",
    "Assumptions and gaps",
    "Values that nobody stated and that were assumed, values that a writer marked as assumed, and figures that are "
    "unknown with what they lack.",
    (
        words("sort", "Sort", "assumed, marked as assumed, or unknown.", "derived"),
        words("subject", "About", "What it is about.", "derived"),
        words("figure", "Figure", "The figure that rests on it or lacks it.", "derived", wide=True),
        words("text", "What", "The value taken, or what is missing.", "derived", wide=True),
        whole("times", "Times", "How many figures say so.", "counted"),
        words("place", "Place", "File and line, where there is one.", "derived"),
    ),
)

CHECKLISTS = TableKind(
    "checklists",
    "Checklists",
    "What to go through at each transformer, source and board. A tick means that the model holds the fact, not that "
    "the fact is right.",
    (
        words("subject", "About", "The equipment.", "as written"),
        words("done", "Known", "x where the model shows it.", "derived"),
        words("item", "Item", "What the model shows, or what to ask.", "derived", wide=True),
    ),
)

_INSERTED = frozenset({"transformer", "ups", "generator", "inverter"})
_FAR_ENDS = frozenset({"switchgear", "switchboard", "mcc", "panel"})


def findings_table(subject: Subject) -> Table:
    """Every finding, the gravest first, accepted ones last."""
    table = Table(FINDINGS)
    view = subject.view
    found = sorted(subject.analysis.all_findings(), key=lambda f: (f.allowed is not None, -f.severity, f.sort_key))
    for finding in found:
        about = ""
        if finding.subject in view.model.equipment:
            about = about_equipment(finding.subject)
        elif finding.subject in view.model.feeders:
            about = about_feeder(finding.subject)
        place = subject.place(finding.place)
        table.add(
            {
                "severity": finding.severity.word,
                "rule": finding.rule,
                "subject": f"{finding.subject} {finding.position}".strip(),
                "message": finding.message,
                "found": finding.found,
                "needed": finding.needed,
                "why": finding.why,
                "change": finding.change,
                "clause": finding.clause,
                "allowed": finding.allowed or "",
                "place": place,
            },
            about,
            place,
        )
    table.notes.append(findings_told(subject))
    return table


def findings_told(subject: Subject) -> str:
    """How many findings of which severity there are, in a sentence."""
    found = subject.analysis.all_findings()
    shown = [f for f in found if f.allowed is None]
    counts = {word: n for word, n in summary.severities(shown).items() if n}
    told = ", ".join(f"{n} {word}{'' if n == 1 or word == 'advice' else 's'}" for word, n in counts.items())
    accepted = f"; {len(found) - len(shown)} accepted with reasons" if len(found) > len(shown) else ""
    return f"{told or 'No rule of the checked set failed on the stated facts'}{accepted}."


def errors_told(subject: Subject) -> tuple[str, ...]:
    """What a drawing or a page says of errors that stand in its model; nothing where there are none."""
    count = sum(f.severity is Severity.ERROR and f.allowed is None for f in subject.analysis.all_findings())
    if not count:
        return ()
    many = f"{count} errors stand" if count > 1 else "1 error stands"
    return (f"{many} in this model: what they are about is drawn and counted as written.",)


def expectations_table(subject: Subject) -> Table:
    """How every `expect` statement fared, in the order of the files."""
    table = Table(EXPECTATIONS)
    found = _measured(subject)
    for each in expectations_of(subject.analysis, subject.analysis.all_findings()):
        place = f"{subject.file(each.path)}:{each.row + 1}"
        row: dict[str, Value] = {"expectation": each.text, "outcome": each.outcome, "reason": each.reason}
        table.add({**row, "found": found.get((each.path, each.row), ""), "place": place}, "", place)
    return table


def _measured(subject: Subject) -> dict[tuple[str, int], str]:
    """The figure that each expectation is judged by, by file and row: of several the nearest to what is expected."""
    told = {}
    for block, statement in subject.view.model.expects:
        if statement.relation is None or statement.value is None or statement.measure not in MEASURES:
            continue
        results = list(measure(subject.view, statement))
        known = [(r.value, r) for r in results if r.value is not None]
        if not known:
            continue
        least = statement.relation == ">="
        nearest = (min if least else max)(known, key=lambda pair: pair[0])[1]
        words = f"{nearest.text}{nearest.state}"
        if len(results) > 1:
            words += f" at {nearest.subject}, the {'smallest' if least else 'largest'} of {len(known)}"
        if len(known) < len(results):
            words += f"; {len(results) - len(known)} not known"
        told[block.file, block.first_line] = words
    return told


def assumptions_and_gaps(subject: Subject, tables: list[Table], sheets: list[Sheet]) -> Table:
    """What the report rests on, and what it could not tell: from working sheets, statements and the other tables."""
    table = Table(ASSUMPTIONS)
    _marked(subject, table)
    machines = _machines(subject, table) if sheets else frozenset()
    assumed: dict[tuple[str, str], list[tuple[str, str]]] = {}
    for sheet in sheets:
        figure = sheet.figure
        for item in figure.inputs:
            if item.state is State.ASSUMED:
                where = subject.place(item.place) if item.place is not None else ""
                text = f"{item.name} {value_text(item.value, item.unit)}" + (f" ({item.note})" if item.note else "")
                assumed.setdefault((text, where), []).append((sheet.about[2:], figure.name))
        for text in figure.assumptions:
            if text not in machines:
                assumed.setdefault((text, ""), []).append((sheet.about[2:], figure.name))
    for (text, where), users in assumed.items():
        about, figures = (_some(part) for part in zip(*users, strict=True))
        values: dict[str, Value] = {"sort": "assumed", "subject": about, "figure": figures, "text": text}
        table.add({**values, "times": len(users), "place": where}, "", where)
    _gaps(table, tables)
    return table


def _some(names: Iterable[str]) -> str:
    """Each name once, the first six of them."""
    each = list(dict.fromkeys(names))
    return "; ".join(each[:6]) + (f" and {len(each) - 6} more" if len(each) > 6 else "")


def _marked(subject: Subject, table: Table) -> None:
    """Values behind the word ``assume``."""
    marked = [
        (e.name, about_equipment(e.name), fact, e.place_of(fact.name))
        for e in subject.equipment
        for fact in e.body.facts.values()
        if fact.assumed
    ]
    marked += [
        (f.key, about_feeder(f.key), fact, Place(f.block, fact.span))
        for f in subject.feeders
        for fact in f.body.facts.values()
        if fact.assumed
    ]
    for name, about, fact, place in marked:
        where = subject.place(place)
        values: dict[str, Value] = {"sort": "marked as assumed", "subject": name, "figure": fact.name}
        length = fact.value.dimension == "length" and isinstance(fact.value.data, float | int)
        text = subject.view.length_text(fact.number) if length else fact.value.text
        table.add({**values, "text": text, "times": 1, "place": where}, about, where)


def _machines(subject: Subject, table: Table) -> frozenset[str]:
    """A row of the motors, and one of what is counted as such, whose reactance follows from their size. Returns what
    working sheets say of each."""
    built = subject.view.studies.normal.largest.built
    names = {motor.name for motor in built.network.motors}
    told = [assumption for assumption in built.assumed if assumption.subject in names]
    for counted in (False, True):
        these = [a.subject for a in told if (_COUNTED in a.text) is counted]
        if these:
            what = f"{_COUNTED}, with a reactance by its size" if counted else "the reactance of a motor by its size"
            values: dict[str, Value] = {"sort": "assumed", "subject": _some(these), "figure": "largest fault current"}
            table.add({**values, "text": f"{what} (no subtransient, no lra)", "times": len(these)})
    return frozenset((NOT_NAMED, *(a.text for a in told)))


_COUNTED = "counted as a running motor"


def _gaps(table: Table, tables: list[Table]) -> None:
    """Unknown cells of the other tables, each reason of a column counted once."""
    gaps: dict[tuple[str, str], list[str]] = {}
    for other in tables:
        for row in other.rows:
            name = next((c.value for c in row.cells if isinstance(c.value, str) and c.value), "")
            for column, cell in zip(other.kind.columns, row.cells, strict=True):
                for reason in cell.unknown:
                    gaps.setdefault((f"{other.title}: {column.title}", reason), []).append(str(name))
    for (figure, reason), names in gaps.items():
        table.add({"sort": "unknown", "subject": _some(names), "figure": figure, "text": reason, "times": len(names)})


def checklists(subject: Subject) -> list[Table]:
    """One checklist for all equipment that has one, then the questions that settle an unknown voltage."""
    table = Table(CHECKLISTS)
    for equipment in subject.equipment:
        for item in _items(subject, equipment):
            values = {"subject": equipment.name, "done": "x" if item.known else "", "item": item.text}
            table.add(values, about_equipment(equipment.name), subject.place(equipment.place))
    if any(subject.of(e.name).get("system") is None for e in subject.equipment):
        table.notes.append("Where a voltage is unknown, three answers settle it: " + " ".join(QUESTIONS))
        table.notes += [f"{notation}: {reading}." for notation, reading in readings_under(subject.view.basis)]
    return [table]


def _items(subject: Subject, equipment: Equipment) -> tuple[Item, ...]:
    """The items about one piece of equipment alone: as what was inserted, or as the far end."""
    unit = equipment.kind == "charger" and equipment.arrow  # without one it is a load like others
    makes = equipment.kind in _INSERTED and equipment.statement.primary is not None
    if unit or makes or equipment.kind == "transfer":
        return for_connection(subject.view, "", equipment.name, equipment.kind, solved=True)
    if equipment.kind in _FAR_ENDS:
        return for_connection(subject.view, equipment.name, None, None)
    return ()
