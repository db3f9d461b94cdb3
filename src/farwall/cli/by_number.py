"""`key=value` with the plan's own ids where a person tells coats, fields and bands by numbers."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.facts.plan import Plan

LOG_KEYS = frozenset({"coat", "field", "band"})
DAY_KEYS = frozenset({"done", "band"})


def with_id(told: str, plan: Plan, keys: frozenset[str]) -> str:
    """`band=2.3.14` as `band=second.3.14`, where the key is one of these and the plan has it."""
    from farwall.facts.numbered import coats_of, named

    key, equals, text = told.partition("=")
    if key not in keys or not equals:
        return told
    return f"{key}={named(coats_of(plan), text.strip())}"
