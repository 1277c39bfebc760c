"""The figures of a version that two versions are compared by, each with the limits that it is held against.

They are read from ``figures``; a figure that is not named here is compared all the same, under the words of its keys.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any, NamedTuple

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.figures import model_figures
from wyeline_linter.findings import Severity
from wyeline_linter.loading import Loading, feeder_amps, loading_of
from wyeline_linter.view import View


class Limit(NamedTuple):
    """What a figure is held against: ``words`` stand behind "above"; ``amount`` is in the figure's unit."""

    words: str
    amount: float
    gravity: Severity


@dataclass(frozen=True, slots=True)
class Measured:
    """A figure of one subject: a number, a text, or None with the reasons (``unknown``).

    ``unit`` is ``A``, ``VA``, ``W``, ``V``, ``ratio``, `BALANCE` or empty; ``family`` holds words by which the rules
    that judge it are known.
    """

    subject: str
    name: str
    value: float | str | None
    unit: str = ""
    limits: tuple[Limit, ...] = ()
    unknown: tuple[str, ...] = ()
    family: tuple[str, ...] = ()
    state: str = ""
    """The switch state of a figure that is the worst of all, in words; empty as normal."""

    @property
    def over(self) -> Limit | None:
        """The gravest limit that it exceeds."""
        if not isinstance(self.value, float):
            return None
        exceeded = [limit for limit in self.limits if self.value > limit.amount * (1 + 1e-9)]
        return max(exceeded, key=lambda limit: (limit.gravity, limit.amount), default=None)

    @property
    def used(self) -> tuple[float, Limit] | None:
        """How much of its gravest limit it takes (1 all of it); None where it has none or is not a number."""
        gravest = max(self.limits, key=lambda limit: (limit.gravity, limit.amount), default=None)
        if gravest is None or not isinstance(self.value, float) or not gravest.amount:
            return None
        return self.value / gravest.amount, gravest


FULL_ENOUGH = 0.5
"""Share of its rating from which the balance of a board's legs matters (common practice, no source)."""
BALANCE = "of the mean"
"""The unit of a leg's load above the mean of all legs."""

Measures = dict[tuple[str, str], Measured]

VOLTAGE, ARRIVING, LOAD, WINDING, UNBALANCE = (
    "voltage",
    "voltage at its input",
    "demand load",
    "winding load",
    "leg unbalance",
)
FAULT, SMALLEST, PEAK = "available fault", "smallest fault", "peak of a fault"
SIZING, NEUTRAL = "load that wires and devices are sized by", "neutral current"
"""Of boards; told where they do not simply go with the demand load."""
IN_WORST = " in the worst switch state"
"""Stands behind the name of a figure that is the worst of all switch states."""
CURRENT, DROP, LOADED = "demand current", "voltage drop", "lowest voltage under load"
_LOADS, _FAULTS, _DROPS = ("overload", "load-high", "load-margin"), ("fault", "interrupt", "withstand"), ("drop",)


def measures_of(view: View) -> Measures:
    """Every figure of a version by subject (equipment or a feeder's key) and name."""
    figures = model_figures(view)
    found: Measures = {}
    for name, entry in figures["equipment"].items():
        for measured in _of_equipment(view, view.model.equipment[name], entry):
            found[measured.subject, measured.name] = measured
    for key, entry in figures["feeders"].items():
        for measured in _of_feeder(view, view.model.feeders[key], entry):
            found[measured.subject, measured.name] = measured
    return found


_KNOWN = frozenset(
    """kind status description source fed_from path system unknown arriving load winding voltage_under_load fault
    drop""".split()
)


def _of_equipment(view: View, equipment: Equipment, entry: dict[str, Any]) -> Iterator[Measured]:
    name = equipment.name
    unknown = entry.get("unknown", {})
    yield _voltage(name, VOLTAGE, entry["system"], unknown.get("system", ()))
    if "arriving" in entry:
        yield _voltage(name, ARRIVING, entry["arriving"], unknown.get("arriving", ()))
    load = entry.get("load")
    if load is not None:
        yield from _load(view, name, load)
    if "fault" in entry:
        yield from _fault(name, entry["fault"], unknown.get("fault", ()), equipment)
    if "drop" in entry:
        limit = view.model.project.number("drop-path") or view.settings.drop_path
        yield _drop(name, entry["drop"], unknown.get("drop", ()), limit, "the way from the source")
    loaded = entry.get("voltage_under_load")
    if loaded is not None:
        yield Measured(name, LOADED, loaded["lowest"]["part"], "ratio")
    for key in sorted(entry.keys() - _KNOWN):
        yield from _other(name, key, entry[key], unknown.get(key, ()))


