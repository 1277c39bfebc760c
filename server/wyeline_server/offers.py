"""What may stand at the cursor: offers for each slot of a line, from the language's tables and from the model."""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import date

from wyeline_grammar.attributes import (
    ACTIONS,
    FLAGS,
    KEYS,
    KINDS,
    ROLES,
    SMALL_WORDS,
    STATEMENTS,
    Accept,
    doc_of,
    use_of,
)
from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.model import End, EquipmentStatement
from wyeline_grammar.sources import workspace_of
from wyeline_grammar.tokens import spelled
from wyeline_grammar.vocabulary import BOARDS, SOURCES
from wyeline_linter import partners
from wyeline_linter.analysis import Analysis
from wyeline_linter.board_positions import positions_of
from wyeline_linter.claims import CLAIMS
from wyeline_linter.network import has_bypass
from wyeline_linter.rules.registry import all_rules
from wyeline_linter.system_words import conductors_text
from wyeline_server import cards
from wyeline_server.completion_slots import NAMING, Slot, ends_in
from wyeline_server.include_graph import wye_files
from wyeline_server.offer_order import flags_in_order, keys_in_order, quantities
from wyeline_server.offers_of_wiring import devices, wires
from wyeline_server.positions import Json
from wyeline_server.server import Spot

MOST_FILES = 500
CIRCUIT_FORM = '${1:1}  ${2:20 A} 1p  ${3:1.2 kVA} ${4:receptacle}  "${5:Circuit}"'
"""How a circuit is written, with stops."""
_CLASS, _KEYWORD, _PROPERTY, _FLAG, _NAME, _VALUE, _SNIPPET, _FILE, _UNIT = 7, 14, 10, 20, 6, 12, 15, 17, 11
"""Kinds of items in the protocol, so that editors draw their signs."""


