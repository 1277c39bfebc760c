"""What a circuit is for, typed without quotes: nothing of it is read as another word, and no figure is lost."""

from __future__ import annotations

import pytest

from wyeline_grammar.lowering import lower_block
from wyeline_grammar.parser import parse_line
from wyeline_grammar.problems import Problem, Remedy


def only(text: str) -> Problem:
    (problem,) = parse_line(text, True).problems
    return problem


def applied(text: str, remedy: Remedy) -> str:
    (edit,) = remedy.edits
    return text[: edit.start] + edit.text + text[edit.end :]


D = "  1  20 A 1p  "
MEANT = {
    D + "lighting exam rooms 1200 VA": D + 'lighting "exam rooms" 1200 VA',
    D + "water heater 1500 W": D + 'heating "water heater" 1500 W',
    D + "unit heater 5 kW existing": D + 'heating "unit heater" 5 kW existing',
    D + "Refrigerator 800 W": D + '"Refrigerator" 800 W',
    D + "RTU-1 mca 38 A, mocp 50 A": D + '"RTU-1" mca 38 A, mocp 50 A',
    D + "RTU-1 MCA 38 A": D + '"RTU-1" MCA 38 A',
    D + "800 W Kitchen counter receptacles": D + '800 W receptacle "Kitchen counter receptacles"',
    D + "800 W Range hood": D + '800 W "Range hood"',
    D + "800 W fridge in kitchen": D + '800 W "fridge in kitchen"',
    D + "600 W hall lights in EMT": D + '600 W lighting "hall lights" in EMT',
    D + "Fire alarm panel 500 VA": D + '"Fire alarm panel" 500 VA',
    D + "receptacle EXAM 1 & 2": D + 'receptacle "EXAM 1 & 2"',
    D + "receptacle classroom 102, 180 VA": D + 'receptacle "classroom 102", 180 VA',
    "  F2  16 A 1p+N Licht Halle 0.8 kW": '  F2  16 A 1p+N "Licht Halle" 0.8 kW',
}


@pytest.mark.parametrize(("wrong", "right"), list(MEANT.items()), ids=lambda text: text.strip())
def test_the_words_are_put_in_quotes(wrong: str, right: str) -> None:
    problem = only(wrong)
    (remedy,) = problem.remedies
    assert applied(wrong, remedy) == right and not remedy.sure
    assert problem.change == remedy.title


def test_a_word_that_is_nearly_one_of_the_language_is_spelled_first() -> None:
    assert only(D + "600 W heting").remedies[0].title == "Write `heating`"
    assert only(D + "600 W lights corridor").remedies[0].title == "Write `lighting`"


@pytest.mark.parametrize("text", [D + "L1 1 kW", D + "X 1 kW", D + 'bogus "Hall"'])
def test_what_describes_nothing_is_not_put_in_quotes(text: str) -> None:
    assert not any('"' in edit.text for r in only(text).remedies for edit in r.edits)


def test_words_behind_a_value_may_be_the_description() -> None:
    rows = ("panel UV-1 400Y/230", "  F5[L1]  16 A 1p+N curve B Sockets Office 2 kW receptacle")
    (problem,) = lower_block(rows).problems
    assert [remedy.title for remedy in problem.remedies] == ['Write `receptacle "Sockets Office"`']
    rows = (rows[0], '  F5[L1]  16 A 1p+N rcd 30 mA, rcd-type A Sockets "Store" 2 kW')
    assert [remedy.title for remedy in lower_block(rows).problems[0].remedies] == ["Write `receptacle`"]
    (legs,) = lower_block(("panel UV-1 400Y/230", "  F6  16 A 1p+N curve B L2  2 kW receptacle")).problems
    assert "`F1[L2]`" in legs.change and not legs.remedies
