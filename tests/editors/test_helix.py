"""The story in Helix, in a terminal (tmux), with the configuration that ships."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from locate import CONFIGS, missing, program
from story import NEW_PANEL, PANEL, Story


class Terminal:
    """Helix in a tmux of its own. Nothing is slept for: keys go when the screen shows what they wait for."""

    def __init__(self, story: Story, command: str) -> None:
        tmux = shutil.which("tmux") or missing("tmux", "helix")
        self._tmux = [tmux, "-S", str(story.folder / "tmux"), "-f", "/dev/null"]
        self._environment = story.environment()
        self.story = story
        # Wide, so that no message is cut.
        self._run("new-session", "-d", "-x", "400", "-y", "45", "-c", str(story.workspace), command)

    def _run(self, *arguments: str) -> str:
        run = subprocess.run(
            [*self._tmux, *arguments], env=self._environment, capture_output=True, timeout=60, check=False
        )
        return run.stdout.decode(errors="replace")

    def keys(self, *keys: str) -> None:
        for key in keys:
            named = ("Enter", "Escape", "C-u")
            self._run("send-keys", *(() if key in named else ("-l",)), key)

    def screen(self) -> str:
        return self._run("capture-pane", "-p")

    def colours(self) -> str:
        """The screen with its escape codes."""
        return self._run("capture-pane", "-p", "-e")

    def wait(self, what: str, condition: Callable[[str], object], again: Callable[[], None] | None = None) -> str:
        """The first screen that meets the condition; ``again`` repeats keys that came too early."""
        end = time.monotonic() + 120
        repeat = time.monotonic() + 3
        while True:
            screen = self.screen()
            if condition(screen):
                return screen
            if time.monotonic() > end:
                log = self.story.folder / "cache" / "helix" / "helix.log"
                print(screen, log.read_text(errors="replace")[-4000:] if log.exists() else "(no log)", sep="\n")
                pytest.fail(f"waited in vain for {what}")
            if again and time.monotonic() > repeat:
                again()
                repeat = time.monotonic() + 3
            time.sleep(0.05)

    def close(self) -> None:
        self._run("kill-server")


_ROW = re.compile(r"\b(ERROR|WARN|INFO|HINT)\s+(.*?)\s*│")
"""A row of Helix's list of diagnostics: its severity, code and message."""


def _whole_list(screen: str) -> bool:
    """Whether the list of diagnostics is there with as many rows as it counts."""
    count = re.search(r"(\d+)/(\d+)\s*│", screen)
    return count is not None and len(_ROW.findall(screen)) == int(count[2])


@pytest.mark.editor_helix
def test_the_story_in_helix(story: Story) -> None:
    hx = program("hx", "helix")
    shutil.copytree(CONFIGS / "helix", story.folder / "config" / "helix")
    terminal = Terminal(story, f"{hx} -v {story.site}")
    try:
        report = _play(terminal, story)
    finally:
        terminal.close()
        story.show()
    story.report.write_text(json.dumps(report))
    story.judge()


def _play(terminal: Terminal, story: Story) -> dict[str, object]:
    def closed(screen: str) -> bool:
        return "┌" not in screen and "└" not in screen

    def saved(file: Path) -> bool:
        return file.exists() and NEW_PANEL in file.read_text()  # it is away for a moment while it is written

    def errors() -> list[str]:
        """The rows of the diagnostics list that are errors."""
        terminal.keys(" d")
        screen = terminal.wait("the list of diagnostics", _whole_list)
        terminal.keys("Escape")
        terminal.wait("the list's end", closed)
        return [text for severity, text in _ROW.findall(screen) if severity == "ERROR"]

    supply, panel, feeder = (
        rf"sel\s+{story.row(words)}:" for words in ("switchboard", "panel", f"feeder {story.board}")
    )
    board = story.board.strip('"').split()[0]
    terminal.wait("the finding", lambda screen: "●" in screen)
    before = errors()
    terminal.keys("gg")
    terminal.wait("the first line", lambda screen: "1:1" in screen)
    terminal.keys(f"/{board}", "Enter")
    terminal.wait("the board", lambda screen: re.search(supply, screen))
    terminal.keys(" k")
    # Nothing in the file reads so, and inlay hints are off.
    hover = terminal.wait("the hover", lambda screen: "277 V" in screen)
    terminal.keys("Escape")
    terminal.wait("the hover's end", lambda screen: "277 V to" not in screen)

    terminal.keys("gg")
    terminal.wait("the first line", lambda screen: "1:1" in screen)
    terminal.keys("/WET-1 +100", "Enter")
    terminal.wait("the feeder", lambda screen: re.search(feeder, screen))
    terminal.keys("gh", "f>", "w")
    terminal.keys(" a")
    terminal.wait("the code actions", lambda screen: "ransformer" in screen)
    terminal.keys("Enter")
    terminal.wait("the fix", lambda screen: re.search(r"^\W*\d+\s+transformer", screen, re.MULTILINE))
    terminal.wait("the end of the finding", lambda _: not errors())
    after = errors()

    terminal.keys("gg")
    terminal.wait("the first line", lambda screen: "1:1" in screen)
    terminal.keys(f"/{PANEL}", "Enter")
    terminal.wait("the panel", lambda screen: re.search(panel, screen))
    terminal.keys(" r")
    terminal.wait("the question for the name", lambda screen: "rename-to:" in screen)
    terminal.keys("C-u", NEW_PANEL, "Enter")
    terminal.wait("the rename", lambda screen: re.search(rf"panel\s+{NEW_PANEL}\b", screen))
    terminal.keys(":wa", "Enter")
    end = time.monotonic() + 120
    while not all(map(saved, (story.site, story.included))) and time.monotonic() < end:
        time.sleep(0.05)
    terminal.keys(":qa!", "Enter")
    return {"before": before, "hover": hover, "after": after}


@pytest.mark.editor_helix
def test_helix_builds_the_grammar_and_colours(story: Story) -> None:
    """As its page says: name the grammar's folder, build it, and copy the queries."""
    hx = program("hx", "helix")
    config = story.folder / "config" / "helix"
    shutil.copytree(CONFIGS / "helix", config)
    with (config / "languages.toml").open("a") as languages:
        languages.write(f'[[grammar]]\nname = "wye"\nsource = {{ path = "{config / "tree-sitter-wye"}" }}\n')
    only = 'use-grammars = { only = ["wye"] }\n'
    (config / "languages.toml").write_text(only + (config / "languages.toml").read_text())
    (config / "runtime" / "grammars").mkdir(parents=True)
    build = subprocess.run(
        [hx, "--grammar", "build"],
        env=story.environment(),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert build.returncode == 0, build.stdout + build.stderr
    terminal = Terminal(story, f"{hx} {story.site}")
    try:
        terminal.wait("the file", lambda screen: "switchboard" in screen)
        # A row with escape codes: the kind and the name of the panel are not in one colour.
        coloured = terminal.colours()
        row = next(line for line in coloured.splitlines() if "panel" in line)
        assert re.search(r"\x1b\[[0-9;]*mpanel\x1b\[", row), row
    finally:
        print(build.stdout, build.stderr)
        terminal.close()
