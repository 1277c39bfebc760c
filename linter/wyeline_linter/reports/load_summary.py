"""The load summary: what hangs on every source, transformer and board, connected, in demand and for sizing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from wyeline_grammar.linking import Equipment
from wyeline_linter.network import NORMAL, is_source, two_sided
from wyeline_linter.reports.columns import Cell, Column, Table, TableKind, Value, largest_leg, number, read, words
from wyeline_linter.reports.subject import Subject, about_equipment, sheet_anchor
from wyeline_linter.reports.wording import kind_text
from wyeline_linter.shares import share_text
from wyeline_linter.studies.scenarios import when
from wyeline_linter.studies.worst import equipment_states, worst

_CARRIES = frozenset({"utility", "generator", "inverter", "transformer", "ups", "transfer", "busway"})
_BOARDS = frozenset({"switchgear", "switchboard", "mcc", "panel"})


def _kva(word: str, title: str, doc: str) -> Column:
    return Column(f"{word}_kva", title, doc, "kVA", f"load.{word}.va", scale=1e-3, digits=2, sheet=word)


def _amps(word: str, title: str, doc: str) -> Column:
    return Column(
        f"{word}_a", f"{title} current", doc, "A", f"load.{word}.amps", pick=largest_leg, digits=1, sheet=word
    )


SUMMARY = TableKind(
    "load-summary",
    "Load summary",
    "Every source, transformer, transfer switch, busway and board with the load that it carries. "
    "Connected load is what is installed; demand takes demand factors into account, each once; sizing is what the code "
    "sizes by.",
    (
        words("equipment", "Equipment", "Its tag.", "as written"),
        words("kind", "Kind", "What it is.", "as written"),
        words("fed_from", "Fed from", "What supplies it in this switch state.", "`equipment.fed_from`"),
        _kva("connected", "Connected", "Connected load, with power factors taken into account."),
        _kva("demand", "Demand", "Demand load."),
        _kva("sizing", "Sizing", "What the code sizes by; without a code basis there is none."),
        _amps("demand", "Demand", "Demand current on the most loaded leg, at nominal voltage."),
        _amps("sizing", "Sizing", "Sizing current on the most loaded leg."),
        Column(
            "neutral_a",
            "Neutral",
            "Current in the neutral under demand, with the third harmonic that loads state.",
            "A",
            "load.neutral.demand_a",
            digits=1,
            sheet="neutral",
        ),
        Column(
            "unbalance_percent",
            "Unbalance",
            "How far the most loaded leg lies above the mean.",
            "%",
            "load.unbalance",
            scale=100,
            digits=1,
            sheet="balance",
        ),
        words("rating", "Rating", "The rating the load is held against.", "as written: power, bus, main or rating"),
        Column(
            "loaded_percent",
            "Loaded",
            "Demand over the rating: kVA of a source or transformer, amperes of the smaller of bus and main.",
            "%",
            source="demand load over the written rating",
            digits=0,
        ),
        Column(
            "apart_kva",
            "Future",
            "Marked as future or to be removed, counted nowhere.",
            "kVA",
            "load.apart_va",
            scale=1e-3,
            digits=2,
            pick=lambda va: va or None,
        ),
        words("left_out", "Not counted", "Loads in whose place another runs.", "`equipment.load.left_out`", wide=True),
    ),
)

CLASSES = TableKind(
    "load-classes",
    "Load by class",
    "The load on every source by class, with the demand factor that each class takes there.",
    (
        words("equipment", "Source", "Its tag.", "as written"),
        words("class", "Class", "The class of load.", "`equipment.load.by_class.class`"),
        words("continuous", "Continuous", "Whether it runs for three hours or more.", "`...by_class.continuous`"),
        Column("units", "Units", "How many.", source="`equipment.load.by_class.units`", digits=0),
        Column("connected_kva", "Connected", "Connected load.", "kVA", source="`...by_class.connected_va`", digits=2),
        Column("factor", "Factor", "The demand factor.", source="`...by_class.factor`", digits=2),
        words("factor_from", "Factor from", "Stated, a code table, or a dwelling's.", "`...by_class.factor_stated`"),
        Column("demand_kva", "Demand", "With the factor.", "kVA", source="`...by_class.demand_va`", digits=2),
    ),
)


def load_summary(subject: Subject) -> Table:
    """Whatever carries load, in the order of the files."""
    table = Table(SUMMARY)
    for equipment in subject.equipment:
        figures = subject.of(equipment.name)
        load = figures.get("load")
        if equipment.kind not in _CARRIES | _BOARDS:
            continue
        if load is None:
            table.notes += _carries_elsewhere(subject, equipment)
            continue
        loaded, rating = _loading(equipment, load)
        table.add(
            {
                **read(SUMMARY, figures, subject.sheet_of(equipment.name)),
                "equipment": equipment.name,
                "kind": kind_text(equipment.kind),
                "fed_from": figures.get("fed_from") or "",
                "rating": rating,
                "loaded_percent": loaded,
                "left_out": ", ".join(load["left_out"]),
            },
            about_equipment(equipment.name),
            subject.place(equipment.place),
        )
    return table


def _carries_elsewhere(subject: Subject, equipment: Equipment) -> list[str]:
    """What has no load in the normal state, and carries some in another."""
    if subject.scenario != NORMAL:
        return []
    most = worst(equipment_states(subject.view, equipment.name)).get("load_a")
    if most is None or not most.value:
        return []
    amps = number(most.value, 1)
    return [f"{equipment.name} carries nothing as normal, and {amps} A on its fullest leg {when(most.state).strip()}."]


def _loading(equipment: Equipment, load: Mapping[str, Any]) -> tuple[Cell, str]:
    """Demand over rating in percent, and the rating in words."""
    body = equipment.body
    demand = load["demand"]
    why = tuple(load["unknown"].get("demand", ()))
    power = body.facts.get("power")
    if equipment.kind in _CARRIES and power is not None and body.number("power"):
        size = body.number("power") or 0.0
        if power.value.dimension == "power":
            drawn = demand["w"] if demand is not None else 0.0
        else:
            drawn = demand["va"] if demand is not None else 0.0
        sheet = sheet_anchor(equipment.name, "demand")
        return Cell(100 * drawn / size if demand is not None else None, why, sheet), power.value.text
    rated = [(a, key) for key in ("bus", "main", "rating") if (a := body.number(key)) is not None]
    if not rated:
        return Cell(), ""
    amps, key = min(rated)
    most = largest_leg(demand["amps"]) if demand is not None else None
    share = 100 * most / amps if most is not None else None
    return Cell(share, why, sheet_anchor(equipment.name, "demand")), f"{body.facts[key].value.text} {key}"


def load_classes(subject: Subject) -> Table:
    """The load of every source and of whatever makes a system of its own, by class."""
    table = Table(CLASSES)
    for equipment in subject.equipment:
        if is_source(equipment) or two_sided(equipment):
            for values in _by_class(subject, equipment):
                table.add({**values, "equipment": equipment.name}, "", subject.place(equipment.place))
    if table.rows:
        table.notes.append(_NOT_A_SUM)
    return table


_BESIDE = ("class", "units", "connected_kva", "factor", "demand_kva")
CLASSES_BESIDE = TableKind(
    CLASSES.name, CLASSES.title, "The load on a board by class.", tuple(c for c in CLASSES.columns if c.key in _BESIDE)
)
"""What stands beside a schedule, with `continuous` in the words of the class; where a factor is from says its sheet."""


def classes_of(subject: Subject, board: Equipment) -> Table | None:
    """The load of one board by class; None without load."""
    table = Table(CLASSES_BESIDE, board.name)
    for values in _by_class(subject, board):
        words_of = ", ".join(str(word) for word in (values.pop("class"), values.pop("continuous")) if word)
        table.add({key: values.get(key) for key in _BESIDE} | {"class": words_of})
    return table if table.rows else None


_NOT_A_SUM = (
    "The volt-amperes of classes of different power factor do not add up as numbers: the load summary adds active and "
    "reactive power apart, and comes to less."
)


def _from_code(row: dict[str, Any]) -> str:
    return "dwelling" if row["of_dwelling"] else "" if row["factor"] == 1.0 else "code table"


def _third(row: dict[str, Any]) -> str:
    return f", third harmonic {share_text(row['third_harmonic_part'])}" if row["third_harmonic_part"] else ""


def _by_class(subject: Subject, equipment: Equipment) -> Iterator[dict[str, Cell | Value]]:
    load = subject.of(equipment.name).get("load")
    rows: list[dict[str, Any]] = load["by_class"] if load is not None else []
    connected, demand = (sheet_anchor(equipment.name, figure) for figure in ("connected", "demand"))
    for row in rows:
        yield {
            "class": row["class"] + _third(row),
            "continuous": "continuous" if row["continuous"] else "",
            "units": row["units"],
            "connected_kva": Cell(row["connected_va"] / 1e3, (), connected),
            "factor": row["factor"],
            "factor_from": "stated" if row["factor_stated"] else _from_code(row),
            "demand_kva": Cell(row["demand_va"] / 1e3, (), demand),
        }
