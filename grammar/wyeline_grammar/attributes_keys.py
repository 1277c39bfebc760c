"""All keys of the language, in the order of the reference.

Sane ranges are what such equipment has in practice (common practice, no source, unless a standard is named): a value
outside is a slip of the pen more often than a fact, and only ever a warning. Facts that a safety check rests on (fault
level, interrupting rating, impedance, length, settings) have no default.
"""

from __future__ import annotations

from wyeline_grammar.attributes_keys_boards import BOARD_KEYS, DEVICE_KEYS, LOAD_KEYS, WIRING_KEYS
from wyeline_grammar.attributes_keys_housing import HOUSING_KEYS
from wyeline_grammar.attributes_keys_measured import MEASURED_KEYS
from wyeline_grammar.attributes_keys_sources import PROJECT_KEYS, SOURCE_KEYS, TRANSFORMER_KEYS

ALL_KEYS = (
    *PROJECT_KEYS,
    *SOURCE_KEYS,
    *BOARD_KEYS,
    *MEASURED_KEYS,
    *HOUSING_KEYS,
    *TRANSFORMER_KEYS,
    *DEVICE_KEYS,
    *WIRING_KEYS,
    *LOAD_KEYS,
)

KEY_GROUPS = (
    ("Project and notes", PROJECT_KEYS),
    ("Sources", SOURCE_KEYS),
    ("Boards", BOARD_KEYS),
    ("Demand as measured", MEASURED_KEYS),
    ("Enclosure and mounting", HOUSING_KEYS),
    ("Transformers and grounding", TRANSFORMER_KEYS),
    ("Devices", DEVICE_KEYS),
    ("Wiring", WIRING_KEYS),
    ("Loads and relations", LOAD_KEYS),
)
"""For the reference: the groups in the order in which they print."""
