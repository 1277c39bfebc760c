"""Large devices: ground faults, arc energy; and selectivity where lives hang on the supply."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place
from wyeline_grammar.model import Body
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.findings import Finding, Fix, Safety, Severity, append_phrase
from wyeline_linter.network import in_order
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known, System
from wyeline_linter.tables import Looked

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LARGE = (
    'project "Annex"\n  basis us-2023\nutility UTIL 480Y/277  fault 30 kA, fault-min 20 kA, x/r 6\nfeeder UTIL -> MSB\n'
)
GFPE = rule(
    name="ground-fault-protection-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="us",
    summary="A device of 1000 A or more on a solidly grounded wye above 150 V to ground lacks ground-fault protection.",
    why="At 480Y/277 V a burning earth fault may never trip an ordinary breaker of 1000 A.",
    clause={"us": "230.95, 215.10, 210.13, 240.13"},
    wrong=_LARGE + "switchboard MSB 480Y/277  bus 1000 A, main 1000 A\n",
    right=_LARGE + "switchboard MSB 480Y/277  bus 1000 A, main 1000 A, gfpe, gfpe-pickup 800 A\n",
    mends=True,
)
ARC = rule(
    name="arc-energy-reduction-missing",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    basis="us",
    summary="A device of 1200 A or more has no documented way to clear an arc faster while people work.",
    why="The larger the device, the longer an arc may burn before it opens; big ones need a mode for work.",
    clause={"us": "240.87, 240.67"},
    wrong=_LARGE + "switchboard MSB 480Y/277  bus 1200 A, main 1200 A, gfpe, gfpe-pickup 800 A\n",
    right=_LARGE + "switchboard MSB 480Y/277  bus 1200 A, main 1200 A, gfpe, gfpe-pickup 800 A\n"
    "  claim arc-energy-reduction\n",
)
SELECTIVE = rule(
    name="selectivity-study-needed",
    since="0.1",
    severity=Severity.GAP,
    scope="equipment",
    basis="both",
    summary="Emergency, legally required or critical supply has devices in a row, and no study is named.",
    why="The small breaker must trip before the large one; only a study of their curves can prove it.",
    clause={"us": "700.32, 701.32, 708.54", "iec": "60364-5-53 536, 60364-5-56 560"},
    wrong=_LARGE.replace("feeder UTIL -> MSB\n", "feeder UTIL -> MSB  400 A 3p\n")
    + "switchboard MSB 480Y/277  bus 400 A, main 400 A\n"
    + "feeder MSB -> EP-1  100 A 3p\npanel EP-1 480Y/277  bus 125 A, main 100 A, emergency\n",
    right=_LARGE.replace("feeder UTIL -> MSB\n", "feeder UTIL -> MSB  400 A 3p\n")
    + "switchboard MSB 480Y/277  bus 400 A, main 400 A\n"
    + "feeder MSB -> EP-1  100 A 3p\npanel EP-1 480Y/277  bus 125 A, main 100 A, emergency\n"
    + '  claim selectivity-study "report SC-12"\n',
)


def _limit(view: View, name: str) -> float | None:
    found = view.tables.constant(name) if view.tables is not None else None
    return found.value if isinstance(found, Looked) else None


def _large_devices(
    view: View, equipment: Equipment, least: float
) -> Iterator[tuple[Body, str, float, Place, System, str]]:
    """Devices of equipment of ``least`` amperes or a frame for them: a board's main, and of the feeders that leave."""
    state = view.state(equipment.name)
    if state is None:
        return
    if equipment.kind in BOARDS and isinstance(state.arriving, Known):
        for key in ("main", "incomer"):
            rating = equipment.body.number(key)
            if rating is not None and max(equipment.body.number("frame") or rating, rating) >= least:
                place, where = equipment.place_of(key), f"the main of `{equipment.name}`"
                yield equipment.body, key, rating, place, state.arriving.system, where
    if isinstance(state.system, Known):
        leaving = view.model.feeders_from.get(equipment.name, ())
        large = [f for f in leaving if max(f.body.number("rating") or 0.0, f.body.number("frame") or 0.0) >= least]
        for feeder in in_order(large):
            rating = feeder.body.number("rating")
            if rating is not None:
                place = Place(feeder.block, feeder.body.facts["rating"].span)
                yield feeder.body, "rating", rating, place, state.system.system, f"`{feeder.key}`"


def _has_gfpe(body: Body) -> bool:
    return "gfpe" in body.flags or "gfpe-pickup" in body.facts


