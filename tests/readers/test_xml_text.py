"""XML from strangers: a tree with lines, calm sentences, and nothing that bites."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.readers import xml_text
from farwall.readers.xml_text import parse_xml, root_name

SAMPLE = b"""<?xml version="1.0"?>
<!-- a plan -->
<p:house xmlns:p="http://example.org/house" p:name="Quince Street">
  <p:room id="a">Hall <i/> way</p:room>
  <p:room id="b"><p:room id="c"/></p:room>
</p:house>"""


def test_names_are_local_and_namespaces_are_told_by_address() -> None:
    root = parse_xml(SAMPLE)
    assert (root.name, root.uri) == ("house", "http://example.org/house")
    assert root.get("name") == "Quince Street"
    assert root.get("missing", "none") == "none"


def test_children_and_walks_keep_the_files_order_and_lines() -> None:
    root = parse_xml(SAMPLE)
    assert [room.get("id") for room in root.all("room")] == ["a", "b"]
    assert [room.get("id") for room in root.walk("room")] == ["a", "b", "c"]
    assert [room.line for room in root.walk("room")] == [4, 5, 5]
    first = root.first("room")
    assert first is not None
    assert first.text == "Hall  way"
    assert root.word("room") == "Hall  way"
    assert root.first("stair") is None
    assert root.word("stair") == ""


@pytest.mark.parametrize(
    ("data", "name"),
    [
        (SAMPLE, "house"),
        (b'<!DOCTYPE svg PUBLIC "-//X//EN" "http://example.org/x.dtd"><svg/>', "svg"),
        ('<?xml version="1.0" encoding="UTF-16"?><gbXML/>'.encode("utf-16"), "gbXML"),
        (b"\xef\xbb\xbf<gbXML />", "gbXML"),
        (b"plain words", ""),
        (b"", ""),
        (b"<!-- <gbXML> --><other>", "other"),
    ],
)
def test_the_first_element_is_known_by_its_local_name(data: bytes, name: str) -> None:
    assert root_name(data) == name


def test_utf_16_is_read() -> None:
    text = '<?xml version="1.0" encoding="UTF-16"?><house name="Quitte"/>'
    assert parse_xml(text.encode("utf-16")).get("name") == "Quitte"


def test_a_document_type_without_entities_is_let_through_and_not_fetched() -> None:
    data = b'<!DOCTYPE svg PUBLIC "-//X//EN" "http://127.0.0.1:9/x.dtd"><svg><g/></svg>'
    assert parse_xml(data).name == "svg"


LAUGHS = b"""<?xml version="1.0"?><!DOCTYPE a [
<!ENTITY b "ha"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;">
<!ENTITY d "&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;">]><a>&d;</a>"""
OUTSIDE = b'<!DOCTYPE a [<!ENTITY x SYSTEM "file:///etc/hostname">]><a>&x;</a>'
PARAMETER = b'<!DOCTYPE a [<!ENTITY % x SYSTEM "http://127.0.0.1:9/x"> %x;]><a/>'


@pytest.mark.parametrize("data", [LAUGHS, OUTSIDE, PARAMETER])
def test_entities_of_every_kind_are_refused_with_the_line(data: bytes) -> None:
    with pytest.raises(Refused, match="shorthand of its own") as refusal:
        parse_xml(data)
    assert refusal.value.mistakes[0].where.startswith("line ")


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"<a><b></a>", "line 1: this is no XML: mismatched tag"),
        (b"<a>", "this is no XML: no element found"),
        (b"", "this is no XML"),
        (b'<?xml version="1.0" encoding="no-such"?><a/>', "letters cannot be made out|no XML"),
        (b"<a>\xff</a>", "no XML"),
    ],
)
def test_what_is_no_xml_is_refused(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words):
        parse_xml(data)


def test_a_hundred_thousand_deep_is_refused() -> None:
    with pytest.raises(Refused, match="nested more than 200 deep"):
        parse_xml(b"<a>" * 100_000 + b"</a>" * 100_000)


def test_too_many_elements_and_too_many_bytes_are_refused(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(xml_text, "MOST_NODES", 1000)
    assert len(parse_xml(b"<a>" + b"<b/>" * 999 + b"</a>").children) == 999
    with pytest.raises(Refused, match="more than 1,000 elements"):
        parse_xml(b"<a>" + b"<b/>" * 1000 + b"</a>")
    monkeypatch.setattr(xml_text, "MOST_BYTES", 100)
    with pytest.raises(Refused, match="MB, more than a plan needs"):
        parse_xml(b"<a>" + b" " * 100 + b"</a>")


@given(st.binary(max_size=60) | st.text("<>/a =\"'&;![]?-", max_size=40).map(str.encode))
def test_any_bytes_are_parsed_or_refused(data: bytes) -> None:
    with suppress(Refused):
        assert parse_xml(data).name == root_name(data)
