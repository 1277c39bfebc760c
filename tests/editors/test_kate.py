"""The story in Kate, in a virtual display, with the configuration that ships. Kate is driven by keys and watched
through the messages on the wire, the saved files and pictures.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from locate import CONFIGS, missing, program, server_folder
from story import NEW_PANEL, Story

# Stands between Kate and the server and writes down what each says.
_TAP = """\
import os, subprocess, sys, threading
server = subprocess.Popen([{server!r}], stdin=subprocess.PIPE, stdout=subprocess.PIPE)
def copy(source, target, log):
    with open(log, "ab", buffering=0) as kept:
        while data := os.read(source, 65536):
            kept.write(data)
            while data:
                data = data[os.write(target, data):]
    os.close(target)
threading.Thread(target=copy, args=(0, server.stdin.fileno(), {asked!r}), daemon=True).start()
copy(server.stdout.fileno(), 1, {answered!r})
"""


def _messages(file: Path) -> list[dict[str, Any]]:
    """The whole messages of one direction so far."""
    data = file.read_bytes() if file.exists() else b""
    found = []
    while head := re.match(rb"(?:[^\r\n]+\r\n)*?Content-Length: (\d+)\r\n(?:[^\r\n]+\r\n)*\r\n", data):
        end = head.end() + int(head[1])
        if end > len(data):
            break
        found.append(json.loads(data[head.end() : end]))
        data = data[end:]
    return found


class Desk:
    """A display of its own with a window manager and Kate on it."""

    def __init__(self, story: Story) -> None:
        for name in ("Xvfb", "xdotool", "openbox", "dbus-run-session", "import"):
            if not shutil.which(name):
                missing(name, "kate")
        kate = program("kate", "kate")
        self.story = story
        self.asked, self.answered = story.folder / "asked", story.folder / "answered"
        tap = story.folder / "bin" / "wyeline-server"
        tap.parent.mkdir()
        tap.write_text(
            f"#!{sys.executable}\n"
            + _TAP.format(
                server=str(server_folder() / "wyeline-server"), asked=str(self.asked), answered=str(self.answered)
            )
        )
        tap.chmod(0o755)
        self.environment = story.environment() | {"QT_QPA_PLATFORM": "xcb"}
        self.environment["PATH"] = f"{tap.parent}{os.pathsep}{self.environment['PATH']}"
        config, data = story.folder / "config", story.folder / "data"
        (config / "kate" / "lspclient").mkdir(parents=True)
        shutil.copy(CONFIGS / "kate" / "settings.json", config / "kate" / "lspclient")
        syntax = data / "org.kde.syntax-highlighting" / "syntax"
        syntax.mkdir(parents=True)
        shutil.copy(CONFIGS / "kate" / "wye.xml", syntax)
        (config / "katerc").write_text(
            "[Kate Plugins]\nlspclientplugin=true\n\n"
            f"[lspclient]\nAllowedServerCommandLines={tap},wyeline-server\nMessages=true\n"
        )
        self.processes: list[subprocess.Popen[bytes]] = []
        read, write = os.pipe()
        self._start(["Xvfb", "-displayfd", str(write), "-screen", "0", "1300x800x24", "-nolisten", "tcp"], (write,))
        os.close(write)
        with os.fdopen(read) as display:
            self.environment["DISPLAY"] = f":{display.readline().strip()}"
        self._start(["openbox"])
        place = ["-l", str(story.row(f"feeder {story.board}")), "-c", "28"]
        self._start(["dbus-run-session", "--", kate, "-n", *place, str(story.site)])

    def _start(self, command: list[str], keep: tuple[int, ...] = ()) -> None:
        log = (self.story.folder / f"{Path(command[0]).name}.log").open("wb")
        self.processes.append(
            subprocess.Popen(
                command,
                cwd=self.story.workspace,
                env=self.environment,
                stdin=subprocess.DEVNULL,
                stdout=log,
                stderr=log,
                pass_fds=keep,
                start_new_session=True,
            )
        )

    def key(self, *keys: str) -> None:
        for key in keys:
            subprocess.run(["xdotool", "key", key], env=self.environment, timeout=60, check=True)

    def type(self, text: str) -> None:
        subprocess.run(["xdotool", "type", text], env=self.environment, timeout=60, check=True)

    def wait(self, what: str, condition: Callable[[], Any], again: Callable[[], None] | None = None) -> Any:
        """What the condition answers when it holds. ``again`` are keys for when it does not within a second."""
        end, repeat = time.monotonic() + 120, time.monotonic() + 1
        while not (found := condition()):
            if time.monotonic() > end:
                self.picture("failed")
                for log in sorted(self.story.folder.glob("*.log")):
                    print(f"--- {log.name}\n{log.read_text(errors='replace')[-1500:]}")
                print(*(f"-> {m.get('method')}" for m in _messages(self.asked)), sep="\n")
                print(*(f"<- {json.dumps(m)[:400]}" for m in _messages(self.answered)), sep="\n")
                pytest.fail(f"waited in vain for {what}")
            if again and time.monotonic() > repeat:
                again()
                again = None
            time.sleep(0.1)
        return found

    def window(self, name: str) -> bool:
        found = subprocess.run(
            ["xdotool", "search", "--onlyvisible", "--name", name, "windowactivate", "--sync"],
            env=self.environment,
            capture_output=True,
            timeout=60,
            check=False,
        )
        return found.returncode == 0

    def answer_to(self, method: str) -> Any:
        """The last answer to a request."""
        asked = [message["id"] for message in _messages(self.asked) if message.get("method") == method]
        answers = {m["id"]: m.get("result") for m in _messages(self.answered) if "id" in m and "method" not in m}
        return next((answers[number] for number in reversed(asked) if answers.get(number)), None)

    def errors(self) -> list[str] | None:
        """The last findings of severity error that were pushed for the site, or None when there was no push."""
        pushed = [
            message["params"]["diagnostics"]
            for message in _messages(self.answered)
            if message.get("method") == "textDocument/publishDiagnostics"
            and message["params"]["uri"].endswith("site.wye")
        ]
        return [d["message"] for d in pushed[-1] if d.get("severity") == 1] if pushed else None

    def picture(self, name: str) -> None:
        pictures = Path(os.environ.get("WYELINE_PICTURES", self.story.folder))
        pictures.mkdir(parents=True, exist_ok=True)
        command = ["import", "-window", "root", str(pictures / f"kate-{name}.png")]
        subprocess.run(command, env=self.environment, timeout=60, check=False)

    def close(self) -> None:
        for process in reversed(self.processes):
            try:
                os.killpg(process.pid, signal.SIGTERM)
                process.wait(5)
            except (ProcessLookupError, subprocess.TimeoutExpired):
                process.kill()
                process.wait(60)


@pytest.mark.editor_kate
def test_the_story_in_kate(plain_story: Story) -> None:
    story = plain_story
    desk = Desk(story)
    try:
        desk.wait("Kate's window", lambda: desk.window("site.wye"))
        desk.wait("the finding", desk.errors)
        report: dict[str, Any] = {"before": desk.errors()}

        # The client's menu, Code Action, the first of them. (Quick Fix would apply all of them at once.)
        desk.key("alt+l", "c")
        desk.wait("the code actions", lambda: desk.answer_to("textDocument/codeAction"))
        desk.picture("fix")
        desk.wait("the end of the finding", lambda: desk.errors() == [], lambda: desk.key("Down", "Return"))
        report["after"] = desk.errors()
        desk.key("ctrl+s")
        desk.wait("the saved file", lambda: "\ntransformer" in story.site.read_text())

        # The board's line, its name; Alt+L opens the client's menu, Y is Symbol Info.
        desk.key("ctrl+g")
        desk.type(str(story.row("switchboard")))
        desk.key("Return", "Home", "ctrl+Right", "Right")
        desk.key("alt+l", "y")
        hover = desk.wait("the hover", lambda: desk.answer_to("textDocument/hover"))
        contents = hover["contents"]
        report["hover"] = contents["value"] if isinstance(contents, dict) else str(contents)
        desk.picture("hover")

        desk.key("ctrl+g")
        desk.type(str(story.row("panel")))
        desk.key("Return", "Home", "ctrl+Right", "Right", "F2")
        desk.wait("the question for the name", lambda: desk.window("Rename"))
        desk.key("ctrl+a")
        desk.type(NEW_PANEL)
        desk.key("Return")
        desk.wait("the rename", lambda: desk.answer_to("textDocument/rename"))
        desk.picture("renamed")
        desk.key("ctrl+l")  # Save All
        desk.wait(
            "the saved files", lambda: all(NEW_PANEL in file.read_text() for file in (story.site, story.included))
        )
    finally:
        desk.close()
        story.show()
    story.report.write_text(json.dumps(report))
    story.judge()
