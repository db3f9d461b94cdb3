"""The waits of a seal day: next coat, when it must be abraded, walking, furniture, rugs."""

from __future__ import annotations

from datetime import datetime

from farwall.air.conditions import REFERENCE, Conditions
from farwall.air.learned import Factor, Watched, factor
from farwall.air.sealers import SealerLimits
from farwall.air.waits import DAY_MIN, HOUR_MIN, SEALER, Course, Wait, steady, through
from farwall.evidence import Rank, Span
from farwall.facts.plan import Clock
from farwall.facts.sealer import Sealer
from farwall.job.lasting import Lasting
from farwall.job.looks import paired
from farwall.job.seal_day.films import PRACTICE, SHEET, film_of
from farwall.job.waits import Waits
from farwall.nouns import dataclass

RECOAT = "dry to recoat"
ABRADE = "abrade after"
WET_EDGE = "wet edge"
_KNIT = ("water acrylic", "floor finish", "penetrating")
_LABEL_LATE = 1.25
"""A label's earliest hour is that of a mild day and a thin coat: the late end is a guess."""
_UNTOLD_LATEST = (1.0, 1.5, 2.0)
"""Where no label tells the latest hour: its type's safe end, and how much later: guesses."""


@dataclass(frozen=True)
class SealWaits:
    """The waits of one sealer through the hours of its days."""

    sealer: Sealer
    limits: SealerLimits
    lasting: Lasting
    floor_dry: Waits

    def recoat(self, coat: str, ends_at: datetime) -> Clock:
        """From the end of a coat to the next: never sooner than the label, later in the cold.

        What was watched on this floor moves the likely and the late end.
        """
        begins_min = _minutes(self.lasting, ends_at)
        found, usual = self._learned(), factor(SEALER.spread)
        told = "recoat_from_h" in self.limits.told
        from_min = self.limits.recoat_from_h * HOUR_MIN
        likely_h, high_h = film_of(self.sealer).recoat_h
        likely, high = (
            (from_min, _LABEL_LATE * from_min) if told else (likely_h * HOUR_MIN, high_h * HOUR_MIN)
        )
        course = self._course(ends_at, begins_min)
        ends = [
            course.until(worth)
            for worth in (
                from_min,
                likely * found.likely / usual.likely,
                high * found.high / usual.high,
            )
        ]
        low, mid, late = (_at_least(end, from_min) for end in ends)
        mid = None if mid is None or low is None else max(mid, low)
        late = None if late is None or mid is None else max(late, mid)
        source = SHEET if told else f"{PRACTICE}, house-guess; the sealer's label wins"
        rank = Rank.MEASURED if told else Rank.PRACTICE
        if found.seen:
            rank, source = Rank.LEARNED, f"{source}, watched {found.seen} times on this floor"
        return _clock(coat, RECOAT, (low or from_min, mid, late), (rank, source))

    def abrade(self, coat: str, begins_min: float) -> Clock:
        """From the beginning of a coat: after this the next one holds only on an abraded film."""
        latest = self.limits.recoat_to_h * HOUR_MIN
        told = "recoat_to_h" in self.limits.told
        shares = (1.0, 1.0, 1.0) if told else _UNTOLD_LATEST
        source = SHEET if told else f"{PRACTICE}, house-guess; the sealer's label wins"
        rank = Rank.MEASURED if told else Rank.PRACTICE
        return _clock(coat, ABRADE, [latest * one for one in shares], (rank, source), begins_min)

    def after(self, coat: str, ends_min: float) -> tuple[Clock, ...]:
        """Socks, shoes, furniture and rugs, from the end of the last coat."""
        walk = self.limits.walk_h * HOUR_MIN
        told = "walk_h" in self.limits.told
        rank, source = (Rank.MEASURED, SHEET) if told else (Rank.PRACTICE, PRACTICE)
        furniture = self.limits.furniture_h * HOUR_MIN
        set_ = "furniture_h" in self.limits.told
        least = furniture if set_ else min(3 * DAY_MIN, furniture)
        own, from_ = (Rank.MEASURED, SHEET) if set_ else (Rank.PRACTICE, PRACTICE)
        rows = (
            ("clean socks", (max(walk, 12 * HOUR_MIN), max(walk, 18 * HOUR_MIN),
                                     max(walk, DAY_MIN)), rank, source),
            ("shoes", (max(walk, DAY_MIN), max(walk, DAY_MIN), max(walk, 3 * DAY_MIN)),
             rank, source),
            ("furniture, felt feet", (least, max(least, (least + furniture) / 2), furniture), own,
             from_),
            ("rugs that breathe", (14 * DAY_MIN, 21 * DAY_MIN, 30 * DAY_MIN), Rank.PRACTICE,
             PRACTICE),
        )  # fmt: skip
        return tuple(_clock(coat, name, ends, (r, s), ends_min) for name, ends, r, s in rows)

    def wet_edge(self, coat: str, span: Span, at_min: float) -> Clock:
        """The shortest wet edge of any room at the start of a coat."""
        return _clock(
            coat, WET_EDGE, (span.low, span.likely, span.high), (span.rank, span.source), at_min
        )

    def _course(self, ends_at: datetime, begins_min: float) -> Course:
        wait = Wait(
            RECOAT, 1.0, lambda now: pace_of(self.sealer, now), SEALER.spread, 4 * DAY_MIN, ""
        )
        if not self.lasting.hours:
            return steady(wait, self.lasting.conditions(begins_min))
        return through(wait, self.lasting.hours, begins=ends_at)

    def _learned(self) -> Factor:
        """What was watched of this floor's next coat, as a share of the usual."""
        seen = []
        usual_min = film_of(self.sealer).recoat_h[0] * HOUR_MIN
        for one, since_min in paired(self.lasting.job.job.seen):
            if one.clock != SEALER.name:
                continue
            room = one.room or f"another spot, {one.after_min:g}"
            share, since = one.after_min / usual_min, since_min / usual_min
            seen.append(Watched(room, share, one.ended, since))
        return factor(SEALER.spread, seen)


def pace_of(sealer: Sealer, now: Conditions) -> float:
    """How fast a film gets ready for the next coat: a one-part water-based one as it knits
    (`air.waits`), others twice as fast over a slab 10 K warmer (a guess)."""
    if sealer.type in _KNIT:
        return SEALER.pace(now)
    return float(2.0 ** ((now.surface_c - REFERENCE.surface_c) / 10))


def _minutes(lasting: Lasting, moment: datetime) -> float:
    return (moment - lasting.starts_at).total_seconds() / 60


def _at_least(end: float | None, least: float) -> float | None:
    return None if end is None else max(end, least)


def _clock(
    coat: str,
    name: str,
    ends: tuple[float | None, ...] | list[float],
    ground: tuple[Rank, str],
    begins_min: float | None = None,
) -> Clock:
    low, likely, high = (None if end is None else round(end, 1) for end in ends)
    assert low is not None
    begins = None if begins_min is None else round(begins_min, 1)
    return Clock(coat, name, low, likely, high, ground[0].value, ground[1], begins)
