"""Which unit the drawing is really in: the header's word, tested against what is drawn.

Each piece of evidence votes for metres per drawing unit. Lettered dimensions,
door size codes beside swings and stated room sizes measure the unit; swing
radii and the size of the whole only make it likely. The header is believed
unless what is drawn speaks against it.
"""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass
from itertools import permutations
from math import hypot, log

from farwall.facts.reading import Note
from farwall.readers.lines.rays import free_spans
from farwall.readers.lines.sheet import Role, Sheet, Words
from farwall.readers.sizes import door_code, length_m, stated_size

METRES = {"in": 0.0254, "ft": 0.3048, "mm": 0.001, "cm": 0.01, "m": 1.0}
HEADER_UNITS = {1: "in", 2: "ft", 4: "mm", 5: "cm", 6: "m"}
IN_WORDS = {"in": "inches", "ft": "feet", "mm": "millimetres", "cm": "centimetres", "m": "metres"}
_BARE = re.compile(r"\d{1,6}(?:[.,]\d{1,3})?")
_CLOSE = 0.02  # of the unit: a drawn length and its lettering differ by rounding only
_ANY_LEAF_M = (0.3, 2.5)
_LEAF_M = (0.55, 1.1)  # a single leaf's usual width: common practice, no source
_USUAL_HOUSE_M = 15.0
_HOUSE_M = (1.0, 250.0)  # the longer side of a floor plan: common practice, no source


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


def find_unit(sheet: Sheet, *, scale_m_per_unit: float | None = None) -> UnitFinding:
    """The drawing's unit. `scale_m_per_unit` is the user's own word and overrules all."""
    header = HEADER_UNITS.get(sheet.header_code, "")
    votes = measured_votes(sheet)
    likely = _likely_units(sheet)
    measured = _winner(votes)
    if not sheet.strokes:
        metres = METRES.get(header)
        return UnitFinding(metres, header, header, metres or 1.0)
    if scale_m_per_unit is not None:
        return _told(scale_m_per_unit, header, measured)
    if measured:
        return _settled(measured, header, _evidence_words(votes, measured))
    if header in likely and _swings_fit(sheet, METRES[header]):
        return UnitFinding(METRES[header], header, header, METRES[header])
    swings = _swing_unit(sheet)
    if swings:
        return _settled(swings, header, "the doors' swings are drawn that large")
    return _unknown(sheet, header, likely)


def measured_votes(sheet: Sheet) -> Counter[tuple[str, str]]:
    """How often each kind of evidence measures each unit: counts of (kind, unit)."""
    votes: Counter[tuple[str, str]] = Counter()
    for measure in sheet.measures:
        said, bare = length_m(measure.text), _BARE.fullmatch(measure.text.strip())
        if bare:
            number = float(bare[0].replace(",", "."))
            votes[_bare_vote("dimension", number, measure.length)] += 1
        votes[_vote("dimension", said, measure.length)] += 1
    for words in sheet.words:
        for width, drawn in _code_lengths(sheet, words):
            votes[_vote("size code", width, drawn)] += 1
        votes[_size_vote(sheet, words)] += 1
    del votes["", ""]
    return votes


def _vote(kind: str, said_m: float | None, drawn: float) -> tuple[str, str]:
    if not said_m or drawn <= 0:
        return "", ""
    for unit, metres in METRES.items():
        if abs(said_m / drawn / metres - 1) < _CLOSE:
            return kind, unit
    return "", ""


def _bare_vote(kind: str, said: float, drawn: float) -> tuple[str, str]:
    """A number without a unit: when it differs from the drawn length, only one pair of units fits.

    `3.50` over a line of 3500 units: metres lettered, millimetres drawn.
    """
    for drawn_unit, lettered_unit in permutations(METRES, 2):
        ratio = METRES[drawn_unit] / METRES[lettered_unit]
        if said > 0 and abs(said / drawn / ratio - 1) < _CLOSE / 2:
            return kind, drawn_unit
    return "", ""


def _code_lengths(sheet: Sheet, words: Words) -> list[tuple[float, float]]:
    """Every width that a size code can mean, with the radius of each swing beside it."""
    code = door_code(words.text)
    if not code:
        return []
    near = [
        s for s in sheet.swings if s.role is not Role.FIXTURE and _beside(s.centre, words, s.radius)
    ]
    return [(width, swing.radius) for swing in near for width, _ in code.sizes_m]


def _beside(point: tuple[float, float], words: Words, radius: float) -> bool:
    return hypot(point[0] - words.at[0], point[1] - words.at[1]) < 1.5 * radius


