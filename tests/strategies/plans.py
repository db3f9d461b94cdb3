"""A small plan made by hand, for files and schemas; it is not a plan of the solver."""

from __future__ import annotations

from tests.strategies.jobs import box, row_of_rooms

from farwall.facts.job import Crew
from farwall.facts.plan import (
    Band,
    Clock,
    Field,
    Ground,
    Mix,
    OpenTime,
    Plan,
    PlanCoat,
    PlanFloor,
    PlanInputs,
    PlanTools,
    Refill,
    Remedy,
    StopLine,
    Walk,
)
from farwall.floor.nouns import Exit, Fixture, SawCut


def small_plan() -> Plan:
    """Two rooms in one field, every kind of part there once."""
    floor = row_of_rooms([3.0, 3.0])
    tools = PlanTools(7.57, 1.1, 2.787, 40.0, 3.0, 0.5, 0.2, 1.9)
    return Plan(
        version=1,
        job="house-7",
        inputs_hash="0" * 64,
        starts_at="2027-05-04T07:30:00-06:00",
        inputs=PlanInputs(
            floor=PlanFloor(floor.rooms),
            openings=floor.openings,
            exits=(Exit("way-out", "door-0"),),
            fixtures=(Fixture("tub", box(0.2, 0.2, 0.5, 0.5)),),
            saw_cuts=(SawCut(((0.0, 2.0), (0.5, 2.0))),),
            crew=Crew(),
            tools=tools,
            coats=(PlanCoat("first", "sand", "1:1"),),
            l_per_m2={"first": 0.2},
        ),
        fields=(
            Field(
                id="first-1",
                coat="first",
                rooms=("room-0", "room-1"),
                exit="way-out",
                area_m2=18.0,
                order=1,
                start_min=0.0,
                end_min=7.0,
                verdict="fits",
                remedies=(Remedy("helper", "a helper who swaps the tank"),),
                equivalent_front_m=3.0,
                bound_m=3.0,
                peak_age_min=3.1,
                open_time_min=OpenTime(4.0, 10.0, 20.0, "common practice"),
                bands=(
                    Band(
                        id="first-1-1",
                        order=1,
                        sprayer=1,
                        polygon=box(4.9, 0.0, 1.1, 3.0),
                        path=((4.8, 0.0, 0.0), (4.8, 3.0, 1.1)),
                        litres=0.8,
                        start_min=0.0,
                        end_min=1.1,
                    ),
                ),
                refills=(Refill(1.1, 3.0, (4.0, 1.5), 6.0, "sprayer"),),
                walks=(Walk("sprayer", ((4.8, 3.0, 1.1), (4.0, 1.5, 1.2))),),
                stop_lines=(StopLine("door-0", "outside", ((0.0, 1.0), (0.0, 1.9))),),
            ),
        ),
        mixes=(Mix("mix-1", "first", "1:1", 2.0, 2.0, 0.0, ("first-1",)),),
        clocks=(Clock("first", "coat 2", 60.0, None, None, "common practice"),),
        cautions=("Acid into water.",),
        grounds=(Ground("tools.tank_l", "7.57", "L", "common practice", "none"),),
        buying={"cost": "60.00"},
    )
