"""Rules of the day, one small look each, with its rank and how much it decides. Pure.

Those of what is seen on the floor are those of `job.go`, asked with what the log tells; the rest
are here. The sheet of the material in hand wins over all of them.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date, datetime

from farwall.air import moist
from farwall.air.limits import drop_verdict, slab_verdict
from farwall.air.sealers import MARGIN_K, apart_words, wanted_words
from farwall.evidence import Rank
from farwall.facts.checks import Watch
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, RoomOpenTime
from farwall.job.first_thirst import first_thirst
from farwall.job.go.watch_rules import RULES as WATCHED
from farwall.job.live.coat_rules import coat_on_wet, more_planned
from farwall.job.live.edges import EdgeDue
from farwall.job.live.noun import Advice, LiveClock
from farwall.job.live.rinse_rules import RULE as RINSED
from farwall.job.live.rinse_rules import rinse_advice
from farwall.job.live.seal_rules import sealed_dirty, sealed_soon, sealed_wet
from farwall.job.live.standing import Standing
from farwall.job.live.thirst import seen_factor
from farwall.job.live.waste_rules import waste_advice
from farwall.job.story.figures import temperature
from farwall.job.way_words import rooms_text
from farwall.nouns import dataclass
from farwall.units import c_from_f, f_from_c

ODD_SPREADS = 3.5
"""A look so many spreads off, one slab in two thousand, asks to be read again. Rank: guess."""
QUIET_MIN = 30.0
"""An edge so long past its time is no news on the floor: then entries are missing. Rank: guess."""
SEALER_COLDEST_C = c_from_f(50)
"""Where the label is not told: the strictest common figure for water-based sealers."""


@dataclass(frozen=True)
class Facts:
    """What the rules look at."""

    job: Job
    standing: Standing
    due: EdgeDue | None
    open_low_min: float
    waits: tuple[LiveClock, ...] = ()


def advice(facts: Facts) -> tuple[Advice, ...]:
    """What every rule has to say, what stops first, then the weightiest."""
    found = [
        *_watched(facts),
        *_dead_edge(facts),
        *_feathered(facts),
        *coat_on_wet(facts.standing, facts.waits),
        *more_planned(facts.standing),
        *_slab(facts),
        *_drop(facts),
        *_band_time(facts),
        *_odd_look(facts),
        *_sun(facts),
        *rinse_advice(facts.job, facts.standing.plan, facts.standing.story),
        *waste_advice(facts.job, facts.standing.story, _day(facts.standing.plan.starts_at)),
        *_sealer(facts),
        *sealed_wet(facts.standing),
        *sealed_dirty(facts.job, facts.standing),
        *sealed_soon(facts.job, facts.standing),
        *_hurt(facts),
    ]
    return tuple(sorted(found, key=lambda one: (not one.stop, -one.weight, one.rule)))


def _day(starts_at: str) -> date:
    return datetime.fromisoformat(starts_at).date()


def _practice(
    rule: str, reason: str, do: str, weight: int, *, stop: bool, source: str = PRACTICE
) -> Advice:
    return Advice(rule, stop, reason, do, weight, Rank.PRACTICE.value, source)


def watch_of(standing: Standing) -> Watch:
    """What was seen on the floor, as the rules of go or no-go take it."""
    story = standing.story
    fizz, judged, rinsed = story.last("fizz"), story.last("coat-judged"), story.last("rinsed")
    field, litres = standing.next_field, standing.litres
    at_line = field is not None and standing.in_hand is None and litres.known
    poured = [one.text("added") for one in story.of("mixed") if one.text("added")]
    rag = rinsed.text("rag") if rinsed else ""
    seen = fizz.about.get("seen") if fizz else None
    return Watch(
        fizz=seen if isinstance(seen, bool) else None,
        wet_look=judged.text("look") or None if judged else None,  # type: ignore[arg-type]
        coat=standing.coat,
        left_l=litres.have_l if at_line else None,
        left_m2=field.area_m2 if at_line and field is not None else None,
        rinse_ph=rinsed.number("ph") if rinsed else None,
        rag=None if not rag else "clean" if rag == "clean" else "dirty",
        poured=tuple(poured),  # type: ignore[arg-type]
    )


def _watched(facts: Facts) -> Iterator[Advice]:
    standing = facts.standing
    watch = watch_of(standing)
    judged = standing.story.last("coat-judged")
    if judged is not None and judged.text("look") == "right" and standing.next_field is None:
        watch = replace(watch, wet_look=None)  # there is nothing left to stop
    job = replace(facts.job, watch=watch)
    for rule in WATCHED:
        says = rule.look(job)
        by_room = rule.id == RINSED and standing.story.last("rinsed") is not None
        if says is None or says.verdict == "go" or by_room or _washed_off(standing, rule.id):
            continue
        rank = (says.rank or rule.rank).value
        stop = says.verdict == "no"
        yield Advice(rule.id, stop, says.reason, says.change, rule.weight, rank, rule.source)


_OF_THE_STAIN = {"fizz": "fizz", "wet look": "coat-judged", "liquids": "mixed"}
"""Rules of go or no-go that are about stain on the floor or in the tub, by the word they read."""


def _washed_off(standing: Standing, rule: str) -> bool:
    """Whether what a rule of the stain asks for is past: all is stained, and washed since."""
    word = _OF_THE_STAIN.get(rule)
    if word is None or standing.in_hand is not None or standing.next_field is not None:
        return False
    seen = standing.story.last(word)
    washed = standing.story.last("neutralised", "rinsed", "sealed", "handed-over")
    return seen is not None and washed is not None and washed.at_min >= seen.at_min


def _dead_edge(facts: Facts) -> Iterator[Advice]:
    due = facts.due
    if due is None or due.at_min >= facts.standing.at_min:
        return
    late, plan = facts.standing.at_min - due.at_min, facts.standing.plan
    then = _begun_since(facts.standing)
    if then is not None and facts.standing.in_hand is not None:
        here, after = (numbered(plan, one) for one in (facts.standing.in_hand.id, then))
        reason = f"Field {here} stands open in the log, and {after} was sprayed since."
        yield _practice("quiet log", reason, "Enter what was sprayed since.", 55, stop=False)
        return
    if late > QUIET_MIN:
        band = numbered(plan, due.next_band)
        reason = f"Nothing is entered since band {band} was due, {late:.0f} min ago."
        yield _practice("quiet log", reason, "Enter what was sprayed since.", 55, stop=False)
        return
    band = numbered(plan, due.band)
    reason = f"The edge that band {band} meets is {late:.1f} min past its {due.low_min:.1f}."
    do = "Stop and feather it out dry; a door, a frame or a saw cut near by hides the seam."
    yield _practice("dead edge", reason, do, 96, stop=True)


def _begun_since(standing: Standing) -> str | None:
    """A field done since the one in hand was left: likelier a tap is missing than an edge dead."""
    told, field = standing.coat_story, standing.in_hand
    own = (
        [standing.done[b.id].end_min for b in field.bands if b.id in standing.done] if field else []
    )
    if told is None or not own:
        return None
    since = (one for one in told.fields if one.end_min is not None and one.start_min >= max(own))
    return next((one.field for one in since), None)


def _feathered(facts: Facts) -> Iterator[Advice]:
    """A field that was stopped in with its edge feathered out: a seam is there, and is known."""
    standing = facts.standing
    field, at = standing.in_hand, standing.feathered_min
    if field is None or at is None or not standing.stands_feathered:
        return
    name = numbered(standing.plan, field.id)
    reason = f"The edge of field {name} was feathered out {standing.clock(at)}: a seam shows there."
    yield _practice("feathered", reason, "Plan the rest again before you go on.", 70, stop=False)


def _slab(facts: Facts) -> Iterator[Advice]:
    told = [one for one in facts.standing.story.readings if one.slab_c is not None]
    if not told or not _sprays(facts.standing):
        return
    at, slab_c = told[-1].at_min, told[-1].slab_c
    verdict = slab_verdict(surface_c=slab_c if slab_c is not None else 20.0, us=facts.standing.us)
    if verdict.word == "yes":
        return
    when = facts.standing.clock(at)
    reason = f"{verdict.reason} Measured {when}."
    do = verdict.remedies[0] if verdict.remedies else "Measure again before the next field."
    weight = 95 if verdict.word == "no" else 50
    yield Advice(
        "slab", verdict.word == "no", reason, do, weight, verdict.rank.value, verdict.source
    )


def _sprays(standing: Standing) -> bool:
    return standing.in_hand is not None or standing.next_field is not None


def _drop(facts: Facts) -> Iterator[Advice]:
    """A bead that stands more than a minute anywhere in the next field.

    What was timed there last counts, over a dry coat too, before what the job tells.
    """
    field = facts.standing.next_field
    if field is None:
        return
    settled = settle(facts.job, starts_at=facts.standing.plan.starts_at)
    timed = {
        one.text("room"): one.number("drop_s") for one in facts.standing.story.of("drop-tested")
    }
    for room in field.rooms:
        drop_s = timed.get(room, timed.get(""))
        verdict = drop_verdict(drop_s=settled.room(room).drop_s if drop_s is None else drop_s)
        if verdict.word == "no":
            name = rooms_text(facts.standing.plan, [room])
            reason = f"{name}: {verdict.reason}"
            yield _practice(
                "drop", reason, verdict.remedies[0], 92, stop=True, source=verdict.source
            )


def _band_time(facts: Facts) -> Iterator[Advice]:
    """The last band timed at both ends took more than half of the open time."""
    field = facts.standing.in_hand
    if field is None or facts.open_low_min <= 0:
        return
    done = [facts.standing.done[b.id] for b in field.bands if b.id in facts.standing.done]
    if len(done) < 2 or not (done[-1].told and done[-2].told):
        return
    took = done[-1].end_min - done[-2].end_min
    if took > facts.open_low_min / 2:
        band = numbered(facts.standing.plan, done[-1].band)
        reason = f"Band {band} took {took:.1f} min, more than half of the "
        reason += f"{facts.open_low_min:.1f} min that an edge lives."
        yield _practice("band time", reason, "Narrower bands, a second sprayer, or a cooler hour.",
                        60, stop=False)  # fmt: skip


def _odd_look(facts: Facts) -> Iterator[Advice]:
    """What was used lies far from what slabs do: a slip of reading is likelier than such a slab."""
    seen = seen_factor(facts.standing.coat_story)
    if seen is None or seen <= 0:
        return
    usual = first_thirst(facts.standing.plan, facts.standing.coat)
    spread = math.sqrt(usual.variance + usual.field_variance)
    if abs(math.log(seen)) > ODD_SPREADS * spread:
        reason = f"By the last look {seen:.1f} times the planned mix was used."
        do = "Read tub and tank once more before mixing by it; strike what was wrong."
        yield replace(
            _practice("odd look", reason, do, 72, stop=False, source=OUR_GUESS),
            rank=Rank.GUESS.value,
        )


def _sun(facts: Facts) -> Iterator[Advice]:
    """Sun that reaches a field before it is finished, because the day runs late."""
    standing = facts.standing
    ends = standing.at_min
    for field in (standing.in_hand, standing.next_field):
        if field is None:
            continue
        left, begins = standing.left_of(field), ends  # the next one begins when this one is done
        ends = begins + max(b.end_min for b in left) - min(b.start_min for b in left)
        for patch in _patches(field):
            gone = patch.to_min is not None and patch.to_min <= begins
            if field.end_min <= patch.from_min < ends and not gone:
                name = rooms_text(standing.plan, [patch.room])
                reason = f"Sun reaches {name} about {standing.clock(patch.from_min)}, before "
                reason += f"{numbered(standing.plan, field.id)} is done ({standing.clock(ends)})."
                yield _practice("sun", reason, "Film or blanket on the glass, or another field "
                                "first.", 65, stop=False)  # fmt: skip
                return


def _patches(field: Field) -> Sequence[RoomOpenTime]:
    return [one for one in field.open_times if one.polygon is not None]


def _sealer(facts: Facts) -> Iterator[Advice]:
    """Sealer on a slab near its dew point or colder than its label allows.

    The slab as read last, against the air as read last: a slab read alone hides no damp air.
    """
    story, us = facts.standing.story, facts.standing.us
    if story.last("rinsed") is None or story.last("handed-over") is not None:
        return
    told = [one for one in story.readings if one.slab_c is not None]
    if not told or told[-1].slab_c is None:
        return
    slab_c = told[-1].slab_c
    label = facts.job.sealer
    coldest = label.least_slab_c if label.least_slab_c is not None else SEALER_COLDEST_C
    if slab_c < coldest:
        here, least = temperature(slab_c, us=us), temperature(coldest, us=us)
        reason = f"The slab is {here}, below the sealer's {least}."
        yield _practice("sealer cold", reason, "No sealer, whatever the air reads: warm the slab.",
                        94, stop=True, source="trade-press")  # fmt: skip
    air = next((one for one in reversed(story.readings)
                if one.air_c is not None and one.rh_percent is not None), None)  # fmt: skip
    if air is None or air.air_c is None or not air.rh_percent:  # dry air has no dew point
        return
    dew_c = moist.dew_point_c(air_c=air.air_c, rh_percent=air.rh_percent)
    margin = label.least_margin_k if label.least_margin_k is not None else MARGIN_K
    if slab_c - dew_c < margin:
        apart_k = slab_c - dew_c
        near, wanted = apart_words(apart_k, us=us), wanted_words(margin, apart_k, us=us)
        dew = f"{f_from_c(dew_c):.0f} °F" if us else f"{dew_c:.0f} °C"
        reason = f"The slab is {near} above the dew point ({dew}); "
        reason += f"a sealer wants {wanted}."
        yield _practice("dew point", reason, "No sealer now, nor if it falls in the next 6 h.",
                        93, stop=True, source="trade-press")  # fmt: skip


def _hurt(facts: Facts) -> Iterator[Advice]:
    hurt = facts.standing.story.last("hurt")
    if hurt is not None and not hurt.text("done"):
        reason = f"Somebody was hurt {facts.standing.clock(hurt.at_min)}: {hurt.text('what')}."
        do = "Eyes or skin: water for 15 minutes, now; then the sheet and a doctor. Enter what was "
        yield _practice("hurt", reason, f"{do}done.", 99, stop=True)
