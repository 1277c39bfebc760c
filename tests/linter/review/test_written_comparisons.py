"""A comparison as text, Markdown, HTML and JSON: with cautions, never too long, and nothing of a model is markup."""

from __future__ import annotations

import json as reader
import re
from html.parser import HTMLParser
from typing import Any

import pytest

from wyeline_linter.findings import Severity
from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.review import as_html, as_json, as_markdown, as_text, causes, measures
from wyeline_linter.review.comparison import Comparison, compare_versions
from wyeline_linter.review.consequences import Kind
from wyeline_linter.review.documents import Version
from wyeline_linter.review.measures import from_to, written
from wyeline_linter.review.ordering import counted

HOSTILE = "@team <img src=x onerror=alert(1)> [a](https://example.org) | #12 ``` *x* &amp;"


def site(panels: int, kva: str, name: str = "Shed") -> str:
    lines = [
        'wye 1\nproject "Row"\n  basis us-2023\nutility UTIL 480Y/277  fault 30 kA, x/r 8',
        "switchboard MSB 480Y/277  bus 4000 A, main 4000 A, rated 65 kA\nfeeder UTIL -> MSB  4000 A 3p",
    ]
    for i in range(panels):
        lines.append(f'panel LP-{i} 480Y/277  bus 100 A, spaces 12\n  1  20 A 1p  {kva} kVA lighting  "{name} {i}"')
        lines.append(f"feeder MSB -> LP-{i}  100 A 3p")
    return "\n".join(lines) + "\n"


def compared(old: str, new: str) -> Comparison:
    return compare_versions(*(Version("/m/site.wye", lambda _, text=text: text, "/m") for text in (old, new)))


@pytest.fixture(scope="module")
def hostile() -> Comparison:
    found = compared(site(2, "1"), site(2, "9", HOSTILE))
    found.model = HOSTILE
    return found


WRITERS = {
    "text": as_text.text,
    "markdown": as_markdown.markdown,
    "html": as_html.html,
    "json": as_json.json,
}


@pytest.mark.parametrize("name", WRITERS)
def test_the_caution_stands_in_every_form(name: str, hostile: Comparison) -> None:
    out = WRITERS[name]([hostile])
    assert CAUTION in out
    assert WRITERS[name]([hostile]) == out, "the same comparison is written the same"


def test_nothing_of_a_model_is_markup_in_markdown(hostile: Comparison) -> None:
    out = as_markdown.markdown([hostile])
    outside = re.sub(r"`[^`\n]*`", "", out)
    assert "<img" not in outside and "@team" not in outside and not re.search(r"(?<!\\)\]\(", outside)
    tags = set(re.findall(r"</?[a-z]+", outside))
    assert tags <= {"<details", "</details", "<summary", "</summary", "<sub", "</sub"}


def test_nothing_of_a_model_is_markup_in_html(hostile: Comparison) -> None:
    seen: list[str] = []
    open_tags: list[str] = []

    class Reader(HTMLParser):
        def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
            seen.append(tag)
            assert not any(name.startswith("on") or name in ("src", "href") for name, _ in attrs)
            if tag != "meta":
                open_tags.append(tag)

        def handle_endtag(self, tag: str) -> None:
            assert open_tags.pop() == tag

    Reader().feed(as_html.html([hostile]))
    assert not open_tags
    assert "table" in seen and not {"img", "script", "link", "a"} & set(seen)


