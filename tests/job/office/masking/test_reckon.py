"""What is masked: heights by rule, laps and loss, jambs by side, stages of the build."""

import json
import math
from dataclasses import replace

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.bench.generator import house_of
from farwall.facts.job import Job
from farwall.facts.plain import plain
from farwall.facts.supplies import Masking, MaskItem, Supplies
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Exit, Fixture, Floor, Opening, Room
from farwall.job.office.masking import masked_said
from farwall.job.office.masking.reckon import masked_in
from farwall.phrasebook import said_whole, speaking
from farwall.units import M_PER_IN


def box(x0, y0, x1, y1):
    return polygon_geometry(shapely.box(x0, y0, x1, y1))


def house(**masking):
    """Two rooms of 4 by 3 m, a door of 0.80 m between them in 12 cm of wall, one of 0.90 m out;
    cabinets 0.6 m deep along the north wall of the second."""
    floor = Floor(
        (Room("a", box(0, 0, 4, 3), "Study"), Room("b", box(4.12, 0, 8.12, 3), "Kitchen")),
        (
            Opening("d", "door", ((4.06, 1.0), (4.06, 1.8)), ("a", "b"), 0.8,
                    box(4.0, 1.0, 4.12, 1.8)),
            Opening("out", "outside", ((1.0, 0.0), (1.9, 0.0)), ("a",), 0.9),
        ),
        (Fixture("cabinets", box(4.12, 2.4, 8.12, 3)),),
    )  # fmt: skip
    return Job(1, floor, (Exit("e", "out"),), supplies=Supplies(masking=Masking(**masking)))


def test_two_rooms_by_hand():
    """Study: 14 - 0.8 - 0.9 = 12.3 of wall, reveals 2 * 0.06 at the door and 2 * 0.06 taken at the
    way out: 12.54. Kitchen: 4 + 2.4 + 2.4 - 0.8 = 8.0 of wall, 4.0 of kick, 0.12: 12.12.
    Film of the study: joins at both sides of both openings, 12.3 * 48 in and 4 laps of 6 in, and
    two frames: (2 * 80 in + 0.8) and (2 * 80 in + 0.9), 12 in of cling film each."""
    found = masked_in(house(stage="after paint"))
    study, kitchen = found.rooms
    assert study.wall_m == pytest.approx(12.54)
    assert kitchen.wall_m == pytest.approx(12.12)
    assert kitchen.kick_m == pytest.approx(4.0)
    high, lap, door = 1.2192, 0.1524, 2.032
    film = (12.3 * high + 4 * lap * high + (4 * door + 1.7) * 0.3048) / 0.9
    assert study.film_m2 == pytest.approx(film)
    tape = (12.3 + 4 * high + 12.3 * 0.1524) / 0.9
    assert study.tape_m == pytest.approx(tape)
    assert (study.jambs, kitchen.jambs, found.jambs) == (2, 1, 3)
    assert (found.doors, found.jamb_feet, found.dams) == (2, 6, 1)
    assert found.gap_m == pytest.approx(4 * door + 1.7)
    assert found.dam_m == pytest.approx(0.9 + 2 * 0.3048)
    assert (study.corners, kitchen.corners) == (4, 4)


def test_film_on_cabinets_ends_at_the_counter_and_laps_the_film_of_the_wall():
    found = masked_in(house(stage="after paint"))
    kitchen = found.rooms[1]
    (foot,) = (one for one in kitchen.runs if one.what == "cabinet")
    assert foot.film_m == pytest.approx(36 * M_PER_IN)
    # A join at either side of the door and at either end of the cabinets.
    assert kitchen.joins == 4


def test_a_room_has_its_own_height_before_the_house_and_the_house_before_the_stage():
    def heights(**masking):
        return [one.film_m for one in masked_in(house(**masking)).rooms]

    assert heights(stage="after paint") == pytest.approx([1.2192, 1.2192])
    assert heights(stage="before mud") == pytest.approx([0.6096, 0.6096])
    assert heights(stage="before board") == [0, 0]
    assert heights(stage="before board", film_m=0.5) == [0.5, 0.5]
    assert heights(stage="before mud", film_m=0.9, room_film_m={"b": 2.0}) == [0.9, 2.0]


