"""Tags that descriptions of circuits mention: a load is perhaps counted there, and where it stands by itself too."""

from __future__ import annotations

import re

from wyeline_grammar.linking import Equipment
from wyeline_linter.loads.leaves import Leaf

_TAG = re.compile(r"\w+(?:[-.]\w+)*", re.UNICODE)


def mentioned_tags(board: Equipment, leaves: list[Leaf]) -> dict[str, str]:
    """Words that could be a tag (with a capital and a digit), with the key of the loaded circuit that mentions each."""
    loaded = {leaf.place for leaf in leaves if leaf.row is not None}
    found: dict[str, str] = {}
    for placed in board.circuits:
        text = placed.circuit.body.description
        if not text or placed.key not in loaded or text.islower():
            continue
        for word in _TAG.findall(text):
            if word.isascii() and (word.isalpha() or word == word.lower()):
                continue
            if any(c.isupper() for c in word) and any(c.isdigit() for c in word):
                found.setdefault(word, placed.key)
    return found
