"""What somebody who never saw the language types first: the first fix offered is the one to take. Invented lines."""

from __future__ import annotations

from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main
from wyeline_linter.findings import Finding
from wyeline_linter.fixing import apply_edits

BOARDS = "utility GRID 480Y/277 fault 20 kA\nswitchboard MSB 480Y/277 bus 400 A\nfeeder GRID -> MSB\n"


def findings(tmp_path: Path, text: str) -> list[Finding]:
    path = tmp_path / "site.wye"
    path.write_text(text, "utf-8")
    return Analysis(str(path), Files()).findings()


@pytest.mark.parametrize(
    ("line", "mended"),
    [
        ("panel LP 1 480Y/277 bus 100 A", "panel LP-1 480Y/277 bus 100 A"),
        ("feeder MSB -> LP-1 100", "feeder MSB -> LP-1 100 A"),
    ],
)
def test_a_bare_number_is_first_read_where_the_line_has_a_gap_for_it(tmp_path: Path, line: str, mended: str) -> None:
    text = "wye 1\n" + BOARDS + line + "\n"
    (found,) = [f for f in findings(tmp_path, text) if f.rule == "unreadable-line"]
    assert found.fixes[0].title == f"Write `{'LP-1' if line.startswith('panel') else '100 A'}`"
    made = apply_edits(text, found.fixes[0].edits)
    assert made.splitlines()[-1].split() == mended.split()
    assert "unreadable-line" not in [f.rule for f in findings(tmp_path, made)]


def test_the_first_board_of_a_model_is_fed_in_one_step(tmp_path: Path) -> None:
    text = "wye 1\nswitchboard MSB 480Y/277 bus 400 A\n"
    (found,) = [f for f in findings(tmp_path, text) if f.rule == "unfed-equipment"]
    assert "no source yet" in found.change
    left = findings(tmp_path, apply_edits(text, found.fixes[0].edits))
    assert "unfed-equipment" not in [f.rule for f in left]
    assert not [f.message for f in left if f.severity.word in ("error", "warning")]


def test_a_source_is_never_written_without_somebody_choosing_it(tmp_path: Path) -> None:
    path = tmp_path / "site.wye"
    path.write_text("wye 1\nswitchboard MSB 480Y/277 bus 400 A\n", "utf-8")
    main(["check", "--fix", "--unsafe", str(path)])
    assert "utility" not in path.read_text("utf-8")