_KNOWN_OF_FEEDER = frozenset(
    "from to normally_open length_m device_a legs carried refused unknown current fault_at_end drop".split()
)


def _of_feeder(view: View, feeder: Feeder, entry: dict[str, Any]) -> Iterator[Measured]:
    key, unknown = feeder.key, entry.get("unknown", {})
    amps = feeder_amps(view, feeder)
    node = view.loads.nodes.get(feeder.target.name)
    if amps is not None or (node is not None and node.up.unknown and not node.up.empty):
        device = feeder.body.number("rating")
        limits = _shares(view, device, f"{device:g} A device" if device else "")
        reasons = () if amps is not None or node is None else tuple(node.up.unknown)
        yield Measured(key, CURRENT, amps, "A", limits, reasons, _LOADS)
    if "drop" in entry:
        target = view.model.equipment.get(feeder.target.name)
        leaf = target is not None and not view.model.feeders_from.get(target.name)
        limit = (view.model.project.number("drop-branch") or view.settings.drop_branch) if leaf else None
        yield _drop(key, entry["drop"], unknown.get("drop", ()), limit, "a branch")
    for word in sorted(entry.keys() - _KNOWN_OF_FEEDER):
        yield from _other(key, word, entry[word], unknown.get(word, ()))


def _voltage(name: str, measure: str, system: dict[str, Any] | None, reasons: Sequence[str]) -> Measured:
    if system is None:
        return Measured(name, measure, None, unknown=tuple(reasons))
    return Measured(name, measure, f"{system['nominal']}: {system['in_words']}")


def _load(view: View, name: str, load: dict[str, Any]) -> Iterator[Measured]:
    demand, reasons = load["demand"], tuple(load["unknown"].get("demand", ()))
    loading: Loading | None = loading_of(view, name) if demand is not None else None
    if loading is not None:
        words = (
            f"{f'{loading.limit:g} A' if loading.unit == 'A' else written(loading.limit, loading.unit)} {loading.of}"
        )
        yield Measured(name, LOAD, loading.carried, loading.unit, _shares(view, loading.limit, words), (), _LOADS)
    else:
        amount = None if demand is None else float(demand["va"])
        yield Measured(name, LOAD, amount, "VA", (), reasons, _LOADS)
    board = view.model.equipment[name].kind in BOARDS
    sizing, neutral = load["sizing"], load["neutral"]
    if board and sizing is not None and demand is not None:
        legs = [amps for leg, amps in sizing["amps"].items() if leg != "N"]
        yield Measured(name, SIZING, max(legs, default=float(sizing["va"])), "A" if legs else "VA")
    if board and neutral is not None:
        yield Measured(name, NEUTRAL, float(neutral["demand_a"]), "A")
    if board and load["unbalance"] is not None:
        most = view.settings.balance
        # As the rule has it: on a nearly empty board unbalance harms nobody.
        full = loading is not None and loading.share > FULL_ENOUGH
        limits = (Limit(f"{100 * most:g} %", most, Severity.ADVICE),) if full else ()
        yield Measured(name, UNBALANCE, float(load["unbalance"]), BALANCE, limits, (), ("unbalanced",))
    windings = [w for w in load.get("windings", ()) if w["share"] is not None]
    if windings:
        worst = max(windings, key=lambda w: w["share"])
        words = f"{written(worst['limit_a'], 'A')} share of {worst['part']}"
        yield Measured(name, WINDING, float(worst["amps"]), "A", _shares(view, worst["limit_a"], words), (), _LOADS)


def _shares(view: View, rating: float | None, words: str) -> tuple[Limit, ...]:
    """A rating, and the share of it that the settings call nearly full."""
    if not rating:
        return ()
    share = view.settings.loading
    near = Limit(f"{100 * share:g} % of its {words}", share * rating, Severity.WARNING)
    return (Limit(f"its {words}", rating, Severity.ERROR), near)


# figures of studies


def _fault_limits(equipment: Equipment) -> Iterator[Limit]:
    for key in ("series" if "series" in equipment.body.facts else "rated", "withstand"):
        rating = equipment.body.number(key)
        if rating:
            words = f"its {written(rating, 'A')} {'rating' if key == 'rated' else f'{key} rating'}"
            yield Limit(words, rating, Severity.ERROR)


