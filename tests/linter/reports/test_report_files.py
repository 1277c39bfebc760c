"""Reports as files: they open where they should, run nothing of the model's, say their cautions, and never change."""

from __future__ import annotations

import csv
import io
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from html.parser import HTMLParser
from pathlib import Path

import pytest
from report_models import DAIRY, EXAMPLES, NASTY, STATION, nasty_model, printed, written

from wyeline_grammar.sources import SourceError
from wyeline_linter.cli import main
from wyeline_linter.commands.report import Progress
from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.reports.csv_output import CAUTION_COLUMN, UNKNOWN_COLUMN, guarded
from wyeline_linter.reports.markdown_output import escaped
from wyeline_linter.reports.package import PARTS, TABLE_KINDS
from wyeline_linter.reports.reference import reference_markdown


@pytest.fixture(scope="module")
def station(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return reported(STATION, tmp_path_factory.mktemp("station"), "--date", "1 May")


def reported(root: Path, folder: Path, *more: str) -> Path:
    printed("report", str(root), "-o", str(folder), *more)
    return folder


class Page(HTMLParser):
    """What a page holds: elements, ids, links, by the template they stand in (empty: outside)."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.elements: list[tuple[str, dict[str, str]]] = []
        self.ids: dict[str, list[str]] = {"": []}
        self.links: dict[str, list[str]] = {"": []}
        self.scripts: list[str] = []
        self.words: list[str] = []
        self._template = ""
        self._inside = ""
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        found = {k: v or "" for k, v in attrs}
        self.elements.append((tag, found))
        self._inside = tag
        if tag == "template":
            self._template = found["data-scenario"]
            self.ids.setdefault(self._template, [])
            self.links.setdefault(self._template, [])
        if "id" in found:
            self.ids[self._template].append(found["id"])
        if "href" in found:
            self.links[self._template].append(found["href"])

    def handle_endtag(self, tag: str) -> None:
        self._inside = ""
        if tag == "template":
            self._template = ""

    def handle_data(self, data: str) -> None:
        if self._inside == "script":
            self.scripts.append(data)
        elif self._inside != "style":
            self.words.append(data)


@pytest.fixture(scope="module")
def page(station: Path) -> Page:
    return Page((station / "report.html").read_text("utf-8"))


def test_the_page_fetches_nothing(page: Page) -> None:
    assert {tag for tag, _ in page.elements} & {"link", "img", "iframe", "object", "embed", "base", "form"} == set()
    for tag, attributes in page.elements:
        assert "src" not in attributes, tag
        assert not any(name.startswith("on") for name in attributes), tag
    assert all(link.startswith("#") for links in page.links.values() for link in links)
    policy = next(a["content"] for t, a in page.elements if a.get("http-equiv") == "Content-Security-Policy")
    assert policy.startswith("default-src 'none';") and "connect-src" not in policy


def test_every_link_leads_somewhere_and_every_anchor_is_one(page: Page) -> None:
    assert set(page.ids) == {"", "normal", "Grid lost", "Transfer switch serviced", "Quiet weekend"}
    for template, ids in page.ids.items():
        assert len(set(ids)) == len(ids), [i for i in ids if ids.count(i) > 1][:5]
        there = {*ids, *page.ids[""]}
        lost = [link for link in page.links[template] if link[1:] not in there]
        assert not lost, lost[:5]
    assert not page.ids["normal"]


def test_every_sheet_says_its_cautions_and_its_code_edition(station: Path, page: Page) -> None:
    sections = [a for t, a in page.elements if t == "section" and "part" in a.get("class", "").split()]
    captions = [a for t, a in page.elements if t == "p" and a.get("class") == "caution"]
    assert len(captions) >= len(sections) == 4 * len(PARTS)
    for path in files_of(station):
        text = path.read_text("utf-8-sig")
        if path.suffix == ".csv" and text.count("\n") == 1:
            continue  # a header alone says nothing that wants a caution
        plain = re.sub(r"\s+|\\" if path.suffix == ".csv" else r"<[^>]*>|\s+|\\", "", text)
        assert re.sub(r"\s+", "", CAUTION) in plain, path.name
        assert "2023edition" in plain, path.name


def test_no_file_praises_the_installation(station: Path, tmp_path: Path) -> None:
    words = re.compile(r"\b(compliant|approved|safe)\b", re.IGNORECASE)
    for path in (*files_of(station), *files_of(reported(DAIRY, tmp_path))):
        assert not words.search(path.read_text("utf-8-sig").replace("unsafe-inline", "")), path.name


def files_of(folder: Path) -> Iterator[Path]:
    yield from (p for p in sorted(folder.rglob("*")) if p.is_file())


def test_csv_opens_with_its_columns(station: Path) -> None:
    kinds = {kind.name: kind for kind in TABLE_KINDS}
    seen = set()
    for path in (station / "csv").iterdir():
        kind = kinds["panel" if path.name.startswith("panel-") else path.stem]
        seen.add(kind.name)
        with path.open(encoding="utf-8-sig", newline="") as file:
            header, *rows = csv.reader(file)
        assert header == [*kind.keys, UNKNOWN_COLUMN, CAUTION_COLUMN]
        for row in rows:
            assert len(row) == len(header)
            for column, value in zip(kind.columns, row, strict=False):
                if column.numeric and value not in ("", "?"):
                    float(value)
    assert seen == set(kinds)


def test_csv_opens_in_pandas(station: Path) -> None:
    import pandas

    frame = pandas.read_csv(station / "csv" / "feeders.csv", na_values=["?"])
    assert frame.columns[0] == "feeder" and frame["length_m"].dtype == float


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("=1+1", "'=1+1"),
        ("@SUM(A1)", "'@SUM(A1)"),
        ("+cmd|'/c calc'!A0", "'+cmd|'/c calc'!A0"),
        ("-5", "-5"),
        ("-5 degC", "'-5 degC"),
        ("\t=1", "'\t=1"),
        ("T-1", "T-1"),
    ],
)
def test_no_cell_is_taken_for_a_formula(text: str, kept: str) -> None:
    assert guarded(text) == kept


def test_a_model_cannot_put_markup_into_a_report(tmp_path: Path) -> None:
    folder = reported(nasty_model(tmp_path), tmp_path / "out")
    page = Page((folder / "report.html").read_text("utf-8"))
    assert len(page.scripts) == 1 and "alert" not in page.scripts[0]
    assert "".join(page.words).count("<script>alert(1)</script>") > 3
    for path in (folder / "csv").iterdir():
        for row in csv.reader(io.StringIO(path.read_text("utf-8-sig"), newline="")):
            assert not any(v[:1] in "=+@-\t\r" and v not in ("", "-5") for v in row), row
    for path in (folder / "md").iterdir():
        assert "<script" not in path.read_text("utf-8")
        assert not re.search(r"(?<!\\)\]\(javascript", path.read_text("utf-8"))


def test_markdown_shows_text_as_it_is() -> None:
    assert escaped("a|b <i> [c](d) `x|y`") == r"a\|b &lt;i&gt; \[c\](d) `x\|y`"
    assert escaped("one ` alone\nnext") == r"one \` alone next"
    assert "<script>" not in escaped(NASTY.replace("`c`", ""))


def test_the_same_model_gives_the_same_bytes_wherever_it_lies(station: Path, tmp_path: Path) -> None:
    copy = shutil.copytree(EXAMPLES / "field-station", tmp_path / "elsewhere")
    command = [sys.executable, "-m", "wyeline_linter.cli", "report", "station.wye", "-o", "out", "--date", "1 May"]
    environment = os.environ | {"PYTHONHASHSEED": "77"}
    subprocess.run(command, cwd=copy, env=environment, check=True, capture_output=True)
    ours = {p.relative_to(station): p.read_bytes() for p in files_of(station)}
    theirs = {p.relative_to(copy / "out"): p.read_bytes() for p in files_of(copy / "out")}
    assert ours.keys() == theirs.keys()
    assert [name for name in ours if ours[name] != theirs[name]] == []


def test_only_what_is_asked_for_is_written(tmp_path: Path) -> None:
    reported(STATION, tmp_path, "--only", "feeders,labels", "--format", "csv", "--scenario", "Grid lost")
    assert {p.name for p in files_of(tmp_path)} == {"feeders.csv", "labels.csv"}
    diagram = reported(STATION, tmp_path / "d", "--only", "diagram", "--format", "html")
    found = Page((diagram / "report.html").read_text("utf-8"))
    assert all(link[1:] in {*found.ids[""], *found.ids[t]} for t, links in found.links.items() for link in links)


def test_a_schedule_of_a_board_that_is_gone_is_named_and_left(tmp_path: Path) -> None:
    """Whoever hands the folder on would hand it on, too. Nothing is deleted that somebody may want."""
    text = (
        "wye 1\nutility GRID 480Y/277  fault 14 kA, x/r 4\npanel LP-1 480Y/277  bus 100 A\n"
        "feeder GRID -> LP-1  100 A 3p\n"
    )
    folder = tmp_path / "out"
    command = ("report", str(written(tmp_path, text)), "-o", str(folder), "--format", "csv", "--format", "svg")
    assert "earlier" not in printed(*command)
    (folder / "csv" / "notes.csv").write_text("mine", "utf-8")
    (folder / "svg" / "one-line-2.svg").write_text("", "utf-8")
    written(tmp_path, text.replace("LP-1", "LP-2"))
    told = printed(*command)
    assert "csv/panel-LP-1.csv, svg/one-line-2.svg" in told and "notes" not in told and "LP-2" not in told
    assert (folder / "csv" / "panel-LP-1.csv").exists()
    assert "earlier" not in printed(*command, "--only", "feeders"), "who writes a part anew did not ask for the rest"


def test_what_cannot_be_done_is_said(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    blocked = tmp_path / "file"
    blocked.write_text("in the way")
    for more, words in (
        (["--only", "feders"], "there is no part `feders`"),
        (["--scenario", "Doomsday"], "no scenario `Doomsday`"),
        (["-o", str(blocked)], "could not be written"),
    ):
        assert main(["report", str(STATION), *more]) == 2
        assert words in capsys.readouterr().err


def test_the_reference_names_every_column() -> None:
    text = printed("report", "--columns")
    assert text == reference_markdown()
    for kind in TABLE_KINDS:
        assert f"`{kind.name}`" in text
        assert all(f"`{column.key}`" in text for column in kind.columns)


def test_progress_is_for_terminals(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
    Progress(patience_s=0)("drawing")
    assert capsys.readouterr().err == ""
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True)
    shown = Progress(patience_s=0)
    shown("drawing")
    shown.end()
    err = capsys.readouterr().err
    assert "wyeline report: drawing" in err and err.endswith("\r")


def test_an_empty_model_still_gives_a_report(tmp_path: Path) -> None:
    root = tmp_path / "empty.wye"
    root.write_text("wye 1\n")
    try:
        folder = reported(root, tmp_path / "out")
    except SourceError as error:  # pragma: no cover - the assertion tells what went wrong
        pytest.fail(str(error))
    assert "Nothing." in (folder / "report.html").read_text("utf-8")
