"""How often an hour a room's air must change to keep a steady release below a limit."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum
from farwall.job.sums.room_air import MG_M3_PER_PPM, MIXED, RELEASE, VOLUME


def reckon(given: Given) -> Result:
    """n = 60·G/(V·C). Source: [hygiene-basics]."""
    limit = given.maybe("limit_mg_m3")
    if limit is None:
        limit = given.number("limit_ppm") * MG_M3_PER_PPM
    release_mg_min = given.number("release_g_min") * 1000
    an_hour = release_mg_min * 60 / (given.number("volume_m3") * limit)
    return {
        "air_changes_per_h": an_hour,
        "flow_m3_h": an_hour * given.number("volume_m3"),
        "limit_mg_m3": limit,
        "limit_ppm": limit / MG_M3_PER_PPM,
        "rank": Rank.PUBLISHED.value,
        "source": "hygiene-basics",
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
