"""A run's figures as Markdown: ``RESULTS.md``, and its short table, which the README of the project repeats."""

from __future__ import annotations

import itertools
import json
import os
import platform
import re
import subprocess
from collections.abc import Iterable
from datetime import date
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

import parsing
import targets
from measurements import START, Measurements, quantile, ratio, shown
from sessions import PEERS

HERE = Path(__file__).parent
RESULTS = HERE / "RESULTS.md"
README = HERE.parents[1] / "README.md"
MARKED = re.compile(r"<!-- speed:start -->\n(.*?)<!-- speed:end -->", re.S)

COMMANDS = {
    "python": "`python -c pass`",
    "version": "`wyeline --version`",
    "small cold": "`wyeline check`, 30 pieces, nothing kept",
    "small unchanged": "`wyeline check`, 30 pieces, nothing changed",
    "cold": "`wyeline check`, nothing kept",
    "unchanged": "`wyeline check`, nothing changed",
    "one remark": "`wyeline check`, a comment changed",
    "one edit": "`wyeline check`, one block changed",
    "faulty": "`wyeline check`, a model full of faults, nothing kept",
    "schema yaml": "check-jsonschema, YAML",
    "schema json": "check-jsonschema, JSON",
    "schema toml": "check-jsonschema, TOML",
    "taplo": "taplo lint with the schema, TOML",
    "ruff": "ruff check without its cache, Python twin",
}
SERVERS = {
    "wyeline": "**Wyeline**",
    "pygls alone": "a pygls server that finds nothing",
    "yaml": "yaml-language-server",
    "json": "JSON server",
    "ruff": "ruff server, Python twin",
    "wyeline, faulty": "Wyeline, a model full of faults",
}
FIGURES = {
    "start": "start to `initialize`, ms",
    "open": "open to first findings, ms",
    "start and open": "... and from the start of the server, ms",
    "open cpu": "... processor time until idle, ms",
    "edit": "a key to its findings, ms",
    "edit cpu": "... processor time, ms",
    "burst": "ten keys, the last to its findings, ms",
    "solved": "a key to solved findings, less the rest, ms",
    "solved cpu": "... processor time, ms",
    "edit while solving": "a key while it solves, to its findings, ms",
    "hover": "hover, idle, ms",
    "hover, busy": "hover, right after a key, ms",
    "completion": "completion, idle, ms",
    "completion, busy": "completion, right after a key, ms",
    "documentSymbol": "symbols, idle, ms",
    "memory after open": "memory after opening, MiB",
    "memory at end": "memory at the end, MiB",
}
LATENCIES = [
    *("edit", "burst", "edit while solving", "solved", "hover", "hover, busy"),
    *("completion", "completion, busy", "documentSymbol"),
]


def table(head: Iterable[str], rows: Iterable[Iterable[str]]) -> list[str]:
    """Lines of a Markdown table."""
    head = list(head)
    return [f"| {' | '.join(cells)} |" for cells in (head, ["---"] * len(head), *rows)]


def document(m: Measurements, command: list[str], load: tuple[float, float], took_s: float) -> str:
    """The whole of ``RESULTS.md``. ``load``: of the machine, before and after the run."""
    lines = [
        "# Benchmark results",
        "",
        f"Written by `python tests/benchmarks/{' '.join(command)}` on {date.today().isoformat()} in "
        f"{took_s / 60:.0f} minutes;",
        "[README.md](README.md) says what is measured and what the figures can and cannot say. Programs ran in turn in",
        "one run: ratios count, times are of this machine. The peers check shapes and ranges; Wyeline derives every",
        "voltage, load, drop and fault current as well.",
        "",
        f"Machine: {_machine()}; load average {load[0]:.1f} before and {load[1]:.1f} after the run.",
        f"Versions: {', '.join(_versions())}.",
        "",
        "## In short",
        "",
        "<!-- speed:start -->",
        *short(m),
        "<!-- speed:end -->",
        "",
        "## Targets",
        "",
        "Set beforehand; of servers and commands by wall time unless it says otherwise.",
        "",
        *_targets(m),
    ]
    lines += ["", "## Starting", "", *_commands(m, START)]
    for size in m.sizes:
        lines += ["", f"## {size:,} pieces", "", *_commands(m, size), "", *_servers(m, size)]
    lines += ["", "## Latency of Wyeline's server", "", "Milliseconds, p50 (p95).", "", *_latencies(m)]
    lines += ["", "## Growth", "", *_growth(m)]
    for size, taken in m.parsing.items():
        lines += ["", f"## Reading a text of {size:,} pieces", "", *parsing.table(taken, m.text_bytes[size])]
    if m.solving:
        lines += ["", "## Solving", "", *m.solving]
    if m.left_out:
        lines += ["", "## Left out", ""]
        lines += [f"- {label} at {size:,} pieces: {why}." for (size, label), why in m.left_out.items()]
    return "\n".join(lines) + "\n"


