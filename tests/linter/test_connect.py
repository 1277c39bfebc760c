"""``wyeline connect`` on the broken examples: it names the cause, and ``--apply 1`` mends what an edit can mend."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.cli import main

BROKEN = Path(__file__).parents[2] / "grammar" / "examples" / "broken"
CASES = {
    "already-fed": ("GEN-1", "LP-1", "second-supply"),
    "alternating-or-direct": ("LP-1", "TEL-1", "frequency-or-dc-mismatch"),
    "angle-120-208-not-120-240": ("DP", "WET-1", "two-phase-legs-not-split"),
    "device-poles": ("LP-1", "HTR-1", "one-pole-on-two-live-wires"),
    "frequency": ("MSB", "SP-1", "frequency-or-dc-mismatch"),
    "leg-missing": ("LP-1", "P-1", "missing-leg"),
    "loop": ("DP-3", "DP-1", "supply-loop"),
    "no-neutral": ("MSB", "LL-1", "neutral-absent-upstream"),
    "phase-count": ("TX-1", "LP-1", "phase-count-mismatch"),
    "position-on-another-leg": ("DP", "APT-1", "position-leg-conflict"),
    "position-taken": ("LP-1", "P-1", "position-occupied"),
    "record-incomplete": ("TX-1", "LP-1", "upstream-system-unknown"),
    "slash-rating": ("MSB", "P-1", "slash-rating-misused"),
    "voltage-magnitude": ("MSB", "LP-1", "leg-voltage-mismatch"),
    "windings-do-not-match": ("MSB", "TX-1", "winding-voltage-misfit"),
}


def rules_found(path: Path) -> list[str]:
    return sorted(
        f.rule for f in Analysis(str(path), Files(), str(path.parent)).findings() if f.severity.word != "advice"
    )


def errors_found(path: Path) -> list[str]:
    return [f.rule for f in Analysis(str(path), Files(), str(path.parent)).findings() if f.severity.word == "error"]


def test_every_broken_example_has_its_case() -> None:
    assert {p.stem for p in BROKEN.glob("*.wye")} - {"slips"} == set(CASES)


@pytest.mark.parametrize("name", CASES)
def test_the_cause_is_named_and_the_first_solution_mends_it(
    name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    source, target, rule = CASES[name]
    path = tmp_path / f"{name}.wye"
    shutil.copy(BROKEN / f"{name}.wye", path)
    before = path.read_text(encoding="utf-8")
    assert rule in rules_found(path)
    assert main(["connect", str(path), source, target]) == 1
    printed = capsys.readouterr().out
    if name == "record-incomplete":
        assert "nobody can tell yet" in printed
        assert "How many live wires arrive?" in printed
    else:
        assert rule in printed
    assert "\n1. " in printed
    assert path.read_text(encoding="utf-8") == before, "without --apply nothing is written"
    assert main(["connect", str(path), source, target, "--apply", "1"]) == 0
    assert rule not in rules_found(path)
    assert errors_found(path) == []
    assert path.read_text(encoding="utf-8") != before


SOUND = """wye 1
utility     GRID    208Y/120            fault 12 kA, x/r 3
panel       DP      208Y/120            bus 225 A, main 225 A, spaces 12
panel       APT-1   208Y/120 1ph        bus 125 A, main 60 A
load        HTR     208 1ph             2 kW, heating
feeder GRID        -> DP
feeder DP[AB]      -> HTR     15 A 2p at 1,3
"""


@pytest.fixture
def sound(tmp_path: Path) -> Path:
    path = tmp_path / "sound.wye"
    path.write_text(SOUND, encoding="utf-8", newline="\r\n")
    return path


def test_what_is_connected_is_shown_with_its_legs(sound: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["connect", str(sound), "DP", "HTR"]) == 0
    printed = capsys.readouterr().out
    assert "DP -> HTR can be connected: it is." in printed
    assert "A B of `DP`" in printed
    assert "Design aid" in printed


def test_a_missing_feeder_is_offered_and_written_with_the_files_own_line_ends(
    sound: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["connect", str(sound), "DP", "APT-1"]) == 0
    assert "legs:    A B N | B C N | C A N" in capsys.readouterr().out
    assert main(["connect", str(sound), "DP", "APT-1", "--apply", "1"]) == 0
    text = sound.read_bytes().decode("utf-8")
    # The heater sits on A and B, so B C and C A are lighter; position 4 and 6 are the first free ones on B and C.
    assert "feeder DP[BC]      -> APT-1   60 A 2p at 4,6" in text
    assert text.count("\r\n") == text.count("\n")
    assert errors_found(sound) == []


def test_usage_says_what_is_wrong(sound: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["connect", str(sound), "DP", "APT-2"]) == 2
    assert "nearest: APT-1" in capsys.readouterr().err
    assert main(["connect", str(sound), "DP", "DP"]) == 2
    assert main(["connect", str(sound), "DP", "APT-1", "--apply", "9"]) == 2
    assert main(["connect", str(sound / "gone.wye"), "DP", "APT-1"]) == 2
    capsys.readouterr()
    assert main(["connect", str(sound), "HTR", "DP"]) == 1
    assert "nothing can be fed from it" in capsys.readouterr().out
    assert main(["connect", str(sound), "DP", "GRID"]) == 1
    assert "name `GRID` first" in capsys.readouterr().out


def test_a_board_without_a_second_source_is_offered_last(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "site.wye"
    path.write_text(
        'wye 1\nproject "Ferry slip"\n  basis us-2023\n  revision "A"\nutility PIER 480Y/277  fault 14 kA, x/r 4\n'
        "switchboard MSB 480Y/277  bus 400 A, main 400 A\nfeeder PIER -> MSB\n"
        "transformer TX-9 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2\nfeeder MSB -> TX-9  100 A 3p\n"
        "generator GEN 208Y/120  100 kVA\ntransfer ATS-1 200 A\nfeeder TX-9 -> ATS-1.normal  200 A 3p\n"
        "feeder GEN -> ATS-1.emergency  200 A 3p\npanel EP-1 480Y/277  bus 125 A, main 100 A\n",
        "utf-8",
    )
    main(["connect", str(path), "ATS-1", "EP-1"])
    offered = [line for line in capsys.readouterr().out.splitlines() if line[:2] in ("1.", "2.", "3.")]
    assert "208 3ph to 480Y/277" in offered[0]
    assert "from `MSB`" in offered[-1]


def test_a_voltage_that_is_not_read_is_not_taken_for_none(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """`230` alone names no system, so nothing may be ticked for the board, and no legs be offered."""
    path = tmp_path / "site.wye"
    path.write_text(
        'project "Weir"\n  basis iec\nutility NET 400Y/230  fault 10 kA, x/r 4, earthing TN-S\n'
        "feeder NET -> HV  400 A 3p\nswitchboard HV 400Y/230  bus 400 A\n"
        "panel DB-1 230 bus 63 A\nfeeder HV -> DB-1  63 A 1p\n",
        "utf-8",
    )
    main(["connect", str(path), "HV", "DB-1"])
    told = capsys.readouterr().out
    assert "nobody can tell yet" in told
    assert "the statement of `DB-1` is not read to its end" in told
    assert "400Y/230 " in told and "208Y/120" not in told
    assert "[x]" not in told


WAITING = """project "Pump hall"
  basis us-2023
  frequency 60 Hz, ambient 30 degC, revision "A"
