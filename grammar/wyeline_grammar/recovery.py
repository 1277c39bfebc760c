"""What is said about a line that does not parse, and what of it stays usable.

A line yields one problem, at its first wrong word: a known slip (``slips.py``), a keyword misspelt, or what was found
and what could stand there. Where the line can only have meant one thing, its meaning is taken from the mended text, so
that nothing else becomes undefined; elsewhere reading goes on at the next word that starts a phrase.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from wyeline_grammar import circuit_descriptions, heads, heads_in_words, memo
from wyeline_grammar.expectation import PHRASE_STARTS
from wyeline_grammar.memo import Failure, Kinds
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.slip import Slip
from wyeline_grammar.slip_fixes import Match, Place
from wyeline_grammar.slips import SLIPS
from wyeline_grammar.spelling import nearest
from wyeline_grammar.syntax import Line, Phrase, Token
from wyeline_grammar.tokens import cut, is_statement
from wyeline_grammar.unfinished import begun
from wyeline_grammar.unread_words import LONGEST_MENDED, misspelt, short, unfinished_word, unreadable

KNOWN_SLIP = "known-slip"

_MOST_MENDED = 8
"""How many slips of one line are mended to find out what it means."""
_NEAR = 5
_WORD_BY_WORD = frozenset({"trade-word", "keyword-case"})
"""Slips of a single word, which may be one of a description."""
_HEAD_FORMS = {
    "WYE": "wye",
    "PROJECT": "project",
    "INCLUDE": "include",
    "KIND": "equipment",
    "TYPE": "type",
    "RACEWAY": "raceway",
    "FEEDER": "feeder",
    "SCENARIO": "scenario",
    "EXPECT": "expect",
}
_DETAIL_FORMS = {
    "ACTION": "action",
    "ALLOW": "allow",
    "CLAIM": "claim",
    "ISSUE": "issue",
    **dict.fromkeys(("NUMBER", "LIST", "NAME", "TEXT"), "circuit"),
}
_IN_HEAD = frozenset("NAME TEXT PORT VOLTAGE ARROW LEGS COLON TRADE_SIZE DATE".split())


def recover(
    text: str, tokens: tuple[Token, ...], kinds: Kinds, comment: str | None, statement: bool, stop: Failure
) -> Line:
    """The line as far as it can be read, with its one problem."""
    problem, mended = _diagnose(text, tokens, statement, stop)
    if mended is not None:
        line = _meaning(*mended)
        if line is not None:
            line = heads.brought_back(line, tokens)
            return line._replace(problems=(problem,), comment=comment)
    form, head, phrases = _readable(tokens, kinds, statement, stop)
    return Line(form, head, phrases, (problem,), comment)


def recover_sound(text: str, line: Line) -> Line:
    """A line that parses, as it is or with the slip it must be (rows of the table with ``sound``)."""
    tokens = cut(text)[1]
    place = Place(text, tokens, is_statement(text), None, frozenset())
    for slip in SLIPS:
        if not slip.sound:
            continue
        for match in slip.pattern.finditer(_without_texts(text, tokens)):
            options = _options(slip, match, place)
            if options:
                problem = _slip_problem(slip, match, options, place)
                if _has_one_meaning(slip, options):
                    meant = _meaning(text, match.start(), match.end(), options[0])
                    if meant is not None:
                        return meant._replace(problems=(problem,), comment=line.comment)
                return line._replace(form="broken", problems=(problem,))
    return line


def _diagnose(
    text: str, tokens: tuple[Token, ...], statement: bool, stop: Failure
) -> tuple[Problem, tuple[str, int, int, str] | None]:
    """The problem, and the one edit that surely mends it, if there is one: (text, start, end, new text)."""
    wrong = tokens[stop.at] if stop.at < len(tokens) else None
    place = Place(text, tokens, statement, wrong, stop.expected)
    if len(text) <= LONGEST_MENDED:
        headed = heads_in_words.meant(place) or heads.meant(place)
        if headed is not None:
            return headed
        found = _find_slip(place)
        if found is None or found[0].name in _WORD_BY_WORD:
            described = circuit_descriptions.several_words(place)
            if described is not None and _leads_on(place, described):
                return described, None
        if found is not None:
            slip, match, options = found
            problem = _slip_problem(slip, match, options, place)
            at, _, shortened = _trimmed(match, options)
            return problem, (text, at, match.end(), shortened[0]) if _has_one_meaning(slip, options) else None
        if wrong is not None and wrong.kind in ("PLAIN", "NAME", "ERROR"):
            near = nearest(wrong.text, stop.expected)
            sure_words = [w for d, w in near if d == 1 and _leads_further(place, wrong.start, wrong.end, w)]
            if len(sure_words) == 1:
                word = sure_words[0]
                return misspelt(wrong, (word,), place, True), (text, wrong.start, wrong.end, word)
            unfinished = begun(text, tokens, statement, wrong, stop.expected)
            if unfinished:
                return unfinished_word(wrong, unfinished, place), None
            if near:
                words = tuple(sure_words or [w for _, w in near])[:3]
                return misspelt(wrong, words, place, False), None
        described = circuit_descriptions.last_resort(place)
        if described is not None and _leads_on(place, described):
            return described, None
    return unreadable(place, stop), None


def _find_slip(place: Place) -> tuple[Slip, Match, tuple[str, ...]] | None:
    text, tokens = place.text, place.tokens
    masked = _without_texts(text, tokens)
    wrong = tokens.index(place.wrong) if place.wrong else len(tokens)
    limit = place.wrong.end if place.wrong else len(text)
    # A slip lies within a few words of the first wrong one; looking further only costs time.
    near = tokens[wrong - _NEAR].start if wrong > _NEAR else 0
    far = tokens[wrong + _NEAR].end if wrong + _NEAR < len(tokens) else len(text)
    for slip in SLIPS:
        if slip.sound:
            continue
        spelling = slip.pattern.pattern
        first = 0 if spelling.startswith(("^", "(?P<lead>^")) else near
        last = len(text) if "$" in spelling or "Z)" in spelling else far
        for match in slip.pattern.finditer(text if slip.quotes else masked, first, last):
            if match.start() > limit:
                break
            options = _options(slip, match, place)
            if options and _leads_further(place, match.start(), match.end(), options[0]):
                return slip, match, options
    return None


def _options(slip: Slip, match: Match, place: Place) -> tuple[str, ...]:
    fixed = slip.fix(match, place)
    if fixed is None or fixed == match[0]:
        return ()
    return (fixed,) if isinstance(fixed, str) else fixed


def _has_one_meaning(slip: Slip, options: tuple[str, ...]) -> bool:
    """Whether the line can only have meant this."""
    return len(options) == 1 and not slip.guess


def _without_texts(text: str, tokens: tuple[Token, ...]) -> str:
    """The line with the insides of its texts, and its comment, overwritten by a sign that no row looks for."""
    if '"' not in text and "//" not in text:
        return text
    out, at = [], 0
    for token in tokens:
        if token.kind == "TEXT":
            out += [text[at : token.start + 1], "\x00" * (token.end - token.start - 2)]
            at = token.end - 1
    end = max((token.end for token in tokens), default=0)
    out += [text[at:end], " " * (len(text) - end)]
    return "".join(out)


def _leads_further(place: Place, start: int, end: int, new: str) -> bool:
    """Whether more of the line can be read once a piece of it is replaced."""
    left = len(place.text.rstrip()) - (place.wrong.start if place.wrong else len(place.text.rstrip()))
    text = place.text[:start] + new + place.text[end:]
    kinds, tokens, _ = cut(text)
    if not kinds:
        return False
    found = memo.shape(kinds, is_statement(text))
    if not isinstance(found, Failure):
        return True
    return found.at < len(tokens) and len(text.rstrip()) - tokens[found.at].start < left


def _leads_on(place: Place, problem: Problem) -> bool:
    ((edit,),) = (remedy.edits for remedy in problem.remedies)
    return _leads_further(place, edit.start, edit.end, edit.text)


def _trimmed(match: Match, options: tuple[str, ...]) -> tuple[int, str, tuple[str, ...]]:
    """Where the match starts, what was written and what should be, without the context that a row's ``lead`` is."""
    lead = match.groupdict().get("lead") or ""
    if not lead or not all(option.startswith(lead) for option in options):
        return match.start(), match[0], options
    return match.start() + len(lead), match[0][len(lead) :], tuple(option[len(lead) :] for option in options)


