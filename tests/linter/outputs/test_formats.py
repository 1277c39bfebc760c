"""Every output carries every finding, in the form that its readers specify, and nothing in it breaks out of it."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any
from urllib.parse import unquote
from xml.etree import ElementTree as ET

import jsonschema
import pytest
from output_samples import MODEL, results

from wyeline_grammar.lines import LineIndex
from wyeline_linter.findings import Severity
from wyeline_linter.outputs import Results, github, gitlab, json_output, junit, sarif, summary

PEERS = Path(os.environ.get("WYELINE_PEERS") or Path.home() / ".cache" / "wyeline-peers")
SARIF_SCHEMA = PEERS / "node_modules/@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json"


@pytest.fixture
def checked(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Results:
    monkeypatch.chdir(tmp_path)
    return results(tmp_path)


def open_findings(checked: Results) -> list[Any]:
    return [f for f in checked.findings if f.allowed is None]


def test_sarif_keeps_to_the_official_schema(checked: Results) -> None:
    """The schema of SARIF 2.1.0 (OASIS, as carried by the npm package @microsoft/jest-sarif)."""
    if not SARIF_SCHEMA.exists():
        assert not os.environ.get("CI"), f"{SARIF_SCHEMA} is absent; .ci/run installs it"
        pytest.skip(f"the schema is not there: {SARIF_SCHEMA}")
    schema = json.loads(SARIF_SCHEMA.read_text("utf-8"))
    validator = jsonschema.validators.validator_for(schema)(schema)
    assert [e.message for e in validator.iter_errors(json.loads(sarif.render(checked)))] == []
    broken = sarif.log(checked)
    broken["runs"][0]["results"][0]["level"] = "grave"
    assert not validator.is_valid(broken)


def test_sarif_says_all_that_a_reviewer_needs(checked: Results) -> None:
    run = sarif.log(checked)["runs"][0]
    assert len(run["results"]) == len(checked.findings)
    assert run["invocations"][0]["executionSuccessful"] is False
    for result, finding in zip(run["results"], checked.findings, strict=True):
        rule = run["tool"]["driver"]["rules"][result["ruleIndex"]]
        assert rule["id"] == result["ruleId"] == finding.rule
        assert rule["help"]["markdown"] and rule["fullDescription"]["text"]
        assert len(result.get("relatedLocations", [])) == len(finding.related)
        if finding.severity is Severity.GAP:  # SARIF 3.27.9: no answer could be given; 3.27.10: then the level is none
            assert (result["kind"], result["level"]) == ("open", "none")
        else:
            assert result["kind"] == "fail"
        suppressed = [s["justification"] for s in result["suppressions"]]
        assert suppressed == ([finding.allowed] if finding.allowed else [])


def test_sarif_fixes_mend_the_file_and_regions_are_where_the_words_are(checked: Results, tmp_path: Path) -> None:
    run = sarif.log(checked)["runs"][0]
    for result in run["results"]:
        place = result["locations"][0]["physicalLocation"]
        text = (tmp_path / unquote(place["artifactLocation"]["uri"])).read_text("utf-8")
        assert cut(text, place["region"]) == place["region"]["snippet"]["text"]
    slip = next(r for r in run["results"] if r["ruleId"] == "known-slip")
    (change,) = slip["fixes"][0]["artifactChanges"]
    (replacement,) = change["replacements"]
    assert cut(MODEL, replacement["deletedRegion"]) == "MLO"
    assert replacement["insertedContent"]["text"] == "main lugs"


def cut(text: str, region: dict[str, int]) -> str:
    """The words of a region, by UTF-16 columns from 1 (the run's ``columnKind``)."""
    assert region["startLine"] == region["endLine"]
    line = text.split("\n")[region["startLine"] - 1].encode("utf-16-le")
    return line[2 * (region["startColumn"] - 1) : 2 * (region["endColumn"] - 1)].decode("utf-16-le")


def test_github_commands_are_one_line_each_and_escape_as_the_runner_reads(checked: Results) -> None:
    """Workflow commands (GitHub Actions documentation): data escapes % CR LF, properties also : and ,."""
    text = github.render(checked)
    commands = [line for line in text.splitlines() if line.startswith("::")]
    assert len(commands) == len(open_findings(checked)) + len(checked.unread)
    for command, finding in zip(commands, open_findings(checked), strict=False):
        head, data = command[2:].split("::", 1)
        word, _, listed = head.partition(" ")
        facts = dict(each.split("=", 1) for each in listed.split(","))
        assert word == {3: "error", 2: "warning"}.get(int(finding.severity), "notice")
        assert Path(unescaped(facts["file"])).exists()
        assert int(facts["line"]) == finding.place.row + 1
        assert unescaped(data).split("\n")[0] == finding.message
    assert any("%2C" in c and "%25" in c for c in commands)  # the included file's name


def unescaped(text: str) -> str:
    for sign, code in ((",", "%2C"), (":", "%3A"), ("\n", "%0A"), ("\r", "%0D"), ("%", "%25")):
        text = text.replace(code, sign)
    return text


def test_gitlab_fingerprints_are_distinct_and_stay_when_lines_move(checked: Results, tmp_path: Path) -> None:
    """Keys and severities of a code quality report (GitLab documentation, "Code Quality report format")."""
    issues = json.loads(gitlab.render(checked))
    assert len(issues) == len(open_findings(checked))
    for issue in issues:
        assert issue["severity"] in {"info", "minor", "major", "critical", "blocker"}
        assert issue["description"] and issue["check_name"] and issue["location"]["lines"]["begin"] > 0
    marks = [issue["fingerprint"] for issue in issues]
    assert len(set(marks)) == len(marks)
    moved = tmp_path / "moved"
    moved.mkdir()
    again = results(moved)
    (moved / "site.wye").write_text("// one\n\n// two\n" + MODEL, "utf-8")
    from wyeline_linter.judging import ConfigurationOf, judge
    from wyeline_linter.result_cache import ResultCache

    root = str(moved / "site.wye")
    shifted = judge(root, None, ResultCache(""), ConfigurationOf(root)).findings
    assert [i["fingerprint"] for i in gitlab.issues(again)] == [
        i["fingerprint"] for i in gitlab.issues(again._replace(findings=shifted))
    ]
    assert [f.place.row for f in shifted] != [f.place.row for f in again.findings]


def test_junit_counts_what_it_holds(checked: Results) -> None:
    root = ET.fromstring(junit.render(checked))
    cases = list(root.iter("testcase"))
    failures = [c for c in cases if c.find("failure") is not None]
    skipped = [c for c in cases if c.find("skipped") is not None]
    assert (int(root.get("tests", "")), int(root.get("failures", "")), int(root.get("skipped", ""))) == (
        len(cases),
        len(failures),
        len(skipped),
    )
    failing = [f for f in open_findings(checked) if f.severity >= Severity.WARNING]
    assert len(failures) == len(failing) + len(checked.unread)
    gaps = [f for f in open_findings(checked) if f.severity is Severity.GAP]
    assert len(skipped) == len(gaps) + 1  # and the expectation that nobody could judge
    accepted = next(
        c for c in cases if c.get("classname") == "rule.unfed-equipment" and c.find("system-out") is not None
    )
    assert "fed next year, see <RFI 12> & 13" in (accepted.findtext("system-out") or "")


def test_junit_survives_what_xml_cannot_hold(checked: Results) -> None:
    from dataclasses import replace

    odd = [replace(f, message=f"{f.message} \x00\x1b[31m ]]> \ufffe") for f in checked.findings]
    ET.fromstring(junit.render(checked._replace(findings=odd)))


def test_json_says_each_finding_in_full(checked: Results) -> None:
    data = json.loads(json_output.render(checked))
    assert data["version"] == json_output.VERSION
    assert data["failed"] is True
    assert [f["rule"] for f in data["findings"]] == [f.rule for f in checked.findings]
    assert sum(s["findings"] for s in data["statistics"]) == len(checked.findings)
    assert data["summary"]["expectations"] == {"met": 1, "missed": 0, "unknown": 1}
    index = LineIndex(MODEL)
    slip = next(f for f in data["findings"] if f["rule"] == "known-slip")
    start, end = slip["range"]["start"], slip["range"]["end"]
    assert MODEL[index.offset(start["line"], start["character"]) : index.offset(end["line"], end["character"])] == "MLO"


def test_the_summary_never_says_more_than_was_checked(checked: Results) -> None:
    nothing = checked._replace(findings=[], expectations=[], files=["a.wye"])
    assert summary.line(nothing) == "no rule failed on the stated facts (1 file)"
    gap = next(f for f in checked.findings if f.severity is Severity.GAP)
    only_gaps = nothing._replace(findings=[gap] * 3)
    assert summary.line(only_gaps) == "no rule failed on the stated facts; 3 figures unknown (1 file)"
    assert "expectations: 1 met, 1 unknown" in summary.line(checked)
    assert "1 finding accepted" in summary.line(checked)
