"""What the lines of quantities are reckoned from, and their amounts in words. Pure."""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property
from math import ceil

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.defaults import settle
from farwall.facts.quantities import Quantity
from farwall.facts.settled import SettledJob
from farwall.facts.van import StockKind, Unit
from farwall.job.acid_day.neutralising import Doses, doses_of
from farwall.job.acid_day.washing import WashDay, washing_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.masking import Masked
from farwall.job.office.quantities.practice import Ends
from farwall.nouns import dataclass
from farwall.units import KG_PER_LB, L_PER_US_GAL, M2_PER_FT2, M_PER_FT
from farwall.units import ft2_per_gal_from_m2_per_l as ft2_per_gal

_HAIR = 1e-9
_US: dict[Unit, tuple[float, str]] = {
    "l": (L_PER_US_GAL, "gal"), "kg": (KG_PER_LB, "lb"), "m": (M_PER_FT, "ft"), "count": (1.0, ""),
}  # fmt: skip
_SI: dict[Unit, str] = {"l": "L", "kg": "kg", "m": "m", "count": ""}


def in_units(value: float, unit: Unit, units: str) -> tuple[float, str]:
    """An amount as people count it, and its unit: gallons, pounds, feet, or SI."""
    one, name = _US[unit] if units == "us" else (1.0, _SI[unit])
    return value / one, name


def amount_said(value: float, unit: Unit, units: str) -> str:
    """An amount in words such as `6.3 gal`; a count is bare."""
    much, name = in_units(value, unit, units)
    return " ".join(filter(None, (figure(much), name)))


def figure(value: float) -> str:
    """Two figures behind the point below 3, one below 100, none above; whole ones bare."""
    places = 0 if value >= 100 or abs(value - round(value)) < 5e-3 else 2 if value < 3 else 1
    return f"{value:,.{places}f}"


@dataclass(frozen=True)
class Basis:
    """A job's facts and plan with what is masked; parts of its acid day, each once."""

    ground: OfficeGround
    masked: Masked

    @cached_property
    def washing(self) -> WashDay:
        """The wash day."""
        return washing_of(self.ground.acid_ground)

    @cached_property
    def neutralising(self) -> Doses:
        """What neutralises floor, tub and spill."""
        return doses_of(self.ground.acid_ground)

    @cached_property
    def settled(self) -> SettledJob:
        """The job with no value left open."""
        return settle(self.ground.job, starts_at=self.ground.plan.starts_at)

    @property
    def area_m2(self) -> float:
        """Net floor."""
        return self.ground.measured.net_m2

    @property
    def thousands(self) -> float:
        """Net floor in thousands of square feet."""
        return self.area_m2 / (1000 * M2_PER_FT2)

    @property
    def units(self) -> str:
        """The user's own: us or metric."""
        return self.ground.job.wishes.units

    def said(self, value: float, unit: Unit) -> str:
        """An amount in the user's units."""
        return amount_said(value, unit, self.units)

    def area_said(self, area_m2: float | None = None) -> str:
        """An area in the user's units; the whole floor where none is told."""
        area = self.area_m2 if area_m2 is None else area_m2
        if self.units == "us":
            return f"{figure(area / M2_PER_FT2)} ft²"
        return f"{figure(area)} m²"

    def coverage_said(self, m2_per_l: float) -> str:
        """A coverage in the user's units."""
        if self.units == "us":
            return f"{ft2_per_gal(m2_per_l):,.0f} ft²/gal"
        return f"{m2_per_l:.1f} m²/L"


def line(
    kind: StockKind,
    what: str,
    ends: Ends,
    rule: str,
    *,
    id_: str = "",
    unit: Unit = "count",
    ready: float | None = None,
    rank: Rank = Rank.PRACTICE,
    source: str = PRACTICE,
    of: str = "",
) -> Quantity:
    """A line by its rule; its id is its kind where none is told.

    Counts are whole, up; ready is the likely figure where none is told.
    """
    low, likely, high = (_whole(one, unit) for one in ends)
    wanted = likely if ready is None else _whole(ready, unit)
    return Quantity(
        id=id_ or kind, kind=kind, what=what, unit=unit, low=low, likely=likely,
        high=max(high, likely), ready=wanted, rule=rule, rank=rank.value, source=source, of=of,
        ruled=wanted,
    )  # fmt: skip


def _whole(value: float, unit: Unit) -> float:
    return float(ceil(value - _HAIR)) if unit == "count" else value


def times(ends: Ends, much: float) -> Ends:
    """All three ends times one figure."""
    low, likely, high = ends
    return low * much, likely * much, high * much


def switched(one: Quantity, *, left_out: tuple[str, ...], own: dict[str, float]) -> Quantity:
    """The line with its switch and the user's own figure, which takes the place of the rule's."""
    on = one.id not in left_out
    if one.id not in own:
        return replace(one, on=on)
    told = own[one.id]
    share = told / one.ready if one.ready else 0.0
    shares = tuple(
        replace(each, low=each.low * share, likely=each.ready * share, high=each.high * share,
                ready=each.ready * share)
        for each in one.shares
    )  # fmt: skip
    return replace(
        one, low=told, likely=told, high=told, ready=told, on=on, told=True, shares=shares
    )
