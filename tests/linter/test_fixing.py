"""What `--fix --unsafe` does by itself, and what it leaves to somebody who knows the building."""

from __future__ import annotations

import re
from functools import partial
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files, read_text
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.findings import Fix, Safety
from wyeline_linter.fixing import apply_edits, fix_model, harmless

SITE = """wye 1
project "Weir"
  basis us-2023  revision "A"
utility QUAY 480Y/277  fault 30 kA, x/r 7
feeder QUAY -> MSB  800 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu  12 m
switchboard MSB 480Y/277  bus 800 A, main 800 A, rated 65 kA
"""
PANEL = """panel LP-1 208Y/120 bus 225 A, main 100 A
  1  20 A 1p  900 VA lighting  "Hall"
"""
LINK = "feeder MSB -> LP-1 100 A 3p 3#1 + N #1 + G #6 Cu 12 m\n"
OTHER = """panel DP 480Y/277 bus 400 A, main 400 A
feeder MSB -> DP 400 A 3p 3x600kcmil + N 600kcmil + G #3 Cu 9 m
"""
MOTORS = """motor M-1 460 3ph  5 hp
motor M-2 460 3ph  5 hp
feeder MSB -> M-1  30 A 3p  3#10 + G #10 Cu  9 m
feeder M-1 -> M-2  30 A 3p  3#10 + G #10 Cu  9 m
"""


def mended(tmp_path: Path, text: str) -> str:
    path = tmp_path / "site.wye"
    path.write_text(text, "utf-8")
    main(["check", "--fix", "--unsafe", str(path)])
    return path.read_text("utf-8")


def test_a_transformer_between_two_is_put_in(tmp_path: Path) -> None:
    made = mended(tmp_path, SITE + PANEL + LINK)
    assert "-> LP-1" in made and "transformer" in made
    assert "MSB " in made.partition("transformer")[2], "it hangs on the board that was written"


@pytest.mark.parametrize("wrong", [PANEL.replace("208Y/120", "480Y/277"), MOTORS])
def test_what_feeds_what_is_never_guessed(tmp_path: Path, capsys: pytest.CaptureFixture[str], wrong: str) -> None:
    """A board that nothing feeds and that several could feed; a load fed from a load."""
    feeders = re.compile(r"feeder (\S+) +-> (\S+)")
    text = SITE + OTHER + wrong
    made = mended(tmp_path, text)
    if wrong is MOTORS:  # turning the feeder to the board is a fix that may be wanted; the boards are only proposals
        assert "1 finding left to you, because the fixes feed something from" in capsys.readouterr().err
    assert feeders.findall(made) == feeders.findall(text)


@pytest.mark.parametrize(("written", "kept"), [("0.5 A 1p", "1p"), ("99999 mA 1p", "1p"), ("99999 A 1p", "1p")])
def test_another_rating_keeps_the_poles(tmp_path: Path, written: str, kept: str) -> None:
    row = f'  1  {written}  900 VA lighting  "Hall"  2#12 + G #12 Cu  9 m  in 1/2 inch EMT\n'
    made = mended(tmp_path, SITE + "panel LP-1 480Y/277 bus 225 A, main 100 A\n" + row + LINK)
    (line,) = [one for one in made.splitlines() if "Hall" in one]
    assert written not in line and f" A {kept} " in line


def test_a_fix_that_loses_the_device_of_a_feeder_is_left(tmp_path: Path) -> None:
    """Nobody knows the rating of the converter that is put between, so the line to it would stand without a device."""
    shore = (
        "system SHIP 480Y/277, frequency 50 Hz\npanel SP-1 SHIP  bus 100 A, main 100 A\nfeeder MSB -> SP-1 100 A 3p\n"
    )
    made = mended(tmp_path, SITE + shore)
    assert "MSB -> SP-1 100 A 3p" in made


@pytest.mark.parametrize(
    "again",
    [
        LINK.replace("MSB", "QUAY").replace("208Y", "480Y"),
        LINK.replace("MSB", "QUAY").replace("12 m", "12  m   // the second sheet"),
        LINK.replace("MSB", "QUAY").replace("12 m", "14 m"),
        LINK.replace("feeder MSB", "feeder W-2: QUAY"),
    ],
    ids=["the same", "other columns", "another length", "with a label"],
)
def test_a_feeder_written_twice_is_asked_about_and_never_opened(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], again: str
) -> None:
    once = LINK.replace("MSB", "QUAY")
    text = SITE + PANEL.replace("208Y/120", "480Y/277") + once
    made = mended(tmp_path, text + again)
    assert "normally-open" not in made
    assert "1 finding left to you" in capsys.readouterr().err
    assert once in made and again.split("->")[1] in made, "nothing is deleted that may be meant"
    main(["check", str(tmp_path / "site.wye"), "--quiet"])
    assert ("error feeder-label-missing" if again.split() == once.split() else "") in capsys.readouterr().out


