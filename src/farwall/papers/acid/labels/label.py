"""What a label says, in both languages at once: English is asked for, Spanish is read beside it."""

from __future__ import annotations

from typing import Literal

from farwall.acid.hazards import Pictogram
from farwall.nouns import dataclass
from farwall.papers.acid.cards.card import Said

Size = Literal["jug", "large jug", "drum"]


@dataclass(frozen=True)
class Label:
    """One label. `on`: what it is stuck on · `what`: its product identifier, as the sheet calls it.

    `lines` are short facts in both languages · `blanks` are to be written on by hand, `wide` is one
    as wide as the words · `statements` come before `precautions`, the most urgent first; of these
    the last are left out where there is no room · `no`: white on danger · `screen`: where in the
    book its square leads.
    """

    size: Size
    on: Said
    what: Said
    more: Said | None = None
    signal: Said | None = None
    pictograms: tuple[Pictogram, ...] = ()
    statements: tuple[Said, ...] = ()
    precautions: tuple[Said, ...] = ()
    lines: tuple[Said, ...] = ()
    blanks: tuple[Said, ...] = ()
    wide: Said | None = None
    no: Said | None = None
    screen: str = "acid/strength"
