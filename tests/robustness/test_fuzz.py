"""No text, file, include or run of edits makes the grammar or the linter fail, hang, or point outside the text."""

from __future__ import annotations

import random
import re
import subprocess
import sys
from pathlib import Path

import drawn_texts
import handed_over
import pytest
import search
from hypothesis import HealthCheck, given, settings
from soundness import ROOT, bounded, check_all, check_edits, check_formatter, models_of

CORPUS = Path(__file__).parent / "corpus"
_LEAN = settings(max_examples=80, deadline=None, suppress_health_check=list(HealthCheck))


@pytest.mark.parametrize("path", sorted(CORPUS.iterdir()), ids=lambda p: p.name)
def test_what_once_failed(path: Path) -> None:
    files = models_of(path.read_bytes())
    with bounded(files):
        check_all(files)
        handed_over.check_outputs(files)
        handed_over.check_report(files)
        handed_over.check_proposals(files)


@_LEAN
@given(drawn_texts.SEEDS)
def test_any_model(seed: int) -> None:
    files = drawn_texts.model(random.Random(seed))
    with bounded(files):
        check_all(files)


@_LEAN
@given(drawn_texts.SEEDS)
def test_any_run_of_edits(seed: int) -> None:
    rng = random.Random(seed)
    files = drawn_texts.model(rng)
    check_edits(files, drawn_texts.edits(rng, files))


@settings(parent=_LEAN, max_examples=40)
@given(drawn_texts.SEEDS)
def test_any_question_of_a_damaged_model(seed: int) -> None:
    """Reports, comparisons, repairs, sizes and studies of small models and of the shipped sites."""
    search.ask(seed)


@_LEAN
@given(drawn_texts.GRAMMATICAL)
def test_any_sentences(text: str) -> None:
    check_all({ROOT: text})


@settings(parent=_LEAN, max_examples=200)
@given(drawn_texts.ANY)
def test_any_characters(text: str) -> None:
    check_formatter(text)
    check_all({ROOT: text})


def test_the_coverage_guided_fuzzer_runs() -> None:
    pytest.importorskip("atheris", reason="pip install atheris (Linux and macOS)")
    script = Path(__file__).with_name("fuzz.py")
    # On Linux the most memory that a process is said to have held counts its parent's up to `exec`: by way of a shell
    # that is a small one, and not this one after thousands of tests, which is above the fuzzer's limit.
    apart = ["/bin/sh", "-c", '"$@"; exit $?', "sh"]
    done = subprocess.run(
        [*apart, sys.executable, str(script), "--seconds", "12"],
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-3000:] + done.stderr[-3000:]
    tried = re.search(r"number_of_executed_units: (\d+)", done.stdout + done.stderr)
    assert tried is not None and int(tried[1]) > 20
