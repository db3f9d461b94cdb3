"""Rooms that are judged as one: with the same coats, and alike in what is known of them. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.dose import Laid
from farwall.colour.next_coat import Outlook, Way, outlooks
from farwall.colour.nouns import FLOOR, Belief
from farwall.facts.plan import Plan
from farwall.facts.settled import SettledJob
from farwall.job.colour.laid import LaidCoat, RoomCoats, same_coats
from farwall.job.colour.seen import Gathered, Lab
from farwall.job.room_areas import areas_of
from farwall.nouns import dataclass

DROP_POWER = 0.25
"""A floor where a drop goes in twice as quickly takes colour as from 2^0.25, a fifth more stain: a
guess. It is only ever counted towards the dark side, and a look at the room takes its place."""
MOST_FACTOR = 1.6


@dataclass(frozen=True)
class RoomsAlike:
    """Rooms with the same coats so far, judged at one place of the belief.

    place: a room's id where it was seen or drinks most, else "floor" · factor: by how much a dose
    counts more there than where the samples were made, at least 1 · drop_s: of its thirstiest room.
    """

    rooms: tuple[str, ...]
    place: str
    coats: tuple[LaidCoat, ...]
    factor: float
    area_m2: float
    drop_s: float | None

    def so_far(self, stains: Sequence[str]) -> tuple[Laid, ...]:
        """The doses so far."""
        return tuple(_thirsty(one.dose(stains), self.factor) for one in self.coats)


def rooms_alike(
    settled: SettledJob, plan: Plan, found: Gathered, laid: RoomCoats, rooms: Sequence[str]
) -> tuple[RoomsAlike, ...]:
    """The rooms asked about in groups; a room that was seen stands alone."""
    area = areas_of(plan)
    seen = {one.room for one in found.of_floor if one.room}
    groups: dict[tuple[object, ...], list[str]] = {}
    for room in rooms:
        factor = 1.0 if room in seen else thirst_factor(settled, found, room)
        place = room if room in seen else FLOOR
        key = (same_coats(laid[room]), place, round(factor, 2))
        groups.setdefault(key, []).append(room)
    return tuple(
        RoomsAlike(
            rooms=tuple(own),
            place=str(key[1]),
            coats=laid[own[0]],
            factor=float(key[2]),  # type: ignore[arg-type]
            area_m2=sum(area.get(room, 0.0) for room in own),
            drop_s=min((s for room in own if (s := _drop_s(settled, room))), default=None),
        )
        for key, own in groups.items()
    )


def thirst_factor(settled: SettledJob, found: Gathered, room: str) -> float:
    """By how much more a dose counts in a room, by its drop test against that of the samples."""
    here = _drop_s(settled, room)
    there = [
        drop_s
        for one in found.samples
        if (drop_s := one.drop_s or (_drop_s(settled, one.room) if one.room else None))
    ]
    if here is None or not there:
        return 1.0
    usual = sorted(there)[len(there) // 2]
    return float(min(MOST_FACTOR, max(1.0, (usual / here) ** DROP_POWER)))


def outlooks_of(
    belief: Belief, alike: RoomsAlike, ways: Sequence[Way | None], *, sample_lab: Lab,
    sample_blur: float, dark_range: float, stains: Sequence[str],
) -> tuple[Outlook, ...]:  # fmt: skip
    """What each way does in these rooms; None: nothing more is laid."""
    thirsty = [
        None if one is None else Way(one.stain, one.water_parts, one.l_per_m2 * alike.factor)
        for one in ways
    ]
    found = outlooks(
        belief, alike.so_far(stains), thirsty, sample_lab=sample_lab, dark_range=dark_range,
        places=(alike.place,), sample_blur=sample_blur,
    )  # fmt: skip
    return tuple(_as(one, way) for one, way in zip(found, ways, strict=True))


def together(parts: Sequence[tuple[RoomsAlike, tuple[Outlook, ...]]]) -> tuple[Outlook, ...]:
    """All groups as one: too dark where it is likeliest, the rest as the mean of the floor."""
    whole = sum(alike.area_m2 for alike, _ in parts) or 1.0
    shares = [alike.area_m2 / whole for alike, _ in parts]
    return tuple(_joined(each, shares) for each in zip(*(found for _, found in parts), strict=True))


def _joined(each: Sequence[Outlook], shares: Sequence[float]) -> Outlook:
    def mean(values: Sequence[float]) -> float:
        return sum(value * share for value, share in zip(values, shares, strict=True))

    return Outlook(
        way=each[0].way,
        too_dark=max(one.too_dark for one in each),
        gap=mean([one.gap for one in each]),
        gap_low=min(one.gap_low for one in each),
        gap_high=max(one.gap_high for one in each),
        away=mean([one.away for one in each]),
        lab=(
            mean([one.lab[0] for one in each]),
            mean([one.lab[1] for one in each]),
            mean([one.lab[2] for one in each]),
        ),
    )


def _as(one: Outlook, way: Way | None) -> Outlook:
    return Outlook(way, one.too_dark, one.gap, one.gap_low, one.gap_high, one.away, one.lab)


def _thirsty(dose: Laid, factor: float) -> Laid:
    return Laid(dose.stain, dose.l_per_m2 * factor)


def _drop_s(settled: SettledJob, room: str) -> float | None:
    told = settled.survey.rooms.get(room)
    return told.drop_s if told is not None and told.drop_told else None