utility     GRID    480Y/277            fault 14 kA, fault-min 9 kA, x/r 4
transfer    ATS-1   225 A 4p, rated 22 kA, transition open
panel       EP-1    208Y/120            bus 225 A, main 225 A, rated 22 kA, lug-temp 75 degC
transformer TX-9    480 3ph -> 208Y/120 75 kVA, z 4 %, x/r 3
feeder GRID -> ATS-1.normal  225 A 3p 10 m
feeder TX-9 -> EP-1  225 A 3p  10 m
"""


def test_a_transformer_that_waits_before_the_board_is_what_gets_fed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Its device: 75 kVA at 480 V three-phase are 90.2 A, 125 % of that 112.8 A, and the next standard rating of
    NEC 240.6(A) is 125 A."""
    path = tmp_path / "site.wye"
    path.write_text(WAITING, encoding="utf-8")
    call = ["connect", str(path), "ATS-1", "EP-1"]
    assert main(call) == 1
    out = capsys.readouterr().out
    assert "leg-voltage-mismatch" in out
    assert "there:   `TX-9 -> EP-1`, which brings nothing: nothing feeds `TX-9`" in out
    assert "1. Feed `TX-9` from `ATS-1`: `TX-9` leads to `EP-1` already" in out
    assert main([*call, "--apply", "1"]) == 0
    assert "ATS-1       -> TX-9    125 A 3p" in path.read_text("utf-8")
    capsys.readouterr()
    main(call)
    assert "there:   a way from `ATS-1` to `EP-1`: `ATS-1 -> TX-9`, `TX-9 -> EP-1`" in capsys.readouterr().out


