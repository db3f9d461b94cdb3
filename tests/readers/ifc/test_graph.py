"""Files whose references lead nowhere good: each read or refused, the process always left alive."""

import re

import pytest

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes

pytest.importorskip("ifcopenshell")

from tests.readers.ifc.making import Making, box

HALL = box(0, 0, 4, 3)


def line_of(text: str, entity: str) -> str:
    return next(line for line in text.splitlines() if f"={entity}(" in line)


def number_of(line: str) -> str:
    return line.split("=", maxsplit=1)[0]


def hall() -> str:
    made = Making()
    made.space(made.storey("Ground"), "1", HALL)
    return made.data().decode()


def test_a_relation_to_something_of_another_kind_is_refused_by_its_number() -> None:
    text = hall()
    line = line_of(text, "IFCRELAGGREGATES")
    context = number_of(line_of(text, "IFCGEOMETRICREPRESENTATIONCONTEXT"))
    broken = text.replace(line, re.sub(r",#\d+,\(", f",{context},(", line))
    assert broken != text
    with pytest.raises(Refused, match="of another kind"):
        read_bytes(broken.encode())


def test_a_broken_body_is_left_aside_and_the_rest_read() -> None:
    made = Making()
    ground = made.storey("Ground")
    made.space(ground, "1", HALL, long="Hall")
    made.space(ground, "2", box(5, 0, 7, 3), long="Bath")
    text = made.data().decode()
    line = [one for one in text.splitlines() if "=IFCEXTRUDEDAREASOLID(" in one][-1]
    context = number_of(line_of(text, "IFCGEOMETRICREPRESENTATIONCONTEXT"))
    broken = text.replace(line, re.sub(r"\(#\d+,", f"({context},", line))
    reading = read_bytes(broken.encode())
    assert [room.name for room in reading.floor.rooms] == ["Hall"]
    assert {"body-broken", "room-unsound"} <= {note.code for note in reading.left}


def test_a_body_that_is_cut_by_itself_is_refused() -> None:
    made = Making()
    f = made.model
    cut = f.createIfcBooleanResult("DIFFERENCE", made.block(HALL, 2.5), made.block(HALL, 1.0))
    cut.FirstOperand = cut
    made.space(made.storey("Ground"), "1", [], shape=made.shape(cut, kind="CSG"))
    with pytest.raises(Refused, match="round in a circle"):
        read_bytes(made.data())


def test_a_number_written_twice_is_refused() -> None:
    text = hall()
    line = line_of(text, "IFCSPACE")
    twice = text.replace(line, line + "\n" + line.replace(number_of(line), "#1", 1))
    with pytest.raises(Refused, match="#1: this number is written twice"):
        read_bytes(twice.encode())


def test_a_storey_that_is_a_part_of_itself_is_refused() -> None:
    made = Making()
    storey = made.storey("Ground")
    made.space(storey, "1", HALL)
    for relation in made.model.by_type("IfcRelAggregates"):
        if storey in relation.RelatedObjects:
            relation.RelatingObject = storey
    with pytest.raises(Refused, match="round in a circle"):
        read_bytes(made.data())


def test_a_body_cut_a_thousand_times_over_is_refused() -> None:
    made = Making()
    f = made.model
    body = made.block(HALL, 2.5)
    for _ in range(1000):
        body = f.createIfcBooleanResult("UNION", body, made.block(HALL, 1.0))
    made.space(made.storey("Ground"), "1", [], shape=made.shape(body, kind="CSG"))
    with pytest.raises(Refused, match="deep"):
        read_bytes(made.data())


def test_maps_in_maps_that_double_each_time_are_refused() -> None:
    made = Making()
    f = made.model
    items = [made.block(HALL, 2.5)]
    origin = f.createIfcCartesianPoint((0.0, 0.0, 0.0))
    same = f.createIfcCartesianTransformationOperator3D(None, None, origin, 1.0)
    for _ in range(40):
        shape = f.createIfcShapeRepresentation(made.context, "Body", "MappedRepresentation", items)
        source = f.createIfcRepresentationMap(made.axes(), shape)
        items = [f.createIfcMappedItem(source, same), f.createIfcMappedItem(source, same)]
    made.space(
        made.storey("Ground"), "1", [], shape=made.shape(*items, kind="MappedRepresentation")
    )
    with pytest.raises(Refused, match="unfolds into"):
        read_bytes(made.data())


def test_a_sound_file_is_not_refused() -> None:
    assert len(read_bytes(hall().encode()).floor.rooms) == 1
