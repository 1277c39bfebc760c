"""What is written about devices, wires and raceways, in the words of a schedule."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from wyeline_grammar.attributes import LOAD_CLASSES
from wyeline_grammar.linking import Equipment, status_in
from wyeline_grammar.model import Body, Conductors, Raceway
from wyeline_grammar.notation import ConductorSize, Poles
from wyeline_linter.earthing import own_electrode
from wyeline_linter.reports.diagram.sketch import KIND_WORDS, Kind

STATUS_LETTERS = {"existing": "E", "new": "N", "future": "F", "temporary": "T", "relocated": "R", "demolish": "D"}
STATUS_LEGEND = "E existing, N new, F future, T temporary, R to be relocated, D to be demolished"
STATUS_NOTE = f"Status: {STATUS_LEGEND}; without a letter new."
_REMARKS = (
    "gfci",
    "afci",
    "rdc-dd",
    "tied",
    "isolated-ground",
    "emergency",
    "legally-required",
    "critical",
    "spare",
    "space",
)


def kind_text(kind: str) -> str:
    """A kind of equipment as people read it: ``transfer switch`` for ``transfer``."""
    return KIND_WORDS.get(Kind(kind), kind) if kind in list(Kind) else kind


def poles_text(poles: Poles | None) -> str:
    """``3P`` or ``3P+N``."""
    if poles is None:
        return ""
    return f"{poles.count}P{'+N' if poles.switched_neutral else ''}"


def device_text(body: Body) -> str:
    """``70 A 3P fuse E`` as written, in one style."""
    rating = body.text("rating")
    if rating is None:
        return ""
    words = [rating]
    if body.poles is not None:
        words.append(poles_text(body.poles))
    fuse = body.text("fuse")
    if fuse is not None or "fused" in body.flags:
        words.append(f"fuse {fuse}" if fuse else "fuse")
    curve = body.text("curve")
    if curve is not None:
        words.append(f"curve {curve}")
    return " ".join(words)


def size_text(size: ConductorSize) -> str:
    """``#4/0``, ``250 kcmil``, ``95 mm²``."""
    return f"#{size.text}" if size.system == "awg" else size.text.replace("mm2", "mm²")


def run_text(conductors: Conductors) -> str:
    """The run alone: ``3#4/0``, ``3x250 kcmil``, ``5G16 mm²``."""
    run = conductors.run
    between = "" if run.size.system == "awg" else "G" if run.with_protective else "x"
    return f"{run.count}{between}{size_text(run.size)}"


def wires_text(conductors: Conductors | None) -> str:
    """All conductors: ``2 sets 3#4/0 + G #2 Cu THWN-2``."""
    if conductors is None:
        return ""
    parts = [run_text(conductors), *(f"{role} {size_text(size)}" for role, size in conductors.extras)]
    sets = f"{conductors.sets} sets " if conductors.sets > 1 else ""
    return " ".join([sets + " + ".join(parts), *conductors.marks])


def extra_text(conductors: Conductors | None, roles: frozenset[str]) -> str:
    """The sizes of the conductors of some roles: ``#2``, or ``N #2`` where the role is not the first one's."""
    if conductors is None:
        return ""
    return ", ".join(f"{role} {size_text(size)}" for role, size in conductors.extras if role in roles)


def shared_wires(body: Body) -> str:
    """``with 19`` for a circuit that runs in the wires of another."""
    other = body.text("with")
    return f"with {other}" if other else ""


def rating_text(body: Body) -> str:
    """What fault current a board is made for: ``22 kA``, ``10 kA, series 22 kA``."""
    parts = [f"{key} {text}" for key in ("rated", "series", "withstand", "peak") if (text := body.text(key))]
    return ", ".join(parts).removeprefix("rated ")


def raceway_text(raceway: Raceway | None) -> str:
    """``2 inch EMT``, or the name of a shared raceway."""
    if raceway is None:
        return ""
    return raceway.stuff if raceway.trade_size is None else f"{raceway.trade_size} {raceway.stuff}"


def laying_text(body: Body) -> str:
    """How a run is laid, as far as it bears on what its wires carry."""
    words = []
    for key, text in (
        ("method", "method {}"),
        ("ambient", "{}"),
        ("grouped", "{} grouped"),
        ("buried", "buried {}"),
        ("rooftop", "rooftop {}"),
        ("soil", "soil {}"),
    ):
        written = body.text(key)
        if written is not None:
            words.append(text.format(written))
    return ", ".join(words)


def class_of(body: Body) -> str:
    """The class of a load, with ``continuous`` where that is said."""
    words = [flag for flag in body.flags if flag in LOAD_CLASSES]
    return ", ".join([*words, *(["continuous"] if "continuous" in body.flags else [])])


def remarks_of(body: Body) -> list[str]:
    """What a schedule notes beside a circuit."""
    notes = [flag for flag in _REMARKS if flag in body.flags]
    rcd = body.text("rcd")
    if rcd is not None:
        kind = body.text("rcd-type")
        notes.append(f"RCD {rcd}" + (f" type {kind}" if kind else ""))
    note = body.text("note")
    return [*notes, note] if note else notes


def status_of(body: Body) -> str:
    """The letter of a status; nothing where none is written."""
    return STATUS_LETTERS.get(status_in(body.flags) or "", "")


def system_short(system: Mapping[str, Any] | None) -> str | None:
    """The nominal voltage of a system of the figures with its unit: ``480Y/277 V``, ``12.47Y/7.2 kV``."""
    return None if system is None else notation_with_unit(str(system["nominal"]))


def notation_with_unit(text: str) -> str:
    """``480Y/277`` becomes ``480Y/277 V``; a notation that names its unit stays."""
    if "V" in text:
        return text
    match = re.match(r"[\d.Y/-]+", text)
    return f"{match[0]} V{text[match.end() :]}" if match else text


def location_text(body: Body) -> str:
    """Where equipment stands, and whether that is outdoors."""
    return ", ".join(text for text in (body.text("location"), "outdoors" if "outdoor" in body.flags else "") if text)


def enclosure_text(body: Body) -> str:
    """``NEMA type 3R`` or ``IP54``, as schedules write them."""
    return (body.text("enclosure") or "").replace("NEMA-", "NEMA type ")


def main_text(body: Body) -> str:
    """The main of a board in words: ``main 400 A``, ``main lugs``, or its incomer."""
    main, incomer = body.text("main"), body.text("incomer")
    if main is not None:
        return f"main {main}"
    return f"incomer {incomer}" if incomer is not None else ""


def rating_lines(equipment: Equipment) -> list[str]:
    """The ratings of a piece of equipment as it says them, a line each."""
    body = equipment.body
    power = body.text("power") or body.text("capacity")
    rating = " ".join(t for t in (body.text("rating"), poles_text(body.poles)) if t)
    bus = f"{body.text('bus')} bus" if body.text("bus") else ""
    label = [f"{key.upper()} {text}" for key in ("mca", "mocp") if (text := body.text(key))]
    rows = [
        ", ".join(t for t in (power, rating) if t),
        ", ".join(label),
        ", ".join(t for t in (bus, main_text(body)) if t),
        f"rated {body.text('rated')}" if body.text("rated") else "",
        f"Z {body.text('z')}" if body.text("z") else "",
        electrode_text(equipment),
    ]
    return [row for row in rows if row]


def electrode_text(equipment: Equipment) -> str:
    """The electrode that a board's metal parts are earthed by alone: ``TT, own electrode 50 ohm``."""
    if not own_electrode(equipment):
        return ""
    return f"TT, own electrode {equipment.body.text('resistance') or 'of unknown resistance'}"
