"""Sized wires, devices and raceways in the words of the language."""

from __future__ import annotations

import re

from wyeline_grammar.blocks import Block
from wyeline_grammar.model import Body
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.findings import Edit
from wyeline_linter.protection.wiring import Wiring
from wyeline_linter.raceways import Wires, raceway_kinds, smallest_raceway
from wyeline_linter.tables import Basis, NotListed

CABLE_MM2 = 16.0
"""Up to this size IEC practice runs one cable with all its wires of one size (common practice, no source)."""


def run_text(count: int, size: str) -> str:
    """``3#4/0``, ``3x250kcmil``, ``4x35mm2``."""
    return f"{count}x{size.replace(' ', '')}" if " " in size else f"{count}#{size}"


def size_text(size: str) -> str:
    """``#4/0``, ``250kcmil``, ``35mm2``: a size behind ``+ N``."""
    return size.replace(" ", "") if " " in size else f"#{size}"


def wires_text(wiring: Wiring, *, iec: bool) -> str:
    """The wires as a phrase, such as ``2 sets 3x250kcmil + N 250kcmil + G #2 Cu THWN-2``."""
    sets = f"{wiring.sets} sets " if wiring.sets > 1 else ""
    marks = f" {wiring.metal}" + (f" {wiring.insulation}" if wiring.insulation else "")
    legs, neutral = wiring.legs, wiring.neutral
    if iec:
        same = neutral in (None, wiring.size)
        live = legs + (neutral is not None and not wiring.pen and same)
        if wiring.ground == wiring.size and same and not sets and area_mm2(wiring.size) <= CABLE_MM2 and not wiring.pen:
            return f"{live + 1}G{wiring.size.replace(' ', '')}{marks}"
        extra = f" + N {size_text(neutral)}" if neutral is not None and not same and not wiring.pen else ""
        ground = f" + {wiring.ground_role or 'PE'} {size_text(wiring.ground)}" if wiring.ground else ""
        return f"{sets}{run_text(live, wiring.size)}{extra}{ground}{marks}"
    if legs == 1 and neutral == wiring.size:
        run, extra = run_text(2, wiring.size), ""
    else:
        run, extra = run_text(legs, wiring.size), f" + N {size_text(neutral)}" if neutral else ""
    ground = f" + {wiring.ground_role or 'G'} {size_text(wiring.ground)}" if wiring.ground else ""
    return f"{sets}{run}{extra}{ground}{marks}"


def wires_in(wiring: Wiring, *, sets: int = 1) -> list[Wires]:
    """The wires of ``sets`` sets as a raceway sees them."""
    kind = wiring.insulation or ""
    found = [Wires(wiring.legs * sets, wiring.size, kind)]
    if wiring.neutral is not None:
        found.append(Wires(sets, wiring.neutral, kind))
    if wiring.ground is not None and not wiring.pen:
        found.append(Wires(sets, wiring.ground, kind))
    return found


def raceway_for(tables: Basis, kind: str, wiring: Wiring, *, together: bool, nipple: bool) -> tuple[str, str] | None:
    """The smallest raceway of a kind that holds the wires, as written, and the working; None where no table tells."""
    if kind not in raceway_kinds(tables):
        return None
    chosen = smallest_raceway(tables, kind, wires_in(wiring, sets=wiring.sets if together else 1), nipple=nipple)
    if isinstance(chosen, NotListed):
        return None
    fill = chosen.fill
    return f"{chosen.trade_size} inch {kind}", (
        f"{chosen.trade_size} inch {kind}: filled to {fill.percent:.0f} %, {fill.limit_percent.value:g} % at the most "
        f"({fill.limit_percent.table}, {fill.inside.table}{', one more by note 7' if fill.one_more else ''})"
    )


def trade_of(text: str) -> str:
    """The trade size of the tables in ``2-1/2 inch``: ``2-1/2``."""
    return text.removesuffix("inch").strip()


_AMPERES = re.compile(r"\d[\d.,]*[ \t\u00a0]*[km]?A\b", re.IGNORECASE)


def rating_edit(block: Block, body: Body, amps: float) -> Edit | None:
    """Give the device that is written another rating; its poles stay. None where no rating is written."""
    fact = body.facts.get("rating")
    if fact is None:
        return None
    line, start = fact.span.line, fact.span.start
    found = _AMPERES.search(block.lines[line], start, fact.span.end)
    if found is None:
        return Edit(block, line, start, line, fact.span.end, f"{amps:g} A")
    return Edit(block, line, found.start(), line, found.end(), f"{amps:g} A")


def raceway_edit_of(block: Block, body: Body, text: str) -> Edit | None:
    """Write another raceway of the line's own, such as ``2 inch EMT``; None for a named raceway or none."""
    raceway = body.raceway
    if raceway is None or raceway.named:
        return None
    span = raceway.span
    return Edit(block, span.line, span.start, span.line, span.end, f"in {text}")
