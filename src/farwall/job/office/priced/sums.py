"""What a customer pays for an offer: the price, its tax as an invoice would have it, its parts."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from farwall.job.office.billing.taken import money_terms
from farwall.job.office.billing.taxing import taxing_of
from farwall.job.office.billing.whole import material_share
from farwall.job.office.ground import OfficeGround
from farwall.job.office.priced.noun import OfferPriced, Priced
from farwall.nouns import dataclass
from farwall.price.due import parts_due
from farwall.price.invoice import TaxOf
from farwall.price.money import amount, rounded, share
from farwall.price.totals import Totals, tax_groups, totals


@dataclass(frozen=True)
class OfferSums:
    """Amounts to the cent. parts: deposit, progress, the rest at hand-over."""

    price: Decimal
    tax: Decimal
    parts: tuple[Decimal, ...]

    @property
    def whole(self) -> Decimal:
        """With tax."""
        return self.price + self.tax


def offer_sums(ground: OfficeGround, found: Priced, offer: OfferPriced) -> OfferSums:
    """The sums of one offer. Labour and materials part as in the cost of the whole job; tax, and
    the tax of each part, is rounded as the invoice has it, so that both papers ask for the same
    cents."""
    price, terms = amount(offer.price), money_terms(ground.job)
    parts = taxing_of(ground.job).split(price, material_share(found))
    before = [
        _taxed([(of, rounded(share(net, one.amount))) for of, net in parts]).with_tax
        for one in (terms.deposit_percent, terms.progress_percent)
    ]
    sums = _taxed(parts)
    return OfferSums(price, sums.tax, parts_due(sums.with_tax, before))


def _taxed(parts: Sequence[tuple[TaxOf, Decimal]]) -> Totals:
    return totals(
        [net for _, net in parts],
        taxes=tax_groups((of.kind, of.percent, net) for of, net in parts),
    )
