"""What a ladder lacks, in words. Common practice, no source. Pure."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job
from farwall.facts.samples import STATES, State
from farwall.job.colour.ladder import Ladder
from farwall.job.colour.ladder_sentence import STATE_WORDS, Said, about, named
from farwall.units import ft2_per_gal_from_m2_per_l

LEAST_CUTS = 3


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
            yield from about(f"unseen {state}", f"{text}{STATE_WORDS[state]}.", unseen)


def _undrunk(ladder: Ladder) -> Iterator[Said]:
    uncut = [one for one in ladder.rungs if one.coats is not None and not one.coats[-1].cut]
    yield from about("cut", "Tell the cut of {}: without it nobody knows its dose.", uncut)
    unknown = [one for one in ladder.rungs if one.drank is None]
    yield from about(
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
    yield from about(
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
