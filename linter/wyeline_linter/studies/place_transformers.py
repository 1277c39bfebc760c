"""Transformers as ideal cores with series impedances, from the windings that the derivation found."""

from __future__ import annotations

from wyeline_linter.circuit import Bus, Network
from wyeline_linter.circuit.nameplate import LEAST_MAGNETISING_PU
from wyeline_linter.cores import Core, Side, Terminal, Winding
from wyeline_linter.studies.transformer_impedance import TransformerData
from wyeline_linter.systems import NEUTRAL
from wyeline_linter.windings import Transformed

BRIDGE_PU = 1e-6j
"""Impedance of a transformer whose own is not known: its loads still count above, and nothing below it is shown."""


class Windings:
    """The nodes of a transformer's terminals while its cores are placed."""

    def __init__(self, net: Network, name: str, fed: Bus, made: Bus) -> None:
        self.net, self.name, self.fed, self.made = net, name, fed, made
        self.inside: dict[str, int] = {}
        self.neutral: int | None = None
        """Where the secondary's star point lies when an impedance stands between it and the neutral's terminal."""

    def node(self, terminal: Terminal) -> int:
        if terminal.side is Side.PRIMARY:
            return self.fed[terminal.conductor]
        if terminal.side is Side.SECONDARY:
            if terminal.conductor == NEUTRAL and self.neutral is not None:
                return self.neutral
            return self.made[terminal.conductor]
        found = self.inside.get(terminal.conductor)
        if found is None:
            found = self.inside[terminal.conductor] = self.net.inner_node(self.made.nodes[0])
        return found


def place_transformer(
    net: Network, name: str, fed: Bus, made: Bus, winding: Transformed, data: TransformerData
) -> int | None:
    """Put the cores of a transformer between its two buses; returns the node of a star point that stays inside."""
    s_va = data.s_va or 1.0
    known = data.z_pu is not None and data.s_va is not None
    z_pu = data.z_pu if known and data.z_pu is not None else BRIDGE_PU
    s_core = s_va / len(winding.cores)
    at = Windings(net, name, fed, made)
    if known and data.z0_pu is not None and _star_in_neutral(winding):
        at.neutral = net.inner_node(made.nodes[0])
        line = winding.system.nominal.line_v
        net.impedance(
            f"{name} zero-sequence lead", (at.neutral, made[NEUTRAL]), (data.z0_pu - z_pu) / 3 * line**2 / s_va
        )
    for first, second in winding.joined:
        net.link(f"{name} joins {first}", fed[first], made[second])
    for k, core in enumerate(winding.cores, start=1):
        _place_core(net, f"{name}.{k}", at, winding, core, z_pu, s_core, data)
    return at.inside.get("secondary star")


def _star_in_neutral(winding: Transformed) -> bool:
    return (
        winding.separately_derived
        and len(winding.cores) == 3
        and all(len(c.secondaries) == 1 and _meets_neutral(c.secondaries[0]) for c in winding.cores)
    )


def _meets_neutral(winding: Winding) -> bool:
    """Whether an end of it lies at the neutral: the dotted one where the clock number turns windings round."""
    return NEUTRAL in (winding.start.conductor, winding.end.conductor)


def _place_core(
    net: Network,
    name: str,
    at: Windings,
    winding: Transformed,
    core: Core,
    z_pu: complex,
    s_core: float,
    data: TransformerData,
) -> None:
    primary = at.node(core.primary.start), at.node(core.primary.end)
    pairs = [(at.node(w.start), at.node(w.end)) for w in core.secondaries]
    ratios = [core.primary.volts / w.volts * data.tap for w in core.secondaries]
    magnetising = (complex(data.idle_pu, 0.0) + LEAST_MAGNETISING_PU) * s_core / core.primary.volts**2
    z_primary = 0j
    base = [w.volts**2 / s_core for w in core.secondaries]
    if winding.connection == "auto":
        whole = core.primary.volts + core.secondaries[0].volts
        z_primary = z_pu * whole**2 / s_core
        z_secondary = [0j]
    elif winding.connection == "zigzag":
        # Z0 of the bank per phase, on the rating of the whole bank: 3 V(half) is the line voltage.
        z_phase = z_pu * (3 * core.primary.volts) ** 2 / (3 * s_core)
        z_primary, z_secondary = z_phase / 2, [z_phase / 2]
    elif len(core.secondaries) == 2 and _is_tapped(core):
        r, x = z_pu.real, z_pu.imag
        z_primary = complex(0.5 * r, 0.8 * x) * core.primary.volts**2 / s_core
        # Interlaced halves (W. H. Kersting, Distribution System Modeling and Analysis).
        z_secondary = [complex(r, 0.4 * x) * b for b in base]
    elif len(core.secondaries) == 2:
        z_secondary = [z_pu * 1.5 * b for b in base]
    else:
        z_secondary = [z_pu * base[0]]
    net.core(name, primary, pairs, ratios, z_primary, z_secondary, magnetising)


def _is_tapped(core: Core) -> bool:
    """Whether both secondaries are the halves of one winding."""
    first, second = core.secondaries
    return first.end == second.start
