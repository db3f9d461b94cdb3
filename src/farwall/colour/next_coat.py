"""The next coat: the weakest that closes the gap to the sample with little chance of too dark.

Too dark is final and too light gets another coat, so the chance of too dark is a bound and never
weighed against a gain. It is judged where the floor drinks most.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np
from scipy.special import ndtr

from farwall.colour.difference import de2000
from farwall.colour.dose import Laid
from farwall.colour.foresight import with_darkest
from farwall.colour.nouns import FLOOR, Belief
from farwall.nouns import dataclass

MOST_TOO_DARK = 0.03
"""Chance of too dark that is borne, 0 to 1."""
WORST_SHARE = 0.05
"""Where it is judged: so much of the floor is darker still."""
CLOSED = 1.0
"""A gap in L that counts as closed: what an eye tells apart side by side, about. A guess."""
HAND = 0.45
"""Error in L of a hand that lays a coat, beside that of the sample's own photo. A guess."""
WORTH = 0.7
"""A coat is laid only where it lightens the gap by so much L at least: a day's work. A guess."""
NEAR, ALIKE = 2.0, 0.2
"""CIEDE2000 at which a floor counts as the sample's colour; within which two ways count as one."""

Verdict = Literal["lay", "stop"]


@dataclass(frozen=True)
class Way:
    """A coat that may be laid: its cut as parts of water, litres of mix on a square metre."""

    stain: int
    water_parts: float
    l_per_m2: float

    @property
    def laid(self) -> Laid:
        """The stain in it."""
        return Laid(self.stain, self.l_per_m2 / (1 + self.water_parts))


@dataclass(frozen=True)
class Outlook:
    """What a way would do: chance of too dark, gap in L that stays (light side above 0), colour.

    gap_low, gap_high: 10 and 90 % · away: likely CIEDE2000 from the sample.
    """

    way: Way | None
    too_dark: float
    gap: float
    gap_low: float
    gap_high: float
    away: float
    lab: tuple[float, float, float]


@dataclass(frozen=True)
class NextCoat:
    """The verdict, what was chosen, what stopping would leave, and every way that was weighed."""

    verdict: Verdict
    chosen: Outlook
    stop: Outlook
    ways: tuple[Outlook, ...]
    why: str


def next_coat(
    belief: Belief,
    so_far: Sequence[Laid],
    ways: Sequence[Way],
    *,
    sample_lab: tuple[float, float, float],
    dark_range: float,
    most_too_dark: float = MOST_TOO_DARK,
    places: Sequence[str] = (FLOOR,),
    sample_blur: float = 1.0,
) -> NextCoat:
    """What to lay on a floor that holds `so_far`, so that it comes to look like the sample.

    sample_lab: clean wet look of the approved sample · dark_range: L below it at which a patch is
    too dark, above 0 · places: rooms that get this coat, or the floor as one; too dark is judged in
    the one that comes out darkest, the gap in the mean of them · sample_blur: how many times the
    usual error the sample's photo may have. Of the ways whose chance of too dark is at most
    `most_too_dark`, the one that lays least stain and closes the gap; where none closes it, the one
    that leaves least, if it is worth a coat; else to stop. Where the ways hold more than one stain,
    the safe one that comes nearest in CIEDE2000 is taken instead. Raises ValueError for a room that
    nobody named.
    """
    stop, *rest = outlooks(
        belief, so_far, (None, *ways), sample_lab=sample_lab, dark_range=dark_range,
        places=places, sample_blur=sample_blur,
    )  # fmt: skip
    return chosen_of(stop, tuple(rest), most_too_dark=most_too_dark)


def chosen_of(
    stop: Outlook, ways: tuple[Outlook, ...], *, most_too_dark: float = MOST_TOO_DARK
) -> NextCoat:
    """The choice among outlooks that stand already, as `next_coat` makes it."""
    safe = [one for one in ways if one.too_dark <= most_too_dark]
    if len({one.way.stain for one in ways if one.way}) > 1:
        return _by_colour(stop, ways, safe)
    if stop.gap <= CLOSED:
        return NextCoat("stop", stop, stop, ways, "the floor has the sample's tone")
    if not safe:
        return NextCoat("stop", stop, stop, ways, "every coat may come out too dark")
    closing = [one for one in safe if one.gap <= CLOSED]
    if closing:
        chosen = min(closing, key=_stain)
        return NextCoat("lay", chosen, stop, ways, "the weakest coat that closes the gap")
    chosen = min(safe, key=lambda one: (round(one.gap, 3), _stain(one)))
    if stop.gap - chosen.gap < WORTH:
        return NextCoat("stop", stop, stop, ways, "no safe coat is worth its day")
    return NextCoat("lay", chosen, stop, ways, "the strongest safe coat; another may follow")


def _by_colour(stop: Outlook, ways: tuple[Outlook, ...], safe: list[Outlook]) -> NextCoat:
    """With two colours to choose from: nearest to the sample's colour, not to its tone alone."""
    if not safe:
        return NextCoat("stop", stop, stop, ways, "every coat may come out too dark")
    nearest = min(one.away for one in safe)
    if stop.away - nearest < WORTH:
        near = stop.away < NEAR
        why = "the floor has the sample's tone" if near else "no safe coat is worth its day"
        return NextCoat("stop", stop, stop, ways, why)
    alike = [one for one in safe if one.away - nearest <= ALIKE]
    why = "the weakest of the coats that come nearest to the sample's colour"
    return NextCoat("lay", min(alike, key=_stain), stop, ways, why)


def outlooks(
    belief: Belief,
    so_far: Sequence[Laid],
    ways: Sequence[Way | None],
    *,
    sample_lab: tuple[float, float, float],
    dark_range: float,
    places: Sequence[str] = (FLOOR,),
    sample_blur: float = 1.0,
) -> tuple[Outlook, ...]:
    """What laying each way on top of `so_far` does; None: nothing more is laid."""
    coats = [(*so_far, *(() if way is None else (way.laid,))) for way in ways]
    both = [with_darkest(belief, coats, share=WORST_SHARE, place=one) for one in places]
    mean, worst = (
        np.mean([one for one, _ in both], axis=0),
        np.min([one for _, one in both], axis=0),
    )
    blur = float(np.hypot(HAND, sample_blur * belief.prior.photo[0]))
    too_dark = ndtr((sample_lab[0] - dark_range - worst) / blur).mean(axis=0)
    gaps = mean[..., 0] - sample_lab[0]
    low, high = np.quantile(gaps, (0.1, 0.9), axis=0)
    middle = mean.mean(axis=0)
    away = de2000(middle, sample_lab)
    return tuple(
        Outlook(
            way=way, too_dark=float(too_dark[n]), gap=float(gaps[:, n].mean()),
            gap_low=float(low[n]), gap_high=float(high[n]), away=float(away[n]),
            lab=(float(middle[n, 0]), float(middle[n, 1]), float(middle[n, 2])),
        )
        for n, way in enumerate(ways)
    )  # fmt: skip


def _stain(one: Outlook) -> float:
    return 0.0 if one.way is None else one.way.laid.l_per_m2
