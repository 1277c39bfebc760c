"""Wires as they are written, before sizing: whether they serve, and what has to go beside wires of their size."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.loads.third_harmonics import NONLINEAR_FROM
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.currents import Current, laid_with
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.purposes import Purpose
from wyeline_linter.protection.wiring import CABLES_AT_60, Wiring
from wyeline_linter.sizing.choosing import beside_of, choose, demand_of, least_pen, neutral_bears
from wyeline_linter.sizing.steps import NO_FAULTS, Faults, Sized, generous, serves
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View


def as_written_serves(
    view: View,
    line: Line,
    current: Current,
    purpose: Purpose,
    chosen: tuple[Wiring, Sized, list[str]],
    *,
    laid: Laid | None,
) -> bool:
    """Whether the wires that are written meet every requirement, and bring a neutral and a ground that go with them."""
    if not live_wires_serve(view, line, current, purpose, laid=laid):
        return False
    kept = beside_written(view, line, current, purpose, chosen, laid=laid)
    return not isinstance(kept, NotListed) and brings(line.wiring, kept[0])


def live_wires_serve(
    view: View, line: Line, current: Current, purpose: Purpose, *, laid: Laid | None, faults: Faults = NO_FAULTS
) -> bool:
    have = line.wiring
    if laid is None or len(have.temperatures_c) != 1:
        return False
    want = demand_of(view, line, current, purpose, have)._replace(faults=faults)
    cable_60 = have.insulation in CABLES_AT_60
    return serves(line.tables, have.metal, have.temperatures_c[0], laid, want, have.sets, have.size, cable_60=cable_60)


def beside_written(
    view: View,
    line: Line,
    current: Current,
    purpose: Purpose,
    chosen: tuple[Wiring, Sized, list[str]],
    *,
    laid: Laid | None,
) -> tuple[Wiring, list[str]] | NotListed:
    """Live wires that serve as they are written, with what has to go beside wires of that size: a ground grows with
    wires that are larger than asked for (NEC 250.122(B)), a jumper and a PE follow the size of the wires."""
    have, (wiring, sized_wires, reasons) = line.wiring, chosen
    if (have.sets, have.size) == (wiring.sets, wiring.size):
        return _neutral_kept(line, wiring, reasons, current, laid)
    needed = needed_size(view, line, current, purpose, laid=laid) if line.us else None
    as_written = sized_wires._replace(sets=have.sets, size=have.size, needed=needed or have.size)
    beside = beside_of(line, current, purpose, demand_of(view, line, current, purpose, have), as_written, laid)
    if isinstance(beside, NotListed):
        return beside
    made, more = beside
    if have.ground is not None and made.ground is not None:
        asked = least_pen(line, have.size) if have.pen else made.ground
        made = made._replace(ground=max(have.ground, asked, key=area_mm2))
    more = [*(f"{s.size} {s.governed}: {s.text}".lstrip() for s in sized_wires.steps), *more]
    return _neutral_kept(line, made, more, current, laid)


def _neutral_kept(
    line: Line, made: Wiring, reasons: list[str], current: Current, laid: Laid | None
) -> tuple[Wiring, list[str]]:
    """The neutral as it is written in the place of one as large as a leg, and so in the reasons; one that is too small
    for what it carries, or for the third harmonic in it, is not kept."""
    have = line.wiring
    if have.neutral is None or made.neutral is None or have.neutral == made.neutral:
        return made, reasons
    waves = current.third is not None and current.third.part > NONLINEAR_FROM
    if (waves or not neutral_bears(line, current, have, laid)) and area_mm2(have.neutral) < area_mm2(made.neutral):
        return made, reasons
    kept = f"neutral {have.neutral}: as written"
    return made._replace(neutral=have.neutral), [kept if r.startswith("neutral ") else r for r in reasons]


def brings(have: Wiring, asked: Wiring) -> bool:
    """Whether the neutral and the ground that are asked for are there, and as large."""
    if asked.neutral is not None and (have.neutral is None or area_mm2(have.neutral) < area_mm2(asked.neutral) * 0.999):
        return False
    return asked.ground is None or (have.ground is not None and area_mm2(have.ground) >= area_mm2(asked.ground) * 0.999)


def needed_size(view: View, line: Line, current: Current, purpose: Purpose, *, laid: Laid | None = None) -> str | None:
    """The size, in as many sets, from which the wires that are written count as enlarged (NEC 250.122(B)): what
    ampacity, terminals, ambient and bundling ask for without the next size up; None where they are no larger."""
    if not is_generous(view, line, current, purpose, laid=laid):
        return None
    found = choose(view, line, current, purpose, strict=True, laid=laid)
    if isinstance(found, NotListed):
        return None
    chosen, wiring = found[1], line.wiring
    if chosen.sets != wiring.sets or area_mm2(chosen.needed) >= area_mm2(wiring.size) * 0.999:
        return None
    return chosen.needed


def is_generous(view: View, line: Line, current: Current, purpose: Purpose, *, laid: Laid | None = None) -> bool:
    """Whether wires of the next smaller size, in as many sets, would carry all that the line has to, strictly counted:
    where not, `choose` finds none smaller either."""
    wiring = line.wiring
    laid = laid if laid is not None else laid_with(line, current)
    if laid is None or not wiring.temperatures_c:
        return True
    want = demand_of(view, line, current, purpose, wiring, lost=False)._replace(next_size_up=False)
    return generous(
        line.tables, wiring.metal, wiring.temperatures_c[0], laid, want, wiring.sets, wiring.size,
        cable_60=wiring.insulation in CABLES_AT_60,
    )  # fmt: skip
