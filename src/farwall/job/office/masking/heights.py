"""How high film stands along each run of a room, and which rule says so."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import shapely
from shapely.geometry.base import BaseGeometry
from shapely.ops import substring

from farwall.facts.supplies import Masking
from farwall.floor.geometry import Point
from farwall.floor.masking import Run
from farwall.floor.nouns import Fixture
from farwall.job.office.masking.nouns import FilmRun
from farwall.job.office.masking.rules import (
    APPLIANCE_M,
    BESIDE_M,
    CEILING_M,
    COUNTER_M,
    FILM_M,
    KICKS,
    STAGES,
    STAIR_M,
    TUB_M,
    UNTOLD,
    StageRule,
    fixture_kind,
)
from farwall.nouns import dataclass

_SHORT_M = 0.6
"""A rest of a wall shorter than this is filmed as high as the part beside metal. Rank: guess."""
_SET = {"tub": TUB_M, "stair": STAIR_M, "appliance": APPLIANCE_M}


@dataclass(frozen=True)
class Tall:
    """Something beside which film stands to full height: its shape, and how high that is. [m]"""

    shape: BaseGeometry
    film_m: float


@dataclass(frozen=True)
class Heights:
    """How high film stands in a house."""

    wished: Masking
    fixtures: tuple[Fixture, ...]

    @property
    def stage(self) -> StageRule:
        """The rule of the stage of the build."""
        return STAGES[self.wished.stage or UNTOLD]

    def usual_m(self, room: str) -> tuple[float, str]:
        """Height along the walls of a room, and why: its own, the house's, the stage's. [m]"""
        own = self.wished.room_film_m.get(room)
        if own is not None:
            return own, "room"
        if self.wished.film_m is not None:
            return self.wished.film_m, "house"
        return self.stage.film_m, "stage"

    def tall_in(self, room: str) -> list[Tall]:
        """What in a room wants full height beside it: metal and appliances that stay."""
        found = [
            Tall(shapely.Point(one.at), max(one.height_m or CEILING_M, self.usual_m(room)[0]))
            for one in self.wished.items
            if one.kind in {"metal", "appliance"} and not one.take_out
            and one.room == room and one.at is not None
        ]  # fmt: skip
        if self.stage.cabinets:
            found += [
                Tall(one.polygon.shape, CEILING_M)
                for one in self.fixtures
                if fixture_kind(one.kind) == "appliance"
            ]
        return found

    def along(self, run: Run, room: str, tall: Sequence[Tall]) -> list[FilmRun]:
        """The run with its height; in parts where a part of it lies beside metal."""
        if run.kind == "fixture":
            return [self._at_fixture(run, room)]
        usual, why = self.usual_m(room)
        if usual == 0:
            return [FilmRun("wall", run.line, run.length_m, 0.0, why)]
        parts = _raised(run, tall)
        if not parts:
            return [FilmRun("wall", run.line, run.length_m, usual, why)]
        return [
            FilmRun("wall", line, long, film_m or usual, "beside metal" if film_m else why)
            for line, long, film_m in parts
        ]

    def _at_fixture(self, run: Run, room: str) -> FilmRun:
        kind = fixture_kind(self.fixtures[int(run.of)].kind)
        usual, _ = self.usual_m(room)
        if kind in KICKS:
            film_m = min(usual or FILM_M, COUNTER_M) if self.stage.cabinets else 0.0
            return FilmRun(kind, run.line, run.length_m, film_m, "kick")
        if kind == "appliance" and not self.stage.cabinets:
            return FilmRun(kind, run.line, run.length_m, 0.0, kind)
        film_m = _SET.get(kind, usual or FILM_M)
        return FilmRun(kind, run.line, run.length_m, film_m, kind)


_Span = tuple[float, float, float]
_Part = tuple[tuple[Point, ...], float, float]


def _raised(run: Run, tall: Sequence[Tall]) -> list[_Part]:
    """Parts of a run as points, length and the height beside what is tall, 0 elsewhere."""
    line = shapely.LineString(run.line)
    spans = [span for one in tall for span in _beside(line, one)]
    if not spans:
        return []
    ends = (at for low, high, _ in spans for at in (low, high))
    inside = (at for at in ends if _SHORT_M < at < line.length - _SHORT_M)
    cuts = sorted({0.0, float(line.length), *inside})
    heights = [(low, high, _highest(spans, low, high)) for low, high in pairwise(cuts)]
    joined: list[_Span] = []
    for low, high, film_m in heights:
        if joined and joined[-1][2] == film_m:
            joined[-1] = (joined[-1][0], high, film_m)
        else:
            joined.append((low, high, film_m))
    return [(_points(line, low, high), high - low, film_m) for low, high, film_m in joined]


def _beside(line: shapely.LineString, one: Tall) -> list[_Span]:
    """From where to where along a run something tall stands beside it. [m]"""
    if line.distance(one.shape) >= BESIDE_M:
        return []
    near = line.intersection(one.shape.buffer(BESIDE_M))
    spans = []
    for part in shapely.get_parts(near).tolist():
        if part.length > 0:
            ends = [line.project(shapely.Point(part.coords[k])) for k in (0, -1)]
            spans.append((float(min(ends)), float(max(ends)), one.film_m))
    return spans


def _highest(spans: Sequence[_Span], low: float, high: float) -> float:
    """The greatest height that reaches over half of a part, 0 where none does."""
    over = [h for a, b, h in spans if min(b, high) - max(a, low) >= (high - low) / 2]
    return max(over, default=0.0)


def _points(line: shapely.LineString, low: float, high: float) -> tuple[Point, ...]:
    return tuple((float(x), float(y)) for x, y in substring(line, low, high).coords)
