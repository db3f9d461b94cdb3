"""Placements and mapped bodies that go round in a circle, found before anything follows them."""

from __future__ import annotations

from farwall.errors import Mistake, Refused
from farwall.readers.ifc.load import Model

_DEEPEST = 200


def refuse_loops(model: Model) -> None:
    """Raises Refused when a placement hangs on itself, or hangs too deep to be a building."""
    above: dict[int, int] = {}
    for one in model.by_type("IfcLocalPlacement"):
        parent = one.PlacementRelTo
        if parent is not None:
            above[one.id()] = parent.id()
    sound: set[int] = set()
    for start in above:
        chain, at = [], start
        while at in above and at not in sound:
            chain.append(at)
            at = above[at]
            if len(chain) > _DEEPEST:
                what = f"The placement #{start} hangs on itself, or more than {_DEEPEST} deep."
                raise Refused(Mistake(f"#{start}", what, "Export the model anew."))
        sound.update(chain)
