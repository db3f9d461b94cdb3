"""What the page of acid and water shows of the waste water."""

from __future__ import annotations

from typing import Any

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.waste.figures import figure, range_of
from farwall.job.acid_day.waste.noun import MetalIn, TestRead, Waste, WordSaid
from farwall.nouns import dataclass
from farwall.papers.acid.waste_words import METAL_NAMES, SETTLES
from farwall.papers.wall_clock import Units
from farwall.phrasebook import told
from farwall.units import KG_PER_LB, gal_from_l
from farwall.web.pages.forms.shown import pick_of
from farwall.web.pages.forms.waste import WASTE
from farwall.web.pages.speaking import speaking_here
from farwall.web.words import said


@dataclass(frozen=True)
class MetalLine:
    """A metal in one line of the table; above: it may be over the lowest local limit read."""

    name: str
    laid: str
    raw: str
    local: str
    settles: str
    above: bool


@dataclass(frozen=True)
class DrumLine:
    """A tested drum beside a word: what may be said, why, whether it is a no."""

    lead: str
    word: str
    why: str
    danger: bool


def waste_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """Lines of the part, in the language of the page."""
    part, units = day.waste, ground.job.wishes.units
    with speaking_here(ground.job):
        return {
            "refusal": told(part.refusal),
            "water": _water(part, units),
            "metals": [_metal(one) for one in part.metals],
            "share": _share(part),
            "sludge": _sludge(part, units) if part.metals else "",
            "words": [_word(one) for one in part.words],
            "drums": [line for one in part.tests for line in _drum(one)],
            "lists": [
                (key, [told(one) for one in lines], danger)
                for key, lines, danger in (
                    ("asks", part.asks, False),
                    ("chromium", part.chromium, True),
                    ("steps", part.steps, False),
                    ("dust", part.dust, False),
                )
                if lines
            ],
            "not_clean": [told(one) for one in part.clear],
            "warnings": [told(one) for one in part.warnings],
        }


def _volume(litres: float, units: Units) -> str:
    return f"{figure(gal_from_l(litres))} gal" if units == "us" else f"{figure(litres)} L"


def _water(part: Waste, units: Units) -> str:
    count = part.drums_full + part.drums_spare
    weight = (
        f"{figure(part.drum_full_kg / KG_PER_LB)} lb" if units == "us"
        else f"{figure(part.drum_full_kg)} kg"
    )  # fmt: skip
    return said(
        "acid-waste-water", likely=_volume(part.water_likely_l, units),
        low=_volume(part.water_low_l, units), high=_volume(part.water_high_l, units),
        drums=said("acid-waste-drums" if count != 1 else "acid-waste-drums-1", n=count),
        holds=_volume(part.drum_holds_l, units), weight=weight,
    )  # fmt: skip


def _metal(one: MetalIn) -> MetalLine:
    return MetalLine(
        told(METAL_NAMES[one.metal]),
        told(range_of(one.laid_low_g, one.laid_high_g)),
        told(range_of(one.low_mg_l, one.high_mg_l)),
        told(range_of(one.local_low_mg_l, one.local_high_mg_l)),
        told(SETTLES[one.settles]),
        one.against != "below",
    )


def _share(part: Waste) -> str:
    share = told(range_of(part.washed_off_low_percent, part.washed_off_high_percent))
    return said("acid-waste-share", share=share, rank=told(part.washed_off_rank))


def _sludge(part: Waste, units: Units) -> str:
    low = _volume(part.sludge_low_l, units)
    if part.sludge_high_l is None:
        return said("acid-waste-sludge-open", low=low)
    return said("acid-waste-sludge", low=low, high=_volume(part.sludge_high_l, units))


def _word(one: WordSaid) -> tuple[str, str]:
    """A word in one line, and what keeps it from being leaned on."""
    blanks = {blank.name: blank for blank in WASTE.parts[0].sentences[0].blanks}
    way = said(f"{pick_of(blanks['waste-way'])}-{one.way.replace(' ', '-')}")
    writing = said("pick-in_writing-yes" if one.in_writing else "pick-in_writing-no")
    parts = [f"{way}: {one.who}, {one.office}, {one.on}", writing]
    if one.until:
        parts.append(said("acid-waste-until", day=one.until))
    quoted = f" “{one.said}”" if one.said else ""
    return f"{', '.join(parts)}.{quoted}", " ".join(told(each) for each in one.faults)


def _drum(one: TestRead) -> list[DrumLine]:
    name = one.drum or one.on
    found = [
        DrumLine(
            said("acid-waste-by", drum=name, office=each.office), told(each.word),
            " ".join(told(why) for why in each.why), each.word == "above",
        )
        for each in one.against
    ]  # fmt: skip
    if not one.against:
        found.append(DrumLine(said("acid-waste-none", drum=name), "", "", danger=False))
    found += [
        DrumLine(said("acid-waste-hazard", drum=name), "", told(each), danger=True)
        for each in one.hazards
    ]
    for share in one.shares:
        if share.low_percent is not None:
            ends = told(range_of(share.low_percent, share.high_percent))
            line = said("acid-waste-seen", drum=name, share=ends, metal=told(share.metal))
            found.append(DrumLine(line, "", "", danger=False))
    return found
