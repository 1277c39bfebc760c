"""The hooks and the action, run as far as one machine allows: a commit is blocked, the action's steps are a script."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from wyeline_grammar.formatter import format_text

ROOT = Path(__file__).parents[2]
ACTION = ROOT / "editor-configs" / "ci" / "github-action" / "action.yml"
GITLAB = ROOT / "editor-configs" / "ci" / "wyeline.gitlab-ci.yml"
CLEAN = format_text("""utility     QUAY    480Y/277            fault 28 kA, x/r 7
feeder QUAY -> MSB  800 A 3p            2 sets 3x500kcmil + N 500kcmil + G #1/0 Cu  12 m
switchboard MSB     480Y/277            bus 800 A, main 800 A, rated 42 kA
""")
WRONG = format_text(CLEAN + "panel LP-1 208Y/120  bus 225 A\nfeeder MSB -> LP-1  100 A 3p\n")

yaml = pytest.importorskip("yaml", reason="comes with pre-commit")


def environment(folder: Path) -> dict[str, str]:
    """This Python's commands first, and nothing of the user's own git settings or caches."""
    home = folder / "home"
    home.mkdir(exist_ok=True)
    names = ("AUTHOR", "COMMITTER")
    return {
        **{k: v for k, v in os.environ.items() if not k.startswith(("GIT_", "PRE_COMMIT", "PIP_TARGET"))},
        "PATH": os.pathsep.join((str(Path(sys.executable).parent), os.environ["PATH"])),
        "HOME": str(home),
        "PRE_COMMIT_HOME": str(home / "pre-commit"),
        "WYELINE_CACHE": str(home / "wyeline"),
        "GIT_CONFIG_GLOBAL": os.devnull,
        "GIT_CONFIG_SYSTEM": os.devnull,
        **{f"GIT_{n}_NAME": "A Drafter" for n in names},
        **{f"GIT_{n}_EMAIL": "drafter@example.org" for n in names},
    }


def run(folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        words,
        cwd=folder,
        env=environment(folder.parent),
        capture_output=True,
        text=True,
        check=False,
        stdin=subprocess.DEVNULL,
    )


@pytest.fixture
def repository(tmp_path: Path) -> Path:
    """A git repository whose pre-commit configuration holds the hooks as a local repo, run by this Python."""
    pytest.importorskip("pre_commit", reason="pip install -e '.[test]' brings pre-commit")
    folder = tmp_path / "plans"
    folder.mkdir()
    hooks = yaml.safe_load((ROOT / ".pre-commit-hooks.yaml").read_text("utf-8"))
    local = [{**hook, "language": "system"} for hook in hooks]
    (folder / ".pre-commit-config.yaml").write_text(yaml.safe_dump({"repos": [{"repo": "local", "hooks": local}]}))
    assert run(folder, "git", "init", "-q").returncode == 0
    done = run(folder, sys.executable, "-m", "pre_commit", "install")
    assert done.returncode == 0, done.stdout + done.stderr
    return folder


def commit(folder: Path, text: str) -> subprocess.CompletedProcess[str]:
    (folder / "site.wye").write_text(text, "utf-8")
    run(folder, "git", "add", ".")
    return run(folder, "git", "commit", "-q", "-m", "a change")


def test_the_hooks_block_a_commit_until_the_model_holds(repository: Path) -> None:
    blocked = commit(repository, WRONG)
    assert blocked.returncode != 0
    assert "leg-voltage-mismatch" in blocked.stdout + blocked.stderr
    assert run(repository, "git", "rev-parse", "HEAD").returncode != 0  # nothing was committed
    untidy = commit(repository, CLEAN.replace("480Y/277            bus", "480Y/277   bus"))
    assert untidy.returncode != 0
    assert (repository / "site.wye").read_text("utf-8") == CLEAN  # set in the columns, to be looked at and added
    done = commit(repository, CLEAN)
    assert done.returncode == 0, done.stdout + done.stderr


def test_a_part_of_a_model_is_judged_with_its_model(repository: Path) -> None:
    part = 'panel       LP-1    480Y/277            bus 225 A, main 225 A  "Pumps"\n'
    whole = CLEAN + 'include "part.wye"\nfeeder MSB -> LP-1  225 A 3p  3#4/0 + N #4/0 + G #4 Cu  30 m\n'
    (repository / "part.wye").write_text(part, "utf-8")
    (repository / "site.wye").write_text(whole, "utf-8")
    run(repository, "wyeline", "format", ".")
    done = commit(repository, (repository / "site.wye").read_text("utf-8"))
    assert done.returncode == 0, done.stdout + done.stderr
    changed = (repository / "part.wye").read_text("utf-8").replace("480Y/277", "208Y/120")
    (repository / "part.wye").write_text(changed, "utf-8")
    run(repository, "git", "add", "part.wye")
    blocked = run(repository, "git", "commit", "-q", "-m", "only the part")
    assert blocked.returncode != 0 and "leg-voltage-mismatch" in blocked.stdout + blocked.stderr


def test_the_manifest_is_one_that_pre_commit_reads() -> None:
    pytest.importorskip("pre_commit")
    done = run(ROOT, sys.executable, "-m", "pre_commit", "validate-manifest", str(ROOT / ".pre-commit-hooks.yaml"))
    assert done.returncode == 0, done.stdout


@pytest.mark.parametrize(("schema", "path"), [("vendor.github-actions", ACTION), ("vendor.gitlab-ci", GITLAB)])
def test_the_recipes_keep_to_the_schemas_of_their_services(schema: str, path: Path) -> None:
    """The schemas of GitHub actions and GitLab jobs that the package check-jsonschema carries (SchemaStore, GitLab)."""
    pytest.importorskip("check_jsonschema", reason="pip install -e '.[test]' brings it")
    done = run(ROOT, sys.executable, "-m", "check_jsonschema", "--builtin-schema", schema, str(path))
    assert done.returncode == 0, done.stdout


def steps(inputs: dict[str, str]) -> list[dict[str, Any]]:
    """The steps of the action that run with these inputs, expressions filled in."""
    action: dict[str, Any] = yaml.safe_load(ACTION.read_text("utf-8"))
    given = {name: inputs.get(name, str(spec["default"])) for name, spec in action["inputs"].items()}
    assert inputs.keys() <= action["inputs"].keys()

    def filled(text: str) -> str:
        text = text.replace("${{ github.action_path }}", str(ACTION.parent))
        text = re.sub(r"\$\{\{ inputs\.([\w-]+) \}\}", lambda m: given[m[1]], text)
        assert "${{" not in text, text
        return text

    found = []
    for step in action["runs"]["steps"]:
        assert step["shell"] == "bash"
        assert "${{" not in step["run"], "an input inside a script could run as code; hand it over as a variable"
        step["env"] = {name: filled(value) for name, value in step.get("env", {}).items()}
        step["always"] = "always()" in step.get("if", "")
        if "inputs.format-check" not in step.get("if", "") or given["format-check"] == "true":
            found.append(step)
    return found


def act(folder: Path, inputs: dict[str, str]) -> tuple[int, str]:
    """Run the steps as a runner does (bash -eo pipefail), all but the installation: this Python has Wyeline."""
    output = folder.parent / "github-output"
    code, printed = 0, ""
    for step in steps(inputs):
        if step["name"] == "Install Wyeline":
            assert (Path(step["env"]["ACTION"]) / "../../.." / "pyproject.toml").resolve() == ROOT / "pyproject.toml"
            continue
        if code and not step["always"]:
            continue
        done = subprocess.run(
            ["bash", "--noprofile", "--norc", "-eo", "pipefail", "-c", step["run"]],
            cwd=folder,
            env={**environment(folder.parent), **step["env"], "GITHUB_OUTPUT": str(output)},
            capture_output=True,
            text=True,
            check=False,
        )
        printed += done.stdout + done.stderr
        code = code or done.returncode
    return code, printed


@pytest.mark.skipif(sys.platform == "win32", reason="needs bash")
def test_the_steps_of_the_action_check_and_leave_a_log(tmp_path: Path) -> None:
    folder = tmp_path / "plans; touch gone"
    folder.mkdir()
    model = folder / "site.wye"
    model.write_text(WRONG, "utf-8")
    code, printed = act(folder, {})
    assert code == 1 and "::error file=site.wye,line=5" in printed
    log = json.loads((folder / "wyeline.sarif").read_text("utf-8"))
    assert [r["ruleId"] for r in log["runs"][0]["results"] if r["level"] == "error"] == ["leg-voltage-mismatch"]
    assert (tmp_path / "github-output").read_text("utf-8") == "sarif-file=wyeline.sarif\n"
    model.write_text(CLEAN, "utf-8")
    (folder / "wyeline.sarif").unlink()
    assert act(folder, {"path": "site.wye", "sarif-file": ""})[0] == 0
    assert not (folder / "wyeline.sarif").exists()
    model.write_text(CLEAN.replace("480Y/277            bus", "480Y/277   bus"), "utf-8")
    assert act(folder, {})[0] == 1
    assert act(folder, {"format-check": "false"})[0] == 0
    assert act(folder, {"path": "$(touch gone)"})[0] == 2
    assert not (folder / "gone").exists()


@pytest.mark.skipif(sys.platform == "win32", reason="needs bash")
def test_the_gitlab_job_leaves_its_reports(tmp_path: Path) -> None:
    job = yaml.safe_load(GITLAB.read_text("utf-8"))["wyeline"]
    folder = tmp_path / "plans"
    folder.mkdir()
    (folder / "site.wye").write_text(WRONG, "utf-8")
    done = subprocess.run(
        ["bash", "-eo", "pipefail", "-c", "\n".join(job["script"])],
        cwd=folder,
        env={**environment(tmp_path), **job["variables"]},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    for report in job["artifacts"]["reports"].values():
        assert "leg-voltage-mismatch" in (folder / report).read_text("utf-8")
