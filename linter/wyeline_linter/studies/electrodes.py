"""Earth electrodes that faults to earth return through: of metal parts (R_A), and of the source itself (R_B)."""

from __future__ import annotations

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body
from wyeline_linter.circuit import Bus
from wyeline_linter.studies.built import Built
from wyeline_linter.studies.case import Assumption, Case
from wyeline_linter.studies.place_sources import is_tt
from wyeline_linter.systems import System


def source_electrode_ohm(equipment: Equipment, declared: Body | None, system: System) -> float | None:
    """The electrode at what makes a system (R_B), in ohm; in TN it is the only one there is. None: not written.

    ``declared`` is what is said of the declared system that it makes.
    """
    keys = ("source-resistance",) if is_tt(system) else ("source-resistance", "resistance")
    bodies = (equipment.body, *([declared] if declared is not None else ()))
    return next((ohm for body in bodies for key in keys if (ohm := body.number(key)) is not None), None)


def parts_electrode_ohm(
    built: Built, bus: Bus, equipment: Equipment, declared: Body | None, maker: Equipment | None, r_b: float | None
) -> float | None:
    """The electrode of metal parts (R_A) behind ``equipment``, through which earth faults of a TT system return, in
    ohm; None where it is not written. ``r_b`` is that of ``maker``, which makes the system: where it is not written,
    the largest of these faults have a ceiling, and the smallest are unknown. Faults to neutral flow through neither.
    """
    built.recipe.largest_apart = True
    name, ohm = equipment.name, equipment.body.number("resistance")
    if ohm is None and declared is not None:
        ohm = declared.number("resistance")
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
