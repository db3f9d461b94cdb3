"""The sheet for the builder before the pour: what the slab must be spared to take colour.

One page. From finishers' sheets for builders and makers' instructions [builder-sheets,
stain-sheets], trade articles [trade-press], and common practice with no source. Where these
disagree the sheet asks for a choice and tells none as a fact.
"""

from __future__ import annotations

from datetime import datetime

from farwall.facts.job import Job
from farwall.papers.office.blocks import (
    Beside,
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Sign,
    Steps,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.days_said import whole_day
from farwall.papers.office.fill_in import EMPTY, own
from farwall.papers.office.ground import PaperGround

RESTS_ON = (
    "Finishers' sheets for builders, makers' instructions, trade articles; common practice with no "
    "source."
)
_LINE = Own("_" * 30)
_MIX = (
    (
        "5 sacks of cement to the cubic yard (470 lb/yd³, 280 kg/m³) or more; one mix, one "
        "plant, one pour. Keep the tickets for us."
    ),
    "No calcium chloride: it makes dark blotches.",
    "No slag or other pozzolan without our word: they weaken the colour.",
)
_FINISH = (
    "Alike all over: edges, corners and around pipes like the middle. No burned spots.",
    "No curing compound, no cure-and-seal, no sealer, no hardener. Nothing sprayed on.",
    (
        "No plastic sheet lying on damp concrete: it leaves its pattern. How it cures instead, we "
        "agree before the pour."
    ),
    "No acid wash, ever: it uses up the lime that takes the colour.",
)
_NEVER = (
    (
        "No red chalk. Another colour only after a line was snapped, washed and stained in a "
        "closet: texts disagree on which wash out."
    ),
    "No tape on the slab; tape on walls and on itself only.",
    "No wood, pallets, board, pipe or steel lying on it. Sawhorses on covers.",
    "No paint, primer, drywall mud, pipe cement, glue, marker, crayon.",
    (
        "No oil, fuel, form oil, silicone spray; no oil-based sweeping compound. Drip pans under "
        "lifts."
    ),
    "No nails, tack strips or patches. A hole or a spill: call us first, touch nothing.",
)
_COVERS = (
    (
        "Cover only with what breathes, board or paper, dry, over the whole room: the edge of a "
        "cover shows. Taped to itself."
    ),
    "Board half an inch (13 mm) clear of the slab, or base on: wet board draws stain up.",
)
_HOUSE = (
    "Running water, hot if there is any, in reach of a hose.",
    "Two 20 A circuits on breakers of their own within 150 ft (45 m), for us alone.",
    (
        "Heat that holds 60 to 90 °F (16 to 32 °C), from before we come to a week after. No open "
        "flame, no unvented heater."
    ),
    "Windows in, doors that shut, lights. Overhead wet work done.",
    "A place for drums of wash water, or the utility's written word for the sewer.",
)
_SHOWS = (
    "Every crack, darker. Patches, trenches, a second pour. Burned and hand-trowelled places. "
    "Tape, chalk, wood, pipe and plastic that lay on it. Drips of paint, oil, mud, glue. Nail and "
    "tack holes."
)


def slab_protection(ground: PaperGround) -> Paper:
    """The paper: the mix, the finish, what must not touch the slab, who is in the house, dates."""
    job = ground.job
    return Paper(
        title="Before the pour",
        under="What this slab must be spared, so that it takes colour",
        letterhead=True,
        blocks=(
            Words(
                "This slab will be the finished floor. Whatever touches it before the stain shows "
                "in the colour for ever."
            ),
            *_names(ground),
            Beside(
                left=(
                    Head("The mix"),
                    Ticks((*_MIX, _fly_ash(job))),
                    Head("The finish"),
                    Ticks(_FINISH),
                    Words(
                        "How tight it is trowelled: texts say marble-slick, not too slick, and "
                        "lightly by machine if at all. Agreed here: __________________________"
                    ),
                    Head("Covers and walls"),
                    Ticks(_COVERS),
                    Head("What shows for ever"),
                    Words(_SHOWS),
                ),
                right=(
                    Head("Nothing of this on the slab"),
                    Ticks(_NEVER),
                    Head("When we come"),
                    Ticks(_HOUSE),
                    *_who(job),
                ),
            ),
            Words(RESTS_ON, "soft"),
            Sign(
                ("builder", "finisher", "date"), "Read, and passed on to all trades on this site:"
            ),
        ),
    )


def _names(ground: PaperGround) -> tuple[Block, ...]:
    job = ground.job
    start: Text = EMPTY
    if job.starts_at:
        day = datetime.fromisoformat(job.starts_at).date()
        start = Own(whole_day(day, ground.units, ground.language))
    pairs: tuple[tuple[str, Text], ...] = (
        ("House", own(job.name)),
        ("Pour on", EMPTY),
        ("Builder", own(job.builder.name)),
        ("Stain begins", start),
        ("Their phone", own(job.builder.phone)),
    )
    lined = tuple((name, _LINE if value == EMPTY else value) for name, value in pairs)
    return (Facts(lined, 2),)


def _fly_ash(job: Job) -> str:
    most = job.choices.most_fly_ash_percent
    if most is not None:
        return f"Fly ash: {most:g} % at most (texts: none, under 10 %, up to 15 %)."
    return "Fly ash: none, unless we agree: ______ % (texts: none, under 10 %, up to 15 %)."


def _who(job: Job) -> tuple[Block, ...]:
    least = job.choices.least_slab_age_days
    age = (
        f"The slab is {least:g} days old or more, or what the stain's sheet asks for if that is "
        "longer."
        if least is not None
        else "The slab is 28 days old or more, or what the stain's sheet asks for if that is "
        "longer (texts say 14 to 42 days). A sample on this slab decides."
    )
    return (
        Head("Who is in the house"),
        Steps((
            age,
            (
                "A place for a sample, 2 × 2 ft (0.6 × 0.6 m), a week before: closet or under "
                "cabinets."
            ),
            ("All other trades, owner and pets out from cleaning to a day after the sealer: 5 "
            "working days or more. The schedule has the dates."),
        )),
    )  # fmt: skip
