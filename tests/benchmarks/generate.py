"""Invented models of any size, the same one as ``.wye`` text and as plain data for YAML, JSON and TOML tools.

A *piece* is a piece of equipment or a circuit; a feeder belongs to what it feeds. The mix follows the shipped examples:
about one piece of equipment to two circuits, single-phase and three-phase transformers, motors, loads, comments, and an
include for every switchboard.
"""

from __future__ import annotations

import random
from typing import Any

SIZES = {20: "#12", 30: "#10", 40: "#8"}


class Site:
    """A generated site: ``files`` maps names to texts (``site.wye`` is the root), ``data`` is the same as data."""

    def __init__(self, pieces: int, seed: int = 7) -> None:
        self.random = random.Random(seed)
        self.pieces = 0
        self.files: dict[str, str] = {}
        self.data: dict[str, Any] = {"equipment": [], "feeders": []}
        root = [
            "wye 1",
            'project "Generated works"',
            "  basis     us-2023",
            "  frequency 60 Hz, ambient 30 degC",
            "",
        ]
        self._equipment(root, "utility", "UTIL", "12.47Y/7.2 kV", "fault 9 kA, fault-min 6 kA, x/r 8", {"fault_ka": 9})
        board = 0
        includes = []
        while self.pieces < pieces:
            lines: list[str] = [f"// Board {board}: generated, invented data."]
            self._board(lines, board, pieces)
            name = f"board-{board}.wye"
            self.files[name] = "\n".join(lines) + "\n"
            includes.append(f'include "{name}"')
            board += 1
        self.files["site.wye"] = "\n".join([*root, *includes]) + "\n"

    def _equipment(self, lines: list[str], kind: str, name: str, volts: str, words: str, facts: dict[str, Any]) -> None:
        self.pieces += 1
        lines.append(f"{kind:<11} {name:<7} {volts:<19} {words}")
        self.data["equipment"].append({"kind": kind, "name": name, "voltage": volts, **facts, "circuits": []})

    def _feeder(
        self, lines: list[str], source: str, target: str, amps: int | None, poles: int, wires: str, most_m: int = 60
    ) -> None:
        length = self.random.randint(most_m // 2, most_m)
        device = f"{amps} A {poles}p" if amps else ""
        lines.append(f"feeder {source:<11} -> {target:<7} {device:<10} {wires}  {length} m  in PVC-40")
        self.data["feeders"].append(
            {"from": source, "to": target, "amps": amps, "poles": poles, "wires": wires, "length_m": length}
        )

    def _board(self, lines: list[str], b: int, pieces: int) -> None:
        r = self.random
        main, board = f"TM-{b}", f"MSB-{b}"
        self._equipment(
            lines, "transformer", main, "12.47 kV 3ph -> 480Y/277", "1500 kVA, z 5.75 %, x/r 6", {"kva": 1500}
        )
        self._feeder(lines, "UTIL", main, 100, 3, "3#2 + G #6 Cu MV-105")
        self._equipment(
            lines,
            "switchboard",
            board,
            "480Y/277",
            "bus 2000 A, main 2000 A, gfpe, gfpe-pickup 1200 A, rated 65 kA",
            {"bus_a": 2000},
        )
        lines.append('  claim arc-energy-reduction "maintenance switch, see the commissioning plan"')
        self._feeder(lines, main, board, None, 3, "6 sets 3x400kcmil + N 400kcmil + G 400kcmil Cu THWN-2", 3)
        lines.append("  claim tap-10ft")
        for i in range(12):
            if self.pieces >= pieces:
                return
            tag = f"{b}-{i}"
            if i % 4 == 3:
                self._single_phase_panel(lines, board, tag, "ABC"[i // 4 % 3])
            else:
                self._three_phase_panel(lines, board, tag)
            motor = r.choice([(5, 15, "#14", "#14"), (10, 30, "#12", "#12"), (20, 60, "#8", "#10")])
            self._equipment(
                lines, "motor", f"P-{tag}", "460 3ph", f"{motor[0]} hp, pf 0.86, eff 91 %", {"hp": motor[0]}
            )
            self._feeder(lines, board, f"P-{tag}", motor[1], 3, f"3{motor[2]} + G {motor[3]} Cu THWN-2")

    def _three_phase_panel(self, lines: list[str], board: str, tag: str) -> None:
        kva, primary, wires, main, secondary = self.random.choice(
            [
                (30, 50, "3#6 + G #10 Cu THWN-2", 100, "3#1 + N #1 + G #6 Cu THWN-2"),
                (45, 70, "3#4 + G #8 Cu THWN-2", 150, "3#1/0 + N #1/0 + G #6 Cu THWN-2"),
            ]
        )
        self._equipment(
            lines, "transformer", f"T-{tag}", "480 3ph -> 208Y/120", f"{kva} kVA, z 4.2 %, x/r 1.8", {"kva": kva}
        )
        self._feeder(lines, board, f"T-{tag}", primary, 3, wires)
        self._equipment(
            lines,
            "panel",
            f"LP-{tag}",
            "208Y/120",
            f"bus 225 A, main {main} A, rated 22 kA, spaces 42",
            {"bus_a": 225, "main_a": main},
        )
        self._circuits(lines, 14, 1)
        lines.append(f"/// Secondary of T-{tag}.")
        self._feeder(lines, f"T-{tag}", f"LP-{tag}", None, 3, secondary, 3)
        lines.append("  claim tap-10ft")

    def _single_phase_panel(self, lines: list[str], board: str, tag: str, leg: str) -> None:
        legs = {"A": "AB", "B": "BC", "C": "CA"}[leg]
        self._equipment(lines, "transformer", f"T-{tag}", "480 1ph -> 120/240", "25 kVA, z 2.6 %, x/r 1.4", {"kva": 25})
        self._feeder(lines, f"{board}[{legs}]", f"T-{tag}", 70, 2, "2#4 + G #8 Cu THWN-2")
        self._equipment(
            lines, "panel", f"LP-{tag}", "120/240", "bus 125 A, main 100 A, rated 10 kA, spaces 24", {"bus_a": 125}
        )
        self._circuits(lines, 8, 1)
        self._feeder(lines, f"T-{tag}", f"LP-{tag}", None, 2, "2#1 + N #1 + G #6 Cu THWN-2", 3)
        lines.append("  claim tap-10ft")

    def _circuits(self, lines: list[str], count: int, first: int) -> None:
        r = self.random
        rows = self.data["equipment"][-1]["circuits"]
        for position in range(first, first + count):
            load, va = r.choice([("lighting continuous", 900), ("receptacle", 1080), ("receptacle", 720), ("it", 1200)])
            room = f"Room {len(self.data['equipment'])}-{position}"
            length = r.randint(9, 30)
            wires = f"2#12 + G #12 Cu THWN-2  {length} m  in 1/2 inch EMT"
            lines.append(f'  {position:<7} 20 A 1p   {va} VA    {load:<19} "{room}"  {wires}')
            rows.append(
                {"at": [position], "amps": 20, "poles": 1, "va": va, "load": load, "text": room, "length_m": length}
            )
            self.pieces += 1


SCHEMA: dict[str, Any] = {
    "$schema": "http://json-schema.org/draft-07/schema#",
    "type": "object",
    "required": ["equipment", "feeders"],
    "additionalProperties": False,
    "properties": {
        "equipment": {
            "type": "array",
            "items": {
                "type": "object",
                "required": ["kind", "name", "voltage", "circuits"],
                "additionalProperties": False,
                "properties": {
                    "kind": {"enum": ["utility", "transformer", "switchboard", "panel", "motor"]},
                    "name": {"type": "string", "pattern": "^[A-Z][A-Za-z0-9-]*$"},
                    "voltage": {"type": "string"},
                    "fault_ka": {"type": "number", "exclusiveMinimum": 0},
                    "kva": {"type": "number", "exclusiveMinimum": 0, "maximum": 10000},
                    "hp": {"type": "number", "exclusiveMinimum": 0},
                    "bus_a": {"type": "number", "minimum": 15, "maximum": 6000},
                    "main_a": {"type": "number", "minimum": 15, "maximum": 6000},
                    "circuits": {
                        "type": "array",
                        "items": {
                            "type": "object",
                            "required": ["at", "amps", "poles", "va", "load"],
                            "additionalProperties": False,
                            "properties": {
                                "at": {"type": "array", "items": {"type": "integer", "minimum": 1}},
                                "amps": {"type": "number", "minimum": 1},
                                "poles": {"enum": [1, 2, 3]},
                                "va": {"type": "number", "minimum": 0},
                                "load": {"type": "string"},
                                "text": {"type": "string"},
                                "length_m": {"type": "number", "exclusiveMinimum": 0},
                            },
                        },
                    },
                },
            },
        },
        "feeders": {
            "type": "array",
            "items": {
                "type": "object",
                "required": ["from", "to", "wires", "length_m"],
                "additionalProperties": False,
                "properties": {
                    "from": {"type": "string"},
                    "to": {"type": "string"},
                    "amps": {"type": ["number", "null"]},
                    "poles": {"enum": [1, 2, 3]},
                    "wires": {"type": "string"},
                    "length_m": {"type": "number", "exclusiveMinimum": 0},
                },
            },
        },
    },
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
        if isinstance(value, list) and value and isinstance(value[0], dict):
            lines.append(f"{lead}{key}:")
            for each in value:
                _yaml_map(each, lines, indent + "    ")
        else:
            lines.append(f"{lead}{key}: {_scalar(value)}")
        lead = f"{indent}  "


def _scalar(value: Any) -> str:
    if value is None:
        return "null"
    if isinstance(value, list):
        return "[" + ", ".join(_scalar(v) for v in value) + "]"
    return f'"{value}"' if isinstance(value, str) else str(value)
