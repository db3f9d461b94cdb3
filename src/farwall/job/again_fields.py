"""Fields of a plan moved, joined and numbered again."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from farwall.facts.plan import Band, Field, Refill, Walk

_SAME_M2 = 0.002


def with_walks(past: Sequence[Field], walks: Sequence[Walk]) -> list[Field]:
    """The fields, of which the last to end has these walks too."""
    last = max(past, key=lambda field: field.end_min)
    return [replace(f, walks=(*f.walks, *walks)) if f is last else f for f in past]


def as_drawn(field: Field, drawn: Mapping[str, Band]) -> Field:
    """Bands that are walked as planned have the very outline of the plan."""
    bands = tuple(
        replace(band, polygon=drawn[band.id].polygon)
        if band.id in drawn and _same(drawn[band.id], band)
        else band
        for band in field.bands
    )
    return replace(field, bands=bands)


def _same(drawn: Band, band: Band) -> bool:
    """Whether it is the band of the plan; one laid anew may be sprayed from the same place."""
    if _way(drawn) != _way(band):
        return False
    one, other = drawn.polygon.shape, band.polygon.shape
    return bool(one.symmetric_difference(other).area <= _SAME_M2)


def _way(band: Band) -> list[tuple[float, float]]:
    return [(x, y) for x, y, _ in band.path]


def joined(past: Field | None, field: Field) -> Field:
    """A field with what was walked and filled for its done bands."""
    if past is None:
        return field
    return replace(
        field,
        walks=(*past.walks, *field.walks),
        refills=(*past.refills, *field.refills),
    )


def numbered(fields: Iterable[Field], first: int) -> tuple[Field, ...]:
    """The fields in the order of their first band, numbered from `first` on."""
    ordered = sorted(fields, key=lambda field: field.bands[0].start_min)
    return tuple(replace(field, order=first + n) for n, field in enumerate(ordered))


def area_m2(bands: Iterable[Band]) -> float:
    """Floor of these bands. [m2]"""
    return round(sum(band.polygon.shape.area for band in bands), 4)


def first_min(fields: Sequence[Field]) -> float:
    """The first moment of a coat."""
    found = [w.path[0][2] for f in fields for w in f.walks] + [f.start_min for f in fields]
    return min([*found, *(r.at_min for f in fields for r in f.refills)])


def last_min(fields: Sequence[Field]) -> float:
    """When the last walk of a coat is done."""
    return max([w.path[-1][2] for f in fields for w in f.walks] + [f.end_min for f in fields])


def moved(field: Field, by_min: float) -> Field:
    """The same field so many minutes later."""
    if by_min == 0:
        return field

    def later(minute: float) -> float:
        return round(minute + by_min, 4)

    return replace(
        field,
        start_min=later(field.start_min),
        end_min=later(field.end_min),
        bands=tuple(
            replace(
                band,
                start_min=later(band.start_min),
                end_min=later(band.end_min),
                path=tuple((x, y, later(t)) for x, y, t in band.path),
            )
            for band in field.bands
        ),
        refills=tuple(_later_refill(refill, by_min) for refill in field.refills),
        walks=tuple(
            Walk(walk.who, tuple((x, y, later(t)) for x, y, t in walk.path)) for walk in field.walks
        ),
    )


def _later_refill(refill: Refill, by_min: float) -> Refill:
    return replace(refill, at_min=round(refill.at_min + by_min, 4))
