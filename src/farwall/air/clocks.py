"""The clocks: how long an edge stays live, how long until the next coat.

Three figures of common practice (no source) carry the first form, and it is
fitted to no more than these:

- open time on a normal trowel at 70 °F, 45 % RH, still: 5, 10, 15 min;
- about 2 h between coats on a mild day, 1 to 4 h said elsewhere;
- no edge is trusted beyond 30 min ("15-30 min on a cool tight slab") until a sample is timed.

Away from that mild day they are scaled by evaporation [uno-1998] and suction
(a guess); the model is `air.pace`. A timed sample, made on this slab, replaces
the figures of practice and keeps only the scaling. A slab outside 50-85 °F has
no clock: `Unanswerable` says why (`air.limits`).
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from farwall.air.conditions import Conditions
from farwall.air.limits import insist, slab_verdict
from farwall.air.pace import MaybeMinutes, recoat_min, sheen_loss_min
from farwall.errors import Mistake, Refused
from farwall.evidence import Known, Rank, Span
from farwall.facts import default_table as table
from farwall.nouns import dataclass

if TYPE_CHECKING:  # its nouns load shapely, which a single sum can do without
    from farwall.facts.job import Finish

LONGEST_UNTIMED_MIN = 30.0
DAY_MIN = 24 * 60.0
"""No wait is foretold beyond a day: weather turns first. Longer than that is `None`."""

REPEAT_LOW, REPEAT_HIGH = 0.8, 1.25
"""How well a sheen-loss time repeats on one slab: a guess."""

SUN, DRAUGHT = 0.55, 0.75
"""What is left of the budget in a sun patch, in a felt draught: guesses; both together give the
"hot dry wind halves open time" of common practice."""

_SHORTEST_OF_PRACTICE_MIN = 2.0
_PRACTICE_SOURCE = "common-practice, house-guess, uno-1998"
_TIMED_SOURCE = "sample timed on this slab, uno-1998, house-guess"
_SAME = 0.1
"""A correction of less than a tenth leaves a measurement a measurement."""


@dataclass(frozen=True)
class Timed:
    """A wait watched on this slab: minutes, and the conditions it was watched in.

    Values left out are taken like those of the floor that is asked about.
    """

    minutes: float
    conditions: Conditions | None = None
    m2_per_l: float | None = None
    drop_s: float | None = None
    finish: Finish | None = None


def open_time(
    conditions: Conditions,
    *,
    m2_per_l: float = table.FIRST_COAT_M2_PER_L.usual,
    drop_s: float | None = None,
    finish: Finish | None = None,
    timed: Timed | None = None,
) -> Span:
    """Minutes that a sprayed edge stays live: low, likely, high.

    conditions: slab and air over it. m2_per_l: coverage of the coat as mixed
    [m²/L]. drop_s: seconds a drop took in this room, None when none was tried
    [s]; the finish stands in for it. timed: minutes until a sample on this
    slab lost its sheen, with its own conditions.
    Raises `Unanswerable` when the slab is outside 50-85 °F, `Refused` for a
    coverage or a sample that cannot be. Rank: common practice, or a guess
    where no practice speaks; measured here for a sample timed in about these
    conditions. Laws: more wind or suction never lengthens it, damper air and
    a thicker film never shorten it.
    """
    insist(slab_verdict(surface_c=conditions.surface_c))
    model = sheen_loss_min(conditions, m2_per_l=m2_per_l, drop_s=drop_s, finish=finish)
    if timed is not None:
        _sensible(timed)
        told = timed.drop_s is not None or timed.finish is not None
        then = sheen_loss_min(
            timed.conditions or conditions,
            m2_per_l=timed.m2_per_l or m2_per_l,
            drop_s=timed.drop_s if told else drop_s,
            finish=timed.finish if told else finish,
        )
        return _from_sample(model, then, timed.minutes)
    low, likely, high = (min(one, LONGEST_UNTIMED_MIN) for one in model)
    rank = Rank.PRACTICE if likely >= _SHORTEST_OF_PRACTICE_MIN else Rank.GUESS
    return Span(low, likely, high, rank, _PRACTICE_SOURCE)


def dry_to_recoat(
    conditions: Conditions,
    *,
    m2_per_l: float = table.FIRST_COAT_M2_PER_L.usual,
    timed: Timed | None = None,
) -> Span:
    """Minutes until a coat is dry enough for the next: low, likely, high.

    conditions, m2_per_l: as `open_time`. timed: minutes a sample took to dry
    evenly, with its own conditions. What the slab drank must still evaporate,
    so the wait goes as film over evaporation, sized by common practice's 2 h
    (1-4 h) on a mild day; drop seconds do not enter. `None` where it is not
    dry within a day; the low end then stands at a day at most. Judge by the
    floor: an even light colour, no dark islands.
    Raises as `open_time`. Laws: as there, but for suction.
    """
    insist(slab_verdict(surface_c=conditions.surface_c))
    return within_a_day(recoat_wait(conditions, m2_per_l=m2_per_l, timed=timed))


def recoat_wait(conditions: Conditions, *, m2_per_l: float, timed: Timed | None = None) -> Span:
    """The wait of `dry_to_recoat` with no limit of slab or day; its low end may be infinite."""
    model = recoat_min(conditions, m2_per_l=m2_per_l)
    if timed is None:
        return Span(*model, Rank.PRACTICE, _PRACTICE_SOURCE)
    _sensible(timed)
    then = recoat_min(timed.conditions or conditions, m2_per_l=timed.m2_per_l or m2_per_l)
    return _from_sample(model, then, timed.minutes)


def within_a_day(span: Span) -> Span:
    """The same wait, `None` where it would take more than a day."""
    likely = span.likely if span.likely is not None and span.likely <= DAY_MIN else None
    high = span.high if span.high is not None and span.high <= DAY_MIN else None
    return Span(min(span.low, DAY_MIN), likely, high, span.rank, span.source)


def edge_budget(
    span: Span,
    *,
    sample_min: float | None = None,
    sun: bool = False,
    draught: bool = False,
    learned: Span | None = None,
) -> Known:
    """Minutes that a live edge may age before its neighbour is sprayed: the prudent figure.

    The smaller of the low end of `span` (an open time) and half of the timed
    sample, as measured (`sample_min`) and as `span` brings it to the present
    conditions; less in a sun patch and in a draught. learned: the open time as
    sightings on this floor taught it; its low end then stands in for that of
    `span`, and half of the sample still holds. A sighting is a sample like
    another: half of what it foretells holds too. Common practice (half the
    open time) with guesses for sun and draught.
    """
    ends = [span.low if learned is None else learned.low]
    if learned is not None and learned.likely is not None:
        ends.append(learned.likely / 2)
    if sample_min is not None:
        ends.append(sample_min / 2)
        if span.likely is not None:
            ends.append(span.likely / 2)
    factor = (SUN if sun else 1.0) * (DRAUGHT if draught else 1.0)
    shown = span if learned is None else learned
    rank = Rank.GUESS if sun or draught else shown.rank
    return Known(min(ends) * factor, "min", rank, shown.source)


def _sensible(timed: Timed) -> None:
    if not timed.minutes > 0:
        raise Refused(
            Mistake(
                "sample",
                f"A sample cannot have taken {timed.minutes:g} min.",
                "Give the minutes from spraying to the loss of sheen.",
            )
        )


def _from_sample(now: MaybeMinutes, then: MaybeMinutes, sample_min: float) -> Span:
    """The sample's minutes, scaled by the model from its conditions to the present ones."""
    ratios = [a / b if a is not None else float("inf") for a, b in zip(now, then, strict=True) if b]
    likely = now[1] / then[1] if now[1] is not None and then[1] else None
    if likely is None:
        return Span(sample_min, None, None, Rank.GUESS, _TIMED_SOURCE)
    high = sample_min * max(ratios) * REPEAT_HIGH
    return Span(
        low=sample_min * min(ratios) * REPEAT_LOW,
        likely=sample_min * likely,
        high=high if high < float("inf") else None,
        rank=Rank.MEASURED if abs(likely - 1) <= _SAME else Rank.GUESS,
        source=_TIMED_SOURCE,
    )
