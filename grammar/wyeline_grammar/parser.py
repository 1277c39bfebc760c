"""From the text of a block to its parsed lines. Every line parses by itself and never raises.

Lines are remembered by their text; a text that is read again soon costs a look-up. Parsed lines are many times their
text, so only the latest are kept: what lives long is what is made of them. Heavy work happens elsewhere and only for
lines never seen: cutting into tokens (``tokens.py``), grouping by known shapes or by Lark (``memo.py``), and what
to say about a line that cannot be read (``recovery.py``).
"""

from __future__ import annotations

import re
from collections.abc import Callable

from wyeline_grammar import memo
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.remembering import Remembered, of_texts
from wyeline_grammar.syntax import BlockSyntax, Line, Phrase, Token
from wyeline_grammar.tokens import BLANKS, cut, is_statement
from wyeline_grammar.vocabulary import BOARDS

DETAIL_ALONE = "detail-without-statement"

_BLANK = Line("blank", (), (), ())
_NOT_HEADS = frozenset({"blank", "comment", "doc"})
_MAY_BE_BOARDS = frozenset({"equipment", "type"})
_MOST_LINES, _MOST_BLOCKS, _LONGEST_LINE, _MOST_TAILS = 1_000, 100, 1_000, 5_000
_known_lines: dict[bool, Remembered[str, Line]] = {False: of_texts(_MOST_LINES), True: of_texts(_MOST_LINES)}
_known_blocks: Remembered[tuple[str, ...], BlockSyntax] = of_texts(_MOST_BLOCKS)


def parse_line(text: str, indented: bool) -> Line:
    """Parse one line, without its line end, as a statement or (``indented``) as a detail.

    Problems are on line 0. A trailing comment is ``Line.comment``, from its ``//`` to the end as written.
    """
    lines = _known_lines[indented]
    line = lines.get(text)
    if line is None:
        line = read_line(text, indented)
        if len(text) <= _LONGEST_LINE:
            lines.put(text, line)
    return line


def read_line(text: str, indented: bool) -> Line:
    """What `parse_line` gives, worked out anew and not remembered."""
    if text.startswith("//"):
        return _new(Line, ("doc" if text.startswith("///") else "comment", (), (), (), text))
    named = None if indented else _NAMED.match(text)
    if named is None or "//" in text or len(text) > _LONGEST_LINE:
        return _read_whole(text, indented)
    quote = text.find('"')
    described = quote > 0 and text.find('"', quote + 1) == len(text) - 1
    said = f'{text[named.end() : quote]}""' if described else text[named.end() :]
    key = (text[: named.start(1)], named[2], said, named.end())
    tail = _tails.get(key)
    if tail is None:
        line = _read_whole(text, indented)
        tail = _tail_of(line, named, described)
        _tails.put(key, tail)
        return line
    if not tail:
        return _read_whole(text, indented)
    form, lead, rest, phrases = tail
    if described:
        description = _new(Token, ("TEXT", text[quote:], quote, len(text)))
        phrases = (*phrases, _new(Phrase, ("text", (description,), False)))
    start, end = named.span(1)
    head = (*lead, _new(Token, ("NAME", named[1], start, end)))
    if named[2] is not None:
        (after, before), (start, end) = named.span(2), named.span(3)
        head = (*head, _new(Token, ("ARROW", "->", after, before)), _new(Token, ("NAME", named[3], start, end)))
    return _new(Line, (form, head + rest, phrases, (), None))


_NAME = "[A-Z][A-Za-z0-9]*+(?:-[A-Za-z0-9]++)*+"
_NAMED = re.compile(rf"[a-z][a-z-]*+[ \t]++({_NAME})(?:[ \t]++(->)[ \t]++({_NAME}))?(?=[ \t])")
"""A statement's word and the plain name behind it, of a feeder both; what follows is one tail under ever new names. A
description at its end is ever another one, too."""
_Tail = tuple[str, tuple[Token, ...], tuple[Token, ...], tuple[Phrase, ...]]
_tails: Remembered[tuple[str, str | None, str, int], _Tail | tuple[()]] = of_texts(_MOST_TAILS)
_new = tuple.__new__


def _tail_of(line: Line, named: re.Match[str], described: bool) -> _Tail | tuple[()]:
    """What of a line holds under other names as well, and with other words in the quotes at its end if it is
    ``described``; nothing where its words are not what these places say."""
    count = 2 if named[2] is None else 4
    kinds = tuple(token.kind for token in line.head[:count])
    if line.problems or kinds[1:] != ("NAME", "ARROW", "NAME")[: count - 1] or line.head[count - 1].end != named.end():
        return ()
    phrases = line.phrases
    if described:
        if not phrases or phrases[-1].form != "text" or phrases[-1].assumed:
            return ()
        phrases = phrases[:-1]
    return line.form, line.head[:1], line.head[count:], phrases


def _read_whole(text: str, indented: bool) -> Line:
    kinds, tokens, comment = cut(text)
    if not kinds:
        if comment is None:
            return _BLANK
        return Line("doc" if comment.startswith("///") else "comment", (), (), (), comment)
    found = memo.shape(kinds, not indented)
    if isinstance(found, memo.Failure):
        from wyeline_grammar.recovery import recover  # sound text never needs it

        return recover(text, tokens, kinds, comment, not indented, found)
    line = memo.build(tokens, found, comment)
    if (
        may_be_slip(line, kinds, tokens[0].text)
        or ("rcd" in text and _TYPE_FOR_CURRENT.search(text))
        or (" by " in text and _BY_WHOM.search(text))
        or ("enclosure" in text and _TYPE_ALONE.search(text))
        or ("," in text and _DECIMAL_COMMA.search(text))
    ):
        from wyeline_grammar.recovery import recover_sound

        return recover_sound(text, line)
    return line


