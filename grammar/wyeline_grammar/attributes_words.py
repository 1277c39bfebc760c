"""Flags, statements, small words, actions and conductor roles: data of the attribute table."""

from __future__ import annotations

from wyeline_grammar.attribute_types import (
    ALL_BOARDS,
    FACILITIES,
    LINES,
    LOADS,
    WIRING,
    Flag,
    Word,
    places,
)

FLAG_GROUPS = (
    ("status", "Status"),
    ("position", "Positions of a board"),
    ("load-class", "Load classes"),
    ("code-class", "Classes of supply"),
    ("load", "Loads"),
    ("device", "Devices"),
    ("source", "Sources and transfer"),
    ("wiring", "Wiring"),
    ("board", "Boards and equipment"),
)
"""The groups of flags, with the heading under which they print."""

_STATUS = places(FACILITIES, WIRING)
_CLASSED = places("circuit", LOADS)
_SUPPLY = places("circuit feeder transfer generator ups disconnect busway transformer", ALL_BOARDS, LOADS)
_DEVICE = places(LINES, ALL_BOARDS, "disconnect")


def _flags(group: str, where: frozenset[str], **docs: str) -> tuple[Flag, ...]:
    return tuple(Flag(word.replace("_", "-"), doc, group, where) for word, doc in docs.items())


ALL_FLAGS = (
    *_flags(
        "status",
        _STATUS,
        existing="It is there already and stays.",
        new="It is installed by this project.",
        future="It is planned, and not built now.",
        temporary="It serves while the work lasts, and goes.",
        relocated="It is there already and moves to another place.",
        demolish="It is there and is removed by this project: it counts in no load, and its sizes are not judged.",
    ),
    *_flags("position", places("circuit raceway feeder", FACILITIES), spare="It is installed and serves nothing yet."),
    *_flags("position", places("circuit"), space="The position is empty: there is room for a device, and none in it."),
    *_flags(
        "load-class",
        _CLASSED,
        lighting="Lighting; taken as continuous.",
        receptacle="Receptacles (socket outlets).",
        heating="Space or process heating; in a dwelling the electric heating of its rooms.",
        cooling="Air conditioning and refrigeration.",
        kitchen="Commercial kitchen equipment; in a dwelling what cooks: ranges, ovens, cooktops.",
        appliance="An appliance of a dwelling fastened in place: water heater, dishwasher, disposer, pump, fan.",
        dryer="A clothes dryer of a dwelling.",
        heat_pump="A heat pump, which heats and cools.",
        elevator="Elevators and lifts.",
        process="Equipment of a process or a shop.",
        ev="Charging of electric vehicles; taken as continuous.",
        it="Information technology.",
        fire_pump="A fire pump, which must run until it is destroyed.",
        medical="Medical equipment.",
        welding="Welding machines.",
        show_window="Show windows.",
        sign="Signs and outline lighting.",
        marina="Shore power of boats.",
        pump="Pumps.",
        fan="Fans.",
    ),
    *_flags(
        "code-class",
        _SUPPLY,
        emergency="It belongs to the emergency system, on which lives depend.",
        legally_required="It belongs to the legally required standby system.",
        critical="It belongs to the critical operations power system.",
        optional="It belongs to the optional standby system.",
    ),
    *_flags("load", _CLASSED, continuous="It runs for three hours or more."),
    *_flags(
        "load",
        places("circuit generator inverter ups", LOADS),
        leading="Its power factor is leading (capacitive).",
    ),
    *_flags(
        "load",
        places("circuit motor drive load"),
        regenerative="It feeds power back while it brakes, and current into a fault.",
    ),
    *_flags("device", places("disconnect transfer circuit feeder", ALL_BOARDS), fused="Its device is a fused switch."),
    *_flags(
        "device",
        _DEVICE,
        gfci="Its device protects people from ground faults (ground-fault circuit interrupter).",
        gfpe="Its device protects equipment from ground faults.",
        current_limiting="Its device is tested as current-limiting.",
        full_rated="Its device may carry its full rating all the time (100 % rated).",
    ),
    *_flags("device", LINES, afci="Its device detects arcing (arc-fault circuit interrupter)."),
    *_flags(
        "device",
        places("charger load", LINES),
        rdc_dd="The charging point opens at 6 mA of direct residual current by itself (RDC-DD, IEC 62955).",
    ),
    *_flags("device", places("circuit"), tied="Its device opens together with the others of its group."),
    *_flags(
        "source",
        places("utility"),
        infinite="The supply is taken as unlimited: an upper bound for the largest fault, never for the smallest.",
    ),
    *_flags("source", places("transfer"), static="It transfers by semiconductors, within a part of a cycle."),
    *_flags("source", places("transfer disconnect"), manual="It is operated by hand."),
    *_flags(
        "source",
        places("inverter battery ups"),
        grid_following="It needs a grid to follow, and stops without one.",
        grid_forming="It makes a grid of its own.",
    ),
    *_flags(
        "wiring",
        places("feeder disconnect transfer"),
        normally_open="It stands open until a scenario closes it.",
    ),
    *_flags("wiring", LINES, together="All its sets lie in one raceway or cable."),
    *_flags("wiring", LINES, isolated_phases="Each of its legs runs in a raceway of its own."),
    *_flags("wiring", WIRING, nipple="The raceway is a nipple: too short to heat its wires (24 inch or less)."),
    *_flags("board", places(FACILITIES, WIRING), outdoor="It stands or runs outdoors."),
    *_flags(
        "board",
        places(ALL_BOARDS, "disconnect transfer"),
        service_equipment="It is marked as suitable for service equipment, and is used as such.",
    ),
    *_flags("board", places(ALL_BOARDS, "busway feeder"), double_neutral="Its neutral is twice the size of a leg."),
    *_flags(
        "board",
        places(ALL_BOARDS, "busway", LINES),
        isolated_ground="It has a ground of its own, isolated from the enclosure.",
    ),
    *_flags(
        "board",
        places("panel"),
        through_lugs="It has feed-through lugs at the far end of its bus: `NAME.through` feeds on from there.",
        subfeed_lugs="It has a second set of lugs beside the incoming ones: `NAME.subfeed` feeds on from there.",
    ),
)

