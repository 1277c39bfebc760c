"""Changes are told as what they are: renamed, moved, re-fed; and undoing all of them gives the older version back."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.linking import Model
from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.figures import model_figures
from wyeline_linter.review.comparison import Comparison, compare_versions
from wyeline_linter.review.consequences import Kind as Consequence
from wyeline_linter.review.documents import Piece, Version
from wyeline_linter.review.physical import Kind as Change
from wyeline_linter.review.physical import changes
from wyeline_linter.review.renames import renames
from wyeline_linter.review.snapshots import take

SITE = """wye 1
project "Mill"
  basis us-2023
// the service
utility     UTIL  480Y/277        fault 30 kA, x/r 8
switchboard MSB   480Y/277        bus 1200 A
feeder UTIL -> MSB  1200 A 3p  // the main
panel       LP-1  480Y/277        bus 225 A
  1  20 A 1p  2 kVA lighting  "Hall"
  3  20 A 1p  2 kVA lighting  "Yard"
feeder MSB -> LP-1  225 A 3p
mcc         MCC-1 480 3ph         bus 600 A
feeder F-7: MSB -> MCC-1  400 A 3p
motor       P-1   460 3ph         25 hp, pf 0.85, eff 93 %
motor       P-2   460 3ph         25 hp, pf 0.85, eff 93 %, standby-of P-1
feeder MCC-1 -> P-1  70 A 3p
feeder MCC-1 -> P-2  70 A 3p
scenario "Night"
  open MSB -> LP-1
"""


def version(text: str, **files: str) -> Version:
    texts = {"/m/site.wye": text, **{f"/m/{name}.wye": words for name, words in files.items()}}

    def read(path: str) -> str:
        if path not in texts:
            raise SourceError(path, "there is no such file")
        return texts[path]

    return Version("/m/site.wye", read, "/m")


def compared(old: str, new: str, **files: str) -> Comparison:
    return compare_versions(version(old), version(new, **files))


def told(found: Comparison) -> list[tuple[Change, str]]:
    return [(c.kind, c.words) for c in found.changes]


@pytest.mark.parametrize(
    ("old", "new", "change"),
    [
        ("bus 600 A", "bus 800 A", (Change.RE_RATED, "MCC-1 had its bus changed from 600 to 800 A")),
        ("  1  20 A 1p  2 kVA", "  5  20 A 1p  2 kVA", (Change.MOVED, "circuit 1 of LP-1 moved to 5")),
        (
            "feeder MCC-1 -> P-2",
            "feeder MSB -> P-2",
            (Change.RE_FED, "P-2 is fed from MSB instead of MCC-1"),
        ),
        (
            "F-7: MSB -> MCC-1",
            "F-7: UTIL -> MCC-1",
            (Change.RE_FED, "MCC-1 is fed from UTIL instead of MSB"),
        ),
        ("F-7:", "F-8:", (Change.RENAMED, "label F-7 is now called F-8")),
        ("P-2", "P-22", (Change.RENAMED, "motor P-2 is now called P-22")),
        ("480 3ph         bus", "208 3ph         bus", (Change.CHANGED, "MCC-1 went from 480 3ph to 208 3ph")),
        ("standby-of P-1", "future", (Change.CHANGED, "P-2 no longer states standby-of P-1 and now has future")),
        ("  open MSB -> LP-1", "  off UTIL", (Change.CHANGED, "Night went from actions open MSB -> LP-1 to off UTIL")),
        ("us-2023", "iec", (Change.CHANGED, "project had its basis changed from us-2023 to iec")),
    ],
)
def test_each_change_is_told_as_what_it_is(old: str, new: str, change: tuple[Change, str]) -> None:
    found = compared(SITE, SITE.replace(old, new))
    assert told(found) == [change]


@pytest.mark.parametrize(
    "new",
    [
        SITE.replace("480Y/277        bus", "480Y/277   bus"),
        SITE.replace("// the service", "// the service of 1962"),
        SITE.replace("  // the main", ""),
        SITE.replace("\n", "\r\n"),
        "\n".join(["wye 1", *SITE.splitlines()[3:], *SITE.splitlines()[1:3]]) + "\n",
    ],
    ids=["columns", "comment", "comment behind", "line ends", "order"],
)
def test_what_means_the_same_is_no_change(new: str) -> None:
    found = compared(SITE, new)
    assert not found.changes and not found.worse and not found.better and not found.moved


def test_statements_that_move_to_another_file_did_not_change() -> None:
    lines = SITE.splitlines()
    found = compared(SITE, "\n".join([*lines[:7], 'include "rest.wye"', *lines[17:]]), rest="\n".join(lines[7:17]))
    assert not found.changes and not found.worse


def test_two_that_fit_alike_are_not_taken_for_renamed() -> None:
    new = SITE.replace("motor       P-1 ", "motor       Q-1 ").replace("standby-of P-1", "standby-of Q-1")
    new = new.replace("MCC-1 -> P-1", "MCC-1 -> Q-1")
    twins = SITE.replace(", standby-of P-1", "")
    gone = "\n".join(line for line in twins.splitlines() if "P-1" not in line and "P-2" not in line) + "\n"
    motor = "motor       {0}   460 3ph         25 hp, pf 0.85, eff 93 %\nfeeder MCC-1 -> {0}  70 A 3p\n"
    came = gone + motor.format("Q-1") + motor.format("Q-2")
    assert [r.new for r in renames(version(SITE), version(new))] == ["Q-1"]
    assert not renames(version(twins), version(came))


def test_a_chain_of_renamed_boards_is_followed() -> None:
    new = SITE
    for old, other in (("MSB", "HSB"), ("MCC-1", "MCC-A"), ("LP-1", "L1-A"), ("P-1", "PU-1"), ("P-2", "PU-2")):
        new = new.replace(other, "").replace(old, other)
    found = compared(SITE, new)
    assert {kind for kind, _ in told(found)} == {Change.RENAMED}
    assert not found.worse and not found.better and not found.moved


LINES = [
    "panel       LP-1  208Y/120        bus 100 A",
    '  1  20 A 1p  9 kVA lighting  "Hall"',
    '  3,5  20 A 2p  2 kVA heating  "Heater"',
    "panel       LP-9  480Y/277        bus 225 A",
    "feeder MSB -> LP-9  225 A 3p",
    "feeder UTIL -> MCC-1  400 A 3p",
    "motor       P-1   460 3ph         50 hp",
    "feeder MSB -> LP-1  100 A 3p",
    "type panel LAB  bus 400 A",
    "  basis iec",
    'scenario "Day"',
    "what is this",
    "",
    "// a comment",
]


@pytest.mark.parametrize("place", ["on its board", "on another board", "on another board, with larger wires"])
def test_a_circuit_takes_its_finding_along_to_another_place(place: str) -> None:
    """Wires of #14 behind 20 A (NEC 240.4(D)) were as small before: only wires that do not move with it are news."""
    row = '20 A 1p  2 kVA lighting  "Hall"  2#14 + G #14 Cu  10 m  in 1/2 inch EMT\n'
    other = 'feeder MSB -> LP-2  225 A 3p\npanel  LP-2  480Y/277  bus 225 A\n  6  20 A 1p  2 kVA lighting  "Attic"\n'
    text = SITE.replace('20 A 1p  2 kVA lighting  "Hall"\n', row) + other
    new = text.replace("  1  " + row, "  5  " + row)
    if place != "on its board":
        moved = row.replace("#14", "#12") if "larger" in place else row
        new = text.replace("  1  " + row, "") + "  2  " + moved
    found = compared(text, new)
    assert [kind for kind, _ in told(found)] == [Change.MOVED]
    about = [c.kind for c in (*found.worse, *found.better) if "small-wire-limit" in c.headline]
    assert about == ([Consequence.MENDED] if "larger" in place else [])


