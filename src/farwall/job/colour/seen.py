"""From facts and log to what the belief of colour is made of: patches seen clean and wet. Pure.

Only looks of one state are set beside one another: the clean wet one. A dry look is never used; a
sealed look serves for the sealed look alone. What is missing comes back as asks.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from farwall.colour.nouns import FLOOR, SAMPLES, Seen
from farwall.facts.defaults import stains_and_coats
from farwall.facts.drank import Made, made_with
from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.facts.samples import Look, Sample
from farwall.job.colour.laid import LaidCoat, RoomCoats, laid_by_room
from farwall.job.colour.told import beneath, look_of, samples_of
from farwall.job.story.noun import Happened, Story
from farwall.nouns import dataclass

WET, SEALED = "clean wet", "sealed"
Lab = tuple[float, float, float]
CORRECTED_DE = 0.6
"""CIEDE2000 of what `colour.prior` takes as the error of a well corrected photo, about."""
UNCORRECTED = 6.0
"""Times that error, where no target was in the photo or the colour was typed by eye. A guess."""


@dataclass(frozen=True)
class Ask:
    """Something that is missing: a code, what to do about it, in words."""

    code: str
    what: str


@dataclass(frozen=True)
class Patch:
    """A patch that was seen clean and wet.

    name: the sample's, or room and coat · room: None where it is of the floor and nobody said ·
    with_target: whether its photo was corrected by a target · at_min: when, None for a sample.
    """

    name: str
    seen: Seen
    coats: tuple[LaidCoat, ...]
    room: str | None
    with_target: bool
    at_min: float | None = None

    @property
    def of_floor(self) -> bool:
        """Whether it is of the floor and not a sample."""
        return self.seen.place != SAMPLES


@dataclass(frozen=True)
class Gathered:
    """All that tells of colour here: stains by number, samples, patches, sealed pairs, asks.

    pairs: clean wet and sealed look of the same sample.
    """

    stains: tuple[str, ...]
    samples: tuple[Sample, ...]
    patches: tuple[Patch, ...]
    pairs: tuple[tuple[Lab, Lab], ...]
    asks: tuple[Ask, ...]

    @property
    def seen(self) -> tuple[Seen, ...]:
        """The patches as the belief takes them."""
        return tuple(one.seen for one in self.patches)

    @property
    def of_floor(self) -> tuple[Patch, ...]:
        """Those of the floor."""
        return tuple(one for one in self.patches if one.of_floor)

    def sampled(self, stain: str) -> bool:
        """Whether a sample of this stain was seen clean and wet."""
        return any(
            not one.of_floor and any(coat.stain == stain for coat in one.coats)
            for one in self.patches
        )


def gathered(job: Job, plan: Plan, kept: Sequence[Kept], story: Story | None) -> Gathered:
    """Samples and looks of a job and its log, and what is missing of them."""
    samples = samples_of(job, kept)
    asks: list[Ask] = []
    of_samples = [
        patch for one in samples if (patch := _of_sample(job, samples, one, asks)) is not None
    ]
    of_floor = _of_floor(plan, story) if story is not None else []
    stains = _stains(job, samples, plan)
    patches = (*of_samples, *of_floor)
    return Gathered(
        stains=stains,
        samples=samples,
        patches=tuple(_numbered(one, stains) for one in patches),
        pairs=tuple(pair for one in samples if (pair := _pair(one)) is not None),
        asks=tuple(asks),
    )


def look_in(looks: Sequence[Look], state: str) -> Look | None:
    """The mean of the looks of a state; None where there is none.

    Looks of a corrected photo stand before those that are none, for the latter are guesses.
    """
    own = [one for one in looks if one.state == state]
    good = [one for one in own if one.error_de is not None] or own
    if not good:
        return None
    lab = np.mean([one.lab for one in good], axis=0)
    photos = {one.photo for one in good}
    errors = [one.error_de for one in good if one.error_de is not None]
    spreads = [one.spread_lightness for one in good if one.spread_lightness is not None]
    return Look(
        state=good[0].state,
        lab=(float(lab[0]), float(lab[1]), float(lab[2])),
        error_de=max(errors) if errors else None,
        photo=photos.pop() if len(photos) == 1 else "",
        spots=max(one.spots for one in good),
        spread_lightness=float(np.mean(spreads)) if spreads else None,
    )


def blur_of(look: Look) -> float:
    """How many times the error of a well corrected photo a look has, at least 1."""
    if look.error_de is None:
        return UNCORRECTED
    return max(1.0, look.error_de / CORRECTED_DE)


def _of_sample(
    job: Job, samples: Sequence[Sample], sample: Sample, asks: list[Ask]
) -> Patch | None:
    """A sample with all its coats; None where its looks or one of its doses are not known."""
    look = look_in(sample.looks, WET)
    chain = beneath(samples, sample.id)
    if chain is None:
        what = f"Sample {sample.id} lies over a sample that nobody told of: tell of it."
        asks.append(Ask("sample-beneath", what))
        return None
    coats = [_coat_of(job, one) for one in chain]
    if None in coats:
        lacks = ", ".join(one.id for one, coat in zip(chain, coats, strict=True) if coat is None)
        what = (
            f"Sample {lacks}: tell its stain, its cut and what it drank, "
            "the sprayer weighed before and after, and how large it is."
        )
        if all(one.what != what for one in asks):
            asks.append(Ask("sample-dose", what))
        return None
    if look is None:
        what = f"Look at sample {sample.id} clean and wet, with a target in the photo."
        asks.append(Ask("sample-look", what))
        return None
    laid = tuple(coat for coat in coats if coat is not None)
    # Spots of one square share its thirst, so that they count as one.
    seen = Seen((), look.lab, SAMPLES, look.photo, blur=blur_of(look))
    return Patch(sample.id, seen, laid, sample.room, look.error_de is not None)


def _coat_of(job: Job, sample: Sample) -> LaidCoat | None:
    made = made_of(job, sample)
    if sample.m2_per_l is None or not made.stain or made.share is None:
        return None
    return LaidCoat(
        sample.coat or "", made.stain, made.cut, 1 / sample.m2_per_l, "measured here",
        f"sample {sample.id}",
    )  # fmt: skip


def made_of(job: Job, sample: Sample) -> Made:
    """The mix of a sample, the job's stand-in stains and coats known."""
    stains, coats = stains_and_coats(job)
    return made_with(sample, coats, stains)