ALL_STATEMENTS = (
    Word("wye", "The version of the language, in the first line of a file.", "wye 1"),
    Word(
        "project",
        "What the whole model is about: its name, code basis, frequency and targets.",
        'project "${1:Name}"\n  basis     ${2:us-2023}\n  frequency ${3:60 Hz}',
    ),
    Word("include", "Takes another file into the model.", 'include "${1:file.wye}"'),
    Word("type", "A pattern of equipment, taken over with `like`.", "type ${1:panel} ${2:LAB}  bus ${3:225 A}"),
    Word(
        "raceway",
        "A conduit, tray or trench with a name, which several feeders may share.",
        "raceway ${1:R-1} ${2:2 inch} ${3:EMT}  ${4:40 m}",
    ),
    Word(
        "feeder",
        "A line from one piece of equipment to another: device, wires, length.",
        "feeder ${1:MSB} -> ${2:LP-1}  ${3:225 A} ${4:3p}  ${5:3#4/0 + N #4/0 + G #4 Cu}  ${6:30 m}",
    ),
    Word(
        "scenario",
        "Switch positions with a name, in which every figure can be asked for.",
        'scenario "${1:On generator}"\n  off    ${2:UTIL}\n  switch ${3:ATS-1}.emergency',
    ),
    Word("expect", "A figure that must hold; `check` verifies it.", "expect ${1:LP-1} ${2:drop} <= ${3:3 %}"),
)

ALL_SMALL_WORDS = (
    Word("in", "The raceway the wires run in; behind an expectation, its scenario.", "in ${1:2 inch} ${2:EMT}"),
    Word("at", "Where the device sits: positions in a board, or a distance along a busway.", "at ${1:2,4}"),
    Word("leg", "The load on one leg of a circuit that loads its legs unequally.", "leg ${1:A} ${2:1.2 kVA}"),
    Word("all", "Every piece of equipment of a kind.", "all ${1:panel}"),
    Word("assume", "Marks a value that is assumed, not known; reports list it.", "assume "),
    Word("allow", "Accepts a finding; the reason is required.", 'allow ${1:rule} "${2:reason}"'),
    Word("claim", "Asks for an exception of the code, whose conditions are then checked.", "claim ${1:tap-25ft}"),
    Word(
        "issue",
        "An issue of the project: its name, its date, what for. The newest is the revision; without a date it is being "
        "prepared.",
        'issue ${1:A} ${2:2026-03-02} "${3:for review}"',
    ),
)

ALL_ACTIONS = (
    Word("on", "The source runs.", "on ${1:GEN}"),
    Word("off", "The source is out.", "off ${1:UTIL}"),
    Word("open", "The feeder's device is open.", "open ${1:MSB} -> ${2:LP-1}"),
    Word("close", "The feeder's device is closed.", "close ${1:TIE}"),
    Word(
        "switch", "The transfer switch takes this input; a UPS goes on its bypass.", "switch ${1:ATS-1}.${2:emergency}"
    ),
    Word("shed", "The load is switched off.", "shed ${1:LP-1}"),
    Word("scale", "The load below it is this share of its full value.", "scale ${1:LP-1} ${2:50 %}"),
)

ALL_ROLES = (
    Word("N", "the neutral", "N ${1:#4/0}"),
    Word("G", "the equipment ground", "G ${1:#4}"),
    Word("PE", "the protective conductor", "PE ${1:95 mm2}"),
    Word("PEN", "the protective conductor that is the neutral too", "PEN ${1:35 mm2}"),
    Word("IG", "the isolated ground", "IG ${1:#10}"),
)
"""What a wire added by `+` can be."""