@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(st.tuples(st.integers(1, 18), st.sampled_from(LINES), st.booleans()), min_size=1, max_size=6))
def test_undoing_every_change_gives_the_older_version_back(edits: list[tuple[int, str, bool]]) -> None:
    lines = SITE.splitlines()
    for at, line, instead in edits:
        lines[at : at + instead] = [line]
    old, new = version(SITE), version("\n".join(lines) + "\n")
    taken: dict[Piece, Version] = {piece: old for change in changes(old, new) for piece in change.pieces}
    back = take(new.root, new.reader(taken), new.workspace)
    assert not changes(old, Version(new.root, new.reader(taken), new.workspace))
    figures = model_figures(back.analysis.view)
    expected = model_figures(take(old.root, old.reader(), old.workspace).analysis.view)
    assert figures["equipment"].keys() == expected["equipment"].keys()
    for part in ("equipment", "feeders"):
        for name, entry in expected[part].items():
            assert figures[part][name]["unknown"] == entry["unknown"], name
    assert isinstance(back.analysis.model, Model)


def test_a_version_is_read_through_its_own_reader_only(tmp_path: Path) -> None:
    path = tmp_path / "site.wye"
    path.write_text("utility  U  480Y/277\n", encoding="utf-8")
    made = Version(str(path), lambda _: SITE, str(tmp_path))
    assert set(made.model.equipment) >= {"MSB", "LP-1"} and "U" not in made.model.equipment
    assert Files(made.reader()).get(str(path)).text == SITE
