"""What a customer pays for an offer: the price, its tax as an invoice would have it, its parts."""

from __future__ import annotations

from decimal import Decimal

from farwall.job.office.billing.taken import money_terms
from farwall.job.office.billing.taxing import taxing_of
from farwall.job.office.billing.whole import material_share
from farwall.job.office.ground import OfficeGround
from farwall.job.office.priced.noun import OfferPriced, Priced
from farwall.nouns import dataclass
from farwall.price.due import parts_due
from farwall.price.money import added, amount, rounded, share


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
    """The sums of one offer. Labour and materials part as in the cost of the whole job; tax is
    rounded once for each of them, as on the invoice."""
    price, terms = amount(offer.price), money_terms(ground.job)
    parts = taxing_of(ground.job).split(price, material_share(found))
    tax = added(rounded(share(net, of.percent)) for of, net in parts)
    before = [
        rounded(share(price + tax, one.value))
        for one in (terms.deposit_percent, terms.progress_percent)
    ]
    return OfferSums(price, tax, parts_due(price + tax, before))
