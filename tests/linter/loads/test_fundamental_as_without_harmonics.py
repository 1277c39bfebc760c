"""A stated third harmonic changes what flows in neutrals, and no figure of the fundamental."""

from __future__ import annotations

from typing import Any

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures

SITE = """wye 1
project "Kiln yard"
  basis us-2023
  frequency 60 Hz, ambient 30 degC
utility QUAY 480Y/277  fault 28 kA, fault-min 20 kA, x/r 7
switchboard MSB 480Y/277  bus 800 A, main 800 A, rated 42 kA
feeder QUAY -> MSB  800 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu THWN-2  12 m  in 4 inch PVC-40{service}
transformer TX-1 {windings}  75 kVA, z 4 %, x/r 2
feeder MSB -> TX-1  125 A 3p  3#1 + G #6 Cu THWN-2  30 m  in 2 inch EMT
panel LP-1 208Y/120  bus 225 A, main 225 A, rated 10 kA, factor 80 %{board}
  1  20 A 1p  1.2 kVA receptacle  "Bench"{rack}
  2,4,6  60 A 3p  15 kVA it  "Racks"{rack}
  3  60 A 1p  6 kVA receptacle  "Yard"
  5,7  30 A 2p  4 kW heating  "Heater"
feeder TX-1 -> LP-1  3#4/0 + N #4/0 + G #4 Cu THWN-2  5 m  in 3 inch EMT
panel LP-2 208Y/120  bus 225 A, main 225 A, rated 10 kA
  1  60 A 1p  7 kVA receptacle  "Hall"{rack}
feeder LP-1 -> LP-2  100 A 3p  3#1 + N #1 + G #6 Cu THWN-2  9 m  in 2 inch EMT
"""
_OF_HARMONICS = frozenset({"neutral", "by_class"})


def figures(**words: str) -> dict[str, Any]:
    said = {"windings": "480 3ph -> 208Y/120", **dict.fromkeys(("service", "board", "rack"), ""), **words}
    text = SITE.format(**said)
    analysis = Analysis("/m/site.wye", Files(lambda _: text), "/m")
    analysis.study_findings()
    return model_figures(analysis.view)


def fundamental(found: Any) -> Any:
    """The figures without those that are about neutrals and classes of load."""
    if isinstance(found, dict):
        return {key: fundamental(value) for key, value in found.items() if key not in _OF_HARMONICS}
    return [fundamental(one) for one in found] if isinstance(found, list) else found


def close(one: Any, other: Any, path: str = "") -> None:
    if isinstance(one, dict):
        assert one.keys() == other.keys(), path
        for key in one:
            close(one[key], other[key], f"{path} {key}")
    elif isinstance(one, list):
        assert len(one) == len(other), path
        for k, (mine, theirs) in enumerate(zip(one, other, strict=True)):
            close(mine, theirs, f"{path} {k}")
    elif isinstance(one, float):
        assert one == pytest.approx(other, rel=1e-9, abs=1e-9), path
    else:
        assert one == other, path


@pytest.mark.parametrize("windings", ["480 3ph -> 208Y/120", "480Y/277 -> 208Y/120"])
@pytest.mark.parametrize(
    "words",
    [
        {"rack": " third-harmonic 40 %"},
        {"board": ", third-harmonic 25 %"},
        {"rack": " third-harmonic 40 %", "board": ", third-harmonic 25 %", "service": ", third-harmonic 10 %"},
    ],
)
def test_the_fundamental_is_as_without(windings: str, words: dict[str, str]) -> None:
    """Demand factors too: a receptacle counts by the table over all of them, whatever harmonic each states."""
    plain, said = figures(windings=windings), figures(windings=windings, **words)
    close(fundamental(said), fundamental(plain))
    assert said["equipment"]["LP-1"]["load"]["neutral"] != plain["equipment"]["LP-1"]["load"]["neutral"]
