"""A front cut into strips, and the strips walked: both the dear steps of a sweep."""

from __future__ import annotations

from collections.abc import Callable

from farwall.beside import Beside
from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.nouns import dataclass
from farwall.spray.bands import cut_into_strips
from farwall.spray.edges import Edge, edges_of
from farwall.spray.front import Front
from farwall.spray.fronts import FieldGround
from farwall.spray.passes import REACH_SPARE_M, Pass, lay_passes
from farwall.spray.rings import rings_of
from farwall.spray.sequence import Pace, order_strips
from farwall.spray.sweep import Laid, Sweep, turn_passes
from farwall.spray.world import KEEP_OFF_M

Age = tuple[float, float]
"""The oldest edge without refills, then all walking between passes. [min]"""


@dataclass(frozen=True)
class Cut:
    """How a front is cut: into bands of this width, none larger than a tank, scraps joined."""

    band_m: float
    most_m2: float
    scraps: bool = True


def lay(field: FieldGround, front: Front, cut: Cut, tools: PlanTools) -> Laid:
    """The front cut into strips, put in the order in which their edges wait least."""
    shapes = [field.world.pieces[name].shape for name in field.pieces]
    rings, depth_m = rings_of(field.ground, front, field.pieces, shapes, cut.band_m)
    strips = cut_into_strips(
        field.world,
        field.pieces,
        rings,
        band_m=cut.band_m,
        depth_m=depth_m,
        reach_m=tools.reach_m - KEEP_OFF_M - REACH_SPARE_M,
        scraps=cut.scraps,
        most_m2=cut.most_m2,
    )
    order, wait = order_strips(strips, Pace(tools.spray_m2_min, tools.walk_m_min))
    return Laid(
        field.world, field.pieces, field.exit, field.ground, front, strips, tuple(order), wait
    )


def walked(laid: Laid, tools: PlanTools) -> tuple[Sweep, Age]:
    """The laid strips as a sweep, each pass the better way round, and its age and walking.

    Raises `Unanswerable` when a body cannot do it.
    """
    passes = lay_passes(laid.world, laid.cut, laid.order, laid.exit, tools)
    if not all(each.within(tools.reach_m) for each in passes):
        raise Unanswerable(
            f"{laid.world.called(laid.pieces)}: the wand does not reach all of the floor."
        )
    edges = edges_of(laid.cut, laid.order, passes)
    return turn_passes(_as_swept(laid, passes, edges), tools)


def walked_beside(
    laid: Laid, tools: PlanTools, beside: Beside
) -> Callable[[], tuple[Sweep, Age] | Unanswerable]:
    """Begins to walk it beside other work; what comes back waits for the sweep or its refusal.

    Only passes and edges are sent: the ground that they lie on is here.
    """

    def passes_and_edges() -> tuple[tuple[Pass, ...], tuple[Edge, ...], Age] | Unanswerable:
        try:
            sweep, age = walked(laid, tools)
        except Unanswerable as no:
            return no
        return sweep.passes, sweep.edges, age

    begun = beside(passes_and_edges)

    def found() -> tuple[Sweep, Age] | Unanswerable:
        told = begun()
        if isinstance(told, Unanswerable):
            return told
        passes, edges, age = told
        return _as_swept(laid, passes, edges), age

    return found


def _as_swept(laid: Laid, passes: tuple[Pass, ...], edges: tuple[Edge, ...]) -> Sweep:
    return Sweep(laid.pieces, laid.exit, passes, edges, laid.cut.depth_m, laid.ground, laid.front)
