"""Entries made for tests: short to write, kept as a book would keep them."""

from __future__ import annotations

from datetime import datetime, timedelta

from farwall.facts.log import Entry, Kept
from farwall.facts.plan import Plan


class Log:
    """Makes entries of one device at minutes of a plan's day, each with the next id and number."""

    def __init__(self, plan: Plan, device: str = "phone") -> None:
        self.plan = plan
        self.device = device
        self.kept: list[Kept] = []

    def __call__(
        self,
        word: str,
        at_min: float,
        *,
        off_s: float | None = 0.0,
        counted: int | None = None,
        received_min: float | None = None,
        era: int = 0,
        clock_s: float | None = None,
        **about: object,
    ) -> Kept:
        """One entry more; the clock of its device is `off_s` ahead of the book's as the book knows.

        clock_s: by how much it is ahead in truth, where the book knows nothing.
        """
        count = len(self.kept) + 1
        start = datetime.fromisoformat(self.plan.starts_at)
        at = start + timedelta(minutes=at_min, seconds=clock_s or off_s or 0.0)
        received = start + timedelta(minutes=at_min if received_min is None else received_min)
        entry = Entry(
            id=f"{self.device}-{count:04d}",
            job="quince",
            word=word,
            at=at.isoformat(),
            device=self.device,
            number=count if counted is None else counted,
            era=era,
            about=about,  # type: ignore[arg-type]
        )
        made = Kept(entry, count, received.isoformat(), off_s)
        self.kept.append(made)
        return made
