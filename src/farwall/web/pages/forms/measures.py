"""Units in which blanks are filled: what people write, and the SI value of it.

A value goes there and back without a digit lost up to nine digits. A unit may be typed behind the
number, that of the other system too; lengths also take the marks of a tape, `8' 6"`.
"""

from __future__ import annotations

import math
import re

from farwall import units
from farwall.air.slab_tests import UG_M2_S_PER_LB
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.readers.sizes import length_m
from farwall.readers.twins import tidy
from farwall.web.pages.typed_lengths import length_of
from farwall.web.pages.typed_units import parted, unit_of
from farwall.web.words import said

_FL_OZ_PER_GAL_OF_ML_PER_L = 0.128
_THOUSANDS = re.compile(r"\d{1,3}(,\d{3})+(\.\d+)?")
_MOST_DECIMALS = 6
_FEW, _LARGE = 4, 10_000.0
_LONGEST_TAPE_M = 300.0


class NoNumber(ValueError):
    """The text is no number in this unit."""


@dataclass(frozen=True)
class Scale:
    """A unit: the key of its words, SI of one of it and of none of it; whether a tape reads it."""

    unit: str
    one: float = 1.0
    none: float = 0.0
    tape: bool = False

    @property
    def spelling(self) -> str:
        """How `typed_units` spells it; empty for a bare count."""
        return unit_of(said(self.unit)) if self.unit else ""


@dataclass(frozen=True)
class Measure:
    """A quantity in both systems."""

    us: Scale
    metric: Scale

    def scale(self, system: Units) -> Scale:
        """The unit of a system."""
        return self.us if system == "us" else self.metric

    def si(self, text: str, system: Units) -> float:
        """The SI value of what was typed. Raises NoNumber."""
        number, unit = parted(text)
        told = (self.scale(system), self.us, self.metric)
        scale = next((one for one in told if unit == one.spelling), None) if unit else told[0]
        if self.us.tape and not (unit and scale) and (length := _taped(text)) is not None:
            return tidy(length)
        if scale is None:
            raise NoNumber(text)
        own = "metric" if scale is self.metric is not self.us else system
        return tidy(plain_number(number, own) * scale.one + scale.none)

    def text(self, value: float, system: Units) -> str:
        """What is typed for an SI value; where that has no end, three digits of it.

        A value of few digits was rounded, or typed in the other system: no more are shown of it.
        """
        scale = self.scale(system)
        number = (value - scale.none) / scale.one
        if (few := None if scale.tape else _few(value, number, scale)) is not None:
            return few
        for places in range(_MOST_DECIMALS + 1):
            if scale is FEET.us and places == 2 and (taped := _tape(value)) is not None:
                return taped
            if math.isclose(round(number, places), number, rel_tol=1e-9, abs_tol=1e-9):
                return f"{round(number, places) + 0.0:.{places}f}"
        return f"{number:.3g}" if abs(number) < 1_000 else f"{number:.0f}"


def _few(value: float, number: float, scale: Scale) -> str | None:
    """The number to as few digits as the value has, where it means that value; else None."""
    digits = next((n for n in range(1, _FEW + 1) if float(f"{value:.{n}g}") == value), None)
    told = round(number, _FEW - 1 - math.floor(math.log10(abs(number)))) if number else 0.0
    if digits is None or float(f"{told * scale.one + scale.none:.{digits}g}") != value:
        return None
    return f"{told:.4f}".rstrip("0").rstrip(".") if abs(told) < _LARGE else None


def plain_number(text: str, system: Units = "us") -> float:
    """A number as people write it: `1,500` are thousands beside gallons, `1,5` is 1.5.

    Raises NoNumber; also for `1,500` beside litres, which may be either.
    """
    told = text.strip().replace("\u00a0", " ").replace("−", "-")
    if _THOUSANDS.fullmatch(told):
        if system != "us":
            raise NoNumber(text)
        told = told.replace(",", "")
    try:
        found = float(told.replace(",", ".") if told.count(",") == 1 else told)
    except ValueError:
        raise NoNumber(text) from None
    # Python reads `1_000`, `nan` and `inf` as numbers; nobody writes them on a slab.
    if not math.isfinite(found) or "_" in told:
        raise NoNumber(text)
    return found


