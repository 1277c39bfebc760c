"""The devices of transformers: on the primary, and for the wires behind the secondary."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Literal

from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.notation import VoltageForm
from wyeline_linter.ahead import own_device_a
from wyeline_linter.findings import Finding, Fix, Safety, Severity, insert_below
from wyeline_linter.protection.ampacities import bounds
from wyeline_linter.protection.currents import rated_a
from wyeline_linter.protection.laying import shared_raceway
from wyeline_linter.protection.lines import (
    MEDIUM_VOLTAGE_V,
    Line,
    device_kind,
    first_device_a,
)
from wyeline_linter.protection.taps import claimed_tap, primary_device, prove
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.line_findings import about
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.rules.taps import told
from wyeline_linter.standard_ratings import (
    DeviceKind,
    DeviceLimit,
    rating_at_least,
    transformer_device_limit,
    transformer_device_limit_mv,
)
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import Basis, NotListed
from wyeline_linter.windings import Transformed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_TX = US + "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %, x/r 1.8, lug-temp 75 degC\n"
_LP = "panel LP-1 208Y/120  bus 225 A, main 125 A, lug-temp 75 degC\n"
_BEHIND = "feeder TX-1 -> LP-1  3#1 + N #1 + G #6 Cu THWN-2  2.5 m  in 1-1/2 inch EMT\n"
_AHEAD = "feeder MSB -> TX-1  60 A 3p  3#6 + G #10 Cu THWN-2  20 m  in 1 inch EMT\n"

LARGE = rule(
    name="primary-protection-large",
    since="0.1",
    severity=Severity.ERROR,
    scope="transformer",
    basis="us",
    summary="The device ahead of a transformer is larger than its rated current allows.",
    why="The device could let the transformer overheat without ever tripping.",
    clause={"us": "450.3(A), 450.3(B)"},
    wrong=_TX
    + _LP
    + _BEHIND
    + "  claim tap-10ft\n"
    + "feeder MSB -> TX-1  150 A 3p  3#1/0 + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
    right=_TX
    + _LP
    + _BEHIND
    + "  claim tap-10ft\n"
    + "feeder MSB -> TX-1  125 A 3p  3#1/0 + G #4 Cu THWN-2  20 m  in 1-1/2 inch EMT\n",
)
NUISANCE = rule(
    name="primary-protection-nuisance",
    since="0.1",
    severity=Severity.WARNING,
    scope="transformer",
    summary="The device ahead of a transformer is below its rated current, or would trip when it is switched on.",
    why="A cold core draws 8 to 12 times its rated current for a tenth of a second when it is switched on.",
    wrong="utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\nfeeder UTIL -> MSB  400 A 3p\n"
    "switchboard MSB 480Y/277  bus 400 A\ntransformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4.2 %, x/r 1.8\n"
    "feeder MSB -> TX-1  80 A 3p\n",
    right="utility UTIL 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\nfeeder UTIL -> MSB  400 A 3p\n"
    "switchboard MSB 480Y/277  bus 400 A\ntransformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4.2 %, x/r 1.8\n"
    "feeder MSB -> TX-1  125 A 3p\n",
)
SECONDARY = rule(
    name="secondary-protection-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="Wires behind a transformer have no device ahead of them, and claim no rule that lets them do without.",
    why="The device on the primary side sees their current only scaled and shifted; most windings hide it.",
    clause={"us": "240.4(F), 240.21(C)(1)"},
    wrong=_TX + _LP + _AHEAD + _BEHIND,
    right=_TX + _LP + _AHEAD + _BEHIND + "  claim tap-10ft\n",
    mends=True,
)
TOO_LONG = rule(
    name="secondary-run-too-long",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="us",
    summary="Wires behind a transformer do not meet a condition of the rule that they claim: length, size or end.",
    why="The unprotected wires on the secondary side must stay short, and end in one device they can bear.",
    clause={"us": "240.21(C)(2), (4), (6)"},
    wrong=_TX + _LP + _AHEAD + _BEHIND.replace("2.5 m", "4 m") + "  claim tap-10ft\n",
    right=_TX + _LP + _AHEAD + _BEHIND + "  claim tap-10ft\n",
)


def rated_primary_a(view: View, equipment: Equipment) -> float | None:
    """Rated current of a transformer's primary, amperes."""
    power, stated = equipment.body.number("power"), view.derivation.stated(equipment.primary)
    state = view.state(equipment.name)
    if power is None or state is None or not isinstance(state.arriving, Known):
        return None
    if stated is not None and stated.line_v:
        root = 3**0.5 if stated.legs == 3 else 1.0
        return power / stated.line_v / root
    return rated_a(power, state.arriving.system)


