"""Syntax to model: one block to one statement.

Nothing here looks beyond the block, so equal blocks share one statement (a memo by text). Names stay names; they are
resolved in ``linking.py``.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from operator import attrgetter

from wyeline_grammar import model as m
from wyeline_grammar.bodies import BodyBuilder, name_use, place_of, unquoted
from wyeline_grammar.circuit_rows import read_row
from wyeline_grammar.issue_dates import UNREAD, is_a_day, no_such_day
from wyeline_grammar.notation import NotationError, parse_legs, parse_voltage
from wyeline_grammar.parser import ELSEWHERE, read_block
from wyeline_grammar.places import span_of
from wyeline_grammar.problems import Problem, Remedy, TextEdit
from wyeline_grammar.remembering import Remembered, of_blocks, of_texts
from wyeline_grammar.senses import sense_of
from wyeline_grammar.syntax import BlockSyntax, Line, Phrase, Token
from wyeline_grammar.vocabulary import BOARDS

_STATEMENTS: Remembered[tuple[str, ...], m.Statement] = of_blocks()

_DETAILS: dict[str, frozenset[str]] = {
    "equipment": frozenset({"more", "allow", "claim"}),
    "project": frozenset({"more", "allow", "claim", "issue"}),
    "raceway": frozenset({"more", "allow", "claim"}),
    "feeder": frozenset({"more", "allow", "claim"}),
    "scenario": frozenset({"action", "allow"}),
    "expect": frozenset(),
    "include": frozenset(),
    "wye": frozenset(),
}
_DETAIL_WORDS = {
    "circuit": "a circuit",
    "more": "more of the statement",
    "action": "a switching action",
    "allow": "an allowance",
    "claim": "a claim",
    "issue": "an issue",
}
_BELONGS = {
    "circuit": "Circuits stand under a panel, switchboard, switchgear or mcc.",
    "more": "Phrases stand under project, equipment, raceways and feeders.",
    "action": "Switching actions stand under a scenario.",
    "allow": "An `allow` stands under the statement whose finding it accepts.",
    "claim": "A `claim` stands under the feeder or equipment that needs the exception.",
    "issue": "An `issue` stands under the project.",
}


_bodies: Remembered[tuple[str, int, tuple[Phrase, ...]], m.Body] = of_texts(5_000)
"""What sound phrases of a statement's line say by themselves."""


def lower_block(lines: tuple[str, ...]) -> m.Statement:
    """The statement that a block's lines make, with every problem of its text. Never raises on any text."""
    found = _STATEMENTS.get(lines)
    if found is None:
        rows: dict[int, m.Circuit] = {}

        def elsewhere(text: str, row: int) -> bool:
            circuit = read_row(text, row)
            if circuit is None:
                return False
            rows[row] = circuit
            return True

        found = _lower(read_block(lines, elsewhere), rows)
        _STATEMENTS.put(lines, found)
    return found


def _lower(syntax: BlockSyntax, rows: dict[int, m.Circuit]) -> m.Statement:
    lines = syntax.lines
    forms = set(map(_form, lines))
    problems = [p for line in lines for p in line.problems] if any(map(_problems, lines)) else []
    doc = ""
    if "doc" in forms:
        doc = "\n".join([(line.comment or "").removeprefix("///").strip() for line in lines if line.form == "doc"])
    if syntax.head is None:
        return m.Unreadable(m.Span(0, 0, 0), len(lines) - 1, doc, tuple(problems), bool(problems))
    return _StatementReader(syntax, syntax.head, doc, problems, rows, "more" in forms).read()


_form, _problems = attrgetter("form"), attrgetter("problems")


