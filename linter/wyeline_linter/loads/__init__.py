"""Loads: what each one draws, on which conductors, and what comes together at every piece of equipment.

``as_given`` reads a load as a drafter writes it, ``of_circuits`` and ``of_equipment`` put it on its conductors,
``rollup`` adds up the tree (through transformers by ``through_cores``), ``demand`` reduces and ``coincidence`` leaves
out what never runs together. ``leaf_loads`` hands the same loads to the load flow. Nothing here is ever zero because it
is missing: what cannot be told is unknown, with its reasons.
"""