def short(m: Measurements) -> list[str]:
    """What the README shows: one size, the peers that a user would take instead, and how many targets are met."""
    size = max((size for size in m.sizes if size <= 10_000), default=0)

    def server(label: str, key: str, unit: str = "ms", other: str = "") -> tuple[str, ...]:
        own, peer = m.server(size, "wyeline", key), m.server(size, "yaml", other or key)
        spread = m.server(size, "wyeline", key, 0.95)
        own_text = f"{shown(own)} {unit}" + (f" (p95 {shown(spread)})" if unit == "ms" and own is not None else "")
        return label, own_text, f"{shown(peer)} {unit}, yaml-language-server", shown(ratio(own, peer))

    def command(label: str, key: str) -> tuple[str, ...]:
        own, peer = m.wall_s(size, key), m.wall_s(size, "schema yaml")
        return label, f"{shown(own)} s", f"{shown(peer)} s, check-jsonschema", shown(ratio(own, peer))

    rows = [
        server("a key, until its findings show", "edit"),
        server("a key, until solved figures show (after the rest)", "solved", other="edit"),
        server("hover", "hover"),
        server("completion", "completion"),
        server("memory of the language server", "memory at end", "MiB"),
        command("check everything, nothing kept", "cold"),
        command("check after one edit", "one edit"),
        command("check, nothing changed", "unchanged"),
    ]
    found = targets.counts(m)
    return [
        *table((f"{size:,} pieces of equipment and circuits", "Wyeline", "the same model as YAML", "ratio"), rows),
        "",
        f"Medians of one run on {date.today().isoformat()}. Of the {len(targets.TARGETS)} targets set beforehand "
        f"{found['met']} are met,",
        f"{found['missed']} missed, {found['not measured']} not measured; the YAML tools check shapes and ranges only.",
    ]


def _targets(m: Measurements) -> list[str]:
    rows = []
    for target in targets.TARGETS:
        value = target.measured(m)
        size = f"{target.size:,}" if target.size else "any"
        cells = (f"T{target.number}", target.what, target.against, size, f"≤ {target.most:g}", shown(value))
        rows.append((*cells, targets.verdict(target, value)))
    return table(("#", "what", "against", "pieces", "target", "measured", ""), rows)


def _commands(m: Measurements, size: int) -> list[str]:
    rows = []
    peer = "python" if size == START else "schema yaml"
    for name, usages in m.commands.get(size, {}).items():
        wall, cpu = m.wall_s(size, name), m.cpu_s(size, name)
        rows.append(
            (
                *(COMMANDS[name], shown(wall), shown(m.wall_s(size, name, 0.95)), shown(cpu)),
                *(shown(m.peak_mib(size, name)), str(len(usages))),
                *(shown(ratio(wall, m.wall_s(size, peer))), shown(ratio(cpu, m.cpu_s(size, peer)))),
            )
        )
    head = ("command", "wall s, p50", "p95", "processor s", "peak MiB", "runs")
    return table((*head, f"wall / {COMMANDS[peer]}", "processor, same"), rows)


