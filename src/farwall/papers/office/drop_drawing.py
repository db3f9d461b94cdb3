"""The drop map as SVG, its storeys one above the other."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.facts.plan import Plan
from farwall.papers.drawing.drop_view import draw_drops
from farwall.papers.drawing.scene import Scene, Storey, storeys
from farwall.papers.drawing.whole_storey import Manner, stacked
from farwall.papers.lettering import PAPER_LETTERING, Lettering
from farwall.papers.svg import Svg
from farwall.papers.wall_clock import Units

_BETWEEN = 16.0


def drop_svg(
    plan: Plan, seconds: Mapping[str, float], *, units: Units, width: float, height: float,
    lettering: Lettering = PAPER_LETTERING,
) -> str:  # fmt: skip
    """Every storey of the plan's floor with its drop seconds; seconds: by room id, as told."""

    def draw(part: Svg, storey: Storey) -> None:
        draw_drops(part, plan, Scene(storey, ()), seconds, units=units, lettering=lettering)

    manner = Manner(units, lettering, width, height)
    svg = stacked(storeys(plan), "drops", manner, draw, between=_BETWEEN)
    return svg.document(title="Drop map", description="Seconds until a drop has gone in, by room.")
