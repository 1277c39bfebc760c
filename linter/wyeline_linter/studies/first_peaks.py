"""First peaks of faults: by one factor for the whole current or, where several sources feed one under IEC practice, as
the sum of the peaks of each; and their lines on a calculation sheet."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from wyeline_linter.circuit import ansi, iec60909
from wyeline_linter.working import Step, number_text

if TYPE_CHECKING:
    from wyeline_linter.circuit import Bus, Network
    from wyeline_linter.circuit.faults import Driven
    from wyeline_linter.circuit.layout import Complex, Floats
    from wyeline_linter.circuit.tied import Places
    from wyeline_linter.studies.fault import FaultCurrent, FaultView

SUM_OF_PEAKS = "IEC 60909-0, 8.1: the peaks of sources side by side add up"


def peaks_add_up(practice: str | None, network: Network) -> bool:
    """Whether first peaks are sums: under IEC practice, where more than one source or machine may feed a fault."""
    return practice == "iec" and len(network.sources) + len(network.motors) + len(network.fault_current_sources) > 1


def parts_of(places: Places, driven: Driven, tied: tuple[str, ...]) -> list[tuple[str, Floats, Complex]]:
    """What feeds a fault at some buses: A of each source (by name) and of all machines and converters together (no
    name), before the voltage factor, with the ohms that the whole voltage has over them."""
    parts = [*driven.sources, *([] if driven.others is None else [("", driven.others)])]
    return [(name, *places.part(tied, volts)) for name, volts in parts]


def kappa_of(places: Places, driven: Driven, tied: tuple[str, ...]) -> Floats:
    """First peaks of all that feeds a fault over sqrt(2) times the whole current, by bus; not a number: none flows.

    Each by the R/X of its own way (IEC 60909-0, single-fed sources side by side; from memory). Behind ohms that several
    share, the way of each is taken likewise (common practice, no source).
    """
    import numpy as np

    whole = places.tied(tied).amperes
    total = np.zeros(len(whole))
    for _, amperes, ohm in parts_of(places, driven, tied):
        r_over_x = np.full(len(ohm), np.inf)
        np.divide(np.maximum(ohm.real, 0.0), ohm.imag, out=r_over_x, where=ohm.imag > 0)
        total += iec60909.peak_factors(r_over_x) * amperes
    found: Floats = np.full(len(whole), np.nan)
    np.divide(total, whole, out=found, where=whole > 0)
    return found


def peak_steps(view: FaultView, bus: Bus, fault: FaultCurrent, c: float) -> list[Step]:
    """The lines of a first peak; ``c`` is the voltage factor that currents of the network are multiplied by."""
    assert fault.x_over_r is not None
    peak, amperes = view.peak_a(fault), number_text(fault.amperes or 0.0)
    if fault.kappa is not None:
        return [*_sum_steps(view, bus, fault, c)]
    if view.practice == "iec":
        if fault.x_over_r <= 0:
            return []
        kappa = iec60909.peak_factor(1 / fault.x_over_r)
        factor = Step("k", "kappa of the first peak", "1.02 + 0.98 * exp(-3 / q)", kappa, "", "IEC 60909-0, 8.1.1")
        return [factor, Step("", "first peak", f"k * sqrt(2) * {amperes}", peak, "A")]
    times = ansi.peak_factor(fault.x_over_r)
    factor = Step("k", "first peak over rms", "sqrt(2) * (1 + exp(-pi / q))", times, "", "IEEE C37.13")
    return [factor, Step("", "first peak", f"k * {amperes}", peak, "A")]


def _sum_steps(view: FaultView, bus: Bus, fault: FaultCurrent, c: float) -> list[Step]:
    """Kappa of what each source feeds by the R/X of its way, and the sum of the peaks."""
    assert view.study is not None
    steps: list[Step] = []
    terms: list[str] = []
    for name, amperes, ohm in parts_of(view.study.places([bus]), view.study.driven, fault.tied):
        if not c * amperes[0] > 0:
            continue
        who = f"from `{name}`" if name else "from the machines and converters"
        z, k = complex(ohm[0]), f"k{len(terms) + 1}"
        r_over_x = max(z.real, 0.0) / z.imag if z.imag > 0 else math.inf
        text = f"1.02 + 0.98 * exp(-3 * {number_text(r_over_x)})" if math.isfinite(r_over_x) else "1.02"
        steps.append(Step(k, f"kappa of what comes {who}, by the R/X of its way", text, iec60909.peak_factor(r_over_x)))
        terms.append(f"{k} * {number_text(c * float(amperes[0]))}")
    total = f"sqrt(2) * ({' + '.join(terms)})"
    return [*steps, Step("", "first peak, the sum of theirs", total, view.peak_a(fault), "A", SUM_OF_PEAKS)]
