"""The judge of the editors' stories refuses each story with a part missing: a check that saw nothing must not pass."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from story import NEW_PANEL, PANEL, Story

Change = Callable[[dict[str, Any], Story], object]


def _good(folder: Path) -> tuple[Story, dict[str, Any]]:
    """A story as it ends when everything worked."""
    story = Story(folder, "BOARD")
    site = story.site.read_text(encoding="utf-8").replace(PANEL, NEW_PANEL)
    site = site.replace(
        f"feeder BOARD[AB] -> {NEW_PANEL}               100 A 2p",
        f"transformer TX-1 480 1ph -> 120/240  25 kVA\nfeeder BOARD[AB] -> TX-1  100 A 2p\nfeeder TX-1 -> {NEW_PANEL}",
    )
    story.site.write_text(site, encoding="utf-8")
    story.included.write_text(story.included.read_text(encoding="utf-8").replace(PANEL, NEW_PANEL), encoding="utf-8")
    report = {
        "before": ["BOARD offers 480 V between A and B; WET-1 wants 240 V"],
        "marked": PANEL,
        "hover": "480 V line to line, 277 V to neutral",
        "solved": ["26 kA may flow in a fault at BOARD"],
        "after": [],
    }
    return story, report


def _replaced(old: str, new: str) -> Change:
    def change(_: dict[str, Any], story: Story) -> None:
        for file in (story.site, story.included):
            file.write_text(file.read_text(encoding="utf-8").replace(old, new), encoding="utf-8")

    return change


CHANGES: dict[str, Change] = {
    "no finding": lambda report, _: report.update(before=[]),
    "another finding": lambda report, _: report.update(before=["`WET-1` is not fed"]),
    "a finding on the wrong place": lambda report, _: report.update(marked="WET-1 \n"),
    "nothing solved": lambda report, _: report.update(solved=[]),
    "another fault": lambda report, _: report.update(solved=["28 kA may flow in a fault at BOARD"]),
    "no hover": lambda report, _: report.update(hover=""),
    "a hover without the derived voltage": lambda report, _: report.update(hover="switchboard, 480Y/277"),
    "the finding stayed": lambda report, _: report.update(after=["BOARD offers 480 V"]),
    "no transformer": _replaced("transformer TX-1", "// transformer TX-1"),
    "the panel is still fed from the board": _replaced("-> TX-1", f"-> {NEW_PANEL}"),
    "a line was harmed": _replaced("fault 28 kA", "fault 28 k"),
    "not renamed": _replaced(NEW_PANEL, PANEL),
    "renamed in one file only": lambda _, story: story.included.write_text(f"feeder {PANEL} -> EV-1\n"),
}


def test_the_whole_story_passes(tmp_path: Path) -> None:
    story, report = _good(tmp_path)
    story.report.write_text(json.dumps(report))
    story.judge()


@pytest.mark.parametrize("what", CHANGES)
def test_a_story_with_a_part_missing_fails(what: str, tmp_path: Path) -> None:
    story, report = _good(tmp_path)
    CHANGES[what](report, story)
    story.report.write_text(json.dumps(report))
    with pytest.raises(AssertionError):
        story.judge()


def test_a_missing_editor_fails_in_ci_and_skips_elsewhere(monkeypatch: pytest.MonkeyPatch) -> None:
    from locate import program

    monkeypatch.setenv("CI", "true")
    with pytest.raises(pytest.fail.Exception, match=r"install-editors kate"):
        program("no-such-editor", "kate")
    monkeypatch.delenv("CI")
    with pytest.raises(pytest.skip.Exception, match=r"install-editors kate"):
        program("no-such-editor", "kate")
