"""What an edit leaves otherwise than it was: what names stand for, what is connected to what, and who refers to it."""

from __future__ import annotations

from collections.abc import Iterable

from wyeline_grammar.linking import Equipment, Model
from wyeline_linter.near_names import PARTNER_KEYS, names_in
from wyeline_linter.network import Network, feeder_structure_key, makes_system, structure_key


class KeptStructure:
    """The structure of a model when it was last looked at. Each question takes what it finds otherwise for known."""

    __slots__ = ("_equipment", "_feeders", "_model", "_sorts")

    def __init__(self, model: Model) -> None:
        self._model = model
        self._equipment = {name: structure_key(e) for name, e in model.equipment.items()}
        self._feeders = {key: feeder_structure_key(f) for key, f in model.feeders.items()}
        self._sorts = {name: tuple(d.sort for d in entries) for name, entries in model.declared.items()}
        self._sorts.update((name, self._sorts_of(name)) for name in model.unread)

    def twin(self, model: Model) -> KeptStructure:
        """The same for a twin of the model, to be edited apart."""
        made = object.__new__(KeptStructure)
        made._model = model
        made._equipment, made._feeders = self._equipment.copy(), self._feeders.copy()
        made._sorts = self._sorts.copy()
        return made

    def _sorts_of(self, name: str) -> tuple[str, ...]:
        """What a name stands for, by sort; a line that cannot be read counts where nothing else bears it."""
        found = tuple(d.sort for d in self._model.declared.get(name, ()))
        return found or (("unread",) if name in self._model.unread else ())

    def shifted(self, names: Iterable[str]) -> tuple[dict[str, str], set[str]]:
        """The names that now stand for nothing, or first for another sort of thing, with the sort they had; and all
        whose meaning changed at all."""
        shifted: dict[str, str] = {}
        changed: set[str] = set()
        for name in names:
            old, new = self._sorts.get(name, ()), self._sorts_of(name)
            if old == new:
                continue
            changed.add(name)
            if old and old[:1] != new[:1]:
                shifted[name] = old[0]
            if new:
                self._sorts[name] = new
            else:
                del self._sorts[name]
        return shifted, changed

    def left(self, keys: Iterable[str]) -> set[str]:
        """What feeders that went, or now run elsewhere, were connected to. Ask before :meth:`changed`."""
        names: set[str] = set()
        for key in keys:
            before, feeder = self._feeders.get(key), self._model.feeders.get(key)
            if before is not None and (feeder is None or feeder_structure_key(feeder) != before):
                names |= {before.source, before.target}
        return names

    def changed(self, names: Iterable[str], keys: Iterable[str], network: Network) -> bool:
        """Whether a network built before is another one now, by what these equipment and feeders are."""
        changed = False
        for name in names:
            equipment = self._model.equipment.get(name)
            new = structure_key(equipment) if equipment is not None else None
            if self._equipment.get(name) != new:
                changed = changed or not self._stands_alone(name, equipment, network)
                if new is None:
                    self._equipment.pop(name, None)
                else:
                    self._equipment[name] = new
        for key in keys:
            feeder = self._model.feeders.get(key)
            structure = feeder_structure_key(feeder) if feeder is not None else None
            if self._feeders.get(key) != structure:
                changed = True
                if structure is None:
                    self._feeders.pop(key, None)
                else:
                    self._feeders[key] = structure
        return changed

    def _stands_alone(self, name: str, equipment: Equipment | None, network: Network) -> bool:
        """Whether nothing hangs on a name that came or went, as while a statement is being typed."""
        model = self._model
        if model.feeders_from.get(name) or model.feeders_to.get(name) or network.fed(name):
            return False
        return equipment is None or not makes_system(equipment)


def users_of_systems(model: Model, names: set[str], shifted: dict[str, str]) -> set[str]:
    """Equipment whose voltage is that of a declared system among these names; ``shifted`` as of `KeptStructure`."""
    systems = {n for n in names if any(d.sort == "system" for d in model.declared.get(n, ()))}
    systems |= shifted.keys()  # also where the name of something else stood in a system's place
    if not systems:
        return set()
    return {
        e.name
        for e in model.equipment.values()
        for side in (e.primary, e.secondary)
        if side is not None and side.name in systems
    }


def who_refer(model: Model, shifted: dict[str, str]) -> tuple[set[str], set[str]]:
    """Equipment and feeders that name something that went, other than as the end of a feeder, its type or its system;
    ``shifted`` as of `KeptStructure`."""
    names: set[str] = set()
    keys: set[str] = set()
    if not shifted:
        return names, keys
    for equipment in model.equipment.values():
        facts = equipment.body.facts
        if facts.keys().isdisjoint(PARTNER_KEYS):
            continue
        for key in PARTNER_KEYS:
            fact = facts.get(key)
            if fact is not None and not shifted.keys().isdisjoint(names_in(fact)):
                names.add(equipment.name)
    raceways = {name for name, sort in shifted.items() if sort == "raceway"}
    if not raceways:
        return names, keys
    for feeder in model.feeders.values():
        raceway = feeder.body.raceway
        if raceway is not None and raceway.stuff in raceways:
            keys.add(feeder.key)
    for equipment in model.equipment.values():
        for placed in equipment.circuits:
            raceway = placed.circuit.body.raceway
            if raceway is not None and raceway.stuff in raceways:
                names.add(equipment.name)
    return names, keys
