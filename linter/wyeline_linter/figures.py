"""Derived figures as plain data, in SI units: one place that ``show``, hover, reports and programs all read.

An unknown figure is None, with the reasons beside it under ``unknown``.
"""

from __future__ import annotations

from typing import Any

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_linter.derive import reasons_of
from wyeline_linter.issues import project_figures
from wyeline_linter.load_figures import load_figures
from wyeline_linter.network import two_sided
from wyeline_linter.studies.study_figures import equipment_studies, feeder_studies
from wyeline_linter.system_words import with_legs_of
from wyeline_linter.systems import Known, SystemState
from wyeline_linter.verdicts import Feeds, Refusal
from wyeline_linter.view import View
from wyeline_linter.windings import Transformed

VERSION = 2


def model_figures(view: View, only: str | None = None) -> dict[str, Any]:
    """``{version, state, equipment, feeders}``, everything or one name (equipment, or a feeder's key)."""
    model = view.model
    return {
        "version": VERSION,
        "state": view.network.state.name,
        "equipment": {
            name: equipment_figures(view, model.equipment[name]) for name in ordered_names(view) if only in (None, name)
        },
        "feeders": {
            feeder.key: feeder_figures(view, feeder) for feeder in ordered_feeders(view) if only in (None, feeder.key)
        },
    }


def figures_in_states(view: View, only: str | None = None) -> dict[str, Any]:
    """The same with the project, and with every switch state beside the judged one: what each figure is there, and its
    worst.

    ``states`` lists them with the words for each, ``left_out`` names those that are beyond the number worked out, and
    ``unlocked_ties`` the feeders that stand open and are closed in none, because no interlock says whether they may be.
    """
    from wyeline_linter.studies.scenarios import when
    from wyeline_linter.studies.states import unlocked_ties
    from wyeline_linter.studies.worst import circuits_entry, equipment_states, feeder_states, states_entry

    studies, model = view.studies, view.model
    figures: dict[str, Any] = {"version": VERSION, "project": project_figures(view)} | model_figures(view, only)
    figures["states"] = [
        {"state": study.name, "words": when(study.state).strip() or "as normal"} for study in studies.every()
    ]
    figures["left_out"] = list(studies.found().left_out)
    figures["unlocked_ties"] = unlocked_ties(view)
    for name, entry in figures["equipment"].items():
        entry.update(states_entry(equipment_states(view, name)))
        entry.update(circuits_entry(view, model.equipment[name]))
    for key, entry in figures["feeders"].items():
        entry.update(states_entry(feeder_states(view, model.feeders[key])))
    return figures


def ordered_names(view: View) -> list[str]:
    """Equipment in the order of its files."""
    order = {path: i for i, path in enumerate(view.model.files)}
    return sorted(
        view.model.equipment,
        key=lambda n: (
            order.get(view.model.equipment[n].block.file, 0),
            view.model.equipment[n].block.first_line,
        ),
    )


def ordered_feeders(view: View) -> list[Feeder]:
    """Feeders in the order of their files."""
    order = {path: i for i, path in enumerate(view.model.files)}
    return sorted(view.model.feeders.values(), key=lambda f: (order.get(f.block.file, 0), f.block.first_line))


def equipment_figures(view: View, equipment: Equipment) -> dict[str, Any]:
    """The figures of one piece of equipment; two-sided equipment shows what arrives beside what it makes."""
    name = equipment.name
    state = view.state(name)
    network = view.network
    figures: dict[str, Any] = {
        "kind": equipment.kind,
        "status": equipment.status,
        "description": equipment.body.description,
        "source": network.root.get(name),
        "fed_from": network.supplier.get(name),
        "path": [f.key for f in network.path(name)],
        "system": None,
        "unknown": {},
    }
    if state is None:
        return figures
    figures["system"] = system_figures(state.system, view.basis)
    if figures["system"] is None:
        figures["unknown"]["system"] = list(reasons_of(state.system))
    if two_sided(equipment) and state.arriving is not None:
        figures["arriving"] = system_figures(state.arriving, view.basis)
        if figures["arriving"] is None:
            figures["unknown"]["arriving"] = list(reasons_of(state.arriving))
    load = load_figures(view, name)
    if load is not None:
        figures["load"] = load
    studied, unknown = equipment_studies(view, equipment)
    figures.update(studied)
    figures["unknown"].update(unknown)
    if isinstance(state.winding, Transformed):
        winding, why = state.winding, state.winding.angle_unknown
        figures["winding"] = {
            # Without its angle a connection has no clock number: `Dyn`, not `Dyn11`.
            "connection": winding.connection if why is None else winding.connection.rstrip("0123456789"),
            "shift_deg": winding.shift_deg if why is None else None,
            "separately_derived": winding.separately_derived,
            "unknown": {} if why is None else {"shift_deg": [why]},
        }
    return figures


def system_figures(state: SystemState, practice: str | None) -> dict[str, Any] | None:
    """A voltage system as data: conductors, every pair's nominal volts, volts to ground, earthing in words.

    Legs are A, B, C in what programs read, whatever the practice; sentences call them as practice does.
    """
    if not isinstance(state, Known):
        return None
    system = state.system
    return {
        "nominal": system.nominal.text,
        "in_words": with_legs_of(practice, system.in_words()),
        "conductors": list(system.conductors),
        "frequency_hz": system.frequency_hz,
        "pairs": [{"between": [a, b], "volts": volts} for a, b, volts in system.pair_voltages()],
        "to_ground_v": {leg: round(system.volts_to_ground(leg), 3) for leg in system.legs},
        "earthing": system.earthing.kind.value,
    }


def feeder_figures(view: View, feeder: Feeder) -> dict[str, Any]:
    """The figures of one feeder: what it offers, which legs it takes, and why not where it cannot."""
    state = view.feeder_state(feeder.key)
    figures: dict[str, Any] = {
        "from": feeder.source.text,
        "to": feeder.target.text,
        "normally_open": feeder.normally_open,
        "length_m": feeder.body.number("length"),
        "device_a": feeder.body.number("rating"),
        "legs": None,
        "carried": None,
        "refused": None,
        "unknown": {},
    }
    if figures["length_m"] is None:
        figures["unknown"]["length_m"] = ["no length is written"]
    if state is None:
        return figures
    if isinstance(state.verdict, Feeds):
        figures["legs"] = list(state.verdict.best.conductors)
    elif isinstance(state.verdict, Refusal):
        refusal = state.verdict
        figures["refused"] = {
            "cause": refusal.cause.value,
            "found": with_legs_of(view.basis, refusal.found),
            "needed": with_legs_of(view.basis, refusal.needed),
            "why": with_legs_of(view.basis, refusal.why),
        }
    figures["carried"] = system_figures(state.carried, view.basis)
    if figures["carried"] is None and figures["refused"] is None:
        figures["unknown"]["carried"] = list(reasons_of(state.carried))
    studied, unknown = feeder_studies(view, feeder)
    figures.update(studied)
    figures["unknown"].update(unknown)
    return figures