def test_before_mud_inner_frames_and_cabinets_do_not_stand_yet():
    found = masked_in(house(stage="before mud"))
    assert [(one.opening, one.room) for room in found.rooms for one in room.sides] == [("out", "a")]
    assert found.kick_m == 0
    assert found.rooms[1].wall_m == pytest.approx(8.0)
    assert any("cabinets" in one for one in found.warnings)


def test_before_board_no_wall_is_masked_but_the_outside_door_is():
    found = masked_in(house(stage="before board"))
    assert found.corners == 0
    assert found.jambs == 1
    assert found.wall_m == pytest.approx(2 * 0.06)
    assert found.film_lengths_m == ()


def test_an_untold_stage_is_the_one_with_most_to_mask_and_is_asked_for():
    untold, told = masked_in(house()), masked_in(house(stage="after paint"))
    assert untold.wall_m == told.wall_m
    assert any("was not told" in one for one in untold.warnings)
    assert told.warnings == ()


def test_beside_metal_that_stays_film_stands_to_full_height_as_far_as_a_wand_reaches():
    """A post of steel at the middle of the west wall of the study, 3 m long: 1.2 m to either side
    leave 0.3 m at each end, which goes with it: the whole wall."""
    steel = MaskItem("metal", "a", (0.0, 1.5))
    found = masked_in(house(stage="after paint", items=(steel,)))
    tall = [one for one in found.rooms[0].runs if one.why == "beside metal"]
    assert [round(one.length_m, 4) for one in tall] == [3.0]
    assert tall[0].film_m == pytest.approx(96 * M_PER_IN)
    gone = masked_in(house(stage="after paint", items=(replace(steel, take_out=True),)))
    assert all(one.why != "beside metal" for one in gone.rooms[0].runs)


def test_a_long_wall_is_tall_only_beside_metal_by_hand():
    """North wall of the study, 4 m: metal at 1.0 m from its west end reaches to 2.2 m."""
    found = masked_in(house(stage="after paint", items=(MaskItem("metal", "a", (1.0, 3.0)),)))
    north = [one for one in found.rooms[0].runs if all(p[1] == 3.0 for p in one.line)]
    assert sorted((round(one.length_m, 4), one.why) for one in north) == [
        (1.8, "stage"), (2.2, "beside metal"),
    ]  # fmt: skip


def test_metal_without_a_place_asks_where_it_stands():
    found = masked_in(house(stage="after paint", items=(MaskItem("metal", "a"),)))
    assert any("metal a in Study" in one for one in found.warnings)


def test_what_is_taken_out_takes_no_film():
    kept, gone = (
        masked_in(house(stage="after paint", items=(MaskItem("register", "a", take_out=out),)))
        for out in (False, True)
    )
    bare = masked_in(house(stage="after paint"))
    assert kept.film_m2 == pytest.approx(bare.film_m2 + 0.1 / 0.9)
    assert gone.film_m2 == pytest.approx(bare.film_m2)


def test_a_room_left_out_is_neither_walled_nor_wrapped_but_its_outside_door_is_dammed():
    found = masked_in(house(stage="after paint", not_masked=("a",)))
    assert [one.room for one in found.rooms] == ["b"]
    assert (found.jambs, found.dams, found.doors) == (1, 1, 1)


def test_a_dam_of_the_list_counts_beside_those_of_the_drawing_by_hand():
    found = masked_in(house(items=(MaskItem("outside door", "b", length_m=1.0, count=2),)))
    assert found.dams == 3
    assert found.dam_m == pytest.approx(0.9 + 2 * 1.0 + 3 * 0.6096)


