"""A check that is asked only about what says one of its words has nothing to say of anything else."""

from __future__ import annotations

from pathlib import Path

import pytest

from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.asking import Sifted
from wyeline_linter.rules.registry import SCOPES, all_rules, rules_for

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
SAID = {check: words for rule in all_rules().values() for check, words in rule.said.items()}
ROOT = "/m/model.wye"


def left_out(analysis: Analysis) -> tuple[int, list[str]]:
    """How many checks were not asked about elements of a model, and what they would have said."""
    view, model = analysis.view, analysis.model
    rules = {s: rules_for(s, model.basis) for s in ("equipment", "board", "feeder")}
    sifted = {s: Sifted((c for r in found for c in r.checks[s] if c in SAID), SAID) for s, found in rules.items()}
    boards = [e for e in model.equipment.values() if e.circuits]
    elements = [("equipment", e) for e in model.equipment.values()] + [("board", e) for e in boards]
    asked = 0
    said = []
    for scope, element in [*elements, *(("feeder", f) for f in model.feeders.values())]:
        of = sifted[scope].of(element.body, getattr(element, "circuits", ()))
        for check in SAID:
            if any(check in rule.checks[scope] for rule in rules[scope]) and check not in of:
                asked += 1
                said += [f"{check.__name__}: {finding.message}" for finding in check(view, element)]
    return asked, said


@pytest.mark.parametrize("found", sorted(all_rules().values(), key=lambda r: r.name), ids=lambda r: r.name)
def test_of_an_example_of_a_rule_nothing_is_left_out(found: object) -> None:
    rule = all_rules()[found.name]  # type: ignore[attr-defined]
    for text in (rule.wrong, rule.right):
        files = {ROOT: text, **{f"/m/{path}": more for path, more in rule.files.items()}}

        def read(path: str, files: dict[str, str] = files) -> str:
            if path not in files:
                raise SourceError(path, "there is no such file")
            return files[path]

        assert left_out(Analysis(ROOT, Files(read), "/m"))[1] == []


@pytest.mark.parametrize("model", ["dairy-works/works.wye", "field-station/station.wye"])
def test_of_a_site_nothing_is_left_out(model: str) -> None:
    asked, said = left_out(Analysis(str(EXAMPLES / model), Files()))
    assert asked > 100
    assert said == []


def test_words_are_found_in_the_element_and_in_its_circuits() -> None:
    def check() -> list[object]:
        return []

    def other() -> list[object]:
        return []

    text = 'panel A  bus 100 A, outdoor\n  1  20 A 1p  spare\npanel B  bus 100 A\n  1  20 A 1p  1 kVA lighting  "x"\n'
    equipment = Analysis(ROOT, Files(lambda _: text), "/m").model.equipment
    for word, some in (("outdoor", "A"), ("spare", "A"), ("bus", "AB"), ("lighting", "B")):
        sifted = Sifted([check, other], {check: frozenset({word, "never"})})  # type: ignore[dict-item, list-item]
        told = {name for name, e in equipment.items() if check in sifted.of(e.body, e.circuits)}
        assert told == set(some), word
        assert all(other in sifted.of(e.body) for e in equipment.values())


def test_every_word_belongs_to_a_check_of_a_scope_that_is_sifted() -> None:
    for rule in all_rules().values():
        for scope in set(SCOPES) - {"equipment", "board", "feeder"}:
            assert not rule.said.keys() & set(rule.checks.get(scope, ())), rule.name
