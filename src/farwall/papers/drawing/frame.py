"""From metres of the floor, y up, to units of the drawing, y down."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.papers.svg import numbers


@dataclass(frozen=True)
class Frame:
    """`x` = left + (X - west) · scale, `y` = top + (north - Y) · scale; scale in units a metre."""

    west: float
    north: float
    left: float
    top: float
    scale: float

    def at(self, point: Point) -> Point:
        """A place of the floor on the drawing."""
        return (
            self.left + (point[0] - self.west) * self.scale,
            self.top + (self.north - point[1]) * self.scale,
        )

    def back(self, place: Point) -> Point:
        """A place of the drawing on the floor. [m]"""
        return (
            self.west + (place[0] - self.left) / self.scale,
            self.north - (place[1] - self.top) / self.scale,
        )

    def shape(self, shape: BaseGeometry) -> BaseGeometry:
        """A shape of the floor on the drawing."""
        return shapely.transform(shape, self._all)

    def _all(self, places: np.ndarray) -> np.ndarray:
        return np.column_stack(
            [
                self.left + (places[:, 0] - self.west) * self.scale,
                self.top + (self.north - places[:, 1]) * self.scale,
            ]
        )

    def path(self, shape: BaseGeometry) -> str:
        """SVG path data of all rings of a shape of the floor; fill it with evenodd."""
        return path_data(self.shape(shape))


def path_data(shape: BaseGeometry) -> str:
    """SVG path data of all rings of the polygons in a shape already on the drawing."""
    data = []
    for part in shapely.get_parts(shape).tolist():
        if isinstance(part, shapely.Polygon) and not part.is_empty:
            rings = [shapely.get_coordinates(ring) for ring in (part.exterior, *part.interiors)]
            data += [f"M{numbers(ring[:-1])}Z" for ring in rings]
    return "".join(data)


def frame_for(
    bounds: tuple[float, float, float, float],
    *,
    left: float,
    top: float,
    width: float,
    height: float,
    most_scale: float = 1e9,
) -> Frame:
    """The frame that shows `bounds` (metres) as large as the given space allows, centred across."""
    west, south, east, north = bounds
    scale = min(width / max(east - west, 1e-6), height / max(north - south, 1e-6), most_scale)
    return Frame(
        west=west,
        north=north,
        left=left + (width - (east - west) * scale) / 2,
        top=top,
        scale=scale,
    )