def test_a_kick_of_the_list_is_masked_beside_those_of_the_plan():
    found = masked_in(house(stage="after paint", items=(MaskItem("kick", "a", length_m=2.0),)))
    assert found.kick_m == pytest.approx(6.0)
    assert found.wall_m == pytest.approx(12.54 + 12.12 + 2.0)


def test_low_masking_may_be_of_paper_and_is_no_film():
    found = masked_in(house(stage="after paint", film_m=0.3))
    assert all(high > 0.3048 for high, _ in found.film_lengths_m)
    assert found.paper_m > 0


JOBS = st.builds(
    lambda rooms, seed, stage: replace(
        house_of(rooms, seed).job, supplies=Supplies(masking=Masking(stage=stage))
    ),
    st.integers(3, 12), st.integers(0, 200),
    st.sampled_from(["before board", "before mud", "after paint"]),
)  # fmt: skip


@settings(max_examples=20)
@given(JOBS)
def test_the_figures_in_all_are_the_sums_of_the_rooms(job):
    found = masked_in(job)
    assert found.wall_m == pytest.approx(math.fsum(one.wall_m for one in found.rooms))
    assert found.jambs == sum(one.jambs for one in found.rooms)
    hung = sum(high * long for high, long in found.film_lengths_m)
    wrap = found.wrap_m * 0.3048 / 0.9
    paper = 0.1524  # laps no taller than the paper are left out of both
    dams = found.dam_m * 1.2192 / 0.9
    assert found.film_m2 == pytest.approx(hung + wrap + dams, abs=paper)


@settings(max_examples=20)
@given(JOBS, st.randoms(use_true_random=False))
def test_the_order_of_rooms_changes_no_figure(job, dice):
    floor = job.floor
    rooms = tuple(dice.sample(floor.rooms, len(floor.rooms)))
    shuffled = masked_in(replace(job, floor=replace(floor, rooms=rooms)))
    found = masked_in(job)
    assert shuffled.film_m2 == pytest.approx(found.film_m2)
    assert shuffled.tape_m == pytest.approx(found.tape_m)
    assert {one.room: one.joins for one in shuffled.rooms} == {
        one.room: one.joins for one in found.rooms
    }


@settings(max_examples=10)
@given(JOBS)
def test_later_stages_have_more_to_mask(job):
    def wall_m(stage):
        masking = replace(job.supplies.masking, stage=stage)
        return masked_in(replace(job, supplies=Supplies(masking=masking))).wall_m

    assert wall_m("before board") <= wall_m("before mud") <= wall_m("after paint")


def test_all_that_is_found_is_plain_json():
    found = masked_in(house(items=(MaskItem("drain", "a", (1.0, 1.0)),)))
    assert json.loads(json.dumps(plain(found)))["items"][0]["letter"] == "a"


def test_the_terminal_tells_rooms_things_and_what_is_not_told():
    items = (MaskItem("register", "a", count=2, take_out=True),)
    masked = masked_in(house(items=items))
    assert any(" m (" in line for line in masked_said(masked, us=False))
    told = masked_said(masked)
    assert told[0] == "81 ft (24.7 m) of wall, 3 sides of frames, 1 outside door to dam"
    assert any(one.startswith("1 Study: 41 ft (12.5 m), film 48 in (1.22 m)") for one in told)
    assert "a take out 2 register, Study" in told
    assert "was not told" in told[-1]


@pytest.mark.parametrize(("count", "many"), [(1, "1 opening lies"), (2, "2 openings lie")])
def test_openings_that_lie_on_no_wall_are_told_in_both_languages(count, many):
    job = house(stage="after paint")
    lost = tuple(
        Opening(f"lost-{n}", "door", ((2.0, 1.2 + n), (2.8, 1.2 + n)), ("a", "b"), 0.8)
        for n in range(count)
    )
    floor = replace(job.floor, openings=(*job.floor.openings, *lost))
    (told,) = masked_in(replace(job, floor=floor)).warnings
    assert told.startswith(many)
    with speaking("es"):
        assert said_whole(told)