def may_be_slip(line: Line, kinds: memo.Kinds, first: str) -> bool:
    """Whether a line that parses may be one of the slips that read as something else (see ``slips.py``)."""
    form = line.form
    if form == "equipment":
        if any(token.kind == "NAME" and token.text[0].isdigit() for token in line.head[2:]):
            return True
        first_phrases = [phrase.tokens[0] for phrase in line.phrases[:2]]
        if [token.kind for token in first_phrases] == ["QUANTITY", "KEY"] and first_phrases[1].text in _RATED:
            return True
        return any(phrase.tokens[0].text == "main" and phrase.tokens[1].text in _NO_MAINS for phrase in line.phrases)
    if form == "circuit" and kinds[0] == "NAME":
        return first[-1] == "P" or not any(map(str.isdigit, first))
    return form == "more" and kinds[:2] == ("QUANTITY", "QUANTITY") and " " not in first


_NO_MAINS = frozenset("breaker circuit CB BKR 1P 2P 3P 4P".split())
"""Words behind `main` that make a device of the rating behind them."""
_TYPE_ALONE = re.compile(r"\benclosure[ \t\u00a0]+(?:\d|NEMA[ \t\u00a0\d]|nema)")
_DECIMAL_COMMA = re.compile(r"[a-z] \d+,\d{1,2}[A-Za-z%]")
_BY_WHOM = re.compile(r"\b(?:drawn|checked) by \"")
"""The word that letters put before the name of whoever drew or checked it."""
_TYPE_FOR_CURRENT = re.compile(r"\brcd[ \t]+[ABF]")
"""The type of a residual current device where the current belongs that it trips at."""
_RATED = frozenset({"main", "bus", "incomer"})
"""Keys that may have been written behind their value."""


def parse_block(lines: tuple[str, ...]) -> BlockSyntax:
    """Parse the lines of one block (``blocks.py``), each by itself.

    Lines in the first column are statements, indented ones details. A detail that no statement stands above, or from
    which a comment in the first column parts it, carries a problem.
    """
    block = _known_blocks.get(lines)
    if block is None:
        block = _parse_block(lines, parse_line, None)
        if len(lines) <= _LONGEST_LINE:
            _known_blocks.put(lines, block)
    return block


ELSEWHERE = Line("circuit", (), (), ())
"""Stands in `read_block` for a circuit that is read elsewhere."""


def read_block(lines: tuple[str, ...], elsewhere: Callable[[str, int], bool]) -> BlockSyntax:
    """What `parse_block` gives, not remembered; circuits that ``elsewhere(text, row)`` takes are `ELSEWHERE`."""
    return _known_blocks.get(lines) or _parse_block(lines, read_line, elsewhere)


def _parse_block(
    lines: tuple[str, ...], parse: Callable[[str, bool], Line], elsewhere: Callable[[str, int], bool] | None
) -> BlockSyntax:
    parsed: list[Line] = []
    head: int | None = None
    owned = board = False
    for row, text in enumerate(lines):
        statement = is_statement(text)
        if board and owned and not statement and elsewhere is not None and elsewhere(text, row):
            parsed.append(ELSEWHERE)
            continue
        line = parse(text, False) if statement else parse_line(text, True)
        if line.form not in _NOT_HEADS:
            if statement:
                owned = True
                if head is None:
                    head = row
                    board = line.form in _MAY_BE_BOARDS and any(
                        token.kind == "KIND" and token.text in BOARDS for token in line.head[:2]
                    )
            elif not owned and not _stands_alone_already(line):
                line = line._replace(problems=(_detail_alone(text, line),))
        elif statement and line.form != "blank":
            owned = False
        if row and line.problems:
            line = line._replace(problems=tuple(_moved(problem, row) for problem in line.problems))
        parsed.append(line)
    return BlockSyntax(tuple(parsed), head)


def _stands_alone_already(line: Line) -> bool:
    """Whether the line's own problem says that it belongs into the first column."""
    return line.form in memo.STATEMENT_FORMS and bool(line.problems)


def _detail_alone(text: str, line: Line) -> Problem:
    start = len(text) - len(text.lstrip(BLANKS + ","))
    end = max((token.end for token in (*line.head, *(t for p in line.phrases for t in p.tokens))), default=len(text))
    return Problem(
        rule=DETAIL_ALONE,
        message="this detail belongs to no statement",
        line=0,
        start=start,
        end=max(end, start + 1),
        found="an indented line with no statement above it",
        needed="a statement in the first column above, such as `panel LP-1`",
        why="An indented line says more of the statement above it; a comment in the first column, or the start of the "
        "file, ends what stands above.",
        change="Write its statement above it, or make the line a comment too",
        remedies=(Remedy("Make the line a comment", (TextEdit(0, start, start, "// "),), sure=False),),
    )


def _moved(problem: Problem, row: int) -> Problem:
    return problem._replace(
        line=row,
        remedies=tuple(
            remedy._replace(edits=tuple(edit._replace(line=row) for edit in remedy.edits))
            for remedy in problem.remedies
        ),
    )
