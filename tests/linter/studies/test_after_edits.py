"""What the studies keep after an edit: figures and findings are those of a fresh check to the last digit, and only what
the edit touched is worked out anew."""

from __future__ import annotations

import random
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from wyeline_grammar.blocks import Block
from wyeline_grammar.sources import Files, read_text
from wyeline_linter.analysis import Analysis
from wyeline_linter.circuit import forest
from wyeline_linter.circuit.blocks import blocks_of
from wyeline_linter.circuit.layout import layout_of
from wyeline_linter.findings import Finding
from wyeline_linter.rules import short_circuit
from wyeline_linter.solved_figures import solved_figures
from wyeline_linter.studies.case import Case
from wyeline_linter.studies.sieve import Sieve
from wyeline_linter.studies.study import StateStudy
from wyeline_linter.systems import NEUTRAL

EXAMPLES = Path(__file__).parents[3] / "grammar" / "examples"
NUMBER = re.compile(r"\b\d+(?= (m|kVA|VA|kW|hp|A)\b)")
ROOT = "/m/hall.wye"
HALL = """wye 1
project "Weaving hall"
  basis us-2023
  frequency 60 Hz, revision "A", drop-branch 2 %, drop-path 3 %
utility UTIL 480Y/277  fault 22 kA, fault-min 15 kA, x/r 4
switchboard MSB 480Y/277  bus 1600 A, main 1200 A, rated 25 kA, service-equipment, lug-temp 75 degC
feeder UTIL -> MSB  1200 A 3p  4 sets 3x400kcmil + N 400kcmil Cu THWN-2  12 m  in 4 inch PVC-40
raceway R-1 1-1/4 inch EMT
transformer TX-1 480 3ph -> 208Y/120  112.5 kVA, z 4 %, x/r 2
feeder MSB -> TX-1  175 A 3p  3#2/0 + G #6 Cu THWN-2  20 m  in 2 inch EMT
panel LP-1 208Y/120  bus 400 A, main 400 A, rated 14 kA, spaces 42, lug-temp 75 degC
  1  20 A 1p  1800 VA  receptacle  "Looms, north"  2#12 + G #12 Cu THWN-2  30 m  in 3/4 inch EMT
  2  20 A 1p  1500 VA  lighting continuous  "Hall"  2#12 + G #12 Cu THWN-2  45 m  in 3/4 inch EMT
  3,5  30 A 2p  4.5 kW  heating  "Dye bath"  2#10 + G #10 Cu THWN-2  25 m  in 3/4 inch EMT
  4,6,8  40 A 3p  9 kVA  receptacle  "Benches"  3#8 + N #8 + G #10 Cu THWN-2  35 m  in 1 inch EMT
  7,9,11  20 A 3p  3 hp, pf 0.85, eff 88 %  motor  "Fan"  3#12 + G #12 Cu THWN-2  18 m  in 3/4 inch EMT
feeder TX-1 -> LP-1  400 A 3p  2 sets 3#3/0 + N #3/0 + G #3 Cu THWN-2  6 m  in 2 inch EMT
panel LP-2 208Y/120  bus 225 A, rated 10 kA, spaces 42, lug-temp 75 degC
  1  20 A 1p  1600 VA  receptacle  "Looms, south"  2#12 + G #12 Cu THWN-2  28 m  in R-1
  2,4,6  60 A 3p  14 kVA  receptacle  "Test bench"  3#6 + N #6 + G #10 Cu THWN-2  40 m  in 1 inch EMT
feeder LP-1 -> LP-2  150 A 3p  3#1/0 + N #1/0 + G #6 Cu THWN-2  48 m  in 2 inch EMT
panel HP-1 480Y/277  bus 250 A, rated 25 kA, spaces 42, lug-temp 75 degC
  1,3,5  60 A 3p  30 kW  heating  "Dryer"  3#4 + G #10 Cu THWN-2  60 m  in 1 inch EMT
feeder MSB -> HP-1  200 A 3p instantaneous 2000 A  3#3/0 + N #3/0 + G #6 Cu THWN-2  55 m  in 2 inch EMT
motor P-1 460 3ph  25 hp, pf 0.86, eff 92 %, lra 183 A
feeder HP-1 -> P-1  70 A 3p  3#6 + G #8 Cu THWN-2  40 m  in 1 inch EMT
motor P-2 460 3ph  20 hp, pf 0.86, eff 91 %, standby-of P-1
feeder HP-1 -> P-2  60 A 3p  3#6 + G #10 Cu THWN-2  44 m  in R-1
ups UPS-1 480 3ph -> 208Y/120  20 kVA, eff 94 %, limit 2 pu
feeder HP-1 -> UPS-1  40 A 3p  3#8 + G #10 Cu THWN-2  8 m  in 1 inch EMT
panel IT-1 208Y/120  bus 100 A, rated 10 kA, lug-temp 75 degC
  1,3,5  30 A 3p  8 kVA  it continuous  "Racks"  3#10 + N #10 + G #10 Cu THWN-2  16 m  in 3/4 inch EMT
feeder UPS-1 -> IT-1  100 A 3p  3#3 + N #3 + G #8 Cu THWN-2  9 m  in 1-1/4 inch EMT
panel EV-1 480Y/277  bus 225 A, rated 22 kA, lug-temp 75 degC
  1,3,5  60 A 3p  40 kVA  ev continuous  "Chargers"  3#4 + G #8 Cu THWN-2  30 m  in 1 inch EMT
feeder W-1: MSB -> EV-1  110 A 3p  3#2 + N #2 + G #6 Cu THWN-2  80 m  in 1-1/2 inch EMT
feeder W-2: MSB -> EV-1  110 A 3p  3#2 + N #2 + G #6 Cu THWN-2  80 m  in 1-1/2 inch EMT
  claim parallel
inverter PV-1 480Y/277  30 kW, limit 1.1 pu
feeder PV-1 -> MSB  50 A 3p  3#8 + N #8 + G #10 Cu THWN-2  15 m  in 1 inch EMT
generator GEN-1 480Y/277  140 kVA, pf 0.8, subtransient 12 %, transient 18 %, x2 13 %, x0 6 %, x/r 18, sustained 3 pu
  neutral bonded
transfer ATS-1 150 A 4p, rated 30 kA
feeder MSB -> ATS-1.normal  125 A 3p  3#1 + N #1 + G #6 Cu THWN-2  14 m  in 1-1/2 inch EMT
feeder GEN-1 -> ATS-1.emergency  125 A 3p  3#1 + N #1 + G #6 Cu THWN-2  22 m  in 1-1/2 inch EMT
panel EP-1 480Y/277  bus 150 A, rated 22 kA, lug-temp 75 degC
  1  20 A 1p  2 kVA  lighting emergency  "Exit"  2#12 + G #12 Cu THWN-2  50 m  in 3/4 inch EMT
feeder ATS-1 -> EP-1  125 A 3p  3#1 + N #1 + G #6 Cu THWN-2  6 m  in 1-1/2 inch EMT
motor FP-1 460 3ph  40 hp, pf 0.86, eff 93 %, lra 290 A, fire-pump
feeder EP-1 -> FP-1  100 A 3p  3#3 + G #8 Cu THWN-2  70 m  in 1-1/4 inch EMT
expect all panel drop <= 3 %
"""
EDITS = (
    ("1800 VA  receptacle", "5400 VA  receptacle"),
    ("9 kVA  receptacle", "24 kVA  receptacle"),
    ("1500 VA  lighting", "1510 VA  lighting"),
    ("4.5 kW  heating", "4.5 kW  receptacle"),
    ("14 kVA  receptacle", "14 kVA  kitchen"),
    ("30 kW  heating", "33 kW  heating"),
    ("3 hp, pf", "5 hp, pf"),
    ("25 hp, pf", "15 hp, pf"),
    (", standby-of P-1", ""),
    ("8 kVA  it", "5 kVA  it"),
    ("40 kVA  ev", "60 kVA  ev"),
    ("bus 225 A, rated 22 kA", "bus 225 A, limit 30 kVA, rated 22 kA"),
    ("30 kW, limit 1.1 pu", "20 kW, limit 1.1 pu"),
    ("1-1/2 inch EMT\n  claim parallel", "1-1/2 inch EMT"),
    ("48 m  in 2 inch", "90 m  in 2 inch"),
    ("55 m  in 2 inch", "in 2 inch"),
    ("3#6 + G #8 Cu THWN-2  40 m", "3#8 + G #10 Cu THWN-2  40 m"),
    ("70 m  in 1-1/4", "170 m  in 1-1/4"),
    ("35 m  in 1 inch", "75 m  in 1 inch"),
    ("rated 14 kA", "rated 5 kA"),
    ("fault 22 kA", "fault 30 kA"),
    ("1-1/4 inch EMT\ntransformer", "1-1/4 inch PVC-40\ntransformer"),
    ("112.5 kVA, z 4 %", "75 kVA, z 4 %"),
    ("125 A 3p  3#1 + N #1 + G #6 Cu THWN-2  6 m", "125 A 3p  future  3#1 + N #1 + G #6 Cu THWN-2  6 m"),
    ("bus 225 A, rated 10 kA", "bus 225 A, factor 0.8, rated 10 kA"),
    ("feeder LP-1 -> LP-2", "feeder TX-1 -> LP-2"),
    ('"Looms, south"', '"Looms, west"'),
    ("expect all panel", 'scenario "Night"\n  shed EV-1\nexpect all panel'),
    ("wye 1\n", "wye 1\n// a remark\n"),
    ("expect all", "// expect all"),
    ("  2  20 A 1p  1500", "  10  20 A 1p  1500"),
    ("x/r 4\nswitchboard", "x/r 4, off-limits\nswitchboard"),
    ("bus 1600 A, main", "bus 1600 A, existing, measured 500 A, main"),
    ("208Y/120  bus 400 A", "208Y/120  existing, measured 120 A, bus 400 A"),
    ("175 A 3p  3#2/0", "175 A 3p existing  3#2/0"),
    ("400 A 3p  2 sets", "400 A 3p existing  2 sets"),
    ("200 A 3p instantaneous", "200 A 3p existing, instantaneous"),
    ("70 A 3p  3#6", "70 A 3p existing  3#6"),
    ("motor P-1 460 3ph  25", "motor P-1 460 3ph  existing, 25"),
    ('continuous  "Racks"', 'continuous existing  "Racks"'),
    ("40 A 3p  3#8 + G", "40 A 3p existing  3#8 + G"),
)


