"""A planned field taken up again from its bands alone."""

from dataclasses import replace

import pytest
from tests.midday import HOUSES, day_of

from farwall.errors import Unanswerable
from farwall.floor.nouns import Floor
from farwall.spray.building import build_world
from farwall.spray.edges import ages_by_pass_min
from farwall.spray.kept import KeptSweeper, borders_of, exit_of, kept_sweep, pieces_of


def world_of(plan):
    given = plan.inputs
    floor = Floor(given.floor.rooms, given.openings, given.fixtures, given.saw_cuts)
    return build_world(floor, given.exits)


def kept(plan, field, world, done=None):
    return kept_sweep(
        world,
        field,
        pieces_of(world, field),
        tools=plan.inputs.tools,
        l_per_m2=plan.inputs.l_per_m2[field.coat],
        done=done,
    )


@pytest.mark.parametrize("house", HOUSES)
def test_its_edges_are_as_old_as_those_of_the_plan(house):
    plan = day_of(house)
    world = world_of(plan)
    for field in plan.fields:
        sweep = kept(plan, field, world)
        times = [(b.start_min, b.end_min - b.start_min) for b in field.bands]
        ages = ages_by_pass_min(sweep.moments, times)
        assert ages == pytest.approx([b.edge_age_min for b in field.bands], abs=0.001)


@pytest.mark.parametrize("house", HOUSES)
def test_its_pieces_and_its_way_out_are_those_of_the_plan(house):
    """Every piece of the floor belongs to one field of a coat."""
    plan = day_of(house)
    world = world_of(plan)
    first = plan.inputs.coats[0].id
    own = [pieces_of(world, field) for field in plan.fields if field.coat == first]
    assert sorted(name for pieces in own for name in pieces) == sorted(world.pieces)
    for field in plan.fields:
        seam = exit_of(world, field, pieces_of(world, field))
        assert (seam.exit or seam.id) == field.exit


def test_a_way_out_that_is_not_there_is_a_no():
    plan = day_of("quince-street")
    world = world_of(plan)
    field = replace(plan.fields[0], exit="nowhere")
    with pytest.raises(Unanswerable, match="nowhere"):
        exit_of(world, field, pieces_of(world, field))


def test_the_minutes_are_those_of_the_plan_and_reckoned_anew_for_other_tools():
    plan = day_of("quince-street")
    field = plan.fields[4]
    tools = plan.inputs.tools
    sweep = kept(plan, field, world_of(plan))
    for one, band in zip(sweep.passes, field.bands, strict=True):
        assert one.minutes(tools) == band.end_min - band.start_min
        fast = replace(tools, spray_m2_min=2 * tools.spray_m2_min)
        assert one.minutes(fast) < one.minutes(tools)


def test_what_is_begun_is_not_laid_in_another_way():
    plan = day_of("quince-street")
    world, field, tools = world_of(plan), plan.fields[4], plan.inputs.tools
    done = {band.id: band for band in field.bands[:2]}
    sweep = kept(plan, field, world, done)
    assert sweep.begun == field.bands[:2]
    assert len(sweep.to_spray) == len(field.bands) - 2
    sweeper = KeptSweeper(world, sweep, tools, l_per_m2=0.2)
    assert sweeper.sweep(tools) is sweep
    for ask in (sweeper.laid, lambda t: sweeper.sweep(t, thorough=True)):
        with pytest.raises(Unanswerable, match="stays as it is"):
            ask(replace(tools, band_m=0.5))


def test_borders_lie_between_bands_that_touch():
    plan = day_of("quince-street")
    world, field = world_of(plan), plan.fields[4]
    for border in borders_of(world, field, pieces_of(world, field)):
        for place in (border.far, border.near):
            assert field.bands[place].polygon.shape.distance(border.line) < 0.01
