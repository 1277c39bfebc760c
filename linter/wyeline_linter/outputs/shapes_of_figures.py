"""What ``wyeline show --json`` holds; see ``shapes.py`` for how these are written."""

from typing import Annotated, Literal, NotRequired, TypedDict

from wyeline_linter.outputs.shapes import Reasons


class PairVolts(TypedDict):
    """Volts between two conductors."""

    between: list[str]
    volts: float | None


class SystemFigures(TypedDict):
    """A voltage system: nominal volts of every pair, volts to ground by leg. Legs are A, B, C; `in_words` calls them as
    the practice does."""

    nominal: str
    in_words: str
    conductors: list[str]
    frequency_hz: float | None
    pairs: list[PairVolts]
    to_ground_v: dict[str, float]
    earthing: str


class AmountFigures(TypedDict):
    """An amount of load: totals, by leg as a panel schedule splits it, and amperes of phasors by conductor."""

    va: float
    w: float
    leg_va: dict[str, float]
    amps: dict[str, float]


class ClassFigures(TypedDict):
    """The loads of one class, and the demand factor that counts for them."""

    class_: str
    continuous: bool
    units: int
    connected_va: float
    factor: float
    factor_stated: bool
    of_dwelling: bool
    demand_va: float
    third_harmonic_part: Annotated[float | None, "As stated; 0 where it cannot return through a neutral."]


class NeutralFigures(TypedDict):
    """Amperes of the neutral: under demand with the third harmonic, at worst (which leg then carries), and after what
    the code lets off. The third harmonic as it adds up there, as a part of the leg currents, and the load under demand
    that states none; null where no load states one."""

    demand_a: float
    worst_a: float | None
    worst_leg: str | None
    reduced_a: float | None
    third_harmonic_a: float | None
    third_harmonic_part: float | None
    third_harmonic_unstated_va: float | None


class WindingLoad(TypedDict):
    """What one winding carries of what it may carry."""

    between: list[str]
    part: str
    amps: float | None
    limit_a: float
    share: float | None


class ArrivingLoad(TypedDict):
    """What two-sided equipment draws at its input."""

    connected: AmountFigures | None
    demand: AmountFigures | None
    sizing: AmountFigures | None
    unknown: Reasons


class LoadFigures(ArrivingLoad):
    """What equipment carries: connected, under demand, and as the code sizes by."""

    known_va: Annotated[float, "What the known loads add up to."]
    by_class: list[ClassFigures]
    left_out: list[str]
    apart_va: float
    neutral: NeutralFigures | None
    unbalance: Annotated[float | None, "How far the fullest leg is above the mean of all."]
    arriving: NotRequired[ArrivingLoad]
    windings: NotRequired[list[WindingLoad]]


class LoadedPair(TypedDict):
    """Volts under load between two conductors."""

    between: list[str]
    volts: float | None
    nominal_v: float | None


class EndOfPairs(TypedDict):
    """The lowest or highest pair, as a part of nominal."""

    between: list[str]
    volts: float | None
    part: float | None


class UnbalanceFigures(TypedDict):
    """Unbalance of three legs: largest deviation over the mean, and negative over positive sequence."""

    deviation_part: float | None
    negative_part: float | None


class VoltageUnderLoad(TypedDict):
    """Voltages of the load flow."""

    pairs: list[LoadedPair]
    lowest: EndOfPairs
    highest: EndOfPairs
    unbalance: UnbalanceFigures | None


class FeederDropOnPath(TypedDict):
    """What one feeder of a path loses."""

    feeder: str
    volts: float | None


class PathDrop(TypedDict):
    """The drop in the wires from the source, and the transformers on the way, whose loss is not in it."""

    part: float | None
    feeders: list[FeederDropOnPath]
    transformers: list[str]


class FaultFigures(TypedDict):
    """One fault current."""

    amps: float | None
    tied: list[str]
    x_over_r: float | None
    peak_a: float | None
    asymmetrical_a: float | None
    note: str | None


class WorstFault(FaultFigures):
    """A fault current and its kind."""

    kind: str


class Faults(TypedDict):
    """Faults by kind, at their largest and smallest; `ceiling` names a source taken as unlimited."""

    max: dict[str, FaultFigures]
    min: dict[str, FaultFigures]
    largest: WorstFault | None
    smallest: WorstFault | None
    ceiling: str | None
    unknown: Reasons