class Desk:
    """A model under edits, and the same text checked from nothing."""

    def __init__(self, text: str = HALL) -> None:
        self.files = Files(lambda _: text)
        self.analysis = Analysis(ROOT, self.files, "/m")

    @property
    def text(self) -> str:
        return self.files.get(ROOT).text

    def changed(self, old: str, new: str) -> tuple[list[Block], list[Block]]:
        """The blocks that went and that came."""
        assert old in self.text
        return self.files.get(ROOT).replace_text(self.text.replace(old, new, 1))

    def edit(self, old: str, new: str) -> None:
        self.analysis.edited(*self.changed(old, new))

    def solve(self) -> None:
        self.analysis.study_findings()
        solved_figures(self.analysis.view)

    def ran(self, old: str, new: str) -> dict[str, int]:
        """What ran for an edit, by step; steps that did not run are left out."""
        before = dict(self.analysis.view.studies.cache.solved)
        self.edit(old, new)
        self.solve()
        after = self.analysis.view.studies.cache.solved
        return {step: n - before.get(step, 0) for step, n in after.items() if n != before.get(step, 0)}


def told(findings: list[Finding]) -> list[object]:
    return [
        (
            *(f.sort_key, f.severity, f.found, f.needed, f.change, f.allowed),
            [(fix.title, [edit.text for edit in fix.edits]) for fix in f.fixes],
        )
        for f in findings
    ]


