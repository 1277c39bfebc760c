"""What can be wrong with the text itself. The grammar wing words these findings; here is what each one is."""

from __future__ import annotations

from wyeline_linter.findings import Severity
from wyeline_linter.rules.registry import NotAccepted, rule

_ONE = "panel LP-1 208Y/120  bus 225 A\n"


def _text(
    name: str,
    summary: str,
    why: str,
    wrong: str,
    right: str,
    severity: Severity = Severity.ERROR,
    mends: bool = False,
    files: dict[str, str] | None = None,
    not_accepted: NotAccepted | None = NotAccepted.UNCLEAR,
) -> None:
    rule(
        name=name,
        since="0.1",
        severity=severity,
        scope="text",
        not_accepted=not_accepted,
        summary=summary,
        why=why,
        wrong=wrong,
        right=right,
        mends=mends,
        files=files or {},
    )


_SOURCE = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  6 m\n"

_text(
    "unreadable-line",
    "A word stands where the language has no place for it.",
    "Only what can be read is checked, so the rest of the line may be missing from every figure.",
    _SOURCE + "panel LP-1 208Y/120  bus 225 A, mian 200 A\n",
    _SOURCE + "panel LP-1 208Y/120  bus 225 A, main 200 A\n",
    mends=True,
)
_text(
    "known-slip",
    "A spelling from another habit, which can only have meant one thing.",
    "One spelling for one fact keeps reviews short and searches sure.",
    _SOURCE + "panel LP-1 208Y/120  bus 225 A, MLO\n",
    _SOURCE + "panel LP-1 208Y/120  bus 225 A, main lugs\n",
    mends=True,
)
_text(
    "detail-without-statement",
    "An indented line stands under no statement.",
    "A detail adds to the statement above it; alone it says nothing.",
    _SOURCE + _ONE + '// panel LP-2 208Y/120\n  1  20 A 1p  1 kVA lighting  "Stairs"\n',
    _SOURCE + _ONE + '  1  20 A 1p  1 kVA lighting  "Stairs"\n',
)
_text(
    "detail-out-of-place",
    "An indented line is of a kind that its statement cannot hold.",
    "Each indented line adds to the statement above it, so it must be something that statement can hold.",
    _SOURCE + _ONE + "  open UTIL -> LP-1\n",
    _SOURCE + _ONE + 'scenario "Dark"\n  open UTIL -> LP-1\n',
)
_text(
    "attribute-repeated",
    "One fact is stated twice in one statement.",
    "Two values of one fact leave the reader, and every figure below, to guess which one holds.",
    _SOURCE + "panel LP-1 208Y/120  bus 225 A, bus 400 A\n",
    _SOURCE + _ONE,
)
_text(
    "attribute-out-of-place",
    "A fact stands on a statement that does not take it.",
    "A fact in the wrong place would be read by nothing.",
    _SOURCE + "panel LP-1 208Y/120  bus 225 A, autonomy 15 min\n",
    _SOURCE + _ONE,
)
_text(
    "value-not-understood",
    "A value that is none of those a key can have.",
    "A value that is not understood would be left out of every check in silence.",
    'project "Annex"\n  basis iec-1990\n',
    'project "Annex"\n  basis iec\n',
)
_text(
    "quantity-without-unit",
    "A number stands where a unit is needed.",
    "The same digits in amperes and in kVA mean very different wires.",
    _SOURCE + "panel LP-1 208Y/120  bus 225\n",
    _SOURCE + _ONE,
)
_text(
    "dimension-mismatch",
    "A quantity measures something else than the key holds.",
    "Amperes where a length belongs would go into the wrong formula.",
    _SOURCE + "panel LP-1 208Y/120  bus 225 m\n",
    _SOURCE + _ONE,
)
_text(
    "implausible-value",
    "A value is far outside what such equipment normally has.",
    "A slip of the pen by a factor of ten passes every formula and ends in a wrong wire.",
    _SOURCE + "panel LP-1 208Y/120  bus 22500 A\n",
    _SOURCE + _ONE,
    severity=Severity.WARNING,
    not_accepted=None,
)
_text(
    "voltage-notation-unclear",
    "A voltage notation reads as none, or as more than one, system.",
    "The notation decides how many wires arrive and what lies between them; word order must not decide it unseen.",
    "utility UTIL 240/120  fault 10 kA, x/r 4\n",
    "utility UTIL 120/240  fault 10 kA, x/r 4\n",
    mends=True,
)
_text(
    "language-version-unknown",
    "The file is written for a version of the language that this Wyeline does not know.",
    "A later version may give words another meaning, so reading on would be a guess.",
    "wye 9\n",
    "wye 1\n",
)
_text(
    "include-cycle",
    "A file includes itself, directly or through others.",
    "Each file of a model is read once; a circle hides which file is the root.",
    'include "annex.wye"\n',
    'include "yard.wye"\n',
    files={"annex.wye": 'include "model.wye"\n', "yard.wye": "wye 1\n"},
)
_text(
    "include-unreadable",
    "An included file is missing or cannot be read.",
    "What is not included is in no schedule, no load total and no fault figure.",
    'include "not-there.wye"\n',
    "wye 1\n",
)
_text(
    "include-outside",
    "An include points outside the folder of the model.",
    "A model that reaches outside its folder cannot be moved, reviewed or trusted as one piece.",
    'include "../elsewhere/other.wye"\n',
    "wye 1\n",
)
