"""Feeders sized as the model stands: device, wires, neutral, ground, parallel sets and raceway, with the reasons."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Feeder
from wyeline_grammar.model import Span
from wyeline_linter.findings import Edit, Fix, Safety
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.currents import current_of
from wyeline_linter.protection.lines import Line
from wyeline_linter.protection.purposes import purpose_of
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.protection.withstand import withstand_of
from wyeline_linter.sizing.as_written import beside_written, brings, live_wires_serve
from wyeline_linter.sizing.choosing import choose
from wyeline_linter.sizing.devices import Device
from wyeline_linter.sizing.prepared import NotSized, is_below, prepared
from wyeline_linter.sizing.sharing import laid_beside
from wyeline_linter.sizing.steps import Faults
from wyeline_linter.sizing.tripping import tripping_of
from wyeline_linter.sizing.writing import raceway_edit_of, raceway_for, rating_edit, trade_of, wires_text
from wyeline_linter.systems import Arrangement
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View


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


def size_feeder(view: View, feeder: Feeder, *, faults: bool = False, carries_a: float = 0.0) -> Proposal | NotSized:
    """Sizes for a feeder as it stands: what is written is kept where it serves, and completed or enlarged where not.

    ``faults``: the largest fault counts too, and the smallest to earth, which asks the fault study (not on every
    keystroke). ``carries_a``: a device below this is chosen anew.
    """
    found = prepared(view, feeder, carries_a=carries_a)
    if isinstance(found, NotSized):
        return found
    line, current, purpose, device, reasons = found
    asked = Faults()
    if faults:
        withstand = withstand_of(view, line)
        asked = Faults(withstand.least_mm2 if withstand is not None else None, tripping_of(view, line))
    laid = laid_beside(view, line, current)
    chosen = choose(view, line, current, purpose, laid=laid, faults=asked)
    if isinstance(chosen, NotListed):
        return NotSized(feeder.key, (chosen.reason,))
    wiring, _, more = chosen
    fits = False
    if feeder.body.conductors is not None and live_wires_serve(view, line, current, purpose, laid=laid, faults=asked):
        kept = beside_written(view, line, current, purpose, chosen, laid=laid)
        if isinstance(kept, NotListed):
            return NotSized(feeder.key, (kept.reason,))
        wiring, more = kept
        fits = brings(line.wiring, wiring)
        if fits:
            wiring = line.wiring
    reasons += more
    if asked.tripping is not None and not asked.tripping.trips(wiring.sets, wiring.size):
        reasons.append(asked.tripping.out_of_reach)
    return _proposal(feeder, line, device, wiring, reasons, fits=fits)


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
        unearthed = line.system.earthing.arrangement is Arrangement.IT and wiring.neutral is not None
        poles = f" {len(line.system.live_legs) + unearthed}p" if line.system.frequency_hz else " 2p"
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
