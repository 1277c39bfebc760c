"""What inverters deliver back through feeders, boards and transformers while little or no load takes it up."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.network import follows_grid, two_sided
from wyeline_linter.protection.ampacities import bounds
from wyeline_linter.protection.currents import current_of, inverter_a, laid_with
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.rules.line_findings import amps_text, line_text
from wyeline_linter.rules.load import limits_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.shares import share_text
from wyeline_linter.system_words import conductor_text
from wyeline_linter.systems import Known
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_BARN = (
    'project "Barn"\n  basis us-2023\nutility UTIL 480 3ph  fault 14 kA, x/r 4\nfeeder UTIL -> TX-1  80 A 3p\n'
    "transformer TX-1 480 3ph -> 208Y/120  45 kVA, z 4.2 %\nfeeder TX-1 -> LP-1\n"
    'panel LP-1 208Y/120  bus 400 A, main 150 A\n  1,3,5  60 A 3p  15 kW heating  "Kiln"\n'
    "inverter PV-1 208 3ph  {kw} kW, limit 1.1 pu, grid-following\nfeeder LP-1 -> PV-1  175 A 3p\n"
)
EXPORT = rule(
    name="export-overload",
    since="0.1",
    severity=Severity.ERROR,
    scope="model",
    summary="Inverters may deliver more back through a feeder, board or transformer than it is made for.",
    why="On a bright day without load all that they make flows back towards the supply: a transformer, wires or a main "
    "made for the load alone overheats or trips, and no sum of loads shows it.",
    clause={"us": "705.28, 705.30", "iec": "60364-4-43 433.1, 60364-5-55 551.7"},
    wrong=_BARN.format(kw=50),
    right=_BARN.format(kw=40),
)
_FULL = 1.0005
"""Rounding of a rating that is just met."""


@dataclass(slots=True)
class _Back:
    """What flows back: A by leg, VA, and the inverters that it comes from."""

    amps: dict[str, float] = field(default_factory=dict)
    va: float = 0.0
    inverters: list[str] = field(default_factory=list)

    def add(self, inverter: str, amps: float, legs: tuple[str, ...], va: float) -> None:
        for leg in legs:
            self.amps[leg] = self.amps.get(leg, 0.0) + amps
        self.va += va
        self.inverters.append(inverter)

    @property
    def most(self) -> tuple[str, float]:
        return max(self.amps.items(), key=lambda item: item[1])


@EXPORT.check
def export_overload(view: View) -> Iterator[Finding]:
    """All inverters at their ratings, no load, as normal; an energy management system (`limit`) holds what it says."""
    feeders: dict[str, tuple[Feeder, _Back]] = {}
    pieces: dict[str, _Back] = {}
    for inverter in view.of_kind("inverter"):
        if follows_grid(inverter) and view.network.fed(inverter.name) and not inverter.damaged:
            _send_back(view, inverter, feeders, pieces)
    for name, back in pieces.items():
        equipment = view.equipment(name)
        if equipment is not None:
            yield from _of_equipment(view, equipment, back)
    for feeder, back in feeders.values():
        yield from _of_feeder(view, feeder, back)


def _send_back(
    view: View, inverter: Equipment, feeders: dict[str, tuple[Feeder, _Back]], pieces: dict[str, _Back]
) -> None:
    """Add what an inverter delivers to every feeder and piece of equipment on its way to the source."""
    network, system = view.network, view.loads.system(inverter.name)
    per_ampere = volt_amperes_per_ampere(system)
    amps = inverter_a(inverter, per_ampere)
    if system is None or amps is None or not per_ampere:
        return
    va, legs, at = amps * per_ampere, tuple(system.legs), inverter.name
    while at in network.supply:
        feeder, above = network.supply[at], network.supplier[at]
        equipment = view.equipment(above)
        if at in network.others or equipment is None or "limit" in feeder.body.facts:
            return  # how much takes which way is not told; or a system holds it to what is written
        feeders.setdefault(feeder.key, (feeder, _Back()))[1].add(inverter.name, amps, legs, va)
        if "limit" in equipment.body.facts or equipment.kind in ("utility", "generator"):
            return
        pieces.setdefault(above, _Back()).add(inverter.name, amps, legs, va)
        if two_sided(equipment):
            state = view.state(above)
            arriving = state.arriving if state is not None else None
            if equipment.kind != "transformer" or not isinstance(arriving, Known):
                return
            per_ampere, legs = volt_amperes_per_ampere(arriving.system), tuple(arriving.system.legs)
            if not per_ampere:
                return
            amps = va / per_ampere
        at = above


def _of_equipment(view: View, equipment: Equipment, back: _Back) -> Iterator[Finding]:
    if equipment.kind == "transformer":
        rating = equipment.body.number("power")
        if rating and back.va > rating * _FULL:
            yield _finding(
                equipment.place_of("power"),
                f"`{equipment.name}`",
                f"{back.va / 1e3:.1f} kVA",
                f"{rating / 1e3:g} kVA",
                back,
                back.va / rating,
                equipment.name,
            )
        return
    limits = limits_of(equipment)
    if not limits:
        return
    (key, limit), (leg, amps) = min(limits, key=lambda item: item[1]), back.most
    if amps > limit * _FULL:
        what = f"{amps_text(amps)} on leg {conductor_text(leg, view.derivation.practice)}"
        subject = f"the {key} of `{equipment.name}`" if key != "rating" else f"`{equipment.name}`"
        yield _finding(equipment.place_of(key), subject, what, f"{limit:g} A", back, amps / limit, equipment.name)


def _of_feeder(view: View, feeder: Feeder, back: _Back) -> Iterator[Finding]:
    leg, amps = back.most
    what = f"{amps_text(amps)} on leg {conductor_text(leg, view.derivation.practice)}"
    rating = feeder.body.facts.get("rating")
    if rating is not None and amps > rating.number * _FULL:
        place, limit = Place(feeder.block, rating.span), f"{rating.number:g} A"
        yield _finding(place, f"the device of `{feeder.key}`", what, limit, back, amps / rating.number, feeder.key)
        return
    line = feeder_line(view, feeder)
    laid = laid_with(line, current_of(view, line)) if line is not None and not line.medium else None
    held = bounds(line.tables, line.wiring, laid) if line is not None and laid is not None else NotListed("")
    if line is not None and not isinstance(held, NotListed) and amps > held[1].amps * _FULL:
        wires, limit = f"`{feeder.key}` ({line_text(line)})", amps_text(held[1].amps)
        yield _finding(line.wires_place, wires, what, limit, back, amps / held[1].amps, feeder.key)


def _finding(place: Place, where: str, what: str, limit: str, back: _Back, share: float, subject: str) -> Finding:
    names = [f"`{name}`" for name in back.inverters[:4]]
    more = f" and {len(back.inverters) - 4} more" if len(back.inverters) > 4 else ""
    return EXPORT.finding(
        place,
        f"without load {what} may flow back through {where}; it is made for {limit}: {share_text(share)}",
        found=f"{what} from {listed(names, 'and')}{more}, at their ratings",
        needed=f"{limit} at the most",
        change="Choose it for what flows back, or hold the inverters to less by an energy management system and write "
        "`limit` at the board or feeder that it measures.",
        subject=subject,
    )
