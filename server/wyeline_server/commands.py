"""Commands: what a client may have carried out by name."""

from __future__ import annotations

import asyncio
import re
import tempfile
from pathlib import Path
from typing import Any

from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import Item
from wyeline_linter.loads.sheets import FIGURES, load_figure
from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.repair import Diagnosis, Solution, diagnose, solve
from wyeline_linter.working import render
from wyeline_server.documents import uri_of_path
from wyeline_server.edits import workspace_edit
from wyeline_server.positions import Json
from wyeline_server.protocol import REQUEST_FAILED, BadParametersError, RequestError
from wyeline_server.server import WyelineServer


def register(server: WyelineServer) -> None:
    server.on("workspace/executeCommand", execute)
    server.on_command("wyeline.connect", connect)
    server.on_command("wyeline.workingSheet", working_sheet)


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


def working_sheet(server: WyelineServer, arguments: list[Any]) -> Json:
    """``wyeline.workingSheet`` [uri, NAME, figure?]: the calculation sheets of a piece of equipment, and shows them.

    Returns ``{name, text}``. A client that can show documents gets them as a file, another one as a message.
    """
    if len(arguments) not in (2, 3) or not all(isinstance(a, str) for a in arguments):
        raise BadParametersError("wyeline.workingSheet takes a document, a name, and perhaps a figure")
    uri, name = arguments[:2]
    analysis = server.analysis_at(server.session.path_of(uri))
    if analysis is None:
        raise RequestError(REQUEST_FAILED, f"no model can be made of {uri}")
    bare, _ = _named(analysis, name)
    wanted = arguments[2:] or list(FIGURES)
    try:
        text = "\n".join(render(load_figure(analysis.view, bare, figure)) for figure in wanted)
    except ValueError as error:
        raise BadParametersError(str(error)) from None
    except KeyError:
        raise RequestError(REQUEST_FAILED, f"`{bare}` carries no load that a sheet could show") from None
    text = f"{text}\n{CAUTION}\n"
    _show(server, bare, text)
    return {"name": bare, "text": text}


def _show(server: WyelineServer, name: str, text: str) -> None:
    if not server.client_can("window.showDocument.support", False):
        server.protocol.notify("window/showMessage", {"type": 3, "message": text})
        return
    folder = Path(tempfile.mkdtemp(prefix="wyeline-"))
    path = folder / f"{re.sub(r'[^A-Za-z0-9_.-]+', '-', name)}.txt"
    path.write_text(text, encoding="utf-8")
    server.protocol.ask("window/showDocument", {"uri": uri_of_path(str(path)), "takeFocus": True})


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
