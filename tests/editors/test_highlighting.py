"""Every editor's highlighting says of every word what the language says, and the committed files are current.

Each editor's own engine colours all shipped examples and the hard lines below; at the first and the last character of
every token its group must be that of the tokenizer.
"""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
from collections.abc import Callable
from html.parser import HTMLParser
from pathlib import Path

import pytest
from locate import CONFIGS, TOP, node_modules, program

from wyeline_grammar import vocabulary
from wyeline_grammar.highlighting import GROUP_OF_KIND, GROUPS, WORDS, main, outputs
from wyeline_grammar.pygments_lexer import TOKEN_OF_GROUP, WyeLexer
from wyeline_grammar.tokens import cut
from wyeline_grammar.units import TRADE_SIZE_UNITS, UNIT_SPELLINGS

HARD_LINES = """\
feeder GRID->T1 63 A 3p fuse HH
feeder Küche->L1 5G16mm2 Cu 4x185 mm² + PE 95 mm² 35 m //behind
panel "2A" 120/240 rated 10 kA // "no text" 20 A
feeder "2A".through -> ÉCOLE-2[L1 N] 400A 3p+N tap -2.5 % at 2,4,6
feeder MSB[AB]->TX-W 1600 A 3 sets 3x400kcmil + N 400kcmil + G #2/0 Cu in 2-1/2 inch EMT
motor P-1 460 3ph 7-1/2 hp 208-230 1ph 12.47Y/7.2 kV 10 kV 3ph 4.16/2.4 kV 48dc 480 V 3ph
system IT-1 230 3ph range 0.95..1.05 0.3..0.9 s 12 Ω/km 35 °C 2≤3 4→5 x/r 7.5
bus-bar tap-25ft x/r-2 fault-min.x 20A/1P .86 3-#8 LP-1 A C 2x4 12abc #8 8 #4/0
expect all panel drop<=3 % in "On generator" /// "late"
unclosed "text and bus // not a text
///bus 20 A
  issue A 2026-03-02 "x" 2026-3-2 2026-03-021 12026-03-02 2026-03-02,drawn 2026-03-02a 2026-03
  F1[L1] 16 A 1p+N count 6 leg A 1.2 kVA, leg B 900 VA ×2 ATS-1.normal ATS-1.emergency
PUMP°C 3×95 mm² 5K.m/W 1.5 K.m/W 12 mohm/m 3 K·m/W
panel\tT-1\t480Y/277\tbus\t400 A,\tmain 20\tA\t// tabs part words
atmain maint offt tit t20 20t 480t tT-1 T-1t +5 -5 →5 5→5 é5 5é A-é.through É.a-b""".splitlines()
# Above, runs that touch no edge (`20A/1P`) and words of no list (`bus-bar`, `atmain`) must stay without colour.


def example_lines() -> list[str]:
    files = sorted((TOP / "grammar" / "examples").rglob("*.wye"))
    lines = [line for file in files for line in file.read_text(encoding="utf-8").splitlines()]
    assert len(lines) > 300
    every_word = [" ".join(sorted(words)) for words in WORDS.values()]
    every_unit = [" ".join(f"1 {unit}" for unit in [*UNIT_SPELLINGS, *TRADE_SIZE_UNITS])]
    return lines + HARD_LINES + every_word + every_unit


class Expected:
    """The lines, and of each place that is looked at (line and column from 0) the group it must have."""

    def __init__(self) -> None:
        self.lines = example_lines()
        self.places: list[tuple[int, int]] = []
        self.groups: list[str] = []
        for number, line in enumerate(self.lines):
            _, tokens, comment = cut(line)
            spans = [(t.start, t.end, GROUP_OF_KIND.get(t.kind, "")) for t in tokens]
            if comment is not None:
                spans.append((len(line) - len(comment), len(line), "doc" if comment.startswith("///") else "comment"))
            for start, end, group in spans:
                for column in {start, end - 1}:
                    self.places.append((number, column))
                    self.groups.append(group)

    def compare(self, found: list[str], name: Callable[[str], str]) -> None:
        assert len(found) == len(self.places)
        wrong = [
            f"{self.lines[line]!r}: {self.lines[line][column:]!r} is {got!r}, expected {name(group)!r}"
            for (line, column), got, group in zip(self.places, found, self.groups, strict=True)
            if got != name(group)
        ]
        assert not wrong, f"{len(wrong)} of {len(found)} places differ:\n" + "\n".join(wrong[:25])


@pytest.fixture(scope="module")
def expected() -> Expected:
    return Expected()


def test_the_committed_files_are_what_the_generator_prints(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["--check"]) == 0, capsys.readouterr().out


