"""What lies on the floor so far: room by room, from what the log tells, else as planned. Pure."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence

from farwall.colour.dose import Laid
from farwall.evidence import Rank
from farwall.facts.plan import Field, Plan
from farwall.job.story.noun import CoatStory, Story
from farwall.mix.cut import parse_cut
from farwall.nouns import dataclass

_HAIR_M2 = 0.01


@dataclass(frozen=True)
class LaidCoat:
    """A coat on a room or a sample: stain (id), cut, litres of mix on a square metre, how known.

    done_min: minute of the plan at which the room had it; None: nobody logged when.
    """

    coat: str
    stain: str
    cut: str
    l_per_m2: float
    rank: str
    source: str
    done_min: float | None = None

    @property
    def stain_l_per_m2(self) -> float:
        """Litres of stain, not of mix, on a square metre."""
        return self.l_per_m2 * parse_cut(self.cut, where=self.coat).stain_share

    def dose(self, stains: Sequence[str]) -> Laid:
        """The same as the sciences take it: the stain by its number in `stains`."""
        return Laid(stains.index(self.stain), self.stain_l_per_m2)


RoomCoats = Mapping[str, tuple[LaidCoat, ...]]


def laid_by_room(
    plan: Plan, story: Story | None, *, by_min: float = math.inf, named: str | None = None
) -> RoomCoats:
    """Coats on every room of the plan at a minute, in the order of the plan.

    A room has a coat where all bands on it were logged done by then. named: a coat that somebody
    says is on, such as whoever looked at it; it and all before it are then taken as laid, as
    planned where nothing of them was logged.
    """
    rooms = tuple(dict.fromkeys(room for field in plan.fields for room in field.rooms))
    ids = [coat.id for coat in plan.inputs.coats]
    taken = ids[: ids.index(named) + 1] if named in ids else []
    bands = _bands_on(plan)
    found: dict[str, tuple[LaidCoat, ...]] = {}
    for room in rooms:
        coats = []
        for coat in ids:
            done = _done(plan, story, coat, room, bands)
            if done is not None and (done[0] <= by_min or coat in taken):
                coats.append(_logged(plan, story, coat, *done))
            elif coat in taken:
                coats.append(planned_coat(plan, coat))
        found[room] = tuple(coats)
    return found


def planned_coat(plan: Plan, coat: str) -> LaidCoat:
    """A coat as the plan has it. KeyError where it has none of that id."""
    own = {one.id: one for one in plan.inputs.coats}[coat]
    ground = next((g for g in plan.grounds if g.name == f"coats.{coat}.m2_per_l"), None)
    rank = ground.rank if ground is not None else Rank.GUESS.value
    return LaidCoat(
        coat, own.stain, own.cut, plan.inputs.l_per_m2[coat], rank,
        "as planned; the log does not tell what was laid",
    )  # fmt: skip


def _done(
    plan: Plan, story: Story | None, coat: str, room: str, bands: Mapping[str, frozenset[str]]
) -> tuple[float, Field] | None:
    """When a room had a coat by the log, and in which field; None where it has it not."""
    told = story.coat(coat) if story is not None else None
    if told is None:
        return None
    ended = {band.band: band.end_min for band in told.done}
    for field in (*plan.fields, *plan.left):
        if field.coat != coat or room not in field.rooms:
            continue
        own = [band.id for band in field.bands if room in bands[band.id]]
        if own and all(name in ended for name in own):
            return max(ended[name] for name in own), field
    return None


def _logged(plan: Plan, story: Story | None, coat: str, done_min: float, field: Field) -> LaidCoat:
    """A coat that is on: litres by field, else of the whole coat, else as planned."""
    planned = planned_coat(plan, coat)
    told = story.coat(coat) if story is not None else None
    cut = _cut_mixed(story, coat) or planned.cut
    rate, source = _rate(told, field.id)
    if rate is None:
        return LaidCoat(
            coat, planned.stain, cut, planned.l_per_m2, planned.rank, planned.source, done_min
        )
    return LaidCoat(coat, planned.stain, cut, rate, Rank.MEASURED.value, source, done_min)


def _rate(told: CoatStory | None, field: str) -> tuple[float | None, str]:
    if told is None:
        return None, ""
    own = next((one for one in told.fields if one.field == field), None)
    if own is not None and own.l_per_m2:
        return own.l_per_m2, f"the log, litres of field {field}"
    if told.l_per_m2:
        return told.l_per_m2, f"the log, litres of coat {told.coat}"
    return None, ""


def _cut_mixed(story: Story | None, coat: str) -> str:
    """The cut that was mixed for a coat by the log, the last that was told; else empty."""
    if story is None:
        return ""
    told = [one.text("cut") for one in story.of("mixed") if one.text("coat") == coat]
    return next((one for one in reversed(told) if one), "")


def _bands_on(plan: Plan) -> dict[str, frozenset[str]]:
    """By band the rooms that it lies on."""
    shapes = {room.id: room.polygon.shape for room in plan.inputs.floor.rooms}
    found = {}
    for field in (*plan.fields, *plan.left):
        for band in field.bands:
            on = [r for r in field.rooms if _over(shapes.get(r), band.polygon.shape)]
            found[band.id] = frozenset(on or field.rooms)
    return found


def _over(room: object, band: object) -> bool:
    return room is not None and room.intersection(band).area > _HAIR_M2  # type: ignore[attr-defined]


def same_coats(coats: Iterable[LaidCoat]) -> tuple[tuple[str, float], ...]:
    """What two rooms must have in common to be judged as one: stains and litres of each coat."""
    return tuple((one.stain, round(one.stain_l_per_m2, 4)) for one in coats)
