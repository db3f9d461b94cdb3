"""The one floor drawing, used on screen, phone, paper and in files.

Two views of it: the whole floor with its fields in order, and one field with
its bands. Text is placed by measuring it, so that no word lies on another.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.plan import Field, Plan
from farwall.papers.drawing.field_view import draw_field
from farwall.papers.drawing.floor_view import draw_floor
from farwall.papers.drawing.scene import Scene, Storey, scene_of_field, scenes, storeys
from farwall.papers.ink import PAPER
from farwall.papers.lettering import SCREEN_LETTERING, Lettering
from farwall.papers.svg import Svg, number
from farwall.papers.wall_clock import Units
from farwall.papers.wall_ticks import WallRun, wall_ticks
from farwall.papers.words import listed, room_names

_BETWEEN = 18.0


def floor_svg(
    plan: Plan,
    *,
    units: Units = "us",
    coat: str | None = None,
    width: float = 960.0,
    height: float = 680.0,
    lettering: Lettering = SCREEN_LETTERING,
    ground: str | None = PAPER,
) -> str:
    """The whole floor as SVG text: walls, doors, fields in order, stop lines, the way out.

    `coat` chooses whose fields are shown (the first coat's without it). The
    drawing is `width` units wide and at most about `height` high; type has the
    sizes of `lettering` in the same units. `ground` colours the sheet, None
    leaves it bare. Storeys stand one above the other.
    """
    in_hand = plan.so_far.coat if plan.so_far is not None else None
    shown = scenes(plan, coat=coat if coat is not None else in_hand)
    share = (height - _BETWEEN * (len(shown) - 1)) / len(shown)
    svg = Svg(width=width, height=height, family=lettering.family, ident="floor")
    top = 0.0
    for k, scene in enumerate(shown):
        ident = f"floor{k}" if k else "floor"
        part = Svg(width=width, height=share, family=lettering.family, ident=ident)
        draw_floor(part, plan, scene, units=units, lettering=lettering)
        if part.height > share + 1:
            # The key needed rows that nobody could foresee: draw once more, that much lower.
            lower = max(2 * share - part.height, 0.5 * share)
            part = Svg(width=width, height=lower, family=lettering.family, ident=ident)
            draw_floor(part, plan, scene, units=units, lettering=lettering)
        if top:
            svg.below(part, top)
        else:
            svg.raw(str(part))
        top += part.height + _BETWEEN
    svg.height = top - _BETWEEN
    if ground is not None:
        svg.parts.insert(
            0, f'<rect width="{number(width)}" height="{number(svg.height)}" fill="{ground}"/>'
        )
    return svg.document(
        title=f"Floor of {plan.job or 'this job'}", description=_floor_told(plan, shown)
    )


def field_svg(
    plan: Plan,
    field: Field,
    *,
    units: Units = "us",
    width: float = 960.0,
    height: float = 680.0,
    lettering: Lettering = SCREEN_LETTERING,
    ground: str | None = PAPER,
    walls: Sequence[WallRun] | None = None,
    grounds: Sequence[Storey] | None = None,
) -> str:
    """One field as SVG text: its bands in order, how they are sprayed, walls lettered for ticks.

    Same sizes and units as `floor_svg`. A field that cannot be done shows no
    bands, so that nobody sprays by it. `walls` are its ticked walls and
    `grounds` the plan's storeys, when the caller has them already.
    """
    scene = scene_of_field(field, grounds if grounds is not None else storeys(plan))
    svg = Svg(width=width, height=height, family=lettering.family, ident=f"field-{field.order}")
    runs = walls if walls is not None else wall_ticks(plan, field)
    draw_field(svg, plan, scene, field, runs, units=units, lettering=lettering)
    if ground is not None:
        svg.parts.insert(
            0, f'<rect width="{number(width)}" height="{number(svg.height)}" fill="{ground}"/>'
        )
    rooms = listed(room_names(plan, field.rooms))
    if field.verdict == "cannot":
        told = f"{rooms}: not to be sprayed as things stand."
    else:
        told = (
            f"{rooms}: {len(field.bands)} bands, numbered in the order in which they are sprayed."
        )
    return svg.document(title=f"Field {field.order}: {rooms}", description=told)


def _floor_told(plan: Plan, shown: Sequence[Scene]) -> str:
    fields = sorted((f for scene in shown for f in scene.fields), key=lambda f: f.order)
    parts = [f"field {n} is {listed(room_names(plan, f.rooms))}" for n, f in enumerate(fields, 1)]
    return "Fields in the order in which they are sprayed: " + "; ".join(parts) + "."
