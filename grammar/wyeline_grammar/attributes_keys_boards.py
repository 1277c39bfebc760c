"""Keys of boards, devices, wiring and loads: data of the attribute table."""

from __future__ import annotations

from wyeline_grammar.attribute_types import (
    ALL_BOARDS,
    FACILITIES,
    LINES,
    LOADS,
    NAME,
    NAMES,
    POSITIONS,
    TEXT,
    VOLTAGE,
    WIRING,
    Use,
    count,
    keyed,
    number,
    places,
    quantity,
    words,
)

_DEVICES = places(LINES, "disconnect", ALL_BOARDS)
_DWELLINGS = places("panel switchboard")

BOARD_KEYS = (
    keyed(
        "bus",
        "What the busbars are rated to carry.",
        Use(places("panel"), (quantity("30 A", "1200 A"),), ("bus 225 A",)),
        Use(places("switchgear switchboard mcc"), (quantity("100 A", "6300 A"),), ("bus 1200 A",)),
    ),
    keyed(
        "main",
        "The main of the board: a breaker by its rating, `switch`, or `lugs` where it has none.",
        Use(
            ALL_BOARDS,
            (quantity("15 A", "6300 A"), words("lugs switch")),
            ("main 150 A", "main 400 A 3p", "main lugs"),
            poles=True,
        ),
    ),
    keyed(
        "incomer",
        "The incoming device of the board, the main in IEC words: a breaker by its rating, `switch`, or `lugs`.",
        Use(
            ALL_BOARDS,
            (quantity("6 A", "6300 A"), words("lugs switch")),
            ("incomer switch", "incomer 63 A 4p"),
            poles=True,
        ),
    ),
    keyed(
        "rated",
        "The fault current it may be exposed to or can interrupt.",
        Use(
            places("panel mcc switchboard switchgear transfer disconnect busway meter", LINES, LOADS),
            (quantity("1 kA", "200 kA"),),
            ("rated 65 kA",),
        ),
        Use(places("spd"), (quantity("5 kA", "200 kA"),), ("rated 100 kA",)),
    ),
    keyed(
        "series",
        "The fault current it is rated for together with the device ahead of it, as tested and marked.",
        Use(places("panel", LINES), (quantity("5 kA", "200 kA"),), ("series 22 kA",)),
    ),
    keyed(
        "withstand",
        "The fault current its busbars or contacts bear for a short time.",
        Use(places(ALL_BOARDS, "busway transfer"), (quantity("1 kA", "200 kA"),), ("withstand 42 kA",)),
    ),
    keyed(
        "peak",
        "The first peak of a fault current that its busbars bear.",
        Use(places(ALL_BOARDS, "busway transfer"), (quantity("2 kA", "440 kA"),), ("peak 75 kA",)),
    ),
    keyed(
        "spaces",
        "How many pole positions it has, taken and free.",
        Use(places("panel"), (count(2, 126),), ("spaces 42",)),
        Use(places("switchgear switchboard mcc"), (count(1, 400),), ("spaces 60",)),
    ),
    keyed(
        "numbering",
        "How positions are numbered: odd left and even right, in one sequence, or column by column.",
        Use(
            ALL_BOARDS,
            (words("odd-even sequential column"),),
            ("numbering odd-even",),
            default="odd-even",
        ),
    ),
    keyed(
        "sections",
        "How many sections (cubicles, columns) stand side by side.",
        Use(ALL_BOARDS, (count(1, 40),), ("sections 3",)),
    ),
    keyed(
        "diversity",
        "The share of the sum of its outgoing loads that runs at one time (rated diversity factor).",
        Use(ALL_BOARDS, (number(0.3, 1),), ("diversity 0.8",)),
    ),
    keyed(
        "reserve",
        "The share of positions or capacity to keep free.",
        Use(places("project", ALL_BOARDS), (quantity("0 %", "60 %"),), ("reserve 20 %",)),
    ),
    keyed(
        "dwelling",
        "The board carries the whole load of one dwelling unit, calculated as NEC 220 does from its `floor-area` and "
        "the classes of its loads: `standard` by Part III, `optional` by 220.82, `existing` by 220.83 (what stands "
        "already is marked `existing`, what is added is not). `multifamily`: three or more such dwellings below "
        "it count together by 220.84, two by 220.85; `multifamily-standard`: by Part III as if they were one.",
        Use(
            _DWELLINGS,
            (words("standard optional existing multifamily multifamily-standard"),),
            ("dwelling standard", "dwelling optional", "dwelling existing", "dwelling multifamily"),
        ),
    ),
    keyed(
        "floor-area",
        "The floor area of the dwelling by its outside dimensions, without open porches, garages and what cannot be "
        "lived in (NEC 220.41: 3 VA each square foot).",
        Use(_DWELLINGS, (quantity("100 ft2", "20000 ft2"),), ("floor-area 1500 ft2", "floor-area 140 m2")),
    ),
    keyed(
        "small-appliance",
        "How many small-appliance circuits of 20 A the kitchen and dining rooms have (NEC 210.11(C)(1), 220.52(A)).",
        Use(_DWELLINGS, (count(2, 20),), ("small-appliance 3",), default="2"),
    ),
    keyed(
        "laundry",
        "How many laundry circuits the dwelling has (NEC 210.11(C)(2), 220.52(B)); 0 where none is asked for.",
        Use(_DWELLINGS, (count(0, 5),), ("laundry 1",), default="1"),
    ),
)

