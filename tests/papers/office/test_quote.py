"""Quote, scope and the firm's own sheet: what they hold, what they keep to themselves."""

import dataclasses
import re
from dataclasses import replace
from decimal import Decimal
from pathlib import Path

import pytest

from farwall.facts.firm import Firm, Party
from farwall.facts.job import Prices
from farwall.facts.prices import Offer, Rates, Tax, Terms
from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.papers.office.blocks import Own, Rows
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.price_sheet import price_sheet
from farwall.papers.office.quote import DRAFT, quote
from farwall.papers.office.scope import EXCLUDED, scope
from farwall.papers.office.setting import own_names
from farwall.papers.words import names_in
from farwall.phrasebook import said_whole, speaking
from farwall.readers.job_json import read_job

ROOT = Path(__file__).resolve().parents[3]
RATES = Rates(labour_per_h="52", visit="35", overhead_percent=20, profit_percent=15)


@pytest.fixture(scope="module")
def planned():
    job = read_job(ROOT / "examples" / "quince-street" / "job.json")
    return job, plan_job(job)


def ground(planned, *, on="2026-05-02", language="en", firm=Firm(), **prices):  # noqa: B008
    job, plan = planned
    told = replace(Prices(containers=job.prices.containers, rates=RATES), **prices)
    return PaperGround(
        OfficeGround(replace(job, prices=told, firm=firm), plan, on=on), language=language
    )


def texts(found, *, own=True):
    """Every text of a paper or of a block of it."""
    if isinstance(found, Own):
        if own:
            yield found.text
    elif isinstance(found, str):
        yield found
    elif dataclasses.is_dataclass(found):
        for field in dataclasses.fields(found):
            if field.name not in {"pen", "tone", "screen"}:
                yield from texts(getattr(found, field.name), own=own)
    elif isinstance(found, tuple):
        for one in found:
            yield from texts(one, own=own)


def rows(paper):
    return [one for one in paper.blocks if isinstance(one, Rows)]


def amounts(row):
    return [Decimal(one.text.replace(",", "")) for one in row[1:]]


def test_the_quote_has_one_clean_figure_for_each_offer(planned):
    here = ground(planned)
    found = quote(here)
    price = rows(found)[0].rows[-1]
    assert amounts(price) == [Decimal(one.price) for one in here.office.priced.offers]
    for one in here.office.priced.offers:
        for kept in (one.cost, one.cost_low, one.cost_high, one.price_low, one.price_high):
            figure = f"{Decimal(kept):,.0f}"
            assert not any(figure in text for text in texts(found)), kept


def test_parts_of_each_price_add_up_to_it(planned):
    taxes = (Tax("sales tax", 6.35),)
    found = quote(ground(
        planned, taxes=taxes, terms=Terms(deposit_percent=40, progress_percent=25)
    ))  # fmt: skip
    offers, due = rows(found)
    whole = amounts(offers.rows[-1])
    assert [sum(each) for each in zip(*map(amounts, due.rows), strict=True)] == whole
    before, tax = amounts(offers.rows[-3]), amounts(offers.rows[-2])
    assert [a + b for a, b in zip(before, tax, strict=True)] == whole
    assert tax[0] == round(before[0] * Decimal("0.0635"), 2)


def test_tax_on_materials_alone_is_less_than_on_all(planned):
    def tax(on):
        found = quote(ground(planned, taxes=(Tax("sales tax", 10, on=on),)))
        return amounts(rows(found)[0].rows[-2])[0]

    assert 0 < tax("materials") < tax("labour") < tax("all")
    assert abs(tax("materials") + tax("labour") - tax("all")) <= Decimal("0.01")


def test_an_invented_hour_makes_it_a_draft(planned):
    assert DRAFT in list(texts(quote(ground(planned, rates=Rates()))))
    assert DRAFT not in list(texts(quote(ground(planned))))


def test_it_holds_for_its_days_from_the_day_that_was_told(planned):
    told = list(texts(quote(ground(planned, terms=Terms(valid_days=45)))))
    assert "until Tuesday, June 16, 2026" in told  # 29 days of May and 16 more
    assert "30 days" in list(texts(quote(ground(planned, on=""))))


