"""Firm, customer, builder, rates, terms and taxes as one form."""

from __future__ import annotations

from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence


def _of(who: str, way: str) -> tuple[Sentence, ...]:
    """Where somebody is written to and called, for a party of that name."""
    return (
        Sentence("s-terms-address", (
            Blank("lines", f"{way}.address.lines", size=28),
            Blank("city", f"{way}.address.city", size=14),
            Blank("region", f"{way}.address.region", size=6),
            Blank("post-code", f"{way}.address.post_code", size=7),
            Blank("country", f"{way}.address.country", size=3),
        ), help=f"terms-{who}-address"),
        Sentence("s-terms-called", (
            Blank("phone", f"{way}.phone", size=14), Blank("email", f"{way}.email", size=22),
            Blank("contact", f"{way}.contact", size=16),
        )),
    )  # fmt: skip


_FIRM = Part("terms-firm", (
    Sentence("s-terms-firm", (
        Blank("firm-name", "firm.name", size=24), Blank("licence", "firm.licence", size=16),
        Blank("insured", "firm.insured_by", size=18),
    )),
    *_of("firm", "firm"),
    Sentence("s-terms-firm-tax", (
        Blank("firm-tax", "firm.tax_id", size=14), Blank("company", "firm.company_id", size=14),
    )),
    Sentence("s-terms-account", (
        Blank("account", "firm.account", size=24), Blank("pay-words", "firm.pay_words", size=24),
    )),
), told=True)  # fmt: skip

_CUSTOMER = Part("terms-customer", (
    Sentence("s-terms-customer", (
        Blank("customer-name", "customer.name", size=24),
        Blank("reference", "customer.reference", size=10),
    )),
    *_of("customer", "customer"),
    Sentence("s-terms-customer-tax", (Blank("customer-tax", "customer.tax_id", size=14),),
             help="terms-customer-tax"),
))  # fmt: skip

_BUILDER = Part("terms-builder", (
    Sentence("s-terms-builder", (Blank("builder-name", "builder.name", size=24),)),
    Sentence("s-terms-called", (
        Blank("phone", "builder.phone", size=14), Blank("email", "builder.email", size=22),
        Blank("contact", "builder.contact", size=16),
    )),
))  # fmt: skip

_RATES = Part("terms-rates", (
    Sentence("s-terms-currency", (Blank("currency", "prices.currency", size=4),)),
    Sentence("s-terms-labour", (
        Blank("labour", "prices.rates.labour_per_h"), Blank("visit", "prices.rates.visit"),
    ), help="terms-labour"),
    Sentence("s-terms-overhead", (
        Blank("overhead", "prices.rates.overhead_percent", size=4),
        Blank("profit", "prices.rates.profit_percent", size=4),
        Blank("least-job", "prices.rates.least"),
    )),
    Sentence("s-terms-change", (
        Blank("change-hour", "prices.rates.change_per_h"),
        Blank("change-material", "prices.rates.change_material_percent", size=4),
    ), help="terms-change"),
    Sentence("s-terms-standby", (
        Blank("standby", "prices.rates.standby_per_h"), Blank("mock-up", "prices.rates.mock_up"),
    ), help="terms-standby"),
), told=True)  # fmt: skip

_TERMS = Part("terms-terms", (
    Sentence("s-terms-due", (
        Blank("deposit", "prices.terms.deposit_percent", size=4),
        Blank("progress", "prices.terms.progress_percent", size=4),
        Blank("pay-days", "prices.terms.pay_days", size=4),
    ), help="terms-due"),
    Sentence("s-terms-valid", (
        Blank("valid", "prices.terms.valid_days", size=4),
        Blank("rounded", "prices.terms.rounded_to", size=5),
    )),
    Sentence("s-terms-tolerance", (
        Blank("tolerance", "prices.terms.area_tolerance_percent", size=4),
        Blank("restocking", "prices.terms.restocking_percent", size=4),
    ), help="terms-tolerance"),
    Sentence("s-excluded", (Blank("excluded", "prices.terms.excluded", size=48),)),
    Sentence("s-included", (Blank("included", "prices.terms.included", size=48),)),
    Sentence("s-terms-warranty", (Blank("warranty", "prices.terms.warranty_months", size=4),),
             help="terms-warranty"),
), told=True)  # fmt: skip

_TAXES = Part("terms-taxes", (
    Sentence("s-terms-tax", (
        Blank("tax-kind", "kind", pick="pick-tax-kind"), Blank("tax-on", "on", pick="pick-tax-on"),
        Blank("tax-percent", "percent", size=5), Blank("tax-name", "name", size=12),
    ), help="terms-tax"),
    Sentence("s-terms-tax-reason", (Blank("tax-reason", "reason", size=40),),
             help="terms-tax-reason"),
), each="rows", way="prices.taxes", told=True, most=6)  # fmt: skip

TERMS = Form("terms", (_FIRM, _CUSTOMER, _BUILDER, _RATES, _TERMS, _TAXES))
"""All that stands on a quote and on an invoice beside the work."""
