"""Calls of the command line as no manual shows them: slips in words, odd paths, closed and narrow streams, encodings.

Every one ends with a documented exit code (``command_line.wyeline`` looks at that) and a line that says what to do.
"""

from __future__ import annotations

import errno
import io
import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from command_line import WYELINE, environment, write, wyeline

from wyeline_linter import cli

SITE = (
    "utility U1 208Y/120  fault 10 kA, x/r 4\npanel P1 208Y/120  bus 100 A, MLO\nfeeder U1 -> P1  100 A 3p\n"
    'panel ŁÓDŹ-1 208Y/120  bus 100 A, MLO, "Büro → 中"\nfeeder  P1 -> ŁÓDŹ-1  60 A 3p\n'
)
on_posix = pytest.mark.skipif(os.name == "nt", reason="streams and names of POSIX systems")


@pytest.fixture
def site(tmp_path: Path) -> Path:
    write(tmp_path, site=SITE)
    return tmp_path


# words


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("chek site.wye", "wyeline: there is no command `chek`; the nearest: check"),
        ("nonsense", "wyeline: there is no command `nonsense`; there are check, show,"),
        ("--verson", "there is no option `--verson`; the nearest: --version"),
        ("check site.wye --formt=json", "wyeline check: there is no option `--formt`; the nearest: --format"),
        ("check site.wye --format xml", "invalid choice: 'xml'"),
        ("-q check site.wye", "`-q` stands behind the command"),
        ("connect site.wye U1 P1 P2", "`P2` is one word too many"),
        ("connect site.wye U1", "the following arguments are required: TO; see `wyeline connect --help`"),
        ("check site.wye --unsafe", "--unsafe: it belongs to --fix or --diff"),
        ("check site.wye --output -", "--output: without it the output goes to standard output already"),
        ("explain site.wye P1 demnd", "`demnd`: no figure is called so; the nearest: demand"),
        ("compare site.wye nope.wye", "nope.wye: there is no such file or folder"),
        ("check nope.wye", "nope.wye: there is no such file"),
        ("format site.txt", "site.txt: its name does not end in .wye; nothing was set"),
    ],
)
def test_a_slip_in_the_words_is_told_in_one_line(site: Path, words: str, told: str) -> None:
    (site / "site.txt").write_text("feeder MSB   -> P1   a note\n")
    ran = wyeline(*words.split(), cwd=site)
    assert ran.code == 2 and not ran.out
    assert told in ran.err and ran.err.count("\n") == 1, ran.err
    assert (site / "site.txt").read_text() == "feeder MSB   -> P1   a note\n"


def test_no_option_may_be_shortened(site: Path) -> None:
    """A `--fi` that is taken for `--fix` would write files."""
    ran = wyeline("check", "--fi", "site.wye", cwd=site)
    assert ran.code == 2 and "there is no option `--fi`" in ran.err
    assert (site / "site.wye").read_text("utf-8") == SITE


@pytest.mark.parametrize(
    "words",
    [
        ["check", ""],
        ["check", "--fix", ""],
        ["format", ""],
        ["show", ""],
        ["connect", "", "A", "B"],
        ["report", ""],
        ["report", "site.wye", "-o", ""],
        ["new", ""],
        ["check", "site.wye", "--output", ""],
        ["compare", ""],
    ],
)
def test_an_empty_word_is_not_the_current_folder(site: Path, words: list[str]) -> None:
    """As a script writes it whose variable is not set."""
    ran = wyeline(*words, cwd=site)
    assert ran.code == 2 and "an empty word names no" in ran.err
    assert [p.name for p in site.iterdir()] == ["site.wye"] and (site / "site.wye").read_text("utf-8") == SITE


# paths


@on_posix
def test_paths_of_every_sort(site: Path) -> None:
    deep = site / "a b" / "ünï 中"
    deep.mkdir(parents=True)
    (site / "site.wye").rename(deep / "sité 'x' $y.wye")
    assert "a b/ünï 中/sité 'x' $y.wye:2:" in wyeline("check", "a b", "-q", cwd=site).out
    (site / "link.wye").symlink_to(deep / "sité 'x' $y.wye")
    assert wyeline("check", "link.wye", "-q", cwd=site).out.startswith("link.wye:1:")
    (site / "lost.wye").symlink_to("nowhere.wye")
    assert "lost.wye: this link leads to no file" in wyeline("check", "lost.wye", cwd=site).err
    (site / "round.wye").symlink_to("round.wye")
    os.mkfifo(site / "pipe.wye")
    ran = wyeline("check", ".", "-q", cwd=site)
    assert ran.code == 2 and "no regular file" in ran.err and "sité" in ran.out, "the rest is judged all the same"


