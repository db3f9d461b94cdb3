"""The drop map as SVG, its storeys one above the other."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.facts.plan import Plan
from farwall.papers.drawing.drop_view import draw_drops
from farwall.papers.drawing.scene import Scene, storeys
from farwall.papers.lettering import PAPER_LETTERING, Lettering
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units

_BETWEEN = 16.0


def drop_svg(
    plan: Plan, seconds: Mapping[str, float], *, units: Units, width: float, height: float,
    lettering: Lettering = PAPER_LETTERING,
) -> str:  # fmt: skip
    """Every storey of the plan's floor with its drop seconds; seconds: by room id, as told."""
    grounds = storeys(plan)
    share = (height - _BETWEEN * (len(grounds) - 1)) / max(len(grounds), 1)
    svg = Svg(width=width, height=height, family=lettering.family, ident="drops")
    top = 0.0
    for k, storey in enumerate(grounds):
        part = Svg(width=width, height=share, family=lettering.family, ident=f"drops{k}")
        draw_drops(part, plan, Scene(storey, ()), seconds, units=units, lettering=lettering)
        svg.raw(f'<g transform="translate(0 {number(top)})">\n{part}\n</g>')
        top += part.height + _BETWEEN
    svg.height = max(top - _BETWEEN, 1.0)
    return svg.document(title="Drop map", description="Seconds until a drop has gone in, by room.")
