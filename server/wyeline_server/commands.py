"""Commands: what a client may have carried out by name."""

from __future__ import annotations

import asyncio
import inspect
from typing import Any

from wyeline_linter import partners
from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import Item
from wyeline_linter.loads.sheets import FIGURES, load_figure
from wyeline_linter.outputs.text import CAUTION, wrapped
from wyeline_linter.repair import Diagnosis, Solution, diagnose, solve
from wyeline_linter.sizing.asked import sizings, written_together
from wyeline_linter.system_words import with_legs_of
from wyeline_linter.working import render
from wyeline_server.edits import workspace_edit
from wyeline_server.positions import Json
from wyeline_server.protocol import REQUEST_FAILED, BadParametersError, RequestError
from wyeline_server.server import WyelineServer
from wyeline_server.showing import Showing


def register(server: WyelineServer) -> None:
    server.showing = Showing(server)
    server.on("workspace/executeCommand", execute)
    server.on_command("wyeline.connect", connect)
    server.on_command("wyeline.partners", may_connect)
    server.on_command("wyeline.size", size)
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
        answer = handler(server, arguments)
        return await answer if inspect.isawaitable(answer) else answer


def connect(server: WyelineServer, arguments: list[Any]) -> Json:
    """``wyeline.connect`` [uri, FROM, TO, number?]: why not, and the least changes; a number applies that one.

    Returns ``{works, unknown, refusal, solutions, applied}``; each solution has its edit.
    """
    if len(arguments) not in (3, 4) or not all(isinstance(a, str) for a in arguments[:3]):
        raise BadParametersError("wyeline.connect takes a document, what feeds, what is fed, and perhaps a number")
    uri, source, target = arguments[:3]
    analysis = _model(server, uri)
    bare, port = _named(analysis, target)
    source, _ = _named(analysis, source)
    if source == bare:
        raise RequestError(REQUEST_FAILED, f"`{source}` cannot feed itself")
    view = analysis.view
    found = diagnose(view, source, view.model.equipment[bare], port)
    solutions = solve(view, source, bare, port)
    answer = _answer(server, found, solutions, view.basis)
    if len(arguments) == 4 and arguments[3] is not None:
        number = arguments[3]
        if not isinstance(number, int) or not 1 <= number <= len(solutions):
            raise RequestError(REQUEST_FAILED, f"there are {len(solutions)} solutions; number {number} is none of them")
        chosen = answer["solutions"][number - 1]
        server.protocol.ask("workspace/applyEdit", {"label": chosen["title"], "edit": chosen["edit"]})
        answer["applied"] = number
    return answer


def may_connect(server: WyelineServer, arguments: list[Any]) -> list[Json]:
    """``wyeline.partners`` [uri, FROM?]: what FROM may feed, or without it everything that is there, best first.

    Returns a list of ``{name, kind, fits, reason}``: what each gives or wants, or why it cannot be connected.
    """
    if len(arguments) not in (1, 2) or not all(isinstance(a, str) for a in arguments):
        raise BadParametersError("wyeline.partners takes a document, and perhaps what feeds")
    analysis = _model(server, arguments[0])
    if len(arguments) == 1:
        found = partners.sources(analysis.view, None)
    else:
        found = partners.targets(analysis.view, _named(analysis, arguments[1])[0])
    fitting = (partners.Rank.FITS, partners.Rank.FED_ALREADY)
    return [{"name": p.name, "kind": p.kind, "fits": p.rank in fitting, "reason": p.reason} for p in found]


def size(server: WyelineServer, arguments: list[Any]) -> Json:
    """``wyeline.size`` [uri, NAME, true?]: the sizes of a feeder, or of equipment and the feeders at it, with what
    governed each; true has the client write them.

    Returns ``{name, text, sizings, edit, applied}``; ``edit`` is null where there is nothing to write. What is only
    asked for is shown as a file, or to a client that can show none as a message.
    """
    uri, name, write, *more = [*arguments, None, None, None][: max(3, len(arguments))]
    if more or not isinstance(uri, str) or not isinstance(name, str) or not isinstance(write, bool | None):
        raise BadParametersError("wyeline.size takes a document, a name, and perhaps true, to write the sizes")
    analysis, name = _model(server, uri), name.strip()
    if name not in analysis.model.feeders:
        name, _ = _named(analysis, name)
    found = list(sizings(analysis, name))
    _, edits = written_together(found)
    edit = workspace_edit(server, edits) if edits else None
    applied = bool(write and edit)
    text = "\n".join([*(sizing.text for sizing in found), wrapped(CAUTION), ""])
    if applied:
        server.protocol.ask("workspace/applyEdit", {"label": f"Sizes at {name}", "edit": edit})
    elif not write:
        server.showing.text(f"{name}-sizes.txt", text)
    return {
        "name": name,
        "text": text,
        "sizings": [
            {
                "subject": sizing.subject,
                "sized": sizing.sized,
                "title": sizing.title,
                "reasons": list(sizing.reasons),
                "assumed": list(sizing.assumed),
                "edit": workspace_edit(server, sizing.edits) if sizing.edits else None,
            }
            for sizing in found
        ],
        "edit": edit,
        "applied": applied,
    }


def working_sheet(server: WyelineServer, arguments: list[Any]) -> Json:
    """``wyeline.workingSheet`` [uri, NAME, figure?]: the calculation sheets of a piece of equipment, and shows them.

    Returns ``{name, text}``. A client that can show documents gets them as a file, another one as a message.
    """
    if len(arguments) not in (2, 3) or not all(isinstance(a, str) for a in arguments):
        raise BadParametersError("wyeline.workingSheet takes a document, a name, and perhaps a figure")
    uri, name = arguments[:2]
    analysis = _model(server, uri)
    bare, _ = _named(analysis, name)
    wanted = arguments[2:] or list(FIGURES)
    try:
        text = "\n".join(render(load_figure(analysis.view, bare, figure)) for figure in wanted)
    except ValueError as error:
        raise BadParametersError(str(error)) from None
    except KeyError:
        raise RequestError(REQUEST_FAILED, f"`{bare}` carries no load that a sheet could show") from None
    text = f"{text}\n{wrapped(CAUTION)}\n"
    server.showing.text(f"{bare}.txt", text)
    return {"name": bare, "text": text}


def _model(server: WyelineServer, uri: str) -> Analysis:
    analysis = server.analysis_at(server.session.path_of(uri))
    if analysis is None:
        raise RequestError(REQUEST_FAILED, f"no model can be made of {uri}")
    return analysis


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


def _answer(server: WyelineServer, found: Diagnosis, solutions: list[Solution], practice: str | None) -> Json:
    refusal = found.refusal
    return {
        "works": found.works,
        "unknown": list(found.unknown),
        "refusal": None
        if refusal is None
        else {
            "cause": refusal.cause.value,
            "found": with_legs_of(practice, refusal.found),
            "needed": with_legs_of(practice, refusal.needed),
            "why": with_legs_of(practice, refusal.why),
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
