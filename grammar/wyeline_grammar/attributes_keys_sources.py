"""Keys of projects, sources and transformers: data of the attribute table."""

from __future__ import annotations

from wyeline_grammar.attribute_types import (
    ALL_BOARDS,
    COUNT,
    EVERYWHERE,
    FACILITIES,
    LINES,
    MAKERS,
    NAME,
    SIZE,
    TEXT,
    WIRING,
    Accept,
    Use,
    count,
    keyed,
    number,
    places,
    quantity,
    words,
)
from wyeline_grammar.vocabulary import SOURCES

PROJECT_KEYS = (
    keyed(
        "basis",
        "The code tables and rules that are applied. Left out, only the rules of physics run.",
        Use(
            places("project"), (words("us-2023 iec"),), ("basis us-2023", "basis iec"), default="rules of physics only"
        ),
    ),
    keyed(
        "frequency",
        "The frequency of the supply.",
        Use(places("project system", SOURCES), (quantity("16 Hz", "400 Hz"),), ("frequency 60 Hz",)),
    ),
    keyed(
        "ambient",
        "The temperature of the air or soil around the wires or the equipment.",
        Use(places("project", WIRING, FACILITIES), (quantity("-50 degC", "80 degC"),), ("ambient 35 degC",)),
    ),
    keyed(
        "drop-branch",
        "The voltage drop aimed for in the last circuit to a load.",
        Use(places("project"), (quantity("0.5 %", "10 %"),), ("drop-branch 3 %",)),
    ),
    keyed(
        "drop-path",
        "The voltage drop aimed for from the source to the farthest load.",
        Use(places("project"), (quantity("1 %", "15 %"),), ("drop-path 5 %",)),
    ),
    keyed(
        "revision",
        "The issue of this model, as it prints on every report.",
        Use(
            places("project"),
            (TEXT, NAME, COUNT),
            ('revision "B, for tender"', "revision 3"),
            default="the name of the newest `issue`",
        ),
    ),
    keyed(
        "number",
        "The number of the project.",
        Use(places("project"), (TEXT, NAME, COUNT), ('number "24-117"', "number 24117")),
    ),
    keyed("client", "Whom the work is for.", Use(places("project"), (TEXT, NAME), ('client "Harbour Trust"',))),
    keyed(
        "drawn",
        "Who drew it, as it prints in the title block.",
        Use(places("project issue"), (TEXT, NAME), ('drawn "T. Aune"', "drawn TA"), default="an empty place to sign"),
    ),
    keyed(
        "checked",
        "Who checked it, as it prints in the title block; once an issue says who, what the newest issue says.",
        Use(places("project issue"), (TEXT, NAME), ('checked "R. Okafor"',), default="an empty place to sign"),
    ),
    keyed(
        "engineer",
        "The engineer who answers for the design; the drawings keep a place for the seal.",
        Use(places("project"), (TEXT, NAME), ('engineer "R. Okafor, PE"',)),
    ),
    keyed(
        "location",
        "Where it stands: building, level, room.",
        Use(EVERYWHERE, (TEXT, NAME), ('location "Level 2, room 214"',)),
    ),
    keyed(
        "per",
        "Where the figures come from: a letter, a nameplate, a survey.",
        Use(EVERYWHERE, (TEXT, NAME), ('per "letter Q-1187"',)),
    ),
    keyed("note", "A remark that prints in the schedule.", Use(EVERYWHERE, (TEXT,), ('note "spare key at the desk"',))),
)

