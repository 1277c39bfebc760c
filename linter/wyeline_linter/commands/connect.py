"""``wyeline connect``: why one thing cannot feed another, the least changes that let it, and what to go through."""

from __future__ import annotations

import argparse
import difflib
from collections.abc import Iterable, Sequence

from wyeline_grammar.linking import Equipment, Feeder
from wyeline_grammar.sources import Files, SourceError, read_text, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.checklist import QUESTIONS, for_connection, readings_under
from wyeline_linter.commands.roots import one_root
from wyeline_linter.configuration import load_for
from wyeline_linter.connected_load import leg_loads
from wyeline_linter.findings import Edit, Finding
from wyeline_linter.fixing import apply_edits, write_together
from wyeline_linter.network import can_feed, makes_system
from wyeline_linter.outputs.text import caution, shown_path, wrapped
from wyeline_linter.repair import Diagnosis, Solution, diagnose, findings_at, solve
from wyeline_linter.repair_link import Link
from wyeline_linter.repair_supply import waiting_feeder
from wyeline_linter.system_words import conductor_text, conductors_text, with_legs_of
from wyeline_linter.verdicts import Cause, Feeds, Refusal
from wyeline_linter.view import View


def add_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("path", metavar="PATH", help="a model's root file, or a folder with one model")
    parser.add_argument("source", metavar="FROM", help="what is to feed: a name of the model")
    parser.add_argument("target", metavar="TO", help="what is to be fed: a name, or a port such as ATS-1.normal")
    parser.add_argument("--apply", type=int, metavar="N", help="write solution N into the model's files")


def run(arguments: argparse.Namespace) -> int:
    files = Files()
    root = one_root(arguments.path, files)
    analysis = Analysis(root, files, workspace_of(root), configuration=load_for(root)).trusted()
    source, _ = _named(analysis, arguments.source)
    target, port = _named(analysis, arguments.target)
    if source is target:
        raise SourceError(shown_path(root), f"`{source.name}` cannot feed itself; name two pieces of equipment")
    backwards = _backwards(source, target)
    if backwards:
        print(backwards)
        return 1
    found = diagnose(analysis.view, source.name, target, port)
    rules = findings_at(analysis, found.link)
    taken = found.works and bool(_in_the_way(analysis.view, found.link))
    refused = not found.works or bool(rules) or taken
    solutions = solve(analysis.view, source.name, target.name, port) if refused or found.link.feeder is None else []
    if arguments.apply is not None:
        return _apply(arguments.apply, solutions, refused)
    print(_verdict(analysis, found, rules))
    for i, solution in enumerate(solutions, 1):
        print(_solution(analysis, i, solution))
    if not solutions and (taken or not found.works):
        print(_no_solution(analysis.view, found))
    if solutions:
        words = " ".join(_shell(w) for w in (arguments.path, arguments.source, arguments.target))
        print(f"To write one into the model: wyeline connect {words} --apply N\n")
    print(caution())
    return 1 if refused else 0


def _shell(word: str) -> str:
    import shlex

    return shlex.quote(word)


def _named(analysis: Analysis, text: str) -> tuple[Equipment, str | None]:
    """The equipment, and its port, that a word on the command line means. Raises SourceError with the nearest names."""
    model = analysis.model
    bare = text[1:-1] if len(text) > 2 and text[0] == text[-1] == '"' else text
    if bare in model.equipment:
        return model.equipment[bare], None
    name, _, port = bare.rpartition(".")
    if name in model.equipment:
        return model.equipment[name], port
    near = [n for n in analysis.view.near_names(bare) if n in model.equipment]
    hint = f"; the nearest: {', '.join(near)}" if near else ""
    raise SourceError(shown_path(model.root), f"no equipment in this model is called `{bare}`{hint}")


def _backwards(source: Equipment, target: Equipment) -> str:
    if not can_feed(source):
        return f"`{source.name}` is a {source.kind}: nothing can be fed from it."
    if makes_system(target) and not makes_system(source):
        return (
            f"`{target.name}` is a {target.kind}: it makes its own voltage and is fed by nothing here. "
            f"To feed `{source.name}` from it, name `{target.name}` first."
        )
    return ""


# what is printed


