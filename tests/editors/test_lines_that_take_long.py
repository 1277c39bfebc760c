"""No line takes an editor long: each engine colours lines that make patterns go back over what they have read.

The patterns are generated, so one slip in a rule is in every editor; the engines differ in what is slow for them.
Bounds are some twenty times what the lines take. Two slips that these lines found took VS Code 2.5 s, and Vim 0.8 s
for an eighth of the length, then more memory than it has: their time grew with the square of the length.
"""

from __future__ import annotations

import json
import os
import resource
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from locate import CONFIGS, node_modules, program

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="the editors are those of .ci/install-editors")

HERE = Path(__file__).parent
PIECES = [
    *("t", "a", "Z", "é", "9", "_", "#", "m", "\\", "'", "Ω", "\ufeff", "\u0301", "\U0001d400", "\xa0", "+", "<", "="),
    *(
        "-",
        "a-",
        "a.",
        "A-",
        "A.",
        "A.a.",
        "A.a-",
        "_._",
        "a_b-",
        "->",
        "-> ",
        "//",
        ": ",
        "x ",
        "a/",
        "1-",
        "A,",
        "a\t",
    ),
    *('"', '".', '"a".', "[", "[A ", "[A,", "[L1 ", "L1,", "[,", "]", "panel ", "bus", "bus ", "0 k", "kV", "\\t"),
    *("1 ", "1\t", "1,", "1.", "1..", "1/", "1/2 ", "1/2-", "1-1/2", "2x3", "3x", "#1", "#1/0", "12#", "1Y", "480Y/"),
    *(
        "1.5",
        "1.5-",
        "-1",
        "+1",
        "+-",
        "- ",
        "1p",
        "1p+",
        "1 s",
        "1e",
        "480 ",
        "3P 100 A ",
        "20A/1P ",
        "2 in EMT ",
        "(3)#8 ",
    ),
]


