"""The shopping list of a planned job: the van first, prices by rank, ways side by side."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest
from tests.job.office.quantities.grounds import ground

from farwall.facts.job import Container, Prices
from farwall.facts.plain import plain
from farwall.facts.prices import Rates
from farwall.facts.quantities import Quantities, Quantity, Share
from farwall.facts.supplies import Supplies
from farwall.facts.van import Stock, Van, VanSprayer
from farwall.facts.wares import PriceList, Seller, Ware
from farwall.job.office.buying import buying_of, buying_said
from farwall.job.office.buying.wanted import lines_of, parts_left
from farwall.price.buying.check import faults_of

GALLON = 3.785411784


def quantity(kind, amount, unit="count", of="", **more):
    told = {
        "id": f"{kind}:{of}" if of else kind,
        "what": of or kind,
        "low": amount,
        "likely": amount,
        "high": amount,
        "ready": amount,
        "rule": "",
        "rank": "",
        "source": "",
    }
    return Quantity(kind=kind, unit=unit, of=of, **(told | more))  # fmt: skip


STAIN = quantity("stain", 4.4 * GALLON, "l", "earth")
TAPE = quantity("tape", 120.0, "m")
LIST = PriceList(
    as_of="2026-05-04",
    sellers=(Seller("yard", "25.00", "200"), Seller("mill")),
    wares=(
        Ware("e1", "stain", GALLON, "l", "60.00", "yard", "earth"),
        Ware("e5", "stain", 5 * GALLON, "l", "270.00", "yard", "earth"),
        Ware("t", "tape", 55.0, "m", "8.00", "mill"),
    ),
)


def bought(*quantities, **more):
    return buying_of(replace(ground(), **more), Quantities(quantities))


def told_of(found):
    return [(one.count, round(one.size, 3), one.cost, one.rank) for one in found.lines]


def test_a_list_by_hand():
    """4.4 gal: a pail at 270, brought free from 200; 120 m of tape are three rolls of 55 at 8."""
    found = bought(STAIN, TAPE, wares=LIST)
    assert told_of(found) == [
        (1, round(5 * GALLON, 3), "270.00", "measured here"),
        (3, 55.0, "24.00", "measured here"),
    ]
    assert (found.total, found.guessed, found.as_of) == ("294.00", "0.00", "2026-05-04")
    assert [one.delivery for one in found.sellers] == ["0.00", "0.00"]
    assert found.chosen.proof.status == "best"


def test_prices_that_nobody_told_are_guesses_and_the_total_says_how_much_of_it():
    only_tape = replace(LIST, wares=LIST.wares[2:])
    found = bought(STAIN, TAPE, wares=only_tape)
    assert [one.rank for one in found.lines] == ["guess", "measured here"]
    assert (found.total, found.guessed) == ("294.00", "270.00")
    assert any("270 rests on invented prices" in one for one in buying_said(found))


def test_the_jobs_own_containers_are_no_guess():
    found = bought(STAIN, job=replace(ground().job, prices=Prices(
        containers=(Container(GALLON, "50.00", "earth"),))))  # fmt: skip
    assert told_of(found) == [(5, round(GALLON, 3), "250.00", "measured here")]
    assert found.guessed == "0.00"


def test_what_is_in_the_van_is_taken_off_first_and_told_line_by_line():
    van = Van(
        sprayers=(VanSprayer("blue", "acid-proof", 7.6), VanSprayer("old", "cheap", 7.6, uses=9)),
        stock=(Stock("t1", "tape", 30.0, "m", opened="2026-05-01"),
               Stock("old-tape", "tape", 50.0, "m", good_until="2000-01-01")),
    )  # fmt: skip
    found = bought(TAPE, quantity("sprayer", 2.0), van=van, wares=LIST, on="2026-06-08")
    assert [(one.what, one.there, one.buy) for one in found.there] == [
        ("tape", 30.0, 90.0), ("sprayer", 1.0, 1.0),
    ]  # fmt: skip
    assert "not counted" in found.there[0].mind
    assert found.there[0].opened == "2026-05-01"
    assert any("opened 2026-05-01" in one for one in buying_said(found))
    assert [(one.kind, one.count) for one in found.lines] == [("tape", 2), ("sprayer", 1)]


def test_a_field_takes_one_lot_and_the_list_says_which():
    """Two fields of 11 L and 7 L: the three gallons that are left of lot 7 hold one (150), two of
    lot 8 the other (120); all of lot 8 would be five, 300."""
    share = [Share(11.0, 11.0, 11.0, 11.0, field="a"), Share(7.0, 7.0, 7.0, 7.0, field="b")]
    stain = quantity("stain", 18.0, "l", "earth", shares=tuple(share))
    wares = (
        Ware("seven", "stain", GALLON, "l", "50.00", "yard", "earth", lot="7", in_stock=3),
        Ware("eight", "stain", GALLON, "l", "60.00", "yard", "earth", lot="8"),
    )
    found = bought(stain, wares=replace(LIST, wares=wares))
    assert sorted((one.lot, one.count) for one in found.lines) == [("7", 3), ("8", 2)]
    assert found.chosen.boxed == ()
    whole = quantity("stain", 14.0, "l", "earth", shares=(Share(14, 14, 14, 14.0, field="a"),))
    few = replace(LIST, wares=(wares[0], replace(wares[1], in_stock=2)))
    boxed = bought(whole, wares=few)
    assert boxed.chosen.boxed == ("earth",)
    assert any("Box all that is bought" in one for one in boxed.warnings)


def test_the_samples_lot_is_asked_for_and_another_is_told():
    stain = replace(STAIN, lots=("7",))
    other = replace(LIST, wares=(replace(LIST.wares[0], lot="9"),))
    assert any("new sample" in one for one in bought(stain, wares=other).warnings)
    found = bought(stain, wares=LIST)
    assert {one.lot for one in found.lines} == {"7"}


def test_plenty_is_priced_beside_a_second_trip():
    """20 % more than 4.4 gal are 5.28: a pail and a gallon, 60 more."""
    rates = Prices(rates=Rates(visit="180"))
    found = bought(STAIN, wares=LIST, job=replace(ground().job, prices=rates))
    twenty = next(one for one in found.ways if one.spare_percent == 20.0)
    assert (twenty.total, twenty.more, found.second_trip) == ("330.00", "60.00", "180.00")
    assert any("on one job of 3" in one for one in buying_said(found))
    assert twenty.left_over[0].amount == pytest.approx(1.6 * GALLON)


def test_the_wish_for_more_of_everything_is_part_of_the_list():
    job = replace(ground().job, supplies=Supplies(spare_percent=20.0))
    found = bought(STAIN, quantity("goggles", 2.0), wares=LIST, job=job)
    assert [one.count for one in found.lines] == [1, 1, 2]
    assert [one.spare_percent for one in found.ways] == [20.0, 20.0, 50.0]


def test_what_nobody_has_a_price_for_and_what_is_short_is_told():
    few = replace(LIST, wares=(replace(LIST.wares[0], in_stock=2),))
    found = bought(STAIN, quantity("other", 3.0, "l", "odd stuff"), wares=few)
    assert found.unpriced == ("odd stuff",)
    assert any("Ask another seller" in one for one in found.warnings)
    assert found.total == "145.00"


def test_a_list_in_other_money_is_not_taken():
    found = bought(TAPE, wares=replace(LIST, currency="EUR"))
    assert found.lines[0].rank == "guess"
    assert any("not taken" in one for one in found.warnings)


def test_the_same_thing_of_two_lines_is_bought_once():
    lines = lines_of(Quantities((TAPE, replace(TAPE, id="tape-2", ready=10.0))))
    assert [one.needed for one in lines] == [130.0]
    off = replace(TAPE, on=False)
    assert lines_of(Quantities((off, quantity("water", 9.0, "l")))) == ()


def test_what_is_there_goes_to_the_largest_fields_first_by_hand():
    assert parts_left((3.0, 8.0, 5.0), 10.0) == (3.0, 3.0)
    assert parts_left((3.0,), 9.0) == ()


@pytest.mark.parametrize("aim", [0, 1])
def test_the_whole_list_adds_up_by_nothing_of_what_found_it(aim):
    found = buying_of(replace(ground(), wares=LIST), Quantities((STAIN, TAPE)))
    way = found.ways[aim]
    lines = [{"material": o.quantity, "ware": o.ware, "count": o.count} for o in way.lines]
    goods = sum(Decimal(one.goods) for one in way.sellers)
    told = {
        "goods": str(goods), "total": way.total,
        "delivery": {o.seller: o.delivery for o in way.sellers if Decimal(o.delivery)},
    }  # fmt: skip
    needs = {STAIN.id: STAIN.ready, TAPE.id: TAPE.ready}
    assert not faults_of(lines, needs, plain(LIST)["wares"], plain(LIST)["sellers"], told)


def test_the_materials_of_a_worked_job_by_hand():
    """Alder Lane, invented: 5.3 gal of stain by the gallon at 60 are six, 8 gal of sealer at 45,
    2 gal of finish at 25: 360 + 360 + 50 = 770."""
    one_gal = tuple(
        Ware(kind, kind, GALLON, "l", price, of="earth" if kind == "stain" else "")
        for kind, price in (("stain", "60"), ("sealer", "45"), ("finish", "25"))
    )
    found = bought(
        quantity("stain", 5.3 * GALLON, "l", "earth"), quantity("sealer", 8 * GALLON, "l"),
        quantity("finish", 2 * GALLON, "l"), wares=PriceList(wares=one_gal),
    )  # fmt: skip
    assert [one.count for one in found.lines] == [6, 8, 2]
    assert found.total == "770.00"


def test_of_a_long_list_the_same_size_is_looked_at_once_and_the_cheapest_is_bought():
    draw = [Ware(f"t{n}", "tape", 55.0, "m", f"{9 + n % 7}.{n % 90:02d}", "mill")
            for n in range(3000)]  # fmt: skip
    odd = [Ware(f"o{n}", "tape", 20.0 + n / 10, "m", f"{12 + n}.00", "mill") for n in range(300)]
    found = bought(TAPE, wares=replace(LIST, wares=tuple(draw + odd)))
    assert told_of(found) == [(3, 55.0, "27.00", "measured here")]
