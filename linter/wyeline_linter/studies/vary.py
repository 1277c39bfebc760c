"""A circuit that is there, with the values of another case or of an edited model: its wiring is kept, and what changed
is worked out anew. Where the wiring itself would differ, there is no variant, and the circuit is built."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace
from itertools import compress
from operator import is_not
from typing import NamedTuple, TypeVar

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_linter.derive import Derivation, EquipmentState
from wyeline_linter.earthing import own_electrode
from wyeline_linter.network import Network as Connectivity
from wyeline_linter.network import feeder_structure_key, follows_grid, makes_system, two_sided
from wyeline_linter.studies.build import build, distance_of, raceway_stuff
from wyeline_linter.studies.built import Built
from wyeline_linter.studies.case import Case, Lack
from wyeline_linter.studies.line_impedance import LineData
from wyeline_linter.studies.load_pieces import LoadPieces
from wyeline_linter.studies.place_loads import place_loads
from wyeline_linter.studies.place_sources import PROTECTIVE, place_converter, source_ohm
from wyeline_linter.studies.recipe import LineAt, line_of, refused_joins, wiring_of
from wyeline_linter.studies.source_impedance import SourceData, source_data, voltage_factor
from wyeline_linter.studies.transformer_impedance import transformer_data
from wyeline_linter.tables import Basis

T = TypeVar("T")
U = TypeVar("U")


class Facts(NamedTuple):
    """What circuits of one switch state are made from."""

    model: Model
    connectivity: Connectivity
    derivation: Derivation
    loads: LoadPieces
    tables: Basis | None


class Circuits:
    """The circuits of one switch state, one a case: the first is built, the others are variants of it.

    ``before`` are those of an earlier version of the model, of which everything is taken over that still holds;
    ``built`` and ``varied`` count what was done.
    """

    def __init__(self, facts: Facts, before: Circuits | None = None) -> None:
        self.facts = facts
        self.built = self.varied = 0
        self._made: dict[Case, Built] = {}
        self._before: dict[Case, Built] = {}
        self._changed: frozenset[str] | None = None
        self._comparable = before is not None and before.facts.loads.mark is facts.loads.mark_before
        if before is not None and before._made and before.facts.tables is facts.tables:
            self._changed = changed_lines(next(iter(before._made.values())), before.facts.connectivity, facts)
            if self._changed is not None:
                self._before = dict(before._made)

    def of(self, case: Case) -> Built:
        """The circuit for a case."""
        found = self._made.get(case)
        if found is None:
            found = self._made[case] = self._taken_over(case) or self._from_other_case(case) or self._build(case)
        return found

    def _taken_over(self, case: Case) -> Built | None:
        before = self._before.pop(case, None)
        if before is None or self._changed is None:
            return None
        loaded_alike = self._loaded_alike(case)
        if loaded_alike and not self._changed:
            return before
        self.varied += 1
        return vary(before, case, self.facts, self._changed, loaded_alike=loaded_alike)

    def _loaded_alike(self, case: Case) -> bool:
        """Whether what a case places of the loads is what the version before placed."""
        loads = self.facts.loads
        if case not in (Case.FLOW, Case.MAX):
            return True
        return self._comparable and (loads.alike if case is Case.FLOW else loads.motors_alike)

    def _from_other_case(self, case: Case) -> Built | None:
        for other in self._made.values():
            found = vary(other, case, self.facts)
            if found is not None:
                self.varied += 1
                return found
        return None

    def _build(self, case: Case) -> Built:
        self.built += 1
        return build(*self.facts[:4], case, self.facts.tables)


def vary(
    base: Built, case: Case, facts: Facts, changed: Collection[str] | None = None, *, loaded_alike: bool = False
) -> Built | None:
    """The circuit with the values of a case; None where its wiring, or what is known of it, differs.

    ``changed`` names the feeders whose facts differ from those of ``base``, which is then of the same case; None says
    that it is of the same model. ``loaded_alike`` says that the loads are those of ``base`` too.
    """
    if base.recipe.largest_apart and (base.case is Case.MAX) is not (case is Case.MAX):
        return None
    kept_missing, kept_assumed = base.recipe.notes
    made = replace(
        base,
        case=case,
        network=base.network.variant(),
        missing=base.missing[:kept_missing],
        assumed=base.assumed[:kept_assumed],
        recipe=replace(base.recipe, lines=base.recipe.lines, sources=list(base.recipe.sources)),
    )
    if not _vary_lines(made, base, facts, changed):
        return None
    practice = facts.derivation.practice
    if case is not base.case and not (_vary_sources(made, practice) and _vary_transformers(made, base, practice)):
        return None
    if case is Case.MAX:
        for equipment, system, bus in base.recipe.followers:
            c = voltage_factor(case, practice, system, made.tolerance_at(bus))
            if not place_converter(made.network, equipment, system, bus, c):
                return None  # what it lacks is listed among the others, in their order
    elif base.case is Case.MAX and any(m.subject == e.name for e, _, _ in base.recipe.followers for m in made.missing):
        return None
    if changed is not None and loaded_alike:
        made.network.loads, made.network.motors = base.network.loads, base.network.motors
        made.assumed += base.assumed[kept_assumed:]
        return made
    place_loads(made, facts.model, facts.connectivity, facts.loads, facts.derivation)
    return made


def _same_wires(one: Case, other: Case, tables: Basis | None) -> bool:
    """Whether wires are as warm in both cases."""
    warm = {Case.FLOW, Case.START}
    if tables is not None and tables.practice == "us":
        warm.add(Case.MIN)
    return one is other or {one, other} <= warm


def _vary_lines(made: Built, base: Built, facts: Facts, changed: Collection[str] | None) -> bool:
    lines = base.recipe.lines
    if changed is None:
        if _same_wires(base.case, made.case, facts.tables):
            return True
        changed = lines
    if not changed:
        return True
    made.lines, made.recipe.lines = dict(base.lines), dict(lines)
    for key in changed:
        at = lines.get(key)
        if at is None:
            continue
        piece = facts.model.feeders.get(key) if isinstance(at.piece, Feeder) else at.piece
        if piece is None:
            return False
        new = replace(at, piece=piece)
        new.data = line_of(new, facts.tables, made.case, made.recipe.stuff_of)
        if not _fits(at, new):
            return False
        made.recipe.lines[key] = new
        made.missing[at.missing : at.missing + len(new.data.missing)] = new.data.missing
        made.assumed[at.assumed : at.assumed + len(new.data.assumed)] = new.data.assumed
        if at.carried:
            made.lines[key] = new.data
            made.network.set_line(key, [_ohm(new.data, conductor) for conductor in at.carried])
    return True


def _fits(old: LineAt, new: LineAt) -> bool:
    """Whether a run is wired as before: the same is known of it."""
    a, b = old.data, new.data
    assert a is not None
    assert b is not None
    if bool(a.leg) != bool(b.leg) or a.pen != b.pen or len(a.assumed) != len(b.assumed):
        return False
    if [m.text for m in a.missing] != [m.text for m in b.missing]:
        return False
    return (a.neutral is None, a.protective is None) == (b.neutral is None, b.protective is None)


def _ohm(data: LineData, conductor: str) -> complex:
    found = data.neutral if conductor == "N" else data.protective if conductor == PROTECTIVE else data.leg
    assert found is not None
    return found


def _vary_sources(made: Built, practice: str | None) -> bool:
    for k, at in enumerate(made.recipe.sources):
        data = source_data(at.equipment, at.system, made.case, practice, at.tolerance)
        if not _known_alike(at.data, data):
            return False
        made.recipe.sources[k] = replace(at, data=data)
        made.missing[at.missing : at.missing + len(data.missing)] = data.missing
        made.assumed[at.assumed : at.assumed + len(data.assumed)] = data.assumed
        for name, ohm in source_ohm(at.equipment.name, at.system, data).items():
            made.network.set_source(name, ohm)
    return True


def _known_alike(a: SourceData, b: SourceData) -> bool:
    """Whether both leave the same parts of the circuit known."""
    blank = any(m.lack is not Lack.EARTH for m in (*a.missing, *b.missing))
    texts = [m.text for m in a.missing] == [m.text for m in b.missing]
    return texts and not blank and len(a.assumed) == len(b.assumed) and a.ceiling == b.ceiling


def _vary_transformers(made: Built, base: Built, practice: str | None) -> bool:
    if practice != "iec" or Case.MAX not in (made.case, base.case):
        return True  # the same in all cases
    made.transformers = dict(base.transformers)
    made.recipe.transformers = []
    for at in base.recipe.transformers:
        name = at.equipment.name
        data = transformer_data(at.equipment, made.case, practice, at.secondary_v, at.tolerance)
        made.transformers[name] = data
        made.recipe.transformers.append(replace(at, data=data))
        factor = data.k_t / at.data.k_t
        made.network.scale_windings(at.windings, factor)
        lead = f"{name} zero-sequence lead"
        if lead in made.network.line_at:
            k, position = made.network.line_at[lead]
            made.network.set_line(lead, [factor * z for z in made.network.lines[k].z_ohm[position]])
    return True


def changed_lines(base: Built, of: Connectivity, facts: Facts) -> frozenset[str] | None:
    """The feeders whose facts changed since a circuit was made ``of`` a network; None where more may have changed than
    their wires."""
    recipe, derivation, connectivity = base.recipe, facts.derivation, facts.connectivity
    # Networks are built anew where anything is fed otherwise; else they share the order of what they feed.
    if connectivity.order is not of.order and recipe.wiring != wiring_of(connectivity):
        return None
    if recipe.stuff_of != raceway_stuff(facts.model) or recipe.refused != refused_joins(connectivity, derivation):
        return None
    for name, body in recipe.declared.items():
        found = facts.model.system(name)
        if found is None or found[1].body is not body:
            return None
    pieces = _others(recipe.names, recipe.pieces, facts.model.equipment)
    if not all(now is not None and _plain_alike(old, now) for _, old, now in pieces):
        return None
    if not all(_state_alike(old, now) for _, old, now in _others(recipe.names, recipe.states, derivation.states)):
        return None
    joined = {feeder.key for feeders in connectivity.others.values() for feeder in feeders}
    changed = set()
    for key, old, now in _others(recipe.lines, [line.piece for line in recipe.lines.values()], facts.model.feeders):
        if isinstance(old, Feeder):
            if now is None or key in joined or not _ends_alike(old, now):
                return None
            changed.add(key)
    return frozenset(changed)


def _others(names: Iterable[str], old: list[T], now: Mapping[str, U]) -> list[tuple[str, T, U | None]]:
    """What is another object by now than it was, by name."""
    found = list(map(now.get, names))
    return list(compress(zip(names, old, found, strict=True), map(is_not, old, found)))


def _state_alike(old: EquipmentState | None, new: EquipmentState | None) -> bool:
    """Whether the same voltages stand at a piece of equipment; what protects it is no part of the circuit."""
    if old is new:
        return True
    if old is None or new is None:
        return False
    return (old.arriving, old.system, old.winding) == (new.arriving, new.system, new.winding)


def _plain_alike(old: Equipment, new: Equipment) -> bool:
    """Whether equipment without a part of its own in the circuit stands in it as before."""
    if makes_system(new) or two_sided(new) or follows_grid(new) or new.kind in ("busway", "drive"):
        return False
    flag, before, after = "service-equipment", old.body, new.body
    if before.text("earthing") != after.text("earthing"):
        return False
    if own_electrode(new) and before.number("resistance") != after.number("resistance"):
        return False
    return old.kind == new.kind and (flag in before.flags) == (flag in after.flags)


def _ends_alike(old: Feeder, new: Feeder) -> bool:
    """Whether a feeder runs from and to where it did, and in what it did."""
    before, after = old.body.raceway, new.body.raceway
    return (
        feeder_structure_key(old) == feeder_structure_key(new)
        and distance_of(old) == distance_of(new)
        and (before and before[:-1]) == (after and after[:-1])
    )
