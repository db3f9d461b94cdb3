"""Before and after: two photos of one place side by side, and what a photo does not tell."""

from __future__ import annotations

import base64

from farwall.errors import Mistake
from farwall.facts.photo_shown import PhotoShown
from farwall.job.colour.before_after import WORDS, Pair, pairs_of
from farwall.job.story.noun import Happened
from farwall.nouns import dataclass
from farwall.papers.ink import INK
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.office.blocks import Block, Head, Own, Page, Paper, Picture, Rows, Text, Words
from farwall.papers.office.entered import BLANK, own, room_of, when
from farwall.papers.office.ground import PaperGround
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.svg import Svg
from farwall.phrasebook import speaking

_GAP_PT, _HEAD_PT = 14.0, 16.0
_TALLEST = 0.6
"""Of the page that the pictures may take."""
REMARK = (
    "A photo and a screen are not the floor: paper, screen and lamp each change a colour, a wet "
    "floor is not a sealed one, and two lights part what one shows alike. The signed sample on "
    "the floor itself is the standard."
)
_CORRECTED = "corrected by the target in it, about {de:.1f} off (CIEDE2000)"
_AS_TAKEN = "as the camera made it: its colours are a guess"
NOT_ALIKE = (
    "The two were not told to be of the same state, dry or wet or sealed: light and dark are not "
    "to be compared."
)


@dataclass(frozen=True)
class _Two:
    before: PhotoShown
    after: PhotoShown
    pair: Pair | None


def before_after(ground: PaperGround) -> Paper:
    """A page for each place with two photos; the pair that was given comes first."""
    blocks: list[Block] = []
    for k, two in enumerate(_shown(ground)):
        blocks += [*([Page()] if k else []), *_place(two, ground)]
    return Paper(
        title="Before and after",
        under="The same place, twice",
        screen="colour",
        letterhead=True,
        blocks=(*blocks, Words(REMARK)),
    )


def before_after_lacks(ground: PaperGround) -> tuple[Mistake, ...]:
    """What must be there before it can be made: two photos of one place."""
    story = ground.ground.story
    if ground.pair or (ground.photo and story and pairs_of(story.of(*WORDS))):
        return ()
    what = "No place has two photos in the log, one before and one after."
    remedy = "Enter photos with their room or sample in the log."
    return (Mistake("before-after.pdf", what, remedy),)


def _shown(ground: PaperGround) -> list[_Two]:
    found = [] if ground.pair is None else [_Two(*ground.pair, None)]
    story = ground.ground.story
    if story is None or ground.photo is None:
        return found
    for pair in pairs_of(story.of(*WORDS), ground.chosen):
        one, other = (ground.photo(each.text("file")) for each in (pair.before, pair.after))
        if one is not None and other is not None:
            found.append(_Two(one, other, pair))
    return found


def _place(two: _Two, ground: PaperGround) -> list[Block]:
    pair = two.pair
    wide = paper_for(ground.units, ground.job.wishes.paper).inner_width
    blocks: list[Block] = [Picture(_drawn(two, ground), wide_pt=wide)]
    if pair is not None:
        name: Text = Own(pair.sample) if pair.sample else room_of(ground, pair.room)
        blocks = [Head(name), *blocks]
    rows: list[tuple[Text, ...]] = [
        (name, *_cells(photo, happened, ground))
        for name, photo, happened in (
            ("before", two.before, None if pair is None else pair.before),
            ("after", two.after, None if pair is None else pair.after),
        )
    ]
    heads = ("", "when", "how it stood", "seen by", "its colours", "note")
    blocks.append(Rows(heads, tuple(rows), (0.9, 1.4, 1.2, 0.8, 2.6, 1.6)))
    if pair is not None and not pair.alike:
        blocks.append(Words(NOT_ALIKE, "soft"))
    return blocks


def _cells(photo: PhotoShown, one: Happened | None, ground: PaperGround) -> tuple[Text, ...]:
    colours: Text = (
        _AS_TAKEN
        if photo.error_de is None
        else _CORRECTED.format(de=photo.error_de)
    )  # fmt: skip
    if one is None:
        return (Own(photo.taken_at.replace("T", " ")[:16]), BLANK, BLANK, colours, BLANK)
    return (
        when(ground, one), one.text("state") or BLANK, one.text("light") or BLANK, colours,
        own(one, "note"),
    )  # fmt: skip


def _drawn(two: _Two, ground: PaperGround) -> str:
    """Both pictures side by side and equally wide."""
    size = paper_for(ground.units, ground.job.wishes.paper)
    wide, most = size.inner_width, size.inner_height * _TALLEST - _HEAD_PT
    each = (wide - _GAP_PT) / 2 - 1
    photos = (two.before, two.after)
    highs = [min(most, each * one.height_px / one.width_px) for one in photos]
    svg = Svg(
        width=wide, height=max(highs) + _HEAD_PT + 1, family=PAPER_LETTERING.family, ident="pair"
    )
    with speaking(ground.language):
        for k, (name, photo, high) in enumerate(
            zip(("before", "after"), photos, highs, strict=True)
        ):
            x = 0.5 + k * (each + 1 + _GAP_PT)
            svg.text((x, 10), name, PAPER_LETTERING.small, anchor="start", bold=True)
            place = {
                "x": x, "y": _HEAD_PT, "width": high * photo.width_px / photo.height_px,
                "height": high,
            }  # fmt: skip
            data = base64.b64encode(photo.jpeg).decode("ascii")
            svg.element("image", **place, href=f"data:image/jpeg;base64,{data}")
            svg.element("rect", **place, fill="none", stroke=INK, stroke_width=0.5)
        return svg.document(title="Before and after", description="Two photos of one place")
