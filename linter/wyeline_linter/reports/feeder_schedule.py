"""The feeder schedule: every run of wires between two pieces of equipment."""

from __future__ import annotations

from wyeline_grammar.linking import Feeder
from wyeline_linter.load_figures import arriving_load
from wyeline_linter.network import two_sided
from wyeline_linter.protection.taps import FOOT_M
from wyeline_linter.reports.ampacity_sheet import ampacity_figure, governing
from wyeline_linter.reports.columns import (
    Cell,
    Column,
    Table,
    TableKind,
    Value,
    largest_leg,
    note_letters,
    note_rises,
    read,
    whole,
    words,
)
from wyeline_linter.reports.subject import Subject, about_feeder, sheet_anchor
from wyeline_linter.reports.wording import (
    STATUS_LEGEND,
    STATUS_NOTE,
    device_text,
    extra_text,
    laying_text,
    raceway_text,
    remarks_of,
    run_text,
    status_of,
    system_short,
)

_GROUND = frozenset({"G", "PE", "PEN", "IG"})

FEEDERS = TableKind(
    "feeders",
    "Feeder schedule",
    "Every feeder: its ends, its device, its load, its wires, and what becomes of the voltage and the fault current.",
    (
        words("feeder", "Feeder", "Its label, or its two ends.", "as written"),
        words("from", "From", "The equipment it leaves, with the port.", "as written"),
        words("position", "Position", "Where its device sits in the board it leaves.", "as written: at"),
        words("to", "To", "The equipment it supplies, with the port.", "as written"),
        words("device", "Device", "The overcurrent device at its start.", "as written: rating, poles, fuse, curve"),
        words("voltage", "Voltage", "The nominal voltage that arrives.", "`feeder.carried.nominal`"),
        words("legs", "Legs", "The conductors that it takes from its supply.", "`feeder.legs`"),
        Column(
            "demand_a",
            "Demand",
            "Demand current on its most loaded leg.",
            "A",
            "load.demand.amps",
            pick=largest_leg,
            digits=1,
            sheet="demand",
        ),
        Column(
            "sizing_a",
            "Sizing",
            "What the code sizes by, on its most loaded leg.",
            "A",
            "load.sizing.amps",
            pick=largest_leg,
            digits=1,
            sheet="sizing",
        ),
        whole("sets", "Sets", "Parallel sets of wires.", "as written"),
        words("wires", "Wires", "Live wires of one set, and the neutral where it is of their size.", "as written"),
        words("neutral", "Neutral", "The neutral where it has a size of its own.", "as written"),
        words("ground", "Ground (PE)", "Grounding or protective conductor.", "as written"),
        words("kind", "Conductor", "Metal, insulation or type of cable.", "as written"),
        words("raceway", "Raceway", "What the wires run in.", "as written: in"),
        words("laid", "Laid", "What bears on the current they carry: method, ambient, grouping.", "as written"),
        Column("length_m", "Length", "Length one way.", "m", "length_m", digits=1, us=("ft", FOOT_M)),
        whole("ampacity_a", "Ampacity", "What its wires carry as they are laid.", "the code tables", "A", 1),
        words(
            "governed_by",
            "Governed by",
            "What decides the ampacity, with the table rows.",
            "the code tables",
            wide=True,
        ),
        Column("current_a", "Current", "Current under load on the fullest wire.", "A", "current.largest_a", digits=1),
        Column(
            "drop_percent",
            "Drop",
            "Voltage lost in it, of nominal.",
            "%",
            "drop.part",
            scale=100,
            digits=2,
            sheet="drop",
        ),
        Column(
            "fault_at_end_ka",
            "Fault at end",
            "The largest fault current at its far end.",
            "kA",
            "fault_at_end.largest_a",
            scale=1e-3,
            digits=2,
        ),
        words("claims", "Claims", "Exceptions that its designer calls upon.", "as written: claim", wide=True),
        words("state", "State", "Open or refused in this switch state.", "`feeder.refused`, the scenario", wide=True),
        words("remarks", "Remarks", "What is noted beside it.", "as written", wide=True),
        words("status", "Status", f"{STATUS_LEGEND}. Empty: new.", "as written"),
    ),
)


