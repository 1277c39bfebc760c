"""Figures of the studies in words, for lenses, hints and hover, with a sign where they are being solved anew.

Nothing is solved here: what is shown was found by the last study, of statements that have not changed since.
"""

from __future__ import annotations

from collections.abc import Iterable

from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.solved_figures import DropFigure, FaultFigure, VoltsFigure
from wyeline_linter.studies.fault import WORDS
from wyeline_linter.system_words import conductors_text
from wyeline_server.studies import Study

SETTLING = " …"
"""Behind a figure that may no longer hold: it is being solved anew."""


def mark(study: Study) -> str:
    """What stands behind each figure of a study: nothing once it is settled."""
    study.marked |= study.settling
    return SETTLING if study.settling else ""


def fault_of(study: Study | None, equipment: Equipment) -> FaultFigure | None:
    """The fault at equipment; None where it is unknown or the equipment's own statement has changed since."""
    if study is None or not _stand(study, (block for block, _ in equipment.chain)):
        return None
    return study.figures.faults.get(equipment.name)


def volts_of(study: Study | None, equipment: Equipment) -> VoltsFigure | None:
    """The lowest voltage under load, likewise."""
    if study is None or not _stand(study, (block for block, _ in equipment.chain)):
        return None
    return study.figures.volts.get(equipment.name)


def drop_of(study: Study | None, feeder: Feeder) -> DropFigure | None:
    """The drop of a feeder, likewise."""
    if study is None or not study.stands(feeder.block):
        return None
    return study.figures.drops.get(feeder.key)


def _stand(study: Study, blocks: Iterable[Block]) -> bool:
    return all(map(study.stands, blocks))


def fault_beside_rating(fault: FaultFigure) -> str:
    """``fault 18.2 of 22 kA (83 %)``."""
    most = "at the most " if fault.ceiling else ""
    when = f" {fault.when}" if fault.when else ""
    if fault.limit_a is None:
        return f"fault {most}{_ka(fault.largest_a)} kA{when}"
    word = "" if fault.of == "rated" else f"{fault.of} "
    share = f"{100 * fault.largest_a / fault.limit_a:.0f} %"
    return f"fault {most}{_ka(fault.largest_a)} of {word}{_ka(fault.limit_a)} kA ({share}){when}"


def drop_in_brief(drop: DropFigure) -> str:
    """``0.84 %``."""
    return f"{100 * drop.share:.2g} %"


def drop_in_full(drop: DropFigure, practice: str | None) -> str:
    """``loses 4.03 V between A and B; 1.9 % from the source to its end``."""
    text = f"loses {drop.volts:.3g} V between {conductors_text(drop.between, practice, ' and ')}"
    whole = f"; {100 * drop.path_share:.2g} % from the source to its end" if drop.path_share is not None else ""
    return text + whole


def equipment_lines(study: Study | None, equipment: Equipment, practice: str | None) -> list[str]:
    """The lines of a card: faults and the voltage under load."""
    lines: list[str] = []
    fault, volts = fault_of(study, equipment), volts_of(study, equipment)
    if study is None:
        return lines
    if fault is not None:
        least = f"; {_ka(fault.least_a)} kA at least" if fault.least_a is not None else ""
        when = f" {fault.when}" if fault.when else ""
        most = f"at the most, as `{fault.ceiling}` is taken as unlimited, " if fault.ceiling else ""
        rated = f", beside {fault.of} {_ka(fault.limit_a)} kA" if fault.limit_a is not None else ""
        text = f"{most}{_ka(fault.largest_a)} kA with {WORDS[fault.kind]}{when}{rated}{least}"
        lines.append(f"**Fault** {text}{mark(study)}")
    if volts is not None:
        between = conductors_text(volts.between, practice, "–")
        share = f"{100 * volts.share:.1f} % of nominal"
        lines.append(f"**Under load** {between} {volts.volts:.4g} V, {share}{mark(study)}")
    return lines


def feeder_lines(study: Study | None, feeder: Feeder, practice: str | None) -> list[str]:
    """The line of a card: the drop."""
    drop = drop_of(study, feeder)
    if study is None or drop is None:
        return []
    return [f"**Drop** {drop_in_brief(drop)}: {drop_in_full(drop, practice)}{mark(study)}"]


def _ka(amperes: float) -> str:
    return f"{amperes / 1000:.3g}"
