"""What the VS Code extension asks for, and in which words: its code run by Node with a stand-in for the editor."""

from __future__ import annotations

import json
import subprocess

from locate import CONFIGS, program

ASK = CONFIGS / "vscode" / "src" / "ask.js"
_PLAY = """
const Module = require("module");
const seen = [];
const choose = async (items, options) => {
  seen.push({ options, labels: items.map((i) => i.label) });
  return items[0];
};
const line = "feeder MSB        -> P-1     30 A 3p    20 m";
const editor = {
  document: { languageId: "wye", uri: "file:///m/site.wye", lineAt: () => ({ text: line }) },
  selection: { active: { line: 0 } },
};
const load = Module._load;
const told = async (text) => void seen.push({ text });
const window = { activeTextEditor: editor, showQuickPick: choose, showInformationMessage: told };
Module._load = (name, ...more) => name === "vscode" ? { window } : load(name, ...more);
const { executeCommand } = require(process.argv[1]);
const names = ["GRID", "LP-1", "MSB", "P-1"];
const refusal = { cause: "second-supply", found: "2 supplies", needed: "one supply", why: "two supplies meet" };
const solutions = [{ title: "Feed `P-1` from `LP-1`", reason: "a wire is enough", left: [] }];
const server = async (command, args) => command === "wyeline.partners"
  ? names.filter((name) => name !== args[1]).map((name) => ({ name, kind: "panel", fits: true, reason: "" }))
  : (seen.push({ command, args }), { works: false, unknown: [], refusal, solutions });
executeCommand("wyeline.connect", [], server).then(() => console.log(JSON.stringify(seen)));
"""


def test_connect_begins_with_the_two_ends_of_the_feeder_in_the_cursors_line() -> None:
    run = subprocess.run(
        [program("node", "vscode"), "-e", _PLAY, "--", str(ASK)],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert run.returncode == 0, run.stderr
    first, second, asked, changes, _ = json.loads(run.stdout)
    assert first["labels"] == ["MSB", "GRID", "LP-1", "P-1"], "what feeds here stands first"
    assert second["labels"] == ["P-1", "GRID", "LP-1"], "and then what is fed"
    assert asked["args"][1:] == ["MSB", "P-1"]
    assert changes["options"]["title"] == "MSB cannot feed P-1 as it stands: two supplies meet."
