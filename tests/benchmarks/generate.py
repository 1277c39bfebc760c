"""Invented models of any size: ``.wye`` files, and the same facts as plain data for ``twins.py``.

A *piece* is a piece of equipment or a circuit; a feeder belongs to what it feeds. The mix follows the shipped examples:
about three circuits to a piece of equipment, circuits of one to three poles and spares, single-phase and three-phase
transformers, motors behind disconnects, types, claims, comments of every sort, and an include for every switchboard.

``python tests/benchmarks/generate.py FOLDER PIECES [--faulty]`` writes one, with its twins.
"""

from __future__ import annotations

import random
from typing import Any

TYPES = """\
// What panels and transformers of this site have in common.
wye 1

/// Dry-type transformer; its impedance is read from each nameplate.
type transformer  DRY                   kfactor 13, rise 115 degC, lug-temp 75 degC
/// Panel behind a transformer, with a main breaker of its own.
type panel  LOCAL                       rated 22 kA, spaces 42, lug-temp 75 degC
"""

THREE_PHASE = [
    (30, 50, "3#8 + G #10 Cu THWN-2", 100, "3#1 + N #1 + G #6 Cu THWN-2"),
    (45, 70, "3#4 + G #8 Cu THWN-2", 150, "3#1/0 + N #1/0 + G #6 Cu THWN-2"),
]
"""Size in kVA, amperes and wires before it, amperes and wires behind it."""
MOTORS = [
    (5, 46, 20, "3#12 + G #12 Cu THWN-2"),
    (10, 81, 35, "3#10 + G #10 Cu THWN-2"),
    (20, 145, 60, "3#8 + G #10 Cu THWN-2"),
]
"""Horsepower, locked-rotor amperes, device, wires."""
SINGLE_POLE = [
    ("900 VA", 900, "lighting continuous"),
    ("1080 VA", 1080, "receptacle"),
    ("720 VA", 720, "receptacle"),
    ("180 VA count 4", 720, "receptacle"),
    ("0.8 kVA", 800, "it continuous"),
]
"""A load as written, in VA, and its class."""


