"""The rinses of a wash day out of its log: round by round and room by room. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import field, replace
from functools import cached_property

from farwall.acid.rinse_belief import Round
from farwall.acid.rinse_water import ALL_RINSES_L_M2, ROUNDS
from farwall.acid.rinsing import Step, Wanted, next_step
from farwall.air.slab_tests import readings_by_area
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.room_areas import areas_of
from farwall.job.story.noun import Happened, Story
from farwall.nouns import dataclass
from farwall.units import ft2_from_m2

_RAGS = ("clean", "grey", "coloured")
_WORDS = ("neutralised", "scrubbed", "rinsed", "strip-read", "dry-swiped")
MOST_ROUNDS = 50
"""A higher number of a rinse is a slip of the finger. Rank: guess."""
READING_FT2 = 250.0
"""Floor of one pH reading: two for each 500 ft² [astm-d4262]."""


def readings_of(areas: Mapping[str, float]) -> dict[str, int]:
    """pH readings after the last rinse, by room: at least one each, two for each 500 ft² or part
    of it in all [astm-d4262]; what that leaves over goes to the largest rooms."""
    found = {
        room: max(1, -int(-(ft2_from_m2(area) - 1e-6) // READING_FT2))
        for room, area in areas.items()
    }
    lacks = readings_by_area(sum(areas.values())) - sum(found.values()) if areas else 0
    largest = sorted(areas, key=lambda room: (-areas[room], room))
    for n in range(max(lacks, 0)):
        found[largest[n % len(largest)]] += 1
    return found


def planned_l_per_m2(job: Job) -> float:
    """Water of each rinse as planned: that of all of them over how many there are. [L/m²]"""
    told = job.washing
    water = told.water_l_per_m2 if told.water_l_per_m2 is not None else ALL_RINSES_L_M2[1]
    return water / (told.rinses or ROUNDS[1])


@dataclass
class _Room:
    """A room while the log is gone through."""

    rounds: list[Round] = field(default_factory=list)
    counts: list[int] = field(default_factory=list)
    number: int = 0
    scrubbed: bool = False
    at_min: float = 0.0


@dataclass(frozen=True)
class Rinses:
    """What the log tells of rinsing, and what each room asks for next."""

    job: Job
    plan: Plan
    story: Story

    @cached_property
    def areas(self) -> dict[str, float]:
        """Floor of each room. [m²]"""
        return areas_of(self.plan)

    @cached_property
    def readings(self) -> dict[str, int]:
        """pH readings that each room wants."""
        return readings_of(self.areas)

    @cached_property
    def wanted(self) -> Wanted:
        """What is held against: strips of the day before what the job tells."""
        washing, sealer = self.job.washing, self.job.sealer
        read = {one.text("of"): one.number("ph") for one in self.story.of("strip-read")}
        tap, bare = read.get("tap"), read.get("unstained patch")
        return Wanted(
            tap if tap is not None else washing.tap_ph,
            bare if bare is not None else washing.unstained_ph,
            sealer.least_ph,
            sealer.most_ph,
        )

    @cached_property
    def _rooms(self) -> dict[str, _Room]:
        found = {room: _Room() for room in self.areas}
        for one in self.story.of(*_WORDS):
            for room in self._meant(one):
                _feed(found[room], one, self._l_per_m2(one))
        return found

    def _meant(self, one: Happened) -> Iterator[str]:
        """The rooms that an entry is about: the whole floor where it names none."""
        named = one.text("room")
        yield from (room for room in self.areas if not named or room == named)

    def _l_per_m2(self, one: Happened) -> float:
        litres, named = one.number("litres"), one.text("room")
        area = self.areas.get(named, 0.0) if named else sum(self.areas.values())
        if not litres or area <= 0:
            return planned_l_per_m2(self.job)
        return litres / area

    def rounds(self, room: str) -> tuple[Round, ...]:
        """The rinses of a room in order."""
        return tuple(self._rooms[room].rounds) if room in self._rooms else ()

    def counts(self, room: str) -> tuple[int, ...]:
        """Which rinse of the room each of them was: as its number says, where some before it were
        not entered, else one more than the one before."""
        return tuple(self._rooms[room].counts) if room in self._rooms else ()

    def last_min(self, room: str) -> float | None:
        """When the room was last rinsed or read, in minutes of the plan."""
        return self._rooms[room].at_min if self.rounds(room) else None

    def step(self, room: str) -> Step:
        """What a room asks for next."""
        return self._steps(room)

    @cached_property
    def _kept(self) -> dict[str, Step]:
        return {}

    def _steps(self, room: str) -> Step:
        room = room if self.rounds(room) else ""  # all rooms not yet rinsed get one answer
        if room not in self._kept:
            others = [self.rounds(one) for one in self.areas if one != room and self.rounds(one)]
            self._kept[room] = next_step(
                self.rounds(room), others, wanted=self.wanted,
                l_per_m2=planned_l_per_m2(self.job), readings=self.readings.get(room, 1),
            )  # fmt: skip
        return self._kept[room]

    @cached_property
    def begun(self) -> tuple[str, ...]:
        """Rooms that were rinsed at least once, the one of the last entry first."""
        rooms = [room for room in self.areas if self.rounds(room)]
        return tuple(sorted(rooms, key=lambda room: -self._rooms[room].at_min))


def _feed(room: _Room, one: Happened, l_per_m2: float) -> None:
    if one.word in {"neutralised", "scrubbed"}:
        room.scrubbed = bool(room.rounds)
        return
    if one.word == "rinsed":
        _rinsed(room, one, l_per_m2)
    elif not room.rounds:
        return
    elif one.word == "dry-swiped":
        powder = one.about.get("powder")
        room.rounds[-1] = replace(room.rounds[-1], powder=powder if powder is not None else None)  # type: ignore[arg-type]
    elif one.text("of") == "rinse water":
        room.rounds[-1] = _with(room.rounds[-1], one.number("ph"), "")
    else:
        return
    room.at_min = one.at_min


def _rinsed(room: _Room, one: Happened, l_per_m2: float) -> None:
    """A new rinse, or one more reading of the same where its number says so."""
    number = one.number("round")
    if not (room.rounds and number is not None and number == room.number):
        room.rounds.append(Round(l_per_m2, scrubbed=room.scrubbed))
        room.number = int(number) if number is not None else room.number + 1
        room.scrubbed = False
        following = room.counts[-1] + 1 if room.counts else 1
        believed = number is not None and number <= MOST_ROUNDS
        room.counts.append(max(following, room.number) if believed else following)
    room.rounds[-1] = _with(room.rounds[-1], one.number("ph"), one.text("rag"))


def _with(last: Round, ph: float | None, rag: str) -> Round:
    """A rinse with one more reading; of two rags the dirtier counts."""
    rags = [each for each in (last.rag, rag) if each in _RAGS]
    return replace(
        last,
        phs=last.phs if ph is None else (*last.phs, ph),
        rag=max(rags, key=_RAGS.index) if rags else "",
    )
