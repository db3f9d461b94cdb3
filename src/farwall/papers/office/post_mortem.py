"""The job looked back on: hours, litres, rinses, call-backs and money, planned beside actual."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from decimal import Decimal

from farwall.facts.closed import ClosedJob, TaskName
from farwall.job.closed import closed_job
from farwall.papers.office.blocks import (
    Beside,
    Blanks,
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Rows,
    Text,
    Words,
)
from farwall.papers.office.entered import entered, litres, own, when
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.money_words import grouped
from farwall.papers.run_sheet.names import coat_ids
from farwall.papers.words import area
from farwall.phrasebook import told
from farwall.price.money import amount, rounded
from farwall.units import ft2_per_gal_from_m2_per_l

_OF_TASK: dict[TaskName, tuple[str, ...]] = {
    "protect": ("protect",), "clean": ("clean",), "mask": ("mask",),
    "coat": ("coat", "spray", "stain coat"), "judge": ("judg", "touch"),
    "neutralise": ("neutralis",), "rinse": ("rins", "neutralis"), "seal": ("seal",),
    "finish": ("finish",), "hand-over": ("hand", "punch", "unmask"),
    "other": ("visit", "travel", "paper", "other"),
}  # fmt: skip
"""The pieces by which a task of the log finds its line among the planned ones."""
_NONE: Text = Own("–")


def post_mortem(ground: PaperGround) -> Paper:
    """What was planned, what it took, and lines for what to do otherwise."""
    story = ground.ground.story
    closed = None
    if story is not None:
        closed = closed_job(ground.job, ground.plan, story, job_id=ground.job.id or ground.plan.job)
    empty = () if closed is not None else (
        Words("No log was given: what it took is to be written in by hand.", "strong"),
    )  # fmt: skip
    return Paper(
        title="Looking back on the job",
        under="What was planned, what it took, what to do otherwise",
        screen="log",
        blocks=(
            *empty,
            Head("Hours of all hands together"), _hours(ground, closed),
            Head("Litres and coverage by coat"
                 if ground.units == "metric" else "Gallons and coverage by coat"),
            _coats(ground),
            Beside(
                left=(*_rinses(ground, closed), *_back(ground)), right=_money(ground, closed),
                share=0.5,
            ),
            Blanks(
                ("what went better than planned", "what cost time or money, and why",
                 "what to do otherwise next time", "what to ask on the first call"),
                columns=2, lines=2,
            ),
            Words(
                "Closed with the log, this job teaches the next ones: coverage, pace, waits, "
                "hours (farwall learn).",
                "soft",
            ),
        ),
    )  # fmt: skip


def _hours(ground: PaperGround, closed: ClosedJob | None) -> Rows:
    planned = [(one.task, one.likely_h, one.low_h, one.high_h) for one in ground.office.hours.tasks]
    took: Counter[str] = Counter()
    for one in closed.hours if closed is not None else ():
        took[_line_of(one.task, [name for name, *_ in planned])] += one.hours  # type: ignore[assignment]
    rows: list[tuple[Text, ...]] = [
        (name, Own(f"{likely:.1f}"), Own(f"{low:.1f} – {high:.1f}"), *_beside(took[name], likely))
        for name, likely, low, high in planned
    ]
    known = {name for name, *_ in planned}
    rows += [
        (told(name), _NONE, _NONE, Own(f"{hours:.1f}"), _NONE)
        for name, hours in took.items()
        if name not in known
    ]
    likely = sum(one for _, one, *_ in planned)
    low, high = sum(one[2] for one in planned), sum(one[3] for one in planned)
    all_took = sum(took.values())
    rows.append((
        "in all", Own(f"{likely:.1f}"), Own(f"{low:.1f} – {high:.1f}"), *_beside(all_took, likely)
    ))  # fmt: skip
    return Rows(
        ("task", "planned, likely h", "planned range", "took", "took / planned"), tuple(rows),
        (2.4, 1.1, 1.2, 0.8, 1.1), right=(1, 2, 3, 4), strong_last=True,
    )  # fmt: skip


def _beside(took: float, planned: float) -> tuple[Text, Text]:
    if not took:
        return (Own(""), Own(""))
    share = Own(f"{took / planned:.2f}") if planned else _NONE
    return (Own(f"{took:.1f}"), share)


def _line_of(task: str, planned: list[str]) -> str:
    for piece in _OF_TASK[task]:  # type: ignore[index]
        for name in planned:
            if piece in name.lower() and not (task == "clean" and "neutralis" in name.lower()):
                return name
    return task


def _coats(ground: PaperGround) -> Rows:
    plan, units, story = ground.plan, ground.units, ground.ground.story
    rows = []
    for n, coat in enumerate(coat_ids(plan), 1):
        own_fields = [one for one in plan.fields if one.coat == coat]
        planned_l = sum(band.litres for one in own_fields for band in one.bands)
        planned_m2 = sum(one.area_m2 for one in own_fields)
        told_coat = story.coat(coat) if story is not None else None
        used_l = told_coat.used_l if told_coat is not None else None
        used_m2 = told_coat.levels[-1].area_m2 if told_coat is not None and used_l else 0.0
        rows.append((
            f"coat {n}", Own(area(planned_m2, units)), litres(planned_l, units),
            _coverage(ground, planned_m2, planned_l), litres(used_l, units),
            _coverage(ground, used_m2, used_l or 0.0), _share(ground, used_l, used_m2, coat),
        ))  # fmt: skip
    return Rows(
        ("coat", "floor", "planned", "coverage", "used", "coverage", "used / planned"),
        tuple(rows), (0.8, 1.1, 1.0, 1.2, 1.0, 1.2, 1.1), right=(1, 2, 3, 4, 5, 6),
    )  # fmt: skip


def _coverage(ground: PaperGround, area_m2: float, used_l: float) -> Text:
    if area_m2 <= 0 or used_l <= 0:
        return Own("")
    if ground.units == "us":
        return Own(f"{ft2_per_gal_from_m2_per_l(area_m2 / used_l):.0f} ft²/gal")
    return Own(f"{area_m2 / used_l:.1f} m²/L")


def _share(ground: PaperGround, used_l: float | None, used_m2: float, coat: str) -> Text:
    """Litres taken over those that the plan had for the same bands."""
    story = ground.ground.story
    known = story.coat(coat) if story is not None else None
    if not used_l or used_m2 <= 0 or known is None or not known.levels[-1].planned_l:
        return Own("")
    return Own(f"{used_l / known.levels[-1].planned_l:.2f}")


def _rinses(ground: PaperGround, closed: ClosedJob | None) -> tuple[Block, ...]:
    rounds = sorted(one.rounds for one in closed.rinsed) if closed is not None else []
    told_of = Own("____")
    if rounds:
        least, most = rounds[0], rounds[-1]
        told_of = Own(f"{least}" if least == most else f"{least} – {most}")
    wished = ground.job.washing.rinses
    return (
        Head("Rinses until the rag was clean, by room"),
        Facts((("planned", Own(f"{wished or 4:g}")), ("it took", told_of)), columns=2),
    )


def _back(ground: PaperGround) -> tuple[Block, ...]:
    called = entered(ground, "called-back")
    rows = tuple((when(ground, one), own(one, "what"), _h(one.number("hours"))) for one in called)
    return (
        Head("Call-backs"),
        Rows(("when", "what for", "hours"), rows, (2.3, 4.2, 1.1), right=(2,),
             blank=0 if rows else 2),
    )  # fmt: skip


def _h(hours: float | None) -> Text:
    return Own("" if hours is None else f"{hours:.1f}")


def _asked(ground: PaperGround, asked: str) -> Iterator[tuple[Text, Text]]:
    """What was agreed and what came in, as the log has them; else what was asked, and a line."""
    owed = ground.office.owed
    if owed.agreed_by:
        yield ("price agreed, no tax", Own(f"{grouped(owed.agreed)} {owed.currency}"))
        if owed.without_tax != owed.agreed:
            yield ("with all changes", Own(f"{grouped(owed.without_tax)} {owed.currency}"))
    else:
        yield ("price asked", Own(f"{grouped(asked)} {owed.currency}" if asked else "________"))
    paid = Decimal(owed.paid or "0")
    yield ("paid so far, with tax" if paid else "price paid",
           Own(f"{grouped(paid)} {owed.currency}" if paid else "________"))  # fmt: skip


def _money(ground: PaperGround, closed: ClosedJob | None) -> tuple[Block, ...]:
    """What was reckoned, and labour again by the hours that it took."""
    priced = ground.office.priced
    asked = next(
        (str(value) for name in ("price", "asked", "total")
         if (value := getattr(priced, name, "")) and isinstance(value, str)),
        "",
    )  # fmt: skip
    took = sum(one.hours for one in closed.hours) if closed is not None else 0.0
    rate = ground.job.prices.rates.labour_per_h
    pairs: list[tuple[Text, Text]] = [
        ("cost as reckoned", Own(f"{grouped(priced.cost)} {priced.currency}")),
        *_asked(ground, asked),
    ]
    if rate is not None and took:
        cost = rounded(amount(rate) * Decimal(str(round(took, 2))))
        pairs.append(("labour, by the hours it took", Own(f"{grouped(cost)} {priced.currency}")))
    else:
        pairs.append(("labour, by the hours it took", Own("________")))
    pairs += [("materials, as bought", Own("________")), ("left in hand", Own("________"))]
    return (Head("Price against cost"), Facts(tuple(pairs), columns=1))
