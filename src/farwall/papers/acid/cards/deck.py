"""All cards of a job, in the order in which they are needed."""

from __future__ import annotations

from farwall.acid.bases import BASES
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.papers.acid.cards.card import Card, Said
from farwall.papers.acid.cards.first_aid import first_aid_cards
from farwall.papers.acid.cards.mishaps import TRADE_DOSE_KG_L, dose_said, mishap_cards
from farwall.papers.acid.cards.working import working_cards


def deck_of(ground: Ground, day: AcidDay) -> tuple[Card, ...]:
    """First aid, mishaps, then work."""
    job = ground.job
    return (
        *first_aid_cards(job.emergency),
        *mishap_cards(job.emergency, _dose(ground, day)),
        *working_cards(ground.plan, chromate=_chromate(ground), units=job.wishes.units),
    )


def _dose(ground: Ground, day: AcidDay) -> Said:
    """Bicarbonate for the worst stain whose strength was told, acid and salts; else the trade's."""
    told = {one.id for one in ground.job.stains if one.hcl_percent_high is not None}
    reckoned = [
        (one.acid_high + one.salts_high) * BASES["NaHCO3"].equivalent_g / 1000
        for one in getattr(day.neutralising, "stains", ())
        if one.stain in told
    ]
    return dose_said(
        max(reckoned, default=TRADE_DOSE_KG_L), ground.job.wishes.units,
        of_this_stain=bool(reckoned),
    )  # fmt: skip


def _chromate(ground: Ground) -> bool | None:
    """Whether a stain of the job has it: True for one, None where one is not told, else False."""
    told = [stain.chromate for stain in ground.job.stains] or [None]
    return True if any(told) else None if None in told else False
