"""The pairs of all modules in `es/`, by their English. English is whole in the code itself."""

from __future__ import annotations

import pkgutil
from functools import cache
from importlib import import_module

from farwall.phrasebook import es


@cache
def phrases() -> dict[str, str]:
    """English to Spanish. Raises ValueError where two modules say the same English differently."""
    found: dict[str, str] = {}
    for name in sorted(module.name for module in pkgutil.iter_modules(es.__path__)):
        told: dict[str, str] = import_module(f"{es.__name__}.{name}").PHRASES
        if twice := [one for one in found.keys() & told.keys() if found[one] != told[one]]:
            raise ValueError(f"es/{name}: said otherwise elsewhere: {'; '.join(sorted(twice))}")
        found |= told
    return found
