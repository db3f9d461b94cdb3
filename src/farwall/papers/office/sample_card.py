"""Sample cards and their approval: a card for each coat, three dilutions side by side.

What TRADE asks at each sample is a row; a sample that was told, by the facts or by the log, fills
its column, the rest is left to the pen. Dry, clean and wet, sealed have places of their own and are
never compared with each other. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from farwall.facts.job import Coat, Job, Stain
from farwall.facts.samples import Sample
from farwall.job.colour.told import beneath, samples_of
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
from farwall.papers.office.days_said import dated
from farwall.papers.office.fill_in import EMPTY
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.sample_looks import looks_drawn
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.wall_clock import Units
from farwall.phrasebook import speaking, told
from farwall.units import KG_PER_LB, M2_PER_FT2, f_from_c, ft2_from_m2, gal_from_l

MOST_SAMPLES = 3
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
_STATES = (
    "The clean, wet floor is near the sealed colour; powder and dry floor say nothing of it. "
    "Photos of one state are held against photos of the same state only. A printed colour is no "
    "floor: the sample on the slab decides."
)
_PHOTO_SHARE = 0.17


def sample_card(ground: PaperGround) -> Paper:
    """The paper: a page for each coat, the approval on the last."""
    job = ground.job
    samples = samples_of(job, ground.ground.kept)
    coats: Sequence[Coat | None] = job.coats or (None,)
    blocks: list[Block] = []
    for k, coat in enumerate(coats):
        blocks += [*([Page()] if k else []), *_card(ground, coat, _of_coat(job, samples, k))]
    return Paper(
        title="Sample card",
        under="What was tried on this slab, and which of it is the standard",
        screen="samples",
        blocks=(*blocks, *_approval(samples, ground)),
    )


def _of_coat(job: Job, samples: Sequence[Sample], number: int) -> list[Sample]:
    """The samples of a coat: those made for it, else by how many coats lie beneath."""
    found = []
    for one in samples:
        chain = beneath(samples, one.id)
        named = next((k for k, coat in enumerate(job.coats) if coat.id == one.coat), None)
        if named is None and chain is not None:
            named = len(chain) - 1
        if named == number and job.coats:
            found.append(one)
    return found


def _shown(told: Sequence[Sample]) -> list[Sample]:
    """Those that have a column, in their order: the signed are kept first, then the right ones."""
    kept = sorted(told, key=lambda one: (not one.approved_by, one.verdict != "right"))
    return [one for one in told if one in kept[:MOST_SAMPLES]]


def _card(ground: PaperGround, coat: Coat | None, told: Sequence[Sample]) -> list[Block]:
    job, shown = ground.job, _shown(told)
    stain = next((one for one in job.stains if coat and one.id == coat.stain), None)
    more = len(told) - len(shown)
    size = paper_for(ground.units, job.wishes.paper)
    with speaking(ground.language):
        picture = looks_drawn(
            shown, width=size.inner_width, height=size.inner_height * _PHOTO_SHARE
        )
    return [
        _facts(job, coat, stain),
        _table(shown, coat, ground),
        Words(f"{_STATES} More on the ladder of samples: {more}." if more else _STATES, "soft"),
        Picture(picture, _PHOTO_SHARE, ""),
    ]


def _facts(job: Job, coat: Coat | None, stain: Stain | None) -> Facts:
    lots = ", ".join(stain.lots) if stain else ""
    name = (stain.name or stain.id) if stain else ""
    return Facts(
        (
            ("House", _line(job.name)),
            ("Coat", _line(str(job.coats.index(coat) + 1) if coat else "")),
            ("Stain, by its own name", _line(told(name))),
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
    return Rows(("at the sample", *heads), rows, widths=(2.2, 1.4, 1.4, 1.4), pen="ruled")


def _names(units: Units) -> tuple[str, ...]:
    return (
        "stain : water, over", "room, place", "how large", "slab", "air, humidity",
        "drop goes in, s", "laid, mL/ft²" if units == "us" else "laid, mL/m²",
        "sprayer before, after, lb" if units == "us" else "sprayer before, after, kg",
        "gloss gone after, min", "dry after, min", "dwell, h", "scrubs", "pH before, after",
        "white rag", "sealer, coats", "against what is wished", "photos, date",
    )  # fmt: skip


def _told(name: str, one: Sample, coat: Coat | None, ground: PaperGround) -> Text:
    """What a sample tells of a row; empty where it does not."""
    units = ground.units
    label = {room.id: room.label for room in ground.job.floor.rooms}
    humid = None if one.rh_percent is None else f"{one.rh_percent:g} %"
    if name == "against what is wished":
        return _VERDICTS[one.verdict] if one.verdict is not None else Own("")
    if name == "white rag":
        return _RAGS[one.rag] if one.rag is not None else Own("")
    found: dict[str, str | None] = {
        "stain : water, over": _cut(one, coat, ground.job.stains),
        "room, place": label.get(one.room or "", one.room),
        "how large": _large(one.area_m2, units),
        "slab": _warm(one.slab_c, units),
        "air, humidity": ", ".join(filter(None, (_warm(one.air_c, units), humid))),
        "drop goes in, s": _figure(one.drop_s),
        "laid, mL/ft²": None
        if not one.m2_per_l
        else f"{1000 * M2_PER_FT2 / one.m2_per_l:.0f}"
        f" ({ft2_from_m2(one.m2_per_l) / gal_from_l(1):.0f} ft²/gal)",
        "laid, mL/m²": None
        if not one.m2_per_l
        else f"{1000 / one.m2_per_l:.0f} ({one.m2_per_l:.1f} m²/L)",
        "sprayer before, after, lb": _pair(one.sprayer_before_kg, one.sprayer_after_kg, KG_PER_LB),
        "sprayer before, after, kg": _pair(one.sprayer_before_kg, one.sprayer_after_kg, 1.0),
        "gloss gone after, min": _figure(one.sheen_loss_min),
        "dry after, min": _figure(one.dry_min),
        "dwell, h": None if one.dwell_h is None else f"{one.dwell_h:.1f}",
        "scrubs": _figure(one.scrubs),
        "pH before, after": _pair(one.before_ph, one.after_ph, 1.0, digits=1),
        "sealer, coats": one.sealer,
    }
    return Own(found.get(name) or "")


def _cut(one: Sample, coat: Coat | None, stains: Sequence[Stain]) -> str | None:
    """Its cut and the sample beneath."""
    names = {stain.id: stain.name or stain.id for stain in stains}
    cut = one.cut or (coat.cut if coat else None)
    if one.stain and (coat is None or one.stain != coat.stain):
        # the head of the card names another stain
        cut = f"{names.get(one.stain, one.stain)} {cut or '?'}"
    return f"{cut or '?'}, {one.over}" if one.over else cut


def _figure(value: float | None) -> str | None:
    return None if value is None else f"{value:g}"


def _pair(before: float | None, after: float | None, unit: float, *, digits: int = 3) -> str | None:
    if before is None and after is None:
        return None
    return ", ".join("?" if one is None else f"{one / unit:.{digits}f}" for one in (before, after))


def _large(area_m2: float | None, units: Units) -> str | None:
    if area_m2 is None:
        return None
    return f"{area_m2 / M2_PER_FT2:.1f} ft²" if units == "us" else f"{area_m2:.2f} m²"


_VERDICTS = {"light": "too light", "right": "right as it is", "dark": "too dark"}
_RAGS = {"clean": "clean", "grey": "grey", "coloured": "coloured"}


def _warm(value_c: float | None, units: Units) -> str:
    if value_c is None:
        return ""
    return f"{f_from_c(value_c):.0f} °F" if units == "us" else f"{value_c:.1f} °C"


def _day(text: str, ground: PaperGround) -> str:
    """A day as papers write it; what is no day in ISO 8601 as it was told."""
    try:
        return dated(date.fromisoformat(text), ground.units, ground.language)
    except ValueError:
        return text


def _approval(samples: Sequence[Sample], ground: PaperGround) -> tuple[Block, ...]:
    signed = sorted((one for one in samples if one.approved_by), key=lambda one: one.approved_on)
    right = [one.id for one in samples if one.verdict == "right"]
    # Of several that came out right the pen says which.
    chosen = signed[-1].id if signed else right[0] if len(right) == 1 else ""
    pairs: list[tuple[Text, Text]] = [("The standard is sample", _line(chosen))]
    if signed:
        by = ", ".join(filter(None, (signed[-1].approved_by, _day(signed[-1].approved_on, ground))))
        pairs.append(("Signed by", Own(by)))
    return (
        Head("Approval"),
        Ticks(BEFORE_SIGNING, 2),
        Facts(tuple(pairs), 1),
        Sign(("owner", "finisher", "date"), CLAUSE),
    )
