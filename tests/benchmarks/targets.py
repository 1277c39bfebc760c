"""The targets of speed, set before the first line was written, and what a run says of each: met, missed, not measured.

Each is a ratio of medians taken in turn in one run. Of commands it is wall time, of servers wall time unless it says
processor time. "Solved" means: until the findings that follow from a new load flow and fault study are shown, less the
rest that the server waits for after the last key.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from measurements import START, Measurements, ratio

YAML, JSON = "yaml-language-server", "JSON server"
SCHEMA_YAML = "check-jsonschema, YAML"


class Target(NamedTuple):
    """``measured`` is to be at most ``most``; ``size`` in pieces, 0 where it does not matter."""

    number: int
    what: str
    against: str
    size: int
    most: float
    measured: Callable[[Measurements], float | None]


def _server(
    number: int, what: str, peer: str, key: str, size: int, most: float, share: float = 0.5, other: str = ""
) -> Target:
    def measured(m: Measurements) -> float | None:
        return ratio(m.server(size, "wyeline", key, share), m.server(size, peer, other or key, share))

    against = {"yaml": YAML, "json": JSON, "ruff": "ruff server, Python twin", "pygls alone": "a pygls server alone"}
    return Target(number, what, against[peer], size, most, measured)


def _command(number: int, what: str, peer: str, key: str, size: int, most: float) -> Target:
    def measured(m: Measurements) -> float | None:
        return ratio(m.wall_s(size, key), m.wall_s(START if peer == "python" else size, peer))

    against = {
        "schema yaml": SCHEMA_YAML,
        "schema json": "check-jsonschema, JSON",
        "taplo": "taplo lint, TOML",
        "python": "`python -c pass`",
    }
    return Target(number, what, against[peer], size, most, measured)


def _growth(what: str, most: float, of: Callable[[Measurements, int], float | None]) -> Target:
    return Target(18, what, "itself at 10,000", 100_000, most, lambda m: ratio(of(m, 100_000), of(m, 10_000)))


N = 10_000
TARGETS = [
    _server(1, "a key to its findings, p50", "yaml", "edit", N, 0.02),
    _server(1, "a key to its findings, p95", "yaml", "edit", N, 0.03, 0.95),
    _server(1, "a key to solved findings, p50", "yaml", "solved", N, 0.02, other="edit"),
    _server(1, "a key to solved findings, p95", "yaml", "solved", N, 0.03, 0.95, other="edit"),
    _server(2, "a key, processor time", "yaml", "edit cpu", 1000, 0.08),
    _server(2, "a key, processor time", "yaml", "edit cpu", N, 0.02),
    _server(2, "a key with the solving it causes, processor time", "yaml", "solved cpu", 1000, 0.08, other="edit cpu"),
    _server(2, "a key with the solving it causes, processor time", "yaml", "solved cpu", N, 0.02, other="edit cpu"),
    _server(3, "a key to its findings", "json", "edit", N, 0.05),
    _server(4, "a key to its findings", "ruff", "edit", N, 1.5),
    _server(5, "a key to its findings, fewer than 100 in all", "pygls alone", "edit", N, 5),
    _server(6, "open to first findings", "yaml", "open", N, 0.25),
    _server(7, "hover, idle", "yaml", "hover", N, 0.05),
    _server(7, "hover, right after a key", "yaml", "hover, busy", N, 0.05),
    _server(7, "completion, idle", "yaml", "completion", N, 0.05),
    _server(7, "completion, right after a key", "yaml", "completion, busy", N, 0.05),
    _server(8, "symbols of the document", "yaml", "documentSymbol", N, 0.15),
    _server(9, "memory at the end of a session", "yaml", "memory at end", 1000, 0.6),
    _server(9, "memory at the end of a session", "yaml", "memory at end", N, 0.25),
    _server(10, "start of the server", "yaml", "start", N, 1.7),
    _command(11, "check, nothing kept", "schema yaml", "cold", 1000, 0.10),
    _command(11, "check, nothing kept", "schema yaml", "cold", N, 0.05),
    _command(12, "check, nothing kept", "schema json", "cold", N, 0.4),
    _command(12, "check, nothing kept", "taplo", "cold", N, 0.5),
    Target(
        13,
        "peak memory of a check, nothing kept",
        SCHEMA_YAML,
        N,
        0.4,
        lambda m: ratio(m.peak_mib(N, "cold"), m.peak_mib(N, "schema yaml")),
    ),
    _command(14, "check, one block edited", "schema yaml", "one edit", N, 0.012),
    _command(14, "check, one block edited", "python", "one edit", N, 8),
    _command(15, "check, nothing changed", "schema yaml", "unchanged", N, 0.006),
    _command(15, "check, nothing changed", "python", "unchanged", N, 5),
    _command(16, "`wyeline --version`", "python", "version", START, 2.5),
    _command(16, "check of 30 pieces, nothing kept", "python", "small cold", START, 4),
    Target(
        17,
        "parsing a text, processor time",
        "plain Lark",
        N,
        0.2,
        lambda m: ratio(m.parse_s(N, "engine"), m.parse_s(N, "lark")),
    ),
    _growth("check, nothing kept", 13, lambda m, size: m.wall_s(size, "cold")),
    _growth("a key to its findings", 12, lambda m, size: m.server(size, "wyeline", "edit")),
]


def verdict(target: Target, value: float | None) -> str:
    if value is None:
        return "not measured"
    return "met" if value <= target.most else "**missed**"


def counts(m: Measurements) -> dict[str, int]:
    """How many of the targets' lines are met, missed and not measured."""
    found = [verdict(target, target.measured(m)).strip("*") for target in TARGETS]
    return {each: found.count(each) for each in ("met", "missed", "not measured")}
