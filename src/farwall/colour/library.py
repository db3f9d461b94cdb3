"""The library of colour, imported when it is asked for: it takes a third of a second and more."""

from __future__ import annotations

import warnings
from functools import cache
from typing import Any


@cache
def science() -> Any:
    """colour-science; its word that no plotting library is there is not passed on."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        import colour

    return colour
