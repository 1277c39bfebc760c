"""A check after edits of comments and blank lines tells what a whole check tells, and judges nothing anew; in doubt the
model is judged. Held against the whole check over random edits of the shipped examples, as they are and broken."""

from __future__ import annotations

import importlib
import json
import os
import random
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from wyeline_linter import judging
from wyeline_linter.cache_folder import digest
from wyeline_linter.expectations import Expectation
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.judging import ConfigurationOf, Judged, judge
from wyeline_linter.outputs import FORMATS, WITH_EDITS, Results, json_output, sarif, text
from wyeline_linter.result_cache import ResultCache
from wyeline_linter.silent_edits import rows_after

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
ROOTS = [
    EXAMPLES / "field-station" / "station.wye",
    EXAMPLES / "dairy-works" / "works.wye",
    EXAMPLES / "broken" / "slips.wye",
    EXAMPLES / "broken" / "voltage-magnitude.wye",
]
NOTES = [
    "// seen on site",
    "",
    "// TODO: 400 A?",
    "//",
    "  // half as long",
    "    ",
    "/// said of it",
    "\t// tab",
    "   ,",
]
ENDS = ["  // as found", " //", "   ", "  /// no", "  // 100 \u00b2 m", "  // \u202e", ' // "quoted"', "\u00a0// odd"]
FACTS = ["400", "panel", "//", ", future", '"', "/", "wye 1"]


def edited(rng: random.Random, lines: list[str]) -> list[str]:
    """One edit, of the sort that says nothing more often than not."""
    lines, row = lines.copy(), rng.randrange(len(lines))
    sort = rng.choice(["note"] * 6 + ["end"] * 3 + ["gone"] * 3 + ["fact"])
    if sort == "note":
        lines.insert(row, rng.choice(NOTES))
    elif sort == "end":
        lines[row] += rng.choice(ENDS)
    elif sort == "gone":
        notes = [i for i, line in enumerate(lines) if not line.strip() or line.lstrip().startswith("//")]
        if notes:
            del lines[rng.choice(notes)]
    else:
        at = rng.randrange(len(lines[row]) + 1)
        lines[row] = lines[row][:at] + rng.choice(FACTS) + lines[row][at:]
    return lines


def told(judged: Judged, *, with_edits: bool) -> list[object]:
    """All that goes out, as text and for programs."""
    results = Results(judged.findings, judged.files, judged.expectations, Severity.WARNING, False, (), judged.off)
    made: list[object] = [text.render(judged.findings, colour=True), judged.expectations, judged.files]
    made += [[f.sort_key, f.severity, f.subject, f.position, f.allowed, f.clause] for f in judged.findings]
    return made + ([json_output.render(results), sarif.render(results)] if with_edits else [])


