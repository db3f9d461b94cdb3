"""Which photos of the log show one place before and after. Pure."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from farwall.job.story.noun import Happened

WORDS = ("photo", "sample-seen", "colour-seen")
MOST_PAIRS = 6
"""Of a paper: more pages nobody looks at. Rank: guess."""


@dataclass(frozen=True)
class Pair:
    """The first and the last photo of a place: a sample, or a room."""

    room: str
    sample: str
    before: Happened
    after: Happened

    @property
    def alike(self) -> bool:
        """Whether both were told to be of the same state; looks of two states are not compared."""
        states = {self.before.text("state"), self.after.text("state")}
        return len(states) == 1 and states != {""}


def pairs_of(happened: Iterable[Happened]) -> tuple[Pair, ...]:
    """A pair for each sample and each room with two different photos, in the order of the first."""
    places: dict[tuple[str, str], list[Happened]] = {}
    for one in happened:
        if one.word not in WORDS or not one.text("file"):
            continue
        sample = one.text("sample")
        place = ("", sample) if sample else (one.text("room"), "")
        if any(place):
            places.setdefault(place, []).append(one)
    found = []
    for (room, sample), photos in places.items():
        photos.sort(key=lambda one: one.at_min)
        before, after = photos[0], photos[-1]
        if before.text("file") != after.text("file"):
            found.append(Pair(room, sample, before, after))
    return tuple(found[:MOST_PAIRS])
