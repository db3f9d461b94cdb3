"""How much of the light a wet floor mirrors into the eye, by the angle it is looked at."""

from __future__ import annotations

from math import asin, atan, cos, degrees, radians, sin

WATER = 1.333
"""Refractive index of water in visible light ([iupac-brewster])."""


def brewster_deg(index: float = WATER) -> float:
    """The angle from the plumb line at which mirrored light is all of one way of swing. [deg]

    Source: [iupac-brewster], arctan of the refractive index; 53° for water.
    """
    return degrees(atan(index))


def mirrored_share(angle_deg: float, index: float = WATER) -> tuple[float, float]:
    """Shares of light mirrored by a smooth wet face, swinging across and along the plane of sight.

    Unpolarised light is mirrored with their mean; a filter turned rightly leaves the second only.
    angle_deg: between the view and the plumb line, 0 to 90. Raises ValueError outside.
    Source: [fresnel-1823]. A floor's film is not smooth, and mirrors wider and less.
    """
    if not 0 <= angle_deg <= 90:
        raise ValueError(f"{angle_deg} is no angle from the plumb line")
    outside = radians(angle_deg)
    inside = asin(sin(outside) / index)
    across = (cos(outside) - index * cos(inside)) / (cos(outside) + index * cos(inside))
    along = (index * cos(outside) - cos(inside)) / (index * cos(outside) + cos(inside))
    return across**2, along**2
