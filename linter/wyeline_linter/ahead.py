"""What stands ahead of a place: the nearest overcurrent device, the RCDs on the way, the first board.

It is found from the source on, along the feeders: through each feeder, and through each piece of equipment.
"""

from __future__ import annotations

from typing import NamedTuple

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.model import Body
from wyeline_grammar.vocabulary import BOARDS
from wyeline_linter.earthing import own_electrode, parts_electrode_ohm, source_electrode_ohm

_SHARING = BOARDS | {"busway"}


class Residual(NamedTuple):
    """A residual current device: ``at`` the feeder or equipment that holds it, its residual current, its type as
    written (empty where it is not), and whether a board behind it shares it out."""

    at: str
    amps: float
    kind: str
    shared: bool = False


class Ahead(NamedTuple):
    """What stands between a place and the equipment that makes its voltage system.

    ``maker`` is that source, transformer or the like; ``device_a`` the rating of the nearest overcurrent device on the
    way (None: there is none whose rating is written), ``device_at`` the feeder or equipment that holds it, ``rcds``
    the RCDs on the way, the nearest last, ``board`` the first board behind the maker, ``lugs`` the boards whose bus
    is passed on by lugs since that device. ``electrode_ohm`` is the resistance of the earth electrode written at the
    maker, or at the last board on the way that has one of its own; ``source_ohm`` that of the electrode that earths the
    system itself, at the maker.
    """

    maker: str
    device_a: float | None = None
    device_at: str = ""
    rcds: tuple[Residual, ...] = ()
    board: str = ""
    lugs: tuple[str, ...] = ()
    electrode_ohm: float | None = None
    source_ohm: float | None = None

    @property
    def rcd_a(self) -> float | None:
        """The residual current of the nearest RCD, in ampere; None where there is none."""
        return self.rcds[-1].amps if self.rcds else None


def at_maker(maker: Equipment, declared: Body | None, *, tt: bool) -> Ahead:
    """Nothing yet: the way begins at what makes the voltage, by name where ``declared`` says more of its system."""
    parts_ohm = parts_electrode_ohm(maker, declared)
    return Ahead(maker.name, electrode_ohm=parts_ohm, source_ohm=source_electrode_ohm(maker, declared, tt=tt))


def through_feeder(feeder: Feeder, ahead: Ahead | None, onward: Ahead | None) -> Ahead:
    """What protects the far end of a feeder that leaves equipment with ``ahead`` of its input and ``onward`` of what
    leaves it."""
    if onward is None:
        found = Ahead(feeder.source.name)
    elif feeder.source.port == "subfeed" and ahead is not None:
        # The second lugs lie before the main, the feed-through lugs behind it.
        found = ahead._replace(board=onward.board, lugs=(*ahead.lugs, feeder.source.name))
    elif feeder.source.port is not None:
        found = onward._replace(lugs=(*onward.lugs, feeder.source.name))
    else:
        found = onward
    rating, residual = feeder.body.number("rating"), residual_device(feeder.body, feeder.key)
    if rating is not None:
        found = found._replace(device_a=rating, device_at=feeder.key, lugs=())
    return found if residual is None else found._replace(rcds=(*found.rcds, residual))


def onward_of(equipment: Equipment, ahead: Ahead | None) -> Ahead:
    """What protects the feeders that leave equipment with one side, its own device included."""
    onward = ahead if ahead is not None else Ahead(equipment.name)
    device, residual = own_device_a(equipment), residual_device(equipment.body, equipment.name)
    if device is not None:
        onward = onward._replace(device_a=device, device_at=equipment.name, lugs=())
    if residual is not None:
        onward = onward._replace(rcds=(*onward.rcds, residual))
    if onward.rcds and equipment.kind in _SHARING:
        onward = onward._replace(rcds=tuple([r._replace(shared=True) for r in onward.rcds]))
    if own_electrode(equipment):
        onward = onward._replace(electrode_ohm=equipment.body.number("resistance"))
    if equipment.kind in BOARDS and not onward.board:
        onward = onward._replace(board=equipment.name)
    return onward


def residual_device(body: Body, at: str) -> Residual | None:
    """The RCD that a feeder, circuit or piece of equipment has of its own, or None."""
    amps = body.number("rcd")
    return Residual(at, amps, body.text("rcd-type") or "") if amps is not None else None


def own_device_a(equipment: Equipment) -> float | None:
    """The rating of the overcurrent device that a board or disconnect has of its own, in ampere, or None."""
    if equipment.kind in BOARDS:
        for key in ("main", "incomer"):
            rating = equipment.body.number(key)
            if rating is not None:
                return rating
    if equipment.kind == "disconnect" and ("fused" in equipment.body.flags or "fuse" in equipment.body.facts):
        return equipment.body.number("rating")
    return None
