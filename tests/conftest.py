"""In CI every test runs: one that skips there, for whatever reason, has failed."""

from __future__ import annotations

import os
import signal
from collections.abc import Generator
from typing import Any, TypeVar

import pytest

Report = TypeVar("Report", pytest.TestReport, pytest.CollectReport)


def pytest_configure() -> None:
    """What a shell runs in the background is deaf to interrupts, and so would be the programs that tests interrupt."""
    if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
        signal.signal(signal.SIGINT, signal.default_int_handler)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport() -> Generator[None, pytest.TestReport, pytest.TestReport]:
    return _judged((yield))


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report() -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    return _judged((yield))


def _judged(report: Report) -> Report:
    if os.environ.get("CI") and report.skipped and not hasattr(report, "wasxfail"):
        reason: Any = report.longrepr
        report.outcome = "failed"
        report.longrepr = (
            f"skipped, and in CI every test must run: {reason[2] if isinstance(reason, tuple) else reason}"
        )
    return report
