"""One line of text into tokens.

A word's kind follows from its spelling and the word lists alone, never from what stands around it. So a line is cut by
one regular expression, and the kind of a word once seen is looked up. Kinds, in the order in which they are tried
(which is the same as: the longest spelling wins, and of two equally long the one that stands first):

``TEXT PORT ARROW LE GE COLON PLUS LEGS TRADE_SIZE QUANTITY VOLTAGE RUN SIZE SETS POLES RANGE LIST NUMBER DATE NAME``,
then the words in small letters: ``KEY FLAG KIND ACTION``, one kind for each statement and small word (``FEEDER``,
``IN``), and ``PLAIN``. ``ERROR`` is a word that reaches its end as none of these.

A token's text is the plain spelling (``x`` for ``×``, ``ohm`` for ``Ω``, ``->`` for ``→``); its columns are those of
the text as written. Time grows with the length of the line and no faster.
"""

from __future__ import annotations

import re
from functools import lru_cache
from itertools import accumulate, repeat

from wyeline_grammar.syntax import Token
from wyeline_grammar.units import TRADE_SIZE_UNITS, UNIT_SPELLINGS
from wyeline_grammar.vocabulary import word_kind

BLANKS = " \t\u00a0\ufeff"
"""Characters that part words; a comma does too. A byte-order mark counts, so that a file may begin with one."""

# The patterns know only these blanks; the others are turned into spaces first (same columns, quicker patterns).
_PLAIN_BLANKS = " \t"
_OTHER_BLANKS = dict.fromkeys(map(ord, BLANKS.strip(_PLAIN_BLANKS)), " ")
_BETWEEN = _PLAIN_BLANKS + ",\r\n"
_B = f"[{_PLAIN_BLANKS}]*+"
_EDGE_CHARACTERS = _BETWEEN + ':[]"+<>=≤≥→'
_EDGE_CLASS = re.escape(_EDGE_CHARACTERS)
_EDGE = rf"(?=[{_EDGE_CLASS}]|->|//|\Z)"
_N = r"[0-9]++(?:\.[0-9]++)?+"
_FRACTION = r"(?:[0-9]++-)?+[0-9]++/(?:16|32|64|2|4|8)"
_UNIT = "(?:" + "|".join(re.escape(unit) for unit in sorted(UNIT_SPELLINGS, key=len, reverse=True)) + ")"
_AREA = "(?:kcmil|mm2|mm²)"
_GAUGE = "#[0-9]++(?:/0)?"
_PHASES = "(?:1ph|3ph|dc)"
# A separation before `1ph`: `4801ph` would read as another number.
_VOLTS_PHASES = rf"{_B}(?:kV|V){_B}{_PHASES}|[{_PLAIN_BLANKS}]++{_PHASES}|{_B}dc"
_PAIR_TAIL = rf"(?:{_VOLTS_PHASES}|{_B}(?:kV|V)|)"
# Letters of any script; the fractions and raised figures that Python counts as word characters are none.
_NOT_LETTER = "¼½¾⅐-⅟²³¹⁰-₟"
_C = rf"[^\W{_NOT_LETTER}]"
_CAPITAL = rf"[^\W\d_a-z{_NOT_LETTER}]"
_NAME = rf"(?=[a-z0-9_.\-]*+{_CAPITAL}){_C}++(?:[-.]{_C}++)*"
_WORD = r"(?=[0-9/\-]*+[a-z])[a-z0-9]++(?:[-/][a-z0-9]++)*+"
_PORT_WORD = r"[a-z][a-z0-9]*+(?:-[a-z0-9]++)*+"

