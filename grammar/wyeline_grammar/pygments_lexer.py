"""A lexer for Pygments: Wyeline in documentation and terminals. It colours with the tokenizer itself."""

from __future__ import annotations

from collections.abc import Iterator

from pygments.lexer import Lexer
from pygments.token import (
    Comment,
    Keyword,
    Name,
    Number,
    Operator,
    String,
    Text,
    Whitespace,
    _TokenType,
)

from wyeline_grammar.highlighting import GROUP_OF_KIND
from wyeline_grammar.tokens import cut

TOKEN_OF_GROUP: dict[str, _TokenType] = {
    "text": String.Double,
    "statement": Keyword.Declaration,
    "kind": Keyword.Type,
    "key": Name.Attribute,
    "flag": Name.Builtin,
    "action": Keyword,
    "link": Keyword.Pseudo,
    "port": Name.Variable,
    "name": Name.Entity,
    "legs": Name.Label,
    "voltage": Name.Constant,
    "conductor": Name.Constant,
    "quantity": Number,
    "count": Number.Integer,
    "mark": Operator,
}


class WyeLexer(Lexer):
    """Wyeline models (``*.wye``)."""

    name = "Wyeline"
    aliases = ("wye", "wyeline")
    filenames = ("*.wye",)
    mimetypes = ("text/x-wyeline",)

    def get_tokens_unprocessed(self, text: str) -> Iterator[tuple[int, _TokenType, str]]:
        """Offset, token type and text of each piece; together they are the whole text."""
        offset = 0
        for line in _lines(text):
            bare = line.rstrip("\r\n")
            at = 0
            _, tokens, comment = cut(bare)
            pieces = [(token.start, token.end, GROUP_OF_KIND.get(token.kind, "")) for token in tokens]
            for start, end, group in pieces:
                if start > at:
                    yield offset + at, Whitespace, bare[at:start]
                yield offset + start, TOKEN_OF_GROUP.get(group, Text), bare[start:end]
                at = end
            if comment is not None:
                start = len(bare) - len(comment)
                if start > at:
                    yield offset + at, Whitespace, bare[at:start]
                documents = comment.startswith("///")
                yield offset + start, String.Doc if documents else Comment.Single, comment
                at = len(bare)
            if line[at:]:
                yield offset + at, Whitespace, line[at:]
            offset += len(line)


def _lines(text: str) -> list[str]:
    """The lines with their ends. Python's own splitting knows line ends that the language does not."""
    *whole, last = text.split("\n")
    return [f"{line}\n" for line in whole] + ([last] if last else [])
