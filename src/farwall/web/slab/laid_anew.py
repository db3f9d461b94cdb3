"""The rest of a day as the book laid it anew, for a phone that goes on with it."""

from __future__ import annotations

from typing import Any

from farwall.job.aside import of_the_floor
from farwall.nouns import dataclass
from farwall.store.book import Book
from farwall.web.live_jobs import REST, Planned
from farwall.web.slab.sheet import sheet_of
from farwall.web.slab.washing import washing_of

Json = dict[str, Any]


@dataclass(frozen=True)
class Laid:
    """for_phone: `upto` place of the log, `at` minute of the plan, `entries` known, `sheet` or None
    with the reasons in `no` · stale: something was entered since, or nothing was ever laid anew.
    """

    for_phone: Json
    stale: bool


def rest_for(book: Book, job: str, found: Planned) -> Laid:
    """What the book has. A rest with faults, or of other facts than the plan's, is none."""
    places = [one.place for one in of_the_floor(book.entries(job))]
    last = max(places, default=0)
    rest = book.document(REST, job)
    if rest is None:
        return Laid({"upto": -1, "at": 0.0, "entries": 0, "sheet": None, "no": []}, bool(places))
    plan, no = rest["plan"], [*rest["no"], *rest["faults"]]
    if plan is not None and plan["inputs_hash"] != found.plan.inputs_hash:
        plan, no = None, []
    sheet = None
    if plan is not None and not no:
        washing = washing_of(found.job, found.plan)
        sheet = sheet_of(plan, job, wishes=found.job.wishes, washing=washing)
    told = {
        "upto": rest["upto"], "at": rest["at_min"], "sheet": sheet, "no": no,
        "entries": sum(place <= rest["upto"] for place in places),
    }  # fmt: skip
    return Laid(told, rest["upto"] < last)
