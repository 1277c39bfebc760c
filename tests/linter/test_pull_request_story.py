"""A pull request as people live it: a branch of a real git repository, three edited lines, and what reviewers read."""

from __future__ import annotations

import json
import os
import re
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from wyeline_linter.cli import main
from wyeline_linter.outputs.text import CAUTION
from wyeline_linter.review.git import Repository

pytestmark = pytest.mark.skipif(shutil.which("git") is None, reason="git is not installed")

SITE = """wye 1

project "Sandholm boatyard"
  basis us-2023
  frequency 60 Hz, ambient 30 degC

include "loft/loft.wye"

utility     QUAY    480Y/277            fault 25 kA, fault-min 15 kA, fault-lg 24 kA, x/r 6
switchboard MSB     480Y/277            bus 400 A, main 400 A, rated 42 kA, spaces 30, lug-temp 75 degC
feeder QUAY        -> MSB               3x500kcmil + N 500kcmil + G #3 Cu THWN-2    5 m  in 4 inch PVC-40

type transformer  DRY                   rise 115 degC
transformer T-1     480 3ph -> 208Y/120  75 kVA, z 2 %, x/r 1.5, like DRY
feeder MSB         -> T-1     125 A 3p   3#1 + G #6 Cu THWN-2                       10 m  in 1-1/2 inch EMT
feeder T-1         -> LP-2               3#4/0 + N #4/0 + G #2 Cu THWN-2            3 m  in 2-1/2 inch EMT
  claim tap-10ft
"""
LOFT = """wye 1

panel       LP-2    208Y/120            bus 225 A, main 225 A, rated 10 kA, spaces 30, lug-temp 75 degC
  1       20 A 1p   1.2 kVA  receptacle  "Sail loft outlets, east"              2#12 + G #12 Cu  20 m  in 3/4 inch EMT
  3       20 A 1p   1.2 kVA  receptacle  "Sail loft outlets, west"              2#12 + G #12 Cu  22 m  in 3/4 inch EMT
  5       20 A 1p   1.2 kVA  receptacle  "Paint store outlets"                  2#12 + G #12 Cu  24 m  in 3/4 inch EMT
"""
CAUSE = "because T-1 went from 75 to 150 kVA"


class Yard:
    """A repository with the model in a folder of its own."""

    def __init__(self, top: Path) -> None:
        self.top = top
        self.model = top / "electrical"
        (self.model / "loft").mkdir(parents=True)
        self.git("init", "-q", "-b", "main")
        self.write("site.wye", SITE)
        self.write("loft/loft.wye", LOFT)
        self.commit("The yard as built")

    def git(self, *words: str) -> str:
        told = ("-c", "user.name=Drafter", "-c", "user.email=drafter@example.org", "-c", "commit.gpgsign=false")
        done = subprocess.run(["git", *told, *words], cwd=self.top, capture_output=True, text=True, check=True)
        return done.stdout

    def write(self, name: str, text: str) -> None:
        (self.model / name).write_text(text, encoding="utf-8", newline="\n")

    def commit(self, message: str) -> None:
        self.git("add", ".")
        self.git("commit", "-q", "-m", message)


