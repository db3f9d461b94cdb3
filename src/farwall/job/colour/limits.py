"""What the trade asks before another coat, whatever the colour says. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.settled import SettledJob
from farwall.job.colour.laid import RoomCoats
from farwall.job.colour.seen import Patch
from farwall.job.colour.standard import Standard
from farwall.job.story.noun import Story
from farwall.nouns import dataclass

DROP_S = 60.0
"""A drop that stands so long: no stain goes there [common-practice]."""
DWELL_H = 4.0
"""The least dwell before a floor is judged: the low end of what finishers say
[common-practice]."""
NO_DROPS: Mapping[str, float] = MappingProxyType({})
FULL_COATS = 2
"""After so many, a further one is an accent and no full coat [common-practice]."""


NEUTRALISED = (
    "The floor was neutralised: what is left of the base eats the next coat. Rinse until the rag "
    "is clean, let it dry, and lay the coat on the sample first."
)


@dataclass(frozen=True)
class Limit:
    """Something that must be so: a code, in words, whether it is (None: nobody told), its rank."""

    code: str
    what: str
    holds: bool | None
    rank: str = Rank.PRACTICE.value
    source: str = PRACTICE


def limits_of(
    settled: SettledJob,
    rooms: Sequence[str],
    looks: Sequence[Patch],
    standard: Standard,
    *,
    coats: int,
    neutralised: bool = False,
    timed: Mapping[str, float] = NO_DROPS,
) -> tuple[Limit, ...]:
    """Drop test, dwell and number of coats, for rooms that have `coats` coats.

    looks: those at these rooms as they are now · neutralised: by the log, since the last coat ·
    timed: `drops_since`, which wins over what the job tells of the bare floor.
    """
    found = [_drop(settled, rooms, coats, timed)]
    if neutralised:
        found.append(Limit("neutralised", NEUTRALISED, holds=False))
    if coats:
        found += [_looked(looks), _dwell(looks, standard)]
    if coats >= FULL_COATS:
        what = (
            "Two full coats are on: a third is an accent, a light mist of a weak cut and no more."
        )
        found.append(Limit("third-coat", what, holds=True))
    return tuple(found)


def neutralised_since(story: Story, rooms: Sequence[str], laid: RoomCoats) -> bool:
    """Whether one of these rooms, or the floor as one, was neutralised after its last coat."""
    for one in story.of("neutralised"):
        room = one.text("room")
        for each in rooms if not room else [name for name in rooms if name == room]:
            ended = [coat.done_min for coat in laid[each] if coat.done_min is not None]
            if laid[each] and one.at_min >= max(ended, default=0.0):
                return True
    return False


def drops_since(story: Story, rooms: Sequence[str], laid: RoomCoats) -> dict[str, float]:
    """Seconds of the last drop that the log has of each room since its last coat was done."""
    found: dict[str, float] = {}
    for one in story.of("drop-tested"):
        room, drop_s = one.text("room"), one.number("drop_s")
        for each in rooms if not room else [name for name in rooms if name == room]:
            ended = [coat.done_min for coat in laid[each] if coat.done_min is not None]
            if drop_s is not None and one.at_min >= max(ended, default=one.at_min):
                found[each] = drop_s
    return found


def _drop(
    settled: SettledJob, rooms: Sequence[str], coats: int, timed: Mapping[str, float]
) -> Limit:
    told = {r: settled.room(r).drop_s for r in rooms if settled.room(r).drop_told} | dict(timed)
    slow = [room for room, drop_s in told.items() if drop_s >= DROP_S]
    if slow:
        names = ", ".join(_names(settled, slow))
        what = f"A drop stands a minute and longer in {names}: no stain before it is opened."
        return Limit("drop", what, holds=False)
    if not told or (coats and not all(room in timed for room in rooms)):
        what = (
            "Before it is laid: a drop of water on the clean floor must go in within a minute, "
            "in every room."
        )
        return Limit("drop", what, holds=None)
    return Limit(
        "drop", "The drop test: every room that was tested takes water in a minute.", holds=True
    )


def _looked(looks: Sequence[Patch]) -> Limit:
    if looks:
        return Limit(
            "looked", "The floor was looked at clean and wet with this coat on.", holds=True
        )
    what = "Look at the floor clean and wet, at six spots, before another coat is decided."
    return Limit("looked", what, holds=False)


def _dwell(looks: Sequence[Patch], standard: Standard) -> Limit:
    hours = [
        (one.at_min - one.coats[-1].done_min) / 60
        for one in looks
        if one.at_min is not None and one.coats and one.coats[-1].done_min is not None
    ]
    if not hours:
        what = f"The dwell must be over before the floor is judged: {DWELL_H:g} h at the least."
        return Limit("dwell", what, holds=None)
    least = min(DWELL_H, standard.dwell_h or DWELL_H)
    if min(hours) < least:
        what = (
            f"The floor was looked at {min(hours):.1f} h after its coat: colour still comes. "
            f"Wait until {least:g} h have passed, and look again."
        )
        return Limit("dwell", what, holds=False)
    if standard.dwell_h is not None and min(hours) < standard.dwell_h:
        what = (
            f"The floor was looked at {min(hours):.1f} h after its coat; the sample had "
            f"{standard.dwell_h:g} h, so it may still come darker."
        )
        return Limit("dwell", what, holds=True)
    return Limit("dwell", f"The floor was looked at {min(hours):.1f} h after its coat.", holds=True)


def _names(settled: SettledJob, rooms: Sequence[str]) -> list[str]:
    labels = {room.id: room.label for room in settled.job.floor.rooms}
    return [labels.get(room, room) for room in rooms]
