"""The price of a whole job: sums that agree with each other, what raises it, what it says."""

from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from farwall.facts.job import Prices
from farwall.facts.prices import Offer, Rates, Terms
from farwall.job.go.table import RULES
from farwall.job.office import OfficeGround, office_of
from farwall.job.office.priced.offers import name_of, offers_told
from farwall.job.office.priced.raised import BY_RULE, raised
from farwall.job.office.scope import scope_of
from farwall.job.plan_job import plan_job
from farwall.phrasebook import speaking, told
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parents[3]


@pytest.fixture(scope="module")
def ground():
    job = read_job(ROOT / "examples" / "quince-street" / "job.json")
    return OfficeGround(job, plan_job(job))


@pytest.fixture(scope="module")
def office(ground):
    return office_of(ground)


def priced(ground, **prices):
    own = replace(ground.job.prices, **prices)
    return office_of(replace(ground, job=replace(ground.job, prices=own))).priced


def test_the_lines_of_cost_add_up_to_the_cost(office):
    found = office.priced
    total = sum(Decimal(one.likely) for one in found.costs)
    assert abs(total - Decimal(found.cost)) <= 1
    names = [one.what for one in found.costs]
    assert len(set(names)) == len(names)


def test_no_figure_stands_without_its_range(office):
    found = office.priced
    for one in found.costs:
        assert Decimal(one.low) <= Decimal(one.likely) <= Decimal(one.high)
        assert one.rank
    for low, middle, high in (
        (found.cost_low, found.cost_median, found.cost_high),
        (found.price_low, found.price, found.price_high),
        *((one.price_low, one.price, one.price_high) for one in found.offers),
        *((one.cost_low, one.cost, one.cost_high) for one in found.offers),
    ):
        assert Decimal(low) < Decimal(middle) < Decimal(high)


def test_cost_and_what_is_added_make_the_price_to_the_step(office):
    found = office.priced
    total = Decimal(found.cost) + sum(Decimal(one.amount) for one in found.added)
    assert abs(total - Decimal(found.price)) <= 5
    assert Decimal(found.price) % 10 == 0


def test_rooms_part_cost_and_price_to_the_cent(office):
    found = office.priced
    assert sum(Decimal(one.price) for one in found.rooms) == Decimal(found.price)
    overhead, risk, _ = (Decimal(one.amount) for one in found.added)
    assert sum(Decimal(one.cost) for one in found.rooms) == Decimal(found.cost) + overhead + risk
    for end, of in (("cost_low", found.cost_low), ("cost_high", found.cost_high)):
        assert sum(Decimal(getattr(one, end)) for one in found.rooms) == Decimal(of) + overhead
    for one in found.rooms:
        assert Decimal(one.left) == Decimal(one.price) - Decimal(one.cost)
        assert Decimal(one.cost_low) < Decimal(one.cost) < Decimal(one.cost_high)
        assert one.loses == (Decimal(one.left) < 0) == bool(one.do)


def test_small_rooms_bring_less_of_their_cost_than_the_large_one(office):
    """They carry the masking: wall a square metre is what parts them."""
    by_id = {one.room: Decimal(one.left) / Decimal(one.price) for one in office.priced.rooms}
    assert by_id["great-room"] == max(by_id.values())
    assert by_id["pantry"] < by_id["bed-1"] < by_id["great-room"]


def test_three_offers_each_dearer_than_the_one_before(office):
    offers = office.priced.offers
    assert [one.name for one in offers] == [
        "One colour, sealed", "Two colours, sealed", "Two colours, sealed, with floor finish",
    ]  # fmt: skip
    prices = [Decimal(one.price) for one in offers]
    assert prices == sorted(prices)
    assert offers[-1].price == office.priced.price


def test_one_and_two_coats_of_the_same_colour_are_not_called_alike(ground):
    first, *rest = ground.plan.inputs.coats
    alike = tuple(replace(one, stain=first.stain) for one in rest)
    plan = replace(ground.plan, inputs=replace(ground.plan.inputs, coats=(first, *alike)))
    same = replace(ground, plan=plan)
    names = [name_of(same, scope_of(same, one)) for one in offers_told(same)]
    assert names == [
        "One colour, sealed", "One colour in two coats, sealed",
        "One colour in two coats, sealed, with floor finish",
    ]  # fmt: skip
    with speaking("es"):
        assert told(names[2]) == "Un color en dos manos, sellado, con acabado de piso"


