"""House rules as tests: arrows point down, names are chosen, types and style are sound, documents are current."""

from __future__ import annotations

import ast
import os
import re
import subprocess
import sys
from fnmatch import fnmatch
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
WINGS = {
    "wyeline_grammar": (ROOT / "grammar" / "wyeline_grammar", set()),
    "wyeline_linter": (ROOT / "linter" / "wyeline_linter", {"wyeline_grammar"}),
    "wyeline_server": (ROOT / "server" / "wyeline_server", {"wyeline_grammar", "wyeline_linter"}),
}
FORBIDDEN_IN = {
    "wyeline_grammar": {"pygls", "lsprotocol", "numpy", "scipy"},
    "wyeline_linter": {"pygls", "lsprotocol"},
}


def imports_of(path: Path) -> set[str]:
    names: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            names |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
            names.add(node.module.split(".")[0])
    return names


@pytest.mark.parametrize("wing", WINGS)
def test_arrows_point_down(wing: str) -> None:
    folder, below = WINGS[wing]
    files = sorted(folder.rglob("*.py"))
    assert files
    for path in files:
        found = imports_of(path)
        wrong = (found & WINGS.keys()) - below - {wing}
        assert not wrong, f"{path.relative_to(ROOT)} imports {wrong}"
        assert not found & FORBIDDEN_IN.get(wing, set()), path


def test_a_name_is_imported_from_the_file_that_defines_it() -> None:
    """The database of a model is heavy to import: who only looks at a model asks `view.py`."""
    for path in sorted((*ROOT.glob("linter/**/*.py"), *ROOT.glob("server/**/*.py"), *ROOT.glob("tests/**/*.py"))):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.ImportFrom) and node.module == "wyeline_linter.analysis":
                assert [alias.name for alias in node.names] == ["Analysis"], path


def test_files_are_named_after_what_they_do_and_stay_readable() -> None:
    for folder, _ in WINGS.values():
        for path in folder.rglob("*.py"):
            assert path.stem not in {"utils", "helpers", "misc", "common", "base"}, path
            lines = len(path.read_text("utf-8").splitlines())
            assert lines <= 550, f"{path.relative_to(ROOT)} has {lines} lines: is it still one theme?"


def test_no_test_hangs_on_the_clock_on_the_wall() -> None:
    """Other work on the machine stretches it; processor time is what a bound may be set to."""
    for path in sorted((ROOT / "tests").rglob("*.py")):
        if path.parent.name != "benchmarks" and path != Path(__file__):
            assert "perf_counter" not in path.read_text("utf-8"), path


ASKED_BY_NAME = {"register", "SETTINGS"}
"""What the server wants of its features, and what the settings pages of the editors print."""


def made_elsewhere(statement: ast.stmt) -> bool:
    """A decorated function, or a rule: what registers them asks for them."""
    if isinstance(statement, ast.Assign):
        return isinstance(statement.value, ast.Call) and ast.unparse(statement.value.func) == "rule"
    return bool(getattr(statement, "decorator_list", ())) and not isinstance(statement, ast.ClassDef)


def test_what_is_defined_is_asked_for_and_not_by_tests_alone() -> None:
    trees = {p: ast.parse(p.read_text("utf-8")) for folder, _ in WINGS.values() for p in sorted(folder.rglob("*.py"))}
    asked = set(re.findall(r"[\w]+", (ROOT / "pyproject.toml").read_text("utf-8")))
    for node in (node for tree in trees.values() for node in ast.walk(tree)):
        if isinstance(node, ast.ImportFrom):
            asked |= {alias.name for alias in node.names}
        elif isinstance(node, ast.Attribute):
            asked.add(node.attr)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value.isidentifier():
            asked.add(node.value)
    unasked = []
    for path, tree in trees.items():
        inside = [{n.id for n in ast.walk(statement) if isinstance(n, ast.Name)} for statement in tree.body]
        for k, statement in enumerate(tree.body):
            targets = getattr(statement, "targets", [getattr(statement, "target", None)])
            names = {getattr(statement, "name", None), *(getattr(target, "id", None) for target in targets)} - {None}
            used = asked.union(*inside[:k], *inside[k + 1 :])
            if not made_elsewhere(statement):
                unasked += [f"{path.name}: {n}" for n in names - used - ASKED_BY_NAME if not n.startswith("__")]
    assert not unasked, "delete what nothing asks for, or move it to the tests that ask"


