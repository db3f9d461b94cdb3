"""A small invented job with a log of money, for the tests of this folder."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.firm import Address, Firm, Party
from farwall.facts.log import Entry, Kept
from farwall.facts.prices import Rates, Tax, Terms
from farwall.job.office import OfficeGround
from farwall.job.office.priced import Cost, Priced
from farwall.job.plan_job import plan_job
from farwall.job.story import story

START = "2026-06-08T08:00:00+00:00"
SALES = Tax("sales tax", 8.25)
FIRM = Firm(
    "Harbour Floors", Address(("12 Kiln Row",), "Harbour Town", "TX", "00123", "US"),
    tax_id="00-7654321", company_id="00-1234", account="000 123 456",
)  # fmt: skip
OWNER = Party("R. Invented", Address(("1 Alder Lane",), "Alder", "TX", "00124", "US"))
PRICED = Priced(
    (
        Cost("mask", "0", "4810.00", "0", "guess"),
        Cost("stain", "0", "1290.00", "0", "guess", group="materials"),
    ),
    "6100.00", "USD",
)  # fmt: skip


@cache
def _planned():
    made = job(TWO_ROOMS, id="two", starts_at=START)
    return made, plan_job(made)


def ground(*entries, taxes=(SALES,), rates=None, terms=None, on="2026-06-20", **changed):
    """The job with entries `(word, day, {…})`, the day a text such as `06-08`."""
    made, plan = _planned()
    prices = replace(
        made.prices, taxes=tuple(taxes), rates=rates or Rates(), terms=terms or Terms()
    )  # fmt: skip
    made = replace(made, prices=prices, firm=FIRM, customer=OWNER, **changed)
    kept = [
        Kept(Entry(f"id-{n}", "two", word, f"2026-{day}T09:{n:02d}:00+00:00", number=n, device="d",
                   about=about), n, START, 0.0)
        for n, (word, day, about) in enumerate(entries, start=1)
    ]  # fmt: skip
    return OfficeGround(made, plan, story=story(plan, kept), kept=tuple(kept), on=on)


def currency(made: OfficeGround, code: str) -> OfficeGround:
    prices = replace(made.job.prices, currency=code)
    return replace(made, job=replace(made.job, prices=prices))
