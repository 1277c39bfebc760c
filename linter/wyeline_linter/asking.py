"""Asking the rules about a model's elements: which of them concern it, and which have answered for its like already."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Mapping
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Feeder, PlacedCircuit
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Finding
from wyeline_linter.protection.circuits import circuit_lines, circuit_marks
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.removed import staying
from wyeline_linter.rules.registry import SCOPES, SOURCES, Check, all_rules, rules_for

if TYPE_CHECKING:
    from wyeline_grammar.model import Body
    from wyeline_linter.view import View


class Sifted:
    """Checks, of which some are asked only about what says one of their words."""

    def __init__(self, checks: Iterable[Check], said: Mapping[Check, frozenset[str]]) -> None:
        checks = list(checks)
        self.always = [check for check in checks if check not in said]
        self._others = [(check, said[check]) for check in checks if check in said]
        self._words = frozenset(word for _, words in self._others for word in words)

    def of(self, body: Body, circuits: Collection[PlacedCircuit] = ()) -> list[Check]:
        """Those that concern what says this, itself or in its circuits."""
        said = self._words.intersection(body.facts).union(self._words.intersection(body.flags))
        for sense in {placed.circuit.sense for placed in circuits} if circuits else ():
            said |= self._words & sense.words
        if not said:
            return self.always
        return self.always + [check for check, words in self._others if not words.isdisjoint(said)]


_SCOPES_OF_KINDS = ("board", "source", "transformer", "motor")


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
        self._said = {check: words for rule in all_rules().values() for check, words in rule.said.items()}
        self._by_kind: dict[str, Sifted] = {}
        self._like_boards = Sifted(self.checks["board"], self._said)
        self._of_feeders = Sifted(self.checks["feeder"], self._said)
        self._quiet: dict[str, list[tuple[Check, set[int]]]] = {
            scope: [(check, set()) for check in self.checks[scope]] for scope in ("circuit", "line")
        }

    def equipment(self, view: View, equipment: Equipment) -> list[Finding]:
        """What the rules find about a piece of equipment and its circuits; without those that look afar."""
        sifted = self._by_kind.get(equipment.kind)
        if sifted is None:
            sifted = self._by_kind[equipment.kind] = Sifted(self._of_kind(equipment.kind), self._said)
        checks = sifted.of(equipment.body, equipment.circuits)
        found = self._asked(checks, view, equipment)
        if equipment.circuits:
            if equipment.kind not in BOARDS:  # it is like a board
                found += self._asked(self._like_boards.of(equipment.body, equipment.circuits), view, equipment)
            found.extend(self._circuits(view, equipment))
        return staying(view.model, found) if found else found

    def feeder(self, view: View, feeder: Feeder) -> list[Finding]:
        """What the rules find about a feeder and its wires; without those that look afar."""
        found = self._asked(self._of_feeders.of(feeder.body), view, feeder)
        line = feeder_line(view, feeder)
        if line is not None:
            found += self._asked(self.checks["feeder line"], view, line)
        return staying(view.model, found) if found else found

    def element(self, view: View, sort: str, element: Equipment | Feeder) -> list[Finding]:
        """What the checks under a key of ``checks`` find about an element."""
        found = self._asked(self.checks[sort], view, element)
        return staying(view.model, found) if found else found

    def model(self, view: View) -> list[Finding]:
        """What the rules of the model as a whole find."""
        self.ran["rule"] += len(self.checks["model"])
        return [finding for check in self.checks["model"] for finding in check(view)]

    def _asked(self, checks: list[Check], view: View, about: object) -> list[Finding]:
        self.ran["rule"] += len(checks)
        return [finding for check in checks for finding in check(view, about)]

    def _of_kind(self, kind: str) -> list[Check]:
        further = "board" if kind in BOARDS else "source" if kind in SOURCES else kind
        return [*self.checks["equipment"], *(self.checks[further] if further in _SCOPES_OF_KINDS else ())]

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
