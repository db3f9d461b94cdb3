"""Which unit the drawing is really in: the header's word, tested against what is drawn.

Lettered dimensions, door size codes beside swings, stated room sizes and further calibrations
measure the scale (`scales`); swing radii and the size of the whole only make it likely. The header
is believed unless what is drawn speaks against it; what differs is told with both figures.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import log

from farwall.facts.reading import Note
from farwall.nouns import dataclass
from farwall.readers.lines.scales import (
    METRES,
    Scale,
    bare_scale,
    find_evidence,
    grouped,
    unit_near,
)
from farwall.readers.lines.sheet import Role, Sheet

HEADER_UNITS = {
    1: "in", 2: "ft", 4: "mm", 5: "cm", 6: "m", 10: "yd", 14: "dm", 21: "ft", 22: "in", 23: "yd",
}  # fmt: skip
"""A header's codes; 21 to 23 are those of US surveyors, 2 millionths longer than the plain ones."""
_METRES = {**METRES, "yd": 0.9144, "dm": 0.1}
"""What a header may name. Nobody letters or draws a house in the last two without saying so."""
IN_WORDS = {"in": "inches", "ft": "feet", "mm": "millimetres", "cm": "centimetres", "m": "metres",
            "yd": "yards", "dm": "decimetres"}  # fmt: skip
_ANY_LEAF_M = (0.3, 2.5)
_LEAF_M = (0.55, 1.1)  # a single leaf's usual width: common practice, no source
_USUAL_HOUSE_M = 15.0
_HOUSE_M = (1.0, 250.0)  # the longer side of a floor plan: common practice, no source
_MOST_TOLD = 5


@dataclass(frozen=True)
class UnitFinding:
    """The unit settled on; `scale` is None when nobody can know it from the file."""

    scale: float | None
    unit: str
    header: str
    working_scale: float
    """A scale to reckon with when the true one is unknown: rooms come out, sizes do not."""
    mended: tuple[Note, ...] = ()
    asks: tuple[Note, ...] = ()
    left: tuple[Note, ...] = ()


def find_unit(sheet: Sheet, *, scale_m_per_unit: float | None = None) -> UnitFinding:
    """The drawing's unit. `scale_m_per_unit` is the user's own word and overrules all."""
    header = HEADER_UNITS.get(sheet.header_code, "")
    if not sheet.strokes and not sheet.bands:
        metres = _METRES.get(header)
        return UnitFinding(metres, header, header, metres or 1.0)
    scales = grouped(find_evidence(sheet))
    if scale_m_per_unit is not None:
        return _told(scale_m_per_unit, header, scales)
    best = _best(sheet, scales, header)
    if best is None and len(scales) > 1 and not _outweighed(scales):
        return _undecided(scales, header)
    found = _measured(sheet, best, header) if best else _likely(sheet, header)
    return _tested(sheet, found, [s for s in scales if s is not best])


def _outweighed(scales: Sequence[Scale]) -> bool:
    return scales[0].weight >= 2 * scales[1].weight


def _best(sheet: Sheet, scales: Sequence[Scale], header: str) -> Scale | None:
    """The scale that outweighs all others, or the one of two that the header speaks for too."""
    firm = [s for s in scales if not _is_lone_number(sheet, s, header)]
    if _is_likely(sheet, header) and _swings_fit(sheet, _METRES[header]):
        firm = [s for s in firm if _could_be(sheet, s.m_per_unit)]
    if not firm:
        return None
    if len(firm) == 1 or _outweighed(firm):
        return firm[0]
    spoken = [s for s in firm[:2] if header and s.is_near(_METRES[header])]
    return spoken[0] if spoken else None


def _could_be(sheet: Sheet, scale: float) -> bool:
    """Whether a floor and its doors would have a size that floors and doors have."""
    return _HOUSE_M[0] <= _extent(sheet) * scale <= _HOUSE_M[1] and _swings_fit(sheet, scale)


def _is_lone_number(sheet: Sheet, scale: Scale, header: str) -> bool:
    """One lettered length that measures no unit proves nothing against a header that can be.

    Nor do room sizes or door codes alone: a span may run on through a doorway.
    """
    coarse = all(e.kind in {"stated size", "size code"} for e in scale.evidence)
    odd = not unit_near(scale.m_per_unit, max(0.02, scale.slack))
    return odd and (coarse or scale.weight <= 1) and (sheet.format == "DXF" or bool(header))


