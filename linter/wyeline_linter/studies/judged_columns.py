"""Drops, currents and voltages at the load that each is judged with, for all of a switch state side by side."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from wyeline_linter.loads.rollup import volt_amperes_per_ampere
from wyeline_linter.network import follows_grid
from wyeline_linter.studies.beyond_columns import BeyondColumns
from wyeline_linter.studies.pair_columns import BusRows, Drops, FeederRows, bus_rows, feeder_rows, of_wiring
from wyeline_linter.systems import Known

if TYPE_CHECKING:
    from wyeline_linter.circuit.layout import Complex, Floats, Ints
    from wyeline_linter.studies.built import Built
    from wyeline_linter.studies.load_pieces import LoadPieces
    from wyeline_linter.studies.study import StateStudy

NOTHING = 1e-9
"""Amperes and VA below which nothing is added."""


class Wired(NamedTuple):
    """What follows from the wiring: by row of the feeders, the place of the piece that is fed (-1: nothing of it is
    added), and rows of feeders side by side with what they feed; by piece, the row of its supply (-1: not known)."""

    rows: FeederRows
    fed: Ints
    side_by_side: list[tuple[int, str]]
    row_of_supply: Ints
    target: Ints
    """By row, the place of what the feeder is written to (-1: not listed)."""


class Cores(NamedTuple):
    """Transformers: their places, amperes of the fullest leg times this is a part of their rating, and impedance."""

    at: Ints
    per_ampere: Floats
    z_pu: Complex


class JudgedColumns:
    """The judged figures of one switch state whose load flow is solved; rows are those of :class:`FeederRows`."""

    def __init__(self, study: StateStudy, v: Complex, beyond: BeyondColumns) -> None:
        built = self.built = study.flow.built
        self.v = v
        self.beyond = beyond
        self.pieces: LoadPieces = study.pieces
        self.wired = of_wiring(built, "judged rows", lambda: _wired(study))
        self.rows = self.wired.rows
        self.solved: Drops = self.rows.drops(v)
        self.added: Complex = self._added(study)
        """Amperes on A, B, C and N, (4, rows), beyond the solved ones and towards what is fed."""
        self.drops: Drops = self.rows.drops(v, _wires(built, self.rows), self.added)

    def _added(self, study: StateStudy) -> Complex:
        fed = self.wired.fed
        if not len(fed):
            return np.zeros((4, 0), dtype=np.complex128)
        amps = self.beyond.amps[:3, fed]
        for row, name in self.wired.side_by_side:
            amps[:, row] *= _share(study, self.rows.keys[row], name)
        amps[:, (fed < 0) | (np.abs(amps).max(axis=0) < NOTHING)] = 0
        return self.rows.turned(amps, self.v)

    # along the way

    @cached_property
    def path(self) -> Floats:
        """By piece, the parts of nominal that the feeders from the source lose; not a number where one is not known."""
        at = self.wired.row_of_supply
        own = np.full(len(at), np.nan)
        known = at >= 0
        known[known] = self.drops.column[at[known]] >= 0
        own[known] = self.drops.part[at[known]]
        return self.pieces.tree.sums(own)

    @property
    def path_of_rows(self) -> Floats:
        """The same of what each feeder is written to."""
        return np.append(self.path, 0.0)[self.wired.target]

    @cached_property
    def lost_in_transformers(self) -> Floats:
        """By piece, R cos + X sin of a transformer, on the fullest line of its demand beyond the solved state."""
        cores = of_wiring(self.built, "transformers", lambda: _cores(self.built, self.pieces))
        lost = np.zeros(len(self.pieces.listed.order))
        if len(cores.at):
            va = self.beyond.va[cores.at]
            size = np.abs(va)
            part = np.abs(self.beyond.amps[:3, cores.at]).max(axis=0) * cores.per_ampere
            angle = np.divide(va, size, out=np.zeros_like(va), where=size > NOTHING)
            lost[cores.at] = np.maximum(0.0, part * (cores.z_pu.real * angle.real + cores.z_pu.imag * angle.imag))
        return lost

    @cached_property
    def lost_beyond(self) -> Floats:
        """By piece, what the way to it loses beyond the solved state, as a part of nominal; never below 0."""
        at = self.wired.row_of_supply
        known = at >= 0
        known[known] = ~self.rows.backwards[at[known]] & (self.drops.column[at[known]] >= 0)
        own = np.zeros(len(at))
        own[known] = np.maximum(0.0, self.drops.part[at[known]] - self.solved.part[at[known]])
        return self.pieces.tree.sums(own + self.lost_in_transformers)

    # at equipment

    def volts(self, *, entering: bool = False) -> tuple[BusRows, Floats]:
        """Volts of every pair at equipment (at its input), never below 0."""
        rows = bus_rows(self.built, entering=entering)
        at = of_wiring(self.built, f"places of {entering}", lambda: _places(self.pieces, rows.names))
        volts = rows.pairs.volts(self.v)
        lost = self.lost_beyond - self.lost_in_transformers if entering else self.lost_beyond
        known = at >= 0
        volts[known] -= lost[at[known], None] * rows.pairs.nominal_v[known]
        return rows, np.maximum(0.0, volts)


def _wired(study: StateStudy) -> Wired:
    built, connectivity, feeders = study.flow.built, study.connectivity, study.model.feeders
    index = study.pieces.tree.index
    rows = feeder_rows(built, _backwards(study))
    fed: list[int] = []
    side_by_side = []
    for k, (key, backwards) in enumerate(zip(rows.keys, rows.backwards.tolist(), strict=True)):
        feeder = feeders[key]
        source, name = feeder.source.name, feeder.source.name if backwards else feeder.target.name
        if not backwards and connectivity.supply.get(source) is feeder:
            name = ""  # a following inverter delivers along it
        fed.append(index.get(name, -1))
        if name in connectivity.others:
            side_by_side.append((k, name))
    of_supply = [-1 if f is None else rows.row.get(f.key, -1) for f in study.pieces.listed.feeders]
    target = [index.get(feeders[key].target.name, -1) for key in rows.keys]
    return Wired(rows, _ints(fed), side_by_side, _ints(of_supply), _ints(target))


def _ints(values: list[int]) -> Ints:
    return np.array(values, dtype=np.int64)


def _wires(built: Built, rows: FeederRows) -> Complex:
    """The impedances of leg and neutral by row, kept while no wire is another one."""
    kept = built.network.wiring.get("wires")
    if not isinstance(kept, tuple) or kept[0] is not built.lines:
        lines = [built.lines[key] for key in rows.keys]
        ohm = np.array([[at.leg or 0j for at in lines], [at.neutral or 0j for at in lines]], dtype=np.complex128)
        kept = built.network.wiring["wires"] = built.lines, ohm
    return kept[1]  # type: ignore[no-any-return]


def _cores(built: Built, pieces: LoadPieces) -> Cores:
    index = pieces.tree.index
    found = [
        (k, volt_amperes_per_ampere(state.arriving.system) / data.s_va, data.z_pu)
        for name, data in built.transformers.items()
        if data.z_pu is not None
        and data.s_va
        and (k := index.get(name)) is not None
        and (state := pieces.listed.states[k]) is not None
        and isinstance(state.arriving, Known)
    ]
    return Cores(
        _ints([k for k, _, _ in found]),
        np.array([each for _, each, _ in found], dtype=np.float64),
        np.array([z for _, _, z in found], dtype=np.complex128),
    )


def _places(pieces: LoadPieces, names: list[str]) -> Ints:
    return _ints([pieces.tree.index.get(name, -1) for name in names])


def _backwards(study: StateStudy) -> frozenset[str]:
    """The feeders that supply the end that they are written from."""
    equipment, found = study.model.equipment, set()
    for name, feeder in study.connectivity.supply.items():
        if feeder.source.name == name and not follows_grid(equipment[name]):
            found.add(feeder.key)
    return frozenset(found)


def _share(study: StateStudy, key: str, fed: str) -> float:
    """The part of the current that this one of several parallel feeders takes, by the solved state."""
    supply = study.connectivity.supply.get(fed)
    if supply is None:
        return 1.0
    solved = {f.key: study.flow.currents(f.key) for f in (supply, *study.connectivity.others[fed])}
    sizes = {k: max(map(abs, amps.values()), default=0.0) for k, amps in solved.items() if amps is not None}
    total = sum(sizes.values())
    return sizes.get(key, 0.0) / total if total else 1.0
