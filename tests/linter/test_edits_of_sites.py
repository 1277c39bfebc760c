"""Edits of whole sites: the answers of a fresh check, file by file, at the cost of what the edit touched."""

from __future__ import annotations

import random
import re
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files, read_text
from wyeline_linter import repair
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.near_names import NearNames, near_declared

EXAMPLES = Path(__file__).parents[2] / "grammar" / "examples"
SITES = [EXAMPLES / "field-station" / "station.wye", EXAMPLES / "dairy-works" / "works.wye"]
WORDS = ["", "x", "3p", "Cu", "Al", "N", "future", "normally-open", "G #8"]
NUMBERS = ["1", "15", "20", "30", "100", "400"]
RULES = ["wire-not-in-tables", "legs-unbalanced", "unfed-equipment", "leg-voltage-mismatch", "branch-drop-high"]


def told(findings: list[Finding]) -> list[object]:
    return [
        (
            f.sort_key,
            f.severity,
            (f.found, f.needed, f.change, f.allowed),
            [(r.place.file, r.place.row, r.message) for r in f.related],
            [
                (x.title, [(e.block.file, e.block.first_line + e.line, e.start, e.text) for e in x.edits])
                for x in f.fixes
            ],
        )
        for f in findings
    ]


def shown(findings: list[Finding]) -> list[object]:
    """What a client sees of them: all but the fixes, which are worked out when it asks."""
    return [line[:-1] for line in told(findings)]  # type: ignore[index]


Edit = tuple[tuple[int, int], tuple[int, int], str]


def any_edit(rng: random.Random, lines: list[str]) -> Edit:
    row = rng.randrange(len(lines))
    line = lines[row]
    numbers, words = list(re.finditer(r"\d+(\.\d+)?", line)), list(re.finditer(r"\S+", line))
    sort = rng.choice(["number"] * 5 + ["word"] * 2 + ["out", "twice", "remark", "allow", "other"])
    if sort == "number" and numbers:
        at = rng.choice(numbers)
        return (row, at.start()), (row, at.end()), rng.choice(NUMBERS)
    if sort == "word" and words:
        at = rng.choice(words)
        return (row, at.start()), (row, at.end()), rng.choice(WORDS)
    if sort == "out":
        return (row, 0), (row + 1, 0), ""
    if sort == "other":
        return (row, 0), (row, len(line)), rng.choice(lines)
    new = {"remark": "// seen on site", "allow": f'  allow {rng.choice(RULES)} "why"'}.get(sort, line)
    return (row, 0), (row, 0), new + "\n"


@pytest.mark.parametrize("site", SITES, ids=lambda p: p.stem)
@pytest.mark.parametrize("seed", range(4))
def test_edited_sites_say_what_a_fresh_check_says(site: Path, seed: int) -> None:
    rng = random.Random(seed)
    files = Files()
    analysis = Analysis(str(site), files)
    for _ in range(8):
        file = files.get(rng.choice([p for p in analysis.model.files if files.known(p) is not None]))
        before = {p: (analysis.version_of(p), shown(analysis.findings_of(p))) for p in analysis.model.files}
        if rng.random() < 0.3:
            analysis.study_findings()
        analysis.edited(*file.edit(*any_edit(rng, file.lines)))
        for path, (version, was) in before.items():
            assert analysis.version_of(path) != version or shown(analysis.findings_of(path)) == was, path
        texts = {p: known.text for p in analysis.model.files if (known := files.known(p)) is not None}
        fresh = Analysis(str(site), Files(lambda p, texts=texts: texts[p] if p in texts else read_text(p)))  # type: ignore[misc]
        assert told(analysis.findings()) == told(fresh.findings())
        if rng.random() < 0.3:
            assert told(analysis.study_findings()) == told(fresh.study_findings())


def boards(count: int) -> Files:
    """A file a board, each with an error of its own: it is fed with another voltage, and a name is misspelt."""
    texts = {
        "/m/site.wye": "utility U 480Y/277  fault 10 kA, x/r 4\nswitchboard M 480Y/277  bus 4000 A\nfeeder U -> M\n"
    }
    for i in range(count):
        texts["/m/site.wye"] += f'include "b{i}.wye"\n'
        texts[f"/m/b{i}.wye"] = (
            f"panel P-{i} 208Y/120  bus 100 A\n  1  20 A 1p  1 kVA lighting\nfeeder M -> P-{i}  100 A 3p  9 m\n"
            f"panel Q-{i} 480Y/277  bus 100 A\nfeeder M -> Q-{i}  100 A 3p  9 m\nfeeder Q-{i} -> NONE-{i}  20 A 3p\n"
        )
    return Files(lambda path: texts[path])


def test_an_edit_touches_no_other_file_and_works_out_no_fix(monkeypatch: pytest.MonkeyPatch) -> None:
    files = boards(60)
    analysis = Analysis("/m/site.wye", files, "/m")
    refused = [f for f in analysis.findings() if f.rule == "leg-voltage-mismatch"]
    assert len(refused) == 60
    asked: list[str] = []
    whole = repair.repairs_for
    monkeypatch.setattr(repair, "repairs_for", lambda view, feeder: (asked.append(feeder.key), whole(view, feeder))[1])
    file, others = files.get("/m/b7.wye"), [p for p in analysis.model.files if p != "/m/b7.wye"]
    before, ran = {p: analysis.version_of(p) for p in others}, analysis.ran.copy()
    row = file.lines.index("feeder M -> Q-7  100 A 3p  9 m")
    analysis.edited(*file.edit((row, 16), (row, 19), "110"))
    analysis.findings()
    assert {p: analysis.version_of(p) for p in others} == before
    assert analysis.ran["rule"] - ran["rule"] < 500, "not the rules of what else the switchboard feeds"
    assert not asked
    assert refused[0].fixes and len(asked) == 1


def test_a_remark_judges_nothing_and_leaves_the_studies_as_they_are() -> None:
    files = Files()
    analysis = Analysis(str(SITES[0]), files)
    studied, ran = told(analysis.study_findings()), analysis.ran.copy()
    file = files.get(str(SITES[0]))
    row = next(b.first_line for b in file.blocks[1:] if not b.lines[0].startswith("//"))
    analysis.edited(*file.edit((row, 0), (row, 0), "// seen on site\n"))
    assert len(analysis.study_findings()) == len(studied)
    assert {step for step in analysis.ran if analysis.ran[step] != ran[step]} == {"parse"}


@pytest.mark.parametrize("names", [20, 2500])
def test_near_names_are_kept_only_while_they_hold(names: int) -> None:
    files = Files(lambda _: "".join(f"panel LP-{i}A 208Y/120  bus 100 A\n" for i in range(names)))
    analysis = Analysis("/m/site.wye", files, "/m")
    near, model, file = NearNames(analysis.model), analysis.model, files.get("/m/site.wye")
    asked = ["LP-1", "LP-7B", "lp-3a", "LP-A1", "LP-12AA", "PL-5A", "É-1", "é-1", "LQ-4A"]
    rng = random.Random(3)
    for new in ["LP-1", "LP-77", "e\u0301-1", "LP-1A2", "PL-5", "LP-3a", "XX", "LP-12AAA"]:
        assert [near.of(name) for name in asked] == [near_declared(name, model) for name in asked]
        row = rng.randrange(len(file.lines) - 1)
        old = file.lines[row].split()[1]
        analysis.edited(*file.edit((row, 6), (row, 6 + len(old)), f'"{new}"'))
        near.changed({old, new, f'"{new}"'})
