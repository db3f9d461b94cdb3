"""How labour and materials of a job are taxed, from the taxes that the firm told.

Which tax is due on which part is the law of the place and not known here: the firm tells it.
"""

from __future__ import annotations

from decimal import Decimal

from farwall.facts.job import Job
from farwall.facts.prices import Tax
from farwall.nouns import dataclass
from farwall.price.invoice import UNTOLD, TaxOf
from farwall.price.money import NOTHING, added
from farwall.price.totals import spread_over


@dataclass(frozen=True)
class Taxing:
    """How labour is taxed, and materials. warnings: what the told taxes leave open."""

    labour: TaxOf
    materials: TaxOf
    warnings: tuple[str, ...] = ()

    @property
    def alike(self) -> bool:
        """Whether it makes no difference which is which."""
        return self.labour == self.materials

    def split(self, whole: Decimal, material_share: Decimal) -> tuple[tuple[TaxOf, Decimal], ...]:
        """An amount by how it is taxed, two decimals each. material_share: 0 to 1."""
        if self.alike:
            return ((self.labour, whole),)
        shares = (1 - material_share, material_share)
        labour, materials = spread_over(whole, shares)
        parts = ((self.labour, labour), (self.materials, materials))
        return tuple(one for one in parts if one[1]) or ((self.labour, NOTHING),)


def taxing_of(job: Job) -> Taxing:
    """The told taxes as they meet on labour and on materials.

    Rates of the kind `standard` that meet are added: one line of an invoice bears one rate. A tax
    told for labour or for materials alone goes before one of another kind that is told for all.
    """
    taxes = job.prices.taxes
    labour, labour_says = _met([one for one in taxes if one.on in {"all", "labour"}], "labour")
    materials, says = _met([one for one in taxes if one.on in {"all", "materials"}], "materials")
    if not taxes:
        return Taxing(UNTOLD, UNTOLD, ("No tax was told: none is reckoned.",))
    return Taxing(labour, materials, tuple(dict.fromkeys((*labour_says, *says))))


def _met(taxes: list[Tax], on: str) -> tuple[TaxOf, tuple[str, ...]]:
    if not taxes:
        return UNTOLD, (f"No tax was told for {on}: none is reckoned there.",)
    own = [one for one in taxes if one.on != "all"]
    kinds = {one.kind for one in taxes}
    if len(kinds) > 1 and own:
        taxes = own
    kind = taxes[0].kind
    alike = [one for one in taxes if one.kind == kind]
    warnings = (
        (f"Taxes of more than one kind were told for {on}: the first is taken.",)
        if len(alike) < len(taxes)
        else ()
    )
    return TaxOf(
        kind,
        added(Decimal(str(one.percent)) for one in alike),
        " + ".join(dict.fromkeys(one.name for one in alike if one.name)),
        "; ".join(dict.fromkeys(one.reason for one in alike if one.reason)),
    ), warnings
