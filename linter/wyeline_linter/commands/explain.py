"""``wyeline explain``: a rule in full."""

from __future__ import annotations

import argparse
import sys

from wyeline_linter.near_names import near
from wyeline_linter.rules.registry import Rule, all_rules

_RUNS = {
    "physics": "always (physics decides, whatever the code)",
    "us": "under `basis us-2023`",
    "iec": "under `basis iec`",
    "both": "under either code basis",
}


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("rule", metavar="RULE", help="the rule's name, as a finding prints it")


def run(arguments: argparse.Namespace) -> int:
    rules = all_rules()
    rule = rules.get(arguments.rule)
    if rule is None:
        nearest = near(arguments.rule, rules)
        hint = f" The nearest: {', '.join(nearest)}." if nearest else " `wyeline rules` lists them all."
        print(f"wyeline: no rule is called `{arguments.rule}`.{hint}", file=sys.stderr)
        return 2
    print(page(rule))
    return 0


def page(rule: Rule) -> str:
    """A rule's page, the same text in the terminal and in the reference."""
    lines = [f"# {rule.name}", "", f"{rule.summary}", "", f"Severity: {rule.severity.word}. Runs {_RUNS[rule.basis]}."]
    if rule.clause:
        clauses = "; ".join(f"{'NEC' if k == 'us' else 'IEC'} {v}" for k, v in rule.clause.items())
        lines += [f"Clause: {clauses} (data with an edition; read the adopted code itself)."]
    lines += ["", f"Why: {rule.why}", "", "Draws this finding:", "", "```wye", rule.wrong.strip("\n"), "```", ""]
    for path, text in rule.files.items():
        lines += [f"with `{path}` beside `model.wye`:", "", "```wye", text.strip("\n"), "```", ""]
    lines += ["Draws none:", "", "```wye", rule.right.strip("\n"), "```", ""]
    lines += [f'Accept one occurrence with `allow {rule.name} "reason"` below the statement. Since {rule.since}.']
    return "\n".join(lines)
