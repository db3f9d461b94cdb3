"""A front that no sweep can undercut, from what must be wet one stride later.

`edges_at_once` asks for how long edges are at a moment; here moments are laid one after
another. A front of E moves on by one depth while E times the depth of floor is
sprayed: a *stride*. Whatever was wet before has grown by then, in every rectangle, and whatever
is dry after was dry farther around before; and the body that sprays what is left needs a
way out (`passages`). What may be wet of each part at moments a fraction of a stride apart is told
by boxes of shares, those that no other fits before or after are thrown out, the rest are halved.
Where none is left no sweep has so short a front. The proof is in docs/spraying.md ("Strides");
rank: derived here.
"""

from __future__ import annotations

from functools import cached_property

import numpy as np
import numpy.typing as npt

from farwall.nouns import dataclass
from farwall.spray.boxes import SLACK, Boxes, above_any, boxes_of, may_hold
from farwall.spray.edges_at_once import families as families_of
from farwall.spray.edges_at_once import gain_m2
from farwall.spray.front import Ground
from farwall.spray.parts import Parts, parts_of
from farwall.spray.passages import NO_WAY, Passages, passages_of

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

MOMENTS = 4
"""Moments in a stride."""
_FIRST_M2, HALVINGS = 1.4, 6
_MOST_BOXES = 12_000
_MOST_PARTS = 6
_SWEEPS = 2
_IDLE = 0.97
_HAIR = 1e-9
_SOME_M2 = 1e-8
_FARTHEST = 1.1
"""As in `edges_at_once`: a walk of up to so many depths is one hop."""
_STEP = 1.01
STEPS = 16


def strides_m(ground: Ground, depth_m: float, *, above_m: float, steps: int = STEPS) -> float:
    """The bound for bands of `depth_m`, sought upward from `above_m` by so many hundredths at most;
    that, where nothing is found. Some seconds for each step. [m]"""
    parts = parts_of(ground)
    if parts is None or len(parts) > _MOST_PARTS or above_m <= 0:
        return above_m
    floor = Floor(parts, passages_of(ground, parts, depth_m), depth_m)
    best = above_m
    for _ in range(steps):
        if not floor.rules_out(best * _STEP):
            break
        best *= _STEP
    return best


