"""Seller, buyer and place of an invoice in UBL."""

from __future__ import annotations

from farwall.facts.firm import Address, Firm, Party
from farwall.papers.invoice.codes import tax_country
from farwall.papers.invoice.xml import Element

_VAT, _OTHER = "VAT", "TAX"
"""Schemes of a tax number: BT-31 and BT-48, and BT-32."""


def put_seller(inside: Element, firm: Firm, *, tax: bool) -> None:
    """BG-4. tax: whether its VAT number may stand there, as it may not beside what is not subject
    to tax (BR-O-02)."""
    party = inside.group("AccountingSupplierParty").group("Party")
    party.group("PartyIdentification").put("ID", firm.company_id)
    party.group("PartyName").put("Name", firm.name)
    put_address(party.group("PostalAddress"), firm.address)
    _put_tax(party, firm.tax_id, tax=tax)
    legal = party.group("PartyLegalEntity").put("RegistrationName", firm.name)
    legal.put("CompanyID", firm.company_id)
    contact = party.group("Contact").put("Name", firm.contact)
    contact.put("Telephone", firm.phone).put("ElectronicMail", firm.email)


def put_buyer(inside: Element, buyer: Party, *, tax: bool) -> None:
    """BG-7."""
    party = inside.group("AccountingCustomerParty").group("Party")
    put_address(party.group("PostalAddress"), buyer.address)
    if tax_country(buyer.tax_id):
        _put_tax(party, buyer.tax_id, tax=tax)
    party.group("PartyLegalEntity").put("RegistrationName", buyer.name)
    contact = party.group("Contact").put("Name", buyer.contact)
    contact.put("Telephone", buyer.phone).put("ElectronicMail", buyer.email)


def put_address(inside: Element, address: Address) -> None:
    """BG-5, BG-8, BG-15: three lines at most; what is more is joined to the third."""
    lines = [one for one in address.lines if one.strip()]
    first, second = [*lines, "", ""][:2]
    inside.put("StreetName", first).put("AdditionalStreetName", second)
    inside.put("CityName", address.city).put("PostalZone", address.post_code)
    inside.put("CountrySubentity", address.region)
    inside.group("AddressLine").put("Line", ", ".join(lines[2:]))
    inside.group("Country").put("IdentificationCode", address.country)


def _put_tax(party: Element, tax_id: str, *, tax: bool) -> None:
    if not tax_id.strip():
        return
    vat = tax_country(tax_id)
    if vat and not tax:
        return
    group = party.group("PartyTaxScheme").put(
        "CompanyID", "".join(tax_id.split()) if vat else tax_id
    )
    group.group("TaxScheme").put("ID", _VAT if vat else _OTHER)
