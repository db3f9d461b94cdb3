"""Names of the papers of money, and what each is for, in English."""

from __future__ import annotations

WORDS = {
    "papers-name-change-order-pdf": "Change order (PDF)",
    "papers-for-change-order-pdf": (
        "Work beyond what was agreed, with its price, to be signed before it is begun; blank "
        "where none was entered."
    ),
    "papers-name-invoice-pdf": "Invoice (PDF)",
    "papers-for-invoice-pdf": (
        "What was done, what came in, what is to pay; a draft until its number is entered."
    ),
    "papers-name-invoice-xml": "Invoice as data (XML)",
    "papers-for-invoice-xml": "The same for the customer's books: UBL 2.1 by EN 16931.",
    "papers-lacks": "Enter first:",
}
