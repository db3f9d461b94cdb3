"""Words of amounts due and of change orders."""

from __future__ import annotations

WORDS = {
    "price-part-due": "amounts due",
    "due-whole": "In all {amount} {currency}, {tax} of it tax.",
    "due-agreed": "Agreed by {who}: {amount} without tax.",
    "due-not-agreed": "Asked for the floor: {amount} without tax.",
    "due-part": "Part",
    "due-amount": "Amount, {currency}",
    "due-on": "Due",
    "due-open": "Open",
    "due-part-deposit": "Deposit, before stain is bought",
    "due-part-progress": "When the colour is in and rinsed",
    "due-part-final": "Rest, at hand-over",
    "due-planned": "(planned)",
    "due-late": "{n} days late",
    "due-late-1": "1 day late",
    "due-paid-on": "paid {day}",
    "due-paid": "{paid} came in, {open} {currency} is open.",
    "due-enter-accepted": "Enter what was agreed",
    "due-enter-invoiced": "Enter an invoice",
    "due-enter-paid": "Enter a payment",
    "due-invoice": "Invoice (PDF)",
    "due-changes": "Change orders",
    "due-unsigned": "No signed paper in the book.",
    "due-no-changes": "None so far.",
    "due-enter-change": "A change order",
    "due-enter-standby": "Enter waiting",
    "due-standby": "Waiting for others: {amount}.",
    "due-by-area": "Difference by the area as measured: {amount}.",
    "due-figures": "What it rests on",
    "due-not-told": "told by nobody, and not guessed",
    "due-unit-money": "{value} {currency}",
    "due-unit-percent": "{value} %",
    "due-unit-days": "{value} days",
    "due-figure-change_per_h": "An hour of a change",
    "due-figure-change_material_percent": "On materials of a change",
    "due-figure-standby_per_h": "An hour of waiting",
    "due-figure-deposit_percent": "Deposit",
    "due-figure-progress_percent": "Due when rinsed",
    "due-figure-pay_days": "Days to pay",
    "due-figure-area_tolerance_percent": "Area tolerance",
    "due-terms": "Firm, customer, rates and terms",
    "due-law": (
        "Tax, deposits, retention, liens and notice differ by state and country. The law of "
        "the place wins, and a licensed adviser knows it."
    ),
    "change-order-title": "{name}: a change order",
    "change-order-told": (
        "Work beyond what was agreed, or less of it: written down, priced and signed before it "
        "is begun."
    ),
    "change-order-now": (
        "The floor with all changes so far: {net} without tax, {gross} {currency} with it."
    ),
    "change-order-none": "No change order so far.",
    "change-order-rates": (
        "An hour of one person is {hour} {currency} ({rank}); materials at cost and {percent} "
        "% on them ({percent_rank}). A price that was agreed goes before both."
    ),
    "change-order-no-rate": (
        "No hourly rate is told in {currency}: enter a price, or tell the rate under firm and "
        "terms."
    ),
    "change-order-new": "A new one",
    "change-order-look": "Show its price",
    "change-order-keep": "Enter it",
    "change-order-comes-to": (
        "This change comes to {amount}; the floor with it {net} without tax, {gross} "
        "{currency} with it. Nothing is entered yet."
    ),
    "change-order-kept": "Change order {n} is entered: {amount}.",
    "change-order-paper": "Paper to sign (PDF)",
    "change-order-signed": "signed paper",
    "change-order-photo": "photo",
    "change-order-by": "agreed by {who}",
    "change-order-sign-told": (
        "Have the paper signed before work begins; a photo of it goes into the book with the "
        "order, or enter the order when it is signed."
    ),
}
