"""The incremental database gives the answers of a fresh check, and does no more than an edit asks for."""

from __future__ import annotations

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures

SITE = """wye 1
project "Pier"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
include "deck.wye"
utility     QUAY    480Y/277            fault 28 kA, x/r 7
switchboard MSB     480Y/277            bus 800 A, main 800 A, rated 42 kA
feeder QUAY -> MSB  800 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu  12 m
transformer TX-1    480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2
feeder MSB -> TX-1  125 A 3p  3#1 + G #6 Cu  30 m
panel       LP-1    like LAB
  1  20 A 1p  1.2 kVA receptacle  "Bench"
feeder TX-1 -> LP-1  3#4/0 + N #4/0 + G #4 Cu  5 m
scenario "Dark"
  off QUAY
"""
DECK = """type panel LAB  bus 225 A, main 225 A, rated 10 kA, spaces 42
generator   GEN     480Y/277            350 kVA, pf 0.8
transfer    ATS-1   400 A 4p
feeder MSB -> ATS-1.normal  400 A 3p
feeder GEN -> ATS-1.emergency  400 A 3p
panel       EP-1    480Y/277            bus 400 A
feeder ATS-1 -> EP-1  400 A 3p
motor       P-1     460 3ph             15 hp
feeder EP-1 -> P-1  40 A 3p  3#8 + G #10 Cu  31 m
"""
TEXTS = {"/m/site.wye": SITE, "/m/deck.wye": DECK}

LINES = [
    "panel       LP-2    120/240             bus 100 A",
    "feeder MSB -> LP-2  100 A 2p",
    "feeder MSB[AB] -> LP-2  100 A 2p",
    "feeder LP-1 -> LP-1",
    "feeder EP-1 -> MSB  100 A 3p",
    "type panel LAB  120/240  bus 400 A",
    "transformer TX-1    480 1ph -> 120/240  25 kVA",
    "panel       LP-1    208Y/120            bus 225 A",
    "utility     QUAY    208Y/120            fault 10 kA",
    "  3  20 A 1p  1 kVA lighting",
    "  5  20 A 1p  1 kVA it third-harmonic 40 %",
    "panel       LP-1    like LAB, third-harmonic 20 %",
    "feeder TX-1 -> LP-1  3#4/0 + N #4/0 + G #4 Cu  5 m, third-harmonic 30 %",
    '  allow unfed-equipment "later"',
    "system S480 480Y/277 ground-resistor 5 A",
    "switchboard MSB     S480                bus 800 A",
    'project "Other"',
    "  basis iec",
    'scenario "Dark"',
    "  open MSB -> ATS-1.normal",
    "expect all panel drop <= 3 %",
    'include "gone.wye"',
    "// a comment",
    "/// a note",
    "",
    "panel ??? broken",
]

EDITS = st.lists(
    st.tuples(
        st.sampled_from(sorted(TEXTS)),
        st.integers(0, 18),
        st.integers(0, 2),
        st.lists(st.sampled_from(LINES), max_size=2),
    ),
    min_size=1,
    max_size=6,
)
"""Runs of edits: the file, the line, how many lines go, and what comes."""


def reader(path: str) -> str:
    name = path.replace("\\", "/")
    name = name[name.index("/m/") :]
    if name not in TEXTS:
        raise SourceError(path, "there is no such file")
    return TEXTS[name]


def fresh(texts: dict[str, str]) -> Analysis:
    def read(path: str) -> str:
        name = path[path.index("/m/") :]
        if name not in texts:
            raise SourceError(path, "there is no such file")
        return texts[name]

    return Analysis("/m/site.wye", Files(read), "/m")


def answers(analysis: Analysis) -> tuple[object, ...]:
    found = [
        (f.rule, f.severity, f.message, f.place.file, f.place.row, f.place.span.start, f.found, f.needed, f.allowed)
        for f in analysis.findings()
    ]
    return found, model_figures(analysis.view), sorted(analysis.network.root.items())


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(EDITS)
def test_any_run_of_edits_gives_the_answers_of_a_fresh_check(edits: list[tuple[str, int, int, list[str]]]) -> None:
    files = Files(reader)
    analysis = Analysis("/m/site.wye", files, "/m")
    for path in TEXTS:
        files.open_buffer(path, TEXTS[path])
    for path, line, removed, new in edits:
        file = files.get(path)
        first = min(line, len(file.lines))
        went, came = file.replace_lines(first, min(first + removed, len(file.lines)), list(new))
        if path in analysis.model.files:
            analysis.edited(went, came)
    texts = {path: files.get(path).text for path in TEXTS}
    assert answers(analysis) == answers(fresh(texts))


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(EDITS, st.integers(0, 5))
def test_a_twin_and_its_model_are_edited_apart(edits: list[tuple[str, int, int, list[str]]], before: int) -> None:
    files = Files(reader)
    analysis = Analysis("/m/site.wye", files, "/m")
    twin = None
    for path in TEXTS:
        files.open_buffer(path, TEXTS[path])
    for i, (path, line, removed, new) in enumerate(edits):
        if i == min(before, len(edits) - 1):
            twin = analysis.twin(files, ("study",))
        file = files.get(path)
        first = min(line, len(file.lines))
        went, came = file.replace_lines(first, min(first + removed, len(file.lines)), list(new))
        edited = [a for a in (analysis, twin) if a is not None and path in a.model.files]
        for one in edited if i % 2 else edited[::-1]:
            one.edited(went, came)
    assert twin is not None
    anew = fresh({path: files.get(path).text for path in TEXTS})
    assert answers(analysis) == answers(anew)
    assert answers(twin)[1:] == answers(anew)[1:]
    assert solved(twin) == solved(anew)
    assert linked(twin) == linked(analysis) == linked(anew)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(EDITS, st.lists(st.booleans(), min_size=6, max_size=6))
