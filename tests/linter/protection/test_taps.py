"""Every condition of a claimed tap is checked by itself; what is not written is a gap, not a failure."""

from __future__ import annotations

import pytest
from line_models import US, model

from wyeline_linter.claims import CLAIMS, EXCUSES
from wyeline_linter.findings import Severity
from wyeline_linter.protection.purposes import TAPS

BEHIND = US + (
    "transformer TX-1 480 3ph -> 208Y/120  75 kVA, z 4.2 %, x/r 1.8, lug-temp 75 degC\n"
    "feeder MSB -> TX-1  125 A 3p  3#1 + G #6 Cu THWN-2  20 m  in 1-1/2 inch EMT\n"
    "panel LP-2 208Y/120  bus 225 A, main MAIN, lug-temp 75 degC\n"
    "feeder TX-1 -> LP-2  WIRES\n  claim CLAIM\n"
)


def judged(main: str, wires: str, claim: str) -> list[tuple[str, Severity, str]]:
    text = BEHIND.replace("MAIN", main).replace("WIRES", wires).replace("CLAIM", claim)
    return [(f.rule, f.severity, f.found) for f in model(text).findings() if f.subject == "TX-1 -> LP-2"]


@pytest.mark.parametrize(
    ("main", "wires", "claim", "fails"),
    [
        ("100 A", "3#2 + N #2 + G #8 Cu THWN-2  2.4 m  in 2 inch EMT", "tap-10ft", None),
        ("100 A", "3#2 + N #2 + G #8 Cu THWN-2  3.2 m  in 2 inch EMT", "tap-10ft", "10.5 ft long, limit 10 ft"),
        ("125 A", "3#2 + N #2 + G #8 Cu THWN-2  2.4 m  in 2 inch EMT", "tap-10ft", "less than the 125 A device"),
        # A third of 125 A x 480/208 is 96.2 A: 3 AWG carries 100 A at 75 degC, 4 AWG 85 A.
        ("100 A", "3#3 + N #3 + G #8 Cu THWN-2  7 m  in 2 inch EMT", "tap-25ft", None),
        ("80 A", "3#4 + N #4 + G #8 Cu THWN-2  7 m  in 2 inch EMT", "tap-25ft", "less than 96.15 A"),
        ("100 A", "3#3 + N #3 + G #8 Cu THWN-2  9 m  in 2 inch EMT", "tap-25ft", "29.5 ft long, limit 25 ft"),
        ("100 A", "3#3 + N #3 + G #8 Cu THWN-2  60 m  in 2 inch EMT", "tap-outside", "not marked `outdoor`"),
        ("100 A", "3#3 + N #3 + G #8 Cu THWN-2  60 m  in 2 inch EMT, outdoor", "tap-outside", None),
        ("lugs", "3#3 + N #3 + G #8 Cu THWN-2  7 m  in 2 inch EMT", "tap-25ft", "does not end in a device"),
    ],
)
def test_conditions_of_secondary_wires(main: str, wires: str, claim: str, fails: str | None) -> None:
    found = judged(main, wires, claim)
    if fails is None:
        assert found == []
    else:
        assert [(rule, severity) for rule, severity, _ in found] == [("secondary-run-too-long", Severity.ERROR)]
        assert fails in found[0][2]


@pytest.mark.parametrize("wires", ["3#3 + N #3 + G #8 Cu THWN-2  in 2 inch EMT", "3#3 + N #3 + G #8 Cu THWN-2  2 m"])
def test_what_is_not_written_is_a_gap(wires: str) -> None:
    found = judged("100 A", wires, "tap-10ft")
    assert ("secondary-run-too-long", Severity.GAP) in [(rule, severity) for rule, severity, _ in found]
    assert not any(severity is Severity.ERROR for _, severity, _ in found)


def test_without_a_claim_the_one_that_holds_is_offered() -> None:
    text = BEHIND.replace("MAIN", "100 A").replace("  claim CLAIM\n", "")
    text = text.replace("WIRES", "3#2 + N #2 + G #8 Cu THWN-2  2.4 m  in 2 inch EMT")
    (finding,) = model(text).findings()
    assert finding.rule == "secondary-protection-missing"
    assert "claim tap-10ft" in finding.fixes[0].title


def test_two_wires_to_two_need_no_device() -> None:
    """NEC 240.4(F): through the voltage ratio, 40 A x 480/240 is 80 A, and 4 AWG carries 85 A at 75 degC."""
    text = US + (
        "transformer TX-1 480 1ph -> 240 1ph  15 kVA, z 3 %, x/r 1.5, ground none, lug-temp 75 degC\n"
        "feeder MSB[AB] -> TX-1  40 A 2p  2#8 + G #10 Cu THWN-2  9 m  in 1 inch EMT\n"
        "load HTR-1 240 1ph  12 kW, heating, lug-temp 75 degC\n"
        "feeder TX-1 -> HTR-1  2#4 + G #8 Cu THWN-2  9 m  in 1 inch EMT\n"
    )
    assert "secondary-protection-missing" not in [f.rule for f in model(text).findings()]
    thin = text.replace("2#4 + G #8", "2#8 + G #10")
    assert "secondary-protection-missing" in [f.rule for f in model(thin).findings()]


def test_every_claim_has_its_words_once() -> None:
    assert CLAIMS.keys() == EXCUSES.keys()
    assert CLAIMS.keys() >= TAPS
    assert all(EXCUSES[name].conditions for name in TAPS)
    assert all(text.endswith(".") for text in CLAIMS.values())
