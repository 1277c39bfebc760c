"""A check asked again in the same words is answered with what it printed, and with nothing else that has changed."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from wyeline_linter import analysis
from wyeline_linter.cli import main

PART = "panel       LP-1    208Y/120            bus 225 A\n"
SITE = 'include "part.wye"\nutility     QUAY    480Y/277            fault 28 kA, x/r 7\nfeeder QUAY -> LP-1  100 A 3p\n'


@pytest.fixture
def plans(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("WYELINE_CACHE", str(tmp_path / "cache"))
    folder = tmp_path / "above" / "plans"
    folder.mkdir(parents=True)
    (folder / "site.wye").write_text(SITE, "utf-8")
    (folder / "part.wye").write_text(PART, "utf-8")
    monkeypatch.chdir(folder)
    return folder


@pytest.fixture
def judged(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The roots that were judged anew."""
    roots: list[str] = []
    whole = analysis.Analysis.__init__

    def watched(self: analysis.Analysis, root: str, *rest: object, **more: object) -> None:
        roots.append(os.path.basename(root))
        whole(self, root, *rest, **more)  # type: ignore[arg-type]

    monkeypatch.setattr(analysis.Analysis, "__init__", watched)
    return roots


CHANGES: dict[str, Callable[[Path], object]] = {
    "an included file": lambda p: (p / "part.wye").write_text(PART.replace("208Y/120", "480Y/277"), "utf-8"),
    "one byte": lambda p: (p / "site.wye").write_text(SITE.replace("28", "29"), "utf-8"),
    "a blank line": lambda p: (p / "site.wye").write_text("\n" + SITE, "utf-8"),
    "a file gone": lambda p: (p / "part.wye").unlink(),
    "a folder in its place": lambda p: ((p / "part.wye").unlink(), (p / "part.wye").mkdir()),
    "a configuration": lambda p: (p / "wyeline.toml").write_text("[rules]\nleg-voltage-mismatch = 'off'\n", "utf-8"),
    "a baseline": lambda p: (p / "wyeline.baseline.json").write_text('{"version": 1, "entries": []}', "utf-8"),
    "where includes end": lambda p: (p.parent / "wyeline.toml").write_text("basis = 'us-2023'\n", "utf-8"),
    "another model": lambda p: (p / "other.wye").write_text("panel P-9 208Y/120  bus 100 A\n", "utf-8"),
}


@pytest.mark.parametrize("change", CHANGES)
def test_any_change_of_what_an_answer_rests_on_asks_anew(
    plans: Path, judged: list[str], capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, change: str
) -> None:
    code = main(["check", "."])
    first = capsys.readouterr().out
    assert judged == ["site.wye"]
    assert (main(["check", "."]), capsys.readouterr().out) == (code, first)
    assert judged == ["site.wye"]
    CHANGES[change](plans)
    changed = main(["check", "."]), capsys.readouterr()
    if change not in ("a baseline", "a blank line"):  # findings that are kept hold on
        assert len(judged) > 1
    monkeypatch.setenv("WYELINE_CACHE", "off")
    assert (main(["check", "."]), capsys.readouterr()) == changed


def test_other_words_and_another_folder_are_other_questions(plans: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (plans / "deep").mkdir()
    asked = [
        ["check", "site.wye", *more] for more in ([], ["-q"], ["--fail-on", "gap"], ["--format=json"], ["--no-cache"])
    ]
    for _ in range(2):
        told = [(main(words), capsys.readouterr().out) for words in asked]
        assert len({out for _, out in told}) == 3
        assert told[0] == told[2] == told[4]
    os.chdir("deep")
    assert main(["check", "../site.wye", "-q"]) == 1
    assert capsys.readouterr().out == told[1][1].replace("part.wye", str(plans / "part.wye")).replace(
        "site.wye", str(plans / "site.wye")
    )


def test_what_could_not_be_judged_and_what_writes_is_never_answered_from_memory(
    plans: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for words, code in ((["check", "site.wye", "gone.wye"], 2), (["check", "site.wye", "--output", "made"], 1)):
        for _ in range(2):
            assert main(words) == code
            capsys.readouterr()
    assert (plans / "made").exists()
    (plans / "made").unlink()
    assert main(["check", "site.wye", "--output", "made"]) == 1
    assert (plans / "made").exists()
    assert not list((plans.parent.parent / "cache").glob("*.told"))
