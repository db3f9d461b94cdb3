"""The care sheet: what not to do for a day, a week, a month; with what to clean; what lies on it.

Waits are those of the sealer's own label where it was told, else of its type, and say so. The rest
is from finishers' care sheets [care-sheets] and common practice with no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from farwall.air.sealers import SealerLimits, limits_of
from farwall.facts.job import Job
from farwall.facts.numbered import stain_named
from farwall.papers.office.blocks import (
    Beside,
    Facts,
    Head,
    Own,
    Paper,
    Rows,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.days_said import short_moment, whole_day
from farwall.papers.office.entered import entered
from farwall.papers.office.ground import PaperGround
from farwall.phrasebook import told

RUGS_DAYS, DAY_H, WEEK_DAYS = 30, 24, 7
_CLEAN = (
    "Dust mop each week, a soft one, dry.",
    "Damp mop with a pH-neutral cleaner, as weak as its label says; well wrung.",
    "Wipe up spills at once: wine, oil, pet accidents, lemon, vinegar.",
    "Mats inside and outside each door: they take most of the dirt.",
    "Felt under every chair and table leg; look at them twice a year.",
    "Lift furniture, never drag it.",
)
_NEVER = (
    "No ammonia, no bleach, no vinegar, no pine cleaner, no solvent.",
    "No steam mop, no standing water.",
    "No rubber or plastic backs under rugs: they mark the sealer, most in the first month.",
    "No tape on the floor, not even on covers.",
    "No wax or polish other than the finish that is named here.",
)
_LEFT = (
    "a quart (1 L) of finish, its name and how it is laid",
    "this sheet", "the sample, signed", "the warranty", "a mop that fits the finish",
)  # fmt: skip
WHY_FINISH = (
    "The finish is there to be worn, so that the sealer is not. When lanes turn dull, clean and "
    "lay new finish before the sealer shows: in homes about once a year, twice where many walk."
)
RESTS_ON = (
    "Finishers' care sheets and common practice with no source; the labels of sealer, finish and "
    "cleaner win."
)


def care(ground: PaperGround) -> Paper:
    """The paper, one page."""
    job = ground.job
    limits = limits_of(job.sealer)
    sealed = _sealed_at(ground)
    return Paper(
        title="Care of this floor",
        letterhead=True,
        day="none",
        blocks=(
            Words("Who cleans here reads this first. Keep it with the house."),
            Head("The first days"),
            Facts((("The last coat of sealer went down", _when(sealed, ground)),), 1),
            _waits(limits, sealed, ground),
            Words(_told_by(limits), "soft"),
            Beside(
                left=(Head("Cleaning"), Ticks(_CLEAN)),
                right=(Head("Never"), Ticks(_NEVER)),
            ),
            Head("What lies on it"),
            Facts(tuple(_laid(ground, limits)), 1),
            Head("New finish"),
            Words(WHY_FINISH),
            Facts((("First new finish by", _recoat(sealed, ground)),
                   ("Call", _line(job.firm.phone))), 2),
            Head("Left with the owner"),
            Ticks(_LEFT, 2),
            Words(RESTS_ON, "soft"),
        ),
    )  # fmt: skip


def _waits(limits: SealerLimits, sealed: datetime | None, ground: PaperGround) -> Rows:
    def until(hours: float) -> Text:
        if sealed is None:
            return Own("")
        return Own(short_moment(sealed + timedelta(hours=hours), ground.units, ground.language))

    walk, shoes = limits.walk_h, max(limits.walk_h, float(DAY_H))
    furniture = limits.furniture_h
    week = max(furniture, 24.0 * WEEK_DAYS)
    rows: tuple[tuple[Text, ...], ...] = (
        ("nobody on it, no pets", f"{walk:g} h", until(walk)),
        ("socks only; no water", f"{shoes:g} h", until(shoes)),
        ("no furniture; then carried in, on felt", _long(furniture), until(furniture)),
        ("no wet mopping, no covers, nothing heavy on wheels", _long(week), until(week)),
        ("no rugs, no mats; then only such as breathe", f"{RUGS_DAYS} days",
         until(24.0 * RUGS_DAYS)),
    )  # fmt: skip
    return Rows(
        ("what is not done", "after the last coat of sealer", "so until"), rows, (3, 1.6, 1.8)
    )


def _when(sealed: datetime | None, ground: PaperGround) -> Text:
    if sealed is None:
        return _line("")
    return Own(short_moment(sealed, ground.units, ground.language))


def _long(hours: float) -> str:
    return f"{hours:g} h" if hours < 2 * DAY_H else f"{hours / DAY_H:g} days"


def _told_by(limits: SealerLimits) -> str:
    if {"walk_h", "furniture_h"} <= limits.told:
        return (
            "Hours and days as the sealer's label has them; longer waits of ours where it is open."
        )
    return (
        "The sealer's label was not told: usual waits of its type stand here, common practice with "
        "no source. The label wins."
    )


def _sealed_at(ground: PaperGround) -> datetime | None:
    """When the last coat of sealer went down, as logged; None where nobody logged it."""
    story = ground.ground.story
    if story is None:
        return None
    moments = [one.at_min for one in story.of("sealed")]
    start = datetime.fromisoformat(ground.plan.starts_at)
    return start + timedelta(minutes=max(moments)) if moments else None


def _recoat(sealed: datetime | None, ground: PaperGround) -> Text:
    if sealed is None:
        return _line("")
    day = sealed.date()
    later = day.replace(year=day.year + 1, day=min(day.day, 28) if day.month == 2 else day.day)
    return Own(whole_day(later, ground.units, ground.language))


def _laid(ground: PaperGround, limits: SealerLimits) -> Iterator[tuple[Text, Text]]:
    job = ground.job
    for coat in ground.plan.inputs.coats:
        stain = next((one for one in job.stains if one.id == coat.stain), None)
        name = told(stain_named(ground.plan, coat.stain))
        lots = _lots(ground, coat.id) or (", ".join(stain.lots) if stain else "")
        yield "stain, cut, lot", Own(f"{name} · {coat.cut} · {lots or '________'}")
    yield "sealer, generic type", (limits.name if job.sealer.type else _line(""))
    yield "its name and lot", _sealer(ground)
    yield "coats of it", _coats(job, limits)
    yield "finish, generic type and lot", _line("")


def _coats(job: Job, limits: SealerLimits) -> Text:
    return Own(str(limits.coats)) if job.sealer.coats is not None else _line("")


def _sealer(ground: PaperGround) -> Text:
    """Name and lots of the sealer that was laid, as logged; a line for what nobody entered."""
    laid = entered(ground, "sealed")
    names = dict.fromkeys(one.text("sealer") or ground.job.sealer.name for one in laid)
    lots = dict.fromkeys(filter(None, (one.text("lot") for one in laid)))
    name = ", ".join(filter(None, names)) or ground.job.sealer.name
    return Own(f"{name} · {', '.join(lots) or '________________'}".removeprefix(" · "))


def _lots(ground: PaperGround, coat: str) -> str:
    """Lots that were logged as mixed for a coat, in their order."""
    story = ground.ground.story
    if story is None:
        return ""
    lots = [
        str(one.about["lot"])
        for one in story.of("mixed")
        if one.about.get("coat") == coat and one.about.get("lot")
    ]
    return ", ".join(dict.fromkeys(lots))


def _line(text: str) -> Own:
    return Own(text or "_" * 24)
