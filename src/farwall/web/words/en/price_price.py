"""Words of the pages of price and hours, and of the form of rates and offers."""

from __future__ import annotations

WORDS = {
    "price-price-ask": "Ask",
    "price-price-between": "({low} to {high} at the ends of cost)",
    "price-price-least": "That is the least job that you take.",
    "price-price-costs": "Four such jobs in five cost {low} to {high}, likely {likely}.",
    "price-price-loses": "{share} in 100 lose money at this price.",
    "price-price-asked": "Asked: {price}.",
    "price-price-legend": "Bar: what four jobs in five cost. White notch: likely, if nothing "
    "happens. Triangle: what is asked.",
    "price-price-tell": "Offers and call-backs",
    "price-price-papers": "Quote, scope and price sheet as papers",
    "price-price-offers": "Offers side by side",
    "price-price-work": "{hours} h of work on {area}; {days} days on site ({low} to {high}).",
    "price-price-drives": "What drives the spread, and what would narrow it",
    "price-price-cost": "Cost",
    "price-price-what": "what",
    "price-price-low": "low",
    "price-price-likely": "likely",
    "price-price-high": "high",
    "price-price-sum": "in all, four jobs in five",
    "price-price-gear": "Gear that is kept",
    "price-price-gear-one": "{what}: {share} of {cost} is in this price, reckoned to last {jobs} "
    "jobs ({low} to {high}; {rank}).",
    "price-price-gear-van": "{what}: in the van, not bought and not priced.",
    "price-price-gear-whole": "It is in the price whole, as the switch says.",
    "price-price-gear-told": "All of it is paid when it is bought. How many jobs a thing lasts, "
    "and whether it is priced whole, is told with",
    "price-price-backs": "Call-backs",
    "price-price-back": "For {what}: {percent} of jobs ({rank}), {cost} each.",
    "price-price-rooms": "Rooms, by their floor",
    "price-price-rooms-own": "Each room's cost holds its share of overhead and risk; what "
    "is left is profit.",
    "price-price-room": "room",
    "price-price-floor": "floor",
    "price-price-its-cost": "costs",
    "price-price-brings": "brings",
    "price-price-left": "left",
    "price-price-lost": "(loses)",
    "price-hours-all": "{hours} hours of work; four jobs in five {low} to {high}",
    "price-hours-days": "{days} days on site ({low} to {high}) with {people} people, {of}; "
    "{visits} trips in all.",
    "price-hours-range": "{low} to {high} hours, likely {likely}",
    "price-hours-rooms": "Hours by room",
    "price-hours-own": "What goes with the floor and walls of a room; trips, papers and samples "
    "belong to the job.",
    "price-hours-h": "hours",
    "papers-name-quote-pdf": "Quote (PDF)",
    "papers-for-quote-pdf": "For the customer: offers side by side, when what is due, a line to "
    "sign.",
    "papers-name-scope-pdf": "Scope and what is not in it (PDF)",
    "papers-for-scope-pdf": "Goes with the quote: what is done, what is not, who provides what.",
    "papers-name-price-sheet-pdf": "The price, for the firm alone (PDF)",
    "papers-for-price-sheet-pdf": "Costs with their ranges, what drives them, rooms that lose: "
    "not to be handed out.",
}
