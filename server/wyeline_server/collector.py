"""What lives on is made without the cyclic collector: walking all of it again and again would stall a keystroke."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def kept_out() -> Iterator[None]:
    """Keep the collector out while something that lives on is made, and away from it afterwards."""
    collecting = gc.isenabled()  # not while a study runs
    gc.disable()
    try:
        yield
    finally:
        if collecting:
            gc.enable()
        gc.freeze()
