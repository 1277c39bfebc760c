"""What the trade calls the things of the language (common practice, no source), and how some of them are written.

A term stands here once: the parser names it where it is written for a word of the language, ``wyeline explain`` finds
the word by it, and completion offers the word for it.
"""

from __future__ import annotations

from typing import NamedTuple


class Term(NamedTuple):
    """Words of the trade, in small letters with hyphens for blanks, and what says them here.

    ``head`` is the kind, or statement, that a line begins with; ``words`` are what stands inside a line, several where
    the drafter has to say which is meant. ``about`` are words that say it in another way, for explaining alone.
    """

    spellings: tuple[str, ...]
    head: str = ""
    words: tuple[str, ...] = ()
    about: tuple[str, ...] = ()

    @property
    def says(self) -> tuple[str, ...]:
        """The words of the language that say it."""
        return (*((self.head,) if self.head else ()), *self.words, *self.about)


def _term(spellings: str, head: str = "", words: str = "", about: str = "") -> Term:
    return Term(tuple(spellings.split()), head, tuple(words.split()), tuple(about.split()))


TERMS = (
    _term("supply service grid mains poco utility-supply", "utility"),
    _term("genset gen standby-generator emergency-generator diesel", "generator"),
    _term(
        "pv solar photovoltaic photovoltaics pv-inverter solar-inverter pv-array pv-plant pv-system "
        "pv-panel pv-panels solar-panel solar-panels solar-array",
        "inverter",
    ),
    _term("ats mts sts transfer-switch automatic-transfer-switch changeover changeover-switch", "transfer"),
    _term("swgr", "switchgear"),
    _term("swbd main-board main-switchboard mdp mdb main-distribution-board", "switchboard"),
    _term(
        "panelboard panel-board loadcenter load-center load-centre distribution-board pnl board db subboard sub-board "
        "subpanel sub-panel consumer-unit lighting-panel",
        "panel",
    ),
    _term(
        "xfmr xfrmr xformer trafo dry-type-transformer step-up-transformer step-down-transformer isolation-transformer",
        "transformer",
    ),
    _term("motor-control-center motor-control-centre", "mcc"),
    _term("control-panel fire-alarm-panel fire-alarm-control-panel facp", "load"),
    _term("busduct bus-duct busbar-trunking", "busway"),
    _term("isolator safety-switch disconnect-switch disconnector", "disconnect"),
    _term("vfd vsd asd frequency-converter variable-frequency-drive", "drive"),
    _term("evse wallbox ev-charger charging-station charging-point ev-charging", "charger", "ev"),
    _term("cap-bank capacitor-bank pfc", "capacitor"),
    _term("jbox j-box junction-box pull-box splice-box gutter", "junction"),
    _term("meter-socket ct-cabinet kwh-meter", "meter"),
    _term("tvss surge-protector surge-arrester", "spd"),
    _term("cable", "feeder"),
    _term("conduit tray cable-tray trench", "raceway"),
    _term("rtu rooftop-unit roof-top-unit chiller condenser condensing-unit air-conditioner", "load", "cooling"),
    _term("hvac ac a/c aircon air-conditioning", "load", "cooling"),
    _term("ahu exhaust-fan supply-fan ventilation", "motor", "fan"),
    _term("code kva-code nema-code", "", "code-letter"),
    _term("lift lifts elevators", "motor", "elevator"),
    _term("water-heater wh ewh unit-heater boiler duct-heater baseboard", "load", "heating"),
    _term("heater heat htg", "load", "heating"),
    _term("recept recepts rcpt receptacles outlet outlets socket sockets socket-outlet", "load", "receptacle"),
    _term("light lights ltg lighting. luminaire luminaires", "load", "lighting"),
    _term("welder welders", "load", "welding"),
    _term("cooking cooker cookers oven ovens hob range stove stoves cooktop", "", "kitchen heating"),
    _term("machine machinery", "load", "process"),
    _term("equipment", "load"),
    _term("server servers rack", "load", "it"),
    _term("service-entrance service-rated suse", "", "service-equipment"),
    _term("feed-through feed-thru feed-through-lugs feed-thru-lugs thru-lugs ftl", "", "through-lugs"),
    _term("sub-feed-lugs subfeed double-lugs", "", "subfeed-lugs"),
    _term("empty blank", "", "space"),
    _term("unused", "", "spare space"),
    _term("rccb rcbo residual-current-device", "", "rcd"),
    _term("gfi ground-fault-circuit-interrupter", "", "gfci"),
    _term("arc-fault", "", "afci"),
    _term("breaker circuit-breaker mccb mcb mlo main-breaker main-lugs main-lugs-only", about="main curve frame"),
    _term("tap-rule tap-conductors exception", about="claim"),
    _term("voltages three-phase single-phase split-phase star delta", about="system"),
    _term(
        "high-leg red-leg wild-leg stinger-leg delta-high-leg high-leg-delta center-tapped-delta", about="high system"
    ),
    _term(
        "life-safety life-safety-branch essential essential-system emergency-power emergency-system",
        about="emergency legally-required",
    ),
    _term("conductors wires wire parallel-sets sets legs phases", about="feeder"),
    _term("interrupting-rating aic kaic sccr icu icn", about="rated"),
    _term("impedance percent-impedance uk", "", "z"),
    _term("grounding neutral-ground bonding bonding-jumper corner-grounded", about="ground neutral"),
    _term("earth-rod ground-rod grounding-electrode", about="electrode resistance"),
    _term("tn-s tn-c tn-c-s tt earthing-system", about="earthing"),
    _term("demand-factor demand-factors demand", about="factor"),
    _term("diversity-factor", about="diversity"),
    _term("maximum-demand peak-demand recorded metered", about="measured"),
    _term("soft-starter contactor across-the-line", about="starter"),
    _term("tie tie-breaker bus-tie main-tie-main key-interlock double-throw-switch", about="interlock normally-open"),
    _term("maintenance-bypass", about="ups"),
    _term("static-switch", about="static"),
    _term("multiwire multiwire-branch-circuit shared-neutral", about="with"),
    _term("handle-tie", about="tied"),
    _term("fused-disconnect non-fused-disconnect fused-switch", about="disconnect fused"),
    _term("furnace heat-trace snow-melt", about="heating load"),
    _term("dishwasher refrigerator fridge microwave disposer disposal", about="appliance kitchen process"),
    _term("clothes-dryer tumble-dryer", about="dryer"),
    _term("house home apartment flat residence residential dwelling-load", about="dwelling floor-area"),
    _term("multifamily multi-family apartments flats", about="dwelling"),
    _term("square-feet sq-ft sqft", about="floor-area"),
    _term("compressor crane hoist saw lathe machine-tool", about="motor"),
    _term("load-management energy-management", about="limit"),
    _term("open-delta zigzag autotransformer buck-boost vector-group", about="connection"),
    _term("k-factor k-rating", about="kfactor"),
    _term("harmonics harmonic triplen thd nonlinear non-linear nonlinear-load", about="third-harmonic kfactor"),
    _term("series-rating series-rated", about="series"),
    _term("derating bundling grouping", about="grouped ambient"),
    _term("burial burial-depth", about="buried"),
    _term("wireway conduit-fill sleeve duct", about="raceway"),
    _term("copper aluminum aluminium insulation nm-b nm-cable mc-cable pen", about="feeder"),
    _term("voltage-drop", about="drop-branch drop-path"),
    _term("short-circuit fault-current available-fault fault-level", about="fault fault-min"),
    _term("infinite-bus", about="infinite"),
    _term("nameplate letter data-sheet", about="per"),
    _term("power-factor", about="pf"),
    _term("drawing-issue revision-table date-of-issue", about="issue"),
    _term("drawn-by drafter", about="drawn"),
    _term("checked-by checker", about="checked"),
    _term("engineer-of-record design-engineer", about="engineer"),
    _term("room level building", about="location"),
    _term("nema nema-type enclosure-type ip-code ip-rating degree-of-protection", about="enclosure"),
    _term("weatherproof rainproof", about="outdoor enclosure"),
    _term("mounted surface-mounted flush-mounted wall-mounted floor-mounted pad-mounted recessed", about="mounting"),
    _term("panel-numbering circuit-numbers circuit-numbering", about="numbering"),
    _term("template like-for-like", about="type like"),
    _term("split-file several-files", about="include"),
    _term("switching operating-state maintenance-state", about="scenario"),
    _term("load-class class classes kind-of-load", about="lighting receptacle heating"),
)

