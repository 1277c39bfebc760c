"""Finished findings of a model, kept between runs: asked for in another form, they are not worked out again.

An entry holds the text of every file that the result came from (and which files were looked for in vain), the digest of
the configuration, and of Wyeline itself. It is used where nothing differs, or where what differs says nothing: after
edits of comments and blank lines (`silent_edits`) the findings stand in the rows that these lines have now. It is JSON,
which is data only: an entry can at worst be wrong about findings of files that it must hold. See ``cache_folder`` for
when one is read.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any, NamedTuple

from wyeline_grammar.sources import SourceError, decode
from wyeline_linter.cache_folder import digest, folder, name_of, own_fingerprint, read_entry, write_entry

if TYPE_CHECKING:
    from wyeline_linter.expectations import Expectation
    from wyeline_linter.findings import Finding


class Kept(NamedTuple):
    """An entry that still holds: its files, its findings and expectations (built when called), the share by which
    figures of accepted findings may move, and the rules that are off."""

    files: list[str]
    findings: Callable[[], list[Finding]]
    expectations: Callable[[], list[Expectation]]
    may_move: float
    off: list[str]


class ResultCache:
    """Entries by what was asked: root, options and configuration. ``where`` is their folder; "" keeps nothing."""

    def __init__(self, where: str | None = None) -> None:
        self.where = (where or None) if where is not None else folder()

    def load(
        self, asked: Sequence[str], read: Callable[[str], bytes | None], *, with_edits: bool = True
    ) -> Kept | None:
        """The entry for what was asked if it still holds, else None.

        ``read`` gives the bytes of a file, None where there is none. ``with_edits``: the edits of fixes are asked for,
        which hang on where lines and comments stand; else fixes may come with their titles alone.
        """
        body = read_entry(self.where, name_of(tuple(asked), ".json")) if self.where is not None else None
        if body is None:
            return None
        try:
            entry = json.loads(body)
            if entry["own"] != own_fingerprint() or entry["asked"] != list(asked):
                return None
            texts: dict[str, bytes] = {}
            edited: dict[str, bytes] = {}
            for name, wanted in entry["files"].items():
                data = read(name)
                if data is not None:
                    texts[name] = data
                if (digest(data) if data is not None else None) != wanted:
                    if data is None or wanted is None:
                        return None
                    edited[name] = data
            names: list[str] = entry["order"]
            records: list[list[Any]] = entry["findings"]
            fared: list[list[Any]] = entry["expectations"]
            if edited:
                found = _across_edits(edited, entry["texts"], names, records, fared, with_edits)
                if found is None:
                    return None
                records, fared = found
            may_move = float(entry["may_move"])
            off = [str(name) for name in entry["off"]]
        except (ValueError, LookupError, TypeError, AttributeError, RecursionError):
            return None

        def findings() -> list[Finding]:
            from wyeline_grammar.blocks import split_lines
            from wyeline_linter.finding_records import from_record

            cut: dict[str, list[str]] = {}

            def lines_of(name: str) -> list[str]:
                if name not in cut:
                    cut[name] = split_lines(texts[name].decode("utf-8-sig"))
                return cut[name]

            return [from_record(record, names, lines_of) for record in records]

        def expectations() -> list[Expectation]:
            from wyeline_linter.expectations import Expectation

            return [Expectation(names[number], *rest) for number, *rest in fared]

        return Kept(names, findings, expectations, may_move, off)

    def store(
        self,
        asked: Sequence[str],
        files: dict[str, bytes | None],
        order: Sequence[str],
        findings: Sequence[Finding],
        expectations: Sequence[Expectation] = (),
        may_move: float = 0.0,
        off: Sequence[str] = (),
    ) -> None:
        """Keep a result. ``files`` are the bytes that every file had, None for those that were not there."""
        if self.where is None:
            return
        from wyeline_linter.finding_records import to_record

        numbers = {name: i for i, name in enumerate(order)}
        try:
            entry = {
                "own": own_fingerprint(),
                "asked": list(asked),
                "files": {name: (digest(data) if data is not None else None) for name, data in files.items()},
                "texts": {name: decode(name, data) for name, data in files.items() if data and name in numbers},
                "order": list(order),
                "findings": [to_record(f, numbers.__getitem__) for f in findings],
                "may_move": may_move,
                "off": list(off),
                "expectations": [[numbers[e.path], *e[1:]] for e in expectations],
            }
            body = json.dumps(entry, separators=(",", ":")).encode()
        except (KeyError, ValueError, SourceError):
            return
        write_entry(self.where, name_of(tuple(asked), ".json"), body)


def _across_edits(
    edited: dict[str, bytes],
    kept: dict[str, str],
    names: list[str],
    records: list[list[Any]],
    fared: list[list[Any]],
    with_edits: bool,
) -> tuple[list[list[Any]], list[list[Any]]] | None:
    """Findings and expectations in the rows that they have in files as they are now; None where an edit said something,
    or something that is shown went or reads otherwise. Raises LookupError, ValueError or TypeError for what is no
    entry."""
    from wyeline_grammar.blocks import split_lines
    from wyeline_linter.finding_records import has_edits, moved
    from wyeline_linter.silent_edits import Rows, rows_after

    if with_edits and any(map(has_edits, records)):
        return None
    rows: dict[int, Rows] = {}
    for name, data in edited.items():
        try:
            now = decode(name, data)
        except SourceError:
            return None
        found = rows_after(split_lines(kept[name]), split_lines(now))
        if found is None:
            return None
        rows[names.index(name)] = found

    def row_now(number: int, row: int) -> int:
        return rows[number].now(row) if number in rows else row

    return (
        [moved(record, row_now) for record in records],
        [[number, row_now(number, row), *rest] for number, row, *rest in fared],
    )