DEVICE_KEYS = (
    keyed(
        "curve",
        "The tripping curve of a miniature circuit-breaker.",
        Use(_DEVICES, (words("B C D K Z"),), ("curve C",)),
    ),
    keyed(
        "fuse",
        "The class of the fuse; the device is then a fuse, not a breaker.",
        Use(
            places(_DEVICES, "transfer"),
            (words("J RK1 RK5 L CC T G H K5 CF E R gG gL gM gN gD aM gR aR gPV HH NH D01 D02 D0 DII DIII"),),
            ("fuse J", "fuse gG"),
        ),
    ),
    keyed(
        "frame",
        "The frame of the breaker, where it is larger than its rating.",
        Use(_DEVICES, (quantity("15 A", "6300 A"),), ("frame 400 A",)),
    ),
    keyed(
        "pickup",
        "The short-time pickup: the current from which the breaker trips after its delay.",
        Use(_DEVICES, (quantity("10 A", "100 kA"), quantity("1 pu", "15 pu")), ("pickup 1800 A",)),
    ),
    keyed(
        "instantaneous",
        "The current from which the breaker trips without delay.",
        Use(_DEVICES, (quantity("10 A", "200 kA"), quantity("1 pu", "20 pu")), ("instantaneous 5 kA",)),
    ),
    keyed(
        "delay",
        "How long it waits before it acts.",
        Use(_DEVICES, (quantity("10 ms", "5 s"),), ("delay 0.3 s", "delay 12 cycles"), doc="The short-time delay."),
        Use(places("transfer"), (quantity("0 s", "10 min"),), ("delay 10 s",), doc="The wait before it transfers."),
    ),
    keyed(
        "gfpe-pickup",
        "The ground-fault current from which ground-fault protection of equipment trips.",
        Use(_DEVICES, (quantity("10 A", "1200 A"),), ("gfpe-pickup 800 A",)),
    ),
    keyed(
        "rcd",
        "The residual current from which a residual current device trips.",
        Use(_DEVICES, (quantity("6 mA", "30 A"),), ("rcd 30 mA",)),
    ),
    keyed(
        "rcd-type",
        "The type of the residual current device, by the currents it can sense.",
        Use(_DEVICES, (words("AC A F B S A-S"),), ("rcd-type A",)),
    ),
    keyed(
        "voltage",
        "The voltage the device is rated for, straight (`600 V`) or slash (`480Y/277`).",
        Use(
            places(_DEVICES, "transfer spd"),
            (VOLTAGE, quantity("12 V", "40 kV")),
            ("voltage 480Y/277", "voltage 600 V"),
        ),
    ),
    keyed(
        "transition",
        "How it goes over from one source to the other.",
        Use(places("transfer"), (words("open delayed closed"),), ("transition open",)),
    ),
)