def test_a_comment_stays_within_its_bound(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(causes, "MOST_TRIALS", 8)
    found = compared(site(120, "1"), site(120, "9", "A long name for a small shed, number"))
    assert counted(found.worse) >= 120
    out = as_markdown.markdown([found, found, found])
    assert len(out) <= as_markdown.MOST_CHARACTERS < 65_536, "the limit of a comment on the forge that has the least"
    assert out.count("<details>") == out.count("</details>")
    assert re.search(r"… and \d+ more, left out", out)
    assert CAUTION in out
    many = as_markdown.markdown([found] * 80)
    assert len(many) <= as_markdown.MOST_CHARACTERS and "more models, left out" in many


def test_a_fold_counts_what_people_read_as_one() -> None:
    """Lines that only name the cause of the figures below them are none of the figures; every form counts alike."""
    moved = len(compared(site(2, "1"), site(2, "2")).moved)
    out = as_markdown.markdown([compared(site(2, "1"), site(2, "2"))])
    (fold,) = re.findall(r"<summary>Figures that moved[^(]*\((\d+)\)</summary>\n\n(.*?)\n\n</details>", out, re.S)
    assert moved == int(fold[0]) == len(re.findall(r"^  - ", fold[1], re.M)) > 3
    assert f"({moved})" in as_text.text([compared(site(2, "1"), site(2, "2"))])


def test_a_page_can_be_walked_by_its_headings_and_names_every_row() -> None:
    """What axe-core asks for: one main part, headings for the folds, no empty heading of a row."""
    page = as_html.html([compared(site(2, "1"), site(3, "2"))])
    assert page.count("<main>") == page.count("</main>") == 1
    assert page.count("<summary><h2>") == page.count("<summary>") > 3
    assert '<th scope="row"></th>' not in page


def test_json_names_causes_by_number(hostile: Comparison) -> None:
    report = reader.loads(as_json.json([hostile]))
    assert (report["version"], report["caution"]) == (as_json.VERSION, CAUTION)
    (model,) = report["models"]
    ids = {change["id"]: change for change in model["changes"]}
    for one in model["worse"]:
        assert one["gravity"] in {s.word for s in Severity}
        assert one["because"] and all(i in ids for i in one["because"])
        assert one["how"] in {"undoes", "part", "together"}
    gravities = [Severity[one["gravity"].upper()] for one in model["worse"]]
    assert gravities == sorted(gravities, reverse=True)


def test_a_missing_fact_makes_figures_unknown_and_a_given_one_known() -> None:
    old = site(3, "1")
    new = old.replace('20 A 1p  1 kVA lighting  "Shed 1"', '20 A 1p  lighting  "Shed 1"')
    lost = [c for c in compared(old, new).worse if c.kind is Kind.UNKNOWN]
    names = {name for c in lost for name in (c.subject, *c.others)}
    assert {"LP-1", "MSB"} <= names and "LP-0" not in names
    assert all(change.subject == "LP-1" for c in lost for change in c.because)
    back = [c for c in compared(new, old).better if c.kind is Kind.KNOWN]
    assert {"LP-1", "MSB"} <= {name for c in back for name in (c.subject, *c.others)}


def test_a_load_that_a_board_bears_no_more_is_better_when_taken_back() -> None:
    old = site(1, "40").replace("20 A 1p", "200 A 1p")
    found = compared(old, old.replace("40 kVA", "10 kVA"))
    assert any(c.subject == "LP-0" and "no longer above its 100 A bus" in c.headline for c in found.better)
    assert not found.worse


@pytest.mark.parametrize(
    "half", ["feeder MSB. -> LP-0  100 A 3p", "feeder -> LP-0  100 A 3p", "feeder MSB ->  100 A 3p", "feeder"]
)
def test_a_feeder_that_is_half_written_is_compared(half: str) -> None:
    """While it is typed, or mended: on either side, alone and beside one that is whole."""
    whole = site(1, "1")
    broken = whole.replace("feeder MSB -> LP-0  100 A 3p", half)
    for old, new in ((whole, broken), (broken, whole), (whole, f"{whole}{half}\n"), (f"{broken}{half}\n", whole)):
        assert CAUTION in as_text.text([compared(old, new)])


def test_one_percent_is_not_worth_telling() -> None:
    old = site(1, "10")
    assert not compared(old, old.replace("10 kVA", "10.05 kVA")).moved
    assert compared(old, old.replace("10 kVA", "10.2 kVA")).moved


TRANSFORMER = """wye 1
project "Loft"
  basis us-2023
utility UTIL 480Y/277  {source}, fault-min 50 kA, x/r 6
switchboard MSB 480Y/277  bus 400 A, rated 200 kA
feeder UTIL -> MSB  400 A 3p  {wire}
transformer T-1 480 3ph -> 208Y/120  {kva} kVA, z {z} %, x/r 1.2
feeder MSB -> T-1  125 A 3p  {wire}
panel LP-2 208Y/120  bus 225 A, rated 10 kA
  1  20 A 1p  1.2 kVA receptacle  "Bench"
feeder T-1 -> LP-2  225 A 3p  {wire}
""".replace("{wire}", "3#4/0 + N #4/0 + G #2 Cu  0.1 m  resistance 0.0001 ohm/km, reactance 0.0001 ohm/km")


def test_a_fault_current_is_told_with_its_rating_and_its_cause() -> None:
    """Behind a transformer on a strong network: S / (sqrt 3 U z) (handbook formula), here 9.09 and 14.3 kA."""
    strong = "fault 200 kA, fault-lg 200 kA"
    texts = [TRANSFORMER.format(source=strong, kva=kva, z=z) for kva, z in ((75, 2.29), (150, 2.91))]
    found = compared(*texts)
    (over,) = (c for c in found.worse if c.subject == "LP-2" and "available fault" in c.headline)
    expected = [kva * 1000 / (3**0.5 * 208 * z) for kva, z in ((75, 0.0229), (150, 0.0291))]
    values = [m.value for m in over.measured if m is not None and isinstance(m.value, float)]
    assert values == pytest.approx(expected, rel=0.05), "the network takes the rest"
    assert over.gravity is Severity.ERROR
    assert over.headline.startswith(f"LP-2: available fault {from_to(*values, 'A')}, above its 10 kA rating")
    assert over.finding is not None and over.finding.rule == "interrupting-too-low", "one entry for rule and figure"
    assert over.reason == ", because T-1 went from 75 to 150 kVA and its z from 2.29 to 2.91 %"
    assert any(sheet.name == "fault and drop table" for sheet in found.sheets)


def test_a_ceiling_exceeds_no_rating() -> None:
    texts = [TRANSFORMER.format(source="infinite", kva=kva, z=2.3) for kva in (75, 150)]
    found = compared(*texts)
    assert not [c for c in found.worse if "fault" in c.headline and c.kind is Kind.LIMIT]
    assert [c for c in found.moved if c.subject == "LP-2" and "available fault" in c.headline]


def test_a_figure_of_another_kind_is_compared_under_its_own_words(monkeypatch: pytest.MonkeyPatch) -> None:
    figures = measures.model_figures

    def with_more(view: Any) -> dict[str, Any]:
        found = figures(view)
        power = view.model.equipment["T-1"].body.number("power")
        found["equipment"]["T-1"]["idle_losses"] = {"loss_w": 0.004 * power, "unknown": {}}
        found["feeders"]["T-1 -> LP-2"]["touch_voltage"] = None
        return found

    monkeypatch.setattr(measures, "model_figures", with_more)
    found = compared(*(TRANSFORMER.format(source="fault 50 kA", kva=kva, z=2) for kva in (75, 100)))
    assert "T-1: idle losses loss w 300 -> 400 W" in {c.headline for c in found.moved}


@pytest.mark.parametrize(
    ("old", "new", "unit", "words"),
    [
        (9100.0, 14300.0, "A", "9.1 -> 14.3 kA"),
        (930.0, 1430.0, "A", "930 A -> 1.43 kA"),
        (0.029, 0.031, "ratio", "2.9 -> 3.1 %"),
        (399.9, 400.1, "A", "399.9 -> 400.1 A"),
        (0.0, 0.5, "A", "0 -> 0.5 A"),
        (-1e-9, 0.0012, "ratio", "0 -> 0.12 %"),
    ],
)
def test_two_figures_as_one_reads_them(old: float, new: float, unit: str, words: str) -> None:
    assert from_to(old, new, unit) == words
    assert written(old, unit).split()[0] == words.split()[0] or "." in words
