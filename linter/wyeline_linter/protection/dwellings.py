"""Services and feeders of dwelling units: every condition of the claim, and the share of the rating that is enough.

NEC 2023 310.12: wires of a single-phase service or feeder of 100 A to 400 A that carries the whole load of one dwelling
unit need the ampacity of 83 percent of its rating, after every factor. The next standard size up is no further relief.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.claims import DWELLING
from wyeline_linter.protection.lines import Line, first_device_a
from wyeline_linter.protection.taps import Proof
from wyeline_linter.shapes import Shape, near
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.view import View

_BOARDS = frozenset({"panel", "switchboard"})


class Relief(NamedTuple):
    """The ampacity that is enough, amperes, with its reason in words."""

    amps: float
    text: str


def relief_of(view: View, line: Line) -> Relief | None:
    """What the wires of a claimed dwelling unit must carry for their device; None where nothing is claimed, or the
    claim does not hold."""
    return _relief(line) if DWELLING in line.claims and line.us and prove(view, line).holds else None


def relief_if_claimed(view: View, line: Line) -> Relief | None:
    """What they would have to carry if somebody who knows what it serves claimed it; None where no claim would hold."""
    if DWELLING in line.claims or not line.us or line.feeder is None or not prove(view, line).holds:
        return None
    return _relief(line)


def prove(view: View, line: Line) -> Proof:
    """Check every condition of the claim on a line; that the load is all of one unit is what the claim itself says."""
    proof = Proof(DWELLING)
    service = _is_service(view, line)
    _system(line, service, proof)
    _rating(line, proof)
    target = line.target
    if target is None or target.kind not in _BOARDS:
        proof.failed.append("it does not end in a board")
    if line.source.kind in _BOARDS:
        for above in view.feeders_into(line.source.name):
            if any(claim.name == DWELLING for claim in above.statement.claims):
                proof.failed.append(f"`{above.key}` is claimed to carry the whole load of a dwelling unit, this a part")
    return proof


def _is_service(view: View, line: Line) -> bool:
    maker = view.equipment(line.maker)
    return line.guard is None and maker is not None and maker.kind == "utility"


def _system(line: Line, service: bool, proof: Proof) -> None:
    system = line.system
    legs = system.legs
    across = system.nominal_v(legs[0], legs[1]) if len(legs) == 2 else 0.0
    if system.shape is Shape.SPLIT3 and near(across, 240.0):
        proof.met.append("120/240 V, single-phase")
    elif system.shape is Shape.TWO_LEGS3 and near(across, 208.0):
        if service:
            proof.failed.append("two legs of 208Y/120 are for feeders, and these are service wires")
        else:
            proof.met.append("a feeder of two legs and the neutral of 208Y/120")
    else:
        proof.failed.append("it carries neither 120/240 V, single-phase, nor two legs and the neutral of 208Y/120")


def _rating(line: Line, proof: Proof) -> None:
    rating = rating_a(line)
    least, most = (line.tables.value_of(name) for name in ("dwelling-least", "dwelling-most"))
    if rating is None:
        proof.missing.append(f"the device that it ends in at `{line.target.name if line.target else ''}`")
    elif least <= rating <= most:
        proof.met.append(f"rated {rating:g} A")
    else:
        proof.failed.append(f"its rating is {rating:g} A, and not {least:g} A to {most:g} A")


def rating_a(line: Line) -> float | None:
    """The rating of a service or feeder: its device, or where it has none the one that it ends in; amperes."""
    return line.guard.amps if line.guard is not None else first_device_a(line)


def _relief(line: Line) -> Relief | None:
    rating = rating_a(line)
    percent = line.tables.constant("dwelling-percent")
    if rating is None or not isinstance(percent, Looked):
        return None
    amps = rating * percent.value / 100
    part = "B" if line.guard is not None else "A"
    return Relief(amps, f"{percent.value:g} % of the {rating:g} A of one dwelling unit (NEC 2023 310.12({part}))")
