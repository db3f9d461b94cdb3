"""What a paper is made of: a few kinds of block, set alike on every paper. Plain values only.

Words stand in English and are told in the paper's language when it is set; what the user wrote
(names, notes) stays as it is where it is wrapped in `Own`.
"""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass


@dataclass(frozen=True)
class Own:
    """Text of the user's own, a number or a date: never translated."""

    text: str


Text = str | Own


@dataclass(frozen=True)
class Head:
    """The head of a part of the paper."""

    text: Text


@dataclass(frozen=True)
class Words:
    """A paragraph: plain, strong, soft (small and grey) or danger (strong, dark red)."""

    text: Text
    tone: Literal["plain", "strong", "soft", "danger"] = "plain"


@dataclass(frozen=True)
class Ticks:
    """Boxes to tick with a pen, in one column or two."""

    items: tuple[Text, ...]
    columns: Literal[1, 2] = 1


@dataclass(frozen=True)
class Steps:
    """Numbered steps."""

    items: tuple[Text, ...]


@dataclass(frozen=True)
class Facts:
    """Names and their values, side by side; `columns` pairs in a row."""

    pairs: tuple[tuple[Text, Text], ...]
    columns: Literal[1, 2] = 1


@dataclass(frozen=True)
class Blanks:
    """Names with a line to write on; `wide` ones take the whole width."""

    names: tuple[Text, ...]
    columns: Literal[1, 2, 3] = 2
    lines: int = 1


@dataclass(frozen=True)
class Rows:
    """A table: heads, rows, share of the width of each column, which stand to the right.

    blank: rows to be written by hand after the others · tick: a box to tick opens each row, under
    tick_head · tick_end: where it is not empty, a second box closes each row under this head ·
    strong_last: the last row is the sum, and has no box where two columns of them stand · pen: its
    cells are written in by hand, so lines stand between them, and `roomy` rows are as high as a
    hand in a glove writes.
    """

    heads: tuple[Text, ...]
    rows: tuple[tuple[Text, ...], ...]
    widths: tuple[float, ...] = ()
    right: tuple[int, ...] = ()
    blank: int = 0
    tick: bool = False
    tick_head: Text = ""
    tick_end: Text = ""
    strong_last: bool = False
    pen: Literal["no", "ruled", "roomy"] = "no"


@dataclass(frozen=True)
class Sums:
    """Amounts that add up, set to the right; the last one is the figure of the paper."""

    rows: tuple[tuple[Text, Text], ...]


@dataclass(frozen=True)
class Picture:
    """A drawing as SVG, at most so much of the page's height (0 to 1).

    wide_pt: its width where it is never to be scaled, for what is measured on the paper.
    """

    svg: str
    height_share: float = 0.45
    words: Text = ""
    wide_pt: float = 0.0


@dataclass(frozen=True)
class Sign:
    """Lines for signatures, kept together at the end."""

    names: tuple[Text, ...] = ("finisher", "owner or builder", "date")
    words: Text = ""


@dataclass(frozen=True)
class Page:
    """A new page begins."""


@dataclass(frozen=True)
class Beside:
    """Two lists of blocks side by side; `share`: of the width that the left one takes."""

    left: tuple[Block, ...]
    right: tuple[Block, ...]
    share: float = 0.5


Block = Head | Words | Ticks | Steps | Facts | Blanks | Rows | Sums | Picture | Sign | Page | Beside


LAW_WINS = "The law of the place wins, and a licensed adviser where it is asked."
"""At the foot of papers about money and promises."""


@dataclass(frozen=True)
class Paper:
    """A paper: its title, a line under it, whom it goes to, and its blocks.

    letterhead: whether the firm's name and address stand at its head, as on all that leaves the
    house · to: lines of an address · day: the paper's own, ISO; empty: the day of the stain;
    `none`: it bears none.

    wins: what wins over the paper, at its foot; the sheet and the codes where nothing is said.
    """

    title: str
    blocks: tuple[Block, ...]
    under: Text = ""
    letterhead: bool = False
    to: tuple[str, ...] = ()
    screen: str = ""
    wins: Text = ""
    day: str = ""
