"""The fumes as a caution of the plan: the same figures as the part, in both languages."""

import itertools
from dataclasses import replace

import pytest
from tests.job.acid_day.fumes.fumes_house import STAIN, planned

from farwall.facts.job import Site, Wishes
from farwall.job.acid_day.fumes import fumes_of, words
from farwall.job.acid_day.fumes.caution import NO_MEASUREMENT, fumes_caution, with_fumes
from farwall.job.acid_day.fumes.noun import Range, worst_of
from farwall.job.acid_day.fumes.said import figure, ppm
from farwall.job.acid_day.ground import Ground
from farwall.phrasebook import said_whole, speaking, told


def ground_of(**facts):
    job, plan = planned()
    return Ground(replace(job, **facts), plan)


@pytest.mark.parametrize("standing", ["shut", "open"])
def test_the_figures_are_those_of_the_part_of_fumes(standing):
    ground = ground_of(site=Site(standing))
    part = fumes_of(ground)
    worst = max(part.rooms, key=lambda one: one.peak_ppm.high)
    line = fumes_caution(ground)[0]
    assert line.startswith(f"Fumes, house {standing}: {worst.name} {ppm(worst.peak_ppm)}")
    changes = part.needed.air_changes_h
    assert f"about {figure(changes.likely)} air changes an hour" in line
    assert f"({figure(changes.low)} to {figure(changes.high)})" in line
    assert part.rank in line
    assert line.endswith(NO_MEASUREMENT)


def test_moving_air_is_told_in_the_manner_of_the_job():
    said = {
        units: fumes_caution(ground_of(wishes=Wishes(units=units)))[0] for units in ("us", "metric")
    }
    assert said["us"].index(" cfm (") < said["us"].index(" m³/h.")
    assert said["metric"].index(" m³/h (") < said["metric"].index(" cfm.")


def test_the_worst_room_is_chosen_by_figures_as_they_are_told():
    """Two rooms whose high ends read alike: the likelier one, whoever tells it."""
    alike = [Range(6.07, 15.2, 82.4), Range(5.88, 15.7, 82.4), Range(9.0, 20.0, 68.2)]
    assert worst_of(alike) == 1
    assert worst_of(alike[:1] * 2) == 0


def test_a_high_end_that_is_dangerous_at_once_is_told_and_a_low_one_is_not():
    strong = replace(STAIN, hcl_percent_low=30.0, hcl_percent_high=37.0)
    weak = replace(STAIN, hcl_percent_low=0.5, hcl_percent_high=1.0)
    assert words.AT_ONCE in fumes_caution(ground_of(stains=(strong,)))
    assert words.AT_ONCE not in fumes_caution(ground_of(stains=(weak,)))


def test_nothing_is_told_where_no_acid_is_sprayed():
    none = replace(STAIN, hcl_percent_low=0.0, hcl_percent_high=0.0)
    ground = ground_of(stains=(none,))
    assert fumes_caution(ground) == ()
    assert with_fumes(ground.plan, ground.job) is ground.plan


def test_the_plan_keeps_all_else():
    ground = ground_of()
    plan = with_fumes(ground.plan, ground.job)
    assert plan.cautions[: len(ground.plan.cautions)] == ground.plan.cautions
    assert len(plan.cautions) > len(ground.plan.cautions)
    assert replace(plan, cautions=()) == replace(ground.plan, cautions=())


def test_it_is_said_whole_in_spanish():
    strong = replace(STAIN, hcl_percent_low=30.0, hcl_percent_high=37.0)
    for standing, units in itertools.product(("shut", "open"), ("us", "metric")):
        ground = ground_of(stains=(strong,), site=Site(standing), wishes=Wishes(units=units))
        names = [room.label for room in ground.job.floor.rooms]
        with speaking("es", names):
            for line in fumes_caution(ground):
                assert said_whole(line), line
                assert told(line) != line
