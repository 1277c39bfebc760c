"""The slips that people make when they write a line as another paper or habit of the trade would have it.

A row recognises the slip by its spelling and knows the right one. ``recovery.py`` tries the rows, in their order, on a
line that does not parse, and takes the first whose spelling lets more of the line be read; rows with ``sound`` are
tried on lines that do parse but cannot have been meant so. Every row carries an example that a test runs.
"""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slips_boards import BOARD_WORDS
from wyeline_grammar.slips_circuits import ROWS
from wyeline_grammar.slips_devices import DEVICES
from wyeline_grammar.slips_figures import NUMBERS, UNITS
from wyeline_grammar.slips_issues import ISSUES
from wyeline_grammar.slips_legs import ENDS, LEGS
from wyeline_grammar.slips_measured import MEASURED
from wyeline_grammar.slips_names import NAMES
from wyeline_grammar.slips_raceways import CONDUITS
from wyeline_grammar.slips_remarks import REMARKS, SEPARATORS
from wyeline_grammar.slips_trade import TRADE
from wyeline_grammar.slips_voltages import VOLTAGES
from wyeline_grammar.slips_wires import AREAS, RUNS
from wyeline_grammar.slips_wording import SIGNS, WORDING

SLIPS: tuple[Slip, ...] = (
    *ISSUES,
    *CONDUITS,
    *LEGS,
    *TRADE,
    *ENDS,
    *ROWS,
    *MEASURED,
    *BOARD_WORDS,
    *WORDING,
    *AREAS,
    *SIGNS,
    *VOLTAGES,
    *DEVICES,
    *NUMBERS,
    *RUNS,
    *UNITS,
    *REMARKS,
    *NAMES,
    *SEPARATORS,
)
"""The order counts: the marks of inches before texts, an area behind a gauge's sign before runs, a thousands comma
before positions, the phases of a voltage before poles."""
