"""The memo of shapes says what the grammar says, always; a clean run never asks it."""

from __future__ import annotations

import logging
import subprocess
import sys

import lark
import pytest
from grammar_lines import ALL, STATEMENTS
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar import memo
from wyeline_grammar.tokens import cut

SOUND = [(cut(line)[0], line in STATEMENTS) for line in ALL]
KINDS = sorted({kind for kinds, _ in SOUND for kind in kinds} | {"ERROR", "PLAIN", "PORT"})


@st.composite
def damaged(draw: st.DrawFn) -> tuple[memo.Kinds, bool]:
    """The kinds of a sound line with words put in, left out, changed or taken from another line."""
    kinds, statement = draw(st.sampled_from(SOUND))
    line = list(kinds)
    for _ in range(draw(st.integers(0, 3))):
        at = draw(st.integers(0, len(line)))
        what = draw(st.sampled_from(("in", "out", "other", "join")))
        if what == "in":
            line.insert(at, draw(st.sampled_from(KINDS)))
        elif what == "out":
            del line[at : at + 1]
        elif what == "other":
            line[at : at + 1] = [draw(st.sampled_from(KINDS))]
        else:
            other = draw(st.sampled_from(SOUND))[0]
            line[at:] = other[draw(st.integers(0, len(other))) :]
    return tuple(line) or ("KEY",), statement != (draw(st.integers(0, 9)) == 0)


@settings(max_examples=1500, deadline=None)
@given(damaged())
def test_memo_equals_grammar(line: tuple[memo.Kinds, bool]) -> None:
    kinds, statement = line
    assert memo.shape(kinds, statement) == memo.ask_lark(kinds, statement)


def test_repeated_parts_of_any_length_reach_the_grammar_once() -> None:
    kinds = ("FEEDER", "NAME", "ARROW", "NAME", "RUN", *("PLUS", "NAME", "SIZE") * 9, *("NAME",) * 7)
    before = memo.counts.lark
    first = memo.shape(kinds, True)
    assert isinstance(first, memo.Recipe) and first.phrases == (("conductors", 4, len(kinds), False),)
    asked = memo.counts.lark
    assert asked == before + 1
    assert isinstance(memo.shape((*kinds, "FLAG"), True), memo.Recipe) and memo.counts.lark == asked


def test_grammar_has_no_conflict(caplog: pytest.LogCaptureFixture) -> None:
    with caplog.at_level(logging.DEBUG, logger=lark.logger.name):
        grammar = memo._read(memo._GRAMMAR)
        lark.Lark(grammar, parser="lalr", lexer=_NoLexer, start=["statement", "detail"], debug=True)
    assert not [record.message for record in caplog.records if "conflict" in record.message.lower()]


class _NoLexer(lark.lexer.Lexer):
    def __init__(self, lexer_conf: object) -> None:
        pass

    def lex(self, *_: object) -> None:  # type: ignore[override]
        raise NotImplementedError


def test_shipped_table_is_what_the_grammar_gives() -> None:
    assert memo.main(["--check"]) == 0


def test_clean_text_never_imports_lark() -> None:
    script = (
        "import sys\nfrom wyeline_grammar import memo\nfrom wyeline_grammar.parser import parse_block\n"
        "block = parse_block(tuple(sys.stdin.read().splitlines()))\n"
        "assert not any(line.problems for line in block.lines)\n"
        "assert memo.counts.lark == 0 and not {'lark', 'pint', 'numpy', 'difflib'} & set(sys.modules)\n"
    )
    sys_input = "\n".join(line for line in ALL)
    done = subprocess.run(
        [sys.executable, "-c", script], input=sys_input, text=True, encoding="utf-8", check=False, capture_output=True
    )
    assert done.returncode == 0, done.stderr