def long_lines(length: int) -> list[str]:
    return [before + piece * (length // len(piece)) + "!" for before in ("", "A.", "[") for piece in PIECES]


def judge(lines: list[str], spent_ms: list[float | str], bound_ms: float) -> None:
    assert len(lines) == len(spent_ms)
    wrong = [
        f"{line[:16]!r}...: {spent}" for line, spent in zip(lines, spent_ms, strict=True) if not _below(spent, bound_ms)
    ]
    assert not wrong, "\n".join(wrong)


def _below(spent: float | str, bound_ms: float) -> bool:
    return not isinstance(spent, str) and spent < bound_ms  # a text is what the engine complained of


def timed(command: list[str], lines: list[str], folder: Path, **more: str) -> list[float | str]:
    """Run an editor that writes what each line of a model took, in ms."""
    model, times = folder / "model.wye", folder / "times.json"
    model.write_bytes(("\n".join(lines) + "\n").encode())
    run = subprocess.run(
        [part.replace("MODEL", str(model)) for part in command],
        env=os.environ
        | {"HOME": str(folder), "LC_ALL": "C.UTF-8", "WYE_FILE": str(model), "WYE_TIMES": str(times)}
        | more,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        timeout=300,
        check=False,
    )
    assert times.exists(), (run.stdout + run.stderr).decode(errors="replace")[-3000:]
    found = json.loads(times.read_text())
    assert isinstance(found, list)
    return found


@pytest.mark.editor_vscode
def test_no_line_takes_vscode_long(tmp_path: Path) -> None:
    lines = long_lines(20_000)  # longer ones are not coloured there (editor.maxTokenizationLineLength)
    subprocess.run(
        [program("node", "vscode"), str(HERE / "textmate_groups.js"), str(node_modules("extension"))],
        input=json.dumps(
            {"grammar": str(CONFIGS / "vscode" / "syntaxes" / "wye.tmLanguage.json"), "lines": lines}
        ).encode(),
        env=os.environ | {"WYE_TIMES": str(tmp_path / "times.json")},
        stdout=subprocess.DEVNULL,
        timeout=300,
        check=True,
    )
    judge(lines, json.loads((tmp_path / "times.json").read_text()), 600)


@pytest.mark.editor_vscode
def test_no_line_takes_the_other_patterns_of_vscode_long() -> None:
    """What a word is, and what an entered line begins with: JavaScript's own engine."""
    settings = json.loads((CONFIGS / "vscode" / "language-configuration.json").read_text("utf-8"))
    patterns = [settings["wordPattern"], *({"pattern": r["beforeText"], "flags": ""} for r in settings["onEnterRules"])]
    lines = [*long_lines(20_000), *(f"{' ' * n}///{' ' * n}!" for n in (0, 20_000))]
    code = """
    const { patterns, lines } = JSON.parse(require("fs").readFileSync(0, "utf8"));
    const spent = lines.map((line) => {
      const begun = process.cpuUsage();
      for (const { pattern, flags } of patterns) line.replace(new RegExp(pattern, flags + "g"), "");
      const { user, system } = process.cpuUsage(begun);
      return (user + system) / 1e3;
    });
    process.stdout.write(JSON.stringify(spent));
    """
    run = subprocess.run(
        [program("node", "vscode"), "-e", code],
        input=json.dumps({"patterns": patterns, "lines": lines}).encode(),
        capture_output=True,
        timeout=300,
        check=True,
    )
    judge(lines, json.loads(run.stdout), 600)


def in_vim(command: list[str], folder: str, tmp_path: Path) -> None:
    enter = f"set nocompatible encoding=utf-8 runtimepath^={CONFIGS / folder} | filetype plugin on | syntax on"
    lines = long_lines(2_900)  # what lies beyond 3,000 is not coloured there (synmaxcol)
    judge(
        lines, timed([*command, "--cmd", enter, "MODEL", "-S", str(HERE / "timed_lines.vim")], lines, tmp_path), 2_000
    )


@pytest.mark.editor_vim
def test_no_line_takes_vim_long(tmp_path: Path) -> None:
    in_vim([program("vim.nox", "vim"), "-Nu", "NONE", "-i", "NONE", "-es"], "vim", tmp_path)


@pytest.mark.editor_nvim
def test_no_line_takes_neovim_long(tmp_path: Path) -> None:
    in_vim([program("nvim", "neovim"), "--headless", "-i", "NONE"], "neovim", tmp_path)


@pytest.mark.editor_emacs
def test_no_line_takes_emacs_long(tmp_path: Path) -> None:
    lines = long_lines(16_000)
    command = [program("emacs", "emacs"), "-Q", "--batch", "-L", str(CONFIGS / "emacs"), "-l"]
    judge(lines, timed([*command, str(HERE / "timed_lines.el")], lines, tmp_path), 1_000)


@pytest.mark.editor_nvim
def test_no_line_takes_the_tree_sitter_parser_long(tmp_path: Path) -> None:
    """Helix has no way to be asked, so Neovim loads the parser that is made for Helix."""
    source, parser = CONFIGS / "helix" / "tree-sitter-wye" / "src", tmp_path / "wye.so"
    compiling = [program("gcc", "helix"), "-shared", "-fPIC", "-O1", f"-I{source}", str(source / "parser.c"), "-o"]
    subprocess.run([*compiling, str(parser)], check=True, timeout=120)
    lines = long_lines(16_000)
    command = [program("nvim", "neovim"), "--headless", "-u", "NONE", "-i", "NONE", "MODEL", "-S"]
    judge(lines, timed([*command, str(HERE / "timed_lines.lua")], lines, tmp_path, WYE_PARSER=str(parser)), 1_000)


@pytest.mark.editor_kate
def test_no_line_takes_kate_long(tmp_path: Path) -> None:
    syntax = tmp_path / "org.kde.syntax-highlighting" / "syntax"
    syntax.mkdir(parents=True)
    shutil.copy(CONFIGS / "kate" / "wye.xml", syntax)
    lines, spent = long_lines(16_000), []
    for line in lines:
        (tmp_path / "model.wye").write_bytes(line.encode() + b"\n")
        before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
        subprocess.run(
            [program("kate-syntax-highlighter", "kate"), "-s", "Wye", str(tmp_path / "model.wye")],
            env=os.environ | {"XDG_DATA_HOME": str(tmp_path), "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"},
            capture_output=True,
            timeout=60,
            check=True,
        )
        spent.append(1_000 * (resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before))
    judge(lines, spent, 1_000)
