"""The table of attributes against the word lists, against itself, and what it says about phrases."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from wyeline_grammar import attributes as table
from wyeline_grammar import vocabulary
from wyeline_grammar.attribute_types import Use
from wyeline_grammar.interpret import Interpreted, interpret, value_of
from wyeline_grammar.syntax import Phrase
from wyeline_grammar.tokens import tokenize
from wyeline_grammar.units import UNIT_SPELLINGS

ALL_PLACES = sorted({*table.KINDS, *table.PLACES})
USES = [(key.word, use) for key in table.KEYS.values() for use in key.uses]


def read(place: str, text: str) -> Interpreted:
    """Interpret one phrase written as in a file, with three blanks before it."""
    tokens, _ = tokenize("   " + text)
    form = {"QUANTITY": "quantity", "FLAG": "flag", "KIND": "class"}.get(tokens[0].kind, "key")
    return interpret(place, Phrase(form, tokens))


def mended(place: str, text: str) -> set[str]:
    """The texts that the remedies make of it; each must be free of problems."""
    out = set()
    for remedy in read(place, text).problems[0].remedies:
        new = "   " + text
        for edit in sorted(remedy.edits, reverse=True):
            new = new[: edit.start] + edit.text + new[edit.end :]
        assert read(place, new.strip()).problems == (), (text, new)
        out.add(new.strip())
    return out


def test_every_word_of_the_language_has_exactly_one_entry() -> None:
    assert set(table.KEYS) == vocabulary.KEYS | {"at"}
    assert set(table.FLAGS) == vocabulary.FLAGS
    assert set(table.KINDS) == vocabulary.KINDS
    assert set(table.STATEMENTS) == vocabulary.STATEMENTS
    assert set(table.SMALL_WORDS) == vocabulary.SMALL_WORDS
    assert set(table.ACTIONS) == vocabulary.ACTIONS
    for rows, entries in (
        (table.ALL_KEYS, table.KEYS),
        (table.ALL_FLAGS, table.FLAGS),
        (table.ALL_KINDS, table.KINDS),
    ):
        assert len(rows) == len(entries)
    groups = [key for _, keys in table.KEY_GROUPS for key in keys]
    assert groups == list(table.ALL_KEYS)


def test_no_word_is_spelled_like_a_unit() -> None:
    every = set().union(table.KEYS, table.FLAGS, table.KINDS, table.STATEMENTS, table.SMALL_WORDS, table.ACTIONS)
    assert not every & (set(UNIT_SPELLINGS) | {"inch", "mm", "mm2", "kcmil", "set", "sets"})


def test_entries_are_whole() -> None:
    for word in (*table.KEYS, *table.FLAGS, *table.KINDS):
        assert (table.doc_of(word) or "").endswith("."), word
    for key in table.KEYS.values():
        used = [place for use in key.uses for place in use.places]
        assert len(used) == len(set(used)) and set(used) <= set(ALL_PLACES), key.word
    for flag in table.FLAGS.values():
        assert flag.places and flag.places <= set(ALL_PLACES) and flag.group in dict(table.FLAG_GROUPS)
    assert {kind.word for kind in table.KINDS.values() if kind.board} == vocabulary.BOARDS
    makers = {kind.word for kind in table.KINDS.values() if kind.system}
    assert makers >= vocabulary.SOURCES


@pytest.mark.parametrize(("key", "use"), USES, ids=[f"{key}-{min(use.places)}" for key, use in USES])
def test_every_example_reads_without_a_problem_wherever_it_may_stand(key: str, use: Use) -> None:
    assert use.examples
    for example, place in itertools.product(use.examples, sorted(use.places)):
        got = read(place, example)
        assert got.problems == () and got.name == key and got.value is not None, (place, example, got)


@pytest.mark.parametrize(
    ("place", "text", "name", "kind", "data", "dimension"),
    [
        ("utility", "fault 28 kA", "fault", "quantity", 28_000, "current"),
        ("utility", "fault 250 MVA", "fault", "quantity", 250e6, "apparent-power"),
        ("utility", "range 90..110 %", "range", "range", (0.9, 1.1), "ratio"),
        ("transformer", "connection Dyn11", "connection", "name", "Dyn11", ""),
        ("transformer", "rise 207 degF", "rise", "quantity", 115, "temperature-difference"),
        ("project", "ambient 95 degF", "ambient", "quantity", 35, "temperature"),
        ("transformer", "ground L2", "ground", "word", "L2", ""),
        ("feeder", "at 14,16", "at", "list", (14, 16), ""),
        ("feeder", "at 3", "at", "list", (3,), ""),
        ("feeder", "at F9", "at", "name", "F9", ""),
        ("feeder", "at 12 m", "at", "quantity", 12, "length"),
        ("circuit", 'with "2A"', "with", "name", "2A", ""),
        ("load", 'not-with BOILER, "2A"', "not-with", "names", ("BOILER", "2A"), ""),
        ("feeder", "delay 12 cycles", "delay", "quantity", 12, "cycles"),
        ("panel", "main lugs", "main", "word", "lugs", ""),
        ("panel", "spaces 42", "spaces", "number", 42, ""),
        ("circuit", "duty continuous", "duty", "word", "continuous", ""),
        ("busway", "60 m", "length", "quantity", 60, "length"),
        ("circuit", "7-1/2 hp", "power", "quantity", 7.5 * 745.699872, "power"),
        ("battery", "200 kWh", "capacity", "quantity", 720e6, "energy"),
        ("feeder", "100 A 2p", "rating", "quantity", 100, "current"),
        ("panel", "like LAB", "like", "name", "LAB", ""),
    ],
)
def test_values_are_plain_and_in_si(place: str, text: str, name: str, kind: str, data: object, dimension: str) -> None:
    got = read(place, text)
    assert got.problems == () and got.name == name and got.value is not None
    assert (got.value.kind, got.value.dimension) == (kind, dimension)
    assert got.value.data == (pytest.approx(data, rel=1e-9) if isinstance(data, float | int) else data)


def test_an_infinite_fault_level_is_the_flag() -> None:
    assert read("utility", "fault infinite")[:2] == ("infinite", None) == read("utility", "infinite")[:2]


@pytest.mark.parametrize(
    ("place", "text", "rule", "remedies"),
    [
        ("panel", "bus 225", "quantity-without-unit", {"bus 225 A"}),
        ("panel", "rated 65", "quantity-without-unit", {"rated 65 kA"}),
        ("utility", "fault 28", "quantity-without-unit", {"fault 28 kA", "fault 28 MVA"}),
        ("feeder", "buried 0.8", "quantity-without-unit", {"buried 0.8 m", "buried 0.8 ft"}),
        ("transformer", "z 4", "quantity-without-unit", {"z 4 %"}),
        ("feeder", "buried 42 A", "dimension-mismatch", set()),
        ("motor", "pf 86 %", "dimension-mismatch", {"pf 0.86"}),
        ("transformer", "75 kW", "dimension-mismatch", {"75 kVA"}),
        ("spd", "voltage 480", "quantity-without-unit", {"voltage 480 V"}),
        ("transfer", "transition Open", "value-not-understood", {"transition open"}),
        ("project", "basis iec-2023", "value-not-understood", {"basis iec"}),
        ("project", "basis us", "value-not-understood", {"basis us-2023"}),
        ("project", "basis ies-2023", "value-not-understood", {"basis iec"}),
        ("project", "basis bs-2023", "value-not-understood", set()),
        ("feeder", "fuse gg", "value-not-understood", {"fuse gG"}),
        ("feeder", 'fuse "J"', "value-not-understood", {"fuse J"}),
        ("panel", "note Hall", "value-not-understood", {'note "Hall"'}),
        ("panel", "spaces 4.5", "value-not-understood", set()),
        ("motor", "pf 1.2", "value-not-understood", set()),
        ("ups", "eff 120 %", "value-not-understood", set()),
        ("transformer", "z 0 %", "value-not-understood", set()),
        ("panel", "bus -225 A", "value-not-understood", set()),
        ("transformer", "connection Dyn13", "value-not-understood", set()),
        ("panel", "fault 10 kA", "attribute-out-of-place", {"rated 10 kA", "withstand 10 kA"}),
        ("transformer", "spaces 42", "attribute-out-of-place", set()),
        ("panel", "tied", "attribute-out-of-place", set()),
        ("panel", "motor", "attribute-out-of-place", set()),
        ("circuit", "panel", "attribute-out-of-place", set()),
        ("feeder", "5 kW", "attribute-out-of-place", {"limit 5 kW"}),
        ("transformer", "75 kVA 3p", "attribute-out-of-place", set()),
        ("expect", "bus 225 A", "attribute-out-of-place", set()),
        ("feeder", "voltage 480/277", "voltage-notation-unclear", {"voltage 480Y/277", "voltage 480Y/277 1ph"}),
        ("transformer", "z 41 %", "implausible-value", set()),
        ("panel", "rated 65 A", "implausible-value", {"rated 65 kA"}),
        ("panel", "rated 1400 kA", "implausible-value", {"rated 1400 A"}),
        ("panel", "main 6 A", "implausible-value", set()),
    ],
)
def test_what_is_wrong_is_named_and_mended(place: str, text: str, rule: str, remedies: set[str]) -> None:
    got = read(place, text)
    assert [problem.rule for problem in got.problems] == [rule]
    problem = got.problems[0]
    assert problem.found and problem.needed and problem.why and problem.change and problem.message
    assert mended(place, text) == remedies
    assert (got.value is None) == (rule not in ("implausible-value",) and "3p" not in text)


def test_an_unkeyed_current_of_a_board_offers_the_keys_it_may_be() -> None:
    assert {"bus 225 A", "main 225 A"} <= mended("panel", "225 A")
    assert read("panel", "225 A").name is None


def test_the_message_asks_what_the_number_is() -> None:
    assert read("panel", "bus 225").problems[0].message == "`bus 225`: 225 what? Write `bus 225 A`"


def test_problems_point_at_their_own_tokens_wherever_the_phrase_stands() -> None:
    tokens, _ = tokenize("  bus   225 ,  main 60 A")
    first = interpret("panel", Phrase("key", tokens[:2]), 7).problems[0]
    again = interpret("panel", Phrase("key", tokenize("bus 225")[0]), 1).problems[0]
    assert (first.line, first.start, first.end) == (7, 8, 11) and first.remedies[0].edits[0] == (7, 8, 11, "225 A")
    assert (again.line, again.start, again.end) == (1, 4, 7)


def test_a_second_value_behind_a_key_is_found_and_the_first_kept() -> None:
    got = read("feeder", "fuse J LP-1")
    assert got.value is not None and got.value.data == "J" and "LP-1" in got.problems[0].message


def test_single_tokens_have_values() -> None:
    assert [value_of(token) and value_of(token).kind for token in tokenize('50 % 3 -> "a" B')[0]] == [  # type: ignore[union-attr]
        "quantity",
        "number",
        None,
        "text",
        "name",
    ]


def test_no_snippet_writes_what_only_a_nameplate_or_a_letter_can_tell() -> None:
    """Who tabs past a figure that nobody stated has invented a fault level: it is left out, and shows as a gap."""
    for kind in ("utility", "generator", "transformer"):
        words = table.KINDS[kind].snippet.replace(",", " ").split()
        assert not {"fault", "fault-min", "x/r", "z", "subtransient", "sustained"} & set(words), table.KINDS[
            kind
        ].snippet


_VALUES = st.sampled_from(
    """225 A|28 kA|-2.5 %|7-1/2 hp|42|0.86|480 3ph|480/277|0.9..1.1|2,4|#2/0|95 mm2|2 inch|"x"|B|open|existing|motor
    |lugs|MSB.through|95 degF|3 cycles|1.5 K.m/W""".split("|")
)


@given(st.sampled_from(ALL_PLACES), st.sampled_from(sorted(table.KEYS)), _VALUES)
@settings(max_examples=150, deadline=None)
def test_any_key_with_any_value_anywhere_has_an_answer(place: str, key: str, value: str) -> None:
    got = read(place, f"{key} {value}")
    assert got.value is not None or got.problems or got.name == "infinite"
    for problem in got.problems:
        assert problem.found and problem.needed and problem.why and problem.change
        mended(place, f"{key} {value}")


def test_a_rating_that_needs_no_key_is_offered_without_it() -> None:
    """A switch has no bus and no main: its current stands alone."""
    assert mended("disconnect", "bus 400 A") == {"400 A"}
    assert mended("transfer", "main 400 A 3p") == {"400 A 3p"}
    assert mended("busway", "bus 800 A") == {"800 A"}
    assert mended("motor", "bus 800 A") == set()


def test_volts_alone_on_a_board_are_offered_the_wye_of_the_same_figure() -> None:
    assert mended("panel", "400 V") == {"400Y/230", "400 3ph", "400 1ph"}
    assert [r.title for r in read("panel", "480 V").problems[0].remedies][-1] == "Write `480Y/277`"
    assert mended("motor", "400 V") == {"400 3ph", "400 1ph"}


def test_milliamperes_are_what_a_residual_current_device_trips_at() -> None:
    for place in ("circuit", "feeder"):
        assert mended(place, "30 mA") == {"rcd 30 mA"}
