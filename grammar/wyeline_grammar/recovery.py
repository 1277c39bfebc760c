"""What is said about a line that does not parse, and what of it stays usable.

A line yields one problem, at its first wrong word: a known slip (``slips.py``), a keyword misspelt, or what was found
and what could stand there. Where the line can only have meant one thing, its meaning is taken from the mended text, so
that nothing else becomes undefined; elsewhere reading goes on at the next word that starts a phrase.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import cache, lru_cache

from wyeline_grammar import memo
from wyeline_grammar.memo import END, Failure, Kinds
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.slips import SLIPS, Match, Place, Slip
from wyeline_grammar.syntax import Line, Phrase, Token
from wyeline_grammar.tokens import cut, is_statement
from wyeline_grammar.vocabulary import ACTIONS, FLAGS, KEYS, KINDS, word_kind

UNREADABLE, KNOWN_SLIP = "unreadable-line", "known-slip"

_MOST_MENDED = 8
"""How many slips of one line are mended to find out what it means."""
_LONGEST_MENDED = 2_000
"""Longer lines are no slip of the pen; they get the general message."""

_PHRASE_STARTS = frozenset("KEY FLAG KIND QUANTITY SETS RUN TEXT IN AT LEG ASSUME".split())
_STARTS_ONLY = frozenset("KEY AT IN LEG ASSUME SETS RUN".split())
_VALUES = frozenset("QUANTITY NUMBER VOLTAGE RANGE LIST NAME".split())
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
    **dict.fromkeys(("NUMBER", "LIST", "NAME", "TEXT"), "circuit"),
}
_IN_HEAD = frozenset("NAME TEXT PORT VOLTAGE ARROW LEGS COLON TRADE_SIZE".split())

_NEEDS: tuple[tuple[frozenset[str], str], ...] = (
    (
        frozenset("FEEDER SCENARIO EXPECT".split()),
        "a kind of equipment, or `feeder`, `project`, `include`, `raceway`, `type`, `scenario` or `expect`",
    ),
    (_VALUES, "a value, such as `225 A`, `0.86`, `480 3ph`, a word or a name"),
    (
        _PHRASE_STARTS - {"TEXT"},
        "a keyword with its value, a flag, a number with its unit, conductors such as `3#8`, or `in` with a raceway",
    ),
    (frozenset({"ALLOW", "CLAIM"}), "`allow` or `claim`"),
    (frozenset({"NAME", "PORT"}), "a name such as `LP-1`"),
    (frozenset({"KEY", "FLAG", "PLAIN"}), "what is expected, such as `drop` or `fault`"),
    (frozenset({"FLAG", "ACTION", "PLAIN"}), "the name of a rule or a code exception"),
    (frozenset({"NAME", "PLAIN", "TRADE_SIZE"}), "a raceway, such as `EMT`, `2 inch EMT` or `R-7`"),
    (frozenset({"NAME", "PLAIN"}), "a raceway, such as `EMT` or `R-7`"),
    (frozenset({"LE", "GE"}), "`<=` or `>=`"),
)
_NEED = {
    "NAME": "a name such as `LP-1`",
    "TEXT": "a text in quotes",
    "PORT": "a port such as `ATS-1.normal`",
    "NUMBER": "a number",
    "LIST": "positions such as `2,4`",
    "QUANTITY": "a number with its unit, such as `225 A`",
    "VOLTAGE": "a voltage such as `480Y/277`",
    "POLES": "poles such as `3p`",
    "SIZE": "a conductor size such as `#8` or `16 mm2`",
    "RUN": "conductors such as `3#8`",
    "TRADE_SIZE": "a trade size such as `2 inch`",
    "LEGS": "legs such as `[AB]`",
    "ARROW": "`->`",
    "COLON": "`:` behind a label",
    "PLUS": "`+` with a further conductor",
    "KIND": "a kind of equipment",
    "ACTION": "an action such as `open`",
    "FLAG": "a flag",
    "PLAIN": "a word",
    END: "the end of the line",
}


def recover(
    text: str, tokens: tuple[Token, ...], kinds: Kinds, comment: str | None, statement: bool, stop: Failure
) -> Line:
    """The line as far as it can be read, with its one problem."""
    problem, mended = _diagnose(text, tokens, kinds, statement, stop)
    if mended is not None:
        line = _meaning(*mended)
        if line is not None:
            return line._replace(problems=(problem,), comment=comment)
    form, head, phrases = _readable(tokens, kinds, statement, stop)
    return Line(form, head, phrases, (problem,), comment)


def recover_sound(text: str, line: Line, statement: bool) -> Line:
    """A line that parses, as it is or with the slip it must be (rows of the table with ``sound``)."""
    tokens = cut(text)[1]
    place = Place(text, tokens, statement, None, frozenset())
    for slip in SLIPS:
        if not slip.sound:
            continue
        for match in slip.pattern.finditer(_without_texts(text, tokens)):
            options = _options(slip, match, place)
            if options:
                problem = _slip_problem(slip, match, options, place)
                if len(options) == 1:
                    meant = _meaning(text, match.start(), match.end(), options[0])
                    if meant is not None:
                        return meant._replace(problems=(problem,), comment=line.comment)
                return line._replace(form="broken", problems=(problem,))
    return line


def _diagnose(
    text: str, tokens: tuple[Token, ...], kinds: Kinds, statement: bool, stop: Failure
) -> tuple[Problem, tuple[str, int, int, str] | None]:
    """The problem, and the one edit that surely mends it, if there is one: (text, start, end, new text)."""
    wrong = tokens[stop.at] if stop.at < len(tokens) else None
    place = Place(text, tokens, statement, wrong, stop.expected)
    if len(text) <= _LONGEST_MENDED:
        found = _find_slip(place)
        if found is not None:
            slip, match, options = found
            problem = _slip_problem(slip, match, options, place)
            sure = (text, match.start(), match.end(), options[0]) if len(options) == 1 else None
            return problem, sure
        if wrong is not None and wrong.kind in ("PLAIN", "NAME", "ERROR", "KEY", "FLAG", "KIND", "ACTION"):
            near = nearest(wrong.text, stop.expected)
            sure_words = [w for d, w in near if d == 1 and _leads_further(place, wrong.start, wrong.end, w)]
            if len(sure_words) == 1:
                word = sure_words[0]
                return _misspelt(wrong, (word,), place, True), (text, wrong.start, wrong.end, word)
            if near:
                words = tuple(sure_words or [w for _, w in near])[:3]
                return _misspelt(wrong, words, place, False), None
    return _unreadable(place, kinds, stop), None


def _find_slip(place: Place) -> tuple[Slip, Match, tuple[str, ...]] | None:
    masked = _without_texts(place.text, place.tokens)
    limit = place.wrong.end if place.wrong else len(place.text)
    for slip in SLIPS:
        if slip.sound:
            continue
        for match in slip.pattern.finditer(place.text if slip.quotes else masked):
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


def _slip_problem(slip: Slip, match: Match, options: tuple[str, ...], place: Place) -> Problem:
    start, end = match.span()
    wrong, right = match[0].strip(), options[0].strip()
    if not wrong and place.tokens:  # an indentation: what is shown is the word behind it
        start, end = place.tokens[0].start, place.tokens[0].end
        wrong = right = place.text[start:end]
    message = slip.message.format(wrong=wrong, right=right)
    titles = tuple(_title(match[0], option, place) for option in options)
    return Problem(
        rule=KNOWN_SLIP,
        message=message,
        line=0,
        start=start + (len(match[0]) - len(match[0].lstrip()) if match[0].strip() else 0),
        end=end - (len(match[0]) - len(match[0].rstrip()) if match[0].strip() else 0),
        found=f"`{wrong}`",
        needed=" or ".join(f"`{option.strip()}`" for option in options if option.strip()) or _INDENT[place.statement],
        why=slip.why,
        change=" or ".join(titles),
        remedies=tuple(
            Remedy(title, (TextEdit(0, match.start(), match.end(), option),), sure=len(options) == 1)
            for title, option in zip(titles, options, strict=True)
        ),
    )


_INDENT = {True: "a line that starts with a blank", False: "a line that starts in the first column"}


def _title(old: str, new: str, place: Place) -> str:
    if new.strip():
        return f"write `{new.strip()}`"
    if old.strip():
        return f"leave out `{old.strip()}`"
    return "indent the line" if place.statement else "move the line to the first column"


def _misspelt(wrong: Token, words: tuple[str, ...], place: Place, sure: bool) -> Problem:
    listed = " or ".join(f"`{word}`" for word in words)
    typed = place.text[wrong.start : wrong.end]
    return Problem(
        rule=UNREADABLE,
        message=f"`{typed}` is no word of the language here; the nearest is {listed}",
        line=0,
        start=wrong.start,
        end=wrong.end,
        found=f"`{typed}`",
        needed=needed_here(place.expected),
        why="Only listed words can stand here, and none is guessed.",
        change=f"write {listed}",
        remedies=tuple(Remedy(f"write `{word}`", (TextEdit(0, wrong.start, wrong.end, word),), sure) for word in words),
    )


def _unreadable(place: Place, kinds: Kinds, stop: Failure) -> Problem:
    needed = needed_here(stop.expected)
    before = place.tokens[stop.at - 1] if stop.at > 0 else None
    behind = f" behind `{_typed(place.text, before)}`" if before else ""
    wrong = place.wrong
    if wrong is None:
        last = place.tokens[-1]
        return Problem(
            rule=UNREADABLE,
            message=f"the line ends too early{behind}: here stands {needed}",
            line=0,
            start=last.start,
            end=last.end,
            found="the end of the line",
            needed=needed,
            why="The sentence is not whole, and nothing is guessed.",
            change=f"add {needed}{behind}",
        )
    typed = _typed(place.text, wrong)
    remedies: tuple[Remedy, ...] = ()
    if len(place.text) <= _LONGEST_MENDED and _leads_further(place, wrong.start, wrong.end, ""):
        remedies = (Remedy(f"leave out `{typed}`", (TextEdit(0, wrong.start, wrong.end, ""),), sure=False),)
    if wrong.kind == "ERROR":
        message = f"`{typed}` cannot be read{behind}: here stands {needed}"
    else:
        message = (
            f"{_called(wrong.kind)} `{typed}` cannot stand{behind or ' at the start of a line'}: here stands {needed}"
        )
    return Problem(
        rule=UNREADABLE,
        message=message,
        line=0,
        start=wrong.start,
        end=wrong.end,
        found=f"`{typed}`",
        needed=needed,
        why=_reason(kinds, stop.at),
        change=f"write {needed} in place of `{typed}`, or leave it out",
        remedies=remedies,
    )


def _typed(text: str, token: Token) -> str:
    typed = text[token.start : token.end].strip()
    return typed if len(typed) <= 60 else typed[:57] + "..."


def _called(kind: str) -> str:
    return {"NAME": "the name", "NUMBER": "the bare number", "TEXT": "the text", "VOLTAGE": "the voltage"}.get(
        kind, "here"
    )


def _reason(kinds: Kinds, at: int) -> str:
    if kinds[at] == "NUMBER":
        return "A bare number has no unit, so it could mean anything; only a keyword or a unit says what it is."
    if kinds[at] in ("NAME", "PORT"):
        return "A name is the value of the keyword before it, or one of the ends of a connection; it starts nothing."
    return "A line is read word by word, and nothing is guessed."


def needed_here(expected: frozenset[str]) -> str:
    """What can stand at a place, in the words of the reference."""
    left = set(expected)
    parts = []
    for group, words in _NEEDS:
        if group <= left:
            parts.append(words)
            left -= group
            if group is _VALUES or "SETS" in group or "FEEDER" in group:
                left -= {"TEXT", "SIZE", "TRADE_SIZE", "PORT", "PLAIN", "FLAG", "KIND", "ACTION"}
                left -= {"WYE", "PROJECT", "INCLUDE", "TYPE", "RACEWAY"}
    for kind in sorted(left & {"NAME", "PORT"}):
        if any("a name such as" in part for part in parts):
            left.discard(kind)
    parts += [_NEED.get(kind, f"`{kind.lower()}`") for kind in sorted(left - {END})]
    if END in left:
        parts.append(_NEED[END])
    if len(parts) < 2:
        return "".join(parts) or "nothing more"
    return ", ".join(parts[:-1]) + " or " + parts[-1]


# --- nearest spelling -------------------------------------------------------------------------------------------------


@cache
def _deletions() -> dict[str, tuple[str, ...]]:
    """Every listed word under all its spellings with up to two letters left out."""
    found: dict[str, list[str]] = {}
    for word in sorted(KEYS | FLAGS | KINDS | ACTIONS | _GRAMMAR_WORDS):
        for short in _shortened(word):
            found.setdefault(short, []).append(word)
    return {short: tuple(words) for short, words in found.items()}


_GRAMMAR_WORDS = frozenset(
    "wye project include type raceway feeder scenario expect in at leg all assume allow claim".split()
)


def _shortened(word: str) -> set[str]:
    once = {word[:i] + word[i + 1 :] for i in range(len(word))}
    return {word, *once, *(short[:i] + short[i + 1 :] for short in once for i in range(len(short)))}


def distance(a: str, b: str) -> int:
    """How many letters must be put in, left out, changed or swapped with their neighbour."""
    before: list[int] = []
    row = list(range(len(b) + 1))
    for i, x in enumerate(a, 1):
        earlier, before, row = before, row, [i]
        for j, y in enumerate(b, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (x != y))
            if i > 1 and j > 1 and x == b[j - 2] and a[i - 2] == y:
                cost = min(cost, earlier[j - 2] + 1)
            row.append(cost)
    return row[-1]


@lru_cache(maxsize=4096)
def nearest(word: str, expected: frozenset[str]) -> tuple[tuple[int, str], ...]:
    """Listed words that can stand here and differ by a letter or two, the nearest first, at the most four."""
    word = word.lower().replace("_", "-")
    if not 2 <= len(word) <= 30:
        return ()
    index = _deletions()
    candidates = {candidate for short in _shortened(word) for candidate in index.get(short, ())}
    found = []
    for candidate in candidates:
        if word_kind(candidate) in expected:
            steps = distance(word, candidate)
            if 0 < steps <= (1 if len(candidate) < 5 else 2):
                found.append((steps, candidate))
    return tuple(sorted(found)[:4])


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
        _, mended = _diagnose(fixed, tokens, kinds, statement, found)
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
        form = "broken" if statement or first not in _PHRASE_STARTS else "more"
    elif form in memo.CLOSED_FORMS:
        return form, tokens[: stop.at], ()
    opening = 0 if form in ("more", "broken") else 2 if form == "type" else 1
    body = next((i for i in range(opening, len(kinds)) if _starts_phrase(kinds, i, opening)), len(kinds))
    if form == "more" or (form == "circuit" and body > 2):
        body = opening
    head = tuple(
        token for i, token in enumerate(tokens[:body]) if i < opening or (i != stop.at and token.kind in _IN_HEAD)
    )
    return form, head, tuple(_phrases(tokens, kinds, body, stop.at))


def _starts_phrase(kinds: Kinds, at: int, opening: int) -> bool:
    """Whether a phrase starts at a token of a line whose head may still go on: a text there is a name."""
    kind = kinds[at]
    if kind == "TEXT":
        return at > opening and kinds[at - 1] not in ("ARROW", "COLON")
    return kind in _PHRASE_STARTS


def _phrases(tokens: tuple[Token, ...], kinds: Kinds, at: int, wrong: int) -> Iterator[Phrase]:
    """The phrases from a token on; behind a wrong word, one word that may be its value is passed over."""
    while at < len(kinds):
        found = memo.phrase_at(kinds, at) if kinds[at] in _PHRASE_STARTS else None
        if found is not None:
            form, first, end, assumed = found
            if not (end == wrong and kinds[end - 1] in ("NUMBER", "LIST") and form == "key"):
                yield Phrase(form, tokens[first:end], assumed)
            at = end
            continue
        keyed = at == wrong and kinds[at] in ("PLAIN", "NAME", "ERROR")
        at += 1
        if keyed and at < len(kinds) and kinds[at] not in _STARTS_ONLY:
            at += 2 if kinds[at] == "QUANTITY" and kinds[at + 1 : at + 2] == ("POLES",) else 1
        while at < len(kinds) and kinds[at] not in _PHRASE_STARTS:
            at += 1
