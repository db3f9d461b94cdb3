"""What a day's figures rest on, and how far each unknown alone moves the likely peak."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.job.acid_day.fumes.cases import AIR, BY_PERSON, DOUBTS, OPEN, STRENGTH, Doubt
from farwall.job.acid_day.fumes.day_of import Day, short
from farwall.job.acid_day.fumes.laid import hcl_percent, strength_told
from farwall.job.acid_day.fumes.noun import Unknown

Three = tuple[float, float, float]


def doubts_told(day: Day) -> tuple[Unknown, ...]:
    """The unknowns, the weightiest first; that of who sprays moves no room and is left out."""
    peaks = day.course.cases.max(axis=(0, 2))
    told = []
    for n, doubt in enumerate(DOUBTS):
        if doubt is BY_PERSON:
            continue
        reach = (float(peaks[0]), float(peaks[1 + 2 * n]), float(peaks[2 + 2 * n]))
        shown, unit, rank, source = _shown(day, doubt)
        low, likely, high = (short(one) for one in shown)
        told.append(
            Unknown(
                doubt.key, low, likely, high, unit, rank.value, source,
                short(min(reach)), short(max(reach)),
            )
        )  # fmt: skip
    return tuple(sorted(told, key=lambda one: one.peak_from_ppm / max(one.peak_to_ppm, 1e-9)))


def _shown(day: Day, doubt: Doubt) -> tuple[Three, str, Rank, str]:
    """Its ends in a unit that a person knows, with rank and source."""
    if doubt is STRENGTH:
        told = all(strength_told(coat.stain) for coat in day.settled.coats)
        percent = max(hcl_percent(coat.stain) for coat in day.settled.coats)
        rank, source = (Rank.MEASURED, "told: sheet") if told else (doubt.rank, doubt.source)
        return percent, "%", rank, source
    if doubt is OPEN:
        found = [one.field.open_time_min for one in day.patches]
        middle = sorted(one.likely for one in found)[len(found) // 2]
        first = found[0]
        rank = Rank(first.rank) if first.rank else doubt.rank
        ends = (min(one.low for one in found), middle, max(one.high for one in found))
        return ends, "min", rank, first.source or doubt.source
    if doubt is AIR:
        now = day.air.air_changes_h
        return (doubt.low * now, now, doubt.high * now), "1/h", doubt.rank, doubt.source
    return (doubt.low, doubt.likely, doubt.high), doubt.unit, doubt.rank, doubt.source
