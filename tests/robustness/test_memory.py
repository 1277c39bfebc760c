"""What is kept in memory follows the texts at hand: not what was typed, asked or refused before."""

from __future__ import annotations

import gc
import weakref
from pathlib import Path

import pytest
from soundness import FOLDER, ROOT, reader_of

from wyeline_grammar.blocks import TextFile
from wyeline_grammar.lowering import lower_block
from wyeline_grammar.remembering import OfBlocks, Remembered
from wyeline_grammar.sources import Files, SourceError
from wyeline_grammar.syntax import BlockSyntax
from wyeline_linter.analysis import Analysis
from wyeline_linter.solved_figures import solved_figures
from wyeline_linter.studies import all_studies as studies_module
from wyeline_linter.studies.built import Built
from wyeline_server.folding import folding_ranges
from wyeline_server.formatting import format_document
from wyeline_server.positions import Positions
from wyeline_server.session import Session
from wyeline_server.studies import Study
from wyeline_server.symbols import document_symbols
from wyeline_server.tokens import pieces

SITE = """project "Weir"
  basis us-2023
utility QUAY 480Y/277  fault 30 kA, x/r 7
switchboard MSB 480Y/277  bus 800 A, rated 65 kA
feeder QUAY -> MSB  800 A 3p  2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu  12 m
panel DP 480Y/277  bus 400 A, rated 65 kA
feeder MSB -> DP  400 A 3p  3x600kcmil + N 600kcmil + G #3 Cu  30 m
"""


def test_a_memo_holds_what_is_in_use_and_as_much_again() -> None:
    memo: Remembered[int, int] = Remembered()
    memo.expect(100)
    most = 0
    for i in range(20_000):
        memo.put(i, i)
        assert all(memo.get(-k - 1, 0) is not None for k in range(3))
        most = max(most, len(memo))
    assert most < 2 * (100 + 25 + 64) + 1
    made = OfBlocks(lambda lines: len(lines))
    for i in range(50_000):
        made((str(i),))
    assert made.made == 50_000 and len(made.memo) < 50_000
    assert made(("49999",)) == 1 and made.made == 50_000


def test_statements_that_were_typed_over_are_forgotten() -> None:
    gc.collect()
    for i in range(30_000):
        lower_block((f"panel TYPED-{i} 208Y/120",))
    assert lower_block(("panel TYPED-29999 208Y/120",)) is lower_block(("panel TYPED-29999 208Y/120",))
    assert sum(type(o).__name__ == "EquipmentStatement" for o in gc.get_objects()) < 15_000


def test_what_an_editor_asks_of_a_whole_document_keeps_no_parsed_lines() -> None:
    panels = [f"panel LP-{i} 208Y/120  bus 100 A\n  1  20 A 1p  {i + 1} VA lighting  // row {i}" for i in range(3_000)]
    file, positions = TextFile("big.wye", "\n".join(panels)), Positions("utf-16")
    assert len(document_symbols(file, positions)) > 100_000
    assert len(pieces(file, "utf-16")) == 3_000
    assert len(folding_ranges(file)) == 3_000
    assert len(format_document(file, positions)) > 3_000
    gc.collect()
    assert sum(isinstance(o, BlockSyntax) for o in gc.get_objects()) < 500


def test_the_copy_that_is_solved_shares_what_an_edit_left_as_it_was() -> None:
    files = Files(reader_of({ROOT: SITE}))
    analysis = Analysis(ROOT, files, FOLDER)
    twin = analysis.twin(files, ("study",))
    file = files.get(ROOT)
    line = file.lines.index("feeder MSB -> DP  400 A 3p  3x600kcmil + N 600kcmil + G #3 Cu  30 m")
    edit = file.replace_lines(line, line + 1, [file.lines[line].replace("30 m", "31 m")])
    analysis.edited(*edit)
    twin.edited(*edit)
    mine, theirs = analysis.model, twin.model
    assert all(theirs.equipment[name] is equipment for name, equipment in mine.equipment.items())
    assert [key for key, feeder in mine.feeders.items() if theirs.feeders[key] is not feeder] == ["MSB -> DP"]
    assert all(twin.view.loads.nodes[name] is node for name, node in analysis.view.loads.nodes.items())


def test_a_file_that_cannot_be_read_keeps_no_model(tmp_path: Path) -> None:
    files = Files(reader_of({ROOT: f'include "gone.wye"\n{SITE}'}))
    for _ in range(3):
        Analysis(ROOT, files, FOLDER)
    gone = f"{FOLDER}/gone.wye"
    try:
        files.get(gone)
    except SourceError as error:
        assert error.__context__ is None
    kept = files._files[gone]
    assert isinstance(kept, SourceError) and kept.__traceback__ is None and kept.__context__ is None
    del tmp_path