def _fault(
    subject: str, fault: dict[str, Any] | None, reasons: Sequence[str], equipment: Equipment
) -> Iterator[Measured]:
    """The largest and the smallest fault current, and the first peak where a rating for it is written."""
    why = {} if fault is None else fault["unknown"]
    # Below a source taken as unlimited the largest fault is a ceiling: no rating is judged by it.
    judged = fault is None or fault["ceiling"] is None
    ratings = tuple(_fault_limits(equipment)) if judged else ()
    for name, key, limits in ((FAULT, "largest", ratings), (SMALLEST, "smallest", ())):
        worst = None if fault is None else fault[key]
        amps = None if worst is None else worst["amps"]
        lacks = () if amps is not None else tuple(reasons) or tuple(why.get(key, ()))
        if amps is not None or lacks:  # neither: nothing limits it, or none flows
            yield Measured(subject, name, amps, "A", limits, lacks, _FAULTS)
    rated = equipment.body.number("peak")
    peaks = [] if fault is None else [one["peak_a"] for one in fault["max"].values() if one["peak_a"] is not None]
    if rated and peaks and judged:
        limit = Limit(f"its {written(rated, 'A')} peak rating", rated, Severity.ERROR)
        yield Measured(subject, PEAK, max(peaks), "A", (limit,), (), ("peak",))


def _drop(subject: str, drop: dict[str, Any] | None, reasons: Sequence[str], limit: float | None, of: str) -> Measured:
    # A drop is aimed for, not required: as grave as its rule, which then tells the same in one entry.
    limits = () if limit is None else (Limit(f"the {100 * limit:g} % for {of}", limit, Severity.ADVICE),)
    part = None if drop is None else drop["part"]
    return Measured(subject, DROP, part, "ratio", limits, () if part is not None else tuple(reasons), _DROPS)


def _other(subject: str, key: str, value: object, reasons: Sequence[str]) -> Iterator[Measured]:
    """A figure that has no words of its own here: each of its numbers under its keys."""
    numbers = list(_numbers(value, (key,)))
    for path, number in numbers:
        yield Measured(subject, " ".join(path).replace("_", " "), number, _unit(path))
    if not numbers and (value is None or reasons):
        yield Measured(subject, key.replace("_", " "), None, unknown=tuple(reasons) or tuple(_reasons(value)))


_RATIOS = frozenset("part share ratio per_unit pu fraction".split())
_AMPERES = frozenset("a amps amperes current".split())
_UNITS = {"va": "VA", "w": "W", "v": "V", "volts": "V", "ohm": "ohm", "m": "m", "deg": "deg"}


def _unit(path: tuple[str, ...]) -> str:
    """The unit that the last keys of a figure name (SI base units)."""
    for step in reversed(path):
        words = step.rsplit("_", 1)
        last = words[-1]
        if last in _AMPERES:
            return "A"
        if last in _RATIOS or step in _RATIOS:
            return "ratio"
        if last in _UNITS:
            return _UNITS[last]
    return ""


def _numbers(value: object, path: tuple[str, ...]) -> Iterator[tuple[tuple[str, ...], float]]:
    if isinstance(value, bool) or value is None:
        return
    if isinstance(value, int | float):
        yield path, float(value)
    elif isinstance(value, dict):
        for key, inner in value.items():
            if key != "unknown":
                yield from _numbers(inner, (*path, str(key)))
    elif isinstance(value, list):
        for i, inner in enumerate(value):
            step = "-".join(inner["between"]) if isinstance(inner, dict) and "between" in inner else str(i + 1)
            yield from _numbers(inner, (*path, step))


def _reasons(value: object) -> Iterator[str]:
    """The reasons that stand under any ``unknown`` within a figure."""
    if not isinstance(value, dict):
        return
    for key, inner in value.items():
        if key == "unknown":
            groups = inner.values() if isinstance(inner, dict) else [inner]
            for group in groups:
                yield from (str(reason) for reason in (group if isinstance(group, list) else [group]) if reason)
        else:
            yield from _reasons(inner)


# writing


def written(value: float, unit: str, digits: int = 3) -> str:
    """A figure for people: three digits that count, kilo from a thousand."""
    if unit in ("ratio", BALANCE):
        return f"{_digits(100 * value, digits)} %"
    if unit in ("A", "VA", "W", "V") and abs(value) >= 999.5:
        kilo = _digits(value / 1000, digits)
        return f"{kilo} k{unit}"
    return f"{_digits(value, digits)} {unit}".rstrip()


def _digits(value: float, digits: int) -> str:
    size = len(str(int(abs(value)))) if abs(value) >= 1 else 1
    text = f"{value:.{max(0, digits - size)}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text == "-0" else text  # a drop of nothing, from the last digit of a calculation


def from_to(old: float, new: float, unit: str) -> str:
    """``9.1 -> 14.3 kA``: a shared unit said once, with as many digits as it takes to tell the two apart."""
    for digits in (3, 4, 5, 6):
        a, b = written(old, unit, digits), written(new, unit, digits)
        if a != b:
            break
    first, second = a.split(" "), b.split(" ")
    return f"{first[0] if first[1:] == second[1:] else a} -> {b}"
