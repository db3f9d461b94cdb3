"""Sweeps as lateness: floor sprayed before, equivalent front, a body's way out, levelling."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely.affinity import rotate, scale, translate
from tests.shapes import AWKWARD, Place, box, door, outside, place, poly
from tests.spray.grounds import along, bare, field, ground, world_of
from tests.spray.hand_floors import BLOCKED_DOOR, CLOSET_BEHIND_A_GAP, L_ROOM, hall, moved
from tests.strategies.floors import floors
from tests.strategies.houses import houses

from farwall.errors import Unanswerable
from farwall.floor.nouns import Room
from farwall.floor.thresholds import join_thresholds
from farwall.spray.ball import ball_of
from farwall.spray.bound import least_front_m
from farwall.spray.building import build_world
from farwall.spray.front import (
    FROM_BEYOND,
    body_gets_everywhere,
    equivalent_front_m,
    front_of,
    kept_walkable,
    ranked,
    sprayed_before,
    step_for,
)
from farwall.spray.fronts import levelled_front, plain_fronts, smoothed_front
from farwall.spray.levelling import Stage, levelled, levelled_in_stages
from farwall.spray.starts import Starts
from farwall.spray.world import BODY_M

HAIR = 1.001
"""Floor is held half a millimetre off the walls."""


@pytest.mark.parametrize(("length", "width"), [(8, 2), (6, 3), (12, 10), (30, 15)])
@pytest.mark.parametrize("band_m", [0.6, 0.9, 1.0, 1.2])
def test_the_front_of_a_straight_sweep_is_the_width_by_hand(length, width, band_m):
    """By hand: toward its whole short wall, w metres on are w x width of floor, for every w."""
    here = ground(hall(length, width), band_m=band_m)
    found = bare(here, -along(here)).equivalent_m
    assert width / HAIR <= found <= width * HAIR


@pytest.mark.parametrize("band_m", [0.6, 1.0, 1.2])
def test_a_body_that_leaves_by_the_whole_wall_adds_what_it_stands_on(band_m):
    """By hand: the nearest stand is a body and less than a step off the wall; the floor from there
    to the wall is sprayed in one, so that so much more than w x width may come at once."""
    here = ground(hall(8, 2), band_m=band_m)
    found = front_of(here, -along(here), "straight").equivalent_m
    step = here.lattice.grid.step_m
    assert 2 / HAIR <= found <= 2 * (1 + (BODY_M + 1.5 * step) / band_m)


def test_a_sweep_across_the_hall_by_hand():
    """By hand: from one long wall to the other a metre on is 8 m2: four times the front."""
    here = ground(hall(8, 2))
    found = bare(here, here.lattice.xy[:, 1]).equivalent_m
    assert found == pytest.approx(8.0, rel=0.01)


def test_two_arms_at_once_add_up_by_hand():
    """By hand: a T of corridors 2 m wide, both arms swept together toward the stem: 4 m; swept
    along the whole bar first, then down the stem: 2 m, but across the middle a jump of an arm."""
    tee = place(
        [Room("tee", poly((-6, 0), (6, 0), (6, 2), (-6, 2)))],
        [outside("end", ((-1, 0), (1, 0)), "tee")],
    )
    here = ground(tee)
    together = bare(here, -np.abs(here.lattice.xy[:, 0]))
    assert together.equivalent_m == pytest.approx(4.0, rel=0.02)


def test_floor_sprayed_before_a_straight_front_by_hand():
    """By hand: x metres from the far wall of a hall 2 m wide are 2 x square metres."""
    here = ground(hall(8, 2))
    found = sprayed_before(here.lattice, along(here))
    assert found == pytest.approx(2 * along(here), abs=0.02)


@settings(max_examples=12)
@given(houses, st.floats(0, 6.28), st.floats(0, 1))
def test_so_much_floor_comes_before_a_place_as_it_says(job, angle, share):
    """Area {A < a} = a within a place: counted again from the lateness alone, without the places
    that the front is crossing (half the way to a neighbour, 0.71 of a step, on both sides)."""
    here = house_ground(job)
    lattice = here.lattice
    line = lattice.xy @ [np.cos(angle), np.sin(angle)]
    late = share * line - (1 - share) * here.out_m  # no steeper than 1
    found = sprayed_before(lattice, late)
    across = lattice.grid.step_m * np.sqrt(2) * 1.03 / 2
    order = np.argsort(late)
    floor = np.concatenate([[0.0], np.cumsum(lattice.area_m2[order])])
    low = floor[np.searchsorted(late[order], late - across, side="left")]
    high = floor[np.searchsorted(late[order], late + across, side="right")]
    assert (found >= low - 1e-6).all()
    assert (found <= high + 1e-6).all()


@settings(max_examples=12)
@given(houses)
def test_the_order_of_lateness_is_kept(job):
    here = house_ground(job)
    late = -here.out_m
    found = sprayed_before(here.lattice, late)
    order = np.argsort(late, kind="stable")
    assert (np.diff(found[order]) >= -1e-6).all()
    assert found.min() >= 0
    assert found.max() <= here.lattice.floor.area + 1e-6
    assert sprayed_before(here.lattice, 7 * late + 3) == pytest.approx(found, abs=1e-4)


def test_only_the_order_of_lateness_counts():
    here = ground(L_ROOM)
    plain = front_of(here, -here.out_m, "rings")
    told = front_of(here, -np.sqrt(here.out_m + 1), "rings")
    assert told.equivalent_m == pytest.approx(plain.equivalent_m, rel=0.03)


def left_m2(here, late):
    """For each place by how much it comes after the last minute somebody could spray it and leave.

    A stand is dry until the first floor under it is sprayed; somebody leaves over stands that are
    all dry. So a stand is of use until the largest, over all ways out, of the first to get wet.
    Floor near the way out is sprayed from beyond it.
    """
    stands = here.stands
    dry_until = late[stands.under].min(axis=1)
    use_until = np.where(stands.at_exit, dry_until, -np.inf)
    while True:
        better = np.maximum(use_until, np.minimum(dry_until, use_until[stands.near].max(axis=1)))
        if (better == use_until).all():
            break
        use_until = better
    use = np.full(len(late), -np.inf)
    use[stands.places] = use_until
    last = use[here.in_reach].max(axis=1)
    last[here.out_m <= FROM_BEYOND * here.ball.depth_m] = np.inf
    return np.where(np.isinf(last), 0.0, late - last)  # what no stand reaches is asked elsewhere


@settings(max_examples=15)
@given(floors(), st.integers(0, 2**32 - 1), st.booleans())
def test_whoever_sprays_a_place_can_still_leave_whatever_is_wished(drawn, seed, wild):
    floor, exits = drawn
    here = ground(build_world(join_thresholds(floor), exits))
    assume(body_gets_everywhere(here))
    dice = np.random.default_rng(seed)
    late = dice.uniform(0, 1, len(here.lattice)) if wild else here.out_m * dice.uniform(-1, 1)
    kept = kept_walkable(here, late)
    assert (kept <= late + 1e-12).all()
    assert left_m2(here, kept).max() <= 1e-9
    assert left_m2(here, front_of(here, late, "wished").late).max() <= 1e-6
    if wild:
        assert left_m2(here, late).max() > 0


@pytest.mark.parametrize("name", AWKWARD)
def test_whoever_sprays_a_place_can_still_leave_by_the_fronts_that_are_cut(name):
    here = ground(AWKWARD[name])
    plain = plain_fronts(here)
    for front in [*plain, levelled_front(here, plain), smoothed_front(here, plain)]:
        assert left_m2(here, front.late).max() <= 1e-6


@pytest.mark.parametrize("name", AWKWARD)
def test_where_a_stand_is_needed_a_later_one_lies_beside_it(name):
    """Even of a sweep that wished to end at the far wall each stand but the exit's keeps one beside
    it that is dry at least as long."""
    here = ground(AWKWARD[name])
    stands = here.stands
    dry_until = kept_walkable(here, here.out_m)[stands.under].min(axis=1)
    rise = dry_until[stands.near].max(axis=1) - dry_until
    assert (rise[~stands.at_exit] >= 0).all()


def test_a_sweep_that_shuts_nobody_in_is_left_alone():
    """Rings about the way out: whoever stands in one has the next between it and the exit."""
    here = ground(hall(8, 2))
    late = -along(here)
    kept = kept_walkable(here, late)
    inner = along(here) > BODY_M + 2 * here.lattice.grid.step_m
    assert kept[inner] == pytest.approx(late[inner], abs=1e-9)


def test_a_sweep_away_from_the_exit_is_turned_round():
    """From the exit to the far wall a body would stand on dry floor behind wet: all that it may
    keep is the floor at the far wall, last in vain; the exit still comes last."""
    here = ground(hall(8, 2))
    front = front_of(here, along(here), "wrong way")
    assert along(here)[front.before_m2.argmax()] < 1.0
    assert left_m2(here, front.late).max() <= 1e-6


def test_all_stands_beside_a_wide_exit_are_at_it():
    """Walks are sums of many steps: rounding must not choose one stand among equals."""
    here = ground(hall(30, 15))
    first = here.lattice.xy[here.stands.places][:, 0]
    beside = here.stands.at_exit
    assert (beside == (first <= first.min() + 1e-6)).all()
    assert beside.sum() > 20


@pytest.mark.parametrize("wide_m", [0.3, 0.4])
def test_a_doorway_too_narrow_for_a_body_is_refused(wide_m):
    assert not body_gets_everywhere(ground(_behind_a_gap(wide_m, deep_m=3.0)))


@pytest.mark.parametrize("wide_m", [0.7, 0.8, 0.9])
def test_a_doorway_wide_enough_is_not(wide_m):
    assert body_gets_everywhere(ground(_behind_a_gap(wide_m, deep_m=3.0)))


def test_a_closet_is_reached_through_a_gap():
    assert body_gets_everywhere(ground(CLOSET_BEHIND_A_GAP))


def test_a_tub_in_the_doorway_shuts_a_room():
    with pytest.raises(Unanswerable, match="falls apart"):
        ground(BLOCKED_DOOR)


def _behind_a_gap(wide_m: float, *, deep_m: float) -> Place:
    return place(
        [Room("front", box(0, 0, 4, 3)), Room("back", box(4, 0, 4 + deep_m, 3))],
        [
            outside("way-out", ((0, 1), (0, 2)), "front"),
            door("gap", ((4, 1), (4, 1 + wide_m)), "front", "back"),
        ],
    )


@pytest.mark.parametrize("name", ["plain room", "L-hall", "island kitchen", "walled rooms"])
@pytest.mark.parametrize("band_m", [0.6, 1.0])
def test_levelling_makes_no_front_longer(name, band_m):
    here = ground(AWKWARD[name], band_m=band_m)
    plain = plain_fronts(here)
    least = min(front.equivalent_m for front in plain)
    assert levelled(here, plain, rounds=6).equivalent_m <= least
    assert levelled_front(here, plain).equivalent_m <= least


def test_levelling_finds_a_shorter_front_than_rings_in_an_ell():
    """Recorded: rings come to 4.13 m in an ell 2 m wide, the levelled front to 3.04 m."""
    here = ground(L_ROOM)
    rings = front_of(here, -here.out_m, "rings")
    found = levelled_front(here, [rings])
    assert found.equivalent_m < 0.85 * rings.equivalent_m
    assert found.equivalent_m >= 2.0


def test_levelling_in_stages_finds_a_shorter_front_still():
    """Recorded: beside rings of 4.13 m and a levelled front of 3.04 m one of less than 3 m."""
    here = ground(L_ROOM)
    plain = plain_fronts(here)
    found = smoothed_front(here, plain)
    assert 2.0 <= found.equivalent_m < levelled_front(here, plain).equivalent_m


def test_levelling_in_stages_makes_no_front_longer_and_stops_where_it_may():
    here = ground(L_ROOM)
    rings = front_of(here, -here.out_m, "rings")
    stages = [Stage(3, 0.8, 1), Stage(3, 0.95, 1)]
    assert levelled_in_stages(here, [rings], stages, enough_m=9.0) is rings
    assert levelled_in_stages(here, [rings], stages).equivalent_m <= rings.equivalent_m


def test_a_levelled_sweep_says_its_own_front():
    here = ground(AWKWARD["round stair"])
    found = levelled_front(here, plain_fronts(here))
    again = sprayed_before(here.lattice, found.late)
    assert again == pytest.approx(found.before_m2)
    assert equivalent_front_m(again, here) == pytest.approx(found.equivalent_m)


MOVES = {
    "mirrored": lambda shape: scale(shape, -1, 1, origin=(0, 0)),
    "shifted": lambda shape: translate(shape, 31.7, -12.3),
    "turned by 90 degrees": lambda shape: rotate(shape, 90, origin=(0, 0)),
    "turned by 180 degrees": lambda shape: rotate(shape, 180, origin=(0, 0)),
}


def plain_m(of, band_m=1.0):
    return sorted(front.equivalent_m for front in plain_fronts(ground(of, band_m=band_m)))


@pytest.mark.parametrize("name", [*AWKWARD, "ell", "hall"])
@pytest.mark.parametrize("move", MOVES)
def test_a_floor_that_is_moved_keeps_its_plain_fronts(name, move):
    """To 1e-6; where places come together, rounding may yet tell them apart: worth up to 3e-3 of
    a long front (seen twice, 3e-4 and 2.4e-3), nothing of the shortest."""
    here = {"ell": L_ROOM, "hall": hall(8, 2), **AWKWARD}[name]
    ours, theirs = plain_m(here), plain_m(moved(here, MOVES[move]))
    assert theirs[0] == pytest.approx(ours[0], rel=1e-6)
    assert theirs == pytest.approx(ours, rel=3e-3)


@pytest.mark.parametrize("name", [*AWKWARD, "ell"])
def test_a_floor_turned_by_17_degrees_keeps_its_plain_fronts_roughly(name):
    """The lattice turns with the walls, but corners are kept to a tenth of a millimetre: places
    that came together no longer do. Most fronts agree to 1e-4, some differ by up to 3 %."""
    here = {"ell": L_ROOM, **AWKWARD}[name]
    there = moved(here, lambda shape: rotate(shape, 17, origin=(0, 0)))
    assert plain_m(there) == pytest.approx(plain_m(here), rel=0.05)


@pytest.mark.parametrize("name", [*AWKWARD, "ell", "hall", "large room"])
@pytest.mark.parametrize("band_m", [0.6, 0.9, 1.0, 1.2])
def test_no_front_undercuts_the_bound(name, band_m):
    of = {"ell": L_ROOM, "hall": hall(8, 2), "large room": hall(12, 10), **AWKWARD}[name]
    _insist_on_the_bound(field(of, band_m=band_m), band_m)


@settings(max_examples=15)
@given(houses, st.sampled_from([0.6, 0.9, 1.2]))
def test_no_front_of_any_house_undercuts_the_bound(job, band_m):
    of = world_of(job)
    out = next(seam for seam in of.seams if seam.is_way_out)
    _insist_on_the_bound(field(of, out.a, by=out.id, band_m=band_m), band_m)


def _insist_on_the_bound(here, band_m):
    bound = least_front_m(here.ground, band_m)
    fronts = plain_fronts(here.ground)
    assert bound > 0
    for front in [*fronts, levelled_front(here.ground, fronts)]:
        assert front.equivalent_m >= bound * (1 - 1e-9)


def test_a_straight_front_undercuts_no_bound_though_nobody_walks_it():
    """The bound of a rectangle is met by a straight sweep: it cannot be raised."""
    here = field(hall(12, 5))
    found = bare(here.ground, -along(here.ground)).equivalent_m
    bound = least_front_m(here.ground, 1.0)
    assert bound * (1 - 1e-9) <= found <= bound * HAIR


def test_places_see_each_other_up_to_a_tenth_more_than_a_band_by_hand():
    """By hand: at 0.2 m a step, 28 places lie from 1 m to 1.1 m away: (5, 0) 4 times, (3, 4),
    (5, 1) and (5, 2) 8 times each."""
    ball = ball_of(ground(hall(8, 4)).lattice, 1.0)
    assert ball.away_m.max() <= 1.1
    assert (ball.away_m > 0.99).sum(axis=1).max() == 4 + 8 + 8 + 8


def test_on_a_floor_of_few_places_every_pair_within_reach_is_looked_at():
    """Counted pair by pair: hardly any place of a closet has a rim about it, and levelling found
    fronts 15 % shorter than they are between the pairs that were left out."""
    lattice = ground(hall(2.4, 0.8)).lattice
    ball = ball_of(lattice, 1.0)
    gap = np.hypot(*(lattice.xy[:, None] - lattice.xy).transpose(2, 0, 1))
    within = (gap > 0) & (gap <= 1.1 + 1e-9)
    assert len(lattice) < 100
    assert ((ball.away_m > 0).sum(axis=1) == within.sum(axis=1)).all()


@pytest.mark.parametrize(("band_m", "seen"), [(0.6, 0.96), (0.8, 0.96), (1.0, 0.98), (1.2, 0.98)])
@pytest.mark.parametrize("degrees", range(0, 90, 5))
def test_a_front_askew_to_the_lattice_is_seen_nearly_in_full(degrees, band_m, seen):
    """By hand: an even slope of 1 falls by w over w, whichever way it leans."""
    ball = ball_of(ground(hall(6, 4), band_m=band_m).lattice, band_m)
    lattice = ground(hall(6, 4), band_m=band_m).lattice
    late = lattice.xy @ [np.cos(np.radians(degrees)), np.sin(np.radians(degrees))]
    fall = (late[ball.there] - late[:, None]) / np.maximum(ball.away_m, band_m)
    assert seen <= fall.max() <= 1 + 1e-9


@given(st.floats(4, 400), st.floats(0.4, 1.5))
def test_a_band_is_a_whole_number_of_steps_deep(floor_m2, band_m):
    """So that two places lie just a band apart: a straight front is else seen too short."""
    steps = band_m / step_for(floor_m2, band_m)
    assert steps == pytest.approx(round(steps), abs=1e-9)
    assert steps >= 1


@given(st.floats(4, 50), st.floats(0.4, 1.5))
def test_a_room_has_at_least_four_steps_a_band(floor_m2, band_m):
    assume(floor_m2 < 1200 * (band_m / 4) ** 2)
    step = step_for(floor_m2, band_m)
    assert step <= band_m / 4 * (1 + 1e-9)
    assert step <= max(0.21, np.sqrt(floor_m2 / 1200)) * (1 + 1e-9)


def test_stretched_rings_about_the_exit_end_there_and_are_nearly_straight():
    """By hand: where a metre across counts a tenth, floor 4 m down the hall comes all but at once:
    from its middle to its wall lie 0.9 m, the root of 4² + 0.09² is 1 mm more than 4."""
    here = ground(hall(8, 2))
    names = dict(Starts(here).stretched())
    late = names["about 0 1 0.1"]
    assert here.at_exit[late.argmax()]
    column = np.abs(along(here) - along(here)[np.argmin(np.abs(along(here) - 4))]) < 1e-6
    assert np.ptp(late[column]) < 0.1
    assert {name.split()[0] for name in names} == {"about", "from"}


def test_starts_lead_toward_the_exit():
    """The straight sweep that ends at the far wall is not offered."""
    here = ground(hall(8, 2))
    names = [name for name, _ in Starts(here).plain()]
    assert "straight -u" in names
    assert "straight u" not in names
    assert names[-1] == "rings"


def test_floor_that_comes_last_in_one_counts_whole_by_hand():
    """By hand: a hall of 3 m x 1 m whose last metre comes in one, 5 columns of 0.2 m: with the
    farthest of them 3 m2 are sprayed, a metre before it 1.1 m2. Its floor ends half a step on:
    1.9 m2 within 1.1 m, 1.73 m. Told by the middle of the strip alone (2.5 m2) it were 1.4 m."""
    here = ground(hall(3, 1))
    before = sprayed_before(here.lattice, -np.maximum(along(here), 1.0))
    assert equivalent_front_m(before, here) == pytest.approx(1.9 / 1.1, abs=0.01)


@pytest.mark.parametrize("sign", [1, -1])
def test_the_first_floor_counts_as_the_last_does_by_hand(sign):
    """By hand: the same hall swept the other way round has the same front: nothing is sprayed half
    a step before its first places."""
    here = ground(hall(3, 1))
    before = sprayed_before(here.lattice, sign * np.maximum(along(here), 1.0))
    assert equivalent_front_m(before, here) == pytest.approx(1.9 / 1.1, abs=0.01)


def test_floor_that_comes_all_in_one_by_hand():
    """By hand: 3 m2 while the front moves a depth of 1 m on: 3 m."""
    here = ground(hall(3, 1))
    before = sprayed_before(here.lattice, np.zeros(len(here.lattice)))
    assert equivalent_front_m(before, here) == pytest.approx(3.0, abs=0.01)


def house_ground(job):
    of = world_of(job)
    out = next(seam for seam in of.seams if seam.is_way_out)
    return ground(of, out.a, by=out.id)


@given(st.lists(st.integers(-5, 5).map(float), min_size=1))
def test_ranks_are_those_of_the_library(values):
    """Whatever the order of equal ones: as `numpy.unique` counts them."""
    _, ranks = np.unique(np.array(values), return_inverse=True)
    assert ranked(np.array(values)).tolist() == ranks.tolist()
