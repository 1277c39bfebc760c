"""RCDs that protect people beside what trips on a fault, and RCDs in series, under IEC 60364: sockets (4-41 411.3.3),
lights of dwellings (411.3.4), shore power (7-709 709.531.2), selectivity (5-53 536.4.1.4). From memory, paraphrased."""

from __future__ import annotations

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits

SITE = """project "Quay"
  basis iec
utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S
feeder NETT -> HV  160 A 3p
panel HV 400Y/230  bus 160 A, main 160 A
"""


def findings(text: str, rule: str = "rcd-or-gfci-missing") -> list[Finding]:
    return [f for f in Analysis("/m/site.wye", Files(lambda _: text), "/m").findings() if f.rule == rule]


@pytest.mark.parametrize(
    ("row", "needed"),
    # IEC 60364-4-41:2017 411.3.3: socket outlets up to 32 A have 30 mA; 60364-7-709 709.531.2: shore power up to 63 A
    # has 30 mA, above 300 mA, each outlet a device to itself. From memory.
    [
        ("16 A 3p+N  1 kW receptacle", "30 mA"),
        ("32 A 3p+N  1 kW receptacle", "30 mA"),
        ("40 A 3p+N  1 kW receptacle", None),
        ("16 A 3p+N, rcd 30 mA  1 kW receptacle", None),
        ("16 A 3p+N, rcd 300 mA  1 kW receptacle", "30 mA"),
        ("63 A 3p+N  1 kW marina", "30 mA"),
        ("63 A 3p+N, rcd 30 mA  1 kW marina", None),
        ("80 A 3p+N, rcd 300 mA  1 kW marina", None),
        ("80 A 3p+N, rcd 500 mA  1 kW marina", "300 mA"),
        ("10 A 3p+N  1 kW lighting", None),
    ],
)
@pytest.mark.parametrize("main", ["", ", rcd 30 mA"])
def test_additional_protection_under_iec(row: str, needed: str | None, main: str) -> None:
    text = SITE.replace("main 160 A", f"main 160 A{main}") + f'  F1  {row}  "Quay, post 1"\n'
    found = findings(text)
    shared = bool(main) and "marina" not in row
    assert [f.needed.split(" or less")[0] for f in found] == (
        [f"a residual current device of {needed}"] if needed and not shared else []
    )
    for finding in found:
        after = apply_edits(text, finding.fixes[0].edits)
        assert findings(after) == []


@pytest.mark.parametrize(
    ("device", "fits"), [("32 A 3p", False), ("32 A 3p, rcd 30 mA", True), ("32 A 3p, rcd 300 mA", False)]
)
def test_sockets_with_a_name(device: str, fits: bool) -> None:
    text = SITE + f"load POST 400 3ph  5 kW, receptacle\nfeeder HV -> POST  {device}\n"
    assert (findings(text) == []) == fits


@pytest.mark.parametrize(
    ("claim", "row", "fits"),
    # 411.3.4 of the 2017 edition (from memory): lights of premises for a single household.
    [
        ("  claim dwelling-unit\n", "10 A 1p+N", False),
        ("  claim dwelling-unit\n", "10 A 1p+N, rcd 30 mA", True),
        ("", "10 A 1p+N", True),
    ],
)
def test_lights_of_a_dwelling(claim: str, row: str, fits: bool) -> None:
    text = SITE + "panel FLAT 400Y/230  bus 63 A, main 40 A\nfeeder HV -> FLAT  40 A 3p+N\n" + claim
    text = text.replace("main 40 A\n", f'main 40 A\n  F1[L1]  {row}  0.4 kW lighting  "Lights, bedrooms"\n')
    assert (findings(text) == []) == fits


@pytest.mark.parametrize(
    ("ahead", "behind", "advised"),
    # Type S of IEC 61008-1 and three times the residual current (60364-5-53 536.4.1.4), both from memory.
    [
        ("300 mA, rcd-type A", "30 mA", True),
        ("300 mA, rcd-type A-S", "30 mA", False),
        ("300 mA, rcd-type S", "100 mA", False),
        ("300 mA, rcd-type S", "300 mA", True),
        ("300 mA", "30 mA", False),
        ("30 mA", "30 mA", True),
        ("100 mA, rcd-type A", "100 mA", True),
        ("300 mA, rcd-type AC", "100 mA", True),
    ],
)
def test_rcds_in_series(ahead: str, behind: str, advised: bool) -> None:
    board = SITE.replace("main 160 A", f"main 160 A, rcd {ahead}")
    rows = [f'  F{k}  16 A 3p, rcd {behind}, rcd-type A  1 kW heating  "Shed {k}"\n' for k in (1, 2)]
    alone, both = board + rows[0], board + "".join(rows)
    assert findings(alone, "rcds-not-selective") == [], "nothing else goes dark"
    found = findings(both, "rcds-not-selective")
    assert bool(found) == advised
    tie = "panel UV 400Y/230  bus 63 A\nfeeder HV -> UV  63 A 3p normally-open\n"
    assert findings(alone + tie, "rcds-not-selective") == [], "a way that stands open carries no load"
    for fix in (fix for finding in found for fix in finding.fixes):
        assert findings(apply_edits(both, fix.edits), "rcds-not-selective") == []


def test_after_an_edit_of_what_holds_the_rcd_as_afresh() -> None:
    """Of boards further down, too: each is told at its own place."""
    text = SITE.replace("160 A 3p\n", "160 A 3p, rcd 300 mA, rcd-type A\n")
    row = '  F{0}  16 A 3p, rcd 30 mA, rcd-type A  1 kW heating  "Shed {0}"\n'
    text += row.format(1) + row.format(2) + "panel UV 400Y/230  bus 63 A, main 63 A\n" + row.format(1) + row.format(2)
    text += "feeder HV -> UV  63 A 3p\n"
    files = Files(lambda _: text)
    made = Analysis("/m/site.wye", files, "/m")
    assert sum(f.rule == "rcds-not-selective" for f in made.findings()) == 2
    after = text.replace("feeder NETT -> HV  160 A 3p,", "feeder NETT -> HV  160 A 3p  10 m method C,")
    made.edited(*files.get("/m/site.wye").replace_text(after))
    fresh = Analysis("/m/site.wye", Files(lambda _: after), "/m").findings()
    told = [(f.message, f.place.block.lines, f.place.span, [x.title for x in f.fixes]) for f in made.findings()]
    assert told == [(f.message, f.place.block.lines, f.place.span, [x.title for x in f.fixes]) for f in fresh]
