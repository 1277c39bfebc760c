"""The kinds of equipment and the other statements that take phrases: data of the attribute table.

Sane ranges are what is built and sold (common practice, no source).
"""

from __future__ import annotations

from wyeline_grammar.attribute_types import Kind, Place, Unkeyed, quantity


def _rating(doc: str, low: str, high: str) -> Unkeyed:
    return Unkeyed("rating", doc, quantity(low, high))


def _power(doc: str, *ranges: tuple[str, str]) -> tuple[Unkeyed, ...]:
    return tuple(Unkeyed("power", doc, quantity(low, high)) for low, high in ranges)


def _length(doc: str, low: str, high: str) -> Unkeyed:
    return Unkeyed("length", doc, quantity(low, high))


_VA_W = (("1 VA", "5 MVA"), ("1 W", "5 MW"))
_LOAD_POWER = _power("its load", *_VA_W, ("1 var", "5 Mvar"))
_BATTERY = (
    Unkeyed("capacity", "its capacity", quantity("0.5 kWh", "500 MWh")),
    Unkeyed("capacity", "its capacity", quantity("1 Ah", "50000 Ah")),
)

ALL_KINDS = (
    Kind(
        "utility",
        "The supply from the utility, at the voltage it delivers: a source with a fault level that only its owner can "
        "give. A transformer that the utility owns is part of it.",
        "one",
        (),
        "utility ${1:UTIL} ${2:480Y/277}",
        system=True,
    ),
    Kind(
        "generator",
        "A generator set: a source that feeds far less fault current than a utility.",
        "one",
        _power("its rating", ("1 kVA", "20 MVA"), ("1 kW", "20 MW")),
        "generator ${1:GEN} ${2:480Y/277}  ${3:350 kVA}, pf ${4:0.8}, neutral ${5:bonded}",
        system=True,
    ),
    Kind(
        "inverter",
        "An inverter of a photovoltaic plant or a battery; it feeds little more than its rated current into a fault.",
        "either",
        (
            *_power("its rating", ("100 VA", "20 MVA"), ("100 W", "20 MW")),
            _rating("its largest continuous current", "1 A", "6000 A"),
        ),
        "inverter ${1:PV-1} ${2:480 3ph}  ${3:100 kW}, limit ${4:1.1 pu}, ${5:grid-following}",
        system=True,
    ),
    Kind(
        "battery",
        "A battery, at its direct-current terminals.",
        "one",
        (*_BATTERY, *_power("the power it can give", ("100 W", "500 MW"))),
        "battery ${1:BAT-1} ${2:380 dc}  ${3:200 kWh}",
        system=True,
    ),
    Kind(
        "ups",
        "An uninterruptible power supply, with its input and its output system.",
        "either",
        _power("its output rating", ("300 VA", "5 MVA"), ("300 W", "5 MW")),
        "ups ${1:UPS-1} ${2:480Y/277} -> ${3:208Y/120}  ${4:80 kVA}, eff ${5:94 %}, autonomy ${6:15 min}",
        ports=(("bypass", "the input of its bypass, static or for maintenance, at the voltage of its output"),),
        system=True,
    ),
    Kind(
        "transfer",
        "A transfer switch between a normal and an alternate source.",
        "one",
        (_rating("its rating", "15 A", "6300 A"),),
        "transfer ${1:ATS-1}  ${2:400 A} ${3:4p}, rated ${4:42 kA}, transition ${5:open}",
        ports=(("normal", "the input of the normal source"), ("emergency", "the input of the alternate source")),
    ),
    Kind(
        "switchgear",
        "Metal-enclosed switchgear with draw-out devices, low or medium voltage.",
        "one",
        (),
        "switchgear ${1:SWGR-1} ${2:480Y/277}  bus ${3:3000 A}, main ${4:3000 A}, rated ${5:65 kA}",
        board=True,
    ),
    Kind(
        "switchboard",
        "A switchboard: the floor-standing board that feeds the panels.",
        "one",
        (),
        "switchboard ${1:MSB} ${2:480Y/277}  bus ${3:1200 A}, main ${4:1000 A}, rated ${5:65 kA}",
        board=True,
    ),
    Kind(
        "mcc",
        "A motor control centre: a board whose units start and guard motors.",
        "one",
        (),
        "mcc ${1:MCC-1} ${2:480 3ph}  bus ${3:800 A}, rated ${4:65 kA}",
        board=True,
    ),
    Kind(
        "panel",
        "A panelboard or distribution board: circuits in numbered or labelled positions.",
        "one",
        (),
        "panel ${1:LP-1} ${2:208Y/120}  bus ${3:225 A}, main ${4:200 A}, rated ${5:10 kA}, spaces ${6:42}",
        ports=(
            ("through", "its feed-through lugs, at the far end of the bus"),
            ("subfeed", "its second set of lugs, beside the incoming ones"),
        ),
        board=True,
    ),
    Kind(
        "busway",
        "A busway: enclosed busbars along a run, with devices plugged in at distances.",
        "one",
        (_rating("its rating", "60 A", "6500 A"), _length("its length", "0.5 m", "1000 m")),
        "busway ${1:BW-1}  ${2:800 A}, ${3:60 m}, withstand ${4:42 kA}",
    ),
    Kind(
        "disconnect",
        "A disconnect switch, fused or not.",
        "one",
        (_rating("its rating", "15 A", "6300 A"),),
        "disconnect ${1:DS-1}  ${2:60 A} ${3:3p}",
    ),
    Kind(
        "transformer",
        "A transformer: what it makes on its secondary side is a voltage system of its own.",
        "two",
        _power("its rating", ("50 VA", "200 MVA")),
        "transformer ${1:TX-1} ${2:480 3ph} -> ${3:208Y/120}  ${4:75 kVA}",
        system=True,
    ),
    Kind(
        "motor",
        "A motor fed by a line of its own.",
        "one",
        _power("its rating at the shaft", ("20 W", "20 MW")),
        "motor ${1:P-1} ${2:460 3ph}  ${3:15 hp}, pf ${4:0.86}, eff ${5:91 %}",
    ),
    Kind(
        "drive",
        "A variable-speed drive with its motor.",
        "either",
        (
            *_power("the motor's rating", ("50 W", "20 MW")),
            *_power("its input rating", ("50 VA", "20 MVA")),
            _rating("its rated input current", "0.5 A", "3000 A"),
        ),
        "drive ${1:VFD-1} ${2:480 3ph}  ${3:15 hp}, eff ${4:95 %}",
    ),
    Kind(
        "load",
        "A load with a name of its own; its voltage is its nameplate's.",
        "one",
        _power("its load", *_VA_W, ("1 var", "5 Mvar")),
        "load ${1:CHILLER} ${2:480 3ph}  ${3:90 kW}, pf ${4:0.86}, ${5:cooling}",
    ),
    Kind(
        "charger",
        "A charger: of a battery plant (`400Y/230 -> 380 dc`) or of vehicles; taken as continuous.",
        "either",
        _power("its rating", ("100 VA", "5 MVA"), ("100 W", "5 MW")),
        "charger ${1:EV-1} ${2:208 1ph}  ${3:7.2 kW}, ${4:ev}",
        system=True,
    ),
    Kind(
        "capacitor",
        "A capacitor bank for power factor.",
        "one",
        _power("its rating", ("100 var", "100 Mvar")),
        "capacitor ${1:CAP-1} ${2:480 3ph}  ${3:100 kvar}, stages ${4:4}",
    ),
    Kind(
        "junction",
        "A junction box, gutter or splice: a place where lines meet without a device.",
        "one",
        (_rating("its rating", "10 A", "6300 A"),),
        "junction ${1:JB-1}",
    ),
    Kind(
        "meter",
        "A meter or current-transformer cabinet in the line.",
        "one",
        (_rating("its rating", "1 A", "6300 A"),),
        "meter ${1:M-1}  ${2:200 A}",
    ),
    Kind(
        "spd",
        "A surge protective device.",
        "one",
        (_rating("its surge current", "1 kA", "1000 kA"),),
        "spd ${1:SPD-1} ${2:480Y/277}  ${3:100 kA}, mcov ${4:320 V}",
    ),
    Kind(
        "system",
        "A voltage system with a name: wherever a voltage stands, the name may stand.",
        "one",
        (),
        "system ${1:S480} ${2:480Y/277}  ground-resistor ${3:5 A}",
        system=True,
    ),
    Kind(
        "interlock",
        "Devices of which only so many may be closed at once.",
        "none",
        (),
        "interlock ${1:MTM}  at-most ${2:2}, among ${3:M-1, M-2, TIE}",
    ),
)

ALL_PLACES = (
    Place("project", "a project", ()),
    Place("issue", "an issue", ()),
    Place("raceway", "a raceway", (_length("its length", "0.05 m", "3000 m"),)),
    Place(
        "feeder",
        "a feeder",
        (
            _rating("its device's rating", "0.5 A", "6300 A"),
            _length("its route length", "0.05 m", "3000 m"),
        ),
    ),
    Place(
        "circuit",
        "a circuit",
        (
            _rating("its device's rating", "0.5 A", "6300 A"),
            *_LOAD_POWER,
            _length("its route length", "0.05 m", "3000 m"),
        ),
    ),
    Place("scenario", "a scenario", ()),
    Place("expect", "an expectation", ()),
)
