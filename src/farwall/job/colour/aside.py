"""What stands beside the verdict: rooms by themselves, one strong coat, two light ones. Pure."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.colour.next_coat import CLOSED, MOST_TOO_DARK, NextCoat, Outlook, chosen_of
from farwall.job.colour.grounds import RoomsAlike
from farwall.job.colour.next_noun import AlikeJudged
from farwall.job.colour.seen import Lab, Patch
from farwall.job.colour.standard import Standard
from farwall.job.colour.ways import lightest_half


def alike_judged(
    alike: RoomsAlike,
    found: tuple[Outlook, ...],
    whole: NextCoat,
    looks: Sequence[Patch],
    standard: Standard,
) -> AlikeJudged:
    """Rooms held against the verdict for the whole floor and by themselves."""
    alone = chosen_of(found[0], found[1:])
    own = [one for one in looks if one.room in alike.rooms or one.room is None]
    chosen = next((one for one in found if one.way == whole.chosen.way), found[0])
    seen = mean_lab(own)[0] - standard.lab[0] if own else None
    return AlikeJudged(alike, seen, alone.verdict, alone.why, alone.chosen, chosen)


def strong_coat(stop: Outlook, ways: Sequence[Outlook]) -> Outlook | None:
    """The weakest single coat that closes the gap, whatever it risks."""
    closing = [one for one in ways if one.gap <= CLOSED and one.way is not None]
    if stop.gap <= CLOSED or not closing:
        return None
    return min(closing, key=lambda one: one.way.laid.l_per_m2 if one.way else 0.0)


def light_coat(ways: Sequence[Outlook], strong: Outlook | None) -> Outlook | None:
    """The safe way that lays most of what is at most half of it; None where none is safe."""
    safe = [one for one in ways if one.way is not None and one.too_dark <= MOST_TOO_DARK]
    if strong is None or strong.way is None or not safe:
        return None
    way = lightest_half([one.way for one in safe if one.way is not None], strong.way)
    return next(one for one in safe if one.way == way)


def mean_lab(looks: Sequence[Patch]) -> Lab:
    """Mean colour of looks; at least one."""
    lab = np.mean([one.seen.lab for one in looks], axis=0)
    return float(lab[0]), float(lab[1]), float(lab[2])