@pytest.fixture
def yard(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Yard:
    made = Yard(tmp_path)
    made.git("switch", "-q", "-c", "larger-loft")
    made.write("site.wye", SITE.replace("75 kVA", "150 kVA"))
    loft = LOFT.replace('1.2 kVA  receptacle  "Paint', '1.6 kVA  receptacle  "Paint')
    loft = loft.replace("loft outlets, west", "loft outlets, south")
    made.write("loft/loft.wye", loft)
    made.commit("A larger transformer for the loft")
    monkeypatch.chdir(made.model)
    return made


def test_the_reviewer_reads_which_rating_is_exceeded_and_why(yard: Yard, capsys: pytest.CaptureFixture[str]) -> None:
    assert yard.git("diff", "--numstat", "main", "HEAD").split("\n")[0].startswith("2\t2\t")
    assert main(["compare", "main..HEAD"]) == 1
    out = capsys.readouterr().out
    # Source impedance left aside, a fault at the terminals of T-1 cannot exceed S / (sqrt(3) U z): 10.4 kA at 75 kVA,
    # 20.8 kA at 150 kVA. What lies in front and the feeder keep the first below 10 kA and the second above.
    first = next(line for line in out.splitlines() if line.lstrip().startswith("error"))
    said = re.search(r"LP-2: available fault ([0-9.]+) -> ([0-9.]+) kA, above its 10 kA rating \(interrupting", first)
    assert said is not None and first.endswith(CAUSE), first
    assert 7 < float(said[1]) < 10 < float(said[2]) < 20.8
    assert "circuit 5 of LP-2 went from 1.2 to 1.6 kVA" in out
    assert "panel schedules: " in out and "LP-2" in out.split("panel schedules: ")[1].splitlines()[0]
    assert CAUTION in out


@pytest.mark.usefixtures("yard")
def test_the_comment_on_the_pull_request(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", "main...larger-loft", "--format", "markdown"]) == 1
    out = capsys.readouterr().out
    assert out.startswith("### Electrical consequences")
    assert CAUSE in out.split("<details>")[0], "what is grave is not folded"
    assert out.count("<details>") == out.count("</details>") > 0
    assert "Not for energised work" in out


def test_nothing_of_the_working_tree_is_touched_or_read(yard: Yard, capsys: pytest.CaptureFixture[str]) -> None:
    yard.write("site.wye", "utility  BROKEN\n")
    before = yard.git("status", "--porcelain")
    assert main(["compare", "main..HEAD", "--format", "json"]) == 1
    report = json.loads(capsys.readouterr().out)
    assert yard.git("status", "--porcelain") == before
    assert report["models"][0]["changes"][0]["words"] == "T-1 went from 75 to 150 kVA"
    main(["compare", "HEAD"])
    assert "utility BROKEN was added" in capsys.readouterr().out, "a lone revision is held against the working tree"


def test_the_model_is_named_from_elsewhere(
    yard: Yard, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(yard.top.parent)
    assert main(["compare", "main", "larger-loft", "--model", str(yard.model / "site.wye")]) == 1
    assert CAUSE in capsys.readouterr().out
    assert main(["compare", "main...larger-loft", str(yard.model / "site.wye")]) == 1, "behind a range it is the model"
    assert CAUSE in capsys.readouterr().out


def test_exit_codes(yard: Yard, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", "HEAD", "HEAD"]) == 0
    assert "Nothing changed" in capsys.readouterr().out
    assert main(["compare", "larger-loft", "main"]) == 0, "the way back mends"
    assert "What is better" in capsys.readouterr().out
    yard.write("loft/loft.wye", LOFT.replace("1.2 kVA", "2.6 kVA"))
    yard.write("site.wye", SITE)
    assert main(["compare", "main"]) == 0, "only warnings follow"
    assert main(["compare", "main", "--fail-on", "warning"]) == 1
    capsys.readouterr()


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["nowhere..HEAD"], "git knows no such revision"),
        (["HEAD", "nowhere"], "git knows no such revision"),
        (["main..HEAD", "larger-loft"], "names both sides already"),
        (["."], "name what to compare it with"),
        (["main..HEAD", "--model", "gone.wye"], "no .wye file below electrical/gone.wye in this revision"),
        (["main..HEAD", "--scenario", "Night"], "no scenario `Night`"),
        (["main..HEAD", "--model", "/"], "not a git repository"),
    ],
)
@pytest.mark.usefixtures("yard")
def test_what_cannot_be_compared_is_said(words: list[str], told: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", *words]) == 2
    assert told in capsys.readouterr().err


@pytest.mark.usefixtures("yard")
def test_a_revision_that_looks_like_an_option_reaches_no_git_command(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", "--", "--output=/tmp/x", "HEAD"]) == 2
    assert "no revision can be called that" in capsys.readouterr().err


def test_the_configuration_of_each_revision_counts(yard: Yard, capsys: pytest.CaptureFixture[str]) -> None:
    yard.git("switch", "-q", "main")
    yard.write("wyeline.toml", '[rules]\ntransformer-mostly-idle = "error"\n')
    yard.commit("An office rule")
    assert main(["compare", "main~1..main"]) == 1
    out = capsys.readouterr().out
    assert "transformer-mostly-idle" in out
    assert "because wyeline.toml says other severities, limits or table rows" in out


def test_the_recipe_for_git_works_as_written(yard: Yard, monkeypatch: pytest.MonkeyPatch) -> None:
    """The commands stand in the linter's README; here they are run."""
    readme = (Path(__file__).parents[2] / "linter" / "README.md").read_text("utf-8")
    commands = readme.split("### In git")[1].split("```sh\n")[1].split("```")[0].strip().splitlines()
    assert len(commands) == 3
    for command in commands:
        subprocess.run(shlex.split(command), cwd=yard.top, check=True)
    (yard.top / ".gitattributes").write_text("*.wye diff=wye\n", encoding="utf-8")
    monkeypatch.setenv("PATH", f"{Path(sys.executable).parent}{os.pathsep}{os.environ['PATH']}")
    diff = yard.git("diff", "-U0", "main", "HEAD", "--", "electrical/loft/loft.wye")
    assert "@@ panel" in diff, "a changed circuit is shown under its panel"
    loft = (yard.model / "loft" / "loft.wye").read_text("utf-8")
    yard.write("loft/loft.wye", loft.replace("receptacle  ", "receptacle "))
    assert not [line for line in yard.git("diff").splitlines() if line.startswith(("+ ", "- "))], "only columns moved"
    done = subprocess.run(
        ["git", "consequences", "main..HEAD", "--model", "electrical"],
        cwd=yard.top,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1 and CAUSE in done.stdout, done.stderr


def test_a_path_on_another_drive_lies_in_no_repository(monkeypatch: pytest.MonkeyPatch) -> None:
    def apart(*_: object) -> str:
        raise ValueError("path is on mount 'D:', start on mount 'C:'")

    assert Repository("/site").inside("/site/hall.wye") == "hall.wye"
    monkeypatch.setattr(os.path, "relpath", apart)
    assert Repository("/site").inside("/site/hall.wye") is None
