"""What is alike is told in full a few times only, and nothing that differs is left out."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.outputs.text import IN_FULL, render

HEAD = 'wye 1\nproject "Kiln"\n  basis us-2023\nutility U 208Y/120  fault 12 kA, x/r 3, fault-min 9 kA\n'
WIDE = 100


def slips(count: int, file: str = "site.wye", head: str = HEAD) -> list[Finding]:
    rows = [
        f'  {i} 20 A 1p  {900 + i} VA lighting "Row {i}"  2#12 + G #12 CU THWN-2  20 m' for i in range(1, count + 1)
    ]
    text = f"{head}panel P 208Y/120  bus 225 A, rated 22 kA\n" + "\n".join(rows) + "\n"
    findings = Analysis(f"/{file}", Files(lambda _: text), "/").findings()
    return [f for f in findings if f.rule == "value-not-understood"]


def shown(findings: list[Finding], *, quiet: bool = False) -> str:
    return render(findings, colour=False, quiet=quiet, columns=WIDE)


@pytest.mark.parametrize("count", [1, IN_FULL])
def test_a_few_that_are_alike_are_told_in_full(count: int) -> None:
    found = slips(count)
    assert len(found) == count
    assert shown(found).count("why:") == count
    assert "alike:" not in shown(found)


def test_further_ones_are_told_in_a_line_each_and_announced() -> None:
    found = slips(27)
    out = shown(found)
    assert out.count("why:") == out.count("fix:") == IN_FULL
    assert f"alike:   {27 - IN_FULL} more like this in this file, one line each below\n\n" in out
    told = [line for line in out.split("\n") if "value-not-understood" in line]
    assert told == shown(found, quiet=True).split("\n"), "each with its place and message"
    assert out.endswith(f"{told[-1]}\n")


def test_another_finding_between_them_stands_in_a_block_of_its_own() -> None:
    found = slips(IN_FULL + 2)
    other = replace(found[0], found="`CU`, in another way")
    out = shown([*found[:-1], other, found[-1]])
    head = shown([other], quiet=True)
    assert f"\n\n{head}\n" in out
    assert out.count("why:") == IN_FULL + 1


@pytest.mark.parametrize("field", ["found", "needed", "why", "change", "rule"])
def test_what_differs_below_its_first_line_is_told_in_full(field: str) -> None:
    found = []
    for i, finding in enumerate(slips(9)):
        other: dict[str, Any] = {field: f"{i} A"}
        found.append(replace(finding, **other))
    assert shown(found).count("change:") == 9


def test_each_file_is_counted_by_itself() -> None:
    found = [*slips(IN_FULL), *slips(IN_FULL, "annex.wye")]
    assert shown(found).count("why:") == 2 * IN_FULL
