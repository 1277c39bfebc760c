"""A model, a configuration or a cache from a stranger is data: nothing of it runs, leaves its folder, or hangs."""

from __future__ import annotations

import ast
import asyncio
import csv
import gc
import importlib
import json
import os
import re
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest
from command_line import environment, write, wyeline

from wyeline_grammar.formatter import format_text
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.sources import SourceError
from wyeline_grammar.tokens import tokenize
from wyeline_linter.cache_folder import digest
from wyeline_linter.review.git import Repository

HOUSE = Path(__file__).parents[2]
SOURCES = [p for wing in ("grammar", "linter", "server") for p in (HOUSE / wing).rglob("*.py")]
SITE = "utility U1 208Y/120  fault 10 kA, x/r 4\npanel P1 208Y/120  bus 100 A, MLO\nfeeder U1 -> P1  100 A 3p\n"


# nothing runs


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: str(p.relative_to(HOUSE)))
def test_no_source_evaluates_text_or_reads_what_can_run(path: Path) -> None:
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import | ast.ImportFrom):
            names = {a.name.split(".")[0] for a in node.names} | {(getattr(node, "module", None) or "").split(".")[0]}
            assert not names & {"pickle", "marshal", "shelve", "dill", "yaml", "code", "runpy"}, (path, node.lineno)
        if isinstance(node, ast.Call):
            called = ast.unparse(node.func)
            assert called not in ("eval", "exec", "compile", "__import__", "os.system", "os.popen"), (path, node.lineno)
            assert not any(k.arg == "shell" for k in node.keywords), (path, node.lineno)


RUNS = "__import__('os').system('touch pwned')"


def test_nothing_in_a_model_or_a_configuration_runs(tmp_path: Path) -> None:
    write(
        tmp_path,
        site=f'{SITE}/// {RUNS}\npanel "{RUNS}" 208Y/120\n  1  20 A 1p  "$(touch pwned)"\n  note "`touch pwned`"\n',
    )
    (tmp_path / "wyeline.toml").write_text(
        f'[rules]\n"{RUNS}" = "off"\nunfed-equipment = "!!python/object:os.system"\n'
    )
    for command in (["check"], ["check", "--fix"], ["show"], ["format"], ["show", "--json"]):
        wyeline(*command, "site.wye", cwd=tmp_path)
    (tmp_path / "wyeline.toml").unlink()
    for command in (["check", "--fix", "--unsafe"], ["show"], ["format"]):
        wyeline(*command, "site.wye", cwd=tmp_path)
    assert not (tmp_path / "pwned").exists()


