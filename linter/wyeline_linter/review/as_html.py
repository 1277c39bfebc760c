"""A comparison as one page that stands alone: no script, nothing loaded from elsewhere, light and dark."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from html import escape

from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.review.as_text import (
    FRESH,
    MOVED,
    NOTHING_FOLLOWS,
    UNCHANGED,
    UNEXPLAINED,
    notes,
    particulars,
    place,
    summary,
    title,
)
from wyeline_linter.review.comparison import Comparison
from wyeline_linter.review.ordering import also, by_cause

_STYLE = """
:root { color-scheme: light dark; }
body { font: 1rem/1.5 system-ui, sans-serif; max-width: 62rem; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.3rem; } h2 { font-size: 1.1rem; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: .3rem .6rem; border-bottom: 1px solid GrayText; }
th { font-weight: 600; white-space: nowrap; }
dl { margin: .3rem 0 0; display: grid; grid-template-columns: max-content 1fr; gap: 0 .8rem; }
dt { font-style: italic; } dd { margin: 0; }
summary { cursor: pointer; padding: .4rem 0; } summary h2 { display: inline; font-size: 1.1rem; }
footer { margin-top: 2rem; border-top: 1px solid GrayText; font-size: .9rem; }
code { font-size: .95em; overflow-wrap: anywhere; }
tr, li { break-inside: avoid; }
ul { margin: .2rem 0 .6rem; padding-left: 1.4rem; }
"""


def html(found: Sequence[Comparison]) -> str:
    """Every model on one page."""
    body = "\n".join(line for comparison in found for line in _one(comparison))
    heads = "; ".join(escape(title(c)) for c in found)
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{heads}</title>\n<style>{_STYLE}</style>\n</head>\n<body>\n"
        f"<main>\n{body}\n</main>\n<footer><p>{escape(CAUTION)}</p></footer>\n</body>\n</html>"
    )


def _one(c: Comparison) -> Iterator[str]:
    yield f"<h1>{escape(title(c))}</h1>"
    yield f"<p>{escape(summary(c))}.</p>"
    yield from (f"<p><em>{escape(note)}</em></p>" for note in notes(c))
    if not c.changes and not c.worse:
        yield f"<p>{escape(UNCHANGED)}</p>"
        return
    yield "<h2>What follows</h2>"
    if c.worse:
        yield "<table><tbody>"
        for one in c.worse:
            said = "".join(f"<dt>{escape(k)}</dt><dd>{_said(v)}</dd>" for k, v in particulars(one))
            more = f"<dl>{said}</dl>" if said else ""
            yield _row(one.gravity.word, one.words + also(one), more)
        yield "</tbody></table>"
    else:
        yield f"<p>{escape(NOTHING_FOLLOWS)}</p>"
    yield from _section("What changed", ((x.kind.value, x.words + place(x)) for x in c.changes))
    yield from _section("What is better", ((x.kind.value, x.words + also(x)) for x in c.better))
    yield from _section(FRESH, (("", x.words) for x in c.fresh))
    yield from _section("To issue anew", (("", x.words) for x in c.sheets))
    yield from _moved(c)


def _moved(c: Comparison) -> Iterator[str]:
    if not c.moved:
        return
    yield _fold(MOVED, len(c.moved))
    for cause, figures in by_cause(c.moved).items():
        yield f"<p>{_said(cause or UNEXPLAINED)}:</p><ul>"
        yield from (f"<li>{_said(one.headline)}</li>" for one in figures)
        yield "</ul>"
    yield "</details>"


def _section(name: str, rows: Iterable[tuple[str, str]]) -> Iterator[str]:
    """Open from the start: what is folded when a page is printed is lost on paper."""
    listed = list(rows)
    if not listed:
        return
    yield _fold(name, len(listed))
    if any(head for head, _ in listed):
        yield "<table><tbody>"
        yield from (_row(head, words) for head, words in listed)
        yield "</tbody></table></details>"
    else:
        yield "<ul>"
        yield from (f"<li>{_said(words)}</li>" for _, words in listed)
        yield "</ul></details>"


def _fold(name: str, count: int) -> str:
    return f"<details open><summary><h2>{escape(name)} ({count})</h2></summary>"


def _row(head: str, words: str, more: str = "") -> str:
    return f'<tr><th scope="row">{escape(head)}</th><td>{_said(words)}{more}</td></tr>'


_NAME = re.compile(r"`([^`]{1,120})`")


def _said(words: str) -> str:
    """Words of a model, names in backticks as code; nothing in them is markup."""
    return _NAME.sub(r"<code>\1</code>", escape(words))
