"""Asking the rules about a model's elements: which of them concern it, and which have answered for its like already."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable, Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Finding
from wyeline_linter.protection.lines import circuit_lines, circuit_marks
from wyeline_linter.rules.registry import SCOPES, Check, rules_for

if TYPE_CHECKING:
    from wyeline_linter.view import View


class Asking:
    """The rules that run under a basis; only those of ``scopes``. ``ran`` counts under ``rule`` what was asked.

    It remembers about which circuits a rule has nothing to say, by the marks that the view gave them: a new view needs
    a new one.
    """

    def __init__(self, basis: str | None, scopes: Collection[str], ran: Counter[str]) -> None:
        self.ran = ran
        self.checks: dict[str, list[Check]] = {}
        """By scope; ``feeder afar`` and ``equipment afar`` are those of rules that look farther than their element."""
        for scope in SCOPES:
            rules = rules_for(scope, basis) if scope in scopes else []
            afar = [r for r in rules if r.roams and scope in ("equipment", "feeder")]
            self.checks[f"{scope} afar"] = [check for rule in afar for check in rule.checks[scope]]
            self.checks[scope] = [check for rule in rules if rule not in afar for check in rule.checks[scope]]
        self._by_kind: dict[str, list[Check]] = {}
        self._quiet: dict[str, list[tuple[Check, set[int]]]] = {
            scope: [(check, set()) for check in self.checks[scope]] for scope in ("circuit", "line")
        }

    def equipment(self, view: View, equipment: Equipment) -> list[Finding]:
        """What the rules find about a piece of equipment and its circuits; without those that look afar."""
        found: list[Finding] = []
        checks = self._by_kind.get(equipment.kind)
        if checks is None:
            checks = self._by_kind[equipment.kind] = self._of_kind(equipment.kind)
        self.ran["rule"] += len(checks)
        for check in checks:
            found.extend(check(view, equipment))
        if equipment.circuits:
            if equipment.kind not in BOARDS:  # it is like a board
                for check in self.checks["board"]:
                    found.extend(check(view, equipment))
            found.extend(self._circuits(view, equipment))
        return found

    def element(self, view: View, sort: str, element: Equipment | Feeder) -> list[Finding]:
        """What the checks under a key of ``checks`` find about an element."""
        found: list[Finding] = []
        checks = self.checks[sort]
        self.ran["rule"] += len(checks)
        for check in checks:
            found.extend(check(view, element))
        return found

    def model(self, view: View) -> list[Finding]:
        """What the rules of the model as a whole find."""
        self.ran["rule"] += len(self.checks["model"])
        return [finding for check in self.checks["model"] for finding in check(view)]

    def _of_kind(self, kind: str) -> list[Check]:
        further = "board" if kind in BOARDS else kind if kind == "transformer" else None
        return [*self.checks["equipment"], *(self.checks[further] if further is not None else ())]

    def _circuits(self, view: View, board: Equipment) -> Iterator[Finding]:
        """Ask about circuits, and about those that are lines, where their like has not left a rule silent before."""
        marks = circuit_marks(view, board)
        for check, quiet in self._quiet["circuit"]:
            if marks.different <= quiet:
                continue
            for placed in board.circuits:
                mark = marks.by_place[placed.key]
                if mark not in quiet:
                    yield from self._heard(check(view, board, placed), mark, quiet)
        for check, quiet in self._quiet["line"]:
            if marks.wired <= quiet:
                continue
            for line in circuit_lines(view, board):
                mark = marks.by_place[line.position]
                if mark not in quiet:
                    yield from self._heard(check(view, line), mark, quiet)

    def _heard(self, answer: Iterable[Finding], mark: int, quiet: set[int]) -> list[Finding]:
        found = list(answer)
        self.ran["rule"] += 1
        if not found and mark >= 0:
            quiet.add(mark)
        return found
