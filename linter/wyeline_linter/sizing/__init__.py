"""Sizes proposed, never applied silently: devices, wires, grounds, raceways, transformers, generators.

``plain.wires_for`` and ``plain.device_for`` are the short answers that repairs ask; ``lines.size_feeder`` says every
step.
"""
