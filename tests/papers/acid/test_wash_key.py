"""The rooms of a wash day that stand under its floor: no name is cut at the picture's edge."""

from types import SimpleNamespace

import pytest

from farwall.papers.acid.wash.drawing import _key
from farwall.papers.drawing.floor_foot import EDGE
from farwall.papers.lettering import PAPER_LETTERING, SCREEN_LETTERING, text_width


@pytest.mark.parametrize("lettering", [PAPER_LETTERING, SCREEN_LETTERING])
def test_the_names_of_forty_rooms_fit_the_picture(lettering):
    lines = []
    svg = SimpleNamespace(
        width=640.0, height=100.0, text=lambda at, line, size, **_: lines.append((line, size))
    )
    names = {f"{n} Storage of the garden tools and the winter wheels {n}" for n in range(1, 41)}
    _key(SimpleNamespace(svg=svg, lettering=lettering, key=names), lettering.small)
    assert len(lines) > 5
    wide = (svg.width - 2 * EDGE) / lettering.widen
    assert max(text_width(line, size) for line, size in lines) <= wide
