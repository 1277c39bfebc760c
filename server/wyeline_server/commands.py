"""Commands: what a client may have carried out by name."""

from __future__ import annotations

import asyncio
from typing import Any

from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import Item
from wyeline_linter.repair import Diagnosis, Solution, diagnose, solve
from wyeline_server.edits import workspace_edit
from wyeline_server.positions import Json
from wyeline_server.protocol import REQUEST_FAILED, BadParametersError, RequestError
from wyeline_server.server import WyelineServer


def register(server: WyelineServer) -> None:
    server.on("workspace/executeCommand", execute)
    server.on_command("wyeline.connect", connect)


async def execute(server: WyelineServer, params: Any) -> Any:
    """``workspace/executeCommand``: a command by its name; one that is not there is refused with those that are."""
    name, arguments = params.get("command"), params.get("arguments") or []
    handler = server.command_handlers.get(name) if isinstance(name, str) else None
    if handler is None:
        known = ", ".join(sorted(server.command_handlers))
        raise BadParametersError(f"no command is called `{name}`; there are {known}")
    if not isinstance(arguments, list):
        raise BadParametersError("arguments are a list")
    with server.long_work(params.get("workDoneToken"), name, 1) as progress:
        progress.step(" ".join(str(a) for a in arguments if isinstance(a, str | int)))
        await asyncio.sleep(0)
        return handler(server, arguments)


def connect(server: WyelineServer, arguments: list[Any]) -> Json:
    """``wyeline.connect`` [uri, FROM, TO, number?]: why not, and the least changes; a number applies that one.

    Returns ``{works, unknown, refusal, solutions, applied}``; each solution has its edit.
    """
    if len(arguments) not in (3, 4) or not all(isinstance(a, str) for a in arguments[:3]):
        raise BadParametersError("wyeline.connect takes a document, what feeds, what is fed, and perhaps a number")
    uri, source, target = arguments[:3]
    analysis = server.analysis_at(server.session.path_of(uri))
    if analysis is None:
        raise RequestError(REQUEST_FAILED, f"no model can be made of {uri}")
    bare, port = _named(analysis, target)
    source, _ = _named(analysis, source)
    if source == bare:
        raise RequestError(REQUEST_FAILED, f"`{source}` cannot feed itself")
    view = analysis.view
    found = diagnose(view, source, view.model.equipment[bare], port)
    solutions = solve(view, source, bare, port)
    answer = _answer(server, found, solutions)
    if len(arguments) == 4 and arguments[3] is not None:
        number = arguments[3]
        if not isinstance(number, int) or not 1 <= number <= len(solutions):
            raise RequestError(REQUEST_FAILED, f"there are {len(solutions)} solutions; number {number} is none of them")
        chosen = answer["solutions"][number - 1]
        server.protocol.ask("workspace/applyEdit", {"label": chosen["title"], "edit": chosen["edit"]})
        answer["applied"] = number
    return answer


def _named(analysis: Analysis, text: str) -> tuple[str, str | None]:
    """Equipment, and its port, by the name that the client gives."""
    bare = text.strip().strip('"')
    if bare in analysis.model.equipment:
        return bare, None
    name, _, port = bare.rpartition(".")
    if name in analysis.model.equipment:
        return name, port
    near = [n for n in analysis.view.near_names(bare) if n in analysis.model.equipment]
    hint = f"; the nearest: {', '.join(near)}" if near else ""
    raise RequestError(REQUEST_FAILED, f"no equipment in this model is called `{bare}`{hint}")


def _answer(server: WyelineServer, found: Diagnosis, solutions: list[Solution]) -> Json:
    refusal = found.refusal
    return {
        "works": found.works,
        "unknown": list(found.unknown),
        "refusal": None
        if refusal is None
        else {
            "cause": refusal.cause.value,
            "found": refusal.found,
            "needed": refusal.needed,
            "why": refusal.why,
        },
        "solutions": [_solution(server, solution) for solution in solutions],
        "applied": None,
    }


def _solution(server: WyelineServer, solution: Solution) -> Json:
    return {
        "title": solution.title,
        "reason": solution.reason,
        "cost": solution.cost,
        "sized": list(solution.sized),
        "left": list(solution.left),
        "checklist": [_item(item) for item in solution.checklist],
        "edit": workspace_edit(server, solution.edits),
    }


def _item(item: Item) -> Json:
    return {"known": item.known, "text": item.text}
