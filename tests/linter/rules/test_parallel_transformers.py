"""Transformers side by side, whose angle is known only where a vector group is written or US practice settles it."""

from __future__ import annotations

import pytest
from rule_models import analysis_of

from wyeline_linter.figures import equipment_figures
from wyeline_linter.findings import Severity

RULE = "parallel-units-mismatch"


def pair(basis: str, one: str, other: str) -> str:
    return (
        f'project "Annex"\n  basis {basis}\nutility GRID 480Y/277  fault 14 kA, fault-min 9 kA, x/r 4\n'
        "switchboard MSB 480Y/277  bus 400 A\nfeeder GRID -> MSB  400 A 3p\n"
        f"transformer T-1 480 3ph -> 208Y/120  45 kVA, z 4 %{one}\n"
        f"transformer T-2 480 3ph -> 208Y/120  45 kVA, z 4 %{other}\n"
        "panel LP-1 208Y/120  bus 400 A\nfeeder MSB -> T-1  70 A 3p\nfeeder MSB -> T-2  70 A 3p\n"
        "feeder T-1 -> LP-1  150 A 3p\n  claim parallel\nfeeder T-2 -> LP-1  150 A 3p\n  claim parallel\n"
    )


@pytest.mark.parametrize(
    ("basis", "one", "other", "told"),
    [
        # IEC 60076-8: units in parallel have one phase displacement; unknown is neither alike nor unlike.
        ("iec", ", connection Dyn11", ", connection Dyn11", None),
        ("iec", ", connection Dyn11", ", connection Dyn1", Severity.ERROR),
        ("iec", ", connection Dyn11", "", Severity.WARNING),
        ("iec", "", ", connection Dyn1", Severity.WARNING),
        # IEEE C57.12.00 settles the angle of a delta-wye unit of US practice.
        ("us-2023", ", connection Dyn1", "", None),
        ("us-2023", ", connection Dyn11", "", Severity.ERROR),
    ],
)
def test_an_unknown_angle_is_neither_alike_nor_unlike(basis: str, one: str, other: str, told: Severity | None) -> None:
    found = [f for f in analysis_of(pair(basis, one, other)).findings() if f.rule == RULE]
    assert [f.severity for f in found] == ([] if told is None else [told])
    if told is Severity.WARNING:
        assert "angle is unknown" in found[0].message and f"`T-{1 if not one else 2}`" in found[0].found


def test_figures_show_no_angle_that_nothing_settles() -> None:
    view = analysis_of(pair("iec", ", connection Dyn5", "")).view
    named, nameless = (equipment_figures(view, view.model.equipment[name])["winding"] for name in ("T-1", "T-2"))
    assert (named["connection"], abs(named["shift_deg"]), named["unknown"]) == ("Dyn5", 150.0, {})
    assert (nameless["connection"], nameless["shift_deg"]) == ("Dyn", None)
    assert nameless["unknown"]["shift_deg"] == ["no vector group is given, so the angle of the secondary is unknown"]