def _taped(text: str) -> float | None:
    """Metres of a text with a mark or word of feet, inches or metres; None without one."""
    if not re.search(r"[a-z'’′\"”″]", text, re.IGNORECASE):
        return None
    found = length_m(text)
    return length_of(text) if found is None else found


def _tape(value: float) -> str | None:
    """`8' 4 1/2"` where the length is one of whole half inches; else None."""
    halves = value / units.M_PER_IN * 2
    whole = math.isclose(round(halves), halves, rel_tol=1e-9, abs_tol=1e-9)
    if not (whole and 0 <= value < _LONGEST_TAPE_M):
        return None
    feet, rest = divmod(round(halves), 24)
    inches, half = divmod(rest, 2)
    return f"{feet}' {inches}{' 1/2' if half else ''}\""


def _alike(unit: str) -> Measure:
    return Measure(Scale(unit), Scale(unit))


_FT, _IN, _GAL = units.M_PER_FT, units.M_PER_IN, units.L_PER_US_GAL
FEET = Measure(Scale("unit-ft", _FT, tape=True), Scale("unit-m", tape=True))
INCHES = Measure(Scale("unit-in", _IN, tape=True), Scale("unit-cm", 0.01))
COUNT = Measure(Scale(""), Scale(""))

_MEASURES: tuple[tuple[str, Measure], ...] = (
    ("_ug_m2_s", Measure(Scale("unit-lb-vapour", UG_M2_S_PER_LB), Scale("unit-ug-vapour"))),
    (
        "_kg_m3",
        Measure(Scale("unit-lb-yd3", units.KG_PER_LB / (3 * _FT) ** 3), Scale("unit-kg-m3")),
    ),
    (
        "_fl_oz_per_gal",
        Measure(Scale("unit-fl-oz-gal"), Scale("unit-ml-l", _FL_OZ_PER_GAL_OF_ML_PER_L)),
    ),
    ("_kg_m2_h", Measure(Scale("unit-lb-ft2-h", units.KG_M2_PER_LB_FT2), Scale("unit-kg-m2-h"))),
    ("_m2_per_l", Measure(Scale("unit-ft2-gal", units.M2_PER_FT2 / _GAL), Scale("unit-m2-l"))),
    ("_m2_min", Measure(Scale("unit-ft2-min", units.M2_PER_FT2), Scale("unit-m2-min"))),
    ("_l_min", Measure(Scale("unit-gal-min", _GAL), Scale("unit-l-min"))),
    ("_m_min", Measure(Scale("unit-ft-min", _FT), Scale("unit-m-min"))),
    ("_kg_l", Measure(Scale("unit-lb-gal", units.KG_PER_LB / _GAL), Scale("unit-kg-l"))),
    ("_m_s", Measure(Scale("unit-ft-min", _FT / 60), Scale("unit-m-s"))),
    ("_mg_l", _alike("unit-mg-l")),
    ("_percent", _alike("unit-percent")),
    ("_days", _alike("unit-days")),
    ("_deg", _alike("unit-deg")),
    ("_min", _alike("unit-min")),
    ("_kw", _alike("unit-kw")),
    ("_l", Measure(Scale("unit-gal", _GAL), Scale("unit-l"))),
    ("_c", Measure(Scale("unit-f", 1 / 1.8, -32 / 1.8), Scale("unit-c"))),
    ("_m", FEET),
    ("_s", _alike("unit-s")),
    ("_h", _alike("unit-h")),
)


def measure_of(key: str) -> Measure:
    """The measure that a key carries in its name; a bare count where it carries none."""
    padded = "_" + key.removesuffix("_low").removesuffix("_high")
    return next((one for ending, one in _MEASURES if padded.endswith(ending)), COUNT)