def test_a_feeder_from_what_nothing_feeds_may_give_way_too(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "site.wye"
    path.write_text(WAITING.replace("208Y/120", "480Y/277"), encoding="utf-8")
    main(["connect", str(path), "ATS-1", "EP-1"])
    out = capsys.readouterr().out
    assert "can be connected; no feeder does it yet" in out
    assert "1. Feed `TX-9` from `ATS-1`: `TX-9` leads to `EP-1` already" in out
    assert "2. Feed `EP-1` from `ATS-1` instead of `TX-9`" in out
    main(["connect", str(path), "ATS-1", "EP-1", "--apply", "2"])
    assert "TX-9 -> EP-1" not in path.read_text("utf-8")
    capsys.readouterr()
    assert main(["connect", str(path), "ATS-1", "EP-1"]) == 0
    assert "ATS-1 -> EP-1 can be connected: it is." in capsys.readouterr().out


def test_a_chain_that_waits_is_fed_at_its_head_and_a_circle_of_it_hangs_nothing(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "site.wye"
    chain = WAITING.replace("TX-9 -> EP-1", "TX-9 -> DP-9") + (
        "panel DP-9 208Y/120  bus 225 A, main 225 A, rated 22 kA\nfeeder DP-9 -> EP-1  100 A 3p  5 m\n"
    )
    path.write_text(chain, encoding="utf-8")
    main(["connect", str(path), "ATS-1", "EP-1"])
    assert "1. Feed `TX-9` from `ATS-1`: `TX-9` leads to `EP-1` already" in capsys.readouterr().out
    path.write_text(chain + "feeder EP-1 -> TX-9  100 A 3p\n", encoding="utf-8")
    assert main(["connect", str(path), "ATS-1", "EP-1"]) == 1


TWO_SOURCES = """wye 1
utility     GRID    208Y/120            fault 12 kA, x/r 3
generator   GEN-1   208Y/120            60 kVA, pf 0.8
utility     YARD    480Y/277            fault 12 kA, x/r 3
transfer    ATS-1                       150 A
panel       LP-1    208Y/120            bus 225 A
panel       LP-2    208Y/120            bus 225 A
feeder GRID        -> LP-1    150 A 3p
feeder GRID        -> ATS-1.normal  150 A 3p
feeder GEN-1       -> ATS-1.emergency  150 A 3p
feeder ATS-1       -> LP-2    150 A 3p
"""


def test_a_board_that_is_fed_takes_a_second_source_through_a_transfer_switch(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Two sources of one board are kept apart, as `already-fed.wye` says; common practice, no source."""
    path = tmp_path / "site.wye"
    path.write_text(TWO_SOURCES, encoding="utf-8")
    assert main(["connect", str(path), "GEN-1", "LP-1"]) == 1
    out = capsys.readouterr().out
    assert "`GRID -> LP-1`, `GEN-1`" in out
    assert "1. Feed `LP-1` from `GEN-1` instead of `GRID`" in out
    assert "2. Put a transfer switch `ATS-2` between `GRID`, `GEN-1` and `LP-1`" in out
    assert "device, wires and length of `GEN-1 -> ATS-2.emergency`" in out
    assert main(["connect", str(path), "GEN-1", "LP-1", "--apply", "2"]) == 0
    assert errors_found(path) == []
    text = path.read_text("utf-8")
    for line in ("feeder GRID        -> ATS-2.normal", "feeder GEN-1       -> ATS-2.emergency", "-> LP-1  // add"):
        assert line in text


def test_no_transfer_switch_is_offered_between_a_source_and_itself(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "site.wye"
    path.write_text(TWO_SOURCES, encoding="utf-8")
    assert main(["connect", str(path), "GRID", "LP-2"]) == 1
    out = capsys.readouterr().out
    assert "instead of `ATS-1`" in out
    assert "Put a transfer switch" not in out


def test_what_feeds_already_is_named_where_another_voltage_is_to_feed_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "site.wye"
    path.write_text(TWO_SOURCES, encoding="utf-8")
    assert main(["connect", str(path), "YARD", "LP-1"]) == 1
    assert "there:   `GRID -> LP-1`, which feeds `LP-1` already" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("end", "named"),
    [("ATS-1.normal", "`GRID -> ATS-1.normal` feeds"), ("ATS-1", "`GRID -> ATS-1.normal` and `GEN-1 ->")],
)
def test_a_port_that_is_taken_is_no_place_for_a_feeder(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], end: str, named: str
) -> None:
    path = tmp_path / "site.wye"
    path.write_text(TWO_SOURCES.replace("YARD    480Y/277", "YARD    208Y/120"), encoding="utf-8")
    assert main(["connect", str(path), "YARD", end]) == 1
    out = capsys.readouterr().out
    assert "voltage and legs fit, but the place is taken" in out
    assert "can be connected" not in out
    assert "Nothing in this model connects them" not in out
    assert named in " ".join(out.split())
