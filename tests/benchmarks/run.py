"""Measures Wyeline beside what people would use instead, in turn, in one run. See README.md here.

python tests/benchmarks/run.py --install    once: the peers (pip into this environment, npm into $WYELINE_PEERS)
python tests/benchmarks/run.py              100 to 100,000 pieces; writes RESULTS.md and the table in the README
python tests/benchmarks/run.py --quick --output /tmp/try.md    a look: small sizes, few repeats
"""

from __future__ import annotations

import argparse
import importlib
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import parsing
import results
import sessions
from measurements import START, Measurements
from processes import CHECK_JSONSCHEMA, RUFF, TAPLO, WYELINE, check_programs, in_turn, start_programs
from sessions import PEERS, SERVERS
from twins import write_site

PYTHON_PEERS = ["check-jsonschema>=0.37,<1", "ruff>=0.12,<1", "taplo>=0.9,<1"]
NODE_PEERS = ["yaml-language-server@1", "vscode-langservers-extracted@4"]
OWN = {"cold", "unchanged", "one remark", "one edit", "faulty", "wyeline", "pygls alone"}
"""Never left out, however long they take."""
OWN_LIMIT_S = 300
MUST = 10_000
"""Up to this size every peer runs, at least until its limit."""


def install() -> None:
    """The peers: Python ones into this environment, npm ones into $WYELINE_PEERS."""
    PEERS.mkdir(parents=True, exist_ok=True)
    subprocess.run([sys.executable, "-m", "pip", "install", "-q", *PYTHON_PEERS], check=True)
    subprocess.run(["npm", "install", "--prefix", str(PEERS), "--no-audit", "--no-fund", *NODE_PEERS], check=True)


def missing() -> list[str]:
    """What a run needs and does not find."""
    needed = [WYELINE, CHECK_JSONSCHEMA, TAPLO, RUFF, *(Path(server.command[0]) for server in SERVERS.values())]
    return [str(path) for path in dict.fromkeys(needed) if not path.exists()]


def expected_s(taken: dict[int, float], size: int) -> float:
    """What something will take at a size, from what it took at the last two: never better than in proportion."""
    before = sorted(each for each in taken if each < size)
    if not before:
        return 0.0
    step = size / before[-1]
    if len(before) > 1:
        step = max(step, taken[before[-1]] / taken[before[-2]])
    return taken[before[-1]] * step