def test_a_feeder_written_twice_can_be_deleted(tmp_path: Path) -> None:
    path = tmp_path / "site.wye"
    path.write_text(SITE + OTHER + OTHER.splitlines()[1] + "  // again\n", "utf-8")
    (found,) = (f for f in Analysis(str(path), Files(), str(tmp_path)).findings() if f.rule == "feeder-label-missing")
    assert [f.title for f in found.fixes] == ["Delete it: it says what the first one says", "Label it `F-2`"]
    left = apply_edits(path.read_text("utf-8"), found.fixes[0].edits)
    assert left == SITE + OTHER, "nor does an empty line stay"


PANELS = """panel       HP-1    480Y/277            bus 225 A, main 100 A
panel       HP-2    480Y/277            bus 225 A, main 100 A
"""
FED = "feeder MSB         -> HP-1    100 A 3p  // level 1\n"
ROUND = "feeder HP-1        -> HP-1    100 A 3p  // level 1\n"
NEXT = "feeder MSB         -> HP-2    100 A 3p\n"


@pytest.mark.parametrize(
    ("text", "titles", "left"),
    [
        (PANELS + ROUND + NEXT, ["Feed `HP-1` from `MSB` instead", "Feed `HP-1` from `HP-2` instead"], FED + NEXT),
        (PANELS + FED + ROUND + NEXT, [], FED + NEXT),
        (PANELS + FED + NEXT + ROUND, [], FED + NEXT),
        (PANELS + FED + NEXT + ROUND.rstrip(), [], FED + NEXT),
    ],
    ids=["nothing else feeds it", "another one feeds it", "at the end", "without a line break"],
)
def test_a_feeder_to_itself_goes_to_another_board_or_out(
    tmp_path: Path, text: str, titles: list[str], left: str
) -> None:
    path = tmp_path / "site.wye"
    path.write_text(SITE + text, "utf-8")
    (found,) = (f for f in Analysis(str(path), Files(), str(tmp_path)).findings() if f.rule == "feeder-to-itself")
    assert [f.title for f in found.fixes] == [*titles, "Delete this feeder"]
    made = apply_edits(SITE + text, found.fixes[0].edits)
    assert made.rstrip("\n") == (SITE + PANELS + left).rstrip("\n")
    assert apply_edits(SITE + text, found.fixes[-1].edits).count("feeder HP-1") == 0


@pytest.mark.parametrize("device", ["  100 A 3p", ""])
@pytest.mark.parametrize("fed", [FED, ""])
def test_where_a_feeder_to_itself_goes_is_left_to_somebody(tmp_path: Path, fed: str, device: str) -> None:
    text = SITE + PANELS + fed + NEXT + f"feeder HP-1 -> HP-1{device}\n"
    assert mended(tmp_path, text) == text


def _without(bad: set[str], fixes: list[Fix]) -> bool:
    return not any(fix.title in bad for fix in fixes)


def test_one_fix_that_makes_errors_does_not_keep_the_others_away() -> None:
    fixes = [Fix(str(i), (), Safety.SAFE) for i in range(20)]
    for bad in ({"3"}, {"0", "19"}, {"7", "8", "9"}, {str(i) for i in range(20)}):
        kept = harmless(fixes, partial(_without, bad), iter(range(200)))
        assert sorted(fix.title for fix in kept) == sorted(fix.title for fix in fixes if fix.title not in bad)


def test_what_a_line_is_that_nobody_could_read_is_not_written_unasked(tmp_path: Path) -> None:
    """A plant that feeds must not become a load because its first word is none of the language."""
    path = tmp_path / "site.wye"
    text = "wye 1\nutility NET 400Y/230 fault 6 kA\nSolaranlage WR-1 400Y/230 12 kVA\n"
    path.write_text(text, "utf-8")
    outcome = fix_model(str(path), read_text, frozenset({Safety.SAFE, Safety.LOOK}), str(tmp_path))
    assert "Solaranlage" in outcome.texts.get(str(path), text) and outcome.left_to_choose
