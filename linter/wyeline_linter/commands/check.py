"""``wyeline check``: judge models; mend what may be mended; keep a baseline."""

from __future__ import annotations

import argparse
import contextlib
import gc
import importlib
import os
import sys
from typing import TYPE_CHECKING

from wyeline_grammar.sources import Files, SourceError, absolute, read_text, workspace_of, wye_files
from wyeline_linter.commands.roots import roots_of
from wyeline_linter.configuration import BASELINE_NAME, FILE_NAME, ConfigurationError
from wyeline_linter.findings import Finding, Safety, Severity
from wyeline_linter.judging import ConfigurationOf, Judged, judge
from wyeline_linter.outputs import FORMATS, WITH_EDITS, Results, summary, text
from wyeline_linter.printed_answers import (
    USUAL_COLUMNS,
    Grounds,
    drop_output,
    keep,
    may_colour,
    read_stdin,
    sentence_columns,
    show,
)
from wyeline_linter.result_cache import ResultCache

if TYPE_CHECKING:
    from wyeline_linter.baseline import Baseline
    from wyeline_linter.standing import StandingModels

STDIN = "-"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "paths", nargs="+", metavar="PATH", help="a model's root file, a folder of models, or - for stdin"
    )
    parser.add_argument("--stdin-filename", metavar="FILE", help="with -: the file that the text on stdin stands for")
    parser.add_argument("--fix", action="store_true", help="apply the fixes that only change how something is written")
    parser.add_argument("--unsafe", action="store_true", help="with --fix: apply fixes that want a look, too")
    parser.add_argument("--diff", action="store_true", help="show what --fix would change and change nothing")
    parser.add_argument("--scenario", metavar="NAME", help="judge the model in this scenario instead of as normal")
    listed = "; ".join(f"{name}: {words}" for name, words in FORMATS.items())
    parser.add_argument("--format", choices=tuple(FORMATS), default="text", help=f"how findings are written ({listed})")
    parser.add_argument("--output", metavar="FILE", help="write there instead; the summary still prints")
    parser.add_argument(
        "--fail-on",
        choices=[s.word for s in sorted(Severity, reverse=True)],
        default="warning",
        help="the least severity that makes the exit code 1 (default: warning)",
    )
    parser.add_argument("--show-allowed", action="store_true", help="show findings that are accepted, too")
    parser.add_argument("--statistics", action="store_true", help="counts by rule instead of findings (text only)")
    parser.add_argument("-q", "--quiet", action="store_true", help="one line a finding, no summary")
    parser.add_argument("--watch", action="store_true", help="check again whenever a file changes")
    parser.add_argument("--update-baseline", action="store_true", help="accept every finding as it is now")
    parser.add_argument("--prune", action="store_true", help="take out of the baseline what it does not need")
    parser.add_argument("--no-baseline", dest="baseline", action="store_false", help="judge as if there were none")
    parser.add_argument("--no-cache", dest="cache", action="store_false", help="read and judge everything anew")
    parser.add_argument("--colour", choices=("auto", "always", "never"), default="auto", help="colour as an addition")


def run(arguments: argparse.Namespace) -> int:
    _refuse_contradictions(arguments)
    if arguments.watch:
        return _watch(arguments)
    if arguments.own_process:
        gc.disable()  # one short run: collecting costs more than it frees
    return _once(arguments)


def _refuse_contradictions(arguments: argparse.Namespace) -> None:
    """Raises SourceError for options that cannot hold together."""
    stdin = STDIN in arguments.paths
    mending = arguments.fix or arguments.diff
    keeping = arguments.update_baseline or arguments.prune
    refused = (
        (stdin and len(arguments.paths) > 1, STDIN, "stdin is checked alone"),
        (stdin and (mending or keeping or arguments.watch), STDIN, "the text on stdin can only be checked"),
        (arguments.stdin_filename is not None and not stdin, "--stdin-filename", "it needs - as the path"),
        (arguments.unsafe and not mending, "--unsafe", "it belongs to --fix or --diff"),
        (arguments.output == "", "--output", "an empty word names no file"),
        (arguments.output == STDIN, "--output", "without it the output goes to standard output already"),
        (arguments.scenario is not None and keeping, "--scenario", "a baseline holds the normal state only"),
        (not arguments.baseline and keeping, "--no-baseline", "it contradicts --update-baseline and --prune"),
        (arguments.update_baseline and arguments.prune, "--prune", "--update-baseline prunes already"),
        (arguments.watch and (mending or keeping), "--watch", "it only checks; mend or record in a run of its own"),
        (
            arguments.statistics and arguments.format != "text",
            "--statistics",
            "it is text; `json` holds the counts too",
        ),
    )
    for wrong, option, reason in refused:
        if wrong:
            raise SourceError(option, reason)


