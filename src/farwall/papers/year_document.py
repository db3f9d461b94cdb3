"""A year of floors as a document: each day's hours in short codes and minutes, months, sources."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict
from datetime import date, timedelta
from typing import Any

import numpy as np
from numpy.typing import NDArray

from farwall.air.day import STATION
from farwall.job.year import DAYS, STAINING_H, Year, both_coats, by_day
from farwall.job.year_chain import FROM_H, LONGEST_DAYS, TO_H
from farwall.job.year_hours import MORNING_H, NEEDED_MIN

VERSION = 1
STAIN_CODES = {
    "s": "a coat may be laid and dries within a day",
    "c": "slab below 50 °F",
    "h": "slab above 85 °F",
    "q": "the edge may die before the next band reaches it",
    "d": "it would not dry within a day",
}
SEAL_CODES = {
    "g": "a coat may begin, the next six hours as well",
    "a": "with care: the room's air is above 60 %",
    "c": "slab too cold, now or to come",
    "h": "slab too warm",
    "w": "dew or damp air, now or to come",
    "f": "the slab cools",
}
_ANY_DAY = date(2027, 1, 1)


def year_document(year: Year, *, name: str = "") -> dict[str, Any]:
    """All that `year.json` holds. Minutes are whole; null where it is not dry within a day."""
    return {
        "version": VERSION,
        "place": {**asdict(year.place), "name": name or year.place.city},
        "house": year.standing,
        "sealer": {
            "name": year.limits.name,
            "rank": year.limits.rank.value,
            "source": year.limits.source,
        },
        "rank": "guess",
        "source": "weather file, uno-1998, common-practice, iso-8502-4, house-guess",
        "note": STATION,
        "rules": {
            "work_from_h": FROM_H,
            "work_to_h": TO_H,
            "coat_h": STAINING_H,
            "edge_needs_min": round(NEEDED_MIN, 2),
            "rinse_from_h": MORNING_H,
            "days_at_most": LONGEST_DAYS,
        },
        "stain_codes": STAIN_CODES,
        "seal_codes": SEAL_CODES,
        "months": [asdict(one) for one in year.months],
        "days": _days(year),
    }


def _days(year: Year) -> list[dict[str, Any]]:
    stain, seal = (by_day(one) for one in (_stain_codes(year), _seal_codes(year)))
    likely, high, rinse = (
        by_day(one) for one in (year.stain.likely_min, year.stain.high_min, year.stain.rinse_min)
    )
    next_day = by_day(year.stain.rinsed_next_morning)
    both = both_coats(year.stain)
    return [
        {
            "day": f"{_ANY_DAY + timedelta(days=n):%m-%d}",
            "stain": "".join(map(str, stain[n])),
            "recoat_min": _whole(likely[n]),
            "recoat_high_min": _whole(high[n]),
            "neutralise_high_min": _whole(rinse[n]),
            "rinse_next_morning": "".join("y" if one else "n" for one in next_day[n]),
            "seal": "".join(map(str, seal[n])),
            "both_coats": bool(both[n]),
            "sunrise_h": _hour(year.sunrise_h[n]),
            "sunset_h": _hour(year.sunset_h[n]),
            "days_likely": _day(year.likely_days[n]),
            "days_high": _day(year.high_days[n]),
        }
        for n in range(DAYS)
    ]


def _stain_codes(year: Year) -> NDArray[np.str_]:
    stain = year.stain
    return np.select(
        [stain.cold, stain.hot, stain.too_quick, stain.slow], ["c", "h", "q", "d"], default="s"
    )


def _seal_codes(year: Year) -> NDArray[np.str_]:
    seal = year.seal
    return np.select(
        [seal.cold, seal.hot, seal.damp, seal.cooling, seal.care],
        ["c", "h", "w", "f", "a"],
        default="g",
    )


def _whole(minutes: Sequence[float] | NDArray[np.generic]) -> list[int | None]:
    return [None if np.isnan(float(one)) else round(float(one)) for one in minutes]


def _hour(value: float) -> float | None:
    return None if np.isnan(value) else round(float(value), 2)


def _day(value: float) -> int | None:
    return None if np.isnan(value) else int(value)
