"""``wyeline preview``: diagram, tables and findings in a browser, renewed as the model's files are saved."""

from __future__ import annotations

import argparse
import os
import time
from functools import partial

from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.commands.roots import one_root
from wyeline_linter.outputs.text import CAUTION, shown_path

POLL_S = 0.2


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("--scenario", metavar="NAME", help="show this switch state instead of the normal one")
    parser.add_argument("--port", type=int, default=0, help="the port on this machine (default: any free one)")
    parser.add_argument("--open", action="store_true", help="open the page in the browser")


def run(arguments: argparse.Namespace) -> int:
    from wyeline_linter.reports.live_model import LiveModel
    from wyeline_linter.reports.preview import Preview

    root = one_root(arguments.path, Files())
    model = LiveModel(root, arguments.scenario)
    try:
        model.renew()
    except SourceError as trouble:
        raise SourceError(shown_path(trouble.path), trouble.reason) from None
    folder = os.path.dirname(root)
    say = partial(print, flush=True)
    try:
        server = Preview(model.page, model.edition, lambda place: say(_here(folder, place)), arguments.port)
    except (OSError, OverflowError) as error:
        raise SourceError(f"port {arguments.port}", f"cannot be listened on ({error})") from None
    server.start()
    say(f"{server.address}\nEnds with Ctrl+C. {CAUTION}")
    if arguments.open:
        import webbrowser

        webbrowser.open(server.address)
    try:
        while True:
            time.sleep(POLL_S)
            if model.look():
                server.changed()
    finally:
        server.close()


def _here(folder: str, place: str) -> str:
    """``file:line`` as seen from where the command was started."""
    file, _, line = place.rpartition(":")
    return f"{shown_path(os.path.join(folder, file))}:{line}"
