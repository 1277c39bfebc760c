"""`wyeline.toml`: what it changes, where it is found, and that nothing wrong in it passes unseen."""

from __future__ import annotations

import dataclasses
import subprocess
import sys
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter import configuration_keys as keys
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.configuration import DEFAULT, ConfigurationError, Settings, find, load, load_for
from wyeline_linter.findings import Severity

FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n"
UNEVEN = (
    FED + 'panel LP-1 208Y/120  bus 100 A, spaces 12\n  1  70 A 1p  6 kVA process  "Oven 1 feed"\n'
    '  3  70 A 1p  7.5 kVA process  "Oven 2 feed"\n  5  70 A 1p  6 kVA process  "Mixer line"\n'
)
"""Legs of 50, 62.5 and 50 A: the fullest is 15.4 % above their mean of 54.2 A (by hand)."""
GENERATOR = (
    "generator GEN 208Y/120  40 kVA, pf 0.8\nfeeder GEN -> LP-1  100 A 3p\n"
    'panel LP-1 208Y/120  bus 225 A\n  1,3,5  100 A 3p  25 kW heating  "Kiln"\n'
)
"""25 kW of 32 kW (40 kVA at 0.8): 78 %."""


def rules_of(folder: Path, model: str, toml: str, name: str = "site.wye") -> dict[str, Severity]:
    """The findings of a model under a configuration, and their severities."""
    root = folder / name
    root.parent.mkdir(parents=True, exist_ok=True)
    root.write_text(model, "utf-8")
    (folder / "wyeline.toml").write_text(toml, "utf-8")
    analysis = Analysis(str(root), Files(), configuration=load_for(str(root)))
    assert analysis.configuration_error is None
    return {f.rule: f.severity for f in analysis.findings()}


@pytest.mark.parametrize(
    ("model", "rule", "loose", "tight"),
    [
        (UNEVEN, "legs-unbalanced", 'balance = "16 %"', 'balance = "15 %"'),
        (GENERATOR, "source-overloaded", 'loading = "79 %"', 'loading = "78 %"'),
        (UNEVEN, "few-spare-positions", 'reserve = "75 %"', 'reserve = "80 %"'),
    ],
)
def test_limits_reach_their_rules(tmp_path: Path, model: str, rule: str, loose: str, tight: str) -> None:
    assert rule not in rules_of(tmp_path, model, f"[limits]\n{loose}\n")
    assert rule in rules_of(tmp_path, model, f"[limits]\n{tight}\n")


def test_what_the_model_states_wins_over_the_configuration(tmp_path: Path) -> None:
    stated = 'project "Mill"\n  reserve 10 %\n' + UNEVEN
    assert "few-spare-positions" not in rules_of(tmp_path, stated, '[limits]\nreserve = "80 %"\n')


def test_severities_by_rule_and_by_path(tmp_path: Path) -> None:
    toml = '[rules]\nlegs-unbalanced = "error"\n'
    assert rules_of(tmp_path, UNEVEN, toml)["legs-unbalanced"] is Severity.ERROR
    assert "legs-unbalanced" not in rules_of(tmp_path, UNEVEN, '[rules]\nlegs-unbalanced = "off"\n')
    by_path = (
        toml
        + '[paths."existing/**"]\nlegs-unbalanced = "advice"\n[paths."existing/new.wye"]\nlegs-unbalanced = "off"\n'
    )
    assert rules_of(tmp_path, UNEVEN, by_path)["legs-unbalanced"] is Severity.ERROR
    assert rules_of(tmp_path, UNEVEN, by_path, "existing/hall/a.wye")["legs-unbalanced"] is Severity.ADVICE
    assert "legs-unbalanced" not in rules_of(tmp_path, UNEVEN, by_path, "existing/new.wye")


def test_a_gap_stays_a_gap_whatever_it_is_called(tmp_path: Path) -> None:
    model = "utility UTIL 480Y/277  fault 10 kA, x/r 4\nfeeder UTIL -> TX-1\n"
    model += "transformer TX-1 480 3ph  45 kVA, z 4 %, x/r 2\nfeeder TX-1 -> LP-1\npanel LP-1 208Y/120  bus 225 A\n"
    found = rules_of(tmp_path, model, '[rules]\nupstream-system-unknown = "error"\n')
    assert found["upstream-system-unknown"] is Severity.GAP


