"""Which photos of the log show one place before and after. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from farwall.errors import Mistake, Refused
from farwall.job.story.noun import Happened
from farwall.nouns import dataclass

WORDS = ("photo", "sample-seen", "colour-seen")
MOST_PAIRS = 6
"""Of a paper: more pages nobody looks at. Rank: guess."""


@dataclass(frozen=True)
class Pair:
    """Two photos of a place, a sample or a room; the first and the last where nobody chose."""

    room: str
    sample: str
    before: Happened
    after: Happened

    @property
    def alike(self) -> bool:
        """Whether both were told to be of the same state; looks of two states are not compared."""
        states = {self.before.text("state"), self.after.text("state")}
        return len(states) == 1 and states != {""}


@dataclass(frozen=True)
class Place:
    """A sample or a room with the photos that show it, the oldest first."""

    room: str
    sample: str
    photos: tuple[Happened, ...]

    @property
    def paired(self) -> Pair | None:
        """Its first and its last photo; None where these are the same picture."""
        before, after = self.photos[0], self.photos[-1]
        if before.text("file") == after.text("file"):
            return None
        return Pair(self.room, self.sample, before, after)


def places_of(happened: Iterable[Happened]) -> tuple[Place, ...]:
    """Each sample and each room with photos, in the order in which they were first told."""
    places: dict[tuple[str, str], list[Happened]] = {}
    for one in happened:
        if one.word not in WORDS or not one.text("file"):
            continue
        sample = one.text("sample")
        place = ("", sample) if sample else (one.text("room"), "")
        if any(place):
            places.setdefault(place, []).append(one)
    return tuple(
        Place(room, sample, tuple(sorted(photos, key=lambda one: one.at_min)))
        for (room, sample), photos in places.items()
    )


def pairs_of(
    happened: Iterable[Happened], chosen: tuple[str, str] | None = None
) -> tuple[Pair, ...]:
    """A pair for each sample and each room with two different photos, in the order of the first.

    chosen: ids of two entries of one place, before and after; then theirs is the only pair. Raises
    Refused where they are not two photos of one place.
    """
    places = places_of(happened)
    if chosen is not None:
        return (_chosen(places, *chosen),)
    found = [pair for one in places if (pair := one.paired) is not None]
    return tuple(found[:MOST_PAIRS])


def _chosen(places: Sequence[Place], before: str, after: str) -> Pair:
    for place in places:
        own = {one.id: one for one in place.photos}
        if before in own and after in own:
            pair = Pair(place.room, place.sample, own[before], own[after])
            if pair.before.text("file") != pair.after.text("file"):
                return pair
    what = "These are not two different photos of one place in the log."
    remedy = "Choose two of the same room, or two of the same sample."
    raise Refused(Mistake("before-after.pdf", what, remedy))
