"""The next coat in words: what now, why, what the habit would do, what it rests on. Pure.

US units first, metric beside them. Each sentence has its Spanish in `phrasebook.es.colour_next`.
"""

from __future__ import annotations

from farwall.colour.next_coat import MOST_TOO_DARK, Outlook
from farwall.facts.job import Job
from farwall.job.colour.figures import coverage, lab_said, listed, percent, volume, way_said
from farwall.job.colour.in_words import lab_words
from farwall.job.colour.laid import LaidCoat
from farwall.job.colour.next_noun import NextAnswer
from farwall.nouns import dataclass
from farwall.units import ft2_from_m2

SCREEN = "A screen is no floor: hold the sample beside the wet floor, by day and by lamp."


@dataclass(frozen=True)
class SaidNext:
    """Sentences by what they answer."""

    now: tuple[str, ...]
    why: tuple[str, ...]
    habit: tuple[str, ...]
    rooms: tuple[str, ...]
    rests: tuple[str, ...]
    changes: tuple[str, ...]
    cautions: tuple[str, ...]


def said(job: Job, found: NextAnswer) -> SaidNext:
    """All of it."""
    names = {room.id: room.label for room in job.floor.rooms}
    stains = {stain.id: stain.name or stain.id for stain in job.stains}
    return SaidNext(
        now=tuple(_now(found, names)),
        why=tuple(_why(found)),
        habit=tuple(_habit(found, stains)),
        rooms=tuple(_rooms(found, names)),
        rests=tuple(_rests(found, stains)),
        changes=tuple(dict.fromkeys(one.what for one in found.asks)),
        cautions=found.cautions,
    )


def lines_of(told: SaidNext) -> list[str]:
    """For a terminal."""
    groups = (
        ("", told.now), ("Why", told.why), ("What the habit would do", told.habit),
        ("Room by room", told.rooms), ("What it rests on", told.rests),
        ("What would change it", told.changes), ("Mind", told.cautions),
    )  # fmt: skip
    lines: list[str] = []
    for title, sentences in groups:
        if sentences:
            lines += ["", title] if title else []
            lines += [f"  {one}" if title else one for one in sentences]
    return lines


def _now(found: NextAnswer, names: dict[str, str]) -> list[str]:
    rooms = listed([names.get(room, room) for room in found.rooms])
    lines = []
    if found.verdict == "wait":
        lines += ["Wait: lay nothing yet.", *_held(found)]
        if found.would == "lay":
            lines.append(f"It would then be {found.stain_name}, {way_said(found.chosen)}.")
    elif found.verdict == "lay":
        lines.append(f"Lay {found.stain_name}, {way_said(found.chosen)}, in {rooms}.")
    else:
        lines += [f"Stop: {found.why}.", f"This is about {rooms}."]
        if found.stop.gap < -found.dark_range:
            lines.append("It is darker than the sample: neutralise now, and lay no further coat.")
    if found.litres is not None and found.verdict != "stop":
        told = found.litres
        lines.append(
            f"Mix {volume(told.ready_l)}: {volume(told.water_l)} of water first, then "
            f"{volume(told.stain_l)} of stain; {volume(told.likely_l)} will likely go on "
            f"{ft2_from_m2(told.area_m2):.0f} ft² ({told.area_m2:.0f} m²)."
        )
    lines.append(_chance(found, names))
    return lines


def _held(found: NextAnswer) -> list[str]:
    return [one.what for one in found.limits if one.holds is False]


def _chance(found: NextAnswer, names: dict[str, str]) -> str:
    worst = found.worst
    if found.would == "lay":
        most = f"{MOST_TOO_DARK * 100:.0f} %"
        told = f"Chance of too dark: {percent(found.chosen.too_dark)}, of {most} at most"
    else:
        told = f"Chance that it is too dark as it is: {percent(found.stop.too_dark)}"
    if len(found.alike) == 1:
        return f"{told}."
    rooms = listed([names.get(room, room) for room in worst.alike.rooms])
    return f"{told}; judged in {rooms}, where it comes darkest."


def _why(found: NextAnswer) -> list[str]:
    stop, after = found.stop, found.chosen
    lines = [_gap_now(found)]
    if found.would == "lay":
        lines += [
            f"It closes {stop.gap - after.gap:.1f} L* of it; {_range(after)} stays.",
            f"It is {found.why}.",
            _after(after),
            _sealed(found),
        ]
    else:
        lines.append(f"As it is it lies {stop.away:.1f} CIEDE2000 from the sample.")
    lines += [one.what for one in found.limits if one.holds is not False]
    return lines


def _after(one: Outlook) -> str:
    return (
        f"After it the floor will look {lab_words(one.lab)}, {lab_said(one.lab)} clean and wet, "
        f"{one.away:.1f} CIEDE2000 from the sample."
    )


