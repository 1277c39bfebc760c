"""Boards and loads whose metal parts are earthed by an electrode of their own (`earthing TT`)."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.earthing import EARTHED_APART, own_electrode
from wyeline_linter.findings import Finding, Fix, Safety, Severity, append_phrase, delete_phrase
from wyeline_linter.network import follows_grid
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.line_findings import about, line_text, wires_fix
from wyeline_linter.rules.registry import NotAccepted, rule
from wyeline_linter.sizing.writing import wires_text
from wyeline_linter.system_words import earthing_in_words
from wyeline_linter.systems import Arrangement, Known, System

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Jetty"\n  basis iec\n  revision "A"\n'
    "utility NETT 400Y/230  fault 10 kA, fault-min 6 kA, x/r 4, EARTH, source-resistance 2 ohm\n"
    "panel HV 400Y/230  bus 63 A, main 63 A, rated 15 kA\n"
    "feeder NETT -> HV  63 A 4p  4x16mm2 + PE 16mm2 Cu XLPE  10 m method C\n"
)
_TN = _SITE.replace("EARTH", "earthing TN-S")
_PIER = _TN + "panel PIER 400Y/230  bus 63 A, incomer switch, rated 10 kA{}, lug-temp 75 degC\n"
_TT = _PIER.format(", earthing TT, resistance 50 ohm")
_ROW = '  F1[L1]  16 A 1p+N curve B, rcd 30 mA  1 kW receptacle  "Berth sockets"  3G2.5mm2 Cu PVC  10 m method C\n'
_FED = "feeder HV -> PIER  32 A 4p curve C, rcd 300 mA, rcd-type S  {}  25 m method C\n"

UNFIT = rule(
    name="board-earthing-unfit",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    not_accepted=NotAccepted.UNCLEAR,
    summary="A board or load says an earthing that it cannot have, or that its supply or the code does not allow.",
    why="Whether a conductor is earthed is decided where the system is made. A board can only earth its metal parts by "
    "an electrode of its own, and faults to earth come back through that only to a system that is earthed.",
    clause={"us": "250.32(B)(1), 250.4(A)(5)", "iec": "60364-1 312.2, 60364-4-41 411.5"},
    wrong=_PIER.format(", earthing TN-S") + _ROW + _FED.format("5G10mm2 Cu XLPE"),
    right=_PIER.format("") + _ROW + _FED.format("5G10mm2 Cu XLPE"),
    mends=True,
)
UNUSED = rule(
    name="board-electrode-unused",
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="The resistance of an electrode is written where metal parts are not said to be earthed by it.",
    why="Where a PE comes along, or where the whole system is TT, this electrode decides no fault and no touch "
    "voltage: these follow from the PE, or from the `resistance` where the system is made.",
    clause={"iec": "60364-4-41 411.5"},
    wrong=_PIER.format(", resistance 50 ohm") + _ROW + _FED.format("4x10mm2 + PE 10mm2 Cu XLPE"),
    right=_PIER.format("") + _ROW + _FED.format("4x10mm2 + PE 10mm2 Cu XLPE"),
    mends=True,
)
CARRIED = rule(
    name="earth-beside-own-electrode",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="iec",
    summary="A PE or PEN comes along to a board or load whose metal parts are to have an electrode of their own.",
    why="Joined to the electrode, it brings the potential of the supply's earth to these metal parts: it is TN then, "
    "and the electrode decides nothing. A PEN whose N alone is used is no PEN.",
    clause={"iec": "60364-4-41 411.5.1"},
    wrong=_TT + _ROW + _FED.format("4x10mm2 + PE 10mm2 Cu XLPE"),
    right=_TT + _ROW + _FED.format("4x10mm2 Cu XLPE"),
    mends=True,
)
PEN = rule(
    name="pen-in-tt",
    since="0.1",
    severity=Severity.ERROR,
    scope="feeder line",
    basis="iec",
    summary="Neutral and earth run as one PEN where the system is TT.",
    why="In TT, metal parts are kept apart from the neutral: a PEN would tie them together, and carry the neutral's "
    "voltage, and that of its break, to everything one can touch.",
    clause={"iec": "60364-1 312.2.2, 60364-5-54 543.4"},
    wrong=_TT + "feeder PIER -> UV  32 A 3p curve C  3x10mm2 + PEN 10mm2 Cu XLPE  10 m method C\n"
    "panel UV 400Y/230  bus 63 A, incomer switch, rated 10 kA\n" + _FED.format("4x10mm2 Cu XLPE"),
    right=_TT + "feeder PIER -> UV  32 A 3p curve C  4x10mm2 + PE 10mm2 Cu XLPE  10 m method C\n"
    "panel UV 400Y/230  bus 63 A, incomer switch, rated 10 kA\n" + _FED.format("4x10mm2 Cu XLPE"),
    mends=True,
)
UNKNOWN = rule(
    name="own-electrode-unknown",
    since="0.1",
    severity=Severity.GAP,
    scope="equipment",
    basis="iec",
    summary="The electrode that earths the metal parts of a TT system, of a board or load, has no resistance written.",
    why="Without it nobody can tell which touch voltage stands before an RCD trips, nor how much an earth fault draws.",
    clause={"iec": "60364-4-41 411.5.3"},
    wrong=_TT.replace(", resistance 50 ohm", "") + _ROW + _FED.format("4x10mm2 Cu XLPE"),
    right=_TT + _ROW + _FED.format("4x10mm2 Cu XLPE"),
)


@UNFIT.also("equipment", said=("earthing",))
def earthing_unfit(view: View, board: Equipment) -> Iterator[Finding]:
    if board.kind not in EARTHED_APART or board.arrow:
        return
    word = board.body.text("earthing")
    if word is None:
        return
    state = view.state(board.name)
    arriving = state.arriving.system if state is not None and isinstance(state.arriving, Known) else None
    where = f"`{board.name}` says `earthing {word}`"
    if word != Arrangement.TT.value:
        what = "board" if board.kind in BOARDS else "load"
        message = f"{where}; a {what} does not make a system, so that it cannot decide this"
        needed = "`earthing TT` for an electrode of its own, or nothing here"
        change = "Leave it out, and write it at the source or transformer that makes the system."
    elif view.derivation.practice == "us":
        message = f"{where}; the NEC does not let the earth be the way back for fault current"
        needed = "an equipment grounding conductor with the feeder; electrodes besides it"
        change = "Leave it out, and bring a ground (`+ G`) with the feeder."
    elif arriving is not None and _not_earthed(arriving):
        message = f"{where}; no live conductor of its supply is earthed, and an electrode here does not earth one"
        needed = "a system with an earthed conductor, or a transformer that makes one"
        change = "Leave it out: in an IT system metal parts have electrodes anyway. Or feed it through a transformer."
    else:
        return
    own = "earthing" in board.statement.body.facts
    place = board.place_of("earthing")
    yield UNFIT.finding(
        place if own else board.place,
        message,
        found=f"supply: {earthing_in_words(arriving)}" if arriving is not None else f"`earthing {word}` on a board",
        needed=needed,
        change=change,
        subject=board.name,
        fixes=_without(board, f"Leave `earthing {word}` out"),
        clause=clause_of(view, UNFIT),
    )


def _not_earthed(system: System) -> bool:
    return not system.earthing.solid or system.frequency_hz == 0


@UNUSED.also("equipment", said=("resistance",))
def electrode_unused(view: View, board: Equipment) -> Iterator[Finding]:
    text = board.body.text("resistance")
    if text is None or board.kind not in EARTHED_APART or own_electrode(board):
        return
    own = "resistance" in board.statement.body.facts
    place = board.place_of("resistance")
    out = Fix(f"Leave `resistance {text}` out", (delete_phrase(place),), Safety.LOOK)
    alone = Fix("Write `earthing TT`", (append_phrase(board.block, place.span.line, ", earthing TT"),), Safety.LOOK)
    yield UNUSED.finding(
        place if own else board.place,
        f"`{board.name}` states an electrode of {text}, and its metal parts are not said to be earthed by it alone",
        found=f"`resistance {text}` without `earthing TT`",
        needed="`earthing TT` beside it, or no `resistance` here",
        change="Leave it out, or write `earthing TT` where no PE comes along."
        if view.derivation.practice != "us"
        else "Leave it out: in this code an electrode is no way back for fault current.",
        subject=board.name,
        fixes=((out, alone) if view.derivation.practice != "us" else (out,)) if own else (),
        clause=clause_of(view, UNUSED),
    )


@CARRIED.check
def earth_carried(view: View, line: Line) -> Iterator[Finding]:
    wiring, board = line.wiring, line.target
    if wiring.ground is None or board is None or not own_electrode(board):
        return
    if follows_grid(line.source):
        return  # what it earths hangs on the electrode of the board that it delivers to
    state = view.state(board.name)
    if state is None or not isinstance(state.system, Known):
        return
    if state.system.system.earthing.arrangement is not Arrangement.TT:
        return  # told by board-earthing-unfit
    role = wiring.ground_role or "PE"
    bare = wiring._replace(ground=None, ground_role="", cable=False)
    yield about(
        view, CARRIED, line,
        f"{line.where} brings a {role} to `{board.name}`, whose metal parts are to have an electrode of their own",
        found=f"{line_text(line)}, and `earthing TT`",
        needed="live wires and the neutral alone, or a board without `earthing TT`",
        change=f"Leave the {role} out" + (" and write the neutral as `N`" if wiring.pen else "")
        + f", or leave `earthing TT` at `{board.name}` out.",
        fixes=(
            *wires_fix(line, wires_text(bare, iec=True)),
            *_without(board, f"Leave `earthing TT` at `{board.name}` out"),
        ),
    )  # fmt: skip


def _without(board: Equipment, title: str) -> tuple[Fix, ...]:
    """The board in the supply's own system: its `earthing` left out, and its electrode, which decides nothing then."""
    facts = board.statement.body.facts
    if "earthing" not in facts:
        return ()
    edits = tuple(delete_phrase(board.place_of(key)) for key in ("earthing", "resistance") if key in facts)
    return (Fix(title, edits, Safety.LOOK),)


