"""Feeders sized as the model stands: device, wires, neutral, ground, parallel sets and raceway, with the reasons."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Feeder
from wyeline_grammar.model import Span
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.findings import Edit, Fix, Safety
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.currents import Current, current_of, laid_with, line_voltage
from wyeline_linter.protection.dwellings import relief_of
from wyeline_linter.protection.lines import METAL_RACEWAYS, Line, first_device_a
from wyeline_linter.protection.purposes import ONE_LOAD, TAPS, Purpose, purpose_of, required_a
from wyeline_linter.protection.taps import least_of_tap
from wyeline_linter.protection.wiring import CABLES_AT_60, Wiring
from wyeline_linter.protection.withstand import withstand_of
from wyeline_linter.sizing.devices import Device
from wyeline_linter.sizing.prepared import NotSized, is_below, prepared
from wyeline_linter.sizing.sharing import laid_beside
from wyeline_linter.sizing.steps import (
    Demand,
    Ground,
    Sized,
    drop_percent,
    generous,
    ground_for,
    jumper_for,
    serves,
    sized,
)
from wyeline_linter.sizing.writing import raceway_edit_of, raceway_for, rating_edit, trade_of, wires_text
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.analysis import View


class Proposal(NamedTuple):
    """Sizes for one feeder.

    ``device``, ``wires`` and ``raceway`` are phrases of the language (empty: nothing to write); ``reasons`` say what
    asked for each step and by which row; ``assumed`` what was taken without being written; ``edits`` put it in.
    """

    subject: str
    device: str
    wires: str
    raceway: str
    reasons: tuple[str, ...]
    assumed: tuple[str, ...]
    edits: tuple[Edit, ...]

    @property
    def changes(self) -> bool:
        return bool(self.edits)

    @property
    def title(self) -> str:
        parts = [p for p in (self.device, self.wires, f"in {self.raceway}" if self.raceway else "") if p]
        return f"Size `{self.subject}`: {', '.join(parts)}"

    def fix(self) -> Fix:
        """The proposal as a fix that wants a look."""
        return Fix(self.title, self.edits, Safety.LOOK)


def size_feeder(view: View, feeder: Feeder, *, withstand: bool = False) -> Proposal | NotSized:
    """Sizes for a feeder as it stands: what is written is kept where it serves, and completed or enlarged where not.

    ``withstand``: the largest fault counts too, which asks the fault study (not on every keystroke).
    """
    found = prepared(view, feeder)
    if isinstance(found, NotSized):
        return found
    line, current, purpose, device, reasons = found
    fault = withstand_of(view, line) if withstand else None
    fault_mm2 = fault.least_mm2 if fault is not None else None
    laid = laid_beside(view, line, current)
    chosen = choose(view, line, current, purpose, laid=laid, fault_mm2=fault_mm2)
    if isinstance(chosen, NotListed):
        return NotSized(feeder.key, (chosen.reason,))
    wiring, _, more = chosen
    reasons += more
    fits = feeder.body.conductors is not None and as_written_serves(
        view, line, current, purpose, wiring, laid=laid, fault_mm2=fault_mm2
    )
    return _proposal(feeder, line, device, wiring, reasons, fits=fits)


def demand_of(
    view: View, line: Line, current: Current, purpose: Purpose, wiring: Wiring, *, lost: bool = True
) -> Demand:
    """What the wires of a line are sized for; without the voltage lost on it where ``lost`` is False."""
    need = required_a(view, line, current, purpose) or 0.0
    guard = line.guard
    exempt = purpose in ONE_LOAD or purpose in (Purpose.SECONDARY, Purpose.SERVICE, Purpose.SOURCE, Purpose.TAP)
    device_a = guard.amps if guard is not None else 0.0
    if purpose in (Purpose.SECONDARY, Purpose.SERVICE) and line.target is not None:
        ends_in = first_device_a(line)
        if ends_in is not None:
            device_a, exempt = ends_in, False
    limit = _drop_target(view, line) if lost else 0.0
    least_a, least_why = least_of_tap(view, line) if line.claims & TAPS else (0.0, "")
    drop = None
    if limit and current.design_a:
        drop = _drop(view, line, current, wiring)
    design_a = current.design_a or 0.0
    relief = relief_of(view, line)
    if relief is not None:
        need, design_a = min(need, relief.amps), min(design_a, relief.amps)
    return Demand(
        device_a,
        guard.kind if guard is not None else "breaker",
        design_a,
        need,
        purpose is not Purpose.SECONDARY,
        exempt,
        drop,
        limit,
        least_sets=wiring.sets,
        least_a=least_a,
        least_why=least_why,
        relief_a=relief.amps if relief is not None else 0.0,
        relief_why=relief.text if relief is not None else "",
    )


def _drop_target(view: View, line: Line) -> float:
    project = view.model.project
    branch, path = project.number("drop-branch"), project.number("drop-path")
    last = line.target is None or line.target.kind in ("motor", "load", "charger", "drive", "capacitor")
    if last:
        return 100 * branch if branch is not None else 0.0
    return 100 * (path - branch) if path is not None and branch is not None and path > branch else 0.0


def _drop(view: View, line: Line, current: Current, wiring: Wiring) -> Callable[[int, str], float | None] | None:
    length = line.body.number("length")
    if length is None or not current.design_a or line.target is None:
        return None
    amount = view.loads.counted(line.target.name).demand.va
    pf = amount.real / abs(amount) if abs(amount) else 1.0
    stuff = line.body.raceway.stuff if line.body.raceway is not None else ""
    conduit = "steel" if stuff in METAL_RACEWAYS else "pvc"
    return drop_percent(
        line.tables, wiring.metal, amps=current.design_a, length_m=length, volts=line_voltage(line.system),
        legs=len(line.system.legs), pf=max(0.0, min(1.0, pf)), conduit=conduit,
    )  # fmt: skip


def choose(
    view: View,
    line: Line,
    current: Current,
    purpose: Purpose,
    *,
    strict: bool = False,
    laid: Laid | None = None,
    fault_mm2: float | None = None,
) -> tuple[Wiring, Sized, list[str]] | NotListed:
    """The wires of a line at their right size, with the reasons; keeps metal, insulation and what is pulled along.

    ``strict``: without the next size up, which is what an enlargement is counted from. ``fault_mm2``: the least area of
    all sets together that bears a fault.
    """
    wiring = line.wiring
    laid = laid if laid is not None else laid_with(line, current)
    assert laid is not None
    insulation_c = wiring.temperatures_c[0] if wiring.temperatures_c else 0.0
    want = demand_of(view, line, current, purpose, wiring)._replace(fault_mm2=fault_mm2)
    if strict:
        want = want._replace(next_size_up=False)
    if not insulation_c:
        return NotListed(f"the tables do not hold {wiring.insulation}")
    cable_60 = wiring.insulation in CABLES_AT_60
    found = sized(line.tables, wiring.metal, insulation_c, laid, want._replace(least_sets=1), cable_60=cable_60)
    if isinstance(found, NotListed):
        return found
    reasons = [f"{s.size} {s.governed}: {s.text}".lstrip() for s in found.steps]
    ground, role = wiring.ground, wiring.ground_role
    if ground is not None and role != "PEN":
        made: Ground | NotListed
        if purpose is Purpose.SECONDARY and line.us:
            made = jumper_for(line.tables, wiring.metal, found)
        else:
            made = ground_for(line.tables, want.device_a or (current.sizing_a or 0.0), wiring.metal, found)
        if isinstance(made, NotListed):
            return made
        ground = made.size
        reasons.append(made.text)
    elif role == "PEN":
        ground = found.size
    neutral = found.size if wiring.neutral is not None else None
    if neutral is not None:
        reasons.append(f"neutral {neutral}: as large as a leg")
    return wiring._replace(sets=found.sets, size=found.size, neutral=neutral, ground=ground), found, reasons


def is_generous(view: View, line: Line, current: Current, purpose: Purpose) -> bool:
    """Whether wires of the next smaller size, in as many sets, would carry all that the line has to, strictly counted:
    where not, `choose` finds none smaller either."""
    wiring, laid = line.wiring, laid_with(line, current)
    if laid is None or not wiring.temperatures_c:
        return True
    want = demand_of(view, line, current, purpose, wiring, lost=False)._replace(next_size_up=False)
    return generous(
        line.tables, wiring.metal, wiring.temperatures_c[0], laid, want, wiring.sets, wiring.size,
        cable_60=wiring.insulation in CABLES_AT_60,
    )  # fmt: skip


def _proposal(
    feeder: Feeder, line: Line, device: Device | None, wiring: Wiring, reasons: list[str], *, fits: bool
) -> Proposal:
    iec = line.tables.practice == "iec"
    body, block = feeder.body, feeder.block
    written = body.conductors
    text = wires_text(wiring, iec=iec)
    edits: list[Edit] = []
    target = feeder.statement.target
    assert target is not None
    row, at = target.span.line, target.span.end
    for key in ("rating", "frame", "curve", "fuse"):
        fact = body.facts.get(key)
        if fact is not None and fact.span.line == row:
            at = max(at, fact.span.end)
    if body.poles_span is not None and body.poles_span.line == row:
        at = max(at, body.poles_span.end)
    device_text = ""
    if device is not None:
        poles = f" {len(line.system.live_legs)}p" if line.system.frequency_hz else " 2p"
        fuse = "" if device.kind != "fuse" else " fuse " + ("J" if not iec else "gG")
        device_text = f"{device.amps:g} A{poles}{fuse}"
    added = device_text
    other = rating_edit(block, body, device.amps) if device is not None else None
    if other is not None:
        edits.append(other)
        device_text, added = other.text, ""
    if written is None:
        insert = "  ".join(t for t in (added, text) if t)
        edits.append(Edit(block, row, at, row, at, f"  {insert}"))
    else:
        if added:
            edits.append(Edit(block, row, at, row, at, f"  {added}"))
        if not fits:
            span: Span = written.span
            edits.append(Edit(block, span.line, span.start, span.line, span.end, text))
        else:
            text = ""
    raceway = ""
    if body.raceway is not None and not body.raceway.named and (text or body.raceway.trade_size is None):
        made = raceway_for(
            line.tables, body.raceway.stuff, wiring, together="together" in body.flags, nipple="nipple" in body.flags
        )
        edit = raceway_edit_of(block, body, made[0]) if made is not None else None
        if made is not None and edit is not None and trade_of(body.raceway.trade_size or "") != made[0].split()[0]:
            raceway = made[0]
            edits.append(edit)
            reasons.append(made[1])
    assumed = list(line.assumed)
    if written is None:
        assumed.append(f"copper {wiring.insulation}, as no wires are written")
    elif wiring.metal_assumed:
        assumed.append("copper, as no metal is written")
    return Proposal(feeder.key, device_text, text, raceway, tuple(reasons), tuple(assumed), tuple(edits))


def as_written_serves(
    view: View,
    line: Line,
    current: Current,
    purpose: Purpose,
    chosen: Wiring,
    *,
    laid: Laid | None,
    fault_mm2: float | None = None,
) -> bool:
    """Whether the wires that are written meet every requirement, and bring neutral and ground of the size chosen."""
    have = line.wiring
    if laid is None or len(have.temperatures_c) != 1:
        return False
    want = demand_of(view, line, current, purpose, have)._replace(fault_mm2=fault_mm2)
    cable_60 = have.insulation in CABLES_AT_60
    if not serves(line.tables, have.metal, have.temperatures_c[0], laid, want, have.sets, have.size, cable_60=cable_60):
        return False

    def enough(one: str | None, other: str | None) -> bool:
        return other is None or (one is not None and area_mm2(one) >= area_mm2(other) * 0.999)

    ground = chosen.ground if have.sets == chosen.sets and have.size == chosen.size else None
    return enough(have.ground, ground) and (chosen.neutral is None or have.neutral is not None)


def resized(view: View, line: Line, laid: Laid | None = None) -> tuple[Fix, ...]:
    """A fix that puts wires of the right size in the place of those written; none where no size can be told.

    Where the device too is smaller than the load, wires alone mend nothing: a feeder is sized whole, and a circuit is
    left to the finding about its load. ``laid`` is how the line lies with all that shares its raceway.
    """
    if line.laid is None or line.body.conductors is None:
        return ()
    current = current_of(view, line)
    if line.guard is not None and is_below(line.guard, current):
        made = size_feeder(view, line.feeder) if line.feeder is not None else None
        return (made.fix(),) if isinstance(made, Proposal) and made.device and made.changes else ()
    chosen = choose(view, line, current, purpose_of(view, line, current), laid=laid)
    if isinstance(chosen, NotListed):
        return ()
    wiring, _, _ = chosen
    text = wires_text(wiring, iec=not line.us)
    place = line.wires_place
    span = place.span
    if line.block.lines[span.line][span.start : span.end] == text:
        return ()
    edits = [Edit(line.block, span.line, span.start, span.line, span.end, text)]
    edits += raceway_edit(line, wiring)
    return (Fix(f"Write `{text}`", tuple(edits), Safety.LOOK),)


def raceway_edit(line: Line, wiring: Wiring) -> list[Edit]:
    """A larger raceway for these wires, where the one written would not hold them."""
    from wyeline_linter.raceways import trade_sizes

    raceway = line.body.raceway
    if raceway is None or raceway.named or raceway.trade_size is None:
        return []
    flags = line.body.flags
    made = raceway_for(line.tables, raceway.stuff, wiring, together="together" in flags, nipple="nipple" in flags)
    if made is None:
        return []
    order = trade_sizes(line.tables, raceway.stuff)
    size, now = made[0].split()[0], trade_of(raceway.trade_size)
    if now in order and order.index(now) >= order.index(size):
        return []
    edit = raceway_edit_of(line.block, line.body, made[0])
    return [edit] if edit is not None else []
