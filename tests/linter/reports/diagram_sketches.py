"""Sketches for the tests of the diagram engine: a short way to write one, hand-made cases, and random ones."""

from __future__ import annotations

import random
from dataclasses import replace

from wyeline_linter.reports.diagram.sketch import Device, DeviceKind, Edge, Kind, Node, Sketch, Status, Winding

DELTA_WYE = (Winding("delta"), Winding("wye", True))


class Builder:
    """Collects nodes and edges; every text defaults to something of realistic length."""

    def __init__(self, title: str = "Drawn for a test") -> None:
        self.title = title
        self.nodes: list[Node] = []
        self.edges: list[Edge] = []

    def node(self, kind: Kind, tag: str, *lines: str, **more: object) -> str:
        line = len(self.nodes) + 1
        node = Node(tag, kind, tag, lines, source=f"plan.wye:{line}", working=f"#working-{tag}")
        self.nodes.append(replace(node, **more))  # type: ignore[arg-type]
        return tag

    def feed(self, source: str, target: str, breaker: str = "", *lines: str, **more: object) -> str:
        name = f"{source}-{target}-{len(self.edges)}"
        made = Device(DeviceKind.BREAKER, (breaker,)) if breaker else None
        edge = Edge(name, source, target, device=made, lines=lines, location=f"plan.wye:{100 + len(self.edges)}")
        self.edges.append(replace(edge, **more))  # type: ignore[arg-type]
        return name

    def sketch(self) -> Sketch:
        return Sketch(tuple(self.nodes), tuple(self.edges), self.title)


