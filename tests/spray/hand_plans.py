"""More than thirty good small plans, each told step by step: `PLANS` by name.

Nothing here comes from the solver, and nothing from the checker: peak ages are
sampled plainly in `hand_day`.
"""

from __future__ import annotations

from collections.abc import Callable

import shapely
from shapely import box
from tests.spray.hand_day import Day, Frame, House, Plan, turned, upright

PLANS: dict[str, Callable[[], Plan]] = {}


def plan(make: Callable[[], Plan]) -> Callable[[], Plan]:
    PLANS[make.__name__.replace("_", " ")] = make
    return make


def one_room(width: float, depth: float, door_x: float, *, frame: Frame = upright) -> House:
    """A room with a one-metre door to the outside in its lower wall."""
    house = House({"hall": box(0, 0, width, depth)}, frame=frame)
    house.opening("front", "outside", (door_x - 0.5, 0), (door_x + 0.5, 0), ["hall"])
    return house


def sweep(day: Day, shape: shapely.Polygon, count: int, door_x: float, **options: object) -> None:
    """A box in strips of one height, the last of them left by the door in the lower wall."""
    x0, y0, x1, y1 = shape.bounds
    high = (y1 - y0) / count
    who = str(options.get("who", "sprayer"))
    if count > 1:
        day.strips(box(x0, y0 + high, x1, y1), count - 1, who=who)
    day.close(box(x0, y0, x1, y0 + high), door_x, **options)  # type: ignore[arg-type]


def swept_room(
    width: float, depth: float, door_x: float, count: int, *, frame: Frame = upright
) -> Plan:
    """One room, one field, filled outside first, left by its door."""
    day = Day(one_room(width, depth, door_x, frame=frame))
    day.begin("A", ["hall"], "exit front")
    day.stand(door_x, -1.5)
    day.fill(7.5)
    day.walk((door_x, 0.4))
    sweep(day, box(0, 0, width, depth), count, door_x)
    return day.plan()


@plan
def a_closet_sprayed_from_outside() -> Plan:
    day = Day(one_room(1.2, 0.8, 0.6))
    day.begin("A", ["hall"], "front")
    day.stand(0.4, -0.3)
    day.fill(1.0)
    day.spray(box(0, 0, 1.2, 0.8), (0.4, -0.3), (0.8, -0.3))
    return day.plan()


@plan
def a_closet_in_two_coats_of_one_band() -> Plan:
    day = Day(one_room(1.2, 0.8, 0.6), coats=(("one", "1:1"), ("two", "1:2")))
    for coat, name in (("one", "A"), ("two", "B")):
        day.begin(name, ["hall"], "front", coat=coat)
        day.stand(0.4, -0.3, at_min=day.now.get("sprayer", 0.0))
        day.fill(1.0)
        day.spray(box(0, 0, 1.2, 0.8), (0.4, -0.3), (0.8, -0.3))
        day.walk((0.4, -0.3))
        day.wait(day.now["sprayer"] + 130)
    day.clock("one", 60, 90, 120)
    return day.plan()


@plan
def a_small_room() -> Plan:
    return swept_room(2.4, 3.0, 1.2, 3)


@plan
def a_room_with_long_sides() -> Plan:
    return swept_room(4.2, 4.0, 1.4, 4)


@plan
def a_room_with_its_door_in_the_corner() -> Plan:
    return swept_room(3.6, 3.0, 0.6, 3)


@plan
def a_room_turned_a_quarter() -> Plan:
    return swept_room(3.0, 3.0, 1.5, 3, frame=turned(90))


@plan
def a_room_turned_half() -> Plan:
    return swept_room(3.0, 3.0, 1.5, 3, frame=turned(180, dx=100, dy=-50))


@plan
def a_room_turned_askew() -> Plan:
    return swept_room(3.2, 4.0, 1.8, 4, frame=turned(33.3, dx=12.345, dy=-6.789))


@plan
def a_room_with_narrow_strips() -> Plan:
    return swept_room(3.0, 3.0, 1.2, 5)