@GFPE.check
def ground_fault_protection(view: View, equipment: Equipment) -> Iterator[Finding]:
    least = _limit(view, "gfpe-device")
    if least is None or "fire-pump" in equipment.body.flags or equipment.damaged:
        return
    claims = equipment.statement.claims
    if claims and any(c.name == "orderly-shutdown" for c in claims):
        return
    guarded: bool | None = None
    for body, key, rating, place, system, where in _large_devices(view, equipment, least):
        if guarded is None:
            guarded = _guarded_ahead(view, equipment)
        if _has_gfpe(body) or guarded or "fire-pump" in body.flags:
            continue
        if key == "rating" and _has_gfpe(equipment.body):
            continue
        if system.earth is None or not system.earthing.solid or len(system.legs) < 3 or system.widest_v > 1000:
            continue
        if max(system.volts_to_ground(leg) for leg in system.legs) <= 150 or system.earthed_leg is not None:
            continue
        if system.high_leg is not None:  # a delta with a middle tap is no wye
            continue
        yield _gfpe(view, equipment, key, rating, place, where)


def _guarded_ahead(view: View, equipment: Equipment) -> bool:
    """Whether the feeder that supplies it has ground-fault protection (215.10 exception)."""
    supply = view.network.supply.get(equipment.name)
    if supply is None:
        return False
    source = view.equipment(supply.source.name)
    return _has_gfpe(supply.body) or (source is not None and _has_gfpe(source.body))


def _gfpe(view: View, equipment: Equipment, key: str, rating: float, place: Place, where: str) -> Finding:
    assert view.tables is not None
    most = view.tables.value_of("gfpe-pickup")
    text = f"gfpe, gfpe-pickup {min(most, rating):g} A"
    block = equipment.block if key != "rating" else place.block
    row = equipment.statement.head.line if key != "rating" else place.span.line
    return GFPE.finding(
        place,
        f"{where} is {rating:g} A on a solidly grounded wye, and has no ground-fault protection",
        found=f"{rating:g} A without `gfpe`",
        needed=f"ground-fault protection that picks up at {most:g} A or less",
        change=f"Write `{text}`, and let an engineer choose the setting.",
        subject=equipment.name,
        fixes=(Fix(f"Give it ground-fault protection: `{text}`", (append_phrase(block, row, text),), Safety.LOOK),),
        clause=clause_of(view, GFPE),
    )


@ARC.check
def arc_energy(view: View, equipment: Equipment) -> Iterator[Finding]:
    least = _limit(view, "arc-energy-device")
    if least is None or equipment.damaged:
        return
    for body, key, rating, place, system, where in _large_devices(view, equipment, least):
        if system.widest_v > 1000:
            continue
        claims = {c.name for c in equipment.statement.claims}
        if key == "rating":
            for feeder in view.feeders_out_of(equipment.name):
                if feeder.body is body:
                    claims |= {c.name for c in feeder.statement.claims}
        if "arc-energy-reduction" in claims:
            continue
        yield ARC.finding(
            place,
            f"{where} is {rating:g} A, and no way is named to clear an arc faster while people work",
            found=f"{rating:g} A without such a mode",
            needed="a maintenance switch, zone interlock, differential or another documented method",
            change="Choose a method, and write `claim arc-energy-reduction` with where it is documented.",
            subject=equipment.name,
            clause=clause_of(view, ARC),
        )


_CLASSES = {"emergency": "emergency", "legally-required": "legally required", "critical": "critical operations"}


@SELECTIVE.also("equipment", said=_CLASSES)
def selectivity(view: View, equipment: Equipment) -> Iterator[Finding]:
    """Told once, at the first piece of equipment of such a supply."""
    flag = next((f for f in _CLASSES if f in equipment.body.flags), None)
    if flag is None or equipment.kind not in (*BOARDS, "transfer", "busway"):
        return
    if any(c.name == "selectivity-study" and c.text for c in equipment.statement.claims):
        return
    if any(c.name == "selectivity-study" and c.text for _, p in view.model.projects for c in p.claims):
        return
    above = view.network.supplier.get(equipment.name)
    first = view.equipment(above) if above is not None else None
    if first is not None and flag in first.body.flags and first.kind in (*BOARDS, "transfer", "busway"):
        return
    yield SELECTIVE.finding(
        equipment.place_of(flag),
        f"`{equipment.name}` is {_CLASSES[flag]} supply, and no coordination study is named",
        found="devices in a row, their curves not compared",
        needed="a study that shows that only the device next to a fault opens",
        change='Have it studied, and write `claim selectivity-study "report ..."`.',
        subject=equipment.name,
        clause=clause_of(view, SELECTIVE),
    )
