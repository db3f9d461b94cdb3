"""What the quote asks for, part by part, is what the invoices and the page of amounts due ask."""

from __future__ import annotations

from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st
from tests.job.office.billing.worked import PRICED, ground

from farwall.facts.prices import Tax, Terms
from farwall.job.office.billing import owed_of
from farwall.job.office.priced import OfferPriced
from farwall.job.office.priced.sums import offer_sums

ON_MATERIALS = (Tax("sales tax", 8.25, on="materials"),)
TAXES = (
    (),
    ON_MATERIALS,
    (Tax("sales tax", 6.625),),
    (Tax("state", 4.0, on="labour"), Tax("county", 4.0, on="materials")),
    (Tax("a", 5.5, on="labour"), Tax("b", 8.875, on="materials")),
)


def both(price: str, taxes: tuple[Tax, ...], deposit: float, progress: float):
    """Deposit, progress and rest, and the tax: by the quote, and by what is due."""
    terms = Terms(deposit_percent=deposit, progress_percent=progress)
    agreed = ("accepted", "05-20", {"amount": price, "agreed_by": "R. Invented"})
    made = ground(agreed, taxes=taxes, terms=terms)
    quote = offer_sums(made, PRICED, offer_at(price))
    owed = owed_of(made, PRICED)
    due = {one.part: Decimal(one.amount) for one in owed.parts}
    parts = tuple(due.get(name, Decimal(0)) for name in ("deposit", "progress", "final"))
    return (quote.tax, quote.parts), (Decimal(owed.tax), parts)


def offer_at(price: str) -> OfferPriced:
    return OfferPriced(
        id="one", name="One", price=price, price_low=price, price_high=price, cost_low=price,
        cost=price, cost_high=price, loss_percent=0.0, hours_h=10.0, days=(4, 5, 6), coats=(),
        rooms=(), sealer_coats=2, finish_coats=0, area_m2=100.0, per_ft2="5.00", holds=(),
    )  # fmt: skip


def test_a_deposit_of_a_floor_of_which_materials_alone_are_taxed_by_hand():
    """Of 1,000.00 labour is 788.52 and materials 211.48, taxed 17.45 (17.4471). Half of labour
    394.26, of materials 105.74, taxed 8.72 (8.72355): 508.72. Half of 1,017.45 would be 508.73."""
    quote, due = both("1000.00", ON_MATERIALS, 50.0, 0.0)
    assert quote == due == (
        Decimal("17.45"), (Decimal("508.72"), Decimal("0.00"), Decimal("508.73"))
    )  # fmt: skip


@given(
    st.integers(10_000, 3_000_000), st.sampled_from(TAXES), st.sampled_from([33.3, 50.0, 12.5]),
    st.sampled_from([0.0, 25.0, 33.3]),
)  # fmt: skip
def test_quote_and_amounts_due_agree_to_the_cent(cents, taxes, deposit, progress):
    quote, due = both(str(Decimal(cents) / 100), taxes, deposit, progress)
    assert quote == due