@PEN.check
def pen_of_feeder(view: View, line: Line) -> Iterator[Finding]:
    yield from _pen(view, line)


@PEN.also("line")
def pen_of_circuit(view: View, line: Line) -> Iterator[Finding]:
    yield from _pen(view, line)


def _pen(view: View, line: Line) -> Iterator[Finding]:
    if not line.wiring.pen or line.system.earthing.arrangement is not Arrangement.TT:
        return
    apart = line.wiring._replace(ground_role="PE", neutral=line.wiring.ground)
    yield about(
        view, PEN, line,
        f"{line.where} runs neutral and earth as one PEN in a TT system",
        found=line_text(line),
        needed="a neutral, and a PE that is tied to the electrode alone",
        change="Write `+ N` and `+ PE`.",
        fixes=wires_fix(line, wires_text(apart, iec=True)),
    )  # fmt: skip


@UNKNOWN.also("equipment", said=("earthing",))
def own_electrode_unknown(view: View, board: Equipment) -> Iterator[Finding]:
    if not own_electrode(board) or "resistance" in board.body.facts:
        return
    state = view.state(board.name)
    if state is None or not isinstance(state.system, Known):
        return
    if state.system.system.earthing.arrangement is not Arrangement.TT:
        return  # told by board-earthing-unfit
    yield UNKNOWN.finding(
        board.place_of("earthing") if "earthing" in board.statement.body.facts else board.place,
        f"`{board.name}` is earthed by an electrode of its own, whose resistance is not written",
        found="no `resistance`",
        needed=_OHMS_NEEDED,
        change="Write `resistance`, such as `resistance 50 ohm`.",
        subject=board.name,
        clause=clause_of(view, UNKNOWN),
    )


