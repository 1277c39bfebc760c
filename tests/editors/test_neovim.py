"""The story in Neovim 0.11, headless, with the configuration that ships."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path

import pytest
from locate import CONFIGS, program
from story import Story


@pytest.mark.editor_nvim
def test_the_story_in_neovim(story: Story) -> None:
    enter = f"set runtimepath^={CONFIGS / 'neovim'} | filetype plugin on | syntax on"
    driver = str(Path(__file__).parent / "neovim_story.lua")
    nvim = program("nvim", "neovim")
    story.play([nvim, "--headless", "-u", "NONE", "-i", "NONE", "--cmd", enter, "-S", driver], timeout_s=150)


@pytest.mark.editor_nvim
@pytest.mark.parametrize("columns", [40, 80])
def test_a_finding_beside_its_line_is_not_cut_off(columns: int) -> None:
    text = (
        "`LP-2` wants 120/240; `MSB` gives 208Y/120\n"
        "why: A and B are 120° apart, so 208 V lies between them and not 240 V, and their neutral carries full current"
    )
    show = f"lua io.write(require('wyeline').broken(vim.json.decode([==[{json.dumps(text)}]==]), {columns}))"
    enter = f"set runtimepath^={CONFIGS / 'neovim'}"
    run = subprocess.run(
        [program("nvim", "neovim"), *"--headless -u NONE -i NONE --cmd".split(), enter, "-c", show, "-c", "qa!"],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=60,
        check=False,
    )
    lines = run.stdout.splitlines()
    assert all(len(line) <= columns for line in lines), lines
    assert " ".join(run.stdout.split()) == " ".join(text.split()), "no word is lost"
    assert lines[0] == ("`LP-2` wants 120/240; `MSB` gives" if columns == 40 else text.split("\n")[0])
