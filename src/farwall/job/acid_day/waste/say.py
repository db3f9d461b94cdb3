"""The waste water in lines for a terminal."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.job.acid_day.waste.figures import figure, range_of
from farwall.job.acid_day.waste.noun import MetalIn, TestRead, Waste, WordSaid
from farwall.job.story.figures import volume
from farwall.units import KG_PER_LB


def waste_said(part: Waste) -> tuple[str, ...]:
    """The part in lines for a terminal; nothing for a part that was not reckoned."""
    return tuple(_lines(part)) if part.area_m2 > 0 else part.warnings


def _lines(part: Waste) -> Iterator[str]:
    if part.refusal:
        yield part.refusal
    yield (
        f"About {volume(part.water_likely_l)} of rinse water, {volume(part.water_low_l)} to "
        f"{volume(part.water_high_l)} ({part.water_rank}): {_drums(part.drums_full)} of "
        f"{volume(part.drum_holds_l)} and {part.drums_spare} spare, "
        f"{figure(part.drum_full_kg / KG_PER_LB)} lb ({figure(part.drum_full_kg)} kg) each when "
        "full."
    )
    yield from (metal_line(one) for one in part.metals)
    if part.metals:
        yield share_line(part)
        yield sludge_line(part)
    yield from part.clear
    yield from (_word(one) for one in part.words)
    for one in part.tests:
        yield from drum_lines(one)
    yield from part.asks
    if part.chromate:
        yield from part.chromium
    yield from part.steps
    yield from part.warnings


def _drums(count: int) -> str:
    return "1 drum" if count == 1 else f"{count} drums"


def metal_line(one: MetalIn) -> str:
    """What the water may hold of a metal, beside the local limits that were read."""
    local = range_of(one.local_low_mg_l, one.local_high_mg_l)
    end = {"falls out": "Most of it falls out at pH 8 to 9.",
           "much stays": "Much of it stays at pH 8 to 9.",
           "stays": "It stays at every pH."}[one.settles]  # fmt: skip
    found = range_of(one.low_mg_l, one.high_mg_l)
    name = one.metal[0].upper() + one.metal[1:]
    limit = f"a local limit of {local}" if "to" not in local else f"local limits of {local}"
    return f"{name}: {found} mg/L before it settles, against {limit} mg/L. {end}"


def share_line(part: Waste) -> str:
    """The share washed off that the figures rest on."""
    share = range_of(part.washed_off_low_percent, part.washed_off_high_percent)
    return f"Reckoned with {share} % of the metal laid washing off ({part.washed_off_rank})."


def sludge_line(part: Waste) -> str:
    """Litres of metal sludge; cement comes on top."""
    if part.sludge_high_l is None:
        return f"{volume(part.sludge_low_l)} of metal sludge and more; cement fines come on top."
    return (
        f"{volume(part.sludge_low_l)} to {volume(part.sludge_high_l)} of metal sludge; cement "
        "fines come on top."
    )


def _word(one: WordSaid) -> str:
    until = f", until {one.until}" if one.until else ""
    faults = f" {' '.join(one.faults)}" if one.faults else ""
    return f"{one.way}: {one.who}, {one.office}, {one.on}{until}.{faults}"


def drum_lines(one: TestRead) -> Iterator[str]:
    """A test against each word, and by the federal rules."""
    name = one.drum or one.on
    for against in one.against:
        why = f" {' '.join(against.why)}" if against.why else ""
        yield f"Drum {name}, by the word of {against.office}: {against.word}.{why}"
    if not one.against:
        yield f"Drum {name}: not allowed to say. No limit was named."
    yield from (f"Drum {name}: {hazard}" for hazard in one.hazards)
    for share in one.shares:
        if share.low_percent is None:
            continue
        told = range_of(share.low_percent, share.high_percent)
        yield f"Drum {name}: {told} % of the {share.metal} laid washed off, measured here."
