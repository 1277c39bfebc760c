"""Sizes proposed, never applied silently: devices, wires, grounds, raceways, transformers, generators.

``wires_for`` and ``device_for`` are the short answers that repairs ask; ``lines.size_feeder`` says every step.
"""

from wyeline_linter.sizing.plain import device_for, tables_for, wires_for

__all__ = ["device_for", "tables_for", "wires_for"]
