"""What is published works by itself: the wheel in an empty environment, the sdist with the tests that it carries."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
import tarfile
import venv
import zipfile
from pathlib import Path

import pytest

HOUSE = Path(__file__).parents[2]
pytestmark = pytest.mark.skipif(
    os.environ.get("CI") != "true" and os.environ.get("WYELINE_WHEEL") != "1",
    reason="downloads and installs: set WYELINE_WHEEL=1 (CI does)",
)


def run(*command: str | Path, cwd: Path) -> str:
    clean = {k: v for k, v in os.environ.items() if k not in ("PYTHONPATH", "VIRTUAL_ENV")}
    done = subprocess.run(
        [str(c) for c in command],
        cwd=cwd,
        env={**clean, "WYELINE_CACHE": "off"},
        capture_output=True,
        text=True,
        timeout=600,
    )
    assert done.returncode == 0, f"{command}\n{done.stdout[-3000:]}\n{done.stderr[-3000:]}"
    return done.stdout


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    pytest.importorskip("build", reason="pip install build")
    out = tmp_path_factory.mktemp("dist")
    source = tmp_path_factory.mktemp("source") / "wyeline"
    ignored = shutil.ignore_patterns(".git", ".venv", "node_modules", "__pycache__", ".*_cache", ".hypothesis")
    shutil.copytree(HOUSE, source, ignore=ignored)
    run(sys.executable, "-m", "build", "--outdir", out, cwd=source)  # the sdist, and the wheel out of the sdist
    return out


@pytest.fixture(scope="module")
def installed(built: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The scripts of an environment with nothing in it but the wheel and what it asks for."""
    folder = tmp_path_factory.mktemp("clean")
    venv.create(folder, with_pip=True)
    scripts = folder / ("Scripts" if os.name == "nt" else "bin")
    run(scripts / "python", "-m", "pip", "install", "-q", next(built.glob("*.whl")), cwd=folder)
    return scripts


def test_the_wheel_holds_the_packages_and_their_data_and_nothing_else(built: Path) -> None:
    names = zipfile.ZipFile(next(built.glob("*.whl"))).namelist()
    assert {n.split("/")[0] for n in names if ".dist-info" not in n} == {
        "wyeline_grammar",
        "wyeline_linter",
        "wyeline_server",
    }
    for wing in ("grammar", "linter", "server"):
        kept = {p.relative_to(HOUSE / wing).as_posix() for p in (HOUSE / wing).glob("wyeline_*/**/*") if p.is_file()}
        kept = {n for n in kept if "__pycache__" not in n}
        assert kept <= set(names), sorted(kept - set(names))


def test_an_empty_environment_checks_the_examples_and_a_new_model(installed: Path, tmp_path: Path) -> None:
    for site in ("field-station", "dairy-works"):
        shutil.copytree(HOUSE / "grammar" / "examples" / site, tmp_path / site)
        run(installed / "wyeline", "check", "--fail-on", "error", site, cwd=tmp_path)
        assert '"version"' in run(installed / "wyeline", "show", site, "--json", cwd=tmp_path)
    run(installed / "wyeline", "new", "mine", cwd=tmp_path)
    run(installed / "wyeline", "check", "mine", cwd=tmp_path)
    run(installed / "wyeline", "explain", "unfed-equipment", cwd=tmp_path)
    assert run(installed / "wyeline-server", "--version", cwd=tmp_path).startswith("wyeline-server ")


def test_the_sdist_passes_tests_of_its_own(built: Path, tmp_path: Path) -> None:
    """Those of the language and of the electrics, and the corpus, out of the unpacked sdist and against its own
    sources; those of the server and the editors ask the same packages, and are slow to start."""
    with tarfile.open(next(built.glob("*.tar.gz"))) as packed:
        packed.extractall(tmp_path, filter="data")
    (unpacked,) = tmp_path.iterdir()
    for name in ("README.md", "DEVELOPERS.md", "CHANGELOG.md", "LICENSE", "grammar/README.md"):
        assert (unpacked / name).is_file(), name
    paths = ":".join(str(unpacked / wing) for wing in ("grammar", "linter", "server"))
    chosen = ["tests/grammar", "tests/linter", "tests/published", "tests/robustness/test_fuzz.py"]
    told = subprocess.run(
        [
            sys.executable,
            "-m",
            "pytest",
            "-q",
            "-n",
            "auto",
            "-p",
            "no:cacheprovider",
            *chosen,
            "-k",
            "not coverage_guided",
        ],
        cwd=unpacked,
        env={**os.environ, "PYTHONPATH": paths.replace(":", os.pathsep)},
        capture_output=True,
        text=True,
        timeout=1_800,
        check=False,
    )
    assert told.returncode == 0, told.stdout[-3000:]
    passed = re.search(r"(\d+) passed", told.stdout)
    assert passed is not None and int(passed[1]) > 3_000, told.stdout[-3000:]
