"""Building models spoilt as files get spoilt: each read, with words, or refused."""

import pytest
from tests.mutations import spoilt

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")

from tests.readers.ifc.making import Making, box


@pytest.fixture(scope="module")
def model() -> bytes:
    made = Making(schema="IFC2X3")
    ground = made.storey("Ground")
    hall = made.space(ground, "1", box(0, 0, 4, 3), long="Hall")
    made.space(ground, "2", box(4, 0, 7, 3), long="Bath")
    made.bound(hall, made.door(ground, box(0, -0.2, 1, 0), 1.0, external=True))
    made.bound(hall, None, edge=[(4, 0), (4, 3)])
    made.sized(hall, "BaseQuantities", GrossFloorArea=12.0)
    return made.data()


def test_spoilt_models_are_read_with_words_or_refused(model: bytes) -> None:
    read, refused = 0, []
    for number in range(80):
        try:
            reading = read_bytes(spoilt(model, number))
        except Refused as refusal:
            refused += refusal.mistakes
            continue
        read += 1
        assert reading.mended or reading.left or reading.asks
    assert read > 5
    assert len(refused) > 5
    assert all(mistake.what for mistake in refused)


@pytest.mark.parametrize("blank", [b"\v", b"\f"], ids=["vertical tab", "form feed"])
def test_a_blank_of_another_kind_costs_no_room(model: bytes, blank: bytes) -> None:
    """The library drops the statement behind one without a word, and a room was gone with it."""
    sound = read_bytes(model)
    space = model.index(b"IFCSPACE")
    line = model.rindex(b"\n", 0, space)
    assert len(sound.floor.rooms) == 2
    assert read_bytes(model[:line] + blank + model[line + 1 :]) == sound
    assert read_bytes(model[:space] + blank + model[space:]) == sound
