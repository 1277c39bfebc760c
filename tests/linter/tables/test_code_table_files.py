"""Every table file is well formed, says where it comes from, and loads fast; overrides behave."""

from __future__ import annotations

import ast
import subprocess
import sys
import time
from pathlib import Path

import pytest

import wyeline_linter
from wyeline_linter.tables import (
    Looked,
    NotListed,
    Override,
    OverrideError,
    Table,
    UnknownBasisError,
    basis,
    basis_names,
)
from wyeline_linter.tables.load import STATUSES, load, read

ALL = [(name, table) for name in basis_names() for table in basis(name).table_names]


@pytest.mark.parametrize(("name", "table"), ALL)
def test_file_states_its_origin_and_every_cell_its_status(name: str, table: str) -> None:
    loaded = load(name, table)
    assert loaded.header["obtained"] and loaded.header["title"] and loaded.rows
    for key, status in loaded.statuses.items():
        words = [part.split() for part in status.split(";")]
        assert all(word[0] in STATUSES for word in words), key
        assert all(column in loaded.columns for word in words for column in word[1:]), key
        if len(words) > 1 or len(words[0]) > 1:
            named = [column for word in words for column in word[1:]]
            filled = [c for c, v in zip(loaded.columns, loaded.rows[key], strict=True) if v is not None]
            assert len(named) == len(set(named)), f"{key}: a column has two statuses"
            by = {loaded.header.get("cite by"), loaded.header.get("row by"), "metric"}
            assert set(filled) - set(named) <= by, f"{key}: a value has no status"


@pytest.mark.parametrize(("name", "table"), ALL)
def test_cells_can_be_told_apart_in_words(name: str, table: str) -> None:
    loaded = load(name, table)
    if "row by" in loaded.header or table == "about":
        return
    texts = {loaded.row_text(key, loaded.columns[0]) for key in loaded.rows}
    assert len(texts) == len(loaded.rows)


def test_a_whole_basis_loads_quickly_and_lazily() -> None:
    best = min(_load_all("us-2023") for _ in range(5))
    assert best < 0.015, f"{best * 1e3:.1f} ms"
    code = (
        "import sys\n"
        "from wyeline_linter import conductors, raceways, standard_ratings, grounding_conductors, demand_factors\n"
        "from wyeline_linter.tables import basis\nb = basis('us-2023')\nb.number('ampacity', ('12',), 'cu_60')\n"
        "heavy = {'lark', 'pint', 'numpy', 'scipy', 'pygls', 'difflib'} & set(sys.modules)\n"
        "from wyeline_linter.tables.load import load\n"
        "print(sorted(heavy), load.cache_info().currsize)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["[]", "2"]  # about and ampacity only


def _load_all(name: str) -> float:
    load.cache_clear()
    start = time.thread_time()
    for table in basis(name).table_names:
        load(name, table)
    return time.thread_time() - start


def test_answers_carry_table_row_and_status() -> None:
    found = basis("us-2023").number("ampacity", ("3/0",), "cu_75")
    assert found == Looked(200.0, "NEC 2023 310.16", "3/0 Cu 75 degC", "verified")
    mixed = load("us-2023", "ampacity")
    assert mixed.status_of(("600 kcmil",), "cu_75") == "verified"
    assert mixed.status_of(("600 kcmil",), "al_90") == "memory"
    limit = basis("us-2023").constant("round-up-limit")
    assert isinstance(limit, Looked) and (limit.value, limit.table) == (800, "NEC 2023 240.4(B)")


def test_what_is_not_held_is_said_and_never_guessed() -> None:
    us = basis("us-2023")
    assert "no row for 95 mm2" in str(us.number("ampacity", ("95 mm2",), "cu_75"))
    assert "no value for 14 Al 75 degC" in str(us.number("ampacity", ("14",), "al_75"))
    assert "ends at 85" in str(us.number_up_to("ambient-correction", 90, "f90"))
    assert isinstance(us.table("soil"), NotListed)
    with pytest.raises(UnknownBasisError, match="there are iec, us-2023"):
        basis("us-1812")


def test_override_replaces_one_row_and_stays_visible() -> None:
    us = basis("us-2023")
    ours = us.with_overrides([Override("310.16", "3/0 Cu 75 degC", 190, "owner's standard, section 26")])
    found = ours.number("ampacity", ("3/0",), "cu_75")
    assert isinstance(found, Looked)
    assert (found.value, found.status, found.note) == (190, "override", "owner's standard, section 26")
    assert str(found).endswith("(override: owner's standard, section 26)")
    assert ours.overrides[0].row == "3/0 Cu 75 degC" and us.overrides == ()
    assert us.number("ampacity", ("3/0",), "cu_75") != found
    assert ours.number("ampacity", ("4/0",), "cu_75") == us.number("ampacity", ("4/0",), "cu_75")
    again = ours.with_overrides([Override("constants", "round-up-limit", "600", "local amendment")])
    limit = again.constant("round-up-limit")
    assert isinstance(limit, Looked) and limit.value == 600 and len(again.overrides) == 2
    assert again.number("ampacity", ("3/0",), "cu_75") == found


@pytest.mark.parametrize(
    ("override", "message"),
    [
        (Override("310.16", "3/0 Cu 75", 190, "why"), "nearest: 3/0 Cu 75 degC"),
        (Override("310.61", "3/0 Cu 75 degC", 190, "why"), "no table '310.61'; nearest: 310.16"),
        (Override("310.16", "3/0 Cu 75 degC", 190, " "), "gives no reason"),
        (Override("310.16", "3/0 Cu 75 degC", "lots", "why"), "'lots' is not a number"),
    ],
)
def test_override_that_fits_nothing_is_refused_with_the_nearest(override: Override, message: str) -> None:
    with pytest.raises(OverrideError, match=message):
        basis("us-2023").with_overrides([override])


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("a,status\n1,verified", "lacks standard"),
        ("#H\na,b,status\n1,2,verified\n1,3,verified", "stands twice"),
        ("#H\na,b,status\n1,2", "2 fields instead of 3"),
        ("#H\nb,a,status\n1,2,verified", "must be the keys"),
    ],
)
def test_damaged_file_is_named(text: str, message: str) -> None:
    head = "\n".join(f"# {w}: x" for w in ("standard", "edition", "table", "cite", "title", "obtained", "row"))
    with pytest.raises(ValueError, match=f"table t: .*{message}"):
        read("t", text.replace("#H", head + "\n# key: a").split("\n"))


