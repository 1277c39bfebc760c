"""Circuits of boards, read by halves: what stands before a description, and what stands behind it.

The rows of panels repeat: the same device, class and wires under ever new descriptions. A row that is two known halves
around one quoted description is put together from what the halves say. A half is known when the parser has read it
without a word of complaint beside a description of its own; everything else goes to the parser as it stands.
"""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar import model as m
from wyeline_grammar.bodies import BodyBuilder, place_of
from wyeline_grammar.parser import may_be_slip, read_line
from wyeline_grammar.places import span_of
from wyeline_grammar.remembering import Remembered, of_texts
from wyeline_grammar.senses import joined, sense_of
from wyeline_grammar.syntax import Line, Phrase

_MOST = 2_000
_LONGEST = 300
"""Characters of a row that is looked at: no longer one repeats."""


class _Left(NamedTuple):
    """What stands before the description, on one row of its block."""

    place: m.PositionRef
    start: int
    body: m.Body
    sense: m.Sense


class _Right(NamedTuple):
    """What stands behind the description, on one row and from one column on; at first on row 0 behind ``_LEAD``."""

    end: int
    body: m.Body
    sense: m.Sense


_lefts: Remembered[str, dict[int, _Left] | bool] = of_texts(_MOST)
_rights: Remembered[str, dict[tuple[int, int], _Right] | bool] = of_texts(_MOST)
_LEAD = '1 "x"'
_new = tuple.__new__  # a named tuple without the call of its Python constructor: several for each row of a model


def read_row(text: str, row: int) -> m.Circuit | None:
    """The circuit that an indented line of a board makes, or None where the parser has to read it."""
    first = text.find('"')
    if first < 0 or len(text) > _LONGEST:
        return None
    last = text.find('"', first + 1)
    if last < 0:
        return None
    before, behind = text[:first], text[last + 1 :]
    left = _left(before, row)
    if left is None:
        return None
    right = _right(behind, row, last + 1)
    if right is None:
        return None
    ours, theirs = left.body, right.body
    if not (ours.facts.keys().isdisjoint(theirs.facts) and ours.flags.keys().isdisjoint(theirs.flags)):
        return None  # said twice: the parser tells where
    said = (
        {**ours.facts, **theirs.facts} if theirs.facts else ours.facts,
        ours.flags if not theirs.flags else {**ours.flags, **theirs.flags},
        ours.poles,
        ours.poles_span,
        theirs.conductors,
        theirs.raceway,
        (),
        text[first + 1 : last],
        span_of(row, first, last + 1),
    )
    sense = joined(left.sense, right.sense)
    span = span_of(row, left.start, right.end)
    return _new(m.Circuit, (left.place, None, None, _new(m.Body, said), span, sense))


def _left(before: str, row: int) -> _Left | None:
    rows = _lefts.get(before)
    if rows is None:
        rows = {} if _plain(before) and before[-1:] in (" ", "\t") else False
        _lefts.put(before, rows)
    if isinstance(rows, bool):
        return None
    found = rows.get(row)
    if found is None:
        made = _made_left(before, row)
        if made is None:
            _lefts.put(before, False)
            return None
        found = rows[row] = made
    return found


def _right(behind: str, row: int, column: int) -> _Right | None:
    rows = _rights.get(behind)
    if rows is None:
        made = _made_right(behind) if _plain(behind) and '"' not in behind and behind[:1] in ("", " ", "\t") else None
        rows = {(0, len(_LEAD)): made} if made is not None else False
        _rights.put(behind, rows)
    if isinstance(rows, bool):
        return None
    found = rows.get((row, column))
    if found is None:
        found = rows[row, column] = _moved(rows[0, len(_LEAD)], row, column - len(_LEAD))
    return found


def _plain(half: str) -> bool:
    return half.isascii() and "//" not in half


def _made_left(before: str, row: int) -> _Left | None:
    line = read_line(before + '"x"', indented=True)
    if not _sound(line) or not line.phrases or line.phrases[-1].form != "text":
        return None
    body = _body(line.phrases[:-1], row)
    if body is None or body.conductors is not None or body.raceway is not None:
        return None
    return _Left(place_of(line.head[0], row), line.start, body, sense_of(body))


def _made_right(behind: str) -> _Right | None:
    line = read_line(_LEAD + behind, indented=True)
    if not _sound(line) or not line.phrases or line.phrases[0].form != "text":
        return None
    body = _body(line.phrases[1:], 0)
    if body is None or body.poles is not None:
        return None
    return _Right(line.end, body, sense_of(body))


def _moved(right: _Right, row: int, by: int) -> _Right:
    """The same words on another row, so many columns further right."""

    def there(span: m.Span) -> m.Span:
        return span_of(row, span[1] + by, span[2] + by)

    end, body, sense = right
    facts, flags, _, _, wires, raceway, *_ = body
    return _Right(
        end + by,
        m.Body(
            {
                name: _new(m.Fact, (name, value, assumed, there(span), poles))
                for name, value, assumed, span, poles in facts.values()
            },
            {flag: there(span) for flag, span in flags.items()},
            conductors=None if wires is None else _new(m.Conductors, (*wires[:-1], there(wires.span))),
            raceway=None if raceway is None else _new(m.Raceway, (*raceway[:-1], there(raceway.span))),
        ),
        sense,
    )


def _sound(line: Line) -> bool:
    """Whether a line is a circuit that reads as what it is, whatever its description."""
    if line.form != "circuit" or line.problems or len(line.head) != 1:
        return False
    place = line.head[0]
    return not may_be_slip(line, (place.kind,), place.text)


def _body(phrases: tuple[Phrase, ...], row: int) -> m.Body | None:
    """What some phrases say, or None where something is wrong with them, or they hold what cannot be put together."""
    builder = BodyBuilder("circuit", [])
    builder.add(row, phrases)
    body = builder.build()
    if builder.problems or body.leg_loads or body.description_span is not None:
        return None
    return body