def test_an_allowance_of_a_rule_that_is_off_is_not_called_unused(tmp_path: Path) -> None:
    model = UNEVEN + '  allow legs-unbalanced "the ovens bake in turn"\n'
    assert rules_of(tmp_path, model, '[limits]\nbalance = "15 %"\n[rules]\nlegs-unbalanced = "off"\n') == {}


def test_the_usual_basis_serves_projects_that_state_none(tmp_path: Path) -> None:
    root = tmp_path / "site.wye"
    (tmp_path / "wyeline.toml").write_text('basis = "iec"\n', "utf-8")
    for text, basis in ((UNEVEN, "iec"), ('project "Mill"\n  basis us-2023\n' + UNEVEN, "us-2023")):
        root.write_text(text, "utf-8")
        analysis = Analysis(str(root), Files(), configuration=load_for(str(root)))
        assert analysis.view.basis == basis
        assert analysis.view.units == ("us" if basis == "us-2023" else "si")


OVERRIDE = '[[override]]\ntable = "310.16"\nrow = "3/0 Cu 75 degC"\nvalue = 195\nreason = "duct bank study"\n'


def test_table_rows_of_the_project_reach_the_tables_and_bad_ones_are_told(tmp_path: Path) -> None:
    from wyeline_linter.tables import Looked

    (tmp_path / "wyeline.toml").write_text('basis = "us-2023"\n' + OVERRIDE, "utf-8")
    root = tmp_path / "site.wye"
    root.write_text(UNEVEN, "utf-8")
    tables = Analysis(str(root), Files(), configuration=load_for(str(root))).view.tables
    assert tables is not None
    found = tables.number("ampacity", ("3/0",), "cu_75")
    assert isinstance(found, Looked) and found.value == 195.0
    wrong = load("wyeline.toml", ('basis = "us-2023"\n' + OVERRIDE.replace("3/0 Cu", "3/00 Cu")).encode())
    analysis = Analysis(str(root), Files(), configuration=wrong)
    assert analysis.configuration_error is not None
    assert "no row '3/00 Cu 75 degC'" in str(analysis.configuration_error)
    assert str(analysis.configuration_error).startswith("wyeline.toml:2:")


@pytest.mark.parametrize(
    ("toml", "said"),
    [
        ("unit = 'us'\n", "1:1: `unit` is no key here; the nearest: `units`"),
        ("[limits]\n\n  drop-brnch = '3 %'\n", "3:3: `drop-brnch` is no limit here; the nearest: `drop-branch`"),
        ("[limits]\nloading = 80\n", '2:1: `loading` is a share with its unit, such as `loading = "80 %"`'),
        ("[limits]\nloading = '80 A'\n", "2:1: `80 A` is no share"),
        ("[limits]\nloading = '180 %'\n", "2:1: `loading` lies between 10 % and 100 %, not 180 %"),
        ("[rules]\nlegs-unbalnced = 'off'\n", "2:1: `legs-unbalnced` is no rule here; the nearest: `legs-unbalanced`"),
        ("[rules]\nlegs-unbalanced = 'of'\n", '"error", "warning", "advice" or "off"; the nearest: `off`'),
        ("rules = 3\n", "1:1: `rules` is a table"),
        ("rules.legs-unbalnced = 'off'\n", "1:7: `legs-unbalnced` is no rule here"),
        ("[paths.'/abs/*']\n", "1:8: a pattern is relative to this file"),
        ("[paths.\"a b/*\"]\nknown-slp = 'off'\n", "2:1: `known-slp` is no rule here"),
        ("basis = 'us-2032'\n", "1:1: `basis` is"),
        (
            "[[override]]\ntable = 'x'\n[[override]]\nrow = 'y'\n",
            "3:3: this override lacks `table`, `value` and `reason`",
        ),
        ("a = 1\na = 2\n", "this is no TOML"),
        ("a = \n", "1:5: this is no TOML"),
    ],
)
def test_what_is_wrong_is_an_error_with_its_place_and_the_nearest_right_one(toml: str, said: str) -> None:
    with pytest.raises(ConfigurationError) as caught:
        load("wyeline.toml", toml.encode())
    assert f"wyeline.toml:{said}" in str(caught.value) or said in str(caught.value), str(caught.value)


