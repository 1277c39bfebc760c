"""Differences between two statements in words: "went from 75 to 150 kVA"."""

from __future__ import annotations

from collections.abc import Iterator

from wyeline_grammar import model as m
from wyeline_linter.issues import NOT_YET
from wyeline_linter.issues import in_words as issue_in_words
from wyeline_linter.system_words import conductors_text

UNNAMED = frozenset({"power", "rating", "capacity", "length"})
"""Facts that are written as a quantity without a key."""

Said = tuple[str, str]
"""The fact that changed, and how, to stand behind the name of what it belongs to."""


def in_words(statement: m.Statement, name: str) -> str:
    """A statement by its kind and name."""
    if isinstance(statement, m.EquipmentStatement):
        return f"{'type ' if statement.is_type else ''}{statement.kind} {name}"
    if isinstance(statement, m.FeederStatement):
        return f"feeder {name}"
    word = {m.RacewayStatement: "raceway", m.ScenarioStatement: "scenario", m.ExpectStatement: "expectation"}
    found = word.get(type(statement))
    if found is not None:
        return f"{found} {name}"
    return "project" if isinstance(statement, m.ProjectStatement) else f"line `{name}`"


def feeder_in_words(statement: m.Statement) -> str:
    """``from MSB by 225 A``."""
    if not isinstance(statement, m.FeederStatement) or statement.source is None:
        return ""
    rating = statement.body.text("rating")
    return f"from {statement.source.text}" + (f" by {rating}" if rating else "")


def statement_changes(before: m.Statement, after: m.Statement, practice: str | None = None) -> list[Said]:
    """What differs between two statements of one name, circuits and the ends of feeders left aside."""
    found: list[Said] = []
    if isinstance(before, m.EquipmentStatement) and isinstance(after, m.EquipmentStatement):
        if before.kind != after.kind:
            found.append(("kind", f"went from {before.kind} to {after.kind}"))
        found += _sides(before, after)
    elif isinstance(before, m.FeederStatement) and isinstance(after, m.FeederStatement):
        for word, old, new in (("from", before.source, after.source), ("to", before.target, after.target)):
            if old is not None and new is not None and old.legs != new.legs:
                found.append((word, _went("its legs ", _legs(old.legs, practice), _legs(new.legs, practice))))
    elif isinstance(before, m.ScenarioStatement) and isinstance(after, m.ScenarioStatement):
        return _set(("actions", "actions"), map(_action, before.actions), map(_action, after.actions))
    elif isinstance(before, m.RacewayStatement) and isinstance(after, m.RacewayStatement):
        sizes = [f"{s.trade_size or ''} {s.stuff or ''}".strip() for s in (before, after)]
        if sizes[0] != sizes[1]:
            found.append(("size", _went("", *sizes)))
    one, other = getattr(before, "body", None), getattr(after, "body", None)
    if isinstance(one, m.Body) and isinstance(other, m.Body):
        found += body_changes(one, other)
    found += _set(("allow", "allowances"), _accepted(before, "allows"), _accepted(after, "allows"))
    found += _set(("claim", "claims"), _accepted(before, "claims"), _accepted(after, "claims"))
    return found


def issue_changes(before: m.Statement, after: m.Statement) -> list[tuple[str, int]]:
    """What differs between the issues that two projects list: a sentence, and the row of the newer project that it is
    about."""
    if not isinstance(before, m.ProjectStatement) or not isinstance(after, m.ProjectStatement):
        return []
    old, new = ({issue.name.text: issue for issue in project.issues} for project in (before, after))
    gone = [issue for name, issue in old.items() if name not in new]
    found = [(f"{issue_in_words(issue)} is no longer listed", after.head.line) for issue in gone]
    for name, issue in new.items():
        if name in old:
            found += [(f"issue {name} {words}", issue.span.line) for words in _changed_issue(old[name], issue)]
        else:
            found.append((f"{issue_in_words(issue)} is new{_purpose(issue)}", issue.span.line))
    return found


def _purpose(issue: m.Issue) -> str:
    return f' ("{issue.body.description}")' if issue.body.description else ""


def _changed_issue(before: m.Issue, after: m.Issue) -> Iterator[str]:
    if before.date != after.date:
        day = f"is dated {after.date} instead of {before.date}" if before.date and after.date else ""
        yield day or (f"was issued on {after.date}" if after.date else f"is {NOT_YET}; it was of {before.date}")
    if after.body.description and not before.body.description:
        yield f'now says "{after.body.description}"'
        before = before._replace(body=before.body._replace(description=after.body.description))
    yield from (words for _, words in body_changes(before.body, after.body))


def circuit_changes(before: m.Circuit, after: m.Circuit, practice: str | None = None) -> list[Said]:
    """What differs between two circuits on one place of a board."""
    found: list[Said] = []
    if before.legs != after.legs:
        found.append(("legs", _went("its legs ", _legs(before.legs, practice), _legs(after.legs, practice))))
    return found + body_changes(before.body, after.body)


