"""Who calls a command in a process of their own keeps their garbage collector; one-shot commands do without it."""

from __future__ import annotations

import gc
from pathlib import Path

import pytest

from wyeline_linter.cli import main

MODEL = """wye 1
utility GRID 480Y/277 fault 14 kA, fault-min 9 kA, x/r 4
switchboard MSB 480Y/277 bus 400 A, main lugs, rated 22 kA
feeder GRID -> MSB 3#3/0 + N #3/0 Cu THWN-2 12 m in 2 inch PVC-40
"""


@pytest.mark.parametrize("words", [["check", "m.wye"], ["compare", "m.wye", "m.wye"], ["report", "m.wye", "-o", "out"]])
def test_a_command_leaves_the_collector_as_it_was(
    words: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "m.wye").write_text(MODEL, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    gc.enable()
    main(words)
    assert gc.isenabled()
