"""The README's tour is run as written: every output in it is the program's own.

``python tests/test_readme.py --write`` renews the outputs.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).parents[1]
README = ROOT / "README.md"
BLOCK = re.compile(r"^```(?P<kind>wye|console)(?: (?P<name>\S+))?\n(?P<body>.*?)^```$", re.S | re.M)
BIN = Path(sys.executable).parent


def renewed(text: str) -> str:
    """The README with every console block's output as the program prints it now."""
    with tempfile.TemporaryDirectory() as folder:
        environment = {
            **os.environ,
            "PATH": f"{BIN}{os.pathsep}{os.environ['PATH']}",
            "WYELINE_CACHE": "off",
            "PYTHONIOENCODING": "utf-8",
        }

        def block(match: re.Match[str]) -> str:
            if match["kind"] == "wye":
                if match["name"]:
                    Path(folder, match["name"]).write_text(match["body"], "utf-8")
                return match[0]
            lines = []
            for command in re.findall(r"^\$ (.*)$", match["body"], re.M):
                done = subprocess.run(
                    command,
                    shell=True,
                    cwd=folder,
                    env=environment,
                    capture_output=True,
                    encoding="utf-8",
                    check=False,
                )
                assert done.returncode in (0, 1), done.stderr
                lines += [f"$ {command}", (done.stdout + done.stderr).rstrip("\n")]
            return "```console\n" + "\n".join(lines) + "\n```"

        return BLOCK.sub(block, text)


def test_the_tour_prints_what_the_readme_says() -> None:
    text = README.read_text("utf-8")
    assert renewed(text) == text


def test_the_readme_opens_with_the_job_and_two_commands() -> None:
    text = README.read_text("utf-8")
    assert text.split("\n\n")[1].startswith("A drafter has to connect")
    commands = re.findall(r"^```sh\n(.*?)\n```$", text, re.S | re.M)
    assert len(commands) >= 2
    assert "wyeline check" in commands[0] and "\n" not in commands[0]
    assert "pytest" in commands[1] and "\n" not in commands[1]


if __name__ == "__main__" and "--write" in sys.argv:
    README.write_text(renewed(README.read_text("utf-8")), "utf-8")