def _servers(m: Measurements, size: int) -> list[str]:
    taken = m.servers.get(size, {})
    names = [name for name in SERVERS if name in taken]
    rows = []
    for key, label in FIGURES.items():
        if any(key in taken[name] for name in names):
            ratios = (
                shown(ratio(m.server(size, "wyeline", key), m.server(size, peer, key))) for peer in ("yaml", "json")
            )
            rows.append((label, *(_spread(taken[name].get(key, [])) for name in names), *ratios))
    head = ("p50 (p95)", *(SERVERS[name] for name in names))
    return table((*head, "Wyeline / YAML", "Wyeline / JSON"), rows)


def _latencies(m: Measurements) -> list[str]:
    rows = (
        (FIGURES[key].removesuffix(", ms"), *(_spread(m.servers[size]["wyeline"].get(key, [])) for size in m.sizes))
        for key in LATENCIES
    )
    return table(("", *(f"{size:,}" for size in m.sizes)), rows)


def _growth(m: Measurements) -> list[str]:
    def row(label: str, values: list[float | None]) -> tuple[str, ...]:
        steps = [shown(b) + (f" (x {shown(ratio(b, a))})" if a and b else "") for a, b in itertools.pairwise(values)]
        return label, shown(values[0]), *steps

    own = ("cold", "one edit", "one remark", "unchanged")
    names = (*own, "schema yaml", "schema json", "schema toml", "taplo", "ruff")
    rows = [row(f"{COMMANDS[name]}, s", [m.wall_s(size, name) for size in m.sizes]) for name in names]
    for name in ("cold", "schema yaml"):
        rows += [row(f"{COMMANDS[name]}, MiB", [m.peak_mib(size, name) for size in m.sizes])]
    for key in ("open", "edit", "edit cpu", "memory at end"):
        for name in ("wyeline", "yaml"):
            values = [m.server(size, name, key) for size in m.sizes]
            rows += [row(f"{SERVERS[name]}: {FIGURES[key].replace('...', 'a key,')}", values)]
    return table(("pieces", *(f"{size:,}" for size in m.sizes)), rows)


def _spread(values: list[float]) -> str:
    middle = quantile(values, 0.5)
    return shown(middle) if len(values) < 3 else f"{shown(middle)} ({shown(quantile(values, 0.95))})"


def _machine() -> str:
    model, memory = platform.processor() or platform.machine(), ""
    if os.path.exists("/proc/cpuinfo"):
        found = re.search(r"^model name\s*: (.*)$", Path("/proc/cpuinfo").read_text(), re.M)
        model = found[1] if found else model
        kib = re.search(r"^MemTotal:\s*(\d+)", Path("/proc/meminfo").read_text(), re.M)
        memory = f", {int(kib[1]) / 2**20:.0f} GiB" if kib else ""
    return f"{model}, {os.cpu_count()} cores{memory}, {platform.system()} {platform.release().split('-')[0]}"


def _versions() -> Iterable[str]:
    yield f"Python {platform.python_version()}"
    for name in ("wyeline", "lark", "pygls", "numpy", "scipy", "check-jsonschema", "taplo", "ruff"):
        try:
            yield f"{name} {version(name)}"
        except PackageNotFoundError:
            continue
    for name in ("yaml-language-server", "vscode-langservers-extracted"):
        manifest = PEERS / "node_modules" / name / "package.json"
        if manifest.exists():
            yield f"{name} {json.loads(manifest.read_text('utf-8'))['version']}"
    try:
        yield f"Node {subprocess.run(['node', '--version'], capture_output=True, text=True, check=True).stdout.strip()}"
    except (OSError, subprocess.CalledProcessError):
        return


def marked(text: str) -> str:
    """What stands between the marks. Raises ValueError where there are none."""
    found = MARKED.search(text)
    if found is None:
        raise ValueError("no <!-- speed:start --> and <!-- speed:end -->")
    return found[1]


def with_marked(text: str, part: str) -> str:
    """The text with another part between its marks."""
    marked(text)
    return MARKED.sub(lambda _: f"<!-- speed:start -->\n{part}<!-- speed:end -->", text)