_NUMERIC: tuple[tuple[str, str], ...] = (
    ("TRADE_SIZE", rf"(?:{_FRACTION}|{_N}){_B}(?:{'|'.join(TRADE_SIZE_UNITS)})"),
    ("QUANTITY", rf"{_FRACTION}{_B}{_UNIT}"),
    (
        "VOLTAGE",
        rf"{_N}Y/{_N}{_PAIR_TAIL}"
        rf"|[0-9]{{2,}}+(?:\.[0-9]++)?+/[0-9]{{2,}}+(?:\.[0-9]++)?+{_PAIR_TAIL}"
        rf"|{_N}/{_N}{_B}kV(?:{_B}{_PHASES})?"
        rf"|{_N}(?:-{_N})?(?:{_VOLTS_PHASES})",
    ),
    ("RUN", rf"[0-9]++(?:{_GAUGE}|[x×]{_N}{_B}{_AREA}|G{_N}{_B}(?:mm2|mm²))"),
    ("SIZE", rf"{_GAUGE}|{_N}{_B}{_AREA}"),
    ("QUANTITY", rf"[+-]?+{_N}{_B}{_UNIT}"),
    ("SETS", rf"[0-9]++{_B}sets?"),
    ("POLES", r"[1-4]p(?:\+N)?"),
    ("RANGE", rf"[+-]?+{_N}\.\.[+-]?+{_N}(?:{_B}{_UNIT})?"),
    ("LIST", r"[0-9]++(?:,[0-9]++)+"),
    ("NUMBER", rf"[+-]?+{_N}"),
    ("DATE", "[0-9]{4}-[0-9]{2}-[0-9]{2}"),
)
_LETTERED: tuple[tuple[str, str], ...] = (
    ("PORT", rf"{_NAME}\.{_PORT_WORD}"),
    ("NAME", _NAME),
    ("WORD", _WORD),
)
_MARKS: dict[str, str] = {
    "->": "ARROW",
    "→": "ARROW",
    "<=": "LE",
    "≤": "LE",
    ">=": "GE",
    "≥": "GE",
    ":": "COLON",
    "+": "PLUS",
}
_LEGS = rf"\[[{_PLAIN_BLANKS},]*+(?:(?:L[123]|[ABCN])[{_PLAIN_BLANKS},]*+)+\]"
_TEXT = r'"[^"]*+"'
_ERROR = rf"\+?(?:(?!->|//)[^{_EDGE_CLASS}])+"
_BROKEN_TEXT = r'"(?:(?!//)[^"])*+'
_BROKEN_LEGS = r'\[(?:(?!//)[^\[\]"])*+\]'


def _edged(pairs: tuple[tuple[str, str], ...]) -> str:
    return "(?:" + "|".join(pattern for _, pattern in pairs) + ")" + _EDGE


# The first row repeats WORD for words that begin with a letter, the most frequent ones: nothing longer begins so.
# Blanks before a token are captured too, so that the lengths of the pieces add up to the columns.
_CUT = re.compile(
    rf"([{_BETWEEN}]*+)((?=[a-z]){_WORD}{_EDGE}"
    rf"|(?=[0-9#+-]){_edged(_NUMERIC)}"
    rf"|(?=\w){_edged(_LETTERED)}"
    rf"|{_TEXT}\.{_PORT_WORD}{_EDGE}|{_TEXT}"
    rf"|->|→|<=|>=|[≤≥:]|\+(?![0-9])|{_LEGS}|//.*+"
    rf"|{_ERROR}|{_BROKEN_TEXT}|{_BROKEN_LEGS}|[^{_BETWEEN}])",
    re.DOTALL,
)
_SPELLED = re.compile(
    "|".join(
        f"(?P<{kind}_{row}>{pattern})"
        for row, (kind, pattern) in enumerate(
            (("PORT", rf"{_TEXT}\.{_PORT_WORD}"), ("TEXT", _TEXT), ("LEGS", _LEGS), *_NUMERIC, *_LETTERED)
        )
    )
)
_PLAIN_SIGNS = str.maketrans(
    {"×": "x", "²": "2", "°": "deg", "Ω": "ohm", "\u2126": "ohm", "·": ".", "→": "->", "≤": "<=", "≥": ">="}
)
_FIGURES = frozenset(kind for kind, _ in _NUMERIC)
_TOO_LONG = re.compile("[0-9]{16,}")
"""A figure of more digits is no figure of any building; nothing can be calculated with it exactly."""
_SIZED = frozenset({"SIZE", "RUN"})
_NO_SIZE = re.compile(
    r"#(?:0[0-9]*|[0-9]{3,}|[05-9]/0|[0-9]{2,}/0)(?![0-9/])|(?<![0-9.])0+(?:\.0+)?[ \t]*(?:kcmil|mm2|mm²)"
)
"""Gauges that no wire has (beyond 4/0 sizes are in kcmil; common practice), and no metal at all."""
_AS_WRITTEN = frozenset({"TEXT", "PORT", "NAME", "ERROR"})

