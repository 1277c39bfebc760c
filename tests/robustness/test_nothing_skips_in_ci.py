"""A test that CI leaves out by mistake would look like one that passes."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

TESTS = {
    "mark": "import pytest\n@pytest.mark.skipif(True, reason='why')\ndef test_it(): pass\n",
    "word": "import pytest\ndef test_it(): pytest.skip('why')\n",
    "import": "import pytest\ndef test_it(): pytest.importorskip('no_such_thing', reason='why')\n",
    "module": "import pytest\npytest.importorskip('no_such_thing', reason='why')\ndef test_it(): pass\n",
}


@pytest.mark.parametrize("how", TESTS)
def test_a_skip_is_a_failure_in_ci_and_none_elsewhere(tmp_path: Path, how: str) -> None:
    shutil.copy(Path(__file__).parents[1] / "conftest.py", tmp_path)
    (tmp_path / "test_it.py").write_text(TESTS[how])
    (tmp_path / "test_other.py").write_text("def test_other(): pass\n")
    for ci, code in (("", 0), ("true", 2 if how == "module" else 1)):
        done = subprocess.run(
            [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", str(tmp_path)],
            cwd=tmp_path,
            env={**os.environ, "CI": ci},
            capture_output=True,
            text=True,
            check=False,
        )
        assert done.returncode == code, done.stdout
        assert ("in CI every test must run" in done.stdout and "why" in done.stdout) == (ci == "true")
