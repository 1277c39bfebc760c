"""Data classes of `records` behave as the standard library's do, except that nothing keeps guard at run time.

Reference: the `dataclasses` module of the standard library, asked the same of the same declarations.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from typing import Any

import pytest

from wyeline_grammar import records


def declared(dataclass: Callable[..., Any]) -> tuple[Any, Any]:
    @dataclass(frozen=True, slots=True)
    class Piece:
        """A piece."""

        name: str
        length_m: float = 3.0
        notes: list[str] = dataclasses.field(default_factory=list, compare=False, repr=False)

    @dataclass(frozen=True, slots=True)
    class Longer(Piece):
        more: int = 1

    return Piece, Longer


PAIRS = list(zip(declared(dataclasses.dataclass), declared(records.dataclass), strict=True))


@pytest.mark.parametrize(("theirs", "ours"), PAIRS, ids=["alone", "derived"])
def test_what_is_frozen_compares_hashes_and_shows_as_the_library_has_it(theirs: Any, ours: Any) -> None:
    given = [("A",), ("B",), ("A", 3.0), ("A", 4.0), ("A", float("nan")), ("A", 3.0, ["x"])]
    one, other = [theirs(*g) for g in given], [ours(*g) for g in given]
    assert [[a == b for a in one] for b in one] == [[a == b for a in other] for b in other]
    assert [len({a, b}) for a in one for b in one] == [len({a, b}) for a in other for b in other]
    assert list(map(repr, one)) == list(map(repr, other))
    assert repr(dataclasses.replace(one[0], length_m=5.0)) == repr(dataclasses.replace(other[0], length_m=5.0))
    assert other[0] != "A"
    assert not hasattr(other[0], "__dict__")


def test_pieces_of_two_classes_are_never_equal() -> None:
    piece, longer = declared(records.dataclass)
    assert piece("A") != longer("A")


def test_what_may_change_has_no_hash_and_what_is_itself_only_keeps_its_own() -> None:
    @records.dataclass(slots=True)
    class Changing:
        pieces: list[Any]

    @records.dataclass(slots=True, eq=False)
    class Itself:
        pieces: list[Any]

    assert Changing([1]) == Changing([1])
    with pytest.raises(TypeError):
        hash(Changing([1]))
    assert Itself([1]) != Itself([1])
    assert len({Itself([1]), Itself([1])}) == 2


def test_what_holds_itself_is_shown_once() -> None:
    @records.dataclass
    class Round:
        pieces: list[Any]

    piece = Round([])
    piece.pieces.append(piece)
    assert "..." in repr(piece)
    assert piece == piece


def test_a_method_of_its_own_stays() -> None:
    @records.dataclass(frozen=True)
    class Own:
        name: str

        def __repr__(self) -> str:
            return "mine"

        def __hash__(self) -> int:
            return 7

    assert (repr(Own("A")), hash(Own("A"))) == ("mine", 7)