@plan
def a_room_with_a_threshold_at_the_way_out() -> Plan:
    house = House({"hall": box(0, 0, 3, 3)})
    sill = box(1.0, -0.15, 2.0, 0)
    house.opening("front", "outside", (1.0, -0.15), (2.0, -0.15), ["hall"], threshold=sill)
    day = Day(house)
    day.begin("A", ["hall"], "front")
    day.stand(1.5, -1.5)
    day.fill(5.0)
    day.walk((1.5, 0.4))
    sweep(day, box(0, 0, 3, 3), 3, 1.5, sill=sill)
    return day.plan()


@plan
def a_room_with_an_outside_door_that_is_no_way_out() -> Plan:
    """Its threshold is floor like any other, and a wall beyond."""
    house = one_room(3.0, 3.0, 1.5)
    sill = box(1.0, 3.0, 2.0, 3.12)
    house.opening(
        "back", "outside", (1.0, 3.12), (2.0, 3.12), ["hall"], threshold=sill, way_out=False
    )
    day = Day(house)
    day.begin("A", ["hall"], "exit front")
    day.stand(1.5, -1.5)
    day.fill(6.0)
    day.walk((1.5, 0.4))
    top = shapely.union(box(0, 2, 3, 3), sill)
    day.spray(top, (0.3, 1.7), (2.7, 1.7))
    sweep(day, box(0, 0, 3, 2), 2, 1.5)
    return day.plan()


@plan
def a_room_with_an_island() -> Plan:
    house = one_room(4.4, 5.2, 2.2)
    house.fixture("island", box(1.7, 2.2, 2.7, 3.2))
    day = Day(house)
    day.begin("A", ["hall"], "exit front")
    day.stand(2.2, -1.5)
    day.fill(7.5)
    day.walk((2.2, 1.0), (1.3, 1.5))
    day.walk((1.3, 3.7))
    day.strips(box(0, 4.2, 4.4, 5.2), 1)
    day.walk((3.1, 3.8), (3.1, 2.9))
    day.spray(box(2.2, 3.2, 4.4, 4.2), (3.1, 2.9), (4.1, 2.9))
    day.spray(box(2.7, 2.2, 4.4, 3.2), (4.1, 1.9), (3.0, 1.9))
    day.walk((1.4, 1.9), (1.4, 2.9))
    day.spray(box(0, 3.2, 2.2, 4.2), (1.4, 2.9), (0.3, 2.9))
    day.spray(box(0, 2.2, 1.7, 3.2), (0.3, 1.9), (1.4, 1.9))
    sweep(day, box(0, 0, 4.4, 2.2), 2, 2.2)
    return day.plan()


@plan
def a_room_with_a_column() -> Plan:
    """A hole in the room's polygon instead of a fixture."""
    room = box(0, 0, 3.4, 4.0) - box(1.5, 2.2, 1.8, 2.5)
    house = House({"hall": room})
    house.opening("front", "outside", (1.2, 0), (2.2, 0), ["hall"])
    day = Day(house)
    day.begin("A", ["hall"], "exit front")
    day.stand(1.7, -1.5)
    day.fill(7.0)
    day.walk((1.7, 1.5), (0.8, 2.0), (0.8, 2.8))
    day.strips(box(0, 3.1, 3.4, 4.0), 1)
    day.walk((2.6, 2.0))
    day.spray(room & box(1.65, 2.1, 3.4, 3.1), (2.6, 1.8), (1.95, 1.8))
    day.spray(room & box(0, 2.1, 1.65, 3.1), (1.35, 1.8), (0.3, 1.8))
    sweep(day, box(0, 0, 3.4, 2.1), 2, 1.7)
    return day.plan()


def l_house() -> House:
    corners = [(0, 0), (5, 0), (5, 2), (2.4, 2), (2.4, 5), (0, 5)]
    house = House({"hall": shapely.Polygon(corners)}, frame=turned(-90))
    house.opening("side", "outside", (5, 0.5), (5, 1.5), ["hall"])
    return house


