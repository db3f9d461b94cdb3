"""Minutes that a sprayed edge stays live, from slab, air, coverage, drop test and a sample."""

from __future__ import annotations

from typing import TYPE_CHECKING, cast

from farwall.air.clocks import Timed, edge_budget, open_time
from farwall.air.conditions import REFERENCE, STANDARD_PRESSURE_PA, Conditions
from farwall.air.limits import drop_verdict, slab_verdict
from farwall.air.suction import FINISH_DROP_S
from farwall.facts import default_table as table
from farwall.job.sums.arguments import (
    COVERAGE,
    MINUTES,
    PERCENT,
    PRESSURE,
    SECONDS,
    SPEED,
    TEMPERATURE,
    sensible,
)
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum, refuse

if TYPE_CHECKING:
    from farwall.facts.job import Finish

YES_OR_NO = ("yes", "no")


def reckon(given: Given) -> Result:
    """Low, likely and high minutes, and the prudent budget for a live edge.

    Values left out are those of the mild day of common practice. Raises
    `Unanswerable` for a slab outside 50-85 °F.
    """
    now = _conditions(given, "", REFERENCE)
    finish = cast("Finish | None", given.text("finish"))
    timed = _timed(given, now)
    found = open_time(
        now,
        m2_per_l=given.usual("m2_per_l", table.FIRST_COAT_M2_PER_L.usual),
        drop_s=given.maybe("drop_s"),
        finish=finish,
        timed=timed,
    )
    budget = edge_budget(
        found,
        sample_min=timed.minutes if timed is not None else None,
        sun=given.text("sun") == "yes",
        draught=given.text("draught") == "yes",
    )
    return {
        "low": found.low,
        "likely": found.likely,
        "high": found.high,
        "unit": "min",
        "edge_budget_min": budget.value,
        "rank": found.rank.value,
        "source": found.source,
        "warnings": _warnings(given, now),
    }


def _conditions(given: Given, prefix: str, other: Conditions) -> Conditions:
    def said(key: str, default: float) -> float:
        return given.usual(f"{prefix}{key}", default)

    return Conditions(
        surface_c=said("surface_c", other.surface_c),
        air_c=said("air_c", other.air_c),
        rh_percent=said("rh_percent", other.rh_percent),
        air_speed_m_s=said("air_speed_m_s", other.air_speed_m_s),
        pressure_pa=given.usual("pressure_pa", STANDARD_PRESSURE_PA),
    )


def _timed(given: Given, now: Conditions) -> Timed | None:
    minutes = given.maybe("sample_min")
    if minutes is not None:
        return Timed(
            minutes=minutes,
            conditions=_conditions(given, "sample_", now),
            m2_per_l=given.maybe("sample_m2_per_l"),
            drop_s=given.maybe("sample_drop_s"),
            finish=cast("Finish | None", given.text("sample_finish")),
        )
    told = [key for one in _OF_SAMPLE for key in [one.key] if key in given]
    if told:
        raise refuse(", ".join(told), "These tell of a sample without its minutes.",
                     "Give sample_min=… too.")  # fmt: skip
    return None


def _warnings(given: Given, now: Conditions) -> list[object]:
    told: list[object] = []
    slab = slab_verdict(surface_c=now.surface_c)
    drop_s = given.maybe("drop_s")
    drop = drop_verdict(drop_s=drop_s) if drop_s is not None else None
    told.extend(one.reason for one in (slab, drop) if one is not None and one.reason)
    if "sample_min" not in given:
        told.append("No sample was timed on this slab: time one, and believe it over this.")
    return told


def _of(prefix: str) -> tuple[Argument, ...]:
    positive_drop = Bounds(0.0, 3600.0, above=True)
    return (
        Argument(f"{prefix}surface", TEMPERATURE, sensible("surface_c")),
        Argument(f"{prefix}air", TEMPERATURE, sensible("air_c")),
        Argument(f"{prefix}rh", PERCENT, sensible("rh_percent")),
        Argument(f"{prefix}air_speed", SPEED, sensible("air_speed_m_s")),
        Argument(prefix.removesuffix("_"), COVERAGE, Bounds(0.0, 1000.0, above=True)),
        Argument(f"{prefix}drop", SECONDS, positive_drop),
        Argument(f"{prefix}finish", choices=tuple(FINISH_DROP_S)),
    )


_OF_SAMPLE = _of("sample_")

SUM = Sum(
    name="open-time",
    what="minutes that a sprayed edge stays live",
    arguments=(
        *_of(""),
        Argument("sun", choices=YES_OR_NO),
        Argument("draught", choices=YES_OR_NO),
        Argument("pressure", PRESSURE, sensible("pressure_pa")),
        Argument("sample", MINUTES, Bounds(0.0, 1440.0, above=True)),
        *_OF_SAMPLE,
    ),
    reckon=reckon,
)
