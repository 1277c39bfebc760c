"""A long session of the language server: ``python tests/robustness/soak.py`` (20,000 edits, 2,000 pieces).

Edits, undone edits, saves, renames of tags, files that vanish and return, cancels and nonsense on the wire. At
checkpoints the documents are written to disk, and what the editor shows, findings of the studies among it, is compared
with what ``wyeline check`` says. Then every text is put back to what it was, so that memory is measured of one model.
"""

from __future__ import annotations

import argparse
import json
import random
import re
import subprocess
import tempfile
import time
from dataclasses import dataclass, field
from pathlib import Path

from command_line import WYELINE, environment
from wire import LONGEST_WAIT_S, Wire

PIECES_A_BOARD = 40


@dataclass
class Outcome:
    """What a session was, in figures."""

    edits: int = 0
    requests: int = 0
    cancelled: int = 0
    nonsense: int = 0
    events: int = 0
    renamed: int = 0
    checkpoints: int = 0
    findings: int = 0
    memory_mb: list[float] = field(default_factory=list)
    files_open: list[int] = field(default_factory=list)
    threads: list[int] = field(default_factory=list)
    """At every checkpoint."""

    def growth(self) -> float:
        """Memory at the end over memory when a third of the session had gone by."""
        return self.memory_mb[-1] / self.memory_mb[len(self.memory_mb) // 3] - 1


def site(pieces: int) -> dict[str, list[str]]:
    """A site of boards, each in a file of its own, with about so many pieces of equipment."""
    files: dict[str, list[str]] = {}
    root = ["wye 1", 'project "Endless Quay"', "  basis us-2023", "utility GRID  480Y/277  fault 40 kA, x/r 8"]
    root += ["switchboard MSB  480Y/277  bus 4000 A, rated 65 kA", "feeder GRID -> MSB  4000 A 3p"]
    for b in range(max(1, pieces // PIECES_A_BOARD)):
        lines = [
            f"// board {b}",
            f"switchboard DB-{b}  480Y/277  bus 800 A, rated 65 kA",
            f"feeder MSB -> DB-{b}  800 A 3p",
        ]
        for i in range((PIECES_A_BOARD - 1) // 3):
            t, p, m = f"T-{b}-{i}", f"LP-{b}-{i}", f"M-{b}-{i}"
            lines += [
                f"transformer {t}  480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2",
                f"feeder DB-{b} -> {t}  125 A 3p  3#1 + G #6 Cu  20 m",
                f"panel {p}  208Y/120  bus 225 A, rated 22 kA, spaces 42",
                '  1  20 A 1p  1.2 kVA receptacle  "Bench"',
                "  3  20 A 1p  0.9 kVA lighting",
                f"feeder {t} -> {p}  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  6 m",
                f"motor {m}  460 3ph  15 hp, pf 0.86, eff 91 %",
                f"feeder DB-{b} -> {m}  40 A 3p  3#8 + G #10 Cu  31 m",
            ]
        files[f"board-{b}.wye"] = lines
        root.append(f'include "board-{b}.wye"')
    files["site.wye"] = root
    return files


class Session:
    """One drafter at work, drawn at random; she keeps what the texts are."""

    def __init__(self, folder: Path, pieces: int, seed: int, rest_s: float) -> None:
        self.folder = folder
        self.rng = random.Random(seed)
        self.texts = site(pieces)
        self.sound = {name: list(lines) for name, lines in self.texts.items()}
        self.versions: dict[str, int] = {}
        (folder / "wyeline.toml").touch()
        for name in self.texts:
            self.save(name)
        self.wire = Wire(folder)
        self.outcome = Outcome()
        folders = [{"uri": folder.as_uri(), "name": "site"}]
        options = {"studies": {"restSeconds": rest_s}}
        answer = self.wire.ask(
            "initialize", {"capabilities": {}, "workspaceFolders": folders, "initializationOptions": options}
        )
        assert "result" in answer, answer
        self.wire.tell("initialized", {})
        for name in ["site.wye", *self.rng.sample(sorted(self.texts), min(4, len(self.texts)))]:
            self.open(name)

    def uri(self, name: str) -> str:
        return (self.folder / name).as_uri()

    def text(self, name: str) -> str:
        return "\n".join(self.texts[name]) + "\n"

    def save(self, name: str) -> None:
        (self.folder / name).write_text(self.text(name), encoding="utf-8")

    def open(self, name: str) -> None:
        if name not in self.versions:
            self.versions[name] = 1
            document = {"uri": self.uri(name), "languageId": "wye", "version": 1, "text": self.text(name)}
            self.wire.tell("textDocument/didOpen", {"textDocument": document})

    def close(self, name: str) -> None:
        self.save(name)
        del self.versions[name]
        self.wire.tell("textDocument/didClose", {"textDocument": {"uri": self.uri(name)}})
        self.changed_on_disk([name])

    def changed_on_disk(self, names: list[str], kind: int = 2) -> None:
        self.outcome.events += 1
        changes = [{"uri": self.uri(name), "type": kind} for name in names]
        self.wire.tell("workspace/didChangeWatchedFiles", {"changes": changes})

    def whole(self, name: str, lines: list[str]) -> None:
        """Replace the text of an open document."""
        self.texts[name] = list(lines)
        self.versions[name] += 1
        self.outcome.edits += 1
        document = {"uri": self.uri(name), "version": self.versions[name]}
        self.wire.tell(
            "textDocument/didChange", {"textDocument": document, "contentChanges": [{"text": self.text(name)}]}
        )

    def edit(self, name: str, row: int, start: int, end: int, new: str) -> None:
        lines = self.texts[name]
        made = (lines[row][:start] + new + lines[row][end:]).split("\n")
        lines[row : row + 1] = made
        self.versions[name] += 1
        self.outcome.edits += 1
        change = {"range": {"start": {"line": row, "character": start}, "end": {"line": row, "character": end}}}
        document = {"uri": self.uri(name), "version": self.versions[name]}
        self.wire.tell(
            "textDocument/didChange", {"textDocument": document, "contentChanges": [{**change, "text": new}]}
        )

    # a drafter's moves

    def step(self) -> None:
        rng = self.rng
        name = rng.choice(sorted(self.versions))
        lines = self.texts[name]
        row = rng.randrange(len(lines))
        line = lines[row]
        move = rng.random()
        if move < 0.45:  # a keystroke within a line
            at = rng.randint(0, len(line))
            self.edit(
                name, row, at, min(len(line), at + rng.randint(0, 2)), rng.choice([*"0123456789 AV-", "", "\n", "//"])
            )
        elif move < 0.65:  # the line as it was once meant
            self.edit(name, row, 0, len(line), rng.choice(self.sound[name]))
        elif move < 0.72:
            self.edit(name, row, len(line), len(line), "\n" + rng.choice(self.sound[name]))
        elif move < 0.76:  # the whole text as it was
            self.whole(name, self.sound[name])
        elif move < 0.77:
            self.rename(name, row)
        elif move < 0.90:
            self.request(name, row, rng.randint(0, len(line)))
        elif move < 0.93:
            self.save(name)
            self.wire.tell("textDocument/didSave", {"textDocument": {"uri": self.uri(name)}})
            self.changed_on_disk([name])
        elif move < 0.96:
            self.open_or_close(name)
        else:
            self.nonsense(name)

    def request(self, name: str, row: int, column: int) -> None:
        here = {"textDocument": {"uri": self.uri(name)}, "position": {"line": row, "character": column}}
        spot = {"start": here["position"], "end": here["position"]}
        whole = {"start": {"line": 0, "character": 0}, "end": {"line": len(self.texts[name]), "character": 0}}
        method, params = self.rng.choice(
            [
                ("hover", here),
                ("completion", here),
                ("definition", here),
                ("references", {**here, "context": {"includeDeclaration": True}}),
                ("prepareRename", here),
                ("codeLens", {"textDocument": here["textDocument"]}),
                ("inlayHint", {"textDocument": here["textDocument"], "range": whole}),
                ("foldingRange", {"textDocument": here["textDocument"]}),
                ("documentLink", {"textDocument": here["textDocument"]}),
                ("documentSymbol", {"textDocument": here["textDocument"]}),
                ("semanticTokens/full", {"textDocument": here["textDocument"]}),
                ("formatting", {"textDocument": here["textDocument"], "options": {"tabSize": 2, "insertSpaces": True}}),
                ("codeAction", {"textDocument": here["textDocument"], "range": spot, "context": {"diagnostics": []}}),
            ]
        )
        number = self.wire.begin(f"textDocument/{method}", params)
        self.outcome.requests += 1
        if self.rng.random() < 0.4:
            self.wire.tell("$/cancelRequest", {"id": number})
            self.outcome.cancelled += 1
        if self.rng.random() < 0.2:
            self.wire.until(lambda: number in self.wire.answers)
            self.wire.answers.clear()

    def rename(self, name: str, row: int) -> None:
        """Give a tag another name, wherever the server says that it stands."""
        found = re.search(r"(?:DB|LP|T|M)-\d[\w-]*", self.texts[name][row])
        if found is None:
            return
        here = {"textDocument": {"uri": self.uri(name)}, "position": {"line": row, "character": found.start()}}
        answer = self.wire.ask("textDocument/rename", {**here, "newName": f"R-{self.outcome.edits}"})
        for uri, edits in ((answer.get("result") or {}).get("changes") or {}).items():
            target = self.folder_name(uri)
            lines = list(self.texts[target])
            for edit in sorted(
                edits,
                key=lambda e: e["range"]["start"]["line"] * 10_000 + e["range"]["start"]["character"],
                reverse=True,
            ):
                start, end = edit["range"]["start"], edit["range"]["end"]
                assert start["line"] == end["line"]
                line = lines[start["line"]]
                lines[start["line"]] = line[: start["character"]] + edit["newText"] + line[end["character"] :]
            if target in self.versions:
                self.whole(target, lines)
            else:
                self.texts[target] = lines
                self.save(target)
                self.changed_on_disk([target])
            self.outcome.renamed += 1

    def vanish(self) -> None:
        """A closed file of the model is gone for a while."""
        closed = sorted(self.texts.keys() - self.versions.keys())
        if closed:
            name = self.rng.choice(closed)
            (self.folder / name).unlink()
            self.changed_on_disk([name], 3)
            self.save(name)
            self.changed_on_disk([name], 1)

    def open_or_close(self, name: str) -> None:
        if name != "site.wye" and len(self.versions) > 3:
            self.close(name)
        else:
            self.open(self.rng.choice(sorted(self.texts)))
        extra = self.folder / "extra.wye"
        if extra.exists():
            extra.unlink()
        else:
            extra.write_text("panel X-1 208Y/120\n", encoding="utf-8")
        self.changed_on_disk(["extra.wye"], 1 if extra.exists() else 3)
        if self.rng.random() < 0.3:
            self.vanish()

    def nonsense(self, name: str) -> None:
        self.outcome.nonsense += 1
        self.rng.choice(
            [
                lambda: self.wire.raw(b"Content-Length: 7\r\n\r\n{broken"),
                lambda: self.wire.send({"method": 5, "id": None}),
                lambda: self.wire.tell("textDocument/didChange", {"textDocument": {"uri": self.uri(name)}}),
                lambda: self.wire.tell("textDocument/didClose", {"textDocument": {"uri": "untitled:never"}}),
                lambda: self.wire.tell("$/cancelRequest", {"id": "never"}),
                lambda: self.wire.begin("textDocument/hover", {"textDocument": 7}),
                lambda: self.wire.begin("no/such/method", None),
            ]
        )()

    # checkpoints

    def checkpoint(self) -> None:
        """What the editor shows is what the command line says of the same texts."""
        for name in self.texts:
            self.save(name)
        extra = self.folder / "extra.wye"
        if extra.exists():
            extra.unlink()
            self.changed_on_disk(["extra.wye"], 3)
        self.wire.ask(
            "textDocument/hover",
            {"textDocument": {"uri": self.uri("site.wye")}, "position": {"line": 0, "character": 0}},
        )
        for name, version in self.versions.items():
            uri = self.uri(name)
            try:
                self.wire.until(lambda u=uri, v=version: self.wire.published.get(u, (None, []))[0] == v)
            except AssertionError:
                told = b"".join(self.wire.complaints)[-2000:].decode()
                raise AssertionError(f"{name}: {version} is {self.wire.published.get(uri)}\n{told}") from None
        done = subprocess.run(
            [*WYELINE, "check", "--format", "json", "."],
            cwd=self.folder,
            env=environment(),
            capture_output=True,
            check=False,
        )
        said = {
            (Path(f["path"]).name, f["range"]["start"]["line"], f["range"]["start"]["character"], f["rule"])
            for f in json.loads(done.stdout)["findings"]
            if f.get("allowed") is None
        }
        end = time.monotonic() + LONGEST_WAIT_S
        while True:
            shown = self.shown()  # studies come when typing rests
            stale, lost = shown - said, {f for f in said - shown if f[0] in self.versions}
            if not (stale or lost) or time.monotonic() > end:
                break
            time.sleep(0.2)
        assert not stale and not lost, f"stale in the editor: {sorted(stale)[:5]}; lost: {sorted(lost)[:5]}"
        self.outcome.checkpoints += 1
        self.outcome.findings += len(said)
        self.restore()
        self.measure()

    def shown(self) -> set[tuple[str, int, int, str]]:
        """What the editor shows: file, place and rule."""
        return {
            (self.folder_name(uri), d["range"]["start"]["line"], d["range"]["start"]["character"], d["code"])
            for uri, (_, diagnostics) in list(self.wire.published.items())
            for d in diagnostics
        }

    def restore(self) -> None:
        """Every text as it was once meant, and the studies of it done."""
        for name, lines in self.sound.items():
            if name in self.versions:
                self.whole(name, lines)
            elif self.texts[name] != lines:
                self.texts[name] = list(lines)
                self.save(name)
                self.changed_on_disk([name])
        self.settle()

    def settle(self) -> None:
        """Wait until the server has nothing more to do: it uses no time of the processor."""
        still = 0
        before = -1
        end = time.monotonic() + LONGEST_WAIT_S
        while still < 4 and time.monotonic() < end:
            used = self.wire.ticks()
            still = still + 1 if used == before else 0
            before = used
            time.sleep(0.25)

    def folder_name(self, uri: str) -> str:
        return uri.rpartition("/")[2]

    def measure(self) -> None:
        files, threads = self.wire.kept_open()
        self.outcome.memory_mb.append(self.wire.resident_mb())
        self.outcome.files_open.append(files)
        self.outcome.threads.append(threads)

    def end(self) -> None:
        self.wire.ask("shutdown", None)
        self.wire.tell("exit", None)
        assert self.wire.process.wait(60) == 0
        told = b"".join(self.wire.complaints).decode()
        faults = re.findall(r"^[\w.]+(?:Error|Exception)\b.*", told, re.MULTILINE)
        assert all("BadParametersError" in fault for fault in faults), told[-3000:]  # nonsense is refused by this name


def run(edits: int, pieces: int, checkpoints: int, seed: int, folder: Path, rest_s: float = 0.4) -> Outcome:
    """``rest_s``: how long typing rests before studies begin; with little many are begun in vain."""
    session = Session(folder, pieces, seed, rest_s)
    try:
        for part in range(1, checkpoints + 1):
            while session.outcome.edits < edits * part // checkpoints:
                session.step()
            session.checkpoint()
            print(f"{session.outcome.edits} edits, {session.outcome.memory_mb[-1]:.0f} MB", flush=True)
        session.end()
    finally:
        if session.wire.process.poll() is None:
            session.wire.process.kill()
    return session.outcome


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--edits", type=int, default=20_000)
    parser.add_argument("--pieces", type=int, default=2_000)
    parser.add_argument("--checkpoints", type=int, default=20)
    parser.add_argument("--seed", type=int, default=11)
    chosen = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        outcome = run(chosen.edits, chosen.pieces, chosen.checkpoints, chosen.seed, Path(folder))
    print(outcome)
    print(f"memory at the end over that after a third: {100 * outcome.growth():+.1f} %")


if __name__ == "__main__":
    main()
