"""The next coat as plain values: SI keys with their US twins, ranks and sources beside. Pure."""

from __future__ import annotations

from typing import Any

from farwall.colour.next_coat import MOST_TOO_DARK, Outlook
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.job.colour.in_words import lab_words
from farwall.job.colour.laid import LaidCoat
from farwall.job.colour.litres import NextLitres
from farwall.job.colour.next_noun import NextAnswer
from farwall.job.colour.say import said
from farwall.job.colour.ways import cut_of
from farwall.units import ft2_from_m2, ft2_per_gal_from_m2_per_l, gal_from_l

Json = dict[str, Any]
DIGITS = 4
BELIEF = "belief of the samples, tried on invented floors"
PRACTICE = "common practice, no source"


def next_document(job: Job, found: NextAnswer) -> Json:
    """All of an answer."""
    told = said(job, found)
    document = {
        "job": found.job,
        "verdict": found.verdict,
        "would": found.would,
        "why": found.why,
        "coat": found.coat,
        "stain": found.stain,
        "rooms": list(found.rooms),
        "left_out": list(found.left_out),
        "chosen": outlook(found.chosen) if found.would == "lay" else None,
        "litres": litres(found.litres),
        "chance_too_dark": {
            "value": (found.chosen if found.would == "lay" else found.stop).too_dark,
            "most": MOST_TOO_DARK, "judged_in": list(found.worst.alike.rooms),
            "rank": Rank.GUESS.value, "source": BELIEF,
        },
        "floor_now": {
            "lab": list(found.floor_now), "words": lab_words(found.floor_now),
            "rank": _rank(found).value if found.floor_seen else Rank.GUESS.value,
            "source": "looks at the floor" if found.floor_seen else BELIEF,
        },
        "sealed_after": _sealed(found),
        "stop": outlook(found.stop),
        "habit": {**outlook(found.habit), "rank": Rank.PRACTICE.value, "source": PRACTICE},
        "one_strong": None if found.strong is None else outlook(found.strong),
        "two_light_first": None if found.light is None else outlook(found.light),
        "others": [
            {"stain": one.stain, "verdict": one.verdict, "why": one.why, **outlook(one.chosen)}
            for one in found.others
        ],
        "rooms_alike": [
            {
                "rooms": list(one.alike.rooms), "drop_s": one.alike.drop_s,
                "thirst_factor": one.alike.factor, "gap_seen_lightness": one.gap_seen,
                "verdict": one.verdict, "why": one.why, "alone": outlook(one.alone),
                "chosen": outlook(one.chosen),
            }
            for one in found.alike
        ],
        "standard": {**_plain(found.standard), "words": lab_words(found.standard.lab)},
        "so_far": [coat(one) for one in found.coats],
        "dark_range_lightness": {
            "value": found.dark_range, "rank": Rank.GUESS.value, "source": "our guess",
        },
        "limits": [_plain(one) for one in found.limits],
        "asks": [_plain(one) for one in found.asks],
        "patches": [
            {
                "name": one.name, "room": one.room, "of_floor": one.of_floor,
                "lab": list(one.seen.lab), "spots": one.seen.spots,
                "spread_lightness": one.seen.spread_l, "with_target": one.with_target,
            }
            for one in found.found.patches
        ],
        "rank": _rank(found).value,
        "source": f"{len(found.found.patches)} patches seen clean and wet; {BELIEF}",
        "learned_from": found.learned_from,
        "said": _plain(told),
        "cautions": list(found.cautions),
    }  # fmt: skip
    return dict(rounded(document))


def outlook(one: Outlook) -> Json:
    """A way and what it would do. low and high: 10 and 90 %."""
    way = one.way
    laid: Json = {"cut": None, "m2_per_l": None, "ft2_per_gal": None, "stain_l_per_m2": None}
    if way is not None:
        m2_per_l = 1 / way.l_per_m2
        laid = {
            "cut": cut_of(way), "m2_per_l": m2_per_l,
            "ft2_per_gal": ft2_per_gal_from_m2_per_l(m2_per_l),
            "stain_l_per_m2": way.laid.l_per_m2,
        }  # fmt: skip
    return {
        **laid,
        "chance_too_dark": one.too_dark,
        "gap_lightness": {"low": one.gap_low, "likely": one.gap, "high": one.gap_high},
        "away_de2000": one.away,
        "lab": list(one.lab),
        "words": lab_words(one.lab),
        "rank": Rank.GUESS.value,
        "source": BELIEF,
    }


def litres(told: NextLitres | None) -> Json | None:
    """Mix in all and by field; `ready` is what to mix."""
    if told is None:
        return None
    return {
        **_both("likely", told.likely_l), **_both("ready", told.ready_l),
        **_both("stain", told.stain_l), **_both("water", told.water_l),
        "area_m2": told.area_m2, "area_ft2": ft2_from_m2(told.area_m2),
        "certainty_percent": told.certainty_percent, "spread_percent": told.spread_percent,
        "fields": [
            {
                "field": one.field, "rooms": list(one.rooms), "area_m2": one.area_m2,
                "area_ft2": ft2_from_m2(one.area_m2), **_both("likely", one.likely_l),
            }
            for one in told.fields
        ],
    }  # fmt: skip


def coat(one: LaidCoat) -> Json:
    """A coat that is on."""
    m2_per_l = 1 / one.l_per_m2
    return {
        "coat": one.coat, "stain": one.stain, "cut": one.cut, "m2_per_l": m2_per_l,
        "ft2_per_gal": ft2_per_gal_from_m2_per_l(m2_per_l), "stain_l_per_m2": one.stain_l_per_m2,
        "rank": one.rank, "source": one.source,
    }  # fmt: skip


def rounded(value: Any) -> Any:
    """Without false figures: four digits."""
    if isinstance(value, dict):
        return {key: rounded(one) for key, one in value.items()}
    if isinstance(value, list):
        return [rounded(one) for one in value]
    return float(f"{value:.{DIGITS}g}") if isinstance(value, float) else value


def _both(name: str, volume_l: float) -> Json:
    return {f"{name}_l": volume_l, f"{name}_gal": gal_from_l(volume_l)}


def _sealed(found: NextAnswer) -> Json:
    lab = found.sealing.sealed(found.chosen.lab)
    return {
        "lab": list(lab), "words": lab_words(lab), "spread_lab": list(found.sealing.spread),
        "pairs": found.sealing.pairs,
        "rank": (Rank.MEASURED if found.sealing.pairs else Rank.GUESS).value,
        "source": "samples seen wet and then sealed" if found.sealing.pairs else "our guess",
    }  # fmt: skip


def _rank(found: NextAnswer) -> Rank:
    return Rank.GUESS if found.guessed else Rank.MEASURED


def _plain(value: object) -> Any:
    return plain(value)
