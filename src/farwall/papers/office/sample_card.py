"""Sample cards and their approval: a card for each coat, three dilutions side by side.

What TRADE asks at each sample is a row; a sample that was told fills its column, the rest is left
to the pen. Dry, clean and wet, sealed have places of their own and are never compared with each
other. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.job import Coat, Job, Stain
from farwall.facts.samples import Sample
from farwall.papers.ink import LINE
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.office.blocks import (
    Block,
    Facts,
    Head,
    Own,
    Page,
    Paper,
    Picture,
    Rows,
    Sign,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.fill_in import EMPTY
from farwall.papers.office.ground import PaperGround
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking
from farwall.units import M2_PER_FT2, f_from_c, ft2_from_m2, gal_from_l

MOST_SAMPLES = 3
STATES = ("dry", "clean and wet", "sealed")
CLAUSE = (
    "The signed, sealed sample is the standard of this floor, with its natural range. The floor "
    "varies in colour; cracks, trowel marks, patches and marks of what lay on it show."
)
BEFORE_SIGNING = (
    "Every step was done as on the floor: cleaning, coats, dwell, scrub, rinse, dry, sealer.",
    "Dry overnight before the sealer; the floor's own sealer, no swap.",
    "Looked at by day at the window, and at night under the house's lamps.",
    "Sealed is compared with sealed only; a chart or a chip is no sample.",
    "Read in the middle of it; edges feather.",
    "Photos with a grey card, white balance fixed.",
)
_PHOTO_SHARE = 0.17


def sample_card(ground: PaperGround) -> Paper:
    """The paper: a page for each coat, the approval on the last."""
    job = ground.job
    coats: Sequence[Coat | None] = job.coats or (None,)
    blocks: list[Block] = []
    for k, coat in enumerate(coats):
        blocks += [*([Page()] if k else []), *_card(ground, coat)]
    return Paper(
        title="Sample card",
        under="What was tried on this slab, and which of it is the standard",
        screen="samples",
        blocks=(*blocks, *_approval(job)),
    )


def _card(ground: PaperGround, coat: Coat | None) -> list[Block]:
    job = ground.job
    stain = next((one for one in job.stains if coat and one.id == coat.stain), None)
    told = [one for one in job.samples if coat is not None and one.coat == coat.id]
    return [
        _facts(job, coat, stain),
        _table(told[:MOST_SAMPLES], coat, ground),
        Words(
            "The clean, wet floor is near the sealed colour; powder and dry floor say nothing of "
            "it. Photos of one state are held against photos of the same state only.",
            "soft",
        ),
        Picture(_places(ground), _PHOTO_SHARE, ""),
    ]


def _facts(job: Job, coat: Coat | None, stain: Stain | None) -> Facts:
    lots = ", ".join(stain.lots) if stain else ""
    name = (stain.name or stain.id) if stain else ""
    return Facts(
        (
            ("House", _line(job.name)),
            ("Coat", _line(coat.id if coat else "")),
            ("Stain, by its own name", _line(name)),
            ("Lot", _line(lots)),
        ),
        2,
    )


def _line(text: str) -> Own:
    return Own(text or "_" * 24)


def _table(told: Sequence[Sample], coat: Coat | None, ground: PaperGround) -> Rows:
    units = ground.units
    blank = (
        ("a weaker cut", "the planned cut", "a stronger cut")
        if not told
        else ("a weaker cut", "a stronger cut")
    )
    heads: list[Text] = [Own(one.id) for one in told]
    heads += list(blank[: MOST_SAMPLES - len(told)])
    rows = tuple(
        (name, *(_told(name, one, coat, ground) for one in told),
         *((EMPTY,) * (MOST_SAMPLES - len(told))))
        for name in _names(units)
    )  # fmt: skip
    return Rows(("at the sample", *heads), rows, widths=(2.2, 1.4, 1.4, 1.4))


def _names(units: Units) -> tuple[str, ...]:
    return (
        "stain : water", "room, place", "how large", "slab", "air, humidity",
        "drop goes in, s", "laid, mL/ft²" if units == "us" else "laid, mL/m²",
        "gloss gone after, min", "dry after, min", "dwell, h", "scrubs", "pH before, after",
        "white rag", "sealer, coats", "against what is wished", "photos, date",
    )  # fmt: skip


def _told(name: str, one: Sample, coat: Coat | None, ground: PaperGround) -> Text:
    """What a sample tells of a row; empty where it does not."""
    units = ground.units
    label = {room.id: room.label for room in ground.job.floor.rooms}
    humid = None if one.rh_percent is None else f"{one.rh_percent:g} %"
    found: dict[str, str | None] = {
        "stain : water": coat.cut if coat else None,
        "room, place": label.get(one.room or "", one.room),
        "slab": _warm(one.slab_c, units),
        "air, humidity": ", ".join(filter(None, (_warm(one.air_c, units), humid))),
        "drop goes in, s": None if one.drop_s is None else f"{one.drop_s:g}",
        "laid, mL/ft²": None
        if not one.m2_per_l
        else f"{1000 * M2_PER_FT2 / one.m2_per_l:.0f}"
        f" ({ft2_from_m2(one.m2_per_l) / gal_from_l(1):.0f} ft²/gal)",
        "laid, mL/m²": None
        if not one.m2_per_l
        else f"{1000 / one.m2_per_l:.0f} ({one.m2_per_l:.1f} m²/L)",
        "gloss gone after, min": None if one.sheen_loss_min is None else f"{one.sheen_loss_min:g}",
    }
    if name == "against what is wished" and one.verdict is not None:
        return _VERDICTS[one.verdict]
    return Own(found.get(name) or "")


_VERDICTS = {"light": "too light", "right": "right as it is", "dark": "too dark"}


def _warm(value_c: float | None, units: Units) -> str:
    if value_c is None:
        return ""
    return f"{f_from_c(value_c):.0f} °F" if units == "us" else f"{value_c:.1f} °C"


def _places(ground: PaperGround) -> str:
    """Three places for a photo or a chip, each with its state over it."""
    size = paper_for(ground.units, ground.job.wishes.paper)
    width, height, gap = size.inner_width, size.inner_height * _PHOTO_SHARE, 14.0
    svg = Svg(width=width, height=height, family=PAPER_LETTERING.family, ident="places")
    wide = (width - gap * (len(STATES) - 1)) / len(STATES)
    with speaking(ground.language):
        for k, state in enumerate(STATES):
            left = k * (wide + gap)
            svg.text((left, 9), state, PAPER_LETTERING.small, anchor="start", bold=True)
            svg.element(
                "rect", x=left + 0.5, y=15, width=wide - 1, height=height - 16, fill="none",
                stroke=LINE, stroke_width=0.8, stroke_dasharray="3 3",
            )  # fmt: skip
        return svg.document(title="Places for photos", description="dry, clean and wet, sealed")


def _approval(job: Job) -> tuple[Block, ...]:
    right = [one.id for one in job.samples if one.verdict == "right"]
    chosen = ", ".join(right) if right else "_" * 24
    return (
        Head("Approval"),
        Ticks(BEFORE_SIGNING, 2),
        Facts((("The standard is sample", Own(chosen)),), 1),
        Sign(("owner", "finisher", "date"), CLAUSE),
    )
