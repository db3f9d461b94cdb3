"""Shopping list: by seller, then shelf by shelf; what the van has; what to look at on a label."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.van import StockKind
from farwall.job.office.buying import Bought, Buying, Delivered, There
from farwall.job.office.buying.said import age_said, size_said
from farwall.job.van.say import amount_words
from farwall.papers.office.blocks import Block, Head, Own, Paper, Rows, Sums, Text, Ticks, Words
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.money_words import money
from farwall.phrasebook import told
from farwall.price.money import amount

_WIDTHS = (0.8, 1.5, 3.2, 1.5, 1.0, 1.1)
_RIGHT = (0, 4, 5)
_FLUIDS: tuple[StockKind, ...] = ("stain", "sealer", "finish", "cleaner")
_LABELS: tuple[tuple[tuple[StockKind, ...], str], ...] = (
    (
        ("stain",),
        (
            "Stain: the colour and the lot of the sample; all of one colour of one lot. Where "
            "the lot is another, a new sample of it comes first."
        ),
    ),
    (
        _FLUIDS,
        (
            "Seal whole, can not rusty, swollen or dented; its date still good on the day of the "
            "floor."
        ),
    ),
    (
        (*_FLUIDS, "bicarbonate"),
        (
            "The safety sheet of each material comes along; read it before the day, it wins over "
            "this paper."
        ),
    ),
    (
        ("sealer", "finish"),
        (
            "Sealer: for bare concrete indoors; the lowest slab temperature and the wait between "
            "coats stand on it."
        ),
    ),
    (
        ("tape", "film", "paper"),
        (
            "Tape that comes off painted walls; film that clings, 48 in where a wand is swung. No "
            "tape ever lies on the slab."
        ),
    ),
    (
        ("cartridges",),
        (
            "Cartridges: acid gas with P100, for the respirator there; the bag closed, its date "
            "good."
        ),
    ),
    (
        ("gloves", "suit", "boots", "goggles"),
        "Gloves, suits and boots made for acid, in the sizes of those who wear them.",
    ),
    (
        ("sprayer",),
        (
            "Sprayer: all plastic, no metal in wand, spring or valve; seals made for acid; its tip "
            "the same as that of the other."
        ),
    ),
    (("drums",), "Drums with lids and rings, never used for food or fuel."),
)
"""What is looked at before it is paid for, by what is bought [common practice, no source]."""


def shopping_list(ground: PaperGround) -> Paper:
    """What is bought of whom, with boxes to tick; then what is there already."""
    found = ground.office.buying
    blocks: list[Block] = []
    for seller in found.sellers:
        blocks += [Head(_head(seller)), _rows(ground, found, seller.seller)]
    blocks += _no_price(ground, found)
    if not found.lines and not found.unpriced:
        blocks.append(Words("Nothing to buy: the van has it all."))
    blocks += [*_van(ground, found.there), *_labels(found), *_sums(found)]
    return Paper(
        title="Shopping list", under="Bought before the day; tick what lies in the van",
        blocks=tuple(blocks), screen="price/buying",
    )  # fmt: skip


def _head(seller: Delivered) -> Text:
    return Own(seller.seller) if seller.seller else "No seller named yet"


def _rows(ground: PaperGround, found: Buying, seller: str) -> Rows:
    own = [one for one in found.lines if one.seller == seller]
    return Rows(
        ("count", "size", "what", "lot", "price", "in all"),
        tuple(_row(ground, one) for one in own),
        _WIDTHS,
        _RIGHT,
        tick=True,
    )


def _row(ground: PaperGround, one: Bought) -> tuple[Text, ...]:
    size = size_said(one.size, one.unit, ground.units)
    lot: Text = "all of one lot" if one.kind == "stain" and not one.lot else Own(one.lot)
    about = "~ " if one.rank == "guess" else ""
    return (
        Own(f"{one.count}"),
        "" if size == "each" else size if one.unit == "count" else Own(size),
        what_said(one),
        lot,
        Own(about + money(one.price).text),
        money(one.cost),
    )


def what_said(one: Bought) -> Own:
    """What it is, and the seller's own name for it."""
    what = told(one.what)
    return Own(f"{what}: {one.name}" if one.name and one.name.casefold() != what else what)


def _no_price(ground: PaperGround, found: Buying) -> list[Block]:
    own = [one for one in found.there if one.what in found.unpriced and one.buy > 0]
    if not own:
        return []
    rows = tuple((one.what, _much(one.buy, one.unit, ground.units)) for one in own)
    return [Head("Asked for: no price is known"), Rows(("what", "how much"), rows, (3, 1), (1,),
                                                        tick=True)]  # fmt: skip


def _much(amount_: float, unit: str, units: str) -> Own:
    return Own(amount_words(amount_, unit, units))


def _van(ground: PaperGround, there: Sequence[There]) -> list[Block]:
    """What the shelf has of it, and what has to be looked at there."""
    own = [one for one in there if one.there > 0 or one.mind]
    if not own:
        return []
    rows = tuple(
        (
            Own(one.what) if one.kind == "stain" else one.what,
            _much(one.there, one.unit, ground.units),
            _much(one.needed, one.unit, ground.units),
            Own("; ".join(told(part) for part in age_said(one))),
        )
        for one in own
    )
    return [Head("In the van already"),
            Rows(("what", "there", "needed", "look at"), rows, (2.2, 1.5, 1.5, 3.2))]  # fmt: skip


def _labels(found: Buying) -> list[Block]:
    kinds = {one.kind for one in found.lines}
    items = tuple(words for which, words in _LABELS if kinds & set(which))
    return [Head("Before it is paid for"), Ticks(items, 2)] if items else []


def _sums(found: Buying) -> list[Block]:
    rows: list[tuple[Text, Text]] = [("Goods", money(found.goods))]
    rows += [
        (f"Delivery, {one.seller}", money(one.delivery))
        for one in found.sellers
        if amount(one.delivery)
    ]
    rows.append((f"In all, {found.currency}", money(found.total)))
    blocks: list[Block] = [Sums(tuple(rows))] if found.lines else []
    if amount(found.guessed):
        blocks.append(
            Words(
                "A price with ~ is invented and stands until a seller has named his "
                f"(rank: guess): {money(found.guessed).text} of the sum.",
                "soft",
            )
        )
    return [*blocks, *(Words(one, "strong") for one in found.warnings)]
