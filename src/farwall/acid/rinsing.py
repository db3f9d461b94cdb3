"""Whether a room is rinsed: enough, rinse again, scrub again, or new concrete; and how many more.

Rag and pH decide, the count never does. Low pH or a rag that stays dirty asks for a scrub and not
only a rinse [trade-press]; high pH with a clean rag is the lime of a new slab and no residue: it is
held against the same rinse on a patch that was never stained, and not rinsed for ever.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import Literal

from farwall.acid.rinse_belief import More, Round, chances_of_more, more_rinses
from farwall.acid.rinse_ranges import LEAST_ROUNDS
from farwall.nouns import dataclass

SCRUB_PH = 6.5
"""Below it acid is left: another scrub [trade-press]."""
LEAST_PH, MOST_PH = 7.0, 9.0
"""A rinsed floor reads between them: common practice."""
TAP_WITHIN = 1.0
"""And within so much of the tap's own: common practice of specifications, from memory."""
ALIKE_PH = 0.5
"""Two readings of paper this near are the same: it is read to half a unit [astm-d4262]."""
GIVEN_UP = 2
"""After so many rinses wash water no longer explains a high pH that does not fall. A guess."""

Verdict = Literal["read", "rinse", "scrub", "new concrete", "enough"]


@dataclass(frozen=True)
class Wanted:
    """What a rinsed floor is held against; None where nobody said."""

    tap_ph: float | None = None
    unstained_ph: float | None = None
    sealer_least_ph: float | None = None
    sealer_most_ph: float | None = None

    @property
    def window(self) -> tuple[float, float]:
        """pH that passes: 7 to 9 and within 1 of the tap, as the sealer's sheet bears it.

        A tap that lies outside of 7 to 9 itself stands for both; a sheet only narrows.
        """
        low, high = LEAST_PH, MOST_PH
        if self.tap_ph is not None:
            around = self.tap_ph - TAP_WITHIN, self.tap_ph + TAP_WITHIN
            both = max(low, around[0]), min(high, around[1])
            low, high = both if LEAST_PH <= self.tap_ph <= MOST_PH else around
        low = max(low, self.sealer_least_ph) if self.sealer_least_ph is not None else low
        high = min(high, self.sealer_most_ph) if self.sealer_most_ph is not None else high
        return low, max(high, low)


@dataclass(frozen=True)
class Step:
    """What a room asks for next. `code` says why, in a word that stays; `sealer`: for new concrete,
    whether the sheet bears its pH, None where the sheet was not told. `more`: rinses, None where
    none or where nothing was read."""

    verdict: Verdict
    code: str
    more: More | None = None
    sealer: bool | None = None


def next_step(
    room: Sequence[Round],
    others: Sequence[Sequence[Round]] = (),
    *,
    wanted: Wanted,
    l_per_m2: float,
    readings: int = 1,
) -> Step:
    """What a room asks for after its rinses so far.

    room: its rinses in order, `others` those of the other rooms of this job. l_per_m2: water of
    each rinse to come. readings: how many of pH the room wants after its last rinse [astm-d4262].
    """
    if not room:
        return Step("read", "not-rinsed", _more(room, others, wanted, l_per_m2))
    verdict, code = _judged(room, wanted)
    if code == "new-concrete":
        return Step("new concrete", code, None, _borne(room[-1], wanted))
    if verdict == "enough":
        few = len(room[-1].phs) < readings
        return Step("read", "few-readings") if few else Step(verdict, code)
    if code == "alkaline":
        return Step(verdict, code, _alkaline(room, wanted, l_per_m2))
    scrub = verdict == "scrub"
    more = None if verdict in {"read", "new concrete"} else _more(
        room, others, wanted, l_per_m2, scrub=scrub
    )  # fmt: skip
    return Step(verdict, code, more)


def _judged(room: Sequence[Round], wanted: Wanted) -> tuple[Verdict, str]:
    last, (low, high) = room[-1], wanted.window
    if not last.phs and not last.rag:
        return "read", "nothing-read"
    if last.phs and min(last.phs) < SCRUB_PH:
        return "scrub", "acid"
    if last.rag == "coloured":
        return "scrub", "coloured-rag"
    if last.rag == "grey":
        late = len(room) >= LEAST_ROUNDS
        return ("scrub", "grey-rag") if late else ("rinse", "grey-rag-early")
    if last.powder:
        return "rinse", "powder"
    if not last.rag:
        return "read", "no-rag"
    if not last.phs:
        return "read", "no-pH"
    if min(last.phs) < low:
        return "rinse", "low"
    if max(last.phs) > high:
        return _high(room, wanted)
    return "enough", "dry-swipe-passed" if last.powder is False else "clean"


def _high(room: Sequence[Round], wanted: Wanted) -> tuple[Verdict, str]:
    """High pH on a clean rag: lime of the slab, or detergent and neutraliser still on it."""
    top = max(room[-1].phs)
    if wanted.unstained_ph is not None:
        same = top <= wanted.unstained_ph + ALIKE_PH
        return ("new concrete", "new-concrete") if same else ("rinse", "alkaline")
    before = [max(one.phs) for one in room[:-1] if one.phs]
    falls = not before or before[-1] - top >= ALIKE_PH
    if falls and len(room) < LEAST_ROUNDS + GIVEN_UP:
        return "rinse", "alkaline"
    return "new concrete", "compare"


def _borne(last: Round, wanted: Wanted) -> bool | None:
    """Whether the sealer's sheet bears the pH that the slab itself has."""
    if wanted.sealer_most_ph is None:
        return None
    return max(last.phs) <= wanted.sealer_most_ph


def _more(
    room: Sequence[Round],
    others: Sequence[Sequence[Round]],
    wanted: Wanted,
    l_per_m2: float,
    *,
    scrub: bool = False,
) -> More:
    each = tuple(tuple(one) for one in others)
    return _reckoned(tuple(room), each, (wanted.window[0], wanted.tap_ph), l_per_m2, scrub)


@lru_cache(maxsize=256)
def _reckoned(
    room: tuple[Round, ...],
    others: tuple[tuple[Round, ...], ...],
    phs: tuple[float, float | None],
    l_per_m2: float,
    scrub: bool,  # noqa: FBT001
) -> More:
    """Kept: a live day asks the same of a room until something is entered in it again."""
    least_ph, tap_ph = phs
    return more_rinses(
        chances_of_more(
            room, others, l_per_m2=l_per_m2, least_ph=least_ph, tap_ph=tap_ph, scrub=scrub
        )
    )


DILUTES = (0.15, 0.25, 0.45)
"""What a rinse leaves of dissolved wash water, low, likely, high: the range of `rinse_belief` at
1.2 L/m² of water. A guess."""


def _alkaline(room: Sequence[Round], wanted: Wanted, l_per_m2: float) -> More:
    """Rinses that thin strong base to the window: pH falls by log10 of 1 over what each leaves.

    A carbonate falls more slowly than a free base: so it is a least. Pure dilution; derived here.
    """
    over = max(room[-1].phs) - wanted.window[1]
    usual = 1.2
    low, likely, high = (
        max(1, math.ceil(over / -math.log10(one / (one + (1 - one) * l_per_m2 / usual)) - 1e-9))
        for one in DILUTES
    )
    return More(low, likely, max(high, likely))