def test_the_table_covers_every_word_and_group() -> None:
    coloured = frozenset[str]().union(*WORDS.values())
    assert coloured == (
        vocabulary.STATEMENTS
        | vocabulary.KINDS
        | vocabulary.KEYS
        | vocabulary.FLAGS
        | vocabulary.ACTIONS
        | vocabulary.SMALL_WORDS
    )
    assert set(GROUP_OF_KIND.values()) | {"comment", "doc"} == set(GROUPS)
    assert all(render().endswith("\n") for render in outputs().values())


def test_pygments_colours_as_the_language_reads(expected: Expected) -> None:
    text = "\n".join(expected.lines)
    kinds: list[str] = []
    for _, kind, piece in WyeLexer().get_tokens_unprocessed(text):
        kinds += [str(kind)] * len(piece)
    assert len(kinds) == len(text)
    offsets = [0]
    for line in expected.lines:
        offsets.append(offsets[-1] + len(line) + 1)
    names = {group: str(token) for group, token in TOKEN_OF_GROUP.items()}
    names |= {"": "Token.Text", "comment": "Token.Comment.Single", "doc": "Token.Literal.String.Doc"}
    expected.compare([kinds[offsets[line] + column] for line, column in expected.places], lambda group: names[group])


@pytest.mark.editor_vscode
def test_vscode_colours_as_the_language_reads(expected: Expected) -> None:
    grammar = str(CONFIGS / "vscode" / "syntaxes" / "wye.tmLanguage.json")
    run = subprocess.run(
        [program("node", "vscode"), str(Path(__file__).parent / "textmate_groups.js"), str(node_modules("extension"))],
        input=json.dumps({"grammar": grammar, "lines": expected.lines}).encode(),
        capture_output=True,
        timeout=60,
        check=False,
    )
    assert run.returncode == 0, run.stderr.decode()
    scopes: list[list[str]] = []
    for pieces, line in zip(json.loads(run.stdout), expected.lines, strict=True):
        assert len(line) == len(line.encode("utf-16-le")) // 2, "the columns below hold within the basic plane"
        row = [""] * (len(line) + 1)
        for start, end, scope in pieces:
            row[start:end] = [scope] * (min(end, len(row)) - start)
        scopes.append(row)
    expected.compare(
        [scopes[line][column] for line, column in expected.places],
        lambda group: f"{GROUPS[group].textmate}.wye" if group else "source.wye",
    )


def vim_groups(command: list[str], expected: Expected, folder: Path) -> list[str]:
    places = [[line + 1, len(expected.lines[line][:column].encode()) + 1] for line, column in expected.places]
    return colours_of([*command, "-S", str(Path(__file__).parent / "highlighted_places.vim")], expected, folder, places)


def colours_of(command: list[str], expected: Expected, folder: Path, places: list[list[int]]) -> list[str]:
    """Run an editor that reads the places and writes what it found at each."""
    model = folder / "model.wye"
    model.write_text("\n".join(expected.lines) + "\n", encoding="utf-8")
    (folder / "places.json").write_text(json.dumps(places))
    run = subprocess.run(
        [part.replace("MODEL", str(model)) for part in command],
        env=os.environ
        | {"HOME": str(folder), "XDG_CONFIG_HOME": str(folder / "config"), "LC_ALL": "C.UTF-8"}
        | {
            "WYE_FILE": str(model),
            "WYE_PLACES": str(folder / "places.json"),
            "WYE_GROUPS": str(folder / "groups.json"),
        },
        stdin=subprocess.DEVNULL,
        capture_output=True,
        timeout=60,
        check=False,
    )
    assert (folder / "groups.json").exists(), (run.stdout + run.stderr).decode(errors="replace")[-3000:]
    found = json.loads((folder / "groups.json").read_text())
    assert isinstance(found, list)
    return found


def vim_name(group: str) -> str:
    return "wye" + group.capitalize() if group else ""


@pytest.mark.editor_nvim
def test_neovim_colours_as_the_language_reads(expected: Expected, tmp_path: Path) -> None:
    nvim = program("nvim", "neovim")
    enter = f"set runtimepath^={CONFIGS / 'neovim'} | filetype plugin on | syntax on"
    found = vim_groups([nvim, "--headless", "-i", "NONE", "--cmd", enter, "MODEL"], expected, tmp_path)
    expected.compare(found, vim_name)


@pytest.mark.editor_nvim
def test_the_tree_sitter_parser_reads_as_the_language_reads(expected: Expected, tmp_path: Path) -> None:
    """Helix has no way to be asked, so Neovim loads the parser that is made for Helix."""
    parser = tmp_path / "wye.so"
    source = CONFIGS / "helix" / "tree-sitter-wye" / "src"
    compiler = program("gcc", "helix")
    subprocess.run(
        [compiler, "-shared", "-fPIC", "-O0", f"-I{source}", str(source / "parser.c"), "-o", str(parser)],
        check=True,
        timeout=60,
    )
    places = [[line + 1, len(expected.lines[line][:column].encode()) + 1] for line, column in expected.places]
    driver = str(Path(__file__).parent / "parsed_places.lua")
    command = ["env", f"WYE_PARSER={parser}", program("nvim", "neovim"), "--headless", "-u", "NONE", "-i", "NONE"]
    found = colours_of([*command, "MODEL", "-S", driver], expected, tmp_path, places)
    expected.compare(["" if node in ("other", "model") else node for node in found], lambda group: group)


