"""The report as one HTML file: nothing is fetched, every switch state is inside, and without scripts it still reads."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Iterator, Sequence
from functools import cache
from html import escape
from importlib.resources import files

from wyeline_linter.reports.columns import TableKind
from wyeline_linter.reports.html_tables import sheet_html, table_html, table_id, text
from wyeline_linter.reports.issue_list import ISSUES
from wyeline_linter.reports.one_line import wide_paper_of
from wyeline_linter.reports.package import DIAGRAM, WORKING, Package
from wyeline_linter.reports.review_tables import FINDINGS, errors_told, findings_told
from wyeline_linter.reports.since import CHANGES
from wyeline_linter.reports.subject import Subject


@cache
def _resource(name: str) -> str:
    return files("wyeline_linter.reports").joinpath("page", name).read_text("utf-8")


def page_html(packages: Sequence[Package], *, live: bool = False) -> str:
    """The whole page. The first package is shown at first, the others are other switch states of the same model.

    ``live`` makes the page of a preview, which listens for new editions.
    """
    first = packages[0]
    script, style = _resource("page.js"), _style(first)
    hashed = base64.b64encode(hashlib.sha256(script.encode()).digest()).decode()
    connect = "connect-src 'self'; " if live else ""
    policy = (
        f"default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-{hashed}'; {connect}"
        "base-uri 'none'; form-action 'none'"
    )
    title = escape(f"{first.subject.project}: {'preview' if live else 'report'}")
    head = f"""<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{escape(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>{title}</title>
<style>{style}</style>
</head>
<body{" data-live" if live else ""}>
<a class="skip" href="#edition">To the content</a>
{_top(packages)}
<div class="notice" id="notice" role="status" hidden></div>
"""
    foot = f"""
<aside id="details" aria-label="Details of one element" hidden></aside>
<script>{script}</script>
</body>
</html>
"""
    # Put together once: the page of a large site is tens of megabytes.
    return "".join((head, *_edition(first), "\n", *_templates(packages), foot))


def _templates(packages: Sequence[Package]) -> Iterator[str]:
    """Where each of several switch states waits to be chosen; that of the one on show is empty."""
    for at, package in enumerate(packages if len(packages) > 1 else ()):
        yield f'<template data-scenario="{escape(package.subject.scenario)}">'
        if at:
            yield from _inside(package)
        yield "</template>" if package is packages[-1] else "</template>\n"


def edition_html(package: Package) -> str:
    """The part of the page that changes with the model and the switch state, and what its bar says of the issue."""
    return "".join((f'<template id="title-now">{_title(package)}</template>\n', *_edition(package)))


def _edition(package: Package) -> Iterator[str]:
    yield f'<main id="edition" data-scenario="{escape(package.subject.scenario)}">\n'
    yield from _inside(package)
    yield "\n</main>"


def _inside(package: Package) -> list[str]:
    """All parts of one package, with the list of them."""
    parts: list[tuple[str, str, list[str]]] = []
    tables = [(kind.title, kind.name, [_tables(package, kind)]) for kind in package.kinds if package.wants(kind.name)]
    parts += [part for part in tables if part[1] == ISSUES.name]  # on the first printed page
    if package.wants(DIAGRAM):
        parts.append(("One-line diagram", DIAGRAM, [_drawings(package)]))
    parts += [part for part in tables if part[1] != ISSUES.name]
    if package.wants(WORKING) and package.sheets:
        parts.append(("Working sheets", WORKING, list(_sheets(package))))
    links = "".join(f'<a href="#part-{name}">{escape(title)}</a>' for title, name, _ in parts)
    caution = escape(package.caution)
    sections: list[str] = []
    for title, name, inside in parts:
        kind = "part drawings" if name == DIAGRAM else "part"
        head = f'<section class="{kind}" id="part-{name}">\n<h2>{escape(title)}</h2>\n'
        sections += ["\n" if sections else "", head, *inside, f'\n<p class="caution">{caution}</p>\n</section>']
    limits = escape(package.subject.cautions[1])
    errors = "".join(f"{escape(text)} " for text in errors_told(package.subject))
    told = escape(f"Findings: {findings_told(package.subject)}")
    if package.wants(FINDINGS.name):
        told = f'<a href="#part-{FINDINGS.name}">{told}</a>'
    since = package.wishes.since
    if since is not None:
        revised = escape(since.told)
        told += f' <a href="#part-{CHANGES.name}">{revised}</a>'
    stand = f'<p class="told{" errors" if errors else ""}">{errors}{told}</p>'
    top = f'<nav aria-label="Parts">{links}</nav>\n{stand}\n<p class="caution">{caution} {limits}</p>\n'
    return [top, *sections]


_TOGETHER = 24
"""Working sheets that are set in columns together. A browser sets a few at a time as they come into view; all those of
a large site at once would take it half a minute."""


def _sheets(package: Package) -> Iterator[str]:
    for at, sheet in enumerate(package.sheets):
        if at % _TOGETHER == 0:
            yield '</div>\n<div class="sheets">' if at else '<div class="sheets">'
        yield f"{sheet_html(sheet)}\n"
    yield "</div>"


def _signed(subject: Subject) -> str:
    """Who drew and checked it, and who answers for it; on paper an empty place to sign for whom nobody named."""
    names = [("Drawn", subject.drawn), ("Checked", subject.checked)]
    engineer = subject.project_text("engineer")
    places = [
        f"<div{'' if name else ' class=open'}><dt>{title}</dt><dd>{escape(name)}</dd></div>"
        for title, name in (*names, *([("Engineer", engineer)] if engineer else ()))
    ]
    return f'<dl class="signed">{"".join(places)}</dl>'


def _title(package: Package) -> str:
    """What it is, which issue of it, for whom, and who drew and checked it."""
    subject = package.subject
    client = subject.project_text("client")
    facts = [*package.issue, *([f"for {client}"] if client else []), subject.basis_in_words]
    return f"<h1>{escape(subject.project)}</h1><p>{escape(' · '.join(facts))}</p>{_signed(subject)}"


def _top(packages: Sequence[Package]) -> str:
    names = [p.subject.scenario for p in packages]
    choice = f"<p>Switch state: {escape(names[0])}</p>"
    if len(names) > 1:
        options = "".join(f"<option>{escape(name)}</option>" for name in names)
        choice = f'<label>Switch state <select id="scenario" autocomplete="off">{options}</select></label>'
    return (
        f'<header class="top"><div id="title">{_title(packages[0])}</div>'
        f'<div class="tools">{choice}<label>Find <input id="find" type="search" placeholder="tag or description ( / )" '
        'role="combobox" aria-expanded="false" aria-controls="found" aria-autocomplete="list" '
        'autocomplete="off"></label>'
        '<ul id="found" role="listbox" aria-label="Found"></ul>'
        '<button id="theme" type="button">Light or dark: as the system</button></div></header>'
    )


def _drawings(package: Package) -> str:
    made = []
    for sheet in package.diagram.sheets:
        name = escape(f"Sheet {sheet.number} of {sheet.count}: {', '.join(sheet.heads)}")
        made.append(f'<div class="viewer" tabindex="0" role="group" aria-label="{name}">{sheet.svg}</div>')
    hint = "Drag to move; + and − or Ctrl and the wheel to zoom; a click shows the figures of an element."
    return f"<p>{hint}</p>\n" + "\n".join(made)


def _tables(package: Package, kind: TableKind) -> str:
    tables = package.of(kind)
    links = ""
    if len(tables) > 1:
        links = "<p>" + " ".join(f'<a href="#{table_id(t)}">{escape(t.subject)}</a>' for t in tables) + "</p>\n"
    inside = "\n".join(table_html(table, package.anchors) for table in tables) or "<p>Nothing.</p>"
    return f"<p>{text(kind.doc)}</p>\n{links}{inside}"


def _style(package: Package) -> str:
    """The style sheet with the paper of the diagram and of wide tables, and the caution at the foot of every other
    printed page."""
    size = package.paper
    wide = wide_paper_of(size)
    sheet = "letter" if package.subject.practice == "us" else "A4"
    foot = css_string(package.foot)
    project, issue = css_string(package.subject.project), css_string(" \N{MIDDLE DOT} ".join(package.issue))
    return (
        _resource("page.css")
        + f"@page{{size:{sheet} landscape;margin:12mm 10mm 16mm;"
        + f"@top-left{{content:{project};font:bold 8pt sans-serif;color:#333}}"
        + f"@top-right{{content:{issue};font:7pt sans-serif;color:#333}}"
        + f"@bottom-left{{content:{foot};font:6.5pt sans-serif;color:#333;width:88%}}"
        + "@bottom-right{content:counter(page) ' / ' counter(pages);font:7pt sans-serif;color:#333}}\n"
        + f"@page wide{{size:{wide.width_mm:g}mm {wide.height_mm:g}mm}}\n"
        + f"@page drawing{{size:{size.width_mm:g}mm {size.height_mm:g}mm;margin:0;"
        + "@top-left{content:none}@top-right{content:none}@bottom-left{content:none}@bottom-right{content:none}}\n"
        + "@page:first{@top-left{content:none}@top-right{content:none}}\n"
    )


def css_string(text: str) -> str:
    """Text as a CSS string that can end neither the string nor the style element."""
    safe = "".join(c if c.isalnum() or c in " .,:;-_()" else f"\\{ord(c):x} " for c in text)
    return f'"{safe}"'
