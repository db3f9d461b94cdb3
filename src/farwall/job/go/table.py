"""All rules in one table, by the stage at which they count."""

from __future__ import annotations

from farwall.job.go import (
    chromate_rules,
    drop_rules,
    ground_rules,
    house_rules,
    mix_rules,
    moisture_rules,
    people_rules,
    ready_rules,
    slab_rules,
    waste_rules,
    watch_rules,
)
from farwall.job.go.noun import Rule

RULES: tuple[Rule, ...] = (
    *slab_rules.RULES,
    *mix_rules.RULES,
    *drop_rules.RULES,
    *ground_rules.RULES,
    *moisture_rules.RULES,
    *house_rules.RULES,
    *waste_rules.RULES,
    *chromate_rules.RULES,
    *people_rules.RULES,
    *ready_rules.RULES,
    *watch_rules.RULES,
)
