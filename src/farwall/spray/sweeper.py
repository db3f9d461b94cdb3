"""One field with one way out, ready to be swept many times: what was reckoned once is kept."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from functools import cached_property, partial

from farwall.beside import Beside, at_once
from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.spray.front import Front, body_gets_everywhere
from farwall.spray.fronts import (
    FieldGround,
    Floors,
    field_ground,
    levelled_front,
    plain_fronts,
    plainest,
    smoothed_front,
)
from farwall.spray.lattice import median_of
from farwall.spray.room_parts import room_parts
from farwall.spray.sweep import Laid, Sweep, one_tank_m2
from farwall.spray.walking import Age, Cut, lay, walked, walked_beside
from farwall.spray.world import Seam, World, fused

_SHALLOWER = (0.8, 0.6)
_WALKED = 3
"""So many of the sweeps that are laid are walked, those whose edges wait least first."""
_REALISED = 0.9
"""Oldest edge of a walked sweep over that of its front; the fronts leave more room for the body
than the walk needs. Measured here: 0.86 at the median over the rooms of 40 invented houses."""


Swept = dict[tuple[PlanTools, bool, bool], tuple[Sweep, Age] | Unanswerable]
"""Sweeps found so far, or why there is none: by tools, whether a levelled one was sought, and
whether a smoothed one was."""

Tried = tuple[Swept, list[Front] | None]
"""Sweeps found so far, and the plain fronts that they were cut from, where there are any."""


class Sweeper:
    """A field of connected `pieces` that is left by `exit_seam`."""

    def __init__(
        self,
        world: World,
        pieces: Sequence[str],
        exit_seam: Seam,
        tools: PlanTools,
        *,
        l_per_m2: float,
        kept: Floors | None = None,
    ) -> None:
        self._world = world
        self._pieces = tuple(sorted(pieces))
        self._exit = exit_seam
        self.tools = tools
        self._l_per_m2 = l_per_m2
        self._kept = {} if kept is None else kept
        self._laid: dict[tuple[int, Cut, PlanTools], Laid] = {}
        self._walks: dict[tuple[int, PlanTools], tuple[Sweep, Age] | Unanswerable] = {}
        self.swept: Swept = {}
        self._smoothing: Callable[[], Front] = lambda: smoothed_front(
            self.field.ground, self._plain
        )
        self._beside: Beside = at_once

    @cached_property
    def field(self) -> FieldGround:
        """Its ground. Raises `Unanswerable` when the floor does not hang together."""
        return field_ground(
            self._world, self._pieces, self._exit, self.tools.band_m, kept=self._kept
        )

    @cached_property
    def _plain(self) -> list[Front]:
        return plain_fronts(self.field.ground)

    def tried(self) -> Tried:
        """What came of sweeping it so far, to be taken by one like it in another process.

        The sweeps know their bounds, which a plan tells of each field.
        """
        for found in self.swept.values():
            if isinstance(found, tuple):
                found[0].bound_m  # noqa: B018 - kept with the sweep, as all that is found of it
        return self.swept, self.__dict__.get("_plain")

    def take(self, tried: Tried) -> None:
        """Go on from what another process found; its ground and fronts are not drawn again."""
        swept, plain = tried
        self.swept.update(swept)
        ground = next((one[0].ground for one in swept.values() if isinstance(one, tuple)), None)
        if ground is not None and plain is not None:
            self.field = FieldGround(*fused(self._world, self._pieces, self._exit), ground)
            self._plain = plain

    @property
    def _shortest(self) -> Front:
        return min(self._plain, key=lambda front: front.equivalent_m)

    def begin_levelling(self, beside: Beside) -> None:
        """Begin to seek its smoothed front beside other work, before anybody asks for it.

        The levelled one is found in a fifth of the time: whoever asks for it finds it. What is
        walked in a thorough search is then shared with other processes as well.
        """
        self._beside = beside
        self._smoothing = beside(partial(smoothed_front, self.field.ground, self._plain))

    @cached_property
    def _levelled(self) -> Front:
        return levelled_front(self.field.ground, self._plain)

    @cached_property
    def _smoothed(self) -> Front:
        found: Front = self._smoothing()
        return found

    def _sought(self, *, smoothed: bool) -> tuple[Front, ...]:
        """The fronts of a thorough search, the plainest first."""
        fronts = (plainest(self._plain), self._shortest, self._levelled)
        return (*fronts, self._smoothed) if smoothed else fronts

    def guess_age_min(self) -> float:
        """A first guess at the oldest edge, by the shortest plain front alone.

        Raises `Unanswerable` when the floor falls apart or a body does not get everywhere.
        """
        return self.guess()[0]

    def guess(self) -> tuple[float, dict[str, float]]:
        """That guess, and of each room the part (0 to 1) of the front that its steepest place has.

        Raises as `guess_age_min`.
        """
        rough = self._rough
        front = min(plain_fronts(rough.ground), key=lambda front: front.equivalent_m)
        ahead_m = self.tools.band_m + self.tools.overlap_m
        age = _REALISED * front.equivalent_m * ahead_m / self.tools.spray_m2_min
        return age, room_parts(rough, front)

    @cached_property
    def _rough(self) -> FieldGround:
        """The field on a coarse lattice, on the fine one where a body only gets about on that."""
        band_m = self.tools.band_m
        rough = field_ground(
            self._world, self._pieces, self._exit, band_m, kept=self._kept, rough=True
        )
        if body_gets_everywhere(rough.ground):
            return rough
        if body_gets_everywhere(self.field.ground):
            return self.field
        raise Unanswerable(f"{self._world.called(self._pieces)}: a body does not get everywhere.")

    def way_out_m(self) -> float:
        """The walk to the exit from the middle of the field. [m]"""
        return median_of(self._rough.ground.out_m)

    def laid(self, tools: PlanTools, *, thorough: bool = False, smoothed: bool = True) -> Laid:
        """Its strips in order: of the fronts asked for those whose edges wait least."""
        cut = self._cut_for(tools)
        fronts = self._sought(smoothed=smoothed) if thorough else (plainest(self._plain),)
        tried = [self._lay(front, cut, tools) for front in fronts]
        return min(tried, key=lambda laid: laid.longest_wait_min)

    def sweep(self, tools: PlanTools, *, thorough: bool = False, smoothed: bool = True) -> Sweep:
        """Its sweep with these tools. Raises `Unanswerable` when a body cannot do it.

        thorough: a levelled sweep is sought as well, and a smoothed one, which takes longer to
        find, unless that is not wanted; of those whose edges wait least as they are laid the
        one with the younger edges once walked is taken.
        """
        return self._found(tools, thorough=thorough, smoothed=thorough and smoothed)[0]

    def shortest(self, tools: PlanTools) -> Sweep:
        """The better of its plainest sweep and the plain one with the shortest front.

        Raises `Unanswerable` when a body cannot do the field.
        """
        found = [self._found(tools)]
        if self._shortest is not plainest(self._plain):
            with suppress(Unanswerable):
                laid = self._lay(self._shortest, self._cut_for(tools), tools)
                found.append(self._walked(laid, tools))
        return min(found, key=lambda one: one[1])[0]

    def along(self, tools: PlanTools, pick: Callable[[Sequence[Front]], list[Front]]) -> Sweep:
        """Of the two shortest plain fronts that are picked the first that a body can walk.

        Raises `Unanswerable` when none is picked or a body can walk neither.
        """
        cut = self._cut_for(tools)
        picked = sorted(pick(self._plain), key=lambda front: (front.equivalent_m, front.name))
        ways = (self._lay(front, cut, tools) for front in picked[:_WALKED])
        return self._first_walked(ways, tools)[0]

    def _found(
        self, tools: PlanTools, *, thorough: bool = False, smoothed: bool = False
    ) -> tuple[Sweep, Age]:
        key = (tools, thorough, smoothed)
        if key not in self.swept:
            try:
                self.swept[key] = self._sweep(tools, thorough=thorough, smoothed=smoothed)
            except Unanswerable as no:
                self.swept[key] = no
        found = self.swept[key]
        if isinstance(found, Unanswerable):
            raise found
        return found

    def _cut_for(self, tools: PlanTools) -> Cut:
        return Cut(tools.band_m, one_tank_m2(tools, self._l_per_m2))

    def _sweep(self, tools: PlanTools, *, thorough: bool, smoothed: bool) -> tuple[Sweep, Age]:
        if not thorough:
            return self._first_walked(self._plain_ways(tools), tools)
        cut = self._cut_for(tools)
        fronts = {id(front): front for front in self._sought(smoothed=smoothed)}
        ways = sorted(
            (self._lay(front, cut, tools) for front in fronts.values()),
            key=lambda laid: laid.longest_wait_min,
        )
        later = self._every_other_walked(ways[:_WALKED], tools)
        found = []
        for laid in ways:
            if id(laid) in later:
                self._walks[id(laid), tools] = later[id(laid)]()
            with suppress(Unanswerable):
                found.append(self._walked(laid, tools))
            if len(found) == _WALKED:
                break
        return min(found, key=lambda one: one[1]) if found else self._found(tools)

    def _every_other_walked(
        self, ways: Sequence[Laid], tools: PlanTools
    ) -> dict[int, Callable[[], tuple[Sweep, Age] | Unanswerable]]:
        """Of those that nobody walked yet every other one, begun beside the rest, by its `id`."""
        new = [laid for laid in ways if (id(laid), tools) not in self._walks]
        return {id(laid): walked_beside(laid, tools, self._beside) for laid in new[1::2]}

    def _first_walked(self, ways: Iterator[Laid], tools: PlanTools) -> tuple[Sweep, Age]:
        refusal: Unanswerable | None = None
        for laid in ways:
            try:
                return self._walked(laid, tools)
            except Unanswerable as no:
                refusal = refusal or no
        raise refusal or Unanswerable(f"{self._world.called(self._pieces)}: nobody can walk here.")

    def _plain_ways(self, tools: PlanTools) -> Iterator[Laid]:
        """The plainest good front; then, should nobody be able to walk it, others, and shallower.

        What cannot be walked is a strip that the wand does not reach over, or
        before which nobody can stand.
        """
        cut = self._cut_for(tools)
        first = plainest(self._plain)
        rest = sorted(self._plain, key=lambda front: front.equivalent_m)
        fronts = [first, *(front for front in rest if front is not first)]
        for share, scraps in ((1.0, True), *((share, False) for share in _SHALLOWER)):
            for front in fronts:
                finer = replace(cut, band_m=cut.band_m * share, scraps=scraps)
                yield self._lay(front, finer, tools)

    def _walked(self, laid: Laid, tools: PlanTools) -> tuple[Sweep, Age]:
        """As `walked`; what was laid here is kept here, and walked once for the same tools."""
        key = (id(laid), tools)
        if key not in self._walks:
            try:
                self._walks[key] = walked(laid, tools)
            except Unanswerable as no:
                self._walks[key] = no
        found = self._walks[key]
        if isinstance(found, Unanswerable):
            raise found
        return found

    def _lay(self, front: Front, cut: Cut, tools: PlanTools) -> Laid:
        key = (id(front), cut, tools)
        if key not in self._laid:
            self._laid[key] = lay(self.field, front, cut, tools)
        return self._laid[key]