WIRING_KEYS = (
    keyed(
        "at",
        "Where its device sits: positions in the board it leaves, or the distance along a busway.",
        Use(places("feeder"), (POSITIONS, quantity("0 m", "500 m")), ("at 14,16", "at F9", "at 12 m")),
    ),
    keyed(  # what the letters stand for: IEC 60364-5-52, table B.52.1, from memory
        "method",
        "The reference method of installation of IEC 60364-5-52: `A1` wires and `A2` a cable in a conduit in an "
        "insulated wall; `B1` wires and `B2` a cable in a conduit on a wall; `C` a cable clipped to a wall; `D1` in a "
        "duct in the ground, `D2` in the ground itself; `E` a cable in free air, `F` single cores touching there, `G` "
        "apart.",
        Use(WIRING, (words("A1 A2 B1 B2 C D1 D2 E F G"),), ("method B2",)),
    ),
    keyed(
        "grouped",
        "How many loaded circuits lie together here, this one included.",
        Use(WIRING, (count(1, 60),), ("grouped 3",)),
    ),
    keyed(
        "buried",
        "How deep it lies in the ground.",
        Use(WIRING, (quantity("0.1 m", "5 m"),), ("buried 0.8 m",)),
    ),
    keyed(
        "soil",
        "Thermal resistivity of the soil around it.",
        Use(places("project", WIRING), (quantity("0.3 K.m/W", "5 K.m/W"),), ("soil 1.5 K.m/W",)),
    ),
    keyed(
        "lug-temp",
        "The temperature its terminals are rated for: 60, 75 or 90 degC.",
        Use(places(FACILITIES, LINES), (quantity("60 degC", "105 degC"),), ("lug-temp 75 degC",)),
    ),
    keyed(
        "resistance",
        "Resistance of one conductor per length, in place of the table's value.",
        Use(places(LINES, "busway"), (quantity("0.001 ohm/km", "60 ohm/km"),), ("resistance 0.193 ohm/km",)),
        Use(
            places("utility generator transformer system load motor charger", ALL_BOARDS),
            (quantity("0.05 ohm", "5000 ohm"),),
            ("resistance 20 ohm",),
            doc="Resistance of the earth electrode: of metal parts, in a TT system or where `earthing TT` is written.",
        ),
    ),
    keyed(
        "reactance",
        "Reactance of one conductor per length, in place of the table's value.",
        Use(places(LINES, "busway"), (quantity("0.001 ohm/km", "2 ohm/km"),), ("reactance 0.08 ohm/km",)),
    ),
)

_POWERED = places("motor load drive charger circuit")

