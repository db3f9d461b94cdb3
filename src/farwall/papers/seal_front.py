"""The front page of the seal sheet: verdict, coats by the clock, waits, checks, log, cautions."""

from __future__ import annotations

from typing import Any

from farwall.evidence import rank_words
from farwall.facts.plan import Clock, Ground, Plan
from farwall.job.seal_day.noun import CoatHours, Sealing
from farwall.job.seal_day.say import minded
from farwall.papers.grounds import ground_value
from farwall.papers.seal_moments import DAYS_MIN, day_moment, moment_at
from farwall.papers.seal_says import (
    BEFORE,
    LABEL,
    SOLVENT,
    USUAL,
    VERDICT_WORDS,
    air,
    barriers,
    for_paper,
    limits,
    patch,
    under,
    with_care,
)
from farwall.papers.seal_words import cans, coat_fields, coat_named, coat_span, opened
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import unbroken, volume

_SHOWN = ("sealer", "wet edge", "dr", "container")
"""How the grounds begin that this sheet tells."""
_OF_THE_DAY = ("wet edge", "abrade after")
_GROUND_WORDS = {
    "sealer": "",
    "sealer.m2_per_l": "coverage",
    "sealer.tools.tray_l": "in a full tray",
    "sealer.tools.band_m": "wide bands",
    "sealer.tools.lay_m2_min": "laid by one",
    "sealer.tools.walk_m_min": "walked",
    "sealer.tools.refill_min": "to fill a tray",
    "sealer.tools.swap_min": "to swap trays",
    "sealer.tools.overlap_m": "laid into the last band",
    "sealer.tools.reach_m": "reached from where one stands",
}


def front_page(plan: Plan, sealing: Sealing, *, units: Units, notes: str) -> dict[str, Any]:
    """Verdict, coats by the clock, waits, patch, barriers, checks, the day's log, cautions."""
    clock = plan_clock(plan, units)
    return {
        "refused": sealing.verdict == "no",
        "danger": SOLVENT if sealing.sealer.solvent else "",
        "words": VERDICT_WORDS[sealing.verdict],
        "under": under(plan, sealing, units, clock),
        "against": [plain(for_paper(one)) for one in sealing.against],
        "reasons": [
            {"no": one.word == "no", "words": plain(for_paper(f"{one.what} {one.change}"))}
            for one in sealing.reasons
        ],
        "coats": [_coat_row(plan, one, units, clock) for one in sealing.coats],
        "limits": plain(limits(sealing, units)),
        "told_by": LABEL if sealing.sealer.told else USUAL,
        "waits": [_wait_row(one, clock) for one in _after(plan, sealing)],
        "patch": [plain(unbroken(one)) for one in patch(plan, sealing, units, clock)],
        "barriers": [plain(one) for one in barriers(sealing, clock)],
        "how_barred": sealing.barriers[0].how if sealing.barriers else "",
        "before": list(BEFORE),
        "air": [plain(one) for one in air(sealing)],
        "cautions": [plain(for_paper(one)) for one in (*minded(plan, sealing), *plan.cautions)],
        "rests": [_rest(one, units, clock) for one in plan.grounds if one.name.startswith(_SHOWN)],
        "log": [coat_named(one.coat) for one in sealing.coats],
        "notes": plain(notes),
        "slab_unit": "°F" if units == "us" else "°C",
    }


def _rest(one: Ground, units: Units, clock: WallClock) -> dict[str, str]:
    value = ground_value(one, units)
    if one.name in {"dried down", "dry from"}:
        value = moment_at(one.value, clock)
    name = _GROUND_WORDS.get(one.name, one.name.replace("seal-", "coat "))
    return {
        "name": plain(name), "value": plain(value), "rank": plain(rank_words(one.rank, one.source))
    }  # fmt: skip


def _coat_row(plan: Plan, coat: CoatHours, units: Units, clock: WallClock) -> dict[str, Any]:
    begins = coat_fields(plan, coat.coat)[0].start_min
    ends = max(one.end_min for one in coat_fields(plan, coat.coat))
    after = []
    if coat.recoat is not None and coat.abrade is not None:
        high = coat.recoat.high_min
        sure = f", surely {clock.time(ends + high)}" if high is not None else ", no sure end"
        after.append(f"Next coat from {clock.time(ends + coat.recoat.low_min)}{sure}.")
        after.append(f"After {clock.time(begins + coat.abrade.low_min)} abrade first.")
    care = with_care(coat.reasons) if coat.word == "care" else ""
    hand = cans(coat.at_hand_containers, units)
    return {
        "name": coat_named(coat.coat),
        "span": coat_span(plan, coat.coat, clock),
        "litres": unbroken(
            f"{volume(coat.likely_l, units)} likely; {opened(coat.open_containers, units)}"
            + (f"; {hand} in all at hand." if hand else ".")
        ),
        "after": " ".join(after),
        "care": plain(care),
    }


def _after(plan: Plan, sealing: Sealing) -> list[Clock]:
    last = sealing.coats[-1].coat
    return [
        one
        for one in plan.clocks
        if one.coat == last and one.begins_min is not None and one.name not in _OF_THE_DAY
    ]


def _wait_row(one: Clock, clock: WallClock) -> dict[str, str]:
    begins = one.begins_min or 0.0
    late = one.high_min if one.high_min is not None else one.low_min
    ends = (begins + one.low_min, begins + late)
    # within four days the name of the day is enough, and two times fit beside each other
    low, high = (
        clock.time(at) if late < DAYS_MIN else day_moment(clock, at, hour=False) for at in ends
    )
    return {"name": one.name, "low": low, "late": high}
