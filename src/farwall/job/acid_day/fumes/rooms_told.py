"""Room by room, and who sprays: greatest ppm, means, when the air is clear again."""

from __future__ import annotations

from farwall.acid.limits import CEILING_MIN, DAY_H, LIMITS
from farwall.acid.rooms import mean_over
from farwall.job.acid_day.fumes.cases import ends
from farwall.job.acid_day.fumes.course import PPM, stays_below_from
from farwall.job.acid_day.fumes.day_of import Day, ranged
from farwall.job.acid_day.fumes.noun import At, Below, KeptOut, RoomFumes, Sprayer

CLEARS = ("hcl-smell", "hcl-hygienists", "hcl-law", "hcl-at-once")
DRAWN_MIN = 5.0


def rooms_told(day: Day) -> tuple[RoomFumes, ...]:
    """Every room of the house, sprayed or not."""
    sprayed = {one.room for one in day.patches}
    course = day.course
    peaks = ends(course.cases.max(axis=0))
    means = ends(mean_over(CEILING_MIN, course.run.held, step_min=course.run.step_min) * PPM)
    at = course.likely.argmax(axis=0)
    return tuple(
        RoomFumes(
            room=room.id,
            name=room.label,
            volume_m3=round(float(day.volume_m3[n]), 1),
            sprayed=room.id in sprayed,
            peak_ppm=ranged(peaks, n),
            peak_at_min=round(float(course.minutes[at[n]]), 1),
            mean_15_ppm=ranged(means, n),
            below=tuple(_below(day, key, n) for key in CLEARS),
            curve=_curve(day, n),
        )
        for n, room in enumerate(day.ground.job.floor.rooms)
    )


def _below(day: Day, key: str, room: int) -> Below:
    ppm, course = LIMITS[key].ppm or 0.0, day.course
    likely, high = (
        stays_below_from(course.minutes, one[:, room], ppm) for one in (course.likely, course.high)
    )
    return Below(key, likely, high)


def _curve(day: Day, room: int) -> tuple[At, ...]:
    course = day.course
    every = max(1, round(DRAWN_MIN / course.run.step_min))
    return tuple(
        At(
            float(course.minutes[n]),
            *(round(float(one[n, room]), 3) for one in (course.low, course.likely, course.high)),
        )
        for n in range(0, course.dense, every)
    )


def sprayer_told(day: Day) -> Sprayer:
    """Who sprays, without a respirator: what the air at the breath holds."""
    run = day.course.run
    minutes = _sprayed_min(day)
    breathed = run.by_person * PPM
    greatest = mean_over(CEILING_MIN, breathed, step_min=run.step_min)
    whole = breathed.sum(axis=0) * run.step_min / (DAY_H * 60)
    return Sprayer(round(minutes, 1), ranged(ends(greatest)), ranged(ends(whole)))


def _sprayed_min(day: Day) -> float:
    """Minutes in which anybody sprays: two at once count once."""
    total, until = 0.0, float("-inf")
    for one in sorted(day.patches, key=lambda patch: patch.at_min):
        ends_min = one.at_min + one.spray_min
        total += max(0.0, ends_min - max(one.at_min, until))
        until = max(until, ends_min)
    return total


def kept_out(day: Day) -> tuple[KeptOut, ...]:
    """After each coat: until when any room is at or above the hygienists' ceiling."""
    course = day.course
    limit = LIMITS["hcl-hygienists"].ppm or 0.0
    coats = dict.fromkeys(one.coat for one in day.patches)
    begins = {coat: min(p.at_min for p in day.patches if p.coat == coat) for coat in coats}
    told = []
    for coat in coats:
        ends_min = max(p.at_min + p.spray_min for p in day.patches if p.coat == coat)
        later = [one for one in begins.values() if one > ends_min]
        until = course.minutes <= min(later, default=float("inf"))
        likely, high = (
            stays_below_from(
                course.minutes[until], one[until].max(axis=1), limit, after_min=ends_min
            )
            for one in (course.likely, course.high)
        )
        told.append(KeptOut(coat, round(ends_min, 1), "hcl-hygienists", likely, high,
                            min(later, default=None)))  # fmt: skip
    return tuple(told)
