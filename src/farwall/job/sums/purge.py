"""Minutes until moving air has carried a share of what is in it away."""

from __future__ import annotations

import math

from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum

MOST_MIXING = 10.0
NO_SOURCE = "This holds once nothing more is given off; a wet acid floor gives off until it dries."


def purge_min(*, air_changes_h: float, removal_percent: float, mixing: float = 1.0) -> float:
    """Minutes to remove this share of what was in the air. [min]

    mixing: 1 where air mixes at once, up to 10 where it stands in corners.
    Source: [mmwr-1994], table S3-1 and its footnote.
    """
    return mixing * -math.log1p(-removal_percent / 100) / air_changes_h * 60


def reckon(given: Given) -> Result:
    """Minutes, without any going on of the release."""
    mixing = given.usual("mixing", 1.0)
    minutes = purge_min(
        air_changes_h=given.number("air_changes_per_h"),
        removal_percent=given.number("removal_percent"),
        mixing=mixing,
    )
    warnings: list[object] = [NO_SOURCE]
    if "mixing" not in given:
        warnings.append("Air is taken to mix at once; in a real room take 3 or more.")
    return {
        "minutes": minutes,
        "mixing": mixing,
        "rank": Rank.PUBLISHED.value,
        "source": "mmwr-1994",
        "warnings": warnings,
    }


SUM = Sum(
    name="purge",
    what="minutes until moving air has carried a share of a vapour away",
    arguments=(
        Argument("air_changes_per_h", bounds=Bounds(0.0, 1000.0, above=True), needed=True),
        Argument("removal_percent", bounds=Bounds(0.0, 99.9999999), needed=True),
        Argument("mixing", bounds=Bounds(1.0, MOST_MIXING)),
    ),
    reckon=reckon,
)
