"""JSON Schema (draft 2020-12, json-schema.org) of each JSON output, made of the shapes that the outputs are typed by.

The schema is open: new keys may come in a version of an output, as the linter's README says. ``closed`` refuses keys
that no shape has, which is what tests ask.
"""

from __future__ import annotations

import inspect
import types
from typing import Annotated, Any, Literal, NotRequired, get_args, get_origin, get_type_hints, is_typeddict

from wyeline_linter.outputs.shapes import CheckReport, CompareReport
from wyeline_linter.outputs.shapes_of_figures import ShowReport
from wyeline_linter.outputs.shapes_of_report import ReportData

OUTPUTS: dict[str, type] = {"check": CheckReport, "compare": CompareReport, "report": ReportData, "show": ShowReport}
"""The shape of an output by the command that prints or writes it."""
_PLAIN = {str: "string", bool: "boolean", int: "integer", float: "number", type(None): "null"}
Json = dict[str, Any]


def schema_of(output: str, *, closed: bool = False) -> Json:
    """The schema of what a command prints or writes; KeyError where that is no JSON."""
    shape = OUTPUTS[output]
    parts: dict[str, Json] = {}
    _named(shape, parts, closed)
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": inspect.cleandoc(shape.__doc__ or "").rstrip("."),
        "$ref": f"#/$defs/{shape.__name__}",
        "$defs": dict(sorted(parts.items())),
    }


def _named(shape: type, parts: dict[str, Json], closed: bool) -> None:
    if shape.__name__ in parts:
        return
    made = parts[shape.__name__] = {"type": "object"}
    properties: Json = {}
    needed = []
    for name, hint in get_type_hints(shape, include_extras=True).items():
        key = name.removesuffix("_")  # `class`, `from`, `is` are words of Python
        optional = get_origin(hint) is NotRequired
        properties[key] = _any(get_args(hint)[0] if optional else hint, parts, closed)
        if not optional:
            needed.append(key)
    made |= {
        "description": " ".join(inspect.cleandoc(shape.__doc__ or "").split()),
        "properties": properties,
        "required": needed,
    }
    if closed:
        made["additionalProperties"] = False


def _any(hint: Any, parts: dict[str, Json], closed: bool) -> Json:
    origin, within = get_origin(hint), get_args(hint)
    if origin is Annotated:
        said = {"description": within[1]} if isinstance(within[1], str) else {"enum": list(within[1])}
        return {**_any(within[0], parts, closed), **said}
    if origin is Literal:
        return {"enum": list(within)}
    if origin is list:
        return {"type": "array", "items": _any(within[0], parts, closed)}
    if origin is dict:
        return {"type": "object", "additionalProperties": _any(within[1], parts, closed)}
    if origin is types.UnionType:
        options = [_any(one, parts, closed) for one in within]
        if all(option.keys() == {"type"} for option in options):
            return {"type": [option["type"] for option in options]}
        return {"anyOf": options}
    if is_typeddict(hint):
        _named(hint, parts, closed)
        return {"$ref": f"#/$defs/{hint.__name__}"}
    return {"type": _PLAIN[hint]}
