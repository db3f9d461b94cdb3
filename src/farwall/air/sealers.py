"""Sealers by generic type: what each bears, until its label is read. The label wins.

Temperatures of the slab: 40 °F for a water acrylic, 50 °F for an acrylic
finish, 55 °F for some two-part sealers [trade-press]; a maker warns that
water-based sealers turn chalky below 50 °F, so a water acrylic is held to
50 °F here (the stricter) [stain-sheets]. 55 to 85 °F is usual where nothing
else is said. Recoat, walk and furniture are common practice, no source.
"""

from __future__ import annotations

import math

from farwall.evidence import Rank
from farwall.facts.sealer import Sealer, SealerType
from farwall.nouns import dataclass
from farwall.units import c_from_f

MARGIN_K = 3.0
"""Least margin of a slab over the dew point [iso-8502-4]. Its source says 5 °F beside it, rounded
(3 K are 5.4 °F): 3 K, the stricter, is held, and both are told as the source has them."""
_SAID_F = 5
MOST_RH_PERCENT = 85.0
"""Most humidity of the air while a coating is laid [iso-8502-4]."""
GOOD_RH_PERCENT = 60.0
"""A room that is dry enough to seal in: common practice, no source."""
DISAGREE = (
    (
        "40 °F for a water acrylic, 50 °F for an acrylic finish, 55 °F for some two-part sealers "
        "(a trade newsletter)"
    ),
    "water-based sealers turn chalky below 50 °F (a maker's repair note)",
    "55 to 85 °F (a sealer's page)",
)


def margin_words(margin_k: float, *, us: bool) -> str:
    """A least margin over the dew point in both units, the reader's first: `5 °F (3 K)`.

    The rule's own as its source tells it [iso-8502-4], a label's to a tenth.
    """
    kelvin, fahrenheit = _margin(margin_k)
    return f"{fahrenheit} ({kelvin})" if us else f"{kelvin} ({fahrenheit})"


def wanted_words(limit_k: float, short_k: float, *, us: bool) -> str:
    """The least margin, beside one that may fall short of it: `5 °F (3 K)`.

    Between 5 °F and 3 K the rule's two figures part: there it says which is held, lest 5.2 °F be
    told as less than 5 °F.
    """
    if limit_k == MARGIN_K and short_k * 1.8 >= _SAID_F and short_k < limit_k:
        return "{}, which the rule rounds to {}".format(*_margin(limit_k))
    return margin_words(limit_k, us=us)


def apart_words(value_k: float, *, us: bool) -> str:
    """A difference in both units, cut off, not rounded: one short of a limit must not read so."""
    kelvin, fahrenheit = f"{_cut(value_k)} K", f"{_cut(value_k * 1.8)} °F"
    return f"{fahrenheit} ({kelvin})" if us else f"{kelvin} ({fahrenheit})"


def _margin(margin_k: float) -> tuple[str, str]:
    fahrenheit = _SAID_F if margin_k == MARGIN_K else round(margin_k * 1.8, 1)
    return f"{round(margin_k, 1):g} K", f"{fahrenheit:g} °F"


def _cut(value: float) -> str:
    return f"{math.floor(10 * value + 1e-6) / 10:.1f}"


@dataclass(frozen=True)
class SealerLimits:
    """What a sealer bears: °C, %, K, hours. `told`: keys that came from the label."""

    name: str
    least_slab_c: float
    most_slab_c: float
    most_rh_percent: float
    least_margin_k: float
    coats: int
    recoat_from_h: float
    recoat_to_h: float
    walk_h: float
    furniture_h: float
    told: frozenset[str] = frozenset()
    rank: Rank = Rank.PRACTICE
    source: str = "trade-press, common-practice; the label wins"


def _of_type(
    name: str, least_f: float, waits_h: tuple[float, float, float, float], *, coats: int
) -> SealerLimits:
    return SealerLimits(
        name, c_from_f(least_f), c_from_f(85), MOST_RH_PERCENT, MARGIN_K, coats, *waits_h
    )


BY_TYPE: dict[SealerType, SealerLimits] = {
    "water acrylic": _of_type("water acrylic", 50, (2, 24, 4, 168), coats=2),
    "solvent acrylic": _of_type("solvent acrylic", 55, (4, 24, 6, 168), coats=2),
    "water epoxy and urethane": _of_type(
        "water epoxy and urethane", 55, (12, 24, 24, 168), coats=2
    ),
    "epoxy": _of_type("epoxy", 55, (12, 24, 24, 168), coats=1),
    "penetrating": _of_type("penetrating", 55, (2, 24, 8, 72), coats=1),
    "floor finish": _of_type("floor finish", 50, (0.75, 24, 1, 168), coats=3),
}
"""Safe ends: longest waits of each type's range, the warmest least slab that is told of it."""
UNKNOWN = _of_type("sealer of unknown type", 55, (12, 24, 24, 168), coats=2)
_KEYS = (
    "least_slab_c",
    "most_slab_c",
    "most_rh_percent",
    "least_margin_k",
    "coats",
    "recoat_from_h",
    "recoat_to_h",
    "walk_h",
    "furniture_h",
)


def limits_of(sealer: Sealer) -> SealerLimits:
    """What the sealer bears: its label where told, else its type, else the strictest of all.

    A told recoat end below a table's other end moves that end along.
    """
    usual = BY_TYPE[sealer.type] if sealer.type is not None else UNKNOWN
    told = {key: getattr(sealer, key) for key in _KEYS if getattr(sealer, key) is not None}
    values = {key: told.get(key, getattr(usual, key)) for key in _KEYS}
    if "recoat_to_h" not in told:
        values["recoat_to_h"] = max(values["recoat_to_h"], values["recoat_from_h"])
    elif "recoat_from_h" not in told:
        values["recoat_from_h"] = min(values["recoat_from_h"], values["recoat_to_h"])
    all_told = len(told) == len(_KEYS)
    return SealerLimits(
        name=usual.name,
        told=frozenset(told),
        rank=Rank.MEASURED if all_told else usual.rank,
        source="the sealer's label" if all_told else usual.source,
        **values,
    )
