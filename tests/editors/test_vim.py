"""The story in Vim with ALE, in batch, with the configuration that ships.

The fixture is ASCII: ALE 3.3 takes the protocol's columns for bytes, as the page on Vim says.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from locate import CONFIGS, missing, program
from story import NEW_PANEL, Story

ALE = Path("/usr/share/vim-ale")


@pytest.mark.editor_vim
def test_the_story_in_vim(plain_story: Story) -> None:
    if not ALE.is_dir():
        missing("ALE", "vim")
    rc = plain_story.folder / "vimrc"
    rc.write_text(
        f"""
set nocompatible encoding=utf-8 hidden
set runtimepath^={CONFIGS / "vim"}
packadd! ale
let g:ale_linters_explicit = 1
let g:ale_linters = {{'wye': ['wyeline']}}
let g:ale_hover_to_preview = 1
filetype plugin on
syntax on
"""
    )
    driver = str(Path(__file__).parent / "vim_story.vim")
    command = [program("vim.nox", "vim"), "-Nu", str(rc), "-i", "NONE", "-es", "-S", driver]
    # Which of the offered fixes; then Ctrl+U over the old name and the new one.
    plain_story.play(command, timeout_s=150, keys=f"1\n\x15{NEW_PANEL}\n")
