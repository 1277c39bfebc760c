"""The model as a circuit: every leg, neutral and protective conductor of every bus is a node, once per switch state.

Whatever is not known is bridged, so that loads below a gap still count above it, and every bus below is marked with
the reasons why its figures cannot be told. A gap below never touches what is above.
"""

from __future__ import annotations

import cmath
import math
from collections.abc import Iterable

from wyeline_grammar.linking import Equipment, Feeder, Model
from wyeline_grammar.model import Body, RacewayStatement
from wyeline_linter.circuit import EARTH, Bus
from wyeline_linter.derive import Derivation, EquipmentState, reasons_of
from wyeline_linter.earthing import own_electrode, source_electrode_ohm
from wyeline_linter.loads.leaf_loads import LeafLoad
from wyeline_linter.network import Network as Connectivity
from wyeline_linter.network import follows_grid, makes_system, on_bypass, two_sided
from wyeline_linter.studies.built import Built
from wyeline_linter.studies.case import Assumption, Case, Lack, Missing
from wyeline_linter.studies.electrodes import noted_electrode_ohm
from wyeline_linter.studies.line_impedance import METAL_RACEWAYS, LineData
from wyeline_linter.studies.load_pieces import LoadPieces
from wyeline_linter.studies.place_loads import place_loads
from wyeline_linter.studies.place_sources import (
    PROTECTIVE,
    earthing_ohm,
    is_tt,
    place_converter,
    place_earthing,
    place_source,
)
from wyeline_linter.studies.place_transformers import place_transformer
from wyeline_linter.studies.recipe import LineAt, SourceAt, TransformerAt, line_of, refused_joins, wiring_of
from wyeline_linter.studies.source_impedance import (
    TURNING,
    USUAL_TOLERANCE,
    source_data,
    tolerance_of,
    voltage_factor,
)
from wyeline_linter.studies.transformer_impedance import transformer_data
from wyeline_linter.systems import Known, System, SystemState
from wyeline_linter.tables import Basis
from wyeline_linter.verdicts import Refusal
from wyeline_linter.windings import Transformed

_MACHINES = frozenset({"generator", "inverter"})


def build(
    model: Model,
    network: Connectivity,
    derivation: Derivation,
    loads: Iterable[LeafLoad] | LoadPieces,
    case: Case,
    tables: Basis | None,
) -> Built:
    """Make the circuit of one switch state for a case.

    ``loads`` are those that run (asked for by the load flow, and for their motors), ``tables`` those of the basis.
    """
    builder = _Builder(model, network, derivation, case, tables)
    builder.walk()
    builder.made.recipe.notes = len(builder.made.missing), len(builder.made.assumed)
    place_loads(builder.made, model, network, loads, derivation)
    return builder.made


def distance_of(feeder: Feeder) -> float | None:
    """Where along a busway the feeder's device sits, in m from the fed end."""
    fact = feeder.body.facts.get("at")
    if fact is None or fact.value.dimension != "length":
        return None
    return fact.number


def raceway_stuff(model: Model) -> dict[str, str | None]:
    """What each named raceway is made of."""
    return {
        entry.name: entry.statement.stuff
        for entry in model.declared_of("raceway")
        if isinstance(entry.statement, RacewayStatement)
    }


def turned_machines(model: Model, network: Connectivity, derivation: Derivation) -> dict[str, float]:
    """By how many degrees a machine that runs in parallel is synchronised to the source it meets."""
    turned: dict[str, float] = {}
    for name, feeders in network.others.items():
        state = derivation.states.get(name)
        for feeder in feeders:
            root = network.root.get(feeder.source.name)
            machine = model.equipment.get(root) if root is not None else None
            if machine is None or machine.kind not in _MACHINES or root == network.root.get(name) or root in turned:
                continue
            carried = derivation.feeders.get(feeder.key)
            arriving = state.arriving if state is not None else None
            if not isinstance(arriving, Known) or carried is None or not isinstance(carried.carried, Known):
                continue
            a, b = arriving.system, carried.carried.system
            shared = [leg for leg in a.legs if leg in b.legs]
            if len(shared) < 2 or root is None:
                continue
            first, second = shared[:2]
            here = a.potential(first) - a.potential(second)
            there = b.potential(first) - b.potential(second)
            turned[root] = math.degrees(cmath.phase(here / there))
    return turned


