"""An invented house for the papers of acid, what its firm told, and how a paper is read back."""

from __future__ import annotations

from dataclasses import dataclass, replace
from types import SimpleNamespace

from tests.papers.invented_plan import small_house

from farwall.facts.contents import Content
from farwall.facts.job import Job, Stain, Wishes
from farwall.facts.materials import Material
from farwall.facts.plan import Mix
from farwall.facts.washing import Drums, Washing
from farwall.facts.workers import Emergency
from farwall.floor.nouns import Exit, Floor
from farwall.job.acid_day.ground import Ground

PLAN = small_house()
BLANK = Job(version=1, floor=Floor(rooms=PLAN.inputs.floor.rooms), exits=(Exit("out", "front"),))
DAY = SimpleNamespace(neutralising=None)
"""An acid day that reckoned nothing: papers then stand on what the trade says."""
TOLD = Emergency(
    number="555 0142",
    poison_centre="555 0199",
    spill_line="555 0177",
    hospital="Heron Street Hospital, gate 3",
    address="Lot 7, Juniper Row, behind the water tower",
    eyewash_at="laundry door",
)
STAINS = tuple(
    Stain(
        id=name,
        name=f"{name} of the invented chart",
        hcl_percent_low=5.0,
        hcl_percent_high=15.0,
        density_kg_l=1.25,
        chromate=False,
        contents=(Content("iron(III) chloride", 10.0, 20.0),),
        sheet_read="2027-05-03",
    )
    for name in sorted({coat.stain for coat in PLAN.inputs.coats})
)
FULL = replace(
    BLANK,
    stains=STAINS,
    emergency=TOLD,
    washing=Washing(base="ammonia water", drums=Drums(size_l=208.0, count=3)),
    materials=(Material("jug", "muriatic acid"),),
)


def ground(job=FULL, *, language="en", units="us", mixes=None):
    """The invented house with its facts."""
    plan = PLAN if mixes is None else replace(PLAN, mixes=mixes)
    return Ground(replace(job, wishes=Wishes(units=units, language=language)), plan)


def mixes(count, *, acid_l=0.0):
    """As many batches as asked, of the plan's own coats by turns."""
    coats = PLAN.inputs.coats
    return tuple(
        Mix(
            f"mix-{k}",
            coats[k % len(coats)].id,
            coats[k % len(coats)].cut,
            123.4,
            246.8,
            acid_l,
            (),
        )
        for k in range(count)
    )


@dataclass(frozen=True)
class Letter:
    """One letter as it is set: size of its type and height of its box, in points."""

    char: str
    size_pt: float
    high_pt: float


def pages_of(pdf):
    """The words of each page."""
    import pypdfium2

    return [" ".join(p.get_textpage().get_text_range().split()) for p in pypdfium2.PdfDocument(pdf)]


def letters_of(pdf):
    """Every letter of each page."""
    import pypdfium2
    from pypdfium2 import raw

    found = []
    for page in pypdfium2.PdfDocument(pdf):
        text = page.get_textpage()
        boxes = [text.get_charbox(k) for k in range(text.count_chars())]
        found.append(
            [
                Letter(text.get_text_range(k, 1), raw.FPDFText_GetFontSize(text.raw, k), top - foot)
                for k, (_, foot, _, top) in enumerate(boxes)
            ]
        )
    return found


def outside(pdf):
    """Letters that lie outside their page, by page."""
    import pypdfium2

    found = []
    for number, page in enumerate(pypdfium2.PdfDocument(pdf), 1):
        text, (wide, high) = page.get_textpage(), page.get_size()
        boxes = [text.get_charbox(k) for k in range(text.count_chars())]
        found += [
            (number, text.get_text_range(k, 1))
            for k, (left, foot, right, top) in enumerate(boxes)
            if left < 0 or foot < 0 or right > wide or top > high
        ]
    return found


def overlapping(pdf):
    """Letters that lie on one another, by page: their boxes share a third of the smaller one."""
    import pypdfium2
    import shapely

    found = []
    for number, page in enumerate(pypdfium2.PdfDocument(pdf), 1):
        text = page.get_textpage()
        words = text.get_text_range(0, text.count_chars())
        held = [(c, text.get_charbox(k)) for k, c in enumerate(words) if c.strip()]
        boxes = shapely.box(*zip(*(box for _, box in held), strict=True))
        for one, two in zip(*shapely.STRtree(boxes).query(boxes, "intersects"), strict=True):
            if one + 2 < two:  # the letters of a ligature share their box
                least = min(boxes[one].area, boxes[two].area)
                if boxes[one].intersection(boxes[two]).area > least / 3:
                    found.append((number, held[one][0], held[two][0]))
    return found
