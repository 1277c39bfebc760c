"""The story every editor plays: a panel of 120/240 fed from a 480Y/277 board, found, understood, mended and renamed.

An editor's driver writes a report (JSON) of what the editor showed; ``judge`` holds it and the saved files against the
story, in the same words for every editor.
"""

from __future__ import annotations

import json
import os
import re
import signal
import subprocess
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from locate import server_folder

PANEL, NEW_PANEL = "WET-1", "POOL-1"
_SITE = """\
wye 1
include "pump-house.wye"

project "Swimming bath"
  basis us-2023, frequency 60 Hz, revision "A"

/// The supply of an invented swimming bath.
utility     QUAY    480Y/277            fault 28 kA, fault-min 20 kA, x/r 7.5
switchboard BOARD                       bus 800 A, main 800 A, gfpe
panel       WET-1   120/240             bus 225 A, main 100 A
feeder QUAY -> BOARD                    2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu THWN-2  9 m  in 4 inch EMT
feeder BOARD[AB] -> WET-1               100 A 2p
"""
_INCLUDED = """\
load        EV-1    240 1ph             6 kW
feeder WET-1 -> EV-1                    40 A 2p
"""


@dataclass
class Story:
    """One play: ``folder`` is the editor's home, ``workspace`` holds the model, ``board`` is the supply's name."""

    folder: Path
    board: str
    workspace: Path = field(init=False)
    site: Path = field(init=False)
    included: Path = field(init=False)

    def __post_init__(self) -> None:
        self.workspace = self.folder / "bath"
        self.workspace.mkdir()
        self.site = self.workspace / "site.wye"
        self.included = self.workspace / "pump-house.wye"
        self.site.write_text(_SITE.replace("BOARD", self.board), encoding="utf-8")
        self.included.write_text(_INCLUDED, encoding="utf-8")

    @property
    def report(self) -> Path:
        return self.folder / "report.json"

    def row(self, beginning: str) -> int:
        """The line of the site that begins so, counted from 1."""
        lines = self.site.read_text(encoding="utf-8").splitlines()
        return 1 + next(i for i, line in enumerate(lines) if line.startswith(beginning))

    def environment(self) -> dict[str, str]:
        """The editor's environment: nothing of this machine's own settings, and the server on the PATH."""
        home = {
            name: str(self.folder / part)
            for name, part in (
                ("HOME", "home"),
                ("XDG_CONFIG_HOME", "config"),
                ("XDG_DATA_HOME", "data"),
                ("XDG_STATE_HOME", "state"),
                ("XDG_CACHE_HOME", "cache"),
                ("XDG_RUNTIME_DIR", "run"),
            )
        }
        for part in home.values():
            Path(part).mkdir(exist_ok=True, mode=0o700)
        return (
            {
                name: value
                for name, value in os.environ.items()
                if not name.startswith(("XDG_", "NVIM", "VIM", "EMACS", "VIRTUAL_ENV"))
            }
            | home
            | {
                "PATH": f"{server_folder()}{os.pathsep}{os.environ['PATH']}",
                "LC_ALL": "C.UTF-8",
                "TERM": "xterm-256color",
                "STORY_FILE": str(self.site),
                "STORY_REPORT": str(self.report),
                "STORY_BOARD": self.board,
                "STORY_PANEL": PANEL,
                "STORY_NEW_PANEL": NEW_PANEL,
            }
        )

    def play(self, command: list[str], timeout_s: float, keys: str = "", **environment: str) -> None:
        """Run a driver to its end, print what it said, and judge its report. ``keys`` is its standard input."""
        run = subprocess.Popen(
            command,
            cwd=self.workspace,
            env=self.environment() | environment,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            errors="replace",
            start_new_session=True,
        )
        try:
            output, _ = run.communicate(keys, timeout=timeout_s)
        except subprocess.TimeoutExpired:
            os.killpg(run.pid, signal.SIGKILL)
            output, _ = run.communicate()
            output += f"\n(ended after {timeout_s} s)"
        print(output[-6000:])
        self.show()
        assert run.returncode == 0, f"the driver ended with {run.returncode}"
        self.judge()

    def show(self) -> None:
        """Print what a reader of a failed test needs."""
        for file in (self.report, self.site, self.included):
            print(f"--- {file.name}\n{file.read_text(encoding='utf-8') if file.exists() else '(none)'}")

    def judge(self) -> None:
        """Hold the report and the saved files against the story."""
        report = json.loads(self.report.read_text(encoding="utf-8"))
        self.judge_findings(report)
        self.judge_hover(report["hover"])
        if "solved" in report:
            self.judge_solved(report["solved"])
        self.judge_fixed_file(self.site.read_text(encoding="utf-8"), NEW_PANEL)
        self.judge_rename()

    def judge_findings(self, report: dict[str, Any]) -> None:
        """``before`` and ``after`` are lists of messages of severity error; ``marked`` the text under the first one.

        An editor shows both sides in volts, or, where its list has one line for a finding, as they are written."""
        sides = (("480 V", "240 V"), ("480Y/277", "120/240"))
        told = [message for message in report["before"] for pair in sides if all(side in message for side in pair)]
        assert told, report["before"]
        feeder = f"feeder {self.board}[AB] -> {PANEL}               100 A 2p"
        if "marked" in report:
            assert report["marked"] and report["marked"] in feeder, f"the finding is on {report['marked']!r}"
        assert report["after"] == [], report["after"]

    def judge_hover(self, text: str) -> None:
        """The board's voltages are written nowhere near it: they come along the feeder."""
        assert re.search(r"\b480\s*V\b", text) and re.search(r"\b277\s*V\b", text), text

    def judge_solved(self, shown: list[str]) -> None:
        """What is solved when typing rests is shown, by hand: 277.1 V / 28 kA = 9.90 mΩ at the source (X/R 7.5: 1.31 +
        9.81j mΩ), and two sets of 500 kcmil over 9 m, 29.5 ft, at 0.027 + 0.048j ohm a thousand feet each (NEC chapter
        9, table 9, steel at 75 degC, from memory): 0.40 + 0.71j mΩ. 277.1 V / 10.66 mΩ = 26.0 kA. Cold copper, with
        which the largest faults are taken, makes it a little more."""
        for text in shown:
            found = re.search(r"\b(2[67](?:\.\d)?) kA\b", text)
            assert found and "fault" in text.lower() and 25.9 <= float(found[1]) <= 26.2, shown
        assert shown

    def judge_fixed_file(self, text: str, panel: str) -> None:
        """A transformer stands between the board and the panel, and nothing else was harmed."""
        assert re.search(r"^transformer\s+(\S+)\s+480 1ph\s*->\s*120/240", text, re.MULTILINE), text
        made = re.search(r"^transformer\s+(\S+)", text, re.MULTILINE)
        assert made is not None
        name = re.escape(made[1])
        assert re.search(rf"^feeder\s+{re.escape(self.board)}\[AB\]\s*->\s*{name}\b", text, re.MULTILINE), text
        assert re.search(rf"^feeder\s+{name}\s*->\s*{re.escape(panel)}\b", text, re.MULTILINE), text
        untouched = _SITE.replace("BOARD", self.board).replace(PANEL, panel).splitlines()
        assert [line for line in untouched[:-1] if " ".join(line.split()) not in _squeezed(text)] == []

    def judge_rename(self) -> None:
        """The panel has its new name in both files."""
        for file, count in ((self.site, 2), (self.included, 1)):
            text = file.read_text(encoding="utf-8")
            # A transformer may be called after the panel (`TX-WET-1`): only the whole name counts.
            assert not re.search(rf"(?<![\w.-]){PANEL}(?![\w-])", text), f"{file.name} still says {PANEL}"
            assert text.count(NEW_PANEL) >= count, text


def _squeezed(text: str) -> set[str]:
    return {" ".join(line.split()) for line in text.splitlines()}
