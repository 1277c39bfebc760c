"""The studies of a check on a core of their own, while the rules of equipment and feeders are asked here.

Neither needs what the other finds, and each takes about a third of a check. So when the model is read, its voltages
derived and its loads added up, the process makes a copy of itself (``os.fork``, which shares all of that until it is
written to), and what the copy finds comes back as plain records. Where it cannot be made, or ends without an answer,
the studies run here as they would have: the findings are the same.
"""

from __future__ import annotations

import contextlib
import json
import os
import sys
from typing import TYPE_CHECKING, NoReturn

if TYPE_CHECKING:
    from types import TracebackType

    from wyeline_linter.analysis import Analysis

FEWEST = 400
"""Pieces of equipment from which it pays: what the copy has to load takes 80 ms, with which a small model is done."""


class StudiesApart:
    """A process that studies one model where that is ``possible``; ``with`` ends it, whatever happens meanwhile."""

    def __init__(self, *, possible: bool) -> None:
        self._possible = possible
        self._process = 0
        self._answer = -1

    def __enter__(self) -> StudiesApart:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        if self._answer >= 0:
            os.close(self._answer)
        if self._process:
            import signal  # one more module, for large models alone

            with contextlib.suppress(OSError):
                os.kill(self._process, signal.SIGKILL)  # it has answered, or nobody waits for what it would say
                os.waitpid(self._process, 0)

    def begin(self, analysis: Analysis) -> None:
        """Let a copy of this process study the model, from where the rules of equipment have not been asked yet."""
        if not self._possible or len(analysis.model.equipment) < FEWEST or not _has_a_core():
            return
        analysis.view.loads  # noqa: B018  # both go on from them
        try:
            self._answer, writer = os.pipe()
        except OSError:
            return
        here = os.getpid()
        try:
            self._process = os.fork()
        except OSError:  # no more processes, or no memory for one
            os.close(writer)
            return
        if self._process == 0:
            os.close(self._answer)  # else an answer that nobody reads any more would wait for its own reader
            _study(analysis, writer, here)
        os.close(writer)

    def take(self, analysis: Analysis) -> bool:
        """Wait for what was found, and give it to the analysis; whether there was an answer."""
        if not self._process:
            return False
        with open(self._answer, "rb", closefd=False) as file:
            answer = file.read()
        try:
            records = json.loads(answer)
        except ValueError:  # it ended before it was done; what ended it shows again when the studies run here
            return False
        from wyeline_linter.finding_records import from_record

        paths, files = analysis.model.files, analysis.files
        analysis.take_studied([from_record(record, paths, lambda path: files.get(path).lines) for record in records])
        return True


def _has_a_core() -> bool:
    """Whether a copy of this process would be whole, and have a core of its own. A copy has none of the threads there
    were; libraries of macOS do not stand being copied at all, and Windows has no such call."""
    if sys.platform != "linux":
        return False
    try:
        return len(os.sched_getaffinity(0)) > 1 and len(os.listdir("/proc/self/task")) == 1 and granted_cores() > 1
    except OSError:
        return False


def granted_cores(file: str = "/sys/fs/cgroup/cpu.max") -> float:
    """How many cores' time this process may use by the quota of its container, as the kernel tells it (control groups
    v2: microseconds granted, and in which period); without end where there is no quota, or none that can be read. An
    affinity says nothing of it: a container with the time of one core may be let run on all of them."""
    try:
        with open(file, encoding="ascii") as quota:
            granted_us, period_us = quota.read().split()
        return float("inf") if granted_us == "max" else int(granted_us) / int(period_us)
    except (OSError, ValueError, ZeroDivisionError):
        return float("inf")


def _study(analysis: Analysis, writer: int, parent: int) -> NoReturn:
    """The life of the copy. It leaves without a word: nothing of what it shares with its parent is its own to write."""
    code = 1
    try:

        def still_asked() -> None:
            if os.getppid() != parent:
                os._exit(code)

        from wyeline_linter.finding_records import to_record

        analysis.between = still_asked
        analysis.view.slim()
        numbers = {path: i for i, path in enumerate(analysis.model.files)}
        records = [to_record(finding, numbers.__getitem__) for finding in analysis.study_findings()]
        with open(writer, "wb") as file:
            file.write(json.dumps(records).encode())
        code = 0
    finally:
        os._exit(code)
