"""Lines that share a raceway, sized together: each heats the others, so how many sets one takes changes the rest."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.currents import Current, laid_with
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.shared_raceways import lines_in, loaded_in
from wyeline_linter.sizing.as_written import as_written_serves
from wyeline_linter.sizing.choosing import choose
from wyeline_linter.sizing.prepared import Prepared, prepared
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View


def laid_beside(view: View, line: Line, current: Current) -> Laid | None:
    """How a line lies beside all that shares its raceway: circuits as they are written, feeders with the sets that they
    take when all of them are sized."""
    if not line.shared or line.laid is None:
        return laid_with(line, current)
    members, others = _lines(view, line.shared)
    sets: dict[str, int] = view.studies.once(f"sets in {line.shared}", lambda: _settled(view, members, others))
    beside = [_with(found.line, sets[key]) for key, found in members.items() if key != line.subject]
    return laid_with(line, current, loaded_in(view, [line, *beside, *others]))


def _lines(view: View, raceway: str) -> tuple[dict[str, Prepared], list[Line]]:
    """The feeders in a raceway that can be sized, by their key, and all else that lies in it."""
    members: dict[str, Prepared] = {}
    for feeder in view.model.feeders.values():
        run = feeder.body.raceway
        if run is not None and run.named and run.stuff == raceway:
            found = prepared(view, feeder)
            if isinstance(found, Prepared):
                members[feeder.key] = found
    return members, [x for x in lines_in(view, raceway) if x.position or x.subject not in members]


def _settled(view: View, members: dict[str, Prepared], others: list[Line]) -> dict[str, int]:
    """How many sets each takes when no further one is asked for by the sets of the rest. More sets of one never let
    another do with fewer, so this ends: at the latest where a line takes the most that is looked at."""
    sets = {key: found.line.wiring.sets for key, found in members.items()}
    while True:
        lines = {key: _with(found.line, sets[key]) for key, found in members.items()}
        loaded = loaded_in(view, [*lines.values(), *others]) if lines else 0
        grown = dict(sets)
        for key, found in members.items():
            line = lines[key]
            laid = laid_with(line, found.current, loaded)
            chosen = choose(view, line, found.current, found.purpose, laid=laid)
            if isinstance(chosen, NotListed):
                continue
            written = line.body.conductors is not None
            if not written or not as_written_serves(view, line, found.current, found.purpose, chosen, laid=laid):
                grown[key] = max(sets[key], chosen[0].sets)
        if grown == sets:
            return sets
        sets = grown


def _with(line: Line, sets: int) -> Line:
    return line if line.wiring.sets == sets else replace(line, wiring=line.wiring._replace(sets=sets))
