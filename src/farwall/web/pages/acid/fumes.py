"""The fumes on the page of acid and water: sentences in the page's language, times on the wall."""

from __future__ import annotations

from typing import Any

from farwall.air.house import FAN_M3_S
from farwall.facts.numbered import numbered
from farwall.job.acid_day.fumes.noun import Fumes, KeptOut, Range, RoomFumes, Unknown, Way
from farwall.job.acid_day.fumes.said import figure
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.papers.wall_clock import Units, plan_clock
from farwall.web.pages.acid.fumes_picture import pictures
from farwall.web.pages.said_clock import SaidClock, said_clock
from farwall.web.words import said as plainly_said

CAUTIONS = ("respirator", "reading", "open", "walls", "stricter")


def said(key: str, **values: object) -> str:
    """The words of a key; a time that ends in a full stop (`p. m.`) ends its sentence too."""
    return plainly_said(key, **values).replace(". m..", ". m.")


def fumes_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """What the template of the fumes is given; only the cautions where nothing is sprayed."""
    found = day.fumes
    cautions = [said(f"acid-fumes-caution-{one}") for one in CAUTIONS]
    if not found.rooms:
        return {
            "cautions": cautions,
            "none": said("acid-fumes-none" if not ground.plan.fields else "acid-fumes-no-acid"),
        }
    units = ground.job.wishes.units
    clock = said_clock(plan_clock(ground.plan, units))
    return {
        "none": "",
        "head": _head(found, clock),
        "danger": _danger(found),
        "chromate": _chromate(found),
        "pictures": pictures(found, ground.plan, clock),
        "rooms": [_room(one, clock) for one in found.rooms],
        "sprayer": _sprayer(found),
        "kept_out": [
            _kept_out(one, numbered(ground.plan, one.coat), clock) for one in found.kept_out
        ],
        "ways": [_way(one) for one in found.ways],
        "needed": _needed(found, units),
        "ammonia": _ammonia(found),
        "rests": [_rests(one) for one in found.unknowns],
        "limits": [said(f"acid-fumes-limit-{one.key}") for one in found.limits],
        "taken": _taken(found, units),
        "cautions": cautions,
    }


def _at(clock: SaidClock, minute: float) -> str:
    """`8:41 pm`, `Wed 5:40 am`; in Spanish with its article."""
    time = clock.time(minute)
    return said("acid-fumes-at-time" if time[0].isdigit() else "acid-fumes-at-day", time=time)


def _ppm(one: Range) -> dict[str, str]:
    return {"likely": figure(one.likely), "low": figure(one.low), "high": figure(one.high)}


def _head(found: Fumes, clock: SaidClock) -> str:
    room = max(found.rooms, key=lambda one: one.peak_ppm.likely)
    return said(
        "acid-fumes-head",
        standing=said(f"acid-fumes-stands-{found.standing}"),
        changes=figure(found.air_changes_h or 0.0),
        room=room.name,
        at=_at(clock, room.peak_at_min),
        **_ppm(room.peak_ppm),
    )


def _danger(found: Fumes) -> str:
    """The word for danger at once, where the high end passes it."""
    at_once = next(one.ppm or 0.0 for one in found.limits if one.key == "hcl-at-once")
    high = max(one.peak_ppm.high for one in found.rooms)
    return said("acid-fumes-at-once", high=figure(high)) if high > at_once else ""


def _room(one: RoomFumes, clock: SaidClock) -> str:
    clear = next(b for b in one.below if b.limit == "hcl-hygienists")
    told = said(
        "acid-fumes-room",
        room=one.name, at=_at(clock, one.peak_at_min),
        mean=figure(one.mean_15_ppm.likely), **_ppm(one.peak_ppm),
    )  # fmt: skip
    return f"{told} {_clear(clear.likely_min, clear.high_min, clock)}"


def _clear(likely_min: float | None, high_min: float | None, clock: SaidClock) -> str:
    if likely_min is None:
        return said("acid-fumes-never-clear")
    if likely_min == 0 and high_min == 0:
        return said("acid-fumes-always-clear")
    if high_min is None:
        return said("acid-fumes-clear-likely", likely=_at(clock, likely_min))
    if _at(clock, likely_min) == _at(clock, high_min):
        return said("acid-fumes-clear-once", likely=_at(clock, likely_min))
    return said("acid-fumes-clear", likely=_at(clock, likely_min), high=_at(clock, high_min))