def test_a_git_that_lies_beside_the_model_is_not_started(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Windows would look for a program in the working folder before it looks in those of the PATH."""
    for name in ("model", "programs"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "git.exe").write_bytes(b"")
    started: list[str] = []

    def start(words: list[str], **_: object) -> None:
        started.append(words[0])
        raise OSError("not here")

    monkeypatch.setattr(subprocess, "run", start)
    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.chdir(tmp_path / "model")
    monkeypatch.setenv("PATH", os.pathsep.join((".", "", str(tmp_path / "programs"))))
    with pytest.raises(SourceError):
        Repository.around(str(tmp_path / "model"))
    assert started == [str(tmp_path / "programs" / "git.exe")]
    monkeypatch.setenv("PATH", ".")
    with pytest.raises(SourceError, match=r"no git\.exe"):
        Repository.around(str(tmp_path / "model"))
    assert len(started) == 1


# no text takes long

ADVERSARIAL = [
    *(
        '"',
        "[",
        "1-",
        "A-",
        "a/",
        "#",
        "1,",
        "1.",
        "x ",
        "[A ",
        "+",
        "9",
        "A.",
        "- ",
        "1/2-",
        "3x",
        "480Y/",
        ": ",
        "//",
    ),
    *(
        "\u00fc-",
        "1..",
        "20A/1P ",
        "3P 100 A ",
        "2 in EMT ",
        "400AF/350AT ",
        "1,200 ",
        "(3)#8 ",
        'in 2" ',
        "\ufeff",
        "\xa0,",
    ),
]


@pytest.mark.parametrize("piece", ADVERSARIAL)
def test_time_grows_with_the_length_and_no_faster(piece: str, request: pytest.FixtureRequest) -> None:
    def spent(length: int, n: int) -> float:
        line = "panel P1 208Y/120 " + piece * (length // len(piece)) + f" {n}"
        begun = time.process_time()
        tokenize(line)
        lower_block((line,))
        format_text(line)
        return time.process_time() - begun

    gc.disable()  # it would walk what all tests before have left, in the long text more often than in the short one
    request.addfinalizer(gc.enable)
    spent(1_000, 0)
    short, long = min(spent(15_000, i) for i in (1, 2)), min(spent(120_000, i) for i in (3, 4))
    assert long < 20 * short + 0.3, f"8 times the text took {long / short:.0f} times as long ({long:.2f} s)"


def _patterns() -> dict[str, re.Pattern[str]]:
    """Every pattern of the three wings: those that modules hold, and those written where they are used."""
    found: dict[str, re.Pattern[str]] = {}
    for wing in ("grammar", "linter", "server"):
        package = importlib.import_module(f"wyeline_{wing}")
        for path in sorted(Path(str(package.__file__)).parent.rglob("*.py")):
            text = path.read_text("utf-8")
            tree = ast.parse(text)
            for node in ast.walk(tree):
                if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.args):
                    continue
                first = node.args[0]
                if getattr(node.func.value, "id", "") == "re" and isinstance(first, ast.Constant):
                    found[f"{path.stem}:{node.lineno}"] = re.compile(first.value)
            if re.search(r"^(import re$|SLIPS\b)", text, re.MULTILINE):
                name = ".".join(path.relative_to(Path(str(package.__file__)).parents[1]).with_suffix("").parts)
                module = importlib.import_module(name)
                for held, value in vars(module).items():
                    if isinstance(value, re.Pattern) and isinstance(value.pattern, str):
                        found[f"{path.stem}.{held}"] = value
                for slip in getattr(module, "SLIPS", ()):
                    found[f"slip {slip.pattern.pattern}"] = slip.pattern
    return found


def test_no_pattern_backtracks_without_end() -> None:
    """Each pattern against strings that make nested repetition explode."""
    patterns = _patterns()
    assert len(patterns) > 100
    assert any(name.startswith("slip ") for name in patterns)
    for name, pattern in patterns.items():
        for piece in ADVERSARIAL:
            text = piece * (400 // len(piece)) + "!"
            begun = time.process_time()
            pattern.search(text)
            pattern.fullmatch(text)
            assert time.process_time() - begun < 0.5, (name, piece)


# the cache


def cached(tmp_path: Path, kind: str) -> tuple[dict[str, str], Path, str]:
    """A folder that holds an entry of one kind; the other kind is taken away, so that this one is asked."""
    write(tmp_path, site=SITE)
    cache = tmp_path / "cache"
    env = {"WYELINE_CACHE": str(cache)}
    told = wyeline("check", "site.wye", cwd=tmp_path, env=env).out
    assert "known-slip" in told
    (entry,) = cache.glob("*" + kind)
    for other in set(cache.iterdir()) - {entry}:
        other.unlink()
    assert entry.stat().st_mode & 0o777 == 0o600
    return env, entry, told


def lie(entry: Path) -> bytes:
    """An entry that says that all is well, complete but for its own mark."""
    mark, _, body = entry.read_bytes().partition(b"\n")
    if entry.suffix == ".told":
        return mark + b"\n" + body.replace(b"1", b"0", 1)
    changed = json.loads(body)
    changed["findings"] = []
    return mark + b"\n" + json.dumps(changed).encode()


@pytest.mark.parametrize("kind", [".json", ".told"])
@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"\x80\x04\x95cos\nsystem\n(S'touch pwned'\ntR.",
        b"[" * 200_000,
        b"{}",
        b'{"own": 1}',
        b"\xff" * 100,
        lie,
        lambda entry: entry.read_bytes()[:-20],
        lambda entry: entry.read_bytes().replace(b"known-slip", b"known-slop"),
    ],
    ids=["empty", "pickle", "deep", "object", "other", "binary", "lie", "torn", "flipped"],
)
def test_a_planted_or_corrupt_entry_is_never_believed(tmp_path: Path, content: Any, kind: str) -> None:
    env, entry, told = cached(tmp_path, kind)
    entry.write_bytes(content(entry) if callable(content) else content)
    assert wyeline("check", "site.wye", cwd=tmp_path, env=env).out == told
    assert not (tmp_path / "pwned").exists()


@pytest.mark.skipif(os.name == "nt", reason="permissions of POSIX systems")
@pytest.mark.parametrize("kind", [".json", ".told"])
def test_a_cache_that_others_may_write_is_not_read(tmp_path: Path, kind: str) -> None:
    env, entry, told = cached(tmp_path, kind)
    _, _, body = lie(entry).partition(b"\n")
    forged = digest(body).encode() + b"\n" + body
    for opened in (entry, entry.parent):
        entry.write_bytes(forged)
        entry.chmod(0o600)
        entry.parent.chmod(0o700)
        opened.chmod(0o777)
        assert wyeline("check", "site.wye", cwd=tmp_path, env=env).out == told
    entry.parent.chmod(0o700)
    entry.unlink(missing_ok=True)
    (tmp_path / "elsewhere").write_bytes(forged)
    entry.symlink_to(tmp_path / "elsewhere")
    (tmp_path / "elsewhere").chmod(0o666)
    wyeline("check", "site.wye", cwd=tmp_path, env=env)


# reports

SCRIPT = "</script></title><script>alert(1)</script><img src=x onerror=alert(2)> & ]]> | `x` [a](javascript:b)"
FORMULAS = ["=1+2", "+cmd", "-2+3", "@SUM(A1)", "\t=1"]


def test_reports_escape_everything(tmp_path: Path) -> None:
    texts = "".join(f'  {2 * i + 1}  20 A 1p  1 kVA lighting  "{t}"\n' for i, t in enumerate([SCRIPT, *FORMULAS]))
    site = SITE.replace("MLO\n", f'main lugs, spaces 42, "{SCRIPT}"\n{texts}')
    write(tmp_path, site=f'project "{SCRIPT}"\n  basis us-2023\n  client "{SCRIPT}"\n{site}')
    ran = wyeline("report", "site.wye", "-o", "out", cwd=tmp_path)
    assert ran.code == 0, ran
    made = [p for p in (tmp_path / "out").rglob("*") if p.is_file()]
    assert {".html", ".csv", ".md", ".svg"} <= {p.suffix for p in made}
    for path in made:
        text = path.read_text("utf-8-sig")
        if path.suffix in (".html", ".svg"):
            assert "alert(1)</script>" not in text and "<img src=x" not in text, path
            assert 'href="javascript:' not in text, path
        elif path.suffix == ".md":
            assert not re.search(r"(?<!\\)(<script|<img|\](?=\(javascript))", text), path
        elif path.suffix == ".csv":
            for row in csv.reader(text.splitlines()):
                for cell in row:
                    assert not cell.startswith(("=", "+", "@", "\t")) and not re.match(r"-[^\d.]|-\d+\+", cell), (
                        path,
                        cell,
                    )


def test_a_report_stays_in_its_folder(tmp_path: Path) -> None:
    names = ["../../../evil", "/abs/evil", "..\\evil", "con", ".", "a/b"]
    boards = "".join(
        f'panel "{n}" 208Y/120  bus 100 A\n  1  20 A 1p  1 kVA lighting\nfeeder U1 -> "{n}"  100 A 3p\n' for n in names
    )
    inside = tmp_path / "work"
    inside.mkdir()
    write(inside, site=SITE + boards)
    wyeline("report", "site.wye", "-o", "out", cwd=inside)
    assert sorted(p.name for p in tmp_path.iterdir()) == ["work"]
    assert sorted(p.name for p in inside.iterdir()) == ["out", "site.wye"]


# the server


def test_no_web_page_can_talk_to_the_server(tmp_path: Path) -> None:
    """A page that a browser shows, also one whose name was rebound to this machine, is refused by its origin."""
    client = pytest.importorskip("websockets.asyncio.client", reason="pip install websockets")
    from websockets.exceptions import InvalidStatus

    async def visit() -> None:
        process = await asyncio.create_subprocess_exec(
            *(sys.executable, "-m", "wyeline_server.start", "--ws", "0"),
            stderr=asyncio.subprocess.PIPE,
            cwd=tmp_path,
            env=environment(),
        )
        try:
            assert process.stderr is not None
            said = (await process.stderr.readline()).decode()
            port = re.fullmatch(r"listening on 127\.0\.0\.1:(\d+)\n", said)
            assert port, said
            address = f"ws://127.0.0.1:{port[1]}"
            for origin in ("http://evil.example", f"http://127.0.0.1:{port[1]}", "null"):
                with pytest.raises(InvalidStatus) as refused:
                    async with client.connect(address, origin=origin):
                        pass
                assert refused.value.response.status_code == 403
            async with client.connect(address) as connection:
                await connection.send(json.dumps({"jsonrpc": "2.0", "id": 1, "method": "shutdown"}))
                assert json.loads(await connection.recv())["id"] == 1
        finally:
            process.kill()
            await process.wait()

    asyncio.run(visit())
