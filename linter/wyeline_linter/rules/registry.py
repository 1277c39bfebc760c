"""What a rule is, and where all rules are found.

One rule is one small unit that documents itself: name, severity, clause, summary, reason, a wrong and a right example,
and its fix. The rule reference, ``wyeline explain``, the editor's texts and two tests a rule come from it.
"""

from __future__ import annotations

import enum
import importlib
import pkgutil
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from typing import ParamSpec

from wyeline_grammar.linking import Place
from wyeline_linter.findings import Finding, Fix, Related, Severity

Check = Callable[..., Iterable[Finding]]

SCOPES = (
    "text", "model", "equipment", "board", "transformer", "motor", "source", "feeder", "feeder line", "circuit", "line",
    "study",
)  # fmt: skip
"""``text``: found while reading a block (the grammar wing words it); ``model``: looks at the model as a whole;
``equipment``, ``board`` (also what is like a board), ``transformer``, ``motor``, ``source`` (`SOURCES`): check(view,
equipment); ``feeder``: check(view, feeder); ``feeder line``: check(view, line) of a feeder whose wires are written and
whose voltage is settled; ``circuit``: check(view, board, placed circuit); ``line``: check(view, line) of a circuit with
wires: these two are asked once for all circuits alike while they find nothing; ``study``: check(view) with
`view.studies` (load flow, faults, other switch states), run as a whole and only at rest.

A check of a circuit or a line may look at what the circuit says, its load, legs, current and purpose, the tables and
the project. Whether it finds something must not depend on length, description, place or names (`circuit_marks`).

A check of an equipment or feeder may look at its own element, the feeders at it, what stands at their other
ends, and the figures of all these: that is what an edit re-checks. Of loads it looks at its own element's only, a
feeder's check at its far end's: they change all the way up. What it says about names and places farther away is
refreshed when the rule ``roams``; fixes that depend on figures farther away are given as `findings.Offered`."""
SOURCES = frozenset({"utility", "generator", "ups", "inverter"})
"""Kinds that the checks of the scope ``source`` are asked about."""


class NotAccepted(enum.Enum):
    """Why nobody can accept a rule's findings, neither by an `allow` nor in a baseline."""

    UNCONNECTED = "what cannot be connected stays so when it is accepted, and nothing behind it is calculated"
    UNCLEAR = "while the model does not say what is meant, nothing that hangs on it is judged"
    OF_ACCEPTING = "it speaks of what is accepted"


_ROAMING = ("model", "equipment", "feeder")
"""Scopes of the checks of rules that roam."""


@dataclass(frozen=True, slots=True, eq=False)
class Rule:
    """One rule.

    ``basis`` is ``physics`` (always runs), ``us``, ``iec`` or ``both`` (runs under either code, not without one).
    ``clause`` maps ``us``/``iec`` to the clause that a reader should open; empty for physics and common practice.
    ``wrong`` must yield exactly this finding, ``right`` nothing; ``mends`` says that the first fix offered on
    ``wrong`` gives a clean model (asserted by a test). ``files`` are further files that the examples include, by path.
    ``scope`` is that of the rule's first check; ``also`` adds checks of others. ``roams``: its findings offer names, or
    show places, from the whole model, so they are judged anew when any name comes or goes or the connections change.
    ``not_accepted``: an `allow` of it takes nothing away, for that reason.
    ``of_what_goes``: told of what the project removes, too, though it could be accepted there.
    ``beside``: found by `wyeline check` in the baseline beside the model; its examples are such models without it.
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
    not_accepted: NotAccepted | None = None
    clause: dict[str, str] = field(default_factory=dict)
    mends: bool = False
    roams: bool = False
    of_what_goes: bool = False
    beside: bool = False
    files: dict[str, str] = field(default_factory=dict)
    checks: dict[str, list[Check]] = field(default_factory=dict, repr=False)
    said: dict[Check, frozenset[str]] = field(default_factory=dict, repr=False)

    def check(self, function: Check) -> Check:
        """Decorator: the function that looks for this rule's findings in its own scope."""
        return self.also(self.scope)(function)

    def also(self, scope: str, said: Iterable[str] = ()) -> Callable[[Check], Check]:
        """Decorator: a function that looks for this rule's findings in a further scope; of equipment, or of a feeder,
        only where that, or one of its circuits, says one of the keys or flags ``said``."""
        if scope not in SCOPES:
            raise ValueError(f"{self.name}: unknown scope {scope}")
        if self.roams and scope not in _ROAMING:
            raise ValueError(f"{self.name} roams: its checks are of the scopes {', '.join(_ROAMING)}")

        def add(function: Check) -> Check:
            self.checks.setdefault(scope, []).append(function)
            if said:
                self.said[function] = frozenset(said)
            return function

        return add

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
        fixes: Sequence[Fix] = (),
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


_Fields = ParamSpec("_Fields")


def _declaring(make: Callable[_Fields, Rule]) -> Callable[_Fields, Rule]:
    """What makes a rule of its fields, and enters it: so that every field of a declaration has its type checked."""

    def declared(*args: _Fields.args, **fields: _Fields.kwargs) -> Rule:
        made = make(*args, **fields)
        if made.name in _RULES:
            raise ValueError(f"rule name used twice: {made.name}")
        if made.scope not in SCOPES:
            raise ValueError(f"{made.name}: unknown scope {made.scope}")
        _RULES[made.name] = made
        return made

    return declared


rule = _declaring(Rule)
"""Declare a rule by its fields. Raises ValueError where the name is taken or the scope unknown."""


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
    """The rules with checks of a scope that run under a project's basis (None: only physics)."""
    return [r for r in all_rules().values() if scope in r.checks and applies(r, basis)]


def applies(found: Rule, basis: str | None) -> bool:
    """Whether a rule runs under a basis such as ``us-2023`` or ``iec``."""
    if found.basis == "physics":
        return True
    if basis is None:
        return False
    family = "us" if basis.startswith("us") else "iec"
    return found.basis in ("both", family)
