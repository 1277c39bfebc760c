"""Series impedance of a transformer from its nameplate, or what is missing on it."""

from __future__ import annotations

from dataclasses import dataclass

from wyeline_grammar.linking import Equipment
from wyeline_grammar.model import Body
from wyeline_linter.circuit import iec60909
from wyeline_linter.circuit.nameplate import transformer_z_pu, transformer_z_pu_from_loss
from wyeline_linter.studies.case import Assumption, Case, Lack, Missing


@dataclass(frozen=True, slots=True)
class TransformerData:
    """Rating in VA, series impedance per unit (None where not known), zero-sequence impedance where stated, tap factor
    on the primary turns, no-load loss per unit, and K_T where IEC 60909 asks for it (already in ``z_pu``)."""

    s_va: float | None
    z_pu: complex | None
    z0_pu: complex | None
    tap: float
    idle_pu: float
    k_t: float
    missing: tuple[Missing, ...]
    assumed: tuple[Assumption, ...]


def x_over_r(body: Body) -> float | None:
    """X/R as written, either way round."""
    direct = body.number("x/r")
    if direct is not None:
        return direct
    turned = body.number("r/x")
    return None if not turned else 1 / turned


def transformer_data(
    equipment: Equipment, case: Case, practice: str | None, secondary_v: float, tolerance: float
) -> TransformerData:
    """The nameplate of a transformer for a case; ``secondary_v`` is line to line, ``tolerance`` how far above it its
    system may stand, for the factor of IEC 60909."""
    body, name, place = equipment.body, equipment.name, equipment.place
    s_va, z = body.number("power"), body.number("z")
    ratio = x_over_r(body)
    missing: list[Missing] = []

    def lacks(what: str, needed: str) -> None:
        missing.append(Missing(Lack.IMPEDANCE, name, f"`{name}` states no {what}", place, needed))

    if s_va is None:
        lacks("rating", "its kVA, such as `75 kVA`")
    if z is None:
        lacks("impedance (z)", "`z` from the nameplate, such as `z 4 %`")
    z_pu: complex | None = None
    if s_va is not None and z is not None:
        loss = _loss_w(body, s_va)
        if ratio is not None:
            z_pu = transformer_z_pu(100 * z, ratio)
        elif loss is not None and loss / s_va <= z:
            z_pu = transformer_z_pu_from_loss(100 * z, loss, s_va)
        else:
            lacks("x/r and no winding loss", "`x/r` or `loss` from the nameplate")
    k_t = 1.0
    if z_pu is not None and practice == "iec" and case is Case.MAX:
        k_t = iec60909.transformer_factor(z_pu.imag, iec60909.c_max(secondary_v, tolerance))
        z_pu *= k_t
    z0 = body.number("z0")
    z0_pu = None
    if z0 is not None and z_pu is not None and abs(z_pu) > 0:
        z0_pu = z_pu / abs(z_pu) * z0 * k_t
    idle = body.number("loss-idle")
    assumed = tuple(
        Assumption(name, f"{key} of `{name}`, {body.facts[key].value.text}", place, written=True)
        for key in ("z", "x/r", "r/x", "loss", "z0", "power")
        if key in body.facts and body.facts[key].assumed
    )
    return TransformerData(
        s_va,
        z_pu,
        z0_pu,
        1.0 + (body.number("tap") or 0.0),
        idle / s_va if idle and s_va else 0.0,
        k_t,
        tuple(missing),
        assumed,
    )


def _loss_w(body: Body, s_va: float) -> float | None:
    fact = body.facts.get("loss")
    if fact is None or not isinstance(fact.value.data, float | int):
        return None
    return fact.number * s_va if fact.value.dimension == "ratio" else fact.number
