"""Measures Wyeline beside what people would use instead, in turn, in one run; prints ratios. See README.md here.

python tests/benchmarks/run.py --install    once: the peers, into $WYELINE_PEERS (default ~/.cache/wyeline-peers)
python tests/benchmarks/run.py              N = 1,000 and 10,000; writes tests/benchmarks/RESULTS.md
"""

from __future__ import annotations

import argparse
import json
import os
import platform
import statistics
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from datetime import date
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from generate import SCHEMA, Site, as_yaml
from lsp_client import Client
from processes import BIN, command_line

HERE = Path(__file__).parent
PEERS = Path(os.environ.get("WYELINE_PEERS", Path.home() / ".cache" / "wyeline-peers"))
PYTHON_PEERS = ["check-jsonschema>=0.37,<1"]
NODE_PEERS = ["yaml-language-server@1", "vscode-langservers-extracted@4"]


def install() -> None:
    """The peers: Python ones into this environment, npm ones into $WYELINE_PEERS."""
    PEERS.mkdir(parents=True, exist_ok=True)
    subprocess.run([sys.executable, "-m", "pip", "install", "-q", *PYTHON_PEERS], check=True)
    subprocess.run(["npm", "install", "--prefix", str(PEERS), "--no-audit", "--no-fund", *NODE_PEERS], check=True)


def write_site(folder: Path, pieces: int) -> Path:
    """The model in every notation; returns the root file."""
    site = Site(pieces)
    for name, text in site.files.items():
        (folder / name).write_text(text, "utf-8")
    (folder / "site.yaml").write_text(as_yaml(site.data), "utf-8")
    (folder / "site.json").write_text(json.dumps(site.data, indent=1), "utf-8")
    (folder / "schema.json").write_text(json.dumps(SCHEMA), "utf-8")
    return folder / "site.wye"


def place_of_edit(text: str) -> tuple[int, int, int]:
    """A figure in the middle of a document that can be changed to and fro: line, start, end."""
    lines = text.split("\n")
    for number in range(len(lines) // 2, len(lines)):
        for mark in (" VA ", "va: ", '"va": '):
            at = lines[number].find(mark)
            if at > 0:
                if mark == " VA ":
                    start = lines[number].rfind(" ", 0, at) + 1
                    return number, start, at
                start = at + len(mark)
                end = start
                while end < len(lines[number]) and lines[number][end].isdigit():
                    end += 1
                return number, start, end
    raise ValueError("no load in the second half of the document")


def editor(command: list[str], folder: Path, document: Path, language: str, edits: int) -> dict[str, float]:
    """Times in milliseconds of one server over one document, and its memory in MiB."""
    client = Client(command, folder, language)
    try:
        result = {"start": client.start() * 1000, "open": client.open(document) * 1000}
        line, start, end = place_of_edit(client.text)
        original = client.text.split("\n")[line][start:end]
        taken = []
        before = client.usage()[0]
        for number in range(edits):
            new = ("8" if number % 2 == 0 else "9") + original[1:]
            taken.append(client.edit(line, start, end, new) * 1000)
        result["edit cpu"] = (client.usage()[0] - before) * 1000 / edits
        result["edit p50"] = statistics.median(taken)
        result["edit p95"] = sorted(taken)[max(0, round(0.95 * len(taken)) - 1)]
        for name in ("hover", "completion", "documentSymbol"):
            asked = [client.ask(f"textDocument/{name}", line, start) for _ in range(5)]
            result[name] = statistics.median(asked) * 1000
        result["memory"] = client.usage()[1]
        return result
    finally:
        client.stop()


def servers(folder: Path, root: Path, edits: int) -> dict[str, dict[str, float]]:
    """Every server in turn. The ``.wye`` document is the middle board file: as large a part as an editor holds."""
    node = PEERS / "node_modules" / ".bin"
    one = folder / "one"
    one.mkdir(exist_ok=True)
    parts = [p.read_text("utf-8") for p in sorted(folder.glob("board-*.wye"), key=lambda p: int(p.stem[6:]))]
    head = [line for line in root.read_text("utf-8").split("\n") if not line.startswith("include")]
    single = one / "site.wye"
    single.write_text("\n".join([*head, *parts]), "utf-8")
    return {
        "wyeline": editor([str(BIN / "wyeline-server")], one, single, "wye", edits * 5),
        "yaml": editor([str(node / "yaml-language-server"), "--stdio"], folder, folder / "site.yaml", "yaml", edits),
        "json": editor(
            [str(node / "vscode-json-language-server"), "--stdio"], folder, folder / "site.json", "json", edits
        ),
    }


def tables(sizes: list[int], rounds: int, edits: int) -> Iterator[str]:
    """The Markdown of a whole run."""
    yield "# Benchmark results"
    yield ""
    yield f"Run on {date.today().isoformat()}, {platform.machine()}, {os.cpu_count()} cores, Python"
    yield f"{platform.python_version()}, by `python tests/benchmarks/run.py`. Ratios are of medians taken in turn in"
    yield "one run; absolute times are for orientation only. The peers check shapes and ranges; Wyeline derives every"
    yield "voltage, load, drop and fault current as well."
    for pieces in sizes:
        with tempfile.TemporaryDirectory() as name:
            folder = Path(name)
            root = write_site(folder, pieces)
            yield ""
            yield f"## {pieces:,} pieces"
            yield ""
            yield "| command line | processor s | wall s | MiB | processor / check-jsonschema YAML |"
            yield "| --- | --- | --- | --- | --- |"
            took = command_line(folder, root, rounds, ("yaml", "json"))
            for key, (wall_s, cpu_s, mib) in took.items():
                ratio = cpu_s / took["schema yaml"].cpu_s
                yield f"| {_LABEL[key]} | {cpu_s:.3f} | {wall_s:.3f} | {mib:.0f} | {ratio:.4f} |"
            results = servers(folder, root, edits)
            yield ""
            yield "| language server | wyeline | YAML | JSON | wyeline / YAML | wyeline / JSON |"
            yield "| --- | --- | --- | --- | --- | --- |"
            w, y, j = results["wyeline"], results["yaml"], results["json"]
            for key in w:
                unit = "MiB" if key == "memory" else "ms"
                yield (
                    f"| {key}, {unit} | {w[key]:.1f} | {y[key]:.0f} | {j[key]:.0f} "
                    f"| {w[key] / max(y[key], 0.01):.4f} | {w[key] / max(j[key], 0.01):.3f} |"
                )


_LABEL = {
    "python": "`python -c pass`",
    "version": "`wyeline --version`",
    "cold": "`wyeline check`, nothing kept",
    "unchanged": "`wyeline check`, nothing changed",
    "one edit": "`wyeline check`, one block changed",
    "schema yaml": "check-jsonschema, YAML",
    "schema json": "check-jsonschema, JSON",
}


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--install", action="store_true")
    parser.add_argument("--sizes", type=int, nargs="+", default=[1000, 10000])
    parser.add_argument("--rounds", type=int, default=3)
    parser.add_argument("--edits", type=int, default=6)
    parser.add_argument("--output", type=Path, default=HERE / "RESULTS.md")
    arguments = parser.parse_args()
    if arguments.install:
        install()
        return 0
    lines = []
    for line in tables(arguments.sizes, arguments.rounds, arguments.edits):
        print(line, flush=True)
        lines.append(line)
    arguments.output.write_text("\n".join(lines) + "\n", "utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