def _once(arguments: argparse.Namespace, standing: StandingModels | None = None) -> int:
    roots, buffers, grounds = _models(arguments)
    unread: dict[str, SourceError] = {}
    configurations = {root: ConfigurationOf(root) for root in roots}
    if arguments.fix or arguments.diff:
        changed = _fix(roots, configurations, arguments, unread)
        if arguments.diff:
            return _told(unread) or int(changed)
    cache = ResultCache(None if arguments.cache else "")
    with_edits = arguments.format in WITH_EDITS
    judged: list[Judged] = []
    for root in roots:
        try:
            judged.append(
                judge(
                    root,
                    arguments.scenario,
                    cache,
                    configurations[root],
                    buffers,
                    standing,
                    with_edits=with_edits,
                    may_copy=getattr(arguments, "own_process", False),
                )
            )
        except ConfigurationError:
            raise  # it is the same for all, and said once
        except SourceError as error:
            unread[root] = error  # what the other models have to say is not lost with it
    if arguments.update_baseline or arguments.prune:
        if unread:  # half of a project must not become its baseline
            return _told(unread)
        _write_baselines(judged, arguments)
        if arguments.update_baseline:
            return 0
    results = _results(judged, configurations, arguments, unread)
    printed = None
    try:
        printed = _write(results, arguments) if judged or arguments.format != "text" else None
    except BrokenPipeError:
        if standing is not None:
            raise  # nobody sees what a watch would go on to say
        drop_output()  # the reader has seen enough (`| head`), and the exit code is what it is
    asked = getattr(arguments, "question", None)
    if printed is not None and asked is not None and not unread:
        for model in judged:
            grounds.add_read(model.read)
            grounds.add_read(configurations[model.root].read)
        keep(asked, grounds, int(results.failed), printed, exact=arguments.format != "text")
    return _told(unread) or int(results.failed)


def _models(arguments: argparse.Namespace) -> tuple[list[str], dict[str, bytes], Grounds]:
    """The root files of the models to check, the text on standard input by its name, and what the answer hangs on."""
    grounds = Grounds()
    if arguments.paths == [STDIN]:
        name = absolute(arguments.stdin_filename or "<stdin>")
        return [name], {name: read_stdin()}, grounds
    for path in map(absolute, arguments.paths):
        if os.path.isdir(path):
            grounds.add_folder(path)
    roots = roots_of(arguments.paths, Files())
    for root in roots:
        grounds.add_model(root, (FILE_NAME, BASELINE_NAME))
    return roots, {}, grounds


def _told(unread: dict[str, SourceError]) -> int:
    """Say which models could not be judged; the exit code for them, 0 where there are none."""
    for error in unread.values():
        with contextlib.suppress(BrokenPipeError):  # nobody listens, and the exit code says it
            print(f"wyeline: {error}", file=sys.stderr)
    return 2 if unread else 0


def _results(
    judged: list[Judged],
    configurations: dict[str, ConfigurationOf],
    arguments: argparse.Namespace,
    unread: dict[str, SourceError],
) -> Results:
    findings = [f for model in judged for f in _under_baseline(model, configurations[model.root], arguments)]
    threshold = Severity[arguments.fail_on.upper()]
    failed = any(f.allowed is None and (f.severity >= threshold or f.rule == "baseline-excess") for f in findings)
    files = list(dict.fromkeys(name for model in judged for name in model.files))
    expectations = [e for model in judged for e in model.expectations]
    off = sorted({name for model in judged for name in model.off})
    reasons = [(e.path, e.reason) for e in unread.values()]
    return Results(findings, files, expectations, threshold, failed, reasons, off)


