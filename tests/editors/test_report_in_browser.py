"""Reports and previews in Chromium: they draw, find, show figures and working, switch states, print, and stay quiet."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from locate import TOP, missing, node_modules, program

pytestmark = pytest.mark.browser
EXAMPLES = TOP / "grammar" / "examples"
WYELINE = [sys.executable, "-m", "wyeline_linter.cli"]
MM_PER_POINT = 25.4 / 72


def seen_by_browser(folder: Path, **more: str) -> dict[str, Any]:
    """What the browser saw."""
    report = folder / "seen.json"
    axe = node_modules("vscode") / "axe-core" / "axe.min.js"
    if not axe.exists():
        missing(str(axe), "vscode")
    environment = (
        os.environ
        | more
        | {
            "STORY_MODULES": str(node_modules("vscode")),
            "STORY_CHROMIUM": program("chromium", "vscode"),
            "STORY_REPORT": str(report),
            "AXE": str(axe),
        }
    )
    command = [program("node", "vscode"), str(Path(__file__).with_name("report_browser.js"))]
    run = subprocess.run(command, env=environment, capture_output=True, text=True, timeout=180, check=False)
    assert run.returncode == 0, run.stdout + run.stderr
    found: dict[str, Any] = json.loads(report.read_text("utf-8"))
    return found


@pytest.fixture(scope="module", params=["field-station/station MCC-1 Grid_lost", "dairy-works/works HT-1 Mains_lost"])
def read(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> tuple[str, str, dict[str, Any]]:
    """The example, the tag that is looked for, and what the browser saw of its report."""
    model, tag, state = str(request.param).split()
    folder = tmp_path_factory.mktemp("report")
    root = str(EXAMPLES / f"{model}.wye")
    subprocess.run([*WYELINE, "report", root, "-o", str(folder), "--format", "html"], check=True, capture_output=True)
    page = str(folder / "report.html")
    return root, tag, seen_by_browser(folder, PAGE=page, TAG=tag, STATE=state.replace("_", " "))


def test_what_is_not_in_view_is_not_set_yet(read: tuple[str, str, dict[str, Any]]) -> None:
    """A browser that sets all the sheets of a large site at once takes minutes."""
    assert read[2]["setAtFirst"] == 0


def test_a_report_is_quiet_and_asks_for_nothing(read: tuple[str, str, dict[str, Any]]) -> None:
    seen = read[2]
    assert seen["console"] == []
    assert len(seen["requests"]) == 1 and seen["requests"][0].startswith("file:")


def test_no_words_of_the_diagram_lie_on_one_another(read: tuple[str, str, dict[str, Any]]) -> None:
    seen = read[2]
    assert seen["texts"] > 200
    assert seen["overlaps"] == []


def test_an_element_is_found_with_its_figures_line_and_working(read: tuple[str, str, dict[str, Any]]) -> None:
    root, tag, seen = read
    shown = subprocess.run([*WYELINE, "show", root, tag, "--json"], check=True, capture_output=True, encoding="utf-8")
    load = json.loads(shown.stdout)["equipment"][tag]["load"]
    assert seen["hits"][0] == seen["title"] == tag
    assert seen["picked"] >= 1
    file, line = seen["source"].rsplit(":", 1)
    text = (Path(root).parent / file).read_text("utf-8").splitlines()[int(line) - 1]
    assert tag in text.split()
    assert seen["facts"]["Connected"].replace("\u202f", "") == f"{load['connected']['va'] / 1e3:.2f} kVA"
    assert "Formula" in seen["working"] and f"{load['connected']['va']:.6g}"[:5] in seen["working"]
    assert seen["closed"] and seen["focus"] == "find"


def test_symbols_links_and_keys_answer(read: tuple[str, str, dict[str, Any]]) -> None:
    seen = read[2]
    assert seen["clicked"] and seen["target"] == 1
    assert seen["covered"] <= 0, "the bar hides the heading that a link leads to"
    whole, zoomed = ([float(v) for v in box.split()] for box in seen["zoomed"])
    assert zoomed[2] == pytest.approx(0.64 * whole[2], rel=1e-3) and zoomed[0] > 0.18 * whole[2]
    assert [float(v) for v in seen["back"].split()] == pytest.approx(whole)


def test_switch_states_show_their_own_figures(read: tuple[str, str, dict[str, Any]]) -> None:
    rows = read[2]["rows"]
    normal, other = rows["normal"], next(r for s, r in rows.items() if s != "normal")
    assert dict(normal) != dict(other)
    assert read[2]["viewers"] == read[2]["sheets"] > 0


def test_nothing_keeps_people_out(read: tuple[str, str, dict[str, Any]]) -> None:
    """axe-core finds nothing serious or critical: in light and dark, with one element open, with words found."""
    assert len(read[2]["barriers"]) == 4
    assert not any(read[2]["barriers"].values()), read[2]["barriers"]


def test_light_dark_and_paper(read: tuple[str, str, dict[str, Any]]) -> None:
    root, _, seen = read
    assert seen["light"] != seen["dark"] and seen["chosen"] == seen["light"]
    size = (431.8, 279.4) if "station" in root else (420.0, 297.0)
    pages = [tuple(v * MM_PER_POINT for v in page) for page in seen["pages"]]
    large = [at for at, page in enumerate(pages) if page == pytest.approx(size, abs=1.0)]
    sheets, others = large[: seen["sheets"]], large[seen["sheets"] :]
    schedule = [at for at in others if at - others[0] < 3]
    working = others[len(schedule) :]
    assert sheets == list(range(1, 1 + seen["sheets"])), "the drawings come after the cover"
    # How many pages depends on the fonts of the machine: two with narrow ones, three with DejaVu Sans.
    assert 1 <= len(schedule) <= 3 and schedule[-1] - schedule[0] == len(schedule) - 1, (
        "the feeder schedule is as large"
    )
    assert working == list(range(working[0], len(pages))), "working sheets come last, two columns on a large page"
    assert len(pages) > len(large) + 5


@contextmanager
def previewed(root: Path) -> Iterator[tuple[str, subprocess.Popen[str]]]:
    """The address of a running preview."""
    preview = subprocess.Popen([*WYELINE, "preview", str(root)], stdout=subprocess.PIPE, text=True, encoding="utf-8")
    assert preview.stdout is not None
    try:
        yield preview.stdout.readline().strip(), preview
    finally:
        preview.terminate()
        preview.wait(timeout=60)


def test_a_preview_follows_the_file_and_tells_what_is_selected(tmp_path: Path) -> None:
    folder = shutil.copytree(EXAMPLES / "dairy-works", tmp_path / "works")
    with previewed(folder / "works.wye") as (address, preview):
        seen = seen_by_browser(
            tmp_path, ADDRESS=address, MODEL=str(folder / "works.wye"), TAG="CIP-1", NEW_TAG="CIP-77"
        )
        assert preview.stdout is not None
        preview.stdout.readline()
        selected = preview.stdout.readline()
    assert len(seen["barriers"]) == 2 and not any(seen["barriers"].values()), seen["barriers"]
    # The browser itself notes that the lost file's edition was answered with a status of its own.
    assert [text for text in seen["console"] if "503" not in text] == []
    busy = (os.cpu_count() or 1) < os.getloadavg()[0]
    assert seen["renewed_ms"] < (5000 if busy or os.environ.get("CI") else 1000)
    line = next(
        i for i, t in enumerate((folder / "works.wye.away").read_text("utf-8").splitlines(), 1) if "CIP-77" in t
    )
    assert selected.rstrip().endswith(f"works.wye:{line}")
    assert "works.wye" in seen["notice"]
    assert "revision 9 · 2026-04-20" in seen["title"], "the bar of the page tells the issue of this edition"
    assert all(url.startswith(address) for url in seen["requests"])
