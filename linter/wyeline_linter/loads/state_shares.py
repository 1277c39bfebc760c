"""At which share of its full load everything runs in a switch state."""

from __future__ import annotations

from wyeline_linter.network import Network


def shares_in(network: Network) -> dict[str, float]:
    """What a switch state scales or sheds, with all that hangs on it."""
    state = network.state
    if not state.scale and not state.shed:
        return {}
    scale = dict(state.scale)
    shares: dict[str, float] = {}
    for name in network.order:
        feeder, above = network.supply.get(name), network.supplier.get(name)
        key = feeder.key if feeder is not None else ""
        own = 0.0 if name in state.shed or key in state.shed else scale.get(name, scale.get(key, 1.0))
        shares[name] = own * (shares.get(above, 1.0) if above is not None else 1.0)
    return shares
