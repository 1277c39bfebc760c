"""Run again whenever one of the watched files changes: by polling, so that it works on every system and share."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Callable, Iterable

Marks = dict[str, tuple[int, int] | None]

INTERVAL_S = 0.5


def marks_of(paths: Iterable[str]) -> Marks:
    """Size and time of each file; None for one that is not there."""
    found: Marks = {}
    for path in paths:
        try:
            stat = os.stat(path)
        except (OSError, ValueError):
            found[path] = None
        else:
            found[path] = (stat.st_mtime_ns, stat.st_size)
    return found


def watch(run: Callable[[], int], watched: Callable[[], Iterable[str]], interval_s: float = INTERVAL_S) -> int:
    """Call ``run`` now and after every change of the files that ``watched`` names, until interrupted.

    Marks are taken before each run, so that a change during it is not lost. Returns the last exit code.
    """
    code = 0
    try:
        while True:
            before = marks_of(watched())
            code = run()
            print("-- watching; Ctrl-C ends it --", flush=True)
            known = marks_of(watched())
            changed = any(known[path] != mark for path, mark in before.items() if path in known)
            while not changed:
                time.sleep(interval_s)
                changed = marks_of(watched()) != known
    except KeyboardInterrupt:
        print(file=sys.stderr)
        return code
