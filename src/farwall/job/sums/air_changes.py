"""How often an hour a room's air must change to keep a steady release below a limit."""

from __future__ import annotations

from farwall.acid.limits import STRICTER, mg_m3_from_ppm, ppm_from_mg_m3
from farwall.acid.room import MOST_MIXING, air_changes_for
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.job.sums.room_air import MIXED, RELEASE, VOLUME, limits_beside
from farwall.units import cfm_from_m3_min

BADLY_MIXED = 3.0
"""What `purge` advises for a real room: common practice, within the 1 to 10 of [mmwr-1994]."""


def reckon(given: Given) -> Result:
    """n = 60·G/(V·C). Source: [hygiene-basics].

    `low` is that of a well-mixed room, `likely` and `high` three and ten times it, for air that
    leaves corners alone: the mixing factors of [mmwr-1994].
    """
    limit = given.maybe("limit_mg_m3")
    if limit is None:
        limit = mg_m3_from_ppm(given.number("limit_ppm"))
    volume_m3 = given.number("volume_m3")
    an_hour = air_changes_for(
        release_g_min=given.number("release_g_min"), volume_m3=volume_m3, limit_mg_m3=limit
    )
    return {
        "air_changes_per_h": an_hour,
        "low": an_hour,
        "likely": BADLY_MIXED * an_hour,
        "high": MOST_MIXING * an_hour,
        "flow_m3_h": an_hour * volume_m3,
        "flow_cfm": cfm_from_m3_min(an_hour * volume_m3 / 60),
        "limit_mg_m3": limit,
        "limit_ppm": ppm_from_mg_m3(limit),
        "limits": limits_beside(),
        "rank": Rank.PUBLISHED.value,
        "source": "hygiene-basics, mmwr-1994",
        "notes": [
            "`low` is for air that mixes at once; in a real room take `likely` or more.",
            STRICTER,
        ],
        "warnings": [MIXED, "This keeps the mean at the limit: a ceiling wants several times it."],
    }


SUM = Sum(
    name="air-changes",
    what="air changes an hour that keep a steady release below a limit",
    arguments=(
        VOLUME,
        RELEASE,
        Argument("limit_mg_m3", bounds=Bounds(0.0, 1e6, above=True)),
        Argument("limit_ppm", bounds=Bounds(0.0, 1e6, above=True)),
    ),
    one_of=(("limit_mg_m3", "limit_ppm"),),
    reckon=reckon,
)
