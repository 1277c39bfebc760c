"""Whatever is applied to a formatted file leaves it formatted and touches no line but those that it changes."""

from __future__ import annotations

from collections import Counter

import pytest

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.formatter import format_text
from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.edits_in_columns import in_columns
from wyeline_linter.findings import Edit, Fix, append_phrase, insert_below
from wyeline_linter.fixing import apply_edits
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


def test_a_new_phrase_and_new_lines_are_set() -> None:
    (block,) = TextFile("", FORMATTED).blocks
    edits = [append_phrase(block, 0, "rated 10 kA"), insert_below(block, 0, "feeder MSB -> LP-1")]
    made = apply_edits(FORMATTED, edits)
    assert made == format_text(made) and "rated 10 kA" in made and "\nfeeder MSB         -> LP-1" in made


def test_edits_that_need_no_setting_come_back_as_they_are() -> None:
    (block,) = TextFile("", FORMATTED).blocks
    edit = Edit(block, 0, 44, 0, 47, "400")
    assert in_columns([edit]) == (edit,)
