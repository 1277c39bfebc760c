"""What is missing of wires: which they are, and how they are laid."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Feeder
from wyeline_linter.findings import Finding, Fix, Offered, Severity
from wyeline_linter.protection.lines import Line
from wyeline_linter.rules.line_findings import about, line_text
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.view import View

_LP = "panel LP-1 480Y/277  bus 125 A, main lugs, lug-temp 75 degC\n"

HOW_LAID = rule(
    name="installation-method-missing",
    since="0.1",
    severity=Severity.GAP,
    scope="feeder line",
    basis="both",
    summary="How wires are laid, or what insulates them, is not written, so nothing says what they carry.",
    why="How a wire is laid decides how much it carries; this is never guessed.",
    clause={"us": "310.15", "iec": "60364-5-52 523"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  20 m  in 1-1/4 inch EMT\n",
)
NOT_SIZED = rule(
    name="wires-not-sized",
    since="0.1",
    severity=Severity.GAP,
    scope="feeder",
    basis="both",
    summary="A feeder says how long it is or how it runs, and not which wires it has.",
    why="Without wires nothing can be said of what it carries, loses, or lets through in a fault.",
    clause={"us": "215.2, 310.15", "iec": "60364-5-52 523"},
    wrong=US + _LP + "feeder MSB -> LP-1  100 A 3p  40 m  in EMT\n",
    right=US + _LP + "feeder MSB -> LP-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  40 m  in 1-1/4 inch EMT\n",
    mends=True,
)


@NOT_SIZED.check
def wires_not_sized(view: View, feeder: Feeder) -> Iterator[Finding]:
    if not has_route_alone(view, feeder):
        return
    from wyeline_linter.sizing.lines import Proposal, size_feeder

    def sizes() -> tuple[Fix, ...]:
        found = size_feeder(view, feeder)
        return (found.fix(),) if isinstance(found, Proposal) else ()

    fixes: Sequence[Fix] = ()
    run = feeder.body.raceway
    made = size_feeder(view, feeder) if run is None or not run.named else None
    if made is None:  # what it takes hangs on lines far from here
        fixes = Offered(sizes, lambda: view.edits)
        change = (
            "Write its wires; how large they have to be hangs on all that shares its raceway: `wyeline size` tells."
        )
    elif isinstance(made, Proposal):
        fixes = (made.fix(),)
        change = f"Write `{made.wires}`, for instance: {'; '.join(made.reasons[:3])}."
    else:
        change = f"Write its wires; a size cannot be told yet: {'; '.join(made.reasons)}."
    iec = view.derivation.practice == "iec"
    example = "4x16mm2 + PE 16mm2 Cu XLPE" if iec else "3#4/0 + N #4/0 + G #4 Cu THWN-2"
    yield NOT_SIZED.finding(
        feeder.place,
        f"`{feeder.key}` has no wires yet",
        found="a route without wires",
        needed=f"its wires, as in `{example}`",
        change=change,
        subject=feeder.key,
        fixes=fixes,
    )


def has_route_alone(view: View, feeder: Feeder) -> bool:
    """Whether a feeder that carries a known system says how long it is or how it runs, and has no wires."""
    body = feeder.body
    if body.conductors is not None or feeder.statement.damaged:
        return False
    state = view.feeder_state(feeder.key)
    if state is None or not isinstance(state.carried, Known):
        return False
    source = view.equipment(feeder.source.name)
    if "resistance" in body.facts or (source is not None and source.kind == "busway" and "length" not in body.facts):
        return False
    return bool({"length", "method", "buried"} & body.facts.keys()) or body.raceway is not None


@HOW_LAID.check
@HOW_LAID.also("line")
def _laid(view: View, line: Line) -> Iterator[Finding]:
    if line.laid is not None or line.medium:
        return
    yield about(
        view, HOW_LAID, line,
        f"{line.where}: {line.lacks} is not written",
        found=f"{line_text(line)}, without {line.lacks}",
        needed=line.lacks,
        change=_how_to_say(line),
    )  # fmt: skip


def _how_to_say(line: Line) -> str:
    """An example of what is missing: ``lacks`` is the raceway, the method, or the soil of a method that is written."""
    if line.us:
        return "Write how it is laid, as in `in 2 inch EMT`."
    if "`soil`" in line.lacks:
        return "Write `soil 1.0 K.m/W` with the figure of this ground, here or for the whole project."
    return (
        "Write how it is laid, as in `method C` (clipped to a wall), `method B2` (a cable in a conduit on a wall) or "
        "`method D2` (in the ground); `wyeline explain method` says all of them."
    )
