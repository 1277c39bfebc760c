"""Building a network must not load numpy; only a solver may."""

from __future__ import annotations

import subprocess
import sys

PROGRAM = """
import sys
from wyeline_linter.circuit import Network
from wyeline_linter.circuit import ansi, iec60909, nameplate
assert "numpy" not in sys.modules and "scipy" not in sys.modules
from wyeline_linter.circuit import solve_flow
assert "numpy" in sys.modules and "scipy" not in sys.modules
"""


def test_solvers_are_loaded_on_demand() -> None:
    subprocess.run([sys.executable, "-c", PROGRAM], check=True)