def test_own_offers_by_rooms_coats_and_an_amount(ground):
    found = priced(
        ground,
        offers=(
            Offer("beds", name="Bedrooms", rooms=("bed-1", "bed-2", "bed-3")),
            Offer("cuts", name="All, with saw cuts", added="750"),
            Offer("nowhere", rooms=("attic",)),
        ),
    )
    beds, cuts = found.offers
    assert beds.rooms == ("bed-1", "bed-2", "bed-3")
    assert Decimal(beds.cost) < Decimal(cuts.cost)
    assert Decimal(cuts.price) == Decimal(found.price) + 750
    assert any("nowhere" in one for one in found.warnings)


def test_an_own_hour_takes_the_guess_out_of_the_spread(ground, office):
    found = priced(ground, rates=Rates(labour_per_h="55"))
    assert found.cost == office.priced.cost
    wide = Decimal(office.priced.cost_high) - Decimal(office.priced.cost_low)
    assert Decimal(found.cost_high) - Decimal(found.cost_low) < wide
    assert not any("an hour" in one for one in found.warnings)
    assert any("an hour" in one for one in office.priced.warnings)


def test_a_dearer_hour_costs_more_by_its_hours_by_hand(ground, office):
    """Ten more an hour is ten times the hours, to the whole unit of the sum."""
    found = priced(ground, rates=Rates(labour_per_h="65"))
    more = Decimal(found.cost) - Decimal(office.priced.cost)
    assert float(more) == pytest.approx(10 * office.hours.likely_h, abs=1)


def test_a_flat_risk_and_the_least_job(ground, office):
    found = priced(ground, rates=Rates(risk_percent=6))
    risk = next(one for one in found.added if one.what == "risk")
    assert float(risk.amount) == pytest.approx(0.06 * float(office.priced.cost), abs=0.01)
    assert risk.rank == "measured here"
    small = priced(ground, rates=Rates(least="20000"), terms=Terms(rounded_to="50"))
    assert small.price == "20000.00"
    assert small.least_job


def test_a_higher_price_loses_money_less_often(ground):
    losses = [
        priced(ground, rates=Rates(labour_per_h="55", profit_percent=share)).loss_percent
        for share in (0, 15, 40)
    ]
    assert losses == sorted(losses, reverse=True)
    assert losses[0] > losses[-1]


def test_only_what_a_rule_found_raises_a_call_back(ground):
    assert raised(ground) == {}
    survey = replace(ground.job.survey, sample_signed=False, sample_scrub="weak")
    found = raised(replace(ground, job=replace(ground.job, survey=survey)))
    assert set(found) == {"colour", "residue"}
    unknown = replace(ground.job.survey, sample_signed=None)
    assert raised(replace(ground, job=replace(ground.job, survey=unknown))) == {}


def test_every_rule_that_raises_is_a_rule():
    assert set(BY_RULE) <= {one.id for one in RULES}


def test_what_was_measured_is_not_asked_again(ground, office):
    """The example has a signed sample, a moisture test and a scrubbed sample; then none of them."""
    asked = {one.what: one.measure for one in office.priced.drivers}
    assert "signed before you quote" not in asked["call-back: colour"]
    bare = replace(ground.job.survey, sample_signed=None, moisture=(), sample_scrub=None)
    found = office_of(replace(ground, job=replace(ground.job, survey=bare))).priced
    asked = {one.what: one.measure for one in found.drivers}
    assert "signed before you quote" in asked["call-back: colour"]
    assert "Test the slab for moisture" in asked["call-back: moisture"]


def test_another_currency_is_not_held_against_prices_in_dollars(ground, office):
    assert any("USD a ft²" in one.said for one in office.priced.sanity)
    assert any("21.54 USD in May 2019" in one.said for one in office.priced.sanity)
    assert priced(ground, currency="EUR").sanity == ()


def test_prices_of_its_own_do_not_move_the_hours(ground, office):
    job = replace(ground.job, prices=Prices())
    assert office_of(replace(ground, job=job)).hours == office.hours
