"""A long search by drawn models: ``python tests/robustness/search.py --seconds 900``. Exit code 1 where one failed.

Each draw asks one question of a damaged model: check, edits, outputs, report, proposals or comparison. A model that
fails is written to ``failed-…`` in the working folder; cut to its few telling lines, it goes into ``corpus/``.
"""

from __future__ import annotations

import argparse
import random
import time
import traceback
from collections import Counter
from collections.abc import Callable
from pathlib import Path

import drawn_texts
import handed_over
from soundness import check_all, check_edits

Texts = dict[str, str]


def edits(rng: random.Random, texts: Texts) -> None:
    check_edits(texts, drawn_texts.edits(rng, texts))


def comparison(rng: random.Random, texts: Texts) -> None:
    other = dict(texts)
    for _ in range(rng.randint(1, 3)):
        name = rng.choice(sorted(other))
        lines = other[name].split("\n")
        at = rng.randrange(len(lines))
        lines[at] = drawn_texts.damaged(rng, lines[at])
        other[name] = "\n".join(lines)
    handed_over.check_comparison(texts, other)


QUESTIONS: dict[str, Callable[[random.Random, Texts], object]] = {
    "check": lambda _, texts: check_all(texts),
    "edits": edits,
    "outputs": lambda _, texts: handed_over.check_outputs(texts),
    "report": lambda _, texts: handed_over.check_report(texts),
    "proposals": lambda _, texts: handed_over.check_proposals(texts),
    "comparison": comparison,
}


def ask(seed: int) -> str:
    """Draw a model and a question by a number, and ask it; returns the question."""
    rng = random.Random(seed)
    question = rng.choice(sorted(QUESTIONS))
    texts = drawn_texts.damaged_site(rng) if rng.random() < 0.3 else drawn_texts.model(rng)
    QUESTIONS[question](rng, texts)
    return question


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seconds", type=float, default=900)
    parser.add_argument("--seed", type=int, default=1, help="the first number; the next draws count on from it")
    chosen = parser.parse_args()
    end = time.monotonic() + chosen.seconds
    asked: Counter[str] = Counter()
    failed = 0
    seed = chosen.seed
    while time.monotonic() < end:
        try:
            asked[ask(seed)] += 1
        except Exception:
            failed += 1
            Path(f"failed-{seed}").write_text(traceback.format_exc(), encoding="utf-8")
            print(f"{seed}: {traceback.format_exc(limit=-3)}", flush=True)
        seed += 1
    print(f"{sum(asked.values())} asked ({dict(asked)}), {failed} failed")
    return int(failed > 0)


if __name__ == "__main__":
    raise SystemExit(main())