def _slip_problem(slip: Slip, match: Match, options: tuple[str, ...], place: Place) -> Problem:
    at, written, options = _trimmed(match, options)
    start, end = match.end() - len(written.lstrip(_APART)), at + len(written.rstrip())
    wrong, right = written.strip(_APART), options[0].strip()
    if not wrong:  # an indentation: what is shown is the word behind it
        start, end = place.tokens[0].start, place.tokens[0].end
        wrong = right = place.text[start:end]
    titles = [_title(written, option, place) for option in options]
    words = {
        **match.groupdict(),
        "wrong": short(wrong),
        "right": short(right if len(options) < 2 else "` or `".join(o.strip() for o in options)),
    }
    besides = f"`{slip.besides.format(**words)}`" if slip.besides else ""
    return Problem(
        rule=KNOWN_SLIP,
        message=slip.message.format(**words),
        line=0,
        start=start,
        end=end,
        found=f"`{wrong}`",
        needed=" or ".join(f"`{option.strip()}`" for option in options if option.strip())
        or (f"{besides} on a line of its own" if besides else _left_out(written, place)),
        why=slip.why,
        change=titles[0]
        + "".join(f", or {title[0].lower()}{title[1:]}" for title in titles[1:])
        + (f", and write {besides} on a line of its own" if besides else ""),
        remedies=tuple(
            Remedy(title, (TextEdit(0, at, match.end(), option),), sure=_has_one_meaning(slip, options) and not besides)
            for title, option in zip(titles, options, strict=True)
        ),
    )


