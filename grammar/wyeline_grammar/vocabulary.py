"""The words of the language, each standing once.

A word's token kind follows from its spelling and these lists alone. Highlighting, completion, hover and the
language reference read them here. What each key, flag and kind *means* (dimension, range, documentation) stands in
``attributes.py``.
"""

from __future__ import annotations

STATEMENTS = frozenset("wye project include type raceway feeder scenario expect".split())
SMALL_WORDS = frozenset("in at leg all assume allow claim issue".split())
ACTIONS = frozenset("on off open close switch shed scale".split())
KINDS = frozenset(
    """utility generator inverter battery ups transfer switchgear switchboard mcc panel busway disconnect transformer
    motor drive load charger capacitor junction meter spd system interlock""".split()
)
KEYS = frozenset(
    """basis frequency ambient drop-branch drop-path revision number client drawn checked engineer location per note
    fault fault-min fault-lg x/r r/x range service subtransient transient x2 x0 sustained dip step pf eff autonomy
    recharge limit bus main incomer rated series withstand peak spaces numbering sections diversity reserve
    enclosure mounting
    connection z z0 loss loss-idle tap taps kfactor rise units high ground electrode ground-resistor ground-reactor
    earthing source-resistance neutral curve fuse frame pickup instantaneous delay gfpe-pickup rcd rcd-type voltage
    transition method grouped buried soil lug-temp resistance reactance like with count draws mca mocp fla lra
    code-letter service-factor overload duty starter factor third-harmonic standby-of not-with among at-most stages
    detuning mcov ratio dwelling floor-area small-appliance laundry
    measured measured-over measured-by""".split()
)
FLAGS = frozenset(
    """existing new future temporary relocated demolish spare space continuous lighting receptacle heating cooling
    kitchen appliance dryer heat-pump elevator process ev it fire-pump medical welding show-window sign marina pump fan
    emergency legally-required critical optional fused gfci afci gfpe rdc-dd tied current-limiting full-rated leading
    regenerative infinite static manual grid-following grid-forming together nipple outdoor normally-open
    service-equipment isolated-phases double-neutral isolated-ground through-lugs subfeed-lugs""".split()
)

BOARDS = frozenset("switchgear switchboard mcc panel".split())
"""Kinds whose blocks may hold circuits."""

SOURCES = frozenset("utility generator inverter battery ups".split())
"""Kinds that can make a voltage system of their own."""


def word_kind(word: str) -> str:
    """The token kind of a word in small letters: a name of a word list, or ``PLAIN``."""
    return _WORD_KIND.get(word, "PLAIN")


_WORD_KIND: dict[str, str] = {
    **dict.fromkeys(FLAGS, "FLAG"),
    **dict.fromkeys(KEYS, "KEY"),
    **dict.fromkeys(KINDS, "KIND"),
    **dict.fromkeys(ACTIONS, "ACTION"),
    **{word: word.upper() for word in SMALL_WORDS},
    **{word: word.upper() for word in STATEMENTS},
}
