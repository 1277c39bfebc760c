"""Sizes for what a repair inserts: the transformer, its two devices, the wires on its primary side.

Standard ratings and code limits come from the tables of the project's basis. Where the project names none, standard
series are still a help, so they are taken from the basis that its frequency suggests, and a note says so. Nothing here
gives an impedance, a length or a fault rating: only an engineer has those.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.connected_load import Connected, load_below
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.repair_routes import Stage
from wyeline_linter.sizing.plain import earthing_of, main_of, tables_for
from wyeline_linter.tables import Basis, NotListed

if TYPE_CHECKING:
    from wyeline_linter.standard_ratings import DeviceLimit
    from wyeline_linter.view import View

_R10 = (1.0, 1.25, 1.6, 2.0, 2.5, 3.15, 4.0, 5.0, 6.3, 8.0)
"""Preferred numbers R10 (ISO 3), which IEC 60076-1 clause 5.1 names for rated powers."""


@dataclass(slots=True)
class Sizes:
    """Sizes of an inserted piece; None where they cannot be told. ``notes`` say where each one comes from."""

    load: Connected
    power_text: str = ""
    primary_device_a: float | None = None
    fuse: bool = False
    main_to_add_a: float | None = None
    electrode: str = ""
    notes: list[str] = field(default_factory=list)
    unresolved: int = 0


def has_lugs_only(equipment: Equipment) -> bool:
    return any(equipment.body.text(key) == "lugs" for key in ("main", "incomer"))


def sizes_for(view: View, stage: Stage, target: Equipment, device_a: float | None, least_va: float = 0.0) -> Sizes:
    """Sizes of ``stage`` in front of ``target``; ``device_a`` is the device that stays on the line to it, ``least_va``
    what a transformer is asked to have at the least."""
    tables, own = tables_for(view)
    sizes = Sizes(load_below(view, target.name))
    volts = stage.secondary.line_v
    phases = 3 if stage.three_phase else 1
    if stage.kind != "transformer":
        _converter(sizes, stage, target)
        return sizes
    # Behind three windings a need of two legs still loads each winding with its own share.
    root = math.sqrt(3.0) if phases == 3 else 1.0
    main = main_of(target)
    kva, why = _kva(tables, sizes.load, phases, volts, root, main, device_a, target, least_va / 1000.0)
    if kva is None:
        sizes.unresolved += 1
        sizes.notes.append(f"kVA of the transformer: {why}")
        return sizes
    sizes.power_text = f"{kva:g} kVA"
    sizes.notes.append(f"{kva:g} kVA {why}")
    if not own:
        sizes.notes.append(f"sizes are of the usual series ({tables.title}); the project names no basis")
    _primary_device(tables, sizes, kva * 1000.0 / (stage.primary.line_v * root), zigzag=stage.sort == "zigzag")
    if main is None and target.kind not in LOAD_KINDS and device_a is None:
        _main_to_add(tables, sizes, kva * 1000.0 / (volts * root), target)
    first = next((d for d in (main, sizes.main_to_add_a, device_a) if d is not None), None)
    earthing = earthing_of(view, first, target) if first is not None and stage.new_source else None
    if earthing is not None:
        sizes.electrode = earthing.electrode
        sizes.notes.append(earthing.text)
    return sizes


def _converter(sizes: Sizes, stage: Stage, target: Equipment) -> None:
    if sizes.load.some and not sizes.load.unknown:
        sizes.power_text = power_text(sizes.load.va, "W" if stage.kind == "charger" else "VA")
        sizes.notes.append(f"{sizes.power_text} is the load of `{target.name}`; the next size of a maker goes here")
    else:
        sizes.unresolved += 1
        sizes.notes.append("rating of the converter: the load below is not stated")


def power_text(va: float, unit: str = "VA") -> str:
    if va >= 1000.0:
        return f"{round(va / 1000.0, 3):g} k{unit}"
    return f"{round(va, 1):g} {unit}"


def _kva(
    tables: Basis,
    load: Connected,
    phases: int,
    volts: float,
    root: float,
    main: float | None,
    device_a: float | None,
    target: Equipment,
    asked: float,
) -> tuple[float | None, str]:
    """The usual size, and why it is that one."""
    least, why = 0.0, ""
    if load.some:
        least = load.va / 1000.0
        why = f"carries the {power_text(load.va)} stated below it"
        if load.unknown or load.at_least:
            why += " (at least: not every load states its input)"
    if asked > least:
        least = asked
        why += f", and {asked:.3g} kVA for its fullest winding and the reserve" if why else ""
    device = main if main is not None else device_a if target.kind not in LOAD_KINDS else None
    bus = target.body.number("bus") or target.body.number("rating")
    if device is not None:
        carrier = f"the {device:g} A {'main' if main is not None else 'device'} of `{target.name}`"
        for size in _series(tables, phases, max(least, device * volts * root / 1000.0 / 3.0)):
            if size >= least and _protected_by(tables, size * 1000.0 / (volts * root), device):
                more = f", and {why}" if why else ""
                return size, f"is the least that {carrier} protects{more}"
        return None, f"no usual size is protected by {carrier}"
    if not least and bus is not None and target.kind not in LOAD_KINDS:
        least = bus * volts * root / 1000.0
        why = f"matches the {bus:g} A bus of `{target.name}`, as nothing below states a load"
    if not least:
        return None, f"`{target.name}` states neither load nor rating"
    found = next(
        (
            size
            for size in _series(tables, phases, least)
            if target.kind in LOAD_KINDS or _largest_main(tables, size * 1000.0 / (volts * root), target) is not None
        ),
        None,
    )
    return (found, why) if found is not None else (None, f"no usual size reaches {least:.4g} kVA")


def _series(tables: Basis, phases: int, least: float) -> list[float]:
    """Usual sizes in kVA from ``least`` on."""
    from wyeline_linter.standard_ratings import transformer_sizes_kva

    listed = transformer_sizes_kva(tables, 3 if phases == 3 else 1)
    if tables.practice == "us" and listed:
        return [size for size in listed if size >= least * (1 - 1e-9)]
    first = listed[0] if listed else math.inf
    small = [step * 10.0**power for power in range(4) for step in _R10]
    return [s for s in (*(s for s in small if s < first), *listed) if s >= least * (1 - 1e-9)]


def _protected_by(tables: Basis, rated_a: float, device_a: float) -> bool:
    """Whether a device of this rating on the secondary side guards the windings (NEC 450.3(B); elsewhere 125 %)."""
    from wyeline_linter.standard_ratings import transformer_device_limit

    limit = transformer_device_limit(tables, rated_a, side="secondary", secondary_protected=True)
    if isinstance(limit, NotListed):
        return device_a <= 1.25 * rated_a * (1 + 1e-9)
    return device_a <= limit.largest_a * (1 + 1e-9)


def _primary_device(tables: Basis, sizes: Sizes, rated_a: float, *, zigzag: bool) -> None:
    """125 % of the rated current, next standard rating; never above the limit of the basis (NEC 450.3(B): 250 %), and
    for a grounding transformer never above 125 % (NEC 450.5)."""
    from wyeline_linter.standard_ratings import rating_at_least, rating_at_most, transformer_device_limit

    if zigzag:
        for kind in ("breaker", "fuse"):
            most = rating_at_most(tables, 1.25 * rated_a, "fuse" if kind == "fuse" else "breaker")
            if not isinstance(most, NotListed) and most.value >= rated_a:
                sizes.primary_device_a, sizes.fuse = most.value, kind == "fuse"
                sizes.notes.append(f"{most.value:g} A on the primary: 125 % of {rated_a:.3g} A at the most (NEC 450.5)")
                return
        sizes.unresolved += 1
        sizes.notes.append(
            f"primary device: no standard rating lies between {rated_a:.3g} A and 125 % of it (NEC 450.5)"
        )
        return
    for kind in ("breaker", "fuse"):
        wanted = rating_at_least(tables, 1.25 * rated_a, "fuse" if kind == "fuse" else "breaker")
        limit = transformer_device_limit(
            tables, rated_a, side="primary", secondary_protected=True, kind="fuse" if kind == "fuse" else "breaker"
        )
        if isinstance(wanted, NotListed) or (not isinstance(limit, NotListed) and wanted.value > limit.largest_a):
            continue
        sizes.primary_device_a, sizes.fuse = wanted.value, kind == "fuse"
        sizes.notes.append(
            f"{wanted.value:g} A on the primary: 125 % of {rated_a:.3g} A, next standard rating"
            + ("" if isinstance(limit, NotListed) else f"; the limit is {limit.limit_a:.3g} A ({_cite(limit)})")
        )
        return
    sizes.unresolved += 1
    sizes.notes.append(f"primary device: no standard rating suits {rated_a:.3g} A")


def _cite(limit: DeviceLimit) -> str:
    return limit.percent.table if limit.percent is not None else limit.rating.table


def _main_to_add(tables: Basis, sizes: Sizes, rated_a: float, target: Equipment) -> None:
    chosen = _largest_main(tables, rated_a, target)
    if chosen is None:
        sizes.unresolved += 1
        sizes.notes.append("secondary device: no standard rating suits")
        return
    sizes.main_to_add_a = chosen
    sizes.notes.append(f"main {chosen:g} A protects the secondary ({rated_a:.4g} A rated) and the bus")


def _largest_main(tables: Basis, rated_a: float, target: Equipment) -> float | None:
    """The largest standard main that protects both a secondary of this rated current and the bus behind it."""
    from wyeline_linter.standard_ratings import rating_at_most, transformer_device_limit

    limit = transformer_device_limit(tables, rated_a, side="secondary", secondary_protected=True)
    largest = limit.largest_a if not isinstance(limit, NotListed) else 1.25 * rated_a
    bus = target.body.number("bus")
    chosen = rating_at_most(tables, min(largest, bus or largest))
    return None if isinstance(chosen, NotListed) else chosen.value
