"""The few figures of a plan that a line tells, and what a changed fact gained against them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from farwall.facts.plan import Field, Plan
from farwall.nouns import dataclass
from farwall.papers.words import room_names

BEFORE = "figures-before"
"""Kind of document: the figures of the plan that a changed fact replaced."""
_TIGHT = 0.25
"""A field is tight that has less than this share of its open time to spare. Rank: guess."""


@dataclass(frozen=True)
class Figures:
    """fit: fields that need nothing more · spare_min: least left of an edge's life, in `tightest`.

    `ends_min` [min] from the start of the plan; `refused`: rooms of fields that cannot be done.
    """

    fields: int
    fit: int
    spare_min: float
    tightest: tuple[str, ...]
    tight: bool
    refused: tuple[str, ...]
    ends_min: float


@dataclass(frozen=True)
class _Row:
    """What counts of a field: its verdict, names of its rooms and of the tightest, minutes."""

    verdict: str
    rooms: tuple[str, ...]
    tightest: tuple[str, ...]
    spare_min: float
    low_min: float
    end_min: float

    @property
    def fits(self) -> bool:
        return self.verdict in {"fits", "helper"} and self.spare_min >= 0


def fits(field: Field) -> bool:
    """Whether a field can be sprayed as the plan has it, its edges alive at the safe end."""
    return field.verdict in {"fits", "helper"} and spare_min(field) >= 0


def spare_min(field: Field) -> float:
    """What is left of the life of the field's tightest edge, at the safe end."""
    if field.tightest is not None:
        return field.tightest.spare_min
    return field.open_time_min.low - field.peak_age_min


def figures_of(plan: Plan) -> Figures:
    """The figures of a plan."""
    rows = []
    for field in plan.fields:
        where = (field.tightest.room,) if field.tightest is not None else field.rooms
        rows.append(_Row(
            field.verdict, tuple(room_names(plan, field.rooms)), tuple(room_names(plan, where)),
            spare_min(field), field.open_time_min.low, field.end_min,
        ))  # fmt: skip
    return _figures(rows)


def figures_in(document: Mapping[str, Any]) -> Figures:
    """The same from a plan as plain values, which is far quicker than reading all of it."""
    rooms = document["inputs"]["floor"]["rooms"]
    names = {one["id"]: one.get("name") or one["id"] for one in rooms}

    def named(ids: Sequence[str]) -> tuple[str, ...]:
        return tuple(names.get(one, one) for one in ids)

    rows = []
    for field in document["fields"]:
        tightest, low = field.get("tightest"), field["open_time_min"]["low"]
        where = [tightest["room"]] if tightest else field["rooms"]
        spare = tightest["spare_min"] if tightest else low - field["peak_age_min"]
        rows.append(_Row(
            field["verdict"], named(field["rooms"]), named(where), spare, low, field["end_min"]
        ))  # fmt: skip
    return _figures(rows)


def _figures(rows: Sequence[_Row]) -> Figures:
    done = [row for row in rows if row.verdict != "cannot"]
    least = min(done, key=lambda row: row.spare_min, default=None)
    refused = [name for row in rows if row.verdict == "cannot" for name in row.rooms]
    return Figures(
        fields=len(rows),
        fit=sum(row.fits for row in rows),
        spare_min=round(least.spare_min, 2) if least else 0.0,
        tightest=least.tightest if least else (),
        tight=least is not None and least.spare_min < _TIGHT * least.low_min,
        refused=tuple(dict.fromkeys(refused)),
        ends_min=round(max((row.end_min for row in done), default=0.0), 2),
    )


def noted(figures: Figures, *, version: int, starts_at: str, told: str) -> dict[str, Any]:
    """What is kept of a plan before its facts change: its figures, and its facts in words."""
    return {
        "facts": version, "fields": figures.fields, "fit": figures.fit,
        "spare_min": figures.spare_min, "ends_min": figures.ends_min,
        "starts_at": starts_at, "told": told,
    }  # fmt: skip