def test_every_problem_is_told_at_once_in_the_order_of_the_file() -> None:
    with pytest.raises(ConfigurationError) as caught:
        load("wyeline.toml", b"unit = 1\nbase = 2\n[limit]\n")
    assert [p.row for p in caught.value.problems] == [0, 1, 2]


def test_it_is_found_upward_but_not_beyond_the_repository(tmp_path: Path) -> None:
    (tmp_path / "wyeline.toml").write_text("", "utf-8")
    inner = tmp_path / "repository" / "plans"
    inner.mkdir(parents=True)
    assert find(str(inner / "a.wye")) == str(tmp_path / "wyeline.toml")
    (tmp_path / "repository" / ".git").mkdir()
    assert find(str(inner / "a.wye")) is None
    assert load_for(str(inner / "a.wye")) is DEFAULT


@pytest.mark.parametrize(
    ("pattern", "fits", "not_fits"),
    [
        ("*.wye", ["a.wye"], ["b/a.wye"]),
        ("**/*.wye", ["a.wye", "b/c/a.wye"], ["a.txt"]),
        ("old/", ["old/a.wye", "old/b/a.wye"], ["older/a.wye"]),
        ("old/**", ["old/a.wye", "old/b/a.wye"], ["old"]),
        ("a?[1].wye", ["ab[1].wye"], ["a/[1].wye", "ab1.wye"]),
    ],
)
def test_patterns(pattern: str, fits: list[str], not_fits: list[str]) -> None:
    found = keys.pattern_for(pattern)
    assert all(found.fullmatch(path) for path in fits)
    assert not any(found.fullmatch(path) for path in not_fits)


def test_every_limit_has_its_field_its_sentence_and_a_default_within_its_range() -> None:
    assert {limit.field for limit in keys.LIMITS.values()} == {f.name for f in dataclasses.fields(Settings)}
    for limit in keys.LIMITS.values():
        assert limit.low <= getattr(Settings(), limit.field) <= limit.high
        assert limit.doc.endswith(".")


def test_without_a_file_the_toml_reader_is_not_even_imported() -> None:
    code = (
        "import sys\nfrom wyeline_linter.configuration import load_for\n"
        "load_for('/nowhere/x.wye')\nassert 'tomllib' not in sys.modules\n"
    )
    subprocess.run([sys.executable, "-c", code], check=True)


def test_the_settings_in_the_readme_are_those_of_the_code() -> None:
    readme = (Path(__file__).parents[2] / "linter" / "README.md").read_text("utf-8")
    assert keys.reference() in readme, "python -m wyeline_linter.configuration_keys linter/README.md renews it"


def test_the_example_in_the_readme_is_read() -> None:
    readme = (Path(__file__).parents[2] / "linter" / "README.md").read_text("utf-8")
    example = readme.split("```toml\n")[1].split("```")[0]
    found = load("wyeline.toml", example.encode())
    assert found.settings.balance == 0.12 and found.severities["transformer-mostly-idle"] is None
    assert len(found.overrides_for("us-2023")) == 1


@pytest.mark.parametrize("command", ["check {0}", "show {0}", "connect {0} UTIL LP-1", "size {0}", "report {0} -o out"])
def test_no_command_prints_figures_that_lack_a_row_of_the_project(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], command: str
) -> None:
    root = tmp_path / "site.wye"
    root.write_text(UNEVEN, "utf-8")
    wrong = OVERRIDE.replace("3/0 Cu", "3/00 Cu")
    (tmp_path / "wyeline.toml").write_text('basis = "us-2023"\n' + wrong, "utf-8")
    assert main(command.format(root).split()) == 2
    told = capsys.readouterr()
    assert told.out == "" and "wyeline.toml:2:" in told.err and "no row '3/00 Cu 75 degC'" in told.err
