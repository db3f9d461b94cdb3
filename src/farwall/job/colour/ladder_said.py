"""What a ladder lacks and what speaks against it, in words. Common practice, no source. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from farwall.air.waits import DWELL, HOUR_MIN
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Finish, Job
from farwall.facts.samples import STATES, State
from farwall.job.colour.ladder import Ladder, Rung
from farwall.units import M2_PER_FT2, ft2_per_gal_from_m2_per_l

STATE_WORDS: dict[State, str] = {"dry": "dry", "clean wet": "clean and wet", "sealed": "sealed"}
LEAST_M2 = 4 * M2_PER_FT2
"""2 by 2 ft: what is laid at least for a cut. Common practice, no source."""
LEAST_CUTS = 3


@dataclass(frozen=True)
class Said:
    """A sentence about the ladder. code: a word that stays · samples: whom it is about."""

    code: str
    text: str
    samples: tuple[str, ...] = ()


def asks(ladder: Ladder, job: Job) -> tuple[Said, ...]:
    """What is missing, the weightiest first."""
    if not ladder.rungs:
        return (
            Said(
                "none",
                "No sample is told yet. Lay three cuts side by side, weaker, planned and stronger, "
                "in a hidden place of this slab: an hour more, and the only dose curve that this "
                "job will have.",
            ),
        )
    return (
        *_unseen(ladder),
        *_undrunk(ladder),
        *_few_cuts(ladder),
        *_one_coat(ladder, job),
        *_undense(ladder),
        *_untimed(ladder),
        *_guessed(ladder),
        *_unsigned(ladder),
    )


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
        *_finishes(ladder, job),
        *_small(ladder),
    )


def named(names: Iterable[str]) -> str:
    """Names in a row."""
    return ", ".join(names)


def _about(code: str, text: str, rungs: Iterable[Rung]) -> Iterator[Said]:
    """The sentence with the names in its place; nothing where there are none."""
    names = tuple(one.name for one in rungs)
    if names:
        yield Said(code, text.format(named(names)), names)


def _unseen(ladder: Ladder) -> Iterator[Said]:
    wanted: tuple[tuple[State, str], ...] = (
        ("clean wet", "after the scrub, while it is wet, with the target beside it"),
        ("sealed", "with the floor's own sealer, dry overnight before it"),
    )
    for state, how in wanted:
        unseen = [one for one in ladder.rungs if one.look(state) is None]
        if len(unseen) == len(ladder.rungs):
            text = f"No rung was looked at {STATE_WORDS[state]}: photograph each {how}."
            yield Said(f"unseen {state}", text)
        else:
            text = "{} was not looked at " if len(unseen) == 1 else "{} were not looked at "
            yield from _about(f"unseen {state}", f"{text}{STATE_WORDS[state]}.", unseen)


def _undrunk(ladder: Ladder) -> Iterator[Said]:
    uncut = [one for one in ladder.rungs if one.coats is not None and not one.coats[-1].cut]
    yield from _about("cut", "Tell the cut of {}: without it nobody knows its dose.", uncut)
    unknown = [one for one in ladder.rungs if one.drank is None]
    yield from _about(
        "drank",
        "Weigh the sprayer before and after, or measure out the mL, and tell the area: what {} "
        "drank is not known.",
        unknown,
    )


def _few_cuts(ladder: Ladder) -> Iterator[Said]:
    first = {row.rungs[0].cuts[0] for row in ladder.rows if row.rungs[0].cuts[0]}
    if 0 < len(first) < LEAST_CUTS:
        cuts = named(sorted(first))
        text = (
            f"First coats were tried at {cuts} only: three cuts tell whether more stain still "
            "darkens this slab."
        )
        yield Said("few cuts", text)


def _one_coat(ladder: Ladder, job: Job) -> Iterator[Said]:
    _, coats = stains_and_coats(job)
    if len(coats) > 1 and ladder.most_coats == 1:
        text = (
            "No second coat was tried over a first: each coat adds less than the one before, and "
            "only a square with both tells how much."
        )
        yield Said("one coat", text)


def _undense(ladder: Ladder) -> Iterator[Said]:
    for one in ladder.rungs:
        if one.drank is not None and not one.drank.density_told and one.coats:
            low, high = (
                f"{ft2_per_gal_from_m2_per_l(end):.0f}" for end in (one.drank.low, one.drank.high)
            )
            text = (
                f"By weight {one.name} covered {low} to {high} ft²/gal ({one.drank.low:.1f} to "
                f"{one.drank.high:.1f} m²/L): the density on the sheet of its stain makes it one "
                "figure."
            )
            yield Said("density", text, (one.name,))


def _untimed(ladder: Ladder) -> Iterator[Said]:
    if ladder.rungs and all(one.sample.sheen_loss_min is None for one in ladder.rungs):
        text = (
            "Time on one sample how long its wet gloss lasts: some minutes' work, and the wet edge "
            "of the floor rests on it."
        )
        yield Said("sheen", text)


def _guessed(ladder: Ladder) -> Iterator[Said]:
    looks = [(one, look) for one in ladder.rungs for state in STATES if (look := one.look(state))]
    guessed = [one for one, look in looks if look.error_de is None]
    yield from _about(
        "guess",
        "Without a target in the photo a colour is a guess: photograph {} with it.",
        dict.fromkeys(guessed),
    )


def _unsigned(ladder: Ladder) -> Iterator[Said]:
    if ladder.standard is None:
        text = "No sample is signed as the standard of this floor."
        yield Said("unsigned", text)
        return
    rung = ladder.rung(ladder.standard)
    lights = {one.light for one in rung.sample.looks} if rung is not None else set()
    for light, words in (("day", "by day at the window"), ("lamp", "by the house's own lamps")):
        if lights & {"day", "lamp"} and light not in lights:
            yield Said(f"no {light}", f"Look at {ladder.standard} {words} too.")


def _loose(ladder: Ladder) -> Iterator[Said]:
    yield from _about(
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
    yield from _about(
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
    for one in ladder.rungs:
        own = one.sample.dwell_h
        if own is not None and own < floor_h:
            text = (
                f"{one.name} was washed after {own:.1f} h, the floor will be after about "
                f"{floor_h:.1f} h: it comes out deeper than this sample."
            )
            yield Said("dwell", text, (one.name,))


def _unscrubbed(ladder: Ladder) -> Iterator[Said]:
    unscrubbed = [
        one
        for one in ladder.rungs
        if not one.sample.scrubs and (one.look("clean wet") or one.look("sealed"))
    ]
    yield from _about(
        "unscrubbed",
        "Nobody says that {} was scrubbed as the floor will be: what washes off is still in its "
        "colour.",
        unscrubbed,
    )


def _coloured(ladder: Ladder) -> Iterator[Said]:
    coloured = [one for one in ladder.rungs if one.sample.rag == "coloured"]
    text = "The white rag of {} came off coloured: rinse again before it is judged."
    yield from _about("rag", text, coloured)


def _other_sealer(ladder: Ladder, job: Job) -> Iterator[Said]:
    own = {one.casefold() for one in (job.sealer.name, job.sealer.type or "") if one}
    other = [one for one in ladder.rungs if own and one.sample.sealer.casefold() not in {"", *own}]
    yield from _about(
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
    yield from _about(
        "small",
        "{}: smaller than 2 by 2 ft (0.6 m). Edges feather and reach into the middle.",
        small,
    )
