"""Raceways with a name, and the lines that lie in them together."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Place
from wyeline_grammar.model import RacewayStatement
from wyeline_linter.protection.circuits import circuit_lines
from wyeline_linter.protection.currents import current_of, laid_with
from wyeline_linter.protection.lines import Line, feeder_line

if TYPE_CHECKING:
    from wyeline_linter.view import View


def sharing(view: View) -> Iterator[tuple[str, RacewayStatement, Place, list[Line]]]:
    """Every raceway with a name, and the lines that lie in it."""
    declared = [d for d in view.model.declared_of("raceway") if isinstance(d.statement, RacewayStatement)]
    if not declared or view.tables is None:
        return
    users: dict[str, list[Line]] = {}
    for feeder in sorted(view.model.feeders.values(), key=lambda f: (f.block.file, f.block.first_line)):
        raceway = feeder.body.raceway
        if raceway is not None and raceway.named:
            line = feeder_line(view, feeder)
            if line is not None:
                users.setdefault(raceway.stuff, []).append(line)
    for name in sorted(view.model.equipment):
        board = view.model.equipment[name]
        if any(p.circuit.body.raceway is not None and p.circuit.body.raceway.named for p in board.circuits):
            for line in circuit_lines(view, board):
                if line.shared:
                    users.setdefault(line.shared, []).append(line)
    for entry in declared:
        lines = users.get(entry.name)
        if lines and isinstance(entry.statement, RacewayStatement):
            yield entry.name, entry.statement, Place(entry.block, entry.span), lines


def loaded_in(view: View, lines: list[Line]) -> int:
    """What counts where lines share a raceway: their current-carrying wires (US), or the circuits (IEC), each set."""
    if not lines[0].us:
        return sum(x.wiring.sets for x in lines)
    return sum(_loaded(view, x) * x.wiring.sets for x in lines)


def _loaded(view: View, line: Line) -> int:
    laid = laid_with(line, current_of(view, line))
    return laid.loaded if laid is not None else line.wiring.legs


def lines_in(view: View, name: str) -> list[Line]:
    """The lines in a raceway with a name, as they are written."""
    by_name: dict[str, list[Line]] = view.studies.once(
        "lines by raceway", lambda: {found: lines for found, _, _, lines in sharing(view)}
    )
    return by_name.get(name, [])
