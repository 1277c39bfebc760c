"""Feeders and circuits as facts for the code rules: wires, what protects them, what they carry, how they are laid."""
