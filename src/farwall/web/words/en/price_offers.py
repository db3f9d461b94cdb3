"""Words of the form of rates and offers."""

from __future__ import annotations

WORDS = {
    "offers": "Offers and call-backs",
    "offers-told": "What stays empty is taken from common practice or guessed, and the price says "
    "so.",
    "offers-rows": "Offers",
    "offers-rows-told": "Ways of doing the floor, side by side on the quote. With none told, three "
    "are made from the coats of the job.",
    "offers-backs": "Call-backs",
    "offers-backs-told": "How often somebody calls after hand-over, of all your jobs.",
    "s-flat-risk": "For risk a flat {flat-risk} of cost.",
    "s-excluded": "Not in the price, beside the usual: {excluded}.",
    "s-included": "In the price, beside the usual: {included}.",
    "s-backs": "For residue {residue} of jobs, for moisture {damp}, for colour {off-colour}.",
    "s-back-cost": "One costs {back-low} to {back-high}, usually {back}.",
    "s-offer": "Its name on the paper: {offer-name}",
    "s-offer-holds": "Coats of stain {offer-coats}, {offer-sealer} coats of sealer, {offer-finish} "
    "of floor finish.",
    "s-offer-rooms": "Rooms: {offer-rooms}",
    "s-offer-added": "For what else it holds {offer-added} more: {offer-words}",
    "help-flat-risk": "Left empty, risk is what the draws say: what cost is above likely on the "
    "average, with call-backs.",
    "help-backs": "Left empty, closed jobs tell it, else a guess of practice.",
    "help-offer-holds": "Coats by their names in the job, commas between; empty: all of them.",
    "help-offer-added": "Such as saw cuts: an amount, and what it is for.",
    "name-flat-risk": "Flat share for risk",
    "name-excluded": "Not in the price",
    "name-included": "In the price",
    "name-residue": "Call-backs for residue",
    "name-damp": "Call-backs for moisture",
    "name-off-colour": "Call-backs for colour",
    "name-back-low": "Cost of a call-back, low",
    "name-back": "Cost of a call-back",
    "name-back-high": "Cost of a call-back, high",
    "name-offer-name": "Name of the offer",
    "name-offer-coats": "Coats of stain of the offer",
    "name-offer-sealer": "Coats of sealer of the offer",
    "name-offer-finish": "Coats of floor finish of the offer",
    "name-offer-rooms": "Rooms of the offer",
    "name-offer-added": "Amount added",
    "name-offer-words": "What it is for",
}