def _size_vote(sheet: Sheet, words: Words) -> tuple[str, str]:
    """A stated size against the free spans between the walls around it, when both sides agree."""
    size = stated_size(words.text)
    sides = (size.sides_m or size.bare) if size else None
    spans = free_spans(sheet, words.at, words.turned_deg) if sides else None
    if not size or not sides or not spans:
        return "", ""
    vote = _vote if size.sides_m else _bare_vote
    for said in (sides, sides[::-1]):
        votes = {vote("stated size", *pair) for pair in zip(said, spans, strict=True)}
        if len(votes) == 1 and votes != {("", "")}:
            return votes.pop()
    return "", ""


def _winner(votes: Counter[tuple[str, str]]) -> str:
    totals: Counter[str] = Counter()
    for (kind, unit), count in votes.items():
        totals[unit] += count if kind != "size code" else min(count, 5)
    ranked = totals.most_common(2)
    if not ranked or (len(ranked) == 2 and ranked[0][1] < 2 * ranked[1][1]):
        return ""
    return ranked[0][0]


def _evidence_words(votes: Counter[tuple[str, str]], unit: str) -> str:
    names = {
        "dimension": ("lettered dimension", "lettered dimensions"),
        "size code": ("door size code", "door size codes"),
        "stated size": ("stated room size", "stated room sizes"),
    }
    said = [
        f"{votes[kind, unit]} {names[kind][votes[kind, unit] != 1]}"
        for kind in names
        if votes[kind, unit]
    ]
    return f"{', '.join(said)} fit"


def _settled(unit: str, header: str, because: str) -> UnitFinding:
    mended: tuple[Note, ...] = ()
    if header and header != unit:
        words = (
            f"The file's header says {IN_WORDS[header]}, but the drawing is in {IN_WORDS[unit]}: "
            f"{because}. Read as {IN_WORDS[unit]}."
        )
        mended = (Note("unit-overruled", words),)
    elif not header:
        words = f"The file names no unit. Read as {IN_WORDS[unit]}: {because}."
        mended = (Note("unit-found", words),)
    return UnitFinding(METRES[unit], unit, header, METRES[unit], mended)


def _told(scale: float, header: str, measured: str) -> UnitFinding:
    unit = next((u for u, m in METRES.items() if abs(m / scale - 1) < 1e-6), measured or header)
    mended = [Note("scale-told", f"Read at {scale:g} metres a drawing unit, as told.")]
    if measured and abs(METRES[measured] / scale - 1) > _CLOSE:
        mended.append(
            Note(
                "scale-doubted",
                f"What is lettered in the drawing measures {IN_WORDS[measured]} "
                f"({METRES[measured]:g} metres a unit). Check the scale given.",
            )
        )
    return UnitFinding(scale, unit, header, scale, tuple(mended))


def _unknown(sheet: Sheet, header: str, likely: list[str]) -> UnitFinding:
    about = f"The header says {IN_WORDS[header]}, but no floor has that size. " if header else ""
    ask = Note(
        "scale",
        f"{about}The drawing does not show its unit. Say how many metres one drawing unit is, "
        "for instance --scale 0.0254 for inches or --scale 0.001 for millimetres.",
    )
    extent = _extent(sheet)
    usual = sorted(likely, key=lambda unit: abs(log(extent * METRES[unit] / _USUAL_HOUSE_M)))
    unit = usual[0] if usual else ""
    working = METRES[unit] if unit else (_USUAL_HOUSE_M / extent if extent > 0 else 1.0)
    return UnitFinding(None, "", header, working, asks=(ask,))


def _likely_units(sheet: Sheet) -> list[str]:
    extent = _extent(sheet)
    return [u for u, metres in METRES.items() if _HOUSE_M[0] <= extent * metres <= _HOUSE_M[1]]


def _swing_unit(sheet: Sheet) -> str:
    radii = sorted(s.radius for s in sheet.swings if s.role is Role.OPENING)
    if not radii:
        return ""
    middle = radii[len(radii) // 2]
    fits = [u for u, metres in METRES.items() if _LEAF_M[0] <= middle * metres <= _LEAF_M[1]]
    likely = [unit for unit in fits if unit in _likely_units(sheet)]
    return likely[0] if len(likely) == 1 else ""


def _swings_fit(sheet: Sheet, metres: float) -> bool:
    """Whether the doors' swings would have the size of a door's leaf; true where none is drawn."""
    radii = sorted(s.radius for s in sheet.swings if s.role is Role.OPENING)
    return not radii or _ANY_LEAF_M[0] <= radii[len(radii) // 2] * metres <= _ANY_LEAF_M[1]


def _extent(sheet: Sheet) -> float:
    """The longer side of what is drawn as walls, or of all strokes where no wall is named."""
    walls = [s for s in sheet.strokes if s.role is Role.WALL]
    strokes = walls or [s for s in sheet.strokes if s.role is not Role.PAPER]
    points = [p for s in strokes for p in (s.start, s.end)]
    if not points:
        return 0.0
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return max(max(xs) - min(xs), max(ys) - min(ys))
