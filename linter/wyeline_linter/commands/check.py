"""``wyeline check``: judge models; mend what may be mended."""

from __future__ import annotations

import argparse
import difflib
import gc
import json
import os
import sys

from wyeline_grammar.sources import Files, SourceError, decode, read_bytes, read_text, workspace_of
from wyeline_linter.commands.roots import roots_of
from wyeline_linter.findings import Finding, Safety, Severity
from wyeline_linter.outputs import json_output, text
from wyeline_linter.result_cache import ResultCache


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("paths", nargs="+", metavar="PATH", help="a model's root file, or a folder of models")
    parser.add_argument("--fix", action="store_true", help="apply the fixes that only change how something is written")
    parser.add_argument("--unsafe", action="store_true", help="with --fix: apply fixes that want a look, too")
    parser.add_argument("--diff", action="store_true", help="show what --fix would change and change nothing")
    parser.add_argument("--scenario", metavar="NAME", help="judge the model in this scenario instead of as normal")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how findings are written")
    parser.add_argument(
        "--fail-on",
        choices=[s.word for s in sorted(Severity, reverse=True)],
        default="warning",
        help="the least severity that makes the exit code 1 (default: warning)",
    )
    parser.add_argument("--show-allowed", action="store_true", help="show findings that an `allow` accepts, too")
    parser.add_argument("--quiet", action="store_true", help="one line a finding, no summary")
    parser.add_argument("--no-cache", dest="cache", action="store_false", help="read and judge everything anew")
    parser.add_argument("--colour", choices=("auto", "always", "never"), default="auto", help="colour as an addition")


def run(arguments: argparse.Namespace) -> int:
    gc.disable()  # one short run: collecting costs more than it frees
    files = Files()
    roots = roots_of(arguments.paths, files)
    unread: dict[str, SourceError] = {}
    if arguments.fix or arguments.diff:
        changed = _fix(roots, arguments, unread)
        if arguments.diff:
            return _told(unread) or int(changed)
    findings: list[Finding] = []
    seen_files: dict[str, None] = {}
    cache = ResultCache(None if arguments.cache else "")
    for root in roots:
        try:
            found, names = judged(root, arguments.scenario, cache)
        except SourceError as error:
            unread[root] = error  # what the other models have to say is not lost with it
            continue
        findings += found
        seen_files.update(dict.fromkeys(names))
    threshold = Severity[arguments.fail_on.upper()]
    if seen_files or arguments.format == "json":
        _write(findings, list(seen_files), arguments, threshold)
    failed = any(f.severity >= threshold and f.allowed is None for f in findings)
    return _told(unread) or int(failed)


def _told(unread: dict[str, SourceError]) -> int:
    """Say which models could not be judged; the exit code for them, 0 where there are none."""
    for error in unread.values():
        print(f"wyeline: {error}", file=sys.stderr)
    return 2 if unread else 0


def judged(root: str, scenario: str | None, cache: ResultCache) -> tuple[list[Finding], list[str]]:
    """The findings of one model and its files, from the cache where nothing changed.

    Raises SourceError where the root cannot be read or the model has no such scenario.
    """
    asked = ("check", root, scenario or "")
    seen: dict[str, bytes | None] = {}

    def read(path: str) -> bytes | None:
        try:
            data = read_bytes(path)
        except SourceError:
            seen[path] = None
            return None
        seen[path] = data
        return data

    kept = cache.load(asked, read)
    if kept is not None:
        names, findings, _ = kept
        return findings(), names

    from wyeline_linter.analysis import Analysis

    def reader(path: str) -> str:
        if seen.get(path) is None:
            seen[path] = None
            seen[path] = read_bytes(path)
        data = seen[path]
        assert data is not None
        return decode(path, data)

    workspace = workspace_of(root)
    seen.clear()
    try:
        analysis = Analysis(root, Files(reader), workspace, scenario=scenario)
    except KeyError:
        raise SourceError(text.shown_path(root), f"this model has no scenario `{scenario}`") from None
    found = analysis.all_findings()
    cache.store(asked, seen, analysis.model.files, found)
    return found, analysis.model.files


def _write(findings: list[Finding], files: list[str], arguments: argparse.Namespace, threshold: Severity) -> None:
    if arguments.format == "json":
        json.dump(json_output.report(findings, files), sys.stdout, indent=2, ensure_ascii=False)
        sys.stdout.write("\n")
        return
    colour = arguments.colour == "always" or (
        arguments.colour == "auto" and sys.stdout.isatty() and "NO_COLOR" not in os.environ
    )
    shown = [f for f in findings if arguments.show_allowed or f.allowed is None]
    written = text.render(shown, colour=colour, quiet=arguments.quiet)
    if written:
        print(written)
    if not arguments.quiet:
        print(text.summary(findings, len(files), strict=threshold))
        print(text.CAUTION)


def _fix(roots: list[str], arguments: argparse.Namespace, unread: dict[str, SourceError]) -> bool:
    from wyeline_linter.fixing import fix_model, write_atomically

    allowed = frozenset({Safety.SAFE, Safety.LOOK} if arguments.unsafe else {Safety.SAFE})
    changed = False
    for root in roots:
        try:
            outcome = fix_model(root, read_text, allowed, workspace_of(root))
        except SourceError as error:
            unread[root] = error
            continue
        for path, new in sorted(outcome.texts.items()):
            old = read_text(path)
            if old == new:
                continue
            changed = True
            if arguments.diff:
                name = text.shown_path(path)
                sys.stdout.writelines(
                    difflib.unified_diff(old.splitlines(True), new.splitlines(True), f"a/{name}", f"b/{name}")
                )
            else:
                write_atomically(path, new)
        if outcome.thrown_away:
            print("wyeline: some fixes would have made new errors and were left out", file=sys.stderr)
        if outcome.applied and not arguments.diff and not arguments.quiet and arguments.format == "text":
            count = len(outcome.applied)
            print(f"mended {count} finding{'s' if count != 1 else ''} in {text.shown_path(root)}")
    return changed
