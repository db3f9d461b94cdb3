"""The fumes of a planned day, part by part."""

from __future__ import annotations

from farwall.acid.limits import LIMITS
from farwall.acid.masses import HCL_G_MOL
from farwall.facts.defaults import settle
from farwall.job.acid_day.fumes import words
from farwall.job.acid_day.fumes.air_told import air_needed, ways_told
from farwall.job.acid_day.fumes.ammonia import ammonia_of
from farwall.job.acid_day.fumes.cases import ends
from farwall.job.acid_day.fumes.chromate import chromate_of
from farwall.job.acid_day.fumes.day_of import day_of, ranged, short
from farwall.job.acid_day.fumes.doubts_told import doubts_told
from farwall.job.acid_day.fumes.laid import no_acid, patches_of
from farwall.job.acid_day.fumes.noun import Fumes, LimitTold
from farwall.job.acid_day.fumes.rooms_told import kept_out, rooms_told, sprayer_told
from farwall.job.acid_day.ground import Ground

SHOWN = (
    "hcl-hygienists", "hcl-law", "hcl-california", "hcl-at-once", "hcl-at-once-1994", "hcl-smell",
)  # fmt: skip
SOURCE = (
    "hamer-wu-1972, parker-1965, zeisberg-1925, chilton-colburn-1934, fuller-1966, "
    "hygiene-basics, nicas-2024, mmwr-1994, brown-solvason-1962, house-guess"
)


def fumes_of(ground: Ground) -> Fumes:
    """What the air of each room holds while its film dries, with ranges; when it is clear."""
    limits = tuple(_told(key) for key in SHOWN)
    settled = settle(ground.job)
    starts_at = ground.plan.starts_at
    patches = patches_of(ground.plan, ground.job.floor.rooms)
    if not patches or no_acid(settled, patches):
        why = words.NO_ACID if patches else words.NOTHING_SPRAYED
        said = (why, *words.STANDING)
        return Fumes(limits=limits, starts_at=starts_at, warnings=said)
    day = day_of(ground, settled, patches)
    rooms = rooms_told(day)
    return Fumes(
        rooms=rooms,
        sprayer=sprayer_told(day),
        ways=ways_told(day),
        needed=air_needed(day),
        kept_out=kept_out(day),
        unknowns=doubts_told(day),
        limits=limits,
        chromate=chromate_of(settled, patches, day.air),
        ammonia=ammonia_of(ground.job, day.air, float(day.volume_m3.sum())),
        acid_g=short(float(day.laid_mol[0]) * HCL_G_MOL),
        to_air_percent=ranged(ends(day.share_to_air * 100)),
        temperature_c=round(day.air.conditions.surface_c, 1),
        standing=day.air.house.standing,
        air_changes_h=short(day.air.air_changes_h),
        source=SOURCE,
        starts_at=starts_at,
        warnings=words.warnings_of(settled, ground, patches, rooms),
    )


def _told(key: str) -> LimitTold:
    one = LIMITS[key]
    return LimitTold(
        key, one.by, one.kind, one.ppm, one.mg_m3, one.year, one.rank.value,
        one.year_rank.value if one.year else "", one.source,
    )  # fmt: skip
