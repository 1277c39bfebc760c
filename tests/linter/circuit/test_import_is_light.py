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


CHECK = """
import sys
from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
text = '''wye 1
utility U 208Y/120  fault 10 kA, x/r 4
switchboard M 208Y/120  bus 400 A
feeder U -> M  400 A 3p  3#1 + N #1 Cu  12 m
panel P 208Y/120  bus 100 A
  1  20 A 1p  1.2 kVA receptacle  2#12 + G #12 Cu  18 m
feeder M -> P  100 A 3p  3#3 + N #3 Cu  30 m'''
analysis = Analysis("/m/site.wye", Files(lambda _: text), "/m")
analysis.study_findings()
assert analysis.view.studies.normal.flow.solved is not None
loaded = [name for name in ("numpy.ma", "scipy", "lark") if name in sys.modules]
assert not loaded, loaded
"""


def test_a_check_loads_no_masked_arrays_and_no_sparse_solver() -> None:
    subprocess.run([sys.executable, "-c", CHECK], check=True)