@plan
def an_l_room() -> Plan:
    day = Day(l_house())
    day.begin("A", ["hall"], "side", open_low_min=14)
    day.stand(6.5, 1.0)
    day.fill(7.5)
    day.walk((4.0, 1.0), (1.2, 1.0))
    day.strips(box(0, 2, 2.4, 5), 3)
    day.spray(box(0, 0, 1, 2), (1.3, 1.7), (1.3, 0.3))
    day.spray(box(1, 0, 2, 2), (2.3, 0.3), (2.3, 1.7))
    day.spray(box(2, 0, 3, 2), (3.3, 1.7), (3.3, 0.3))
    day.spray(box(3, 0, 4, 2), (4.3, 0.3), (4.3, 1.7))
    day.walk((4.5, 1.0), (5.3, 1.0))
    day.spray(box(4, 0, 5, 2), (5.3, 0.8), (5.3, 1.2))
    return day.plan()


def two_rooms(*, kind: str = "door", gap: float = 0.0) -> House:
    """A bedroom above a hall; the hall leads out. With a gap, a threshold bridges the wall."""
    house = House({"bed": box(0, 3 + gap, 3, 6 + gap), "hall": box(0, 0, 3, 3)})
    sill = box(1.05, 3, 1.95, 3 + gap) if gap else None
    middle = 3 + gap / 2
    house.opening("inner", kind, (1.05, middle), (1.95, middle), ["bed", "hall"], threshold=sill)
    house.opening("front", "outside", (1.0, 0), (2.0, 0), ["hall"])
    return house


def enter(day: Day, *, litres: float = 7.5) -> None:
    """Fill outside the front door and go in as far as the bedroom."""
    day.stand(1.5, -1.5)
    day.fill(litres)
    day.walk((1.5, 0.4), (1.5, 3.8))


def seam(
    house: House, name: str = "inner"
) -> tuple[str, str, tuple[float, float], tuple[float, float]]:
    """A stop line on the whole of an opening of an upright house."""
    entry = next(o for o in house.openings if o["id"] == name)
    start, end = entry["line"]
    return (name, entry["kind"], (start[0], start[1]), (end[0], end[1]))


def two_fields(kind: str) -> Plan:
    house = two_rooms(kind=kind)
    day = Day(house)
    day.begin("A", ["bed"], "inner", stops=[seam(house)])
    enter(day)
    sweep(day, box(0, 3, 3, 6), 3, 1.5)
    day.begin("B", ["hall"], "exit front", stops=[seam(house)])
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def two_rooms_with_a_door_between() -> Plan:
    return two_fields("door")


@plan
def two_rooms_with_a_frame_between() -> Plan:
    return two_fields("cased")


@plan
def two_rooms_sprayed_as_one() -> Plan:
    """The wall has no thickness: only the opening is a border between their bands."""
    day = Day(two_rooms(kind="wide"), tools={"tank_l": 9.0})
    day.begin("A", ["bed", "hall"], "exit front")
    enter(day, litres=4.5)
    day.tools["tank_l"] = 9.0
    sweep(day, box(0, 3, 3, 6), 3, 1.5)
    day.walk((1.5, 0.3), (1.5, -0.3))
    day.fill(4.5)
    day.walk((1.5, 0.8))
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def two_rooms_with_a_threshold_and_a_stop_line() -> Plan:
    """The stop line lies under the leaf, in the middle of the wall."""
    house = two_rooms(gap=0.12)
    day = Day(house)
    day.begin("A", ["bed"], "inner", stops=[seam(house)])
    enter(day)
    sweep(day, box(0, 3.12, 3, 6.12), 3, 1.5, sill=box(1.05, 3.06, 1.95, 3.12))
    day.begin("B", ["hall"], "exit front")
    day.spray(
        shapely.union(box(0, 2, 3, 3), box(1.05, 3, 1.95, 3.06)), (1.7, 1.7), (0.3, 1.7), (2.7, 1.7)
    )
    sweep(day, box(0, 0, 3, 2), 2, 1.5)
    return day.plan()