# baselines


def _under_baseline(model: Judged, configuration: ConfigurationOf, arguments: argparse.Namespace) -> list[Finding]:
    path = os.path.join(workspace_of(model.root), BASELINE_NAME)
    if not arguments.baseline or not os.path.exists(path):
        return model.findings
    from wyeline_linter import baseline as baselines

    kept, name = baselines.load_once(path), baselines.model_name(path, model.root)
    if kept is None:  # gone meanwhile
        return model.findings
    found = baselines.applied(kept, name, model.findings, model.may_move, judge=arguments.scenario is None)
    if any(f.rule in baselines.OWN_RULES for f in found):
        return configuration.get().applied(found)
    return found


def _write_baselines(judged: list[Judged], arguments: argparse.Namespace) -> None:
    from wyeline_linter import baseline as baselines
    from wyeline_linter.accepting import beyond
    from wyeline_linter.fixing import write_atomically
    from wyeline_linter.rules.registry import NotAccepted

    by_path: dict[str, dict[str, list[Finding]]] = {}
    for model in judged:
        path = baselines.path_for(model.root)
        by_path.setdefault(path, {})[baselines.model_name(path, model.root)] = model.findings
    for path, checked in by_path.items():
        old = baselines.load(path) if arguments.prune else _old_or_none(path)
        if old is None and arguments.prune:
            raise SourceError(text.shown_path(path), "there is no baseline here to prune")
        if arguments.prune:
            assert old is not None
            entries = baselines.pruned(old, checked)
        else:
            others = [e for e in (old.entries if old is not None else ()) if e.model not in checked]
            entries = others + [e for name, found in checked.items() for e in baselines.entries_of(name, found)]
        made = baselines.text_of(entries)
        shown = text.shown_path(path)
        if old is not None and read_text(path) == made:
            print(f"{shown} is as it should be", file=sys.stderr)
            continue
        write_atomically(path, made)
        records = sum(1 for e in entries if e.allowance)
        count = len(entries) - records
        unaccepted = [f for found in checked.values() for f in found if f.allowed is None]
        counts = summary.severities(f for f in unaccepted if not beyond(f.rule))
        never = sum(1 for f in unaccepted if beyond(f.rule) not in ("", NotAccepted.OF_ACCEPTING.value))
        listed = ""
        if arguments.update_baseline and summary.listed(counts):
            elsewhere = any(e.model not in checked for e in entries)
            listed = f" ({summary.listed(counts)}{' of the models checked' if elsewhere else ''})"
        gaps = counts["gap"]
        print(
            f"wrote {shown}: {summary.count(count, 'finding')} accepted as they are{listed}, "
            f"figures of {summary.count(records, 'allowance')} recorded"
            + (f"; {summary.count(gaps, 'figure')} unknown (gaps are never accepted)" if gaps else "")
            + (f"; {summary.count(never, 'finding')} that nobody can accept" if never else ""),
            file=sys.stderr,
        )


def _old_or_none(path: str) -> Baseline | None:
    """The baseline that is to be written anew; what is no baseline is told, and written over."""
    from wyeline_linter import baseline as baselines

    try:
        return baselines.load(path)
    except SourceError as error:
        print(f"wyeline: {error}; writing it anew", file=sys.stderr)
        return None


# watching


def _watch(arguments: argparse.Namespace) -> int:
    from wyeline_linter.commands.roots import includes_of
    from wyeline_linter.standing import StandingModels
    from wyeline_linter.watch import back_in, watch

    standing = StandingModels()
    home = os.getcwd()

    def once() -> int:
        try:
            if not back_in(home):
                raise SourceError(home, "this folder, in which the check was begun, is gone; waiting for it")
            return _once(arguments, standing)
        except SourceError as error:
            print(f"wyeline: {error}", file=sys.stderr)
            return 2

    def watched() -> list[str]:
        if not back_in(home):
            return [home]
        found: dict[str, None] = {}
        for path in arguments.paths:
            full = absolute(path)
            for each in wye_files(full) if os.path.isdir(full) else [full]:
                _add_with_includes(each, found)
            beside = workspace_of(full if not os.path.isdir(full) else os.path.join(full, "x"))
            found.update(dict.fromkeys(os.path.join(beside, name) for name in (FILE_NAME, BASELINE_NAME)))
        return list(found)

    includes: dict[str, tuple[tuple[int, int] | None, set[str]]] = {}

    def _add_with_includes(path: str, found: dict[str, None]) -> None:
        from wyeline_linter.watch import marks_of

        waiting = [path]
        while waiting:
            each = waiting.pop()
            if each in found:
                continue
            found[each] = None
            mark = marks_of([each])[each]
            known = includes.get(each)
            if known is None or known[0] != mark:
                known = includes[each] = (mark, includes_of(each, Files()))
            waiting += known[1]

    return watch(once, watched)


