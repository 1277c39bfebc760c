"""A watch takes changed files into the model that stands, and says what a check from the start says."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from wyeline_grammar.sources import SourceError
from wyeline_linter.judging import ConfigurationOf, Judged, judge
from wyeline_linter.result_cache import ResultCache
from wyeline_linter.standing import StandingModels

HEAD = "utility U 480Y/277  fault 28 kA, x/r 7\n"
SITES = [
    HEAD + 'include "part.wye"\nscenario "Dark"\n  off U\n',
    HEAD + "// no part\n",
    HEAD + 'include "part.wye"\ninclude "more.wye"\nexpect A fault <= 1 kA\nscenario "Dark"\n  off U\n',
]
PARTS = [
    "panel A 480Y/277  bus 225 A\nfeeder U -> A  100 A 3p  3#3 + N #3 + G #8 Cu  9 m\n",
    "panel A 208Y/120  bus 225 A\nfeeder U -> A  100 A 3p  3#3 + N #3 + G #8 Cu  9 m\n",
    "panel A 480Y/277  bus 225 A, rated 1 kA\nfeeder U -> A  100 A 3p  3#3 + N #3 + G #8 Cu  90 m\n",
    "\ufeff// nothing\n",
    "panel A \0",
]


def asked(root: str, scenario: str | None, standing: StandingModels | None) -> object:
    try:
        judged = judge(root, scenario, ResultCache(""), ConfigurationOf(root), None, standing)
    except SourceError as error:
        return str(error)
    return [(f.sort_key, f.severity, f.found, len(f.fixes)) for f in judged.findings], told(judged)


def told(judged: Judged) -> object:
    return judged.files, judged.expectations, judged.may_move, judged.off, judged.read.keys() >= set(judged.files)


@pytest.mark.parametrize("seed", range(12))
def test_any_run_of_saves_says_what_a_check_from_the_start_says(tmp_path: Path, seed: int) -> None:
    rng, standing = random.Random(seed), StandingModels()
    root = tmp_path / "site.wye"
    root.write_text(SITES[0], "utf-8")
    scenario = "Dark" if seed % 3 == 0 else None
    for _ in range(8):
        path = tmp_path / rng.choice(["site.wye", "part.wye", "part.wye", "more.wye", "wyeline.toml"])
        text = rng.choice(
            {"site.wye": SITES, "wyeline.toml": ["[rules]\nleg-voltage-mismatch = 'off'\n", ""]}.get(path.name, PARTS)
        )
        if rng.random() < 0.15:
            path.unlink(missing_ok=True)
        else:
            path.write_text(text, "utf-8")
        assert asked(str(root), scenario, standing) == asked(str(root), scenario, None)


def test_a_save_parses_what_it_changed(tmp_path: Path) -> None:
    (tmp_path / "site.wye").write_text(SITES[0], "utf-8")
    (tmp_path / "part.wye").write_text(PARTS[0], "utf-8")
    root, standing = str(tmp_path / "site.wye"), StandingModels()
    asked(root, None, standing)
    (kept,) = standing._models.values()
    before = kept.analysis.ran.copy()
    (tmp_path / "part.wye").write_text(PARTS[2], "utf-8")
    asked(root, None, standing)
    (again,) = standing._models.values()
    assert again.analysis is kept.analysis
    assert again.analysis.ran["parse"] - before["parse"] == 2
