"""What faults to earth at the far end of a line draw, by the fault study and the line's own wires; asks the studies."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.protection.disconnection import leg_to_neutral_v
from wyeline_linter.protection.lines import Line, feeder_line
from wyeline_linter.protection.trip import impedance_ohm
from wyeline_linter.systems import NEUTRAL, Arrangement, Known

if TYPE_CHECKING:
    from wyeline_linter.studies.line_impedance import LineData
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View


def has_rcd(view: View, line: Line) -> bool:
    """Whether a residual current device sees an earth fault on the line."""
    if "rcd" in line.body.facts or "gfci" in line.body.flags:
        return True
    state = view.state(line.source.name)
    return state is not None and state.onward is not None and state.onward.rcd_a is not None


class Behind(NamedTuple):
    """What drives earth faults on a line up to where it starts: the volts, and the ohms that they have passed already;
    ``faults`` is 2 where two faults at once share the volts."""

    volts: float
    ohm: complex
    faults: int = 1

    def amps(self, loop: complex) -> float:
        """The fault through the line's own wires, there and back."""
        return self.volts / (self.faults * abs(self.ohm + loop))


def behind_of(view: View, line: Line) -> list[Behind]:
    """What drives an earth fault on a feeder, in every switch state in which it is known; in an IT system, two of them
    (IEC 60364-4-41 411.6.4)."""
    if line.system.earthing.arrangement is Arrangement.IT:
        second = _behind_second(view, line)
        return [] if second is None else [second]
    supplied = [
        study for study in view.studies.for_faults()
        if line.feeder is None or study.connectivity.supply.get(line.feeder.target.name) is line.feeder
    ]  # fmt: skip
    return [made for study in supplied if (made := _behind(study, line)) is not None]


def _behind(study: StateStudy, line: Line) -> Behind | None:
    faults = study.smallest
    found = faults.at(line.source.name).get("line-ground")
    if found is None or not found.amperes:
        return None
    bus = faults.bus(line.source.name)
    factor = faults.voltage_factor(bus) if bus is not None else 1.0  # which the fault at the board holds already
    volts = max(line.system.volts_to_ground(leg) for leg in line.system.legs) * factor
    return Behind(volts, impedance_ohm(volts, found.amperes, found.x_over_r))


def least_earth_a(view: View, line: Line) -> tuple[float, str] | None:
    """The smallest earth fault at the far end of a line in any switch state, A, and the words for that state."""
    from wyeline_linter.studies.scenarios import when

    best: tuple[float, str] | None = None
    for study in view.studies.for_faults():
        amps = _end_earth_a(study, line)
        if amps is not None and amps > 0 and (best is None or amps < best[0]):
            best = amps, when(study.state)
    return best


def _end_earth_a(study: StateStudy, line: Line) -> float | None:
    """The smallest current of a leg to the protective conductor at the far end; None where it is not known."""
    if line.feeder is not None:
        target = line.target
        if target is None or study.connectivity.supply.get(target.name) is not line.feeder:
            return None
        found = study.smallest.at(target.name, entering=True).get("line-ground")
        return found.amperes if found is not None else None
    loop = _loop_ohm(study, line)
    behind = _behind(study, line) if loop is not None else None
    return behind.amps(loop) if behind is not None and loop is not None else None


def _loop_ohm(study: StateStudy, line: Line, *, by_neutral: bool = False) -> complex | None:
    """Leg, or neutral, and protective conductor of a line, hot, there and back; None where one is not known."""
    data = _hot(study, line)
    out = data.neutral if by_neutral else data.leg
    return None if out is None or data.protective is None else out + data.protective


def _hot(study: StateStudy, line: Line) -> LineData:
    from wyeline_linter.studies.case import Case
    from wyeline_linter.studies.line_impedance import conduit_of, line_data

    return line_data(
        line.body,
        key=f"{line.subject} {line.position}".strip(),
        place=line.place,
        legs=len(line.system.legs),
        neutral=NEUTRAL in line.system.conductors,
        chosen=line.tables,
        case=Case.MIN,
        conduit=conduit_of(line.body.raceway, study.stuff_of),
        frequency_hz=line.system.frequency_hz,
    )


def second_fault_a(view: View, line: Line) -> float | None:
    """What two earth faults at once draw in an IT system, each at the far end of a line like this one, A; None where a
    wire or a length is not known."""
    behind = _behind_second(view, line)
    loop = _loop_ohm(view.studies.normal, line, by_neutral=_by_neutral(line)) if behind is not None else None
    return behind.amps(loop) if behind is not None and loop else None


def _by_neutral(line: Line) -> bool:
    """Whether one of the two faults may lie on a neutral of the line."""
    return line.system.has_neutral and line.wiring.neutral is not None


def _behind_second(view: View, line: Line) -> Behind | None:
    """Half the voltage drives each of two loops, from what makes the system on: that of a leg to neutral where a
    neutral comes along the way, since the other fault may lie on it, else that between legs."""
    volts, study = leg_to_neutral_v(line.system) if _by_neutral(line) else None, view.studies.normal
    total, name = 0j, line.source.name
    while name != line.maker:
        feeder, state = view.network.supply.get(name), view.state(name)
        above = feeder_line(view, feeder) if feeder is not None else None
        part = _loop_ohm(study, above, by_neutral=_by_neutral(above)) if above is not None else None
        if above is None or above.maker != line.maker or part is None:
            return None
        if volts is None and state is not None and isinstance(state.system, Known):
            volts = leg_to_neutral_v(state.system.system)
        total += part
        name = above.source.name
    return Behind(volts or line.system.widest_v, total, 2)
