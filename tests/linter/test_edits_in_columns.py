"""Whatever is applied to a formatted file leaves it formatted and touches no line but those that it changes."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.formatter import format_text
from wyeline_grammar.places import Span
from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.findings import Edit, Fix, append_phrase, delete_line, delete_statement, insert_below
from wyeline_linter.fixing import apply_edits
from wyeline_linter.repair_edits import Draft
from wyeline_linter.rules.registry import Rule, all_rules

RULES = sorted(all_rules().values(), key=lambda r: r.name)
FORMATTED = "panel       LP-1    480Y/277            bus 225 A, main 100 A\n"


def fixes_of(texts: dict[str, str]) -> list[Fix]:
    def read(path: str) -> str:
        name = path[path.index("/m/") :].replace("\\", "/")
        if name not in texts:
            raise SourceError(path, "there is no such file")
        return texts[name]

    findings = Analysis("/m/model.wye", Files(read), "/m").all_findings()
    return [fix for finding in findings for fix in finding.fixes]


@pytest.mark.parametrize("found", RULES, ids=lambda r: r.name)
def test_every_fix_leaves_a_formatted_file_formatted(found: Rule) -> None:
    texts = {"/m/model.wye": found.wrong, **{f"/m/{path}": more for path, more in found.files.items()}}
    texts = {path: format_text(text) for path, text in texts.items()}
    for fix in fixes_of(texts):
        edits: dict[str, list[Edit]] = {}
        for edit in fix.edits:
            path = edit.block.file.replace("\\", "/")
            edits.setdefault(path[path.index("/m/") :], []).append(edit)
        for path, of_file in edits.items():
            made = apply_edits(texts[path], of_file)
            assert format_text(made).rstrip("\n") == made.rstrip("\n"), fix.title
            spans = [(e.block.first_line + e.line, e.block.first_line + e.end_line) for e in of_file]
            rows = enumerate(texts[path].split("\n"))
            kept = [line for row, line in rows if not any(first <= row <= last for first, last in spans)]
            assert not Counter(kept) - Counter(made.split("\n")), fix.title


def test_a_changed_word_moves_nothing_behind_it() -> None:
    (block,) = TextFile("", FORMATTED).blocks
    made = apply_edits(FORMATTED, [Edit(block, 0, 12, 0, 16, "LIGHTS-1"), Edit(block, 0, 20, 0, 28, "208Y/120")])
    assert made == "panel       LIGHTS-1  208Y/120          bus 225 A, main 100 A\n"


def test_a_line_laid_out_otherwise_keeps_its_blanks() -> None:
    text = "panel LP-1   480Y/277 bus 225 A,main 100 A\n"
    (block,) = TextFile("", text).blocks
    assert apply_edits(text, [Edit(block, 0, 6, 0, 10, "L")]) == text.replace("LP-1", "L")


LAID_OUT = """utility UTIL 480Y/277 fault 14 kA, fault-min 9 kA, x/r 4
switchboard MSB 480Y/277 bus 400 A, main 400 A, rated 22 kA
panel LP-1 480Y/277 bus 100 A, spaces 24
  1,3 20 A 2p, 2 kW heating,continuous
feeder UTIL -> MSB 400 A 3p, 30 m
feeder MSB->LP-1  40 A 2p\t3#3 + N #3 + G #8 Cu,30 m  // level 2
"""


def test_a_fix_of_one_word_moves_nothing_else_on_a_line_laid_out_otherwise() -> None:
    (fix,) = (fix for fix in fixes_of({"/m/model.wye": LAID_OUT}) if fix.title == "Give the device 3 poles")
    assert apply_edits(LAID_OUT, fix.edits) == LAID_OUT.replace("40 A 2p\t", "40 A 3p\t")


@pytest.mark.parametrize("out", ["30 m", "100 A 3p", "fuse J", "x"])
def test_of_the_gaps_around_words_that_go_one_stays_as_it_was(out: str) -> None:
    line = "feeder A -> B   100 A 3p, 30 m,fuse J  future  // x"
    for gap in (" ", "   ", ", ", "\t"):
        text = line.replace(", 30", f"{gap}30")
        (block,) = TextFile("", text).blocks
        at = text.index(out)
        draft = Draft()
        draft.replace(block, Span(0, at, at + len(out)), "")
        made = apply_edits(text, draft.edits())
        assert re.split(r"[ ,\t]+", made.strip()) == re.split(r"[ ,\t]+", text.replace(out, "").strip(" ,"))
        blanks = re.findall(r"[ ,\t]+", text)
        assert not Counter(re.findall(r"[ ,\t]+", made.rstrip())) - Counter(blanks), "no gap that was not there"


def test_a_phrase_is_added_with_the_blanks_that_its_line_has() -> None:
    for text, added in (
        ("panel A 480Y/277 bus 9 A  // x", " rated 1 kA"),
        ("panel A  480Y/277 bus 9 A", "  rated 1 kA"),
    ):
        (block,) = TextFile("", text).blocks
        assert apply_edits(text, [append_phrase(block, 0, "rated 1 kA")]) == text.replace("9 A", f"9 A{added}")


@pytest.mark.parametrize("end", ["", "\n", "\r\n", "\n\n"])
def test_a_line_of_which_nothing_stays_goes_with_its_break(end: str) -> None:
    newline = "\r\n" if "\r" in end else "\n"
    lines = ["panel A", "  bus 100 A", "panel B", "feeder A -> B", "  30 m", "feeder A -> C"]
    text = newline.join(lines) + end
    blocks = TextFile("", text).blocks
    for gone, edit in [
        ([1], delete_line(blocks[0], 1)),
        ([2], delete_statement(blocks[1], 0)),
        ([3, 4], delete_statement(blocks[2], 1)),
        ([4], delete_line(blocks[2], 1)),
        ([5], delete_statement(blocks[3], 0)),
    ]:
        left = newline.join(line for row, line in enumerate(lines) if row not in gone)
        made = apply_edits(text, [edit])
        assert made == left + end or (not end and made == left + newline), "at the most the text now ends in a break"
    both = apply_edits(text, [delete_statement(blocks[1], 0), delete_statement(blocks[2], 1)])
    assert both == newline.join([*lines[:2], lines[5]]) + end
    beside = [delete_line(blocks[0], 1), insert_below(blocks[0], 1, "  spaces 42")]
    assert apply_edits(text, beside).split(newline)[1:3] == ["", "  spaces 42"], "what is put below it keeps its place"


def test_a_new_phrase_and_new_lines_are_set() -> None:
    (block,) = TextFile("", FORMATTED).blocks
    edits = [append_phrase(block, 0, "rated 10 kA"), insert_below(block, 0, "feeder MSB -> LP-1")]
    made = apply_edits(FORMATTED, edits)
    assert made == format_text(made) and "rated 10 kA" in made and "\nfeeder MSB         -> LP-1" in made


def test_edits_that_need_no_setting_come_back_as_they_are() -> None:
    (block,) = TextFile("", FORMATTED).blocks
    edit = Edit(block, 0, 44, 0, 47, "400")
    assert in_columns([edit]) == (edit,)
