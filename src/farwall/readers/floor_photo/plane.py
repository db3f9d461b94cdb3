"""From points clicked in a photo and on the plan to the plane of the floor, with its error.

A plane seen by a lens without distortion is a projective image of itself, which four points fix
and more points overfix ([hartley-zisserman], sections 4.1, 4.4 and 5.2). The distance that is made
small is that in the photo, for it is there that a click errs; it is told on the floor, in
millimetres.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.readers.floor_photo.nouns import Pair, Real

CLICK_SHARE = 0.0015
"""Of the photo's longer side: by how much a click errs, one standard deviation. A photo of 4,000
points shown in 1,600 and clicked to two and a half of those. Rank: guess."""
LEAST = 4
MOST_OFF_MM = 100.0
"""A point farther off than this was clicked on another thing. Rank: guess."""
_NARROW = 0.04
"""Width to length of a row of points that is as good as a line. Rank: guess."""
_SAME_PHOTO, _SAME_FLOOR_M = 0.01, 0.10
_AGAIN = "Take corners of the room, jambs or cut ends that lie far apart, both near and far."


@dataclass(frozen=True)
class Plane:
    """`to_photo` (3 × 3) takes a place of the plan [m] to the photo [px], scaled so that what
    lies before the camera has a last coordinate above 0.

    spread: covariance (9 × 9) of its numbers from the clicks, nothing along their common scale ·
    off_mm: of each pair, how far it lies off on the floor.
    """

    to_photo: Real
    spread: Real
    off_mm: tuple[float, ...]

    def photo_places(self, places: Real) -> tuple[Real, Real]:
        """Where places of the plan (n, 2) lie in the photo (n, 2), and the last coordinate (n)."""
        return _applied(self.to_photo, places)

    def floor_places(self, places: Real) -> Real:
        """Where places of the photo (n, 2) lie on the plan (n, 2)."""
        return _applied(_back(self.to_photo), places)[0]

    def stretch(self, places: Real) -> tuple[Real, Real]:
        """Photo points that a metre of floor takes there, its longer and its shorter way. [px/m]"""
        grown = _slopes(self.to_photo, places)
        sizes = np.linalg.svd(grown, compute_uv=False)
        return np.asarray(sizes[:, 0], np.float64), np.asarray(sizes[:, 1], np.float64)

    def place_error_mm(self, places: Real) -> Real:
        """How far places may be off by the clicks, one standard deviation of both ways. [mm]"""
        by_numbers = _by_numbers(self.to_photo, places)
        back = np.linalg.pinv(_slopes(self.to_photo, places))
        moved = back @ by_numbers
        spread = np.einsum("nij,jk,nik->n", moved, self.spread, moved)
        return np.asarray(1000 * np.sqrt(np.maximum(spread, 0.0)))


def plane_of(
    pairs: Sequence[Pair], size_px: tuple[int, int], *, click_px: float | None = None
) -> Plane:
    """The plane through the pairs by least squares.

    size_px: of the photo, wide and high · click_px: by how much a point errs, one standard
    deviation; `CLICK_SHARE` without it. Raises Refused where the points are too few, doubled, on
    a line, mirrored or do not fit together.
    """
    _check(pairs, size_px)
    photo = np.array([one.photo for one in pairs], np.float64)
    floor = np.array([one.floor for one in pairs], np.float64)
    matrix = _fitted(floor, photo)
    _insist_seen(matrix, floor)
    off = _off_mm(matrix, floor, photo)
    _insist_fits(pairs, off, floor, photo)
    click = CLICK_SHARE * max(size_px) if click_px is None else click_px
    return Plane(matrix, _spread(matrix, floor, photo, click), tuple(off.tolist()))


def _check(pairs: Sequence[Pair], size_px: tuple[int, int]) -> None:
    mistakes: list[Mistake] = []
    if len(pairs) < LEAST:
        what = f"{len(pairs)} points are told, and a plane needs {LEAST}."
        raise Refused(Mistake("points", what, _AGAIN))
    wide, high = size_px
    for one in pairs:
        x, y = one.photo
        if not (0 <= x <= wide and 0 <= y <= high):
            what = f"{x:.0f},{y:.0f} lies outside the photo of {wide} × {high}."
            mistakes.append(Mistake(one.name or "points", what, "Count from its upper left."))
    for n, one in enumerate(pairs):
        for other in pairs[:n]:
            near = np.hypot(*np.subtract(one.photo, other.photo)) < _SAME_PHOTO * max(size_px)
            if near or np.hypot(*np.subtract(one.floor, other.floor)) < _SAME_FLOOR_M:
                what = (
                    f"{other.name or 'one point'} and {one.name or 'another'} are the same place."
                )
                mistakes.append(Mistake("points", what, _AGAIN))
    if mistakes:
        raise Refused(*mistakes)
    for places in ([one.photo for one in pairs], [one.floor for one in pairs]):
        if _narrowest(np.array(places, np.float64)) < _NARROW:
            what = "All points but one at most lie nearly on a line, which fixes no plane."
            raise Refused(Mistake("points", what, _AGAIN))


def _narrowest(places: Real) -> float:
    """Width to length of the points, with that one left out which makes the rest narrowest."""
    worst = np.inf
    for left_out in range(len(places)):
        rest = np.delete(places, left_out, axis=0)
        sizes = np.linalg.svd(rest - rest.mean(axis=0), compute_uv=False)
        worst = min(worst, float(sizes[1] / max(sizes[0], 1e-12)))
    return worst


def _fitted(floor: Real, photo: Real) -> Real:
    """The projective map from floor to photo with the least squares in the photo."""
    level_floor, level_photo = _level(floor), _level(photo)
    a, _ = _applied(level_floor, floor)
    b, _ = _applied(level_photo, photo)
    rows = []
    for (x, y), (u, v) in zip(a, b, strict=True):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y, -u])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y, -v])
    begun = np.linalg.svd(np.array(rows))[2][-1].reshape(3, 3)
    matrix = _nearer(begun / np.linalg.norm(begun), a, b)
    whole = np.linalg.inv(level_photo) @ matrix @ level_floor
    _, depth = _applied(whole, floor)
    whole = whole * (np.sign(np.median(depth)) or 1.0)
    return np.asarray(whole / np.linalg.norm(whole))


def _level(places: Real) -> Real:
    """What moves points to their middle and makes them of size one."""
    middle = places.mean(axis=0)
    size = np.sqrt(((places - middle) ** 2).sum(axis=1).mean() / 2) or 1.0
    return np.array([[1 / size, 0, -middle[0] / size], [0, 1 / size, -middle[1] / size], [0, 0, 1]])


def _nearer(matrix: Real, a: Real, b: Real) -> Real:
    """By damped steps of Gauss and Newton to the least squares."""
    damp, off = 1e-4, _applied(matrix, a)[0] - b
    for _ in range(40):
        slopes = _by_numbers(matrix, a).reshape(-1, 9)
        # Scale changes nothing: steps along the matrix itself are left out.
        square = slopes.T @ slopes + damp * np.eye(9) + np.outer(matrix.ravel(), matrix.ravel())
        step = np.linalg.solve(square, slopes.T @ off.ravel()).reshape(3, 3)
        tried = matrix - step
        tried /= np.linalg.norm(tried)
        new = _applied(tried, a)[0] - b
        if (new**2).sum() < (off**2).sum():
            gained = (off**2).sum() - (new**2).sum()
            matrix, off, damp = tried, new, damp / 5
            if gained < 1e-14:
                break
        else:
            damp *= 10
            if damp > 1e6:
                break
    return matrix


def _back(matrix: Real) -> Real:
    return np.asarray(np.linalg.inv(matrix), np.float64)


def _applied(matrix: Real, places: Real) -> tuple[Real, Real]:
    whole = np.column_stack([places, np.ones(len(places))]) @ matrix.T
    depth = whole[:, 2]
    safe = np.where(np.abs(depth) < 1e-12, 1e-12, depth)
    return whole[:, :2] / safe[:, None], depth


def _slopes(matrix: Real, places: Real) -> Real:
    """How photo places move with floor places, (n, 2, 2)."""
    at, depth = _applied(matrix, places)
    return np.asarray(
        (matrix[None, :2, :2] - at[:, :, None] * matrix[None, 2:, :2]) / depth[:, None, None]
    )


def _by_numbers(matrix: Real, places: Real) -> Real:
    """How photo places move with the nine numbers of the map, (n, 2, 9)."""
    at, depth = _applied(matrix, places)
    ends = np.column_stack([places, np.ones(len(places))]) / depth[:, None]
    nothing = np.zeros_like(ends)
    first = np.hstack([ends, nothing, -at[:, :1] * ends])
    second = np.hstack([nothing, ends, -at[:, 1:] * ends])
    return np.stack([first, second], axis=1)


def _spread(matrix: Real, floor: Real, photo: Real, least_px: float) -> Real:
    off = _applied(matrix, floor)[0] - photo
    over = 2 * len(floor) - 8
    seen = float(np.sqrt((off**2).sum() / over)) if over > 0 else 0.0
    click = max(least_px, seen)
    _, sizes, ways = np.linalg.svd(_by_numbers(matrix, floor).reshape(-1, 9))
    known = ways[:8] / np.maximum(sizes[:8, None], 1e-12)  # the ninth way is their common scale
    return np.asarray(click**2 * known.T @ known)


def _off_mm(matrix: Real, floor: Real, photo: Real) -> Real:
    back = _applied(_back(matrix), photo)[0]
    return np.asarray(1000 * np.hypot(*(back - floor).T))


def _insist_seen(matrix: Real, floor: Real) -> None:
    """The camera stands above the floor and has all points before it."""
    _, depth = _applied(matrix, floor)
    turned = np.linalg.det(_slopes(matrix, floor))
    if not ((depth > 0).all() and (turned < 0).all()):
        what = "No camera above the floor sees these points so: some are swapped or mirrored."
        raise Refused(Mistake("points", what, "Check each point against its letter on the plan."))


def _insist_fits(pairs: Sequence[Pair], off: Real, floor: Real, photo: Real) -> None:
    if off.max() <= MOST_OFF_MM:
        return
    worst = int(off.argmax())
    if len(pairs) > LEAST + 1:  # the one without which the rest fits best
        rest = []
        for n in range(len(pairs)):
            a, b = np.delete(floor, n, axis=0), np.delete(photo, n, axis=0)
            rest.append(float(_off_mm(_fitted(a, b), a, b).max()))
        worst = int(np.argmin(rest))
    name = pairs[worst].name or f"point {worst + 1}"
    what = (
        f"The points do not fit together: they lie up to {off.max():.0f} mm off on the floor, and "
        f"{name} fits worst."
    )
    remedy = f"Set {name} again, or leave it out; is the plan true there?"
    raise Refused(Mistake("points", what, remedy))
