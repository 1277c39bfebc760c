"""``wyeline schema``: the JSON Schema of a JSON output."""

from __future__ import annotations

import argparse
import json

from wyeline_linter.outputs.json_schema import OUTPUTS, schema_of
from wyeline_linter.printed_answers import show


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("output", metavar="COMMAND", choices=sorted(OUTPUTS), help=", ".join(sorted(OUTPUTS)))


def run(arguments: argparse.Namespace) -> int:
    show(json.dumps(schema_of(arguments.output), indent=2, ensure_ascii=False) + "\n", exact=True)
    return 0