def test_a_twin_that_follows_stands_where_its_model_stands(
    edits: list[tuple[str, int, int, list[str]]], catches_up: list[bool]
) -> None:
    files = Files(reader)
    analysis = Analysis("/m/site.wye", files, "/m")
    twin = analysis.twin(files, ("study",))
    for path in TEXTS:
        files.open_buffer(path, TEXTS[path])
    for (path, line, removed, new), now in zip(edits, catches_up, strict=False):
        file = files.get(path)
        first = min(line, len(file.lines))
        went, came = file.replace_lines(first, min(first + removed, len(file.lines)), list(new))
        if path in analysis.model.files:
            analysis.edited(went, came)
        if now:
            twin.follow(analysis)
            solved(twin)
    twin.follow(analysis)
    anew = fresh({path: files.get(path).text for path in TEXTS})
    assert answers(twin)[1:] == answers(analysis)[1:] == answers(anew)[1:]
    assert solved(twin) == solved(analysis) == solved(anew)
    assert linked(twin) == linked(analysis) == linked(anew)
    states = [state.name for state in twin.view.states_of_switches()]
    assert states == [state.name for state in anew.view.states_of_switches()]
    for mine, theirs in zip(twin.view.states_of_switches(), anew.view.states_of_switches(), strict=True):
        assert twin.view.network_in(mine).supplier == anew.view.network_in(theirs).supplier
        feeders = twin.view.network_in(mine).supply.values()
        assert all(twin.model.feeders[feeder.key] is feeder for feeder in feeders)


def linked(analysis: Analysis) -> tuple[object, ...]:
    """What stands under each name, however it came there."""
    model = analysis.model
    return (
        {name: [(d.sort, d.block.first_line) for d in entries] for name, entries in model.declared.items()},
        {name: sorted(entries) for name, entries in model.folded.items() if entries},
        {name: sorted(f.key for f in entries) for name, entries in model.feeders_from.items() if entries},
        {name: sorted(f.key for f in entries) for name, entries in model.feeders_to.items() if entries},
        model.repeated,
        model.alike,
    )


def solved(analysis: Analysis) -> list[tuple[object, ...]]:
    return [(f.rule, f.message, f.place.file, f.place.row, f.found, f.allowed) for f in analysis.study_findings()]


def test_a_model_that_is_judged_once_lets_go_of_much_and_answers_the_same() -> None:
    plain, slim = fresh(TEXTS), fresh(TEXTS)
    assert slim.view.positions and slim.view.currents
    slim.slim()
    assert not slim.view.positions and not slim.view.currents
    assert solved(slim) == solved(plain)
    assert not slim.view.studies.cache.factors and plain.view.studies.cache.factors
    assert answers(slim) == answers(plain)


def big(panels: int) -> str:
    lines = ["wye 1", "utility U 208Y/120  fault 10 kA, x/r 4", "switchboard M 208Y/120  bus 4000 A"]
    lines.append("feeder U -> M  4000 A 3p")
    for i in range(panels):
        lines += [
            f"panel P-{i} 208Y/120  bus 100 A",
            "  1  20 A 1p  1 kVA lighting",
            f"feeder M -> P-{i}  100 A 3p  9 m",
        ]
    return "\n".join(lines) + "\n"


def test_an_edit_in_one_block_parses_and_derives_only_what_hangs_on_it() -> None:
    files = Files(lambda _: big(500))
    analysis = Analysis("/m/big.wye", files, "/m")
    file = files.get("/m/big.wye")
    line = file.lines.index("panel P-250 208Y/120  bus 100 A") + 1
    before = dict(analysis.ran)
    went, came = file.edit((line, 12), (line, 13), "2")
    analysis.edited(went, came)
    ran = {step: analysis.ran[step] - before.get(step, 0) for step in analysis.ran}
    assert ran["parse"] == 1
    assert ran["derive"] == 1
    assert ran.get("network", 0) == 0
    assert ran["rule"] < 4 * 60, "rules of this element, its feeder and its supplier only"


def test_a_comment_derives_nothing() -> None:
    files = Files(lambda _: big(50))
    analysis = Analysis("/m/big.wye", files, "/m")
    file = files.get("/m/big.wye")
    before = analysis.ran["derive"]
    analysis.edited(*file.edit((4, 0), (4, 0), "// checked on site\n"))
    assert analysis.ran["derive"] == before


def test_a_change_of_the_source_reaches_everything_below() -> None:
    files = Files(lambda _: big(20))
    analysis = Analysis("/m/big.wye", files, "/m")
    file = files.get("/m/big.wye")
    before = analysis.ran["derive"]
    analysis.edited(*file.edit((1, 10), (1, 18), "480Y/277"))
    assert analysis.ran["derive"] - before >= 2
    assert analysis.view.state("P-3") != fresh({"/m/site.wye": big(20)}).view.state("P-3")
