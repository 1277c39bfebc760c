"""Bodies that say the same, known by one object.

Hundreds of circuits of a building have the same device, wires and load; they differ in length, description and place.
"""

from __future__ import annotations

from wyeline_grammar.model import Body, Sense
from wyeline_grammar.remembering import Remembered

APART = "length"
"""The fact that a sense does not hold: it differs nearly everywhere, and few rules read it."""
_MOST = 4_000

_senses: Remembered[tuple[object, ...], Sense] = Remembered()
_joined: Remembered[tuple[Sense, Sense], Sense] = Remembered()
_senses.expect(_MOST)
_joined.expect(_MOST)


def sense_of(body: Body) -> Sense:
    """The sense of a body."""
    wires, raceway = body.conductors, body.raceway
    return _sense(
        (
            tuple([(f.name, f.value, f.assumed, f.poles) for f in body.facts.values() if f.name != APART]),
            tuple(body.flags),
            body.poles,
            wires[:-1] if wires is not None else None,
            raceway[:-1] if raceway is not None else None,
            tuple([(load.leg, load.value) for load in body.leg_loads]),
        )
    )


def joined(one: Sense, other: Sense) -> Sense:
    """The sense of a body that says first the one and then the other; of what can be said once only one says it."""
    found = _joined.get((one, other))
    if found is None:
        facts, flags, *ours = one.content
        more, further, *theirs = other.content
        once = tuple([a or b for a, b in zip(ours, theirs, strict=True)])
        found = _sense(((*facts, *more), (*flags, *further), *once))  # type: ignore[misc]
        _joined.put((one, other), found)
    return found


def _sense(content: tuple[object, ...]) -> Sense:
    found = _senses.get(content)
    if found is None:
        facts, flags = content[:2]
        found = Sense(content, frozenset((*(fact[0] for fact in facts), *flags)))  # type: ignore[attr-defined,misc]
        _senses.put(content, found)
    return found
