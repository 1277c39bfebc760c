"""What a row of the tables of slips says: how the slip is recognised, what is right, and why."""

from __future__ import annotations

import re
from typing import NamedTuple

from wyeline_grammar.slip_fixes import Fix


class Slip(NamedTuple):
    """One known slip.

    ``fix`` gives the text that replaces the match, several where the line may mean several things (then none is sure),
    or None where this is not the slip. ``pattern`` sees the line with the insides of texts and comments blanked out,
    unless ``quotes``; a group ``lead`` of it is context that stays. ``why`` is one sentence. ``message`` may use
    ``{wrong}``, ``{right}`` and the groups of the pattern; so may ``besides``, a line that the fix cannot write and
    that the drafter has to: such a fix is never sure; nor is a ``guess``, the likeliest of several meanings.
    """

    name: str
    pattern: re.Pattern[str]
    fix: Fix
    why: str
    wrong: str
    right: str
    message: str = "`{wrong}` is written `{right}`"
    quotes: bool = False
    sound: bool = False
    besides: str = ""
    guess: bool = False
