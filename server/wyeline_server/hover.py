"""Hover: what stands at a place, in words, with the figures that the model derives for it."""

from __future__ import annotations

from typing import Any

from wyeline_grammar.attributes import ACTIONS, PLACES, ROLES, SMALL_WORDS, STATEMENTS, doc_of, listed, unkeyed_at
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Feeder
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import Circuit, EquipmentStatement, FeederStatement, RacewayStatement, Statement
from wyeline_grammar.notation import NotationError, parse_legs, parse_poles, parse_run, parse_size
from wyeline_grammar.parser import parse_block
from wyeline_grammar.quantities import QuantityError, format_quantity, parse_quantity
from wyeline_grammar.syntax import Line, Phrase, Token
from wyeline_grammar.units import DIMENSIONS
from wyeline_linter.board_positions import positions_of
from wyeline_linter.claims import CLAIMS
from wyeline_linter.conductor_sizes import area_mm2
from wyeline_linter.rules.registry import all_rules
from wyeline_linter.system_words import conductor_text, pair_text
from wyeline_linter.systems import Known
from wyeline_linter.view import View
from wyeline_server import cards
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer
from wyeline_server.solved_words import equipment_lines, feeder_lines
from wyeline_server.studies import Study


def register(server: WyelineServer) -> None:
    server.on("textDocument/hover", answer)


def answer(server: WyelineServer, params: Any) -> Json | None:
    spot = server.spot(params)
    if spot is None:
        return None
    analysis = server.analysis_at(spot.path)
    view, study = (analysis.view, server.study_of(analysis)) if analysis is not None else (None, None)
    found = hover(view, spot.file.block_at(spot.line), spot.line, spot.column, study)
    if found is None:
        return None
    text, token = found
    line = spot.file.lines[spot.line]
    positions = server.session.positions
    return {
        "contents": content(server, text, "textDocument.hover.contentFormat"),
        "range": {
            "start": {"line": spot.line, "character": positions.units(line, token.start)},
            "end": {"line": spot.line, "character": positions.units(line, token.end)},
        },
    }


def content(server: WyelineServer, text: str, capability: str) -> Json:
    """Text in the first format that the client takes: Markdown, or plain."""
    formats = server.client_can(capability, ["plaintext"])
    if "markdown" in formats:
        return {"kind": "markdown", "value": text}
    plain = text.replace("**", "").replace("`", "").replace("  \n", "\n")
    return {"kind": "plaintext", "value": plain}


def hover(
    view: View | None, block: Block, line: int, column: int, study: Study | None = None
) -> tuple[str, Token] | None:
    """The text for a place of a block, and the word that it is about; None where nothing is to be said."""
    syntax = parse_block(block.lines)
    row = line - block.first_line
    if not 0 <= row < len(syntax.lines):
        return None
    parsed = syntax.lines[row]
    token, phrase = token_at(parsed, column)
    if token is None:
        return None
    asked = _Asked(view, study, block, lower_block(block.lines), parsed, row, token, phrase)
    text = asked.text()
    return (text, token) if text else None


def token_at(line: Line, column: int) -> tuple[Token | None, Phrase | None]:
    """The word at a column (or ending there), and the phrase it belongs to; None in the head."""
    found: tuple[Token | None, Phrase | None] = (None, None)
    for phrase in (None, *line.phrases):
        for token in line.head if phrase is None else phrase.tokens:
            if token.start <= column < token.end:
                return token, phrase
            if token.end == column:
                found = token, phrase
    return found