def station() -> Sketch:
    """A service with a transfer switch, a motor control centre, a photovoltaic plant and old equipment."""
    b = Builder("Quarry works, one-line diagram")
    b.node(Kind.UTILITY, "GRID", "12.47 kV, 3 wire", voltage="12.47 kV", fault="fault 8.2 kA")
    b.node(Kind.METER, "KWH-1", "Revenue meter")
    b.node(
        Kind.TRANSFORMER,
        "T-1",
        "1000 kVA",
        "12.47 kV – 480Y/277 V",
        "Z 5.75 %",
        windings=DELTA_WYE,
        fault="fault 19.8 kA",
    )
    b.node(Kind.SWITCHBOARD, "MSB", "1600 A bus, 65 kA", voltage="480Y/277 V", fault="fault 19.4 kA of 65 kA")
    b.feed("GRID", "KWH-1", "", "3#2 + G #6 Cu 15 kV", "40 m")
    b.feed("KWH-1", "T-1", "", "3#2 + G #6 Cu 15 kV", "12 m", device=Device(DeviceKind.FUSE, ("65E A",)))
    b.feed(
        "T-1",
        "MSB",
        "",
        "4 sets 3x500kcmil + N 500kcmil + G #3/0 Cu",
        "9 m",
        main=Device(DeviceKind.BREAKER, ("1200 A 3P",)),
    )
    b.node(Kind.GENERATOR, "GEN-1", "125 kVA standby", voltage="480Y/277 V", fault=None)
    b.node(Kind.TRANSFER, "ATS-1", "260 A, 4 pole")
    b.node(Kind.SWITCHBOARD, "EDP", "225 A bus", voltage="480Y/277 V", fault="fault 8.9 kA")
    b.feed("MSB", "ATS-1", "150 A 3P", "3#1/0 + N #1/0 + G #6 Cu", "16 m", to_port="normal")
    b.feed("GEN-1", "ATS-1", "150 A 3P", "3#2/0 + N #2/0 + G #4 Cu", "34 m", to_port="emergency")
    b.feed("ATS-1", "EDP", "", "3#1/0 + N #1/0 + G #6 Cu", "5 m")
    b.feed("MSB", "EDP", "150 A 4P", "3#1/0 + N #1/0 + G #6 Cu", "19 m", normally_open=True, to_port="bypass")
    b.node(Kind.TRANSFORMER, "T-E", "30 kVA, Z 3.9 %", "480 – 208Y/120 V", windings=DELTA_WYE)
    b.node(Kind.PANEL, "EP-1", "125 A bus, 10 kA", voltage="208Y/120 V", fault="fault 1.9 kA")
    b.node(Kind.UPS, "UPS-1", "20 kVA, 15 min")
    b.node(Kind.PANEL, "UP-1", "100 A bus", voltage="208Y/120 V", fault=None)
    b.node(Kind.MOTOR, "P-LS", "7-1/2 hp", "Lift station pump", voltage="460 V")
    b.feed("EDP", "T-E", "70 A 3P", "3#4 + G #6 Cu", "9 m")
    b.feed("T-E", "EP-1", "", "3#1/0 + N #1/0 + G #6 Cu", "4 m")
    b.feed("EDP", "UPS-1", "40 A 3P", "3#8 + G #10 Cu", "11 m")
    b.feed("UPS-1", "UP-1", "", "3#6 + N #6 + G #10 Cu", "5 m")
    b.feed("EDP", "P-LS", "20 A 3P", "3#12 + G #12 Cu", "42 m")
    b.node(Kind.MCC, "MCC-1", "600 A bus, 42 kA", voltage="480 V", fault="fault 14.1 kA")
    b.feed("MSB", "MCC-1", "400 A 3P", "2 sets 3#3/0 + G #3 Cu", "85 m")
    for number, power in enumerate(("40 hp", "40 hp", "15 hp", "1-1/2 hp"), 1):
        status = Status.FUTURE if number == 4 else Status.NEW
        b.node(Kind.MOTOR, f"P-{number}", power, "Dewatering pump", voltage="460 V", status=status)
        b.feed("MCC-1", f"P-{number}", "70 A 3P", "3#4 + G #8 Cu", "30 m", status=status)
    b.node(Kind.METER, "KWH-2", "Generation meter")
    b.node(Kind.INVERTER, "PV-1", "60 kW, follows the grid")
    b.feed("MSB", "KWH-2", "100 A 3P", "3#3 + G #8 Cu", "4 m")
    b.feed("KWH-2", "PV-1", "", "3#3 + G #8 Cu", "38 m")
    old = Status.EXISTING
    b.node(Kind.TRANSFORMER, "T-W", "45 kVA, 1974", windings=(Winding("delta"), Winding("")), status=old)
    b.node(Kind.PANEL, "BH-1", "225 A bus", voltage="240/120 V high leg", fault=None, status=old)
    b.node(Kind.MOTOR, "WINCH", "7-1/2 hp", status=old)
    b.node(Kind.MOTOR, "LATHE", "5 hp, goes in phase 2", status=Status.DEMOLISH)
    b.node(Kind.LOAD, "CABIN", "Site cabin, 6 kVA", status=Status.TEMPORARY)
    b.feed("MSB", "T-W", "70 A 3P", "3#4 + G #6 Cu", "68 m", status=old)
    b.feed("T-W", "BH-1", "", "3#1 + N #1 + G #6 Cu", "5 m", status=old)
    b.feed("BH-1", "WINCH", "50 A 3P", "3#8 + G #8 Cu", "26 m", status=old)
    b.feed("BH-1", "LATHE", "35 A 3P", "3#10 + G #10 Cu", "19 m", status=Status.DEMOLISH)
    b.feed("BH-1", "CABIN", "30 A 2P", "2#10 + N #10 + G #10 Cu", "45 m", status=Status.TEMPORARY)
    b.node(Kind.SPD, "SPD-1", "Type 2, 50 kA")
    b.feed("MSB", "SPD-1", "30 A 3P", "0.5 m")
    return b.sketch()


