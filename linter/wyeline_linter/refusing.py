"""Why a wire cannot feed something: from the pairs that were compared to one cause and plain sentences with numbers."""

from __future__ import annotations

from wyeline_grammar.notation import Voltage, VoltageForm
from wyeline_linter.matching import EXACT, Need, all_maps, candidates, checks_of, grade_of
from wyeline_linter.nameplate import NameplateVerdict, judge
from wyeline_linter.systems import LEGS, NEUTRAL, SQRT3, Shape, System, source_system, volts_text
from wyeline_linter.verdicts import Cause, LegMap, PairCheck, Refusal

_STILL_THE_SAME_EQUIPMENT = 0.2
"""A load that misses by up to this share is told about its nameplate; beyond, it is simply another voltage."""

_COUNT = {0: "no live wire", 1: "one live wire", 2: "two live wires", 3: "three live wires"}


def needed_text(wanted: Voltage | System, is_load: bool) -> str:
    """What is wanted, numbers first."""
    if isinstance(wanted, System):
        return wanted.figures()
    if wanted.form is VoltageForm.TWO_WIRE:
        volts = f"{wanted.line_v:g} to {volts_text(wanted.high_v)}" if wanted.high_v else volts_text(wanted.line_v)
        text = f"{volts} between two wires"
    else:
        text = source_system(wanted, frequency_hz=60.0).figures()
    return f"{text} (nameplate)" if is_load else text


def other_frequency(up: System, wanted: Voltage | System, needed: str, frequency_hz: float | None) -> Refusal | None:
    """The refusal where frequencies differ or direct current meets alternating, else None."""
    if isinstance(wanted, System):
        hz: float | None = wanted.frequency_hz
    elif wanted.form is VoltageForm.DC2:
        hz = 0.0
    else:
        hz = frequency_hz
    direct = up.frequency_hz == 0.0
    if hz == up.frequency_hz or (hz is None and not direct):
        return None
    here = "direct current" if direct else f"{up.frequency_hz:g} Hz"
    there = "alternating current" if hz is None else "direct current" if hz == 0.0 else f"{hz:g} Hz"
    return Refusal(
        Cause.FREQUENCY,
        up.figures() if here in up.figures() else f"{here}, {up.figures()}",
        needed if there in needed else f"{there}, {needed}",
        f"{there} equipment on {here} is not a matter of wiring: it takes a converter",
    )


def absent_conductors(up: System, absent: list[str], needed: str) -> Refusal:
    """Conductors were written that the supply does not have."""
    here = " ".join(up.conductors)
    if absent == [NEUTRAL]:
        return Refusal(Cause.NO_NEUTRAL, up.figures(), needed, f"there is no neutral here, only {here}")
    names = " and ".join(absent)
    return Refusal(Cause.MISSING_LEG, up.figures(), needed, f"there is no leg {names} here, only {here}")


def no_map(up: System, needs: tuple[Need, ...], needed: str, stated: tuple[str, ...] | None, is_load: bool) -> Refusal:
    """No choice of conductors fits: the cause, tried from what a drafter would see first."""
    found = up.figures()
    fewest = min(len(need.legs) for need in needs)
    if fewest > len(up.legs):
        return _too_few_legs(up, fewest, found, needed)
    bare = tuple(need.without_neutral() if len(need.legs) > 1 else need for need in needs)
    if not up.has_neutral and any(need.system.has_neutral for need in needs):
        volts = _only_the_neutral_lacks(up, needs, bare, is_load)
        if volts is not None:
            return _no_neutral(volts, found, needed)
    nearest = _nearest(up, needs, stated) or _nearest(up, needs, None)
    if nearest is None:  # every reading needs a neutral, there is none, and the legs do not fit either
        near_bare = _nearest(up, bare, None)
        checks = near_bare[1] if near_bare else ()
        why = f"{_voltage_why(up, checks)}; there is no neutral here either" if checks else "there is no neutral here"
        return Refusal(Cause.LEG_VOLTAGE if checks else Cause.NO_NEUTRAL, found, needed, why, checks)
    need, checks = nearest
    verdict = _worst_nameplate(need, checks) if is_load else None
    turned = _angle_only(up, needs, is_load)
    if turned is not None:
        split = any(need.system.shape is Shape.SPLIT3 for need in needs)
        return Refusal(Cause.ANGLE, found, needed, _angle_why(turned[0], split), turned, nameplate=verdict)
    if _only_the_high_leg(up, needs, is_load):
        why = f"only {up.high_leg} to neutral comes near, and it is the high leg: no circuit runs from it to neutral"
        return Refusal(Cause.HIGH_LEG, found, needed, why, checks, nameplate=verdict)
    if up.shape is Shape.HIGH_LEG3 and up.high_leg is not None:
        volts = up.nominal_v(up.high_leg, NEUTRAL)
        if any(
            grade_of(check, is_load, need.top_v) == 2 and {up.high_leg, NEUTRAL} == {*check.takes} for check in checks
        ):
            why = (
                f"{up.high_leg} is the high leg, {volts_text(volts)} to neutral, and equipment for less is destroyed; "
                f"only {' and '.join(up.legs)} come this far"
            )
            return Refusal(Cause.HIGH_LEG, found, needed, why, checks, nameplate=verdict)
    if verdict is not None and max(need.miss(check) for check in checks) <= _STILL_THE_SAME_EQUIPMENT:
        return Refusal(Cause.NAMEPLATE, found, needed, verdict.why(), checks, nameplate=verdict)
    return Refusal(Cause.LEG_VOLTAGE, found, needed, _voltage_why(up, checks), checks, nameplate=verdict)