class _StatementReader:
    """Reads one block; ``problems`` grows while it does. ``rows`` are the circuits that were read already; ``more`` is
    whether some line holds more of the statement."""

    def __init__(
        self,
        syntax: BlockSyntax,
        head: int,
        doc: str,
        problems: list[Problem],
        rows: dict[int, m.Circuit],
        more: bool,
    ) -> None:
        self.syntax = syntax
        self.rows = rows
        self.more = more
        self.row = head
        self.line = syntax.lines[head]
        self.doc = doc
        self.damaged = bool(problems)
        self.problems = problems
        self.allows: list[m.Allow] = []
        self.claims: list[m.Claim] = []
        self.issues: list[m.Issue] = []
        self.circuits: list[m.Circuit] = []
        self.actions: list[m.Action] = []
        self.last = head

    def read(self) -> m.Statement:
        reader = _READERS.get(self.line.form, _StatementReader._unreadable)
        return reader(self)

    # what all statements share

    @property
    def _head_span(self) -> m.Span:
        return span_of(self.row, self.line.start, self.line.end)

    def _common(self) -> tuple[m.Span, int, str, tuple[Problem, ...], bool]:
        problems = tuple(sorted(self.problems, key=lambda p: p[2:5])) if self.problems else ()
        return self._head_span, self.last, self.doc, problems, self.damaged

    def _span(self, token: Token, row: int | None = None) -> m.Span:
        return span_of(self.row if row is None else row, token.start, token.end)

    def _body(self, form: str, place: str) -> m.Body:
        """What the phrases of the statement's line, and of the lines below it, say together."""
        phrases = self.line.phrases
        count = len(phrases)
        if count and phrases[-1].form == "text":
            count -= 1  # nearly every description is another one
        phrases, ends = phrases[:count], phrases[count:]
        key = place, self.row, phrases
        known = _bodies.get(key)
        if known is not None and not self.more and not (ends and known.description_span):
            self._details(form, place, None)
            if not ends:
                return known
            said = ends[0].tokens[0]
            return known._replace(description=unquoted(said), description_span=self._span(said))
        builder, before = BodyBuilder(place, self.problems), len(self.problems)
        builder.add(self.row, phrases)
        if len(self.problems) == before and not self.more:
            _bodies.put(key, builder.build())
        builder.add(self.row, ends)
        self._details(form, place, builder)
        return builder.build()

    def _details(self, form: str, place: str, body: BodyBuilder | None) -> None:
        """Read the lines below the head: ``form`` says which details suit, ``body`` takes more phrases."""
        lines = self.syntax.lines
        if len(lines) == self.row + 1:
            return
        suits = _DETAILS[form] | ({"circuit"} if place in BOARDS else frozenset())
        for row in range(self.row + 1, len(lines)):
            line = lines[row]
            if line is ELSEWHERE:
                self.circuits.append(self.rows[row])
                self.last = row
                continue
            if line.form in ("blank", "comment", "doc", "broken"):
                continue
            self.last = row
            if line.form not in _DETAIL_WORDS:
                continue
            if line.form not in suits:
                self._out_of_place(row, line, form, place)
            elif line.form == "more" and body is not None:
                body.add(row, line.phrases)
            elif line.form == "circuit":
                self._circuit(row, line)
            elif line.form == "action":
                self._action(row, line)
            elif line.form == "allow":
                self._allow(row, line)
            elif line.form == "claim":
                self._claim(row, line)
            elif line.form == "issue":
                self._issue(row, line)

    def _out_of_place(self, row: int, line: Line, form: str, place: str) -> None:
        words = line.words()
        what, where = _DETAIL_WORDS[line.form], f"`{place}`" if form == "equipment" else f"`{form}`"
        self.problems.append(
            Problem(
                "detail-out-of-place",
                f"{where} takes no such line: this is {what}",
                row,
                words[0].start if words else 0,
                words[-1].end if words else 0,
                found=f"{what} under {where}",
                needed=_BELONGS[line.form],
                why="Each indented line adds to the statement above it, so that statement must be able to hold it.",
                change="Move the line under the right statement, or delete it.",
            )
        )

    # statements

    def _wye(self) -> m.Statement:
        number = next((t.text for t in self.line.head if t.kind == "NUMBER"), None)
        if number is not None and number != "1":
            token = next(t for t in self.line.head if t.kind == "NUMBER")
            self.problems.append(
                Problem(
                    "language-version-unknown",
                    f"`wye {number}` is a version of the language that this Wyeline does not know",
                    self.row,
                    token.start,
                    token.end,
                    found=f"version {number}",
                    needed="version 1",
                    why="A later version may give words another meaning, so reading on would be a guess.",
                    change="Write `wye 1`, or use the Wyeline release that the model was written for.",
                    remedies=(Remedy("Write `wye 1`", (TextEdit(self.row, token.start, token.end, "1"),), sure=False),),
                )
            )
        self._details("wye", "wye", None)
        return m.WyeVersion(*self._common(), version=number)

    def _include(self) -> m.Statement:
        text = next((t for t in self.line.head if t.kind == "TEXT"), None)
        self._details("include", "include", None)
        span = self._span(text) if text else self._head_span
        return m.Include(*self._common(), target=unquoted(text) if text else None, target_span=span)

    def _project(self) -> m.Statement:
        body = BodyBuilder("project", self.problems)
        body.add(self.row, self.line.phrases)
        self._details("project", "project", body)
        name = next((name_use(t, self.row) for t in self.line.head if t.kind in ("NAME", "TEXT")), None)
        built = body.build()
        return m.ProjectStatement(
            *self._common(),
            name=name,
            body=built,
            allows=tuple(self.allows),
            claims=tuple(self.claims),
            issues=tuple(self.issues),
        )

    def _equipment(self) -> m.Statement:
        head = list(self.line.head)
        is_type = bool(head) and head[0].kind == "TYPE"
        if is_type:
            head.pop(0)
        if not head or head[0].kind != "KIND":
            return self._unreadable()
        kind = head.pop(0)
        name = name_use(head.pop(0), self.row) if head and head[0].kind in ("NAME", "TEXT") else None
        primary, secondary, arrow = self._sides(head)
        built = self._body("equipment", kind.text)
        return m.EquipmentStatement(
            *self._common(),
            is_type=is_type,
            kind=kind.text,
            kind_span=self._span(kind),
            name=name,
            primary=primary,
            secondary=secondary,
            arrow=arrow,
            body=built,
            circuits=tuple(self.circuits),
            allows=tuple(self.allows),
            claims=tuple(self.claims),
        )

    def _sides(self, tokens: Sequence[Token]) -> tuple[m.SystemRef | None, m.SystemRef | None, bool]:
        sides: list[m.SystemRef | None] = [None, None]
        index = 0
        for token in tokens:
            if token.kind == "ARROW":
                index = 1
            elif token.kind in ("VOLTAGE", "NAME"):
                sides[index] = self._system_ref(token)
        return sides[0], sides[1], index == 1

    def _system_ref(self, token: Token) -> m.SystemRef:
        if token.kind == "NAME":
            return m.SystemRef(None, token.text, self._span(token))
        try:
            return m.SystemRef(parse_voltage(token.text), None, self._span(token))
        except NotationError as error:
            from wyeline_grammar.value_problems import voltage_problem  # only problems need it

            self.problems.append(voltage_problem(error, token, self.row, self.line.head))
            self.damaged = True
            return m.SystemRef(None, None, self._span(token))

    def _raceway(self) -> m.Statement:
        name = next((name_use(t, self.row) for t in self.line.head if t.kind in ("NAME", "TEXT")), None)
        size = next((" ".join(t.text.split()) for t in self.line.head if t.kind == "TRADE_SIZE"), None)
        stuff = None
        seen_name = False
        for token in self.line.head:
            if token.kind in ("NAME", "TEXT") and not seen_name:
                seen_name = True
            elif token.kind in ("NAME", "PLAIN"):
                stuff = token.text
        body = BodyBuilder("raceway", self.problems)
        body.add(self.row, self.line.phrases)
        self._details("raceway", "raceway", body)
        return m.RacewayStatement(
            *self._common(),
            name=name,
            trade_size=size,
            stuff=stuff,
            body=body.build(),
            allows=tuple(self.allows),
            claims=tuple(self.claims),
        )

    def _feeder(self) -> m.Statement:
        head = [t for t in self.line.head if t.kind != "FEEDER"]
        label = None
        if any(t.kind == "COLON" for t in head):
            cut = next(i for i, t in enumerate(head) if t.kind == "COLON")
            label = next((name_use(t, self.row) for t in head[:cut] if t.kind in ("NAME", "TEXT")), None)
            head = head[cut + 1 :]
        arrow = next((i for i, t in enumerate(head) if t.kind == "ARROW"), len(head))
        source, target = self._end(head[:arrow]), self._end(head[arrow + 1 :])
        built = self._body("feeder", "feeder")
        return m.FeederStatement(
            *self._common(),
            label=label,
            source=source,
            target=target,
            body=built,
            allows=tuple(self.allows),
            claims=tuple(self.claims),
        )

    def _end(self, tokens: Sequence[Token], row: int | None = None) -> m.End | None:
        if not tokens or tokens[0].kind not in ("NAME", "TEXT", "PORT"):
            return None
        token = tokens[0]
        legs_token = tokens[1] if len(tokens) > 1 and tokens[1].kind == "LEGS" else None
        legs = parse_legs(legs_token.text) if legs_token else None
        legs_span = self._span(legs_token, row) if legs_token else None
        if token.kind == "PORT":
            name, _, port = token.text.rpartition(".")
            return m.End(name.strip('"'), port, legs, self._span(token, row), legs_span)
        return m.End(unquoted(token), None, legs, self._span(token, row), legs_span)

    def _scenario(self) -> m.Statement:
        names = [t for t in self.line.head if t.kind in ("NAME", "TEXT")]
        titles = [p.tokens[0] for p in self.line.phrases if p.form == "text"]
        title = names[1] if len(names) > 1 else (titles[0] if titles else None)
        self._details("scenario", "scenario", None)
        return m.ScenarioStatement(
            *self._common(),
            name=name_use(names[0], self.row) if names else None,
            title=unquoted(title) if title else None,
            actions=tuple(self.actions),
            allows=tuple(self.allows),
        )

    def _expect(self) -> m.Statement:
        head = [t for t in self.line.head if t.kind != "EXPECT"]
        kind = head[1].text if len(head) > 1 and head[0].kind == "ALL" and head[1].kind == "KIND" else None
        relation_at = next((i for i, t in enumerate(head) if t.kind in ("LE", "GE")), None)
        measure = head[relation_at - 1] if relation_at else None
        subject = [] if kind else head[: (relation_at - 1) if relation_at else len(head)]
        arrow = next((i for i, t in enumerate(subject) if t.kind == "ARROW"), len(subject))
        source, target = self._end(subject[:arrow]), self._end(subject[arrow + 1 :])
        value, scenario = None, None
        if relation_at is not None and relation_at + 1 < len(head):
            value = BodyBuilder.bare_value(head[relation_at + 1])
            tail = head[relation_at + 2 :]
            if len(tail) > 1 and tail[0].kind == "IN":
                scenario = name_use(tail[1], self.row)
        self._details("expect", "expect", None)
        return m.ExpectStatement(
            *self._common(),
            kind=kind,
            source=source,
            target=target,
            measure=measure.text if measure else None,
            measure_span=self._span(measure) if measure else None,
            relation={"LE": "<=", "GE": ">="}[head[relation_at].kind] if relation_at is not None else None,
            value=value,
            scenario=scenario,
        )

    def _unreadable(self) -> m.Statement:
        for row in range(self.row + 1, len(self.syntax.lines)):
            if self.syntax.lines[row].form not in ("blank", "comment", "doc"):
                self.last = row
        head = self.line.head
        named = self.line.form == "broken" and bool(head) and head[0].kind in ("NAME", "TEXT")
        name = name_use(head[0], self.row) if named and all(t.kind != "ARROW" for t in head) else None
        return m.Unreadable(*self._common(), name)

    # details

    def _circuit(self, row: int, line: Line) -> None:
        if not line.head:
            return
        place, *more = line.head
        legs_token = next((t for t in more if t.kind == "LEGS"), None) if more else None
        builder = BodyBuilder("circuit", self.problems)
        builder.add(row, line.phrases)
        body = builder.build()
        self.circuits.append(
            m.Circuit(
                place_of(place, row),
                parse_legs(legs_token.text) if legs_token else None,
                self._span(legs_token, row) if legs_token else None,
                body,
                span_of(row, place.start, line.end),
                sense_of(body),
            )
        )

    def _action(self, row: int, line: Line) -> None:
        head = list(line.head)
        verb = head.pop(0)
        value = next((BodyBuilder.bare_value(t) for t in head if t.kind == "QUANTITY"), None)
        ends = [t for t in head if t.kind != "QUANTITY"]
        arrow = next((i for i, t in enumerate(ends) if t.kind == "ARROW"), len(ends))
        source, target = self._end(ends[:arrow], row), self._end(ends[arrow + 1 :], row)
        if source is not None:
            span = span_of(row, verb.start, line.head[-1].end)
            self.actions.append(m.Action(verb.text, source, target, value, span))

    def _allow(self, row: int, line: Line) -> None:
        head = list(line.head[1:])
        if not head:
            return
        rule, rest = head[0], head[1:]
        place = place_of(rest[1], row) if len(rest) > 1 and rest[0].kind == "AT" else None
        reason = rest[-1] if rest and rest[-1].kind == "TEXT" and (place is None or len(rest) > 2) else None
        if reason is None:
            return
        span = span_of(row, line.head[0].start, line.head[-1].end)
        self.allows.append(m.Allow(rule.text, self._span(rule, row), place, unquoted(reason), span))

    def _claim(self, row: int, line: Line) -> None:
        head = list(line.head[1:])
        if not head:
            return
        name, rest = head[0], head[1:]
        place = place_of(rest[1], row) if len(rest) > 1 and rest[0].kind == "AT" else None
        text = rest[-1] if rest and rest[-1].kind == "TEXT" and (place is None or len(rest) > 2) else None
        span = span_of(row, line.head[0].start, line.head[-1].end)
        self.claims.append(m.Claim(name.text, place, unquoted(text) if text else None, span))

    def _issue(self, row: int, line: Line) -> None:
        name = next((t for t in line.head[1:] if t.kind in ("NAME", "TEXT", "NUMBER")), None)
        dated = next((t for t in line.head if t.kind == "DATE"), None)
        date = dated.text if dated is not None else UNREAD if line.problems else ""
        if dated is not None and not is_a_day(dated.text):
            self.problems.append(no_such_day(dated, row))
            date = UNREAD
        body = BodyBuilder("issue", self.problems)
        body.add(row, line.phrases)
        if name is not None:
            span = span_of(row, line.start, line.end)
            self.issues.append(m.Issue(name_use(name, row), date, body.build(), span))


_READERS: dict[str, Callable[[_StatementReader], m.Statement]] = {
    "wye": _StatementReader._wye,
    "include": _StatementReader._include,
    "project": _StatementReader._project,
    "equipment": _StatementReader._equipment,
    "type": _StatementReader._equipment,
    "raceway": _StatementReader._raceway,
    "feeder": _StatementReader._feeder,
    "scenario": _StatementReader._scenario,
    "expect": _StatementReader._expect,
}
