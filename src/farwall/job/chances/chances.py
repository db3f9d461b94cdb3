"""The day drawn many times: how often each edge dies, how often the mix runs short."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import field

import numpy as np

from farwall.evidence import Span
from farwall.facts.plan import Chances, Field, FieldChance, RoomOpenTime
from farwall.facts.settled import SettledJob
from farwall.floor.geometry import Point
from farwall.job.chances.by_two import (
    TwoCourse,
    course_of_two,
    left_of_two,
    stretched_by_two,
)
from farwall.job.chances.drawn_days import Days, Floats, drawn_days, strayed
from farwall.job.chances.lean_days import runs_short_lean
from farwall.job.chances.matters import matters_most
from farwall.job.chances.mix_days import Bools, log_width, runs_short
from farwall.job.chances.replay import Course, Edges, course_of, edges_of, left_l
from farwall.job.chances.spreads import Input, Spread, spreads_of, width
from farwall.job.chances.stretched import Factors, Pause, Stretched, stretched, worst
from farwall.job.mix_needs import mix_needs
from farwall.mix.gate import budget
from farwall.mix.thirst import FIELD_SHARE, first_belief
from farwall.mix.ways import ahead_of, way_of
from farwall.nouns import dataclass
from farwall.spray.edges import Moments
from farwall.spray.lives import Lives

DAYS = 10_000
_LONGEST_MIN = 24 * 60.0
_SHORTEST_MIN = 1e-6
"""Where the slab says no every edge dies at once."""


@dataclass(frozen=True)
class Stretch:
    """A planned field with the moments of its edges and the open times that hold them."""

    field: Field
    moments: tuple[Moments, ...]
    lives: Lives


@dataclass(frozen=True)
class Life:
    """Open times as drawn: likely minutes, log-widths below and above it."""

    likely_min: float
    below: float
    above: float

    @staticmethod
    def of(span: Span) -> Life:
        """From a range; an end that does not exist is taken as a day."""
        likely = min(span.likely if span.likely is not None else _LONGEST_MIN, _LONGEST_MIN)
        if likely <= 0:
            return Life(0.0, 0.0, 0.0)
        low = min(max(span.low, 1e-3 * likely), likely)
        high = max(min(span.high if span.high is not None else _LONGEST_MIN, _LONGEST_MIN), likely)
        return Life(likely, *width(low, likely, high))


LifeOf = Callable[[str, RoomOpenTime], Span]
"""The open time as it is believed, not as it is budgeted: of a coat, where and when this holds."""


@dataclass(frozen=True)
class _Part:
    """A field ready to be drawn: its course, its edges, its open times, its coat's number."""

    field: Field
    course: Course
    edges: Edges
    lives: tuple[Life, ...]
    coat: int
    two: TwoCourse | None
    """Where two are at work in the job: its course by turns."""
    begins: bool
    """Whether it is the first of its coat: the tank is then empty."""


def chances_of(
    stretches: Sequence[Stretch],
    settled: SettledJob,
    life_of: LifeOf,
    rng: np.random.Generator,
    *,
    seed: int,
    tub: Point,
    days: int = DAYS,
    learned: Mapping[Input, Spread] | None = None,
) -> Chances:
    """How the planned day goes on so many drawn days; the same `rng` gives the same figures.

    stretches: fields in the order of spraying. seed: what `rng` was made from, to be told.
    learned: spreads that replace those of practice and guess.
    """
    spreads = spreads_of(settled, learned)
    parts = _parts(stretches, settled, life_of, tub)
    coats = len(settled.coats)
    drawn = drawn_days(
        rng,
        tuple(spreads),
        days=days,
        fields=len(parts),
        coats=coats,
        two=any(part.two is not None for part in parts),
    )
    play = Play(parts, settled, drawn)
    base = play.worst(spreads)
    dies = base.shares > 1.0
    short = _mix_short(parts, settled, drawn)
    return Chances(
        days=days,
        seed=seed,
        edge_dies=tuple(
            FieldChance(part.field.id, *chance(own)) for part, own in zip(parts, dies, strict=True)
        ),
        any_edge_dies=chance(np.asarray(dies.any(axis=0)))[0],
        mix_short=chance(short)[0],
        matters_most=matters_most(play, base, spreads) if parts else (),
    )


def chance(happened: Bools) -> tuple[float, float]:
    """The share of days on which it happened, and that share's standard error."""
    share = float(happened.mean())
    return round(share, 6), round(math.sqrt(share * (1 - share) / len(happened)), 6)


@dataclass(frozen=True)
class Outcome:
    """The worst age over open time of every field (fields x days); the edges that ever had it."""

    shares: Floats
    telling: tuple[Edges, ...]


