"""Lark used the plain way: its own lexer with a pattern for each kind of word, and its LALR parser, line by line.

The grammar is the project's own; only the terminals, which the project cuts by a lexer of its own, are written out
here from the same patterns. A line's result is built by a transformer inside the parser, so that no tree is made.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import lark

import wyeline_grammar
from wyeline_grammar import tokens, vocabulary

GRAMMAR = Path(wyeline_grammar.__file__).parent / "wye.lark"


class Lines(lark.Transformer):  # type: ignore[type-arg]
    """Each rule to its form and what it holds."""

    def __getattr__(self, form: str) -> Any:
        if form.startswith("_"):
            raise AttributeError(form)
        return lambda children: (form, children)


def terminals() -> str:
    """The kinds of ``tokens.py`` as terminals, in the order in which they are tried."""
    patterns: dict[str, list[str]] = {
        "TEXT": [tokens._TEXT + rf"(?!\.{tokens._PORT_WORD})"],
        "LEGS": [tokens._LEGS],
    }
    for kind, pattern in (*tokens._NUMERIC, *tokens._LETTERED):
        patterns.setdefault("PLAIN" if kind == "WORD" else kind, []).append(f"(?:{pattern}){tokens._EDGE}")
    patterns["PORT"].append(rf"{tokens._TEXT}\.{tokens._PORT_WORD}{tokens._EDGE}")
    for mark, kind in tokens._MARKS.items():
        patterns.setdefault(kind, []).append(re.escape(mark) + ("(?![0-9])" if mark == "+" else ""))
    words: dict[str, list[str]] = {}
    for word, kind in vocabulary._WORD_KIND.items():
        words.setdefault(kind, []).append(re.escape(word))
    for kind, spelled in words.items():
        patterns[kind] = [f"(?:{'|'.join(sorted(spelled, key=len, reverse=True))}){tokens._EDGE}"]
    # Figures are tried in the order of their table, then words of the language, then names and plain words.
    order = [*(kind for kind in patterns if kind not in ("NAME", "PLAIN")), "NAME", "PLAIN"]
    order.remove("QUANTITY")
    order.insert(order.index("SETS"), "QUANTITY")
    rows = []
    for place, kind in enumerate(order):
        pattern = "|".join(patterns[kind]).replace("/", r"\/").replace("\\\r", "").replace("\\\n", "")
        rows.append(f"{kind}.{len(order) - place}: /{pattern}/")
    return "\n".join([*rows, r"_COMMENT: /\/\/.*/", r"_BLANKS: /[ \t,\r\n]+/", "%ignore _COMMENT", "%ignore _BLANKS"])


def parser() -> lark.Lark:
    """Built anew each time; ``start`` is ``statement`` or ``detail``."""
    rules = re.sub(r"^%declare.*$", "", GRAMMAR.read_text("utf-8"), flags=re.M)
    return lark.Lark(
        f"{rules}\n{terminals()}",
        parser="lalr",
        lexer="basic",
        start=["statement", "detail"],
        transformer=Lines(),
        maybe_placeholders=False,
    )
