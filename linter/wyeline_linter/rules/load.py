"""Loads of boards and circuits against what carries them, and how evenly the legs share them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import place_phrase
from wyeline_grammar.linking import Equipment, Place, PlacedCircuit
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.demand_factors import fraction_dropped
from wyeline_linter.findings import Finding, Fix, Safety, Severity
from wyeline_linter.loads.balance import Swaps, swaps, unbalance
from wyeline_linter.loads.buckets import AMPS, CODE_AMPS
from wyeline_linter.loads.conductors_of_loads import INDEX
from wyeline_linter.loads.demand import MOTORS, Amount, sizing_factors
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.loads.moved_circuits import edits_of
from wyeline_linter.loads.neutral import neutral_a
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.loads.third_harmonics import third_harmonic
from wyeline_linter.network import follows_grid
from wyeline_linter.protection.currents import inverter_a
from wyeline_linter.rules.registry import rule
from wyeline_linter.shapes import Shape
from wyeline_linter.shares import above_mean, share_of
from wyeline_linter.system_words import conductor_text
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_US = 'project "Annex"\n  basis us-2023\n'
_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n"
_SLACK = 1.0005
"""Half a thousandth: a load that fills its device to the last ampere is not over it."""


def worst_leg(amount: Amount, practice: str | None) -> tuple[str, float]:
    """The leg that carries most, as practice calls it, with its amperes."""
    amps = [abs(i) for i in amount.amps[:3]]
    most = max(amps)
    return conductor_text("ABC"[amps.index(most)], practice), most


OVERLOADED = rule(
    name="board-overloaded",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    summary="More current flows through a board, busway or switch than it is made for.",
    why="Bars, lugs and contacts overheat, or the main trips on a full working day.",
    clause={"us": "215.2, 215.3, 408.30, 230.42", "iec": "60364-4-43 433.1"},
    wrong=_US
    + _FED
    + 'panel LP-1 208Y/120  bus 100 A, main 100 A\n  1,3,5  60 A 3p  17 kW heating continuous  "Kiln"\n'
    '  2,4,6  60 A 3p  17 kW heating continuous  "Drying oven"\n',
    right=_US
    + _FED
    + 'panel LP-1 208Y/120  bus 100 A, main 100 A\n  1,3,5  60 A 3p  15 kW heating continuous  "Kiln"\n',
)


@OVERLOADED.check
def board_overloaded(view: View, equipment: Equipment) -> Iterator[Finding]:
    limits = limits_of(equipment)
    if not limits:
        return
    counted = view.loads.counted(equipment.name)
    leg, amps = worst_leg(counted.demand, view.loads.practice)
    key, limit = min(limits, key=lambda item: item[1])
    if amps > limit * _SLACK:
        yield _over(equipment, key, limit, f"{amps:.1f} A flow on leg {leg}", amps)
        return
    measured = any(key.category == MEASURED for key in counted.factors)
    if counted.sizing is None or view.loads.practice != "us" or ("full-rated" in equipment.body.flags and not measured):
        return
    leg, amps = worst_leg(counted.sizing, view.loads.practice)
    if amps > limit * _SLACK:
        also = " and what was measured" if measured else ""
        how = f"continuous load{also} at 125 %, a quarter of the largest motor added"
        counts = f"{amps:.1f} A count on leg {leg} ({how})"
        yield _over(equipment, key, limit, counts, amps)


def limits_of(equipment: Equipment) -> list[tuple[str, float]]:
    """What a board, busway or switch is made for: the key it is written under, and A."""
    if equipment.kind in BOARDS:
        names = ["bus", "main", "incomer"]
    elif equipment.kind in ("busway", "transfer", "disconnect", "junction"):
        names = ["rating"]
    else:
        return []
    facts = equipment.body.facts
    values = [(key, equipment.body.number(key)) for key in names if key in facts]
    return [(key, value) for key, value in values if value is not None]


def _over(equipment: Equipment, key: str, limit: float, load: str, amps: float) -> Finding:
    return OVERLOADED.finding(
        equipment.place_of(key),
        f"{load} through `{equipment.name}`; its {key} is {limit:g} A",
        found=load,
        needed=f"{limit:g} A at the most",
        change=f"Move {amps - limit:.1f} A or more to another board, or choose a larger "
        f"{place_phrase(equipment.kind).split(' ', 1)[1]}.",
        subject=equipment.name,
    )


CIRCUIT_HIGH = rule(
    name="circuit-load-high",
    since="0.1",
    severity=Severity.WARNING,
    scope="circuit",
    summary="A circuit draws more than its device may carry.",
    why="Its device trips in use, or runs hot for hours: under US practice continuous load counts 125 %.",
    clause={"us": "210.20(A), 215.3", "iec": "60364-4-43 433.1"},
    wrong=_US + _FED + 'panel LP-1 208Y/120  bus 100 A\n  1  20 A 1p  2.3 kVA lighting  "Hall lights"\n',
    right=_US + _FED + 'panel LP-1 208Y/120  bus 100 A\n  1  20 A 1p  1.8 kVA lighting  "Hall lights"\n',
)


@CIRCUIT_HIGH.check
def circuit_load_high(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    device = placed.circuit.body.number("rating")
    leaf = view.loads.leaf(board.name, placed.key)
    if device is None or leaf is None or leaf.row is None:
        return
    book, row = view.loads, leaf.row
    us = book.practice == "us" and book.basis is not None and leaf.given is not None
    at = CODE_AMPS if us and not leaf.unknown_code else AMPS
    amps = max(abs(row[at + k]) for k in range(3))
    counted, how = amps, ""
    if us and leaf.key.continuous and leaf.key.category not in MOTORS:
        assert book.basis is not None
        if "full-rated" not in placed.circuit.body.flags:
            counted = amps * sizing_factors(book.basis)[0]
            how = f", {counted:.1f} A counted as continuous"
    if (fraction_dropped(counted) if us else counted) <= device * _SLACK:
        return
    fact = placed.circuit.body.facts["rating"]
    yield CIRCUIT_HIGH.finding(
        Place(placed.block, fact.span),
        f"{amps:.1f} A on circuit {placed.key} of `{board.name}`{how}; its device is {device:g} A",
        found=f"{amps:.1f} A{how}",
        needed=f"{device:g} A at the most",
        why="" if how else "Its device trips in use, or runs hot for hours.",
        change="Put a part of it on another circuit, or choose a larger device and the wires for it.",
        subject=board.name,
        position=placed.key,
    )


UNBALANCED = rule(
    name="legs-unbalanced",
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="One leg of a board works much harder than the others.",
    why="The board is full on one leg while the others idle, the neutral carries the difference, and motors run warm.",
    wrong=_FED + 'panel LP-1 208Y/120  bus 125 A, spaces 12\n  1  60 A 1p  6 kVA process  "Oven 1 feed"\n'
    '  2  60 A 1p  6 kVA process  "Oven 2 feed"\n  3  60 A 1p  4 kVA process  "Mixer line"\n'
    '  4  60 A 1p  4 kVA process  "Conveyor line"\n  5  60 A 1p  3 kVA process  "Scales"\n'
    '  6  60 A 1p  3 kVA process  "Lamps over the table"\n',
    right=_FED + 'panel LP-1 208Y/120  bus 125 A, spaces 12\n  1  60 A 1p  6 kVA process  "Oven 1 feed"\n'
    '  5  60 A 1p  6 kVA process  "Oven 2 feed"\n  3  60 A 1p  6 kVA process  "Mixer line"\n',
    mends=True,
    clause={"iec": "60364-3 (division of load over the legs)"},
)
_FROM = 0.5
"""Only where the legs carry half of the bus on the mean: on a nearly empty board unbalance harms nobody."""


@UNBALANCED.check
def legs_unbalanced(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS:
        return
    book = view.loads
    system = book.system(equipment.name)
    limit = min([value for _, value in limits_of(equipment)], default=None)
    if limit is None or system is None or len(system.legs) < 2:
        return
    if not set(system.legs) <= {"A", "B", "C"}:
        return
    amps = book.counted(equipment.name).demand.amps
    legs = {leg: abs(amps[INDEX[leg]]) for leg in system.legs}
    mean = sum(legs.values()) / len(legs)
    off = unbalance(tuple(legs.values()))
    allowed = view.settings.balance
    if off <= allowed or mean <= _FROM * limit:
        return
    worst = max(legs, key=lambda leg: legs[leg])
    listed = ", ".join(f"{conductor_text(leg, book.practice)} {value:.1f} A" for leg, value in legs.items())
    proposal = _proposal(view, equipment)
    moves = "Move circuits from the full leg to an idle one."
    fixes: tuple[Fix, ...] = ()
    if proposal is not None:
        after = ", ".join(f"{value:.1f} A" for value in proposal.after_a)
        words = "; ".join(move.in_words() for move in proposal.moves)
        moves = f"{words[0].upper()}{words[1:]}: the legs then carry {after}."
        fixes = (Fix(f"Even out the legs: {words}", edits_of(equipment, proposal), Safety.LOOK),)
    yield UNBALANCED.finding(
        equipment.place,
        f"{legs[worst]:.1f} A on leg {conductor_text(worst, book.practice)} of `{equipment.name}`, "
        f"{above_mean(off)} of its legs",
        found=listed,
        needed=f"each leg within {100 * allowed:.0f} % of the mean, {mean:.1f} A",
        change=moves,
        subject=equipment.name,
        fixes=fixes,
    )


def _proposal(view: View, equipment: Equipment) -> Swaps | None:
    from wyeline_linter.board_positions import positions_of

    return swaps(view.loads, equipment, positions_of(view, equipment))


NEUTRAL = rule(
    name="high-neutral-current",
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="The neutral of a board carries nearly as much as a leg.",
    why="A neutral has no breaker of its own: nothing trips when it runs hot.",
    clause={"us": "220.61, 310.15(E)", "iec": "60364-5-52 524"},
    wrong="utility UTIL 120/240  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 2p\n"
    'panel LP-1 120/240  bus 100 A\n  1  60 A 1p  6 kVA process  "Kiln"\n  3  20 A 1p  1 kVA process  "Lathe"\n',
    right="utility UTIL 120/240  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 2p\n"
    'panel LP-1 120/240  bus 100 A\n  1,3  60 A 2p  7 kVA process  "Kiln"\n',
)
_NEUTRAL_SHARE = 0.6
_NEUTRAL_FROM = 0.25


@NEUTRAL.check
def high_neutral_current(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in BOARDS or "double-neutral" in equipment.body.flags:
        return
    book = view.loads
    system = book.system(equipment.name)
    limit = min([value for _, value in limits_of(equipment)], default=None)
    if limit is None or system is None:
        return
    if system.shape not in (Shape.WYE4, Shape.SPLIT3, Shape.HIGH_LEG4):
        return
    counted = book.counted(equipment.name)
    amps = counted.demand.amps
    leg = max(system.legs, key=lambda name: abs(amps[INDEX[name]]))
    third = third_harmonic(system, book.rows(equipment.name)[0], counted.factors)
    most, neutral = abs(amps[INDEX[leg]]), neutral_a(amps, third)
    # A hair above comes of rounding: three legs with 20 % of third harmonic are 60 %.
    if neutral <= _NEUTRAL_SHARE * most * (1 + 1e-9) or most < _NEUTRAL_FROM * limit:
        return
    called = conductor_text(leg, book.practice)
    waves = third is not None and third.neutral_a > abs(amps[INDEX["N"]])
    spread = "No spreading takes third harmonics away:" if waves else "Spread the loads to neutral over the legs, or"
    yield NEUTRAL.finding(
        equipment.place,
        f"{neutral:.1f} A in the neutral of `{equipment.name}`, {share_of(neutral / most, f'leg {called}')}",
        found=f"neutral {neutral:.1f} A, leg {called} {most:.1f} A",
        needed=f"{100 * _NEUTRAL_SHARE:.0f} % of the fullest leg at the most, or a neutral made for it",
        change=f"{spread} write `double-neutral` where the neutral is twice a leg.",
        subject=equipment.name,
    )


BUS_SUM = rule(
    name="two-source-bus-sum",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="The supply and the inverters on one bus together may feed it more than it is made for.",
    why="Two sources feed the same bars, and between them no breaker sees the sum.",
    basis="us",
    clause={"us": "705.12(B)"},
    wrong=_US + "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  200 A 3p\n"
    "panel LP-1 208Y/120  bus 200 A, main 200 A\n  1,3,5  100 A 3p  spare\n"
    "inverter PV-1 208 3ph  30 kW, limit 1.1 pu, grid-following\n"
    "feeder LP-1 -> PV-1  125 A 3p\n",
    right=_US + "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  200 A 3p\n"
    "panel LP-1 208Y/120  bus 200 A, main 200 A\ninverter PV-1 208 3ph  10 kW, limit 1.1 pu, grid-following\n"
    "feeder LP-1 -> PV-1  40 A 3p\n",
)
_PASSES = frozenset({"meter", "disconnect", "junction", "spd"})


@BUS_SUM.check
def two_source_bus_sum(view: View) -> Iterator[Finding]:
    boards: dict[str, list[tuple[Equipment, float]]] = {}
    for inverter in view.model.equipment.values():
        if inverter.kind != "inverter" or not follows_grid(inverter):
            continue
        board = next((n for n in view.network.above(inverter.name) if _kind(view, n) not in _PASSES), None)
        amps = inverter_a(inverter, volt_amperes_per_ampere(view.loads.system(inverter.name)))
        if board is not None and amps is not None and _kind(view, board) in BOARDS:
            boards.setdefault(board, []).append((inverter, amps))
    basis = view.loads.basis
    share, percent = (
        (basis.constant("inverter-bus-percent"), basis.constant("inverter-current-percent"))
        if basis is not None
        else (NotListed(""), NotListed(""))
    )
    if isinstance(share, NotListed) or isinstance(percent, NotListed):
        return
    for name, inverters in sorted(boards.items()):
        board_equipment = view.model.equipment[name]
        bus, main = board_equipment.body.number("bus"), _main_a(view, board_equipment)
        if bus is None or main is None:
            continue
        amps = sum(a for _, a in inverters)
        total = main + percent.value / 100 * amps
        limit = share.value / 100 * bus
        if total <= limit * _SLACK or _branches_fit(view, board_equipment, bus):
            continue
        listed = ", ".join(f"`{e.name}` {a:.1f} A" for e, a in sorted(inverters, key=lambda item: item[0].name))
        yield BUS_SUM.finding(
            board_equipment.place_of("bus"),
            f"{main:g} A from its main and {percent.value / 100:g} x {amps:.1f} A from inverters meet on the bus of "
            f"`{name}`: {total:.1f} A, and {bus:g} A of bus allow {limit:.1f} A",
            found=f"main {main:g} A, {listed}",
            needed=f"{limit:.1f} A at the most ({share.value:g} % of the bus, sources at opposite ends)",
            change="Connect the inverter on the supply side, choose a smaller main, or a larger bus.",
            subject=name,
        )


def _kind(view: View, name: str) -> str:
    equipment = view.model.equipment.get(name)
    return equipment.kind if equipment is not None else ""


def _main_a(view: View, board: Equipment) -> float | None:
    own = board.body.number("main") or board.body.number("incomer")
    feeder = view.network.supply.get(board.name)
    return own if own is not None else feeder.body.number("rating") if feeder is not None else None


def _branches_fit(view: View, board: Equipment, bus: float) -> bool:
    """The other way of the clause: all devices but the main together stay within the bus."""
    devices = [p.circuit.body.number("rating") for p in board.circuits]
    derivation = view.derivation
    delivers = [f for f in view.feeders_into(board.name) if derivation.delivers_into(f)]  # written from the inverter
    devices += [f.body.number("rating") for f in (*view.feeders_out_of(board.name), *delivers)]
    return all(d is not None for d in devices) and sum(d or 0.0 for d in devices) <= bus
