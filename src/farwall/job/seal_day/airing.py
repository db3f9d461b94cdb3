"""How much air carries the solvent of a coat off, by the sum `farwall reckon air-changes`."""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.job.seal_day.films import has_solvent
from farwall.job.sums.air_changes import reckon
from farwall.job.sums.noun import Given
from farwall.nouns import dataclass

CEILING_M = 2.6
"""A usual ceiling: a guess until it is measured."""


@dataclass(frozen=True)
class SealAir:
    """Air for one coat: release [g/min], changes an hour, flow; what was left out.

    None for a figure that nobody told what it needs.
    """

    coat: str
    release_g_min: float | None
    air_changes_per_h: float | None
    flow_m3_h: float | None
    rank: str
    source: str
    warnings: tuple[str, ...]


ASK = (
    "How much air is needed cannot be said: enter solvent_g_l (grams of solvent a litre) and "
    "solvent_limit_mg_m3 (its limit in air) from the sheet."
)
DRIES_AS_LAID = (
    "Taken as leaving at the pace at which it is laid; a coat gives the most in its first "
    "minutes, right over the floor, and goes on after the last stroke."
)
FLAME = (
    "This figure is for lungs, not for flames: below it vapour on the floor can still take fire."
)


def air_for(job: Job, coat: str, *, litres: float, minutes: float) -> SealAir | None:
    """The air changes that keep a coat's solvent below its limit; None for a sealer without.

    litres are laid in so many minutes; all solvent in them leaves meanwhile. Ceiling 2.6 m (a
    guess), room well mixed. Source: [hygiene-basics].
    """
    sealer = job.sealer
    if not has_solvent(sealer) and not sealer.solvent_g_l:
        return None
    grams, limit = sealer.solvent_g_l, sealer.solvent_limit_mg_m3
    if not grams or limit is None or minutes <= 0:
        return SealAir(coat, None, None, None, "guess", "house-guess", (ASK,))
    release = grams * litres / minutes
    volume = CEILING_M * sum(room.polygon.shape.area for room in job.floor.rooms)
    found = reckon(
        Given({"volume_m3": volume, "release_g_min": release, "limit_mg_m3": float(limit)})
    )
    warnings = found["warnings"]
    assert isinstance(warnings, list)
    return SealAir(
        coat,
        round(release, 2),
        round(float(str(found["air_changes_per_h"])), 1),
        round(float(str(found["flow_m3_h"])), 0),
        "guess",
        f"{found['source']}, house-guess",
        (*(str(one) for one in warnings), DRIES_AS_LAID, FLAME),
    )
