"""Which switch states are looked at, and the worst value among them with the state that causes it."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING, NamedTuple

from wyeline_linter.network import (
    BYPASS,
    NORMAL,
    NORMAL_STATE,
    Network,
    SwitchState,
    build,
    has_bypass,
    makes_system,
)
from wyeline_linter.studies.fault import FaultCurrent, FaultView

if TYPE_CHECKING:
    from wyeline_linter.circuit.layout import Floats, Ints
    from wyeline_linter.studies.study import StateStudy
    from wyeline_linter.view import View

EMERGENCY = "emergency"


class WorstFault(NamedTuple):
    """The fault current that decides at a place, with the switch state in which it flows."""

    fault: FaultCurrent
    faults: FaultView
    state: SwitchState

    @property
    def when(self) -> str:
        """`` in "Grid lost"``, `` without `UTIL` ``, or nothing as normal."""
        return when(self.state)


def when(state: SwitchState) -> str:
    """The words for a switch state behind a figure."""
    return state.words or ("" if state.name == NORMAL_STATE.name else f' in "{state.name}"')


def worst_fault(studies: Iterable[StateStudy], read: Callable[[FaultView], FaultCurrent | None]) -> WorstFault | None:
    """The largest fault current that ``read`` gives in any of the switch states."""
    found: WorstFault | None = None
    for study in studies:
        fault = read(study.largest)
        if fault is None or fault.amperes is None:
            continue
        amperes = found.fault.amperes if found is not None else None
        # A later state decides only where it differs by more than the last digits.
        if amperes is None or fault.amperes > amperes * (1 + 1e-9):
            found = WorstFault(fault, study.largest, study.state)
    return found


class LargestFaults(NamedTuple):
    """The largest fault at every piece of equipment in any switch state, side by side in the order of ``names``:
    A (not a number: none is known), the number of its kind, and which of ``studies`` it is of."""

    names: list[str]
    studies: list[StateStudy]
    row: dict[str, int]
    amperes: Floats
    kind: Ints
    which: Ints


def largest_faults(view: View) -> LargestFaults:
    """What :func:`worst_fault` tells of the equipment, of all of it side by side; worked out once."""

    def work() -> LargestFaults:
        names, studies = list(view.model.equipment), view.studies.for_faults()
        of = names, [(study.state, study.largest.mark) for study in studies]
        kept = view.studies.normal.kept("largest faults", of, lambda: _side_by_side(names, studies))
        return LargestFaults(names, studies, *kept)

    return view.studies.once("largest faults", work)


def _side_by_side(names: list[str], studies: list[StateStudy]) -> tuple[dict[str, int], Floats, Ints, Ints]:
    import numpy as np

    most, kinds = studies[0].largest.deciding_at(names)
    which = np.zeros(len(names), dtype=np.int64)
    for k, study in enumerate(studies[1:], start=1):
        amperes, kind = study.largest.deciding_at(names)
        # A later state decides only where it differs by more than the last digits.
        more = (amperes > most * (1 + 1e-9)) | (np.isnan(most) & ~np.isnan(amperes))
        most, kinds, which = np.where(more, amperes, most), np.where(more, kind, kinds), np.where(more, k, which)
    return {name: k for k, name in enumerate(names)}, most, kinds, which


def losses(view: View, *, transformers: bool = True) -> list[SwitchState]:
    """The states that nobody writes down: each source lost, each transformer out if asked for, transfers following.

    Named ``without NAME``. What the model states itself (scenarios) is not among them.
    """
    network = view.network_in(NORMAL_STATE) if view.network.state != NORMAL_STATE else view.network
    inputs = {f.source.name for name in _switches(view) for f in view.feeders_into(name)}
    above = inputs.union(*(network.above(name) for name in inputs))
    states = []
    for name in sorted(network.root):
        equipment = view.model.equipment[name]
        feeder = network.supply.get(name)
        label, words = f"without {name}", f" without `{name}`"
        if makes_system(equipment) and equipment.kind != "battery":
            state = SwitchState(label, off=frozenset({name}), words=words)
        elif transformers and equipment.kind == "transformer" and feeder is not None:
            state = SwitchState(label, open_feeders=frozenset({feeder.key}), words=words)
        else:
            continue
        states.append(transferred(view, state) if name in above else state)
    return states


def transferred(view: View, state: SwitchState) -> SwitchState:
    """The same state with every transfer switch on its alternate input, and every UPS on its bypass, where only that
    one is live (a UPS carries its load itself only as long as its battery lasts)."""
    switches = _switches(view)
    for _ in switches:
        network = build(view.model, state)
        moved = dict(state.transfer)
        for name in switches:
            dead = state.port_of(name) == NORMAL and not _live(view, network, name, NORMAL)
            if dead and _live(view, network, name, switches[name]):
                moved[name] = switches[name]
        if moved == dict(state.transfer):
            break
        state = state._replace(transfer=tuple(sorted(moved.items())))
    return state


def _switches(view: View) -> dict[str, str]:
    """What goes over by itself, with the input that it then takes."""
    return {e.name: EMERGENCY for e in view.of_kind("transfer")} | {
        e.name: BYPASS for e in view.of_kind("ups") if has_bypass(view.model, e)
    }


def _live(view: View, network: Network, name: str, port: str) -> bool:
    return any(
        network.fed(feeder.source.name) and network.state.closed(feeder)
        for feeder in view.feeders_into(name)
        if (feeder.target.port or NORMAL) == port
    )
