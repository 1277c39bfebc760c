"""The loads of a board's circuits, each on the legs that its positions or its label give it."""

from __future__ import annotations

import math

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body, Circuit, Sense
from wyeline_grammar.remembering import Remembered
from wyeline_linter.board_positions import Numbering, numbering_of
from wyeline_linter.loads.as_given import (
    CONSTANT_POWER,
    Given,
    category_of,
    has_no_load,
    is_continuous,
    read,
    shares_of,
)
from wyeline_linter.loads.conductors_of_loads import INDEX, NEUTRAL_AT, Part, across, spread
from wyeline_linter.loads.leaves import Leaf, leaf, unknown_leaf
from wyeline_linter.loads.third_harmonics import WORD, returning
from wyeline_linter.systems import System
from wyeline_linter.tables.basis import Basis


def circuit_leaves(
    board: Equipment, system: System | None, reasons: tuple[str, ...], basis: Basis | None, practice: str | None
) -> list[Leaf]:
    """One leaf for every circuit that has, or should have, a load; ``reasons`` say why the system is unknown.

    A load that is known is worked out once for all circuits that say the same on the same positions of like boards.
    """
    found = []
    numbering, name = numbering_of(board), board.name
    around = (numbering, system, basis, practice)
    alike = _alike.get(around)
    if alike is None:
        alike = {}
        _alike.put(around, alike)
    for placed in board.circuits:
        circuit = placed.circuit
        place = circuit.place
        same = (circuit.sense, place.positions, circuit.legs)
        known = alike.get(same)
        if known is None:
            body = circuit.body
            if has_no_load(body) or _gone(body):
                continue
            made = _leaf(name, circuit, body, numbering, system, reasons, basis, practice)
            found.append(made)
            if not (made.unknown or made.unknown_code or made.largest is not None):  # what names its circuit
                alike[same] = made
            continue
        found.append(_new(Leaf, (name, placed.key, *known[2:])))
    return found


_Same = tuple[Sense, tuple[int, ...], tuple[str, ...] | None]
_alike: Remembered[tuple[object, ...], dict[_Same, Leaf]] = Remembered()
_new = tuple.__new__


def _gone(body: Body) -> bool:
    return "future" in body.flags or "demolish" in body.flags


def _leaf(
    board: str,
    circuit: Circuit,
    body: Body,
    numbering: Numbering,
    system: System | None,
    reasons: tuple[str, ...],
    basis: Basis | None,
    practice: str | None,
) -> Leaf:
    place = circuit.place.key
    if system is None:
        return unknown_leaf(board, place, reasons)
    who = f"circuit {place} of `{board}`"
    legs = legs_of_circuit(circuit, numbering, system)
    if legs is None:
        return unknown_leaf(board, place, (f"{who} does not say which legs it takes",))
    if len(set(legs)) < len(legs):
        return unknown_leaf(board, place, (f"{who} takes one leg twice",))
    factor = body.number("factor")
    if body.leg_loads:
        return _unequal(board, place, who, body, legs, system, factor)
    if len(legs) == 1 and not system.has_neutral:
        return unknown_leaf(board, place, (f"{who} takes one leg, and `{board}` has no neutral",))
    volts, nominal_v = across(system, legs)
    given = read(
        body,
        "circuit",
        who,
        volts=volts,
        nominal_v=nominal_v,
        phases=3 if len(legs) == 3 else 1,
        basis=basis,
        practice=practice,
    )
    if given.va is None:
        return unknown_leaf(board, place, given.unknown, given)
    parts = spread(system, legs, given.va)
    assert parts is not None
    third = returning(body.number(WORD), system, len(legs), neutral=_has_neutral(body, len(legs)))
    return leaf(board, place, given, legs, parts, system, factor, third)


def _has_neutral(body: Body, legs: int) -> bool:
    """Whether its wires bring a neutral; as long as none are written, they may."""
    wires = body.conductors
    if wires is None:
        return True
    live = wires.run.count - wires.run.with_protective
    return live > legs or any(role in ("N", "PEN") for role, _ in wires.extras)


def legs_of_circuit(circuit: Circuit, numbering: Numbering, system: System) -> tuple[str, ...] | None:
    """The legs of a circuit in order; None where neither its positions, its label nor its poles say."""
    positions = circuit.place.positions
    if positions:
        return numbering.legs(positions, system.legs)
    if circuit.legs is not None:
        written = tuple(name for name in circuit.legs if name != "N")
        return written if all(name in system.legs for name in written) else None
    poles = circuit.body.poles
    if len(system.legs) == 1 or (poles is not None and poles.count >= len(system.legs)):
        return system.legs
    return None


def _unequal(
    board: str, place: str, who: str, body: Body, legs: tuple[str, ...], system: System, factor: float | None
) -> Leaf:
    """``leg A 1.2 kVA, leg B 0.9 kVA``: each part to neutral."""
    if not system.has_neutral:
        return unknown_leaf(board, place, (f"{who} loads its legs unequally, and `{board}` has no neutral",))
    category = category_of(body, "circuit")
    pf = body.number("pf") or 1.0
    units = int(body.number("count") or 1)
    parts: list[Part] = []
    for item in body.leg_loads:
        if item.leg not in legs:
            return unknown_leaf(board, place, (f"{who} states a load on leg {item.leg}, which it does not take",))
        amount = item.value.data
        if not isinstance(amount, float | int):
            return unknown_leaf(board, place, (f"{who} states no load on leg {item.leg}",))
        va = units * (amount / pf if item.value.dimension == "power" else float(amount))
        q = math.sqrt(max(0.0, 1.0 - pf * pf))
        parts.append((INDEX[item.leg], NEUTRAL_AT, complex(va * pf, -va * q if "leading" in body.flags else va * q)))
    total = sum(part[2] for part in parts)
    code = sum(abs(part[2]) for part in parts)
    reasons = () if category else (f"{who} does not say what kind of load it is",)
    given = Given(
        total,
        code if category else None,
        category or "other",
        is_continuous(body, category),
        units,
        category == "motor",
        shares_of(category) if category else CONSTANT_POWER,
        "legs",
        unknown_code=reasons,
    )
    return leaf(board, place, given, legs, tuple(parts), system, factor, body.number(WORD))