SOURCE_KEYS = (
    keyed(
        "fault",
        "The largest fault level the utility gives at this point: three-phase, as a current or a power.",
        Use(
            places("utility"),
            (quantity("1 kA", "200 kA"), quantity("1 MVA", "5000 MVA"), words("infinite")),
            ("fault 28 kA", "fault 250 MVA"),
        ),
    ),
    keyed(
        "fault-min",
        "The smallest fault level the utility gives; devices must still trip on it.",
        Use(
            places("utility"),
            (quantity("200 A", "200 kA"), quantity("0.2 MVA", "5000 MVA")),
            ("fault-min 19 kA",),
        ),
    ),
    keyed(
        "fault-lg",
        "The fault level from one leg to ground at this point.",
        Use(places("utility"), (quantity("1 A", "200 kA"), quantity("0.1 MVA", "5000 MVA")), ("fault-lg 22 kA",)),
    ),
    keyed(
        "x/r",
        "Reactance over resistance of the source or the windings; the higher, the larger the first peak of a fault.",
        Use(places("utility"), (number(0.5, 50),), ("x/r 7.5",)),
        Use(places("generator"), (number(5, 80),), ("x/r 20",)),
        Use(places("transformer"), (number(0.3, 50),), ("x/r 2.1",)),
        Use(places("inverter ups motor"), (number(0.1, 60),), ("x/r 10",)),
    ),
    keyed(
        "r/x",
        "Resistance over reactance, where the data sheet gives it this way round.",
        Use(places("utility transformer"), (number(0.02, 3.5),), ("r/x 0.1",)),
        Use(places("generator inverter ups motor"), (number(0.01, 10),), ("r/x 0.05",)),
    ),
    keyed(
        "range",
        "The band the supply voltage may move in, as shares of the nominal voltage.",
        Use(
            places("utility system"),
            (Accept("range", "", low=0.7, high=1.3), Accept("range", "ratio", low=0.7, high=1.3)),
            ("range 0.90..1.10", "range 90..110 %"),
        ),
    ),
    keyed(
        "service",
        "The size of the service, as agreed with the utility.",
        Use(places("utility"), (quantity("30 A", "6000 A"),), ("service 1200 A",)),
    ),
    keyed(
        "subtransient",
        "Reactance in the first cycles of a fault, on the machine's own rating.",
        Use(places("generator"), (quantity("5 %", "35 %"),), ("subtransient 12 %",)),
        Use(places("motor"), (quantity("10 %", "35 %"),), ("subtransient 16.7 %",)),
    ),
    keyed(
        "transient",
        "Reactance after the first cycles, on the machine's own rating; it decides the starting dip.",
        Use(places("generator"), (quantity("8 %", "60 %"),), ("transient 22 %",)),
    ),
    keyed(
        "x2",
        "Negative-sequence reactance, on the machine's own rating.",
        Use(places("generator"), (quantity("5 %", "40 %"),), ("x2 13 %",)),
    ),
    keyed(
        "x0",
        "Zero-sequence reactance, on the machine's own rating.",
        Use(places("generator"), (quantity("0.5 %", "20 %"),), ("x0 4 %",)),
    ),
    keyed(
        "sustained",
        "The fault current the machine keeps up, as a multiple of its rated current.",
        Use(places("generator"), (quantity("0.3 pu", "6 pu"),), ("sustained 3 pu",)),
        Use(places("ups inverter"), (quantity("0.5 pu", "6 pu"),), ("sustained 1.5 pu",)),
    ),
    keyed(
        "dip",
        "The largest voltage dip allowed while a load starts.",
        Use(places("generator ups motor"), (quantity("3 %", "50 %"),), ("dip 20 %",)),
    ),
    keyed(
        "step",
        "The largest share of its rating that may be switched on at once.",
        Use(places("generator"), (quantity("10 %", "100 %"),), ("step 60 %",)),
    ),
    keyed(
        "pf",
        "Power factor; lagging unless `leading` is written.",
        Use(
            places("generator inverter ups load motor drive charger circuit"),
            (number(0.2, 1, most=1),),
            ("pf 0.86",),
        ),
        Use(ALL_BOARDS, (number(0.2, 1, most=1),), ("pf 0.9",), doc="The power factor of what was `measured` in kW."),
    ),
    keyed(
        "eff",
        "Efficiency at full load.",
        Use(places("ups inverter charger drive"), (quantity("70 %", "99.5 %", most=1),), ("eff 94 %",)),
        Use(places("motor circuit load"), (quantity("50 %", "98.5 %", most=1),), ("eff 91 %",)),
    ),
    keyed(
        "autonomy",
        "How long the battery carries the rated load.",
        Use(places("ups battery"), (quantity("1 min", "48 h"),), ("autonomy 15 min",)),
    ),
    keyed(
        "recharge",
        "What recharging the battery adds to the input, as a share of the rating.",
        Use(places("ups"), (quantity("1 %", "50 %"),), ("recharge 15 %",)),
    ),
    keyed(
        "limit",
        "The current it limits itself to.",
        Use(
            places("inverter ups"),
            (quantity("0.9 pu", "6 pu"), quantity("1 A", "6000 A")),
            ("limit 1.1 pu",),
            doc="The largest current it feeds into a fault, as a multiple of its rated current or in amperes.",
        ),
        Use(
            places("charger load", LINES, ALL_BOARDS),
            (quantity("1 A", "6000 A"), quantity("0.5 kW", "5 MW"), quantity("0.5 kVA", "5 MVA")),
            ("limit 80 A",),
            doc="What an energy management system holds it to.",
        ),
    ),
)

_LEG = words("A B C L1 L2 L3")

