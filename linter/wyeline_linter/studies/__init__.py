"""Studies: the model as one conductor-level circuit, its load flow, its faults, and motor starts, in any switch state.

``line_impedance``, ``transformer_impedance`` and ``source_impedance`` turn what is written into ohms, or say what is
missing; ``build`` makes the circuit; ``flow``, ``fault`` and ``starting`` read the solutions by equipment and feeder;
``study`` holds all of one switch state, solved when first asked for, ``all_studies`` those of every state of a model;
``scenarios`` gives the worst over switch states; the ``working_*`` files lay a figure out as a calculation sheet.
Nothing here runs unless a figure or a rule asks.
"""
