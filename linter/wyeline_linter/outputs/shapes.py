"""What the JSON outputs hold: each shape once, for the functions that make them and for the schema of each output.

Amounts are in SI base units (`_v`, `_a`, `_va`, `_w`, `_m`, `_hz`, `_deg`), shares are parts of one. Unknown is null,
with the reasons under `unknown` by the name of the figure. A field that ends in `_` is a word of Python without it. No
``from __future__ import annotations`` here: the schema reads the annotations themselves.
"""

from typing import Annotated, Literal, TypedDict

from wyeline_linter.findings import Safety, Severity
from wyeline_linter.outputs.summary import OUTCOMES
from wyeline_linter.review import consequences, physical

SeverityWord = Annotated[str, tuple(s.word for s in reversed(Severity))]
Reasons = dict[str, list[str]]


# check --format json


class Position(TypedDict):
    """A place in a text: line and column from 0, columns in UTF-16 units."""

    line: int
    character: int


class Range(TypedDict):
    """A range of a text, its end excluded."""

    start: Position
    end: Position


class EditEntry(TypedDict):
    """One change of a text: the range goes, the text comes."""

    path: str
    range: Range
    text: str


class FixEntry(TypedDict):
    """A change that is proposed; only `safe` ones change nothing but the writing."""

    title: str
    safety: Annotated[str, tuple(s.value for s in Safety)]
    edits: list[EditEntry]


class RelatedEntry(TypedDict):
    """Another place that a finding speaks of."""

    path: str
    range: Range
    message: str


class FindingEntry(TypedDict):
    """A finding: what was found, needed, why, and what to change."""

    rule: str
    severity: SeverityWord
    message: Annotated[str, "One line that stands alone."]
    found: str
    needed: str
    why: str
    change: str
    clause: Annotated[str, "The clause to open; empty where there is none."]
    subject: Annotated[str, "The equipment or feeder that it is about."]
    position: Annotated[str, "The circuit that it is about; empty where it is none."]
    fingerprint: Annotated[str, "The same when lines move or figures change."]
    path: str
    range: Range
    allowed: Annotated[str | None, "The reason that accepts it."]
    related: list[RelatedEntry]
    fixes: list[FixEntry]


class UnreadEntry(TypedDict):
    """A model that could not be judged."""

    path: str
    reason: str


class ExpectationEntry(TypedDict):
    """An `expect` statement; the line counts from 0."""

    path: str
    line: int
    text: str
    outcome: Annotated[str, OUTCOMES]
    reason: str


class RuleCount(TypedDict):
    """How often a rule spoke, at which severity at the worst, and how many of these are accepted."""

    rule: str
    severity: SeverityWord
    findings: int
    allowed: int


class CheckSummary(TypedDict):
    """Counts of a check; by severity those that nobody accepted."""

    files: list[str]
    error: int
    warning: int
    advice: int
    gap: int
    allowed: int
    expectations: dict[str, int]
    off: Annotated[list[str], "Rules that the configuration switches off."]


class CheckReport(TypedDict):
    """What `wyeline check --format json` prints."""

    version: int
    caution: str
    failed: Annotated[bool, "Whether a finding reached the threshold, or the baseline accepts too much."]
    unread: list[UnreadEntry]
    findings: list[FindingEntry]
    expectations: list[ExpectationEntry]
    statistics: list[RuleCount]
    summary: CheckSummary


# compare --format json


class ChangeEntry(TypedDict):
    """One change of what the models say; the line counts from 1."""

    id: int
    kind: Annotated[str, tuple(k.value for k in physical.Kind)]
    sort: Annotated[str, "What changed: a kind of equipment, feeder, circuit, type, configuration ..."]
    subject: str
    words: str
    path: str | None
    line: int | None


class ComparedFigure(TypedDict):
    """A figure before and after, and the limit that it exceeds."""

    name: str
    unit: str
    old: float | str | None
    new: float | str | None
    limit: float | None


class ConsequenceEntry(TypedDict):
    """What follows from changes, and from which of them (`because`, by `id`)."""

    kind: Annotated[str, tuple(k.value for k in consequences.Kind)]
    gravity: SeverityWord
    subject: str
    also: Annotated[list[str], "Others alike, told in the same entry."]
    words: str
    rule: str | None
    finding: FindingEntry | None
    figure: ComparedFigure | None
    because: list[int]
    how: Annotated[
        Literal["undoes", "part", "together", "unexplained"],
        "Undoing any one change undoes it; each has a part in it; only undoing all does; none was found.",
    ]


class AddedFigure(TypedDict):
    """A figure of something that is new."""

    name: str
    unit: str
    value: float | str | None
    limit: float | None
    unknown: list[str]


class AddedEntry(TypedDict):
    """The figures of something that is new."""

    subject: str
    figures: list[AddedFigure]


class SheetEntry(TypedDict):
    """A sheet that prints something else, and of what."""

    name: str
    of: list[str]


class ModelComparison(TypedDict):
    """One model in two versions."""

    name: str
    old: str
    new: str
    scenario: str | None
    changes: list[ChangeEntry]
    worse: Annotated[list[ConsequenceEntry], "Gravest first."]
    better: list[ConsequenceEntry]
    moved: list[ConsequenceEntry]
    added: list[AddedEntry]
    sheets: list[SheetEntry]
    unknown_figures: int
    bounded: Annotated[bool, "Causes were looked for in groups only."]


class CompareReport(TypedDict):
    """What `wyeline compare --format json` prints."""

    version: int
    caution: str
    models: list[ModelComparison]
