"""A run has the wires that its legs need, and no others (common practice, no source: a leg has a wire of its own)."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits

SITE = """project "Depot"
  basis {basis}
  frequency 60 Hz, ambient 30 degC
utility UTIL 208Y/120  fault 14 kA, fault-min 9 kA, x/r 4
feeder UTIL -> MSB
switchboard MSB 208Y/120  bus 400 A, main 400 A
panel LP-1 208Y/120  bus 125 A, main lugs
{rows}feeder MSB -> LP-1  100 A 3p  {feeder}
"""
COUNTS = {"wires-too-few", "wires-left-over"}


def analysis(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def told(text: str) -> list[Finding]:
    return [f for f in analysis(text).findings() if f.rule in COUNTS]


def with_feeder(wires: str, basis: str = "us-2023") -> str:
    return SITE.format(basis=basis, rows="", feeder=wires)


def with_rows(*rows: str) -> str:
    lines = "".join(f"  {row}\n" for row in rows)
    return SITE.format(basis="us-2023", rows=lines, feeder="3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT")


@pytest.mark.parametrize(
    ("wires", "rule", "mended"),
    [
        ("2#3 + N #3 + G #8 Cu THWN-2", "wires-too-few", "3#3 + N #3 + G #8 Cu THWN-2"),
        ("1#3 + N #3 + G #8 Cu THWN-2", "wires-too-few", "3#3 + N #3 + G #8 Cu THWN-2"),
        ("4#3 + N #3 + G #8 Cu THWN-2", "wires-left-over", "3#3 + N #3 + G #8 Cu THWN-2"),
        ("6#3 + G #8 Cu THWN-2", "wires-left-over", "3#3 + N #3 + G #8 Cu THWN-2"),
    ],
)
def test_a_feeder_is_offered_the_wires_of_its_legs(wires: str, rule: str, mended: str) -> None:
    text = with_feeder(f"{wires}  20 m  in 2 inch EMT")
    (found,) = told(text)
    assert found.rule == rule
    assert [fix.edits[0].text for fix in found.fixes] == [mended]
    assert not told(apply_edits(text, found.fixes[0].edits))


@pytest.mark.parametrize("wires", ["3#3 + N #3 + G #8 Cu THWN-2", "4#3 + G #8 Cu THWN-2", "2 sets 4#1/0 Cu THWN-2"])
def test_legs_and_a_neutral_draw_nothing(wires: str) -> None:
    assert not told(with_feeder(f"{wires}  20 m  in 2 inch EMT"))


@pytest.mark.parametrize("wires", ["5G16mm2 Cu NYM-J", "7G2.5mm2 Cu NYM-J"])
def test_a_cable_may_have_cores_to_spare(wires: str) -> None:
    assert not told(with_feeder(f"{wires}  20 m, method C", basis="iec"))


@pytest.mark.parametrize(
    ("rows", "rules"),
    [
        (('1  20 A 1p  1 kVA receptacle  "Bench"  1#12 + G #12 Cu THWN-2  20 m  in EMT',), ["wires-too-few"]),
        (('1  20 A 1p  1 kVA receptacle  "Bench"  1#12 + N #12 + G #12 Cu THWN-2  20 m  in EMT',), []),
        (('1,3  20 A 2p  1 kVA heating  "Heater"  1#12 + G #12 Cu THWN-2  20 m  in EMT',), ["wires-too-few"]),
        (('1,3  20 A 2p  1 kVA heating  "Heater"  2#12 + G #12 Cu THWN-2  20 m  in EMT',), []),
        (('1  20 A 1p  1 kVA receptacle  "Bench"  9#12 + G #12 Cu THWN-2  20 m  in EMT',), ["wires-left-over"]),
        (
            (
                '1  20 A 1p  1 kVA receptacle tied  "Bench 1"  2#12 + N #12 + G #12 Cu THWN-2  20 m  in EMT',
                '3  20 A 1p  1 kVA receptacle tied  "Bench 2" with 1',
            ),
            [],
        ),
        (
            (
                '1  20 A 1p  1 kVA receptacle tied  "Bench 1"  2#12 + G #12 Cu THWN-2  20 m  in EMT',
                '3  20 A 1p  1 kVA receptacle tied  "Bench 2" with 1',
                '5  20 A 1p  1 kVA receptacle tied  "Bench 3" with 1',
            ),
            ["wires-too-few"],
        ),
    ],
)
def test_a_circuit_has_its_legs_and_a_way_back(rows: tuple[str, ...], rules: list[str]) -> None:
    text = with_rows(*rows)
    found = told(text)
    assert [f.rule for f in found] == rules
    for one in found:
        assert not told(apply_edits(text, one.fixes[0].edits))
