"""A working day at the editor, in little; the long one is ``python tests/robustness/soak.py``."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
import soak


@pytest.mark.skipif(sys.platform != "linux", reason="memory and open files are read from /proc")
def test_two_thousand_edits_leave_nothing_behind(tmp_path: Path) -> None:
    outcome = soak.run(edits=2_000, pieces=300, checkpoints=6, seed=5, folder=tmp_path, rest_s=0.05)
    assert outcome.edits >= 2_000 and outcome.checkpoints == 6
    assert min(outcome.cancelled, outcome.nonsense, outcome.events, outcome.renamed, outcome.findings) > 10
    assert outcome.growth() < 0.15, outcome.memory_mb
    assert max(outcome.files_open) == outcome.files_open[0]
    assert max(outcome.threads) == outcome.threads[0]
