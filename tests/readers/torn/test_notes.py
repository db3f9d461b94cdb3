"""A file that is not whole is told as such where its library reads on without a word."""

import zlib
from pathlib import Path

import pytest
from tests.hostile.models import ifc
from tests.hostile.seeds import dxf, pdf, pdf_of

from farwall.readers.torn.notes import torn_notes
from farwall.readers.torn.packed import torn_pdf
from farwall.readers.torn.step import torn_step
from farwall.readers.torn.tagged import torn_dxf

STEP, PDF, DXF = ifc(), pdf(), dxf()
HOUSE = (
    Path(__file__).parents[2] / "published" / "data" / "plans" / "single_storey_house_inches.dxf"
)
PLANS = ("duplex_apartment_ifc2x3", "small_house_brep_ifc4", "institute_five_storey_ifc2x3")


def test_whole_files_are_whole() -> None:
    assert torn_step(STEP) == []
    assert torn_pdf(PDF) == []
    assert torn_dxf(DXF) == []
    assert torn_dxf(DXF.replace(b"\n", b"\r\n")) == []
    assert torn_dxf(HOUSE.read_bytes()) == []
    assert torn_notes(b"anything", "walk") == ()


@pytest.mark.needs_shared
@pytest.mark.parametrize("name", [*PLANS, "seven_room_office_ifc2x3"])
def test_real_models_are_whole(shared, name: str) -> None:
    path: Path = shared(f"data/plans/{name}.ifc")
    assert torn_step(path.read_bytes()) == []


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        (b"#37=IFCSPACE", b"#37 IFCSPACE", "1 × statement"),
        (b"#37=IFCSPACE", b"x", "1 × statement"),
        (b"(#27,#37)", b"(#27,#377)", "#377 is referred to"),
        (b"#37=IFCSPACE", b"#27=IFCSPACE", "#27 stands for more"),
        (b"ENDSEC;\nEND-ISO-10303-21;\n", b"", "breaks off"),
        (b"'Den'", b"'Den", "statement"),
        (b"ENDSEC;\nDATA;", b"ENDSEC;\n8", "Where its data begin"),
        (b"#37=IFCSPACE", b"#" + b"9" * 5 + b"=IFCSPACE", "#37 is referred to"),
    ],
)
def test_what_is_torn_in_a_model_is_told(old: bytes, new: bytes, words: str) -> None:
    assert old in STEP
    told = torn_step(STEP.replace(old, new, 1))
    assert any(words in sentence for sentence in told), told


@pytest.mark.parametrize(
    ("old", "new"),
    [
        (b"'Den'", b"'#999; = ('"),
        (b"'Den'", b"'It''s #999'"),
        (b"DATA;", b"DATA;\n/* #999; */"),
        (b"#37=IFCSPACE(", b"#37 = IFCSPACE (\n"),
        (b"ENDSEC;\nEND-ISO", b'#998=IFCX("0AF");\n#999=(A()B());\nENDSEC;\nEND-ISO'),
    ],
)
def test_what_is_only_written_otherwise_is_whole(old: bytes, new: bytes) -> None:
    assert old in STEP
    assert torn_step(STEP.replace(old, new, 1)) == []


def test_a_pdf_whose_table_points_elsewhere_is_told() -> None:
    for torn in (
        PDF.replace(b"1 0 obj", b"11 0 obj"),
        PDF[:-8],
        PDF.replace(b"xref\n0", b"xrfe\n0"),
    ):
        assert "table of its parts" in torn_pdf(torn)[0]


def test_a_packed_part_that_is_torn_is_told() -> None:
    stream = zlib.compress(b"0 0 m 9 9 l S\n" * 500)
    assert torn_pdf(pdf_of(stream)) == []
    for spoilt in (stream[:-6], stream[:20] + b"\xff\xff\xff" + stream[23:], b"junk" * 9):
        (told,) = torn_pdf(pdf_of(spoilt))
        assert told.startswith("1 × packed part of the file is torn. Lines may be missing")


def test_an_encrypted_pdf_is_not_judged() -> None:
    assert torn_pdf(PDF[:-8] + b"/Encrypt") == []


def test_a_dxf_out_of_step_or_cut_short_is_told() -> None:
    lines = DXF.split(b"\n")
    (told,) = torn_dxf(b"\n".join([*lines[:100], b"7.1", *lines[101:]]))
    assert told.startswith("From line 101 on codes and values are out of step")
    (told,) = torn_dxf(b"\n".join([*lines[:100], *lines[101:]]))
    assert "out of step" in told
    (told,) = torn_dxf(b"\n".join([*lines[:100], b" -1", *lines[101:]]))
    assert told.startswith("From line 101 on codes and values are out of step")
    (told,) = torn_dxf(b"\n".join(lines[:200]))
    assert told.startswith("The file breaks off")


def test_a_binary_dxf_is_not_judged() -> None:
    assert torn_dxf(b"AutoCAD Binary DXF\r\n\x1a\x00") == []