def test_a_model_without_a_supply_is_not_large_enough(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "site.wye"
    path.write_text("wye 1\nswitchboard MSB 480Y/277\npanel LP-1 480Y/277\nfeeder MSB -> LP-1 100 A 3p 9 m\n", "utf-8")
    main(["size", str(path)])
    printed = capsys.readouterr().out
    assert "large enough" not in printed and "begin with what nothing feeds" in printed


def test_the_drop_at_what_nothing_feeds_is_unknown(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "site.wye"
    path.write_text("wye 1\npanel LP-1 480Y/277\n", "utf-8")
    main(["explain", str(path), "LP-1", "drop"])
    printed = capsys.readouterr().out
    assert "nothing feeds `LP-1`" in printed and "u = 0" not in printed


def test_two_feeders_to_a_transfer_switch_are_given_their_inputs(tmp_path: Path) -> None:
    """The generator's line says `emergency`, which reads as the class of its supply."""
    text = (
        "wye 1\nutility UTIL 480Y/277 fault 20 kA\ngenerator EG 480Y/277 100 kVA\n"
        "transfer ATS-E 100 A 4p\nfeeder EG -> ATS-E emergency 100 A 3p\nfeeder UTIL -> ATS-E 100 A 3p\n"
    )
    (found,) = [f for f in findings(tmp_path, text) if f.rule == "second-supply"]
    assert found.change == "Write which input each feeder reaches: `ATS-E.normal` or `ATS-E.emergency`."
    assert [fix.title for fix in found.fixes] == ["Make `UTIL` the normal and `EG` the emergency input of `ATS-E`"]
    made = apply_edits(text, found.fixes[0].edits)
    assert "feeder EG -> ATS-E.emergency " in made and "feeder UTIL -> ATS-E.normal " in made
    assert "second-supply" not in [f.rule for f in findings(tmp_path, made)]


def test_more_positions_than_a_device_has_poles_are_not_offered_again(tmp_path: Path) -> None:
    board = "panel LP 208Y/120 bus 100 A\n  2,4,6,8,10,12 spare\nfeeder U -> LP 100 A 3p\n"
    text = "wye 1\nutility U 208Y/120 fault 10 kA\n" + board
    (found,) = [f for f in findings(tmp_path, text) if f.rule == "multi-pole-straddle"]
    assert found.needed.startswith("neighbours such as 2,4,6,")
    assert not [fix for fix in found.fixes if "2,4,6" in fix.title]


def test_a_check_says_how_many_findings_its_option_sets_right(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "site.wye"
    path.write_text(
        "wye 1\nutility GRID 480Y/277 fault 20 kA\nswbd MSB 480Y/277, MLO\nfeeder GRID -> MSB 100 A 3p\n", "utf-8"
    )
    main(["check", str(path)])
    assert "1 of them is about writing alone: `wyeline check --fix` sets it right" in capsys.readouterr().out
    main(["check", "--fix", str(path)])
    main(["check", "--fix", str(path)])
    capsys.readouterr()
    main(["check", str(path)])
    assert "about writing alone" not in capsys.readouterr().out
    assert "switchboard MSB" in path.read_text("utf-8")


UNREAD = BOARDS + "gizmo G-1 480 3ph 5 kW\nfeeder MSB -> G-1 20 A 3p\nmotor P-1 460 3ph 5 hp, standby-of G-1\n"


def test_what_stands_in_a_line_that_cannot_be_read_is_not_missing_too(tmp_path: Path) -> None:
    found = findings(tmp_path, "wye 1\n" + UNREAD)
    assert [f.rule for f in found if f.severity.word == "error"] == ["unreadable-line"]
    assert "dangling-reference" in [
        f.rule for f in findings(tmp_path, "wye 1\n" + UNREAD.replace("gizmo G-1", "gizmo G-2"))
    ]


def test_a_half_written_line_takes_nothing_from_what_bears_its_name(tmp_path: Path) -> None:
    found = findings(tmp_path, "wye 1\nfee MSB\n" + BOARDS)
    assert [f.rule for f in found if f.severity.word == "error"] == ["unreadable-line"]


def test_edits_of_a_line_that_cannot_be_read_are_followed(tmp_path: Path) -> None:
    path = tmp_path / "site.wye"
    path.write_text("wye 1\n" + UNREAD, "utf-8")
    files = Files()
    analysis = Analysis(str(path), files)
    analysis.findings()
    for line in ("", "load G-1 480 3ph 5 kW, process", "gizmo G-1", "gizmo G-2", "motor G-1 480 3ph", "gizmo G-1 5 kW"):
        text = "wye 1\n" + UNREAD.replace("gizmo G-1 480 3ph 5 kW", line)
        path.write_text(text, "utf-8")
        analysis.edited(*(files.reload(str(path)) or ((), ())))
        fresh = Analysis(str(path), Files()).findings()
        assert [(f.rule, f.message) for f in analysis.findings()] == [(f.rule, f.message) for f in fresh], line


def test_a_device_too_small_for_a_transformer_is_offered_the_next_standard_size(tmp_path: Path) -> None:
    """37.5 kVA at 480 V is 78.1 A; 125 % of it is 97.7 A, and the next standard rating 100 A (NEC 240.6(A))."""
    text = (
        'wye 1\nproject "X"\n  basis us-2023\n'
        + BOARDS
        + "transformer TX-1 480 1ph -> 120/240 37.5 kVA, z 2.8 %, x/r 1.5\nfeeder MSB[AB] -> TX-1  60 A 2p  20 ft\n"
    )
    (found,) = [f for f in findings(tmp_path, text) if f.rule == "primary-protection-nuisance"]
    assert [fix.title for fix in found.fixes] == ["Make the device 100 A"]
    made = apply_edits(text, found.fixes[0].edits)
    assert "100 A 2p" in made
    assert "primary-protection-nuisance" not in [f.rule for f in findings(tmp_path, made)]


def test_a_device_of_three_poles_on_one_number_of_an_iec_board_is_offered_a_label(tmp_path: Path) -> None:
    """IEC boards are numbered by device and not by pole (common practice, no source)."""
    text = (
        'wye 1\nproject "X"\n  basis iec\nutility NET 400Y/230 fault 6 kA\npanel HV 400Y/230 bus 63 A\n'
        "  1  16 A 1p+N  1 kW lighting\n  2  16 A 3p  5 kW process\nfeeder NET -> HV 63 A 3p\n"
    )
    (found,) = [f for f in findings(tmp_path, text) if f.rule == "pole-count-wrong"]
    assert found.fixes[0].title.startswith("Call it `F2`")
    made = apply_edits(text, found.fixes[0].edits)
    assert "  F2  16 A 3p  5 kW process" in made
    assert "pole-count-wrong" not in [f.rule for f in findings(tmp_path, made)]
    us = findings(tmp_path, text.replace("basis iec", "basis us-2023"))
    assert not [fix for f in us for fix in f.fixes if fix.title.startswith("Call it")]


def test_what_a_line_lacks_is_not_told_while_the_line_cannot_be_read(tmp_path: Path) -> None:
    """What could not be read may say it; the gap is told as soon as the line is read."""
    text = (
        'wye 1\nproject "X"\n  basis us-2023, revision "A"\nutility GRID 208Y/120 fault 22q\n'
        "panel LP-1 208Y/120 bus 225 A, rated 25 kA\n  1  20 A 1p  1 kW process §\n  3  20 A 1p  1 kW process\n"
        "feeder GRID -> LP-1 225 A 3p §\n"
    )
    path = tmp_path / "site.wye"
    for was, now, told in (("22q", "22 kA", "fault-inputs-missing"), ("3p §", "3p", "impedance-missing")):
        for written, expected in ((text, False), (text.replace(was, now), True)):
            path.write_text(written, "utf-8")
            rules = {f.rule for f in Analysis(str(path), Files()).all_findings()}
            assert (told in rules) == expected, (was, told)
    path.write_text(text, "utf-8")
    vague = [f.position for f in Analysis(str(path), Files()).findings() if f.rule == "vague-directory-entry"]
    assert vague == ["3"]


def test_a_floor_area_that_cannot_be_read_is_not_called_missing_too(tmp_path: Path) -> None:
    text = (
        'wye 1\nproject "H"\n  basis us-2023, revision "A"\nutility S 120/240 fault 10 kA\n'
        "panel H 120/240 bus 200 A, main 200 A\n  dwelling standard, floor-area 1500 §\nfeeder S -> H 200 A 2p\n"
    )
    assert "dwelling-area-missing" not in {f.rule for f in findings(tmp_path, text)}
    assert "dwelling-area-missing" in {f.rule for f in findings(tmp_path, text.replace(", floor-area 1500 §", ""))}


def test_a_revision_is_written_on_a_line_of_its_own(tmp_path: Path) -> None:
    text = 'wye 1\nproject "X"\n  basis us-2023\n  ambient 30 degC\n' + BOARDS
    path = tmp_path / "site.wye"
    path.write_text(text, "utf-8")
    (found,) = [f for f in Analysis(str(path), Files()).all_findings() if f.rule == "issue-data-missing"]
    assert '  ambient 30 degC\n  revision "A"\n' in apply_edits(text, found.fixes[0].edits)