class Run:
    """One run over several sizes; smaller ones say which peers would take too long at the larger."""

    def __init__(self, root: Path, limit_s: float, effort: float) -> None:
        self.root, self.limit_s, self.effort = root, limit_s, effort
        self.found = Measurements()
        self.command_s: dict[str, dict[int, float]] = {}
        self.session_s: dict[str, dict[int, float]] = {}

    def times(self, size: int, few: int, most: int) -> int:
        """How often something is repeated: ``most`` for small models, once for the largest."""
        if size >= 100_000:
            return 1
        return max(1, round((few if size >= 10_000 else most) * self.effort))

    def limit_of(self, name: str) -> float:
        return OWN_LIMIT_S if name in OWN else self.limit_s

    def too_long(self, taken: dict[str, dict[int, float]], name: str, label: str, size: int) -> bool:
        """Whether a peer would run beyond the limit, or did at a smaller size; noted, if so."""
        left_out = self.found.left_out
        expected = 0.0 if name in OWN else expected_s(taken.get(name, {}), size)
        if (size, label) not in left_out and any(each == label for _, each in left_out):
            left_out[size, label] = "as before"
        elif size > MUST and expected > self.limit_s:
            left_out[size, label] = f"about {expected:.0f} s expected"
        return (size, label) in left_out

    def starting(self) -> None:
        folder = self.root / "small"
        folder.mkdir()
        programs = start_programs(self.root, write_site(folder, 30))
        in_turn(programs, self.root, 1)  # writes bytecode
        self.found.commands[START], _ = in_turn(programs, self.root, self.times(0, 5, 9))
        say("starting")

    def size(self, size: int) -> None:
        """Everything at one size."""
        folder, faulty = self.root / str(size), self.root / f"faulty-{size}"
        for each in (folder, faulty):
            each.mkdir()
        self.found.sizes.append(size)
        write_site(folder, size)
        write_site(faulty, size, faulty=True)
        self.commands(size, folder, faulty)
        self.servers(size, folder, faulty)
        if size <= 10_000:
            names = list(parsing.ENGINES)
            self.found.parsing[size] = parsing.timed(names, folder, self.times(size, 3, 3))
            lengths = {name: parsing.document(folder, name).stat().st_size for name in names}
            self.found.text_bytes[size] = lengths
            say(f"{size:,}: parsing")

    def commands(self, size: int, folder: Path, faulty: Path) -> None:
        programs = check_programs(self.root, folder, faulty / "site.wye" if size <= 10_000 else None)
        for name, label in results.COMMANDS.items():
            if name in programs and self.too_long(self.command_s, name, label, size):
                del programs[name]
        if not self.found.commands.keys() - {START}:
            in_turn(programs, self.root, 1)  # writes bytecode
        taken, left_out = in_turn(programs, self.root, self.times(size, 3, 5), self.limit_of)
        self.found.commands[size] = taken
        self.found.left_out |= {(size, results.COMMANDS[name]): why for name, why in left_out.items()}
        for name in taken:
            self.command_s.setdefault(name, {})[size] = self.found.wall_s(size, name) or 0.0
        say(f"{size:,}: command line")

    def servers(self, size: int, folder: Path, faulty: Path) -> None:
        quick = {"wyeline": 30, "pygls alone": 30, "ruff": 20}

        def edits(name: str) -> int:
            return 6 if size >= (100_000 if name in quick else 10_000) else quick.get(name, 8)

        solved = self.times(size, 3, 3)
        taken: dict[str, sessions.Taken] = {}
        for _ in range(self.times(size, 2, 2)):
            for name in SERVERS:
                if self.too_long(self.session_s, name, results.SERVERS[name], size):
                    continue
                began = time.monotonic()
                try:
                    session = sessions.Session(SERVERS[name], folder, max(60, self.limit_of(name))).play(
                        edits(name), solved
                    )
                except (TimeoutError, OSError, sessions.NotShownError) as reason:
                    self.found.left_out[size, results.SERVERS[name]] = str(reason) or type(reason).__name__
                    taken.pop(name, None)
                    continue
                self.session_s.setdefault(name, {})[size] = time.monotonic() - began
                for key, values in session.items():
                    taken.setdefault(name, {}).setdefault(key, []).extend(values)
        if size <= 10_000:
            server = SERVERS["wyeline"]._replace(shows=False)
            taken["wyeline, faulty"] = sessions.Session(server, faulty, OWN_LIMIT_S).play(edits("wyeline"), 0)
        self.found.servers[size] = taken
        say(f"{size:,}: language servers")

    def solving(self, sizes: list[int]) -> None:
        """The load flow beside a plain solve of its matrix, where that benchmark is there."""
        if (Path(__file__).parent / "solving.py").exists():
            self.found.solving = importlib.import_module("solving").rows(sizes)
            say("solving")


BEGAN = time.monotonic()


def say(what: str) -> None:
    print(f"{time.monotonic() - BEGAN:6.0f} s  {what}", file=sys.stderr, flush=True)


def written(found: Measurements, load_before: float, output: Path) -> str:
    """Write what is known so far, so that a run that is broken off leaves it; returns the text."""
    command = [Path(__file__).name, *sys.argv[1:]]
    text = results.document(found, command, (load_before, os.getloadavg()[0]), time.monotonic() - BEGAN)
    output.write_text(text, "utf-8")
    return text


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--install", action="store_true", help="install the peers and end")
    parser.add_argument("--sizes", type=int, nargs="+", help="in pieces (100 1000 10000 100000)")
    parser.add_argument("--limit", type=float, default=30, help="seconds after which a peer is left out (30)")
    parser.add_argument("--quick", action="store_true", help="few repeats, and 100 and 1,000 pieces")
    parser.add_argument("--output", type=Path, default=results.RESULTS)
    arguments = parser.parse_args()
    if arguments.install:
        install()
        return 0
    if absent := missing():
        print("not found:", *absent, "(run.py --install brings the peers)", sep="\n  ", file=sys.stderr)
        return 2
    sizes = sorted(arguments.sizes or ([100, 1000] if arguments.quick else [100, 1000, 10_000, 100_000]))
    load = os.getloadavg()[0]
    with tempfile.TemporaryDirectory() as name:
        run = Run(Path(name), arguments.limit, 0.2 if arguments.quick else 1.0)
        run.starting()
        for size in sizes:
            run.size(size)
            text = written(run.found, load, arguments.output)
    run.solving([size for size in sizes if 1000 <= size <= 10_000])
    text = written(run.found, load, arguments.output)
    if arguments.output == results.RESULTS:
        readme = results.README.read_text("utf-8")
        results.README.write_text(results.with_marked(readme, results.marked(text)), "utf-8")
    print(results.marked(text))
    return 0


if __name__ == "__main__":
    sys.exit(main())
