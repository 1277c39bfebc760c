"""Why a wire cannot feed what it ends at: one rule a physical cause, and the remarks that go with what can be fed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.attributes import listed
from wyeline_grammar.blocks import Block
from wyeline_grammar.linking import Equipment, Feeder, Place
from wyeline_grammar.model import Span
from wyeline_linter.derive import LOAD_KINDS
from wyeline_linter.findings import Edit, Finding, Fix, Offered, Related, Safety, Severity, replace
from wyeline_linter.network import makes_system, two_sided
from wyeline_linter.rules.registry import NotAccepted, Rule, rule
from wyeline_linter.system_words import conductors_text, with_legs_of
from wyeline_linter.systems import Known
from wyeline_linter.verdicts import Cause, LegMap, Refusal

if TYPE_CHECKING:
    from wyeline_linter.view import View

_WYE = "utility UTIL 480Y/277  fault 14 kA, x/r 4\nfeeder UTIL -> MSB\nswitchboard MSB 480Y/277  bus 400 A\n"
_LOW = "utility UTIL 208Y/120  fault 14 kA, x/r 4\nfeeder UTIL -> DP\npanel DP 208Y/120  bus 400 A\n"
_SPLIT = "utility UTIL 120/240  fault 10 kA, x/r 2\nfeeder UTIL -> LP-1\npanel LP-1 120/240  bus 125 A\n"
_HIGH = "utility UTIL 240/120 3ph  fault 10 kA, x/r 2\nfeeder UTIL -> BH-1\npanel BH-1 240/120 3ph  bus 225 A\n"
_DELTA = "utility UTIL 480 3ph  fault 14 kA, x/r 4\nfeeder UTIL -> MSB\nswitchboard MSB 480 3ph  bus 400 A\n"
_BY_CAUSE: dict[str, Rule] = {}


def rule_of_cause(cause: Cause) -> Rule | None:
    """The rule that tells of a refusal's cause."""
    return _BY_CAUSE.get(cause.value)


def refusal(
    name: str,
    summary: str,
    why: str,
    wrong: str,
    right: str,
    clause: dict[str, str] | None = None,
    mends: bool = False,
) -> Rule:
    """A rule for one cause of a refused connection."""
    made = rule(
        name=name,
        since="0.1",
        severity=Severity.ERROR,
        scope="feeder",
        not_accepted=NotAccepted.UNCONNECTED,
        summary=summary,
        why=why,
        wrong=wrong,
        right=right,
        clause=clause or {},
        mends=mends,
        roams=True,
    )
    _BY_CAUSE[name] = made
    return made