def test_five_offers_stand_below_each_other(planned):
    offers = tuple(Offer(f"o{n}", name=f"Offer {n}", sealer_coats=n) for n in range(1, 6))
    table = rows(quote(ground(planned, offers=offers)))[0]
    assert [row[0].text for row in table.rows] == [one.name for one in offers]
    assert len(table.heads) == 4


def test_one_offer_has_nothing_to_choose(planned):
    found = quote(ground(planned, offers=(Offer("all", name="The whole floor"),)))
    assert "Chosen" not in list(texts(found))


def test_no_sum_of_dollars_is_guessed_in_another_currency(planned):
    told = " ".join(texts(quote(ground(planned, currency="EUR"))))
    assert "250" not in told
    assert "waiting" not in told


def test_scope_names_every_room_and_every_exclusion_and_the_firms_own(planned):
    here = ground(planned, terms=Terms(excluded=("Front steps",), included=("A mop",)))
    told = list(texts(scope(here)))
    assert {one.name for one in here.office.priced.rooms} <= set(told)
    assert {*EXCLUDED, "Front steps", "A mop"} <= set(told)
    assert any("An even colour, without clouds, is not promised" in one for one in told)
    assert any("into drums" in one for one in told)


def test_a_waste_route_that_nobody_settled_is_said_to_be_open(planned):
    job, plan = planned
    survey = replace(job.survey, waste=None)
    here = PaperGround(OfficeGround(replace(job, survey=survey), plan))
    assert any("not settled yet" in one for one in texts(scope(here)))


def test_the_firms_sheet_has_every_cost_with_its_ends_and_its_rank(planned):
    here = ground(planned)
    priced = here.office.priced
    table = rows(price_sheet(here))[0]
    assert [row[0] for row in table.rows[:-1]] == [one.what for one in priced.costs]
    for row, one in zip(table.rows, priced.costs, strict=False):
        assert row[1] == one.rank
        low, likely, high = (Decimal(cell.text.replace(",", "")) for cell in row[3:])
        assert low <= likely <= high


def figures(cells):
    return [Decimal(cell.text.replace(",", "").replace("−", "-")) for cell in cells]


def test_what_stands_on_the_firms_sheet_adds_up_as_it_stands(planned):
    """Twenty rounded costs came to two dollars more than the sum below them."""
    for rates in (Rates(), RATES, replace(RATES, least="90000")):
        here = ground(planned, rates=rates)
        costs, *_ = rows(price_sheet(here))
        *parts, whole = figures([row[4] for row in costs.rows])
        assert sum(parts) == whole
        total = costs.rows[-1][2].text.removesuffix(" h")
        offers = next(one for one in rows(price_sheet(here)) if one.heads[-1] == "Loses")
        assert total in {row[3].text for row in offers.rows}
        added = next(one for one in rows(price_sheet(here)) if one.rows[0][0] == "cost, likely")
        *parts, price = figures([row[3] for row in added.rows])
        assert parts[0] == whole
        assert sum(parts) == price


def test_the_firms_sheet_says_that_it_is_not_to_be_handed_out(planned):
    assert any("Not to be handed out" in one for one in texts(price_sheet(ground(planned))))


@pytest.mark.parametrize("make", [quote, scope, price_sheet])
@pytest.mark.parametrize("rates", [Rates(), RATES])
def test_all_is_said_in_spanish(planned, make, rates):
    here = ground(planned, language="es", rates=rates, taxes=(Tax("IVA", 8),), terms=Terms(
        deposit_percent=40, progress_percent=20, area_tolerance_percent=7.5,
    ), offers=(Offer("all"), Offer("beds", rooms=("bed-1", "bed-2"), sealer_coats=0)))  # fmt: skip
    paper = make(here)
    with speaking("es", names_in(here.plan) | own_names(here)):
        words = [paper.title, *texts(paper.blocks, own=False)]
        left = [one for one in words if re.search("[A-Za-z]{2}", one) and not said_whole(one)]
    assert left == []


def test_who_it_goes_to_stands_at_its_head(planned):
    job, plan = planned
    customer = Party("R. Invented", reference="RI-3")
    here = PaperGround(OfficeGround(replace(job, customer=customer), plan))
    found = quote(here)
    assert found.to == ("R. Invented",)
    assert "RI-3" in list(texts(found))
