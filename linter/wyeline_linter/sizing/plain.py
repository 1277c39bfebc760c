"""Short answers for repairs: wires behind a device, and a device for a new line, as the language writes them."""

from __future__ import annotations

import math
from collections import Counter
from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment
from wyeline_linter.connected_load import load_below
from wyeline_linter.earthing import own_electrode
from wyeline_linter.grounding_conductors import bonding_jumper, electrode_conductor
from wyeline_linter.protection.ampacities import Laid
from wyeline_linter.protection.laying import IEC_AMBIENT_C, US_AMBIENT_C
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.sizing.steps import Demand, ground_for, sized
from wyeline_linter.sizing.writing import size_text, wires_text
from wyeline_linter.standard_ratings import rating_at_least
from wyeline_linter.tables import Basis, NotListed
from wyeline_linter.tables.basis import basis

if TYPE_CHECKING:
    from wyeline_linter.view import View

LEAST_DEVICE_A = {"us": 15.0, "iec": 6.0}
"""Smallest device of a power circuit (NEC 210.18, 240.6(A); IEC 60898-1 series)."""
_PLAIN_METHODS = frozenset("A1 A2 B1 B2 C".split())
RESERVE = 1.25
"""Share of a connected load that a device is chosen for where nothing tells what runs for hours (common practice)."""


def tables_for(view: View) -> tuple[Basis, bool]:
    """The tables to choose from, and whether the project itself names them.

    Without a basis, standard series still help: they come from the basis that the frequency suggests.
    """
    if view.tables is not None:
        return view.tables, True
    hz = view.model.frequency_hz
    return basis("iec" if hz == 50.0 or (view.basis or "").startswith("iec") else "us-2023"), False


def main_of(equipment: Equipment) -> float | None:
    """The rating of a board's main in amperes, None where it has none."""
    for key in ("main", "incomer"):
        fact = equipment.body.facts.get(key)
        if fact is not None and fact.value.kind == "quantity":
            return fact.number
    return None


def device_for(view: View, volts: float, legs: int, target: Equipment) -> tuple[float | None, str]:
    """A device rating for a new line to ``target``, and its reason: its main, its label, its power where it is a
    transformer, or its load."""
    main = main_of(target)
    if main is not None:
        return main, f"as large as the main of `{target.name}`"
    mocp = target.body.number("mocp")
    if mocp is not None:
        return mocp, "the largest device its nameplate allows"
    load = load_below(view, target.name)
    rated_va = target.body.number("power") if target.kind == "transformer" else None
    if rated_va is None and (target.kind == "motor" or not load.some or load.unknown):
        return None, f"the device of the line to `{target.name}`: its rating is an engineer's choice"
    tables = tables_for(view)[0]
    amps = (rated_va or load.va) / (volts * (math.sqrt(3.0) if legs == 3 else 1.0))
    found = rating_at_least(tables, max(RESERVE * amps, LEAST_DEVICE_A[tables.practice]))
    if isinstance(found, NotListed):
        return None, found.reason
    return found.value, f"next standard rating above 125 % of {'its rated ' if rated_va else ''}{amps:.3g} A"


def wires_for(
    view: View, device_a: float, legs: int, neutral: bool, board: Equipment | None, target: Equipment | None = None
) -> str:
    """Copper wires behind a device, as the language writes them; empty where no table of the project gives them.

    US practice: THWN-2, by the column of the terminals (marked at ``board``, else NEC 110.14(C)), the project's
    ambient, and no other circuit in the raceway. IEC capacities hang on the method of installation: the one that the
    lines of ``board`` have is written as an assumption; without one there are no wires. A ``target`` with an earth
    electrode of its own gets no PE.
    """
    tables, own = tables_for(view)
    if not own or not 1 <= legs <= 3:
        return ""
    ambient = view.model.project.number("ambient")
    us = tables.practice == "us"
    method = "" if us else _method_at(view, board)
    if us:
        marked = board.body.number("lug-temp") if board is not None else None
        laid = Laid(
            US_AMBIENT_C if ambient is None else ambient, max(legs, 2), None if marked is None else round(marked),
            device_a,
        )  # fmt: skip
    elif method:
        arrangement = "wall" if method == "C" else "bunched"
        laid = Laid(IEC_AMBIENT_C if ambient is None else ambient, 3 if legs == 3 else 2, None, 0.0, method, 1,
                    arrangement)  # fmt: skip
    else:
        return ""
    found = sized(tables, "Cu", 90.0, laid, Demand(device_a, sizing_a=device_a))
    if isinstance(found, NotListed):
        return ""
    ground = ground_for(tables, device_a, "Cu", found)
    if isinstance(ground, NotListed):
        return ""
    pulled = ground.size if us or not own_electrode(target) else None
    wiring = Wiring(
        found.sets, legs, found.size, found.size if neutral else None, pulled, "G" if us else "PE", "Cu", False,
        "THWN-2" if us else "XLPE", (90.0,), False,
    )  # fmt: skip
    text = wires_text(wiring, iec=not us)
    return text if us else f"{text}  assume method {method}"


def _method_at(view: View, board: Equipment | None) -> str:
    """The method of installation of most lines that leave a board; in the ground and on trays more has to be known."""
    found: Counter[str] = Counter()
    if board is not None:
        bodies = [f.body for f in view.feeders_out_of(board.name)] + [p.circuit.body for p in board.circuits]
        found.update(method for body in bodies if (method := body.text("method")) in _PLAIN_METHODS)
    return found.most_common(1)[0][0] if found else ""


class Earthing(NamedTuple):
    """What earths a new system: the size of its electrode wire as written, and both sizes with their reason."""

    electrode: str
    text: str


def earthing_of(view: View, device_a: float, board: Equipment | None) -> Earthing | None:
    """Bonding jumper and electrode conductor of a new separately derived system, for copper wires behind its first
    device (NEC 250.30(A), 250.66, 250.102(C)(1)); None where no table of the project gives them."""
    tables, own = tables_for(view)
    if not own or tables.practice != "us":
        return None
    marked = board.body.number("lug-temp") if board is not None else None
    laid = Laid(US_AMBIENT_C, 3, None if marked is None else round(marked), device_a)
    found = sized(tables, "Cu", 90.0, laid, Demand(device_a, sizing_a=device_a, next_size_up=False))
    if isinstance(found, NotListed):
        return None
    jumper = bonding_jumper(tables, found.size, found.sets, "Cu", "Cu")
    electrode = electrode_conductor(tables, found.size, found.sets, "Cu", "Cu")
    if isinstance(jumper, NotListed) or isinstance(electrode, NotListed):
        return None
    sets = f"{found.sets} sets of " if found.sets > 1 else ""
    return Earthing(
        size_text(electrode.value),
        f"behind it, for a {device_a:g} A device: wires of {sets}{size_text(found.size)} Cu, system bonding jumper "
        f"{size_text(jumper.value)}, electrode conductor {size_text(electrode.value)} ({electrode.table})",
    )
