"""A building model read as strangers' files are: by a process of its own that is shut in."""

from pathlib import Path

import pytest

from farwall.errors import Refused
from farwall.readers.any_plan import read_plan

pytest.importorskip("ifcopenshell")

from tests.readers.ifc.making import Making, box


def test_the_library_works_behind_shut_doors(tmp_path: Path) -> None:
    made = Making()
    made.space(made.storey("Ground"), "1", box(0, 0, 4, 3), long="Hall")
    path = tmp_path / "hall.ifc"
    path.write_bytes(made.data())
    reading = read_plan(path)
    assert [room.name for room in reading.floor.rooms] == ["Hall"]
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)


def test_a_broken_model_is_refused_with_its_name(tmp_path: Path) -> None:
    path = tmp_path / "broken.ifc"
    path.write_text("ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n#1=IFCWALL(")
    with pytest.raises(Refused) as refusal:
        read_plan(path)
    assert "broken.ifc" in refusal.value.about