# writing


def _write(results: Results, arguments: argparse.Namespace) -> str | None:
    """Write what was found; what went to stdout, None where it went to a file."""
    if arguments.format == "text":
        made = _text(results, arguments)
    else:
        name = {"json": "json_output"}.get(arguments.format, arguments.format)
        made = importlib.import_module(f"wyeline_linter.outputs.{name}").render(results)
    if arguments.output is None:
        show(made, exact=arguments.format != "text")
        return made
    from wyeline_linter.fixing import write_atomically

    named = os.path.basename(arguments.output) in (FILE_NAME, BASELINE_NAME)
    if named or os.path.realpath(arguments.output) in map(os.path.realpath, results.files):
        raise SourceError(arguments.output, "the check reads this file itself; nothing was written over it")
    write_atomically(arguments.output, made)
    if not arguments.quiet:
        print(summary.line(results))
    return None


def _text(results: Results, arguments: argparse.Namespace) -> str:
    colour = arguments.colour == "always" or (arguments.colour == "auto" and arguments.output is None and may_colour())
    columns = sentence_columns() if arguments.output is None else USUAL_COLUMNS
    shown = [f for f in results.findings if arguments.show_allowed or f.allowed is None]
    if arguments.statistics:
        parts = [summary.statistics(shown)]
    else:
        parts = [text.render(shown, colour=colour, quiet=arguments.quiet, columns=columns)]
    if not arguments.quiet:
        mendable = "" if arguments.paths == [STDIN] else summary.mendable(results.findings)
        parts += [summary.line(results), mendable, text.caution(columns)]
    return "".join(f"{part}\n" for part in parts if part)


# mending


def _fix(
    roots: list[str],
    configurations: dict[str, ConfigurationOf],
    arguments: argparse.Namespace,
    unread: dict[str, SourceError],
) -> bool:
    from wyeline_linter.fixing import fix_model, write_atomically
    from wyeline_linter.outputs.patch import patch

    allowed = frozenset({Safety.SAFE, Safety.LOOK} if arguments.unsafe else {Safety.SAFE})
    changed = False
    for root in roots:
        based: dict[str, str] = {}

        def kept(path: str, based: dict[str, str] = based) -> str:
            return based.setdefault(path, read_text(path))

        try:
            outcome = fix_model(root, kept, allowed, workspace_of(root), configurations[root].get())
        except ConfigurationError:
            raise
        except SourceError as error:
            unread[root] = error
            continue
        for path, new in sorted(outcome.texts.items()):
            old = based[path]
            if old == new:
                continue
            changed = True
            if arguments.diff:
                show(patch(text.shown_path(path), old, new), exact=True)
            else:
                write_atomically(path, new, was=old)
        if outcome.left_to_choose and not arguments.quiet:
            count = outcome.left_to_choose
            print(
                f"wyeline: {summary.count(count, 'finding')} left to you, because the fixes feed something from "
                "elsewhere, open a way, take a device or equipment away, or say what a line is: choose one in the "
                "editor, or see `wyeline connect`",
                file=sys.stderr,
            )
        if outcome.thrown_away:
            print("wyeline: some fixes would have made new errors and were left out", file=sys.stderr)
        if outcome.applied and not arguments.diff and not arguments.quiet and arguments.format == "text":
            count = len(outcome.applied)
            print(f"mended {count} finding{'s' if count != 1 else ''} in {text.shown_path(root)}")
    return changed
