"""What the pages of marks show: all photos, one with its points, one laid on the plan."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from fastapi import Response
from markupsafe import Markup

from farwall.errors import Refused, mistakes_of
from farwall.facts.log_colour import MARKS, UNKNOWN
from farwall.job.colour.marks import still_asked, touched
from farwall.nouns import dataclass
from farwall.papers.colour.marks_floor import Above, Drawn, marks_svg, points_svg
from farwall.readers.floor_photo.nouns import FloorSeen, Pair, TargetAt, seen_by_any_m2
from farwall.readers.floor_photo.seen import points_from
from farwall.web.pages.colour.marks_keep import FloorPhoto, Floors, House
from farwall.web.pages.colour.marks_places import DRAWN, unit_m, unit_told
from farwall.web.pages.colour.marks_points import begun, landmarks
from farwall.web.pages.colour.marks_said import (
    advice,
    always,
    judged_said,
    kind_told,
    mark_said,
    photo_said,
    touched_said,
)
from farwall.web.pages.paper import house_path, no_page, page
from farwall.web.pages.shown import Kept
from farwall.web.words import said


@dataclass(frozen=True)
class MarksShown:
    """Makes the pages from what the book has."""

    floors: Floors
    plans: Kept

    def every(self, job: str, mistakes: Sequence[str] = (), code: int = 200) -> Response:
        """Photos by room, what stands, what it asks of each field, how to photograph."""
        house = self.floors.house(job)
        floor, units = house.job.floor, house.job.wishes.units
        rooms = [(room.id, room.label) for room in floor.rooms]
        names = dict(rooms)
        shown = self.plans.state(job).shown
        fields = [
            (one.id, tuple(one.rooms), one.area_m2)
            for one in (shown.plan.fields if shown else ())
        ] or [(room.id, (room.id,), room.polygon.shape.area) for room in floor.rooms]  # fmt: skip
        found = touched(house.judged, _once(fields))
        return page(
            "colour_marks.html", code=code, house=house.name, house_id=job, here="way-colour",
            part="marks", path=f"{house_path(job)}/colour/marks", rooms=rooms, names=names,
            photos=[
                (names.get(room, room), [(one, self._standing(house, one)) for one in group])
                for room, group in _by_room(house.photos)
            ],
            judged=[judged_said(one, floor, units) for one in house.judged if one.there],
            fields=[touched_said(one, ", ".join(names.get(r, r) for r in one.rooms))
                    for one in found],
            advice=advice(), always=always(), mistakes=mistakes,
        )  # fmt: skip

    def _beside(self, house: House, seen: FloorSeen, photos: Sequence[FloorPhoto]) -> str:
        """How much of the room all photos of this look show together; empty with one."""
        if len(photos) < 2:
            return ""
        every = [self.floors.seen(house, one) for one in photos]
        share = 100 * seen_by_any_m2(every) / max(seen.told.room_m2, 1e-9)
        return said("marks-beside", n=len(photos) - 1, share=f"{min(share, 100):.0f}")

    def _standing(self, house: House, one: FloorPhoto) -> str:
        """What a photo has come to, without reading it again."""
        if not one.points:
            return said("marks-not-laid")
        seen = self.floors.seen_before(house, one)
        if seen is None:
            return said("marks-laid")
        return said("marks-laid-n", n=sum(mark.kind in MARKS for mark in seen.marks))

    def photo(
        self, job: str, photo: str, *, told: Mapping[str, str] | None = None,
        mistakes: Sequence[str] = (), place: bool = False,
    ) -> Response:  # fmt: skip
        """The photo with its points, or the floor from above with what is asked of it."""
        house = self.floors.house(job)
        one = house.photo(photo)
        if one is None or one.room not in house.job.floor.room_by_id:
            return no_page()
        if one.points and not place:
            try:
                return self._judging(job, house, one, told or {}, mistakes)
            except Refused as error:
                mistakes = [*mistakes, *mistakes_of(error)]
        return self._placing(job, house, one, told, mistakes)

    def _placing(
        self, job: str, house: House, one: FloorPhoto, told: Mapping[str, str] | None,
        mistakes: Sequence[str],
    ) -> Response:  # fmt: skip
        look = self.floors.look(one.sha)
        known = landmarks(house.job.floor, one.room)
        pairs, target = _points(one.points)
        units = house.job.wishes.units
        filled = begun(known, pairs, target, look.file_px, units)
        filled |= {key: value for key, value in (told or {}).items() if key in filled}
        return page(
            "colour_marks_place.html", code=422 if mistakes else 200, house=house.name,
            house_id=job, here="way-colour", part="marks", look=look, known=known, told=filled,
            path=f"{house_path(job)}/colour/marks", photo=one, mistakes=mistakes,
            room=house.job.floor.room_by_id[one.room].label, advice=advice(), unit=unit_told(units),
            plan=Markup(points_svg(
                house.job.floor, one.room, [(each.letter, each.at) for each in known],
                said("marks-plan-points"),
            )),
        )  # fmt: skip

    def _judging(
        self, job: str, house: House, one: FloorPhoto, typed: Mapping[str, str],
        mistakes: Sequence[str],
    ) -> Response:  # fmt: skip
        floor, units = house.job.floor, house.job.wishes.units
        seen = self.floors.seen(house, one)
        beside = house.beside(one)
        proposed = self.floors.proposed(house, beside)
        asked, answered = still_asked(proposed, house.judged)
        asks = [each for each in asked if each.asks]
        other = [each for each in proposed if not each.asks]
        here = [each for each in house.judged if each.there and each.room == one.room]
        matched = {judged.name: each for each, judged in answered}
        drawn = [Drawn(f"{n}", o.mark.at, o.mark.outline, "asked") for n, o in enumerate(asks, 1)]
        for n, each in enumerate(here):
            known = matched.get(each.name)
            if each.at is not None:
                outline = known.mark.outline if known else ()
                drawn.append(Drawn(_letter(n), each.at, outline, "said"))
        drawn += [Drawn("", o.mark.at, o.mark.outline, "beside") for o in other]
        path = f"{house_path(job)}/colour/marks"
        above = Above(
            f"{path}/{one.sha}/picture?which=above", seen.left_m, seen.top_m, seen.wide_m,
            seen.high_m,
        )  # fmt: skip
        told = said("marks-floor", n=len(asks))
        edges = len(house.edges.get(one.room, ()))
        return page(
            "colour_marks_photo.html", code=422 if mistakes else 200, house=house.name,
            house_id=job, here="way-colour", part="marks", path=path, photo=one,
            room=floor.room_by_id[one.room].label, mistakes=mistakes,
            floor=Markup(marks_svg(floor, one.room, above, marks=drawn, told=told)),
            marks=[mark_said(each, floor, units, one.sha) for each in asks],
            here_said=[
                (_letter(n), judged_said(each, floor, units)) for n, each in enumerate(here)
            ],
            others=[(kind_told(kind), sum(o.mark.kind == kind for o in other))
                    for kind in dict.fromkeys(o.mark.kind for o in other)],
            lines=photo_said(seen, units, edges), beside=self._beside(house, seen, beside),
            kinds=[(kind, kind_told(kind)) for kind in (*MARKS, UNKNOWN)], always=always(),
            typed=typed if typed.get("do") == "drawn" else {}, drawn=DRAWN,
            unit=unit_told(units), unit_m=unit_m(units),
        )  # fmt: skip


def _points(points: str) -> tuple[tuple[Pair, ...], TargetAt | None]:
    try:
        return points_from(points)
    except Refused:
        return (), None


def _by_room(photos: Sequence[FloorPhoto]) -> list[tuple[str, list[FloorPhoto]]]:
    found: dict[str, list[FloorPhoto]] = {}
    for one in photos:
        found.setdefault(one.room, []).append(one)
    return list(found.items())


def _once(
    fields: Sequence[tuple[str, tuple[str, ...], float]],
) -> list[tuple[str, tuple[str, ...], float]]:
    """Fields of several coats over the same rooms count once: the largest of a room."""
    found: dict[tuple[str, ...], tuple[str, tuple[str, ...], float]] = {}
    for one in fields:
        found.setdefault(one[1], one)
    return list(found.values())


def _letter(number: int) -> str:
    return chr(ord("a") + number) if number < 26 else f"a{number}"