def test_every_override_address_of_a_table_works_both_ways() -> None:
    """Each numeric cell can be named by the row it prints, for a table with one key and one with three."""
    for name, table in (("us-2023", "electrode-conductor"), ("iec", "capacity-free-air")):
        start = basis(name)
        held = start.table(table)
        assert isinstance(held, Table)
        for cell in held.cells():
            if isinstance(cell.value, str) and name == "iec":
                continue  # the column that cites the printed table
            changed = start.with_overrides([Override(table, cell.row, cell.value, "same value")])
            assert changed.overrides[0].row == cell.row


@pytest.mark.parametrize(
    ("code", "name", "column", "words"),
    [
        # IEC 60364-5-54:2011 Table 54.2: S up to 16 mm2, above 16 up to 35 mm2, above 35 mm2.
        ("iec", "protective-conductor", "share", "line conductor above 35 mm2"),
        # NEC 2023 Table 310.15(C)(1): its last step is 41 and above.
        ("us-2023", "bundling", "percent", "above 40 current-carrying conductors"),
    ],
)
def test_the_last_step_of_a_table_is_cited_by_what_lies_below_it(code: str, name: str, column: str, words: str) -> None:
    table = basis(code).table(name)
    assert isinstance(table, Table)
    (last,) = [key for key in table.rows if key[-1] == "any"]
    found = column if column in table.columns else table.columns[0]
    assert table.row_text(last, found) == words


def test_what_is_asked_as_a_plain_number_stands_in_a_table() -> None:
    """`value_of` raises for a name that nobody wrote down: no typing error may wait for the model that meets it."""
    asked = set()
    for path in Path(wyeline_linter.__file__).parent.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "attr", "") == "value_of":
                for argument in node.args:
                    asked |= {n.value for n in ast.walk(argument) if isinstance(n, ast.Constant)}
    known = {key for name in basis_names() for (key,) in load(name, "constants").rows}
    assert len(asked) > 5 and asked <= known
    assert basis("us-2023").value_of("gfpe-pickup") == 1200
    with pytest.raises(KeyError):
        basis("us-2023").value_of("no-such-value")
