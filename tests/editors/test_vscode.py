"""The story in VS Code: through its API in the extension host, and on its screen in Chromium."""

from __future__ import annotations

import json
import os
import shutil
import signal
import socket
import subprocess
import time
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from locate import CONFIGS, EDITORS, missing, node_modules, program, server_folder
from story import Story

HERE = Path(__file__).parent
SETTINGS = {
    "chat.disableAIFeatures": True,
    "workbench.startupEditor": "none",
    "extensions.autoUpdate": False,
    "telemetry.telemetryLevel": "off",
    "workbench.secondarySideBar.defaultVisibility": "hidden",
    "window.commandCenter": False,
}


@pytest.fixture(scope="session")
def extension(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The extension as it ships: bundled and packaged in a copy of its folder. Holds ``wyeline.vsix``."""
    tools = node_modules("extension")
    folder = tmp_path_factory.mktemp("extension") / "vscode"
    shutil.copytree(CONFIGS / "vscode", folder, ignore=shutil.ignore_patterns("node_modules", "dist", "*.vsix"))
    (folder / "node_modules").symlink_to(tools)
    node = Path(program("node", "vscode")).resolve().parent
    for command in (["bundle"], ["package"]):
        run = subprocess.run(
            ["npm", "run", "-s", *command],
            cwd=folder,
            env=os.environ | {"PATH": f"{node}{os.pathsep}{os.environ['PATH']}"},
            stdin=subprocess.DEVNULL,
            capture_output=True,
            text=True,
            timeout=120,
            check=False,
        )
        assert run.returncode == 0, run.stdout + run.stderr
    (folder / "node_modules").unlink()
    return folder


def _free_port() -> int:
    with socket.socket() as listener:
        listener.bind(("127.0.0.1", 0))
        return int(listener.getsockname()[1])


@contextmanager
def _editor(story: Story, environment: dict[str, str], command: list[str], port: int) -> Iterator[None]:
    """VS Code's server on this machine, until it is no longer needed."""
    log = story.folder / "editor.log"
    with log.open("wb") as output:
        editor = subprocess.Popen(
            command, env=environment, stdin=subprocess.DEVNULL, stdout=output, stderr=output, start_new_session=True
        )
        try:
            end = time.monotonic() + 120
            while True:
                try:
                    with urllib.request.urlopen(f"http://127.0.0.1:{port}/", timeout=5):
                        break
                except OSError:
                    assert editor.poll() is None and time.monotonic() < end, log.read_text(errors="replace")[-3000:]
                    time.sleep(0.1)
            yield
        finally:
            os.killpg(editor.pid, signal.SIGTERM)
            try:
                editor.wait(10)
            except subprocess.TimeoutExpired:
                os.killpg(editor.pid, signal.SIGKILL)
                editor.wait(10)
            print(log.read_text(errors="replace")[-2000:])
            for host in sorted(story.folder.rglob("remoteexthost.log")):
                print(host.read_text(errors="replace")[-2000:])


def _prepared(story: Story, port: int, **more: str) -> dict[str, str]:
    """Settings of the machine (a browser's user settings may come after the extension has started), and environment."""
    machine = story.folder / "vscode" / "Machine"
    machine.mkdir(parents=True)
    (machine / "settings.json").write_text(json.dumps(SETTINGS))
    server = server_folder()
    # The server is found in the workspace's virtual environment; the PATH has none.
    searched = [part for part in os.environ["PATH"].split(os.pathsep) if not (Path(part) / "wyeline-server").exists()]
    return story.environment() | {
        "PATH": os.pathsep.join(searched),
        "STORY_PORT": str(port),
        "STORY_WORKSPACE": str(story.workspace),
        "STORY_MODULES": str(node_modules("vscode")),
        "STORY_CHROMIUM": program("chromium", "vscode"),
        "STORY_SERVER": str(server / "wyeline-server"),
        **more,
    }


@pytest.mark.editor_vscode
def test_the_story_through_the_api_of_vscode(story: Story, extension: Path) -> None:
    main = node_modules("vscode") / "code-server" / "lib" / "vscode" / "out" / "server-main.js"
    if not main.exists():
        missing(str(main), "vscode")
    port = _free_port()
    environment = _prepared(story, port, STORY_EXTENSION=str(extension))
    scripts = story.workspace / ".venv" / "bin"
    scripts.mkdir(parents=True)
    (scripts / "wyeline-server").symlink_to(environment["STORY_SERVER"])
    data = str(story.folder / "vscode")
    command = [program("node", "vscode"), str(main), "--host", "127.0.0.1", "--port", str(port)]
    command += ["--without-connection-token", "--accept-server-license-terms", "--telemetry-level", "off"]
    command += [
        "--enable-smoke-test-driver",
        "--disable-workspace-trust",
        "--user-data-dir",
        data,
        "--server-data-dir",
        data,
    ]
    command += ["--extensions-dir", str(story.folder / "extensions")]
    with _editor(story, environment, command, port):
        story.play([program("node", "vscode"), str(HERE / "vscode_api.js")], timeout_s=180, **environment)


@pytest.mark.editor_vscode
def test_the_story_on_the_screen_of_vscode(story: Story, extension: Path) -> None:
    entry = node_modules("vscode") / "code-server" / "out" / "node" / "entry.js"
    if not entry.exists():
        missing(str(entry), "vscode")
    pictures = Path(os.environ.get("WYELINE_PICTURES", story.folder / "pictures"))
    pictures.mkdir(parents=True, exist_ok=True)
    port = _free_port()
    environment = _prepared(story, port, STORY_PICTURES=str(pictures))
    node = program("node", "vscode")
    places = ["--user-data-dir", str(story.folder / "vscode"), "--extensions-dir", str(story.folder / "extensions")]
    install = subprocess.run(
        [node, str(entry), "--install-extension", str(extension / "wyeline.vsix"), *places],
        env=environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert install.returncode == 0, install.stdout + install.stderr
    command = [node, str(entry), "--auth", "none", "--bind-addr", f"127.0.0.1:{port}", "--disable-telemetry"]
    command += ["--disable-update-check", "--disable-workspace-trust", "--disable-getting-started-override", *places]
    with _editor(story, environment, command, port):
        story.play([node, str(HERE / "vscode_screen.js")], timeout_s=240, **environment)
    report = json.loads(story.report.read_text())
    assert "pip install /path/to/wyeline" in report["missing"]
    assert EDITORS.exists() and len(list(pictures.glob("*.png"))) >= 4
