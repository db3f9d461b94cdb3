"""The sealing record: coat by coat and room by room, what slab and air were, of which lot, by whom.

What the log holds stands in it; the rest is blank, to be written on the floor.
"""

from __future__ import annotations

from farwall.air.sealers import (
    GOOD_RH_PERCENT,
    SealerLimits,
    apart_words,
    limits_of,
    margin_words,
    wanted_words,
)
from farwall.job.seal_day.ready import MOST_PH
from farwall.job.story.coat_air import CoatAir, coat_air
from farwall.job.story.noun import Happened
from farwall.papers.office.blocks import (
    Blanks,
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Rows,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.days_said import short_moment
from farwall.papers.office.entered import BLANK, degrees, entered, figure, kelvin, litres, room_of
from farwall.papers.office.ground import PaperGround
from farwall.phrasebook import told

_HEADS = (
    "coat", "where", "when", "slab", "air", "RH", "dew point", "margin", "used", "lot", "by",
)  # fmt: skip
_WIDTHS = (0.6, 1.35, 1.25, 0.75, 0.75, 0.65, 0.75, 0.8, 0.9, 1.3, 1.0)
_LINES = 12


def seal_record(ground: PaperGround) -> Paper:
    """Limits of the sealer, what comes before the first coat, and a line for each coat laid."""
    laid = entered(ground, "sealed")
    limits = limits_of(ground.job.sealer)
    return Paper(
        title="Sealing record",
        under="Slab, air, lot and hands of every coat, kept with the job",
        screen="log",
        blocks=(
            Facts(_limits(ground, limits), columns=2),
            Words(
                "The label wins over these figures. Infrared on the slab itself, at five places, "
                "the coldest counts: by a door, on the shaded side.",
                "soft",
            ),
            Head("Before the first coat"),
            Ticks(_before(ground), columns=2),
            Head("Coats"),
            Rows(
                _HEADS, tuple(_row(ground, one) for one in laid), _WIDTHS,
                right=(3, 4, 5, 6, 7), blank=max(_LINES - len(laid), 3), pen="ruled",
            ),
            *_too_near(ground, laid, limits),
            Blanks(
                ("sealer, lot and best before", "floor finish, lot and coats",
                 "roller or pad, new for this floor", "hardener mixed at, pot life",
                 "socks allowed from", "shoes allowed from"),
                columns=3,
            ),
            Words(
                "No coat where the slab is less than the margin above the dew point, now or in "
                "the next six hours; none below the sealer's own least slab, whatever the air "
                "reads.",
                "strong",
            ),
        ),
    )  # fmt: skip


def _limits(ground: PaperGround, limits: SealerLimits) -> tuple[tuple[Text, Text], ...]:
    units, sealer = ground.units, ground.job.sealer
    least, most = degrees(limits.least_slab_c, units), degrees(limits.most_slab_c, units)
    assert isinstance(least, Own)
    assert isinstance(most, Own)
    return (
        ("sealer", Own(sealer.name) if sealer.name else limits.name),
        ("coats", Own(str(limits.coats))),
        ("slab", f"{least.text} to {most.text}"),
        ("margin over the dew point", margin_words(limits.least_margin_k, us=units == "us")),
        ("humidity, at most", Own(f"{limits.most_rh_percent:.0f} %")),
        ("next coat", f"{limits.recoat_from_h:g} to {limits.recoat_to_h:g} h"),
    )


def _before(ground: PaperGround) -> tuple[Text, ...]:
    sealer = ground.job.sealer
    most = MOST_PH if sealer.most_ph is None else sealer.most_ph
    return (
        "Even light colour, no dark islands",
        "Dark dry glove over the floor: no powder",
        f"White rag clean, pH at most {most:g}",
        f"Room below {GOOD_RH_PERCENT:.0f} % humidity",
        "Mat test lifted dry, in a closet",
        "Test patch holds: tape and scratch",
    )


def _too_near(
    ground: PaperGround, laid: tuple[Happened, ...], limits: SealerLimits
) -> tuple[Block, ...]:
    """Coats that were laid nearer to the dew point than the sealer bears, said in words."""
    us, found = ground.units == "us", []
    for one in laid:
        margin = air_of(ground, one).margin_k
        if margin is None or margin >= limits.least_margin_k:
            continue
        number, where = figure(one, "round"), room_of(ground, one.text("room"))
        place = where.text if isinstance(where, Own) else told(where)
        near = apart_words(margin, us=us)
        wanted = wanted_words(limits.least_margin_k, margin, us=us)
        which = f"Coat {number.text}, " if isinstance(number, Own) and number.text else ""
        short = f"{which}{place}: {near} above the dew point, less than {wanted}."
        found.append(Words(short, "danger"))
    return tuple(found)


def air_of(ground: PaperGround, one: Happened, *, room: str = "") -> CoatAir:
    """Slab and air when a coat was laid, as the log has them."""
    story = ground.ground.story
    return coat_air(story.readings if story is not None else (), one, room=room)


def _at_words(ground: PaperGround, one: Happened) -> Text:
    """`Mon 24 May, 9:30 am`: a floor is sealed a week after it was stained, on the same weekday."""
    clock = ground.clock
    at = clock.at(one.at_min)
    if not clock.day_told or at.date() == clock.starts_at.date():
        return Own(clock.time(one.at_min))
    return Own(short_moment(at, ground.units, ground.language))


def _row(ground: PaperGround, one: Happened) -> tuple[Text, ...]:
    units, air = ground.units, air_of(ground, one)
    rh = air.rh_percent
    return (
        figure(one, "round"), room_of(ground, one.text("room")), _at_words(ground, one),
        degrees(air.slab_c, units), degrees(air.air_c, units),
        BLANK if rh is None else Own(f"{rh:.0f} %"), degrees(air.dew_c, units),
        kelvin(air.margin_k, units), litres(one.number("litres"), units), sealer_lot(one),
        Own(one.who),
    )  # fmt: skip


def sealer_lot(one: Happened) -> Text:
    """Lot of the sealer as entered, its name before it where that was entered too."""
    return Own(" · ".join(filter(None, (one.text("sealer"), one.text("lot")))))
