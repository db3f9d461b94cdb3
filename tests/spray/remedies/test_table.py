"""The table of remedies: each row kept when its fact is changed for real, and sorted by price."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from tests.shapes import L_HALL
from tests.spray.hand_floors import (
    L_ROOM,
    ROOMY_TANK,
    ROUND,
    hall,
    job,
    row,
    seam,
    sweeps,
    world,
)

from farwall.facts.job import Container, Crew, Prices, Wishes
from farwall.facts.plan import RoomOpenTime
from farwall.facts.samples import Sample
from farwall.floor.nouns import SawCut
from farwall.job.plan_job import plan_job
from farwall.spray.dry import DryGround
from farwall.spray.lives import Lives
from farwall.spray.order import Step
from farwall.spray.plan_coat import base_point
from farwall.spray.remedies.case import Case, CoatFacts, Trial, timed_alone
from farwall.spray.remedies.offer import PRICES
from farwall.spray.remedies.stops import Places, at_a_stop
from farwall.spray.schedule import Day

THREE_LITRES = replace(ROOMY_TANK, tank_l=3.0)


def timed_at(minutes):
    return (Sample("board", coat="one", sheen_loss_min=minutes),)


def first_field(place, *cuts, **facts):
    return plan_job(job(place, *cuts, **facts)).fields[0]


def codes(field):
    return [one.code for one in field.remedies]


def remedy(field, code):
    return next(one for one in field.remedies if one.code == code)


def test_a_field_with_a_fifth_to_spare_is_left_alone():
    """By hand: 2 m of front at 3 m²/min, walks on top: 0.83 min of a budget of 1.25."""
    assert first_field(hall(8, 2), samples=timed_at(2.5)).remedies == ()


def test_a_field_that_fits_by_little_is_told_what_leaves_more():
    """0.83 min of a budget of 1: 17 % to spare; a narrower band waits as much less as it is."""
    field = first_field(hall(8, 2), samples=timed_at(2))
    assert field.verdict == "fits"
    assert {"bands", "two"} <= set(codes(field))
    for one in field.remedies:
        assert one.works
        assert one.margin_min > field.open_time_min.low - field.peak_age_min


def test_narrower_bands_made_for_real_give_what_was_told():
    field = first_field(hall(8, 2), samples=timed_at(2))
    told = remedy(field, "bands")
    width = float(told.what.split("(")[1].split(" m)")[0])
    made = first_field(hall(8, 2), samples=timed_at(2), tools=replace(ROOMY_TANK, band_m=width))
    assert made.peak_age_min == pytest.approx(told.peak_age_min, abs=0.01)
    assert told.more_min >= 0


def test_a_helper_hired_for_real_gives_the_edge_that_was_told():
    alone = first_field(hall(8, 2), samples=timed_at(3), tools=THREE_LITRES)
    told = remedy(alone, "helper")
    hired = first_field(hall(8, 2), samples=timed_at(3), tools=THREE_LITRES, crew=Crew(helper=True))
    assert hired.peak_age_min == pytest.approx(told.peak_age_min, abs=0.02)
    assert told.margin_min == pytest.approx(1.5 - told.peak_age_min, abs=0.01)
    assert told.more_min < 0, "a swap is quicker than a walk and a filling"


@pytest.mark.parametrize("minutes", [1.0, 2.0, 3.0])
def test_what_works_comes_first_and_by_price(minutes):
    rank = list(PRICES)
    for floor in (hall(9, 5), L_HALL):
        field = first_field(floor, samples=timed_at(minutes))
        works = [one for one in field.remedies if one.works]
        assert list(field.remedies[: len(works)]) == works
        prices = [rank.index(one.code) for one in works]
        assert prices == sorted(prices)


def test_a_cut_made_for_real_at_the_line_told_is_as_young_as_told():
    field = first_field(L_ROOM, samples=timed_at(1.2))
    told = remedy(field, "stop-line")
    made = plan_job(job(L_ROOM, SawCut(told.line, id="new"), samples=timed_at(1.2)))
    mine = [one for one in made.fields if any(stop.id == "new" for stop in one.stop_lines)]
    assert mine
    assert max(one.peak_age_min for one in mine) <= told.peak_age_min + 0.15


def test_a_doorway_inside_a_field_is_a_place_to_stop():
    """Two rooms in one field, the far one behind a bare frame: stopped there, each is its own."""
    house = row(3, 8, kind="cased")
    trial = whole_house(house, budget_min=1.6)
    told = at_a_stop(trial, Places(house.floor, house.exits))
    assert told is not None
    assert told.code == "stop-here"
    assert "bare frame between Room a and Room b" in told.what
    assert told.found.peak_age_min < trial.stands.peak_age_min


@pytest.mark.parametrize(
    ("units", "wide"),
    [("us", r"\d+' \d+½?\" \(\d\.\d\d m\)"), ("metric", r"\d\.\d\d m \(\d+' \d+½?\"\)")],
)
def test_a_width_is_told_in_the_unit_of_the_job_first(units, wide):
    field = first_field(hall(8, 2), samples=timed_at(2), wishes=Wishes(units=units))
    assert re.fullmatch(rf"Bands of {wide}\.", remedy(field, "bands").what)


def whole_house(house, *, budget_min):
    """A house sprayed in one field, whatever the planner would do, and its edge."""
    ground = world(house)
    pieces, way = frozenset(ground.pieces), seam(ground, "front")
    sweeper = sweeps(ground).sweeper(pieces, way)
    base = base_point(ground, way)
    rooms = {piece.room: piece.shape for piece in ground.pieces.values()}
    times = tuple(RoomOpenTime(r, 0.0, budget_min, budget_min, budget_min) for r in rooms)
    lives = Lives(times, rooms)
    case = Case(
        ground,
        Step(pieces, way),
        sweeper,
        sweeper.sweep(ROUND),
        CoatFacts("one", 0.2, False, ROUND, lambda _pieces, _from, _to: lives),
        Day(0.0, base, 40.0, DryGround.of(ground), base),
    )
    stands = timed_alone(case, case.sweep, ROUND, helper=False, l_per_m2=0.2)
    return Trial(case, stands, budget_min)


def test_more_mix_costs_what_its_stain_costs_by_hand():
    """By hand: half of each litre is stain at 10.00 a litre."""
    prices = Prices("USD", (Container(2.0, "20.00"),))
    field = first_field(hall(8, 2), samples=timed_at(2), prices=prices, tools=replace(
        ROOMY_TANK, overlap_m=0.2
    ))  # fmt: skip
    told = remedy(field, "bands")
    assert told.more_l > 0
    amount, currency = told.cost.split()
    assert currency == "USD"
    assert float(amount) == pytest.approx(5 * told.more_l, abs=0.03)


def test_without_prices_no_amount_is_told():
    field = first_field(hall(8, 2), samples=timed_at(1.5))
    assert all(one.cost is None for one in field.remedies)


def test_no_remedy_ever_shuts_out_air():
    for minutes in (0.5, 1.0, 1.5, 3.0):
        field = first_field(hall(9, 5), samples=timed_at(minutes))
        assert set(codes(field)) <= set(PRICES)
        assert not any("draught" in one.what or "shut" in one.what for one in field.remedies)
