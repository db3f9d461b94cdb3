"""When this job's floor may be sealed: its sealer's limits against the hours that are known."""

from __future__ import annotations

from datetime import datetime

from farwall.air.conditions import Conditions
from farwall.air.sealers import DISAGREE, SealerLimits, limits_of, margin_words
from farwall.air.sealing import HourToSeal, Sealing, Window, coats_in, may_seal, windows
from farwall.air.weather import Forecast, WeatherFile
from farwall.days.words import at_words
from farwall.errors import Mistake, Refused
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.job.lasting import lasting_of
from farwall.job.seal_earliest import Earliest, earliest_of
from farwall.job.sun_slab import worse
from farwall.job.sun_slab_words import sun_slab_warnings
from farwall.nouns import dataclass
from farwall.units import clock_words, f_from_c

LABEL_WINS = "The sealer's label wins over every figure here."
COLD_BED = "Read the slab, not the air: heated air over a cold slab deceives, first at doorways."
NOT_DRY = (
    "A window is not enough: the floor must be dry (no dark islands, the meter back at its "
    "reading before the cleaning), pH and white rag passed. First a test patch of 3 × 3 ft."
)
WHICH = "Which sealer is not told: the strictest limits of all types were taken. Read its label."

_TOLD_WHOLE_H = 6
_SAYS_HOW = "Write day, time and offset from UTC, such as 2027-05-04T07:30:00-06:00."


@dataclass(frozen=True)
class SealingPlan:
    """The sealer's limits, every hour's word, the windows, and what must be said beside them."""

    limits: SealerLimits
    hours: tuple[Sealing, ...]
    windows: tuple[Window, ...]
    coats: tuple[datetime, ...]
    """The earliest row of hours for all coats once the floor has surely dried down; else empty."""
    notes: tuple[str, ...]
    advised: tuple[str, ...]
    dried: Earliest | None = None
    """When it has dried down, by the clocks; None without weather."""
    us: bool = False
    """Whether it is told in °F and am, pm first."""


def sealing_of(
    job: Job, weather: WeatherFile | Forecast | None, *, starts_at: datetime
) -> SealingPlan | None:
    """Windows to seal in from the job's start on, by weather, or by what the survey read.

    starts_at: taken when the job tells no start. Without weather one stretch of
    conditions that stay, and only when slab, air and humidity were all read;
    else None: nothing is guessed. Raises `Refused` for a start without an offset.
    """
    limits = limits_of(job.sealer)
    dried: Earliest | None = None
    in_sun: dict[str, tuple[HourToSeal, ...]] = {}
    said: tuple[str, ...] = ()
    if weather is None:
        hours = _as_read(job, starts_at)
    else:
        lasting = lasting_of(settle(job, starts_at=starts_at.isoformat()), weather)
        dried = earliest_of(lasting)
        clock = lasting.starts_at.tzinfo
        hours = tuple(
            HourToSeal(one.starts_at.astimezone(clock), one.conditions) for one in lasting.hours
        )
        in_sun = {
            room: tuple(HourToSeal(one.starts_at.astimezone(clock), one.conditions) for one in lit)
            for room, lit in lasting.sun.hours(lasting.hours).items()
        }
        said = sun_slab_warnings(lasting)
    if not hours:
        return None
    us = job.wishes.units == "us"
    found = may_seal(hours, limits, us=us)
    for room, lit in in_sun.items():
        found = worse(found, may_seal(lit, limits, us=us), room)
    notes = [LABEL_WINS, COLD_BED, NOT_DRY, *said]
    if job.sealer.type is None:
        notes.insert(0, WHICH)
    if weather is None:
        notes.append("Only the survey's readings: the night is not in them. Give a forecast.")
    dry = [one for one in found if dried is not None and one.starts_at >= dried.sure_at]
    coats = coats_in(dry, limits)
    return SealingPlan(limits, found, windows(found), coats, tuple(notes), DISAGREE, dried, us=us)


def coats_in_words(plan: SealingPlan) -> str:
    """When each coat may begin at the earliest, or that no row of hours holds them all."""
    if not plan.coats:
        return f"no row of hours is known that holds {plan.limits.coats} coats{_dried(plan)}"
    times = [at_words(one, us=plan.us) for one in plan.coats]
    return "earliest: first coat " + ", next ".join(times) + _dried(plan)


def _dried(plan: SealingPlan) -> str:
    """When the floor has dried down by its clock, likely and surely."""
    if plan.dried is None:
        return ""
    zone = plan.hours[0].starts_at.tzinfo
    likely, sure = plan.dried.at_likely, plan.dried.sure_at.astimezone(zone)
    told = f", likely {at_words(likely.astimezone(zone), us=plan.us)}" if likely is not None else ""
    return f" (dried down by its clock on {at_words(sure, us=plan.us)} at the late end{told})"


def _as_read(job: Job, starts_at: datetime) -> tuple[HourToSeal, ...]:
    survey = job.survey
    if survey.slab_c is None or survey.air_c is None or survey.rh_percent is None:
        return ()
    start = starts_at if job.starts_at is None else datetime.fromisoformat(job.starts_at)
    if start.tzinfo is None:
        raise Refused(Mistake("starts_at", "The start does not say its offset.", _SAYS_HOW))
    read = settle(job).survey
    now = Conditions(read.slab_c, read.air_c, read.rh_percent, read.air_speed_m_s)
    return (HourToSeal(start, now),)


def limits_in_words(limits: SealerLimits, *, us: bool = False) -> str:
    """What the sealer bears, in one line, and what of it came from the label."""
    told = "the label" if len(limits.told) >= 9 else "its type's usual, until the label is read"
    least, most = (_both(one, us=us) for one in (limits.least_slab_c, limits.most_slab_c))
    margin = margin_words(limits.least_margin_k, us=us)
    return (
        f"{limits.name}: slab {least} to {most}, {margin} or more above the dew "
        f"point, air at most {limits.most_rh_percent:g} %; next coat after "
        f"{limits.recoat_from_h:g} to {limits.recoat_to_h:g} h ({told})"
    )


def window_in_words(window: Window, *, us: bool = False) -> str:
    """`Mon 4 May 9:00 to 15:00: go`, with the reasons where it is not."""
    first, ends = window.starts_at, window.ends_at
    same = ends.date() == first.date()
    last = clock_words(ends, us=us) if same else at_words(ends, us=us)
    word = {"go": "go", "care": "go, with care", "no": "no"}[window.word]
    told = window.reasons if window.hours <= _TOLD_WHOLE_H else window.kinds
    why = f" ({'; '.join(told)})" if told else ""
    return f"{at_words(first, us=us)} to {last}: {word}{why}"


def _both(value_c: float, *, us: bool) -> str:
    celsius, fahrenheit = f"{value_c:.0f} °C", f"{f_from_c(value_c):.0f} °F"
    return f"{fahrenheit} ({celsius})" if us else f"{celsius} ({fahrenheit})"