class Offers:
    """Everything that may stand in a slot, best first. ``analysis`` is None where no model can be made of the file."""

    def __init__(self, analysis: Analysis | None, spot: Spot, slot: Slot) -> None:
        self.analysis = analysis
        self.view = analysis.view if analysis is not None else None
        self.spot = spot
        self.slot = slot
        self.line = spot.file.lines[spot.line]

    def all(self) -> Iterator[Json]:
        offers = getattr(self, f"_{self.slot.what}", None)
        if offers is not None:
            yield from offers()

    # statements

    def _statement(self) -> Iterator[Json]:
        for word in STATEMENTS.values():
            yield _item(word.word, _SNIPPET, word.doc, word.snippet)
        yield from self._kind(snippets=True)

    def _kind(self, *, snippets: bool = False) -> Iterator[Json]:
        for kind in KINDS.values():
            data = {"sort": "kind", "word": kind.word}
            yield _item(kind.word, _CLASS, kind.doc, kind.snippet if snippets else kind.word, data)

    def _include(self) -> Iterator[Json]:
        """The files of the model's folder, relative to this one."""
        here = os.path.dirname(self.spot.path)
        for path in wye_files(workspace_of(self.spot.path))[:MOST_FILES]:
            if path != self.spot.path:
                yield _item(os.path.relpath(path, here).replace(os.sep, "/"), _FILE, "a file of this folder")

    # feeders

    def _source(self) -> Iterator[Json]:
        if self.view is not None:
            found = partners.sources(self.view, ends_in(self.line).target)
            yield from self._partners(found, leaving=True)

    def _target(self) -> Iterator[Json]:
        ends = ends_in(self.line)
        if self.view is not None and ends.source is not None:
            yield from self._partners(partners.targets(self.view, ends.source, ends.legs), leaving=False)

    def _arrow(self) -> Iterator[Json]:
        yield _item("->", _KEYWORD, "feeds")

    def _partners(self, found: list[partners.Partner], *, leaving: bool) -> Iterator[Json]:
        """Partners, each with the ends that have names of their own: the inputs of a transfer switch before itself."""
        for partner in found:
            ends = partners.ports(self.view, partner.name, leaving=leaving) if self.view is not None else []
            named = [_item(f"{spelled(partner.name)}.{port}", _NAME, f"{partner.kind} · {doc}") for port, doc in ends]
            whole = [self._partner(partner)]
            yield from [*whole, *named] if leaving else [*named, *whole]

    def _partner(self, partner: partners.Partner) -> Json:
        fits = partner.rank in (partners.Rank.FITS, partners.Rank.FED_ALREADY)
        detail = partner.reason if partner.rank is not partners.Rank.CANNOT else f"cannot: {partner.reason}"
        item = self._named(partner.name, f"{partner.kind} · {detail}")
        if not fits:
            item["kind"] = _VALUE
        return item

    def _named(self, name: str, detail: str) -> Json:
        item = _item(name, _NAME, detail, data={"sort": "name", "word": name})
        item["isName"] = not self.slot.quoted  # quotes where it needs them are set for what is sent
        return item

    def _legs(self) -> Iterator[Json]:
        if self.slot.place == "circuit":
            yield from self._legs_of_a_circuit()
            return
        ends = ends_in(self.line)
        if self.view is None or ends.source is None:
            return
        for legs, voltage in partners.leg_choices(self.view, ends.source, ends.target):
            if set(legs) <= {"A", "B", "C", "N"}:
                called = conductors_text(legs, self.view.basis)
                joined = called if "N" in legs or "L" in called else "".join(legs)
                yield _item(f"{joined}]", _VALUE, voltage)

    def _legs_of_a_circuit(self) -> Iterator[Json]:
        board = self._board()
        legs = positions_of(self.view, board).legs if self.view is not None and board is not None else ()
        if self.view is None or not legs:
            return
        for some in (*((leg,) for leg in legs), *((legs,) if len(legs) > 1 else ())):
            called = conductors_text(some, self.view.basis)
            joined = called if "L" in called else "".join(some)
            yield _item(f"{joined}]", _VALUE, "one leg of the board" if len(some) == 1 else "all legs of the board")

    # equipment

    def _sides(self) -> Iterator[Json]:
        """Systems declared, voltages in use in this model, then the phrases that may stand here too."""
        if self.view is not None:
            for declared in self.view.model.declared_of("system"):
                yield self._named(declared.name, "a declared system")
            seen = {
                side.voltage.text
                for equipment in self.view.model.equipment.values()
                for side in (equipment.primary, equipment.secondary)
                if side is not None and side.voltage is not None
            }
        else:
            seen = set()
        for text in [*sorted(seen), *(v for v in self._usual() if v not in seen)]:
            yield _item(text, _VALUE, cards.notation_text(text))
        if not any(t.kind == "ARROW" for t in self.slot.tokens):
            if KINDS[self.slot.place].sides in ("two", "either") and any(t.kind == "VOLTAGE" for t in self.slot.tokens):
                yield from self._arrow()
            yield from self._phrase()

    def _usual(self) -> tuple[str, ...]:
        basis = (self.view.basis if self.view is not None else None) or "us"
        return _IEC_VOLTAGES if basis.startswith("iec") else _US_VOLTAGES

    # phrases

    def _detail(self) -> Iterator[Json]:
        place = self.slot.place
        if place == "scenario":
            for word in ACTIONS.values():
                yield _item(word.word, _KEYWORD, word.doc, word.snippet)
            yield _small("allow")
            return
        if place in BOARDS:
            yield from self._circuits()
        if place == "project":
            yield _small("issue")
        yield _small("allow")
        yield _small("claim")
        if place in KINDS or place in ("feeder", "project", "raceway"):
            yield from self._words(place)

    def _circuits(self) -> Iterator[Json]:
        """A circuit on each free position, lowest first."""
        board = self._board()
        if board is None or self.view is None:
            return
        known = positions_of(self.view, board)
        for poles, many in ((1, 6), (2, 3), (3, 2)):
            if poles > max(len(known.legs), 1):
                break
            for count, run in enumerate(known.free_runs(poles)):
                if count >= many:
                    break
                where = ",".join(map(str, run))
                legs = conductors_text(known.numbering.legs(run, known.legs), self.view.basis)
                detail = f"free, {'leg' if poles == 1 else 'legs'} {legs}" if legs else "free"
                snippet = CIRCUIT_FORM.replace("${1:1}", where).replace("1p", f"{poles}p")
                yield _item(where, _SNIPPET, detail, snippet)

    def _board(self) -> Equipment | None:
        """The board in whose block the line stands."""
        block = self.spot.file.block_at(self.spot.line)
        statement = lower_block(block.lines)
        if self.view is None or not isinstance(statement, EquipmentStatement) or statement.name is None:
            return None
        board = self.view.equipment(statement.name.text)
        return board if board is not None and board.block is block else None

    def _day(self) -> Iterator[Json]:
        """The day of an issue: an issue that is being written goes out today, or has no date yet."""
        yield _item(date.today().isoformat(), _VALUE, "today")
        yield from self._phrase()

    def _phrase(self) -> Iterator[Json]:
        place = self.slot.place
        if self.view is not None and place in ("feeder", "circuit"):
            yield from (_item(text, _UNIT, doc) for text, doc in devices(self.view, self.slot, self.line))
        if self.view is not None and place == "feeder":
            yield from (_item(text, _VALUE, doc) for text, doc in wires(self.view, self.slot, self.line))
        for example, doc in quantities(place, self.slot.tokens):
            yield _item(example, _UNIT, doc)
        yield from self._words(place)

    def _words(self, place: str) -> Iterator[Json]:
        """The keys and flags that fit, those left out that stand in the line already."""
        written = {t.text for t in self.slot.tokens}
        early, late = flags_in_order(place)
        yield from (_item(flag, _FLAG, FLAGS[flag].doc) for flag in early if flag not in written)
        for key in keys_in_order(place):
            if key in written or key == "at":
                continue
            use = use_of(place, key)
            example = use.examples[0] if use is not None and use.examples else f"{key} "
            value = example.removeprefix(key).strip()
            doc = doc_of(key, place) or KEYS[key].doc
            snippet = f"{key} ${{1:{value}}}" if value else f"{key} "
            yield _item(key, _PROPERTY, doc, snippet, {"sort": "key", "word": key, "place": place})
        for flag in late:
            if flag not in written:
                yield _item(flag, _FLAG, FLAGS[flag].doc)
        small = {"feeder": ("in", "at", "assume"), "circuit": ("in", "leg", "assume"), "issue": ()}.get(
            place, ("assume",)
        )
        for word in small:
            if word not in written or word == "assume":
                yield _small(word)

    def _value(self) -> Iterator[Json]:
        """What may stand behind a key."""
        key, place = self.slot.key, self.slot.place
        if key in NAMING:
            yield from self._names_for(key)
            return
        if key == "at":
            yield from self._places()
            return
        use = use_of(place, key)
        if use is None:
            return
        words = [item for accept in use.accepts for item in self._accepted(accept)]
        yield from words
        offered = {item["label"] for item in words}
        for example in use.examples:
            if (text := example.removeprefix(key).strip()) not in offered:
                yield _item(text, _UNIT, "an example")

    def _accepted(self, accept: Accept) -> Iterator[Json]:
        if accept.form == "word":
            for word in accept.words:
                yield _item(word, _FLAG, doc_of(word) or "")
        elif accept.form == "voltage":
            yield from (_item(text, _VALUE, cards.notation_text(text)) for text in self._usual())
        elif accept.form in ("name", "names") and self.view is not None:
            yield from (self._named(e.name, e.kind) for e in self.view.model.equipment.values())

    def _names_for(self, key: str) -> Iterator[Json]:
        if self.view is None:
            return
        if key == "like":
            for declared in self.view.model.declared_of("type"):
                if declared.kind == self.slot.place:
                    yield self._named(declared.name, f"type {declared.kind}")
            return
        taken = {t.text.strip('"') for t in self.slot.tokens}
        for equipment in sorted(self.view.model.equipment.values(), key=lambda e: e.name):
            if equipment.name not in taken:
                yield self._named(equipment.name, equipment.kind)

    def _places(self) -> Iterator[Json]:
        """Free positions of the board that the feeder leaves."""
        ends = ends_in(self.line)
        board = self.view.equipment(ends.source) if self.view is not None and ends.source is not None else None
        if self.view is None or board is None or board.kind not in BOARDS:
            return
        known = positions_of(self.view, board)
        poles = next((int(t.text[0]) for t in self.slot.tokens if t.kind == "POLES"), 1)
        wanted = frozenset(ends.legs) - {"N"} if ends.legs is not None else None
        for count, run in enumerate(known.free_runs(poles, wanted)):
            if count >= 20:
                return
            legs = conductors_text(known.numbering.legs(run, known.legs), self.view.basis)
            yield _item(",".join(map(str, run)), _VALUE, f"free, legs {legs}" if legs else "free")

    def _measure(self) -> Iterator[Json]:
        for measure, limit in (("fault", "10 kA"), ("drop", "3 %"), ("loading", "80 %"), ("unbalance", "2 %")):
            yield _item(f"{measure} <= {limit}", _SNIPPET, "what must hold", f"{measure} <= ${{1:{limit}}}")
        yield _item("voltage >= 95 %", _SNIPPET, "what must hold", "voltage >= ${1:95 %}")

    def _raceway(self) -> Iterator[Json]:
        if self.view is not None:
            for declared in self.view.model.declared_of("raceway"):
                yield self._named(declared.name, "a raceway of this model")
        yield _item("2 inch EMT", _SNIPPET, "a raceway by its size and stuff", "${1:2 inch} ${2:EMT}")

    def _role(self) -> Iterator[Json]:
        for role in ROLES.values():
            yield _item(role.word, _KEYWORD, role.doc, role.snippet)

    # allowances, claims, scenarios, expectations

    def _rule(self) -> Iterator[Json]:
        found_here = self._rules_found_here()
        for name, rule in sorted(all_rules().items(), key=lambda r: (r[0] not in found_here, r[0])):
            if name != "allowance-unused":
                said = "found here · " if name in found_here else ""
                yield _item(name, _VALUE, said + rule.summary, f'{name} "${{1:reason}}"')

    def _rules_found_here(self) -> set[str]:
        block = self.spot.file.block_at(self.spot.line)
        findings = self.analysis.findings() if self.analysis is not None else []
        return {f.rule for f in findings if f.place.block is block}

    def _claim(self) -> Iterator[Json]:
        for name, doc in CLAIMS.items():
            yield _item(name, _VALUE, doc)

    def _action(self) -> Iterator[Json]:
        view, verb = self.view, self.slot.key
        if view is None:
            return
        if verb == "switch":
            for equipment in view.model.equipment.values():
                if equipment.kind == "transfer" or has_bypass(view.model, equipment):
                    for port, doc in KINDS[equipment.kind].ports:
                        yield _item(f"{spelled(equipment.name)}.{port}", _NAME, doc)
        elif verb in ("open", "close"):
            for key, feeder in sorted(view.model.feeders.items()):
                text = spelled(key) if feeder.statement.label is not None else _ends_text(feeder)
                yield _item(text, _NAME, "stands open as normal" if feeder.normally_open else "feeder")
        else:
            for equipment in sorted(view.model.equipment.values(), key=lambda e: e.name):
                if verb not in ("on", "off") or equipment.kind in SOURCES:
                    yield self._named(equipment.name, equipment.kind)

    def _subject(self) -> Iterator[Json]:
        if self.view is not None:
            for equipment in sorted(self.view.model.equipment.values(), key=lambda e: e.name):
                yield self._named(equipment.name, equipment.kind)
        yield _small("all")

    def _scenario(self) -> Iterator[Json]:
        for _, statement in self.view.model.scenarios if self.view is not None else ():
            if statement.name is not None:
                yield _item(f'"{statement.name.text}"', _NAME, statement.title or "a scenario")


_US_VOLTAGES = ("480Y/277", "208Y/120", "120/240", "480 3ph", "240 3ph", "240/120 3ph", "208Y/120 1ph", "480 1ph")
_IEC_VOLTAGES = ("400Y/230", "400 3ph", "230 1ph", "230 3ph", "690 3ph", "10 kV 3ph", "20 kV 3ph")


def _ends_text(feeder: Feeder) -> str:
    def end(of: End) -> str:
        return spelled(of.name) if of.port is None else f"{spelled(of.name)}.{of.port}"

    return f"{end(feeder.source)} -> {end(feeder.target)}"


def _small(word: str) -> Json:
    return _item(word, _KEYWORD, SMALL_WORDS[word].doc, SMALL_WORDS[word].snippet)


def _item(label: str, kind: int, detail: str, insert: str | None = None, data: Json | None = None) -> Json:
    made: Json = {"label": label, "kind": kind, "detail": detail}
    if insert is not None and insert != label:
        made["insertText"] = insert
    if data is not None:
        made["data"] = data
    return made
