"""What a piece of equipment draws from its supply, where that is not simply what it carries: through windings, or by
conversion."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.derive import NOT_FED, EquipmentState, reasons_of
from wyeline_linter.loads.as_given import category_of
from wyeline_linter.loads.buckets import Key, add_row, row_of
from wyeline_linter.loads.coincidence import left_out
from wyeline_linter.loads.conductors_of_loads import Part, inverse_conjugates, spread
from wyeline_linter.loads.demand import count
from wyeline_linter.loads.measured import stands
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.loads.of_equipment import converter_input
from wyeline_linter.loads.through_cores import through_of
from wyeline_linter.network import makes_system
from wyeline_linter.reasons import merge_reasons
from wyeline_linter.systems import Known, System, SystemState

if TYPE_CHECKING:
    from wyeline_linter.loads.rollup import LoadBook

EMPTY = Sum()


def drawn_above(book: LoadBook, equipment: Equipment, state: EquipmentState | None, below: Sum) -> Sum:
    """What it draws from its supply, where that is not simply what it carries."""
    if equipment.kind == "capacitor":
        return EMPTY
    if makes_system(equipment):
        return below
    if book.converts(equipment.name):
        share = book.share(equipment.name)
        made = _converted(book, equipment, state, below)
        # What it feeds is scaled already; only a rating that stands for it is not.
        return made if share == 1.0 or below.rows else made.at_share(share) if share else Sum()
    if equipment.kind != "transformer":
        return below
    transformer = through_of(state)
    if transformer is not None:
        return below.through(transformer)
    if below.empty:
        return below
    made = Sum()
    why = reasons_of(state.system) if state is not None else NOT_FED.reasons
    made.unknown = merge_reasons(below.unknown, why or (f"the windings of `{equipment.name}` are not settled",))
    made.unknown_code = made.unknown
    made.apart_va = below.apart_va
    return made


def _converted(book: LoadBook, equipment: Equipment, state: EquipmentState | None, below: Sum) -> Sum:
    made = Sum()
    made.apart_va = below.apart_va
    out_w: float | None = None
    rows, largest = below.counting(left_out({n: h.va for n, h in below.held.items()}, book.relations, book.running))
    if rows:
        out_w = count(rows, largest, book.basis).demand.va.real
    va, reasons = converter_input(equipment, out_w)
    arriving, why = system_of(state.arriving if state is not None and state.arriving is not None else NOT_FED)
    parts: tuple[Part, ...] | None = None
    if va is not None and arriving is not None:
        legs = arriving.legs
        parts = spread(arriving, legs, va) if legs else None
    made.unknown = merge_reasons(below.unknown, reasons, why if arriving is None else ())
    made.unknown_code = made.unknown
    if parts is None or arriving is None:
        return made
    category = category_of(equipment.body, equipment.kind)
    row = row_of(parts, inverse_conjugates(arriving), 1.0, 1)
    key = Key(category, equipment.kind in ("ups", "charger") or "continuous" in equipment.body.flags)
    add_row(made.rows, key, row)
    if below.new is not None:
        made.new = _new_input(book, equipment, below.new, made, out_w)
    return made


def _new_input(book: LoadBook, equipment: Equipment, new: Sum, made: Sum, out_w: float | None) -> Sum:
    """The part of what a converter draws that is new: all of a new one, of one that stands what its new loads are
    of all that it feeds."""
    part = 0.0
    rows, largest = new.counting(left_out({n: h.va for n, h in new.held.items()}, book.relations, book.running))
    if rows and out_w:
        part = count(rows, largest, book.basis).demand.va.real / out_w
    found = made.at_share(part if stands(equipment.body.flags) else 1.0)
    if stands(equipment.body.flags):
        found.unknown, found.unknown_code = new.unknown, new.unknown_code
    return found


def system_of(state: SystemState) -> tuple[System | None, tuple[str, ...]]:
    """The system where it is known, else why it is not."""
    if isinstance(state, Known):
        return state.system, ()
    return None, reasons_of(state)