class _Asked:
    """One question about a word, with everything around it."""

    def __init__(
        self,
        view: View | None,
        study: Study | None,
        block: Block,
        statement: Statement,
        line: Line,
        row: int,
        token: Token,
        phrase: Phrase | None,
    ) -> None:
        self.view = view
        self.study = study
        self.block = block
        self.statement = statement
        self.line = line
        self.row = row
        self.token = token
        self.phrase = phrase

    @property
    def place(self) -> str | None:
        """The place whose keys and quantities hold here: a kind, ``feeder``, ``circuit``, ``project``, ``raceway``."""
        if self.line.form in ("circuit", "issue"):
            return self.line.form
        if isinstance(self.statement, EquipmentStatement):
            return self.statement.kind
        if isinstance(self.statement, FeederStatement):
            return "feeder"
        if isinstance(self.statement, RacewayStatement):
            return "raceway"
        return "project" if "Project" in type(self.statement).__name__ else None

    def text(self) -> str:
        kind, word = self.token.kind, self.token.text
        if self.line.form == "allow" and self.phrase is None and self._is_second():
            return _rule_text(word)
        if self.line.form == "claim" and self.phrase is None and self._is_second():
            return f"**{word}** — {CLAIMS[word]}" if word in CLAIMS else ""
        if self.phrase is None and self.line.form == "circuit":
            return self._circuit()
        if self.phrase is None and self.line.form == "issue":
            return f"**issue** — {SMALL_WORDS['issue'].doc}"
        if kind in ("NAME", "TEXT", "PORT"):
            return self._name()
        if kind == "VOLTAGE":
            return self._voltage()
        if kind == "KEY" or (kind == "AT" and self.phrase is not None):
            return cards.key_text(word, self.place)
        if kind == "FLAG":
            return cards.flag_text(word)
        if kind == "KIND":
            return cards.kind_text(word)
        if kind in ("ARROW", "FEEDER") and isinstance(self.statement, FeederStatement):
            return self._feeder() or f"**feeder** — {STATEMENTS['feeder'].doc}"
        if kind == "LEGS":
            return self._legs()
        if kind == "POLES":
            poles = parse_poles(word)
            neutral = " and a pole that switches the neutral" if poles.switched_neutral else ""
            return f"**{word}** — a device with {poles.count} pole{'s' if poles.count > 1 else ''}{neutral}"
        if kind in ("RUN", "SIZE"):
            return _conductor(word, kind)
        if kind == "QUANTITY":
            return self._quantity()
        return self._word()

    def _is_second(self) -> bool:
        return len(self.line.head) > 1 and self.token is self.line.head[1]

    def _word(self) -> str:
        word = self.token.text
        for table in (STATEMENTS, SMALL_WORDS, ACTIONS):
            if word in table:
                return f"**{word}** — {table[word].doc}"
        if self.phrase is not None and self.phrase.form == "key":
            return cards.key_text(self.phrase.tokens[0].text, self.place)
        doc = doc_of(word, self.place)
        return f"**{word}** — {doc}" if doc else ""

    def _name(self) -> str:
        """A name: the thing it stands for."""
        view, token = self.view, self.token
        if self.phrase is not None and self.phrase.form == "conductors":
            role = ROLES.get(token.text)
            return f"**{token.text}** — {role.doc}" if role is not None else ""
        if self.phrase is not None and self.phrase.form not in ("key", "in"):
            return ""
        name = token.text.rpartition(".")[0] if token.kind == "PORT" else token.text
        name = name.strip('"')
        if view is None:
            return ""
        if self.phrase is not None and self.phrase.form == "key" and self.phrase.tokens[0].text not in _NAMING:
            return cards.key_text(self.phrase.tokens[0].text, self.place) if name not in view.model.declared else ""
        own = isinstance(self.statement, EquipmentStatement) and self.statement.is_type
        equipment = view.equipment(name)
        if equipment is not None and not own:
            return "\n\n".join(
                (cards.equipment_card(view, equipment), *equipment_lines(self.study, equipment, view.basis))
            )
        declared = view.model.lookup(name)
        if declared is None:
            return ""
        if declared.sort == "feeder":
            feeder = view.model.feeders.get(name)
            return self._feeder_card(view, feeder) if feeder is not None else ""
        return cards.declared_card(declared)

    def _voltage(self) -> str:
        try:
            text = cards.notation_text(self.token.text)
        except NotationError as error:
            return f"{error}. Perhaps {listed([f'`{s}`' for s in error.suggestions])}." if error.suggestions else ""
        statement, view = self.statement, self.view
        if view is None or not isinstance(statement, EquipmentStatement) or statement.name is None:
            return text
        equipment = view.equipment(statement.name.text)
        state = view.state(statement.name.text)
        if equipment is None or state is None or self.phrase is not None:
            return text
        first = statement.primary is not None and statement.primary.span.start == self.token.start
        here = state.arriving if state.arriving is not None and first else state.system
        return f"{text}\n\n**Here** {cards.system_text(here, self._basis())}"

    def _feeder(self) -> str:
        feeder = self._feeder_here()
        return self._feeder_card(self.view, feeder) if feeder is not None and self.view is not None else ""

    def _feeder_card(self, view: View, feeder: Feeder) -> str:
        return "\n\n".join((cards.feeder_card(view, feeder), *feeder_lines(self.study, feeder, view.basis)))

    def _feeder_here(self) -> Feeder | None:
        if self.view is None or not isinstance(self.statement, FeederStatement) or self.statement.source is None:
            return None
        from_here = self.view.feeders_out_of(self.statement.source.name)
        return next((f for f in from_here if f.block is self.block), None)

    def _basis(self) -> str | None:
        return self.view.basis if self.view is not None else None

    def _legs(self) -> str:
        """Legs: the voltages between them at the board they are taken from."""
        legs = parse_legs(self.token.text)
        basis = self._basis()
        called = [conductor_text(leg, basis) for leg in legs]
        text = f"**[{' '.join(called)}]** — leg{'s' if len(legs) > 1 else ''} {listed(called, 'and')}"
        feeder = self._feeder_here()
        board = feeder.source.name if feeder is not None else None
        if isinstance(self.statement, EquipmentStatement) and self.statement.name is not None:
            board = self.statement.name.text
        state = self.view.state(board) if self.view is not None and board is not None else None
        if state is None or not isinstance(state.system, Known):
            return text
        system = state.system.system
        wanted = [(a, b, v) for a, b, v in system.pair_voltages() if {a, b} <= {*legs, "N"}]
        pairs = " · ".join(pair_text(*pair, basis) for pair in wanted)
        return f"{text} of `{board}`" + (f": {pairs}" if pairs else "")

    def _circuit(self) -> str:
        if self.token.kind == "LEGS":
            return self._legs()
        view, statement = self.view, self.statement
        if view is None or not isinstance(statement, EquipmentStatement) or statement.name is None:
            return ""
        board = view.equipment(statement.name.text)
        if board is None or board.block is not self.block:
            return ""
        placed = next((c for c in board.circuits if _row(c.circuit) == self.row and c.block is self.block), None)
        if placed is None:
            return ""
        text = cards.circuit_card(view, board, placed)
        others = [
            o.shown
            for position in placed.circuit.place.positions
            for o in positions_of(view, board).taken.get(position, ())
            if o.circuit is not placed
        ]
        return text + (f"\n\nAlso wanted by {listed(others, 'and')}." if others else "")

    def _quantity(self) -> str:
        try:
            quantity = parse_quantity(self.token.text)
        except QuantityError:
            return ""
        shown = self._in_other_units(quantity.value_si, quantity.dimension)
        if self.phrase is not None and self.phrase.form == "key":
            meaning = cards.key_text(self.phrase.tokens[0].text, self.place)
        else:
            place = self.place or ""
            fitting = [u for u in unkeyed_at(place) if u.accept.dimension == quantity.dimension]
            what = PLACES[place].phrase if place in PLACES else (f"`{place}`" if place else "")
            meaning = f"Of {what}: {cards.unkeyed_text(fitting[0])}" if fitting and what else ""
        return "\n\n".join(t for t in (f"**{self.token.text}**{shown}", meaning) if t)

    @staticmethod
    def _in_other_units(value_si: float, dimension: str) -> str:
        if dimension not in DIMENSIONS:
            return ""
        ways = {format_quantity(value_si, dimension, prefer=practice) for practice in ("us", "si")}
        return f" = {' = '.join(sorted(ways))}" if len(ways) > 1 else ""


