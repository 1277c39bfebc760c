"""The page of rules is what the rules say of themselves."""

from __future__ import annotations

from pathlib import Path

from wyeline_linter.commands.rules import reference
from wyeline_linter.rules.registry import all_rules

PAGE = Path(__file__).parents[2] / "linter" / "RULES.md"


def test_the_page_is_current() -> None:
    assert PAGE.read_text("utf-8") == reference(), "renew it: wyeline rules --markdown > linter/RULES.md"


def test_every_rule_has_its_place_and_its_link() -> None:
    text = PAGE.read_text("utf-8")
    for name, rule in all_rules().items():
        assert f"\n## {name}\n" in text
        assert f"[{name}](#{name})" in text
        assert rule.why in text
