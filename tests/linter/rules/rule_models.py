"""Models in memory for tests of rules."""

from __future__ import annotations

from wyeline_grammar.sources import Files, SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding

ROOT = "/m/model.wye"


def analysis_of(text: str, **more: str) -> Analysis:
    """The analysis of one text; ``more`` are further files of the folder by name without ending."""
    texts = {ROOT: text, **{f"/m/{name}.wye": other for name, other in more.items()}}

    def read(path: str) -> str:
        name = path[path.index("/m/") :].replace("\\", "/") if "/m/" in path else path
        if name not in texts:
            raise SourceError(path, "there is no such file")
        return texts[name]

    return Analysis(ROOT, Files(read), "/m")


def check(text: str) -> list[Finding]:
    return analysis_of(text).findings()


def rules_in(text: str) -> list[str]:
    """The rules that a text draws, in the order of the findings."""
    return [f.rule for f in check(text)]