def _left_out(written: str, place: Place) -> str:
    return "the line without it" if written.strip(_APART) else _INDENT[place.statement]


_APART = " \t\u00a0,"
"""What parts the words of a line."""
_INDENT = {True: "a line that starts with a blank", False: "a line that starts in the first column"}


def _title(old: str, new: str, place: Place) -> str:
    if new.strip():
        return f"Write `{short(new.strip())}`"
    if old.strip():
        return f"Leave out `{old.strip(_APART)}`"
    return "Indent the line" if place.statement else "Move the line to the first column"


# --- what stays usable ------------------------------------------------------------------------------------------------


def _meaning(text: str, start: int, end: int, new: str, depth: int = 0) -> Line | None:
    """The mended line, its further slips mended too, in columns of the text as written."""
    fixed = text[:start] + new + text[end:]
    kinds, tokens, _ = cut(fixed)
    if not kinds or depth >= _MOST_MENDED:
        return None
    statement = is_statement(fixed)
    found = memo.shape(kinds, statement)
    line: Line | None
    if not isinstance(found, Failure):
        line = memo.build(tokens, found, None)
    else:
        _, mended = _diagnose(fixed, tokens, statement, found)
        line = _meaning(*mended, depth + 1) if mended else None
        if line is None:
            form, head, phrases = _readable(tokens, kinds, statement, found)
            line = Line(form, head, phrases, (), None)
    shift = len(new) - (end - start)

    def column(at: int, inside: int) -> int:
        return at if at <= start else at - shift if at >= start + len(new) else inside

    def back(part: Iterable[Token]) -> tuple[Token, ...]:
        return tuple(
            Token(t.kind, t.text, a, max(column(t.end, end), min(a + 1, len(text))))
            for t in part
            for a in (column(t.start, start),)
        )

    return line._replace(
        head=back(line.head), phrases=tuple(phrase._replace(tokens=back(phrase.tokens)) for phrase in line.phrases)
    )


def _readable(
    tokens: tuple[Token, ...], kinds: Kinds, statement: bool, stop: Failure
) -> tuple[str, tuple[Token, ...], tuple[Phrase, ...]]:
    """Form, head and phrases of a line, as far as they can be read around its wrong word."""
    first = kinds[0]
    form = (_HEAD_FORMS if statement else _DETAIL_FORMS).get(first)
    if form is None:
        form = "broken" if statement or first not in PHRASE_STARTS else "more"
    elif form in memo.CLOSED_FORMS:
        return form, tokens[: stop.at], ()
    opening = 0 if form in ("more", "broken") else 2 if form == "type" else 1
    body = next((i for i in range(opening, len(kinds)) if _starts_phrase(kinds, i, opening)), len(kinds))
    if form == "more":
        body = opening
    elif "KEY" in stop.expected and opening <= stop.at < body:
        body = stop.at  # the head was whole
    head = tuple(
        token for i, token in enumerate(tokens[:body]) if i < opening or (i != stop.at and token.kind in _IN_HEAD)
    )
    return form, head, tuple(_phrases(tokens, kinds, body, stop.at))


def _starts_phrase(kinds: Kinds, at: int, opening: int) -> bool:
    """Whether a phrase starts at a token of a line whose head may still go on: a text there is a name."""
    kind = kinds[at]
    if kind == "TEXT":
        return at > opening and kinds[at - 1] not in ("ARROW", "COLON")
    return kind in PHRASE_STARTS


def _phrases(tokens: tuple[Token, ...], kinds: Kinds, at: int, wrong: int) -> Iterator[Phrase]:
    """The phrases from a token on; a quantity behind a wrong word may be its value and is passed over."""
    while at < len(kinds):
        found = memo.phrase_at(kinds, at) if kinds[at] in PHRASE_STARTS else None
        if found is not None:
            form, first, end, assumed = found
            if not (end == wrong and kinds[end - 1] in ("NUMBER", "LIST") and form == "key"):
                yield Phrase(form, tokens[first:end], assumed)
            at = end
            continue
        keyed = kinds[at] in ("PLAIN", "NAME")
        at += 1
        if keyed and kinds[at : at + 1] == ("QUANTITY",):
            at += 1
