"""Runs one command and prints what it took, as a Python tuple: ``python one_process.py LIMIT_S COMMAND ...``.

A process of its own, because the peak memory that a system reports of a child begins with that of its parent.
"""

import os
import signal
import subprocess
import sys
import tempfile
import time

limit_s = int(sys.argv[1])
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
    _, status, usage = os.wait4(child.pid, 0)
    wall_s = time.monotonic() - began
    signal.alarm(0)
    child.returncode = os.waitstatus_to_exitcode(status)
    errors.seek(0)
    said = errors.read()[-400:].decode(errors="replace").encode("ascii", "replace").decode()
kib = usage.ru_maxrss / 1024 if sys.platform == "darwin" else usage.ru_maxrss
print(repr((stopped, child.returncode, said, wall_s, usage.ru_utime + usage.ru_stime, kib / 1024)))