def double_ended() -> Sketch:
    """Two services, two main boards with a normally open tie, a busway and loads fed from both sides."""
    b = Builder("Cannery, one-line diagram")
    for side in "AB":
        b.node(Kind.UTILITY, f"NET-{side}", "10 kV, TN-S", fault="Ik 16 kA")
        b.node(Kind.TRANSFORMER, f"TR-{side}", "1000 kVA", "10 / 0.4 kV, Dyn11", "uk 6 %", windings=DELTA_WYE)
        b.node(Kind.SWITCHGEAR, f"MDB-{side}", "1600 A, Icw 50 kA", voltage="400Y/230 V", fault="Ik 22.6 kA")
        b.feed(
            f"NET-{side}", f"TR-{side}", "", "3x95 mm² Al 12 kV", "60 m", device=Device(DeviceKind.SWITCH, ("630 A",))
        )
        b.feed(
            f"TR-{side}",
            f"MDB-{side}",
            "",
            "4 sets 4x240 + PE 240 mm² Cu",
            "12 m",
            main=Device(DeviceKind.BREAKER, ("1600 A 4P",)),
        )
    b.feed("MDB-A", "MDB-B", "1600 A 4P", tie=True, normally_open=True)
    b.node(Kind.BUSWAY, "BD-1", "400 A, 60 m", voltage="400Y/230 V")
    b.feed("MDB-A", "BD-1", "400 A 4P", "5 m")
    for number in (1, 2, 3):
        b.node(Kind.PANEL, f"DB-{number}", "125 A", voltage="400Y/230 V", fault="Ik 9.4 kA")
        b.feed("BD-1", f"DB-{number}", "63 A 4P", f"tap at {15 * number} m", rank=15.0 * number)
    b.node(Kind.CAPACITOR, "C-1", "150 kvar, 7 % detuned")
    b.feed("MDB-A", "C-1", "315 A 3P", "3x150 + PE 95 mm² Cu", "6 m")
    b.node(Kind.TRANSFER, "CO-1", "250 A, 4 pole")
    b.feed("MDB-A", "CO-1", "250 A 4P", "4x120 + PE 70 mm² Cu", "22 m", to_port="normal")
    b.feed("MDB-B", "CO-1", "250 A 4P", "4x120 + PE 70 mm² Cu", "31 m", to_port="alternate")
    b.node(Kind.SWITCHBOARD, "ESB", "250 A", voltage="400Y/230 V", fault=None)
    b.feed("CO-1", "ESB", "", "4x120 + PE 70 mm² Cu", "8 m")
    b.node(Kind.DRIVE, "VFD-1", "22 kW")
    b.node(Kind.MOTOR, "CONV-1", "22 kW conveyor")
    b.feed("ESB", "VFD-1", "63 A 3P", "3x16 + PE 16 mm² Cu", "14 m")
    b.feed("VFD-1", "CONV-1", "", "3x10 + PE 10 mm² Cu, screened", "40 m")
    b.node(Kind.CHARGER, "EV-1", "22 kW")
    b.feed("ESB", "EV-1", "40 A 4P", "5x10 mm² Cu", "25 m")
    b.node(Kind.DISCONNECT, "QS-1", "125 A")
    b.node(Kind.LOAD, "OVEN", "75 kW")
    b.feed("MDB-B", "QS-1", "125 A 3P", "3x50 + PE 25 mm² Cu", "48 m")
    b.feed("QS-1", "OVEN", "", "3x50 + PE 25 mm² Cu", "2 m")
    b.node(Kind.PANEL, "DB-9", "160 A", voltage="400Y/230 V", fault="Ik 11.0 kA")
    b.feed("MDB-B", "DB-9", "160 A 4P", "4x70 + PE 35 mm² Cu", "37 m")
    return b.sketch()


def crowded_board(loads: int = 18) -> Sketch:
    """One motor control centre with many end loads."""
    b = Builder("Mill, one-line diagram")
    b.node(Kind.UTILITY, "GRID", voltage="480 V", fault=None)
    b.node(Kind.MCC, "MCC-7", "800 A bus, 42 kA", voltage="480 V", fault=None)
    b.feed("GRID", "MCC-7", "800 A 3P", "2 sets 3x500kcmil + G #1/0 Cu", "30 m")
    for number in range(loads):
        b.node(Kind.MOTOR, f"M-{number + 1}", "7-1/2 hp", "Conveyor, east side", voltage="460 V")
        b.feed("MCC-7", f"M-{number + 1}", "15 A 3P", "3#12 + G #12 Cu THWN-2", "24 m, 3/4 inch EMT")
    return b.sketch()


def single() -> Sketch:
    b = Builder("One piece of equipment")
    b.node(Kind.PANEL, "LP-1", "225 A bus", voltage=None, fault=None)
    return b.sketch()


def ring() -> Sketch:
    """Boards that feed one another in a circle, one that feeds itself, and a tie that cannot be drawn sideways."""
    b = Builder("A ring")
    for tag in "ABC":
        b.node(Kind.SWITCHBOARD, tag, "800 A bus")
    b.feed("A", "B", "400 A 3P", "50 m")
    b.feed("B", "C", "400 A 3P", "50 m")
    b.feed("C", "A", "400 A 3P", "50 m")
    b.feed("A", "A", "20 A 1P", "1 m")
    b.feed("A", "C", "400 A 3P", tie=True)
    return b.sketch()


_LEAVES = (Kind.MOTOR, Kind.LOAD, Kind.PANEL, Kind.CHARGER, Kind.SPD, Kind.CAPACITOR)
_BOARDS = (Kind.SWITCHBOARD, Kind.PANEL, Kind.MCC, Kind.BUSWAY)
_WORDS = ("225 A bus", "1600 A, 65 kA", "75 kVA, Z 4.4 %", "Conveyor, east side of the hall", "7-1/2 hp", "?")
_WIRES = ("3#12 + G #12 Cu THWN-2", "2 sets 3x250kcmil + N 250kcmil + G #2 Cu THWN-2", "4x120 + PE 70 mm² Cu", "")