_NAMING = frozenset({"like", "not-with", "standby-of", "among", "with", "at"})


def _row(circuit: Circuit) -> int:
    return circuit.place.span.line


def _rule_text(name: str) -> str:
    rule = all_rules().get(name)
    if rule is None:
        return ""
    clauses = "; ".join(f"{'NEC' if k == 'us' else 'IEC'} {v}" for k, v in rule.clause.items())
    return "\n\n".join(
        t for t in (f"**{rule.name}** · {rule.severity.word}", rule.summary, f"Why: {rule.why}", clauses) if t
    )


def _conductor(text: str, kind: str) -> str:
    """A conductor size or run: how many, and the cross-section of each in square millimetres."""
    try:
        if kind == "RUN":
            run = parse_run(text)
            count, size, protective = run.count, run.size, run.with_protective
        else:
            count, size, protective = 1, parse_size(text), False
    except NotationError:
        return ""
    try:
        mm2 = area_mm2(size.text)
    except (ValueError, KeyError):
        return ""
    area = f"{mm2:.4g} mm²" if size.system != "mm2" else ""
    named = {"awg": f"{size.text} AWG", "kcmil": size.text, "mm2": size.text}[size.system]
    words = f"**{text}** — {f'{count} conductors' if count > 1 else 'a conductor'} of {named}"
    return words + (f" ({area} each)" if area else "") + (", one of them protective" if protective else "")