def _sprayer(found: Fumes) -> str:
    one = found.sprayer
    if one is None:
        return ""
    return said(
        "acid-fumes-sprayer", minutes=f"{one.minutes:.0f}", day=figure(one.mean_8_h_ppm.likely),
        **_ppm(one.mean_15_ppm),
    )  # fmt: skip


def _kept_out(one: KeptOut, number: str, clock: SaidClock) -> str:
    def until(at_min: float | None) -> str:
        if at_min is not None:
            return _at(clock, at_min)
        return said("acid-fumes-next-coat" if one.next_min is not None else "acid-fumes-two-days")

    once = until(one.likely_min) == until(one.high_min)
    return said(
        "acid-fumes-kept-out-once" if once else "acid-fumes-kept-out",
        coat=number, ends=_at(clock, one.ends_min),
        likely=until(one.likely_min), high=until(one.high_min),
    )  # fmt: skip


def _way(one: Way) -> dict[str, Any]:
    clear = said("acid-fumes-two-days-long") if one.clear_min is None else _duration(one.clear_min)
    return {
        "what": said(f"acid-fumes-way-{one.key}", fans=one.fans)
        if one.fans != 1
        else said(f"acid-fumes-way-{one.key.removesuffix('s')}"),
        "stands": one.stands,
        "changes": figure(one.air_changes_h),
        "peak": said("acid-fumes-ppm", **_ppm(one.peak_ppm)),
        "clear_after": clear,
    }


def _duration(minutes: float) -> str:
    if minutes < 90:
        return said("acid-fumes-minutes", n=f"{minutes:.0f}")
    return said("acid-fumes-hours", n=f"{minutes / 60:.0f}")


def _needed(found: Fumes, units: Units) -> str:
    one = found.needed
    if one is None:
        return ""
    flow, unit = (one.flow_cfm, "cfm") if units == "us" else (one.flow_m3_h, "m³/h")
    fans = max(1, round(one.flow_m3_h.likely / (FAN_M3_S * 3600)))
    return said(
        "acid-fumes-needed", unit=unit, fans=fans, mixing=f"{one.mixing:g}",
        changes=figure(one.air_changes_h.likely), **_ppm(flow),
    )  # fmt: skip


def _chromate(found: Fumes) -> str:
    one = found.chromate
    if one is None:
        return ""
    spraying, day = one.while_spraying_ug_m3, one.mean_8_h_ug_m3
    told = said(
        "acid-fumes-chromate", limit=f"{one.limit_ug_m3:g}", action=f"{one.action_ug_m3:g}",
        day=figure(day.likely), day_low=figure(day.low), day_high=figure(day.high),
        **_ppm(spraying),
    )  # fmt: skip
    return told if one.told else f"{told} {said('acid-fumes-chromate-guess')}"


def _ammonia(found: Fumes) -> str:
    one = found.ammonia
    if one is None:
        return ""
    return said(
        "acid-fumes-ammonia", over=figure(one.over_liquid_ppm.likely), **_ppm(one.in_house_ppm)
    )


def _rests(one: Unknown) -> dict[str, str]:
    """What was taken and how far it alone moves the peak."""
    rank = "told" if one.source.startswith("told") else one.rank.replace(" ", "-")
    hundred = 100.0 if one.key in {"mist", "salts", "transfer"} else 1.0
    return {
        "words": said(
            f"acid-fumes-rests-{one.key}", low=figure(one.low * hundred),
            likely=figure(one.likely * hundred), high=figure(one.high * hundred),
        ),
        "moves": said(
            "acid-fumes-moves", low=figure(one.peak_from_ppm), high=figure(one.peak_to_ppm)
        ),
        "rank": said(f"acid-fumes-rank-{rank}"),
    }  # fmt: skip


def _taken(found: Fumes, units: Units) -> str:
    warm = found.temperature_c or 0.0
    acid = found.acid_g or 0.0
    shown = (
        (f"{warm * 1.8 + 32:.0f} °F", f"{acid / 453.59237:.1f} lb")
        if units == "us"
        else (f"{warm:.0f} °C", f"{acid / 1000:.1f} kg")
    )
    share = found.to_air_percent
    return said(
        "acid-fumes-taken", warm=shown[0], acid=shown[1],
        **(_ppm(share) if share is not None else {}),
    )  # fmt: skip
