"""Totals of an invoice by the rules of EN 16931, from amounts as text."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Given, Result, Sum
from farwall.price.money import NOTHING, rounded, written
from farwall.price.totals import TaxGroup, Totals, totals

_AMOUNT = re.compile(r"[+-]?\d{1,12}(\.\d{1,20})?", re.ASCII)
_MOST_PERCENT = 1000
_LISTS = ("lines", "allowances", "charges")
_SINGLE = ("prepaid", "rounding")


def reckon(given: Given) -> Result:
    """The totals, text with two decimals each. Source: [en16931].

    Raises Refused with every amount that is none.
    """
    mistakes: list[Mistake] = []
    amounts = {key: _amounts(key, given.texts(key), mistakes) for key in _LISTS}
    amounts |= {
        key: _amounts(key, [text] if (text := given.text(key)) else [], mistakes) for key in _SINGLE
    }
    taxes = [_tax(text, mistakes) for text in given.texts("tax")]
    if mistakes:
        raise Refused(*mistakes, about="The sum cannot be done with this.")
    found = totals(
        amounts["lines"],
        allowances=amounts["allowances"],
        charges=amounts["charges"],
        taxes=taxes,
        prepaid=next(iter(amounts["prepaid"]), NOTHING),
        rounding=next(iter(amounts["rounding"]), NOTHING),
    )
    return {
        "sum_of_lines": written(found.sum_of_lines),
        "total_without_tax": written(found.without_tax),
        "tax_amounts": [written(one.amount) for one in found.taxes],
        "total_with_tax": written(found.with_tax),
        "payable": written(found.payable),
        "rank": Rank.PUBLISHED.value,
        "source": "en16931",
        "warnings": _warnings(found, amounts, taxes),
    }


def _amounts(key: str, texts: Sequence[str], mistakes: list[Mistake]) -> list[Decimal]:
    found = []
    for text in texts:
        if _AMOUNT.fullmatch(text):
            found.append(Decimal(text))
        else:
            mistakes.append(
                Mistake(key, f'"{text[:40]}" is not an amount.', "Write it like 1273.00.")
            )
    return found


def _tax(text: str, mistakes: list[Mistake]) -> TaxGroup:
    base, _, percent = (part.strip() for part in text.partition("@"))
    if (
        not all(map(_AMOUNT.fullmatch, (base, percent)))
        or not 0 <= Decimal(percent) <= _MOST_PERCENT
    ):
        said = f'"{text[:40]}" is no base with its rate.'
        mistakes.append(Mistake("tax", said, "Write base@percent, like 1460.50@25."))
        return TaxGroup("standard", NOTHING, NOTHING)
    rate = Decimal(percent)
    return TaxGroup("standard" if rate else "zero", rate, Decimal(base))


def _warnings(
    found: Totals, amounts: dict[str, list[Decimal]], taxes: Sequence[TaxGroup]
) -> list[object]:
    told: list[object] = []
    given = [*(one for each in amounts.values() for one in each), *(one.base for one in taxes)]
    if any(rounded(one) != one for one in given):
        told.append(
            "A document's amounts have two decimals at most; what had more was rounded before "
            "it was added, half away from zero."
        )
    if found.taxes and found.bases != found.without_tax:
        told.append(
            f"The taxes are taken of {written(found.bases)}, and {written(found.without_tax)} is "
            "to be taxed: some amount has no tax group, or two."
        )
    return told


SUM = Sum(
    name="sum",
    what="totals of an invoice: lines, allowances, charges, taxes, what is paid, what is payable",
    arguments=(
        Argument("lines", needed=True, several=True),
        Argument("allowances", several=True),
        Argument("charges", several=True),
        Argument("tax", several=True),
        Argument("prepaid"),
        Argument("rounding"),
    ),
    reckon=reckon,
)
