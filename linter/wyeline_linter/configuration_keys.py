"""The shape of `wyeline.toml`: every key once, with its default and sentence, and the reader that goes by it."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Collection, Iterator, Mapping
from typing import Any, Literal, NamedTuple

from wyeline_grammar.quantities import QuantityError, parse_quantity
from wyeline_linter.configuration import Configuration, ConfigurationError, PathRules, Problem, Settings, StatedOverride
from wyeline_linter.findings import Severity
from wyeline_linter.near_names import near

SEVERITY_WORDS: dict[str, Severity | None] = {
    "error": Severity.ERROR,
    "warning": Severity.WARNING,
    "advice": Severity.ADVICE,
    "off": None,
}


class Limit(NamedTuple):
    """A limit: its field of Settings, the shares it may have, and what it does."""

    field: str
    low: float
    high: float
    doc: str


LIMITS: dict[str, Limit] = {
    "drop-branch": Limit(
        "drop_branch", 0.001, 0.2, "Voltage drop aimed for in the last circuit, where the project states none."
    ),
    "drop-path": Limit(
        "drop_path", 0.001, 0.3, "Voltage drop aimed for from the source to a load, where the project states none."
    ),
    "loading": Limit("loading", 0.1, 1.0, "Share of its rating from which a source or transformer draws a warning."),
    "balance": Limit("balance", 0.01, 1.0, "How far a leg of a board may be above the mean of its legs."),
    "reserve": Limit(
        "reserve", 0.0, 0.9, "Positions of a board that stay free, where neither it nor the project says."
    ),
    "allowance-change": Limit(
        "allowance_change", 0.0, 1.0, "How far figures of an accepted finding may move before it is judged anew."
    ),
}

TOP: dict[str, str] = {
    "basis": 'Code tables and rules for projects that state none: `"us-2023"` or `"iec"`.',
    "units": 'Units of lengths that are printed, `"si"` or `"us"`; left out, those of the basis.',
    "paper": 'Paper of the one-line diagram, such as `"A1"` or `"ANSI-D"`; left out, A3, in US practice tabloid.',
    "rules": 'A table: the name of a rule, and `"error"`, `"warning"`, `"advice"` or `"off"`.',
    "limits": "A table of limits, each a text with its unit.",
    "paths": "A table of patterns, each a table of rules as above; the last pattern that fits a file wins.",
    "override": "An array of tables: a table row with the project's own value and the reason.",
}
OVERRIDE_KEYS: dict[str, str] = {
    "table": "The table's name, number or citation, such as `310.16`.",
    "row": "The row as results print it, such as `3/0 Cu 75 degC`.",
    "value": "The project's own value.",
    "reason": "Why, for whoever reviews the work.",
    "basis": "The basis that the row belongs to; left out, whichever is applied.",
}
UNITS: tuple[Literal["si", "us"], ...] = ("si", "us")


def read_configuration(path: str, data: bytes) -> Configuration:
    """What a file says. Raises ConfigurationError with every problem."""
    try:
        text = data.decode("utf-8-sig")
        tree = tomllib.loads(text.replace("\r\n", "\n"))
    except UnicodeDecodeError as error:
        row = data.count(b"\n", 0, error.start)
        raise ConfigurationError(path, [Problem(row, 0, 0, "this is not UTF-8 text; save it as UTF-8")]) from None
    except tomllib.TOMLDecodeError as error:
        raise ConfigurationError(path, [_toml_problem(str(error), text)]) from None
    except RecursionError:
        raise ConfigurationError(path, [Problem(0, 0, 0, "this is nested too deeply")]) from None
    return _Reader(path, text, tree).configuration()


def _toml_problem(message: str, text: str) -> Problem:
    found = re.search(r" \(at line (\d+), column (\d+)\)$", message)
    if found is None:
        said = message.removesuffix(" (at end of document)")
        return Problem(text.count("\n"), 0, 0, f"this is no TOML: {said[:1].lower()}{said[1:]}")
    row, column = int(found[1]) - 1, int(found[2]) - 1
    return Problem(row, column, column + 1, f"this is no TOML: {message[:1].lower()}{message[1 : found.start()]}")


class _Reader:
    """Reads one tree, and collects what is wrong with it."""

    def __init__(self, path: str, text: str, tree: dict[str, Any]) -> None:
        self.path = path
        self.tree = tree
        self.problems: list[Problem] = []
        self.places = dict(key_places(text))

    def configuration(self) -> Configuration:
        tree = self.tree
        self._only(tree, TOP, (), "key")
        found = Configuration(
            self.path,
            self._settings(self._table(tree, ("limits",))),
            self._severities(self._table(tree, ("rules",)), ("rules",)),
            self._paths(self._table(tree, ("paths",))),
            self._basis(tree.get("basis"), ("basis",)),
            self._units(tree.get("units")),
            self._overrides(tree.get("override", [])),
            self._paper(tree.get("paper")),
        )
        if self.problems:
            raise ConfigurationError(self.path, sorted(self.problems))
        return found

    def _problem(self, keys: tuple[str, ...], message: str) -> None:
        at = keys
        while at and at not in self.places:
            at = at[:-1]
        self.problems.append(Problem(*self.places.get(at, (0, 0, 0)), message))

    def _only(self, table: Mapping[str, Any], known: Mapping[str, Any], at: tuple[str, ...], what: str) -> None:
        for key in table:
            if key not in known:
                self._problem((*at, key), f"`{key}` is no {what} here{_hint(key, known)}")

    def _table(self, tree: Mapping[str, Any], keys: tuple[str, ...]) -> Mapping[str, Any]:
        found = tree.get(keys[-1], {})
        if isinstance(found, dict):
            return found
        self._problem(keys, f"`{keys[-1]}` is a table: write `[{'.'.join(keys)}]` and its keys below")
        return {}

    def _settings(self, table: Mapping[str, Any]) -> Settings:
        self._only(table, LIMITS, ("limits",), "limit")
        values: dict[str, float] = {}
        for key, limit in LIMITS.items():
            if key in table:
                value = self._share(table[key], ("limits", key), limit)
                if value is not None:
                    values[limit.field] = value
        return Settings(**values)

    def _share(self, value: Any, keys: tuple[str, ...], limit: Limit) -> float | None:
        example = f'`{keys[-1]} = "{getattr(Settings(), limit.field):.0%}"`'.replace("%", " %")
        if not isinstance(value, str):
            self._problem(keys, f"`{keys[-1]}` is a share with its unit, such as {example}")
            return None
        try:
            quantity = parse_quantity(value)
        except QuantityError as error:
            self._problem(keys, f"{error}; a share is written like {example}")
            return None
        if quantity.dimension != "ratio":
            self._problem(keys, f"`{value}` is no share; it is written like {example}")
            return None
        if not limit.low <= quantity.value_si <= limit.high:
            self._problem(
                keys, f"`{keys[-1]}` lies between {100 * limit.low:g} % and {100 * limit.high:g} %, not {value}"
            )
            return None
        return quantity.value_si

    def _severities(self, table: Mapping[str, Any], at: tuple[str, ...]) -> dict[str, Severity | None]:
        from wyeline_linter.rules.registry import all_rules

        if table:
            self._only(table, all_rules(), at, "rule")
        found: dict[str, Severity | None] = {}
        for name, word in table.items():
            if not isinstance(word, str) or word not in SEVERITY_WORDS:
                words = '"error", "warning", "advice" or "off"'
                self._problem((*at, name), f"`{name}` is {words}{_hint(word, SEVERITY_WORDS)}")
            else:
                found[name] = SEVERITY_WORDS[word]
        return found

    def _paths(self, table: Mapping[str, Any]) -> tuple[PathRules, ...]:
        found = []
        for pattern in table:
            keys = ("paths", pattern)
            if not pattern or pattern.startswith("/") or "\\" in pattern or ".." in pattern.split("/"):
                self._problem(
                    keys, f'a pattern is relative to this file, with `/`, such as "existing/**": not "{pattern}"'
                )
                continue
            found.append(PathRules(pattern, pattern_for(pattern), self._severities(self._table(table, keys), keys)))
        return tuple(found)

    def _units(self, value: Any) -> Literal["si", "us"] | None:
        for word in UNITS:
            if value == word:
                return word
        if value is not None:
            listed = " or ".join(f'"{word}"' for word in UNITS)
            self._problem(("units",), f"`units` is {listed}{_hint(value, UNITS)}")
        return None

    def _paper(self, value: Any) -> str:
        if value is None:
            return ""
        from wyeline_linter.reports.diagram.papers import PAPERS, paper_named

        named = paper_named(value) if isinstance(value, str) else None
        if named is None:
            listed = ", ".join(f'"{name}"' for name in PAPERS)
            self._problem(("paper",), f"`paper` is one of {listed}{_hint(value, PAPERS)}")
        return named or ""

    def _basis(self, value: Any, keys: tuple[str, ...]) -> str | None:
        from wyeline_linter.tables import basis_names

        names = sorted(basis_names())
        if value is None or value in names:
            return value  # type: ignore[no-any-return]
        listed = " or ".join(f'"{name}"' for name in names)
        self._problem(keys, f"`basis` is {listed}{_hint(value, names)}")
        return None

    def _overrides(self, entries: Any) -> tuple[StatedOverride, ...]:
        from wyeline_linter.tables import Override

        if not isinstance(entries, list) or not all(isinstance(e, dict) for e in entries):
            self._problem(("override",), "an override is written as `[[override]]` with its keys below")
            return ()
        found = []
        for number, entry in enumerate(entries):
            at = ("override", str(number))
            self._only(entry, OVERRIDE_KEYS, at, "key")
            missing = [k for k in ("table", "row", "value", "reason") if k not in entry]
            if missing:
                quoted = [f"`{key}`" for key in missing]
                listed = f"{', '.join(quoted[:-1])} and {quoted[-1]}" if len(quoted) > 1 else quoted[0]
                self._problem(at, f"this override lacks {listed}")
                continue
            texts = [entry[k] for k in ("table", "row", "reason")]
            value = entry["value"]
            if not all(isinstance(t, str) and t.strip() for t in texts) or isinstance(value, bool | list | dict):
                self._problem(at, "`table`, `row` and `reason` are texts, and `value` is a number or a text")
                continue
            basis = self._basis(entry.get("basis"), (*at, "basis"))
            stated = Override(texts[0], texts[1], value if isinstance(value, str) else float(value), texts[2])
            found.append(StatedOverride(stated, basis, self.places.get(at, (0, 0, 0))[0]))
        return tuple(found)


def _hint(wrong: object, known: Collection[str]) -> str:
    nearest = near(str(wrong), known)
    if nearest:
        return f"; the nearest: {', '.join(f'`{name}`' for name in nearest)}"
    return f"; known: {', '.join(f'`{name}`' for name in known)}" if len(known) <= 8 else ""


def pattern_for(pattern: str) -> re.Pattern[str]:
    """`*` and `?` stay within a folder, `**` crosses folders; a pattern that ends in `/` means all below."""
    parts = re.split(r"(\*\*/|\*\*|\*|\?)", pattern + "**" if pattern.endswith("/") else pattern)
    words = {"**/": "(?:[^/]+/)*", "**": ".*", "*": "[^/]*", "?": "[^/]"}
    return re.compile("".join(words.get(part) or re.escape(part) for part in parts), re.DOTALL)


_KEY = r"""(?:[A-Za-z0-9_-]+|"(?:[^"\\]|\\.)*"|'[^']*')"""
_KEYS = re.compile(rf"[ \t]*(\[\[?)?[ \t]*({_KEY}(?:[ \t]*\.[ \t]*{_KEY})*)[ \t]*(\]\]?|=)")
_PART = re.compile(_KEY)


