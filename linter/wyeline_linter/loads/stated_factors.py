"""Demand factors that a statement gives, and limits that load management holds: each counts for every place above."""

from __future__ import annotations

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.loads.buckets import VA, Rows, add_row
from wyeline_linter.loads.nodes import Sum
from wyeline_linter.working import merge_reasons


def stated_factor(equipment: Equipment, feeder: Feeder | None) -> tuple[float | None, str]:
    """The demand factor stated for all that hangs on it, and who states it."""
    for key in ("factor", "diversity"):
        value = equipment.body.number(key)
        if value is not None:
            return value, equipment.name
    value = feeder.body.number("factor") if feeder is not None else None
    return value, feeder.key if feeder is not None and value is not None else ""


def held_to_limit(below: Sum, limit: float, name: str) -> tuple[Sum, float]:
    """Vehicle chargers held to a limit, and the share left of them: a stated factor, for each place above as well."""
    chargers = [key for key in below.rows if key.category == "ev"]
    drawn = abs(sum((below.rows[key][VA] * (key.factor or 1.0) for key in chargers), 0j))
    if not chargers or drawn <= limit:
        return below, 1.0

    def limited(rows: Rows) -> Rows:
        made: Rows = {}
        for key, row in rows.items():
            factor = (key.factor or 1.0) * limit / drawn if key.category == "ev" else key.factor
            add_row(made, key._replace(factor=factor), row)
        return made

    made = below.rekeyed(limited)
    made.held = dict(below.held)
    made.factored = merge_reasons(below.factored, (f"limit of {name}",))
    return made, limit / drawn
