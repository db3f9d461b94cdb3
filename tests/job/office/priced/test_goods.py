"""Materials of an offer: its part of the list, prices that were told and guessed ones."""

from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from farwall.facts.prices import Offer
from farwall.job.office import OfficeGround
from farwall.job.office.buying import Bought, Buying
from farwall.job.office.hours.sizes import sizes_of
from farwall.job.office.masking import masked_of
from farwall.job.office.priced.goods import goods_of, stain_l
from farwall.job.office.scope import scope_of
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parents[4]


@pytest.fixture(scope="module")
def ground():
    job = read_job(ROOT / "examples" / "quince-street" / "job.json")
    return OfficeGround(job, plan_job(job))


def line(kind, cost, rank="measured here", of="", quantity=""):
    return Bought(kind, of, kind, 1.0, "l", 1, cost, cost, rank=rank, quantity=quantity)


def goods(ground, *lines, total=None, offer=None):
    whole = sum((Decimal(one.cost) for one in lines), start=Decimal(0))
    buying = Buying(tuple(lines), total or str(whole), "USD")
    scope = scope_of(ground, offer)
    found = goods_of(ground, buying, scope, sizes_of(ground, masked_of(ground), scope))
    return {one.group: one for one in found}


def test_told_and_guessed_prices_meet_by_their_shares_by_hand(ground):
    """300 told at 0.95 to 1.2 and 100 guessed at 0.7 to 1.5: 0.8875 to 1.275 of 400."""
    found = goods(ground, line("tape", "300.00"), line("film", "100.00", "guess"))["masking"]
    assert found.likely == 400
    assert found.ends == pytest.approx((0.8875, 1.0, 1.275))
    assert found.rank == "guess"
    assert goods(ground, line("tape", "300.00"))["masking"].rank == "measured here"


def test_a_group_that_nobody_prices_has_an_allowance(ground):
    found = goods(ground, line("tape", "300.00"))
    assert found["sealer"].rank == "guess"
    assert "gal at 45" in found["sealer"].rule
    assert "delivery" not in found


def test_delivery_is_what_the_lines_leave_of_the_total(ground):
    assert goods(ground, line("tape", "300.00"), total="340.00")["delivery"].likely == 40


def test_an_offer_of_one_coat_takes_its_stain_alone(ground):
    first = ground.plan.inputs.coats[0]
    lines = [line("stain", "100.00", of=one.id) for one in ground.job.stains]
    found = goods(ground, *lines, offer=Offer("one", coats=(first.id,)))
    assert found["stain"].likely == 100
    assert goods(ground, *lines)["stain"].likely == 200


def test_rooms_take_their_share_of_floor_and_coats_theirs_of_sealer(ground):
    rooms = ("bed-1", "bed-2")
    areas = {one.room: one.net_m2 for one in ground.measured.rooms}
    share = sum(areas[one] for one in rooms) / sum(areas.values())
    found = goods(ground, line("sealer", "1000.00"), offer=Offer("b", rooms=rooms, sealer_coats=1))
    assert float(found["sealer"].likely) == pytest.approx(1000 * share / 2, abs=0.01)


def test_litres_of_stain_follow_cut_and_coverage_by_hand(ground):
    scope = scope_of(ground)
    per = ground.plan.inputs.l_per_m2
    assert stain_l(ground, scope) == pytest.approx({
        "light": ground.measured.net_m2 * per["first"] / 2,
        "dark": ground.measured.net_m2 * per["second"] / 3,
    })  # fmt: skip
    half = replace(scope, coats=("first",))
    assert set(stain_l(ground, half)) == {"light"}
