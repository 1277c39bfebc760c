"""The one way a ``.wye`` file is set: fixed columns, one line at a time.

Only blanks and commas change (and signs such as ``×`` that have a plain spelling). Every line is set by itself, at
stops that depend on its kind alone, so one changed fact is one changed line. A line that cannot be read stays as it is.
"""

from __future__ import annotations

import re

from wyeline_grammar.blocks import cut, split_lines
from wyeline_grammar.parser import parse_block
from wyeline_grammar.remembering import OfBlocks
from wyeline_grammar.syntax import Line, Phrase, Token
from wyeline_grammar.tokens import tokenize

INDENT = "  "
EQUIPMENT_STOPS = {"name": 12, "sides": 20, "phrases": 40}
FEEDER_STOPS = {"source": 7, "arrow": 19, "target": 22, "device": 30, "wires": 41, "length": 85}
CIRCUIT_STOPS = {"device": 10, "load": 20, "class": 30, "text": 50, "wires": 77}
RACEWAY_STOPS = {"name": 12, "phrases": 40}
ISSUE_STOPS = {"date": 14, "phrases": 26}

_BLANKS = re.compile(r"[ \t\u00a0]+")
_NUMBER_UNIT = re.compile(r"(?P<number>[+-]?[\d.]+(?:-\d+/\d+)?(?:/\d+)?)[ \t\u00a0]*(?P<unit>\S.*)")
_TIGHT_BEFORE = frozenset({"COLON", "LEGS"})


def format_text(text: str) -> str:
    """A whole file, set. Line ends become LF; the file ends with one."""
    lines = format_lines(split_lines(text))
    while len(lines) > 1 and not lines[-1] and not lines[-2]:
        lines.pop()
    joined = "\n".join(lines)
    return joined if joined.endswith("\n") or not joined else joined + "\n"


def format_lines(lines: list[str]) -> list[str]:
    """The same number of lines, each set by itself."""
    result: list[str] = []
    for _, block in cut(lines):
        result += _format_block(block)
    return result


@OfBlocks
def _format_block(lines: tuple[str, ...]) -> tuple[str, ...]:
    syntax = parse_block(lines)
    made = tuple(_set_line(raw, line) for raw, line in zip(lines, syntax.lines, strict=True))
    return lines if made == lines else made  # no second copy of what is set already


def _set_line(raw: str, line: Line) -> str:
    if line.problems or line.form == "broken":
        return raw
    raw = raw.removeprefix("\ufeff")
    if line.form == "blank":
        return ""
    indented = raw[:1] in (" ", "\t", "\u00a0")
    if line.form in ("comment", "doc"):
        return (INDENT if indented else "") + raw.strip(" \t\u00a0")
    words = _compose(raw, line)
    comment = (line.comment or "").strip(" \t\u00a0")
    made = words.rstrip() + (f"  {comment}" if comment else "")
    return made if made != raw and _says_the_same(raw, made) else raw


def _says_the_same(before: str, after: str) -> bool:
    """The last guard: whatever was moved, the words must be the same words."""
    first, second = tokenize(before)[0], tokenize(after)[0]
    return [(t.kind, _BLANKS.sub("", t.text)) for t in first] == [(t.kind, _BLANKS.sub("", t.text)) for t in second]


class _Setter:
    """Builds one line from left to right."""

    def __init__(self, indent: str = "") -> None:
        self.text = indent
        self.reached = -1

    def at(self, stop: int) -> None:
        """Go to a stop, or two blanks on where the text is already past it."""
        width = len(self.text)
        if not self.text.strip():
            self.text = " " * max(stop, width)
        else:
            self.text += " " * (stop - width if width < stop else 2 if width > stop or self.text[-1] != " " else 0)

    def put(self, words: str) -> None:
        self.text += words


def _compose(raw: str, line: Line) -> str:
    if line.form in ("equipment", "type"):
        return _equipment(raw, line)
    if line.form == "feeder":
        return _feeder(raw, line)
    if line.form == "circuit":
        return _circuit(raw, line)
    if line.form == "raceway":
        setter = _Setter()
        setter.put(line.head[0].text)
        setter.at(RACEWAY_STOPS["name"])
        setter.put(_words(line.head[1:]))
        return _append(setter, raw, line.phrases, RACEWAY_STOPS["phrases"], line.head[-1])
    if line.form == "issue":
        return _issue(raw, line)
    statement = line.form in ("wye", "project", "include", "scenario", "expect")
    setter = _Setter("" if statement else INDENT)
    setter.put(_words(line.head))
    if line.phrases:
        if line.head:
            setter.put(" ")
        setter.put(_phrases(raw, line.phrases))
    return setter.text


