"""Gear that serves many jobs: its share of one in the price, by hand; the switch; the van's own."""

from dataclasses import replace
from decimal import Decimal

import pytest
from tests.job.office.priced.test_goods import goods, ground, line

from farwall.facts.kept_gear import LIVES, lives_of
from farwall.facts.supplies import Supplies
from farwall.facts.van import Stock, Van, VanSprayer
from farwall.job.office import office_of
from farwall.job.office.buying import Buying
from farwall.job.office.priced import IN_VAN, kept_back
from farwall.job.office.priced.kept import kept_gear

__all__ = ["ground"]
SPRAYERS = "sprayers and tools"


def with_supplies(ground, **told):
    return replace(ground, job=replace(ground.job, supplies=Supplies(**told)))


def test_a_good_sprayer_costs_a_job_a_seventeenth_by_hand(ground):
    """170 over 17 jobs (10 to 30) are 10; ends: 0.95 x 17/30 and 1.2 x 17/10."""
    found = goods(ground, line("sprayer", "170.00", quantity="sprayer"))[SPRAYERS]
    assert found.likely == 10
    assert found.ends == pytest.approx((0.95 * 17 / 30, 1.0, 1.2 * 1.7))
    assert found.rank == "common practice"
    assert "share of the jobs it lasts" in found.rule


def test_what_is_used_up_beside_it_stays_whole_and_ends_meet_by_their_parts(ground):
    """10 of the sprayer and 30 of putty: a quarter of the one's ends and three of the other's."""
    lines = line("sprayer", "170.00", quantity="sprayer"), line("other", "30.00", quantity="putty")
    found = goods(ground, *lines)[SPRAYERS]
    assert found.likely == 40
    assert found.ends[0] == pytest.approx(0.25 * 0.95 * 17 / 30 + 0.75 * 0.95)


def test_a_switch_prices_it_whole(ground):
    whole = with_supplies(ground, kept_gear="whole", lasts={"sprayer": 5.0})
    found = goods(whole, line("sprayer", "170.00", quantity="sprayer"))[SPRAYERS]
    assert found.likely == 170
    assert found.rule == "as the shopping list has it"
    assert lives_of(whole.job.supplies) == {}
    said = goods(with_supplies(ground, kept_gear="share"), line("sprayer", "170.00",
                                                                 quantity="sprayer"))  # fmt: skip
    assert said == goods(ground, line("sprayer", "170.00", quantity="sprayer"))


@pytest.mark.parametrize(("jobs", "likely"), [(2.0, 85), (1.0, 170), (34.0, 5)])
def test_the_firms_own_figure_wins_a_cheap_one_lasts_two(ground, jobs, likely):
    told = with_supplies(ground, lasts={"sprayer": jobs, "drums": 4.0})
    found = goods(told, line("sprayer", "170.00", quantity="sprayer"),
                  line("drums", "180.00", quantity="drums"))  # fmt: skip
    assert found[SPRAYERS].likely == likely
    assert found[SPRAYERS].rank == "measured here"
    assert found["washing and waste"].likely == 45


def test_an_offer_of_a_part_takes_its_part_of_the_share(ground):
    from farwall.facts.prices import Offer

    rooms = tuple(one.id for one in ground.job.floor.rooms)
    one = line("sprayer", "1700.00", quantity="sprayer")
    whole = goods(ground, one)[SPRAYERS].likely
    parts = [
        goods(ground, one, offer=Offer("x", rooms=some))[SPRAYERS].likely
        for some in (rooms[:2], rooms[2:])
    ]
    assert sum(parts) == pytest.approx(whole, abs=Decimal("0.02"))


def test_the_sheet_names_each_thing_once_with_what_later_jobs_bear(ground):
    lines = (
        line("sprayer", "100.00", quantity="sprayer"), line("sprayer", "70.00", quantity="sprayer"),
        line("other", "80.00", quantity="eyewash"), line("tape", "30.00", quantity="tape"),
    )  # fmt: skip
    gear = kept_gear(ground, Buying(lines, "280.00", "USD"))
    assert [(one.quantity, one.cost, one.share) for one in gear] == [
        ("sprayer", "170.00", "10.00"), ("eyewash", "80.00", "2.00"),
    ]  # fmt: skip
    assert kept_back(gear) == 160 + 78
    assert [one.rank for one in gear] == ["common practice", "guess"]


def test_what_the_van_holds_is_neither_bought_nor_priced(ground):
    van = Van(
        sprayers=tuple(VanSprayer(id_, "acid-proof", 11.0) for id_ in ("blue", "red")),
        stock=(Stock("wash", "other", 1, "count", of="eyewash"),),
    )
    bare, held = office_of(ground), office_of(replace(ground, van=van))
    gear = {one.quantity: one for one in held.priced.gear}
    assert {id_ for id_, one in gear.items() if one.rank == IN_VAN} == {"eyewash"}
    assert gear["eyewash"].share == "0.00"
    assert "sprayer" not in gear  # its line has none to be bought
    assert not {"sprayer", "eyewash"} & {one.quantity for one in held.buying.lines}
    assert Decimal(held.priced.cost) <= Decimal(bare.priced.cost)
    shares = [Decimal(one.share) for one in bare.priced.gear]
    assert all(0 < share < Decimal(one.cost) for share, one in zip(shares, bare.priced.gear,
                                                                   strict=True))  # fmt: skip


def test_sharing_never_asks_more_than_buying_anew(ground):
    shared, whole = office_of(ground), office_of(with_supplies(ground, kept_gear="whole"))
    assert Decimal(shared.priced.cost) < Decimal(whole.priced.cost)
    assert shared.buying.total == whole.buying.total


@pytest.mark.parametrize("id_", sorted(LIVES))
def test_each_life_is_in_order_and_of_a_line_that_there_is(ground, id_):
    life = LIVES[id_]
    assert 1 <= life.low <= life.likely <= life.high
    assert life.ends[0] <= 1 <= life.ends[2]
    assert id_ in {one.id for one in office_of(ground).quantities.lines}