def test_switch_states_that_are_gone_keep_no_circuit() -> None:
    files = Files(reader_of({ROOT: SITE}))
    analysis = Analysis(ROOT, files, FOLDER)
    file = files.get(ROOT)
    counts = []
    for i in range(12):
        second = f'feeder "WAY {i}": MSB -> DP  400 A 3p  3x600kcmil + N 600kcmil + G #3 Cu  30 m'
        analysis.edited(*file.replace_text(f"{SITE}{second}\n"))
        analysis.study_findings()
        gc.collect()
        counts.append(sum(isinstance(o, Built) for o in gc.get_objects()))
    assert counts[-1] == counts[2], counts


@pytest.mark.parametrize("most", [0, 1_000])
def test_many_switch_states_hold_nothing_after_a_study(monkeypatch: pytest.MonkeyPatch, most: int) -> None:
    """Few are kept for the next one. Either way it finds what a new model finds."""
    monkeypatch.setattr(studies_module, "MOST_KEPT_PIECES", most)
    way = 'feeder "WAY 2": MSB -> DP  400 A 3p  3x600kcmil + N 600kcmil + G #3 Cu  30 m\n  claim parallel\n'
    files = Files(reader_of({ROOT: SITE + way}))
    analysis = Analysis(ROOT, files, FOLDER)
    analysis.study_findings()
    assert len(analysis.view.studies.zones()) == 2
    analysis.view.studies.shed()
    cache = analysis.view.study_cache
    assert cache is not None
    for kept in (cache.circuits, cache.loads, cache.solutions):
        assert len(kept) >= 1
        assert any("WAY 2" in str(key) for key in kept) == (most > 0)
    analysis.edited(*files.get(ROOT).replace_text(SITE.replace("30 m", "95 m") + way))
    fresh = Analysis(ROOT, Files(reader_of({ROOT: SITE.replace("30 m", "95 m") + way})), FOLDER)
    assert [f.sort_key for f in analysis.study_findings()] == [f.sort_key for f in fresh.study_findings()]


def test_studies_follow_a_file_that_was_edited_while_the_model_left_it_out(tmp_path: Path) -> None:
    head, board = SITE.split("panel DP")
    texts = {"site.wye": f'include "board.wye"\n{head}', "board.wye": f"panel DP{board}"}
    session = Session()
    session.add_folder(tmp_path.as_uri())
    uris = {}
    for name, text in texts.items():
        (tmp_path / name).write_text(text)
        uris[name] = (tmp_path / name).as_uri()
    opened = {name: session.open(uris[name], 1, text) for name, text in texts.items()}
    root = opened["site.wye"]

    def studied() -> float | None:
        assert session.analysis(root) is not None
        study, copy = session.study(root), session.to_solve(root)
        assert study is not None
        study.found(copy.study_findings(), study.figures)
        feeder = copy.model.feeders.get("MSB -> DP")
        return feeder.body.number("length") if feeder is not None else None

    assert studied() == 30
    session.change(uris["site.wye"], 2, [{"text": f"// {texts['site.wye']}"}])
    assert studied() is None
    session.change(uris["board.wye"], 2, [{"text": texts["board.wye"].replace("30 m", "45 m")}])
    session.change(uris["site.wye"], 3, [{"text": texts["site.wye"]}])
    assert session.analysis(root) is not None
    study = session.study(root)
    assert study is not None and not any("MSB -> DP" in f.subject for f in study.findings(opened["board.wye"]))
    assert studied() == 45


def test_a_model_that_is_let_go_of_is_gone_without_the_collector(tmp_path: Path) -> None:
    """The collector stays away from models, so that none may wait for it: a long session would hold several."""
    (tmp_path / "site.wye").write_text(SITE)
    uri = (tmp_path / "site.wye").as_uri()
    gc.collect()
    gc.disable()
    try:
        for at_work in (False, True):
            session = Session()
            path = session.open(uri, 1, SITE)
            model = session.analysis(path)
            study = session.study(path)
            assert model is not None and study is not None
            for _ in range(2):
                copied = session.to_solve(path)
                solved_figures(copied.view)
                study.found(copied.study_findings(), study.figures)
            kept = [weakref.ref(model.view.model), weakref.ref(copied.view.model)]
            study.at_work = at_work
            session.forget_models()
            if at_work:  # as a thread does that ends later
                solved_figures(copied.view)
                copied.let_go()
            del model, copied, study
            assert [k() for k in kept] == [None, None]
    finally:
        gc.enable()


def test_edits_without_a_study_are_not_piled_up(tmp_path: Path) -> None:
    (tmp_path / "site.wye").write_text(SITE)
    session = Session()
    uri = (tmp_path / "site.wye").as_uri()
    path = session.open(uri, 1, SITE)
    assert session.analysis(path) is not None
    study = session.study(path)
    assert isinstance(study, Study)
    for i in range(200):
        session.change(uri, i + 2, [{"text": SITE.replace("30 m", f"{i} m")}])
        session.analysis(path)
    assert study.edits >= 200 and len(study._gone) + len(study._came) < 10