def assert_as_fresh(analysis: Analysis, again: Analysis) -> None:
    """Figures and findings to the last digit, whatever was kept."""
    assert told(analysis.study_findings()) == told(again.study_findings())
    mine, theirs = solved_figures(analysis.view), solved_figures(again.view)
    for kind in ("faults", "volts", "drops"):
        assert dict(getattr(mine, kind)) == dict(getattr(theirs, kind)), kind
    assert mine == theirs
    pairs = zip(analysis.view.studies.every(), again.view.studies.every(), strict=True)
    for study, anew in pairs:
        assert study.key == anew.key
        assert study.loads == anew.loads
        assert study.built(Case.FLOW).network.loads == anew.built(Case.FLOW).network.loads


@pytest.mark.parametrize("share", [forest.WHOLE_SHARE, 1])
@settings(max_examples=15, deadline=None, suppress_health_check=list(HealthCheck))
@given(
    edits=st.lists(
        st.tuples(st.sampled_from(EDITS), st.sampled_from(["", "pieces", "flow", "faults", "all"])), max_size=7
    ),
    apart=st.booleans(),
)
def test_any_run_of_edits_gives_the_figures_of_a_fresh_check(
    share: int, edits: list[tuple[tuple[str, str], str]], apart: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Back and forth; between edits nothing is asked, or a part of the studies only, or all. A server asks a twin, that
    follows when it is asked."""
    monkeypatch.setattr(forest, "WHOLE_SHARE", share)
    desk = Desk()
    lead = desk.analysis
    if apart:
        desk.analysis = lead.twin(desk.files, ("study",))
    desk.solve()
    for (old, new), asked in edits:
        if old not in desk.text and new not in desk.text:
            continue  # another edit has taken it
        lead.edited(*desk.changed(*((old, new) if old in desk.text else (new, old))))
        if apart and not asked:
            continue
        if apart:
            desk.analysis.follow(lead)
        studies = desk.analysis.view.studies
        for study in studies.every() if asked in ("pieces", "flow", "faults") else ():
            if asked == "pieces":
                assert study.pieces.pieces
            elif asked == "flow":
                assert study.judged.columns is not None or study.flow.trouble
            else:
                assert study.largest.built is not None
        if asked == "all":
            desk.solve()
    if apart:
        desk.analysis.follow(lead)
    assert_as_fresh(desk.analysis, Desk(desk.text).analysis)


@pytest.mark.parametrize("site", ["field-station/station.wye", "dairy-works/works.wye"])
@pytest.mark.parametrize("seed", range(3))
@pytest.mark.parametrize("share", [forest.WHOLE_SHARE, 1])
def test_any_number_of_a_site_changed_gives_the_figures_of_a_fresh_check(
    site: str, seed: int, share: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Small sites are factorised whole; with a share of 1 only along the ways from what changed, as large ones are."""
    monkeypatch.setattr(forest, "WHOLE_SHARE", share)
    rng = random.Random(seed)
    files = Files()
    analysis = Analysis(str(EXAMPLES / site), files)
    analysis.study_findings()
    for _ in range(6):
        known = [file for path in analysis.model.files if (file := files.known(path)) is not None]
        numbers = [
            (file, row, at) for file in known for row, line in enumerate(file.lines) for at in NUMBER.finditer(line)
        ]
        file, row, at = rng.choice(numbers)
        number = str(max(1, int(at[0]) + rng.choice([-3, 1, 7])))
        analysis.edited(*file.edit((row, at.start()), (row, at.end()), number))
        if rng.random() < 0.6:
            analysis.study_findings()
            solved_figures(analysis.view)
    texts = {path: file.text for path in analysis.model.files if (file := files.known(path)) is not None}
    fresh = Analysis(str(EXAMPLES / site), Files(lambda p: texts[p] if p in texts else read_text(p)))
    assert_as_fresh(analysis, fresh)


# what did not run

SOLVES = {"circuit built", "largest fault", "smallest fault", "motor start", "load flow", "load flow, factors kept"}


def settled() -> Desk:
    """A desk whose model was edited and solved already, so that all is kept that is ever kept."""
    desk = Desk()
    desk.solve()
    desk.edit("1800 VA  receptacle", "1810 VA  receptacle")
    desk.solve()
    return desk


def test_what_an_edit_of_a_load_works_out_anew() -> None:
    """One piece a state, what its feeders carry on the way to the source, and a load flow with the factors at hand."""
    desk = settled()
    ran = desk.ran("1600 VA  receptacle", "1700 VA  receptacle")
    with_lp_2 = [s for s in desk.analysis.view.studies.every() if "LP-2" in s.loads_at]
    assert ran.pop("pieces of loads") == len(with_lp_2)
    ways = sum(1 + len(list(study.connectivity.above("LP-2"))) for study in with_lp_2)
    held = sum(1 for s in with_lp_2 for node in s.pieces.listed.nodes if node is not None and node.up.held)
    assert ran.pop("demands of feeders") <= ways + held
    assert ran.pop("board's circuits") == 1
    assert ran.pop("load flow, factors kept") == 1
    # Factors of the many states that nobody writes down are not kept.
    assert ran.pop("load flow", 0) <= sum(study.zone is not None for study in with_lp_2)
    assert not ran, "no fault, no motor start, no nameplate"


def test_what_an_edit_without_electrical_meaning_works_out_anew() -> None:
    desk = settled()
    ran = desk.ran('"Looms, south"', '"Looms, south wall"')
    assert not SOLVES & set(ran)
    assert ran["board's circuits"] == 1


def test_what_an_edit_of_a_length_works_out_anew() -> None:
    """Every solution, as the circuit is another one; no piece of load, no board's circuits, no nameplate."""
    desk = settled()
    ran = desk.ran("20 m  in 2 inch EMT", "21 m  in 2 inch EMT")
    assert {"load flow", "largest fault", "smallest fault", "starts"} <= set(ran)
    assert not {"circuit built", "pieces of loads", "board's circuits", "plates", "motors at standstill"} & set(ran)


def test_a_length_in_one_of_many_wings_factorises_the_way_to_the_source_alone() -> None:
    """Thirty transformers at one switchboard, each with a panel. Invented."""
    wings = "".join(
        f"""transformer TX-{k} 480 3ph -> 208Y/120  75 kVA, z 4 %, x/r 2
feeder MSB -> TX-{k}  125 A 3p  3#1 + G #6 Cu THWN-2  {20 + k} m  in 2 inch EMT
panel PP-{k} 208Y/120  bus 225 A, main 225 A, rated 14 kA, spaces 42, lug-temp 75 degC
  1  20 A 1p  1800 VA  receptacle  "Wing {k}"  2#12 + G #12 Cu THWN-2  30 m  in 3/4 inch EMT
feeder TX-{k} -> PP-{k}  225 A 3p  3#4/0 + N #4/0 + G #4 Cu THWN-2  {5 + k} m  in 2-1/2 inch EMT
"""
        for k in range(30)
    )
    desk = Desk(HALL.split("raceway R-1")[0] + wings)
    desk.solve()
    desk.edit("27 m  in 2 inch EMT", "28 m  in 2 inch EMT")
    desk.solve()
    built = desk.analysis.view.studies.normal.built(Case.FLOW)
    whole = len(blocks_of(built.network, layout_of(built.network)).size)
    assert whole > 90
    ran = desk.ran("26 m  in 2 inch EMT", "46 m  in 2 inch EMT")
    matrices = sum(ran.get(step, 0) for step in ("load flow", "largest fault", "smallest fault", "motor start"))
    assert matrices >= 3
    assert 0 < ran["blocks eliminated"] <= matrices * 5, "grid, switchboard, and what the feeder ends at"
    assert_as_fresh(desk.analysis, Desk(desk.text).analysis)
    assert "blocks eliminated" not in desk.ran("1800 VA  receptacle", "1900 VA  receptacle"), "factors at hand"


def test_an_edit_of_a_motor_changes_faults_everywhere_and_builds_no_circuit() -> None:
    desk = settled()
    ran = desk.ran("25 hp, pf 0.86", "20 hp, pf 0.86")
    assert "largest fault" in ran and "smallest fault" not in ran and "circuit built" not in ran


def test_one_factor_for_all_receptacles_changes_no_piece_of_another_board() -> None:
    """The factor at the service falls with every receptacle; what stands on the conductors of other boards is kept."""
    desk = Desk()
    desk.solve()
    study = desk.analysis.view.studies.normal
    before, shares = study.pieces.at.piece("LP-1"), {load.demand_share for load in study.loads_at["LP-1"]["1"]}
    desk.edit("14 kVA  receptacle", "34 kVA  receptacle")
    study = desk.analysis.view.studies.normal
    after = {load.demand_share for load in study.loads_at["LP-1"]["1"]}
    assert study.pieces.at.piece("LP-1") is before
    assert max(after) < min(shares) < 1.0


# side by side and one by one


def one_by_one(study: StateStudy, key: str) -> tuple[float, float] | None:
    """The drop of a feeder in V and as a part of nominal, by its formula for a single feeder: the solved voltages, less
    what the currents beyond them lose, on the pair that loses most. Independent of the columns."""
    flow, feeder = study.flow, study.model.feeders[key]
    if flow.solved is None or flow.feeder_reasons(key):
        return None
    backwards, beyond = study.judged.backwards(feeder), study.judged.beyond(feeder)
    near, far = flow.built.ends[key][::-1] if backwards else flow.built.ends[key]
    system, data, v = flow.built.system_at[far.name], flow.built.lines[key], flow.solved.v
    added = dict.fromkeys("ABCN", 0j)
    if beyond is not None:
        first = system.legs[0]
        second = NEUTRAL if system.has_neutral else system.legs[-1]
        nominal, solved = system.potential(first) - system.potential(second), v[far[first]] - v[far[second]]
        turn = solved / abs(solved) * abs(nominal) / nominal
        fed = feeder.source.name if backwards else feeder.target.name
        supplies = (study.connectivity.supply[fed], *study.connectivity.others.get(fed, ()))
        if len(supplies) > 1:
            sizes = {f.key: max(map(abs, amps.values())) for f in supplies if (amps := flow.currents(f.key))}
            turn *= sizes[key] / sum(sizes.values())
        added |= {leg: beyond.amps["ABC".index(leg)] * turn for leg in system.legs}
        if system.has_neutral:
            added[NEUTRAL] = -sum(added[leg] for leg in system.legs)
    best: tuple[float, float] | None = None
    for a, b, nominal_v in flow.nominal_pairs(system):
        if a in near.conductors and b in near.conductors:
            at_end = v[far[a]] - v[far[b]]
            for conductor, sign in ((a, -1.0), (b, 1.0)):
                at_end += sign * ((data.neutral if conductor == NEUTRAL else data.leg) or 0j) * added[conductor]
            lost = abs(v[near[a]] - v[near[b]]) - abs(at_end)
            if best is None or lost / nominal_v > best[1] + 1e-9:
                best = lost, lost / nominal_v
    return best


def sites() -> Iterator[Analysis]:
    yield Desk().analysis
    for name in ("field-station/station.wye", "dairy-works/works.wye"):
        yield Analysis(str(EXAMPLES / name), Files())


def test_figures_side_by_side_are_those_of_each_by_itself() -> None:
    """In every switch state: drops, what is beyond the solved state, the sum along the way, and the lowest volts."""
    seen = 0
    for analysis in sites():
        for study in analysis.view.studies.every():
            columns = study.judged.columns
            for key in study.flow.built.ends:
                drop, wanted = study.judged.drop(study.model.feeders[key]), one_by_one(study, key)
                assert (drop is None) is (wanted is None), key
                if drop is not None and wanted is not None:
                    assert (drop.volts, drop.part) == pytest.approx(wanted, rel=1e-9, abs=1e-12), key
                    seen += 1
            if columns is None:
                continue
            rows, volts = columns.volts()
            for k, name in enumerate(study.connectivity.order):
                beyond = study.demand.beyond(name)
                amps = (0j,) * 4 if beyond is None else beyond.amps
                assert columns.beyond.amps[:, k].tolist() == pytest.approx(list(amps), rel=1e-12, abs=1e-12)
                whole, way = study.path_drop(name)[0], float(columns.path[k])
                assert way == pytest.approx(whole, abs=1e-12) if whole is not None else way != way
                lowest, row = study.judged.lowest(name), rows.row.get(name)
                if lowest is not None and row is not None:
                    column = rows.pairs.lowest(volts)[row]
                    assert rows.pairs.names[row][column] == lowest.between
                    assert volts[row, column] == pytest.approx(lowest.volts, rel=1e-12)
    assert seen > 200


def test_the_fault_that_decides_is_the_worst_of_all_kinds() -> None:
    """Side by side as one by one; kinds that are alike in their last digits count as one."""
    for analysis in sites():
        names = list(analysis.model.equipment)
        for study in analysis.view.studies.every():
            for faults, pick in ((study.largest, max), (study.smallest, min)):
                found = faults.deciding_at(names)[0].tolist()
                for name, amperes in zip(names, found, strict=True):
                    flowing = [f.amperes for f in faults.at(name).values() if f.amperes]
                    assert amperes == pytest.approx(pick(flowing), rel=1e-7) if flowing else amperes != amperes


@pytest.mark.parametrize("edit", [None, *EDITS[:3], *EDITS[11:20]], ids=str)
def test_what_the_sieve_lets_through_is_all_that_the_rules_find(
    monkeypatch: pytest.MonkeyPatch, edit: tuple[str, str] | None
) -> None:
    """With everything under suspicion, the findings are the same."""
    text = HALL if edit is None else HALL.replace(*edit)
    sieved = told(Desk(text).analysis.study_findings())
    monkeypatch.setattr(Sieve, "feeders_beyond", lambda self, _: set(self.study.flow.built.ends))
    monkeypatch.setattr(Sieve, "boards_beyond", lambda self, _: set(self.study.connectivity.order))
    monkeypatch.setattr(Sieve, "ways_beyond", lambda self, _: set(self.study.connectivity.order))
    monkeypatch.setattr(
        Sieve,
        "loads_off",
        lambda self, kinds: [n for n in self.study.loads_at if self.study.model.equipment[n].kind in kinds],
    )
    whole = short_circuit._borne_a
    monkeypatch.setattr(short_circuit, "_borne_a", lambda e, us: None if whole(e, us=us) is None else 0.0)
    assert told(Desk(text).analysis.study_findings()) == sieved
    assert len(sieved) > 3
