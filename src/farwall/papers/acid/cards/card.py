"""What a card is: a title, a few steps, one thing never to do, a drawing; in both languages."""

from __future__ import annotations

from typing import NamedTuple

from farwall.nouns import dataclass
from farwall.phrasebook import Language


class Said(NamedTuple):
    """The same thing said in English and in Spanish, side by side so that neither is forgotten."""

    en: str
    es: str

    def by(self, language: Language) -> str:
        """What is said in this language."""
        return self.en if language == "en" else self.es


def as_told(words: str) -> Said:
    """What the user wrote: the same in every language."""
    return Said(words, words)


@dataclass(frozen=True)
class Blank:
    """A line with what was told on it, or empty to be written on by hand."""

    name: Said
    told: str = ""


@dataclass(frozen=True)
class Batch:
    """What goes into one tub, in order; each line a name and a figure. `of`: stain and cut."""

    name: Said
    of: Said
    lines: tuple[tuple[Said, str], ...]


@dataclass(frozen=True)
class Card:
    """One card. `steps` are numbered but where `ticked`, then they are ticked off.

    `boxed`: the one figure or sentence that stands by itself · `never`: the foot, white on danger ·
    `table`: heads of columns to fill in by hand · `note`: smaller, still to be read at 2 m.
    """

    key: str
    title: Said
    drawing: str
    steps: tuple[Said, ...] = ()
    ticked: bool = False
    boxed: Said | None = None
    blanks: tuple[Blank, ...] = ()
    batches: tuple[Batch, ...] = ()
    table: tuple[Said, ...] = ()
    note: Said | None = None
    never: Said | None = None
