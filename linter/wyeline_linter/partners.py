"""Who may be connected with whom: every possible partner for one end of a feeder, the fitting ones first.

Those that do not fit are listed too, each with its reason, so that nobody has to wonder where a piece of equipment is.
"""

from __future__ import annotations

import enum
from collections.abc import Iterator
from typing import NamedTuple

from wyeline_grammar.attributes import KINDS
from wyeline_grammar.linking import Equipment
from wyeline_linter.derive import LOAD_KINDS, NOT_FED, reasons_of
from wyeline_linter.feeding import feed_from
from wyeline_linter.network import OUTGOING_PORTS, can_feed, makes_system
from wyeline_linter.systems import Known, System
from wyeline_linter.verdicts import Feeds, LegMap, Refusal
from wyeline_linter.view import View


class Rank(enum.IntEnum):
    """How well a partner suits."""

    FITS = 0
    FED_ALREADY = 1
    UNKNOWN = 2
    CANNOT = 3


class Partner(NamedTuple):
    """A partner: ``reason`` says in one line what it gives or wants, or why it cannot be connected."""

    name: str
    kind: str
    rank: Rank
    reason: str


def ports(view: View, name: str, *, leaving: bool) -> list[tuple[str, str]]:
    """The named ends of a piece of equipment that a feeder may leave, or reach: with what each is, or is taken by;
    free ones first."""
    equipment = view.equipment(name)
    if equipment is None:
        return []
    feeders = view.feeders_out_of(name) if leaving else view.feeders_into(name)
    taken = {(f.source if leaving else f.target).port: f.key for f in feeders}
    here = [
        (port, doc)
        for port, doc in KINDS[equipment.kind].ports
        if (port in OUTGOING_PORTS) == leaving and (not leaving or OUTGOING_PORTS[port] in equipment.body.flags)
    ]
    free = [(port, doc) for port, doc in here if port not in taken]
    return [*free, *((port, f"taken by `{taken[port]}`") for port, _ in here if port in taken)]


def targets(view: View, source: str, legs: tuple[str, ...] | None = None) -> list[Partner]:
    """What ``source`` may feed, best first; ``legs`` are those written behind its name, None where none are."""
    above = {source, *view.network.above(source)}
    found = [_judged(view, source, equipment, legs, above) for equipment in view.model.equipment.values()]
    return sorted((p for p in found if p.name != source), key=lambda p: (p.rank, p.name))


def sources(view: View, target: str | None) -> list[Partner]:
    """What may feed ``target``, best first; without a target everything that feeders may leave."""
    wanted = view.equipment(target) if target is not None else None
    found = []
    for equipment in view.model.equipment.values():
        if wanted is None:
            found.append(_as_source(view, equipment))
        elif equipment.name != target:
            partner = _judged(view, equipment.name, wanted, None, {equipment.name, *view.network.above(equipment.name)})
            rank = Rank.FITS if partner.rank is Rank.FED_ALREADY else partner.rank
            reason = _offer(view, equipment) if rank is Rank.FITS else partner.reason
            found.append(Partner(equipment.name, equipment.kind, rank, reason))
    return sorted(found, key=lambda p: (p.rank, p.name))


def _as_source(view: View, equipment: Equipment) -> Partner:
    if not can_feed(equipment):
        return Partner(equipment.name, equipment.kind, Rank.CANNOT, f"no feeder leaves a {equipment.kind}")
    state = view.state(equipment.name)
    known = state is not None and isinstance(state.system, Known)
    return Partner(equipment.name, equipment.kind, Rank.FITS if known else Rank.UNKNOWN, _offer(view, equipment))


def _offer(view: View, equipment: Equipment) -> str:
    state = view.state(equipment.name)
    if state is not None and isinstance(state.system, Known):
        return f"offers {state.system.system.nominal.text}"
    return "; ".join(reasons_of(state.system)) if state is not None else "its voltage is not known yet"


def _judged(view: View, source: str, target: Equipment, legs: tuple[str, ...] | None, above: set[str]) -> Partner:
    """Whether ``source`` may feed ``target``; ``above`` are the source and all that it hangs on."""
    name, kind = target.name, target.kind

    def cannot(reason: str) -> Partner:
        return Partner(name, kind, Rank.CANNOT, reason)

    supply = view.equipment(source)
    if supply is not None and not can_feed(supply):
        return cannot(f"no feeder leaves a {supply.kind}")
    if makes_system(target) and target.kind in ("utility", "generator"):
        return cannot("it is a source of its own")
    if name in above:
        return cannot(f"`{source}` hangs on it: they would feed each other")
    state = view.state(source)
    wanted = view.derivation.stated(target.primary)
    if wanted is not None:
        verdict = feed_from(
            state.system if state is not None else NOT_FED, wanted, stated_legs=legs, is_load=kind in LOAD_KINDS
        )
        if isinstance(verdict, Refusal):
            return cannot(f"found {verdict.found}; needed {verdict.needed}")
        if not isinstance(verdict, Feeds):
            return Partner(name, kind, Rank.UNKNOWN, "; ".join(verdict.reasons))
    says = f"wants {wanted.text}" if wanted is not None else "takes what arrives"
    fed = [f.source.name for f in view.feeders_into(name)]
    if fed and target.kind != "transfer":
        return Partner(name, kind, Rank.FED_ALREADY, f"{says}; fed from `{fed[0]}` already")
    return Partner(name, kind, Rank.FITS, says)


def leg_choices(view: View, source: str, target: str | None) -> Iterator[tuple[tuple[str, ...], str]]:
    """The legs of ``source`` that may be taken (for ``target`` where given), each choice with its voltage in words."""
    state = view.state(source)
    if state is None or not isinstance(state.system, Known):
        return
    system = state.system.system
    wanted_by = view.equipment(target) if target is not None else None
    wanted = view.derivation.stated(wanted_by.primary) if wanted_by is not None else None
    seen: set[tuple[str, ...]] = set()
    if wanted is not None and wanted_by is not None:
        verdict = feed_from(state.system, wanted, is_load=wanted_by.kind in LOAD_KINDS)
        maps: tuple[LegMap, ...] = verdict.maps if isinstance(verdict, Feeds) else ()
        for each in maps:
            taken = _in_order(system, each.conductors, neutral=len(each.legs) == 1)
            if taken not in seen:
                seen.add(taken)
                yield taken, each.system.nominal.text
        return
    for taken in _combinations(system):
        yield taken, system.restrict(taken).nominal.text


def _in_order(system: System, conductors: tuple[str, ...], *, neutral: bool) -> tuple[str, ...]:
    return tuple(c for c in system.conductors if c in conductors and (neutral or c in system.legs))


def _combinations(system: System) -> Iterator[tuple[str, ...]]:
    legs = system.legs
    yield legs
    if len(legs) == 3:
        yield from ((legs[0], legs[1]), (legs[1], legs[2]), (legs[2], legs[0]))
    if system.has_neutral:
        yield from ((leg, "N") for leg in legs)