def _measured(sheet: Sheet, best: Scale, header: str) -> UnitFinding:
    """A CAD drawing is in a unit of length where it is as good as in one; a sheet need not be."""
    drawn = sheet.format == "DXF" and not any(e.kind == "calibration" for e in best.evidence)
    unit = unit_near(best.m_per_unit, max(0.01, best.slack) if drawn else 1e-6)
    scale = METRES[unit] if unit else best.m_per_unit
    fits = "fit" if len(best.evidence) > 1 or best.evidence[0].members else "says so"
    return _settled(scale, unit, header, f"{best.words} {fits}")


def _likely(sheet: Sheet, header: str) -> UnitFinding:
    """What header, swings and customs make likely; else the scale is asked for."""
    likely = _likely_units(sheet)
    if _is_likely(sheet, header) and _swings_fit(sheet, _METRES[header]):
        return UnitFinding(_METRES[header], header, header, _METRES[header])
    swings = _swing_unit(sheet)
    if swings:
        return _settled(METRES[swings], swings, header, "the doors' swings are drawn that large")
    bare = bare_scale(sheet)
    if bare and not header and _HOUSE_M[0] <= _extent(sheet) * bare.m_per_unit <= _HOUSE_M[1]:
        unit = unit_near(bare.m_per_unit, max(0.01, bare.slack) if sheet.format == "DXF" else 1e-6)
        lettered = "millimetres" if bare.members[0].rounding_m < 0.01 else "metres"
        because = f"{bare.source} are taken for {lettered}, as is the custom"
        return _settled(METRES[unit] if unit else bare.m_per_unit, unit, "", because)
    if not header and sheet.inch_letters and "in" in likely and _swings_fit(sheet, METRES["in"]):
        because = "the file letters lengths in feet and inches"
        return _settled(METRES["in"], "in", "", because)
    return _unknown(sheet, header, likely)


def figure(m_per_unit: float) -> str:
    """A scale as it is shown beside another: `0.0254 m a unit`."""
    return f"{m_per_unit:.4g} m a unit"


def _settled(scale: float, unit: str, header: str, because: str) -> UnitFinding:
    mended: tuple[Note, ...] = ()
    read = f"Read as {IN_WORDS[unit]}" if unit else f"Read at {figure(scale)}"
    if header and header != unit:
        is_in = f"in {IN_WORDS[unit]} ({figure(scale)})" if unit else f"drawn at {figure(scale)}"
        words = (
            f"The file's header says {IN_WORDS[header]} ({figure(_METRES[header])}), but the "
            f"drawing is {is_in}: {because}. {read}."
        )
        mended = (Note("unit-overruled", words),)
    elif not header:
        mended = (Note("unit-found", f"The file names no unit. {read}: {because}."),)
    return UnitFinding(scale, unit, header, scale, mended)


def _told(scale: float, header: str, scales: Sequence[Scale]) -> UnitFinding:
    near = unit_near(scale, 1e-6)
    unit = near or (unit_near(scales[0].m_per_unit, 0.02) if scales else header)
    mended = [Note("scale-told", f"Read at {scale:g} metres a drawing unit, as told.")]
    for other in [s for s in scales if not s.is_near(scale)][:_MOST_TOLD]:
        what = f"{other.words} in the drawing tell {figure(other.m_per_unit)}"
        words = f"{what}, {_apart(other.m_per_unit, scale)} from the scale told. Check it."
        mended.append(Note("scale-doubted", words))
    return UnitFinding(scale, unit, header, scale, tuple(mended))


