"""Who does the work, who has it done, who builds the house: names and addresses as told."""

from __future__ import annotations

from typing import Annotated

from annotated_types import MaxLen

from farwall.nouns import dataclass

Short = Annotated[str, MaxLen(200)]


@dataclass(frozen=True)
class Address:
    """Where somebody is written to. `country` is a code of ISO 3166-1, two letters, such as US."""

    lines: tuple[Short, ...] = ()
    city: Short = ""
    region: Short = ""
    post_code: Short = ""
    country: Short = ""


@dataclass(frozen=True)
class Party:
    """A person or a firm: the owner who pays, the builder, another trade.

    `tax_id` as it stands on an invoice, with its country's letters where there are such.
    """

    name: Short = ""
    address: Address = Address()
    phone: Short = ""
    email: Short = ""
    tax_id: Short = ""
    contact: Short = ""
    reference: Short = ""


@dataclass(frozen=True)
class Firm:
    """The finisher's own firm, as its papers name it.

    `licence` and `insured_by` as the owner wants them on a quote; `account` is where money is sent
    (IBAN or in the words of the place), `pay_words` how it may be paid else.
    """

    name: Short = ""
    address: Address = Address()
    phone: Short = ""
    email: Short = ""
    tax_id: Short = ""
    company_id: Short = ""
    contact: Short = ""
    licence: Short = ""
    insured_by: Short = ""
    account: Short = ""
    pay_words: Short = ""
