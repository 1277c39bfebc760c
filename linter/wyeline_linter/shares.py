"""How the share of a limit is said: in per cent as long as that says something, as a multiple from twice on."""

from __future__ import annotations

MULTIPLE_FROM = 2.0


def share_text(share: float, digits: int = 3) -> str:
    """``87 %``, ``137 %``, ``2.4 times``, ``120 times``: ``digits`` that count, no more than to the whole per cent
    where those are three."""
    if share >= MULTIPLE_FROM:
        return f"{float(f'{share:.{max(2, digits - 1)}g}'):,.10g} times".replace(",", " ")
    text = f"{100 * share:.0f}" if digits == 3 else f"{100 * share:.{digits}g}"
    return f"{text} %"


def share_of(share: float, of: str, digits: int = 3) -> str:
    """``137 % of leg A``, ``2.4 times leg A``."""
    return f"{share_text(share, digits)} {'of ' if share < MULTIPLE_FROM else ''}{of}"


def above_mean(part: float) -> str:
    """How far a leg lies above the mean of all: ``19 % above the mean``, ``2.6 times the mean``."""
    whole = 1.0 + part
    if part < 0.1:
        return f"{100 * part:.1f} % above the mean"
    return f"{100 * part:.0f} % above the mean" if whole < MULTIPLE_FROM else f"{whole:.2g} times the mean"
