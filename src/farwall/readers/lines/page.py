"""A drawn page (SVG, PDF): freed from bars and grids, its scale told, then read as a sheet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import log

from farwall.facts.reading import Note, Reading
from farwall.nouns import dataclass
from farwall.readers.lines.bars import Bar, find_bars, without
from farwall.readers.lines.dimensions import without_dimensions
from farwall.readers.lines.lattice import lattice_lines
from farwall.readers.lines.lettered import settle, with_units
from farwall.readers.lines.read import read_sheet
from farwall.readers.lines.sheet import Calibration, Role, Sheet
from farwall.readers.lines.telling import Told, door_radii, tell_scale

_USUAL_LEAF_M = 0.85  # to find rooms by while the scale is unknown: common practice, no source
_LEAF_SPREAD = 1.6


@dataclass(frozen=True)
class Page:
    """The sheet, notes on what was left aside, and the paper length of its unit [m] if known."""

    sheet: Sheet
    notes: tuple[Note, ...] = ()
    paper_m_per_unit: float | None = None
    pictures: int = 0


def read_page(page: Page, *, scale_m_per_unit: float | None = None) -> Reading:
    """The floor on a page. `scale_m_per_unit` [m] overrules what the page tells of its scale."""
    bars = find_bars(page.sheet)
    strokes = without(page.sheet.strokes, bars)
    lattice = lattice_lines([s for s in strokes if s.role is Role.OTHER])
    crossing = set(map(id, lattice))
    strokes = tuple(s for s in strokes if id(s) not in crossing)
    sheet, dimensions = without_dimensions(replace(page.sheet, strokes=strokes))
    measures, bare = with_units(sheet.measures)
    lone = () if settle(measures) else measures
    sheet = replace(sheet, measures=() if lone else measures)
    overruled = scale_m_per_unit is not None
    told = tell_scale(sheet, bars, page.paper_m_per_unit, lone=lone, overruled=overruled)
    reading = read_sheet(told.sheet, scale_m_per_unit=scale_m_per_unit)
    if not overruled and sheet.strokes:
        if reading.scale_m_per_unit is None:
            reading = _asked(told, reading)
        elif told.lone_print:
            reading = replace(reading, asks=(*reading.asks, _check(told.lone_print)))
    left = (*page.notes, *told.notes, *_passed_over(bars, len(lattice), dimensions), *_custom(bare))
    return replace(reading, left=(*reading.left, *left))


def _passed_over(bars: Sequence[Bar], lattice: int, dimensions: int) -> list[Note]:
    notes = []
    if bars:
        count = sum(len(bar.strokes) for bar in bars)
        what = f"{count} lines of {bars[0].source} are no walls and were left aside."
        notes.append(Note("bar-aside", what))
    if lattice:
        what = f"{lattice} lines cross the whole drawing both ways, as a column grid does."
        notes.append(Note("grid-lines", f"{what} They are no walls and were left aside."))
    if dimensions:
        what = f"{dimensions} dimensions drawn as loose lines were read, and left out of the walls."
        notes.append(Note("dimension-lines", what))
    return notes


def _custom(bare: int) -> list[Note]:
    if not bare:
        return []
    what = f"{bare} lettered numbers have no unit: those like 3500 were taken for millimetres, "
    return [Note("unit-custom", f"{what}those like 3.50 for metres, as is the custom.")]


def _check(printed: str) -> Note:
    what = (
        f"Only the printed scale {printed} tells the size, and a page that was copied or saved "
        "smaller keeps its words. Measure one wall with a tape before you order."
    )
    return Note("check-scale", what)


def _asked(told: Told, reading: Reading) -> Reading:
    """The reading with rooms found by a likely scale, no metre told, and the scale asked for."""
    own = [note for note in reading.asks if note.code == "scale"]
    ask = own[0] if own and told.sheet.calibrations else _ask(told)
    working = _working(told)
    if working:
        found = read_sheet(told.sheet, scale_m_per_unit=working)
        kept = [note for note in found.mended if not note.code.startswith("scale-")]
        differ = [note for note in reading.mended if note.code == "scales-differ"]
        reading = replace(found, mended=(*differ, *kept))
    asks = [note for note in reading.asks if note.code != "scale"]
    return replace(
        reading, scale_m_per_unit=None, length_unit="", header_unit="", asks=(ask, *asks)
    )


def _working(told: Told) -> float | None:
    """A scale to find rooms by: one of those told, by which doors come nearest to doors' size."""
    told_scales = [one.m_per_unit for one in (*told.offers, *told.sheet.calibrations)]
    radii = door_radii(told.sheet)
    if not radii:
        return told_scales[0] if told_scales else None
    usual = _USUAL_LEAF_M / radii[len(radii) // 2]
    best = min(told_scales, key=lambda scale: abs(log(scale / usual)), default=usual)
    return best if abs(log(best / usual)) < log(_LEAF_SPREAD) else usual


def _ask(told: Told) -> Note:
    """The question for the scale, with all that the page offers as an answer."""
    if not told.offers:
        what = (
            "Nothing on this page tells its scale. Measure one wall with a tape and say how many "
            "metres one drawing unit is, with --scale."
        )
        return Note("scale", what)
    radii = door_radii(told.sheet)
    leaf = radii[len(radii) // 2] if radii else 0.0
    offered = "; ".join(_offer(offer, leaf) for offer in told.offers)
    speaks = "speaks for it" if len(told.offers) == 1 else "decides between them"
    what = (
        f"{offered[0].upper()}{offered[1:]}. Nothing else on the page {speaks}: measure one wall, "
        f"and if it fits, say --scale {told.offers[0].m_per_unit:.4g}."
    )
    return Note("scale", what)


def _offer(offer: Calibration, leaf: float) -> str:
    words = f"{offer.source} tells {offer.m_per_unit:.4g} m a unit"
    return f"{words} (a door's leaf would be {leaf * offer.m_per_unit:.2f} m)" if leaf else words
