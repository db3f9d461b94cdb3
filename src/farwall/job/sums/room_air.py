"""What a room's air holds of hydrogen chloride given off steadily, and how long it lingers."""

from __future__ import annotations

from farwall.acid.limits import LIMITS, STRICTER, Limit, ppm_from_mg_m3
from farwall.acid.room import held_mg_m3, minutes_to_fall, steady_mg_m3
from farwall.evidence import Rank
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum

ROOM_VOLUME = {"m3": "m3", "ft3": "ft3"}
VOLUME = Argument("volume", ROOM_VOLUME, Bounds(0.0, 1e6, above=True), needed=True)
RELEASE = Argument("release_g_min", bounds=Bounds(0.0, 1e6), needed=True)
MIXED = (
    "The room is taken as well mixed; over the wet floor and in corners there is more. How much "
    "is given off is the caller's figure. Ventilation and respirator are for a hygienist to settle."
)
BESIDE = ("hcl-law", "hcl-hygienists", "hcl-at-once", "hcl-at-once-1994", "hcl-smell")
"""The limits that stand beside a figure of hydrogen chloride, strictest use first."""
_OVER = {
    "hcl-at-once": (
        "Above 45 ppm (67 mg/m³), dangerous at once to life or health (NIOSH 2025): nobody goes in "
        "with cartridges. Get out, air it, and ask a hygienist [niosh-idlh-hcl]."
    ),
    "hcl-law": "Above 5 ppm (7 mg/m³), the ceiling that may not be passed for a moment [osha-hcl].",
    "hcl-hygienists": (
        "Above 2 ppm (3 mg/m³), the hygienists' ceiling (ACGIH), though the federal one is not "
        "passed [osha-hcl]."
    ),
}


def reckon(given: Given) -> Result:
    """Concentration after `minutes`, or the steady one. Sources: [hygiene-basics], [mmwr-1994].

    C = G/Q·(1 - exp(-Q·t/V)), from clean air; after the release stops,
    t = V/Q·ln(C/C_stop). `limits` has each limit with its year and whether this is over it.
    """
    volume_m3, air_changes_h = given.number("volume_m3"), given.number("air_changes_per_h")
    flow_m3_min = air_changes_h * volume_m3 / 60
    release = given.number("release_g_min")
    steady = steady_mg_m3(release_g_min=release, flow_m3_min=flow_m3_min)
    minutes, stop_at = given.maybe("minutes"), given.maybe("stop_at_mg_m3")
    held = steady
    if minutes is not None:
        held = held_mg_m3(
            release_g_min=release, flow_m3_min=flow_m3_min, volume_m3=volume_m3, minutes=minutes
        )
    lingers = None
    if stop_at is not None:
        lingers = minutes_to_fall(from_mg_m3=held, to_mg_m3=stop_at, air_changes_h=air_changes_h)
    return {
        "mg_m3": held,
        "ppm": ppm_from_mg_m3(held),
        "steady_mg_m3": steady,
        "steady_ppm": ppm_from_mg_m3(steady),
        "minutes_to_stop_at": lingers,
        "limits": limits_beside(held),
        "rank": Rank.PUBLISHED.value,
        "source": "hygiene-basics, mmwr-1994, osha-hcl",
        "warnings": [MIXED, *_worst(held), STRICTER],
    }


def limits_beside(held_mg_m3: float | None = None) -> list[object]:
    """Each limit of hydrogen chloride with year and rank, and whether `held_mg_m3` is over it."""
    return [_told(key, LIMITS[key], held_mg_m3) for key in BESIDE]


def _told(key: str, limit: Limit, held: float | None) -> dict[str, object]:
    told: dict[str, object] = {
        "limit": key, "by": limit.by, "kind": limit.kind, "ppm": limit.ppm, "mg_m3": limit.mg_m3,
        "year": limit.year, "year_rank": limit.year_rank.value if limit.year else None,
        "rank": limit.rank.value, "source": limit.source,
    }  # fmt: skip
    if held is not None:
        told["over"] = _is_over(limit, held)
    return told


def _is_over(limit: Limit, held: float) -> bool:
    return ppm_from_mg_m3(held) > (limit.ppm or 0.0)


def _worst(held: float) -> list[object]:
    """The warning of the gravest limit that is passed; none where none is."""
    passed: list[object] = [said for key, said in _OVER.items() if _is_over(LIMITS[key], held)]
    return passed[:1]


SUM = Sum(
    name="room-air",
    what="hydrogen chloride in a room's air, given off steadily and aired",
    arguments=(
        VOLUME,
        RELEASE,
        Argument("air_changes_per_h", bounds=Bounds(0.0, 1000.0, above=True), needed=True),
        Argument("minutes", bounds=Bounds(0.0, 1e6)),
        Argument("stop_at_mg_m3", bounds=Bounds(0.0, 1e6, above=True)),
    ),
    reckon=reckon,
)
