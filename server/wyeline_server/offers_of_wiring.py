"""Devices and wires to offer on a feeder or a circuit: what suits its ends first, then what is usual."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_linter.feeding import feed_from
from wyeline_linter.sizing.plain import device_for, tables_for, wires_for
from wyeline_linter.standard_ratings import device_ratings
from wyeline_linter.verdicts import Feeds
from wyeline_linter.view import View
from wyeline_server.completion_slots import Slot, ends_in


def devices(view: View, slot: Slot, line: str) -> Iterator[tuple[str, str]]:
    """Standard ratings, with the poles that open every live wire, and why; the one that suits the far end first. Behind
    a rating that is written its poles alone."""
    if any(t.kind == "POLES" for t in slot.tokens):
        return
    poles, suited, why = _for_feeder(view, line) if slot.place == "feeder" else (None, None, "")
    if poles is None:
        listed = slot.tokens and slot.tokens[0].kind == "LIST"
        poles = len(slot.tokens[0].text.split(",")) if listed else 1
    rated = [t for t in slot.tokens if t.kind == "QUANTITY" and t.text.endswith("A")]
    if rated:
        if rated[-1] is slot.tokens[-1]:
            iec = (view.basis or "").startswith("iec")
            for many in sorted(range(1, 5), key=lambda count: count != poles):
                for more in ("", "+N") if iec and many in (1, 3) else ("",):
                    yield f"{many}p{more}", "what the device opens"
        return
    if suited is not None:
        yield f"{suited:g} A {poles}p", why
    for rating in device_ratings(tables_for(view)[0]):
        if rating != suited:
            yield f"{rating:g} A {poles}p", "a standard rating"


def _for_feeder(view: View, line: str) -> tuple[int | None, float | None, str]:
    ends = ends_in(line)
    if ends.source is None or ends.target is None:
        return None, None, ""
    state, target = view.state(ends.source), view.equipment(ends.target)
    wanted = view.derivation.stated(target.primary) if target is not None else None
    if state is None or target is None or wanted is None:
        return None, None, ""
    verdict = feed_from(state.system, wanted, stated_legs=ends.legs, is_load=False)
    if not isinstance(verdict, Feeds):
        return None, None, ""
    amps, why = device_for(view, wanted.line_v, len(verdict.best.legs), target)
    return verdict.best.live_poles, amps, why


def wires(view: View, slot: Slot, line: str) -> Iterator[tuple[str, str]]:
    """Wires that carry the device of this line, by the tables of the project's basis."""
    amps = next((t.text for t in slot.tokens if t.kind == "QUANTITY" and t.text.endswith("A")), None)
    if amps is None or any(t.kind in ("RUN", "SETS") for t in slot.tokens):
        return
    poles = next((int(t.text[0]) for t in slot.tokens if t.kind == "POLES"), 3)
    ends = ends_in(line)
    board = view.equipment(ends.target) if ends.target is not None else None
    wanted = view.derivation.stated(board.primary) if board is not None else None
    try:
        rating = float(amps.removesuffix("A").strip())
    except ValueError:
        return
    for neutral in (True, False) if wanted is None or wanted.has_neutral else (False,):
        text = wires_for(view, rating, poles, neutral, board)
        if text:
            yield text, f"carries {amps}: tables of the project's basis, one circuit in the raceway"
