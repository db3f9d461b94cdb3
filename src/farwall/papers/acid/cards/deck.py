"""All cards of a job, in the order in which they are needed."""

from __future__ import annotations

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.papers.acid.cards.card import Card
from farwall.papers.acid.cards.first_aid import first_aid_cards
from farwall.papers.acid.cards.mishaps import TRADE_DOSE_KG_L, dose_said, mishap_cards
from farwall.papers.acid.cards.working import working_cards


def deck_of(ground: Ground, day: AcidDay) -> tuple[Card, ...]:  # noqa: ARG001
    """First aid, mishaps, then work."""
    job = ground.job
    dose = dose_said(TRADE_DOSE_KG_L, job.wishes.units, of_this_stain=False)
    return (
        *first_aid_cards(job.emergency),
        *mishap_cards(job.emergency, dose),
        *working_cards(ground.plan, chromate=_chromate(ground), units=job.wishes.units),
    )


def _chromate(ground: Ground) -> bool | None:
    """Whether a stain of the job has it: True for one, None where one is not told, else False."""
    told = [stain.chromate for stain in ground.job.stains] or [None]
    return True if any(told) else None if None in told else False
