"""What is said about loads: their amount and kind, demand factors, and which never run together."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed, place_phrase
from wyeline_grammar.linking import Equipment, Place, PlacedCircuit
from wyeline_grammar.model import Fact
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.findings import Edit, Finding, Fix, Safety, Severity
from wyeline_linter.loads.as_given import has_no_load
from wyeline_linter.loads.buckets import VA
from wyeline_linter.loads.demand import factors_of
from wyeline_linter.loads.of_equipment import converter_input
from wyeline_linter.rules.registry import rule

if TYPE_CHECKING:
    from wyeline_linter.view import View

_US = 'project "Annex"\n  basis us-2023\n'
_FED = "utility UTIL 208Y/120  fault 10 kA, x/r 4\nfeeder UTIL -> LP-1  100 A 3p\n"
_IEC = (
    'project "Annex"\n  basis iec\nutility UTIL 400Y/230  fault 10 kA, x/r 4, earthing TN-S\n'
    "feeder UTIL -> LP-1  63 A 3p\npanel LP-1 400Y/230  bus 63 A\n"
)
_PANEL = "panel LP-1 208Y/120  bus 225 A\n"


NOT_CONNECTED = rule(
    name="load-not-connected",
    since="0.1",
    severity=Severity.GAP,
    scope="circuit",
    summary="A circuit has a device and no load.",
    why="Its board's load is unknown as long as one circuit does not say what hangs on it.",
    wrong=_FED + _PANEL + '  1  20 A 1p  lighting  "Hall lights"\n',
    right=_FED + _PANEL + '  1  20 A 1p  1.2 kVA lighting  "Hall lights"\n  3  20 A 1p  spare\n',
)


@NOT_CONNECTED.check
def load_not_connected(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    body = placed.circuit.body
    leaf = view.loads.leaf(board.name, placed.key)
    if leaf is None or leaf.given is None or leaf.given.va is not None or "power" in body.facts or not leaf.unknown:
        return
    device = body.facts.get("rating")
    what = f"a {device.value.text} device" if device is not None else "no device"
    yield NOT_CONNECTED.finding(
        Place(placed.block, placed.circuit.place.span),
        f"circuit {placed.key} of `{board.name}` has {what} and no load",
        found=f"{what}, and neither VA, W, hp nor A of a load",
        needed="the load, or `spare` where there is none yet",
        change="Write what it draws, such as `1.2 kVA`, or `spare`.",
        subject=board.name,
        position=placed.key,
    )


CONVERTING = frozenset({"ups", "drive", "charger"})
"""What may draw by what it delivers."""
NOT_STATED = rule(
    name="load-not-stated",
    since="0.1",
    severity=Severity.GAP,
    scope="equipment",
    summary="A load with a name does not say enough to tell what it draws.",
    why="Every total above it is unknown until it does.",
    basis="both",
    wrong=_IEC + "motor P-1 400 3ph  5.5 kW\nfeeder LP-1 -> P-1  16 A 3p\n",
    right=_IEC + "motor P-1 400 3ph  5.5 kW, pf 0.84, eff 89 %\nfeeder LP-1 -> P-1  16 A 3p\n",
)


@NOT_STATED.check
def load_not_stated(view: View, equipment: Equipment) -> Iterator[Finding]:
    for leaf in view.loads.nodes[equipment.name].leaves:
        if not leaf.place and leaf.given is not None and leaf.given.va is None and not leaf.of_board:
            yield _not_stated(equipment.place, leaf.unknown[0], equipment.name)


@NOT_STATED.also("equipment")
def conversion_not_stated(view: View, equipment: Equipment) -> Iterator[Finding]:
    if equipment.kind not in CONVERTING or not view.loads.converts(equipment.name):
        return
    feeder = view.network.supply.get(equipment.name)
    if feeder is None or view.loads.is_gone(equipment, feeder):
        return
    _, unknown = converter_input(equipment, None)
    if unknown and "eff" not in equipment.body.facts:
        yield NOT_STATED.finding(
            equipment.place,
            f"{unknown[0]}, so what it draws from `{feeder.source.name}` is unknown",
            found=unknown[0],
            needed="its efficiency at full load",
            change="Write what the nameplate says, as in `eff 94 %`.",
            subject=equipment.name,
        )


@NOT_STATED.also("circuit")
def circuit_not_stated(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    leaf = view.loads.leaf(board.name, placed.key)
    if leaf is None or leaf.given is None or leaf.given.va is not None or "power" not in placed.circuit.body.facts:
        return
    if not leaf.unknown:
        return  # another row of the same position, which is told already, needs no load
    place = Place(placed.block, placed.circuit.body.facts["power"].span)
    yield _not_stated(place, leaf.unknown[0], board.name, placed.key)


def _not_stated(place: Place, reason: str, subject: str, position: str = "") -> Finding:
    return NOT_STATED.finding(
        place,
        f"{reason}, so what it draws is unknown",
        found=reason,
        needed="VA; or W and pf; or shaft power with eff and pf; or the nameplate's current",
        change="Write what the nameplate says: `pf 0.86`, `eff 91 %`, or `fla 21 A`.",
        subject=subject,
        position=position,
    )


NOT_CLASSIFIED = rule(
    name="load-not-classified",
    since="0.1",
    severity=Severity.GAP,
    scope="circuit",
    summary="A load does not say what kind it is.",
    why="Demand factors and the 125 % of continuous load depend on the kind, so the load to size by stays unknown.",
    basis="both",
    clause={"us": "Article 220"},
    wrong=_US + _FED + _PANEL + '  1  20 A 1p  1.2 kVA  "Hall"\n',
    right=_US + _FED + _PANEL + '  1  20 A 1p  1.2 kVA lighting  "Hall"\n',
)


@NOT_CLASSIFIED.check
def circuit_not_classified(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    leaf = view.loads.leaf(board.name, placed.key)
    if leaf is None or leaf.row is None or not leaf.unknown_code:
        return
    va = abs(leaf.row[VA])
    place = Place(placed.block, placed.circuit.place.span)
    classes = _OF_A_DWELLING if board.name in view.loads.within else _COMMON_CLASSES
    yield _not_classified(place, va, f"circuit {placed.key} of `{board.name}`", board.name, placed.key, classes)


@NOT_CLASSIFIED.also("equipment")
def equipment_not_classified(view: View, equipment: Equipment) -> Iterator[Finding]:
    for leaf in view.loads.nodes[equipment.name].leaves:
        if not leaf.place and leaf.row is not None and leaf.unknown_code:
            yield _not_classified(equipment.place, abs(leaf.row[VA]), f"`{equipment.name}`", equipment.name)


_COMMON_CLASSES = ("lighting", "receptacle", "heating", "cooling", "process", "kitchen", "welding")
"""Named to who wrote none: the classes that most loads are of, not the first of the alphabet."""
_OF_A_DWELLING = ("lighting", "receptacle", "kitchen", "dryer", "appliance", "heating", "cooling", "heat-pump", "ev")


def _not_classified(
    place: Place, va: float, who: str, subject: str, position: str = "", classes: tuple[str, ...] = _COMMON_CLASSES
) -> Finding:
    kinds = listed([f"`{word}`" for word in classes])
    return NOT_CLASSIFIED.finding(
        place,
        f"{va / 1e3:.2f} kVA on {who} of no stated kind",
        found=f"{va / 1e3:.2f} kVA without a class",
        needed="what kind of load it is, and `continuous` where it runs three hours or more",
        change=f"Add its class, such as {kinds}; `wyeline explain class` lists all of them.",
        subject=subject,
        position=position,
    )


TWICE = rule(
    name="demand-applied-twice",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    summary="A demand factor is stated for load that has one already below.",
    why="The discount would be taken twice, and the feeder sized for a load that is larger.",
    clause={"us": "Article 220"},
    wrong=_FED + 'panel LP-1 208Y/120  bus 225 A, factor 0.8\n  1  20 A 1p  1.2 kVA process factor 0.5  "Saw"\n',
    right=_FED + 'panel LP-1 208Y/120  bus 225 A\n  1  20 A 1p  1.2 kVA process factor 0.5  "Saw"\n',
    mends=True,
)
_FACTORS = ("factor", "diversity")


@TWICE.check
def demand_applied_twice(view: View, equipment: Equipment) -> Iterator[Finding]:
    twice = list(view.loads.nodes[equipment.name].twice)
    feeder = view.network.supply.get(equipment.name)
    on_feeder = feeder.body.facts.get("factor") if feeder is not None else None
    if not twice and on_feeder is None:
        return
    own = next((equipment.body.facts[key] for key in _FACTORS if key in equipment.body.facts), None)
    if own is not None:
        place = equipment.place_of(own.name)
        if on_feeder is not None and feeder is not None and not twice:
            twice = [feeder.key]
    elif on_feeder is not None and feeder is not None:
        own, place = on_feeder, Place(feeder.block, on_feeder.span)
    if own is None or not twice:
        return
    below = ", ".join(f"`{name}`" for name in twice)
    yield TWICE.finding(
        place,
        f"{own.value.text} on all that hangs on `{equipment.name}`, and {below} states a factor of its own",
        found=f"a factor here and at {below}",
        needed="one factor for one load; the nearest to the load is the one that counts",
        change="Delete one of the two.",
        subject=equipment.name,
        fixes=_deletion(place, own),
    )


def _deletion(place: Place, fact: Fact) -> tuple[Fix, ...]:
    """Take a phrase out of its line, with the comma or blanks before it."""
    line = place.block.lines[place.span.line]
    start = place.span.start
    while start > 0 and line[start - 1] in " ,\t":
        start -= 1
    text = "" if place.span.end >= len(line.rstrip()) else "  "
    edit = Edit(place.block, place.span.line, start, place.span.line, place.span.end, text)
    return (Fix(f"Delete `{fact.name} {fact.value.text}`", (edit,), Safety.LOOK),)


GENEROUS = rule(
    name="demand-too-generous",
    since="0.1",
    severity=Severity.WARNING,
    scope="equipment",
    summary="A stated demand factor is lower than the code's table allows for this load.",
    why="The feeder would be sized for less than the code counts.",
    basis="us",
    clause={"us": "220.47, 220.56"},
    wrong=_US + _FED + 'panel LP-1 208Y/120  bus 225 A, factor 0.6\n  1,3,5  40 A 3p  9 kVA receptacle  "Benches"\n',
    right=_US + _FED + _PANEL + '  1,3,5  40 A 3p  9 kVA receptacle  "Benches"\n',
    mends=True,
)


@GENEROUS.also("equipment", said=("factor",))
def demand_too_generous(view: View, equipment: Equipment) -> Iterator[Finding]:
    fact = equipment.body.facts.get("factor")
    stated = equipment.body.number("factor")
    book = view.loads
    if fact is None or stated is None:
        return
    for category, clause in (("receptacle", "220.47"), ("kitchen", "220.56")):
        rows = {
            key._replace(factor=None): row
            for key, row in book.rows(equipment.name)[0].items()
            if key.category == category and key.factor == stated and not key.dwelling
        }
        table = min(factors_of(rows, book.basis).values(), default=0.0)
        if table <= stated + 0.005:
            continue
        va = abs(sum(row[VA] for row in rows.values()))
        place = equipment.place_of("factor")
        yield GENEROUS.finding(
            place,
            f"{100 * stated:.0f} % of {va / 1e3:.1f} kVA of {category} load counts at `{equipment.name}`; "
            f"the table counts {100 * table:.0f} %",
            found=f"a factor of {stated:g}",
            needed=f"{table:.3g} or more for {va / 1e3:.1f} kVA (NEC 2023 {clause})",
            change="Delete the factor: the table's is applied by itself.",
            subject=equipment.name,
            fixes=_deletion(place, fact),
        )
        return


EV = rule(
    name="ev-load-discounted",
    since="0.1",
    severity=Severity.ERROR,
    scope="equipment",
    summary="A demand factor reduces vehicle charging without an energy management system.",
    why="Chargers run for hours, all at once after work: without a system that holds them back they count in full.",
    basis="us",
    clause={"us": "625.42, 220.57"},
    wrong=_US + _FED + _PANEL + "charger EV-1 208 1ph  6.6 kVA, ev, factor 0.5\nfeeder LP-1[AB] -> EV-1  40 A 2p\n",
    right=_US + _FED + _PANEL + "charger EV-1 208 1ph  6.6 kVA, ev\nfeeder LP-1[AB] -> EV-1  40 A 2p\n",
    mends=True,
)


@EV.check
def ev_load_discounted(view: View, equipment: Equipment) -> Iterator[Finding]:
    book = view.loads
    feeder = view.network.supply.get(equipment.name)
    if equipment.body.facts.keys().isdisjoint(_FACTORS) and (feeder is None or "factor" not in feeder.body.facts):
        return
    fact = next((equipment.body.facts[key] for key in _FACTORS if key in equipment.body.facts), None)
    place = equipment.place_of(fact.name) if fact is not None else equipment.place
    if fact is None and feeder is not None:
        fact = feeder.body.facts.get("factor")
        place = Place(feeder.block, fact.span) if fact is not None else place
    if fact is None or "limit" in equipment.body.facts or (feeder is not None and "limit" in feeder.body.facts):
        return
    stated = fact.number
    chargers = [
        row for key, row in book.rows(equipment.name)[0].items() if key.category == "ev" and key.factor == stated
    ]
    if stated < 1.0 and chargers:
        va = abs(sum(row[VA] for row in chargers))
        yield _discounted(place, va, stated, equipment.name, fact)


@EV.also("circuit")
def ev_circuit_discounted(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    leaf = view.loads.leaf(board.name, placed.key)
    fact = placed.circuit.body.facts.get("factor")
    if leaf is None or leaf.row is None or fact is None or leaf.key.category != "ev" or fact.number >= 1.0:
        return
    if "limit" not in placed.circuit.body.facts:
        place = Place(placed.block, fact.span)
        yield _discounted(place, abs(leaf.row[VA]), fact.number, board.name, fact, placed.key)


def _discounted(place: Place, va: float, factor: float, subject: str, fact: Fact, position: str = "") -> Finding:
    where = f"circuit {position} of `{subject}`" if position else f"`{subject}`"
    return EV.finding(
        place,
        f"{va / 1e3:.1f} kVA of vehicle charging at {where} counts {100 * factor:.0f} % only",
        found=f"a factor of {factor:g}, and no `limit`",
        needed="100 %, or the limit that an energy management system holds",
        change="Delete the factor, or write `limit` with what the system holds it to.",
        subject=subject,
        position=position,
        fixes=_deletion(place, fact),
    )


COINCIDENCE = rule(
    name="coincidence-misused",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="A statement that loads never run together cannot mean what it says.",
    why="It takes load out of the totals, so it has to be true of what is named.",
    clause={"us": "220.60"},
    wrong=_FED
    + _PANEL
    + "motor P-1 200 3ph  5 hp, pf 0.84, eff 89 %, standby-of P-2\n"
    + "motor P-2 200 3ph  5 hp, pf 0.84, eff 89 %, standby-of P-1\n"
    + "feeder LP-1 -> P-1  30 A 3p\nfeeder LP-1 -> P-2  30 A 3p\n",
    right=_FED
    + _PANEL
    + "motor P-1 200 3ph  5 hp, pf 0.84, eff 89 %\n"
    + "motor P-2 200 3ph  5 hp, pf 0.84, eff 89 %, standby-of P-1\n"
    + "feeder LP-1 -> P-1  30 A 3p\nfeeder LP-1 -> P-2  30 A 3p\n",
)


@COINCIDENCE.check
def coincidence_misused(view: View) -> Iterator[Finding]:
    relations = view.loads.relations
    for name, mains in sorted(relations.stands_by.items()):
        for main in mains:
            if name in relations.stands_by.get(main, ()) and name < main:
                yield _misused(
                    view.model.equipment[name],
                    "standby-of",
                    f"`{name}` stands by for `{main}`, and `{main}` for `{name}`: one of them has to run",
                    "one unit that runs and one that stands by",
                )
    for name in sorted(relations.excludes.keys() | relations.stands_by.keys()):
        equipment = view.model.equipment.get(name)
        for key in ("not-with", "standby-of") if equipment is not None else ():
            assert equipment is not None
            if key not in equipment.body.facts or equipment.kind not in LOAD_KINDS:
                continue
            partners = relations.excludes.get(name, ()) if key == "not-with" else relations.stands_by.get(name, ())
            for partner in sorted(partners):
                other = view.model.equipment.get(partner)
                if other is not None and other.kind not in LOAD_KINDS:
                    yield _misused(
                        equipment,
                        key,
                        f"`{partner}` is {place_phrase(other.kind)}: only single loads can exclude each other",
                        "names of motors, loads, drives or chargers",
                    )


def _misused(equipment: Equipment, key: str, message: str, needed: str) -> Finding:
    fact = equipment.body.facts.get(key)
    return COINCIDENCE.finding(
        equipment.place_of(key),
        message,
        found=f"`{key} {fact.value.text if fact is not None else ''}` at `{equipment.name}`",
        needed=needed,
        change=f"Name the loads themselves, or delete `{key}`.",
        subject=equipment.name,
    )


DUPLICATE = rule(
    name="likely-duplicate-load",
    since="0.1",
    severity=Severity.WARNING,
    scope="model",
    summary="A circuit's description names a load that is in the model with a load of its own.",
    why="The same machine would be counted twice, once in the schedule and once by its name.",
    wrong=_FED
    + _PANEL
    + '  2,4,6  30 A 3p  4 kVA cooling  "Rooftop unit RTU-1"\n'
    + "load RTU-1 208 3ph  4 kVA, cooling\nfeeder LP-1 -> RTU-1  30 A 3p  at 1,3,5\n",
    right=_FED + _PANEL + "load RTU-1 208 3ph  4 kVA, cooling\nfeeder LP-1 -> RTU-1  30 A 3p  at 1,3,5\n",
)


@DUPLICATE.check
def likely_duplicate_load(view: View) -> Iterator[Finding]:
    book = view.loads
    for board, words in book.mentions.items():
        for word in sorted(words.keys() & view.model.equipment.keys()):
            other = view.model.equipment[word]
            equipment = view.model.equipment.get(board)
            node = book.nodes.get(word)
            if equipment is None or node is None or other.kind not in LOAD_KINDS or has_no_load(other.body):
                continue
            if not view.network.fed(word) or all(leaf.row is None for leaf in node.leaves):
                continue
            placed = next(p for p in equipment.circuits if p.key == words[word])
            leaf = book.leaf(board, placed.key)
            mine = abs(leaf.row[VA]) if leaf is not None and leaf.row is not None else 0.0
            theirs = sum(abs(one.row[VA]) for one in node.leaves if one.row is not None)
            yield DUPLICATE.finding(
                Place(placed.block, placed.circuit.body.description_span or placed.circuit.place.span),
                f"{mine / 1e3:.1f} kVA on circuit {placed.key} of `{board}` and {theirs / 1e3:.1f} kVA at `{word}`: "
                "the description names it, so it may be counted twice",
                found=f'a loaded circuit "{placed.circuit.body.description}" beside `{word}`',
                needed="one record for one load",
                change=f"Delete the row and give the feeder of `{word}` its positions with `at`, or reword it.",
                subject=board,
                position=placed.key,
            )