@pytest.mark.skipif(sys.platform != "linux", reason="file names of any bytes")
@pytest.mark.parametrize("form", ["text", "json", "sarif", "github", "gitlab", "junit"])
def test_a_file_name_of_any_bytes(site: Path, form: str) -> None:
    name = os.fsdecode(b"\xff\xfe.wye")
    (site / "site.wye").rename(site / name)
    ran = wyeline("check", name, "--format", form, cwd=site)
    assert ran.code == 1 and "known-slip" in ran.out
    if form in ("json", "sarif", "gitlab"):
        json.loads(ran.out)
    for other in (["show"], ["format", "--diff"], ["report", "-o", "out"], ["size"]):
        wyeline(other[0], name, *other[1:], cwd=site)
    assert (site / "out" / "report.html").exists()


# streams


@pytest.mark.parametrize("encoding", ["ascii", "cp1252", "utf-16"])
@pytest.mark.parametrize(
    "words",
    [
        ["check", "site.wye"],
        ["check", "site.wye", "--fix", "--diff"],
        ["check", "site.wye", "--format", "json"],
        ["show", "site.wye"],
        ["show", "site.wye", "--json"],
        ["connect", "site.wye", "P1", "ŁÓDŹ-1"],
        ["size", "site.wye"],
        ["explain", "site.wye", "ŁÓDŹ-1", "voltage"],
        ["rules", "--markdown"],
        ["format", "site.wye", "--diff"],
        ["compare", "site.wye", "other.wye"],
        ["new", "nü"],
    ],
    ids=" ".join,
)
def test_an_output_that_cannot_show_every_letter(site: Path, words: list[str], encoding: str) -> None:
    write(site, other=SITE.replace("100 A 3p", "90 A 3p"))
    ran = wyeline(*words, cwd=site, env={"PYTHONIOENCODING": encoding, "PYTHONUTF8": "0"})
    assert ran.code in (0, 1), ran
    if words[-1] in ("--diff", "json", "--json"):
        assert "ŁÓDŹ-1" in ran.out, "what programs read is UTF-8"


