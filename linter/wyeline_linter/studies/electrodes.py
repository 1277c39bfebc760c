"""Earth electrodes that faults to earth return through, and what lacks where one is not written."""

from __future__ import annotations

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body
from wyeline_linter.circuit import Bus
from wyeline_linter.earthing import parts_electrode_ohm
from wyeline_linter.studies.built import Built
from wyeline_linter.studies.case import Assumption, Case


def noted_electrode_ohm(
    built: Built, bus: Bus, equipment: Equipment, declared: Body | None, maker: Equipment | None, r_b: float | None
) -> float | None:
    """The electrode of metal parts (R_A) behind ``equipment``, through which earth faults of a TT system return, in
    ohm; None where it is not written. ``r_b`` is that of ``maker``, which makes the system: where it is not written,
    the largest of these faults have a ceiling, and the smallest are unknown. Faults to neutral flow through neither.
    """
    built.recipe.largest_apart = True
    name, ohm = equipment.name, parts_electrode_ohm(equipment, declared)
    if ohm is None:
        text = f"TT at `{name}`: a fault to earth returns through the electrode, whose resistance is not written"
        built.unknown_ground[bus.name] = (text,)
    elif r_b is None and maker is not None:
        theirs = f"the source's own electrode at `{maker.name}` (`source-resistance`)"
        if built.case is Case.MAX:
            text = f"no resistance of {theirs}: a ceiling for faults to earth"
            built.assumed.append(Assumption(name, text, maker.place))
        else:
            built.unknown_ground[bus.name] = (f"TT at `{name}`: nothing tells the resistance of {theirs}",)
    return ohm