class FaultsAtEnd(Faults):
    """Faults at the end of a feeder."""

    largest_a: float | None
    smallest_a: float | None


class WindingFigures(TypedDict):
    """How a transformer is connected."""

    connection: str
    shift_deg: float | None
    separately_derived: bool
    unknown: Reasons


class StateFigures(TypedDict):
    """Figures of one switch state."""

    state: str
    load_a: NotRequired[float | None]
    current_a: NotRequired[float | None]
    voltage_part: NotRequired[float | None]
    drop_part: NotRequired[float | None]
    fault_max_a: NotRequired[float | None]
    fault_min_a: NotRequired[float | None]


class WorstFigure(TypedDict):
    """The worst value of all switch states, its state, and those in which it is not known."""

    value: float | None
    state: str
    unknown_in: list[str]


class CircuitFigures(TypedDict):
    """Figures at the end of a circuit."""

    circuit: str
    own_drop_part: float | None
    load_a: float | None
    voltage_part: float | None
    drop_part: float | None
    fault_max_a: float | None
    fault_min_a: float | None
    states: NotRequired[list[StateFigures]]
    worst: NotRequired[dict[str, WorstFigure]]


class EquipmentFigures(TypedDict):
    """The figures of one piece of equipment."""

    kind: str
    status: str
    description: str | None
    source: Annotated[str | None, "The source at the top of what supplies it."]
    fed_from: str | None
    path: Annotated[list[str], "The feeders from the source on down."]
    system: SystemFigures | None
    unknown: Reasons
    arriving: NotRequired[SystemFigures | None]
    load: NotRequired[LoadFigures]
    voltage_under_load: NotRequired[VoltageUnderLoad | None]
    drop: NotRequired[PathDrop | None]
    fault: NotRequired[Faults | None]
    winding: NotRequired[WindingFigures]
    states: NotRequired[list[StateFigures]]
    worst: NotRequired[dict[str, WorstFigure]]
    circuits: NotRequired[list[CircuitFigures]]


class RefusedFigures(TypedDict):
    """Why a feeder cannot feed."""

    cause: str
    found: str
    needed: str
    why: str


class JudgedLoad(TypedDict):
    """The load that the current and the drop of a feeder are for."""

    is_: str
    va: float | None
    connected_va: float | None


class CurrentFigures(TypedDict):
    """Amperes by conductor in a feeder."""

    amps: dict[str, float | None]
    largest_a: float | None
    neutral_a: float | None
    loss_w: float | None
    load: JudgedLoad | None


class FeederDrop(TypedDict):
    """The drop in a feeder, between the conductors that lose most."""

    between: list[str]
    volts: float | None
    part: float | None


class FeederFigures(TypedDict):
    """The figures of one feeder."""

    from_: str
    to: str
    normally_open: bool
    length_m: float | None
    device_a: float | None
    legs: list[str] | None
    carried: SystemFigures | None
    refused: RefusedFigures | None
    unknown: Reasons
    current: NotRequired[CurrentFigures | None]
    drop: NotRequired[FeederDrop | None]
    fault_at_end: NotRequired[FaultsAtEnd | None]
    states: NotRequired[list[StateFigures]]
    worst: NotRequired[dict[str, WorstFigure]]


class IssueEntry(TypedDict):
    """An issue of the project; without a date it is being prepared. A name says nothing of a signature."""

    issue: str
    date: str | None
    purpose: str | None
    drawn: str | None
    checked: str | None


class ProjectFigures(TypedDict):
    """What a title block says: null is what nobody states. `revision` is as stated, else the newest issue; of `issues`
    the newest comes first."""

    name: str | None
    number: str | None
    client: str | None
    engineer: str | None
    basis: str | None
    revision: str | None
    date: str | None
    drawn: str | None
    checked: str | None
    issues: list[IssueEntry]


class SwitchStateEntry(TypedDict):
    """A switch state that is looked at."""

    state: str
    words: str


class ShowReport(TypedDict):
    """What `wyeline show --json` prints."""

    version: Literal[2]
    project: ProjectFigures
    state: str
    states: list[SwitchStateEntry]
    left_out: list[str]
    unlocked_ties: list[str]
    equipment: dict[str, EquipmentFigures]
    feeders: dict[str, FeederFigures]