@plan
def two_rooms_with_a_threshold_in_one_field() -> Plan:
    house = two_rooms(gap=0.3)
    day = Day(house)
    day.begin("A", ["bed", "hall"], "exit front")
    enter(day)
    sweep(day, box(0, 3.3, 3, 6.3), 3, 1.5, sill=box(1.05, 3, 1.95, 3.3))
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def two_rooms_whose_door_line_lies_at_one_face() -> Plan:
    """No threshold is drawn: the floor of the wall's depth belongs to nobody."""
    house = House({"bed": box(0, 3.1, 3, 6.1), "hall": box(0, 0, 3, 3)})
    house.opening("inner", "door", (1.05, 3), (1.95, 3), ["bed", "hall"])
    house.opening("front", "outside", (1.0, 0), (2.0, 0), ["hall"])
    day = Day(house)
    day.begin("A", ["bed"], "inner")
    enter(day)
    day.strips(box(0, 4.1, 3, 6.1), 2)
    day.spray(box(0, 3.1, 0.7, 4.1), (1.0, 3.6), (1.05, 3.6))
    day.spray(box(2.3, 3.1, 3, 4.1), (2.0, 3.6), (1.95, 3.6))
    day.walk((1.5, 3.6), (1.5, 2.7))
    day.spray(box(0.7, 3.1, 2.3, 4.1), (1.3, 2.7), (1.7, 2.7))
    day.begin("B", ["hall"], "front")
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def a_room_cut_in_two_fields() -> Plan:
    house = one_room(3.0, 4.0, 1.5)
    house.saw_cut("score", (0, 2), (3, 2))
    day = Day(house)
    day.begin("A", ["hall"], "score", stops=[("score", "saw cut", (0, 2), (3, 2))])
    day.stand(1.5, -1.5)
    day.fill(7.0)
    day.walk((1.5, 1.5))
    day.strips(box(0, 2, 3, 4), 2)
    day.begin("B", ["hall"], "exit front")
    sweep(day, box(0, 0, 3, 2), 2, 1.5)
    return day.plan()


@plan
def a_room_with_a_saw_cut_that_is_no_stop_line() -> Plan:
    house = one_room(3.0, 3.0, 1.5)
    house.saw_cut("score", (1, 0), (1, 3))
    day = Day(house)
    day.begin("A", ["hall"], "exit front")
    day.stand(1.5, -1.5)
    day.fill(7.0)
    day.walk((1.5, 0.4))
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


def two_coats(high: float | None, wait: float) -> Plan:
    day = Day(one_room(3.0, 3.0, 1.5), coats=(("one", "1:1"), ("two", "1:3")))
    day.stand(1.5, -1.5)
    for name, coat in (("A", "one"), ("B", "two")):
        day.begin(name, ["hall"], "exit front", coat=coat)
        day.walk((1.5, -1.5))
        day.fill(6.0)
        day.walk((1.5, 0.4))
        sweep(day, box(0, 0, 3, 3), 3, 1.5)
        day.wait(day.now["sprayer"] + wait)
    day.clock("one", 60, 90, high)
    day.clock("two", 60, 90, high)
    return day.plan()


@plan
def two_coats_with_a_wait() -> Plan:
    return two_coats(150, 150)


@plan
def two_coats_on_a_clock_without_a_high_end() -> Plan:
    return two_coats(None, 91)


@plan
def two_colours_in_two_rooms() -> Plan:
    """Each coat covers the whole floor in two fields, the cut of each being its own."""
    house = two_rooms()
    day = Day(house, coats=(("base", "1:1"), ("accent", "1:4")))
    day.stand(1.5, -1.5)
    for coat, first, second in (("base", "A", "B"), ("accent", "C", "D")):
        day.begin(first, ["bed"], "inner", coat=coat, stops=[seam(house)])
        day.walk((1.5, -1.5))
        day.fill(7.5)
        day.walk((1.5, 3.8))
        sweep(day, box(0, 3, 3, 6), 3, 1.5)
        day.begin(second, ["hall"], "exit front", coat=coat)
        sweep(day, box(0, 0, 3, 3), 3, 1.5)
        day.wait(day.now["sprayer"] + 200)
    day.clock("base", 60, 120, 180)
    return day.plan()


@plan
def a_refill_outside_in_the_middle_of_a_field() -> Plan:
    day = Day(one_room(3.0, 4.0, 1.5), tools={"tank_l": 0.7})
    day.begin("A", ["hall"], "exit front")
    day.stand(1.5, -1.0)
    day.fill(0.65)
    day.walk((1.5, 0.4))
    for top in (4, 3, 2):
        day.strips(box(0, top - 1, 3, top), 1)
        day.walk((1.5, 0.4), (1.5, -1.0))
        day.fill(0.6)
        day.walk((1.5, 0.4))
    sweep(day, box(0, 0, 3, 1), 1, 1.5)
    return day.plan()