def test_a_reader_that_goes_away_is_no_fault_on_windows_either(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    """There the system calls a pipe without a reader an invalid argument."""

    class NoReader(io.StringIO):
        def write(self, _: str) -> int:
            raise OSError(errno.EINVAL, "Invalid argument")

        def fileno(self) -> int:
            raise OSError("none")

    monkeypatch.setattr(sys, "stdout", NoReader())
    assert cli.main(["rules"]) == 3, "where it is no such pipe"
    assert "a fault of Wyeline" in capfd.readouterr().err
    monkeypatch.setattr(sys, "platform", "win32")
    assert cli.main(["rules"]) == 0
    assert capfd.readouterr().err == ""


def run_with(words: list[str], folder: Path, closed: str, **options: Any) -> tuple[int, bytes]:
    """A run in a shell that closes a stream first."""
    command = " ".join([*WYELINE, *words, closed])
    done = subprocess.run(
        ["/bin/sh", "-c", command],
        cwd=folder,
        env=environment(),
        capture_output=True,
        timeout=60,
        check=False,
        **options,
    )
    return done.returncode, done.stdout + done.stderr


@on_posix
@pytest.mark.parametrize(
    ("words", "closed", "code", "told"),
    [
        (["check", "site.wye"], ">&-", 1, b""),
        (["show", "site.wye"], ">&-", 0, b""),
        (["check", "nope.wye"], "2>&-", 2, b""),
        (["check", "-"], "<&-", 2, b"wyeline: -: standard input is closed\n"),
        (["format", "-"], "<&-", 2, b"wyeline: -: standard input is closed\n"),
    ],
)
def test_a_closed_stream_is_no_fault(site: Path, words: list[str], closed: str, code: int, told: bytes) -> None:
    assert run_with(words, site, closed) == (code, told)


@on_posix
@pytest.mark.parametrize("cached", [False, True])
def test_a_reader_that_has_seen_enough_does_not_change_the_verdict(tmp_path: Path, cached: bool) -> None:
    many = "".join(f"panel P-{i} 208Y/120  bus 100 A, MLO\nfeeder U1 -> P-{i}  100A 3p\n" for i in range(400))
    write(tmp_path, site="utility U1 208Y/120  fault 10 kA, x/r 4\n" + many)
    env = environment(WYELINE_CACHE=str(tmp_path / "cache") if cached else "off")
    if cached:
        subprocess.run([*WYELINE, "check", "site.wye"], cwd=tmp_path, env=env, stdout=subprocess.DEVNULL, check=False)
    for both in (False, True):  # errors may go into the same pipe
        stderr = subprocess.STDOUT if both else subprocess.PIPE
        process = subprocess.Popen(
            [*WYELINE, "check", "site.wye"], cwd=tmp_path, env=env, stdout=subprocess.PIPE, stderr=stderr
        )
        assert process.stdout is not None
        process.stdout.readline()
        process.stdout.close()
        told = b"" if process.stderr is None else process.stderr.read()
        assert (process.wait(60), told) == (1, b"")
        if process.stderr is not None:
            process.stderr.close()


@on_posix
@pytest.mark.parametrize(
    ("setting", "coloured"),
    [({}, True), ({"NO_COLOR": "1"}, False), ({"NO_COLOR": ""}, True), ({"TERM": "dumb"}, False)],
)
def test_colour_is_for_terminals_that_want_it(site: Path, setting: dict[str, str], coloured: bool) -> None:
    """NO_COLOR counts where it is set and not empty (https://no-color.org)."""
    import pty

    ours, theirs = pty.openpty()
    env = {"TERM": "xterm", **{k: v for k, v in environment().items() if k not in ("NO_COLOR", "TERM")}} | setting
    process = subprocess.Popen([*WYELINE, "check", "site.wye", "-q"], cwd=site, env=env, stdout=theirs)
    os.close(theirs)
    seen = b""
    while True:
        try:
            piece = os.read(ours, 4096)
        except OSError:  # the other end is closed
            break
        if not piece:
            break
        seen += piece
    os.close(ours)
    assert process.wait(60) == 1
    assert (b"\x1b[" in seen) == coloured and b"known-slip" in seen


@pytest.mark.parametrize("columns", ["1", "7", "0", "-3", "x", "9" * 14])
def test_help_fits_any_terminal(site: Path, columns: str) -> None:
    for words in (["--help"], ["check", "--help"], ["report", "--help"]):
        assert wyeline(*words, cwd=site, env={"COLUMNS": columns}).code == 0


# standard input


def test_what_stands_on_standard_input_keeps_its_line_ends_and_letters(site: Path) -> None:
    text = "panel  Ä-1 208Y/120  bus 100 A\r\nfeeder  X -> Ä-1\r\n"
    for env in ({}, {"LC_ALL": "POSIX", "PYTHONCOERCECLOCALE": "0", "PYTHONUTF8": "0", "PYTHONIOENCODING": "ascii"}):
        for mark in (b"", b"\xef\xbb\xbf"):
            ran = wyeline("format", "-", cwd=site, env=env, input=mark + text.encode())
            assert ran.code == 0
            assert "panel       Ä-1" in ran.out and ran.out.count("\r\n") == 2 == ran.out.count("\n")
    ran = wyeline("format", "-", cwd=site, input=b"panel \xff")
    assert ran.code == 2 and "standard input: it is not UTF-8 text (byte 0xff on line 1)" in ran.err


# patches


@pytest.mark.skipif(not os.path.exists("/usr/bin/git"), reason="git applies the patch")
@pytest.mark.parametrize("end", ["\n", ""])
@pytest.mark.parametrize(
    "command", [["format", "site.wye", "--diff"], ["check", "site.wye", "--fix", "--diff"]], ids=" ".join
)
def test_a_patch_can_be_applied(tmp_path: Path, command: list[str], end: str) -> None:
    """Whatever stands at the end of the file, and whatever a text holds that other programs take for a line end."""
    write(tmp_path, site=SITE.replace("Büro", "B\u2028\x0c\x85ro").rstrip("\n") + end)
    ran = wyeline(*command, cwd=tmp_path)
    assert ran.code == 1 and ran.out
    done = subprocess.run(["git", "apply", "-"], cwd=tmp_path, input=ran.out.encode(), capture_output=True, check=False)
    assert done.returncode == 0, done.stderr
    applied = (tmp_path / "site.wye").read_bytes()
    write(tmp_path, site=SITE.replace("Büro", "B\u2028\x0c\x85ro").rstrip("\n") + end)
    wyeline(*(w for w in command if w != "--diff"), cwd=tmp_path)
    assert (tmp_path / "site.wye").read_bytes() == applied


@pytest.mark.skipif(not os.path.exists("/usr/bin/git"), reason="git holds the revision")
def test_the_repository_is_the_one_that_the_model_lies_in(tmp_path: Path) -> None:
    """Not the one whose hook has started the comparison."""
    who = ["-c", "user.name=A Drafter", "-c", "user.email=drafter@example.org"]
    for name, amps in (("own", "100 A 3p"), ("hook", "70 A 3p")):
        folder = tmp_path / name
        folder.mkdir()
        write(folder, site=SITE.replace("100 A 3p", amps))
        for words in (["init", "-q"], ["add", "."], [*who, "commit", "-q", "-m", "as it was"]):
            subprocess.run(["git", *words], cwd=folder, check=True)
    own = tmp_path / "own"
    write(own, site=SITE.replace("100 A 3p", "90 A 3p"))
    truth = wyeline("compare", "HEAD", cwd=own)
    assert "went from 100 to 90 A" in truth.out
    hook = {"GIT_DIR": str(tmp_path / "hook" / ".git"), "GIT_INDEX_FILE": str(tmp_path / "hook" / ".git" / "index")}
    assert wyeline("compare", "HEAD", cwd=own, env=hook) == truth
    assert wyeline("compare", "HEAD", cwd=own, env={"GIT_DIR": ".git", "GIT_WORK_TREE": "/"}) == truth
