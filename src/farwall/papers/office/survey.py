"""The survey: a map of the rooms, what was found in each, the tests still to do, the photos.

What was told stands written; what was not has a line for the pen, so that the same paper is taken
along blank and handed out full.
"""

from __future__ import annotations

from farwall.air.limits import LONGEST_DROP_S, TIGHT_DROP_S
from farwall.air.slab_tests import UG_M2_S_PER_LB
from farwall.facts.go import SlabTest
from farwall.facts.job import Job, RoomSurvey
from farwall.facts.slab import MoistureTest
from farwall.job.go.tests_to_do import HIDE, slab_tests_to_do
from farwall.job.room_areas import areas_of
from farwall.papers.office.blocks import (
    Block,
    Head,
    Own,
    Page,
    Paper,
    Picture,
    Rows,
    Sign,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.drop_drawing import drop_svg
from farwall.papers.office.fill_in import EMPTY, own, told_or_blank
from farwall.papers.office.ground import PaperGround
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.wall_clock import Units
from farwall.papers.words import area, listed
from farwall.units import f_from_c

MAP_SHARE = 0.5
HOW_TO_DROP = (
    "Five drops in each room and on each place that looks different, on a clean, dust-free spot: "
    "seconds until they are gone. Under 5 s open, to 20 s good, to 60 s tight, beyond no stain "
    "yet; a dome means a film. Common practice, no source."
)
PHOTOS = (
    "Each room from two corners, dry.",
    "The same corners, floor wetted: ghosts, cures, patches show.",
    "Every patch, crack, tape line, stain of oil or mud.",
    "Door sills, bottoms of jambs, edges of tubs.",
    "Slab or ground outside each door; plants.",
    "Meter and thermometer readings in the frame.",
    "Panel, water, drain, parking, where drums may stand.",
    "A card with date and room in every photo.",
)
_FILM = {
    "nothing": "no film on it", "removed": "a film was taken off", "cure": "curing compound",
    "cure and seal": "cure-and-seal", "sealer": "sealer", "paint": "paint",
}  # fmt: skip
_COVERING = {
    "bare": "bare concrete", "glue": "glue on it", "black mastic": "black mastic",
    "vinyl tile": "vinyl tile", "old paint": "old paint", "leveller": "self-leveller on it",
    "overlay": "overlay on it",
}  # fmt: skip
_PART = {"nowhere": "nowhere on it", "part": "on a part of it", "whole": "on all of it"}
_TRADES = {
    "closed": "house closed to others", "zones": "others by zones", "overhead": "others overhead",
}  # fmt: skip
_WASTE = {
    "sewer in writing": "sewer, in writing", "drums": "drums", "hauled": "a hauler",
    "septic": "septic tank", "storm drain": "storm drain only", "no way": "no way yet",
}  # fmt: skip
_COLOUR = {
    "range": "a natural range", "uniform": "one even colour", "chart": "the colour of a chart",
}  # fmt: skip


def survey(ground: PaperGround) -> Paper:
    """The paper: facts of the slab and the map first, then rooms, tests and photos."""
    job = ground.job
    tests = tuple(one for one in slab_tests_to_do(job) if one.test != "D4262")
    return Paper(
        title="Survey",
        under="What was found on the slab, room by room",
        screen="survey",
        blocks=(
            *_slab(job, ground.units),
            Picture(_map(ground), MAP_SHARE, _legend()),
            Page(),
            Head("Rooms"),
            _rooms(ground),
            Words(HOW_TO_DROP, "soft"),
            *_tests(job, tests),
            Head("Photos"),
            Ticks(PHOTOS, 2),
            Sign(("surveyed by", "date")),
        ),
    )


def _slab(job: Job, units: Units) -> tuple[Block, ...]:
    told = job.survey
    ticket = told.mix
    return told_or_blank(
        (
            ("Owner", own(job.customer.name)),
            ("Builder", own(job.builder.name)),
            ("Age of the slab", "" if told.slab_age_days is None else _days(told.slab_age_days)),
            ("Pours", _counted(told.pours)),
            ("Film on it", _FILM.get(told.film or "", "")),
            ("What lies on it", _COVERING.get(told.covering or "", "")),
            ("Washed with acid", _PART.get(told.acid_before or "", "")),
            ("Burnished", _PART.get(told.burnished or "", "")),
            ("Bare sand or stone", _percent(told.bare_sand_percent)),
            ("Salts come back", _yes_no(told.efflorescence)),
            ("pH of the wetted slab", _number(told.slab_ph)),
            ("Slab, coldest of five", _warm(told.slab_c, units)),
            ("Air", _warm(told.air_c, units)),
            ("Humidity", _percent(told.rh_percent)),
            ("Fly ash", _percent(ticket.fly_ash_percent)),
            ("Calcium chloride", _yes_no(ticket.chloride_accelerator)),
            ("Colour wished for", _COLOUR.get(told.colour_wanted or "", "")),
            ("Other trades", _TRADES.get(told.trades or "", "")),
            ("Wash water goes to", _WASTE.get(told.waste or "", "")),
        )
    )


def _map(ground: PaperGround) -> str:
    job = ground.job
    size = paper_for(ground.units, job.wishes.paper)
    return drop_svg(
        ground.plan, _seconds(job), units=ground.units, width=size.inner_width,
        height=size.inner_height * MAP_SHARE,
    )  # fmt: skip


def _seconds(job: Job) -> dict[str, float]:
    return {
        room: found.drop_s for room, found in job.survey.rooms.items() if found.drop_s is not None
    }


def _legend() -> str:
    return (
        f"Seconds until a drop has gone in. Hatched: more than {TIGHT_DROP_S:g} s, tight. "
        f"Cross-hatched: more than {LONGEST_DROP_S:g} s, no stain yet."
    )


def _rooms(ground: PaperGround) -> Rows:
    job, units, floor_m2 = ground.job, ground.units, areas_of(ground.plan)
    moisture = _by_room(job.survey.moisture, units)
    rows = tuple(
        (
            Own(room.label),
            Own(area(floor_m2[room.id], units)),
            *_of_room(job, room.id, moisture.get(room.id, "")),
        )
        for room in job.floor.rooms
    )
    return Rows(
        ("room", "area", "finish", "drops, s", "sun, draught", "moisture", "pH", "patches, cracks"),
        rows,
        widths=(2.2, 1, 1.2, 0.9, 1.3, 1.6, 0.6, 1.9),
        right=(1, 3),
        pen="roomy",
    )  # fmt: skip


def _of_room(job: Job, room: str, moisture: str) -> tuple[Text, ...]:
    told = job.survey.rooms.get(room)
    found = told or RoomSurvey()
    patches = [one.id for one in job.survey.patches if one.room == room]
    return (
        found.finish or EMPTY,
        Own(f"{found.drop_s:g}") if found.drop_s is not None else EMPTY,
        ", ".join(
            word for word, there in (("sun", found.sun), ("draught", found.draught)) if there
        ),
        own(moisture),
        EMPTY,
        own(listed(patches, last=", ")),
    )


def _by_room(tests: tuple[MoistureTest, ...], units: Units) -> dict[str, str]:
    found: dict[str, list[str]] = {}
    for one in tests:
        if one.room is not None:
            found.setdefault(one.room, []).append(_moisture(one, units))
    return {room: "; ".join(words) for room, words in found.items()}


def _moisture(one: MoistureTest, units: Units) -> str:
    read = ""
    if one.vapour_ug_m2_s is not None and units == "us":
        read = f"{one.vapour_ug_m2_s / UG_M2_S_PER_LB:.1f} lb"
    elif one.vapour_ug_m2_s is not None:
        read = f"{one.vapour_ug_m2_s:g} µg/(m²·s)"
    elif one.slab_rh_percent is not None:
        read = f"{one.slab_rh_percent:g} %"
    return f"{one.kind} {read}".strip()


def _tests(job: Job, tests: tuple[SlabTest, ...]) -> tuple[Block, ...]:
    if not tests:
        return ()
    label = {room.id: room.label for room in job.floor.rooms}
    care = any(HIDE in one.care for one in tests)
    return (
        Head("Tests to do"),
        Ticks(tuple(_test(one, label) for one in tests)),
        *((Words(HIDE, "danger"),) if care else ()),
    )


def _test(one: SlabTest, label: dict[str, str]) -> str:
    before = one.care.removesuffix(HIDE).strip()
    said = " ".join(filter(None, (before, one.how, one.first_in(label))))
    return f"{one.count} × {one.test}. {said}"


def _days(value: float) -> str:
    return f"{value:g} days"


def _counted(value: int | None) -> Text:
    return EMPTY if value is None else Own(str(value))


def _number(value: float | None) -> Text:
    return EMPTY if value is None else Own(f"{value:g}")


def _percent(value: float | None) -> Text:
    return EMPTY if value is None else Own(f"{value:g} %")


def _yes_no(value: bool | None) -> Text:  # noqa: FBT001 - an answer that was given, not an option
    return EMPTY if value is None else "there is" if value else "none found"


def _warm(value_c: float | None, units: Units) -> Text:
    if value_c is None:
        return EMPTY
    metric, us = f"{value_c:.1f} °C", f"{f_from_c(value_c):.0f} °F"
    return Own(us if units == "us" else metric)
