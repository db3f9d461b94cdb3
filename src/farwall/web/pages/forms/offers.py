"""Rates, call-backs, terms and the offers of a house, as a form."""

from __future__ import annotations

from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_RATES = Part("offers-rates", (
    Sentence("s-labour", (
        Blank("labour", "prices.rates.labour_per_h", size=8),
        Blank("visit", "prices.rates.visit", size=8),
        Blank("currency", "prices.currency", size=4),
    ), help="labour"),
    Sentence("s-overhead", (
        Blank("overhead", "prices.rates.overhead_percent", size=5),
        Blank("profit", "prices.rates.profit_percent", size=5),
    ), help="overhead"),
    Sentence("s-flat-risk", (
        Blank("flat-risk", "prices.rates.risk_percent", size=5),
    ), help="flat-risk"),
    Sentence("s-least", (
        Blank("least", "prices.rates.least", size=8),
        Blank("rounded-to", "prices.terms.rounded_to", size=6),
    ), help="least"),
    Sentence("s-mock-up", (Blank("mock-up", "prices.rates.mock_up", size=8),)),
), told=True)  # fmt: skip

_TERMS = Part("offers-terms", (
    Sentence("s-valid", (
        Blank("valid", "prices.terms.valid_days", size=4),
        Blank("warranty", "prices.terms.warranty_months", size=4),
        Blank("tolerance", "prices.terms.area_tolerance_percent", size=4),
    )),
    Sentence("s-excluded", (Blank("excluded", "prices.terms.excluded", size=48),)),
    Sentence("s-included", (Blank("included", "prices.terms.included", size=48),)),
), told=True)  # fmt: skip

_BACKS = Part("offers-backs", (
    Sentence("s-backs", (
        Blank("residue", "prices.call_backs.residue_percent", size=4),
        Blank("damp", "prices.call_backs.moisture_percent", size=4),
        Blank("off-colour", "prices.call_backs.colour_percent", size=4),
    ), help="backs"),
    Sentence("s-back-cost", (
        Blank("back-low", "prices.call_backs.cost_low", size=7),
        Blank("back", "prices.call_backs.cost", size=7),
        Blank("back-high", "prices.call_backs.cost_high", size=7),
    )),
), told=True)  # fmt: skip

_OFFERS = Part("offers-rows", (
    Sentence("s-offer", (Blank("offer-name", "name", must=True, size=24),)),
    Sentence("s-offer-holds", (
        Blank("offer-coats", "coats", size=18), Blank("offer-sealer", "sealer_coats", size=3),
        Blank("offer-finish", "finish_coats", size=3),
    ), help="offer-holds"),
    Sentence("s-offer-rooms", (Blank("offer-rooms", "rooms", size=30),)),
    Sentence("s-offer-added", (
        Blank("offer-added", "added", size=8), Blank("offer-words", "words", size=40),
    ), help="offer-added"),
), each="rows", way="prices.offers", told=True, stem="offer", most=6)  # fmt: skip

OFFERS = Form("offers", (_OFFERS, _RATES, _TERMS, _BACKS))
"""What a price is made of, and the ways in which the floor is offered."""
