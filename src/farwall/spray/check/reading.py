"""From loose JSON to the checker's nouns, with all mistakes named at once."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping

import numpy as np
import shapely

from farwall.spray.check.canonical import NotCanonical, sha256_hex
from farwall.spray.check.loose import METRES, MINUTES, At
from farwall.spray.check.nouns import (
    AREA_M2,
    Band,
    Clock,
    Closed,
    Coat,
    Exit,
    Field,
    Fixture,
    House,
    Look,
    Mix,
    Opening,
    OpenTime,
    PlanRead,
    Refill,
    Room,
    SawCut,
    SoFar,
    StopLine,
    Tools,
    Unreadable,
    Walk,
)

MANY = 1e6
_CUT = re.compile(r"\s*(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)\s*")


def read_plan(plan: object) -> PlanRead:
    """The plan as nouns; raises `Unreadable` with every place that is not as promised."""
    top = At(plan, "", [])
    if not isinstance(plan, Mapping):
        raise Unreadable(("the file: an object with the keys of a plan is expected.",))
    read = _plan(top)
    if not top.mistakes:
        _one_storey(read.house, top.mistakes)
    if top.mistakes:
        raise Unreadable(tuple(dict.fromkeys(top.mistakes)))
    return read


def _plan(top: At) -> PlanRead:
    inputs = top.get("inputs")
    crew = inputs.get("crew")
    return PlanRead(
        inputs_hash=top.get("inputs_hash").text(),
        inputs_hash_found=_hash(inputs),
        house=_house(inputs),
        sprayers=crew.get("sprayers").whole(1, 9),
        helper=crew.get("helper").truth(),
        tools=_tools(inputs.get("tools")),
        coats=_coats(inputs),
        fields=tuple(map(_field, top.get("fields").items())),
        mixes=tuple(map(_mix, top.get("mixes").items())),
        clocks=tuple(map(_clock, top.get("clocks").items())),
        so_far=_so_far(top) if top.get("so_far").given else None,
        left=tuple(map(_field, top.get("left").items())) if top.get("left").given else (),
        looks=tuple(map(_look, top.get("looks").items())) if top.get("looks").given else (),
    )


def _so_far(top: At) -> SoFar:
    at = top.get("so_far")
    done = [
        (one.get("id").text(), _minute(one.get("start_min")), _minute(one.get("end_min")))
        for one in at.get("done").items()
    ]
    return SoFar(
        at_min=_minute(at.get("at_min")),
        coat=at.get("coat").text(),
        done=tuple(done),
        tank_l=at.get("tank_l").number(0, MANY),
        closed=tuple(map(_closed, at.get("closed").items())),
        past_hash=at.get("past_hash").text(),
        hash_found=_past_hash(top),
        tank_2_l=at.get("tank_2_l").number_or_none(0, MANY),
    )


def _closed(at: At) -> Closed:
    until = at.get("until_min").number_or_none(-MINUTES, MINUTES)
    return Closed(at.get("room").text(), float("inf") if until is None else until)


def _past_hash(top: At) -> str:
    """SHA-256 of the past without its hash, and of its bands as they stand in the fields."""
    told, fields = top.get("so_far"), top.get("fields")
    if not isinstance(told.value, Mapping):
        return ""
    bands = {
        band.get("id").text(): band.value
        for field in fields.items()
        for band in field.get("bands").items()
    }
    names = [one.get("id").text() for one in told.get("done").items()]
    try:
        past = [{**told.value, "past_hash": ""}, [bands.get(name) for name in names]]
        return sha256_hex(past)
    except NotCanonical as error:
        told.mistake(str(error))
        return ""


def _hash(inputs: At) -> str:
    try:
        return sha256_hex(inputs.value) if inputs.given else ""
    except NotCanonical as error:
        inputs.mistake(str(error))
        return ""


def _house(inputs: At) -> House:
    house = House(
        rooms=tuple(map(read_room, inputs.get("floor").get("rooms").items(at_least=1))),
        openings=tuple(map(read_opening, inputs.get("openings").items())),
        exits=tuple(map(read_exit, inputs.get("exits").items())),
        fixtures=tuple(map(read_fixture, inputs.get("fixtures").items())),
        saw_cuts=tuple(map(read_saw_cut, inputs.get("saw_cuts").items())),
    )
    for name, ids in (("floor.rooms", house.rooms), ("openings", house.openings)):
        for twin, count in Counter(noun.id for noun in ids).items():
            if count > 1:
                inputs.mistakes.append(f"inputs.{name}: the id {twin!r} is given {count} times.")
    return house


def _one_storey(house: House, mistakes: list[str]) -> None:
    """Note rooms of different storeys that lie over each other: a path has no storey."""
    shapes = np.array([room.shape for room in house.rooms])
    pairs = shapely.STRtree(shapes).query(shapes, predicate="intersects").T
    for first, second in pairs[pairs[:, 0] < pairs[:, 1]]:
        one, other = house.rooms[first], house.rooms[second]
        if one.storey != other.storey and one.shape.intersection(other.shape).area > AREA_M2:
            mistakes.append(
                f"inputs.floor.rooms: {one.label} and {other.label} are on different storeys "
                "and lie over each other. A plan holds one storey; check each on its own."
            )


def read_room(at: At) -> Room:
    """A room."""
    name, room_id = at.get("name").text_or(""), at.get("id").text()
    storey, polygon = at.get("storey").text_or(""), at.get("polygon")
    shape = polygon.polygon()
    if polygon.given and not shape.area:
        polygon.mistake("a polygon with an area is expected")
    return Room(room_id, name or room_id, storey, shape)


def read_opening(at: At) -> Opening:
    """An opening."""
    threshold = at.get("threshold")
    return Opening(
        id=at.get("id").text(),
        kind=at.get("kind").text(),
        line=at.get("line").line(),
        rooms=at.get("rooms").texts(),
        threshold=threshold.polygon() if threshold.given else None,
    )


def read_exit(at: At) -> Exit:
    """A way out."""
    return Exit(at.get("id").text(), at.get("opening").text())


def read_fixture(at: At) -> Fixture:
    """A fixture; its label is its kind."""
    label = at.get("kind").text_or("") or at.get("id").text_or("") or "fixture"
    return Fixture(label, at.get("polygon").polygon())


def read_saw_cut(at: At) -> SawCut:
    """A saw cut."""
    return SawCut(at.get("id").text_or(""), at.get("line").line())


def _tools(at: At) -> Tools:
    return Tools(
        tank_l=at.get("tank_l").number(0, MANY),
        spray_m2_min=at.get("spray_m2_min").number(1e-6, MANY),
        walk_m_min=at.get("walk_m_min").number(1e-6, MANY),
        overlap_m=at.get("overlap_m").number_or_none(0, METRES) or 0.0,
        refill_min=at.get("refill_min").number_or_none(0, MINUTES),
        swap_min=at.get("swap_min").number_or_none(0, MINUTES),
        reach_m=at.get("reach_m").number_or_none(0, METRES),
    )


def _coats(inputs: At) -> dict[str, Coat]:
    rates = inputs.get("l_per_m2")
    coats = [_coat(at, rates) for at in inputs.get("coats").items(at_least=1)]
    return {coat.id: coat for coat in coats}


def _coat(at: At, rates: At) -> Coat:
    coat_id = at.get("id").text()
    rate = rates if isinstance(rates.value, int | float) else rates.get(coat_id)
    return Coat(coat_id, cut_of(at.get("cut").text_or("")), rate.number(0, MANY))


def cut_of(text: str) -> tuple[float, float] | None:
    """Parts of stain and of water in a text such as `1:2`; None where it says something else."""
    found = _CUT.fullmatch(text)
    return (float(found[1]), float(found[2])) if found else None


def _field(at: At) -> Field:
    field_id, coat = at.get("id").text(), at.get("coat").text()
    return Field(
        id=field_id,
        coat=coat,
        rooms=at.get("rooms").texts(),
        exit=at.get("exit").text_or(""),
        area_m2=at.get("area_m2").number(-MANY, MANY),
        order=at.get("order").whole(-(10**6), 10**6),
        start_min=_minute(at.get("start_min")),
        end_min=_minute(at.get("end_min")),
        peak_age_min=_minute(at.get("peak_age_min")),
        told_low_min=_minute(at.get("open_time_min").get("low")),
        bands=tuple(_band(band, field_id, coat) for band in at.get("bands").items()),
        refills=tuple(map(_refill, at.get("refills").items())),
        walks=tuple(map(_walk, at.get("walks").items())),
        stop_lines=tuple(map(_stop_line, at.get("stop_lines").items())),
        open_times=_open_times(at.get("open_times")),
        spare_min=_spare(at.get("tightest")),
    )


def _open_times(at: At) -> tuple[OpenTime, ...]:
    """The open times by room; none in a plan that tells one for each field."""
    return tuple(map(_open_time, at.items())) if at.given else ()


def _open_time(at: At) -> OpenTime:
    patch, end = at.get("polygon"), at.get("to_min").number_or_none(-MINUTES, MINUTES)
    return OpenTime(
        at.get("room").text(),
        _minute(at.get("from_min")),
        _minute(at.get("low")),
        patch.polygon() if patch.given else None,
        np.inf if end is None else end,
    )


def _spare(at: At) -> float | None:
    return _minute(at.get("spare_min")) if at.given else None


def _minute(at: At) -> float:
    return at.number(-MINUTES, MINUTES)


def _band(at: At, field_id: str, coat: str) -> Band:
    return Band(
        id=at.get("id").text(),
        field=field_id,
        coat=coat,
        order=at.get("order").whole(-(10**6), 10**6),
        sprayer=at.get("sprayer").whole(1, 9),
        shape=at.get("polygon").polygon(),
        path=at.get("path").path(),
        litres=at.get("litres").number(-MANY, MANY),
        start_min=_minute(at.get("start_min")),
        end_min=_minute(at.get("end_min")),
    )


def _refill(at: At) -> Refill:
    return Refill(
        at_min=_minute(at.get("at_min")),
        minutes=at.get("minutes").number(-MINUTES, MINUTES),
        at=at.get("at").point(),
        litres=at.get("litres").number(-MANY, MANY),
        by=at.get("by").text(),
    )


def _walk(at: At) -> Walk:
    return Walk(at.get("who").text(), at.get("path").path())


def _stop_line(at: At) -> StopLine:
    return StopLine(at.get("id").text(), at.get("kind").text_or(""), at.get("line").line())


def _mix(at: At) -> Mix:
    return Mix(
        id=at.get("id").text(),
        coat=at.get("coat").text(),
        stain_l=at.get("stain_l").number(-MANY, MANY),
        water_l=at.get("water_l").number(-MANY, MANY),
        acid_l=at.get("acid_l").number_or_none(-MANY, MANY) or 0.0,
        fields=at.get("fields").texts(),
        before_band=at.get("before_band").text_or(""),
        lots=at.get("lots").texts() if at.get("lots").given else (),
    )


def _look(at: At) -> Look:
    return Look(
        field=at.get("field").text(),
        band=at.get("band").text(),
        at_min=_minute(at.get("at_min")),
        done_l=at.get("done_l").number(0, MANY),
        to_do_l=at.get("to_do_l").number(0, MANY),
        begin_l=at.get("begin_l").number(0, MANY),
    )


def _clock(at: At) -> Clock:
    return Clock(
        coat=at.get("coat").text_or(""),
        name=at.get("name").text(),
        low_min=_minute(at.get("low_min")),
        likely_min=at.get("likely_min").number_or_none(-MINUTES, MINUTES),
        high_min=at.get("high_min").number_or_none(-MINUTES, MINUTES),
    )