def _secondary_limit(view: View, equipment: Equipment, system: System) -> DeviceLimit | None:
    """The largest device on the secondary side that counts as its protection."""
    tables, power = view.tables, equipment.body.number("power")
    rated = rated_a(power, system) if power is not None else None
    if tables is None or rated is None:
        return None
    found = _device_limit(tables, rated, "secondary", protected=True, kind="breaker")
    return None if isinstance(found, NotListed) else found


def _device_limit(
    tables: Basis, rated: float, side: Literal["primary", "secondary"], *, protected: bool, kind: DeviceKind
) -> DeviceLimit | NotListed:
    """The largest device of a side; a fuse where no standard breaker is as small as a small transformer asks."""
    found = transformer_device_limit(tables, rated, side=side, secondary_protected=protected, kind=kind)
    if isinstance(found, NotListed) and kind == "breaker":
        return transformer_device_limit(tables, rated, side=side, secondary_protected=protected, kind="fuse")
    return found


def secondary_protected(view: View, equipment: Equipment) -> bool:
    """Whether every line that leaves a transformer meets a device within the limit of its secondary."""
    state = view.state(equipment.name)
    if state is None or not isinstance(state.system, Known):
        return False
    limit = _secondary_limit(view, equipment, state.system.system)
    feeders = [f for f in view.feeders_out_of(equipment.name) if not f.normally_open]
    if limit is None or not feeders:
        return False
    ratings = [_first_device(view, f) for f in feeders]
    return all(r is not None and r <= limit.largest_a * 1.0005 for r in ratings)


def _first_device(view: View, feeder: Feeder) -> float | None:
    own = feeder.body.number("rating")
    if own is not None:
        return own
    target = view.equipment(feeder.target.name)
    return own_device_a(target) if target is not None else None


@LARGE.check
def primary_large(view: View, equipment: Equipment) -> Iterator[Finding]:
    state = view.state(equipment.name)
    if equipment.kind != "transformer" or state is None or state.ahead is None or view.tables is None:
        return
    if not isinstance(state.winding, Transformed):
        return
    device, rated = state.ahead.device_a, rated_primary_a(view, equipment)
    if device is None or rated is None or not isinstance(state.arriving, Known):
        return
    protected = secondary_protected(view, equipment)
    limit = _limit(view, equipment, state.arriving.system, state.ahead.device_at, device, rated, protected)
    if limit is None or device <= limit.largest_a * 1.0005:
        return
    percent = f"{limit.percent.value:g} %" if limit.percent is not None else ""
    holder = view.model.feeders.get(state.ahead.device_at)
    place, fixes = equipment.place, ()
    if holder is not None and "rating" in holder.body.facts:
        from wyeline_linter.sizing.writing import rating_edit

        span = holder.body.facts["rating"].span
        place = Place(holder.block, span)
        edit = rating_edit(holder.block, holder.body, limit.largest_a)
        if edit is not None:
            fixes = (Fix(f"Make the device {limit.largest_a:g} A", (edit,), Safety.LOOK),)  # type: ignore[assignment]
    behind = _secondary_limit(view, equipment, state.system.system) if isinstance(state.system, Known) else None
    within = f"{behind.percent.value:g}" if behind is not None and behind.percent is not None else "125"
    sides = "with a device within its limit on the secondary" if protected else "with no such device on the secondary"
    yield LARGE.finding(
        place,
        f"`{equipment.name}` takes {rated:.4g} A at its rating; the device ahead is {device:g} A, limit "
        f"{limit.largest_a:g} A",
        found=f"{device:g} A",
        needed=f"{limit.largest_a:g} A: {percent} of {rated:.4g} A {sides}",
        change=f"Make the device {limit.largest_a:g} A or less"
        + (", which is a fuse" if limit.largest_a < _SMALLEST_BREAKER_A else "")
        + ("." if protected else f", or give the secondary a device within {within} %."),
        subject=equipment.name,
        fixes=fixes,
        clause=clause_of(view, LARGE),
    )


