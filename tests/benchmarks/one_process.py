"""Runs one command and prints what it took, as a Python tuple: ``python one_process.py LIMIT_S COMMAND ...``.

A process of its own, because the peak memory that a system reports of a child begins with that of its parent. That is
the largest of any one process; with a limit such as ``600+`` it is looked at every 10 ms how much the command and its
children hold together, what they share counted once (Linux only). Looking costs time: take times from another run.
"""

import os
import signal
import subprocess
import sys
import tempfile
import time

limit_s = int(sys.argv[1].rstrip("+"))
together = sys.argv[1].endswith("+") and sys.platform == "linux"


def held_kib(process: int) -> int:
    """The memory of a process, its part of what is shared; nothing of one that has ended."""
    try:
        with open(f"/proc/{process}/smaps_rollup") as file:
            return next((int(line.split()[1]) for line in file if line.startswith("Pss:")), 0)
    except OSError:
        return 0


def children(process: int) -> list[int]:
    try:
        with open(f"/proc/{process}/task/{process}/children") as file:
            return [int(each) for each in file.read().split()]
    except OSError:
        return []


with tempfile.TemporaryFile() as errors:
    began = time.monotonic()
    child = subprocess.Popen(sys.argv[2:], stdout=subprocess.DEVNULL, stderr=errors)
    stopped = False

    def stop(*_: object) -> None:
        global stopped
        stopped = True
        child.kill()

    signal.signal(signal.SIGALRM, stop)
    signal.alarm(limit_s)
    most_kib, ended = 0, 0
    while together and not ended:
        most_kib = max(most_kib, sum(map(held_kib, (child.pid, *children(child.pid)))))
        time.sleep(0.01)
        ended, status, usage = os.wait4(child.pid, os.WNOHANG)
    if not ended:
        _, status, usage = os.wait4(child.pid, 0)
    wall_s = time.monotonic() - began
    signal.alarm(0)
    child.returncode = os.waitstatus_to_exitcode(status)
    errors.seek(0)
    said = errors.read()[-400:].decode(errors="replace").encode("ascii", "replace").decode()
kib = usage.ru_maxrss / 1024 if sys.platform == "darwin" else usage.ru_maxrss
print(repr((stopped, child.returncode, said, wall_s, usage.ru_utime + usage.ru_stime, max(kib, most_kib) / 1024)))
