"""What the benchmarks stand on: models of work and not of findings, true twins, printed figures that were measured."""

from __future__ import annotations

import json
import subprocess
import sys
import tomllib
from pathlib import Path
from typing import Any

import pytest
import results
from generate import Site
from jsonschema import validate
from measurements import Measurements
from processes import Usage
from ruamel.yaml import YAML
from targets import TARGETS, verdict
from twins import SCHEMA, as_python, as_toml, as_yaml

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding

ROOT = Path(__file__).parents[2]


def findings(files: dict[str, str]) -> list[Finding]:
    analysis = Analysis("/bench/site.wye", Files(lambda name: files[Path(name).name]), "/bench")
    return [finding for finding in analysis.all_findings() if finding.allowed is None]


@pytest.mark.parametrize("pieces", [30, 1000])
def test_a_sound_site_draws_next_to_no_finding(pieces: int) -> None:
    site = Site(pieces)
    assert pieces <= site.pieces < pieces + 30
    assert len(findings(site.files)) <= 2 + pieces / 200
    assert len(findings({"site.wye": site.in_one()})) <= 2 + pieces / 200


def test_a_faulty_site_draws_many_of_many_sorts() -> None:
    found = findings(Site(1000, faulty=True).files)
    assert len(found) > 250
    assert len({finding.rule for finding in found}) > 15


def test_the_mix_is_like_that_of_the_shipped_examples() -> None:
    """Tokens a line of text, and the share of lines that are comments or circuits, within a third of the examples'."""

    def shares(texts: list[str]) -> tuple[float, float, float]:
        lines = [line for text in texts for line in text.split("\n") if line.strip()]
        comments = sum("//" in line for line in lines)
        circuits = sum(line.startswith("  ") and line.strip()[0].isdigit() for line in lines)
        return len(" ".join(lines).split()) / len(lines), comments / len(lines), circuits / len(lines)

    examples = sorted((ROOT / "grammar/examples/field-station").glob("*.wye"))
    shipped = shares([path.read_text("utf-8") for path in examples])
    made = shares(list(Site(1000).files.values()))
    assert made[0] == pytest.approx(shipped[0], rel=0.34)
    assert made[2] > shipped[2] * 0.66
    assert made[1] > 0.05


def test_twins_say_the_same(tmp_path: Path) -> None:
    data: dict[str, Any] = json.loads(json.dumps(Site(200).data))
    validate(data, SCHEMA)
    assert YAML(typ="safe").load(as_yaml(data)) == data
    assert tomllib.loads(as_toml(data)) == data
    module: dict[str, Any] = {}
    exec(compile(as_python(data), "site.py", "exec"), module)
    assert [tuple(feeder.facts.values()) for feeder in module["FEEDERS"]] == [
        tuple(v for k, v in feeder.items() if k not in ("from", "to")) for feeder in data["feeders"]
    ]
    twin = tmp_path / "site.py"
    twin.write_text(as_python(data), "utf-8")
    done = subprocess.run([sys.executable, "-m", "ruff", "check", "--isolated", str(twin)], capture_output=True)
    assert done.returncode == 0, done.stdout


def test_the_program_writes_a_site_or_says_how_and_writes_nothing(tmp_path: Path) -> None:
    def run(*words: str) -> subprocess.CompletedProcess[str]:
        command = [sys.executable, str(Path(__file__).with_name("generate.py")), *words]
        return subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, timeout=60)

    assert run("--help").stdout.startswith("usage: ")
    for words in (("--help",), ("site",), ("site", "many"), ("site", "0"), ("site", "30", "--fault-free")):
        assert run(*words).returncode == (0 if words == ("--help",) else 2)
    assert list(tmp_path.iterdir()) == []
    done = run("site", "30", "--faulty")
    assert done.returncode == 0, done.stderr
    assert (tmp_path / done.stdout.strip()).read_text("utf-8") == Site(30, faulty=True).files["site.wye"]


def test_every_target_is_judged() -> None:
    assert {target.number for target in TARGETS} == set(range(1, 19))
    few = Measurements(commands={0: {name: [Usage(s, s, 9)] for name, s in (("python", 0.01), ("version", 0.03))}})
    judged = {verdict(t, t.measured(few)) for t in TARGETS if t.what == "`wyeline --version`"}
    assert judged == {"**missed**"}
    assert all(verdict(t, t.measured(few)) == "not measured" for t in TARGETS if t.number < 16)


def test_the_readme_says_what_was_measured() -> None:
    assert results.marked(results.README.read_text("utf-8")) == results.marked(results.RESULTS.read_text("utf-8"))
