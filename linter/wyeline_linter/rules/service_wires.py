"""Service wires that end at a meter, held against the main behind it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_linter.ahead import own_device_a
from wyeline_linter.findings import Finding
from wyeline_linter.protection.currents import current_of
from wyeline_linter.protection.lines import feeder_line
from wyeline_linter.protection.purposes import Purpose, purpose_of
from wyeline_linter.removed import staying
from wyeline_linter.rules.wires import NOT_HELD, SHORT, judged

if TYPE_CHECKING:
    from wyeline_linter.view import View


@SHORT.also("model")
def service_ahead_of_a_meter(view: View) -> Iterator[Finding]:
    """Service wires that end at a meter: what protects them from overload is the main behind it (NEC 230.90)."""
    for meter in view.of_kind("meter"):
        board = _behind(view, meter)
        if board is None:
            continue
        for feeder in view.feeders_into(meter.name):
            line = feeder_line(view, feeder)
            if line is None or line.guard is not None or line.laid is None or line.medium or line.shared:
                continue
            if purpose_of(view, line, current_of(view, line)) is Purpose.SERVICE:
                found = judged(view, replace(line, target=board))
                yield from staying(view.model, [f for f in found if f.rule != NOT_HELD.name])


def _behind(view: View, meter: Equipment) -> Equipment | None:
    """The board or fused switch whose own device is the first behind a meter; None where the way there branches or has
    a device of its own before."""
    at, passed = meter, {meter.name}
    while at.kind == "meter":
        onward = view.feeders_out_of(at.name)
        if len(onward) != 1 or onward[0].body.number("rating") is not None:
            return None
        found = view.equipment(onward[0].target.name)
        if found is None or found.name in passed:
            return None
        passed.add(found.name)
        at = found
    return at if own_device_a(at) is not None else None
