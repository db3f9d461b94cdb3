"""How far two colours in CIELAB lie apart, by CIEDE2000."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.difference import de2000
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Given, Result, Sum
from farwall.job.sums.numbers import numbers

LARGEST = 5.0
"""Beyond about so much the formula was not fitted [ciede2000]."""


def reckon(given: Given) -> Result:
    """CIEDE2000 of two colours L, a, b. Source: [ciede2000]. Raises Refused."""
    mistakes: list[Mistake] = []
    one, other = (_lab(key, given.texts(key), mistakes) for key in ("lab1", "lab2"))
    if mistakes:
        raise Refused(*mistakes, about="The sum cannot be done with this.")
    found = float(de2000(one, other))
    told = "The formula was fitted to differences of up to about 5: beyond, it ranks and no more."
    return {
        "de2000": found,
        "rank": Rank.PUBLISHED.value,
        "source": "ciede2000",
        "warnings": [told] if found > LARGEST else [],
    }


def _lab(key: str, texts: Sequence[str], mistakes: list[Mistake]) -> list[float]:
    found = numbers(key, texts, mistakes)
    if len(found) == len(texts) != 3:
        mistakes.append(Mistake(key, f"It has {len(found)} numbers.", "Write L,a,b."))
    elif found and not 0 <= found[0] <= 100:
        mistakes.append(Mistake(key, f"L is {found[0]:g}.", "It lies between 0 and 100."))
    return found


SUM = Sum(
    name="colour-difference",
    what="how far two colours lie apart, by CIEDE2000",
    arguments=(
        Argument("lab1", needed=True, several=True), Argument("lab2", needed=True, several=True),
    ),
    reckon=reckon,
)  # fmt: skip