def _of_floor(plan: Plan, story: Story) -> list[Patch]:
    """Every clean wet look at the floor, with what lay there when it was looked at."""
    found = []
    for one in story.of("colour-seen"):
        look = look_of(one)
        if look is None or look.state != WET:
            continue
        room, coats = _beneath_look(plan, story, one)
        seen = Seen(
            (), look.lab, room or FLOOR, look.photo, look.spots, look.spread_lightness,
            blur=blur_of(look),
        )  # fmt: skip
        name = f"{room or FLOOR}, {coats[-1].coat if coats else 'bare'}"
        found.append(Patch(name, seen, coats, room, look.error_de is not None, at_min=one.at_min))
    return found


def _beneath_look(
    plan: Plan, story: Story, one: Happened
) -> tuple[str | None, tuple[LaidCoat, ...]]:
    """The room that was looked at, and the coats on it then."""
    laid = laid_by_room(plan, story, by_min=one.at_min, named=one.text("coat") or None)
    room = one.text("room")
    if room in laid:
        return room, laid[room]
    return None, most_common(laid)


def most_common(laid: RoomCoats) -> tuple[LaidCoat, ...]:
    """The coats that most rooms have; the fewest of them where two are as common."""
    kinds = [tuple(one.coat for one in coats) for coats in laid.values()]
    if not kinds:
        return ()
    kind = max(dict.fromkeys(kinds), key=lambda one: (kinds.count(one), -len(one)))
    return next(coats for coats in laid.values() if tuple(one.coat for one in coats) == kind)


def _stains(job: Job, samples: Sequence[Sample], plan: Plan) -> tuple[str, ...]:
    told = [
        *(one.id for one in stains_and_coats(job)[0]),
        *(one.stain for one in plan.inputs.coats),
        *(made_of(job, one).stain for one in samples),
    ]
    return tuple(dict.fromkeys(filter(None, told)))


def _numbered(patch: Patch, stains: Sequence[str]) -> Patch:
    doses = tuple(one.dose(stains) for one in patch.coats)
    return replace(patch, seen=replace(patch.seen, coats=doses))


def _pair(sample: Sample) -> tuple[Lab, Lab] | None:
    wet, sealed = look_in(sample.looks, WET), look_in(sample.looks, SEALED)
    return None if wet is None or sealed is None else (wet.lab, sealed.lab)
