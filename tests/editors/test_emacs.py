"""The story in Emacs with eglot, in batch, with the configuration that ships."""

from __future__ import annotations

from pathlib import Path

import pytest
from locate import CONFIGS, program
from story import Story


@pytest.mark.editor_emacs
def test_the_story_in_emacs(story: Story) -> None:
    driver = str(Path(__file__).parent / "emacs_story.el")
    story.play([program("emacs", "emacs"), "-Q", "--batch", "-L", str(CONFIGS / "emacs"), "-l", driver], timeout_s=150)
