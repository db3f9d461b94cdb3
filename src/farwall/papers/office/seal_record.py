"""The sealing record: coat by coat and room by room, what slab and air were, of which lot, by whom.

What the log holds stands in it; the rest is blank, to be written on the floor.
"""

from __future__ import annotations

from farwall.air.moist import dew_point_c
from farwall.air.sealers import GOOD_RH_PERCENT, SealerLimits, limits_of
from farwall.job.seal_day.ready import MOST_PH
from farwall.job.story.noun import Happened, Reading
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
from farwall.papers.office.entered import BLANK, degrees, entered, figure, kelvin, litres, room_of
from farwall.papers.office.ground import PaperGround
from farwall.phrasebook import told

_HEADS = ("coat", "where", "when", "slab", "air", "RH", "dew point", "margin", "used", "by")
_WIDTHS = (0.6, 1.5, 1.1, 0.8, 0.8, 0.7, 0.85, 0.85, 1.0, 1.2)
_LINES = 12
_NEAR_MIN = 180.0
"""A reading older than this tells nothing of the air at a coat: a guess."""


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
                right=(3, 4, 5, 6, 7), blank=max(_LINES - len(laid), 3),
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
        ("margin over the dew point", kelvin(limits.least_margin_k, units)),
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
    units, found = ground.units, []
    wanted = kelvin(limits.least_margin_k, units)
    for one in laid:
        margin = margin_k(ground, one)
        if margin is None or margin >= limits.least_margin_k:
            continue
        number, where = figure(one, "round"), room_of(ground, one.text("room"))
        place = where.text if isinstance(where, Own) else told(where)
        near = kelvin(margin, units)
        texts = [each.text for each in (number, near, wanted) if isinstance(each, Own)]
        found.append(
            Words(
                f"Coat {texts[0] or '?'}, {place}: {texts[1]} above the dew point, "
                f"less than {texts[2]}.",
                "danger",
            )
        )
    return tuple(found)


def margin_k(ground: PaperGround, one: Happened) -> float | None:
    """How far the slab was above the dew point when a coat was laid. [K]"""
    air = reading_near(ground, one)
    slab_c, dew_c = one.number("slab_c"), dew_of(air)
    if slab_c is None and air is not None:
        slab_c = air.slab_c
    return None if slab_c is None or dew_c is None else slab_c - dew_c


def _row(ground: PaperGround, one: Happened) -> tuple[Text, ...]:
    units, air = ground.units, reading_near(ground, one)
    slab_c = one.number("slab_c")
    if slab_c is None and air is not None:
        slab_c = air.slab_c
    dew_c = dew_of(air)
    rh = None if air is None else air.rh_percent
    return (
        figure(one, "round"), room_of(ground, one.text("room")), Own(ground.clock.time(one.at_min)),
        degrees(slab_c, units), degrees(None if air is None else air.air_c, units),
        BLANK if rh is None else Own(f"{rh:.0f} %"), degrees(dew_c, units),
        kelvin(margin_k(ground, one), units), litres(one.number("litres"), units), Own(one.who),
    )  # fmt: skip


def reading_near(ground: PaperGround, one: Happened) -> Reading | None:
    """The last reading of air before a coat, of its room or of no room, not too long before."""
    story = ground.ground.story
    room = one.text("room")
    near = [
        each
        for each in (story.readings if story is not None else ())
        if 0 <= one.at_min - each.at_min <= _NEAR_MIN
        and (not room or each.room in {"", room})
        and each.air_c is not None
        and each.rh_percent is not None
    ]
    return near[-1] if near else None


def dew_of(air: Reading | None) -> float | None:
    """Dew point of a reading. [°C]"""
    if air is None or air.air_c is None or air.rh_percent is None:
        return None
    return dew_point_c(air_c=air.air_c, rh_percent=air.rh_percent)
