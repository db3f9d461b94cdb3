"""Houses drawn on one layer with all that is no wall: the same rooms come back."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.drawings import METRES, Manner, drawn
from tests.strategies.floors import House, houses

from farwall.readers.any_plan import read_bytes

cluttered = st.builds(
    Manner,
    unit=st.sampled_from(sorted(METRES)),
    one_layer=st.sampled_from(["0", "0", "WALL", "PLAN 1"]),
    heads=st.booleans(),
    labels=st.booleans(),
    hatch=st.booleans(),
    furniture=st.booleans(),
    dimensions=st.booleans(),
    grid=st.booleans(),
    border=st.booleans(),
    turn_deg=st.sampled_from([0.0, 0.0, 90.0]),
)


@given(houses(), cluttered)
def test_any_cluttered_house_on_one_layer_reads_back(house: House, manner: Manner) -> None:
    """Areas to 1 %, doors to 2 mm. A head without a leaf on the walls' own layer is like a wall."""
    reading = read_bytes(drawn(house, manner))
    wanted = sorted((x1 - x0) * (y1 - y0) for x0, y0, x1, y1 in map(house.box, house.cells))
    found = sorted(room.polygon.shape.area for room in reading.floor.rooms)
    assert found == pytest.approx(wanted, rel=0.01)
    hinged = sorted(p.width for p in house.passages if p.kind != "cased")
    widths = sorted(o.width_m or 0 for o in reading.floor.openings if o.kind != "wide")
    assert widths == pytest.approx(hinged, abs=2e-3)
    assert len(reading.exits) == 1
