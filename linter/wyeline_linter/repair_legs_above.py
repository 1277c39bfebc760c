"""A connection that other legs further up would make: what passes a supply on has no choice of its own."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from functools import partial

from wyeline_grammar.tokens import spelled
from wyeline_linter.feeding import feed
from wyeline_linter.network import makes_system, two_sided
from wyeline_linter.repair_edits import Draft, legs_text, set_source
from wyeline_linter.repair_link import Candidate, Link, as_nameplate
from wyeline_linter.repair_routes import COST
from wyeline_linter.system_words import conductors_text
from wyeline_linter.systems import NEUTRAL, Known
from wyeline_linter.verdicts import Feeds, Refusal
from wyeline_linter.view import View


def legs_further_up(view: View, link: Link) -> Iterator[Candidate]:
    """Other legs, as many as are written, at the feeder of what passes the supply on to this connection alone.

    Only through equipment that states no voltage of its own (a meter, a disconnect) and feeds nothing else: what else
    hangs on the legs would change with them. A feeder that sits at positions keeps them, and so its legs.
    """
    supply = view.network.supply.get(link.source)
    between = view.equipment(link.source)
    if supply is None or between is None or link.wanted is None or not isinstance(link.verdict, Refusal):
        return
    if makes_system(between) or two_sided(between) or between.primary is not None or between.circuits:
        return
    stated = tuple(leg for leg in supply.source.legs or () if leg != NEUTRAL)
    state, at = view.feeder_state(supply.key), supply.statement.at
    if not stated or state is None or not isinstance(state.offered, Known) or (at is not None and at.positions):
        return
    if len(view.feeders_out_of(link.source)) > 1:
        return
    up = state.offered.system
    named_neutral = NEUTRAL in (supply.source.legs or ())
    neutral = (NEUTRAL,) if up.has_neutral else ()
    hz = view.derivation.wanted_hz(link.target)
    for legs in itertools.combinations(up.legs, len(stated)):
        if set(legs) == set(stated):
            continue
        part = up.restrict((*legs, *neutral))
        verdict = feed(part, link.wanted, is_load=as_nameplate(link.target), frequency_hz=hz)
        if not isinstance(verdict, Feeds):
            continue
        draft = Draft()
        called = partial(conductors_text, practice=view.basis)
        written = f"[{' '.join((*legs, NEUTRAL))}]" if named_neutral else legs_text(legs)
        set_source(draft, view.model, supply, spelled(supply.source.name), written)
        yield Candidate(
            COST["swap"],
            "legs further up",
            f"Take legs {called(legs)} instead of {called(stated)} of `{supply.source.name}` at `{supply.key}`",
            f"`{link.source}` passes on what it gets, and {called(legs)} are {part.figures()}",
            draft.edits(),
            board=supply.source.name,
            legs=legs,
        )
        return