def random_tree(seed: int, size: int) -> Sketch:
    """One service and what it feeds, every node with one supply."""
    r = random.Random(seed)
    b = Builder(f"Random tree {seed}")
    boards = [_random_service(b, r)]
    while len(b.nodes) < size:
        _random_branch(b, r, boards)
    return b.sketch()


def random_network(seed: int, size: int) -> Sketch:
    """Services with ties, transfer switches with generators, second supplies, and some plain trees."""
    r = random.Random(seed)
    b = Builder(f"Random network {seed}")
    boards = [_random_service(b, r) for _ in range(r.randint(1, 3))]
    for left, right in zip(list(boards), boards[1:], strict=False):
        if r.random() < 0.6:
            b.feed(left, right, "800 A 3P", tie=True, normally_open=r.random() < 0.7)
    while len(b.nodes) < size:
        if r.random() < 0.12:
            tag = b.node(Kind.TRANSFER, f"ATS-{len(b.nodes)}", "260 A, 4 pole")
            b.feed(r.choice(boards), tag, "200 A 3P", r.choice(_WIRES), to_port="normal")
            if r.random() < 0.6:
                source = b.node(Kind.GENERATOR, f"GEN-{len(b.nodes)}", "125 kVA", fault=None)
                b.feed(source, tag, "200 A 3P", r.choice(_WIRES), to_port="emergency")
            elif len(boards) > 1:
                b.feed(r.choice(boards), tag, "200 A 3P", to_port="emergency")
            board = b.node(r.choice(_BOARDS), f"ESB-{len(b.nodes)}", "400 A bus", fault=None)
            b.feed(tag, board, "", r.choice(_WIRES))
            boards.append(board)
        else:
            _random_branch(b, r, boards)
    for _ in range(r.randint(0, 2)):
        source, target = sorted(r.sample(range(len(boards)), 2)) if len(boards) > 1 else (0, 0)
        if source != target:
            b.feed(boards[source], boards[target], "100 A 3P", r.choice(_WIRES), normally_open=True)
    return b.sketch()


def _random_service(b: Builder, r: random.Random) -> str:
    n = len(b.nodes)
    above = b.node(Kind.UTILITY, f"NET-{n}", voltage="12.47 kV", fault=r.choice(("fault 8 kA", None)))
    if r.random() < 0.7:
        tag = b.node(Kind.TRANSFORMER, f"T-{n}", "1000 kVA", "Z 5.75 %", windings=DELTA_WYE)
        b.feed(above, tag, "", r.choice(_WIRES))
        above = tag
    board = b.node(Kind.SWITCHGEAR, f"MSB-{n}", "1600 A bus, 65 kA", voltage="480Y/277 V", fault=None)
    b.feed(above, board, "", r.choice(_WIRES), main=Device(DeviceKind.BREAKER, ("1600 A 3P",)))
    return board


def _random_branch(b: Builder, r: random.Random, boards: list[str]) -> None:
    above, device = r.choice(boards), f"{r.choice((20, 70, 225))} A 3P"
    status = r.choice(list(Status)) if r.random() < 0.2 else Status.NEW
    for kind in (Kind.TRANSFORMER, Kind.DISCONNECT, Kind.METER, Kind.JUNCTION):
        if r.random() < 0.15:
            tag = b.node(kind, f"{kind[:2].upper()}-{len(b.nodes)}", r.choice(_WORDS), status=status)
            b.feed(above, tag, device, r.choice(_WIRES), f"{r.randint(2, 90)} m", status=status)
            above, device = tag, ""
    board = r.random() < 0.25
    kind = r.choice(_BOARDS if board else _LEAVES)
    tag = b.node(
        kind, f"{kind[:2].upper()}-{len(b.nodes)}", r.choice(_WORDS), voltage=r.choice((None, "480 V")), status=status
    )
    fuse = Device(DeviceKind.FUSE, ("60 A",)) if r.random() < 0.2 else None
    more: dict[str, object] = {"device": fuse} if fuse else {}
    b.feed(above, tag, device, r.choice(_WIRES), f"{r.randint(2, 90)} m", status=status, rank=r.randint(0, 3), **more)
    if board:
        boards.append(tag)
