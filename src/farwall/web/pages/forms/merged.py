"""What was typed into older facts, laid over the newest: only blanks that were changed count."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from farwall.nouns import dataclass
from farwall.web.pages.forms.asked import YES, Asked, Field, Row
from farwall.web.pages.forms.nouns import Part, Path
from farwall.web.pages.forms.places import value_at
from farwall.web.pages.forms.told import Slip, name_of, typed_in
from farwall.web.words import said

_FRESH = "fresh"
"""Instead of its number in the way of a row that is not in the facts yet."""


@dataclass(frozen=True)
class Merged:
    """told: the newest form as it would be typed with both. slips: what is to be looked at."""

    told: dict[str, str]
    slips: tuple[Slip, ...]


def merged(before: Asked, now: Asked, told: Mapping[str, Any]) -> Merged:
    """What was typed into the form of the facts `before`, as typing into the form of those `now`.

    A blank that stands as it stood takes what the facts say now, so that nobody's figures are
    emptied by a page that never showed them. Blanks are found by their place in the facts: a room
    by its id, a new row as a new row; where rows are fewer now, which is which is not guessed.
    Pure.
    """
    there = {way: field for way, _, field in _placed(now, fewer_than=before)}
    found: dict[str, str] = {}
    slips: list[Slip] = []
    lost = False
    for way, row, field in _placed(before):
        typed, was, own = typed_in(told, field, before), before.text(field), there.get(way)
        lost = lost or (told.get(row.away) == YES and not row.fresh)
        if typed is None or typed == was:
            continue
        if own is None:
            lost = True
            continue
        stands = now.text(own)
        _put(found, own, typed, now)
        if stands not in {was, typed}:
            both = said("facts-both", text=stands) if stands else said("facts-both-empty")
            slips.append(Slip(own.name, name_of(own), both))
    top = [said("facts-other-merged"), *([said("facts-row-lost")] if lost else [])]
    return Merged(found, (*(Slip("", "", one) for one in top), *slips))


def _put(found: dict[str, str], field: Field, typed: str, now: Asked) -> None:
    """A blank as a browser sends it, its ticks one by one."""
    found[field.name] = typed
    several = field.hint.choices if field.hint.kind == "several" else ()
    chosen = [part.strip() for part in typed.split(",")]
    ids = tuple(now.ticks(field)) or several
    found.update({f"{field.name}.{one}": YES for one in ids if str(one) in chosen})


def _placed(asked: Asked, *, fewer_than: Asked | None = None) -> Iterator[tuple[Path, Row, Field]]:
    """Every blank with its place in the facts, but those of rows of which there were more."""
    for part in asked.form.parts:
        fewer = fewer_than is not None and _count(part, asked) < _count(part, fewer_than)
        for row in asked.rows(part):
            if fewer and not row.fresh:
                continue
            for sentence in asked.sentences(part, row):
                for blank in sentence.blanks:
                    field = row.field(blank)
                    yield _way(part, row, field), row, field


def _count(part: Part, asked: Asked) -> int:
    return len(value_at(asked.held, part.path) or ()) if part.each == "rows" else 0


def _way(part: Part, row: Row, field: Field) -> Path:
    if not row.fresh:
        return field.path
    return (*part.path, _FRESH, *field.path[len(row.path) :])
