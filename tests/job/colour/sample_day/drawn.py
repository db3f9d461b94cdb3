"""A house with samples to make, and entries of a sample day drawn or written down."""

from __future__ import annotations

import json
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from farwall.facts.job import Job
from farwall.facts.log import Entry, Kept
from farwall.job.story.order import in_order
from farwall.readers.job_json import job_from

EXAMPLES = Path(__file__).resolve().parents[4] / "examples"


def quince(**changes: Any) -> Job:
    """Quince Street without its samples, with keys changed."""
    facts = json.loads((EXAMPLES / "quince-street" / "job.json").read_text())
    facts.pop("samples")
    return job_from({**facts, **changes}, "The job")


class Told:
    """Entries of one phone, at minutes of the course."""

    def __init__(self, starts_at: str, name: str = "e") -> None:
        self.starts_at, self.name = starts_at, name
        self.entries: list[Entry] = []

    def __call__(self, word: str, at_min: float, **about: Any) -> Entry:
        """One more."""
        number = len(self.entries) + 1
        at = datetime.fromisoformat(self.starts_at) + timedelta(minutes=at_min)
        made = Entry(f"{self.name}-{number:03d}", "q", word, at.isoformat(timespec="milliseconds"),
                     "", "phone", number, 0, about)  # fmt: skip
        self.entries.append(made)
        return made

    @property
    def kept(self) -> list[Kept]:
        """As the book keeps them."""
        return [Kept(one, place, one.at, 0.0) for place, one in enumerate(self.entries, 1)]

    @property
    def happened(self):
        """In order, struck ones out."""
        return in_order(self.kept, starts_at=self.starts_at).happened


STATES = ("dry", "clean wet", "sealed")


_LAID = {
    "before_kg": 2.3, "after_kg": 2.1, "laid_ml": 150, "slab_c": 19.0, "air_c": 21.0,
    "rh_percent": 48, "drop_s": 12, "area_m2": 0.4, "coat": "second", "over": "A1",
}  # fmt: skip
_WASHED = {"scrubs": 3, "ph": 7.5, "rag": "clean", "held": "holds", "dwell_h": 5.0}


def _some(dice: Any, of: dict[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in of.items() if dice.random() < 0.4}


def _about(dice: Any, word: str, at: float) -> dict[str, Any]:
    """What a word carries besides the sample."""
    seen = {"state": dice.choice(STATES), **_some(dice, {"light": dice.choice(("day", "lamp"))})}
    return {
        "sample-laid": {"cut": "1:1", **_some(dice, _LAID)},
        "sample-sheen-lost": {"after_min": at},
        "sample-dry": {"after_min": at},
        "sample-washed": _some(dice, _WASHED),
        "photo": seen,
        "sample-seen": seen,
        "sample-sealed": {},
        "sample-judged": {"verdict": dice.choice(("light", "right", "dark"))},
        "sample-approved": {"approved_by": "Invented Owner"},
    }[word]


_WORDS = {"sample-laid": 34, "sample-sheen-lost": 12, "sample-dry": 12, "sample-washed": 10,
          "photo": 6, "sample-seen": 6, "sample-sealed": 8, "sample-judged": 6,
          "sample-approved": 2, "struck": 4}  # fmt: skip


def drawn_day(dice: Any, course: Any, name: str) -> Told:
    """Words of a sample day in no good order, with slips, photos and names of nobody's plan."""
    told = Told(course.starts_at, name)
    ids = [one.id for one in course.samples[:6]] + ["closet 9", "b1"]
    at = 0.0
    for _ in range(dice.randint(0, 26)):
        at += dice.choice((0.5, 3.0, 11.0, 45.0, 200.0, 700.0))
        (word,) = dice.choices(list(_WORDS), list(_WORDS.values()))
        if word == "struck":
            if told.entries:
                told("struck", at, entry=dice.choice(told.entries).id)
            continue
        told(word, at, sample=dice.choice(ids), **_about(dice, word, at))
    return told