def feeder_schedule(subject: Subject) -> Table:
    """All feeders in the order of the files."""
    table = Table(FEEDERS, units=subject.view.units)
    for feeder in subject.feeders:
        table.add(_row(subject, feeder), about_feeder(feeder.key), subject.place(feeder.place))
    note_rises(table, "drop_percent")
    note_letters(table, "status", STATUS_NOTE)
    return table


def _row(subject: Subject, feeder: Feeder) -> dict[str, Cell | Value]:
    body, wires = feeder.body, feeder.body.conductors
    figures = subject.of_feeder(feeder.key)
    target = feeder.target.name
    supplies = subject.view.network.supply.get(target)
    own = supplies is not None and supplies.key == feeder.key
    load = subject.of(target).get("load") if own else None
    entry = {**figures, "load": load.get("arriving", load) if load is not None else None}
    unit, node = subject.view.equipment(target), subject.view.loads.nodes.get(target)
    if load is None and own and unit is not None and two_sided(unit) and node is not None and not node.up.empty:
        entry["load"] = arriving_load(subject.view, target)  # a charger of a battery has no load at its own output
    unknown = tuple(figures.get("unknown", {}).get("carried", ()))
    refused = figures.get("refused")
    open_now = not subject.view.network.state.closed(feeder)
    if open_now or refused is not None:
        entry = _without_flow(entry)
    return {
        **read(FEEDERS, entry, subject.sheet_of(target)),
        **_own_sheets(subject, feeder, entry),
        **_ampacity(subject, feeder),
        "feeder": feeder.key,
        "from": feeder.source.text,
        "position": feeder.statement.at.key if feeder.statement.at is not None else "",
        "to": feeder.target.text,
        "device": device_text(body),
        "voltage": Cell(system_short(figures.get("carried")), unknown),
        "legs": subject.legs(figures.get("legs") or ()),
        "sets": wires.sets if wires is not None else None,
        "wires": run_text(wires) if wires is not None else "",
        "neutral": extra_text(wires, frozenset({"N"})).removeprefix("N "),
        "ground": extra_text(wires, _GROUND).removeprefix("G "),
        "kind": " ".join(wires.marks) if wires is not None else "",
        "raceway": raceway_text(body.raceway),
        "laid": laying_text(body),
        "claims": "; ".join(claim.name for claim in feeder.statement.claims),
        "state": f"refused: {refused['why']}" if refused is not None else "open" if open_now else "",
        "remarks": "; ".join(remarks_of(body)),
        "status": status_of(body),
    }


def _ampacity(subject: Subject, feeder: Feeder) -> dict[str, Cell | Value]:
    figure = ampacity_figure(subject.view, feeder)
    sheet = sheet_anchor(feeder.key, "ampacity")
    return {
        "ampacity_a": Cell(figure.value, figure.unknown, sheet),
        "governed_by": governing(subject.view, feeder),
    }


_FLOW = ("current", "drop", "fault_at_end")


def _without_flow(entry: dict[str, object]) -> dict[str, object]:
    """Where no current flows there is nothing to tell, and nothing that is missing."""
    return {**entry, **dict.fromkeys(_FLOW), "unknown": {}}


def _own_sheets(subject: Subject, feeder: Feeder, entry: dict[str, object]) -> dict[str, Cell]:
    """Figures whose working sheet is the feeder's own, not its target's."""
    anchors = subject.sheet_of(feeder.key)
    own = TableKind(FEEDERS.name, "", "", tuple(c for c in FEEDERS.columns if c.figure and "load." not in c.figure))
    return read(own, entry, anchors)
