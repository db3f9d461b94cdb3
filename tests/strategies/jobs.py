"""Jobs for property tests: a row of rooms with doors between them, and facts of all kinds."""

from __future__ import annotations

from hypothesis import strategies as st
from tests.strategies.asked import asked

from farwall.air.waits import WATCHABLE
from farwall.facts.contents import Content
from farwall.facts.job import (
    Coat,
    Container,
    Crew,
    Job,
    Prices,
    RoomSurvey,
    Sighting,
    Site,
    Stain,
    Survey,
    Tools,
    Wishes,
)
from farwall.facts.samples import STATES, Look, Sample
from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, Room, SawCut, Window


def box(x: float, y: float, width: float, depth: float) -> PolygonGeometry:
    """A rectangle with its lower left corner at x, y; metres."""
    a, b = x + width, y + depth
    return PolygonGeometry((((x, y), (a, y), (a, b), (x, b), (x, y)),))


def row_of_rooms(widths: list[float], *, depth: float = 3.0) -> Floor:
    """Rooms side by side along x, a door in each wall between them, the way out at the left."""
    rooms, openings, x = [], [], 0.0
    for number, width in enumerate(widths):
        rooms.append(Room(f"room-{number}", box(x, 0.0, width, depth)))
        sides = (f"room-{number - 1}", f"room-{number}") if number else ("room-0",)
        kind = "door" if number else "outside"
        openings.append(Opening(f"door-{number}", kind, ((x, 1.0), (x, 1.9)), sides))
        x += width
    return Floor(tuple(rooms), tuple(openings))


def maybe(strategy: st.SearchStrategy) -> st.SearchStrategy:
    return st.none() | strategy


names = st.text("abcdefghij klmnop'é·", min_size=1, max_size=12)
figures = st.floats(0.5, 30.0)
floors = st.builds(
    row_of_rooms, st.lists(st.floats(1.0, 9.0), min_size=1, max_size=5), depth=st.floats(2.0, 8.0)
)
listed = st.builds(
    Content,
    substance=st.sampled_from(["iron(III) chloride", "manganese(II) chloride", "phosphoric acid"]),
    mass_percent_low=maybe(st.floats(0, 10)),
    mass_percent_high=maybe(st.floats(10, 30)),
)
stains = st.lists(
    st.builds(
        Stain,
        id=names,
        name=names,
        hcl_percent_low=maybe(st.floats(0, 10)),
        hcl_percent_high=maybe(st.floats(10, 20)),
        density_kg_l=maybe(st.floats(1.0, 1.4)),
        chromate=maybe(st.booleans()),
        oxidiser=maybe(st.booleans()),
        contents=st.lists(listed, max_size=2).map(tuple),
        sheet_read=st.sampled_from(["", "2027-05-01"]),
        lots=st.lists(names, max_size=2).map(tuple),
    ),
    max_size=3,
    unique_by=lambda stain: stain.id,
).map(tuple)
tools = st.builds(
    Tools,
    tank_l=maybe(st.floats(2, 20)),
    band_m=maybe(st.floats(0.3, 3)),
    spray_m2_min=maybe(st.floats(0.5, 8)),
    walk_m_min=maybe(st.floats(10, 80)),
    refill_min=maybe(st.floats(0, 10)),
    overlap_m=maybe(st.floats(0, 0.305)),
    tip_l_min=maybe(st.floats(0.1, 3)),
    spare_sprayer=st.booleans(),
)
wishes = st.builds(
    Wishes,
    certainty_percent=maybe(st.floats(50, 99.9)),
    spread_percent=maybe(st.floats(1, 60)),
    units=st.sampled_from(["us", "metric"]),
    notes=st.text("abc \n", max_size=20),
)


@st.composite
def coats_of(draw: st.DrawFn, stain_ids: list[str], not_with_acid: set[str]) -> tuple[Coat, ...]:
    ids = draw(st.lists(names, max_size=3, unique=True))
    return tuple(
        Coat(
            id=coat_id,
            stain=stain_id,
            cut=draw(st.sampled_from(["1:1", "1:2", "2:1", "1:1.5", "neat"])),
            m2_per_l=draw(maybe(st.floats(2, 15))),
            added_acid_fl_oz_per_gal=(
                None if stain_id in not_with_acid else draw(maybe(st.floats(0, 16)))
            ),
        )
        for coat_id in ids
        for stain_id in [draw(st.sampled_from(stain_ids))]
    )


@st.composite
def surveys_of(draw: st.DrawFn, room_ids: list[str]) -> Survey:
    found = st.builds(
        RoomSurvey,
        drop_s=maybe(st.floats(1, 90)),
        finish=maybe(st.sampled_from(["hard trowel", "trowel", "float", "broom"])),
        sun=st.booleans(),
        draught=st.booleans(),
    )
    return Survey(
        slab_c=draw(maybe(st.floats(5, 35))),
        air_c=draw(maybe(st.floats(5, 35))),
        rh_percent=draw(maybe(st.floats(5, 95))),
        air_speed_m_s=draw(maybe(st.floats(0, 5))),
        drop_s=draw(maybe(st.floats(1, 90))),
        rooms=draw(st.dictionaries(st.sampled_from(room_ids), found, max_size=3)),
    )


