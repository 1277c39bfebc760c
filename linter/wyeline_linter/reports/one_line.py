"""The model as a sketch for the one-line diagram: the words beside every symbol, and where they lead."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder, status_in
from wyeline_grammar.model import Issue
from wyeline_linter.board_positions import positions_of
from wyeline_linter.earthing import EarthingKind
from wyeline_linter.issues import NOT_YET
from wyeline_linter.network import NORMAL_STATE
from wyeline_linter.reports.columns import number, resolve
from wyeline_linter.reports.diagram.glyphs import Practice
from wyeline_linter.reports.diagram.papers import A3, PAPERS, TABLOID, SheetSize
from wyeline_linter.reports.diagram.sketch import BUSES, Device, DeviceKind, Edge, Kind, Node, Sketch, Status, Winding
from wyeline_linter.reports.diagram.title_strip import Issued, TitleBlock
from wyeline_linter.reports.largest_fault import SAME, largest_in_any_state_a
from wyeline_linter.reports.review_tables import errors_told
from wyeline_linter.reports.since import MARK, Since
from wyeline_linter.reports.subject import Subject, about_equipment, about_feeder, row_anchor
from wyeline_linter.reports.wording import notation_with_unit, poles_text, rating_lines, system_short, wires_text
from wyeline_linter.systems import NEUTRAL, Known
from wyeline_linter.verdicts import Cause, Refusal
from wyeline_linter.windings import Transformed

FAULT = "fault.largest.amps"
_LOADS = frozenset(
    {Kind.MOTOR, Kind.LOAD, Kind.CHARGER, Kind.CHARGING_POINT, Kind.CAPACITOR, Kind.SPD, Kind.METER, Kind.JUNCTION}
)
_DESCRIBED = frozenset({Kind.MOTOR, Kind.LOAD, Kind.CHARGER, Kind.CHARGING_POINT, Kind.DRIVE})
_STATUS = {"relocated": Status.EXISTING}


def one_line(subject: Subject, *, linked: bool = True, since: Since | None = None) -> Sketch:
    """The whole model as one sketch, in the order of its files; ``linked``: each element leads to its row; what is
    written otherwise than ``since`` bears a mark."""
    names = {e.name for e in subject.equipment if e.kind in list(Kind)}
    nodes = tuple(_node(subject, e) for e in subject.equipment if e.name in names)
    second = {f.subject for f in subject.analysis.findings() if f.rule == Cause.SECOND_SUPPLY.value}
    edges = tuple(
        _edge(subject, f, second) for f in subject.feeders if f.source.name in names and f.target.name in names
    )
    if not linked:
        nodes = tuple(replace(n, working="") for n in nodes)
        edges = tuple(replace(e, working="") for e in edges)
    if since is not None:
        sign = f"{MARK} {subject.revision_mark}".rstrip()
        nodes = tuple(replace(n, lines=(*n.lines, sign)) if about_equipment(n.id) in since.marked else n for n in nodes)
        edges = tuple(replace(e, lines=(*e.lines, sign)) if about_feeder(e.id) in since.marked else e for e in edges)
    return Sketch(nodes, edges, f"{subject.project}: one-line diagram")


class ToDraw(NamedTuple):
    """All that a diagram follows from."""

    sketch: Sketch
    title: TitleBlock
    size: SheetSize
    practice: Practice


def to_draw(subject: Subject, date: str, size: SheetSize, *, linked: bool = True, since: Since | None = None) -> ToDraw:
    """The one-line diagram before it is drawn, on sheets of a size."""
    changes = () if since is None else (since.told,)
    title = TitleBlock(
        subject.project,
        subject.project_text("number"),
        subject.revision,
        subject.basis_in_words,
        date,
        subject.scenario,
        (*subject.cautions, *errors_told(subject), *changes),
        subject.project_text("client"),
        subject.drawn,
        subject.checked,
        subject.project_text("engineer"),
        tuple(_issued(issue) for issue in reversed(subject.issues)),
    )
    return ToDraw(one_line(subject, linked=linked, since=since), title, size, subject.practice)


def _issued(issue: Issue) -> Issued:
    body = issue.body
    drawn, checked = (body.text(key) or "" for key in ("drawn", "checked"))
    return Issued(issue.name.text, issue.date or NOT_YET, body.description or "", drawn, checked)


def paper_of(subject: Subject, paper: str = "", lettering_mm: float | None = None) -> SheetSize:
    """The sheet by its word, else that of ``wyeline.toml``, else what is usual where the code basis is: tabloid or A3.
    ``lettering_mm``: the height of its smallest capitals, other than usual on it."""
    word = paper or subject.view.configuration.paper
    size = PAPERS[word] if word else TABLOID if subject.practice == "us" else A3
    return size if lettering_mm is None else size.lettered(lettering_mm)


def wide_paper_of(size: SheetSize) -> SheetSize:
    """What wide tables are printed on beside drawings of a size: no table needs more than A3 or tabloid."""
    return A3 if size.name.startswith("A") and size.name[1:].isdigit() else TABLOID


def _node(subject: Subject, equipment: Equipment) -> Node:
    kind = Kind(equipment.kind)
    if kind is Kind.CHARGER and "ev" in equipment.body.flags:
        kind = Kind.CHARGING_POINT
    figures = subject.of(equipment.name)
    lines = rating_lines(equipment)
    if kind in _DESCRIBED and equipment.body.description:
        lines.append(equipment.body.description)
    if equipment.status == "relocated":
        lines.append("to be relocated")
    if kind is Kind.TRANSFORMER:
        lines.insert(0, transformation(subject, equipment))
    circuits = sum(not o.empty and o.circuit is not None for o in positions_of(subject.view, equipment).occupants)
    if circuits:
        lines.append(f"{circuits} circuit{'s' if circuits > 1 else ''} of its own")
    return Node(
        equipment.name,
        kind,
        equipment.name,
        tuple(line for line in lines if line),
        _voltage(kind, figures),
        "" if kind in _LOADS or kind in (Kind.DRIVE, Kind.DISCONNECT) else fault_text(subject, equipment.name),
        _status(equipment.status),
        subject.place(equipment.place),
        f"#{row_anchor(about_equipment(equipment.name))}",
        _windings(subject, equipment) if kind is Kind.TRANSFORMER else None,
        _stands_on(subject, equipment) if kind is Kind.TRANSFER else "",
    )


def _status(word: str) -> Status:
    return _STATUS.get(word) or Status(word)


def transformation(subject: Subject, unit: Equipment) -> str:
    """Both voltages of a transformer as written: ``480 V 3ph – 208Y/120 V``."""
    figures = subject.of(unit.name)
    sides = (figures.get("arriving"), figures.get("system"))
    written = (unit.primary, unit.secondary)
    words = []
    for known, side in zip(sides, written, strict=True):
        voltage = subject.view.derivation.stated(side) if side is not None else None
        text = voltage.text if voltage is not None else known["nominal"] if known else "?"
        words.append(notation_with_unit(text))
    return " – ".join(words)


def _voltage(kind: Kind, figures: Mapping[str, Any]) -> str | None:
    """The derived voltage; nothing where the words of the symbol or its neighbours say it."""
    if figures.get("source") is None:
        return NOT_FED
    if kind in (Kind.TRANSFORMER, Kind.METER, Kind.DISCONNECT, Kind.SPD, Kind.TRANSFER, Kind.JUNCTION):
        return "" if figures.get("system") is not None else None
    return system_short(figures.get("system"))


NOT_FED = "not fed"


def fault_text(subject: Subject, name: str) -> str | None:
    """``fault 19.4 kA``, below 10 kA with two decimals; None where it is unknown, nothing where nothing feeds it.

    Where another switch state brings more, as a UPS on its bypass does, that is the figure, with the normal one behind
    it: ratings are read against it whatever the switches do.
    """
    figures = subject.of(name)
    if figures.get("source") is None:
        return ""
    value, _ = resolve(figures, FAULT)
    if not isinstance(value, float | int):
        return None
    largest = largest_in_any_state_a(subject, name)
    if largest is not None and largest > value * (1 + SAME):
        return f"fault {_kiloamperes(largest)} kA (normal {_kiloamperes(value)})"
    return f"fault {_kiloamperes(value)} kA"


def _kiloamperes(amps: float) -> str:
    return number(amps / 1e3, 2 if amps < 1e4 else 1)


def _windings(subject: Subject, unit: Equipment) -> tuple[Winding, Winding]:
    state = subject.view.state(unit.name)
    made = state.winding if state is not None else None
    if not isinstance(made, Transformed):
        return Winding(), Winding()
    first, second = _connections(made.connection)
    earthed: bool | None = None
    if second and second != "delta" and state is not None and isinstance(state.system, Known):
        earthed = state.system.system.earthing.kind is not EarthingKind.NONE
    return Winding(first), Winding(second, earthed)


def _connections(text: str) -> tuple[str, str]:
    """The marks of a connection such as ``Dyn11``; ``single`` for anything else of known make."""
    if text in _NAMED:
        return _NAMED[text]
    words = {"d": "delta", "y": "wye", "z": "zigzag"}
    letters = [c for c in text.lower() if c in words]
    if text[:1] in "DYZ" and len(letters) == 2:
        return words[letters[0]], words[letters[1]]
    return ("single", "single") if text else ("", "")


_NAMED = {"open-delta": ("delta", "delta"), "open-wye": ("wye", "delta"), "zigzag": ("zigzag", "zigzag")}


def _stands_on(subject: Subject, transfer: Equipment) -> str:
    supply = subject.view.network.supply.get(transfer.name)
    return supply.key if supply is not None else ""


def _edge(subject: Subject, feeder: Feeder, second: set[str]) -> Edge:
    model = subject.view.model
    body = feeder.body
    target = model.equipment[feeder.target.name]
    source = model.equipment[feeder.source.name]
    state = subject.view.network.state
    place = subject.place(feeder.place)
    at = feeder.statement.at
    legs = subject.of_feeder(feeder.key).get("legs")
    lines = [wires_text(body.conductors)]
    length_m = body.number("length")
    if length_m is not None:
        lines.append(subject.view.length_text(length_m))
    supplied = subject.of(source.name).get("system")
    if legs is not None and supplied is not None and len(legs) < len(supplied["conductors"]):
        live = [leg for leg in legs if leg != NEUTRAL]
        if len(live) < 3:
            lines.append(f"on {subject.legs(live if len(live) > 1 else legs)}")
    lines += _does_not_work(subject, feeder, second)
    title = f"{source.name} → {target.name}"
    if feeder.key not in (f"{feeder.source.text} -> {feeder.target.text}",):
        title = f"{feeder.key}: {title}"
    return Edge(
        feeder.key,
        source.name,
        target.name,
        feeder.source.port or "",
        feeder.target.port or "",
        _device(body.text("rating"), poles_text(body.poles), fused=_fused(body), at=at.key if at else ""),
        _main(target) if target.kind in BUSES and _arrives_at_main(subject, feeder) else None,
        tuple(line for line in lines if line),
        not state.closed(feeder),
        _is_tie(subject, source, target),
        _rank(feeder),
        _status(status_in(body.flags) or target.status),
        place,
        f"#{row_anchor(about_feeder(feeder.key))}",
        " · ".join(t for t in (title, *lines, "open" if not state.closed(feeder) else "closed") if t),
    )


def _does_not_work(subject: Subject, feeder: Feeder, second: set[str]) -> list[str]:
    """What a drawing must not hide: a connection that is refused, and a second supply that nothing keeps apart."""
    state = subject.view.feeder_state(feeder.key)
    if state is not None and isinstance(state.verdict, Refusal):
        return [REFUSED]
    return [SECOND_SUPPLY] if feeder.key in second else []


REFUSED = "cannot be connected"
SECOND_SUPPLY = "second supply"


def _arrives_at_main(subject: Subject, feeder: Feeder) -> bool:
    """Whether a feeder lands on the main: of several into one board, the one that supplies it as normal."""
    into = subject.view.feeders_into(feeder.target.name)
    supply = subject.view.network_in(NORMAL_STATE).supply.get(feeder.target.name)
    return len(into) < 2 or supply is None or supply is feeder


def _is_tie(subject: Subject, source: Equipment, target: Equipment) -> bool:
    """Whether a feeder joins two boards of which, as the switches normally stand, neither feeds the other."""
    if Kind(source.kind) not in BUSES or Kind(target.kind) not in BUSES:
        return False
    network = subject.view.network_in(NORMAL_STATE)
    above, below = set(network.above(target.name)), set(network.above(source.name))
    return network.fed(source.name) and network.fed(target.name) and not (source.name in above or target.name in below)


def _fused(body: Any) -> bool:
    return "fuse" in body.facts or "fused" in body.flags


def _device(rating: str | None, poles: str, *, fused: bool, at: str = "") -> Device | None:
    if rating is None:
        return None
    words = [f"{rating} {poles}".strip()]
    if at:
        words.append(f"at {at}")
    return Device(DeviceKind.FUSE if fused else DeviceKind.BREAKER, tuple(words))


def _main(board: Equipment) -> Device | None:
    """The main of a board, at the end of the feeder that arrives there."""
    body = board.body
    for key in ("main", "incomer"):
        if body.number(key) is not None:
            words = (str(body.text(key)),)
            return Device(DeviceKind.FUSE if "fused" in body.flags else DeviceKind.BREAKER, words)
    if "switch" in (body.text("incomer") or body.text("main") or ""):
        return Device(DeviceKind.SWITCH, ())
    return None


def _rank(feeder: Feeder) -> float:
    at = feeder.statement.at
    if at is None:
        return 0.0
    if at.positions:
        return float(at.positions[0])
    digits = "".join(c for c in at.label or "" if c.isdigit())
    return float(digits) if digits else 0.0