def with_helper(at: tuple[float, float]) -> Plan:
    """A helper brings a full tank to the sprayer, who stands at `at`, and goes out again."""
    day = Day(one_room(3.0, 5.0, 1.5), helper=True, tools={"tank_l": 2.5})
    day.begin("A", ["hall"], "exit front")
    day.stand(1.5, -1.0)
    day.stand(2.5, -1.0, who="helper")
    day.fill(2.5)
    day.walk((1.5, 0.4))
    day.strips(box(0, 1, 3, 5), 4)
    day.walk((1.5, 0.6), at)
    day.wait(day.now["sprayer"], who="helper")
    day.walk((1.5, -0.8), (1.5, at[1] - 0.9), who="helper")
    day.fill(2.0, by="helper")
    day.walk((1.5, -0.8), (2.5, -1.0), who="helper")
    sweep(day, box(0, 0, 3, 1), 1, 1.5)
    return day.plan()


@plan
def a_helper_at_the_door() -> Plan:
    return with_helper((1.5, -0.3))


@plan
def a_helper_inside() -> Plan:
    return with_helper((1.6, 0.7))


@plan
def a_helper_deep_inside_before_the_first_band() -> Plan:
    day = Day(one_room(3.0, 3.0, 1.5), helper=True)
    day.begin("A", ["hall"], "exit front")
    day.stand(1.5, -1.0)
    day.stand(2.5, -1.0, who="helper")
    day.walk((1.5, 0.4), (0.6, 1.5))
    day.walk((1.5, -0.8), (1.5, 1.5), who="helper")
    day.fill(6.0, by="helper")
    day.walk((1.5, 0.4), (1.5, -1.0), who="helper")
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def two_sprayers_side_by_side() -> Plan:
    """Two doors, one field: the right half follows the left at the same moments."""
    house = House({"hall": box(0, 0, 6, 3)})
    house.opening("west", "outside", (1.0, 0), (2.0, 0), ["hall"])
    house.opening("east", "outside", (4.0, 0), (5.0, 0), ["hall"])
    day = Day(house, sprayers=2)
    day.begin("A", ["hall"], "exit west")
    for who, x in (("sprayer", 1.5), ("sprayer 2", 4.5)):
        day.stand(x, -1.0, who=who)
        day.fill(6.0, who=who)
        day.walk((x, 0.4), who=who)
    sweep(day, box(0, 0, 3, 3), 3, 1.5, who="sprayer")
    sweep(day, box(3, 0, 6, 3), 3, 4.5, who="sprayer 2")
    return day.plan()


@plan
def two_sprayers_in_two_rooms_with_a_helper_for_the_second() -> Plan:
    house = House({"west": box(0, 0, 3, 3), "east": box(3, 0, 6, 3)})
    house.opening("w", "outside", (1.0, 0), (2.0, 0), ["west"])
    house.opening("e", "outside", (4.0, 0), (5.0, 0), ["east"])
    house.opening("inner", "door", (3, 1.0), (3, 2.0), ["west", "east"])
    day = Day(house, sprayers=2, helper=True)
    day.begin("W", ["west"], "w", stops=[seam(house)])
    day.stand(1.5, -1.0)
    day.fill(6.0)
    day.walk((1.5, 0.4))
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    day.begin("E", ["east"], "e")
    day.stand(4.5, -0.3, who="sprayer 2", at_min=3.0)
    day.stand(5.5, -1.0, who="helper", at_min=3.5)
    day.walk((4.8, -0.8), who="helper")
    day.fill(6.0, who="sprayer 2", by="helper to sprayer 2")
    day.walk((5.5, -1.0), who="helper")
    day.walk((4.5, 0.4), who="sprayer 2")
    sweep(day, box(3, 0, 6, 3), 3, 4.5, who="sprayer 2")
    return day.plan()


