"""What reading a text costs, from the bytes up: Wyeline's engine beside plain Lark, and the floors below both.

Plain Lark is that of ``plain_lark.py``: its own lexer, its LALR parser, a transformer inside it; building the parser is
not counted. Each engine runs in a process of its own, with nothing remembered:

    python tests/benchmarks/parsing.py ENGINE FILE      prints the seconds of processor time it took
"""

from __future__ import annotations

import gc
import re
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

BLANK_STARTS = (" ", "\t")
WORD = re.compile(r"\S+")


def read(path: Path) -> Callable[[], object]:
    return lambda: path.read_text("utf-8")


def split_blocks(path: Path) -> Callable[[], object]:
    text = path.read_text("utf-8")

    def run() -> None:
        block: list[str] = []
        hashes = []
        for line in text.split("\n"):
            if not line.startswith(BLANK_STARTS):
                hashes.append(hash(tuple(block)))
                block = []
            block.append(line)

    return run


def words(path: Path) -> Callable[[], object]:
    text = path.read_text("utf-8")
    return lambda: WORD.findall(text)


def tokens(path: Path) -> Callable[[], object]:
    from wyeline_grammar.tokens import cut

    lines = path.read_text("utf-8").split("\n")
    return lambda: [cut(line) for line in lines]


def engine(path: Path) -> Callable[[], object]:
    """As the program reads a text: known shapes are replayed, other lines go to Lark."""
    from wyeline_grammar.parser import parse_line
    from wyeline_grammar.tokens import is_statement

    lines = path.read_text("utf-8").split("\n")
    return lambda: [parse_line(line, not is_statement(line)) for line in lines]


def lark_alone(path: Path) -> Callable[[], object]:
    from plain_lark import parser

    from wyeline_grammar.tokens import is_statement

    lines = [line for line in path.read_text("utf-8").split("\n") if not line.strip().startswith("//") and line.strip()]
    parse = parser().parse
    return lambda: [parse(line, start="statement" if is_statement(line) else "detail") for line in lines]


def compile_python(path: Path) -> Callable[[], object]:
    text = path.read_text("utf-8")
    return lambda: compile(text, "site.py", "exec")


ENGINES = {
    "read": read,
    "split": split_blocks,
    "words": words,
    "tokens": tokens,
    "engine": engine,
    "lark": lark_alone,
    "compile": compile_python,
}


def document(folder: Path, name: str) -> Path:
    """The text that an engine reads: a site's one file, or its Python twin."""
    return folder / ("site.py" if name == "compile" else "one/site.wye")


def timed(names: list[str], folder: Path, rounds: int) -> dict[str, list[float]]:
    """Seconds of processor time of each engine, in turn."""
    taken: dict[str, list[float]] = {name: [] for name in names}
    for _ in range(rounds):
        for name in names:
            command = [sys.executable, __file__, name, str(document(folder, name))]
            done = subprocess.run(command, capture_output=True, text=True, check=True)
            taken[name].append(float(done.stdout))
    return taken


def differing_lines(path: Path) -> list[str]:
    """Lines that plain Lark cuts into other kinds of words than Wyeline, or whose remembered shape is not what Lark
    says of them; there should be none in a text without slips."""
    from plain_lark import parser

    from wyeline_grammar import memo
    from wyeline_grammar.tokens import cut, is_statement

    lex = parser().lex
    different = []
    for line in dict.fromkeys(path.read_text("utf-8").split("\n")):
        kinds, statement = cut(line)[0], is_statement(line)
        same = tuple(token.type for token in lex(line)) == kinds
        if not same or (kinds and memo.shape(kinds, statement) != memo.ask_lark(kinds, statement)):
            different.append(line)
    return different


def table(taken: dict[str, list[float]], text_bytes: dict[str, int]) -> list[str]:
    """Markdown: processor time, what that is in text a second, and the share of plain Lark's time."""
    lines = ["| what | processor ms | MB/s | share of plain Lark |", "| --- | --- | --- | --- |"]
    from measurements import shown

    lark_s = statistics.median(taken["lark"])
    for name, values in taken.items():
        took_s = statistics.median(values)
        speed = text_bytes[name] / 1e6 / max(took_s, 1e-6)
        lines.append(f"| {LABEL[name]} | {shown(took_s * 1000)} | {shown(speed)} | {shown(took_s / lark_s)} |")
    return lines


LABEL = {
    "read": "read and decode",
    "split": "split into blocks, hash each",
    "words": "`re.findall`, words only",
    "tokens": "Wyeline's tokens",
    "engine": "**Wyeline's engine**: every line parsed",
    "lark": "plain Lark: every line parsed",
    "compile": "CPython `compile`, the Python twin",
}

if __name__ == "__main__":
    run = ENGINES[sys.argv[1]](Path(sys.argv[2]))
    gc.disable()
    began = time.process_time()
    run()
    print(time.process_time() - began)
