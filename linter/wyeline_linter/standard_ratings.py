"""Standard ratings and the limits measured by them: devices, transformers, motors.

Pure functions on the tables of a basis; `NotListed` says what a table does not hold. Each limit carries the percentage
it used, so that a working sheet can print it.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import Literal, NamedTuple

from .tables import Basis, Looked, NotListed

DeviceKind = Literal["breaker", "fuse", "mcb"]
_SLACK = 1e-9


@lru_cache(maxsize=64)
def device_ratings(basis: Basis, kind: DeviceKind = "breaker") -> tuple[float, ...]:
    """Standard ratings in amperes, smallest first (NEC 240.6(A); IEC 60898-1, 60947-2, 60269)."""
    table = basis.table("device-ratings")
    if isinstance(table, NotListed) or kind not in table.columns:
        return ()
    column = table.columns.index(kind)
    return tuple(rating for rating, key in table.numeric_keys if table.rows[key][column] is not None)


@lru_cache(maxsize=1024)
def is_standard_rating(basis: Basis, amps: float, kind: DeviceKind = "breaker") -> bool:
    """Whether a device of that rating is in the series."""
    return any(math.isclose(amps, rating) for rating in device_ratings(basis, kind))


def rating_at_least(basis: Basis, amps: float, kind: DeviceKind = "breaker") -> Looked[float] | NotListed:
    """The smallest standard rating that is not below `amps`."""
    for rating in device_ratings(basis, kind):
        if rating >= amps * (1 - _SLACK):
            return _rating(basis, rating, kind)
    return NotListed(f"no standard {kind} of {amps:g} A or more")


def rating_at_most(basis: Basis, amps: float, kind: DeviceKind = "breaker") -> Looked[float] | NotListed:
    """The largest standard rating that is not above `amps`."""
    for rating in reversed(device_ratings(basis, kind)):
        if rating <= amps * (1 + _SLACK):
            return _rating(basis, rating, kind)
    return NotListed(f"no standard {kind} of {amps:g} A or less")


@lru_cache(maxsize=1024)
def _rating(basis: Basis, rating: float, kind: str) -> Looked[float] | NotListed:
    found = basis.number("device-ratings", (f"{rating:g}",), kind)
    if isinstance(found, NotListed):
        return found
    return Looked(rating, found.table, found.row, found.status, found.note)


class DeviceLimit(NamedTuple):
    """The largest device something allows.

    `limit_a` is the bare figure, `largest_a` the largest standard rating it allows, after rounding up where the rule
    permits (`rounded_up`) and down where it does not.
    """

    limit_a: float
    largest_a: float
    rounded_up: bool
    percent: Looked[float] | None
    rating: Looked[float]


@lru_cache(maxsize=4096)
def _limit(
    basis: Basis, limit_a: float, *, round_up: bool, percent: Looked[float] | None, kind: DeviceKind
) -> DeviceLimit | NotListed:
    rating = rating_at_least(basis, limit_a, kind) if round_up else rating_at_most(basis, limit_a, kind)
    if isinstance(rating, NotListed):
        return rating
    above = rating.value > limit_a * (1 + _SLACK)
    return DeviceLimit(limit_a, rating.value, above, percent, rating)


def device_for_ampacity(
    basis: Basis, ampacity_a: float, kind: DeviceKind = "breaker", *, next_size_up: bool = True
) -> DeviceLimit | NotListed:
    """The largest device that protects a conductor of that ampacity.

    US: the next standard rating up where the ampacity is not one, to 800 A (NEC 240.4(B), (C)); `next_size_up` False
    for circuits of several receptacles and for transformer secondary conductors. IEC: In <= Iz (60364-4-43 433.1).
    """
    if basis.practice == "iec" or not next_size_up:
        return _limit(basis, ampacity_a, round_up=False, percent=None, kind=kind)
    most = basis.constant("round-up-limit")
    if isinstance(most, NotListed):
        return most
    up = _limit(basis, ampacity_a, round_up=True, percent=None, kind=kind)
    if isinstance(up, DeviceLimit) and (not up.rounded_up or up.largest_a <= most.value):
        return up
    return _limit(basis, ampacity_a, round_up=False, percent=None, kind=kind)


def conventional_current_ratio(basis: Basis, kind: DeviceKind, rating_a: float) -> Looked[float] | NotListed:
    """I2 / In of an overload device (IEC 60364-4-43 433.1); the conductor needs I2 <= 1.45 Iz."""
    table = basis.table("conventional-currents")
    if isinstance(table, NotListed):
        return table
    held = [key for start, key in table.numeric_keys if key[0] == kind and start <= rating_a]
    if not held:
        return NotListed(f"{table.cite} holds nothing for a {kind}", table.cite)
    return table.number(held[-1], "ratio")


# --- transformers


@lru_cache(maxsize=64)
def transformer_sizes_kva(basis: Basis, phases: Literal[1, 3]) -> tuple[float, ...]:
    """Usual transformer ratings, smallest first."""
    table = basis.table("transformer-sizes")
    column = "one" if phases == 1 else "three"
    if isinstance(table, NotListed) or column not in table.columns:
        return ()
    place = table.columns.index(column)
    return tuple(kva for kva, key in table.numeric_keys if table.rows[key][place] is not None)


def transformer_at_least(basis: Basis, kva: float, phases: Literal[1, 3]) -> Looked[float] | NotListed:
    """The smallest usual transformer of at least `kva`."""
    column = "one" if phases == 1 else "three"
    for size in transformer_sizes_kva(basis, phases):
        if size >= kva * (1 - _SLACK):
            found = basis.number("transformer-sizes", (f"{size:g}",), column)
            if isinstance(found, NotListed):
                return found
            return Looked(size, found.table, found.row, found.status, found.note)
    return NotListed(f"no usual {'single' if phases == 1 else 'three'}-phase transformer of {kva:g} kVA or more")


def transformer_device_limit(
    basis: Basis,
    rated_a: float,
    *,
    side: Literal["primary", "secondary"],
    secondary_protected: bool,
    kind: DeviceKind = "breaker",
) -> DeviceLimit | NotListed:
    """Largest device on a side of a transformer of 1000 V and less (NEC 450.3(B)).

    `secondary_protected`: a secondary device within the rule's limit exists, which allows 250 percent on the primary.
    A secondary limit is only asked for in that case.
    """
    table = basis.table("transformer-protection-lv")
    if isinstance(table, NotListed):
        return table
    method = "primary and secondary" if secondary_protected else "primary only"
    held = [key for start, key in table.numeric_keys if key[:2] == (method, side) and start <= rated_a]
    if not held:
        return NotListed(f"{table.cite} sets no {side} limit with protection of the primary only", table.cite)
    percent = table.number(held[-1], "percent")
    up = table.number(held[-1], "round_up")
    if isinstance(percent, NotListed):
        return percent
    round_up = isinstance(up, Looked) and up.value == 1
    return _limit(basis, rated_a * percent.value / 100, round_up=round_up, percent=percent, kind=kind)


def transformer_device_limit_mv(
    basis: Basis,
    rated_a: float,
    *,
    impedance_percent: float,
    side: Literal["primary", "secondary-mv", "secondary-lv"],
    supervised: bool,
    primary_only: bool = False,
    kind: Literal["breaker", "fuse"] = "breaker",
) -> DeviceLimit | NotListed:
    """Largest device on a side of a transformer with a winding over 1000 V (NEC 450.3(A), from memory).

    `supervised`: only qualified persons service it (a claim). Ratings are those of 240.6(A).
    """
    table = basis.table("transformer-protection-mv")
    if isinstance(table, NotListed):
        return table
    if primary_only and not supervised:
        return NotListed(f"{table.cite} allows a primary device alone only in supervised locations", table.cite)
    location = "supervised, primary only" if primary_only else "supervised" if supervised else "any"
    key = table.step_up_to(impedance_percent, (location,))
    if isinstance(key, NotListed):
        return key
    column = "secondary_lv" if side == "secondary-lv" else f"{side.replace('-', '_')}_{kind}"
    percent = table.number(key, column)
    up = table.number(key, "round_up")
    if isinstance(percent, NotListed):
        return percent
    round_up = isinstance(up, Looked) and up.value == 1
    return _limit(basis, rated_a * percent.value / 100, round_up=round_up, percent=percent, kind=kind)


# --- motors

_MOTOR_COLUMNS = (
    ("v115", 110, 120),
    ("v200", 200, 200),
    ("v208", 208, 208),
    ("v230", 220, 240),
    ("v460", 440, 480),
    ("v575", 550, 600),
    ("v2300", 2300, 2400),
)
"""Columns of the motor tables with the system voltages the headings of NEC 430.248 and 430.250 put under them."""

MotorKind = Literal["single-phase", "squirrel cage", "design B", "synchronous", "wound rotor", "direct current"]
MotorDevice = Literal["nontime_delay_fuse", "dual_element_fuse", "instantaneous_breaker", "inverse_time_breaker"]


@lru_cache(maxsize=4096)
def motor_current_a(basis: Basis, hp: float, volts: float, phases: Literal[1, 3]) -> Looked[float] | NotListed:
    """Full-load current of a motor from the table (NEC 430.248, 430.250), amperes.

    `volts` is the motor's or the system's voltage. A power or voltage between the rows is NotListed: the nameplate or
    an engineer decides.
    """
    table = basis.table(f"motor-current-{phases}ph")
    if isinstance(table, NotListed):
        return NotListed(f"{basis.title} has no motor current table; the nameplate current is needed")
    column = next((name for name, low, high in _MOTOR_COLUMNS if low <= volts <= high), None)
    if column is None:
        return NotListed(f"{table.cite} has no column for {volts:g} V", table.cite)
    powers = {horsepower(key[0]): key for key in table.rows}
    key = next((key for power, key in powers.items() if math.isclose(power, hp)), None)
    if key is not None:
        return table.number(key, column)
    below = max((p for p in powers if p < hp), default=None)
    above = min((p for p in powers if p > hp), default=None)
    around = " and ".join(f"{p:g}" for p in (below, above) if p is not None)
    return NotListed(f"{table.cite} has no row for {hp:g} hp; nearest {around} hp", table.cite)


@lru_cache(maxsize=1024)
def horsepower(text: str) -> float:
    """A power as motor tables write it: `7-1/2` is 7.5, `1/3` a third. Raises ValueError."""
    *whole, part = text.split("-")
    top, _, bottom = part.partition("/")
    if not bottom:
        return float(part) + sum(map(float, whole))
    return (sum(map(int, whole)) * int(bottom) + int(top)) / int(bottom)


def motor_device_limit(
    basis: Basis, full_load_a: float, motor: MotorKind, device: MotorDevice
) -> DeviceLimit | NotListed:
    """Largest branch-circuit short-circuit and ground-fault device of one motor (NEC 430.52(C)(1)).

    Rounded up to the next standard rating (exception 1); the limit of an instantaneous-trip breaker is a setting.
    """
    percent = basis.number("motor-device-limits", (motor,), device)
    if isinstance(percent, NotListed):
        return percent
    limit_a = full_load_a * percent.value / 100
    if device == "instantaneous_breaker":
        setting = Looked(limit_a, percent.table, percent.row, percent.status, percent.note)
        return DeviceLimit(limit_a, limit_a, False, percent, setting)
    kind: DeviceKind = "breaker" if device == "inverse_time_breaker" else "fuse"
    return _limit(basis, limit_a, round_up=True, percent=percent, kind=kind)


def motor_feeder_device(
    basis: Basis, largest_branch_device_a: float, other_full_load_a: float, kind: DeviceKind = "breaker"
) -> DeviceLimit | NotListed:
    """Largest feeder device of several motors: largest branch device and the other currents, rounded down (430.62)."""
    return _limit(basis, largest_branch_device_a + other_full_load_a, round_up=False, percent=None, kind=kind)


def motor_overload_limit_a(
    basis: Basis, nameplate_a: float, *, service_factor: float | None, rise_c: float | None
) -> Looked[float] | NotListed:
    """Largest overload setting (NEC 430.32(A)(1)), amperes: 125 percent with service factor 1.15 or 40 degC rise."""
    if service_factor is None and rise_c is None:
        return NotListed("neither the service factor nor the temperature rise is stated")
    cool = (service_factor or 0) >= 1.15 or (rise_c is not None and rise_c <= 40)
    percent = basis.constant("motor-overload-percent" if cool else "motor-overload-other-percent")
    if isinstance(percent, NotListed):
        return percent
    return Looked(
        nameplate_a * percent.value / 100, percent.table, f"{percent.value:g} %: {percent.row}", percent.status
    )


def locked_rotor_kva_per_hp(basis: Basis, letter: str) -> tuple[Looked[float], Looked[float] | None] | NotListed:
    """Range of locked-rotor kVA per hp of a code letter (NEC 430.7(B)); the upper end of V is open (None)."""
    low = basis.number("code-letters", (letter,), "kva_per_hp_from")
    if isinstance(low, NotListed):
        return low
    high = basis.number("code-letters", (letter,), "kva_per_hp_to")
    return low, (None if isinstance(high, NotListed) else high)