TRANSFORMER_KEYS = (
    keyed(
        "connection",
        "How the windings are connected, where the voltages do not say it: a vector group, or a special connection "
        "(the kVA of `auto` and `buck-boost` are what passes through).",
        Use(
            places("transformer"),
            (
                words("auto open-delta open-wye zigzag buck-boost"),
                Accept(
                    "pattern",
                    pattern=r"(?:D|YN?|ZN?)(?:(?:dn?|yn?|zn?)(?:1[01]|[0-9])|a0?)|I(?:I|i|a)+(?:0|6)",
                    phrase="a vector group such as Dyn11",
                ),
            ),
            ("connection Dyn11", "connection open-delta"),
        ),
    ),
    keyed(
        "z",
        "Impedance voltage, from the nameplate.",
        Use(places("transformer"), (quantity("0.8 %", "15 %"),), ("z 4.1 %",)),
    ),
    keyed(
        "z0",
        "Zero-sequence impedance, on the transformer's own rating.",
        Use(places("transformer"), (quantity("0.5 %", "100 %"),), ("z0 3.5 %",)),
    ),
    keyed(
        "loss",
        "Losses in the windings at full load.",
        Use(places("transformer"), (quantity("5 W", "200 kW"), quantity("0.2 %", "6 %")), ("loss 6.5 kW",)),
        Use(places("busway"), (quantity("10 W", "20 kW"),), ("loss 600 W",)),
    ),
    keyed(
        "loss-idle",
        "Losses in the core, load or no load.",
        Use(places("transformer ups inverter"), (quantity("2 W", "50 kW"),), ("loss-idle 860 W",)),
    ),
    keyed(
        "tap",
        "The tap in use, as a share of the primary voltage: at -2.5 % the secondary voltage is higher.",
        Use(places("transformer"), (quantity("-15 %", "15 %"),), ("tap -2.5 %",), default="the nominal tap"),
    ),
    keyed(
        "taps",
        "How far the taps reach up and down from the nominal one, as a share of the primary voltage.",
        Use(places("transformer"), (quantity("1 %", "20 %"),), ("taps 5 %",)),
    ),
    keyed(
        "kfactor",
        "How much harmonic current it is built to bear: 1, 4, 9, 13, 20.",
        Use(places("transformer"), (number(1, 50),), ("kfactor 4",)),
    ),
    keyed(
        "rise",
        "Temperature rise at full load, above the ambient temperature.",
        Use(
            places("transformer generator motor"),
            (quantity("30 degC", "200 degC", "temperature-difference"),),
            ("rise 115 degC",),
        ),
    ),
    keyed(
        "units",
        "How many single-phase units make up the bank.",
        Use(places("transformer"), (count(1, 3),), ("units 3",), default="one unit"),
    ),
    keyed(
        "high",
        "Which leg is the high one of a high-leg delta.",
        Use(places(MAKERS, ALL_BOARDS), (_LEG,), ("high C",), default="B, where US codes ask for it in boards"),
    ),
    keyed(
        "ground",
        "How the system is grounded: `solid` at its neutral, at a leg (corner-grounded), or not at all (`none`).",
        Use(
            MAKERS,
            (words("solid none A B C L1 L2 L3"),),
            ("ground none", "ground B"),
            default="follows the notation: wye and 120/240 are solidly grounded",
        ),
    ),
    keyed(
        "electrode",
        "Size of its copper wire to the earth electrode.",
        Use(places("transformer generator disconnect", ALL_BOARDS), (SIZE,), ("electrode #6", "electrode 35mm2")),
    ),
    keyed(
        "ground-resistor",
        "The neutral is grounded through a resistor, given by its current or its resistance.",
        Use(
            MAKERS,
            (quantity("0.5 A", "2000 A"), quantity("0.1 ohm", "20000 ohm")),
            ("ground-resistor 5 A", "ground-resistor 55 ohm"),
        ),
    ),
    keyed(
        "ground-reactor",
        "The neutral is grounded through a reactor, given by its reactance or its current.",
        Use(MAKERS, (quantity("0.01 ohm", "5000 ohm"), quantity("1 A", "5000 A")), ("ground-reactor 3 ohm",)),
    ),
    keyed(
        "earthing",
        "The IEC arrangement of earth and neutral.",
        Use(MAKERS, (words("TN-S TN-C TN-C-S TT IT"),), ("earthing TN-S", "earthing IT")),
        Use(
            places("load motor", ALL_BOARDS),
            (words("TT TN-S TN-C TN-C-S IT"),),
            ("earthing TT",),
            doc="`TT`: here, and on all that a board feeds, metal parts are earthed by an electrode of its own "
            "(`resistance`), and the supply brings no PE. Every other arrangement is decided where the system is made.",
        ),
    ),
    keyed(
        "source-resistance",
        "Resistance of the earth electrode at the source itself (R_B), where faults to earth return through earth.",
        Use(
            places("utility generator transformer system"),
            (quantity("0.05 ohm", "500 ohm"),),
            ("source-resistance 2 ohm",),
        ),
    ),
    keyed(
        "neutral",
        "What becomes of the neutral.",
        Use(
            places("generator inverter ups battery"),
            (words("bonded floating impedance none"),),
            ("neutral bonded", "neutral floating"),
            doc="Whether its neutral is bonded to ground here, floats, is grounded through an impedance, or is not "
            "brought out.",
        ),
        Use(
            places("transfer"),
            (words("switched overlapping solid"),),
            ("neutral overlapping",),
            doc="What the transfer does with the neutral: switches it, switches it with overlapping contacts, or "
            "passes it through solidly.",
        ),
    ),
)