@plan
def a_closet_in_a_bedroom() -> Plan:
    """The closet first, from beyond its door; then bedroom and hall."""
    house = two_rooms()
    house.rooms["closet"] = box(0.6, 6, 2.4, 6.7)
    house.opening("leaf", "door", (1.05, 6), (1.95, 6), ["closet", "bed"])
    day = Day(house)
    day.begin("C", ["closet"], "leaf", stops=[seam(house, "leaf")])
    enter(day)
    day.spray(box(0.6, 6, 2.4, 6.7), (1.4, 5.7), (1.6, 5.7))
    day.begin("A", ["bed"], "inner", stops=[seam(house)])
    sweep(day, box(0, 3, 3, 6), 3, 1.5)
    day.begin("B", ["hall"], "front")
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def two_ways_out_and_a_walk_around_the_house() -> Plan:
    """Each room by its own door; between them the sprayer walks over the ground outside."""
    house = House({"west": box(0, 0, 3, 3), "east": box(3.1, 0, 6.1, 3)})
    house.opening("w", "outside", (1.0, 0), (2.0, 0), ["west"])
    house.opening("e", "outside", (4.0, 3), (5.0, 3), ["east"])
    day = Day(house)
    day.begin("W", ["west"], "w")
    day.stand(1.5, -1.0)
    day.fill(6.0)
    day.walk((1.5, 0.4))
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    day.begin("E", ["east"], "exit e")
    day.walk((1.5, -0.6), (6.7, -0.6), (6.7, 3.6), (4.5, 3.6))
    day.fill(3.0)
    day.walk((4.5, 2.6))
    for y in (0.0, 1.0):
        ends = [(3.4, y + 1.3), (5.8, y + 1.3)]
        day.spray(box(3.1, y, 6.1, y + 1), *(ends if y else ends[::-1]))
    day.spray(box(3.1, 2, 3.7, 3), (4.0, 2.5), (4.05, 2.5))
    day.spray(box(5.3, 2, 6.1, 3), (5.0, 2.5), (4.95, 2.5))
    day.walk((4.5, 2.5), (4.5, 3.3))
    day.spray(box(3.7, 2, 5.3, 3), (4.3, 3.3), (4.7, 3.3))
    return day.plan()


@plan
def three_rooms_in_a_row() -> Plan:
    house = two_rooms()
    house.rooms["far"] = box(0, 6, 3, 9)
    house.opening("second", "door", (1.05, 6), (1.95, 6), ["far", "bed"])
    day = Day(house, tools={"tank_l": 15.0})
    day.begin("F", ["far"], "second", stops=[seam(house, "second")])
    day.stand(1.5, -1.0)
    day.fill(8.0)
    day.walk((1.5, 6.8))
    sweep(day, box(0, 6, 3, 9), 3, 1.5)
    day.begin("A", ["bed"], "inner", stops=[seam(house)])
    sweep(day, box(0, 3, 3, 6), 3, 1.5)
    day.begin("B", ["hall"], "front")
    sweep(day, box(0, 0, 3, 3), 3, 1.5)
    return day.plan()


@plan
def a_hall_with_a_room_on_each_side() -> Plan:
    """Both dead ends first, the hall that leads out last."""
    house = House({"hall": box(0, 0, 2, 4), "left": box(-3, 1, 0, 4), "right": box(2, 1, 5, 4)})
    house.opening("front", "outside", (0.5, 0), (1.5, 0), ["hall"])
    house.opening("l", "door", (0, 2.0), (0, 3.0), ["left", "hall"])
    house.opening("r", "door", (2, 2.0), (2, 3.0), ["right", "hall"])
    stops = [seam(house, "l"), seam(house, "r")]
    day = Day(house)
    day.stand(1.0, -1.0)
    for name, room, side in (("L", "left", -1), ("R", "right", 1)):
        day.begin(name, [room], name.lower(), stops=stops)
        day.walk((1.0, -1.0))
        day.fill(3.0)
        day.walk((1.0, 2.5), (1.0 + side * 2.0, 2.5))
        for far in (4.0, 3.0):
            x = [1 + side * far, 1 + side * (far - 1)]
            stand = 1 + side * (far - 1.3)
            day.spray(box(min(x), 1, max(x), 4), (stand, 1.4), (stand, 3.6))
            day.walk((stand, 2.5))
        x = [1 + side * 2.0, 1 + side * 1.0]
        day.walk((1 + side * 1.5, 2.5))
        day.spray(box(min(x), 1, max(x), 1.7), (1 + side * 1.5, 2.0), (1 + side * 1.5, 2.05))
        day.spray(box(min(x), 3.3, max(x), 4), (1 + side * 1.5, 3.0), (1 + side * 1.5, 2.95))
        day.walk((1 + side * 1.5, 2.5), (1.0 + side * 0.7, 2.5))
        day.spray(box(min(x), 1.7, max(x), 3.3), (1 + side * 0.7, 2.4), (1 + side * 0.7, 2.6))
        day.walk((1.0, 2.5))
    day.begin("H", ["hall"], "front")
    sweep(day, box(0, 0, 2, 4), 4, 1.0)
    return day.plan()


