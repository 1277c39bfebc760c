"""What the rules say once a proposal is written: the reserve of what it inserted, and warnings that it leaves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from wyeline_linter.findings import Severity

if TYPE_CHECKING:
    from wyeline_linter.analysis import Analysis
    from wyeline_linter.view import View


def warnings_of(analysis: Analysis) -> dict[tuple[str, str], str]:
    """What a model is warned of, by rule and by what it is about."""
    return {
        (f.rule, f.subject): f"{f.message} ({f.rule})"
        for f in analysis.findings()
        if f.severity is Severity.WARNING and f.allowed is None
    }


def larger_va(view: View, name: str) -> float | None:
    """The rating that leaves a transformer the reserve which the project asks for; None where its own does."""
    from wyeline_linter.rules.load_sources import transformer_share

    equipment = view.equipment(name)
    rating = equipment.body.number("power") if equipment is not None else None
    if equipment is None or equipment.kind != "transformer" or rating is None:
        return None
    share = transformer_share(view.loads, name, rating)[0]
    return rating * share / view.settings.loading if share > view.settings.loading + 1e-9 else None


def nearly_idle(view: View, name: str, target: str) -> str:
    """What is to be settled where the main behind a transformer, and not its load, decided its size."""
    from wyeline_linter.rules.load_sources import IDLE, transformer_mostly_idle

    equipment = view.equipment(name)
    if equipment is None or view.configuration.severities.get(IDLE.name, IDLE.severity) is None:
        return ""
    for found in transformer_mostly_idle(view, equipment):
        return (
            f"{found.message} of it; `{target}` is what asks for this size: write the load it waits for as `future`, "
            "or choose a smaller main and then a smaller unit"
        )
    return ""