LEG_VOLTAGE = refusal(
    Cause.LEG_VOLTAGE.value,
    summary="Between the wires that are taken lies another voltage than what is fed needs.",
    why="A wire cannot change voltage: the equipment would burn or fail to work.",
    clause={"us": "110.4", "iec": "60364-5-51 512.1"},
    wrong=_WYE + "panel LP-1 208Y/120  bus 125 A\nfeeder MSB -> LP-1  100 A 3p\n",
    right=_WYE + "panel LP-1 480Y/277  bus 125 A\nfeeder MSB -> LP-1  100 A 3p\n",
)
refusal(
    Cause.MISSING_LEG.value,
    summary="A leg is taken that does not come this far.",
    why="A wire that is not there feeds nothing.",
    wrong=_SPLIT + "load HTR-1 240 1ph  3 kW\nfeeder LP-1[BC] -> HTR-1  20 A 2p\n",
    right=_SPLIT + "load HTR-1 240 1ph  3 kW\nfeeder LP-1[AB] -> HTR-1  20 A 2p\n",
)
refusal(
    Cause.NO_NEUTRAL.value,
    summary="What is fed needs a neutral, and the supply has only live wires.",
    why="Without a neutral nothing for the voltage to neutral can be connected; a transformer can make one.",
    clause={"us": "200.3"},
    wrong=_DELTA + "panel LL-1 480Y/277  bus 125 A\nfeeder MSB -> LL-1  60 A 3p\n",
    right=_DELTA + "panel LL-1 480 3ph  bus 125 A\nfeeder MSB -> LL-1  60 A 3p\n",
)
refusal(
    Cause.ANGLE.value,
    summary="Two legs of a wye are taken for the two ends of one winding, or the other way round.",
    why="Both read the same to neutral, and differ between the legs: 208 V is not 240 V.",
    clause={"us": "220.61(C)"},
    wrong=_LOW + "panel WET-1 120/240  bus 125 A\nfeeder DP[AB] -> WET-1  100 A 2p\n",
    right=_LOW + "panel WET-1 208Y/120 1ph  bus 125 A\nfeeder DP[AB] -> WET-1  100 A 2p\n",
)
HIGH_LEG = refusal(
    Cause.HIGH_LEG.value,
    summary="A circuit runs from the high leg of a delta to neutral.",
    why="The high leg is 1.73 times as far from neutral as its neighbours; equipment for 120 V is destroyed by it.",
    clause={"us": "408.3(E), 408.3(F), 110.15"},
    wrong=_HIGH + "panel WET-1 120/240  bus 100 A\nfeeder BH-1[AB] -> WET-1  100 A 2p\n",
    right=_HIGH + "panel WET-1 120/240  bus 100 A\nfeeder BH-1[AC] -> WET-1  100 A 2p\n",
    mends=True,
)
NAMEPLATE = refusal(
    Cause.NAMEPLATE.value,
    summary="A load's nameplate is for another voltage than it gets.",
    why="A motor starts low or saturates, and a heater gives more or less than its power, before any drop on the way.",
    clause={"us": "110.4 (NEMA MG 1, ANSI C84.1)", "iec": "60034-1 7.3"},
    wrong=_LOW + "motor P-1 230 3ph  5 hp\nfeeder DP -> P-1  30 A 3p\n",
    right=_LOW + "motor P-1 200 3ph  5 hp\nfeeder DP -> P-1  30 A 3p\n",
)
refusal(
    Cause.PHASE_COUNT.value,
    summary="Three-phase equipment hangs on fewer than three legs, or single-phase equipment on three.",
    why="Three-phase equipment takes three live wires 120° apart, and fewer wires cannot make the missing one.",
    wrong=_SPLIT + "motor P-1 230 3ph  5 hp\nfeeder LP-1 -> P-1  20 A 2p\n",
    right=_SPLIT + "motor P-1 230 1ph  5 hp\nfeeder LP-1 -> P-1  40 A 2p\n",
)
refusal(
    Cause.FREQUENCY.value,
    summary="Supply and equipment differ in frequency, or one is direct and the other alternating current.",
    why="No wiring changes a frequency; motors run at another speed and transformers overheat.",
    clause={"us": "110.4", "iec": "60364-5-51 512.1.3"},
    wrong=_SPLIT + "load TEL-1 48 dc  600 W\nfeeder LP-1 -> TEL-1  20 A 1p\n",
    right=_SPLIT + "load TEL-1 120 1ph  600 W\nfeeder LP-1[AN] -> TEL-1  20 A 1p\n",
)
POLES = refusal(
    Cause.POLES.value,
    summary="A device has more or fewer poles than there are live wires to open.",
    why="A device must open every live wire at once, and a pole without a wire is a slip of the pen.",
    clause={"us": "240.15(B), 240.22", "iec": "60364-4-43 431"},
    wrong=_WYE + "motor P-1 460 3ph  5 hp\nfeeder MSB -> P-1  20 A 2p\n",
    right=_WYE + "motor P-1 460 3ph  5 hp\nfeeder MSB -> P-1  20 A 3p\n",
    mends=True,
)
ONE_POLE = refusal(
    Cause.ONE_POLE.value,
    summary="A one-pole device stands in a circuit whose two wires are both live.",
    why="When it opens, the load is still live over its other wire.",
    clause={"us": "240.15(B), 210.10", "iec": "60364-4-43 431.2"},
    wrong=_SPLIT + "load HTR-1 240 1ph  3 kW\nfeeder LP-1[AB] -> HTR-1  20 A 1p\n",
    right=_SPLIT + "load HTR-1 240 1ph  3 kW\nfeeder LP-1[AB] -> HTR-1  20 A 2p\n",
    mends=True,
)
refusal(
    Cause.WINDING_VOLTAGE.value,
    summary="A transformer's winding lies between wires of another voltage than it is wound for.",
    why="On too little it gives too little; on too much its iron saturates and it overheats.",
    clause={"us": "450.11", "iec": "60076-1"},
    wrong=_WYE + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %\nfeeder MSB[A N] -> TX-1  70 A 1p\n",
    right=_WYE + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %\nfeeder MSB[AB] -> TX-1  70 A 2p\n",
)
refusal(
    Cause.WINDING_COUNT.value,
    summary="A transformer has more or fewer windings than the wires that feed it, or that it shall feed, ask for.",
    why="One winding makes one phase; three legs take three windings, or two in open delta.",
    wrong=_WYE + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %\nfeeder MSB[ABC] -> TX-1  70 A 3p\n",
    right=_WYE + "transformer TX-1 480 1ph -> 120/240  25 kVA, z 2.8 %\nfeeder MSB[AB] -> TX-1  70 A 2p\n",
)