def body_changes(before: m.Body, after: m.Body) -> list[Said]:
    """What differs between the phrases of two statements."""
    found: list[Said] = []
    for key in (*before.facts, *(k for k in after.facts if k not in before.facts)):
        old, new = before.facts.get(key), after.facts.get(key)
        lead = "" if key in UNNAMED else f"its {key} "
        if old is not None and new is not None:
            if old.value.data != new.value.data or old.value.kind != new.value.kind:
                found.append((key, _went(lead, old.value.text, new.value.text)))
            elif old.assumed != new.assumed:
                found.append((key, f"states {key} {'as an assumption' if new.assumed else 'for certain'}"))
        elif new is not None:
            found.append((key, f"now states {'' if key in UNNAMED else key + ' '}{new.value.text}"))
        elif old is not None:
            found.append((key, f"no longer states {'' if key in UNNAMED else key + ' '}{old.value.text}"))
    if _poles(before.poles) != _poles(after.poles):
        found.append(("poles", _went("", _poles(before.poles), _poles(after.poles))))
    if _wires(before.conductors) != _wires(after.conductors):
        found.append(("conductors", _went("", _wires(before.conductors), _wires(after.conductors))))
    if _raceway(before.raceway) != _raceway(after.raceway):
        found.append(("raceway", _went("its raceway ", _raceway(before.raceway), _raceway(after.raceway))))
    old_legs, new_legs = (", ".join(f"{x.leg} {x.value.text}" for x in b.leg_loads) for b in (before, after))
    if old_legs != new_legs:
        found.append(("leg", _went("its loads by leg ", old_legs or "none", new_legs or "none")))
    found += _set(("flags", "flags"), before.flags, after.flags)
    if before.description != after.description:
        found.append(("description", _went("its description ", *(f'"{b.description or ""}"' for b in (before, after)))))
    return found


def _went(lead: str, old: str, new: str) -> str:
    """``went from 75 to 150 kVA``: a shared unit is said once."""
    a, b = old.rsplit(" ", 1), new.rsplit(" ", 1)
    if len(a) == len(b) == 2 and a[1] == b[1] and a[0][-1:].isdigit() and b[0][-1:].isdigit():
        old = a[0]
    return f"{'had ' if lead else 'went '}{lead}{'changed ' if lead else ''}from {old} to {new}"


def _sides(before: m.EquipmentStatement, after: m.EquipmentStatement) -> Iterator[Said]:
    old, new = _system(before), _system(after)
    if old != new:
        yield "voltage", f"went from {old or 'no stated voltage'} to {new or 'no stated voltage'}"


def _system(statement: m.EquipmentStatement) -> str:
    def side(ref: m.SystemRef | None) -> str:
        return "" if ref is None else (ref.name or (ref.voltage.text if ref.voltage else ""))

    if statement.arrow:
        return f"{side(statement.primary)} -> {side(statement.secondary)}"
    return side(statement.primary)


def _legs(legs: tuple[str, ...] | None, practice: str | None) -> str:
    return conductors_text(legs, practice) if legs else "unstated"


def _poles(poles: object) -> str:
    if poles is None:
        return "unstated poles"
    return f"{getattr(poles, 'count', '?')}p" + ("+N" if getattr(poles, "switched_neutral", False) else "")


def _wires(conductors: m.Conductors | None) -> str:
    if conductors is None:
        return "unstated conductors"
    sets = f"{conductors.sets} sets " if conductors.sets != 1 else ""
    run = conductors.run
    mark = "G" if run.with_protective else "x"
    size = _size(run.size)
    extras = "".join(f" + {role} {_size(wire)}" for role, wire in conductors.extras)
    marks = "".join(f" {word}" for word in conductors.marks)
    return f"{sets}{run.count}{'' if size.startswith('#') else mark}{size}{extras}{marks}"


def _size(size: object) -> str:
    text, system = str(getattr(size, "text", size)), getattr(size, "system", "")
    return f"#{text}" if system == "awg" else text.replace(" ", "")


def _raceway(raceway: m.Raceway | None) -> str:
    if raceway is None:
        return "unstated"
    return f"{raceway.trade_size} {raceway.stuff}" if raceway.trade_size else raceway.stuff


def _accepted(statement: m.Statement, field: str) -> Iterator[str]:
    for entry in getattr(statement, field, ()):
        place = f" at {entry.place.key}" if entry.place is not None else ""
        yield f"{entry.rule if field == 'allows' else entry.name}{place}"


def _action(action: m.Action) -> str:
    target = f" -> {action.target.text}" if action.target is not None else ""
    value = f" {action.value.text}" if action.value is not None else ""
    return f"{action.verb} {action.source.text}{target}{value}"


def _set(words: tuple[str, str], before: object, after: object) -> list[Said]:
    """What a list of words gained and lost."""
    old, new = dict.fromkeys(before), dict.fromkeys(after)  # type: ignore[call-overload]
    key, name = words
    found = []
    came, went = [w for w in new if w not in old], [w for w in old if w not in new]
    lead = "" if name == "flags" else f"{name} "
    if came and went:
        found.append((key, f"went from {lead}{', '.join(went)} to {', '.join(came)}"))
    elif came:
        found.append((key, f"now has {lead}{', '.join(came)}"))
    elif went:
        found.append((key, f"no longer has {lead}{', '.join(went)}"))
    return found