@pytest.mark.editor_vim
def test_vim_colours_as_the_language_reads(expected: Expected, tmp_path: Path) -> None:
    vim = program("vim.nox", "vim")
    enter = f"set nocompatible encoding=utf-8 runtimepath^={CONFIGS / 'vim'} | filetype plugin on | syntax on"
    found = vim_groups([vim, "-Nu", "NONE", "-i", "NONE", "--cmd", enter, "-es", "MODEL"], expected, tmp_path)
    expected.compare(found, vim_name)


@pytest.mark.editor_emacs
def test_emacs_colours_as_the_language_reads(expected: Expected, tmp_path: Path) -> None:
    emacs = program("emacs", "emacs")
    command = [emacs, "-Q", "--batch", "-L", str(CONFIGS / "emacs"), "-l"]
    command.append(str(Path(__file__).parent / "highlighted_places.el"))
    found = colours_of(command, expected, tmp_path, [[line + 1, column] for line, column in expected.places])
    found = ["font-lock-comment-face" if face == "font-lock-comment-delimiter-face" else face for face in found]
    expected.compare(found, lambda group: GROUPS[group].emacs if group else "")


KATE_STYLES = """Normal Keyword Function Variable ControlFlow Operator BuiltIn Extension Preprocessor Attribute Char
SpecialChar String VerbatimString SpecialString Import DataType DecVal BaseN Float Constant Comment Documentation
Annotation CommentVar RegionMarker Information Warning Alert Error Others""".split()


class _Colours(HTMLParser):
    """The colour of every character of Kate's HTML, line by line."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.text = ""
        self.colours: list[str] = []
        self.open: list[str] = []
        self.inside = False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag == "pre":
            self.inside = True
        elif tag == "span":
            found = re.search(r"color:(#[0-9a-f]{6})", dict(attrs).get("style") or "")
            self.open.append(found[1] if found else (self.open or [""])[-1])

    def handle_endtag(self, tag: str) -> None:
        if tag == "span":
            self.open.pop()
        elif tag == "pre":
            self.inside = False

    def handle_data(self, data: str) -> None:
        if self.inside:
            self.text += data
            self.colours += [(self.open or [""])[-1]] * len(data)


@pytest.mark.editor_kate
def test_kate_colours_as_the_language_reads(expected: Expected, tmp_path: Path) -> None:
    colour_of = {style: f"#{16 * (i + 1):02x}{200 - i:02x}{i:02x}" for i, style in enumerate(KATE_STYLES[:15])}
    colour_of |= {style: f"#{100 - i:02x}{16 * (i + 1):02x}{i:02x}" for i, style in enumerate(KATE_STYLES[15:-1])}
    colour_of["Others"] = "#aabbcc"
    themes = tmp_path / "org.kde.syntax-highlighting" / "themes"
    themes.mkdir(parents=True)
    theme = {
        "metadata": {"name": "Wye test", "revision": 1},
        "text-styles": {style: {"text-color": colour} for style, colour in colour_of.items()},
    }
    (themes / "wye-test.theme").write_text(json.dumps(theme))
    syntax = themes.parent / "syntax"
    syntax.mkdir()
    shutil.copy(CONFIGS / "kate" / "wye.xml", syntax)
    text = "\n".join(expected.lines) + "\n"
    (tmp_path / "model.wye").write_text(text, encoding="utf-8")
    run = subprocess.run(
        [program("kate-syntax-highlighter", "kate"), "-t", "Wye test", "-s", "Wye", str(tmp_path / "model.wye")],
        env=os.environ | {"XDG_DATA_HOME": str(tmp_path), "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"},
        capture_output=True,
        timeout=60,
        check=False,
    )
    page = _Colours()
    page.feed(run.stdout.decode())
    assert run.returncode == 0 and not run.stderr, run.stderr.decode()
    start = page.text.index(expected.lines[0])
    offsets = [start]
    for line in expected.lines:
        offsets.append(offsets[-1] + len(line) + 1)
    assert page.text[start : start + len(text) - 1] == text[:-1]
    colours = [page.colours[offsets[line] + column] for line, column in expected.places]
    names = {colour: style for style, colour in colour_of.items()} | {"": "Normal"}
    expected.compare(
        [f"ds{names[colour]}" for colour in colours], lambda group: GROUPS[group].kate if group else "dsNormal"
    )