def _equipment(raw: str, line: Line) -> str:
    head = list(line.head)
    setter = _Setter()
    lead = [t for t in head if t.kind in ("TYPE", "KIND")]
    setter.put(_words(lead))
    rest = head[len(lead) :]
    if rest:
        setter.at(EQUIPMENT_STOPS["name"])
        setter.put(_words(rest[:1]))
    if len(rest) > 1:
        setter.at(EQUIPMENT_STOPS["sides"])
        setter.put(_words(rest[1:]))
    return _append(setter, raw, line.phrases, EQUIPMENT_STOPS["phrases"], head[-1] if head else None)


def _issue(raw: str, line: Line) -> str:
    setter = _Setter(INDENT)
    setter.put(_words(line.head[:2]))
    if len(line.head) > 2:
        setter.at(ISSUE_STOPS["date"])
        setter.put(_words(line.head[2:]))
    return _append(setter, raw, line.phrases, ISSUE_STOPS["phrases"], line.head[-1])


def _append(setter: _Setter, raw: str, phrases: tuple[Phrase, ...], stop: int, last: Token | None) -> str:
    if phrases:
        if last is not None and _comma_between(raw, last.end, phrases[0]):
            setter.put(",")
        setter.at(stop)
        setter.put(_phrases(raw, phrases))
    return setter.text


def _feeder(raw: str, line: Line) -> str:
    head = line.head[1:]
    arrow = next(i for i, t in enumerate(head) if t.kind == "ARROW")
    setter = _Setter()
    setter.put("feeder ")
    setter.put(_words(head[:arrow]))
    setter.at(FEEDER_STOPS["arrow"])
    if setter.text.endswith("  ") and len(setter.text) > FEEDER_STOPS["arrow"]:
        setter.text = setter.text[:-1]
    setter.put("->")
    setter.put(" " + _words(head[arrow + 1 :]))
    return _slotted(setter, raw, line, FEEDER_STOPS)


def _circuit(raw: str, line: Line) -> str:
    setter = _Setter(INDENT)
    setter.put(_words(line.head))
    return _slotted(setter, raw, line, CIRCUIT_STOPS)


def _slot_of(phrase: Phrase, stops: dict[str, int]) -> str | None:
    if phrase.form == "quantity" and not phrase.assumed:
        unit = phrase.tokens[0].text.lstrip("+-0123456789./ \u00a0\t")
        if unit in ("A", "mA", "kA"):
            return "device"
        if unit in ("m", "km", "ft"):
            return "length" if "length" in stops else None
        return "load" if "load" in stops else None
    if phrase.form in ("flag", "class"):
        return "class" if "class" in stops else None
    if phrase.form == "text":
        return "text" if "text" in stops else None
    return "wires" if phrase.form == "conductors" else None


def _slotted(setter: _Setter, raw: str, line: Line, stops: dict[str, int]) -> str:
    reached = 0
    last_end = line.head[-1].end
    for i, phrase in enumerate(line.phrases):
        comma = _comma_between(raw, last_end, phrase)
        if comma:
            setter.put(",")
        slot = _slot_of(phrase, stops)
        stop = stops.get(slot or "", 0)
        wide = phrase.form in ("quantity", "in", "text", "conductors")
        if stop > reached:
            setter.at(stop)
            reached = stop
        elif i == 0:
            setter.at(stops["device"])
            reached = stops["device"]
        else:
            setter.put("  " if wide and not comma else " ")
        setter.put(_phrase(raw, phrase))
        last_end = phrase.end
    return setter.text


def _phrases(raw: str, phrases: tuple[Phrase, ...]) -> str:
    parts: list[str] = []
    for i, phrase in enumerate(phrases):
        if i:
            parts.append(", " if _comma_between(raw, phrases[i - 1].end, phrase) else " ")
        parts.append(_phrase(raw, phrase))
    return "".join(parts)


def _comma_between(raw: str, end: int, phrase: Phrase) -> bool:
    """Whether the writer set a comma before a phrase (before its `assume`, if it has one)."""
    gap = raw[end : phrase.start]
    return "," in gap.split("assume")[0]


def _phrase(raw: str, phrase: Phrase) -> str:
    words: list[str] = ["assume"] if phrase.assumed else []
    names = 0
    for i, token in enumerate(phrase.tokens):
        if phrase.form == "key" and token.kind in ("NAME", "PORT") and i > 1 and names:
            words[-1] += "," if "," in raw[phrase.tokens[i - 1].end : token.start] else ""
        if token.kind in ("NAME", "PORT"):
            names += 1
        words.append(_word(token))
    return " ".join(words)


def _words(tokens: list[Token] | tuple[Token, ...]) -> str:
    text = ""
    for token in tokens:
        glue = "" if not text or token.kind in _TIGHT_BEFORE else " "
        text += glue + _word(token)
    return text


def _word(token: Token) -> str:
    if token.kind == "TEXT" or '"' in token.text:
        return token.text
    if token.kind == "QUANTITY":
        match = _NUMBER_UNIT.fullmatch(token.text)
        if match is not None:
            return f"{match['number']} {match['unit']}"
    if token.kind == "RUN":
        return _BLANKS.sub("", token.text)
    return _BLANKS.sub(" ", token.text)
