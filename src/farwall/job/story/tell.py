"""The story of a log: one way through its entries, in order, each noun fed in turn."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from farwall.facts.log import Kept
from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.job.story.doubled import once, stand_all_the_same
from farwall.job.story.left_open import left_open
from farwall.job.story.litres import CoatLitres, Litres
from farwall.job.story.looks import Looks, closed_rooms
from farwall.job.story.noun import Closed, CoatStory, FieldStory, Happened, Level, Story
from farwall.job.story.order import in_order
from farwall.job.story.spraying import Spraying
from farwall.job.story.wearing import wearing
from farwall.job.story.whose import names_of

_SPRAYING = frozenset({"field-started", "band-done", "field-done", "coat-done"})
_EARLY_MIN = 30.0
"""A crew may begin so much before the plan says; earlier is told to be odd. Rank: guess."""


def story(plan: Plan, kept: Iterable[Kept]) -> Story:
    """The story that the entries of a log tell, on the plan of the morning.

    The same for any order in which they came and however often: doubled ones count once, by their
    id or as what two phones told of one thing (`doubled`); struck ones stand aside. What cannot be
    so is told in words and never stops it.
    """
    ordered = in_order(kept, starts_at=plan.starts_at)
    single = once(plan, ordered.happened)
    happened = single.happened
    spraying = Spraying(plan)
    litres = Litres(plan, spraying, names_of(plan, happened))
    looks = Looks(plan, spraying)
    odd: list[str] = [*ordered.contradictions, *single.words]
    odd += stand_all_the_same(plan, happened, ordered.struck)
    closed = closed_rooms(happened, plan.starts_at)
    damp: dict[str, bool] = {}
    begun = next((one.at_min for one in happened if one.word == "day-started"), None)
    for one in happened:
        before = set(spraying.done)
        spraying.feed(one)
        litres.feed(one)
        looks.feed(one)
        odd += _too_early(one, begun)
        odd += _on_damp(plan, spraying, before, damp)
        odd += _in_closed(spraying, one, before, closed)
        if one not in looks.slips:
            _looked(one, spraying, damp)
    odd += [*spraying.contradictions, *litres.contradictions, *looks.contradictions]
    odd += left_open(plan, spraying, happened, closed)
    _, unworn = wearing(Story(plan.starts_at, happened))
    odd += unworn
    return Story(
        starts_at=plan.starts_at,
        happened=happened,
        struck=ordered.struck,
        doubled=single.doubled,
        coats=_coats(plan, spraying, litres),
        readings=looks.readings,
        closed=closed,
        sightings=tuple(looks.sightings),
        hours_h=_hours(happened),
        contradictions=tuple(dict.fromkeys(odd)),
    )


def _too_early(one: Happened, begun: float | None) -> list[str]:
    if one.word not in _SPRAYING:
        return []
    if begun is not None and one.at_min < begun:
        return [f"{one.word} at {one.at_min:.0f} min is before the day was begun."]
    if one.at_min < -_EARLY_MIN:
        return [
            f"{one.word} is {-one.at_min:.0f} min before the start of the plan; is a clock wrong?"
        ]
    return []


def _looked(one: Happened, spraying: Spraying, damp: dict[str, bool]) -> None:
    coat = one.text("coat") or spraying.floor_coat
    if one.word in {"still-damp", "dry"} and one.text("clock") in {"", "recoat"}:
        damp[coat] = one.word == "still-damp"


def _on_damp(plan: Plan, spraying: Spraying, before: set[str], damp: dict[str, bool]) -> list[str]:
    """A coat sprayed while the one below was last found damp."""
    coats = [each.id for each in plan.inputs.coats]
    new = [name for name in spraying.done if name not in before]
    if not new:
        return []
    coat = spraying.owner[new[0]].coat
    below = coats[coats.index(coat) - 1]
    if not coats.index(coat) or not damp.get(below):
        return []
    now, before_it = numbered(plan, coat), numbered(plan, below)
    return [f"Coat {now} was sprayed while coat {before_it} was last found damp."]


def _in_closed(
    spraying: Spraying, one: Happened, before: set[str], closed: Sequence[Closed]
) -> list[str]:
    """Fields sprayed while a room of theirs was closed, by the entries before."""
    new = {spraying.owner[name].id for name in spraying.done if name not in before}
    labels = {room.id: room.label for room in spraying.plan.inputs.floor.rooms}
    return [
        f"Field {numbered(spraying.plan, name)} was sprayed while {labels[each.room]} was closed."
        for name in sorted(new)
        for each in closed
        if each.room in spraying.fields[name].rooms and each.holds(one.at_min)
    ]


def _hours(happened: Sequence[Happened]) -> dict[str, float]:
    found: dict[str, float] = {}
    for one in happened:
        if one.word == "hours":
            task = one.text("task")
            found[task] = round(found.get(task, 0.0) + (one.number("hours") or 0.0), 4)
    return found


def _coats(plan: Plan, spraying: Spraying, litres: Litres) -> tuple[CoatStory, ...]:
    found = []
    for coat in plan.inputs.coats:
        account = litres.coats.get(coat.id)
        fields = _fields(spraying, coat.id, account)
        if account is not None or fields:
            found.append(_coat(plan, coat.id, fields, account or CoatLitres(coat.id, tub_l=None)))
    return tuple(found)


def _coat(
    plan: Plan, coat: str, fields: tuple[FieldStory, ...], account: CoatLitres
) -> CoatStory:  # fmt: skip
    own = [one for one in plan.fields if one.coat == coat]
    ends = [one.end_min for one in fields if one.end_min is not None]
    whole = len(ends) == len(own)
    known = account.mixed_told or account.levels
    return CoatStory(
        coat=coat,
        start_min=min((one.start_min for one in fields), default=None),
        end_min=max(ends) if whole and ends else None,
        fields=fields,
        mixed_l=round(account.mixed_l, 4) if account.mixed_told else None,
        filled_l=None if account.filled_l is None else round(account.filled_l, 4),
        tub_l=account.tub_l if known else None,
        tank_l=account.tank_l if known else None,
        levels=tuple(account.levels),
        left_over_l=account.left_over_l,
        tub_look=account.tub_look,
    )


def _fields(spraying: Spraying, coat: str, account: CoatLitres | None) -> tuple[FieldStory, ...]:
    """The fields begun, in the order in which they were."""
    found = []
    for one in spraying.fields.values():
        bands = [spraying.done[band.id] for band in one.bands if band.id in spraying.done]
        if one.coat != coat or not (bands or one.id in spraying.started):
            continue
        done = {band.band for band in bands}
        sprayed = [band for band in one.bands if band.id in done]
        whole = len(sprayed) == len(one.bands)
        begun = min([*(band.start_min for band in bands), *_started(spraying, one.id)], default=0.0)
        found.append(
            FieldStory(
                field=one.id,
                coat=coat,
                start_min=begun,
                end_min=max(band.end_min for band in bands) if whole else None,
                bands=tuple(bands),
                area_m2=round(sum(band.polygon.shape.area for band in sprayed), 4),
                planned_l=round(sum(band.litres for band in sprayed), 4),
                used_l=_used(spraying, done, account) if whole else None,
            )
        )
    return tuple(sorted(found, key=lambda one: (one.start_min, one.field)))


def _started(spraying: Spraying, name: str) -> tuple[float, ...]:
    return (spraying.started[name],) if name in spraying.started else ()


def _used(spraying: Spraying, done: set[str], account: CoatLitres | None) -> float | None:
    """What a field took: between the levels at both its ends, no other band in between.

    None as well where more was left behind it than was there: a batch or a figure is missing.
    """
    if account is None:
        return None
    order = [name for name in spraying.done if spraying.owner[name].coat == account.coat]
    places = sorted(order.index(name) for name in done)
    first, last = places[0], places[-1]
    if last - first + 1 != len(done):
        return None
    at_first = _level_of(account.levels, first)
    at_last = _level_of(account.levels, last + 1)
    if at_first is None and first == 0 and account.mixed_told:
        at_first = Level(0.0, 0.0, 0.0, 0.0, 0, 0.0, 0.0)
    if at_first is None or at_last is None:
        return None
    added = at_last.mixed_l - at_first.mixed_l
    used = added + at_first.hand_l - at_last.hand_l
    return round(used, 4) if used >= 0 else None


def _level_of(levels: Sequence[Level], bands: int) -> Level | None:
    """The last level at which so many bands were done."""
    return next((one for one in reversed(levels) if one.bands == bands), None)