def not_these_legs(
    up: System,
    needs: tuple[Need, ...],
    needed: str,
    stated: tuple[str, ...],
    fitting: tuple[LegMap, ...],
    is_load: bool,
) -> Refusal:
    """The supply could do it, but not on the legs that are written; ``fitting`` are the ways it could."""
    written = tuple(name for name in stated if name != NEUTRAL)
    legs = tuple(dict.fromkeys(written))
    found = up.restrict((*legs, NEUTRAL) if up.has_neutral else legs).figures()
    choices = " or ".join(dict.fromkeys(" ".join(m.legs) for m in fitting[:3]))
    nearest = _nearest(up, needs, stated)
    if nearest is None:
        counts = " or ".join(_COUNT[count] for count in sorted({len(m.legs) for m in fitting}))
        many = "is one leg" if len(legs) == 1 else f"are {len(legs)} legs"
        if len(legs) < len(written):
            many = "names a leg twice"
        have = "has" if counts == _COUNT[1] else "have"
        why = f"{' '.join(written)} {many}, and {counts} {have} to be taken: {choices}"
        return Refusal(Cause.PHASE_COUNT, found, needed, why, fitting=fitting)
    need, checks = nearest
    high = [check for check in checks if up.high_leg in check.takes and NEUTRAL in check.takes]
    if high:
        volts = volts_text(high[0].found_v)
        why = f"{up.high_leg} is the high leg, {volts} to neutral, and equipment for less is destroyed; take {choices}"
        return Refusal(Cause.HIGH_LEG, found, needed, why, checks, fitting)
    wrong = [check for check in checks if grade_of(check, is_load, need.top_v) == 2] or list(checks)
    why = f"{'; '.join(check.in_words() for check in wrong)}; {choices} would fit"
    return Refusal(Cause.LEG_VOLTAGE, found, needed, why, checks, fitting)


def wrong_poles(up: System, needed: str, maps: tuple[LegMap, ...], poles: int, switched_neutral: bool) -> Refusal:
    """The legs fit, but the device does not open them all, or has poles for wires that are not there."""
    counts = sorted({m.live_poles for m in maps})
    many = " or ".join(str(count) for count in counts)
    shown = f"{poles}p+N" if switched_neutral else f"{poles}p"
    found = f"{shown} device on {up.figures()}"
    wanted = f"{many} pole{'' if counts == [1] else 's'} for {needed}"
    if poles < counts[0]:
        live = "both wires are live" if counts == [2] else f"{many} live wires must open together"
        cause = Cause.ONE_POLE if poles == 1 and counts[0] == 2 else Cause.POLES
        return Refusal(cause, found, wanted, f"{live}, and a {shown} device leaves one connected", fitting=maps)
    if switched_neutral and not any(m.system.has_neutral for m in maps):
        why = "the device switches a neutral, and no neutral is taken here"
    else:
        live = "is 1 live wire" if counts == [1] else f"are {many} live wires"
        why = f"the device has {poles} poles, and there {live}"
    return Refusal(Cause.POLES, found, wanted, why, fitting=maps)


def _too_few_legs(up: System, fewest: int, found: str, needed: str) -> Refusal:
    have = _COUNT[len(up.legs)]
    part_of_three = up.shape in (Shape.TWO_LEGS3, Shape.HIGH_LEG3)
    if fewest == 3 and not part_of_three:
        why = f"three-phase equipment takes three live wires 120° apart; {have} cannot make a third"
        return Refusal(Cause.PHASE_COUNT, found, needed, why)
    why = f"{_COUNT[fewest]} are needed, and {have} {'arrives' if len(up.legs) < 2 else 'arrive'}"
    if part_of_three:
        why += f"; {' '.join(leg for leg in LEGS if leg not in up.legs)} does not come this far"
    return Refusal(Cause.MISSING_LEG, found, needed, why)


