"""Lines and blocks: what is read, and what stays readable around what cannot be."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from grammar_lines import ALL, DETAILS, STATEMENTS
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar import memo, parser
from wyeline_grammar.blocks import TextFile
from wyeline_grammar.parser import parse_block, parse_line
from wyeline_grammar.problems import Problem
from wyeline_grammar.syntax import Line
from wyeline_grammar.tokens import cut, is_statement

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"


def parse(text: str) -> Line:
    return parse_line(text, not is_statement(text))


def words(line: Line) -> tuple[str, list[str], list[tuple[str, ...]]]:
    """Form, head and phrases (form first) as texts."""
    return line.form, [t.text for t in line.head], [(p.form, *(t.text for t in p.tokens)) for p in line.phrases]


@pytest.mark.parametrize(("text", "form"), ALL.items(), ids=lambda text: text)
def test_every_form(text: str, form: str) -> None:
    line = parse(text)
    assert (line.form, line.problems) == (form, ())
    _, tokens, comment = cut(text)
    read = [*line.head, *(token for phrase in line.phrases for token in phrase.tokens)]
    assert read == [t for t in tokens if t.kind != "ASSUME"] and line.comment == comment


def test_head_and_phrases() -> None:
    assert words(parse("  F1[L1] 16 A 1p+N curve B, assume rcd 30 mA motor “x”".replace("“x”", '"x"'))) == (
        "circuit",
        ["F1", "[L1]"],
        [
            ("quantity", "16 A", "1p+N"),
            ("key", "curve", "B"),
            ("key", "rcd", "30 mA"),
            ("class", "motor"),
            ("text", '"x"'),
        ],
    )
    assert words(parse("feeder F-7: MSB[AB] -> LP-2.through 2 sets 2#3 + G #8 Cu in 2 inch EMT at 2,4")) == (
        "feeder",
        ["feeder", "F-7", ":", "MSB", "[AB]", "->", "LP-2.through"],
        [("conductors", "2 sets", "2#3", "+", "G", "#8", "Cu"), ("in", "in", "2 inch", "EMT"), ("key", "at", "2,4")],
    )
    line = parse("  leg A 1 kVA, assume 3 A 2p, not-with K-1 K-2.x")
    assert words(line)[2] == [
        ("leg", "leg", "A", "1 kVA"),
        ("quantity", "3 A", "2p"),
        ("key", "not-with", "K-1", "K-2.x"),
    ]
    assert [p.assumed for p in line.phrases] == [False, True, False]
    assert line.end == len("  leg A 1 kVA, assume 3 A 2p, not-with K-1 K-2.x")


def test_comments_blanks_and_documentation() -> None:
    assert [parse(text).form for text in ("// x", "  // x", "/// x", "", " \t,", "panel P1 // x")] == [
        "comment", "comment", "doc", "blank", "blank", "equipment",
    ]  # fmt: skip
    assert parse("panel P1  // ask ").comment == "// ask "


def test_a_comma_is_a_blank_and_order_is_free() -> None:
    a, b = parse("panel P1 208Y/120, bus 225 A, spaces 42"), parse("panel P1 208Y/120 bus 225 A  spaces 42")
    assert words(a) == words(b)


# --- blocks


def problems(*lines: str) -> list[tuple[int, str]]:
    return [(p.line, p.rule) for line in parse_block(lines).lines for p in line.problems]


def test_block() -> None:
    block = parse_block(("/// Feeds the saws.", "panel P1 208Y/120", "", "  1 20 A 1p spare  // later", "  // end"))
    assert block.head == 1 and [line.form for line in block.lines] == [
        "doc",
        "equipment",
        "blank",
        "circuit",
        "comment",
    ]


def test_details_without_statement() -> None:
    assert problems("// panel P1 208Y/120", "  1 20 A 1p spare", "  // x", "  bus 225 A") == [
        (1, "detail-without-statement"),
        (3, "detail-without-statement"),
    ]
    assert parse_block(("  1 20 A 1p spare",)).head is None
    assert problems("panel P1", "// part", "  bus 225 A") == [(2, "detail-without-statement")]
    assert problems("  panel P1 208Y/120") == [(0, "known-slip")]


def test_broken_statement_still_owns_its_details() -> None:
    assert problems("zzz P1 208Y/120", "  1 20 A 1p spare") == [(0, "unreadable-line")]


def test_problems_and_edits_carry_the_line_of_the_block() -> None:
    block = parse_block(("panel P1", "", "  1  20A/1P"))
    (problem,) = block.lines[2].problems
    assert problem.line == 2 and problem.remedies[0].edits[0].line == 2
    assert parse("  1  20A/1P").problems[0].line == 0  # the remembered line is untouched


def test_texts_are_parsed_once() -> None:
    text = "panel REMEMBER-ME 208Y/120"
    assert parse(text) is parse(text)
    assert parse_block((text,)) is parse_block((text,))
    parser.parse_line("x" * 5_000, False)
    assert parser._known_lines[False].get("x" * 5_000) is None


# --- what cannot be read


def one(text: str) -> Problem:
    (problem,) = parse(text).problems
    assert "\n" not in problem.message and all((problem.found, problem.needed, problem.why, problem.change))
    return problem


def test_a_keyword_without_its_value_is_shown_one_of_its_own() -> None:
    for text, example in (("feeder A1 -> B1  100 A fuse 3p", "fuse J"), ("panel P1 bus main 150 A", "bus 225 A")):
        assert f"`{example}`" in one(text).needed and f"`{example}`" in one(text).change


@pytest.mark.parametrize(
    ("text", "found", "message"),
    [
        ("panel 208Y/120", "`208Y/120`", "a name is missing behind `panel`; `208Y/120` is none"),
        ("panel P1 bus", "the end of the line",
         "the line ends too early: behind `bus` comes its value, as in `bus 225 A`"),
        ("panel P1 bus main 150 A", "`main`", "`bus` needs its value right behind it; `main` is none"),
        ("panel P1 225", "`225`", "the bare number `225` has neither a keyword before it nor a unit behind it"),
        ("panel P1 208Y/120 EMT", "`EMT`", "nothing before it says what the name `EMT` is for"),
        ("panel P1 wobbly", "`wobbly`", "`wobbly` is no word of the language"),
        ("feeder A1 ->", "the end of the line",
         "the line ends too early: behind `->` comes what it feeds, as in `feeder A1 -> LP-1`"),
        ("feeder MSB", "the end of the line",
         "the line ends too early: behind `MSB` comes `->` and what it feeds, as in `feeder MSB -> LP-1`"),
        ("  2,4", "the end of the line",
         "the line ends too early: behind `2,4` comes its device and load, or `spare` or `space`, as in "
         '`2,4 20 A 2p  2.4 kVA receptacle "Bench"`'),
        (
            "feeder A1[AX] -> B1",
            "`[AX]`",
            "`[AX]` names no legs: they are `A`, `B`, `C` and `N`, or `L1`, `L2`, `L3` and `N`",
        ),
        (
            "feeder A1 -> B1 in 40 m",
            "`40 m`",
            "`40 m` cannot stand behind `in`; here stands a raceway, such as `2 inch EMT` or `R-7`",
        ),
        ("expect A1 fault 10 kA", "`10 kA`", "`10 kA` cannot stand behind `fault`; here stands `<=` or `>=`"),
        ("  allow voltage-drop at 3", "the end of the line",
         "the line ends too early: behind `3` comes the reason, in quotes, as in "
         '`allow voltage-drop at 3 "existing run, accepted in review 7"`'),
        ("wye one", "`one`", "`one` cannot stand behind `wye`; here stands a number"),
    ],
)  # fmt: skip
def test_general_messages(text: str, found: str, message: str) -> None:
    problem = one(text)
    assert (problem.rule, problem.found, problem.message) == ("unreadable-line", found, message)


@pytest.mark.parametrize(
    ("text", "right"),
    [("pannel P1 208Y/120", "panel"), ("panel P1 buss 225 A", "bus"), ("panel P1 continous", "continuous"),
     ("fedeer A1 -> B1", "feeder"), ("  swich TS-1.normal", "switch"), ("type transfomer DRY", "transformer"),
     ("panel P1 normally_opne", None), ("panel P1 exsiting, spaces 42", "existing")],
)  # fmt: skip
def test_misspelt_keyword(text: str, right: str | None) -> None:
    problem = one(text)
    if right is None:  # two letters off: shown, not sure
        assert not any(remedy.sure for remedy in problem.remedies)
        return
    (remedy,) = problem.remedies
    (edit,) = remedy.edits
    mended = text[: edit.start] + edit.text + text[edit.end :]
    assert remedy.sure and edit.text == right and parse(mended).problems == ()
    assert words(parse(text)) == words(parse(mended))


def test_a_short_word_is_no_sure_spelling_of_another() -> None:
    assert one("panel P1 of 3").remedies == ()


READABLE = [
    ("panel P1 208Y/120 wobbly bus 225 A, main 150 A", ["panel", "P1", "208Y/120"], ["bus", "main"]),
    ("panel P1 208Y/120 bus 225 A, wobbly 12 A, main 150 A", ["panel", "P1", "208Y/120"], ["bus", "main"]),
    ("panel wobbly! 208Y/120 bus 225 A", ["panel", "208Y/120"], ["bus"]),
    ("panel P1 208Y/120 bus = = 225 A main 150 A", ["panel", "P1", "208Y/120"], ["225 A", "main"]),
    ("feeder A1 -> B1[AX] 100 A 2p 3#8", ["feeder", "A1", "->", "B1"], ["100 A", "3#8"]),
    ("feeder A1 wobbly! -> B1 100 A 3p", ["feeder", "A1", "->", "B1"], ["100 A"]),
    ("feeder T: A1 -> ! 100 A 3p", ["feeder", "T", ":", "A1", "->"], ["100 A"]),
    ('  1 20 A 1p ! 1.2 kVA receptacle "B"', ["1"], ["20 A", "1.2 kVA", "receptacle", '"B"']),
    ("transformer T1 480 3ph -> ! 75 kVA z 4 %", ["transformer", "T1", "480 3ph", "->"], ["75 kVA", "z"]),
]


@pytest.mark.parametrize(("text", "head", "phrases"), READABLE, ids=[text for text, _, _ in READABLE])
def test_kind_name_voltage_and_phrases_stay(text: str, head: list[str], phrases: list[str]) -> None:
    line = parse(text)
    assert len(line.problems) == 1 and line.form != "broken"
    assert ([t.text for t in line.head], [p.tokens[0].text for p in line.phrases]) == (head, phrases)


def _sites() -> Iterator[tuple[str, str]]:
    for path in sorted(EXAMPLES.rglob("*.wye")):
        yield str(path.relative_to(EXAMPLES)), path.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("name", "text"), [site for site in _sites() if "slips" not in site[0]], ids=lambda text: text[:30]
)
def test_examples_are_readable(name: str, text: str) -> None:
    for block in TextFile(name, text).blocks:
        for line in parse_block(block.lines).lines:
            assert line.problems == (), block.lines


def test_example_of_slips_has_a_known_one_on_most_lines() -> None:
    text = (EXAMPLES / "broken" / "slips.wye").read_text(encoding="utf-8")
    found = [
        p
        for block in TextFile("slips.wye", text).blocks
        for line in parse_block(block.lines).lines
        for p in line.problems
    ]
    assert len(found) >= 15 and {problem.rule for problem in found} == {"known-slip"}


PIECES = st.sampled_from(
    """20A/1P 3-#8 1,200 “x” " ' # ( ) = < > -> : + [AB] [ ] Panel KVA .86 140' 2" in EMT MLO to 3P wobbly bus 225 A
    480Y/277 P1 lp-1 // feeder panel 3#8 2 sets of at 2, 4 assume leg 7½ 12/14 \\ { } 🔌 Ω é""".split()
) | st.just("  ")


