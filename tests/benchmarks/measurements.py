"""What a run has measured, and questions to it: medians and ratios, or None where something was not measured."""

from __future__ import annotations

import math
import statistics
from dataclasses import dataclass, field

from processes import Usage
from sessions import Taken

START = 0
"""The size under which the commands stand that have no model, or a very small one."""


@dataclass
class Measurements:
    """Figures of one run, by size in pieces: of commands, of language servers, of reading text, of solving.

    ``text_bytes``: how long the texts of the parsing engines are. ``left_out`` says what was not run to its end at a
    size, under the name it is printed with, and why.
    """

    sizes: list[int] = field(default_factory=list)
    commands: dict[int, dict[str, list[Usage]]] = field(default_factory=dict)
    servers: dict[int, dict[str, Taken]] = field(default_factory=dict)
    parsing: dict[int, dict[str, list[float]]] = field(default_factory=dict)
    text_bytes: dict[int, dict[str, int]] = field(default_factory=dict)
    solving: list[str] = field(default_factory=list)
    left_out: dict[tuple[int, str], str] = field(default_factory=dict)

    def wall_s(self, size: int, name: str, share: float = 0.5) -> float | None:
        return self._of_command(size, name, "wall_s", share)

    def cpu_s(self, size: int, name: str, share: float = 0.5) -> float | None:
        return self._of_command(size, name, "cpu_s", share)

    def peak_mib(self, size: int, name: str) -> float | None:
        return self._of_command(size, name, "peak_mib", 0.5)

    def _of_command(self, size: int, name: str, what: str, share: float) -> float | None:
        return quantile([getattr(usage, what) for usage in self.commands.get(size, {}).get(name, ())], share)

    def server(self, size: int, name: str, what: str, share: float = 0.5) -> float | None:
        """A figure of a language server: milliseconds, or MiB of memory; ``share`` 0.5 is the median."""
        return quantile(self.servers.get(size, {}).get(name, {}).get(what, []), share)

    def parse_s(self, size: int, name: str) -> float | None:
        return quantile(self.parsing.get(size, {}).get(name, []), 0.5)


def quantile(values: list[float], share: float) -> float | None:
    """The median, or by nearest rank the value below which that share lies; None of nothing and of NaN."""
    if not values or any(map(math.isnan, values)):
        return None
    if share == 0.5:
        return statistics.median(values)
    return sorted(values)[max(0, math.ceil(share * len(values)) - 1)]


def ratio(part: float | None, whole: float | None) -> float | None:
    if part is None or whole is None or whole <= 0:
        return None
    return part / whole


def shown(value: float | None) -> str:
    """Three figures, thousands parted; a dash for what was not measured."""
    if value is None:
        return "–"
    if abs(value) >= 100:
        return f"{value:,.0f}"
    return f"{value:.3g}"
