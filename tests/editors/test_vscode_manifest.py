"""The extension's manifest says what the project says: settings, version, suffix. No editor is needed."""

from __future__ import annotations

import importlib
import json
import re
from typing import Any

from locate import CONFIGS, TOP

from wyeline_grammar import __version__
from wyeline_server.server import FEATURES, WyelineServer

CLIENT_ONLY = {"wyeline.server.command", "wyeline.server.arguments", "wyeline.trace.server"}


def manifest() -> dict[str, Any]:
    found = json.loads((CONFIGS / "vscode" / "package.json").read_text(encoding="utf-8"))
    assert isinstance(found, dict)
    return found


def switches() -> dict[str, str]:
    """The server's switches of kinds of hints and lenses, with what each does."""
    found: dict[str, str] = {}
    for feature in FEATURES:
        module = importlib.import_module(f"wyeline_server.{feature}")
        found |= {f"wyeline.{name}": text for name, text in getattr(module, "SETTINGS", {}).items()}
    return found


def test_every_setting_that_the_server_asks_for_can_be_set() -> None:
    properties = manifest()["contributes"]["configuration"]["properties"]
    source = "".join(file.read_text(encoding="utf-8") for file in (TOP / "server" / "wyeline_server").glob("*.py"))
    literal = {f"wyeline.{name}" for name in re.findall(r"\.setting\(\s*\"([\w.]+)\"", source)}
    assert literal and switches(), "the server reads no settings: are they called otherwise now?"
    asked = literal | set(switches())
    assert set(properties) - CLIENT_ONLY == asked, "bring editor-configs/vscode/package.json up to date"


def test_switches_say_what_the_server_says_of_them() -> None:
    properties = manifest()["contributes"]["configuration"]["properties"]
    for name, text in switches().items():
        setting = {key: value for key, value in properties[name].items() if key != "order"}
        assert setting == {"type": "boolean", "default": True, "scope": "window", "description": text}, name


def test_commands_of_the_server_can_be_run_from_the_palette() -> None:
    server = WyelineServer("test")
    for feature in FEATURES:
        importlib.import_module(f"wyeline_server.{feature}").register(server)
    contributes = manifest()["contributes"]
    titled = {command["command"] for command in contributes["commands"]} - {"wyeline.restart", "wyeline.showLog"}
    assert titled == set(server.command_handlers) - {"wyeline.applyEdit", "wyeline.partners"}
    assert {entry["command"] for entry in contributes["menus"]["commandPalette"]} == titled
    page = (CONFIGS / "vscode" / "README.md").read_text("utf-8")
    for command in contributes["commands"]:
        assert f"*Wyeline: {command['title']}*" in page, command


def test_the_version_is_the_package_s() -> None:
    lock = json.loads((CONFIGS / "vscode" / "package-lock.json").read_text(encoding="utf-8"))
    assert {manifest()["version"], lock["version"], lock["packages"][""]["version"]} == {__version__}
    assert lock["packages"][""]["devDependencies"] == manifest()["devDependencies"]


def test_the_settings_that_start_a_program_need_trust() -> None:
    contributes = manifest()["contributes"]
    properties = contributes["configuration"]["properties"]
    guarded = {name for name in properties if name.startswith("wyeline.server.")}
    assert set(manifest()["capabilities"]["untrustedWorkspaces"]["restrictedConfigurations"]) == guarded
    assert all(properties[name]["scope"] == "machine-overridable" for name in guarded)
    assert [language["extensions"] for language in contributes["languages"]] == [[".wye"]]