def _limit(
    view: View, equipment: Equipment, system: System, at: str, device: float, rated: float, protected: bool
) -> DeviceLimit | None:
    tables = view.tables
    assert tables is not None
    holder = view.model.feeders.get(at)
    body = holder.body if holder is not None else None
    owner = view.equipment(at)
    body = body if body is not None else owner.body if owner is not None else None
    fuse = body is not None and device_kind(body, device, tables) == "fuse"
    if system.widest_v > MEDIUM_VOLTAGE_V:
        z = equipment.body.number("z")
        if z is None:
            return None
        supervised = any(c.name == "qualified-supervision" for _, p in view.model.projects for c in p.claims) or any(
            c.name == "qualified-supervision" for c in equipment.statement.claims
        )
        found = transformer_device_limit_mv(
            tables, rated, impedance_percent=100 * z, side="primary", supervised=supervised,
            kind="fuse" if fuse else "breaker",
        )  # fmt: skip
    else:
        found = _device_limit(tables, rated, "primary", protected=protected, kind="fuse" if fuse else "breaker")
    return None if isinstance(found, NotListed) else found


_SMALLEST_BREAKER_A = 15.0
"""The smallest standard rating of an inverse-time breaker (NEC 240.6(A)); below stand fuses of 1, 3, 6 and 10 A."""
INRUSH = 8.0
"""Least inrush of a transformer over its rated current in the first tenth of a second (common practice, no source)."""


@NUISANCE.check
def primary_nuisance(view: View, equipment: Equipment) -> Iterator[Finding]:
    state = view.state(equipment.name)
    if equipment.kind != "transformer" or state is None or state.ahead is None or state.ahead.device_a is None:
        return
    if not isinstance(state.winding, Transformed):
        return
    rated, device = rated_primary_a(view, equipment), state.ahead.device_a
    holder = view.model.feeders.get(state.ahead.device_at)
    if rated is None:
        return
    place = Place(holder.block, holder.statement.head) if holder is not None else equipment.place
    if holder is not None and "rating" in holder.body.facts:
        place = Place(holder.block, holder.body.facts["rating"].span)
    if device < rated * 0.9995:
        yield NUISANCE.finding(
            place,
            f"`{equipment.name}` takes {rated:.4g} A at its rating; the device ahead is {device:g} A",
            found=f"{device:g} A",
            needed=f"{rated:.4g} A or more, usually 125 % of it",
            why="It trips before the transformer is fully loaded.",
            change="Choose a larger device, or a smaller transformer.",
            subject=equipment.name,
            clause=clause_of(view, NUISANCE),
            fixes=_larger_device(view, holder, equipment, rated),
        )
        return
    fact = holder.body.facts.get("instantaneous") if holder is not None else None
    if fact is None or not isinstance(fact.value.data, float):
        return
    setting = fact.number * (device if fact.value.dimension == "ratio" else 1.0)
    if setting < INRUSH * rated:
        assert holder is not None
        yield NUISANCE.finding(
            Place(holder.block, fact.span),
            f"`{equipment.name}` draws {INRUSH * rated:.0f} A when switched on; its device trips at {setting:.0f} A",
            found=f"an instantaneous trip at {setting:.0f} A",
            needed=f"{INRUSH * rated:.0f} A or more ({INRUSH:g} times the rated {rated:.4g} A)",
            change="Set the instantaneous trip higher, or delay it.",
            subject=equipment.name,
            clause=clause_of(view, NUISANCE),
        )