def _verdict(analysis: Analysis, found: Diagnosis, rules: Sequence[Finding]) -> str:
    link = found.link
    ends = f"{link.source} -> {link.target.name}{f'.{link.port}' if link.port else ''}"
    if found.refusal is not None:
        refusal = found.refusal
        lines = [
            f"{ends} cannot be connected as it stands: {refusal.cause.value}",
            wrapped(_about(link.source, "gives", refusal, refusal.found), "  found:   "),
            wrapped(_about(link.target.name, "wants", refusal, refusal.needed), "  needed:  "),
            wrapped(with_legs_of(analysis.view.basis, refusal.why), "  why:     "),
            *_there(analysis, found),
            _others(found, rules),
        ]
        return "\n".join(lines)
    if found.unknown:
        at = f" (what is missing belongs to `{found.at}`)" if found.at is not None else ""
        lines = [f"{ends}: nobody can tell yet, which is not the same as impossible{at}"]
        lines += [f"  missing: {reason}" for reason in found.unknown]
        lines += ["", "If you stand before it, three answers settle which system is there:"]
        lines += [f"  - {question}" for question in QUESTIONS]
        lines += [f"    {notation:<13} {reading}" for notation, reading in readings_under(analysis.view.basis)]
        return "\n".join([*lines, ""])
    if rules:
        head = f"{ends}: voltage and legs fit, but {len(rules)} thing{'s are' if len(rules) > 1 else ' is'} wrong"
        return f"{head}\n{_others(found, rules)}"
    return _works(analysis, found, ends)


def _about(name: str, verb: str, refusal: Refusal, what: str) -> str:
    """Figures with the name they belong to; a circle or a second supply names its parts itself."""
    return what if refusal.cause in (Cause.LOOP, Cause.SECOND_SUPPLY) else f"`{name}` {verb} {what}"


def _there(analysis: Analysis, found: Diagnosis) -> list[str]:
    """What is there already between the two: a way through others, or a feeder that brings nothing, because nothing
    feeds what it comes from."""
    link, view = found.link, analysis.view
    waiting = waiting_feeder(view, link.target.name) if link.feeder is None else None
    if waiting is not None:
        return [wrapped(f"`{waiting.key}`, which brings nothing: nothing feeds `{waiting.source.name}`", "  there:   ")]
    if not _leads_there(view, link):
        if found.refusal is not None and found.refusal.cause is Cause.SECOND_SUPPLY:
            return []  # it names them as what was found
        keys, feed, end = _who_feeds(view, link)
        return [wrapped(f"{keys}, which {feed} `{end}` already", "  there:   ")] if keys else []
    above = list(view.network.above(link.target.name))
    way = view.network.path(link.target.name)[-1 - above.index(link.source) :]
    listed = ", ".join(f"`{feeder.key}`" for feeder in way)
    return [wrapped(f"a way from `{link.source}` to `{link.target.name}`: {listed}", "  there:   ")]


def _leads_there(view: View, link: Link) -> bool:
    """Whether what is to be fed is fed from there already, through others."""
    return link.feeder is None and link.source in view.network.above(link.target.name)


def _in_the_way(view: View, link: Link) -> list[Feeder]:
    """Feeders that stand where one is to be written: closed ones into the far end, or those at the ports of a transfer
    switch that are asked for, which take one each."""
    if link.feeder is not None:
        return []
    into = view.model.feeders_to.get(link.target.name, ())
    there = [feeder for feeder in into if link.port in (None, feeder.target.port)]
    if link.target.kind == "transfer":
        return sorted(there, key=lambda f: f.block.first_line) if link.port or len(there) > 1 else []
    return [feeder for feeder in there if view.network.state.closed(feeder) and view.network.fed(feeder.source.name)]


def _who_feeds(view: View, link: Link) -> tuple[str, str, str]:
    """The feeders in the way, their verb, and the end that they feed; no feeders where the place is free."""
    there = _in_the_way(view, link)
    end = f"{link.target.name}{f'.{link.port}' if link.port else ''}"
    return " and ".join(f"`{feeder.key}`" for feeder in there), "feeds" if len(there) == 1 else "feed", end


def _others(found: Diagnosis, rules: Iterable[Finding]) -> str:
    cause = found.refusal.cause.value if found.refusal is not None else ""
    lines = []
    for finding in rules:
        if finding.rule == cause:
            continue
        lines.append(f"  {finding.rule}: {finding.message}")
        parts = (("found", finding.found), ("needed", finding.needed), ("why", finding.why))
        lines += [wrapped(text, f"    {label}: ") for label, text in parts if text]
    return "\n".join(lines) + ("\n" if lines else "")