@UNKNOWN.also("source")
@UNKNOWN.also("transformer")
def electrode_of_system_unknown(view: View, maker: Equipment) -> Iterator[Finding]:
    state = view.state(maker.name)
    if state is None or state.onward is None or not isinstance(state.system, Known) or maker.damaged:
        return
    tt = state.system.system.earthing.arrangement is Arrangement.TT
    if not tt or state.onward.electrode_ohm is not None or state.onward.maker != maker.name or follows_grid(maker):
        return
    fed = [view.model.equipment.get(feeder.target.name) for feeder in view.feeders_out_of(maker.name)]
    if fed and all(target is not None and own_electrode(target) for target in fed):
        return  # each of these earths its metal parts itself
    yield UNKNOWN.finding(
        maker.place_of("earthing") if "earthing" in maker.statement.body.facts else maker.place,
        f"`{maker.name}` makes a TT system, and nothing tells the resistance of the electrode of the metal parts on it",
        found="no `resistance`",
        needed=_OHMS_NEEDED,
        change="Write `resistance`, such as `resistance 50 ohm`, here or at the declared system.",
        subject=maker.name,
        clause=clause_of(view, UNKNOWN),
    )


_OHMS_NEEDED = "its resistance as measured, or as designed: at most 50 V over the residual current of its largest RCD"
