"""The page of amounts due: what was agreed and changed, what is due when, what came in."""

from __future__ import annotations

from datetime import date
from typing import Any

from farwall.evidence import rank_words
from farwall.job.office import Office, OfficeGround
from farwall.papers.office.money_words import grouped
from farwall.price.money import amount
from farwall.web.pages.when import date_told
from farwall.web.words import said

_UNITS = {
    "change_per_h": "due-unit-money", "standby_per_h": "due-unit-money",
    "pay_days": "due-unit-days",
}  # fmt: skip


def due_shown(ground: OfficeGround, office: Office) -> dict[str, Any]:
    """What the template is given."""
    del ground
    owed = office.owed
    return {
        "owed": owed,
        "money": grouped,
        "waited": amount(owed.standby) != 0,
        "off": amount(owed.by_area) != 0,
        "parts": [
            {
                "name": said(f"due-part-{one.part}"),
                "one": one,
                "due_on": _day(one.due_on),
                "paid_on": _day(one.paid_on),
            }
            for one in owed.parts
        ],
        "figures": [
            (said(f"due-figure-{one.name}"), _figure(one.name, one.value, owed.currency),
             rank_words(one.rank, one.source) if one.rank else "")
            for one in owed.figures
        ],
    }  # fmt: skip


def _figure(name: str, value: str, currency: str) -> str:
    if not value:
        return said("due-not-told")
    unit = _UNITS.get(name, "due-unit-percent")
    shown = grouped(value) if unit == "due-unit-money" else value
    return said(unit, value=shown, currency=currency)


def _day(text: str) -> str:
    return date_told(date.fromisoformat(text)) if text else ""