def key_places(text: str) -> Iterator[tuple[tuple[str, ...], tuple[int, int, int]]]:
    """Where each key of a TOML text stands: its full name, and row, start and end of its last part, from 0.

    An entry of an array of tables is called by its number. For messages only: what the text means, ``tomllib`` says.
    """
    table: tuple[str, ...] = ()
    counts: dict[tuple[str, ...], int] = {}
    for row, line in enumerate(text.split("\n")):
        found = _KEYS.match(line)
        if found is None or (found[1] is None) != (found[3] == "="):
            continue
        parts = list(_PART.finditer(line, found.start(2), found.end(2)))
        names = tuple(p[0][1:-1] if p[0][0] in "\"'" else p[0] for p in parts)
        spans = [(row, p.start(), p.end()) for p in parts]
        if found[1] == "[[":
            number = counts[names] = counts.get(names, -1) + 1
            table = (*names, str(number))
            yield table, spans[-1]
        elif found[1] == "[":
            table = names
        before = () if found[1] else table
        for i, span in enumerate(spans):
            yield (*before, *names[: i + 1]), span


BEGIN, END = (
    "<!-- settings: generated by `python -m wyeline_linter.configuration_keys FILE` -->",
    "<!-- end of settings -->",
)


def reference() -> str:
    """Every key as Markdown tables, between the marks under which they stand in the linter's README."""
    lines = [BEGIN, "| key | what it does |", "| --- | --- |"]
    lines += [f"| `{key}` | {doc} |" for key, doc in TOP.items()]
    lines += ["", "| limit | default | range | what it does |", "| --- | --- | --- | --- |"]
    for key, limit in LIMITS.items():
        usual = 100 * getattr(Settings(), limit.field)
        lines.append(f"| `{key}` | `{usual:g} %` | {100 * limit.low:g} % to {100 * limit.high:g} % | {limit.doc} |")
    lines += ["", "| key of `[[override]]` | what it is |", "| --- | --- |"]
    lines += [f"| `{key}` | {doc} |" for key, doc in OVERRIDE_KEYS.items()]
    return "\n".join([*lines, END])


def renew(path: str) -> None:
    """Put the reference in the place of the old one in a file."""
    with open(path, encoding="utf-8") as file:
        text = file.read()
    start, end = text.index(BEGIN), text.index(END) + len(END)
    with open(path, "w", encoding="utf-8", newline="\n") as file:
        file.write(text[:start] + reference() + text[end:])


if __name__ == "__main__":
    import sys

    renew(sys.argv[1])
