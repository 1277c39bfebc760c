"""``wyeline preview``: diagram, tables and findings in a browser, renewed as the model's files are saved."""

from __future__ import annotations

import argparse
import os
import time
from functools import partial
from typing import TYPE_CHECKING

from wyeline_grammar.sources import Files, SourceError, workspace_of
from wyeline_linter.commands.roots import one_root
from wyeline_linter.configuration import find, load_for
from wyeline_linter.outputs.text import CAUTION, shown_path

if TYPE_CHECKING:
    from wyeline_linter.reports.package import Package

POLL_S = 0.2


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("--scenario", metavar="NAME", help="show this switch state instead of the normal one")
    parser.add_argument("--port", type=int, default=0, help="the port on this machine (default: any free one)")
    parser.add_argument("--open", action="store_true", help="open the page in the browser")


def run(arguments: argparse.Namespace) -> int:
    from wyeline_linter.reports.preview import Preview

    root = one_root(arguments.path, Files())
    watched = Watched(root, arguments.scenario)
    watched.renew()
    if watched.package is None:
        raise SourceError(shown_path(root), watched.trouble)
    folder = os.path.dirname(root)
    say = partial(print, flush=True)
    try:
        server = Preview(watched.page, watched.edition, lambda place: say(_here(folder, place)), arguments.port)
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
            if watched.changed():
                watched.renew()
                if watched.trouble:
                    server.trouble(watched.trouble)
                else:
                    server.changed()
    finally:
        server.close()


def _here(folder: str, place: str) -> str:
    """``file:line`` as seen from where the command was started."""
    file, _, line = place.rpartition(":")
    return f"{shown_path(os.path.join(folder, file))}:{line}"


class Watched:
    """A model on disk: ``package`` is what can be shown of it last, ``trouble`` why there is nothing newer."""

    def __init__(self, root: str, scenario: str | None) -> None:
        self.root, self.scenario = root, scenario
        self.package: Package | None = None
        self.trouble = ""
        self._files = [root]
        self._seen = self._stamp()

    def renew(self) -> None:
        """Judge the files as they are now."""
        from wyeline_linter.analysis import Analysis
        from wyeline_linter.reports.package import DIAGRAM, TABLE_KINDS, WORKING, Package, Wishes

        self._seen = self._stamp()
        try:
            analysis = Analysis(self.root, Files(), workspace_of(self.root), self.scenario, load_for(self.root))
        except SourceError as trouble:
            self.trouble = str(trouble)
            return
        except KeyError:
            self.trouble = f"this model has no scenario `{self.scenario}`"
            return
        self.trouble = ""
        configuration = find(self.root)
        self._files = [*analysis.model.files, *([configuration] if configuration is not None else [])]
        self._seen = self._stamp()
        parts = frozenset({DIAGRAM, WORKING, *(kind.name for kind in TABLE_KINDS)})
        self.package = Package(analysis, Wishes(parts))

    def changed(self) -> bool:
        """Whether a file of the model is another one than at the last look."""
        return self._stamp() != self._seen

    def _stamp(self) -> tuple[object, ...]:
        stamps: list[object] = []
        for path in self._files:
            try:
                status = os.stat(path)
            except OSError:
                stamps.append((path, None))
            else:
                stamps.append((path, status.st_mtime_ns, status.st_size, status.st_ino))
        return tuple(stamps)

    def page(self) -> str:
        """The whole page."""
        from wyeline_linter.reports.html_page import page_html

        assert self.package is not None
        return page_html([self.package], live=True)

    def edition(self) -> str:
        """The part of it that changes."""
        from wyeline_linter.reports.html_page import edition_html

        assert self.package is not None
        return edition_html(self.package)