def _no_neutral(volts: float, found: str, needed: str) -> Refusal:
    why = (
        f"only live wires arrive, so nothing that takes {volts_text(volts)} to neutral can be connected; "
        "a neutral must be brought from the source or made by a transformer"
    )
    return Refusal(Cause.NO_NEUTRAL, found, needed, why)


def _only_the_neutral_lacks(up: System, needs: tuple[Need, ...], bare: tuple[Need, ...], is_load: bool) -> float | None:
    """Volts to neutral that are asked for where the legs fit, or where a neutral of this supply would give them."""
    line = up.nominal_v(up.legs[0], up.legs[1]) if len(up.legs) > 1 else 0.0
    for need, legs_only in zip(needs, bare, strict=True):
        if not need.system.has_neutral:
            continue
        volts = need.system.nominal_v(need.legs[0], NEUTRAL)
        if len(need.legs) > 1:
            fits = bool(all_maps(up, (legs_only,), is_load))
        else:
            would_be = (line / SQRT3, line / 2, line) if len(needs) == 1 else (line / SQRT3, line / 2)
            fits = any(abs(offered - volts) <= 0.05 * volts for offered in would_be)
        if fits:
            return volts
    return None


def _nearest(
    up: System, needs: tuple[Need, ...], stated: tuple[str, ...] | None
) -> tuple[Need, tuple[PairCheck, ...]] | None:
    """The try, on the stated legs if any, whose worst pair is least wrong."""
    legs = None if stated is None else tuple(name for name in stated if name != NEUTRAL)
    tries = [
        (need, checks_of(up, need, choice))
        for need in needs
        for choice in candidates(up, need)
        if legs is None or (choice[: len(need.legs)] == legs and len(need.legs) == len(legs))
    ]
    return min(tries, key=lambda one: round(max(map(one[0].miss, one[1])), 9), default=None)


def _worst_nameplate(need: Need, checks: tuple[PairCheck, ...]) -> NameplateVerdict:
    worst = max(checks, key=need.miss)
    return judge(worst.found_v, worst.needed_v, need.top_v)


def _angle_only(up: System, needs: tuple[Need, ...], is_load: bool) -> tuple[PairCheck, ...] | None:
    """The checks of a try where both legs have their voltage to neutral and only lie wrong to each other."""
    for need in needs:
        if len(need.legs) != 2 or not need.system.has_neutral:
            continue
        for choice in candidates(up, need):
            checks = checks_of(up, need, choice)
            if all(grade_of(check, is_load, need.top_v) < 2 for check in checks if NEUTRAL in check.needs):
                return checks
    return None


def _angle_why(legs: PairCheck, split_wanted: bool) -> str:
    first, second = legs.takes
    offered, wanted = volts_text(legs.found_v), volts_text(legs.needed_v)
    if split_wanted:
        return (
            f"{first} and {second} are 120° apart, so {offered} lies between them and not {wanted}, and their neutral "
            "carries full current; only the two ends of one centre-tapped winding are 180° apart"
        )
    return (
        f"{first} and {second} are the two ends of one winding, 180° apart, so {offered} lies between them "
        f"and not {wanted}"
    )


def _only_the_high_leg(up: System, needs: tuple[Need, ...], is_load: bool) -> bool:
    high = up.high_leg
    return high is not None and any(
        grade_of(checks_of(up, need, (high, NEUTRAL))[0], is_load, need.top_v) < 2
        for need in needs
        if need.system.has_neutral and len(need.legs) == 1
    )


def _voltage_why(up: System, checks: tuple[PairCheck, ...]) -> str:
    """Either no pair at all has the voltage, or the pairs that have it lie elsewhere."""
    wrong = [check for check in checks if grade_of(check, False, None) == 2] or list(checks)
    volts = wrong[0].needed_v
    offered: dict[float, list[str]] = {}
    for first, second, found in up.pair_voltages():
        offered.setdefault(found, []).append(f"{first}–{second}")
    if any(abs(found - volts) <= EXACT * volts for found in offered):
        return f"{'; '.join(check.in_words() for check in wrong)}; a wire cannot change voltage"
    listed = ", ".join(f"{volts_text(found)} on {' '.join(pairs)}" for found, pairs in offered.items())
    return f"no two wires here are {volts_text(volts)} apart ({listed}); a wire cannot change voltage"
