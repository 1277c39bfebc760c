"""Colours for editors, written once.

A word's kind follows from its spelling and the word lists alone, so one flat table of token groups is enough for every
editor: ``GROUPS`` names the groups, ``RULES`` says how each is spelled, and ``highlighting_formats`` prints both in the
words of each editor. The committed files are compared with this module by a test::

    python -m wyeline_grammar.highlighting --write     # in a checkout
    python -m wyeline_grammar.highlighting --check
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

from wyeline_grammar import vocabulary
from wyeline_grammar.units import TRADE_SIZE_UNITS, UNIT_SPELLINGS


class Group(NamedTuple):
    """Tokens that share a colour, and what each editor calls that colour."""

    name: str
    textmate: str
    vim: str
    emacs: str
    kate: str


GROUPS: dict[str, Group] = {
    group.name: group
    for group in (
        Group("comment", "comment.line.double-slash", "Comment", "font-lock-comment-face", "dsComment"),
        Group("doc", "comment.line.documentation", "SpecialComment", "font-lock-doc-face", "dsDocumentation"),
        Group("text", "string.quoted.double", "String", "font-lock-string-face", "dsString"),
        Group("statement", "keyword.other.statement", "Statement", "font-lock-keyword-face", "dsKeyword"),
        Group("kind", "storage.type.kind", "Type", "font-lock-type-face", "dsDataType"),
        Group("key", "entity.other.attribute-name.key", "Identifier", "font-lock-variable-name-face", "dsAttribute"),
        Group("flag", "support.constant.flag", "Special", "font-lock-builtin-face", "dsBuiltIn"),
        Group("action", "keyword.control.action", "Keyword", "font-lock-keyword-face", "dsControlFlow"),
        Group("link", "keyword.operator.word", "Keyword", "font-lock-keyword-face", "dsKeyword"),
        Group("port", "variable.other.port", "Function", "font-lock-function-name-face", "dsVariable"),
        Group("name", "entity.name.equipment", "Function", "font-lock-function-name-face", "dsFunction"),
        Group("legs", "variable.parameter.legs", "Label", "font-lock-constant-face", "dsSpecialChar"),
        Group("voltage", "constant.other.voltage", "Constant", "font-lock-constant-face", "dsConstant"),
        Group("conductor", "constant.other.conductor", "Constant", "font-lock-constant-face", "dsConstant"),
        Group("quantity", "constant.numeric.quantity", "Number", "font-lock-constant-face", "dsFloat"),
        Group("count", "constant.numeric.count", "Number", "font-lock-constant-face", "dsDecVal"),
        Group("mark", "keyword.operator.mark", "Operator", "font-lock-keyword-face", "dsOperator"),
    )
}

WORDS: dict[str, frozenset[str]] = {
    "statement": vocabulary.STATEMENTS,
    "kind": vocabulary.KINDS,
    "key": vocabulary.KEYS,
    "flag": vocabulary.FLAGS,
    "action": vocabulary.ACTIONS,
    "link": vocabulary.SMALL_WORDS,
}
"""The groups that are word lists."""

GROUP_OF_KIND: dict[str, str] = {
    "TEXT": "text",
    "PORT": "port",
    "NAME": "name",
    "LEGS": "legs",
    "VOLTAGE": "voltage",
    "RUN": "conductor",
    "SIZE": "conductor",
    "TRADE_SIZE": "conductor",
    "QUANTITY": "quantity",
    "SETS": "count",
    "POLES": "count",
    "RANGE": "count",
    "LIST": "count",
    "NUMBER": "count",
    "DATE": "count",
    **dict.fromkeys(("ARROW", "LE", "GE", "COLON", "PLUS"), "mark"),
    **{word.upper(): "statement" for word in vocabulary.STATEMENTS},
    **{word.upper(): "link" for word in vocabulary.SMALL_WORDS},
    "KEY": "key",
    "FLAG": "flag",
    "KIND": "kind",
    "ACTION": "action",
}
"""The group of each token kind of the tokenizer. Plain words and what reaches its end as no kind have no colour."""

BLANKS = " \t\u00a0"
EDGES = BLANKS + ',:[]"+<>=≤≥→'
"""Characters that end a word; so do ``->`` and ``//``."""

_B = f"[{BLANKS}]*"
_N = r"[0-9]+(?:\.[0-9]+)?"
_FRACTION = "(?:[0-9]+-)?[0-9]+/(?:16|32|64|2|4|8)"
_AREA = "(?:kcmil|mm2|mm²)"
_GAUGE = "#[0-9]+(?:/0)?"
_PHASES = "(?:1ph|3ph|dc)"
_TAIL = f"(?:{_B}k?V{_B}{_PHASES}|[{BLANKS}]+{_PHASES}|{_B}dc)"
_PAIR = r"[0-9][0-9]+(?:\.[0-9]+)?/[0-9][0-9]+(?:\.[0-9]+)?"


