"""The answer to what the next coat is to be: nouns, no reckoning."""

from __future__ import annotations

from typing import Literal

from farwall.colour.next_coat import Outlook
from farwall.colour.sealed import Sealing
from farwall.job.colour.grounds import RoomsAlike
from farwall.job.colour.laid import LaidCoat
from farwall.job.colour.limits import Limit
from farwall.job.colour.litres import NextLitres
from farwall.job.colour.seen import Ask, Gathered, Lab
from farwall.job.colour.standard import Standard
from farwall.nouns import dataclass

Word = Literal["lay", "stop", "wait"]


@dataclass(frozen=True)
class AlikeJudged:
    """Rooms judged as one: what was seen there, the verdict for them alone, the chosen coat there.

    gap_seen: L above the sample as looked at; None where nobody looked.
    """

    alike: RoomsAlike
    gap_seen: float | None
    verdict: str
    why: str
    alone: Outlook
    chosen: Outlook


@dataclass(frozen=True)
class OtherStain:
    """What the same question comes to with another sampled stain."""

    stain: str
    verdict: str
    why: str
    chosen: Outlook


@dataclass(frozen=True)
class NextAnswer:
    """What now, with all that it rests on.

    verdict: lay, stop, or wait: the limits that do not hold say for what · would: the verdict if
    nothing had to be waited for · coat: the coat of the job that is decided, empty where all are
    laid · chosen, stop, habit: what they would do · strong: the weakest single coat that closes
    the gap whatever it risks, None where none does; light: half of its stain, before a second
    look · floor_now: as seen (`floor_seen`), else as foreseen · dark_range: L below the sample that
    counts as too dark.
    """

    job: str
    verdict: Word
    would: str
    why: str
    coat: str
    stain: str
    stain_name: str
    rooms: tuple[str, ...]
    left_out: tuple[str, ...]
    coats: tuple[LaidCoat, ...]
    chosen: Outlook
    stop: Outlook
    habit: Outlook
    strong: Outlook | None
    light: Outlook | None
    litres: NextLitres | None
    alike: tuple[AlikeJudged, ...]
    others: tuple[OtherStain, ...]
    standard: Standard
    sealing: Sealing
    floor_now: Lab
    floor_seen: bool
    dark_range: float
    limits: tuple[Limit, ...]
    asks: tuple[Ask, ...]
    cautions: tuple[str, ...]
    found: Gathered
    learned_from: int

    @property
    def worst(self) -> AlikeJudged:
        """The rooms in which the chosen coat, or stopping, is likeliest too dark."""
        return max(self.alike, key=lambda one: one.chosen.too_dark)

    @property
    def guessed(self) -> bool:
        """Whether a colour behind it comes of a photo without a target, or by eye."""
        return not self.standard.with_target or any(
            not one.with_target for one in self.found.patches
        )
