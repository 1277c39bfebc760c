"""Texts drawn at random: near to the language, far from it, several files, and runs of edits."""

from __future__ import annotations

import random
import re
from functools import lru_cache
from pathlib import Path

from hypothesis import strategies as st
from soundness import FOLDER

from wyeline_grammar import vocabulary
from wyeline_grammar.units import UNIT_SPELLINGS

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
ODD = [
    *("9" * 5000, "9" * 400, "9" * 400 + " A", "9" * 5000 + "p", "9" * 5000 + "#8", "1" * 5000 + ",2", "3x0mm2"),
    *("#" + "9" * 5000, "0", "-0", "1e9", "1/0", "0/0", "0Y/0", "0 3ph", "1/3 hp", "..", "0..0", "9999999999 MVA"),
    *('"', '""', '"".x', "\u201c", "[", "]", "[]", "[ABCN]", ",", ":", "+", "-", "->", "\u2192", "//", "///", "#", "`"),
    *("\t", "\r", "\x00", "\x0b", "\x1c", "\x85", "\xa0", "\u2028", "\ufeff", "\u00bd", "\u00b2", "\u0663"),
    *("\uff11", "\u00e9", "\u03a9", "\u00d7", "\u00b5A", "\U0001f600", "\u0130", "\u00df", "e\u0301", "\ud800"),
    *(
        "0 A",
        "0 kVA",
        "0 %",
        "-5 %",
        "0 m",
        "1000000000 m",
        "0 Hz",
        "x/r 0",
        "r/x 0",
        "z 0 %",
        "pf 0",
        "eff 0 %",
        "0 sets",
    ),
]
"""Words that parsers, number readers and slicing trip over."""


FIGURES = "0 0.0001 0.5 1 2 3 7 13 60 120 208 240 400 480 1000 4160 99999 1000000000 999999999999999".split()
"""What takes the place of a figure: nothing, next to nothing, another usual one, more than the world holds."""


@lru_cache(maxsize=1)
def lines_written() -> list[str]:
    """Every line of the shipped models."""
    return sorted({line for path in EXAMPLES.rglob("*.wye") for line in path.read_text("utf-8").split("\n")})


@lru_cache(maxsize=1)
def words_known() -> list[str]:
    listed = [str(w) for group in vars(vocabulary).values() if isinstance(group, frozenset | tuple) for w in group]
    used = {w for line in lines_written() for w in re.findall(r"\S+", line)}
    return sorted({*used, *listed, *(f"3 {unit}" for unit in UNIT_SPELLINGS)})


def damaged(rng: random.Random, line: str) -> str:
    """A line with a few words or characters added, taken or replaced."""
    if rng.random() < 0.3:
        figures = list(re.finditer(r"\d+(?:\.\d+)?", line))
        if figures:
            at = rng.choice(figures)
            return line[: at.start()] + rng.choice(FIGURES) + line[at.end() :]
    if rng.random() < 0.5:
        words = line.split(" ")
        for _ in range(rng.randint(0, 3)):
            at = rng.randrange(len(words) + 1)
            new = rng.choice(ODD) if rng.random() < 0.3 else rng.choice(words_known())
            words[at : at + rng.randint(0, 1)] = [new] * rng.randint(0, 1)
        return " ".join(words)
    for _ in range(rng.randint(0, 3)):
        at = rng.randrange(len(line) + 1)
        line = line[:at] + rng.choice(["", rng.choice(ODD)]) + line[at + rng.randint(0, 3) :]
    return line


def text(rng: random.Random, most: int = 14) -> str:
    """Lines of the shipped models in any order, some of them damaged."""
    lines = [rng.choice(lines_written()) for _ in range(rng.randint(1, most))]
    lines = [damaged(rng, line) if rng.random() < 0.6 else line for line in lines]
    return rng.choice(["\n", "\n", "\n", "\r\n", "\r"]).join(lines)


@lru_cache(maxsize=1)
def small_models() -> list[str]:
    """Whole models of one file, so that what needs a supply is reached too."""
    return [path.read_text("utf-8") for path in sorted(EXAMPLES.glob("broken/*.wye"))]


@lru_cache(maxsize=1)
def sites() -> list[dict[str, str]]:
    """The shipped sites, file by file, the root under the name of all roots."""
    made = []
    for folder, root in (("dairy-works", "works.wye"), ("field-station", "station.wye")):
        files = {f"{FOLDER}/{p.name}": p.read_text("utf-8") for p in sorted((EXAMPLES / folder).glob("*.wye"))}
        made.append({f"{FOLDER}/site.wye": files.pop(f"{FOLDER}/{root}"), **files})
    return made


def damaged_site(rng: random.Random) -> dict[str, str]:
    """A shipped site with a few statements damaged, moved or gone, so that studies meet what no drafter would write."""
    files = dict(sites()[int(rng.random() < 0.25)])
    for _ in range(rng.randint(1, 6)):
        name = rng.choice(sorted(files))
        lines = files[name].split("\n")
        at = rng.randrange(len(lines))
        if rng.random() < 0.8:
            lines[at] = damaged(rng, lines[at])
        else:
            moved = lines.pop(at)
            lines.insert(rng.randrange(len(lines) + 1), moved if rng.random() < 0.5 else rng.choice(lines_written()))
        files[name] = "\n".join(lines)
    return files


def model(rng: random.Random) -> dict[str, str]:
    """A whole small model with a few damages, or up to three files with includes among them that may be circular."""
    if rng.random() < 0.4:
        lines = [*rng.choice(small_models()).split("\n"), *rng.choice(small_models()).split("\n")]
        for _ in range(rng.randint(0, 4)):
            at = rng.randrange(len(lines))
            lines[at] = damaged(rng, lines[at])
        return {f"{FOLDER}/site.wye": "\n".join(lines)}
    names = ["site", "b", "c"][: rng.randint(1, 3)]
    files = {}
    for name in names:
        lines = text(rng).split("\n")
        for _ in range(rng.randint(0, 2)):
            target = rng.choice(["site.wye", "b.wye", "./c.wye", "../b.wye", "B.wye", "", "gone.wye", "/m/b.wye"])
            lines.insert(rng.randrange(len(lines) + 1), f'include "{target}"')
        files[f"{FOLDER}/{name}.wye"] = "\n".join(lines)
    return files


Edits = list[tuple[str, tuple[int, int], tuple[int, int], str]]


def edits(rng: random.Random, files: dict[str, str], most: int = 6) -> Edits:
    """Edits as an editor sends them, also outside the text and backwards."""
    made: Edits = []
    for _ in range(rng.randint(1, most)):
        path = rng.choice(sorted(files))
        rows = files[path].count("\n") + 2
        first = rng.randint(0, rows)
        start, end = (first, rng.randint(0, 90)), (first + rng.choice([0, 0, 0, 1, 3]), rng.randint(0, 90))
        new = rng.choice(["", " ", "\n", "\r\n", "//", '"', text(rng, 3), rng.choice(words_known()), rng.choice(ODD)])
        made.append((path, start, end, new))
    return made


SEEDS = st.integers(0, 2**48)
"""A number that draws a text: shrinks badly and draws quickly, which is what a search for faults wants."""

_WORDS = st.sampled_from(words_known()) | st.sampled_from(ODD)
_LINE = st.builds(
    lambda indent, words: indent + " ".join(words), st.sampled_from(["", "  "]), st.lists(_WORDS, max_size=8)
)
GRAMMATICAL = st.lists(st.sampled_from(lines_written()) | _LINE, max_size=8).map("\n".join)
"""Texts that shrink well, for findings that a person has to read."""
ANY = st.text(max_size=60)
