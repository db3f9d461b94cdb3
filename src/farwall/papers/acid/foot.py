"""The foot of what is cut out, stuck on or hung up: job, revision, inputs hash, page, in one line.

Its square leads to the screen where the paper's figures stand, as on every other paper.
"""

from __future__ import annotations

from typing import Any

from farwall.job.acid_day.ground import Ground
from farwall.nouns import dataclass
from farwall.papers.acid.cards.card import Said
from farwall.papers.acid.users_words import shortened
from farwall.papers.lettering import text_width
from farwall.papers.square import square
from farwall.phrasebook import Language, speaking

HASH_SHOWN = 12
_REVISION, _INPUTS = Said("facts", "datos"), Said("inputs", "entradas")
_PAGE, _OF = Said("Page", "Página"), Said("of", "de")


@dataclass(frozen=True)
class Foot:
    """The foots of one paper. screens: address of the house in the firm's book, else empty."""

    ground: Ground
    languages: tuple[Language, ...]
    wide_pt: float
    size_pt: float
    screens: str = ""

    def on(self, page: int, pages: int, screen: str) -> dict[str, Any]:
        """Line, square and where it leads, as templates take them.

        The name of the job is cut with an ellipsis, so that revision, hash and page stand whole.
        """
        numbered = " / ".join(
            f"{_PAGE.by(one)} {page} {_OF.by(one)} {pages}" for one in self.languages
        )
        rest = (
            f" · {self._said(_REVISION)} {self.ground.job.revision}"
            f" · {self._said(_INPUTS)} {self.ground.plan.inputs_hash[:HASH_SHOWN]}"
        )
        with speaking("en"):  # it is measured as it stands
            room = self.wide_pt - text_width(f"{numbered} · {rest}", self.size_pt)
        name = shortened(self.ground.plan.job or "Farwall", max(room, 0.0), self.size_pt)
        return {
            "foot": f"{numbered} · {name}{rest}", "qr": square(self.screens, screen),
            "screen": screen,
        }  # fmt: skip

    def _said(self, both: Said) -> str:
        return " / ".join(dict.fromkeys(both.by(one) for one in self.languages))
