"""The words of the log that tell of money: agreed, changed, waited, invoiced, paid.

Amounts are text, so that no cent is lost in a float; without tax where nothing else is said.
"""

from __future__ import annotations

from farwall.facts.log_word import Carried, Word

DUE = ("deposit", "progress", "final")
"""What is due when: before stain is bought, when the colour is in and rinsed, at hand-over."""
PARTS = (*DUE, "credit")

_NOTE = Carried("note", "text", "anything to add")
_WHO = Carried("agreed_by", "text", "who said yes, by name")
_FILE = Carried("file", "hash", "a photo of it")

MONEY_WORDS = (
    Word("accepted", "the price was agreed", (
        Carried("amount", "amount", "the price, without tax"), _WHO,
    ), (
        Carried("offer", "text", "which offer, by its id"),
        Carried("area_m2", "m2", "the area that it was agreed for"), _FILE, _NOTE,
    )),
    Word("change", "work beyond what was agreed, or less of it", (
        Carried("what", "text", "what is done instead or besides"), _WHO,
    ), (
        Carried("hours", "hours", "hours of all hands together"),
        Carried("materials", "amount", "what its materials cost the firm"),
        Carried("amount", "amount", "its price without tax, where one was agreed"),
        Carried("standby", "yes", "whether the crew waits for it"),
        Carried("room", "room", "the room"), _FILE,
        Carried("signed", "hash", "a photo of the signed paper"), _NOTE,
    )),
    Word("standby", "the crew waited for others", (
        Carried("hours", "hours", "how long, by the clock"),
        Carried("why", "text", "for whom, and why"),
    ), (Carried("agreed_by", "text", "who said yes, by name"), _NOTE)),
    Word("invoiced", "an invoice was written", (
        Carried("number", "text", "its number"),
        Carried("part", "choice", "for what", PARTS),
    ), (
        Carried("amount", "amount", "what it asks for, with tax"),
        Carried("corrects", "text", "number of the invoice that it corrects"),
        Carried("allowance", "amount", "taken off the whole"),
        Carried("charge", "amount", "put on the whole"),
        Carried("why", "text", "the reason"), _NOTE,
    )),
    Word("paid", "money came in", (
        Carried("amount", "amount", "how much, with tax"),
    ), (
        Carried("part", "choice", "for what", DUE),
        Carried("how", "text", "cheque, transfer, cash"), _NOTE,
    )),
)  # fmt: skip
OFFICE_WORDS = frozenset({"accepted", "invoiced", "paid"})
"""Those that only whoever may change a house's facts may enter."""
