"""What the editor tests share."""

from __future__ import annotations

from pathlib import Path

import pytest
from story import Story


@pytest.fixture
def story(tmp_path: Path) -> Story:
    """The story with a board's name that UTF-8, UTF-16 and UTF-32 count differently."""
    return Story(tmp_path, '"Küche 😀"')


@pytest.fixture
def plain_story(tmp_path: Path) -> Story:
    """The story in ASCII, for editors that take the protocol's columns for bytes."""
    return Story(tmp_path, "BOARD")
