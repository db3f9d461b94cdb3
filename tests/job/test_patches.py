"""Patches on the planned floor: left dry, parted at the joint of a pour, bound by their drops."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.go.jobs import ROOMS, surveyed
from tests.shapes import TWO_ROOMS, box, place
from tests.spray.hand_floors import job, row

from farwall.errors import Unanswerable
from farwall.facts.job import RoomSurvey, Survey
from farwall.facts.plain import plain
from farwall.facts.slab import Patch
from farwall.floor.nouns import Window
from farwall.floor.thresholds import join_thresholds
from farwall.job.go import go_or_no_go
from farwall.job.ground import ground_of, world_of
from farwall.job.patches import JOINT, planned_floor
from farwall.job.plan_job import plan_job
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.building import build_world
from farwall.spray.check import check_plan

DRY = "leave for another colour"
STAINED = "stain and disclose"
TRENCH = Patch("t", "back", "trench", None, 3.0, box(1, 4, 1.5, 6), STAINED)
POUR = Patch("new", "back", "pour", None, 13.0, box(2, 3, 4, 6), STAINED)


def told(*patches, **more):
    return surveyed(patched=True, patches=patches, **more)


def checked(of):
    """The plan of a job, and what the checker finds in it beside the job."""
    plan = plan_job(of)
    return plan, check_plan(plan_to_dict(plan), job=plain(of, omit_empty=True))


def refused_or_none(of):
    """Why there is no plan of a job; None where there is one."""
    try:
        plan_job(of)
    except Unanswerable as no:
        return no
    return None


def bare(world):
    """Seams and pieces by what they were before anything was told of suction and windows."""
    return (
        [(s.id, s.kind, s.line, s.a, s.b, s.exit, s.sight) for s in world.seams],
        [(p.id, p.room, p.shape.wkb, p.pour) for p in world.pieces.values()],
    )


def test_a_patch_left_dry_is_kept_dry_and_walked_around():
    of = told(replace(TRENCH, decision=DRY))
    plan, faults = checked(of)
    assert not faults
    wet = shapely.union_all([b.polygon.shape for f in plan.fields for b in f.bands])
    assert wet.intersection(TRENCH.polygon.shape).area < 1e-6
    assert sum(f.area_m2 for f in plan.fields) == pytest.approx(24 - 1.0, abs=1e-3)
    assert [one.kind for one in plan.inputs.fixtures] == ["trench"]
    assert "kept" not in plan.patches[0].what
    assert "Left dry" in plan.patches[0].what
    assert "may be walked on" in plan.patches[0].what


def test_its_drop_says_nothing_of_the_floor_that_is_stained():
    """A drop that stands for ever on a patch that is left dry is no matter; stained, it is a no."""
    closed = replace(TRENCH, drop_s=90.0)
    assert {f.verdict for f in plan_job(told(replace(closed, decision=DRY))).fields} == {"fits"}
    of = told(closed)
    by_room = {f.rooms: f for f in plan_job(of).fields}
    assert by_room[("back",)].verdict == "cannot"
    assert "trench t" in by_room[("back",)].remedies[0].what
    assert by_room[("front",)].verdict == "fits"
    assert go_or_no_go(of).verdict == "no"
    assert go_or_no_go(told(replace(closed, decision=DRY))).verdict == "go with"


def test_a_trench_left_dry_from_wall_to_wall_is_refused_by_its_name():
    across = Patch("drain", "front", "trench", polygon=box(0, 1, 4, 1.5), decision=DRY)
    with pytest.raises(Unanswerable, match="past trench drain") as refused:
        plan_job(told(across))
    assert "stain and disclose" in " ".join(refused.value.remedies)
    assert {f.verdict for f in plan_job(told(replace(across, decision=STAINED))).fields} == {"fits"}


def test_a_patch_left_dry_before_a_door_is_named_in_the_refusal():
    """By hand: of the door's 0.8 m a patch keeps 0.3 m, and 0.5 m let nobody through."""
    before = Patch("sill", "back", polygon=box(1.9, 3, 2.3, 3.5), decision=DRY)
    with pytest.raises(Unanswerable) as refused:
        plan_job(told(before))
    assert "patch sill" in refused.value.remedies[-1]
    with pytest.raises(Unanswerable) as refused:
        plan_job(told(), order=("front", "back"))
    assert "left dry" not in " ".join(refused.value.remedies)


def test_a_quick_patch_bounds_the_edges_that_cross_it_and_no_others():
    """The open time of the room stays; on the trench the shorter one of its own 3 s holds."""
    plan, faults = checked(told(TRENCH))
    assert not faults
    field = next(f for f in plan.fields if f.rooms == ("back",))
    own = {one.patch: one for one in field.open_times}
    assert set(own) == {"", "t"}
    assert own["t"].low < own[""].low
    assert own["t"].polygon.shape.equals(TRENCH.polygon.shape)
    plain_one = next(f for f in plan_job(told()).fields if f.rooms == ("back",))
    assert own[""].low == plain_one.open_times[0].low
    assert all(band.edge_age_min <= own[""].low for band in field.bands)
    assert field.tightest.low_min in {own[""].low, own["t"].low}