@plan
def a_room_with_the_widest_overlap() -> Plan:
    """12 inches of each earlier band wetted again: litres and minutes of it count."""
    day = Day(one_room(3.0, 3.0, 1.5))
    day.begin("A", ["hall"], "front")
    day.stand(1.5, -1.0)
    day.fill(7.0)
    day.walk((1.5, 0.4))
    day.spray(box(0, 2, 3, 3), (0.3, 1.7), (2.7, 1.7))
    day.spray(box(0, 1, 3, 2), (2.7, 0.7), (0.3, 0.7), overlap_l=3.0 * 0.305 * 0.2)
    sweep(day, box(0, 0, 3, 1), 1, 1.5)
    return day.plan()


@plan
def a_pause_within_the_open_time() -> Plan:
    day = Day(one_room(3.0, 3.0, 1.5))
    day.begin("A", ["hall"], "front", open_low_min=11.0)
    day.stand(1.5, -1.0)
    day.fill(7.0)
    day.walk((1.5, 0.4))
    day.strips(box(0, 2, 3, 3), 1)
    day.wait(day.now["sprayer"] + 7)
    sweep(day, box(0, 0, 3, 2), 2, 1.5)
    return day.plan()


@plan
def a_slow_and_careful_sprayer() -> Plan:
    day = Day(one_room(2.0, 2.0, 1.0))
    day.begin("A", ["hall"], "front", open_low_min=9.0)
    day.stand(1.0, -1.0)
    day.fill(7.0)
    day.walk((1.0, 0.4))
    day.spray(box(0, 1, 2, 2), (0.3, 0.7), (1.7, 0.7), minutes=4.0)
    sweep(day, box(0, 0, 2, 1), 1, 1.0)
    return day.plan()


@plan
def litres_a_square_metre_as_one_number() -> Plan:
    made = swept_room(2.0, 2.0, 1.0, 2)
    made["inputs"]["l_per_m2"] = 0.2
    from tests.spray.hand_day import rehashed

    return rehashed(made)


@plan
def a_room_with_a_wing_wall() -> Plan:
    """A wall of 2 mm juts into the room: bands on its two sides do not meet there."""
    room = shapely.Polygon(
        [(0, 0), (4, 0), (4, 4), (2.001, 4), (2.001, 2), (1.999, 2), (1.999, 4), (0, 4)]
    )
    house = House({"hall": room})
    house.opening("front", "outside", (1.5, 0), (2.5, 0), ["hall"])
    day = Day(house)
    day.begin("A", ["hall"], "front", open_low_min=9)
    day.stand(2.0, -1.0)
    day.fill(7.5)
    day.walk((2.0, 0.8), (1.0, 1.4))
    day.spray(box(0, 3, 1.999, 4), (0.3, 2.7), (1.65, 2.7))
    day.spray(room & box(0, 2, 1.999, 3), (1.65, 1.7), (0.3, 1.7))
    day.walk((3.0, 1.4))
    day.spray(box(2.001, 3, 4, 4), (3.7, 2.7), (2.35, 2.7))
    day.spray(room & box(2.001, 2, 4, 3), (2.35, 1.7), (3.7, 1.7))
    sweep(day, box(0, 0, 4, 2), 2, 2.0)
    return day.plan()
