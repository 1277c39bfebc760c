"""The extension's manifest says what the project says: settings, version, suffix. No editor is needed."""

from __future__ import annotations

import json
import re
from typing import Any

from locate import CONFIGS, TOP

CLIENT_ONLY = {"wyeline.server.command", "wyeline.server.arguments", "wyeline.trace.server"}


def manifest() -> dict[str, Any]:
    found = json.loads((CONFIGS / "vscode" / "package.json").read_text(encoding="utf-8"))
    assert isinstance(found, dict)
    return found


def test_every_setting_that_the_server_asks_for_can_be_set() -> None:
    source = "".join(file.read_text(encoding="utf-8") for file in (TOP / "server" / "wyeline_server").glob("*.py"))
    asked = {f"wyeline.{name}" for name in re.findall(r"\.setting\(\s*\"([\w.]+)\"", source)}
    assert asked, "the server reads no setting: has `setting` another name now?"
    offered = set(manifest()["contributes"]["configuration"]["properties"]) - CLIENT_ONLY
    assert asked - offered == set(), "add these settings to editor-configs/vscode/package.json"
    unread = {name for name in offered if f'"{name.removeprefix("wyeline.")}"' not in source}
    assert unread == set(), "the server reads none of these settings"


def test_the_version_is_the_package_s() -> None:
    from wyeline_grammar import __version__

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