def _works(analysis: Analysis, found: Diagnosis, ends: str) -> str:
    link, view = found.link, analysis.view
    verdict = link.verdict
    lines = [f"{ends} can be connected" + (": it is." if link.feeder is not None else "; no feeder does it yet.")]
    if _in_the_way(view, link):
        lines = [f"{ends}: voltage and legs fit, but the place is taken"]
    if isinstance(verdict, Feeds):
        ways = dict.fromkeys(conductors_text(m.conductors, view.basis) for m in verdict.maps)
        if link.feeder is not None:
            lines.append(f"  on:      {conductors_text(verdict.best.conductors, view.basis)} of `{link.source}`")
        else:
            lines.append(f"  legs:    {' | '.join(ways)}")
        lines.append(wrapped(with_legs_of(view.basis, verdict.best.system.in_words()), "  gets:    "))
        loads = leg_loads(view, link.source)
        if any(loads.values()):
            shown = ", ".join(f"{conductor_text(leg, view.basis)} {va / 1000:.3g} kVA" for leg, va in loads.items())
            lines.append(f"  stated load of `{link.source}`: {shown}")
        lines += [f"  note:    {with_legs_of(view.basis, note.text)}" for note in verdict.notes]
    lines += _there(analysis, found)
    if link.feeder is not None:
        lines += [f"  {item.in_words()}" for item in for_connection(view, link.target.name, None, None)]
    return "\n".join([*lines, ""])


def _solution(analysis: Analysis, number: int, solution: Solution) -> str:
    lines = [wrapped(solution.title, f"{number}. "), wrapped(solution.reason, "   because: "), ""]
    lines += [f"     {line}" for line in _diff(analysis, solution.edits)]
    parts = (
        ("sizes", solution.sized),
        ("left for you", solution.left),
        ("then comes to light", solution.comes_to_light),
    )
    for label, entries in parts:
        if entries:
            lines += ["", f"   {label}:"] + [wrapped(entry, "     - ") for entry in entries]
    lines += ["", "   checklist (x: the model shows it):"]
    lines += [f"     {item.in_words()}" for item in solution.checklist]
    return "\n".join([*lines, ""])


def _by_file(edits: Iterable[Edit]) -> dict[str, list[Edit]]:
    found: dict[str, list[Edit]] = {}
    for edit in edits:
        found.setdefault(edit.block.file, []).append(edit)
    return found


def _diff(analysis: Analysis, edits: Iterable[Edit]) -> list[str]:
    """The lines that go and come, by file, without the rest of a patch."""
    lines: list[str] = []
    for path, list_of in _by_file(edits).items():
        old = analysis.files.get(path).text
        new = apply_edits(old, list_of)
        first = min(e.block.first_line + e.line for e in list_of) + 1
        lines.append(f"{shown_path(path)}:{first}")
        patch = difflib.unified_diff(old.split("\n"), new.split("\n"), n=0, lineterm="")
        lines += [line for line in patch if not line.startswith(("---", "+++", "@@"))]
    return lines


def _no_solution(view: View, found: Diagnosis) -> str:
    if _leads_there(view, found.link):
        return "No feeder between the two alone is possible, and none is needed for what is fed that way already.\n"
    if found.at is not None:
        return f"No edit can answer for a missing fact: complete `{found.at}` first.\n"
    keys, feed, end = _who_feeds(view, found.link)
    if keys:
        way = (
            "A port takes one feeder: name a port that is free, or put a second transfer switch ahead of it"
            if found.link.target.kind == "transfer"
            else f"Two sources need a transfer switch ahead of `{end}`, each on a port of its own"
        )
        alone = f"to feed it from `{found.link.source}` alone, take {keys} out first"
        return wrapped(f"{keys} {feed} `{end}` already. {way}; {alone}.") + "\n"
    return (
        "Nothing in this model connects them: no wire, no transformer or converter between them, and no other board "
        "here that fits.\nOther equipment, or another supply, is needed.\n"
    )


def _apply(number: int, solutions: Sequence[Solution], refused: bool) -> int:
    if not solutions:
        print("There is nothing to apply: " + ("no solution was found." if refused else "the connection is there."))
        return 1 if refused else 0
    if not 1 <= number <= len(solutions):
        count = len(solutions)
        raise SourceError(f"--apply {number}", f"there {'is 1 solution' if count == 1 else f'are {count} solutions'}")
    solution = solutions[number - 1]
    new = {path: apply_edits(read_text(path), edits) for path, edits in _by_file(solution.edits).items()}
    write_together(new.items())
    print(f"applied to {', '.join(shown_path(p) for p in new)}: {solution.title}")
    for entry in solution.left:
        print(wrapped(entry, "  left for you: "))
    print(caution())
    return 0
