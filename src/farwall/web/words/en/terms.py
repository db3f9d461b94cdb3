"""Words of the form of firm, customer, rates, terms and taxes."""

from __future__ import annotations

WORDS = {
    "terms": "Firm, customer and terms",
    "terms-told": (
        "What stands on a quote and an invoice beside the work. What the firm tells of itself "
        "here, each new house begins with."
    ),
    "terms-firm": "Your firm",
    "terms-firm-told": (
        "Typed once: new houses begin with it, and this one keeps its own. Numbers stand here "
        "as on an invoice, with the letters of the country where there are such."
    ),
    "terms-customer": "Who pays",
    "terms-builder": "Who builds the house",
    "terms-rates": "Rates",
    "terms-rates-told": (
        "What stays empty is guessed or taken from what other finishers write, and every "
        "figure says so."
    ),
    "terms-terms": "What is due when",
    "terms-terms-told": (
        "Deposit, retention, lien and notice differ from state to state: the law of the place "
        "wins, and an adviser with a licence knows it."
    ),
    "terms-taxes": "Taxes",
    "terms-taxes-told": (
        "Which tax is due on labour and on materials is the law of the place; none is filled "
        "in here. A row for each; rates of the kind standard that meet on a line are added."
    ),
    "s-terms-firm": "The firm is called {firm-name}, its licence {licence}, insured by {insured}.",
    "s-terms-address": "Written to at {lines}, {city} {region} {post-code}, country {country}.",
    "s-terms-called": "Telephone {phone}, mail {email}; ask for {contact}.",
    "s-terms-firm-tax": (
        "Its tax number is {firm-tax}, its number in the register of firms {company}."
    ),
    "s-terms-account": "Money is sent to account {account}, or paid so: {pay-words}",
    "s-terms-customer": "{customer-name} pays; their own number of the order is {reference}.",
    "s-terms-customer-tax": "Their tax number is {customer-tax}.",
    "s-terms-builder": "{builder-name} builds the house.",
    "s-terms-currency": "Amounts are in {currency}.",
    "s-terms-labour": "An hour of one person costs {labour}, a day's travel {visit}.",
    "s-terms-overhead": (
        "Put on cost: overhead {overhead}, profit {profit}. No job is taken below {least-job}."
    ),
    "s-terms-change": (
        "Work asked for later: {change-hour} an hour of one person, and {change-material} on "
        "its materials."
    ),
    "s-terms-standby": (
        "The crew waiting for others: {standby} an hour. One more sample than agreed: {mock-up}."
    ),
    "s-terms-due": (
        "Before stain is bought {deposit} is due, when the colour is in and rinsed {progress}, "
        "the rest at hand-over; an invoice is paid within {pay-days}."
    ),
    "s-terms-valid": "A quote holds for {valid}; its figure is rounded to {rounded}.",
    "s-terms-tolerance": (
        "Where the area differs by more than {tolerance} the price is adjusted; of materials "
        "that go back {restocking} is kept."
    ),
    "s-terms-warranty": "Workmanship is warranted for {warranty} months.",
    "s-terms-tax": "Kind {tax-kind} on {tax-on}, at {tax-percent}, called {tax-name}.",
    "s-terms-tax-reason": "None is taken, because: {tax-reason}",
    "name-firm-name": "Name of the firm",
    "name-licence": "Licence",
    "name-insured": "Insurance",
    "name-lines": "Street and house",
    "name-city": "Town",
    "name-region": "State",
    "name-post-code": "Post code",
    "name-country": "Country",
    "name-phone": "Telephone",
    "name-email": "Mail",
    "name-contact": "Whom to ask for",
    "name-firm-tax": "Tax number of the firm",
    "name-company": "Number in the register",
    "name-account": "Account",
    "name-pay-words": "How else to pay",
    "name-customer-name": "Name of who pays",
    "name-reference": "Their number of the order",
    "name-customer-tax": "Tax number of who pays",
    "name-builder-name": "Name of the builder",
    "name-labour": "An hour of one person",
    "name-visit": "A day's travel",
    "name-overhead": "Overhead",
    "name-profit": "Profit",
    "name-least-job": "Smallest job",
    "name-change-hour": "An hour of a change",
    "name-change-material": "Put on materials of a change",
    "name-standby": "An hour of waiting",
    "name-mock-up": "One more sample",
    "name-deposit": "Deposit",
    "name-progress": "Due when rinsed",
    "name-pay-days": "Days to pay",
    "name-valid": "Days a quote holds",
    "name-rounded": "Step of a quote",
    "name-tolerance": "Area tolerance",
    "name-restocking": "Kept of returns",
    "name-warranty": "Months of warranty",
    "name-tax-kind": "Kind of tax",
    "name-tax-on": "What it is taken of",
    "name-tax-percent": "Rate",
    "name-tax-name": "Its name",
    "name-tax-reason": "Why none is taken",
    "pick-tax-kind-standard": "standard",
    "pick-tax-kind-zero": "zero",
    "pick-tax-kind-exempt": "exempt",
    "pick-tax-kind-reverse-charge": "reverse charge",
    "pick-tax-kind-not-subject": "not subject",
    "pick-tax-on-all": "all",
    "pick-tax-on-materials": "materials",
    "pick-tax-on-labour": "labour",
    "help-terms-firm-address": (
        "Lines of the street with commas between. The country as two letters of ISO 3166-1, "
        "such as US."
    ),
    "help-terms-customer-address": (
        "Where the invoice goes. As data (XML) it needs the country too."
    ),
    "help-terms-customer-tax": "Needed only for reverse charge.",
    "help-terms-labour": "With insurance and taxes on wages.",
    "help-terms-change": (
        "Finishers' contracts have 50 USD a person-hour and materials at 150 %, that is 50 % "
        "on them."
    ),
    "help-terms-standby": "For all who wait together.",
    "help-terms-due": (
        "Finishers' contracts have a deposit of 50 %. How much may be asked before work begins "
        "is law in some places."
    ),
    "help-terms-tolerance": "Finishers' contracts have 5 %.",
    "help-terms-warranty": (
        "A year is usual, no source. Have the text checked by who knows the law of the place."
    ),
    "help-terms-tax": (
        "Kinds of EN 16931: standard with its rate, zero, exempt, reverse charge, not subject. "
        "A sales tax is standard with its own rate."
    ),
    "help-terms-tax-reason": "As the law words it: for exempt, reverse charge and not subject.",
}
