"""Every line of the examples, cut after each of its words as it is while somebody types it."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from wyeline_grammar.parser import parse_line
from wyeline_grammar.tokens import cut, is_statement

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
SITES = sorted({path.parent for path in EXAMPLES.rglob("*.wye")})


@pytest.mark.parametrize("site", SITES, ids=lambda path: path.name)
def test_a_line_that_is_being_typed_is_told_what_comes_next(site: Path) -> None:
    lines = {line for path in site.glob("*.wye") for line in path.read_text("utf-8").splitlines()}
    told = 0
    for line in sorted(lines):
        if parse_line(line, not is_statement(line)).problems:
            continue  # one of the broken examples
        for token in cut(line)[1]:
            begun = line[: token.end]
            for problem in parse_line(begun, not is_statement(begun)).problems:
                assert "\n" not in problem.message and len(problem.message) < 200, begun
                if problem.found != "the end of the line":
                    continue
                told += 1
                match = re.fullmatch(r"the line ends too early: behind `.*?` comes (.*), as in `(.*)`", problem.message)
                assert match is not None, (begun, problem.message)
                words, example = match.groups()
                assert problem.needed == words and example in problem.change
                assert words.count(",") < 3 and " such as " not in words, "one thing, and no list of what could stand"
                if not example.startswith("…"):
                    read = [parse_line(f"{indent}{example}", bool(indent)) for indent in ("", "  ")]
                    assert any(not line.problems for line in read), (begun, example)
    assert told > 20


@pytest.mark.parametrize("word", ["panel", "feeder", "transformer", "utility", "type", "raceway", "expect", "scenario"])
def test_a_word_that_begins_a_statement_is_shown_with_a_whole_one(word: str) -> None:
    (problem,) = parse_line(word, False).problems
    example = problem.message.partition("as in `")[2].rstrip("`")
    assert example.startswith(f"{word} ") and not parse_line(example, False).problems


def test_a_word_that_is_being_typed_is_told_what_begins_so() -> None:
    for text, words in (
        ("panel LP-1 208Y/120  bus 100 A, ma", ["main"]),
        ("motor M-1 460 3ph  10 hp, e", []),  # too many to offer
        ("  1  20 A 1p  li", ["limit", "lighting"]),
        ("fe", ["feeder"]),
        ("utility U 480Y/277  fa", ["fault", "fault-min", "fault-lg"]),
    ):
        (problem,) = parse_line(text, not is_statement(text)).problems
        assert "is no word yet" in problem.message
        offered = [remedy.edits[0].text for remedy in problem.remedies]
        assert sorted(offered) == sorted(words) and not any(remedy.sure for remedy in problem.remedies), text
    (done,) = parse_line("panel LP-1 208Y/120  bus 100 A, ma ", False).problems
    assert "is no word yet" not in done.message


def test_a_trade_size_lacks_its_unit_alone() -> None:
    (problem,) = parse_line("feeder MSB -> LP-1  3#1  30 m  in 1-1/2", False).problems
    assert problem.remedies[0].title == "Write `1-1/2 inch`" and "1-1/2 inch EMT" in problem.message