LOAD_KEYS = (
    keyed(
        "like",
        "Takes over everything from a type; what is written here again replaces it.",
        Use(FACILITIES, (NAME,), ("like LAB",)),
    ),
    keyed(
        "with",
        "Shares the wires and the neutral of another circuit of the same board.",
        Use(places("circuit"), (POSITIONS,), ("with 7",)),
    ),
    keyed(
        "count",
        "How many of them there are; the load is that many times the one written.",
        Use(places("circuit", LOADS), (count(1, 10000),), ("count 6",), default="one"),
    ),
    keyed(
        "draws",
        "The current it draws, where that is what is known.",
        Use(_POWERED, (quantity("1 mA", "6000 A"),), ("draws 12 A",)),
    ),
    keyed(
        "mca",
        "Minimum circuit ampacity, from the nameplate.",
        Use(_POWERED, (quantity("0.5 A", "3000 A"),), ("mca 180 A",)),
    ),
    keyed(
        "mocp",
        "Maximum overcurrent protection, from the nameplate.",
        Use(_POWERED, (quantity("1 A", "4000 A"),), ("mocp 250 A",)),
    ),
    keyed(
        "fla", "Full-load current, from the nameplate.", Use(_POWERED, (quantity("0.05 A", "3000 A"),), ("fla 21 A",))
    ),
    keyed(
        "lra", "Locked-rotor current, from the nameplate.", Use(_POWERED, (quantity("0.2 A", "20 kA"),), ("lra 116 A",))
    ),
    keyed(
        "code-letter",
        "The nameplate's letter for the locked-rotor kVA per horsepower (NEMA MG 1).",
        Use(places("motor load circuit"), (words("A B C D E F G H J K L M N P R S T U V"),), ("code-letter G",)),
    ),
    keyed(
        "service-factor",
        "How far above its rating the motor may run all the time.",
        Use(places("motor circuit"), (number(1, 1.5),), ("service-factor 1.15",)),
    ),
    keyed(
        "overload",
        "The current from which its overload device trips: what guards the motor itself.",
        Use(places("motor circuit"), (quantity("0.05 A", "3000 A"),), ("overload 26 A",)),
    ),
    keyed(
        "duty",
        "How it runs over time: a duty in words, a duty type of IEC 60034-1, or its share of running time.",
        Use(
            places("motor load drive circuit"),
            (
                words("continuous intermittent short-time periodic varying S1 S2 S3 S4 S5 S6 S7 S8 S9"),
                quantity("1 %", "100 %"),
            ),
            ("duty intermittent", "duty 40 %"),
        ),
    ),
    keyed(
        "starter",
        "How the motor starts: full voltage (FVNR, reversing FVR, DOL), reduced voltage, soft start or a drive (VFD).",
        Use(
            places("motor drive load circuit"),
            (words("FVNR FVR DOL RVNR RVSS VFD YD soft-start star-delta two-speed part-winding autotransformer"),),
            ("starter FVNR", "starter VFD"),
        ),
    ),
    keyed(
        "factor",
        "Demand factor: the share of the connected load that counts.",
        Use(
            places("circuit feeder", LOADS, ALL_BOARDS),
            (number(0.01, 1), quantity("1 %", "100 %")),
            ("factor 0.75", "factor 75 %"),
            default="1, the whole connected load counts",
        ),
    ),
    keyed(
        "third-harmonic",
        "Third harmonic as a share of the line current. It adds up in the neutral of three-phase circuits. On a board "
        "or its feeder it holds for all that they carry, in place of what the loads below say.",
        Use(
            places("circuit feeder ups", LOADS, ALL_BOARDS),
            (quantity("0 %", "100 %"),),
            ("third-harmonic 35 %",),
            default="none; the class `it` counts as mostly harmonic where a rule asks only for that",
        ),
    ),
    keyed(
        "standby-of",
        "It runs only in place of these.",
        Use(places(LOADS, "generator ups"), (NAMES,), ("standby-of P-1",)),
    ),
    keyed(
        "not-with",
        "It never runs together with these; the larger counts.",
        Use(LOADS, (NAMES,), ("not-with BOILER HTR-2",)),
    ),
    keyed("among", "The devices that are interlocked.", Use(places("interlock"), (NAMES,), ("among M-1, M-2, TIE",))),
    keyed(
        "at-most",
        "How many of the interlocked devices may be closed at once.",
        Use(places("interlock"), (count(1, 20),), ("at-most 2",)),
    ),
    keyed(
        "stages",
        "How many steps the bank is switched in.",
        Use(places("capacitor"), (count(1, 24),), ("stages 6",), default="one step"),
    ),
    keyed(
        "detuning",
        "Reactance of the detuning reactor as a share of the capacitor's.",
        Use(places("capacitor"), (quantity("1 %", "20 %"),), ("detuning 7 %",)),
    ),
    keyed(
        "mcov",
        "Maximum continuous voltage of the surge protective device, leg to ground.",
        Use(places("spd"), (quantity("40 V", "2 kV"),), ("mcov 320 V",)),
    ),
    keyed(
        "ratio",
        "The transformation ratio of its current transformers: 80 for 400 to 5.",
        Use(places("meter"), (number(1, 2000), TEXT), ("ratio 80", 'ratio "400:5"')),
    ),
)
