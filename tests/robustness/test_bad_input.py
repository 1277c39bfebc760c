"""Whatever is given to the command line: a clear message with its place, nothing lost elsewhere, no fault, no hang."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest
from command_line import without_privileges, write, wyeline

SOUND = "utility U1 208Y/120  fault 10 kA, x/r 4\npanel P1 208Y/120  bus 100 A\nfeeder U1 -> P1  100 A 3p\n"
TELLING = "panel FAR 208Y/120  bus 100 A\n"
"""A model with one finding of its own: it must be told whatever stands beside it."""


@pytest.mark.parametrize(
    ("content", "says"),
    [
        (os.urandom(2000) + b"\0", "UTF-8"),
        (b"\xff\xfep\0a\0n\0e\0l\0", "UTF-16"),
        ("panel P1 208Y/120 // caf\u00e9\n".encode("latin-1"), "byte 0xe9 on line 1"),
        (b"wye 1\npanel P1 208Y/120\n\xf0\x28\n", "line 3"),
    ],
    ids=["binary", "utf-16", "latin-1", "broken-utf-8"],
)
def test_what_is_no_text_is_refused_with_its_place_and_hides_nothing(tmp_path: Path, content: bytes, says: str) -> None:
    write(tmp_path, bad=content, good=TELLING)
    ran = wyeline("check", "bad.wye", "good.wye", cwd=tmp_path)
    assert ran.code == 2
    assert "bad.wye" in ran.err and says in ran.err
    assert "nothing feeds `FAR`" in ran.out
    write(tmp_path, root=f'include "bad.wye"\n{TELLING}')
    included = wyeline("check", "root.wye", cwd=tmp_path)
    assert included.code == 1
    assert "root.wye:1:9: error include-unreadable" in included.out and says in included.out
    assert "nothing feeds `FAR`" in included.out
    listed = json.loads(wyeline("check", "bad.wye", "--format", "json", cwd=tmp_path).out)
    assert listed["findings"] == []


def test_an_empty_file_says_that_it_states_nothing(tmp_path: Path) -> None:
    write(tmp_path, empty="", remarks="// later\n\n")
    for name in ("empty.wye", "remarks.wye"):
        ran = wyeline("check", name, "--quiet", cwd=tmp_path)
        assert ran.code == 0 and f"{name}:1:1: advice nothing-stated" in ran.out


@pytest.mark.parametrize(
    "line",
    [
        "panel P2 208Y/120  " + "x" * 1_000_000,
        "panel " + "P" * 1_000_000 + " 208Y/120",
        "feeder P1 -> " + "Q" * 1_000_000,
        'panel P2 208Y/120  "' + "y" * 1_000_000,
        "panel P2 208Y/120  bus " + "9" * 1_000_000 + " A",
        "// " + "z" * 1_000_000,
        "panel P2 208Y/120 " + "like T " * 20_000,
    ],
    ids=["word", "name", "reference", "text", "figure", "comment", "repeated"],
)
def test_a_line_of_a_megabyte(tmp_path: Path, line: str) -> None:
    write(tmp_path, long=f"{SOUND}{line}\n{TELLING}")
    for command in ("check", "show", "format"):
        ran = wyeline(command, "long.wye", cwd=tmp_path)
        if command == "check":
            assert "nothing feeds `FAR`" in ran.out
            assert len(ran.out) < 8 * len(line) + 1000 * ran.out.count("\n"), "messages grow with the text, not faster"


def test_a_hundred_thousand_blocks(tmp_path: Path) -> None:
    boards = "".join(f"panel P-{i} 208Y/120  bus 100 A\nfeeder U1 -> P-{i}  100 A 3p\n" for i in range(49_990))
    write(tmp_path, many=SOUND + boards + TELLING)
    ran = wyeline("check", "many.wye", "--quiet", cwd=tmp_path)
    assert ran.code == 1 and "nothing feeds `FAR`" in ran.out


def test_deep_and_circular_includes(tmp_path: Path) -> None:
    for i in range(1500):
        (tmp_path / f"f{i}.wye").write_text(f'include "f{i + 1}.wye"\n')
    ran = wyeline("check", "f0.wye", "--quiet", cwd=tmp_path)
    assert ran.code == 1 and "f64.wye:1:9: error include-cycle: includes are nested more than 64 deep" in ran.out
    write(tmp_path, a=f'include "b.wye"\n{TELLING}', b='include "a.wye"\n', own='include "own.wye"\n')
    ran = wyeline("check", "a.wye", "--quiet", cwd=tmp_path)
    assert "b.wye:1:9: error include-cycle" in ran.out and "nothing feeds `FAR`" in ran.out
    assert "own.wye:1:9: error include-cycle" in wyeline("check", "own.wye", "--quiet", cwd=tmp_path).out


OUTSIDE = [
    "../out/secret.wye",
    "sub/../../out/secret.wye",
    "..\\out\\secret.wye",
    "link.wye",
    "linked/secret.wye",
    "{out}/secret.wye",
    "//server/share/secret.wye",
    "\\\\server\\share\\secret.wye",
    "\\\\?\\C:\\secret.wye",
    "C:/secret.wye",
    "c:secret.wye",
    "file:///etc/passwd",
    "/dev/zero",
]


@pytest.mark.parametrize("target", OUTSIDE)
def test_an_include_outside_the_workspace_is_refused(tmp_path: Path, target: str) -> None:
    out, site = tmp_path / "out", tmp_path / "site"
    out.mkdir()
    (site / "sub").mkdir(parents=True)
    (out / "secret.wye").write_text("panel SECRET 208Y/120\n")
    (site / "link.wye").symlink_to(out / "secret.wye")
    (site / "linked").symlink_to(out, target_is_directory=True)
    (site / "wyeline.toml").touch()
    write(site, root=f'include "{target.format(out=out)}"\n{TELLING}')
    ran = wyeline("check", "root.wye", "--quiet", cwd=site)
    assert "root.wye:1:9: error include-" in ran.out and "SECRET" not in ran.out
    assert "nothing feeds `FAR`" in ran.out
    assert "SECRET" not in wyeline("show", "root.wye", cwd=site).out


def test_a_link_that_stays_inside_is_followed_and_one_that_hangs_is_told(tmp_path: Path) -> None:
    (tmp_path / "wyeline.toml").touch()
    write(tmp_path, real=TELLING, root='include "link.wye"\ninclude "gone.wye"\ninclude "round.wye"\n')
    (tmp_path / "link.wye").symlink_to(tmp_path / "real.wye")
    (tmp_path / "gone.wye").symlink_to(tmp_path / "nothing.wye")
    (tmp_path / "round.wye").symlink_to(tmp_path / "round.wye")
    ran = wyeline("check", "root.wye", "--quiet", cwd=tmp_path)
    assert "nothing feeds `FAR`" in ran.out
    assert "root.wye:2:9: error include-unreadable" in ran.out and "root.wye:3:9: error include-" in ran.out


def test_case_folding_does_not_lead_outside() -> None:
    """On Windows ``C:\\Site`` and ``c:\\site`` are one folder, and ``C:\\Site2`` is another."""
    import ntpath

    assert ntpath.commonpath([ntpath.normcase("C:\\Site\\a"), ntpath.normcase("c:\\site")]) == "c:\\site"
    assert ntpath.commonpath([ntpath.normcase("C:\\Site2\\a"), ntpath.normcase("c:\\site")]) != "c:\\site"


def test_an_unreadable_file_and_odd_files(tmp_path: Path) -> None:
    write(tmp_path, locked=TELLING, root=f'include "locked.wye"\ninclude "pipe.wye"\ninclude "folder.wye"\n{TELLING}')
    (tmp_path / "locked.wye").chmod(0)
    os.mkfifo(tmp_path / "pipe.wye")
    (tmp_path / "folder.wye").mkdir()
    ran = wyeline("check", "root.wye", "--quiet", cwd=tmp_path, **without_privileges())
    assert "root.wye:1:9: error include-unreadable" in ran.out and "not permitted" in ran.out
    assert "no regular file" in ran.out and "a folder, not a file" in ran.out
    assert "nothing feeds `FAR`" in ran.out
    alone = wyeline("check", "locked.wye", cwd=tmp_path, **without_privileges())
    assert alone.code == 2 and "locked.wye: reading it is not permitted" in alone.err


def test_contradictions_are_each_told_at_their_place(tmp_path: Path) -> None:
    lines = {
        "utility U1 208Y/120  fault 10 kA, x/r 4": "",
        "utility U2 208Y/120  fault 10 kA, x/r 4": "",
        "panel A1 208Y/120  bus 100 A": "",
        "panel A1 208Y/120  bus 200 A": "error duplicate-tag",
        "panel B-x 208Y/120": "",
        "panel B-X 208Y/120": "warning names-differ-by-case",
        "type panel T0 like T0": "error type-refers-to-itself",
        "type panel T1 like T2": "error type-refers-to-itself",
        "type panel T2 like T1": "",
        "panel D1 like T1": "warning unfed-equipment",
        "feeder U1 -> A1  100 A 3p": "",
        "feeder U2 -> A1  100 A 3p": "error second-supply",
        "feeder A1 -> NOWHERE": "error dangling-reference",
        "feeder NOBODY -> A1": "error dangling-reference",
        "feeder A1 -> A1": "error feeder-to-itself",
        "panel \u041a\u0423\u0425\u041d\u042f 208Y/120": "warning unfed-equipment",
        "panel \u53a8\u623f 208Y/120": "warning unfed-equipment: nothing feeds `\u53a8\u623f`",
        "panel K\u00fcche 208Y/120": "warning unfed-equipment",
        "panel Ku\u0308che 208Y/120": "warning names-differ-by-case",
    }
    write(tmp_path, site="\n".join(lines) + "\n")
    ran = wyeline("check", "site.wye", "--quiet", cwd=tmp_path)
    for row, wanted in enumerate(lines.values(), start=1):
        told = [line for line in ran.out.splitlines() if line.startswith(f"site.wye:{row}:")]
        assert not wanted or any(wanted in line for line in told), (row, wanted, told)
    for command in (["show", "site.wye"], ["connect", "site.wye", "U1", "D1"], ["connect", "site.wye", "A1", "A1"]):
        wyeline(*command, cwd=tmp_path)


@pytest.mark.parametrize("arguments", [[], ["chek"], ["check"], ["check", ""], ["check", "gone.wye"], ["check", "."]])
def test_slips_on_the_command_line(tmp_path: Path, arguments: list[str]) -> None:
    ran = wyeline(*arguments, cwd=tmp_path)
    assert ran.code == 2 and ran.all.strip()


@pytest.mark.parametrize(
    "name", ["sp ace.wye", "-rf.wye", "$(touch x).wye", "a\nb.wye", "\u00fc\U0001f600.wye", "%s.wye"]
)
def test_odd_names_of_files(tmp_path: Path, name: str) -> None:
    (tmp_path / name).write_text(TELLING)
    ran = wyeline("check", "--", name, cwd=tmp_path)
    assert ran.code == 1 and "nothing feeds `FAR`" in ran.out
    assert sorted(p.name for p in tmp_path.iterdir()) == [name]
