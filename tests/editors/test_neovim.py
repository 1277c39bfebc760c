"""The story in Neovim 0.11, headless, with the configuration that ships."""

from __future__ import annotations

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
