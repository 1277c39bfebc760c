"""What equipment that stands outdoors is enclosed in."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.view import View

_SITE = (
    'project "Boat shed"\n  basis us-2023\n  frequency 60 Hz, revision "A"\n'
    "utility UTIL 208Y/120  fault 10 kA, fault-min 6 kA, x/r 4\n"
    "panel SP-1 208Y/120  bus 125 A, main 100 A, rated 22 kA, spaces 24, service-equipment, lug-temp 75 degC, outdoor, "
    "enclosure {}\n"
    "feeder UTIL -> SP-1  3#1 + N #1 Cu THWN-2  10 m  in 1-1/2 inch EMT\n"
)
_OUTDOORS = frozenset(f"NEMA-{kind}" for kind in "3 3R 3S 3X 3RX 3SX 4 4X 6 6P".split())
_INDOORS = frozenset(f"NEMA-{kind}" for kind in "1 2 5 12 12K 13".split())
"""The columns of NEC Table 110.28, from memory; it lists neither types for hazardous locations nor IP codes."""
_LISTED_KINDS = BOARDS | {"meter", "disconnect", "transfer", "drive", "transformer", "junction"}
"""What NEC 110.28 names, as far as the language has a kind for it (from memory)."""
_LISTED_TO_V = 1000.0
_SPRAY = 3
"""Second numeral of assemblies outdoors without a roof of their own (IEC 61439-1 8.2.2, from memory)."""

OUTDOORS = rule(
    name="enclosure-not-for-outdoors",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="both",
    summary="Equipment that stands outdoors has an enclosure that is made for indoors.",
    why="Rain and spray reach live parts through an enclosure that is not made for them.",
    clause={"us": "Table 110.28", "iec": "61439-1 8.2.2"},
    wrong=_SITE.format("NEMA-1"),
    right=_SITE.format("NEMA-3R"),
    mends=True,
)


@OUTDOORS.also("equipment", said=("enclosure",))
def enclosed_outdoors(view: View, equipment: Equipment) -> Iterator[Finding]:
    """Under US practice a type of NEMA 250, under IEC practice the IP code of a board: each code judges its own."""
    body = equipment.body
    fact = body.facts.get("enclosure")
    if fact is None or "outdoor" not in body.flags:
        return
    written, name = str(fact.value.data), equipment.name
    if view.basis == "iec":
        if equipment.kind not in BOARDS or not written.startswith("IP") or not written[3].isdigit():
            return
        if int(written[3]) >= _SPRAY:
            return
        needed, better = f"an IP code whose second numeral is {_SPRAY} or more", f"{written[:3]}4"
    else:
        state = view.state(name)
        system = state.arriving if state is not None else None
        volts = max((v for *_, v in system.system.pair_voltages()), default=0.0) if isinstance(system, Known) else 0.0
        if equipment.kind not in _LISTED_KINDS or written not in _INDOORS or volts > _LISTED_TO_V:
            return
        types = sorted(kind.removeprefix("NEMA-") for kind in _OUTDOORS)
        needed, better = f"a type for outdoors ({', '.join(types)})", "NEMA-3R"
    place = equipment.place_of("enclosure")
    yield OUTDOORS.finding(
        place,
        f"`{name}` stands outdoors in an enclosure {written}, which is made for indoors",
        found=f"`outdoor` and `enclosure {written}`",
        needed=needed,
        change=f"Choose an enclosure for its place, such as {better}, or take `outdoor` away where it stands inside.",
        subject=name,
        fixes=(Fix(f"Make its enclosure {better}", (replace(place, f"enclosure {better}"),), Safety.LOOK),),
        clause=clause_of(view, OUTDOORS),
    )
