"""Findings under `basis iec` call the legs L1, L2, L3 (IEC 60445), whatever rule and fix speaks of them."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.figures import model_figures
from wyeline_linter.findings import Finding
from wyeline_linter.repair import solve
from wyeline_linter.rules.registry import all_rules
from wyeline_linter.system_words import with_legs_of

BROKEN = Path(__file__).parents[3] / "grammar" / "examples" / "broken"
TEXTS = [
    *(text for found in all_rules().values() if not found.files for text in (found.wrong, found.right)),
    *(path.read_text("utf-8") for path in sorted(BROKEN.glob("*.wye"))),
]
LETTERS = re.compile(
    r"\blegs? [ABC]\b|\b[ABC]([–-]|, | and | or | to | )[ABCN]\b|\b(to|on|leg) [ABC]\b(?! (?!and)[a-z])"
)
"""A leg by its letter; what stands in backquotes is the model's own text."""


def as_iec(text: str) -> str:
    if "basis " in text:
        return text.replace("basis us-2023", "basis iec")
    return f'project "Site"\n  basis iec\n{text.removeprefix("wye 1").lstrip()}'


def analysis(text: str) -> Analysis:
    return Analysis("/m/site.wye", Files(lambda _: text), "/m")


def words_of(found: Finding) -> list[str]:
    titles = [fix.title for fix in found.fixes]
    return [
        found.message,
        found.found,
        found.needed,
        found.why,
        found.change,
        *titles,
        *(r.message for r in found.related),
    ]


def test_no_finding_calls_a_leg_by_its_letter() -> None:
    seen = 0
    for text in TEXTS:
        for found in analysis(as_iec(text)).all_findings():
            for words in words_of(found):
                bare = re.sub(r"`[^`]*`", "", words)
                assert not LETTERS.search(bare), (found.rule, words)
                seen += bool(re.search(r"\bL[123]\b", bare))
    assert seen > 10, "findings that name legs are among them"


BOARD = """project "Works"
  basis {basis}
  frequency 50 Hz
utility NETZ 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, earthing TN-S
panel HV 400Y/230  bus 63 A, {main} 63 A, rated 10 kA
  F1[L1]  63 A 1p+N  10 kW process  "Bench 1"
  F2[L2]  63 A 1p+N  2 kW process  "Bench 2"
  F3[L3]  63 A 1p+N  2 kW process  "Bench 3"
feeder NETZ -> HV  63 A 3p
"""


@pytest.mark.parametrize(("basis", "main", "leg"), [("iec", "incomer", "L1"), ("us-2023", "main", "A")])
def test_the_fullest_leg_has_the_name_of_its_practice(basis: str, main: str, leg: str) -> None:
    text = BOARD.format(basis=basis, main=main)
    found = [
        f for f in Analysis("/m/site.wye", Files(lambda _: text), "/m").findings() if f.rule == "high-neutral-current"
    ]
    assert f"% of leg {leg}" in found[0].message and f", leg {leg} " in found[0].found


def test_ways_to_connect_name_legs_as_practice_does() -> None:
    text = BOARD.format(basis="iec", main="incomer") + "load OFEN 230 1ph  3 kW, heating\n"
    ways = solve(analysis(text).view, "HV", "OFEN")
    assert ways and all("leg A" not in w.title and "leg B" not in w.title for w in ways)
    assert any(re.search(r"on leg L[23]", w.title) for w in ways)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        (
            "no two wires here are 208 V apart (480 V on A–B B–C C–A)",
            "no two wires here are 208 V apart (480 V on L1–L2 L2–L3 L3–L1)",
        ),
        ("A and B are 120° apart", "L1 and L2 are 120° apart"),
        ("a wire is a wire. A wire cannot; A 480 V winding", "a wire is a wire. A wire cannot; A 480 V winding"),
        ("take A B or C A", "take L1 L2 or L3 L1"),
        ("takes legs C B A of `DP`, leg A of it", "takes legs L3 L2 L1 of `DP`, leg L1 of it"),
        ("100 A and 20 A to `A -> B -> C`, on B", "100 A and 20 A to `A -> B -> C`, on L2"),
        (
            "two wires 230 V apart, no neutral; A earthed at the source",
            "two wires 230 V apart, no neutral; L1 earthed at the source",
        ),
        ("neutral earthed at the source (TN-C-S), leg C", "neutral earthed at the source (TN-C-S), leg L3"),
        ("310.15(B)(1) and 250.102(C)(1); curve B, method C", "310.15(B)(1) and 250.102(C)(1); curve B, method C"),
    ],
)
def test_an_article_is_no_leg(said: str, meant: str) -> None:
    assert with_legs_of("iec", said) == meant
    assert with_legs_of("us-2023", said) == said


NO_LEG = re.compile(
    r"`[^`]*`|(?<=[\d)])\([A-Z]\)|(?<!L\d )(?<=\d )A\b|(?<!leg )\bA (?=[a-z]{3}(?<!and)|\d+ V)|"
    r"\b(?:curve|type|class|method) [A-Z]"
)
"""What is no leg in a sentence: the model's own text, parts of sections, amperes, articles, names of sorts."""


def test_no_sentence_of_the_examples_is_touched_outside_its_legs() -> None:
    seen, touched = 0, 0
    for text in TEXTS:
        for found in analysis(text).all_findings():
            for words in words_of(found):
                put = with_legs_of("iec", words)
                assert NO_LEG.findall(put) == NO_LEG.findall(words), (found.rule, put)
                seen, touched = seen + 1, touched + (put != words)
    assert seen > 1000 and touched > 20


def test_sentences_of_figures_call_them_so_and_keys_stay() -> None:
    """What a program reads keeps A, B, C as keys; what it prints to people is a sentence."""
    high_leg = 'project "Site"\n  basis {}\nutility UTIL 240/120 3ph  fault 10 kA\npanel LP-1 240/120 3ph  bus 100 A\n'
    told = {}
    for practice in ("us-2023", "iec"):
        view = analysis(high_leg.format(practice) + "feeder UTIL -> LP-1\n").view
        told[practice] = model_figures(view)["equipment"]["LP-1"]["system"]
    assert "B 208 V (the high leg)" in told["us-2023"]["in_words"]
    assert "L2 208 V (the high leg)" in told["iec"]["in_words"] and "L1 and L3" in told["iec"]["in_words"]
    assert told["iec"]["conductors"] == told["us-2023"]["conductors"] == ["A", "B", "C", "N"]