def _gap_now(found: NextAnswer) -> str:
    side = "lighter" if found.stop.gap >= 0 else "darker"
    low, high = sorted((abs(found.stop.gap_low), abs(found.stop.gap_high)))
    if found.stop.gap_low * found.stop.gap_high < 0:
        return (
            f"The floor is about as light as sample {found.standard.sample}: "
            f"{_range(found.stop)} above it."
        )
    return (
        f"The floor is {abs(found.stop.gap):.1f} L* ({low:.1f} to {high:.1f}) {side} than sample "
        f"{found.standard.sample}."
    )


def _range(one: Outlook) -> str:
    return f"{one.gap:.1f} L* ({one.gap_low:.1f} to {one.gap_high:.1f})"


def _sealed(found: NextAnswer) -> str:
    lab, spread = found.sealing.sealed(found.chosen.lab), found.sealing.spread
    told = (
        f"Sealed it will likely look {lab_words(lab)}, {lab_said(lab)}, lightness to within "
        f"{spread[0]:.1f}"
    )
    if not found.sealing.pairs:
        return f"{told}: no sample was seen wet and then sealed, so that this is a guess."
    return f"{told}, by {found.sealing.pairs} samples that were seen wet and then sealed."


def _habit(found: NextAnswer, stains: dict[str, str]) -> list[str]:
    one = found.habit
    told = f"{way_said(one)}, chance of too dark {percent(one.too_dark)}, {_range(one)} stays."
    lines = [f"Two of water to one of stain, then look (common practice, no source): {told}"]
    if found.strong is not None and found.light is not None:
        lines.append(
            f"One strong coat that closes the gap alone: {way_said(found.strong)}, chance of too "
            f"dark {percent(found.strong.too_dark)}."
        )
        lines.append(
            f"Two light coats: first {way_said(found.light)}, chance of too dark "
            f"{percent(found.light.too_dark)}, {_range(found.light)} stays; then look again and "
            "decide the second. Light rather than dark, always."
        )
    lines.append(f"Stopping now: {_range(found.stop)} stays, chance of too dark "
                 f"{percent(found.stop.too_dark)}.")  # fmt: skip
    lines += [
        f"With {stains.get(one.stain, one.stain)} instead: {way_said(one.chosen)}, "
        f"{one.chosen.away:.1f} CIEDE2000 from the sample."
        for one in found.others
    ]
    return lines


def _rooms(found: NextAnswer, names: dict[str, str]) -> list[str]:
    if len(found.alike) < 2:
        return []
    lines = []
    for one in found.alike:
        rooms = listed([names.get(room, room) for room in one.alike.rooms])
        seen = (
            "not looked at"
            if one.gap_seen is None
            else f"seen {one.gap_seen:+.1f} L* from the sample"
        )
        alone = way_said(one.alone) if one.verdict == "lay" else "stop"
        lines.append(
            f"{rooms}: {seen}; by itself {alone}; with the coat above chance of too dark "
            f"{percent(one.chosen.too_dark)}."
        )
    return lines


def _rests(found: NextAnswer, stains: dict[str, str]) -> list[str]:
    samples = sum(not one.of_floor for one in found.found.patches)
    lines = [
        f"Samples seen clean and wet: {samples}; looks at the floor: {len(found.found.of_floor)}.",
        _standard(found),
        *(_coat(found, one, stains) for one in found.coats),
    ]
    if not found.coats:
        lines.append("Nothing is logged as laid on the floor: this is the first coat.")
    if found.learned_from:
        lines.append(f"How strong the stain is: learned from {found.learned_from} closed jobs, "
                     "then from these samples.")  # fmt: skip
    else:
        lines.append("How strong the stain is: from these samples; before them a guess.")
    if found.left_out:
        lines.append(f"Rooms left out, they have other coats: {len(found.left_out)}.")
    lines.append(
        f"Too dark: {found.dark_range:.1f} L* below the sample on a twentieth of the floor; "
        "a guess."
    )
    return lines


def _standard(found: NextAnswer) -> str:
    one = found.standard
    signed = f"signed by {one.approved_by}" if one.approved else "not signed"
    if one.approved_on and one.approved:
        signed = f"{signed} on {one.approved_on}"
    looks = f"{lab_words(one.lab)}, {lab_said(one.lab)}"
    return f"Held against sample {one.sample}, {signed}: {looks}."


def _coat(found: NextAnswer, one: LaidCoat, stains: dict[str, str]) -> str:
    number = list(dict.fromkeys(each.coat for each in found.coats)).index(one.coat) + 1
    return (
        f"On the floor: coat {number}, {stains.get(one.stain, one.stain)} at {one.cut}, "
        f"{coverage(one.l_per_m2)} ({one.rank}: {one.source})."
    )