looks = st.builds(
    Look,
    state=st.sampled_from(STATES),
    lab=st.tuples(st.floats(5, 95), st.floats(-60, 60), st.floats(-60, 60)),
    error_de=maybe(st.floats(0, 9)),
    photo=st.just(""),
    light=maybe(st.sampled_from(["day", "lamp"])),
    spots=st.integers(1, 30),
    spread_lightness=maybe(st.floats(0, 9)),
)


@st.composite
def samples_of(draw: st.DrawFn, room_ids: list[str], coat_ids: list[str]) -> tuple[Sample, ...]:
    ids = draw(st.lists(names, max_size=3, unique=True))
    coat = st.none() | st.sampled_from(coat_ids) if coat_ids else st.none()
    room = draw(maybe(st.sampled_from(room_ids)))
    return tuple(
        Sample(
            id=sample_id,
            coat=draw(coat),
            room=room,
            m2_per_l=draw(maybe(st.floats(2, 15))),
            sheen_loss_min=draw(maybe(st.floats(1, 40))),
            verdict=draw(maybe(st.sampled_from(["light", "right", "dark"]))),
            over=ids[n - 1] if n and draw(st.booleans()) else None,
            cut=draw(maybe(st.sampled_from(["1:1", "1:4", "neat"]))),
            area_m2=draw(maybe(st.floats(0.1, 1))),
            dwell_h=draw(maybe(st.floats(1, 24))),
            scrubs=draw(maybe(st.integers(0, 9))),
            rag=draw(maybe(st.sampled_from(["clean", "grey", "coloured"]))),
            looks=draw(st.lists(looks, max_size=2).map(tuple)),
            approved_on=draw(st.sampled_from(["", "2027-05-04"])),
        )
        for n, sample_id in enumerate(ids)
    )


sites = st.builds(
    Site,
    house=maybe(st.sampled_from(["shut", "open"])),
    fans=maybe(st.integers(0, 4)),
    heater_kw=maybe(st.floats(0, 30)),
    heater_vented=maybe(st.booleans()),
    ground_c=maybe(st.floats(2, 20)),
)


@st.composite
def sightings_of(draw: st.DrawFn, coat_ids: list[str]) -> tuple[Sighting, ...]:
    coat = st.none() | st.sampled_from(coat_ids) if coat_ids else st.none()
    one = st.builds(
        Sighting,
        clock=st.sampled_from(WATCHABLE),
        after_min=st.floats(1, 3000),
        ended=st.booleans(),
        room=maybe(names),
        coat=coat,
        slab_c=maybe(st.floats(5, 35)),
        air_c=maybe(st.floats(5, 35)),
        rh_percent=maybe(st.floats(5, 95)),
        air_speed_m_s=maybe(st.floats(0, 5)),
        drop_s=maybe(st.floats(1, 60)),
    )
    return tuple(draw(st.lists(one, max_size=3)))


@st.composite
def jobs(draw: st.DrawFn) -> Job:
    """A sound job of any kind: bare ones, and ones that say everything."""
    floor = draw(floors)
    first = floor.rooms[0].polygon
    if draw(st.booleans()):
        floor = Floor(
            floor.rooms,
            floor.openings,
            (Fixture("tub", box(0.2, 0.2, 0.5, 0.5), "tub"),),
            (SawCut(((0.0, 2.0), (0.5, 2.0)), "cut"),),
            (Window((first.coordinates[0][0], first.coordinates[0][1]), 0.9, 1.2),),
            draw(maybe(st.floats(-180, 180))),
        )
    room_ids = [room.id for room in floor.rooms]
    its_stains = draw(stains)
    its_coats = draw(
        coats_of(
            [stain.id for stain in its_stains] or ["sand", "bark"],
            {stain.id for stain in its_stains if stain.chromate or stain.oxidiser},
        )
    )
    containers = st.builds(
        Container, size_l=st.floats(0.5, 20), price=st.sampled_from(["12.50", "60", "270.00"])
    )
    job = Job(
        version=1,
        floor=floor,
        exits=(Exit("way-out", "door-0"),),
        id=draw(st.sampled_from(["", "house-7"])),
        name=draw(st.just("") | names),
        starts_at=draw(maybe(st.just("2027-05-04T07:30:00-06:00"))),
        survey=draw(surveys_of(room_ids)),
        samples=draw(samples_of(room_ids, [coat.id for coat in its_coats])),
        stains=its_stains,
        coats=its_coats,
        crew=Crew(draw(st.sampled_from([1, 2])), draw(st.booleans())),
        tools=draw(tools),
        prices=Prices("USD", draw(st.lists(containers, max_size=3).map(tuple))),
        wishes=draw(wishes),
        site=draw(sites),
        seen=draw(sightings_of([coat.id for coat in its_coats])),
    )
    return draw(st.one_of(st.just(job), asked(job)))
