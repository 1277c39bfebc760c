"""``wyeline format``: set files in the fixed columns."""

from __future__ import annotations

import argparse
import os
import sys

from wyeline_grammar.formatter import format_text
from wyeline_grammar.sources import SourceError, decode, read_text, wye_files
from wyeline_linter.commands.roots import existing
from wyeline_linter.outputs.patch import patch
from wyeline_linter.outputs.text import shown_path
from wyeline_linter.printed_answers import read_stdin, show


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("paths", nargs="+", metavar="PATH", help="files or folders; - reads from standard input")
    parser.add_argument("--check", action="store_true", help="change nothing; exit 1 if a file is not set so")
    parser.add_argument("--diff", action="store_true", help="change nothing; show what would change")


def run(arguments: argparse.Namespace) -> int:
    if arguments.paths == ["-"]:
        text = decode("standard input", read_stdin())  # by bytes: line ends and letters stay as they are
        made = _with_line_ends_of(text, format_text(text))
        if arguments.check or arguments.diff:
            return int(_differs("standard input", text, made, arguments.diff))
        show(made, exact=True)
        return 0
    changed, unread = 0, False
    for path in _files(arguments.paths):
        try:
            text = read_text(path)
        except SourceError as error:
            print(f"wyeline: {error}", file=sys.stderr)
            unread = True
            continue
        made = _with_line_ends_of(text, format_text(text))
        if made == text:
            continue
        changed += 1
        if arguments.check or arguments.diff:
            _differs(shown_path(path), text, made, arguments.diff)
        else:
            from wyeline_linter.fixing import write_atomically

            write_atomically(path, made, was=text)
            print(f"set {shown_path(path)}")
    return 2 if unread else int(changed > 0 and (arguments.check or arguments.diff))


def _files(paths: list[str]) -> list[str]:
    found: list[str] = []
    for path in paths:
        full = existing(path)
        if not os.path.isdir(full) and not full.endswith(".wye"):  # `format *` must not set the notes beside a model
            raise SourceError(path, "its name does not end in .wye; nothing was set")
        found += wye_files(full) if os.path.isdir(full) else [full]
    return found


def _with_line_ends_of(old: str, new: str) -> str:
    return new.replace("\n", "\r\n") if "\r\n" in old else new


def _differs(name: str, old: str, new: str, diff: bool) -> bool:
    if old == new:
        return False
    if diff:
        show(patch(name, old, new), exact=True)
    else:
        print(f"{name} is not set in the fixed columns; `wyeline format` does it")
    return True