class Site:
    """A generated site: ``files`` maps names to texts (``site.wye`` is the root), ``data`` is the same as data.

    A sound site draws next to no finding, so that times are of work and not of printing. A ``faulty`` one breaks a
    fact in about every eighth line: wires too small, loads too large, lengths left out, voltages that do not fit,
    names and words misspelt.
    """

    def __init__(self, pieces: int, *, faulty: bool = False, seed: int = 7) -> None:
        self.random = random.Random(seed)
        self.faulty = faulty
        self.pieces = 0
        self.wanted = pieces
        self.files: dict[str, str] = {}
        self.data: dict[str, Any] = {"equipment": [], "feeders": []}
        self.root = [
            "// An invented works of many boards, written by a program.",
            "wye 1",
            "",
            'project "Generated works"',
            "  basis us-2023",
            "  frequency 60 Hz, ambient 30 degC",
            '  number "G-1", revision "A", client "Nobody"',
            "",
            "// One medium-voltage service for all boards.",
        ]
        service = self._equipment("utility", "UTIL", "12.47Y/7.2 kV", "fault 9 kA, fault-min 6 kA, x/r 8", fault_ka=9)
        self.root += [*service, ""]
        self.files["types.wye"] = TYPES
        includes = ['include "types.wye"']
        board = 0
        while self.pieces < pieces:
            name = f"board-{board}.wye"
            self.files[name] = "\n".join(self._board(board)) + "\n"
            includes.append(f'include "{name}"')
            board += 1
        self.files["site.wye"] = "\n".join([*self.root, *includes]) + "\n"

    def in_one(self) -> str:
        """The whole site as one file, as large a text as an editor can be given."""
        parts = [text.replace("wye 1\n", "") for name, text in self.files.items() if name != "site.wye"]
        return "\n".join([*self.root, *parts])

    def _slip(self, right: str, *wrong: str) -> str:
        """What is written: the right thing, or in a faulty site now and then a wrong one."""
        return self.random.choice(wrong) if self.faulty and self.random.random() < 0.12 else right

    def _equipment(self, kind: str, name: str, volts: str, words: str, **facts: float) -> list[str]:
        self.pieces += 1
        self.data["equipment"].append({"kind": kind, "name": name, "voltage": volts, **facts, "circuits": []})
        return [f"{kind:<11} {name:<7} {volts:<19} {words}".rstrip()]

    def _feeder(self, source: str, target: str, amps: int, poles: int, wires: str, meters: tuple[int, int]) -> str:
        length = self.random.randint(*meters)
        device = f"{amps} A {poles}p" if amps else ""
        written = self._slip(f"{length} m", "", f"{length * 40} m")
        into = self._slip(target, target + "X")
        self.data["feeders"].append(
            {"from": source, "to": target, "amps": amps, "poles": poles, "wires": wires, "length_m": length}
        )
        return f"feeder {source:<11} -> {into:<7} {device:<10} {wires}  {written}  in PVC-40"

    def _board(self, b: int) -> list[str]:
        main, board = f"TM-{b}", f"MSB-{b}"
        lines = [f"// BOARD {b}: one switchboard and what hangs on it.", "wye 1", ""]
        words = "750 kVA, z 5.75 %, x/r 6, lug-temp 75 degC"
        lines += self._equipment("transformer", main, "12.47 kV 3ph -> 480Y/277", words, kva=750)
        lines.append(self._feeder("UTIL", main, 65, 3, "3#2 + G #6 Cu MV-105", (30, 60)))
        lines.append('  allow wire-not-in-tables "155 A in one duct, by the sheet of its maker"')
        lines += ["", f"/// Switchboard {b}, in a room of its own."]
        words = "bus 1200 A, main 1000 A, rated 65 kA, lug-temp 75 degC"
        lines += self._equipment("switchboard", board, "480Y/277", words, bus_a=1200, main_a=1000)
        lines.append("  gfpe, gfpe-pickup 400 A, delay 0.3 s")
        secondary = "3 sets 3x400kcmil + N 400kcmil + G #2/0 Cu THWN-2"
        lines += [self._feeder(main, board, 0, 3, secondary, (2, 3)), "  claim tap-10ft"]
        for group in range(12):
            if self.pieces >= self.wanted:
                break
            tag = f"{b}-{group}"
            lines += ["", f"// Group {group} of board {b}"]
            if group % 4 == 3:
                lines += self._single_phase_panel(board, tag, ("AB", "BC", "CA")[group // 4 % 3])
            elif group % 4 == 1:
                lines += self._lighting_panel(board, tag)
            else:
                lines += self._three_phase_panel(board, tag)
            lines += self._motor(board, tag)
        return lines

    def _motor(self, board: str, tag: str) -> list[str]:
        horsepower, locked_rotor_a, device_a, wires = self.random.choice(MOTORS)
        motor, switch = f"P-{tag}", f"DS-{tag}"
        words = f'{horsepower} hp, pf 0.86, eff 91 %, lra {locked_rotor_a} A, starter FVNR, "Pump {tag}"'
        return [
            *self._equipment("motor", motor, "460 3ph", words, hp=horsepower),
            *self._equipment("disconnect", switch, "480 3ph", "60 A 3p", rated_a=60),
            self._feeder(board, switch, device_a, 3, wires, (20, 40)),
            self._feeder(switch, motor, 0, 3, wires, (2, 3)),
        ]

    def _three_phase_panel(self, board: str, tag: str) -> list[str]:
        kva, primary, wires, main, secondary = self.random.choice(THREE_PHASE)
        volts = self._slip("208Y/120", "480Y/277", "120/240")
        words = f"like DRY, {kva} kVA, z 4.2 %, x/r 1.8"
        lines = self._equipment("transformer", f"T-{tag}", "480 3ph -> 208Y/120", words, kva=kva)
        lines.append(self._feeder(board, f"T-{tag}", primary, 3, wires, (20, 40)))
        lines.append(f"/// Outlets of zone {tag}.")
        words = f"like LOCAL, bus 225 A, main {main} A"
        lines += self._equipment("panel", f"LP-{tag}", volts, words, bus_a=225, main_a=main)
        self._single_poles(lines, 14)
        wide = "2#12 + G #12 Cu THWN-2"
        self._circuit(lines, (15, 17), 20, 2, ("2 kW", 2000, "heating continuous"), "Unit heater", wide)
        lines.append("  // The washer takes all three legs.")
        self._circuit(lines, (16, 18, 20), 20, 3, ("4.2 kVA", 4200, "process"), "Washer", "3#12 + G #12 Cu THWN-2")
        self._circuit(lines, (19,), 20, 1, ("", 0, "spare"), "", "")
        self._circuit(lines, (22,), 20, 1, ("", 0, "spare"), "", "")
        lines.append(f"/// Secondary of T-{tag}.")
        return [*lines, self._feeder(f"T-{tag}", f"LP-{tag}", 0, 3, secondary, (2, 3)), "  claim tap-10ft"]

    def _lighting_panel(self, board: str, tag: str) -> list[str]:
        words = "bus 125 A, main lugs, rated 65 kA, spaces 30, lug-temp 75 degC"
        lines = self._equipment("panel", f"HP-{tag}", "480Y/277", words, bus_a=125)
        for position in range(1, 13):
            load = ("1.4 kVA", 1400, "lighting continuous")
            self._circuit(lines, (position,), 20, 1, load, "Lights", "2#12 + G #12 Cu THWN-2", most_m=40)
        wires = "3#3 + N #3 + G #8 Cu THWN-2"
        return [*lines, self._feeder(board, f"HP-{tag}", 100, 3, wires, (20, 40))]

    def _single_phase_panel(self, board: str, tag: str, legs: str) -> list[str]:
        words = "like DRY, 15 kVA, z 2.6 %, x/r 1.4"
        lines = self._equipment("transformer", f"T-{tag}", "480 1ph -> 120/240", words, kva=15)
        lines.append(self._feeder(f"{board}[{legs}]", f"T-{tag}", 40, 2, "2#8 + G #10 Cu THWN-2", (20, 40)))
        words = "like LOCAL, bus 100 A, main 70 A, spaces 24"
        lines += self._equipment("panel", f"LP-{tag}", "120/240", words, bus_a=100, main_a=70)
        self._single_poles(lines, 8)
        heater = ("2 kW", 2000, "heating continuous")
        self._circuit(lines, (9, 11), 20, 2, heater, "Convector", "2#12 + G #12 Cu THWN-2")
        self._circuit(lines, (10,), 20, 1, ("", 0, "spare"), "", "")
        secondary = "2#4 + N #4 + G #8 Cu THWN-2"
        return [*lines, self._feeder(f"T-{tag}", f"LP-{tag}", 0, 2, secondary, (2, 3)), "  claim tap-10ft"]

    def _single_poles(self, lines: list[str], count: int) -> None:
        for position in range(1, count + 1):
            load = self.random.choice(SINGLE_POLE)
            self._circuit(lines, (position,), 20, 1, load, "Room", "2#12 + G #12 Cu THWN-2")

    def _circuit(
        self,
        lines: list[str],
        positions: tuple[int, ...],
        amps: int,
        poles: int,
        load: tuple[str, int, str],
        text: str,
        wires: str,
        most_m: int = 24,
    ) -> None:
        written, va, use = load
        at = ",".join(map(str, positions))
        board = self.data["equipment"][-1]
        row: dict[str, Any] = {"at": list(positions), "amps": amps, "poles": poles, "va": va, "load": use}
        line = f"  {at:<9} {amps} A {poles}p   {self._slip(written, f'9{written}' if written else ''):<15} {use:<20}"
        if wires:
            length = self.random.randint(9, most_m)
            text = f"{text} {len(self.data['equipment'])}-{at}"
            run = self._slip(wires, wires.replace("#12", "#14"), wires.replace("Cu", "Kupfer"))
            line += f'"{text}"  {run}  {length} m  in 3/4 inch EMT'
            row |= {"text": text, "length_m": length}
            if self.pieces % 50 == 0:
                line += "  // checked on site"
        self.pieces += 1
        lines.append(line.rstrip())
        board["circuits"].append(row)


if __name__ == "__main__":
    import argparse
    from pathlib import Path

    from twins import write_site

    parser = argparse.ArgumentParser(description="Write an invented model, and the same facts as its twins.")
    parser.add_argument("folder", type=Path, help="where to write it; made where there is none")
    parser.add_argument("pieces", type=int, help="how many pieces of equipment and circuits, at the least")
    parser.add_argument("--faulty", action="store_true", help="with slips and mismatches all over")
    arguments = parser.parse_args()
    if arguments.pieces < 1:
        parser.error("at least one piece is needed")
    arguments.folder.mkdir(parents=True, exist_ok=True)
    print(write_site(arguments.folder, arguments.pieces, faulty=arguments.faulty))
