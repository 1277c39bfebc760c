"""What a preview keeps from one edition to the next changes none: each is byte for byte what is made anew."""

from __future__ import annotations

import random
import re
import shutil
from pathlib import Path

import pytest
from report_models import DAIRY, STATION

from wyeline_linter.reports.live_model import LiveModel

_FIGURE = re.compile(r"(?<=\s)\d+(\.\d+)?(?= (m|ft|VA|kVA|kW|A|kA|hp)\b)")


def edited(lines: list[str], dice: random.Random) -> list[str]:
    """The lines after an edit as a drafter makes them: a figure, a line that comes, goes, moves or is commented out."""
    lines = list(lines)
    at = dice.randrange(len(lines))
    kind = dice.choice(("figure",) * 6 + ("remark", "out", "twice", "comment", "swap", "figure and line"))
    if kind.startswith("figure"):
        at = dice.choice([k for k, line in enumerate(lines) if _FIGURE.search(line)] or [at])
        lines[at] = _FIGURE.sub(lambda m: f"{float(m[0]) * dice.choice((0.9, 1.25, 2)):g}", lines[at], count=1)
    if kind in ("remark", "figure and line"):
        lines.insert(dice.randrange(len(lines)), "// looked at")
    elif kind == "out":
        del lines[at]
    elif kind == "twice":
        lines.insert(at, lines[at])
    elif kind == "comment":
        lines[at] = f"// {lines[at]}"
    elif kind == "swap" and at:
        lines[at - 1], lines[at] = lines[at], lines[at - 1]
    return lines


@pytest.mark.parametrize("site", [STATION, DAIRY], ids=["station", "dairy"])
@pytest.mark.parametrize("seed", range(2))
def test_each_edition_after_edits_is_the_one_made_anew(site: Path, seed: int, tmp_path: Path) -> None:
    shutil.copytree(site.parent, tmp_path / "site")
    root = tmp_path / "site" / site.name
    dice = random.Random(seed)
    model, typed = LiveModel(str(root)), dict[str, str]()
    model.edition()
    files = sorted(path for path in model.files if path.endswith(".wye"))
    for _ in range(8):
        path = Path(dice.choice(files))
        before = typed.get(str(path)) or path.read_text("utf-8")
        text = "\n".join(edited(before.split("\n"), dice))
        if dice.random() < 0.5:
            typed = {**typed, str(path): text}
        else:  # saved, and closed in the editor
            path.write_text(text, "utf-8")
            typed = {name: kept for name, kept in typed.items() if name != str(path)}
        model.look(typed)
        assert model.edition() == LiveModel(str(root), texts=typed).edition()


def test_a_change_of_a_load_draws_nothing_and_lays_out_little(tmp_path: Path) -> None:
    shutil.copytree(STATION.parent, tmp_path / "site")
    root = tmp_path / "site" / STATION.name
    model = LiveModel(str(root))
    model.edition()
    before = model.renew()
    changed = re.sub(r"0.72 kVA(?= +receptacle)", "0.8 kVA", root.read_text("utf-8"), count=1)
    root.write_text(changed, "utf-8")
    assert model.look()
    model.edition()
    after = model.renew()
    assert after is not before and after.diagram is before.diagram
    kept = {id(sheet) for sheet in before.sheets} & {id(sheet) for sheet in after.sheets}
    assert len(kept) > len(after.sheets) / 2
    faults = [s for s in after.sheets if s.anchor.endswith(("_fault", "_fault-min"))]
    assert faults and {id(s) for s in faults} <= kept


@pytest.mark.parametrize("what", ["configuration", "switch state", "gone and back"])
def test_what_an_edit_cannot_take_in_is_judged_anew(what: str, tmp_path: Path) -> None:
    shutil.copytree(STATION.parent, tmp_path / "site")
    root = tmp_path / "site" / STATION.name
    model = LiveModel(str(root))
    before = model.edition()
    text, state = root.read_text("utf-8"), None
    if what == "configuration":
        (root.parent / "wyeline.toml").write_text('units = "si"\n', "utf-8")
        root.write_text(text + "// saved\n", "utf-8")
    elif what == "switch state":
        state = "Ferry out"
        root.write_text(f'{text}\nscenario "{state}"\n', "utf-8")
        model.show(state)
    else:
        root.unlink()
        assert model.look()
        with pytest.raises(Exception, match="no such file"):
            model.edition()
        root.write_text(text + "// back\n", "utf-8")
    assert model.look()
    assert model.edition() == LiveModel(str(root), state).edition()
    assert (model.edition() == before) is (what == "gone and back")
