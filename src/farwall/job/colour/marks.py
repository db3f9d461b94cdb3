"""Marks on a mopped floor: what photos propose, what persons said of it, what stands. Pure.

A photo only proposes. Nothing is a fault of the floor before a person said so, and what a person
said is not there is not proposed again at that place.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from math import hypot, pi

import shapely

from farwall.colour.marks.nouns import Mark, Point
from farwall.facts.log_colour import MARKS, UNKNOWN
from farwall.job.colour.mark_remedies import MOST_TOUCHED, OUTLINE_GROWS, remedy_of
from farwall.job.story.noun import Happened
from farwall.nouns import dataclass

SAME_PLACE_M = 0.3
"""Two photos, or two looks at one, tell a place to this. Rank: guess."""
MISSED_SHARE = 0.6
"""What is left of a likelihood where another photo shows the place and no mark. Rank: guess."""


@dataclass(frozen=True)
class Proposed:
    """A mark that photos of a room propose. photos: hashes, the surest first.

    unseen_by: how many photos show the place without a mark there.
    """

    name: str
    room: str
    mark: Mark
    photos: tuple[str, ...]
    unseen_by: int = 0

    @property
    def asks(self) -> bool:
        """Whether a person is asked: cracks and joints are not of the spraying."""
        return self.mark.kind in MARKS


@dataclass(frozen=True)
class Judged:
    """A mark that a person looked at. mended: how, empty where nobody told; None: not mended."""

    name: str
    kind: str
    there: bool
    room: str = ""
    at: Point | None = None
    length_m: float = 0.0
    width_m: float = 0.0
    photo: str = ""
    note: str = ""
    who: str = ""
    at_min: float = 0.0
    mended: str | None = None

    @property
    def stands(self) -> bool:
        """Whether it is a fault that is to be dealt with."""
        return self.there and self.mended is None

    @property
    def area_m2(self) -> float:
        """Of an ellipse as long and as wide; of a line its length by its width."""
        full = 1.0 if self.kind in {"lap line", "stripe"} else pi / 4
        return full * self.length_m * self.width_m


@dataclass(frozen=True)
class Touched:
    """How much of a field is touched where what is confirmed in it is touched up.

    whole: names of marks that only a coat over the whole field takes away.
    """

    field: str
    rooms: tuple[str, ...]
    area_m2: float
    touched_m2: float
    whole: tuple[str, ...]

    @property
    def share(self) -> float:
        """Of the field, 0 and more."""
        return self.touched_m2 / self.area_m2 if self.area_m2 > 0 else 0.0

    @property
    def whole_field(self) -> bool:
        """Whether the whole field is to be misted or coated again rather than touched up."""
        return bool(self.whole) or self.share > MOST_TOUCHED


@dataclass(frozen=True)
class Photo:
    """What one photo of a room showed, and whether it saw a place."""

    sha: str
    marks: tuple[Mark, ...]
    saw: Callable[[float, float], bool]


def judged_marks(happened: Iterable[Happened]) -> tuple[Judged, ...]:
    """The last word on each mark, in the order of the first; struck entries are left out before."""
    found: dict[str, Judged] = {}
    for one in happened:
        name = one.text("mark")
        if one.word == "mark-judged":
            found[name] = _judged(one, found.get(name))
        elif one.word == "mark-mended" and name in found:
            found[name] = replace(found[name], mended=one.text("how"))
    return tuple(found.values())


def together(room: str, photos: Sequence[Photo]) -> tuple[Proposed, ...]:
    """Marks of all photos of a room: one seen twice is one and surer, the surest first.

    One that another photo should show and does not is less sure. What one photo hides by glare
    another may show.
    """
    groups: list[list[tuple[str, Mark]]] = []
    for photo in photos:
        for mark in photo.marks:
            home = next((g for g in groups if _belongs(photo.sha, mark, g)), None)
            if home is None:
                groups.append([(photo.sha, mark)])
            else:
                home.append((photo.sha, mark))
    made = [_merged(room, group, photos) for group in groups]
    made.sort(key=lambda one: (-one.mark.confidence, one.name))
    return _named(made)


def still_asked(
    proposed: Sequence[Proposed], judged: Sequence[Judged]
) -> tuple[tuple[Proposed, ...], tuple[tuple[Proposed, Judged], ...]]:
    """Which marks a person is still to be asked of, and which with what was said of them."""
    asked: list[Proposed] = []
    said: list[tuple[Proposed, Judged]] = []
    for one in proposed:
        answer = next((j for j in reversed(judged) if _answers(j, one)), None)
        if answer is None:
            asked.append(one)
        else:
            said.append((one, answer))
    return tuple(asked), tuple(said)


def touched(
    judged: Sequence[Judged], fields: Sequence[tuple[str, tuple[str, ...], float]]
) -> tuple[Touched, ...]:
    """By field (its id, rooms, area in m²) what touching up takes of it; only fields with marks.

    What was mended counts too: the field was touched there.
    """
    found = []
    for field, rooms, area_m2 in fields:
        here = [one for one in judged if one.there and one.room in rooms]
        if not here:
            continue
        patches = [one for one in here if remedy_of(one.kind).touch_up]
        whole = tuple(o.name for o in here if o.stands and remedy_of(o.kind).whole_field)
        touched_m2 = OUTLINE_GROWS * sum(one.area_m2 for one in patches)
        found.append(Touched(field, rooms, area_m2, touched_m2, whole))
    return tuple(found)


def blocks_sealing(judged: Sequence[Judged]) -> tuple[Judged, ...]:
    """Marks that a person saw and could not name: nothing is sealed over them."""
    return tuple(one for one in judged if one.stands and one.kind == UNKNOWN)


def _judged(one: Happened, before: Judged | None) -> Judged:
    x, y = one.number("x_m"), one.number("y_m")
    at = (x, y) if x is not None and y is not None else before.at if before else None
    return Judged(
        name=one.text("mark"), kind=one.text("kind"), there=one.about.get("there") is True,
        room=one.text("room") or (before.room if before else ""), at=at,
        length_m=_number(one, "length_m", before.length_m if before else 0.0),
        width_m=_number(one, "width_m", before.width_m if before else 0.0),
        photo=one.text("file") or (before.photo if before else ""), note=one.text("note"),
        who=one.who, at_min=one.at_min,
    )  # fmt: skip


def _number(one: Happened, key: str, otherwise: float) -> float:
    value = one.number(key)
    return otherwise if value is None else max(value, 0.0)


def _belongs(sha: str, mark: Mark, group: Sequence[tuple[str, Mark]]) -> bool:
    """Whether it is the same thing in another photo: what one photo parts stays apart."""
    beside = mark.kind not in MARKS
    return all(sha != other for other, _ in group) and any(
        _same(mark, one) and (one.kind not in MARKS) is beside for _, one in group
    )


def _same(a: Mark, b: Mark) -> bool:
    return _apart(a.outline, b.outline, a.at, b.at) <= SAME_PLACE_M / 2


def _apart(a: Sequence[Point], b: Sequence[Point], at_a: Point, at_b: Point) -> float:
    return float(_shape(a, at_a).distance(_shape(b, at_b)))


def _shape(outline: Sequence[Point], at: Point) -> shapely.geometry.base.BaseGeometry:
    if len(outline) < 3:
        return shapely.Point(at)
    return shapely.make_valid(shapely.Polygon(outline))


def _merged(room: str, group: Sequence[tuple[str, Mark]], photos: Sequence[Photo]) -> Proposed:
    best = dict(group)
    order = sorted(best, key=lambda sha: -best[sha].confidence)
    first = best[order[0]]
    doubt = 1.0
    for sha in order:
        if best[sha].kind == first.kind:  # another name for it makes it no surer
            doubt *= 1 - best[sha].confidence
    unseen = sum(p.sha not in best and p.saw(*first.at) for p in photos)
    sure = (1 - doubt) * MISSED_SHARE**unseen
    return Proposed("", room, replace(first, confidence=sure), tuple(order), unseen)


def _named(made: Sequence[Proposed]) -> tuple[Proposed, ...]:
    """Each by room and place to 0.1 m, a letter after it where two lie there."""
    taken: dict[str, int] = {}
    named = []
    for one in made:
        x, y = one.mark.at
        name = f"{one.room} {round(x, 1) + 0.0:.1f},{round(y, 1) + 0.0:.1f}"
        count = taken[name] = taken.get(name, 0) + 1
        named.append(replace(one, name=name if count == 1 else f"{name} {chr(96 + count)}"))
    return tuple(named)


def _answers(judged: Judged, one: Proposed) -> bool:
    """Whether what was said is of this mark: by its name, or by its place.

    A no holds for its kind in every photo, and for any kind in the photo in which it was said.
    """
    if judged.room != one.room:
        return False
    near = judged.name == one.name
    if judged.at is not None:
        away = hypot(judged.at[0] - one.mark.at[0], judged.at[1] - one.mark.at[1])
        inside = _shape(one.mark.outline, one.mark.at).distance(shapely.Point(judged.at))
        near = near or away <= SAME_PLACE_M or inside <= SAME_PLACE_M / 2
    return near and (judged.there or judged.kind == one.mark.kind or judged.photo in one.photos)