@pytest.fixture
def anew(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The roots that were judged anew, by checks with a cache."""
    roots: list[str] = []
    whole = judging._read_and_judged

    def watched(root: str, *rest: Any) -> Any:
        roots.append(root)
        return whole(root, *rest)

    monkeypatch.setattr(judging, "_read_and_judged", watched)
    return roots


def copied(root: Path, to: Path) -> Path:
    for file in root.parent.glob("*.wye"):
        if root.parent.name != "broken" or file == root:
            (to / file.name).write_bytes(file.read_bytes())
    return to / root.name


def asked(root: Path, cache: str, *, with_edits: bool) -> list[object]:
    judged = judge(str(root), None, ResultCache(cache), ConfigurationOf(str(root)), with_edits=with_edits)
    return told(judged, with_edits=with_edits)


@pytest.mark.parametrize("root", ROOTS, ids=lambda p: p.stem)
def test_any_edit_tells_what_a_whole_check_tells(root: Path, tmp_path: Path, anew: list[str]) -> None:
    rng = random.Random(root.stem)
    cache = str(tmp_path / "cache")
    taken_over = {True: 0, False: 0}
    for _ in range(4):
        (model := tmp_path / str(rng.random())).mkdir()
        place = copied(root, model)
        for _ in range(7):
            file = rng.choice(sorted(model.glob("*.wye")))
            for _ in range(rng.choice([1, 1, 2, 3])):
                file.write_text("\n".join(edited(rng, file.read_text("utf-8").split("\n"))), "utf-8")
            with_edits = rng.random() < 0.25
            anew.clear()
            now = asked(place, cache, with_edits=with_edits)
            taken_over[with_edits] += not anew
            assert now == asked(place, "", with_edits=with_edits)
    assert taken_over[False] >= 3, "else nothing was tested"


@pytest.mark.parametrize("seed", range(40))
def test_rows_are_those_of_the_same_lines(seed: int) -> None:
    rng = random.Random(seed)
    old = (EXAMPLES / "field-station" / "labs.wye").read_text("utf-8").split("\n")
    new = old
    for _ in range(rng.randrange(1, 5)):
        new = edited(rng, new)
    rows = rows_after(old, new)
    for row in range(len(old)) if rows is not None else ():
        try:
            now = rows.now(row)  # type: ignore[union-attr]
        except LookupError:
            continue
        assert new[now] == old[row]


BODY = [
    "wye 1",
    "panel A 208Y/120  bus 100 A",
    '  1  20 A 1p  1 kVA lighting  "a // b"',
    "",
    "panel B 208Y/120  bus 9 A",
]


@pytest.mark.parametrize(
    ("silent", "edit"),
    [
        (True, lambda b: ["// first", *b]),
        (True, lambda b: [*b, "", "// last"]),
        (True, lambda b: [*b[:2], "", "  // of the circuit", *b[2:]]),
        (True, lambda b: [*b[:4], "// of the next", *b[4:]]),
        (True, lambda b: [*b[:2], b[2] + "  // seen", *b[3:]]),
        (True, lambda b: [*b[:3], *b[4:]]),
        (True, lambda b: [*b[:4], b[4] + "   "]),
        (False, lambda b: [*b[:2], "// in the first column", *b[2:]]),
        (False, lambda b: [*b[:4], "/// documentation", *b[4:]]),
        (False, lambda b: [*b[:2], b[2].replace("// b", "// c"), *b[3:]]),
        (False, lambda b: [*b[:2], b[2] + "  /// seen", *b[3:]]),
        (False, lambda b: [*b[:2], b[2] + "\t", *b[3:]]),
        (False, lambda b: [*b[:2], b[2][1:], *b[3:]]),
        (False, lambda b: [*b[:2], b[2].lstrip(), *b[3:]]),
        (False, lambda b: ["// \u202e turned", *b]),
        (False, lambda b: [*b[:4], b[4].replace("bus", " bus")]),
        (False, lambda b: [b[0], "// " + b[1], *b[2:]]),
        (False, lambda b: [b[0], *b[4:], *b[1:4]]),
        (False, lambda b: [*b[:1], *["//"] * 3000, *b[1:]]),
    ],
)
def test_what_is_silent(silent: bool, edit: Callable[[list[str]], list[str]]) -> None:
    new = edit(BODY)
    assert new != BODY
    assert (rows_after(BODY, new) is not None) == silent
    assert (rows_after(new, BODY) is not None) == silent


def test_documentation_stays_with_its_statement() -> None:
    said = [*BODY[:4], "/// said of B", *BODY[4:]]
    for apart in ("", "// between", "  "):
        parted = [*said[:5], apart, *said[5:]]
        assert rows_after(said, parted) is None
        assert rows_after(parted, said) is None
        assert rows_after([*said, "x"], [*parted, "x"]) is None
    assert rows_after(said, ["// above", *said]) is not None


SITE = "utility     QUAY    480Y/277            fault 28 kA, x/r 7\npanel P-1 480Y/277  bus 99 A\nfeeder QUAY -> P-2\n"


@pytest.fixture
def site(tmp_path: Path, anew: list[str]) -> Path:
    (root := tmp_path / "site.wye").write_text(SITE, "utf-8")
    assert json.loads(str(asked(root, str(tmp_path / "cache"), with_edits=True)[-2]))["findings"]
    anew.clear()
    return root


def test_who_asks_for_edits_gets_those_of_the_text_as_it_is(site: Path, anew: list[str]) -> None:
    cache = str(site.parent / "cache")
    site.write_text("// above\n" + SITE, "utf-8")
    assert asked(site, cache, with_edits=False) == asked(site, "", with_edits=False)
    assert anew == [str(site)], "the whole check alone"
    anew.clear()
    assert asked(site, cache, with_edits=True) == asked(site, "", with_edits=True)
    assert len(anew) == 2


@pytest.mark.parametrize("name", FORMATS)
def test_formats_with_edits_are_those_that_need_them(site: Path, name: str) -> None:
    """Each way out, once with the edits of fixes and once with their titles alone."""
    judged = judge(str(site), None, ResultCache(""), ConfigurationOf(str(site)))
    bare = [replace(f, fixes=tuple(fix._replace(edits=()) for fix in f.fixes)) for f in judged.findings]
    assert any(fix.edits for f in judged.findings for fix in f.fixes)

    def made(findings: list[Finding]) -> str:
        if name == "text":
            return text.render(findings, colour=True)
        module = importlib.import_module(f"wyeline_linter.outputs.{'json_output' if name == 'json' else name}")
        return str(module.render(Results(findings, judged.files, [], Severity.WARNING, True)))

    assert (made(judged.findings) != made(bare)) == (name in WITH_EDITS)


def test_a_line_that_is_shown_is_judged_anew_when_its_comment_changes(site: Path, anew: list[str]) -> None:
    site.write_text(SITE.replace("P-2\n", "P-2  // which?\n"), "utf-8")
    assert asked(site, str(site.parent / "cache"), with_edits=False) == asked(site, "", with_edits=False)
    assert len(anew) == 2


def test_a_file_that_is_no_text_any_more_is_told(site: Path, tmp_path: Path) -> None:
    from wyeline_grammar.sources import SourceError

    site.write_bytes(SITE.encode() + b"// \xff\n")
    with pytest.raises(SourceError, match="UTF-8"):
        asked(site, str(tmp_path / "cache"), with_edits=False)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("texts", {}), ("texts", []), ("texts", None), ("texts", {"site.wye": 1}), ("order", []), ("order", None),
        ("findings", [[]]), ("findings", [[1, 2, 3]]), ("findings", 7),
        ("findings", [["r", 3, "m", [0, "x"], *"fnwccsp"]]),
        ("expectations", [[]]), ("expectations", [[0, None, "t", "met", ""]]),
    ],
)  # fmt: skip
def test_an_entry_that_is_none_is_not_taken_over(site: Path, field: str, value: object) -> None:
    """It is in its form and under its digest, as only this user can have written it."""
    cache = site.parent / "cache"
    (kept,) = cache.glob("*.json")
    entry = json.loads(kept.read_bytes().partition(b"\n")[2])
    if value == {"site.wye": 1}:
        value = {str(site): 1}
    entry[field] = value
    body = json.dumps(entry).encode()
    kept.write_bytes(digest(body).encode() + b"\n" + body)
    os.chmod(kept, 0o600)
    site.write_text("// above\n" + SITE, "utf-8")
    assert asked(site, str(cache), with_edits=False) == asked(site, "", with_edits=False)


def test_expectations_move_with_their_lines(tmp_path: Path, anew: list[str]) -> None:
    root = tmp_path / "site.wye"
    root.write_text(SITE + "expect demand at P-1 <= 5 kVA\n", "utf-8")
    cache = str(tmp_path / "cache")
    before = judge(str(root), None, ResultCache(cache), ConfigurationOf(str(root))).expectations
    root.write_text("// one\n\n" + root.read_text("utf-8"), "utf-8")
    anew.clear()
    after = judge(str(root), None, ResultCache(cache), ConfigurationOf(str(root)), with_edits=False).expectations
    assert not anew
    assert after == [Expectation(e.path, e.row + 2, *e[2:]) for e in before] and after