@st.composite
def damaged(draw: st.DrawFn) -> str:
    text = draw(st.sampled_from(list(ALL)))
    for _ in range(draw(st.integers(0, 3))):
        at, to = sorted((draw(st.integers(0, len(text))), draw(st.integers(0, len(text)))))
        text = text[:at] + draw(PIECES) + text[at + min(to - at, 3) :]
    return text


@settings(max_examples=500, deadline=None)
@given(damaged() | st.text(max_size=80).filter(lambda text: "\n" not in text and "\r" not in text))
def test_any_line_is_read_as_far_as_it_goes(text: str) -> None:
    line = parse_line(text, not is_statement(text))
    kinds, tokens, comment = cut(text)
    assert line.comment == comment and len(line.problems) <= 1
    if kinds:
        sound = isinstance(memo.shape(kinds, is_statement(text)), memo.Recipe)
        assert sound or line.problems
    columns = [(t.start, t.end) for t in (*line.head, *(t for p in line.phrases for t in p.tokens))]
    put_behind = (tokens[0].start, tokens[0].end) if tokens else None  # what the first word says as well
    in_order = [place for place in columns if place != put_behind]
    assert in_order == sorted(in_order) and all(0 <= a < b <= len(text) for a, b in columns)
    for problem in line.problems:
        assert problem.rule in ("unreadable-line", "known-slip") and problem.line == 0
        assert 0 <= problem.start < problem.end <= len(text) and problem.message and "\n" not in problem.message
        assert problem.why and problem.change and problem.needed and problem.found
        for remedy in problem.remedies:
            assert remedy.edits
            for edit in remedy.edits:
                assert 0 <= edit.start <= edit.end <= len(text) and text[edit.start : edit.end] != edit.text
    assert tokens or line.form in ("blank", "comment", "doc")


@settings(max_examples=200, deadline=None)
@given(damaged())
def test_sure_remedies_come_to_an_end(text: str) -> None:
    """Taking every sure remedy in turn never goes round in circles, and never makes another line unreadable."""
    for _ in range(12):
        sure = [r for p in parse(text).problems for r in p.remedies if r.sure]
        if not sure:
            return
        for edit in sorted(sure[0].edits, reverse=True):
            text = text[: edit.start] + edit.text + text[edit.end :]
    pytest.fail(text)


def test_statement_and_detail_lines_are_told_apart() -> None:
    assert all(is_statement(text) for text in STATEMENTS) and not any(is_statement(text) for text in DETAILS)


@pytest.mark.parametrize(
    "text", ["panel " * 100_000, '"' * 200_001, "  " + "20 A 1p " * 50_000, "feeder A1 -> B1 " + "3-#8 " * 50_000]
)
def test_a_very_long_line_has_one_problem_at_most(text: str) -> None:
    assert len(parse(text).problems) <= 1
