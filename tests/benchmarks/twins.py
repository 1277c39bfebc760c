"""The same model in what people use instead: YAML, JSON and TOML with a JSON Schema, and Python calls."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from generate import Site

POSITIVE = {"type": "number", "exclusiveMinimum": 0}
AMPERES = {"type": "number", "minimum": 15, "maximum": 6000}
LOAD = {"type": "number", "minimum": 0, "maximum": 90000}


def closed(required: str, **properties: Any) -> dict[str, Any]:
    """The schema of a map with these keys and no others."""
    return {
        "type": "object",
        "required": required.split(),
        "additionalProperties": False,
        "properties": properties,
    }


SCHEMA: dict[str, Any] = {
    "$schema": "http://json-schema.org/draft-07/schema#",
    **closed(
        "equipment feeders",
        equipment={
            "type": "array",
            "items": closed(
                "kind name voltage circuits",
                kind={"enum": ["utility", "transformer", "switchboard", "panel", "motor", "disconnect"]},
                name={"type": "string", "pattern": "^[A-Z][A-Za-z0-9-]*$"},
                voltage={"type": "string"},
                fault_ka=POSITIVE,
                kva={**POSITIVE, "maximum": 10000},
                hp=POSITIVE,
                rated_a=AMPERES,
                bus_a=AMPERES,
                main_a=AMPERES,
                circuits={
                    "type": "array",
                    "items": closed(
                        "at amps poles va load",
                        at={"type": "array", "items": {"type": "integer", "minimum": 1}},
                        amps={"type": "number", "minimum": 1},
                        poles={"enum": [1, 2, 3]},
                        va=LOAD,
                        load={"type": "string"},
                        text={"type": "string"},
                        length_m=POSITIVE,
                    ),
                },
            ),
        },
        feeders={
            "type": "array",
            "items": closed(
                "from to wires length_m",
                **{"from": {"type": "string"}},
                to={"type": "string"},
                amps={"type": "number", "minimum": 0},
                poles={"enum": [1, 2, 3]},
                wires={"type": "string"},
                length_m=POSITIVE,
            ),
        },
    ),
}
"""What a schema can say of the same model: shapes, ranges and spellings, no voltage and no fault current."""


def as_yaml(data: dict[str, Any]) -> str:
    """Block-style YAML, written without a library so that the generator needs none."""
    lines: list[str] = []
    for section, entries in data.items():
        lines.append(f"{section}:")
        for entry in entries:
            _yaml_map(entry, lines, "  ")
    return "\n".join(lines) + "\n"


def _yaml_map(entry: dict[str, Any], lines: list[str], indent: str) -> None:
    lead = f"{indent}- "
    for key, value in entry.items():
        if _is_tables(value):
            lines.append(f"{lead}{key}:")
            for each in value:
                _yaml_map(each, lines, indent + "    ")
        else:
            lines.append(f"{lead}{key}: {json.dumps(value)}")
        lead = f"{indent}  "


def as_toml(data: dict[str, Any]) -> str:
    """TOML with an array of tables for each list, as people write it."""
    lines: list[str] = []
    for section, entries in data.items():
        for entry in entries:
            _toml_table(section, entry, lines)
    return "\n".join(lines) + "\n"


def _toml_table(path: str, entry: dict[str, Any], lines: list[str]) -> None:
    lines.append(f"[[{path}]]")
    lines += [f"{key} = {json.dumps(value)}" for key, value in entry.items() if not _is_tables(value)]
    for key, value in entry.items():
        if _is_tables(value):
            for each in value:
                _toml_table(f"{path}.{key}", each, lines)


def _is_tables(value: Any) -> bool:
    return isinstance(value, list) and bool(value) and isinstance(value[0], dict)


def as_python(data: dict[str, Any]) -> str:
    """A module that makes the model by calls, a name for each piece of equipment."""
    lines = ["from collections import namedtuple", ""]
    for name, fields in (("Equipment", "kind voltage facts circuits"), ("Circuit", "facts"), ("Feeder", "ends facts")):
        lines.append(f'{name} = namedtuple("{name}", "{fields}")')
    for entry in data["equipment"]:
        facts = _without(entry, "kind", "name", "voltage", "circuits")
        lines.append(f'{_name(entry["name"])} = Equipment("{entry["kind"]}", "{entry["voltage"]}", {facts}, [')
        lines += [f"    Circuit({json.dumps(circuit)})," for circuit in entry["circuits"]]
        lines.append("])")
    lines.append("FEEDERS = [")
    for entry in data["feeders"]:
        source, target = (_name(entry[end].split("[")[0]) for end in ("from", "to"))
        lines.append(f"    Feeder(({source}, {target}), {_without(entry, 'from', 'to')}),")
    lines.append("]")
    return "\n".join(lines) + "\n"


def _name(tag: str) -> str:
    return tag.replace("-", "_")


def _without(entry: dict[str, Any], *keys: str) -> str:
    return json.dumps({key: value for key, value in entry.items() if key not in keys})


TWINS = {
    "site.yaml": as_yaml,
    "site.json": lambda data: json.dumps(data, indent=1) + "\n",
    "site.toml": as_toml,
    "site.py": as_python,
}


def write_site(folder: Path, pieces: int, *, faulty: bool = False) -> Path:
    """The model in every notation, and ``one/site.wye``, the whole of it in one file. Returns the root file."""
    site = Site(pieces, faulty=faulty)
    for name, text in site.files.items():
        (folder / name).write_text(text, "utf-8")
    (folder / "one").mkdir(exist_ok=True)
    (folder / "one" / "site.wye").write_text(site.in_one(), "utf-8")
    for name, written in TWINS.items():
        (folder / name).write_text(written(site.data), "utf-8")
    (folder / "schema.json").write_text(json.dumps(SCHEMA), "utf-8")
    return folder / "site.wye"