def test_a_slow_patch_bounds_nothing():
    slow = replace(TRENCH, drop_s=40.0)
    field = next(f for f in plan_job(told(slow)).fields if f.rooms == ("back",))
    assert [one.patch for one in field.open_times] == [""]


def test_a_dead_edge_on_a_patch_is_seen_by_the_checker_too():
    """A patch that drinks at once lets its edges die: solver and checker say so alike."""
    of = told(replace(TRENCH, drop_s=0.05))
    plan, faults = checked(of)
    field = next(f for f in plan.fields if f.rooms == ("back",))
    assert field.verdict != "fits" or field.tightest.spare_min >= 0
    dead = {fault.field for fault in faults if fault.code == "dead-edge"}
    assert (field.id in dead) == (field.tightest.spare_min < 0)


def test_the_joint_of_a_later_pour_is_a_stop_line():
    """By hand: the pour is the right half of the back room, its joint 3 m long at x = 2."""
    plan, faults = checked(told(POUR))
    assert not faults
    back = [f for f in plan.fields if f.rooms == ("back",)]
    assert sorted(f.area_m2 for f in back) == pytest.approx([6.0, 6.0], abs=0.01)
    joint = {s.line for f in back for s in f.stop_lines if s.id == f"{JOINT}new"}
    assert len(joint) == 1
    assert shapely.LineString(joint.pop()).length == pytest.approx(3.0, abs=0.02)


def test_a_pour_inside_its_room_has_no_joint_to_stop_at_and_is_disclosed():
    inside = replace(POUR, polygon=box(1, 4, 2, 5))
    of = told(inside)
    assert planned_floor(of).saw_cuts == ()
    plan, faults = checked(of)
    assert not faults
    assert "will not match" in plan.patches[0].disclosure


def test_a_small_pour_shares_no_field_with_the_old_floor_however_alike_it_drinks():
    """By hand: 3 m² would join the rest of its room, were it only a saw cut between them."""
    strip = replace(POUR, drop_s=12.0, polygon=box(3, 3, 4, 6))
    plan = plan_job(told(strip))
    assert len([f for f in plan.fields if f.rooms == ("back",)]) == 2


def test_a_joint_that_leaves_no_half_of_a_doorway_is_disclosed_and_told():
    """By hand: the door is 0.8 m wide; at x = 2.5 neither half lets a body through."""
    plan, faults = checked(told(replace(POUR, polygon=box(2.5, 3, 4, 6))))
    assert not faults
    assert len([f for f in plan.fields if f.rooms == ("back",)]) == 1
    assert any(one.startswith(f"Nothing can stop at the {JOINT}new") for one in plan.warnings)


def test_a_plan_made_before_a_patch_was_left_dry_is_another_jobs():
    plan = plan_to_dict(plan_job(told()))
    of = plain(told(replace(TRENCH, decision=DRY)), omit_empty=True)
    assert {fault.code for fault in check_plan(plan, job=of)} == {"other-job"}


def test_a_cut_off_the_joint_is_none_of_the_jobs():
    plan = plan_to_dict(plan_job(told(POUR)))
    of = plain(told(replace(POUR, polygon=box(2.5, 3, 4, 6))), omit_empty=True)
    assert "other-job" in {fault.code for fault in check_plan(plan, job=of)}


@pytest.mark.parametrize("kind", ["door", "cased", "wide"])
def test_go_and_plan_agree_on_leaps(kind):
    """By hand: 6 s and 30 s are five times apart. A wide opening cannot part them: the plan tells
    the ratio and what to do, and so does its own go."""
    rooms = {"a": RoomSurvey(drop_s=6.0), "b": RoomSurvey(drop_s=30.0)}
    of = job(row(3, 3, kind=kind), survey=Survey(rooms=rooms))
    plan = plan_job(of)
    leap = next(one for one in go_or_no_go(of).findings if one.rule == "suction leaps")
    inside = [one for one in plan.go.findings if one.rule == "suction in one field"]
    together = [f for f in plan.fields if len(f.rooms) > 1]
    assert bool(together) == bool(inside) == (kind == "wide")
    assert ("too wide" in leap.reason) == (kind == "wide")
    warned = [one for one in plan.warnings if "5.0 times" in one and "disclose" in one]
    assert bool(warned) == (kind == "wide")


