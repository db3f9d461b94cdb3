"""Scope: what is done, how the floor will look, what is not in the price, who provides what."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.papers.office.blocks import (
    LAW_WINS,
    Block,
    Head,
    Own,
    Paper,
    Rows,
    Sign,
    Steps,
    Text,
    Words,
)
from farwall.papers.office.ground import PaperGround
from farwall.papers.words import area

ACROSS = 3
"""Rooms beside each other in the table."""
LOOKS = (
    (
        "The sealed and signed sample on this slab is the standard, with its natural range. A "
        "chart or a chip from another slab is none. An even colour, without clouds, is not "
        "promised: who wants one wants another floor."
    ),
    (
        "Cracks, trowel marks, patches, nail holes, ghosts of tape, glue, wood or old "
        "coverings, and differences in how the slab cured, show through. They are not flaws of "
        "the work."
    ),
    "No two floors come out alike, and no two pours.",
)
EXCLUDED = (
    "Repairing cracks, spalls and joints; levelling; grinding off coatings that nobody named.",
    "Making patches, trenches and pours of another day match the rest.",
    "Moving furniture and appliances; taking off and setting base boards and doors.",
    "Plumbing, electrical work, gas appliances off and on.",
    "Asbestos, lead, mould: whoever suspects them calls a licensed inspector first.",
    "Moisture and salts from below, floods, movement of the slab.",
    (
        "Damage by others after the floor is handed over, and what others spill or tape on the "
        "slab before."
    ),
    "Painting of walls and trim beyond what our own masking let through.",
    "The upkeep of the sealed floor: the care sheet says what it wants.",
)
PROVIDED = (
    (
        "The house closed to all other trades from the first cleaning until 24 hours after the "
        "last coat of sealer; keys, and one person who may decide."
    ),
    "Electric power, clean water and light to see colour by.",
    (
        "Heat: rooms between 60 and 90 °F (16 and 32 °C), the slab never above 85 °F (29 °C), day "
        "and night, without open flames while sealer is laid."
    ),
    "The floor bare, dry and swept; nothing taped to it since the pour.",
)
LAW = (
    "What the law of the place says of contracts, liens, warranty, licences and tax wins over this "
    "sheet; have a licensed adviser read it once before it is used."
)
WASTE = {
    "sewer in writing": "into the sewer, by the written permission in hand",
    "drums": "into drums, and from there as the local utility and the material's sheet allow",
    "hauled": "hauled off by a licensed hauler",
}
NO_ROUTE = "not settled yet; it is settled in writing before the first stain is poured"


def scope(ground: PaperGround) -> Paper:
    """The sheet that goes with the quote."""
    return Paper(
        title="Scope and what is not in it",
        under=Own(ground.job.name or ground.job.id),
        letterhead=True,
        wins=LAW_WINS,
        screen="price",
        blocks=tuple(_blocks(ground)),
    )


def _blocks(ground: PaperGround) -> Iterator[Block]:
    yield Head("What we do")
    yield Steps(_does(ground))
    yield _rooms(ground)
    yield Head("What the floor will look like")
    yield Words(" ".join(LOOKS))
    yield Head("What is not in the price")
    own = tuple(Own(one) for one in ground.job.prices.terms.excluded if one)
    yield Steps((*EXCLUDED, *own))
    yield Head("What owner and builder provide")
    yield Steps((*PROVIDED, f"Where coloured rinse water goes: {_waste(ground)}."))
    yield Words(
        "Anything else is a change order: written, priced and signed before it is done.", "strong"
    )
    yield Words(LAW, "soft")
    yield Sign(("owner", "finisher", "date"), "Read and agreed:")


def _does(ground: PaperGround) -> tuple[Text, ...]:
    """Each step of the fullest offer, and what the firm adds to it."""
    offers = ground.office.priced.offers
    fullest = max(offers, key=lambda one: (len(one.holds), one.area_m2), default=None)
    held: tuple[Text, ...] = fullest.holds if fullest else ()
    own = tuple(Own(one) for one in ground.job.prices.terms.included if one)
    return (*held, *own)


def _rooms(ground: PaperGround) -> Rows:
    """Every room with its floor, so many beside each other, and the sum."""
    cells: list[tuple[Text, ...]] = [
        (Own(one.name), Own(area(one.area_m2, ground.units)), "")
        for one in ground.office.priced.rooms
    ]
    cells.append(("In all", Own(area(ground.office.priced.area_m2, ground.units)), ""))
    cells += [("", "", "")] * (-len(cells) % ACROSS)
    lines = [cells[n : n + ACROSS] for n in range(0, len(cells), ACROSS)]
    rows = tuple(tuple(one for cell in line for one in cell)[:-1] for line in lines)
    return Rows(
        ("Room", "Floor", "", "Room", "Floor", "", "Room", "Floor"), rows,
        widths=(2.2, 1.1, 0.4, 2.2, 1.1, 0.4, 2.2, 1.1), right=(1, 4, 7),
    )  # fmt: skip


def _waste(ground: PaperGround) -> str:
    return WASTE.get(ground.job.survey.waste or "", NO_ROUTE)