@dataclass(frozen=True)
class Play:
    """The fields with one set of days, to be played with any spreads."""

    parts: Sequence[_Part]
    settled: SettledJob
    drawn: Days
    factors: dict[tuple[Input, Spread, int], Floats] = field(default_factory=dict)
    """Factors drawn so far, by input, spread and field: of all inputs one changes between plays."""
    courses: dict[tuple[int, tuple[Spread, ...]], Stretched] = field(default_factory=dict)
    """Fields as stretched where all edges were played, by all spreads but that of open times,
    which stretches nothing. Other plays change one spread each: theirs, some MB, are not kept."""

    def _factor(self, name: Input, spread: Spread, number: int) -> Floats:
        key = (name, spread, number)
        if key not in self.factors:
            coat = self.parts[number].coat
            self.factors[key] = self.drawn.factor(name, spread, number, coat)
        return self.factors[key]

    def _stretched(
        self, spreads: Mapping[Input, Spread], number: int, tank_l: Floats, *, keep: bool
    ) -> Stretched:
        """A field stretched; the tank before it follows from the same spreads."""
        moving = {name: spread for name, spread in spreads.items() if name != "open time"}
        key = (number, tuple(moving.values()))
        if key in self.courses:
            return self.courses[key]
        own = {name: self._factor(name, spread, number) for name, spread in moving.items()}
        part = self.parts[number]
        if part.begins:
            count = len(own["thirst"])
            tank_l = np.zeros(count if part.two is None else (2, count))
        days = Factors(
            1 / own["spray rate"], 1 / own["walking pace"], own["tank pauses"], own["thirst"]
        )
        if part.two is None:
            found = stretched(part.course, days, tank_l, self._pause)
        else:
            second = 1 / self.drawn.factor_of_second(moving["spray rate"], number)
            helper = self.settled.job.crew.helper
            found = stretched_by_two(part.two, days, second, tank_l, self._pause, swaps=helper)
        if keep:
            self.courses[key] = found
        return found

    def worst(
        self, spreads: Mapping[Input, Spread], telling: Sequence[Edges] | None = None
    ) -> Outcome:
        """All fields on all days; with `telling` only by these edges of each field."""
        shares, told = [], []
        tank = np.zeros(0)
        for number, part in enumerate(self.parts):
            on = self._stretched(spreads, number, tank, keep=telling is None)
            edges = part.edges if telling is None else telling[number]
            most, which = worst(edges, on, self._open_min(part, number, spreads["open time"]))
            shares.append(most)
            told.append(
                edges.only(np.flatnonzero(np.bincount(which))) if len(edges.first) else edges
            )
            tank = on.left_l
        return Outcome(np.array(shares), tuple(told))

    def _open_min(self, part: _Part, number: int, spread: Spread) -> Floats:
        """Drawn open times: open times x days. [min]"""
        normal = self.drawn.normal("open time", number, part.coat)
        drawn = np.array(
            [
                life.likely_min * strayed(normal, *spread.widths(life.below, life.above))
                for life in part.lives
            ]
        )
        return np.asarray(np.maximum(drawn, _SHORTEST_MIN))

    @property
    def _pause(self) -> Pause:
        tools = self.settled.tools
        helper = self.settled.job.crew.helper
        # The helper walks in with the spare tank; alone one walks out and in again.
        ways, minutes = (1, tools.swap_min) if helper else (2, tools.refill_min)
        return Pause(minutes, ways / tools.walk_m_min, tools.tank_l)


def _parts(
    stretches: Sequence[Stretch], settled: SettledJob, life_of: LifeOf, tub: Point
) -> list[_Part]:
    number = {coat.id: index for index, coat in enumerate(settled.coats)}
    found: list[_Part] = []
    tank_l, tanks_l = 0.0, (0.0, 0.0)
    two = any(band.sprayer == 2 for one in stretches for band in one.field.bands)
    for one in stretches:
        field = one.field
        begins = not found or found[-1].field.coat != field.coat
        tank_l, tanks_l = (0.0, (0.0, 0.0)) if begins else (tank_l, tanks_l)
        litres = settled.coats[number[field.coat]].l_per_m2
        found.append(
            _Part(
                field,
                course_of(field, settled.tools, litres, tank_l, tub),
                edges_of(one.moments, one.lives, field),
                tuple(Life.of(life_of(field.coat, entry)) for entry in one.lives.open_times),
                number[field.coat],
                course_of_two(field, settled.tools, litres, tanks_l, tub) if two else None,
                begins,
            )
        )
        tank_l = left_l(field, tank_l)
        tanks_l = left_of_two(field, tanks_l)
    return found


def _mix_short(parts: Sequence[_Part], settled: SettledJob, drawn: Days) -> Bools:
    """On which days the mix runs short inside a field, by each coat's own way."""
    sprayed = {part.coat for part in parts}
    chance_dry = (1 - settled.certainty_percent / 100) / max(1, len(sprayed))
    count = next(iter(drawn.own.values())).shape[1]
    short = np.zeros(count, dtype=bool)
    for coat in sorted(sprayed):
        own = [(number, part) for number, part in enumerate(parts) if part.coat == coat]
        told = settled.coats[coat]
        own_share = FIELD_SHARE if told.field_share is None else told.field_share
        belief = first_belief(told.spread_percent, field_share=own_share)
        wide = log_width(belief)
        likely = [float(part.course.litres.sum()) for _, part in own]
        drunk = np.array(
            [np.exp(wide * drawn.normal("thirst", n, coat, share=own_share)) for n, _ in own]
        )
        chances = budget(chance_dry, len(own))
        needs = mix_needs([part.field for _, part in own])
        helper, lots = settled.job.crew.helper, told.stain.lots
        way = way_of(told.id, needs, belief, chances, helper=helper, lots=lots)
        if not way.lean:
            short |= runs_short(likely, drunk, belief=belief, chances=chances)
            continue
        last = drawn.own["thirst"][own[-1][0]]
        short |= runs_short_lean(ahead_of(needs, chances), drunk, belief=belief, own=last)
    return short
