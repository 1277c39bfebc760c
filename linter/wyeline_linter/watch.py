"""Run again whenever one of the watched files changes: by polling, so that it works on every system and share.

What is watched may go and come back, the working folder too: what is not there is told once, and waited for.
"""

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


def back_in(folder: str) -> bool:
    """Work in a folder, which may have gone and come back since: a process stays in the one that is gone. False where
    there is no such folder now."""
    try:
        if os.getcwd() == folder:
            return True
    except OSError:
        pass  # it is gone; there may be a new one by its name
    try:
        os.chdir(folder)
    except OSError:
        return False
    return True


def watch(run: Callable[[], int], watched: Callable[[], Iterable[str]], interval_s: float = INTERVAL_S) -> int:
    """Call ``run`` now and after every change of the files that ``watched`` names, until interrupted.

    Marks are taken before each run, so that a change during it is not lost: neither of a file nor of which there are.
    Returns the last exit code.
    """
    code = 0
    try:
        while True:
            before = marks_of(watched())
            code = run()
            print("-- watching; Ctrl-C ends it --", file=sys.stderr, flush=True)
            while marks_of(watched()) == before:
                time.sleep(interval_s)
    except KeyboardInterrupt:
        print(file=sys.stderr)
        return code
