"""What the command line prints as JSON keeps to its schema (JSON Schema 2020-12), and holds no key beyond it."""

from __future__ import annotations

import contextlib
import io
import json
import re
import tempfile
from functools import cache
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from wyeline_linter.cli import main
from wyeline_linter.outputs.json_schema import OUTPUTS, schema_of

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
ROOTS = [EXAMPLES / "field-station" / "station.wye", EXAMPLES / "dairy-works" / "works.wye"]
BROKEN = sorted((EXAMPLES / "broken").glob("*.wye"))


def printed(capsys: pytest.CaptureFixture[str], *words: str) -> Any:
    capsys.readouterr()
    main(words)
    return json.loads(capsys.readouterr().out)


@cache
def figures(root: Path) -> Any:
    text = io.StringIO()
    with contextlib.redirect_stdout(text):
        main(["show", "--json", str(root)])
    return json.loads(text.getvalue())


@cache
def report_of(root: Path, *more: str) -> Any:
    """What `wyeline report` writes as data."""
    with tempfile.TemporaryDirectory() as folder, contextlib.redirect_stdout(io.StringIO()):
        assert main(["report", str(root), "-o", folder, "--format", "json", *more]) == 0
        return json.loads((Path(folder) / "report.json").read_text("utf-8"))


def refused(output: str, found: Any) -> list[str]:
    """What is wrong with it by the schema that takes no key it does not name."""
    validator = jsonschema.Draft202012Validator(schema_of(output, closed=True))
    return [f"{e.json_path}: {e.message[:200]}" for e in validator.iter_errors(found)]


@pytest.mark.parametrize("output", sorted(OUTPUTS))
def test_a_schema_is_one(output: str, capsys: pytest.CaptureFixture[str]) -> None:
    schema = printed(capsys, "schema", output)
    assert schema == schema_of(output)
    jsonschema.Draft202012Validator.check_schema(schema)
    for name, part in schema["$defs"].items():
        assert part["description"], name
    assert not jsonschema.Draft202012Validator(schema).is_valid({"version": 2})


@pytest.mark.parametrize("root", [*ROOTS, *BROKEN], ids=lambda path: path.stem)
def test_findings_keep_to_it(root: Path, capsys: pytest.CaptureFixture[str]) -> None:
    found = printed(capsys, "check", "--format", "json", "--no-cache", str(root))
    assert refused("check", found) == []
    jsonschema.Draft202012Validator(schema_of("check")).validate({**found, "a key to come": 1})
    found["summary"]["error"] = "many"
    assert refused("check", found)


@pytest.mark.parametrize("root", [*ROOTS, *BROKEN], ids=lambda path: path.stem)
def test_figures_keep_to_it(root: Path) -> None:
    assert refused("show", figures(root)) == []


@pytest.mark.parametrize("root", [*ROOTS, *BROKEN], ids=lambda path: path.stem)
def test_data_of_reports_keep_to_it(root: Path) -> None:
    found = report_of(root)
    assert refused("report", found) == []
    row = next(row for table in found["states"][0]["tables"] for row in table["rows"])
    assert refused(
        "report", {**found, "states": [{"state": "normal", "tables": [{"rows": [{**row, "cells": {"x": True}}]}]}]}
    )


def test_every_figure_that_it_names_is_printed_by_an_example() -> None:
    every_key_is_printed("show", [figures(root) for root in (*ROOTS, *BROKEN)])


def test_every_key_of_a_report_is_written_by_an_example(tmp_path: Path) -> None:
    for path in ROOTS[1].parent.glob("*.wye"):
        text = path.read_text("utf-8").replace("60 m", "70 m")
        (tmp_path / path.name).write_text(text, "utf-8")
    changed = report_of(tmp_path / ROOTS[1].name, "--since", str(ROOTS[1].parent))
    assert changed["since"]
    every_key_is_printed("report", [*map(report_of, ROOTS), changed])


def every_key_is_printed(output: str, found: list[Any]) -> None:
    schema = schema_of(output)
    shapes = schema["$defs"]
    seen: dict[str, set[str]] = {name: set() for name in shapes}
    for one in found:
        _walk(one, schema, shapes, seen)
    absent = {name: shapes[name]["properties"].keys() - keys for name, keys in seen.items()}
    assert {name: keys for name, keys in absent.items() if keys} == {}


def _walk(found: Any, at: dict[str, Any], shapes: dict[str, Any], seen: dict[str, set[str]]) -> None:
    for option in at.get("anyOf", [at]):
        if "$ref" in option and isinstance(found, dict):
            name = option["$ref"].rpartition("/")[2]
            seen[name] |= found.keys()
            for key, value in found.items():
                _walk(value, shapes[name]["properties"][key], shapes, seen)
        elif "items" in option and isinstance(found, list):
            for value in found:
                _walk(value, option["items"], shapes, seen)
        elif isinstance(option.get("additionalProperties"), dict) and isinstance(found, dict):
            for value in found.values():
                _walk(value, option["additionalProperties"], shapes, seen)


@pytest.mark.parametrize("root", ROOTS, ids=lambda path: path.stem)
def test_comparisons_keep_to_it(root: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Against the same model with every tenth line away, lengths doubled, and a name changed."""
    old, new = tmp_path / "old", tmp_path / "new"
    for folder in (old, new):
        folder.mkdir()
        for path in root.parent.glob("*.wye"):
            text = path.read_text("utf-8")
            if folder is new:
                lines = [line for n, line in enumerate(text.splitlines(), 1) if n % 10 or not line.startswith("feeder")]
                text = re.sub(r"\b(\d+) m\b", lambda m: f"{int(m[1]) * 2} m", "\n".join(lines) + "\n")
                text += "panel ANNEX 208Y/120  bus 100 A, rated 10 kA\n" if path == root else ""
            (folder / path.name).write_text(text, "utf-8")
    found = printed(capsys, "compare", "--format", "json", str(old / root.name), str(new / root.name))
    assert refused("compare", found) == []
    (model,) = found["models"]
    assert model["changes"] and model["worse"] and model["added"] and model["sheets"]
