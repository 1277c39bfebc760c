"""Each US table against physics, its own order, and its sister tables.

A table without a check here fails `test_every_table_has_a_check`.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

import pytest

from wyeline_linter.conductor_sizes import MM2_PER_CIRCULAR_MIL, area_mm2, circular_mils
from wyeline_linter.conductors import thermal_k
from wyeline_linter.standard_ratings import horsepower
from wyeline_linter.tables import ANY, Looked, Table, basis

US = basis("us-2023")
CHECKS: dict[str, Callable[[Table], None]] = {}
METRIC = dict(
    zip(
        ("3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"),
        (12, 16, 21, 27, 35, 41, 53, 63, 78, 91, 103, 129, 155),
        strict=True,
    )
)
"""Metric designators of trade sizes: NEC Table 300.1(C), from memory."""
WALLS_MIL = {
    "thhn": (("12", 19), ("10", 24), ("6", 35), ("2", 46), ("4/0", 57), ("500 kcmil", 68), ("1000 kcmil", 79)),
    "xhhw": (("10", 30), ("2", 45), ("4/0", 55), ("500 kcmil", 65), ("1000 kcmil", 80), ("2000 kcmil", 95)),
}
"""Insulation of a wire in mil, by the largest size: NEC 310.4, of THHN with its nylon (15 + 4, 20 + 4, 30 + 5, 40 + 6,
50 + 7, 60 + 8, 70 + 9); from memory."""


def check(name: str) -> Callable[[Callable[[Table], None]], Callable[[Table], None]]:
    def register(function: Callable[[Table], None]) -> Callable[[Table], None]:
        CHECKS[name] = function
        return function

    return register


def table(name: str) -> Table:
    found = US.table(name)
    assert isinstance(found, Table)
    return found


def column(t: Table, name: str) -> dict[str, float]:
    """Numbers of a column by the first key."""
    place = t.columns.index(name)
    return {key[0]: v for key, cells in t.rows.items() if isinstance(v := cells[place], float)}


def rising(values: list[float], *, strictly: bool = True) -> None:
    assert all(a < b if strictly else a <= b for a, b in pairwise(values)), values


@pytest.mark.parametrize("name", US.table_names)
def test_table_structure(name: str) -> None:
    assert name in CHECKS, "every table needs a structural check"
    CHECKS[name](table(name))


def test_every_table_has_a_check() -> None:
    assert set(CHECKS) == set(US.table_names)


@check("about")
def _(t: Table) -> None:
    assert t.rows[("practice",)] == ("us",)


@check("ampacity")
def _(t: Table) -> None:
    assert list(t.rows) == sorted(t.rows, key=lambda key: area_mm2(key[0]))
    for name in t.columns:
        rising(list(column(t, name).values()))
        assert all(amps % 5 == 0 for amps in column(t, name).values())  # the table is printed to 5 A
    for metal, none_c in (("cu", 234.5), ("al", 228.1)):  # degC below zero where no resistance would be left
        a60, a75, a90 = (column(t, f"{metal}_{c}") for c in (60, 75, 90))
        for size in a75:
            # Heat balance over 30 degC: I^2 R grows with the rise, R with the temperature. Within the rounding to 5 A.
            for c, amps in ((60, a60[size]), (90, a90[size])):
                share = math.sqrt((c - 30) / 45 * (75 + none_c) / (c + none_c))
                assert amps == pytest.approx(share * a75[size], abs=2.7), (size, c)
    for c in (60, 75, 90):
        cu, al = column(t, f"cu_{c}"), column(t, f"al_{c}")
        # Equal heat: the ratio is the root of the resistivities' ratio (1.64), 0.78; rounding widens small sizes.
        assert all(0.71 < al[size] / cu[size] < 0.88 for size in al)
    amps = column(t, "cu_75")
    exponents = [math.log(amps[b] / amps[a]) / math.log(area_mm2(b) / area_mm2(a)) for a, b in pairwise(amps)]
    assert all(0.15 < e < 0.95 for e in exponents), exponents


@check("ambient-correction")
def _(t: Table) -> None:
    for c in (60, 75, 90):
        factors = column(t, f"f{c}")
        for up_to, factor in factors.items():
            # NEC 310.15(B)(1): sqrt((Tc - Ta') / (Tc - 30)) at the warm end of the row.
            assert factor == pytest.approx(math.sqrt((c - float(up_to)) / (c - 30)), abs=0.0051)
        assert max(map(float, factors)) < c


@check("bundling")
def _(t: Table) -> None:
    falling = [value for _, value in sorted((n, t.rows[key][0]) for n, key in t.numeric_keys)]
    assert falling[0] == 100 and all(a > b for a, b in pairwise(falling))
    assert t.numeric_keys[-1][0] == math.inf


@check("small-conductors")
def _(t: Table) -> None:
    for metal in ("cu", "al"):
        for size, amps in column(t, metal).items():
            own = US.number("ampacity", (size,), f"{metal}_60")
            assert isinstance(own, Looked) and amps <= own.value


@check("insulation-types")
def _(t: Table) -> None:
    for key, (dry, wet, area) in t.rows.items():
        assert dry in (60, 75, 90) or key[0] == "bare"
        assert wet is None or (isinstance(wet, float) and isinstance(dry, float) and wet <= dry)
        assert area is None or area == "bare" or area in table("conductor-areas").columns


@check("conductor-properties")
def _(t: Table) -> None:
    for metal, low, high in (("cu", 12.6, 13.1), ("al", 20.9, 21.7)):
        mils, dc = column(t, "circular_mils"), column(t, f"dc_{metal}")
        # Resistance times area is the resistivity, ohm circular mil per foot at 75 degC.
        assert all(low < dc[s] * mils[s] / 1000 < high for s in dc)
    for size, mils in column(t, "circular_mils").items():
        if "kcmil" in size:
            assert mils == float(size.split()[0]) * 1000
        else:  # American wire gauge (ASTM B258): diameter 5 mil x 92 ** ((36 - n) / 39)
            n = int(size) if size.isdigit() else 1 - int(size[0])
            assert mils == pytest.approx((5 * 92 ** ((36 - n) / 39)) ** 2, rel=0.0025)
    for size, bare in column(t, "bare_area_in2").items():
        metal_in2 = circular_mils(size) * math.pi / 4 * 1e-6
        assert bare / metal_in2 == pytest.approx(1.3, rel=0.1 if bare > 0.02 else 0.2)  # gaps between strands


@check("conductor-impedance")
def _(t: Table) -> None:
    properties = table("conductor-properties")
    for metal in ("cu", "al"):
        dc = column(properties, f"dc_{metal}")
        pvc, alu, steel = (column(t, f"r_{metal}_{c}") for c in ("pvc", "aluminum", "steel"))
        for size, r in pvc.items():
            skin = 1.0 if circular_mils(size) < 400_000 else 1.25
            assert r == pytest.approx(dc[size], rel=0.06) or dc[size] * 0.94 < r < dc[size] * skin, size
            assert r <= steel[size] <= alu[size] * 1.01
            assert r >= float(f"{dc[size]:.2g}"), size  # alternating current meets no less
            assert all(ohm == float(f"{ohm:.2g}") for ohm in (r, alu[size], steel[size])), size  # printed to two digits
        for values in (pvc, alu, steel):
            assert all(a > b for a, b in pairwise(values.values()))
    free, steel_x = column(t, "x_pvc"), column(t, "x_steel")
    assert all(steel_x[s] / free[s] == pytest.approx(1.25, abs=0.03) for s in free)
    assert all(0.03 < x < 0.06 for x in free.values())
    assert list(t.rows) == sorted(t.rows, key=lambda key: area_mm2(key[0]))


@check("conductor-areas")
def _(t: Table) -> None:
    bare = column(table("conductor-properties"), "bare_area_in2")
    for name, walls in WALLS_MIL.items():
        areas = column(t, name)
        rising(list(areas.values()))
        for size, area in areas.items():
            wall_mil = 1000 * (math.sqrt(area / math.pi) - math.sqrt(bare[size] / math.pi))
            expected = next(mil for largest, mil in walls if circular_mils(size) <= circular_mils(largest))
            # The bare areas of small wires are rounded to 0.001 square inch, which is up to 3 mil.
            assert wall_mil == pytest.approx(expected, abs=0.5 if bare[size] > 0.03 else 3), (name, size)


@check("raceway-fill")
def _(t: Table) -> None:
    limit = column(t, "percent")
    # Circles in a circle: two equal ones can take at most 50 percent, one may take all of it.
    assert limit["two"] < limit["over two"] < limit["one"] < limit["nipple"] < 100
    assert limit["two"] < 50


@check("raceway-sizes")
def _(t: Table) -> None:
    by_kind: dict[str, list[tuple[str, float, float, float]]] = {}
    for (kind, trade), (metric, diameter, area) in t.rows.items():
        assert isinstance(metric, float) and isinstance(diameter, float) and isinstance(area, float)
        assert area == pytest.approx(math.pi / 4 * diameter**2, abs=0.0016), (kind, trade)
        assert metric == METRIC[trade], (kind, trade)
        by_kind.setdefault(kind, []).append((trade, metric, diameter, area))
    for rows in by_kind.values():
        rising([metric for _, metric, _, _ in rows])
        rising([area for *_, area in rows])
    inside = {(kind, trade): d for kind, rows in by_kind.items() for trade, _, d, _ in rows}
    for trade in ("1/2", "1", "2", "4"):  # walls: thick plastic < plastic < rigid steel < thinner steel
        assert inside["PVC-80", trade] < inside["PVC-40", trade] < inside["RMC", trade] < inside["IMC", trade]


@check("device-ratings")
def _(t: Table) -> None:
    rising([float(key[0]) for key in t.rows])
    assert all(value in (1, None) for cells in t.rows.values() for value in cells)
    assert all(cells[1] == 1 for cells in t.rows.values())  # whatever a breaker has, a fuse has
    steps = [float(key[0]) for key, cells in t.rows.items() if cells[0] is not None]
    assert (len(steps), steps[0], steps[-1]) == (37, 15, 6000)


@check("equipment-grounding")
def _(t: Table) -> None:
    for name in ("cu", "al"):
        sizes = [str(cells[t.columns.index(name)]) for cells in t.rows.values()]
        rising([area_mm2(size) for size in sizes], strictly=False)  # 2500 and 3000 A share an aluminium size
    ratings = table("device-ratings").rows
    for (device,), (cu, al) in t.rows.items():
        assert (device,) in ratings
        # Aluminium carries the same fault with 1.5 to 1.7 times the area.
        assert 1.25 <= area_mm2(str(al)) / area_mm2(str(cu)) <= 1.8


@check("electrode-conductor")
def _(t: Table) -> None:
    _by_area(t)
    assert list(t.rows)[-1] == (ANY, ANY)


@check("bonding-jumper")
def _(t: Table) -> None:
    _by_area(t)
    # Below 1100 kcmil its steps are those of the electrode conductor.
    electrode = table("electrode-conductor")
    assert all(electrode.rows[key] == cells for key, cells in t.rows.items())
    # The 12.5 percent rule above the table continues it: 12.5 percent of 1100 kcmil is 2/0 within 4 percent.
    last_cu = circular_mils(str(list(t.rows.values())[-1][0]))
    assert last_cu == pytest.approx(0.125 * 1_100_000, rel=0.04)


def _by_area(t: Table) -> None:
    for place in (0, 1):
        limits = [key[place] for key in t.rows if key[place] != ANY]
        rising([area_mm2(limit) for limit in limits])
        rising([area_mm2(str(cells[place])) for cells in t.rows.values()])
    assert all(area_mm2(str(al)) > area_mm2(str(cu)) for cu, al in t.rows.values())


@check("transformer-protection-lv")
def _(t: Table) -> None:
    percent = {key: cells[0] for key, cells in t.rows.items()}
    ladder = [percent["primary only", "primary", n] for n in ("9", "2", "0")]
    assert ladder == sorted(ladder, key=lambda p: p if isinstance(p, float) else 0)  # smaller current, larger share
    assert all(cells[1] in (0, 1) for cells in t.rows.values())
    # 125 percent may be rounded up, every larger share may not.
    assert all((cells[1] == 1) == (cells[0] == 125) for cells in t.rows.values())


@check("transformer-protection-mv")
def _(t: Table) -> None:
    for key, cells in t.rows.items():
        breaker, fuse = cells[0], cells[1]
        assert isinstance(breaker, float) and isinstance(fuse, float) and fuse < breaker, key
    for impedance in ("6", "10"):  # supervision changes what is allowed behind at low voltage only
        assert t.rows["any", impedance][:4] == t.rows["supervised", impedance][:4]
    for place in range(4):  # more impedance, less current, smaller or equal share
        low, high = t.rows["any", "6"][place], t.rows["any", "10"][place]
        assert isinstance(low, float) and isinstance(high, float) and high <= low


@check("motor-current-1ph")
def _(t: Table) -> None:
    _motor_currents(t, {"v200": 230 / 200, "v208": 1.1, "v115": 2.0})


@check("motor-current-3ph")
def _(t: Table) -> None:
    _motor_currents(t, {"v200": 230 / 200, "v208": 1.1, "v115": 2.0, "v460": 0.5, "v575": 0.4, "v2300": 0.1})
    by_460 = column(t, "v460")
    for hp in by_460.keys() - column(t, "v230").keys():  # above 200 hp; 350 hp at 575 V is printed as 336
        for name, ratio, slack in (("v575", 0.8, 5.0 if hp == "350" else 0.5), ("v2300", 0.2, 0.5)):
            assert column(t, name)[hp] == pytest.approx(ratio * by_460[hp], abs=slack), (hp, name)
    # Watts out over volt-amperes in, 460 V: between 0.45 for half a horsepower and 0.95.
    for hp, amps in column(t, "v460").items():
        assert 0.4 < horsepower(hp) * 0.7457 / (math.sqrt(3) * 0.460 * amps) < 0.95


def _motor_currents(t: Table, ratio: dict[str, float]) -> None:
    rising([horsepower(key[0]) for key in t.rows])
    by_230 = column(t, "v230")
    for name in t.columns:
        amps = column(t, name)
        rising(list(amps.values()))
        for hp in amps.keys() & by_230.keys():
            if name in ratio:  # 208 V is printed as 110 %; large ones to the ampere, at 2300 V upwards
                slack = 1.25 if name == "v2300" else 0.105 if by_230[hp] < 20 else 0.65
                assert amps[hp] == pytest.approx(ratio[name] * by_230[hp], abs=slack), (hp, name)


@check("motor-device-limits")
def _(t: Table) -> None:
    for key, (fuse, dual, instant, inverse) in t.rows.items():
        assert isinstance(fuse, float) and isinstance(dual, float)
        assert isinstance(instant, float) and isinstance(inverse, float)
        assert dual <= inverse <= instant and dual <= fuse, key


@check("code-letters")
def _(t: Table) -> None:
    letters = [key[0] for key in t.rows]
    assert letters == sorted(letters) and not {"I", "O", "Q"} & set(letters)
    for (_, high), (low, _) in pairwise(t.rows.values()):
        assert isinstance(high, float) and isinstance(low, float)
        assert low - high == pytest.approx(0.01), (high, low)  # the ranges touch


@check("receptacle-demand")
def _(t: Table) -> None:
    assert list(t.rows.items()) == [(("0",), (100.0,)), (("10000",), (50.0,))]


@check("dwelling-lighting-demand")
def _(t: Table) -> None:
    assert list(t.rows.items()) == [(("0",), (100.0,)), (("3000",), (35.0,)), (("120000",), (25.0,))]


@check("cooking-demand")
def _(t: Table) -> None:
    for name, until in (("a", 60), ("b", 15)):
        shares = list(column(t, name).values())
        assert all(x >= y for x, y in pairwise(shares)) and shares[0] == 80, name
        # One more takes no load away; column B steps down at 16 and 21, and every ten from 31 on, as it is printed.
        rising([n * share for n, share in enumerate(shares[:until], 1)], strictly=False)
    kilowatts = list(column(t, "c").values())
    rising(kilowatts)
    # 15 kW and 1 kW each from five on; 25 kW and three quarters each above forty.
    assert [round(y - x, 2) for x, y in pairwise(kilowatts)] == [3] * 4 + [1] * 35 + [0.75] * 20


@check("multifamily-demand")
def _(t: Table) -> None:
    shares = column(t, "percent")
    rising([float(n) for n in shares])
    assert list(shares.values()) == [float(p) for p in range(45, 22, -1)]


@check("dryer-demand")
def _(t: Table) -> None:
    _falling_shares_rising_loads(t, whole_until=4)


@check("kitchen-demand")
def _(t: Table) -> None:
    _falling_shares_rising_loads(t, whole_until=2)


def _falling_shares_rising_loads(t: Table, *, whole_until: int) -> None:
    shares = column(t, "percent")
    assert [int(n) for n in shares] == list(range(1, len(shares) + 1))
    values = list(shares.values())
    assert all(a >= b for a, b in pairwise(values)) and all(v == 100 for v in values[:whole_until])


@check("constants")
def _(t: Table) -> None:
    for (name,), cells in t.rows.items():
        value, unit, clause, meaning = cells
        assert clause and meaning and (isinstance(value, float) or unit or area_mm2(str(value))), name
        if unit == "%":
            assert isinstance(value, float) and 0 < value <= 140, name
    # Both coefficients are those of IEC 60287 at 20 degC moved to 75 degC: a / (1 + 55 a).
    for metal, at_20 in (("cu", 0.00393), ("al", 0.00403)):
        found = US.constant(f"temperature-coefficient-{metal}")
        assert isinstance(found, Looked) and found.value == pytest.approx(at_20 / (1 + 55 * at_20), rel=0.003)


@check("transformer-sizes")
def _(t: Table) -> None:
    for name in ("one", "three"):
        sizes = [float(key) for key in column(t, name)]
        rising(sizes)
        assert all(b / a <= 2 for a, b in pairwise(sizes))
    three = column(t, "three")
    # A bank of three usual single-phase units is a usual three-phase size.
    assert all(
        f"{3 * kva:g}" in three for kva in (1, 2, 3, 5, 10, 15, 25, 37.5, 50, 75, 100, 167 - 1 / 3, 250) if kva < 160
    )


def test_metric_and_gauge_sizes_agree() -> None:
    """Usual metric neighbours of gauge sizes (IEC 60228 beside ASTM B258)."""
    assert area_mm2("12") == pytest.approx(3.31, abs=0.01)
    assert area_mm2("4/0") == pytest.approx(107.2, abs=0.05)
    assert area_mm2("250 kcmil") == pytest.approx(126.7, abs=0.05)
    assert area_mm2("10") < area_mm2("6 mm2") < area_mm2("8")
    assert pytest.approx(0.000506707, rel=1e-5) == MM2_PER_CIRCULAR_MIL
    # Table 8 in ohm/km at 75 degC against IEC 60228 at 20 degC scaled by area and temperature: one metal.
    iec_95 = 0.193 * (1 + 0.00393 * 55)
    us_3_0 = 0.0766 / 0.3048
    assert us_3_0 * area_mm2("3/0") == pytest.approx(iec_95 * 95, rel=0.06)
    assert thermal_k("Cu", initial_c=70, final_c=160) == pytest.approx(115, abs=0.5)


@pytest.mark.parametrize("text", ["#12", "1/0 AWG", "5/0", "250kcmil", "250", "2,5 mm2", ""])
def test_what_is_no_size_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="is not a conductor size"):
        circular_mils(text)
