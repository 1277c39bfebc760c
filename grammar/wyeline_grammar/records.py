"""Data classes that are cheap to declare and to make.

The standard library writes and compiles six methods for every data class: a check declares eighty, which took an eighth
of a small one. Here it writes the initialiser only; comparing, hashing and showing are the same for all. What is frozen
is so for the type checker, which the house test runs: at run time nothing keeps guard, so that making one costs half.
"""

from __future__ import annotations

import dataclasses
from operator import attrgetter
from reprlib import recursive_repr
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from dataclasses import dataclass as dataclass
else:

    def dataclass(cls: type | None = None, *, frozen: bool = False, slots: bool = False, eq: bool = True) -> Any:
        """The standard library's decorator, as far as this project uses it."""
        if cls is None:
            return lambda cls: _declared(cls, frozen, slots, eq)
        return _declared(cls, frozen, slots, eq)


def _declared(cls: type, frozen: bool, slots: bool, eq: bool) -> Any:
    if cls.__doc__ is None:
        cls.__doc__ = cls.__name__  # the library would write out the signature, at the price of all the rest
    own = cls.__dict__.keys()
    made: Any = dataclasses.dataclass(init=True, repr=False, eq=False, slots=slots)(cls)
    if "__repr__" not in own:
        made.__repr__ = _shown
    if eq:
        compared = [f.name for f in dataclasses.fields(made) if f.compare]
        made._compared = attrgetter(*compared) if compared else type
        if "__eq__" not in own:
            made.__eq__ = _equal
        if "__hash__" not in own:
            made.__hash__ = _hashed if frozen else None
    return made


def _equal(self: Any, other: Any) -> Any:
    if self is other:
        return True
    if self.__class__ is not other.__class__:
        return NotImplemented
    return self._compared(self) == other._compared(other)


def _hashed(self: Any) -> int:
    return hash(self._compared(self))


@recursive_repr("...")
def _shown(self: Any) -> str:
    shown = ", ".join(f"{f.name}={getattr(self, f.name)!r}" for f in dataclasses.fields(self) if f.repr)
    return f"{self.__class__.__qualname__}({shown})"