def test_a_patch_that_leaps_from_its_room_is_told_in_go_and_plan():
    """By hand: the room's 12 s are four times the trench's 3 s, no more; five times 2.4 s."""
    assert not [o for o in plan_job(told(TRENCH)).go.findings if o.rule.startswith("suction")]
    of = told(replace(TRENCH, drop_s=2.4))
    rules = {one.rule: one for one in plan_job(of).go.findings}
    assert "trench t" in rules["suction leaps"].reason
    assert "2.4 to 12 s, 5.0 times" in rules["suction in one field"].reason
    apart = told(replace(POUR, drop_s=2.4))
    assert "suction in one field" not in {one.rule for one in plan_job(apart).go.findings}


def test_every_decision_has_its_words_in_go_and_plan():
    decisions = (STAINED, DRY, "grind first", None)
    patches = tuple(
        Patch(f"p{n}", "back", polygon=box(n * 0.6 + 0.5, 4, n * 0.6 + 0.8, 4.3), decision=one)
        for n, one in enumerate(decisions)
    )
    of = told(*patches)
    change = next(one for one in go_or_no_go(of).findings if one.rule == "patches").change
    for n in range(4):
        assert f"p{n}: " in change
    plan = plan_job(of)
    assert [one.sprayed for one in plan.patches] == [True, False, True, True]
    assert [one.decision for one in plan.patches] == [STAINED, DRY, "grind first", ""]
    assert "silica" in plan.patches[2].what
    assert "silica" in change
    assert all("will not match" in one.disclosure for one in plan.patches)


def test_without_windows_drops_and_patches_the_house_is_what_it_was():
    """To the last digit: neither cost nor rule has anything to hold on to."""
    of = job(TWO_ROOMS)
    floor = join_thresholds(of.floor)
    assert planned_floor(of) == floor
    assert bare(world_of(of, floor)) == bare(build_world(floor, of.exits))
    assert {s.seen for f in plan_job(of).fields for s in f.stop_lines} == {None}


def test_the_stop_lines_of_a_plan_say_whether_they_are_seen():
    """By hand: the window of the front room looks at the leaf; the back room's does not see the
    sill of the way out."""
    front = Window(((0.5, 0), (3.5, 0)), room="front", main=True)
    floor = replace(TWO_ROOMS.floor, windows=(front,))
    plan = plan_job(job(place(list(floor.rooms), list(floor.openings))))
    assert {s.seen for f in plan.fields for s in f.stop_lines} == {None}
    of = replace(job(TWO_ROOMS), floor=floor)
    seen = {s.id: s.seen for f in plan_job(of).fields for s in f.stop_lines}
    assert seen["between"] is True
    behind = replace(front, line=((0.5, 6), (3.5, 6)), room="back")
    of = replace(of, floor=replace(floor, windows=(behind,)))
    seen = {s.id: s.seen for f in plan_job(of).fields for s in f.stop_lines}
    assert seen == {"between": True, "way-out": False}


corners = st.tuples(st.floats(0.3, 3.2), st.floats(3.3, 5.2))


@settings(max_examples=12, deadline=None)
@given(corners, st.floats(0.2, 0.5), st.floats(0.2, 0.7), st.sampled_from([DRY, STAINED, None]))
def test_wherever_a_patch_lies_the_plan_holds_to_it(at, wide, high, decision):
    """A law: left dry no stain lies on it; stained along, the floor is done whole.

    Left dry where nobody gets past it to the door, it is named in the no.
    """
    x, y = round(at[0], 2), round(at[1], 2)
    shape = box(x, y, round(x + wide, 2), round(y + high, 2))
    patch = Patch("p", "back", "patch", None, 5.0, shape, decision)
    # Who steps through the door, from (2, 3) to (2.8, 3), takes half a metre before it.
    if decision == DRY and shape.shape.distance(shapely.LineString([(2, 3), (2.8, 3)])) < 0.52:
        no = refused_or_none(told(patch, rooms=ROOMS))
        if no is not None:
            assert any("The plan walks around patch p" in one for one in no.remedies)
            return
    plan, faults = checked(told(patch, rooms=ROOMS))
    assert not [fault for fault in faults if fault.code != "dead-edge"]
    wet = shapely.union_all([b.polygon.shape for f in plan.fields for b in f.bands])
    on_it = wet.intersection(shape.shape).area
    expected = 0.0 if decision == DRY else shape.shape.area
    assert on_it == pytest.approx(expected, abs=0.005)


def test_lasting_counts_a_large_quick_patch_in_first_guesses():
    """By hand: 6 of 12 m² are more than a twentieth of the room, 0.25 are less."""
    low = {}
    for name, shape in {"half": box(0, 3, 2, 6), "spot": box(0, 3, 0.5, 3.5)}.items():
        ground = ground_of(told(replace(TRENCH, polygon=shape)), None)
        low[name] = ground.lasting.shortest(("back",), ground.settled.coats[0], 0.0).low
    assert low["half"] < low["spot"]