@LEG_VOLTAGE.check
def connection(view: View, feeder: Feeder) -> Iterator[Finding]:
    """Every finding about what a feeder offers and what its far end wants."""
    state = view.feeder_state(feeder.key)
    source, target = view.equipment(feeder.source.name), view.equipment(feeder.target.name)
    if state is None or source is None or target is None or source is target:
        return
    if view.derivation.delivers_into(feeder):
        source, target = target, source  # an inverter follows the board: the board offers, the inverter has to fit
    verdict = state.verdict
    if isinstance(verdict, Refusal):
        yield _refused(view, feeder, source, target, verdict)


def _refused(view: View, feeder: Feeder, source: Equipment, target: Equipment, verdict: Refusal) -> Finding:
    found_rule = _BY_CAUSE.get(verdict.cause.value, LEG_VOLTAGE)
    message = _headline(view, feeder, source, target, verdict)
    why = with_legs_of(view.basis, verdict.why)
    if verdict.cause in (Cause.POLES, Cause.ONE_POLE) and feeder.body.poles is not None:
        counts = listed([str(n) for n in sorted({m.live_poles for m in verdict.fitting})])
        live = "live wire" if counts == "1" else "live wires"
        message = (
            f"`{source.name}` feeds `{target.name}` through a {feeder.body.poles.count}-pole device, "
            f"and there {'is' if counts == '1' else 'are'} {counts} {live} to open"
        )
    elif verdict.cause in (Cause.MISSING_LEG, Cause.WINDING_COUNT) and feeder.source.legs is not None:
        legs = conductors_text(feeder.source.legs, view.basis)
        message = f"`{source.name}` cannot feed `{target.name}` on {legs}: {why}"
    return found_rule.finding(
        _place(feeder, verdict),
        message,
        found=f"`{source.name}`: {with_legs_of(view.basis, verdict.found)}",
        needed=f"`{target.name}`: {with_legs_of(view.basis, verdict.needed)}",
        why=f"{why[:1].upper()}{why[1:]}.",
        change=_change(feeder, target, verdict),
        subject=feeder.key,
        related=set_by(view, source),
        fixes=Offered(lambda: _fixes(view, feeder.key), lambda: view.edits),
        clause=clause_of(view, found_rule),
    )


def _headline(view: View, feeder: Feeder, source: Equipment, target: Equipment, verdict: Refusal) -> str:
    """Both systems as they are written: a list of findings shows one short line, and the voltages in words stand
    below it. Where the two read alike, or nothing is stated, the reason itself."""
    state = view.feeder_state(feeder.key)
    wanted = state.wanted if state is not None and source.name == feeder.source.name else None
    offered = state.offered if state is not None else None
    if wanted is not None and isinstance(offered, Known) and verdict.cause is not Cause.HIGH_LEG:
        given = offered.system.nominal.text
        if given != wanted.text:
            return f"`{target.name}` wants {wanted.text}; `{source.name}` gives {given}"
    why = with_legs_of(view.basis, verdict.why)
    return f"`{source.name}` cannot feed `{target.name}`: {why.split('; ')[0]}"


def clause_of(view: View, found: Rule) -> str:
    """The clause of the project's own code, as it prints; empty without a basis or a clause."""
    practice = view.derivation.practice
    clause = found.clause.get(practice or "", "")
    return f"{'NEC' if practice == 'us' else 'IEC'} {clause}" if clause else ""


def _place(feeder: Feeder, verdict: Refusal) -> Place:
    """The words that are wrong: the legs, the poles, or the end that cannot be fed."""
    if verdict.cause in (Cause.POLES, Cause.ONE_POLE) and feeder.body.poles_span is not None:
        return Place(feeder.block, feeder.body.poles_span)
    if feeder.source.legs_span is not None and verdict.fitting:
        return Place(feeder.block, feeder.source.legs_span)
    return Place(feeder.block, feeder.target.span)


