"""What speaks against a ladder, in words: what it tells less of the floor than it seems. Pure.

Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from farwall.air.waits import DWELL, HOUR_MIN
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Finish, Job
from farwall.job.colour.ladder import Ladder
from farwall.job.colour.ladder_sentence import STATE_WORDS, Said, about, named
from farwall.units import M2_PER_FT2

LEAST_M2 = 4 * M2_PER_FT2
"""2 by 2 ft: what is laid at least for a cut. Common practice, no source."""
FAR_OFF_DE = 4.0
"""A photo off by so much tells no step of a ladder: floor under a tube with narrow bands is, as is
a sheet half in shade. Measured here (docs/colour-photo.md)."""


def warnings(ladder: Ladder, job: Job, *, floor_dwell_h: float | None = None) -> tuple[Said, ...]:
    """What makes the ladder tell less of the floor than it seems.

    floor_dwell_h: hours from laying to the wash on the floor; left out, those that are usual.
    """
    dwell_h = DWELL.usual_min / HOUR_MIN if floor_dwell_h is None else floor_dwell_h
    return (
        *_loose(ladder),
        *_not_as_laid(ladder, job),
        *_unsealed(ladder),
        *_against_order(ladder),
        *_short_dwell(ladder, dwell_h),
        *_unscrubbed(ladder),
        *_coloured(ladder),
        *_other_sealer(ladder, job),
        *_pours(ladder, job),
        *_later_pours(ladder, job),
        *_finishes(ladder, job),
        *_small(ladder),
        *_far_off(ladder),
    )


def _loose(ladder: Ladder) -> Iterator[Said]:
    yield from about(
        "loose",
        "What lies beneath {} is not told: it stands beside the ladder, and its dose is unknown.",
        ladder.loose,
    )


def _not_as_laid(ladder: Ladder, job: Job) -> Iterator[Said]:
    """The standard was laid in another way than the job's coats are planned."""
    rung = ladder.rung(ladder.standard or "")
    _, coats = stains_and_coats(job)
    if rung is None or not rung.coats:
        return
    laid = [(one.cut, one.stain) for one in rung.coats]
    planned = [(one.cut, one.stain) for one in coats]
    if laid != planned:
        text = (
            f"{rung.name} is the standard, laid as {_as_coats(laid)}; the floor is planned as "
            f"{_as_coats(planned)}. Change the coats, or sample as planned."
        )
        yield Said("not as planned", text, (rung.name,))


def _as_coats(coats: Iterable[tuple[str, str]]) -> str:
    return ", ".join(f"{cut or '?'} {stain or '?'}" for cut, stain in coats)


def _unsealed(ladder: Ladder) -> Iterator[Said]:
    signed = [one for one in ladder.rungs if one.name in ladder.signed]
    yield from about(
        "unsealed",
        "{}: signed and not looked at sealed. A standard is a sealed colour.",
        [one for one in signed if one.look("sealed") is None],
    )


def _against_order(ladder: Ladder) -> Iterator[Said]:
    for one in ladder.apart:
        if one.by == "cut" and one.clear and one.darker < 0:
            text = (
                f"{one.other} was laid stronger than {one.one} and looks lighter "
                f"{STATE_WORDS[one.state]}: look again before the ladder is used."
            )
            yield Said("against order", text, (one.one, one.other))


def _short_dwell(ladder: Ladder, floor_h: float) -> Iterator[Said]:
    short: dict[str, list[str]] = {}
    for one in ladder.rungs:
        own = one.sample.dwell_h
        if own is not None and own < floor_h:
            short.setdefault(f"{own:.1f}", []).append(one.name)
    for hours, names in short.items():
        text = (
            f"{named(names)}: washed after {hours} h; the floor will be after about "
            f"{floor_h:.1f} h and comes out deeper."
        )
        yield Said("dwell", text, tuple(names))


def _unscrubbed(ladder: Ladder) -> Iterator[Said]:
    unscrubbed = [
        one
        for one in ladder.rungs
        if not one.sample.scrubs and (one.look("clean wet") or one.look("sealed"))
    ]
    yield from about(
        "unscrubbed",
        "Nobody says that {} was scrubbed as the floor will be: what washes off is still in its "
        "colour.",
        unscrubbed,
    )


def _coloured(ladder: Ladder) -> Iterator[Said]:
    coloured = [one for one in ladder.rungs if one.sample.rag == "coloured"]
    text = "The white rag of {} came off coloured: rinse again before it is judged."
    yield from about("rag", text, coloured)


def _other_sealer(ladder: Ladder, job: Job) -> Iterator[Said]:
    own = {one.casefold() for one in (job.sealer.name, job.sealer.type or "") if one}
    other = [one for one in ladder.rungs if own and one.sample.sealer.casefold() not in {"", *own}]
    yield from about(
        "sealer", "{} is sealed with another sealer than the floor will be: no swap.", other
    )


def _pours(ladder: Ladder, job: Job) -> Iterator[Said]:
    pours = job.survey.pours
    rooms = {one.sample.room for one in ladder.rungs if one.sample.room}
    if pours is not None and pours > 1 and len(rooms) < pours:
        text = (
            f"The slab was poured in {pours} goes, and samples were made in {len(rooms)} of its "
            "rooms: another pour drinks and colours in its own way. One sample for each."
        )
        yield Said("pours", text)


def _later_pours(ladder: Ladder, job: Job) -> Iterator[Said]:
    """Later pours marked on the floor in whose room nobody made a sample."""
    labels = {room.id: room.label for room in job.floor.rooms}
    sampled = {one.sample.room for one in ladder.rungs if one.sample.room in labels}
    if not sampled:
        return
    for one in job.survey.patches:
        if one.kind == "pour" and not one.left_dry and one.room not in sampled:
            room = labels.get(one.room, one.room)
            text = (
                f"{room} has floor of a later pour, and no sample was made in it: another pour "
                "drinks and colours in its own way."
            )
            yield Said("later pour", text)


def _finishes(ladder: Ladder, job: Job) -> Iterator[Said]:
    """Rooms of a finish on which no sample was made, where the rooms of the samples are told."""
    labels = {room.id: room.label for room in job.floor.rooms}
    sampled = {_finish(job, one.sample.room) for one in ladder.rungs if one.sample.room in labels}
    if not sampled:
        return
    for room, label in labels.items():
        finish = _finish(job, room)
        if finish is not None and finish not in sampled and None not in sampled:
            text = f"{label} is finished by {finish}: no sample was made on such a floor."
            yield Said("finish", text)


def _finish(job: Job, room: str | None) -> Finish | None:
    found = job.survey.rooms.get(room or "")
    return found.finish if found is not None and found.finish is not None else job.survey.finish


def _small(ladder: Ladder) -> Iterator[Said]:
    small = [one for one in ladder.rungs if (one.sample.area_m2 or LEAST_M2) < LEAST_M2 * 0.98]
    yield from about(
        "small",
        "{}: smaller than 2 by 2 ft (0.6 m). Edges feather and reach into the middle.",
        small,
    )


def _far_off(ladder: Ladder) -> Iterator[Said]:
    """Looks by a photo whose light or target was bad."""
    off = [
        one
        for one in ladder.rungs
        if any(seen.error_de is not None and seen.error_de >= FAR_OFF_DE
               for seen in one.sample.looks)
    ]  # fmt: skip
    yield from about(
        "far off",
        "The photo of {} is off by 4 or more (CIEDE2000): a tube's light, or a sheet half in "
        "shade. Take it again by day, by a bulb or by a white LED.",
        off,
    )
