"""Everything that leaves the house for a model: outputs, reports, comparisons, connections, sizes.

None may raise, whatever the model; what programs read must parse, and no figure is infinite or no number.
"""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Mapping
from html.parser import HTMLParser
from itertools import permutations
from xml.etree import ElementTree

from soundness import FOLDER, ROOT, analysed, reader_of

from wyeline_grammar.sources import Files
from wyeline_linter.analysis import Analysis
from wyeline_linter.commands import connect
from wyeline_linter.commands.report import FORMATS
from wyeline_linter.configuration import DEFAULT
from wyeline_linter.expectations import expectations_of
from wyeline_linter.findings import Severity
from wyeline_linter.outputs import Results, github, gitlab, json_output, junit, sarif, summary
from wyeline_linter.outputs import text as text_output
from wyeline_linter.repair import diagnose, findings_at, solve
from wyeline_linter.reports.files_written import report_files
from wyeline_linter.reports.package import Package
from wyeline_linter.review import as_html, as_json, as_markdown, as_text
from wyeline_linter.review.comparison import Comparison, compare_versions
from wyeline_linter.review.documents import Version
from wyeline_linter.sizing.lines import size_feeder
from wyeline_linter.sizing.machines import size_generator, size_transformer

CONNECTIONS = 6
_NO_FIGURE = re.compile(r"(?<![\w\"'.-])(?:nan|[+-]?inf)(?![\w\"'.-])|\bnanj\b|\bNone\b|object at 0x")


def check_outputs(texts: Mapping[str, str]) -> None:
    """The formats of ``wyeline check``."""
    analysis = analysed(texts)
    findings = analysis.all_findings()
    results = Results(
        findings, analysis.model.files, expectations_of(analysis, findings), Severity.WARNING, bool(findings)
    )
    for parsed in (json_output, sarif, gitlab):
        strict(parsed.render(results))
    ElementTree.fromstring(junit.render(results))
    github.render(results)
    summary.line(results)
    for colour in (False, True):
        text_output.render(findings, colour=colour)
    words = "\n".join(f"{f.message} {f.found} {f.needed} {f.why} {f.change}" for f in findings)
    check_figures(words, " ".join(texts.values()))


def check_report(texts: Mapping[str, str]) -> None:
    """All that ``wyeline report`` writes, every switch state among it."""
    first = analysed(texts)
    names = dict.fromkeys(s.name.text for _, s in first.model.scenarios if s.name is not None)
    read = reader_of(texts)
    others = [Analysis(ROOT, Files(read), FOLDER, scenario=name) for name in names]
    made = dict(report_files([Package(a) for a in (first, *others)], FORMATS))
    written = " ".join(texts.values())
    for name, text in made.items():
        if name.endswith(".svg"):
            ElementTree.fromstring(text)
        elif name.endswith(".csv"):
            rows = list(csv.reader(io.StringIO(text)))
            assert rows, name
        elif name.endswith(".html"):
            reader = HTMLParser()
            reader.feed(text)
            reader.close()
        if not name.endswith(".html"):
            check_figures(re.sub(r"<style>.*?</style>", "", text, flags=re.DOTALL), written)


def check_comparison(old: Mapping[str, str], new: Mapping[str, str]) -> Comparison:
    """Two versions compared, in every format."""
    before, after = (Version(ROOT, reader_of(texts), FOLDER, DEFAULT) for texts in (old, new))
    found = compare_versions(before, after)
    strict(as_json.json([found]))
    for write in (as_text.text, as_html.html, as_markdown.markdown):
        assert write([found]).strip()
    return found


def check_proposals(texts: Mapping[str, str]) -> None:
    """Why pairs cannot be connected and what would; sizes of every feeder and machine."""
    analysis = analysed(texts)
    view, model = analysis.view, analysis.model
    pairs = list(permutations(model.equipment, 2))
    for source, target in pairs[:: max(1, len(pairs) // CONNECTIONS)]:
        if connect._backwards(model.equipment[source], model.equipment[target]):
            continue
        found = diagnose(view, source, model.equipment[target], None)
        rules = findings_at(analysis, found.link)
        assert connect._verdict(analysis, found, rules).strip()
        for number, solution in enumerate(solve(view, source, target, None), 1):
            assert connect._solution(analysis, number, solution).strip()
    for feeder in model.feeders.values():
        size_feeder(view, feeder)
    for equipment in model.equipment.values():
        if equipment.kind == "transformer":
            size_transformer(view, equipment)
        elif equipment.kind == "generator":
            for state in view.states_of_switches():
                size_generator(view, equipment, state)


def strict(text: str) -> None:
    """JSON without the numbers that it does not have."""

    def refuse(word: str) -> None:
        raise AssertionError(f"{word} in JSON")

    json.loads(text, parse_constant=refuse)


def check_figures(text: str, written: str) -> None:
    """No word of a figure that is no figure, unless the model itself has it."""
    for match in _NO_FIGURE.finditer(text):
        assert match[0] in written, text[max(0, match.start() - 200) : match.end() + 50]
