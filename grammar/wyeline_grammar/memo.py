"""How a line's tokens group into a head and phrases: Lark decides, a memo of shapes repeats it.

An LALR result depends on the sequence of token kinds alone, and a line is a head and then phrases whose ends are seen
at the next word. So the kinds of every head and phrase that Lark has once accepted are kept, and lines made of known
ones are grouped without Lark. ``shapes.txt`` holds the usual ones, so that a clean run never imports Lark:
``python -m wyeline_grammar.memo`` writes it from ``wye.lark``, with ``--check`` it only compares. A sequence that the
memo cannot group, sound or not, goes to Lark, and what Lark says is kept.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from functools import cache
from typing import TYPE_CHECKING, Any, NamedTuple

from wyeline_grammar.syntax import Line, Phrase, Token

if TYPE_CHECKING:
    import lark

Kinds = tuple[str, ...]

END = "$END"
"""The kind that stands for the end of the line among expected kinds."""

CLOSED_FORMS = frozenset({"wye", "include", "scenario", "expect", "action", "allow", "claim"})
"""Forms of lines whose head is all; the others may have phrases behind it, a circuit must."""

_NEED_PHRASES = frozenset({"circuit", "more"})

STATEMENT_FORMS = frozenset("wye project include equipment type raceway feeder scenario expect".split())
"""Forms of lines in the first column."""

_HERE = os.path.dirname(__file__)
_TABLE, _GRAMMAR = os.path.join(_HERE, "shapes.txt"), os.path.join(_HERE, "wye.lark")
_MOST_REMEMBERED = 8_000
_new = tuple.__new__  # a named tuple without the call of its Python constructor: one for each phrase of a model


class Recipe(NamedTuple):
    """How the tokens of a line group: its form, how many tokens its head has, and for each phrase its form, the
    indices of its first token and of the one after its last, and whether ``assume`` stands before it."""

    form: str
    head: int
    phrases: tuple[tuple[str, int, int, bool], ...]


class Failure(NamedTuple):
    """Where a line stops being one: the index of the first wrong token (the number of tokens where the line ends too
    early) and the kinds that could stand there, ``END`` among them where the line could end."""

    at: int
    expected: frozenset[str]


class Counts:
    """How many lines went which way, for tests: grouped from known heads and phrases, and asked of Lark."""

    __slots__ = ("composed", "lark")

    def __init__(self) -> None:
        self.composed = self.lark = 0


counts = Counts()

_Node = dict[str, Any]  # kind -> node; "" -> the form where a shape ends
_lines: dict[bool, dict[Kinds, Recipe | Failure]] = {True: {}, False: {}}
_heads: dict[bool, _Node] = {True: {}, False: {}}
_phrases: _Node = {}
_failures: dict[tuple[bool, bool, Kinds], frozenset[str]] = {}


def shape(kinds: Kinds, statement: bool) -> Recipe | Failure:
    """Group the tokens of a line, a statement's or a detail's, by their kinds."""
    lines = _lines[statement]
    found = lines.get(kinds)
    if found is None:
        if not _phrases:
            _load()
        if len(lines) >= _MOST_REMEMBERED:
            lines.clear()
        found = _compose(kinds, statement)
        if len(kinds) < 100:
            lines[kinds] = found
    return found


def build(tokens: tuple[Token, ...], recipe: Recipe, comment: str | None) -> Line:
    """The parsed line of tokens that group as the recipe says."""
    form, head, phrases = recipe
    return Line(
        form,
        tokens[:head],
        tuple([_new(Phrase, (form, tokens[first:end], assumed)) for form, first, end, assumed in phrases]),
        (),
        comment,
    )


def phrase_at(kinds: Kinds, first: int) -> tuple[str, int, int, bool] | None:
    """The longest known phrase that begins at a token, as in ``Recipe.phrases``."""
    if not _phrases:
        _load()
    form, end, _ = _walk(_phrases, kinds, first)
    if form is None:
        return None
    assumed = kinds[first] == "ASSUME"
    return form, first + assumed, end, assumed


def ask_lark(kinds: Kinds, statement: bool) -> Recipe | Failure:
    """What the grammar itself says; the memo must never say anything else."""
    import lark

    counts.lark += 1
    try:
        found: Recipe = _parser().parse(kinds, start="statement" if statement else "detail")  # type: ignore[assignment]
    except lark.UnexpectedToken as stop:
        at = len(kinds) if stop.token.type == END else int(stop.token.start_pos or 0)
        return Failure(at, frozenset(stop.accepts))
    return found


def _walk(node: _Node, kinds: Kinds, first: int) -> tuple[str | None, int, int]:
    """Follow known shapes from a token on: the form of the longest one that is whole, where it ends, how far the
    way led."""
    form, end, i, n = None, first, first, len(kinds)
    while True:
        if "" in node:
            form, end = node[""], i
        if i == n or kinds[i] not in node:
            return form, end, i
        node = node[kinds[i]]
        i += 1


def _compose(kinds: Kinds, statement: bool) -> Recipe | Failure:
    n = len(kinds)
    form, head, far = _walk(_heads[statement], kinds, 0)
    phrases: list[tuple[str, int, int, bool]] = []
    at = last = head
    stuck = False
    if form is None:
        stuck = statement or far > 0
        form = "more"
    if not stuck and form not in CLOSED_FORMS:
        while at < n:
            phrase, end, reached = _walk(_phrases, kinds, at)
            far = max(far, reached)
            if phrase is None:
                break
            assumed = kinds[at] == "ASSUME"
            phrases.append((phrase, at + assumed, end, assumed))
            last, at = at, end
    if not stuck and at == n and n and (phrases or form not in _NEED_PHRASES):
        counts.composed += 1
        return Recipe(form, head, tuple(phrases))
    # What is wrong shows in the head, the last whole phrase and the words up to the wrong one.
    wrong_up_to = (*kinds, END)[last if phrases else 0 : far + 1]
    key = (statement, len(phrases) > 1, (*kinds[:head], *wrong_up_to) if phrases else wrong_up_to)
    expected = _failures.get(key)
    if expected is not None:
        return Failure(far, expected)
    found = ask_lark(kinds, statement)
    if isinstance(found, Recipe):
        _learn(kinds, statement, found)
    elif found.at == far:
        if len(_failures) >= _MOST_REMEMBERED:
            _failures.clear()
        _failures[key] = found.expected
    return found


def _learn(kinds: Kinds, statement: bool, recipe: Recipe) -> None:
    if recipe.form != "more":
        _insert(_heads[statement], kinds[: recipe.head], recipe.form)
    for form, first, end, assumed in recipe.phrases:
        _insert(_phrases, kinds[first - assumed : end], form)


def _insert(node: _Node, kinds: Kinds | list[str], form: str) -> None:
    for kind in kinds:
        node = node.setdefault(kind, {})
    node[""] = form


def _read(path: str) -> str:
    with open(path, encoding="utf-8") as file:
        return file.read()


def _load() -> None:
    tries = {"statement": _heads[True], "detail": _heads[False], "phrase": _phrases}
    for row in _read(_TABLE).splitlines():
        where, form, *kinds = row.split()
        _insert(tries[where], kinds, form)


@cache
def _parser() -> lark.Lark:
    import lark
    from lark.lexer import Lexer

    class Kinded(Lexer):
        """Hands the kinds of a line to the parser, each with its index as its place."""

        def __init__(self, lexer_conf: Any) -> None:
            pass

        def lex(self, kinds: Kinds) -> Iterator[lark.Token]:  # type: ignore[override]
            for i, kind in enumerate(kinds):
                yield lark.Token(kind, kind, start_pos=i)

    def line(form: str, children: list[Any]) -> Recipe:
        head = sum(isinstance(child, lark.Token) for child in children)
        return Recipe(form, head, tuple(children[head:]))

    def phrase(form: str, children: list[lark.Token]) -> tuple[str, int, int, bool]:
        assumed = children[0].type == "ASSUME"
        return form, int(children[0].start_pos or 0) + assumed, int(children[-1].start_pos or 0) + 1, assumed

    class Recipes(lark.Transformer[lark.Token, Recipe]):
        def __getattr__(self, form: str) -> Any:
            if form.startswith("_"):
                raise AttributeError(form)
            shaped = phrase if form in _PHRASE_FORMS else line
            return lambda children: shaped(form, children)

    return lark.Lark(
        _read(_GRAMMAR),
        parser="lalr",
        lexer=Kinded,
        start=["statement", "detail"],
        transformer=Recipes(),
        maybe_placeholders=False,
    )


_PHRASE_FORMS = frozenset({"quantity", "key", "flag", "class", "text", "in", "leg", "conductors"})


def usual_shapes() -> list[str]:
    """The rows of ``shapes.txt``: the heads and phrases that people write, derived from the rules of ``wye.lark``.

    Left out are long ones with several quoted names or ports, more than three added conductors or names; Lark is
    asked when one turns up.
    """
    rules: dict[str, list[tuple[str, list[str]]]] = {}
    for rule in _parser().rules:
        rules.setdefault(rule.origin.name, []).append((rule.alias or "", [symbol.name for symbol in rule.expansion]))

    def rare(kinds: Kinds) -> bool:
        odd = sum(kind in ("PORT", "TEXT", "LEGS") for kind in kinds)
        return len(kinds) > 12 or kinds.count("NAME") > 5 or odd > (2 if len(kinds) < 6 or "FEEDER" in kinds else 1)

    def expand(symbols: list[str]) -> Iterator[Kinds]:
        if not symbols:
            yield ()
            return
        first, rest = symbols[0], symbols[1:]
        if first.startswith(("phrase", "__statement", "__detail")):
            yield from expand(rest)
            return
        for tail in expand(rest):
            if first.isupper():
                yield (first, *tail)
            elif first.startswith("__"):
                step = next(expansion for _, expansion in rules[first] if expansion[0] != first)
                for times in (1, 2, 3):
                    for start in expand(step * times):
                        yield (*start, *tail)
            else:
                for _, expansion in rules[first]:
                    for start in expand(expansion):
                        yield (*start, *tail)

    rows = set()
    for where, origins in (
        ("statement", ("statement",)),
        ("detail", ("detail",)),
        ("phrase", ("phrase", "phrase_but_text")),
    ):
        for origin in origins:
            for form, expansion in rules[origin]:
                if form and form != "more":
                    rows |= {" ".join((where, form, *kinds)) for kinds in expand(expansion) if not rare(kinds)}
    return sorted(rows)


def main(arguments: list[str]) -> int:
    """Write ``shapes.txt``, or compare it (``--check``); returns the exit code."""
    rows = "\n".join(usual_shapes()) + "\n"
    if "--check" in arguments:
        return int(_read(_TABLE) != rows)
    with open(_TABLE, "w", encoding="utf-8", newline="\n") as file:
        file.write(rows)
    return 0


if __name__ == "__main__":
    import sys

    raise SystemExit(main(sys.argv[1:]))
