"""``wyeline explain``: a rule or a word of the language in full, or a figure of a model as a calculation sheet."""

from __future__ import annotations

import argparse
import os
import sys

from wyeline_grammar import word_pages
from wyeline_linter.accepting import beyond
from wyeline_linter.claims import EXCUSES
from wyeline_linter.near_names import near
from wyeline_linter.rules.registry import Rule, all_rules

FIGURES = ("fault", "fault-min", "drop", "voltage", "connected", "demand", "sizing", "neutral", "balance")
"""The figures that help names; a kind of fault such as ``line-ground`` is one, too."""
_RUNS = {
    "physics": "always (physics decides, whatever the code)",
    "us": "under `basis us-2023`",
    "iec": "under `basis iec`",
    "both": "under either code basis",
}


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "rule",
        nargs="?",
        metavar="RULE",
        help="a rule's name, as a finding prints it; what can be claimed; a word of the language, or what the trade "
        "calls it, such as 'transfer switch' (left out: a list of all words); or the path of a model",
    )
    parser.add_argument("name", nargs="?", metavar="NAME", help="equipment, or a feeder such as 'MSB -> LP-1'")
    parser.add_argument("figure", nargs="?", metavar="FIGURE", help=f"one of {', '.join(FIGURES)}")
    parser.add_argument(
        "--at", metavar="CIRCUIT", default="", help="a circuit of the board, such as 2,4 (FIGURE: drop)"
    )
    parser.add_argument(
        "--scenario", metavar="STATE", help="the figure in this scenario or switch state instead of as normal"
    )


def run(arguments: argparse.Namespace) -> int:
    if arguments.rule is None:
        print(word_pages.contents())
        return 0
    if arguments.name is not None and not _is_model(arguments.rule):
        words = " ".join(w for w in (arguments.rule, arguments.name, arguments.figure) if w is not None)
        if word_pages.page(words) is not None:  # typed without quotes
            arguments.rule, arguments.name = words, None
        elif "/" not in arguments.rule and "\\" not in arguments.rule:  # no path either
            return _unknown(words)
    if arguments.name is not None:
        return _figure(arguments)
    rules = all_rules()
    rule = rules.get(arguments.rule)
    text = page(rule) if rule is not None else word_pages.page(arguments.rule) or claim_page(arguments.rule)
    if text is None and _is_model(arguments.rule):
        print(
            f"wyeline: {arguments.rule}: name what it is about too, such as `{arguments.rule} MSB fault`",
            file=sys.stderr,
        )
        return 2
    if text is None:
        return _unknown(arguments.rule)
    print(text)
    return 0


def _unknown(words: str) -> int:
    """Say that nothing is called so, and what comes nearest: to all the words, or to one of them."""
    known = {*all_rules(), *word_pages.spellings(), *EXCUSES}
    parts = [part for part in words.split() if part.lower() in known]
    nearest = near("-".join(words.lower().split()), known) or parts
    hint = f" The nearest: {', '.join(nearest)}."
    if not nearest:
        hint = " `wyeline explain` lists all words, `wyeline rules` all rules."
    print(f"wyeline: no rule and no word is called `{words}`.{hint}", file=sys.stderr)
    return 2


def _is_model(path: str) -> bool:
    return path.endswith(".wye") or os.path.exists(path)


def _figure(arguments: argparse.Namespace) -> int:
    """A figure as a calculation sheet. Raises SourceError for a model, a name or a figure that is not there."""
    from wyeline_grammar.sources import SourceError
    from wyeline_linter.commands.one_model import analysis_of
    from wyeline_linter.loads.sheets import FIGURES as LOAD_FIGURES
    from wyeline_linter.loads.sheets import load_figure
    from wyeline_linter.network import NORMAL_STATE
    from wyeline_linter.outputs.text import caution, shown_path
    from wyeline_linter.studies.sheets import FIGURES as STUDY_FIGURES
    from wyeline_linter.studies.sheets import study_sheet
    from wyeline_linter.working import render

    analysis = analysis_of(arguments.rule, arguments.scenario)
    view, root = analysis.view, analysis.model.root
    figure = arguments.figure or "fault"
    known = dict.fromkeys((*FIGURES, *STUDY_FIGURES))
    if figure not in known:
        nearest = near(figure, known)
        hint = f"; the nearest: {', '.join(nearest)}" if nearest else ""
        raise SourceError(f"`{figure}`", f"no figure is called so{hint}; there are {', '.join(known)}")
    try:
        if figure in LOAD_FIGURES and view.equipment(arguments.name) is not None:
            sheet = load_figure(view, arguments.name, figure)
        else:
            sheet = study_sheet(view, arguments.name, figure, arguments.at)
    except KeyError:
        near_by = view.near_names(arguments.name)
        hint = f"; the nearest: {', '.join(near_by)}" if near_by else ""
        wanted = f"{arguments.name} {arguments.at}".strip()
        raise SourceError(shown_path(root), f"nothing in this model is called `{wanted}`{hint}") from None
    except ValueError as trouble:
        raise SourceError(shown_path(root), str(trouble)) from None
    if view.network.state != NORMAL_STATE:
        print(f"Switch state: {view.network.state.name}\n")
    print(render(sheet))
    print(caution())
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
    never = beyond(rule.name)
    accept = f'Accept one occurrence with `allow {rule.name} "reason"` below the statement.'
    accept = f"Nobody can accept it: {never}." if never else accept
    lines += [f"{accept} Since {rule.since}."]
    return "\n".join(lines)


def claim_page(name: str) -> str | None:
    """What a claim asks for, and what is checked of it; None where nothing can be claimed by that name."""
    asked = EXCUSES.get(name)
    if asked is None:
        return None
    with_text = any("in its text" in condition for condition in asked.conditions)
    written = f'claim {name} "..."' if with_text else f"claim {name}"
    lines = [f"# claim {name}", "", asked.text, ""]
    if asked.clause:
        code = "" if asked.clause.startswith("IEC") else "NEC "
        lines += [f"Clause: {code}{asked.clause} (data with an edition; read the adopted code itself).", ""]
    if asked.conditions:
        lines += ["Checked:", "", *(f"- {condition}" for condition in asked.conditions), ""]
    return "\n".join([*lines, f"Written `{written}` below the statement that it is about."])