BY_SPELLING: dict[str, Term] = {spelling: term for term in TERMS for spelling in term.spellings}

WRITTEN: dict[str, str] = {
    "transfer": """\
transfer    ATS-1                       400 A 4p, rated 42 kA, transition open
feeder MSB         -> ATS-1.normal  400 A 3p  4x500kcmil + G #3 Cu                   12 m
feeder GEN         -> ATS-1.emergency  400 A 3p  4x500kcmil + G #3 Cu                30 m
feeder ATS-1       -> EDP                4x500kcmil + G #3 Cu                        6 m
""",
    "inverter": """\
inverter    PV-1    480Y/277            50 kW, limit 1.1 pu, grid-following
feeder PV-1        -> MSB     80 A 3p    4#4 + G #8 Cu                               40 m
""",
    "generator": """\
generator   GEN     480Y/277            350 kVA, pf 0.8, subtransient 12 %, x/r 20, neutral bonded
feeder GEN         -> ATS-1.emergency  450 A 3p  2 sets 4#4/0 + G #2 Cu              30 m
""",
    "through-lugs": """\
panel       LP-1    208Y/120            bus 225 A, main 225 A, through-lugs
panel       LP-2    208Y/120            bus 225 A, main lugs
feeder LP-1.through -> LP-2              4#4/0 + G #4 Cu                             4 m
""",
    "subfeed-lugs": """\
panel       LP-1    208Y/120            bus 225 A, main lugs, subfeed-lugs
panel       LP-2    208Y/120            bus 225 A, main lugs
feeder LP-1.subfeed -> LP-2              4#4/0 + G #4 Cu                             4 m
""",
    "motor": """\
motor       P-1     460 3ph             15 hp, pf 0.86, eff 91 %, "Well pump"
feeder MSB         -> P-1     40 A 3p    3#8 + G #10 Cu                              30 m
panel       LP-1    480Y/277            bus 225 A, main 225 A
  1,3,5   20 A 3p   5 hp      motor               "Exhaust fan, or as a circuit"
""",
    "elevator": """\
motor       EL-1    460 3ph             25 hp, elevator, "Passenger elevator"
feeder MSB         -> EL-1    80 A 3p    3#4 + G #8 Cu                               40 m
""",
    "load": """\
load        RTU-1   480 3ph             mca 42 A, mocp 60 A, cooling, "Roof-top unit"
feeder MSB         -> RTU-1   60 A 3p    3#6 + G #10 Cu                              60 m
""",
    "charger": """\
charger     EV-1    208 1ph             7.2 kW, ev
feeder LP-1        -> EV-1    50 A 2p    2#6 + G #10 Cu                              40 m  at 2,4
panel       LP-1    208Y/120            bus 225 A, main 225 A
  1,3     50 A 2p   7.2 kW    ev                  "Charger, or as a circuit"
""",
    "rcd": """\
panel       UV-1    400Y/230            bus 63 A
  F1      16 A 1p+N 2 kW      receptacle          "Sockets"                  3G2.5mm2  20 m  curve B, rcd 30 mA
  F2      20 A 4p   11 kW     ev                  "Charger"                  5G6mm2  25 m  rcd 30 mA, rcd-type B
""",
    "gfci": """\
panel       LP-1    208Y/120            bus 225 A
  1       20 A 1p   180 VA count 2  receptacle    "Washrooms"                2#12 + G #12 Cu  20 m  gfci
""",
    "spare": """\
panel       LP-1    208Y/120            bus 225 A, spaces 42
  1       20 A 1p             spare
  2,4     30 A 2p             spare
""",
    "space": """\
panel       LP-1    208Y/120            bus 225 A, spaces 42
  5                           space
  7,9,11                      space
""",
    "panel": """\
panel       LP-1    208Y/120            bus 225 A, main 225 A, rated 10 kA, spaces 42, lug-temp 75 degC
  1       20 A 1p   1.2 kVA   lighting            "Lights, hall"             2#12 + G #12 Cu  24 m  in 3/4 inch EMT
  2,4     30 A 2p   4.5 kW    heating continuous  "Water heater"             2#10 + G #10 Cu  12 m  in 3/4 inch EMT
  3       20 A 1p   180 VA count 6  receptacle    "Outlets, hall"            2#12 + G #12 Cu  18 m  in 3/4 inch EMT
  5       20 A 1p             spare
  6                           space
panel       SP-1    120/240             bus 125 A, main 100 A
""",
    "main": """\
panel       LP-1    208Y/120            bus 225 A, main 200 A
panel       LP-2    208Y/120            bus 225 A, main lugs
""",
    "service-equipment": """\
switchboard MSB     480Y/277            bus 800 A, main 800 A, rated 42 kA, service-equipment
""",
    "issue": """\
project "Boathouse"
  drawn "T. Aune", engineer "R. Okafor, PE"
  issue A     2026-03-02  "for review", checked "R. Okafor"
  issue B     2026-04-14  "slip lights added", drawn "M. Kolb"
  issue C                 "for construction"
""",
    "claim": """\
feeder TX-1        -> LP-1               4#4/0 + G #4 Cu                             3 m
  claim tap-10ft
""",
    "allow": """\
feeder MSB         -> LP-9    60 A 3p    3#6 + G #10 Cu                              120 m
  allow branch-drop-high "Pump runs an hour a week; accepted by the owner"
""",
    "system": """\
panel       LP-1    208Y/120            // three-phase wye with its neutral
panel       SP-1    120/240             // single-phase, centre-tapped ("split-phase")
panel       DP-1    240/120 3ph         // delta with one winding centre-tapped: one leg is high
panel       KP-1    208Y/120 1ph        // two legs and the neutral of a wye
motor       M-1     480 3ph             // three wires; on a load the voltage of its nameplate
""",
    "feeder": """\
feeder MSB         -> LP-1    225 A 3p   3#4/0 + N #4/0 + G #4 Cu THWN-2             30 m  in 2-1/2 inch EMT
feeder MSB         -> LP-2    400 A 3p   2 sets 3#3/0 + N #3/0 + G #3 Cu THWN-2      40 m  in 2 inch EMT
feeder MSB[AB]     -> TX-1    100 A 2p   2#3 + G #8 Cu THWN-2                        20 m  in 1 inch EMT
""",
    "interlock": """\
feeder M-1: UTIL-A -> MSB     800 A 3p
feeder M-2: UTIL-B -> MSB     800 A 3p   normally-open
interlock   K-1                         at-most 1, among M-1, M-2
""",
}
"""How something is written, by the word of the language that says it: lines that stand in a model as they are."""


def term_of(typed: str) -> Term | None:
    """The term that was typed, whatever its case, with blanks or hyphens; None where it is none."""
    return BY_SPELLING.get("-".join(typed.lower().replace("-", " ").split()))
