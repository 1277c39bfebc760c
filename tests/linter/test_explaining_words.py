"""`wyeline explain WORD`: how something is written, found by the language's word or by what the trade calls it."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from wyeline_grammar.attributes import ALL_FLAGS, ALL_KEYS, KINDS, STATEMENTS
from wyeline_grammar.sources import Files
from wyeline_grammar.trade_terms import TERMS, WRITTEN
from wyeline_grammar.word_pages import page
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main

# Lines of an example name equipment that stands elsewhere, and leave out what they are not about.
LEFT_OUT = {"dangling-reference", "unfed-equipment", "issue-data-missing", "second-supply", "vague-directory-entry"}


@pytest.mark.parametrize("word", [*KINDS, *STATEMENTS, *(f.word for f in ALL_FLAGS), *(k.word for k in ALL_KEYS)])
def test_every_word_has_a_page_with_its_meaning(word: str) -> None:
    text = page(word)
    assert text is not None and text.startswith(f"# {word}\n") and len(text.splitlines()) > 2


@pytest.mark.parametrize("spelling", [spelling for term in TERMS for spelling in term.spellings])
def test_what_the_trade_says_leads_to_the_words_that_say_it(spelling: str) -> None:
    text = page(spelling.replace("-", " ").upper() if "/" not in spelling else spelling)
    (term,) = [term for term in TERMS if spelling in term.spellings]
    assert text is not None
    assert any(f"`{word}`" in text or f"# {word}" in text for word in term.says)


@pytest.mark.parametrize("word", WRITTEN)
def test_an_example_is_about_its_word_and_has_no_fault_of_its_own(tmp_path: Path, word: str) -> None:
    text = WRITTEN[word]
    assert re.search(rf"(?<![\w-]){word}(?![\w-])", text) or word == "system"
    root = tmp_path / "example.wye"
    root.write_text("wye 1\n" + text, "utf-8")
    found = Analysis(str(root), Files(), str(tmp_path)).findings()
    wrong = [f for f in found if f.rule not in LEFT_OUT and f.severity.word in ("error", "warning")]
    assert [f.message for f in wrong] == []


def test_words_typed_without_quotes_are_understood(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", "Feed-through", "lugs"]) == 0
    assert "LP-1.through -> LP-2" in capsys.readouterr().out


def test_what_nobody_calls_so_is_answered_by_the_nearest_or_by_where_to_look(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["explain", "trnasfer"]) == 2
    assert "transfer" in capsys.readouterr().err
    assert main(["explain", "xyzzy"]) == 2
    assert "`wyeline explain` lists all words" in capsys.readouterr().err
    assert main(["explain"]) == 0
    listed = capsys.readouterr().out
    assert all(word in listed for word in ("transfer", "through-lugs", "rcd", "feeder", "shed"))


def test_a_circuit_has_a_page_though_no_word_begins_it() -> None:
    text = page("branch circuit")
    assert text is not None and text.startswith("# circuit\n")
    assert all(f"`{shown}`" in text for shown in ("curve C", "rcd 30 mA", "count 6", "lighting", "F3[L1]"))


def test_classes_of_loads_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    main(["explain", "class"])
    listed = capsys.readouterr().out
    assert all(f"`{word}`" in listed for word in ("lighting", "elevator", "show-window", "ev"))


def test_a_model_alone_is_no_unknown_word(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    root = tmp_path / "barn.wye"
    root.write_text("wye 1\nutility U 480Y/277\n", "utf-8")
    assert main(["explain", str(root)]) == 2
    told = capsys.readouterr().err
    assert "name what it is about" in told and "no word" not in told


def test_two_words_that_nothing_is_called_by_are_no_missing_file(capsys: pytest.CaptureFixture[str]) -> None:
    for words, nearest in (
        (["varnished", "busway"], "busway"),
        (["kitchen", "hood"], "kitchen"),
        (["qqqq", "zzzz"], ""),
    ):
        assert main(["explain", *words]) == 2
        said = capsys.readouterr().err
        assert said.startswith(f"wyeline: no rule and no word is called `{' '.join(words)}`.")
        assert ("The nearest: " + nearest in said) if nearest else ("lists all words" in said)
    assert main(["explain", "./none", "MSB"]) == 2
    assert "there is no such file" in capsys.readouterr().err
    assert page("step-up transformer") is not None
