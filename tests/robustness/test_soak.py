"""A working day at the editor, in little; the long one is ``python tests/robustness/soak.py``."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
import soak


@pytest.mark.skipif(sys.platform != "linux", reason="memory and open files are read from /proc")
def test_two_thousand_edits_leave_nothing_behind(tmp_path: Path) -> None:
    outcome = soak.run(edits=2_000, pieces=500, checkpoints=4, seed=5, folder=tmp_path)
    assert outcome.edits >= 2_000 and outcome.checkpoints == 4
    assert outcome.cancelled > 20 and outcome.nonsense > 20 and outcome.events > 20
    # Memory climbs from 68 to about 113 MB over 4,000 edits while memos fill, then stays; the README says what is open.
    assert max(outcome.memory_mb) < 150, outcome.memory_mb
    assert max(outcome.files_open[2:]) <= outcome.files_open[1] + 1
    assert max(outcome.threads[2:]) <= outcome.threads[1] + 1
