"""Minutes until moving air has carried a share of what is in it away."""

from __future__ import annotations

from farwall.acid.room import MOST_MIXING, purge_min
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum

NO_SOURCE = "This holds once nothing more is given off; a wet acid floor gives off until it dries."


def reckon(given: Given) -> Result:
    """Minutes, without any going on of the release. Source: [mmwr-1994], table S3-1.

    Where no `mixing` was given, `low`, `likely` and `high` are those of 1, 3 and 10.
    """
    mixing = given.usual("mixing", 1.0)
    minutes = purge_min(
        air_changes_h=given.number("air_changes_per_h"),
        removal_percent=given.number("removal_percent"),
        mixing=mixing,
    )
    warnings: list[object] = [NO_SOURCE]
    if "mixing" not in given:
        warnings.append("Air is taken to mix at once; in a real room take 3 or more.")
    spread: Result = {}
    if "mixing" not in given:
        spread = {"low": minutes, "likely": 3 * minutes, "high": MOST_MIXING * minutes}
    return {
        "minutes": minutes,
        **spread,
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
