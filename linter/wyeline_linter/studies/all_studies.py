"""All studies of one model: a switch state each, those found in the model among them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from itertools import compress, count
from operator import is_not
from typing import TYPE_CHECKING, Any, TypeVar

from wyeline_grammar.linking import Model
from wyeline_linter.network import NORMAL_STATE, SwitchState, follows_grid
from wyeline_linter.studies.states import Found, found_states
from wyeline_linter.studies.study import StateStudy
from wyeline_linter.studies.study_cache import StudyCache

if TYPE_CHECKING:
    from wyeline_linter.view import View

T = TypeVar("T")
U = TypeVar("U")

MOST_IN_PLACE = 100
"""Statements that are other ones than before, up to which the rest is taken to stand in the same order."""
MOST_KEPT_PIECES = 6_000
"""Pieces of equipment, in all states that nobody writes down together, whose circuits outlast a study in an editor:
about 20 KB each."""


class Studies:
    """The studies of a view; one :class:`StateStudy` a switch state."""

    def __init__(self, view: View, cache: StudyCache | None = None) -> None:
        self.view = view
        self.cache = cache if cache is not None else StudyCache()
        self._states: dict[SwitchState, StateStudy] = {}
        self._once: dict[str, Any] = {}
        self._listed: dict[int, tuple[Mapping[str, Any], list[Any]]] = {}
        self._others: dict[tuple[int, int], tuple[list[Any], list[int]]] = {}
        """What :meth:`of_each` compared, by the identity of what it holds."""

    @property
    def model(self) -> Model:
        return self.view.model

    @property
    def normal(self) -> StateStudy:
        """The switch state that the view judges."""
        return self.in_state(self.view.network.state)

    def in_state(self, state: SwitchState = NORMAL_STATE) -> StateStudy:
        """The studies of a switch state."""
        found = self._states.get(state)
        if found is None:
            found = self._states[state] = StateStudy(self.view, state, self.cache)
        return found

    def once(self, what: str, work: Callable[[], T]) -> T:
        """The result of some work on these studies, done when first asked for."""
        if what not in self._once:
            self._once[what] = work()
        return self._once[what]  # type: ignore[no-any-return]

    def of_each(self, what: str, things: Mapping[str, U], read: Callable[[U], T]) -> Iterator[tuple[U, T]]:
        """What ``read`` tells of each piece of equipment or feeder by its statement alone: asked of those only that are
        other ones than in the version before."""
        before, told = self.cache.facts.get(what, ([], []))
        now, others = self._compared(things, before)
        if len(before) == len(now) and len(others) <= MOST_IN_PLACE:
            for k in others:
                told[k] = read(now[k])
        else:  # those of the version before are alive in ``before``, so that no other has the id of one of them
            by_id = dict(zip(map(id, before), told, strict=True))
            told = [by_id[id(one)] if id(one) in by_id else read(one) for one in now]
        self.cache.facts[what] = now, told
        return zip(now, told, strict=True)

    def _compared(self, things: Mapping[str, Any], before: list[Any]) -> tuple[list[Any], list[int]]:
        """The things, and the places of those that are other ones than before."""
        now = self._listed.setdefault(id(things), (things, list(things.values())))[1]
        known = self._others.get((id(before), id(now)))
        if known is None:
            others = list(compress(count(), map(is_not, before, now)))
            known = self._others[id(before), id(now)] = before, others
        return now, known[1]

    def let_go(self) -> None:
        """These studies are over. What refers to its own study goes first, so that nothing waits for the collector."""
        for state in (*self._states.values(), *self._once.get("zones", ())):
            vars(state).pop("judged", None)

    def shed(self) -> None:
        """The study is done and its answers are told. Where the states that nobody writes down hold much, they and
        what is kept of them go; the next study works them out anew."""
        zones: list[StateStudy] = self._once.get("zones", [])
        if sum(len(z.connectivity.order) for z in zones) > MOST_KEPT_PIECES:
            self.cache.keep({s.key for s in self.stated()})
            self.view.forget_studies()

    def found(self) -> Found:
        """The switch states that nobody writes down, found in the model, and what of them is left out."""
        return self.once("found states", lambda: found_states(self.view))

    def zones(self) -> list[StateStudy]:
        """The studies of these states, each of what is fed otherwise than as normal."""

        def work() -> list[StateStudy]:
            made = [StateStudy(self.view, z.state, self.cache, z.network) for z in self.found().zones]
            self.cache.keep({s.key for s in (*self.stated(), *made)})
            return made

        return self.once("zones", work)

    def every(self) -> list[StateStudy]:
        """The judged state first, then every scenario that the model states, then the states that nobody writes down.

        Where a scenario is judged, it and the stated ones only. The last kind knows nothing of what lies outside its
        zone: there every figure is at the most as bad as normal.
        """
        if self.view.network.state != NORMAL_STATE:
            return self.stated()
        return [*self.stated(), *self.zones()]

    def for_faults(self) -> list[StateStudy]:
        """The same, but for states in which only inverters stop: no fault is worse there than as normal."""

        def work() -> list[StateStudy]:
            followers = {e.name for e in self.view.of_kind("inverter") if follows_grid(e)}
            return [s for s in self.every() if s.zone is None or not s.state.off or not s.state.off <= followers]

        return self.once("for faults", work)

    def stated(self) -> list[StateStudy]:
        """The judged state and every scenario that the model states."""
        first = self.view.network.state
        others = [s for s in self.view.states_of_switches() if s != first]
        return [self.in_state(s) for s in (first, *others)]