_KIND: dict[str, str] = {}
_PLAIN: dict[str, str] = {}
_MOST_REMEMBERED, _LONGEST_REMEMBERED = 30_000, 80
_token = tuple.__new__


def _is_name_with_marks(word: str) -> bool:
    """Whether a word is a name once its combining marks (``u`` + diaeresis) are left out."""
    import unicodedata  # only words with such marks need it

    joined = unicodedata.normalize("NFC", word)
    bare = "".join(c for c in joined if not unicodedata.category(c).startswith("M"))
    return bare != word and re.fullmatch(_NAME, bare) is not None


def _classify(lexeme: str) -> str:
    """Find the kind of a lexeme not seen before, and remember it and its plain spelling."""
    if len(_KIND) > _MOST_REMEMBERED:
        _KIND.clear()
        _PLAIN.clear()
    kind = _MARKS.get(lexeme)
    if kind is None:
        match = _SPELLED.fullmatch(lexeme)
        if match is not None and match.lastgroup is not None:
            kind = match.lastgroup.rpartition("_")[0]
            if kind == "WORD":
                kind = word_kind(lexeme)
            elif kind in _FIGURES and (_TOO_LONG.search(lexeme) or (kind in _SIZED and _NO_SIZE.search(lexeme))):
                kind = "ERROR"
        elif not lexeme.isascii() and _is_name_with_marks(lexeme):
            kind = "NAME"
        elif not lexeme.isascii() and "." in lexeme and _is_name_with_marks(lexeme.rpartition(".")[0]):
            kind = "PORT"
        else:
            kind = "ERROR"
    if len(lexeme) > _LONGEST_REMEMBERED:
        return kind
    _KIND[lexeme] = kind
    if not lexeme.isascii() and kind not in _AS_WRITTEN:
        _PLAIN[lexeme] = lexeme.translate(_PLAIN_SIGNS)
    return kind


def cut(line: str) -> tuple[tuple[str, ...], tuple[Token, ...], str | None]:
    """The kinds of a line's tokens, the tokens, and its comment from ``//`` to the end as written (or None).

    The comment therefore starts at column ``len(line) - len(comment)``.
    """
    flat = line if line.isascii() else line.translate(_OTHER_BLANKS)
    bare = flat.rstrip(_BETWEEN)
    pieces = _CUT.split(bare)
    lexemes = pieces[2::3]
    comment = None
    if lexemes and lexemes[-1].startswith("//"):
        comment = line[len(bare) - len(lexemes.pop()) :]
    try:
        kinds = tuple([_KIND[lexeme] for lexeme in lexemes])
    except KeyError:
        known = _KIND.get
        kinds = tuple([known(lexeme) or _classify(lexeme) for lexeme in lexemes])
    places = list(accumulate(map(len, pieces)))
    texts = lexemes
    if not line.isascii():
        texts = [
            _PLAIN.get(lexeme) or line[start:end]
            for lexeme, start, end in zip(lexemes, places[1::3], places[2::3], strict=False)
        ]
        if flat != line:  # blanks of other kinds stay as written in texts only
            texts = [
                text if kind in _AS_WRITTEN else text.translate(_OTHER_BLANKS)
                for kind, text in zip(kinds, texts, strict=True)
            ]
    tokens = tuple(map(_token, repeat(Token), zip(kinds, texts, places[1::3], places[2::3], strict=False)))
    return kinds, tokens, comment


def tokenize(line: str) -> tuple[tuple[Token, ...], str | None]:
    """The tokens of one line and its comment (see ``cut``). Never raises."""
    _, tokens, comment = cut(line)
    return tokens, comment


def is_statement(line: str) -> bool:
    """Whether a line starts in the first column; a byte-order mark before it does not count."""
    return line[:1] not in BLANKS or (line[:1] == "\ufeff" and line[1:2] not in BLANKS)


@lru_cache(maxsize=4096)
def spelled(name: str) -> str:
    """A name as it is written where a name must stand: in quotes where it would read as something else."""
    tokens, comment = tokenize(name)
    bare = comment is None and len(tokens) == 1 and tokens[0].kind == "NAME" and tokens[0].text == name
    return name if bare else f'"{name}"'
