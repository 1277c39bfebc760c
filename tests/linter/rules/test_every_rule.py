"""Every rule documents itself: its wrong example draws exactly its finding, its right one none, its fix mends."""

from __future__ import annotations

import re

import pytest

from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Edit, Finding
from wyeline_linter.fixing import apply_edits
from wyeline_linter.rules.registry import Rule, all_rules, rule

RULES = sorted(all_rules().values(), key=lambda r: r.name)
DRAWN = [r for r in RULES if not r.beside]
"""Rules whose findings a model alone draws; the others have tests beside the baseline."""
ROOT = "/m/model.wye"


def check(texts: dict[str, str], *, studies: bool = False) -> list[Finding]:
    """The findings of a model in memory; its root is ``/m/model.wye``. ``studies``: with those of the studies."""

    def read(path: str) -> str:
        name = path[path.index("/m/") :].replace("\\", "/")
        if name not in texts:
            raise SourceError(path, "there is no such file")
        return texts[name]

    analysis = Analysis(ROOT, Files(read), "/m")
    return analysis.all_findings() if studies else analysis.findings()


def at_rest(found: Rule) -> bool:
    """Whether a rule runs with the studies; its examples are then clean of what studies say, too."""
    return "study" in found.checks


def example(found: Rule, text: str) -> dict[str, str]:
    return {ROOT: text, **{f"/m/{path}": more for path, more in found.files.items()}}


def named(findings: list[Finding]) -> list[str]:
    return [f"{f.rule}: {f.message}" for f in findings]


@pytest.mark.parametrize("found", DRAWN, ids=lambda r: r.name)
def test_the_wrong_example_draws_this_finding_and_no_other(found: Rule) -> None:
    findings = check(example(found, found.wrong), studies=at_rest(found))
    assert {f.rule for f in findings} == {found.name}, named(findings)
    for finding in findings:
        assert finding.message
        assert not finding.message.endswith(".")
        assert finding.found, found.name
        assert finding.needed, found.name
        assert finding.change, found.name
        assert finding.why
        assert [fix.title for fix in finding.fixes if fix.title[0].islower()] == []


@pytest.mark.parametrize("found", DRAWN, ids=lambda r: r.name)
def test_the_right_example_draws_nothing(found: Rule) -> None:
    assert named(check(example(found, found.right), studies=at_rest(found))) == []


@pytest.mark.parametrize("found", [r for r in RULES if r.mends], ids=lambda r: r.name)
def test_the_first_fix_mends_the_wrong_example(found: Rule) -> None:
    texts = example(found, found.wrong)
    finding = next(f for f in check(texts, studies=at_rest(found)) if f.rule == found.name)
    edits: dict[str, list[Edit]] = {}
    for edit in finding.fixes[0].edits:
        edits.setdefault(edit.block.file, []).append(edit)
    for path, list_of in edits.items():
        name = path[path.index("/m/") :].replace("\\", "/")
        texts[name] = apply_edits(texts[name], list_of)
    assert named(check(texts, studies=at_rest(found))) == [], texts


@pytest.mark.parametrize("found", RULES, ids=lambda r: r.name)
def test_every_fix_says_what_it_does_and_can_be_applied(found: Rule) -> None:
    texts = example(found, found.wrong)
    findings = check(texts, studies=at_rest(found))
    assert not found.mends or any(f.fixes for f in findings if f.rule == found.name)
    for finding in findings:
        for fix in finding.fixes:
            assert fix.title and fix.edits
            changed = apply_edits(texts[ROOT], [e for e in fix.edits if e.block.file.endswith("model.wye")])
            assert changed != texts[ROOT] or any(not e.block.file.endswith("model.wye") for e in fix.edits)


@pytest.mark.parametrize("found", RULES, ids=lambda r: r.name)
def test_every_field_is_filled(found: Rule) -> None:
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)+", found.name)
    assert not re.match(r"(no|check|invalid)-", found.name)
    for text in (found.summary, found.why):
        assert text.endswith(".") and len(text) > 20
    assert found.wrong.endswith("\n") and found.right.endswith("\n")
    assert found.wrong != found.right
    assert re.fullmatch(r"\d+\.\d+", found.since)
    assert found.basis in ("physics", "us", "iec", "both")
    assert set(found.clause) <= {"us", "iec"}


def test_a_name_is_never_used_twice() -> None:
    taken = RULES[0]
    with pytest.raises(ValueError, match="used twice"):
        rule(
            name=taken.name,
            since="0.1",
            severity=taken.severity,
            scope="model",
            summary="",
            why="",
            wrong="",
            right="",
        )