def _change(feeder: Feeder, target: Equipment, verdict: Refusal) -> str:
    if verdict.cause in (Cause.POLES, Cause.ONE_POLE):
        counts = sorted({m.live_poles for m in verdict.fitting})
        if counts:
            return f"Write {listed([f'`{n}p`' for n in counts])} for the device."
    if verdict.fitting:
        ways = listed(list(dict.fromkeys(f"`[{' '.join(m.legs)}]`" for m in verdict.fitting[:3])))
        return f"Take other legs: {ways}."
    if verdict.cause is Cause.HIGH_LEG:
        return "Take legs beside the high one, further up where all three are, or feed it from another board."
    if verdict.cause is Cause.FREQUENCY:
        return f"Put a converter between them, or use equipment made for what `{feeder.source.name}` gives."
    if target.kind == "transformer":
        return "Feed the primary from wires of its own voltage, or choose a transformer wound for these."
    if target.kind in LOAD_KINDS:
        return (
            "Feed it from a board that gives this, order it for a voltage that is there, or put a transformer between "
            "them."
        )
    return "Feed it from a board that gives this, or put a transformer between them."


def set_by(view: View, equipment: Equipment) -> tuple[Related, ...]:
    """Where the system that stands at a piece of equipment is written: its source or transformer."""
    name = equipment.name
    for name in (equipment.name, *view.network.above(equipment.name)):
        found = view.equipment(name)
        if found is not None and (makes_system(found) or two_sided(found)):
            side = found.secondary if found.arrow else found.primary
            for block, statement in found.chain:
                if side is not None and side in (statement.primary, statement.secondary):
                    return (Related(Place(block, side.span), f"the voltage of `{equipment.name}` is set here"),)
            return (Related(found.place, f"the voltage of `{equipment.name}` is set here"),)
    return ()


def legs_text(legs: tuple[str, ...], like: str = "") -> str:
    """``[AB]``; ``[L1 L2]`` where ``like`` is written that way."""
    if "L" in like:
        return "[" + " ".join({"A": "L1", "B": "L2", "C": "L3"}.get(leg, leg) for leg in legs) + "]"
    return "[" + (" " if "N" in legs else "").join(legs) + "]"


def legs_edit(view: View, feeder: Feeder, legs: tuple[str, ...]) -> Edit:
    """Write these legs behind the feeder's source."""
    span = feeder.source.legs_span
    if span is not None:
        return replace(Place(feeder.block, span), legs_text(legs, feeder.block.lines[span.line][span.start : span.end]))
    end = feeder.source.span
    like = "L" if view.derivation.practice == "iec" else ""
    return Edit(feeder.block, end.line, end.end, end.line, end.end, legs_text(legs, like))


def legs_of_map(found: LegMap) -> tuple[str, ...]:
    """The conductors to write behind a feeder's source for this way: a single leg needs its neutral named."""
    return found.conductors if len(found.legs) == 1 else found.legs


def _small_fixes(view: View, feeder: Feeder, verdict: Refusal) -> Iterator[Fix]:
    """Other poles, or other legs: what one word mends."""
    span = feeder.body.poles_span
    if verdict.cause in (Cause.POLES, Cause.ONE_POLE):
        at = feeder.statement.at
        for count in sorted({m.live_poles for m in verdict.fitting}):
            if span is not None and (at is None or len(at.positions) in (0, count)):
                neutral = all(m.system.has_neutral for m in verdict.fitting if m.live_poles == count)
                switched = feeder.body.poles is not None and feeder.body.poles.switched_neutral and neutral
                text = f"{count}p+N" if switched else f"{count}p"
                yield Fix(f"Make the device {text}", (poles_edit(feeder.block, span, text),), Safety.LOOK)
        return
    if feeder.source.legs is not None:
        seen: set[tuple[str, ...]] = set()
        for way in verdict.fitting:
            legs = legs_of_map(way)
            if frozenset(legs) not in map(frozenset, seen) and len(seen) < 3:
                seen.add(legs)
                yield Fix(
                    f"Take legs {conductors_text(way.legs, view.basis)}", (legs_edit(view, feeder, legs),), Safety.LOOK
                )


def poles_edit(block: Block, span: Span, poles: str) -> Edit:
    """Give a device other poles; ``span`` is that of its words, as in ``20 A 1p``."""
    written = block.lines[span.line][span.start : span.end].rstrip()
    head, _, _ = written.rpartition(" ")
    return Edit(
        block, span.line, span.start, span.line, span.start + len(written), f"{head} {poles}" if head else poles
    )


def _fixes(view: View, key: str) -> tuple[Fix, ...]:
    """The repairs of a feeder that is refused, by the model as it stands now."""
    from wyeline_linter.repair import repairs_for

    feeder, state = view.model.feeders.get(key), view.feeder_state(key)
    if feeder is None or state is None or not isinstance(state.verdict, Refusal):
        return ()
    return repairs_for(view, feeder) or tuple(_small_fixes(view, feeder, state.verdict))
