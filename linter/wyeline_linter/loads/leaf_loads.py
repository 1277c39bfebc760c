"""Every load as the load flow wants it: volt-amperes on a pair of conductors at nominal voltage."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.model import Body
from wyeline_grammar.units import HORSEPOWER_W
from wyeline_linter.loads.as_given import CONSTANT_POWER, Shares, has_no_load, is_machine
from wyeline_linter.loads.buckets import NEW, OWN, STANDS, VA
from wyeline_linter.loads.conductors_of_loads import INDEX, spread
from wyeline_linter.loads.demand_shares import Asked, DemandShares
from wyeline_linter.loads.leaves import MEASURED
from wyeline_linter.loads.measured import new_and_standing, stands
from wyeline_linter.loads.rollup import LoadBook
from wyeline_linter.network import SwitchState
from wyeline_linter.standard_ratings import locked_rotor_kva_per_hp
from wyeline_linter.systems import Known
from wyeline_linter.tables import NotListed
from wyeline_linter.tables.basis import Basis

if TYPE_CHECKING:
    from wyeline_grammar.linking import Equipment, Feeder
    from wyeline_linter.loads.rollup import Node
    from wyeline_linter.view import View

_AC = ("A", "B", "C", "N")
_DC = ("+", "-", "M")


class LeafLoad(NamedTuple):
    """One load on one pair of conductors.

    ``element`` is the equipment whose bus it stands on (a board, or the load itself), ``place`` its circuit there.
    ``va`` is connected load at nominal voltage, all units; ``demand_share`` the part of it that counts at the source
    that feeds it. ``shares`` of constant power, current, impedance. ``locked_rotor_a`` is the leg current of one unit
    while it starts at full voltage, None where nameplate and code letter do not tell. ``machine``: it feeds a fault
    while it turns, if no rectifier stands before it.
    """

    element: str
    place: str
    pair: tuple[str, str]
    va: complex
    shares: Shares
    demand_share: float
    category: str
    machine: bool
    locked_rotor_a: float | None


class Piece:
    """The loads at one piece of equipment, each as if it counted in full, with what says how much of it counts."""

    __slots__ = ("asked", "loads", "name", "placed", "unknown")

    def __init__(self, name: str) -> None:
        self.name = name
        self.loads: list[LeafLoad] = []
        self.asked: list[Asked | None] = []
        """For each load; None: it counts in full."""
        self.unknown: tuple[str, ...] = ()
        self.placed: object = None
        """What is made of these loads alone (:mod:`wyeline_linter.studies.injections`)."""

    def counted(self, demand: DemandShares) -> list[LeafLoad]:
        """The loads with the part of each that counts at the source."""
        found = []
        shares: dict[Asked | None, float] = {None: 1.0}  # the kinds of loads on a board are few
        for load, asked in zip(self.loads, self.asked, strict=True):
            share = shares.get(asked)
            if share is None:
                assert asked is not None
                share = shares[asked] = demand.at_source(*asked)
            found.append(load if share == 1.0 else load._replace(demand_share=share))
        return found


def leaf_loads(view: View, scenario: SwitchState | None = None) -> tuple[list[LeafLoad], tuple[str, ...]]:
    """All loads that run in a switch state (None: the one judged), and the reasons for those that are unknown.

    A load behind a converter stands on the converter's output; its input is a load of its own. Standby units and the
    smaller of loads that exclude each other, judged at the source, do not run. Capacitors are among them.
    """
    book = view.loads if scenario is None else view.loads_in(scenario)
    demand = DemandShares(book)
    found: list[LeafLoad] = []
    unknown: dict[str, None] = {}
    for name, scale in scales_of(book).items():
        piece = piece_of(book, demand, name, scale)
        if piece is not None:
            found += piece.counted(demand)
            unknown.update(dict.fromkeys(piece.unknown))
    return found, tuple(unknown)


def piece_of(book: LoadBook, demand: DemandShares, name: str, scale: float) -> Piece | None:
    """The loads at one piece of equipment that runs at a share of its full load; None where nothing runs."""
    node = book.nodes.get(name)
    if node is None or scale == 0.0:
        return None
    made = Piece(name)
    unknown: dict[str, None] = {}
    if node.leaves:
        bodies, names = _bodies(book, name), _conductors(book, name)
    for leaf in node.leaves:
        if leaf.unknown:
            unknown.update(dict.fromkeys(leaf.unknown))
        given, place, key = leaf.given, leaf.place, leaf.key
        if given is None or not leaf.parts:
            continue
        if name in book.behind:
            own = OWN if leaf.key.category == MEASURED else NEW
            key = key._replace(stands=STANDS if own == NEW and stands(bodies[place].flags) else own)
        if not place and leaf.owner in demand.left_out(demand.top(name, key)[0]):
            continue
        start = None
        if given.motor or "lra" in bodies[place].facts:
            volts = _volts_per_ampere(book, name, leaf.legs)
            start = _locked_rotor_a(bodies[place], book.basis, given.motor, volts)
        turns = is_machine(bodies[place], given.category)
        for i, j, va in leaf.parts:
            pair = _pair(names[i], names[j])
            drawn = va if scale == 1.0 else va * scale
            made.loads.append(LeafLoad(name, place, pair, drawn, given.shares, 1.0, given.category, turns, start))
            made.asked.append((name, key))
    _add_converter(made, book, name)
    made.unknown = tuple(unknown)
    return made if made.loads or unknown else None


@cache
def _pair(one: str, other: str) -> tuple[str, str]:
    """Conductors are few: every load on the same two holds the same pair."""
    return one, other


def scale_facts(
    equipment: Equipment | None, feeder: Feeder | None, node: Node | None, share: float
) -> tuple[float, bool]:
    """Of a piece of equipment by itself: the share of its full load, and whether it draws what hangs on it as its own
    load (a motor behind a drive is the drive's)."""
    dead = equipment is None or LoadBook.is_gone(equipment, feeder) or has_no_load(equipment.body)
    draws = node is not None and any(not leaf.of_board for leaf in node.leaves)
    draws = draws and equipment is not None and not equipment.circuits
    return 0.0 if dead else share, draws


def scales_of(book: LoadBook) -> dict[str, float]:
    """For every fed name the share of its full load at which it runs; 0 for what is shed, removed or not built yet."""
    equipment, supply = book.model.equipment, book.network.supply
    facts = [
        scale_facts(equipment.get(name), supply.get(name), book.nodes.get(name), book.share(name))
        for name in book.network.order
    ]
    return scales_from(book.network.order, list(map(book.network.supplier.get, book.network.order)), facts)


def scales_from(
    order: Sequence[str], suppliers: Sequence[str | None], facts: Sequence[tuple[float, bool]]
) -> dict[str, float]:
    """The same from the facts of each."""
    shares: dict[str, float] = {}
    draws: set[str] = set()
    for name, above, (share, draws_itself) in zip(order, suppliers, facts, strict=True):
        shares[name] = 0.0 if above is not None and shares.get(above) == 0.0 else share
        if draws_itself:
            draws.add(name)
    for name, above in zip(order, suppliers, strict=True):
        if above in draws:
            shares[name] = 0.0
    return shares


def _add_converter(made: Piece, book: LoadBook, name: str) -> None:
    if not book.converts(name):
        return
    state = book.derivation.states.get(name)
    up = book.nodes[name].up
    if state is None or not isinstance(state.arriving, Known) or not up.rows:
        return
    system = state.arriving.system
    above = book.network.supplier.get(name)
    for key, row in new_and_standing(up, up.rows, {} if up.new is None else up.new.rows):
        for i, j, va in spread(system, system.legs, row[VA]) or ():
            names = _DC if "+" in system.conductors else _AC
            pair = names[i], names[j]
            made.loads.append(LeafLoad(name, "", pair, va, CONSTANT_POWER, 1.0, key.category, False, None))
            made.asked.append((above, key) if above is not None else None)


def _conductors(book: LoadBook, name: str) -> dict[int, str]:
    """The conductors that loads lie on there, by their place in a vector of currents."""
    state = book.derivation.states.get(name)
    here = state.arriving if state is not None and book.model.equipment[name].arrow else None
    system = here.system if isinstance(here, Known) else book.system(name)
    return {INDEX[c]: c for c in (system.conductors if system is not None else _AC)}


def _bodies(book: LoadBook, name: str) -> dict[str, Body]:
    """What the loads of a piece of equipment say, by their circuit; its own under no name."""
    equipment = book.model.equipment[name]
    found = {"": equipment.body}
    for placed in equipment.circuits:
        found.setdefault(placed.key, placed.circuit.body)
    return found


def _volts_per_ampere(book: LoadBook, name: str, legs: tuple[str, ...]) -> float:
    system = book.system(name)
    if system is None or not legs:
        return 0.0
    if len(legs) == 3:
        return float(system.distance(legs[0], legs[1]) * 3.0**0.5)
    other = legs[1] if len(legs) == 2 else "N"
    return system.distance(legs[0], other) if other in system.conductors else 0.0


def _locked_rotor_a(body: Body, basis: Basis | None, motor: bool, va_per_a: float) -> float | None:
    """``lra`` as written, else the upper end of the code letter's range (NEMA MG 1, NEC 430.7(B))."""
    written = body.number("lra")
    if written is not None:
        return written
    letter, power = body.text("code-letter"), body.facts.get("power")
    if not motor or letter is None or power is None or basis is None or basis.practice != "us" or not va_per_a:
        return None
    found = locked_rotor_kva_per_hp(basis, letter)
    if isinstance(found, NotListed) or found[1] is None or power.value.dimension != "power":
        return None
    return found[1].value * 1000.0 * power.number / HORSEPOWER_W / va_per_a
