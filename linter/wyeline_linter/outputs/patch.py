"""What would change in a file, as a patch that programs can apply."""

from __future__ import annotations

import difflib
import re

_LINES = re.compile(r"[^\n]*\n|[^\n]+")  # at line feeds only: a patch knows no other line ends
_NO_END = "\\ No newline at end of file\n"


def patch(name: str, old: str, new: str) -> str:
    """A unified diff between two texts of a file; "" where they are equal."""
    lines = difflib.unified_diff(_LINES.findall(old), _LINES.findall(new), f"a/{name}", f"b/{name}")
    return "".join(line if line.endswith("\n") else f"{line}\n{_NO_END}" for line in lines)
