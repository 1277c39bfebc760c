"""Third-harmonic currents: what loads state, what comes together in a neutral, and what passes a transformer.

The third harmonics of the three legs of a wye are in step, so they add up in its neutral where the fundamental cancels
(IEC 60364-5-52 Annex E). Those of several loads are added as plain numbers: what they really add up to hangs on their
angles, which nobody writes, and is less.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.loads.buckets import CODE, CODE_AMPS, Key, Rows
from wyeline_linter.loads.conductors_of_loads import LEG_COUNT
from wyeline_linter.loads.demand import ordered
from wyeline_linter.network import two_sided
from wyeline_linter.shapes import Shape
from wyeline_linter.systems import Known, System

if TYPE_CHECKING:
    from wyeline_linter.derive import EquipmentState
    from wyeline_linter.loads.through_cores import Through

WORD = "third-harmonic"
NONLINEAR = frozenset({"it"})
"""Classes that count as mostly harmonic where no share is stated (common practice, no source)."""
NONLINEAR_FROM = 0.15
"""Above this share a load counts as nonlinear: from there a neutral heats its wires (IEC 60364-5-52 524.2, Annex E,
from memory). The NEC gives no figure."""
_IN_STEP = frozenset({Shape.WYE4, Shape.TWO_LEGS3})
"""Systems with a neutral whose legs are a third of a turn apart; on a centre-tapped winding third harmonics cancel as
the fundamental does."""
_ROUNDING = 1e-9


class Restated(NamedTuple):
    """A share in place of what loads say: of all, or (``stated_only``) of those that say something."""

    share: float
    stated_only: bool = False

    def key(self, key: Key) -> Key:
        """The kind of load with this share."""
        if key.third == self.share or (self.stated_only and key.third is None):
            return key
        return key._replace(third=self.share)


_NOTHING_PASSES = Restated(0.0, stated_only=True)


class ThirdHarmonic(NamedTuple):
    """Third-harmonic current at a place: ``part`` of the line currents of all legs (0.4 is 40 %), ``neutral_a`` what
    adds up in the neutral, amperes; ``unstated_va`` is the load under demand that states none and counts with none."""

    part: float
    neutral_a: float
    unstated_va: float


def nonlinear(key: Key) -> bool:
    """Whether a kind of load counts as nonlinear: by the share that it states, else by its class."""
    return key.category in NONLINEAR if key.third is None else key.third > NONLINEAR_FROM + _ROUNDING


def returning(stated: float | None, system: System, legs: int, *, neutral: bool = True) -> float | None:
    """The stated share of a load as far as it returns through a neutral: 0 of a load between two legs, of one in whose
    wires there is no neutral, or on a system without one."""
    if stated is None or (neutral and legs != 2 and system.has_neutral):
        return stated
    return 0.0


def restated_at(
    equipment: Equipment,
    feeder: Feeder | None,
    state: EquipmentState | None,
    through: Through | None,
    *,
    converts: bool,
) -> tuple[Restated | None, Restated | None]:
    """What a place does to the shares of the loads that it carries: on its bus, and on its way to its supply.

    A board states the share of all its current, and so does its feeder; what converts states that of its input. What a
    load states of itself is that of its kind already. Windings that draw nothing through a neutral pass nothing on.
    """
    above = two_sided(equipment) or converts
    share = None
    if converts or (not above and equipment.kind not in LOAD_KINDS):
        share = equipment.body.number(WORD)
    if share is None and feeder is not None and (above or WORD not in equipment.body.facts):
        share = feeder.body.number(WORD)
    if share is None:
        return None, None if through is None or through.fed_to_neutral else _NOTHING_PASSES
    arriving = (state.arriving if above else state.system) if state is not None else None
    if not isinstance(arriving, Known):
        return None, None
    restated = Restated(share if arriving.system.has_neutral else 0.0)
    return (None, restated) if above else (restated, None)


def third_harmonic(system: System | None, rows: Rows, factors: dict[Key, float]) -> ThirdHarmonic | None:
    """What comes together at a place, by the demand factor of each kind of load; None where no load states a share, or
    none can add up in a neutral."""
    if all(key.third is None for key in rows) or system is None or not system.has_neutral:
        return None
    if system.shape not in _IN_STEP:
        return None
    # Rounded: what adds up of loads that all state 15 % is 15 %, and no hair above it.
    lines = third = unstated = 0.0
    for key, row in ordered(rows).items():
        amps = factors[key] * sum([abs(row[CODE_AMPS + k]) for k in range(LEG_COUNT)])
        lines += amps
        if key.third is None:
            unstated += factors[key] * row[CODE].real
        else:
            third += key.third * amps
    return ThirdHarmonic(round(third / lines, 9) if lines else 0.0, third, unstated)
