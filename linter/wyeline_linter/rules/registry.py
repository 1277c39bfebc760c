"""What a rule is, and where all rules are found.

One rule is one small unit that documents itself: name, severity, clause, summary, reason, a wrong and a right example,
and its fix. The rule reference, ``wyeline explain``, the editor's texts and two tests a rule come from it.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from wyeline_grammar.linking import Place
from wyeline_linter.findings import Finding, Fix, Related, Severity

if TYPE_CHECKING:
    from wyeline_linter.analysis import View

Check = Callable[..., Iterable[Finding]]

SCOPES = ("text", "model", "equipment", "feeder", "circuit")
"""``text``: found while reading a block (the grammar wing words it); ``model``: looks at the model as a whole;
``equipment``: check(view, equipment); ``feeder``: check(view, feeder); ``circuit``: check(view, board, placed circuit).

A rule of the last three may look at its own element, the feeders at it, what stands at their other ends, and the figures
of all these: that is what an edit re-checks."""


@dataclass(frozen=True, slots=True, eq=False)
class Rule:
    """One rule.

    ``basis`` is ``physics`` (always runs), ``us``, ``iec`` or ``both`` (runs under either code, not without one).
    ``clause`` maps ``us``/``iec`` to the clause that a reader should open; empty for physics and common practice.
    ``wrong`` must yield exactly this finding, ``right`` nothing; ``mends`` says that the first fix offered on
    ``wrong`` gives a clean model (asserted by a test).
    """

    name: str
    since: str
    severity: Severity
    scope: str
    summary: str
    why: str
    wrong: str
    right: str
    basis: str = "physics"
    clause: dict[str, str] = field(default_factory=dict)
    mends: bool = False
    checks: list[Check] = field(default_factory=list, repr=False)

    def check(self, function: Check) -> Check:
        """Decorator: the function that looks for this rule's findings."""
        self.checks.append(function)
        return function

    def finding(
        self,
        place: Place,
        message: str,
        *,
        found: str = "",
        needed: str = "",
        why: str = "",
        change: str = "",
        subject: str = "",
        position: str = "",
        severity: Severity | None = None,
        related: tuple[Related, ...] = (),
        fixes: tuple[Fix, ...] = (),
        clause: str = "",
    ) -> Finding:
        """A finding of this rule; the rule's own reason stands where no nearer one is given."""
        return Finding(
            self.name,
            self.severity if severity is None else severity,
            message,
            place,
            found,
            needed,
            why or self.why,
            change,
            clause,
            subject,
            position,
            related,
            fixes,
        )


_RULES: dict[str, Rule] = {}
_LOADED = False


def rule(**fields: Any) -> Rule:
    """Declare a rule. Raises ValueError where the name is taken or the scope unknown."""
    made = Rule(**fields)
    if made.name in _RULES:
        raise ValueError(f"rule name used twice: {made.name}")
    if made.scope not in SCOPES:
        raise ValueError(f"{made.name}: unknown scope {made.scope}")
    _RULES[made.name] = made
    return made


def all_rules() -> dict[str, Rule]:
    """Every rule by name; the modules of this package are found, not listed."""
    global _LOADED
    if not _LOADED:
        package = importlib.import_module("wyeline_linter.rules")
        for module in sorted(m.name for m in pkgutil.iter_modules(package.__path__)):
            importlib.import_module(f"wyeline_linter.rules.{module}")
        _LOADED = True
    return _RULES


def rules_for(scope: str, basis: str | None) -> list[Rule]:
    """The rules of a scope that run under a project's basis (None: only physics)."""
    return [r for r in all_rules().values() if r.scope == scope and applies(r, basis)]


def applies(found: Rule, basis: str | None) -> bool:
    """Whether a rule runs under a basis such as ``us-2023`` or ``iec``."""
    if found.basis == "physics":
        return True
    if basis is None:
        return False
    family = "us" if basis.startswith("us") else "iec"
    return found.basis in ("both", family)


def run(found: Rule, view: View, *subject: Any) -> Iterator[Finding]:
    """What a rule finds on one subject."""
    for check in found.checks:
        yield from check(view, *subject)
