"""The fault and voltage-drop table: fault currents at every bus beside their rating, what is left of the voltage."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from wyeline_grammar.linking import Equipment
from wyeline_linter.network import NORMAL
from wyeline_linter.reports.columns import (
    Cell,
    Column,
    Table,
    TableKind,
    figure_cell,
    note_rises,
    number,
    read,
    resolve,
    words,
)
from wyeline_linter.reports.subject import Subject, about_equipment, sheet_anchor
from wyeline_linter.reports.wording import system_short
from wyeline_linter.studies.scenarios import when
from wyeline_linter.studies.states import unlocked_ties
from wyeline_linter.studies.worst import WORDS, equipment_states, worst

_BUSES = frozenset(
    """utility generator inverter ups transformer transfer switchgear switchboard mcc panel busway disconnect
    junction meter""".split()
)

_NO_LOOP = 100.0


def _ka(key: str, title: str, doc: str, path: str, sheet: str = "fault", iec: str = "") -> Column:
    return Column(key, title, doc, "kA", path, scale=1e-3, digits=2, sheet=sheet, iec=iec)


LARGEST = _ka("max_ka", "Largest", "The largest fault current of all kinds, symmetrical.", "fault.largest.amps")

FAULTS = TableKind(
    "fault-and-drop",
    "Fault currents and voltage drop",
    "Every bus: the largest and the smallest fault current, what its equipment is rated for, and the voltage under "
    "load. Largest and smallest rest on different temperatures, source figures and motors, and never stand for one "
    "another.",
    (
        words("bus", "Bus", "The equipment; what has two sides is shown at its output.", "as written"),
        words("voltage", "Voltage", "Nominal voltage.", "`equipment.system.nominal`"),
        _ka("three_phase_ka", "3 legs", "All three legs together.", "fault.max.three-phase.amps"),
        _ka("line_line_ka", "2 legs", "Two legs together.", "fault.max.line-line.amps"),
        _ka(
            "line_ground_ka",
            "Leg to ground",
            "One leg to earth.",
            "fault.max.line-ground.amps",
            iec="Leg to earth",
        ),
        _ka("line_neutral_ka", "Leg to neutral", "One leg to neutral.", "fault.max.line-neutral.amps"),
        LARGEST,
        Column(
            "x_over_r",
            "X/R",
            "X over R of the loop at the largest fault; empty behind a converter, whose current has no such loop.",
            "",
            "fault.largest.x_over_r",
            pick=lambda ratio: ratio if ratio < _NO_LOOP else None,
            digits=1,
        ),
        _ka("peak_ka", "Peak", "The first peak.", "fault.largest.peak_a"),
        words("rated", "Rated", "Interrupting or withstand rating.", "as written: rated, series, withstand"),
        Column(
            "rated_percent",
            "Of rating",
            "The largest fault current as a part of that rating; above 100 the rating is too small.",
            "%",
            source="`equipment.fault.largest.amps` over the rating",
            digits=0,
        ),
        _ka("min_ka", "Smallest", "The smallest fault current of all kinds.", "fault.smallest.amps", "fault-min"),
        Column(
            "voltage_percent",
            "Lowest voltage",
            "The lowest voltage under load, of nominal.",
            "%",
            "voltage_under_load.lowest.part",
            scale=100,
            digits=1,
            sheet="voltage",
        ),
        Column(
            "path_drop_percent",
            "Drop from source",
            "Sum of the drops from the source of its system to it.",
            "%",
            "drop.part",
            scale=100,
            digits=2,
            sheet="drop",
        ),
        words(
            "worse_elsewhere",
            "Worse in other states",
            "Load and faults that another switch state makes worse by 1 % or more, voltage and drop by 0.25 % of "
            "nominal or more; told in the normal one.",
            "`equipment.worst`",
            wide=True,
        ),
    ),
)


def fault_and_drop(subject: Subject) -> Table:
    """Every bus that is fed, in the order of the files."""
    table = Table(FAULTS, practice=subject.practice)
    for equipment in subject.equipment:
        if equipment.kind not in _BUSES or subject.of(equipment.name).get("source") is None:
            continue
        figures = subject.of(equipment.name)
        rated, amps = _rating(equipment)
        reasons = tuple(figures.get("unknown", {}).get("system", ()))
        table.add(
            {
                **_kinds(figures, read(FAULTS, figures, subject.sheet_of(equipment.name))),
                "bus": equipment.name,
                "voltage": Cell(system_short(figures.get("system")), reasons),
                "rated": rated,
                "rated_percent": _of_rating(figures, amps, sheet_anchor(equipment.name, "fault")),
                "worse_elsewhere": _worse_elsewhere(subject, equipment.name),
            },
            about_equipment(equipment.name),
            subject.place(equipment.place),
        )
    table.notes.append("Fault currents are symmetrical rms values. A question mark is a figure that cannot be told.")
    table.notes += [_METHOD["iec" if subject.view.derivation.practice == "iec" else "us"], *_states(subject)]
    note_rises(table, "path_drop_percent")
    ceilings = [(e.name, c) for e in subject.equipment if (c := resolve(subject.of(e.name), "fault.ceiling")[0])]
    for source in dict.fromkeys(c for _, c in ceilings):
        names = ", ".join(name for name, c in ceilings if c == source)
        table.notes.append(f"Ceilings, since `{source}` is stated as unlimited; the true currents are lower: {names}.")
    return table


_LIMITS = "Not in them: arcs, the field between circuits, how the current of a machine decays, and direct current."
_METHOD = {
    "us": "Largest faults: first half cycle (IEEE Std 141), wires at 25 °C, motors running. Smallest: the weakest "
    f"source, wires at 75 °C, no motors. {_LIMITS}",
    "iec": "Largest faults: IEC 60909-0, wires at 20 °C, motors running, c by the tolerance of each system (see the "
    "assumptions). Smallest: the weakest source, wires at the end temperature of their insulation, no motors. "
    f"{_LIMITS}",
}
"""What the figures rest on and where they end, for whoever signs them."""


def _states(subject: Subject) -> list[str]:
    """The switch states that "worse in other states" compares, and those that nothing is said of."""
    view = subject.view
    first, *others = [study.name for study in view.studies.every()]
    notes = [
        f"Switch states looked at beside {first}: {'; '.join(others) or 'none, since the model tells of no other'}."
    ]
    left_out, ties = view.studies.found().left_out, unlocked_ties(view)
    if left_out:
        notes.append(f"Switch states not looked at: {'; '.join(left_out)}.")
    if ties:
        notes.append(f"Taken to stand open, since no interlock names them: {', '.join(ties)}.")
    return notes


_KINDS = {
    "three_phase_ka": "three-phase",
    "line_line_ka": "line-line",
    "line_ground_ka": "line-ground",
    "line_neutral_ka": "line-neutral",
}


def _kinds(figures: Mapping[str, Any], cells: dict[str, Cell]) -> dict[str, Cell]:
    """Each kind of fault with its own reasons. One between conductors that are not there does not apply."""
    system = figures.get("system")
    if system is None:
        return cells
    legs = [c for c in system["conductors"] if c not in ("N", "M")]
    there = {
        "line_ground_ka",
        *(key for key, least in (("three_phase_ka", 3), ("line_line_ka", 2)) if len(legs) >= least),
    }
    if "N" in system["conductors"]:
        there.add("line_neutral_ka")
    fault = figures.get("fault")
    made = dict(cells)
    for key, kind in _KINDS.items():
        cell = cells[key]
        if key not in there:
            made[key] = Cell()
        elif cell.value is None and not cell.unknown and fault is not None:
            note = (fault["max"].get(kind) or {}).get("note")
            reasons = (note,) if note else tuple(fault["unknown"].get("earth", ()))
            made[key] = Cell(None, reasons, cell.sheet)
    return made


def _worse_elsewhere(subject: Subject, name: str) -> str:
    """The figures that another switch state makes clearly worse: small changes hide the ones that matter."""
    if subject.scenario != NORMAL:
        return ""
    states = equipment_states(subject.view, name)
    here = next((s.figures for s in states if s.state.name == NORMAL), {})
    parts = []
    for figure, found in worst(states).items():
        word, times, unit, digits = WORDS[figure]
        normal = here.get(figure)
        if found.state.name != NORMAL and (normal is None or _clearly(figure, found.value, normal)):
            parts.append(f"{word} {number(times * found.value, digits)} {unit} {when(found.state).strip()}")
    return "; ".join(parts)


_PARTS, _SHARE = 0.0025, 0.01
"""Changes from which a figure in another state is told: of nominal voltage, and of the figure (common practice)."""


def _clearly(figure: str, value: float, normal: float) -> bool:
    change = abs(value - normal)
    return change >= (_PARTS if figure.endswith("_part") else _SHARE * max(abs(value), abs(normal)))


def _rating(equipment: Equipment) -> tuple[str, float | None]:
    """The interrupting rating, the series rating, or the withstand: the first that is written."""
    for key in ("rated", "series", "withstand"):
        text, amps = equipment.body.text(key), equipment.body.number(key)
        if text is not None:
            return text if key == "rated" else f"{text} {key}", amps
    return "", None


def _of_rating(figures: Mapping[str, Any], rating: float | None, sheet: str) -> Cell:
    if rating is None:
        return Cell()
    fault = figure_cell(LARGEST, figures)
    if not isinstance(fault.value, float | int):
        return Cell(None, fault.unknown, sheet)
    return Cell(100 * fault.value * 1e3 / rating if rating else None, (), sheet)
