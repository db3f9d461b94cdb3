"""The best path within the corridor of a known edge: where along it, and how far beside it.

As for lines of any place the sum is forgotten when it falls below nothing [smith-1981], so that a
lap that is only a stretch of its edge begins and ends where it does. A step aside from piece to
piece costs by its square: the hand wavers slowly. All bounds were tuned on invented floors.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.marks.ground import Bools
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
Places = NDArray[np.intp]

TOLL = 0.4
"""Taken from each piece, in spreads: a path through noise then gains less as it goes."""
CLIP = 3.0
"""Answers are held to this many spreads, so that a stone does not make a lap."""
TURNS, TURN = 3, 0.03
"""Places that a path may move aside from one piece to the next; the cost of one, by its square."""
HIDDEN = 0.1
"""Taken from a piece that is hidden: it speaks for neither."""
LEAST_PIECES = 10
"""A shorter path is no lap."""
_BEGINS = -128
_BEYOND = -1e9


@dataclass(frozen=True)
class EdgePath:
    """score: sum of its answers less tolls · width: index of the strip's width · pieces, places:
    indices along the corridor and across it, one each for each piece it runs through.
    """

    score: float
    width: int
    pieces: Places
    places: Places


def best_path(answers: Floats, seen: Bools, beside: Floats) -> EdgePath | None:
    """The path of the largest sum that is long enough, or None where none is above nothing.

    answers: (widths, pieces, places), in spreads · seen: (pieces, places) · beside: (places), taken
    from each piece for lying so far off the edge.
    """
    return best_paths([gain_of(answers, seen, beside)])[0]


def gain_of(answers: Floats, seen: Bools, beside: Floats) -> Floats:
    """What a path gains by each piece, (widths, pieces, places); as `best_path` has them."""
    gain = np.clip(answers, -CLIP, CLIP) - TOLL - beside
    return np.where(seen, gain, -HIDDEN)


def best_paths(gains: Sequence[Floats]) -> list[EdgePath | None]:
    """The best path of each corridor, all carried along at once. gains: of `gain_of`, of as many
    widths each."""
    if not gains:
        return []
    sizes = [gain.shape for gain in gains]
    widths, pieces, places = (max(size[n] for size in sizes) for n in range(3))
    # No path enters what is beyond a corridor.
    gain = np.full((pieces, len(gains), widths, places), _BEYOND)
    for n, one in enumerate(gains):
        gain[: one.shape[1], n, :, : one.shape[2]] = np.moveaxis(one, 1, 0)
    gain = gain.reshape(pieces, -1, places)
    came, back = np.empty_like(gain), np.zeros(gain.shape, np.int8)
    begun = np.zeros(gain.shape, np.int32)
    before, since = np.zeros(gain.shape[1:]), np.zeros(gain.shape[1:], np.int32)
    for piece in range(pieces):
        best, turned, begins = _moved(before, since)
        fresh = best <= 0
        came[piece] = gain[piece] + np.maximum(best, 0)
        back[piece] = np.where(fresh, _BEGINS, turned)
        begun[piece] = np.where(fresh, piece, begins)
        before, since = came[piece], begun[piece]
    length = np.arange(pieces)[:, None, None] - begun + 1
    long = np.where(length >= LEAST_PIECES, came, 0.0)
    return [_best(long[:, own], back[:, own]) for own in _each(len(gains), widths)]


def _each(count: int, widths: int) -> Iterator[slice]:
    return (slice(n * widths, (n + 1) * widths) for n in range(count))


def _best(sums: Floats, back: NDArray[np.int8]) -> EdgePath | None:
    """The best of one corridor. sums, back: (pieces, widths, places)."""
    by_width = np.moveaxis(sums, 1, 0)
    width, piece, place = (int(n) for n in np.unravel_index(int(by_width.argmax()), by_width.shape))
    score = float(by_width[width, piece, place])
    return EdgePath(score, width, *_traced(back[:, width], piece, place)) if score > 0 else None


def _moved(
    before: Floats, since: NDArray[np.int32]
) -> tuple[Floats, NDArray[np.int8], NDArray[np.int32]]:
    """Of all ways to come to each place the best: its sum, its step aside, where it began."""
    places = before.shape[1]
    best, turned, begins = before.copy(), np.zeros(before.shape, np.int8), since.copy()
    for turn in (turn for turn in range(-TURNS, TURNS + 1) if 0 < abs(turn) < places):
        here = slice(max(turn, 0), places + min(turn, 0))
        there = slice(max(-turn, 0), places + min(-turn, 0))
        other = before[:, there] - TURN * turn**2
        better = other > best[:, here]
        best[:, here] = np.where(better, other, best[:, here])
        turned[:, here] = np.where(better, turn, turned[:, here])
        begins[:, here] = np.where(better, since[:, there], begins[:, here])
    return best, turned, begins


def _traced(back: NDArray[np.int8], piece: int, place: int) -> tuple[Places, Places]:
    pieces, places = [piece], [place]
    while piece > 0 and back[piece, place] != _BEGINS:
        place -= int(back[piece, place])
        piece -= 1
        pieces.append(piece)
        places.append(place)
    return np.array(pieces[::-1], np.intp), np.array(places[::-1], np.intp)
