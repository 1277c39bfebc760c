"""The coverage-guided fuzzer (atheris): ``python tests/robustness/fuzz.py --seconds 3600``.

An input that fails is written to ``crash-…`` in the working folder; made small, it goes into ``corpus/``.
"""

from __future__ import annotations

import argparse
import random
import sys
import tempfile
from pathlib import Path
from typing import Any

import atheris  # type: ignore[import-not-found,import-untyped,unused-ignore]

HERE = Path(__file__).parent
MEMORY_MB = 1500
LONGEST_INPUT = 6_000
SECONDS_AN_INPUT = 60
"""Backstop behind the bound of steps."""

with atheris.instrument_imports(include=["wyeline_grammar", "wyeline_linter"]):
    import drawn_texts
    import handed_over
    from soundness import check_all, models_of


def one(data: bytes) -> None:
    """Every input is checked; one in eight also goes the whole way to reports and proposals."""
    texts = models_of(data)
    check_all(texts)
    if len(data) % 8 == 0:
        handed_over.check_outputs(texts)
        handed_over.check_report(texts)
        handed_over.check_proposals(texts)


def mutated(data: bytes, most: int, seed: int) -> bytes:
    """Half of the mutations go by lines and words of the language, the others by bytes."""
    rng = random.Random(seed)
    if rng.random() < 0.5:
        return bytes(atheris.Mutate(data, most))
    lines = data.decode("utf-8", "replace").split("\n")
    at = rng.randrange(len(lines) + 1)
    new = rng.choice(drawn_texts.lines_written())
    lines[at : at + rng.randint(0, 1)] = [drawn_texts.damaged(rng, new)]
    return "\n".join(lines).encode("utf-8", "replace")[:most]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seconds", type=int, default=60)
    parser.add_argument("--runs", type=int, default=-1)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args()
    with tempfile.TemporaryDirectory() as kept:
        for number, path in enumerate([*HERE.glob("corpus/*"), *drawn_texts.EXAMPLES.glob("broken/*.wye")]):
            Path(kept, f"{number}").write_bytes(path.read_bytes())
        options: list[Any] = [
            *(sys.argv[0], kept, f"-max_total_time={chosen.seconds}", f"-runs={chosen.runs}", f"-seed={chosen.seed}"),
            *(f"-max_len={LONGEST_INPUT}", f"-rss_limit_mb={MEMORY_MB}", f"-timeout={SECONDS_AN_INPUT}"),
            *("-print_final_stats=1", "-verbosity=0"),
        ]
        atheris.Setup(options, one, custom_mutator=mutated)
        atheris.Fuzz()


if __name__ == "__main__":
    main()
