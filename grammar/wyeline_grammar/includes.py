"""Which blocks include a file: the model follows an include whose word is misspelt, so whoever asks which files belong
together has to see the same."""

from __future__ import annotations

from wyeline_grammar.blocks import Block
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import Include
from wyeline_grammar.vocabulary import KINDS, STATEMENTS

_OTHERS = (STATEMENTS | KINDS) - {"include"}


def may_include(block: Block) -> bool:
    """Whether a block may be an include. A quick look at its first words: True for some that are none."""
    for line in block.lines:
        words = line.lstrip("\ufeff").split(None, 1)
        if words and not words[0].startswith("//") and not line[:1].isspace():
            return words[0] not in _OTHERS
    return False


def included(block: Block) -> str | None:
    """The file that a block includes, as it is written there; None for every other block."""
    if not may_include(block):
        return None
    statement = lower_block(block.lines)
    return statement.target if isinstance(statement, Include) else None