def _larger_device(view: View, holder: Feeder | None, transformer: Equipment, rated_a: float) -> tuple[Fix, ...]:
    """The next standard device above 125 % of the rated current, in place of the one written, with wires for it where
    those written are too small."""
    found = rating_at_least(view.tables, 1.25 * rated_a) if view.tables is not None and holder is not None else None
    if found is None or isinstance(found, NotListed) or holder is None or "rating" not in holder.body.facts:
        return ()
    from wyeline_linter.sizing.lines import Proposal, size_feeder
    from wyeline_linter.sizing.writing import rating_edit

    alone = holder.body.conductors is not None and not shared_raceway(holder.body)
    if alone and holder.target.name == transformer.name:
        made = size_feeder(view, holder, carries_a=rated_a)
        if isinstance(made, Proposal) and made.wires and made.changes:
            return (made.fix(),)
    edit = rating_edit(holder.block, holder.body, found.value)
    return (Fix(f"Make the device {found.value:g} A", (edit,), Safety.LOOK),) if edit is not None else ()


@SECONDARY.check
def secondary_wires(view: View, line: Line) -> Iterator[Finding]:
    if not _is_secondary(view, line) or claimed_tap(line) is not None or _covered(view, line):
        return
    if first_device_a(line) is None and line.target is not None and line.target.kind == "panel":
        return  # told at the panel
    fixes: tuple[Fix, ...] = ()
    last_line = line.feeder.statement.last_line if line.feeder is not None else 0
    for claim in ("tap-10ft", "tap-25ft", "tap-outside"):
        if prove(view, line, claim).holds:
            edit = insert_below(line.block, last_line, f"  claim {claim}")
            fixes = (Fix(f"Claim the rule whose conditions it meets: `claim {claim}`", (edit,), Safety.LOOK),)
            break
    yield about(
        view, SECONDARY, line,
        f"{line.where} leaves `{line.maker}` without a device, and claims no rule for that",
        found="wires that only the primary device stands ahead of",
        needed="a device where they start, or `claim tap-10ft`, `tap-25ft` or `tap-outside`",
        change="Write a device, or the claim whose conditions the wires meet.",
        fixes=fixes,
    )  # fmt: skip


def _is_secondary(view: View, line: Line) -> bool:
    if line.guard is not None:
        return False
    maker = view.equipment(line.maker)
    return maker is not None and maker.kind == "transformer" and not maker.damaged


def _covered(view: View, line: Line) -> bool:
    """Two wires to two, or delta to delta: the primary device protects them through the voltage ratio (240.4(F))."""
    maker = view.equipment(line.maker)
    if maker is None or line.laid is None:
        return False
    primary, secondary = view.derivation.stated(maker.primary), view.derivation.stated(maker.secondary)
    if primary is None or secondary is None:
        return False
    two = VoltageForm.TWO_WIRE
    three = VoltageForm.THREE_WIRE
    plain = (primary.form is two and secondary.form is two) or (
        primary.form is three and secondary.form is three and maker.body.text("connection") in (None, "Dd0")
    )
    ahead = primary_device(view, line.maker)
    held = bounds(line.tables, line.wiring, line.laid)
    if not plain or ahead is None or isinstance(held, NotListed):
        return False
    return ahead[0] * ahead[1] <= held[0].amps * 1.0005


@TOO_LONG.check
def secondary_claims(view: View, line: Line) -> Iterator[Finding]:
    claim = claimed_tap(line) if _is_secondary(view, line) else None
    if claim is not None:
        yield from told(view, TOO_LONG, line, prove(view, line, claim))
