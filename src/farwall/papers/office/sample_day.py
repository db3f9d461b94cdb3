"""The sample day on paper: the steps, the waits, and a ruled place for every figure of every cut.

The paper twin of the page on the phone; what facts tell of a sample stands in its column, the rest
is left to the pen. Common practice, no source, where nothing else is said.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.facts.numbered import by_number
from farwall.facts.samples import Sample
from farwall.job.colour.sample_day import course_of
from farwall.job.colour.sample_day.lasts import RANK, lasts_of
from farwall.job.colour.sample_day.nouns import Course, Planned, WaitName
from farwall.job.colour.sample_day.says import SAYS
from farwall.papers.office.blocks import (
    Blanks,
    Block,
    Facts,
    Head,
    Own,
    Page,
    Paper,
    Rows,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.fill_in import EMPTY
from farwall.papers.office.ground import PaperGround
from farwall.papers.words import minutes
from farwall.phrasebook import told
from farwall.units import ft2_from_m2

_WAITS: dict[str, WaitName] = {
    "sheen": "sheen", "dry": "dry", "wash": "dwell", "seal": "dry-down",
}  # fmt: skip
"""By step the wait before it."""
_LONG_MIN = 48 * 60
_NAMES = (
    "water, then stain into it", "size", "sprayer before, g", "laid at", "sprayer after, g",
    "gloss gone after, min", "dry after, min", "washed at", "scrubs", "pH before, after",
    "white rag", "holds, weak, washes off", "photo clean and wet", "sealed at, with",
    "photo sealed, by day", "photo sealed, by lamp", "light, right, dark",
)  # fmt: skip
"""What is read and done at each cut, in the order of the day."""
_ORDER = ("lay", "weigh", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge", "sign")


def sample_day(ground: PaperGround) -> Paper:
    """The paper: what comes first and the steps, then a table for each coat of each place."""
    course = course_of(ground.job, ground.plan)
    planned = [one for one in course.samples if one.rung]
    return Paper(
        title="Sample day",
        under="Three cuts side by side on this slab, every step as on the floor",
        screen="colour/sample-day",
        blocks=(*_first(ground), *_steps(course), *_tables(ground, planned), *_lasts(course)),
        day="none",
    )


def _first(ground: PaperGround) -> Iterator[Block]:
    us = ground.units == "us"
    yield Words(SAYS["lay"].caution, "danger")
    yield Head("Before the first cut")
    yield Ticks((SAYS["clean"].do,))
    yield Blanks(
        ("drop goes in, s", "slab, °F" if us else "slab, °C",
         "air, °F; humidity, %" if us else "air, °C; humidity, %"), columns=3,
    )  # fmt: skip


def _steps(course: Course) -> Iterator[Block]:
    """Each step, how it is done, and how long is waited for it, coat by coat with its rank."""
    yield Head("Then, at every cut")
    yield Rows(
        ("step", "how", "low – likely – high"),
        tuple((SAYS[code].name, SAYS[code].do, _wait(code, course)) for code in _ORDER),
        widths=(1.25, 3.5, 1.35),
    )
    yield Words(SAYS["wash"].caution, "danger")


def _lasts(course: Course) -> Iterator[Block]:
    pairs = tuple((one.what, Own(_span(one))) for one in lasts_of(course))
    yield Facts((*pairs, ("how sure", RANK.value)), 2)
    yield Blanks(("date", "by"))


def _wait(code: str, course: Course) -> Text:
    name = _WAITS.get(code)
    own = [one for one in course.waits if one.name == name]
    if name in {"dwell", "dry-down"}:  # the same for every coat: a square is washed as a whole
        own = own[-1:]
    several = len(own) > 1
    spans = [f"{one.coat} {_span(one)}" if several else _span(one) for one in own]
    ranks = dict.fromkeys(told(one.rank) for one in own)
    return Own("; ".join([*spans, ", ".join(ranks)])) if own else EMPTY


def _span(one: object) -> str:
    low, likely, high = (getattr(one, name) for name in ("low_min", "likely_min", "high_min"))
    if low is None or likely is None or high is None:
        return "–"
    return f"{_hours(low)} – {_hours(likely)} – {_hours(high)}"


def _hours(value_min: float) -> str:
    """Minutes up to two hours, then hours to the half, from two days on days."""
    if value_min < 120:
        return minutes(value_min)
    if value_min < _LONG_MIN:
        return f"{round(value_min / 30) / 2:g} h"
    return f"{round(value_min / 720) / 2:g} d"


def _tables(ground: PaperGround, planned: Sequence[Planned]) -> Iterator[Block]:
    """Three columns for each coat of each place; two tables on a page."""
    threes = [planned[k : k + 3] for k in range(0, len(planned), 3)]
    coats = tuple(dict.fromkeys(one.coat for one in planned))
    for nth, three in enumerate(threes):
        if nth % 2 == 0:
            yield Page()
        yield from _table(ground, three, coats)


def _table(ground: PaperGround, three: Sequence[Planned], coats: Sequence[str]) -> Iterator[Block]:
    one = three[0]
    stain = next((s for s in ground.job.stains if s.id == one.stain), None)
    rooms = ground.job.floor.room_by_id
    room = rooms[one.room].label if one.room in rooms else "_" * 16
    yield Facts(
        (
            ("Coat", Own(by_number(coats, one.coat))),
            ("Stain", Own((stain.name or stain.id) if stain else one.stain)),
            ("Place", Own(", ".join(part for part in (room, one.why) if part))),
            ("Over", Own(", ".join(each.over for each in three if each.over) or "–")),
        ),
        2,
    )
    known = {each.id.casefold(): each for each in ground.job.samples}
    rows = tuple(
        (name, *(_told(name, each, known.get(each.id.casefold()), ground) for each in three))
        for name in _NAMES
    )
    heads = tuple(Own(f"{each.id} · {told(each.cut)}") for each in three)
    yield Rows(("at the sample", *heads), rows, widths=(1.7, 1.4, 1.4, 1.4))


def _told(name: str, one: Planned, found: Sample | None, ground: PaperGround) -> Text:
    """What stands in a cell: what is planned, what the facts tell, else room for the pen."""
    if name == _NAMES[0]:
        return EMPTY if one.mix is None else Own(f"{one.mix.water_ml} mL, {one.mix.stain_ml} mL")
    if name == "size":
        us = ground.units == "us"
        return Own(f"{ft2_from_m2(one.area_m2):.1f} ft²" if us else f"{one.area_m2:.2f} m²")
    if found is None:
        return EMPTY
    figures = {
        "sprayer before, g": _grams(found.sprayer_before_kg),
        "sprayer after, g": _grams(found.sprayer_after_kg),
        "gloss gone after, min": _figure(found.sheen_loss_min),
        "dry after, min": _figure(found.dry_min), "scrubs": _figure(found.scrubs),
        "pH before, after": ", ".join(filter(None, (_figure(found.before_ph),
                                                    _figure(found.after_ph)))),
        "white rag": found.rag or "", "sealed at, with": found.sealer,
    }  # fmt: skip
    return Own(figures.get(name, ""))


def _grams(value_kg: float | None) -> str:
    return "" if value_kg is None else f"{value_kg * 1000:.0f}"


def _figure(value: float | None) -> str:
    return "" if value is None else f"{value:g}"