class _Builder:
    def __init__(
        self, model: Model, network: Connectivity, derivation: Derivation, case: Case, tables: Basis | None
    ) -> None:
        self.model = model
        self.connectivity = network
        self.derivation = derivation
        self.case = case
        self.practice = derivation.practice
        self.tables = tables
        self.made = Built(case)
        self.net = self.made.network
        self.cuts: dict[tuple[str, float], Bus] = {}
        self.recipe = self.made.recipe
        self.turned = turned_machines(model, network, derivation)
        self.stuff_of = self.recipe.stuff_of = raceway_stuff(model)

    def walk(self) -> None:
        for name in self.connectivity.order:
            equipment = self.model.equipment.get(name)
            if equipment is not None:
                self.recipe.names.append(name)
                self.recipe.pieces.append(equipment)
                self.recipe.states.append(self.derivation.states.get(name))
                self._place(equipment)
        self.recipe.refused = refused_joins(self.connectivity, self.derivation)
        for name, feeders in self.connectivity.others.items():
            for feeder in feeders:
                if feeder.key not in self.recipe.refused:
                    self._join(name, feeder)
                elif not self._is_refused(feeder):
                    supply = self.connectivity.supply[name].key
                    text = (
                        f"`{feeder.key}` left open: no `claim parallel` says that `{name}` is fed by it and `{supply}`"
                    )
                    self.made.assumed.append(Assumption(feeder.key, text, feeder.place))
        self.recipe.wiring = wiring_of(self.connectivity)

    def _is_refused(self, feeder: Feeder) -> bool:
        judged = self.derivation.feeders.get(feeder.key)
        return judged is not None and isinstance(judged.verdict, Refusal)

    # sources

    def _source(self, equipment: Equipment, system: System, bus: Bus) -> None:
        made = self.made
        tolerance = made.state_tolerance(bus, tolerance_of(equipment, self._declared(equipment)))
        data = source_data(equipment, system, self.case, self.practice, tolerance)
        self.recipe.sources.append(SourceAt(equipment, system, tolerance, *self.made.noted(), data))
        made.assumed += data.assumed
        made.missing += data.missing
        blank = tuple(m.text for m in data.missing if m.lack is not Lack.EARTH)
        earth = tuple(m.text for m in data.missing if m.lack is Lack.EARTH)
        if blank:
            made.unknown[bus.name] = blank
            data.z1 = data.z2 = data.z0 = 0j
        if earth:
            made.unknown_earth[bus.name] = earth
        if data.ceiling:
            made.ceiling[bus.name] = equipment.name
        if equipment.kind not in TURNING:
            made.converter[bus.name] = equipment.name
        star = place_source(self.net, equipment.name, bus, system, data, self.turned.get(equipment.name, 0.0))
        self._earthing(equipment, system, bus, star)

    def _earthing(self, equipment: Equipment, system: System, bus: Bus, star: int | None) -> None:
        size = earthing_ohm(equipment, system, self._declared(equipment))
        declared = self._declared(equipment)
        r_b = source_electrode_ohm(equipment, declared, tt=is_tt(system))
        r_a = noted_electrode_ohm(self.made, bus, equipment, declared, equipment, r_b) if is_tt(system) else None
        place_earthing(self.net, equipment, bus, system, star, size=size, electrode_ohm=r_a, source_ohm=r_b)

    def _declared(self, equipment: Equipment) -> Body | None:
        """What is said of the declared system that it makes."""
        side = equipment.secondary if equipment.arrow else equipment.primary
        if side is None or side.name is None:
            return None
        found = self.model.system(side.name)
        if found is None:
            return None
        self.recipe.declared[side.name] = found[1].body
        return found[1].body

    # one piece of equipment

    def _place(self, equipment: Equipment) -> None:
        name = equipment.name
        state = self.derivation.states.get(name)
        if state is None:
            return
        if makes_system(equipment):
            system = self._known(equipment, state.system)
            if system is not None:
                self._source(equipment, system, self._bus(name, name, system))
            return
        feeder = self.connectivity.supply.get(name)
        above = self.connectivity.supplier.get(name)
        if feeder is None or above is None:
            return
        near = self._leaving(feeder) if feeder.source.name == above else self.made.bus.get(above)
        if near is None:
            why = self.made.outside.get(above, (f"`{above}` is not part of the circuit",))
            self.made.outside.setdefault(name, why)
            return
        arriving = state.arriving if state.arriving is not None else state.system
        alone = self._alone(equipment)
        system = self._known(equipment, state.system if alone else arriving)
        if system is None:
            return
        double = two_sided(equipment) and not on_bypass(equipment, self.connectivity.state)
        bus = self._bus(f"{name} input" if double else name, name, system, entering=double)
        self.made.inherit(near, bus)
        self._line(feeder, near, bus, system)
        if alone:
            self._own_electrode(equipment, state, feeder, bus)
        if follows_grid(equipment) and not equipment.arrow:
            self._following(equipment, system, bus)
        if system.has_neutral and self._bonded(equipment):
            self.net.link(f"{name} service bond", bus["N"], bus[PROTECTIVE])
        if double:
            self._second_side(equipment, state, bus)
        elif equipment.kind == "busway":
            self._busway(equipment, bus, system)
        elif equipment.kind == "drive":
            self.made.outside[f"{name} output"] = (f"the drive `{name}` decides what stands behind it",)

    def _alone(self, equipment: Equipment | None) -> bool:
        """Whether metal parts at a board are to be earthed by an electrode of its own alone."""
        state = self.derivation.states.get(equipment.name) if equipment and own_electrode(equipment) else None
        return state is not None and isinstance(state.system, Known) and is_tt(state.system.system)

    def _own_electrode(self, equipment: Equipment, state: EquipmentState, feeder: Feeder, bus: Bus) -> None:
        """Tie a board's metal parts to its own electrode. Where the wires bring a PE or PEN all the same, or are not
        known, these hold: a finding tells of it."""
        at = self.recipe.lines[feeder.key]
        if at.data is None or not at.data.leg or at.data.pen or at.data.protective is not None:
            return
        self.made.unknown_ground.pop(bus.name, None)
        maker = self.model.equipment.get(state.ahead.maker) if state.ahead is not None else None
        made = self.made.system_at.get(maker.name) if maker is not None else None
        r_b = None
        if maker is not None and made is not None:
            r_b = source_electrode_ohm(maker, self._declared(maker), tt=is_tt(made))
        ohm = noted_electrode_ohm(self.made, bus, equipment, None, maker, r_b)
        if ohm is None:
            self.net.link(f"{equipment.name} earth", bus[PROTECTIVE], EARTH)
        else:
            self.net.impedance(f"{equipment.name} earth", (bus[PROTECTIVE], EARTH), complex(ohm))

    def _known(self, equipment: Equipment, state: SystemState) -> System | None:
        if not isinstance(state, Known):
            self.made.outside[equipment.name] = reasons_of(state)
            return None
        if state.system.frequency_hz == 0.0:
            self.made.outside[equipment.name] = ("direct current is not part of the studies",)
            return None
        return state.system

    def _bus(self, bus_name: str, name: str, system: System, *, entering: bool = False) -> Bus:
        bus = self.net.bus(bus_name, (*system.conductors, PROTECTIVE))
        (self.made.input_bus if entering else self.made.bus)[name] = bus
        self.made.system_at[bus_name] = system
        return bus

    def _following(self, equipment: Equipment, system: System, bus: Bus) -> None:
        self.recipe.followers.append((equipment, system, bus))
        if self.case is not Case.MAX:
            return
        c = voltage_factor(self.case, self.practice, system, self.made.tolerance_at(bus))
        if not place_converter(self.net, equipment, system, bus, c):
            text = f"`{equipment.name}` states no `limit`, so what it adds to a fault is not counted"
            needed = "`limit`, such as `limit 1.1 pu`"
            self.made.missing.append(Missing(Lack.SOURCE, equipment.name, text, equipment.place, needed))

    def _second_side(self, equipment: Equipment, state: EquipmentState, fed: Bus) -> None:
        name = equipment.name
        if not isinstance(state.system, Known):
            self.made.outside[f"{name} output"] = reasons_of(state.system)
            return
        system = state.system.system
        if system.frequency_hz == 0.0:
            self.made.outside[f"{name} output"] = ("direct current is not part of the studies",)
            return
        made = self._bus(name, name, system)
        if equipment.kind != "transformer" or not isinstance(state.winding, Transformed):
            self._source(equipment, system, made)
            return
        secondary_v = system.nominal.line_v
        stated = tolerance_of(equipment, self._declared(equipment))
        tolerance = USUAL_TOLERANCE if stated is None else stated
        data = transformer_data(equipment, self.case, self.practice, secondary_v, tolerance)
        self.made.transformers[name] = data
        noted, first = self.made.noted(), len(self.net.branches.impedance)
        self.made.missing += data.missing
        self.made.assumed += data.assumed
        self.made.inherit(fed, made)
        blocks = state.winding.separately_derived
        self.made.state_tolerance(made, stated)
        if blocks:
            # A new star point: what is unknown of the zero sequence above does not reach it.
            self.made.unknown_earth.pop(made.name, None)
            self.made.unknown_ground.pop(made.name, None)
        self.made.add_unknown(made, tuple(m.text for m in data.missing))
        star = place_transformer(self.net, name, fed, made, state.winding, data)
        windings = range(first, len(self.net.branches.impedance))
        self.recipe.transformers.append(TransformerAt(equipment, secondary_v, tolerance, *noted, data, windings))
        if blocks:
            self._earthing(equipment, system, made, star)
            return
        self.net.link(f"{name} enclosure", fed[PROTECTIVE], made[PROTECTIVE])
        if state.winding.connection == "zigzag":
            # It makes the neutral of the system that feeds it, and earths it.
            place_earthing(
                self.net, equipment, made, system, star, size=earthing_ohm(equipment, system, self._declared(equipment))
            )

    # lines

    def _leaving(self, feeder: Feeder) -> Bus | None:
        """The bus that a feeder leaves."""
        name = feeder.source.name
        source = self.model.equipment.get(name)
        if source is not None and source.kind == "busway":
            return self._tap(source, distance_of(feeder))
        if f"{name} output" in self.made.outside:
            self.made.outside.setdefault(feeder.target.name, self.made.outside[f"{name} output"])
            return None
        return self.made.bus.get(name)

    def _line(self, feeder: Feeder, near: Bus, far: Bus, system: System) -> None:
        """The wires of a feeder between two buses; ``near`` is the side of its supply."""
        from_bus, to_bus = near, far
        if self._owner(far) == feeder.source.name and self._owner(near) != feeder.source.name:
            from_bus, to_bus = far, near
        self.made.ends[feeder.key] = (from_bus, to_bus)
        at = LineAt(feeder.key, feeder, system, None, *self.made.noted())
        self._wire(
            at, from_bus, to_bus, far, line_of(at, self.tables, self.case, self.stuff_of), self._is_metal(feeder)
        )

    def _owner(self, bus: Bus) -> str:
        name = bus.name
        if name.endswith(" input") and name[:-6] in self.model.equipment:
            return name[:-6]
        return name.split("@")[0] if name not in self.model.equipment else name

    def _is_metal(self, feeder: Feeder) -> bool:
        raceway = feeder.body.raceway
        if raceway is None:
            return False
        stuff = self.stuff_of.get(raceway.stuff) if raceway.named else raceway.stuff
        return stuff in METAL_RACEWAYS

    def _wire(self, at: LineAt, from_bus: Bus, to_bus: Bus, far: Bus, data: LineData, metal: bool) -> None:
        made, net, key = self.made, self.net, at.key
        made.missing += data.missing
        made.assumed += data.assumed
        shared = [c for c in from_bus.conductors if c in to_bus.conductors and c != PROTECTIVE]
        self.recipe.lines[key] = at
        at.data = data
        if not data.leg:
            # Not known, or of no length.
            self.made.add_unknown(far, tuple(m.text for m in data.missing))
            for conductor in (*shared, PROTECTIVE):
                net.link(f"{key} {conductor}", from_bus[conductor], to_bus[conductor])
            return
        made.lines[key] = data
        z = [data.leg if c != "N" else data.neutral for c in shared]
        lacking = [c for c, value in zip(shared, z, strict=True) if value is None]
        for conductor in lacking:
            net.link(f"{key} {conductor}", from_bus[conductor], to_bus[conductor])
            self.made.add_unknown(far, (f"`{key}` has no neutral wire of known size",))
        carried = [c for c in shared if c not in lacking]
        values = [value for value in z if value is not None]
        if data.pen and "N" in carried:
            net.link(f"{key} {PROTECTIVE}", to_bus["N"], to_bus[PROTECTIVE])
        elif data.protective is not None:
            carried.append(PROTECTIVE)
            values.append(data.protective)
        elif self._in_service_of_tt(at):
            net.link(f"{key} {PROTECTIVE}", from_bus[PROTECTIVE], to_bus[PROTECTIVE])
        elif not self._alone(self.model.equipment.get(self._owner(far))) and not self._returns_on_neutral(far, carried):
            net.link(f"{key} {PROTECTIVE}", from_bus[PROTECTIVE], to_bus[PROTECTIVE])
            what = "its metal raceway, whose impedance is not known" if metal else "no wire that is written"
            text = f"an earth fault behind `{key}` returns through {what} (no `+ G`, `+ PE`)"
            self.made.add_unknown_earth(far, (text,))
        if carried:
            net.line(key, from_bus.pick(carried), to_bus.pick(carried), values)
            at.carried = tuple(carried)

    def _in_service_of_tt(self, at: LineAt) -> bool:
        """Whether it brings a utility's TT supply to the first board, without a PE: the electrode of metal parts stands
        there (IEC 60364-1 312.2.2)."""
        piece = at.piece
        above = self.derivation.states.get(piece.source.name) if isinstance(piece, Feeder) else None
        if above is None or above.onward is None or not is_tt(at.system):
            return False
        maker = self.model.equipment.get(above.onward.maker)
        return maker is not None and maker.kind == "utility" and not above.onward.board

    def _returns_on_neutral(self, far: Bus, carried: list[str]) -> bool:
        """Whether the neutral alone brings faults to earth back: no ground comes along to service equipment, whose bond
        ties its ground to the neutral there (NEC 250.142(A)). An ideal ground beside it would short the neutral."""
        owner = self.model.equipment.get(self._owner(far))
        return owner is not None and "N" in carried and self._bonded(owner)

    def _bonded(self, equipment: Equipment, passed: tuple[str, ...] = ()) -> bool:
        """Whether ground and neutral are tied together there: at service equipment, and at the meters ahead of it."""
        if "service-equipment" in equipment.body.flags or equipment.kind != "meter" or equipment.name in passed:
            return "service-equipment" in equipment.body.flags
        onward = (self.model.equipment.get(f.target.name) for f in self.model.feeders_from.get(equipment.name, ()))
        return any(e is not None and self._bonded(e, (*passed, equipment.name)) for e in onward)

    def _tap(self, busway: Equipment, distance: float | None) -> Bus | None:
        length = busway.body.number("length")
        at = distance
        if at is None:
            self.recipe.largest_apart = True
            # Where a tap is not placed, the end gives the largest drop and the start the largest fault.
            at = 0.0 if self.case is Case.MAX or length is None else length
        return self.cuts.get((busway.name, at)) or self.made.bus.get(busway.name)

    def _busway(self, busway: Equipment, bus: Bus, system: System) -> None:
        """The bars of a busway, cut where devices are plugged in."""
        name = busway.name
        length = busway.body.number("length")
        places = {d for f in self.model.feeders_from.get(name, ()) if (d := distance_of(f)) is not None and d > 0}
        if length is not None:
            places.add(length)
        near, last = bus, 0.0
        for at in sorted(places):
            far = self.net.bus(f"{name}@{at:g}", bus.conductors)
            self.made.system_at[far.name] = system
            self.made.inherit(near, far)
            line = LineAt(far.name, busway, system, at - last, *self.made.noted())
            data = line_of(line, self.tables, self.case, self.stuff_of)
            if data.missing:
                text = f"`{name}` states no resistance and reactance"
                needed = "`resistance` and `reactance` from its data sheet"
                if not any(m.subject == name for m in self.made.missing):
                    self.made.missing.append(Missing(Lack.IMPEDANCE, name, text, busway.place, needed))
                self.made.add_unknown(far, (text,))
                for conductor in bus.conductors:
                    self.net.link(f"{far.name} {conductor}", near[conductor], far[conductor])
            else:
                self._wire(line, near, far, far, data, metal=True)
            self.cuts[name, at] = far
            near, last = far, at

    def _join(self, name: str, feeder: Feeder) -> None:
        """A further closed feeder into ``name``: a loop, or a second source in parallel."""
        near, target = self._leaving(feeder), self.model.equipment.get(name)
        far = self.made.input_bus.get(name) or self.made.bus.get(name)
        if near is None or far is None or target is None or near is far:
            return
        system = self.made.system_at[far.name]
        before = dict(self.made.unknown)
        self.made.fed_beside(near, far)
        self._line(feeder, near, far, system)
        if feeder.key not in self.made.lines:
            # Its share of current is not known, and so nothing at either end or below.
            self.made.unknown = before
            for missing in self.made.missing:
                if missing.subject == feeder.key:
                    self.made.add_unknown(far, (missing.text,))
                    self.made.add_unknown(near, (missing.text,))
