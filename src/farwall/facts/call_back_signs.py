"""Causes of a call-back by name, and how much a sign of each kind weighs before any was closed."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

CALL_BACK_CAUSES = (
    "residue", "damp", "cold or wet sealing", "too thick", "walked on early", "cleaner", "rug",
    "no finish", "salts", "standing water", "wear", "what lay there", "copper", "colour as sampled",
    "crack",
)  # fmt: skip
"""In the order of the table in `job.call_back.causes`, which says what each is."""

WEIGHTS: Mapping[str, int] = MappingProxyType({
    "look": 3, "when": 1, "winter": 1, "where": 2, "wet": 2, "cleaner": 3, "rug": 3,
    "ph": 3, "rag": 3, "powder": 3, "rinses": 1, "margin": 3, "slab": 3, "air": 2, "dried": 2,
    "sealer": 2, "stain": 2, "finish": 2, "damp": 3, "copper": 2,
})  # fmt: skip
"""How much a sign of each kind weighs: a guess, where no closed call-back says more."""
