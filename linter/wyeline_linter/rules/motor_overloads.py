"""The overload device of a motor against its nameplate."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from wyeline_grammar.linking import Equipment, Place, PlacedCircuit
from wyeline_grammar.model import Body
from wyeline_linter.findings import Finding, Fix, Safety, Severity, replace
from wyeline_linter.rules.connection import clause_of
from wyeline_linter.rules.overcurrent import US
from wyeline_linter.rules.registry import rule
from wyeline_linter.shares import share_of
from wyeline_linter.standard_ratings import motor_overload_limit_a
from wyeline_linter.tables import NotListed

if TYPE_CHECKING:
    from wyeline_linter.view import View

_MOTOR = (
    US + "motor P-1 460 3ph  10 hp, pf 0.85, eff 90 %, fla 12.5 A, service-factor 1.15, overload SET\n"
    "feeder MSB -> P-1  35 A 3p  3#10 + G #10 Cu THWN-2  20 m  in 3/4 inch EMT\n"
)
_PLAIN_RISE_C = 41.0
"""A motor that says neither is in the class of all others: any rise above 40 degC stands for it (NEC 430.32(A)(1))."""

SETTING = rule(
    name="motor-overload-setting",
    since="0.1",
    severity=Severity.ERROR,
    scope="motor",
    basis="us",
    summary="The overload device of a motor trips later than its nameplate allows.",
    why="Short circuits are the breaker's task; the overload device guards the windings, so it follows the nameplate.",
    clause={"us": "430.32(A)(1)"},
    wrong=_MOTOR.replace("SET", "20 A"),
    right=_MOTOR.replace("SET", "15 A"),
    mends=True,
)


@SETTING.check
def motor_overload(view: View, equipment: Equipment) -> Iterator[Finding]:
    place = equipment.place_of("overload")
    yield from _setting(view, equipment.body, f"`{equipment.name}`", place, equipment.name, "")


@SETTING.also("circuit")
def circuit_overload(view: View, board: Equipment, placed: PlacedCircuit) -> Iterator[Finding]:
    body = placed.circuit.body
    fact = body.facts.get("overload")
    if fact is not None:
        where = f"circuit {placed.key} of `{board.name}`"
        yield from _setting(view, body, where, Place(placed.block, fact.span), board.name, placed.key)


def _setting(view: View, body: Body, where: str, place: Place, subject: str, position: str) -> Iterator[Finding]:
    amps, tables = body.number("overload"), view.tables
    if amps is None or tables is None:
        return
    nameplate_a = body.number("fla")
    if nameplate_a is None:
        yield SETTING.finding(
            place,
            f"whether the overload device of {where} is set right is unknown: its nameplate current is not written",
            found=f"overload {amps:g} A",
            needed="`fla` with the current of its nameplate (the table's current is for wires and breakers only)",
            change="Write `fla` from the nameplate.",
            subject=subject,
            position=position,
            severity=Severity.GAP,
            clause=clause_of(view, SETTING),
        )
        return
    factor, rise_c = body.number("service-factor"), body.number("rise")
    stated = factor is not None or rise_c is not None
    limit = motor_overload_limit_a(
        tables, nameplate_a, service_factor=factor, rise_c=rise_c if stated else _PLAIN_RISE_C
    )
    if isinstance(limit, NotListed) or amps <= limit.value * 1.0005:
        return
    least = _rounded(limit.value)
    yield SETTING.finding(
        place,
        f"the overload device of {where} trips from {amps:g} A; its nameplate allows {limit.value:.4g} A",
        found=f"{amps:g} A, {share_of(amps / nameplate_a, f'{nameplate_a:g} A', digits=4)}",
        needed=f"{limit.value:.4g} A at the most ({limit})"
        + ("" if stated else "; with a service factor of 1.15, or a rise of 40 degC, written down it would be more"),
        change=f"Set it to {least:g} A or less, or write what the nameplate says of service factor and rise.",
        subject=subject,
        position=position,
        fixes=(
            Fix(f"Set the overload device to {least:g} A", (replace(place, f"overload {least:g} A"),), Safety.LOOK),
        ),
        clause=clause_of(view, SETTING),
    )


def _rounded(amps: float) -> float:
    """Rounded down to a setting that a relay's scale shows."""
    step = 0.1 if amps < 100 else 1.0
    return round(int(amps / step + 1e-9) * step, 1)
