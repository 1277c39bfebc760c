"""The slips that people make when they write a line as another paper or habit of the trade would have it.

A row recognises the slip by its spelling and knows the right one. ``recovery.py`` tries the rows, in their order, on a
line that does not parse, and takes the first whose spelling lets more of the line be read; rows with ``sound`` are
tried on lines that do parse but cannot have been meant so. Every row carries an example that a test runs.
"""

from __future__ import annotations

from wyeline_grammar.slip import Slip
from wyeline_grammar.slips_devices import DEVICES
from wyeline_grammar.slips_figures import NUMBERS, UNITS
from wyeline_grammar.slips_names import NAMES
from wyeline_grammar.slips_trade import TRADE
from wyeline_grammar.slips_wires import AREAS, RUNS
from wyeline_grammar.slips_wording import SIGNS, WORDING

SLIPS: tuple[Slip, ...] = (*TRADE, *WORDING, *AREAS, *SIGNS, *DEVICES, *NUMBERS, *RUNS, *UNITS, *NAMES)
"""The order counts: an area behind a gauge's sign is told before runs are, a thousands comma before positions."""
