"""The offers of a house and the firm's call-backs, as a form; rates and terms are `terms`."""

from __future__ import annotations

from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_BACKS = Part("offers-backs", (
    Sentence("s-flat-risk", (
        Blank("flat-risk", "prices.rates.risk_percent", size=5),
    ), help="flat-risk"),
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

OFFERS = Form("offers", (_OFFERS, _BACKS))
"""The ways in which the floor is offered, and what is set aside for call-backs."""
