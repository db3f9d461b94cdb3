"""Where a body may stand on a field, and until when each stand is tied to the way out."""

from __future__ import annotations

import heapq
from functools import cached_property

import numpy as np

from farwall.nouns import dataclass
from farwall.spray.lattice import FAR_M, Bools, Floats, Ints, Lattice, Lean
from farwall.spray.world import BODY_M

_TIGHT = 0.25
"""By so much of a step a stand may lie nearer to a wall than a body: places lie where they lie."""
_SIDES = 2
_A_HAIR = 1e-9


@dataclass(frozen=True)
class Stands(Lean):
    """Where a body may stand: places, those under the body, stands beside, those at the exit."""

    places: Ints
    under: Ints
    near: Ints
    at_exit: Bools

    @cached_property
    def near_list(self) -> list[list[int]]:
        """For each stand the others beside it, as plain numbers."""
        return [
            [there for there in dict.fromkeys(row) if there != here]
            for here, row in enumerate(self.near.tolist())
        ]

    @cached_property
    def under_rows(self) -> Ints:
        """`under` with a row for each direction: quicker to go through."""
        return np.ascontiguousarray(self.under.T)

    @cached_property
    def near_rows(self) -> Ints:
        """`near` with a row for each direction."""
        return np.ascontiguousarray(self.near.T)


def stands_of(lattice: Lattice, out_m: Floats) -> Stands:
    """All stands of a field; the one nearest to the way out is at it."""
    places = np.flatnonzero(lattice.off_wall_m >= BODY_M - lattice.grid.step_m * _TIGHT)
    number = np.full(len(lattice), -1)
    number[places] = np.arange(len(places))
    beside = number[lattice.near[places]]
    beside = np.where(beside >= 0, beside, np.arange(len(places))[:, None])
    under = np.column_stack([places, lattice.near[places][:, : 2 * _SIDES]])
    away = out_m[places]
    near_exit = float(away.min(initial=FAR_M)) + lattice.grid.step_m / 4
    return Stands(places, under, beside, away <= near_exit)


def flooded(stands: Stands, wanted: Floats, step: float) -> Floats:
    """The least value on the best way from each stand to the exit, a `step` less for each move.

    wanted: the value of each stand. Stands with no way out get minus infinity.
    Source: [barnes-2014], algorithm 3, upside down.
    """
    done = _rising_to_exit(stands, wanted, step)
    if done.all():
        return wanted
    near, want = stands.near_list, wanted.tolist()
    given = np.where(done, wanted, -np.inf).tolist()
    rim = done & ~done[stands.near_rows].all(axis=0)
    queue = [(-want[place], place) for place in np.flatnonzero(rim).tolist()]
    heapq.heapify(queue)
    push, pop = heapq.heappush, heapq.heappop
    while queue:
        minus, here = pop(queue)
        if given[here] > -minus:
            continue  # a better way to it was found meanwhile, and gone
        most = given[here] - step
        for there in near[here]:
            # What was gone from before has no less than `most`, so nothing is gained there.
            if given[there] < most:
                wish = want[there]
                if wish > most:
                    given[there] = most
                    push(queue, (-most, there))
                elif wish > given[there]:
                    given[there] = wish
                    push(queue, (-wish, there))
    return np.array(given)


def _rising_to_exit(stands: Stands, wanted: Floats, step: float) -> Bools:
    """Stands from which each move to the best one beside gains a `step`, up to the exit.

    They may have what they want; as a rule that is nearly all of them, and only hollows are left
    to be flooded. Each follows who it moves to, then that one's follower: as many doublings as
    the longest way has digits in base two.
    """
    here = np.arange(len(wanted))
    beside = wanted[stands.near_rows]
    best = beside.argmax(axis=0)
    most = beside[best, here]
    rises = (most - step >= wanted) & (most > wanted) & ~stands.at_exit
    to = np.where(rises, stands.near_rows[best, here], here)
    while True:
        further = to[to]
        if np.array_equal(further, to):
            return np.asarray(stands.at_exit[to])
        to = further


@dataclass(frozen=True)
class Ways:
    """Until when each stand is tied to the way out, and over which stand beside it; those at the
    way out lead to themselves."""

    until: Floats
    next_one: Ints

    def passed(self, begun: Ints) -> Ints:
        """All stands that the ways from these go over, each once."""
        found = np.zeros(len(self.until), dtype=bool)
        here = np.unique(begun)
        while len(here):
            found[here] = True
            here = np.unique(self.next_one[here])
            here = here[~found[here]]
        return np.flatnonzero(found)


def ways_out(stands: Stands, dry: Floats) -> Ways:
    """The best way out of each stand, by the least of what the stands on it are dry until."""
    until = flooded(stands, dry, _A_HAIR)
    beside = stands.near_rows
    best = until[beside].argmax(axis=0)
    own = np.arange(len(until))
    next_one = np.where(stands.at_exit, own, beside[best, own])
    return Ways(until, next_one)