@dataclass(frozen=True)
class Floor:
    """A floor in parts, with what must be dry for whom, and how far a front moves in a stride."""

    parts: Parts
    passages: Passages
    depth_m: float

    def rules_out(self, front_m: float, *, halvings: int = HALVINGS) -> bool:
        """Whether no sweep has a front of `front_m` or less, as far as so many halvings tell."""
        moments = self.moments_m2(front_m)
        side = self._first_m2
        grid = boxes_of(self.parts.area_m2, side)
        layers = [self._boxes(*grid, at, front_m) for at in moments]
        for _ in range(halvings):
            if not self._thinned(layers):
                return True
            if sum(len(layer) for layer in layers) > _MOST_BOXES:
                return False
            side /= 2
            layers = [
                self._boxes(*layer.halved(side, at, self.other_m2), at, front_m)
                for layer, at in zip(layers, moments, strict=True)
            ]
        return False

    def moments_m2(self, front_m: float) -> Floats:
        """How much is wet at each moment, `MOMENTS` of them in a stride."""
        stride_m2 = front_m * self.depth_m
        count = int(np.ceil(self.parts.floor.area / stride_m2 * MOMENTS - _HAIR)) - 1
        return np.asarray(stride_m2 / MOMENTS * np.arange(1, count + 1))

    @cached_property
    def _first_m2(self) -> float:
        """The side of the first boxes: larger on large floors, so that they are not too many."""
        side = _FIRST_M2
        while np.prod(np.ceil(self.parts.area_m2 / side)) > _MOST_BOXES:
            side *= 1.25
        return side

    @cached_property
    def inside(self) -> Floats:
        """One where a part is in a rectangle, a row a rectangle."""
        own = [[n in one.blocks for n in range(len(self.parts))] for one in self.parts.rectangles]
        return np.array(own, dtype=float)

    @cached_property
    def whole_m2(self) -> Floats:
        """Of each rectangle all."""
        return np.array([one.short_m * one.long_m for one in self.parts.rectangles])

    @cached_property
    def loose_m2(self) -> Floats:
        """What of each rectangle lies in no part."""
        return np.array([one.loose_m2 for one in self.parts.rectangles])

    @cached_property
    def other_m2(self) -> float:
        """Floor in no part."""
        return float(self.parts.floor.area - self.parts.area_m2.sum())

    @cached_property
    def families(self) -> list[tuple[int, ...]]:
        """Rectangles none of which lies in another, by their numbers."""
        return families_of(self.parts.rectangles)

    def _boxes(self, low: Floats, high: Floats, wet_m2: float, front_m: float) -> Boxes:
        """Of these boxes those that may hold when so much is wet, with what that tells of the
        rectangles."""
        kept = may_hold(low, high, wet_m2, self.other_m2)
        kept &= (low <= self.not_last_m2(wet_m2, front_m) + _HAIR).all(axis=1)
        low, high = low[kept], high[kept]
        rest = 1 - self.inside.T
        least = np.maximum(low @ self.inside.T, wet_m2 - self.other_m2 - high @ rest)
        most = np.minimum(high @ self.inside.T, wet_m2 - low @ rest)
        boxes = Boxes(low, high, least, most)
        boxes = boxes.those(self._fronts_m2(boxes) <= front_m * self.depth_m + _HAIR)
        return boxes.those(self._leaves_a_way(boxes))

    def not_last_m2(self, wet_m2: float, front_m: float) -> Floats:
        """The most of each part that may be wet while what comes last is dry."""
        dry_m2 = float(self.parts.floor.area) - wet_m2
        hops = np.floor(dry_m2 / (front_m * self.depth_m) + _HAIR)
        walk_m = np.array(min(dry_m2 / front_m, _FARTHEST * hops * self.depth_m))
        dry = [float(self.parts.last.dry_m2(n, walk_m)) for n in range(len(self.parts))]
        return np.asarray(self.parts.area_m2 - np.array(dry))

    def _fronts_m2(self, boxes: Boxes) -> Floats:
        """What all rectangles gain together at least in the stride to come, or gained backward."""
        best = np.zeros(len(boxes))
        for ahead in (True, False):
            gains = [self._gain_m2(boxes, n, ahead=ahead) for n in range(len(self.inside))]
            room = self.parts.area_m2 - boxes.low if ahead else boxes.high
            for family in self.families:
                twice = np.maximum(self.inside[list(family)].sum(axis=0) - 1, 0.0)
                told = np.sum([gains[n] for n in family], axis=0) - room @ twice
                np.maximum(best, told, out=best)
        return best

    def _gain_m2(self, boxes: Boxes, number: int, *, ahead: bool) -> Floats:
        one = self.parts.rectangles[number]
        ends = boxes.least[:, number], boxes.most[:, number] + one.loose_m2
        if not ahead:
            ends = self.whole_m2[number] - ends[1], self.whole_m2[number] - ends[0]
        gained = np.minimum(*(gain_m2(one, end, self.depth_m) for end in ends))
        return np.maximum(gained - one.loose_m2, 0.0)

    def _not_done(self, boxes: Boxes, part: int) -> Bools:
        """In which boxes, for which rectangles, a part is not done: a body is still to get out."""
        return np.asarray(boxes.high[:, [part]] < self.passages.inner_m2[part] - SLACK)

    def _leaves_a_way(self, boxes: Boxes) -> Bools:
        """Which boxes leave dry floor for the way out of every part that is not done."""
        dry = self.whole_m2 - boxes.least + self.loose_m2
        kept = np.ones(len(boxes), dtype=bool)
        for part in range(len(self.parts)):
            lacks = dry < self.passages.now_m2[part] - SLACK
            kept &= ~(self._not_done(boxes, part) & lacks).any(axis=1)
        return kept

    def _stride(self, boxes: Boxes, *, after: bool) -> Floats:
        """What boxes a stride apart are held by: the earlier one's nowhere above the later's."""
        if not after:
            grown = self._grown(boxes.least) - self.loose_m2
            grown = np.where(boxes.least <= _HAIR, 0.0, np.maximum(grown, boxes.least))
            dry = boxes.least - self.whole_m2
            return np.concatenate([grown, boxes.low, dry], axis=1)
        dry = np.maximum(self.whole_m2 - boxes.most - self.loose_m2, 0.0)
        kept = np.full(dry.shape, NO_WAY)
        for part in range(len(self.parts)):
            asked = self._not_done(boxes, part)
            kept = np.where(asked, np.maximum(kept, self.passages.before_m2[part]), kept)
            now = np.maximum(dry, self.passages.now_m2[part] - self.loose_m2)
            dry = np.where(asked, now, dry)
        led = kept > NO_WAY
        dry = np.where(led, np.maximum(dry, _SOME_M2), dry)
        before = np.where(dry < _SOME_M2 / 2, 0.0, self._grown(dry))
        before = np.where(led, np.maximum(before, kept - self.loose_m2), before)
        return np.concatenate([boxes.most, boxes.high, -before], axis=1)

    def _grown(self, wet_m2: Floats) -> Floats:
        """So much of each rectangle with what it gains in a stride."""
        told = [
            wet_m2[:, n] + gain_m2(one, wet_m2[:, n], self.depth_m)
            for n, one in enumerate(self.parts.rectangles)
        ]
        return np.column_stack(told)

    def _moment(self, boxes: Boxes, *, after: bool) -> Floats:
        """What boxes a moment apart are held by: nothing dries."""
        ends = (boxes.high, boxes.most) if after else (boxes.low, boxes.least)
        return np.concatenate(ends, axis=1)

    def _thinned(self, layers: list[Boxes]) -> bool:
        """Throws out what fits none before or after it; whether something is left everywhere."""
        for _ in range(_SWEEPS):
            before = sum(len(layer) for layer in layers)
            for number in range(len(layers)):
                if not self._fits(layers, number, -1):
                    return False
            for number in reversed(range(len(layers))):
                if not self._fits(layers, number, 1):
                    return False
            if sum(len(layer) for layer in layers) > _IDLE * before:
                break
        return True

    def _fits(self, layers: list[Boxes], number: int, way: int) -> bool:
        """Keeps the boxes of a moment that fit some a moment and a stride away; whether any do."""
        for far, held in ((1, self._moment), (MOMENTS, self._stride)):
            other = number + way * far
            if 0 <= other < len(layers) and len(layers[number]):
                mine = held(layers[number], after=way < 0)
                theirs = held(layers[other], after=way > 0)
                kept = above_any(theirs, mine) if way < 0 else above_any(-theirs, -mine)
                layers[number] = layers[number].those(kept)
        return len(layers[number]) > 0
