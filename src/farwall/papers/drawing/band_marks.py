"""The bands of a field: their fill by age, a number where each begins, an arrow along it."""

from __future__ import annotations

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry
from shapely.ops import substring

from farwall.facts.plan import Band, Field
from farwall.floor.geometry import Point
from farwall.papers.drawing import marks
from farwall.papers.drawing.band_lines import centre_line
from farwall.papers.drawing.second_marks import stripe
from farwall.papers.drawing.sheet import Sheet
from farwall.papers.ink import PAPER, ramp_colour

BandLine = tuple[list[Point], float, BaseGeometry]
"""A band's middle line, how far along it its number reaches, and its shape on the drawing."""
_LEAST_ARROW, _MOST_ARROW = 16.0, 150.0


def fill_bands(sheet: Sheet, field: Field) -> None:
    """Each band in the colour of its age, a pale line between two, the second sprayer's striped."""
    bands = sorted(field.bands, key=lambda band: band.order)
    begun = sorted({band.start_min for band in bands})
    for band in bands:
        k = begun.index(band.start_min)
        sheet.fill(
            band.polygon.shape, fill=ramp_colour(k, len(begun)), stroke=PAPER, stroke_width=1.1
        )
        if band.sprayer == 2:
            stripe(sheet, band.polygon.shape, age=k / max(len(begun) - 1, 1))


def number_bands(sheet: Sheet, field: Field) -> list[BandLine]:
    """Each band's number where it begins; returns each middle line, how far the number reaches,
    and the band itself.

    All numbers of a map have one size, the largest that finds room in every band.
    """
    bands = sorted(field.bands, key=lambda band: band.order)
    lines = [
        [
            sheet.frame.at(point)
            for point in centre_line(band, band_m=sheet.plan.inputs.tools.band_m)
        ]
        for band in bands
    ]
    lettering = sheet.lettering
    shapes = [_roomy(sheet, band) for band in bands]
    for size in (lettering.head, lettering.body, lettering.small):
        kept = len(sheet.board.taken)
        places = [
            _number_place(sheet, band, shape, line, size)
            for band, shape, line in zip(bands, shapes, lines, strict=True)
        ]
        if all(places) or size == lettering.small:
            break
        sheet.board.give_back(kept)
    reached = []
    for band, shape, line, place in zip(bands, shapes, lines, places, strict=True):
        words = sheet.words((str(band.order),), size, bold=True)
        if place is not None:
            sheet.write(words, place, cased=True)
        reached.append((line, _reached(line, place, words.width), shape))
    return reached


def draw_band_arrows(sheet: Sheet, lines: list[BandLine]) -> None:
    """An arrow the way each band is sprayed, in it, beyond its number and clear of all words."""
    for line, reached, shape in lines:
        _band_arrow(sheet, line, reached, shape)


def _roomy(sheet: Sheet, band: Band) -> BaseGeometry:
    """A band on the drawing, a hair wider than it is."""
    place = sheet.frame.shape(band.polygon.shape).buffer(1.0)
    shapely.prepare(place)
    return place


def _number_place(
    sheet: Sheet, band: Band, place: BaseGeometry, line: list[Point], size: float
) -> Point | None:
    """A free place for the number: where the band begins, else along it, else anywhere in it."""
    words = sheet.words((str(band.order),), size, bold=True)
    centres: list[Point] = []
    if line:
        track = shapely.LineString(line)
        steps = words.width * 0.9 + 4.0 * np.arange(max(1, int(track.length / 4)))
        spots = shapely.line_interpolate_point(track, np.minimum(steps, track.length))
        centres = [(x, y) for x, y in shapely.get_coordinates(spots).tolist()]
        boxes = shapely.box(*np.array([words.box(centre) for centre in centres]).T)
        inside = shapely.contains(place, boxes).tolist()
        centres = [centre for centre, fits in zip(centres, inside, strict=True) if fits]
    return sheet.board.place(words, centres) or sheet.board.place_inside(words, place)


def _reached(line: list[Point], place: Point | None, width: float) -> float:
    """How far along the band's line its number reaches. [units]"""
    if len(line) < 2 or place is None:
        return 0.0
    track = shapely.LineString(line)
    if track.distance(shapely.Point(place)) > 2:
        return 0.0
    return float(track.project(shapely.Point(place))) + width / 2 + 4


def _band_arrow(sheet: Sheet, line: list[Point], used: float, shape: BaseGeometry) -> None:
    """An arrow along the middle of the band, beyond its number, as far as nothing is in the way."""
    if len(line) < 2:
        return
    track = shapely.LineString(line)
    start, end = used, track.length - 6
    if end - start < 16:
        return
    # A line around a corner cuts it: an arrow over what is kept dry would mislead.
    rest = shapely.intersection(substring(track, start, end), shape)
    hit = sheet.board.boxes_on(rest.buffer(2.5))
    clear = shapely.difference(rest, shapely.union_all(hit).buffer(3.5)) if len(hit) else rest
    pieces = [part for part in shapely.get_parts(clear).tolist() if part.length >= 16]
    if not pieces:
        return
    piece = max(pieces, key=lambda part: part.length)
    if piece.length > 150:
        piece = substring(piece, 0, 150)
    points = [(x, y) for x, y in piece.coords]
    marks.arrow(sheet.svg, points)
    sheet.board.take_line(points, 2)