def _tested(sheet: Sheet, found: UnitFinding, rivals: Sequence[Scale]) -> UnitFinding:
    """With a word for everything that speaks against the scale found."""
    if found.scale is None:
        return found
    mended, left, scale = list(found.mended), list(found.left), found.scale
    for rival in rivals[:_MOST_TOLD]:
        if rival.is_near(scale):
            continue
        if all(e.kind == "dimension" for e in rival.evidence):
            left += _lying(rival, scale)
            continue
        words = (
            f"{rival.words} tell {figure(rival.m_per_unit)}, {_apart(rival.m_per_unit, scale)} "
            f"from the {figure(scale)} that is taken. Measure one wall."
        )
        mended.append(Note("scales-differ", words))
    radii = _radii(sheet)
    if radii and not _swings_fit(sheet, scale):
        leaf = radii[len(radii) // 2] * scale
        words = f"At {figure(scale)} the doors' leaves would be {leaf:.3g} m wide. Check the scale."
        mended.append(Note("scale-doubted", words))
    return replace(found, mended=tuple(mended), left=tuple(left))


def _lying(rival: Scale, scale: float) -> list[Note]:
    """Lettered dimensions that do not fit what is drawn under them."""
    notes = []
    for one in [e for evidence in rival.evidence for e in evidence.members][:_MOST_TOLD]:
        at = None if one.at is None else (one.at[0] * scale, one.at[1] * scale)
        words = (
            f"A dimension is lettered {one.text} where {one.drawn * scale:.3f} m is drawn "
            f"({figure(one.m_per_unit)} against {figure(scale)}). What is drawn was taken: "
            "measure there."
        )
        notes.append(Note("dimension-doubted", words, at))
    return notes


def _apart(first: float, second: float) -> str:
    share = max(first, second) / min(first, second)
    return f"{share:.3g} times apart" if share >= 2 else f"{100 * (share - 1):.1f} % apart"


def _undecided(scales: Sequence[Scale], header: str) -> UnitFinding:
    first, second = scales[0], scales[1]
    said = f" The header says {IN_WORDS[header]} ({figure(_METRES[header])})." if header else ""
    words = (
        f"Two scales speak against each other: {first.words} tell {figure(first.m_per_unit)}, "
        f"{second.words} tell {figure(second.m_per_unit)}, "
        f"{_apart(first.m_per_unit, second.m_per_unit)}.{said} Measure one wall and say how many "
        f"metres one drawing unit is, for instance --scale {first.m_per_unit:.4g}."
    )
    asks = (Note("scale", words), Note("scales-differ", words))
    return UnitFinding(None, "", header, first.m_per_unit, asks=asks[:1], mended=asks[1:])


def _unknown(sheet: Sheet, header: str, likely: list[str]) -> UnitFinding:
    about = f"The header says {IN_WORDS[header]}, but no floor has that size. " if header else ""
    ask = Note(
        "scale",
        f"{about}The drawing does not show its unit. Say how many metres one drawing unit is, "
        "for instance --scale 0.0254 for inches or --scale 0.001 for millimetres.",
    )
    extent = _extent(sheet)
    usual = sorted(likely, key=lambda unit: abs(log(extent * METRES[unit] / _USUAL_HOUSE_M)))
    unit = usual[0] if usual and sheet.format == "DXF" else ""
    working = METRES[unit] if unit else (_USUAL_HOUSE_M / extent if extent > 0 else 1.0)
    return UnitFinding(None, "", header, working, asks=(ask,))


def _likely_units(sheet: Sheet) -> list[str]:
    extent = _extent(sheet)
    return [u for u, metres in METRES.items() if _HOUSE_M[0] <= extent * metres <= _HOUSE_M[1]]


def _is_likely(sheet: Sheet, header: str) -> bool:
    """Whether the floor has a floor's size in the unit that the header names."""
    return bool(header) and _HOUSE_M[0] <= _extent(sheet) * _METRES[header] <= _HOUSE_M[1]


def _radii(sheet: Sheet) -> list[float]:
    """Radii of doors' swings: on a layer of doors, or quarter circles where no layer says so."""
    named = sorted(s.radius for s in sheet.swings if s.role is Role.OPENING)
    quarters = (s.radius for s in sheet.swings if s.role is Role.OTHER and 80 < s.sweep_deg < 100)
    return named or sorted(quarters)


def _swing_unit(sheet: Sheet) -> str:
    radii = _radii(sheet)
    if not radii:
        return ""
    middle = radii[len(radii) // 2]
    fits = [u for u, metres in METRES.items() if _LEAF_M[0] <= middle * metres <= _LEAF_M[1]]
    likely = [unit for unit in fits if unit in _likely_units(sheet)]
    return likely[0] if len(likely) == 1 and sheet.format == "DXF" else ""


def _swings_fit(sheet: Sheet, metres: float) -> bool:
    """Whether the doors' swings would have the size of a door's leaf; true where none is drawn."""
    radii = _radii(sheet)
    return not radii or _ANY_LEAF_M[0] <= radii[len(radii) // 2] * metres <= _ANY_LEAF_M[1]


def _extent(sheet: Sheet) -> float:
    """The longer side of what is drawn as walls, or of all strokes where no wall is named."""
    walls = [s for s in sheet.strokes if s.role is Role.WALL]
    strokes = walls or [s for s in sheet.strokes if s.role is not Role.PAPER]
    points = [p for s in strokes for p in (s.start, s.end)]
    points += [p for band in sheet.bands for p in band.points]
    if not points:
        return 0.0
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return max(max(xs) - min(xs), max(ys) - min(ys))
