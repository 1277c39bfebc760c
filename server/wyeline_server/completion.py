"""Completion: the words that fit at the cursor, and for feeders every partner with what it gives or why it cannot."""

from __future__ import annotations

import re
from collections.abc import Iterable
from itertools import chain, islice
from typing import Any

from wyeline_grammar.tokens import spelled
from wyeline_server import cards
from wyeline_server.completion_slots import slot_at
from wyeline_server.hover import content
from wyeline_server.offers import Offers
from wyeline_server.positions import Json
from wyeline_server.server import WyelineServer
from wyeline_server.trade_offers import by_trade_terms

MOST = 500
"""More are not sent: the list is marked incomplete, so that the client asks again with more letters."""
_QUIET_ON_BLANK = frozenset({"statement", "detail", "phrase", "nothing"})
"""Where a blank alone brings no list: anything might come next."""


def register(server: WyelineServer) -> None:
    server.on("textDocument/completion", answer)
    server.on("completionItem/resolve", resolve)


def answer(server: WyelineServer, params: Any) -> Json | None:
    spot = server.spot(params)
    if spot is None:
        return None
    slot = slot_at(spot.file.lines, spot.line, spot.column)
    context = params.get("context") or {}
    if context.get("triggerCharacter") == " " and slot.what in _QUIET_ON_BLANK:
        return None
    analysis = server.analysis_at(spot.path)
    offers = Offers(analysis, spot, slot)
    items, complete = chosen(chain(offers.all(), by_trade_terms(slot)), slot.prefix)
    snippets = bool(server.client_can("textDocument.completion.completionItem.snippetSupport", False))
    line = spot.file.lines[spot.line]
    range_ = {
        "start": {"line": spot.line, "character": server.session.positions.units(line, slot.start)},
        "end": {"line": spot.line, "character": server.session.positions.units(line, spot.column)},
    }
    return {
        "isIncomplete": not complete,
        "items": [_finished(item, number, range_, spot.path, snippets) for number, item in enumerate(items)],
    }


def chosen(items: Iterable[Json], prefix: str) -> tuple[list[Json], bool]:
    """The items that what is typed may become, and whether these are all."""
    folded = prefix.casefold()
    fitting = (item for item in items if folded in item["label"].casefold())
    found = list(islice(fitting, MOST + 1))
    return found[:MOST], len(found) <= MOST


def _finished(item: Json, number: int, range_: Json, path: str, snippets: bool) -> Json:
    new = item.pop("insertText", item["label"])
    if item.pop("isName", False):
        new = spelled(new)
    if "${" in new:
        if snippets:
            item["insertTextFormat"] = 2
        else:
            new = plain(new)
    item["textEdit"] = {"range": range_, "newText": new}
    item["sortText"] = f"{number:04}"
    if "data" in item:
        item["data"]["path"] = path
    return item


def plain(snippet: str) -> str:
    """A snippet without its stops, for clients that know none."""
    return re.sub(r"\$\{\d+:([^}]*)\}", r"\1", snippet).replace("$0", "")


def resolve(server: WyelineServer, item: Any) -> Any:
    """The long text of an item, made when the client looks at it."""
    data = item.get("data") if isinstance(item, dict) else None
    if not isinstance(data, dict):
        return item
    text = ""
    if data.get("sort") == "name":
        analysis = server.analysis_at(str(data.get("path", "")))
        equipment = analysis.view.equipment(data["word"]) if analysis is not None else None
        declared = analysis.model.lookup(data["word"]) if analysis is not None else None
        if analysis is not None and equipment is not None:
            text = cards.equipment_card(analysis.view, equipment)
        elif declared is not None:
            text = cards.declared_card(declared)
    elif data.get("sort") == "key":
        text = cards.key_text(data["word"], data.get("place") or None)
    elif data.get("sort") == "kind":
        text = cards.kind_text(data["word"])
    if text:
        item["documentation"] = content(server, text, "textDocument.completion.completionItem.documentationFormat")
    return item