MAPS = {
    "wyeline_grammar": ("DEVELOPERS.md", "### The grammar wing"),
    "wyeline_linter": ("DEVELOPERS.md", "### The linter wing"),
    "wyeline_server": ("server/README.md", "## Map"),
}


@pytest.mark.parametrize("wing", WINGS)
def test_the_map_of_a_wing_names_its_files_and_no_others(wing: str) -> None:
    page, heading = MAPS[wing]
    section = (ROOT / page).read_text("utf-8").partition(f"\n{heading}")[2].partition("\n#")[0]
    first_cells = "\n".join(row.split("|")[1] for row in section.splitlines() if row.startswith("| `"))
    named = [name.removesuffix(".py").rstrip("/") for name in re.findall(r"`([^`]+)`", first_cells)]
    there = {p.parent.name if p.name == "__init__.py" else p.stem for p in WINGS[wing][0].glob("*.py")}
    there |= {p.parent.name for p in WINGS[wing][0].glob("*/__init__.py")}
    there.discard(wing)
    unnamed = sorted(file for file in there if not any(fnmatch(file, name) for name in named))
    gone = [name for name in named if not any(fnmatch(file, name) for file in there)]
    assert not unnamed and not gone, f"the map in {page} lacks {unnamed} and names {gone}, which are not there"


HEAVY = ("lark", "pint", "pygls", "lsprotocol", "asyncio")
ONLY_FOR_STUDIES = ("numpy", "scipy")


def check_leaving_out(cache: Path, *heavy: str) -> None:
    """Check the starter model in a process of its own, and assert what it did not import."""
    code = (
        "import sys\n"
        "from wyeline_linter.cli import main\n"
        f"main(['check', {str(ROOT / 'grammar/wyeline_grammar/starter.wye')!r}, '--quiet'])\n"
        f"heavy = {set(heavy)!r} & sys.modules.keys()\n"
        "assert not heavy, heavy\n"
    )
    environment = {**os.environ, "WYELINE_CACHE": str(cache)}
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=False, env=environment)
    assert done.returncode == 0, done.stderr


def test_a_check_imports_nothing_heavy_and_an_unchanged_one_no_numerics(tmp_path: Path) -> None:
    check_leaving_out(tmp_path, *HEAVY)
    assert any(tmp_path.iterdir()), "nothing was kept, so the next run is not a warm one"
    check_leaving_out(tmp_path, *HEAVY, *ONLY_FOR_STUDIES)


@pytest.mark.parametrize("command", [["check"], ["format", "--check"]], ids=" ".join)
def test_ruff_is_content(command: list[str]) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "ruff", *command, "."], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr


def test_types_are_sound() -> None:
    done = subprocess.run([sys.executable, "-m", "mypy"], cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr


def test_words_that_no_report_may_say() -> None:
    """The tool never calls an installation fit for use: that is for the people who answer for it."""
    words = re.compile(r"\b(compliant|approved|complies with|is safe)\b", re.IGNORECASE)
    for folder, _ in WINGS.values():
        for path in folder.rglob("*.py"):
            for node in ast.walk(ast.parse(path.read_text("utf-8"))):
                if isinstance(node, ast.Constant) and isinstance(node.value, str):
                    assert not words.search(node.value), f"{path.relative_to(ROOT)}:{node.lineno}: {node.value[:80]}"
