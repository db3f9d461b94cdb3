"""Values out of loose JSON: every one that is not as promised is written down, none raises."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from typing import TypeGuard

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.spray.check.nouns import Path

Row = Sequence[float]
Limits = tuple[float, ...]
METRES, MINUTES = 1e5, 1e6
PLACE: Limits = (METRES, METRES)
MOMENT: Limits = (METRES, METRES, MINUTES)
_MISSING = object()


@dataclass(frozen=True)
class At:
    """A place in loose JSON: the value there, its path in words, where mistakes are noted."""

    value: object
    where: str
    mistakes: list[str]

    def get(self, key: str) -> At:
        """The place under `key`."""
        if not isinstance(self.value, Mapping):
            self.mistake("an object is expected")
            return At(None, f"{self.where}.{key}".lstrip("."), [])
        return At(self.value.get(key, _MISSING), f"{self.where}.{key}".lstrip("."), self.mistakes)

    @property
    def given(self) -> bool:
        """Whether there is anything but null."""
        return self.value is not _MISSING and self.value is not None

    def mistake(self, what: str) -> None:
        """Write down what is wrong here."""
        problem = "is missing" if self.value is _MISSING else what
        self.mistakes.append(f"{self.where or 'the file'}: {problem}.")

    def items(self, *, at_least: int = 0) -> list[At]:
        """The places of a list."""
        if not isinstance(self.value, list | tuple):
            self.mistake("a list is expected")
            return []
        if len(self.value) < at_least:
            self.mistake(f"at least {at_least} entries are expected")
            return []
        return [
            At(entry, f"{self.where}[{index}]", self.mistakes)
            for index, entry in enumerate(self.value)
        ]

    def text(self) -> str:
        """A text."""
        if not isinstance(self.value, str):
            self.mistake("a text is expected")
            return ""
        if any("\ud800" <= letter <= "\udfff" for letter in self.value):
            self.mistake("half of a surrogate pair is no text")
            return ""
        return self.value

    def text_or(self, default: str) -> str:
        """A text, or `default` where none is given."""
        return self.text() if self.given else default

    def truth(self) -> bool:
        """True or false."""
        if isinstance(self.value, bool):
            return self.value
        self.mistake("true or false is expected")
        return False

    def number(self, low: float, high: float) -> float:
        """A number from `low` to `high`; NaN, infinity and true are none."""
        value = self.value
        if isinstance(value, bool) or not isinstance(value, int | float):
            self.mistake("a number is expected")
            return max(low, 0.0)
        if not low <= value <= high:
            self.mistake(f"a number from {low:g} to {high:g} is expected")
            return max(low, 0.0)
        return float(value)

    def number_or_none(self, low: float, high: float) -> float | None:
        """A number, or None where none is given."""
        return self.number(low, high) if self.given else None

    def whole(self, low: int, high: int) -> int:
        """A whole number."""
        value = self.number(low, high)
        if value != int(value):
            self.mistake("a whole number is expected")
        return int(value)

    def texts(self) -> tuple[str, ...]:
        """A list of texts."""
        return tuple(item.text() for item in self.items())

    def row(self, limits: Limits) -> Row:
        """A list of as many numbers as there are limits, each within its own."""
        numbers = self.items()
        if len(numbers) != len(limits):
            if isinstance(self.value, list | tuple):
                self.mistake(f"a list of {len(limits)} numbers is expected")
            return (0.0,) * len(limits)
        return tuple(
            item.number(-limit, limit) for item, limit in zip(numbers, limits, strict=True)
        )

    def rows(self, limits: Limits, *, at_least: int) -> list[Row]:
        """A list of such lists."""
        if _plain(self.value, limits) and len(self.value) >= at_least:
            return self.value
        return [item.row(limits) for item in self.items(at_least=at_least)]

    def point(self) -> tuple[float, float]:
        """x and y in metres."""
        x, y = self.row(PLACE)
        return (x, y)

    def line(self) -> shapely.LineString:
        """A line of two points or more."""
        return shapely.LineString(self.rows(PLACE, at_least=2) or [(0.0, 0.0), (0.0, 0.0)])

    def path(self) -> Path:
        """Rows of x, y, minutes; a single row stands twice."""
        rows = self.rows(MOMENT, at_least=1) or [(0.0, 0.0, 0.0)]
        return np.array(rows if len(rows) > 1 else rows * 2, dtype=np.float64)

    def polygon(self) -> BaseGeometry:
        """A GeoJSON Polygon, mended where its rings cross themselves; maybe of several parts."""
        if self.get("type").given and self.get("type").value != "Polygon":
            self.get("type").mistake('"Polygon" is expected')
        rings = [ring.rows(PLACE, at_least=3) for ring in self.get("coordinates").items(at_least=1)]
        if not rings or any(len(ring) < 3 for ring in rings):
            return shapely.Polygon()
        return mended(shapely.Polygon(rings[0], rings[1:]))


def _plain(value: object, limits: Limits) -> TypeGuard[list[Row]]:
    """Whether a list holds nothing but good rows: the quick way for long paths."""
    return (
        isinstance(value, list | tuple)
        and {*map(type, value)} <= {list, tuple}
        and {*map(len, value)} == {len(limits)}
        and {*map(type, chain.from_iterable(value))} <= {float, int}
        and all(
            all(map(limit.__ge__, map(abs, column)))
            for limit, column in zip(limits, zip(*value, strict=True), strict=True)
        )
    )


def mended(shape: BaseGeometry) -> BaseGeometry:
    """The same region as valid polygons only."""
    if not shape.is_valid:
        shape = shapely.make_valid(shape)
    if shape.geom_type in {"Polygon", "MultiPolygon"}:
        return shape
    parts = shapely.get_parts(shape)
    return shapely.union_all(parts[shapely.get_dimensions(parts) == 2])