def _either(words: frozenset[str] | tuple[str, ...]) -> str:
    return "(?:" + "|".join(re.escape(word) for word in sorted(words, key=lambda w: (-len(w), w))) + ")"


_UNIT = _either(tuple(UNIT_SPELLINGS))
_INCH = _either(tuple(TRADE_SIZE_UNITS))


class Rule(NamedTuple):
    """How one spelling of a group looks: a pattern of plain regular expressions (literals, classes, ``(?:``, ``|``,
    ``? * +``), which every editor's dialect can be printed from. It reaches from one edge to the next."""

    group: str
    pattern: str


RULES: tuple[Rule, ...] = (
    Rule("conductor", f"(?:{_FRACTION}|{_N}){_B}{_INCH}"),
    Rule("quantity", f"{_FRACTION}{_B}{_UNIT}"),
    Rule("voltage", f"{_N}Y/{_N}(?:{_TAIL}|{_B}k?V)?"),
    Rule("voltage", f"{_PAIR}(?:{_TAIL}|{_B}k?V)?"),
    Rule("voltage", f"{_N}/{_N}{_B}kV(?:{_B}{_PHASES})?"),
    Rule("voltage", f"{_N}(?:-{_N})?{_TAIL}"),
    Rule("conductor", f"[0-9]+(?:{_GAUGE}|[x×]{_N}{_B}{_AREA}|G{_N}{_B}(?:mm2|mm²))"),
    Rule("conductor", f"(?:{_GAUGE}|{_N}{_B}{_AREA})"),
    Rule("quantity", f"[+-]?{_N}{_B}{_UNIT}"),
    Rule("count", f"[0-9]+{_B}sets?"),
    Rule("count", r"[1-4]p(?:\+N)?"),
    Rule("count", rf"{_N}\.\.{_N}(?:{_B}{_UNIT})?"),
    Rule("count", "[0-9]+(?:,[0-9]+)+"),
    Rule("count", f"[+-]?{_N}"),
    Rule("count", "[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]"),
)
"""Tried in this order, as the tokenizer does: of two rules that fit from the same place the upper one holds."""

PORT_WORD = "[a-z][a-z0-9]*(?:-[a-z0-9]+)*"
LEGS = f"(?:L[123]|[ABCN])(?:[{BLANKS},]*(?:L[123]|[ABCN]))*"
"""What stands between the brackets."""


def outputs() -> dict[str, Callable[[], str]]:
    """The committed files, by their path from the top of the repository, each with what prints it."""
    from wyeline_grammar import highlighting_formats as formats  # only this command needs them
    from wyeline_grammar import highlighting_tree_sitter as tree_sitter

    return {
        "editor-configs/vscode/syntaxes/wye.tmLanguage.json": formats.textmate,
        "editor-configs/vim/syntax/wye.vim": formats.vim,
        "editor-configs/neovim/syntax/wye.vim": formats.vim,
        "editor-configs/emacs/wye-highlighting.el": formats.emacs,
        "editor-configs/kate/wye.xml": formats.kate,
        "editor-configs/helix/tree-sitter-wye/grammar.js": tree_sitter.grammar,
        "editor-configs/helix/runtime/queries/wye/highlights.scm": tree_sitter.queries,
    }


def main(arguments: list[str] | None = None) -> int:
    """Write the highlighting files of a checkout, or say which of them are out of date (exit code 1)."""
    chosen = sys.argv[1:] if arguments is None else arguments
    if chosen not in (["--write"], ["--check"]):
        print("usage: python -m wyeline_grammar.highlighting --write | --check", file=sys.stderr)
        return 2
    top = Path(__file__).resolve().parents[2]
    if not (top / "editor-configs").is_dir():
        print(f"{top} is no checkout of Wyeline: it has no editor-configs folder", file=sys.stderr)
        return 2
    stale = 0
    for path, render in outputs().items():
        file, text = top / path, render()
        if file.exists() and file.read_text(encoding="utf-8") == text:
            continue
        stale += 1
        if chosen == ["--write"]:
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(text, encoding="utf-8", newline="\n")
            print(f"wrote {path}")
        else:
            print(f"{path} is out of date: run python -m wyeline_grammar.highlighting --write")
    return 1 if stale and chosen == ["--check"] else 0


if __name__ == "__main__":
    raise SystemExit(main())
