"""JUnit XML for the test reports of build servers: a suite a file, a case a finding, and a case an expectation."""

from __future__ import annotations

import re
from xml.etree import ElementTree as ET

from wyeline_linter.expectations import MISSED_RULE, Expectation
from wyeline_linter.findings import Finding, Severity
from wyeline_linter.outputs import Results
from wyeline_linter.outputs.summary import line as summary_line
from wyeline_linter.outputs.text import CAUTION, render_one, shown_path

_FORBIDDEN = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""Characters that XML 1.0 cannot hold (clause 2.2)."""


def render(results: Results) -> str:
    """The report as text. Below the threshold a finding passes with its text as output; a gap is a case skipped."""
    suites = ET.Element("testsuites", name="wyeline")
    totals = [0, 0, 0]
    failing = {
        (f.place.file, f.place.block.first_line)
        for f in results.findings
        if f.rule == MISSED_RULE and f.allowed is None and f.severity >= results.threshold
    }
    for path in results.files or ([] if results.unread else [""]):
        cases = [_finding_case(f, results.threshold) for f in results.findings if f.place.file == path]
        cases += [_expectation_case(e, failing) for e in results.expectations if e.path == path]
        if not any(c.tag == "testcase" and c.get("classname", "").startswith("rule.") for c in cases):
            cases.insert(0, ET.Element("testcase", classname="rules", name="no rule failed on the stated facts"))
        _suite(suites, shown_path(path) if path else "no file", cases, totals)
    beside = [f for f in results.findings if f.place.file not in results.files]
    for path in dict.fromkeys(f.place.file for f in beside):
        cases = [_finding_case(f, Severity.GAP) for f in beside if f.place.file == path]
        _suite(suites, shown_path(path), cases, totals)
    for path, reason in results.unread:
        case = ET.Element("testcase", classname="model", name="the model can be read")
        ET.SubElement(case, "failure", type="unread", message=_clean(reason))
        _suite(suites, shown_path(path), [case], totals)
    for key, value in zip(("tests", "failures", "skipped"), totals, strict=True):
        suites.set(key, str(value))
    suites.set("errors", "0")
    out = ET.SubElement(suites[0], "system-out")
    out.text = _clean(f"{summary_line(results)}\n{CAUTION}")
    ET.indent(suites)
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + ET.tostring(suites, encoding="unicode") + "\n"


def _suite(suites: ET.Element, name: str, cases: list[ET.Element], totals: list[int]) -> None:
    counts = [len(cases), *(sum(1 for c in cases if c.find(tag) is not None) for tag in ("failure", "skipped"))]
    suite = ET.SubElement(suites, "testsuite", name=_clean(name), tests=str(counts[0]), failures=str(counts[1]))
    suite.set("errors", "0")
    suite.set("skipped", str(counts[2]))
    suite.extend(cases)
    for i, count in enumerate(counts):
        totals[i] += count


def _finding_case(finding: Finding, threshold: Severity) -> ET.Element:
    at = f"{shown_path(finding.place.file)}:{finding.place.row + 1}"
    case = ET.Element("testcase", classname=f"rule.{finding.rule}", name=_clean(f"{at} {finding.message}"))
    text = _clean(render_one(finding))
    if finding.severity is Severity.GAP and threshold > Severity.GAP:
        ET.SubElement(case, "skipped", message=_clean(f"unknown: {finding.message}"))
    elif finding.allowed is not None:
        ET.SubElement(case, "system-out").text = _clean(f"accepted: {finding.allowed}\n\n{text}")
    elif finding.severity >= threshold:
        failure = ET.SubElement(case, "failure", type=finding.severity.word, message=_clean(finding.message))
        failure.text = text
    else:
        ET.SubElement(case, "system-out").text = text
    return case


def _expectation_case(expectation: Expectation, failing: set[tuple[str, int]]) -> ET.Element:
    name = f"{shown_path(expectation.path)}:{expectation.row + 1} {expectation.text}"
    case = ET.Element("testcase", classname="expect", name=_clean(name))
    if expectation.outcome == "missed" and (expectation.path, expectation.row) in failing:
        ET.SubElement(case, "failure", type="missed", message=_clean(expectation.reason))
    elif expectation.outcome == "missed":
        ET.SubElement(case, "system-out").text = _clean(f"missed, and accepted: {expectation.reason}")
    elif expectation.outcome == "unknown":
        ET.SubElement(case, "skipped", message=_clean(expectation.reason))
    return case


def _clean(text: str) -> str:
    return _FORBIDDEN.sub("\ufffd", text)
