"""Stated areas beside outlines: classes, shares, plain sentences; the outline stays what counts."""

from dataclasses import replace

from tests.strategies.jobs import box

from farwall.facts.reading import Reading, Stated
from farwall.floor.nouns import Floor, Room
from farwall.job.stated import compared, stated_words

ROOMS = (Room("hall", box(0, 0, 4.0, 5.0)), Room("den", box(5, 0, 3.0, 3.0)))


def reading(**stated: Stated) -> Reading:
    return Reading("IFC", "m", "m", 1.0, Floor(ROOMS), stated=stated)


def test_wall_centre_figures_are_told_apart_by_hand() -> None:
    """20 m² drawn of 25 stated is 20 % less, 9 of 10 is 10 % less: 29 of 35 in all."""
    found = reading(hall=Stated(25.0, "wall-centre"), den=Stated(10.0, "wall-centre"))
    (row,) = compared(found)
    assert (row.rooms, row.agree, row.drawn_share) == (2, 0, 29 / 35)
    assert row.off == (("hall", 0.8), ("den", 0.9))
    (words,) = stated_words(found)
    assert "0 of 2 agree" in words
    assert "hall -20.0 %, den -10.0 %" in words
    assert "middle of the walls" in words
    assert "The outline counts." in words


def test_equal_figures_need_no_reason_by_hand() -> None:
    """9.04 stated of 9 drawn is 0.44 %, within the half per cent of print."""
    (words,) = stated_words(reading(den=Stated(9.04, "net")))
    agree = "Net areas: 1 of 1 agree with the outline"
    agree = "Net areas: 1 of 1 agree with the outline"
    assert words == f"{agree}; stated 97 ft² (9.04 m²), drawn 97 ft² (9.00 m²)."


def test_each_class_stands_alone_and_spoilt_figures_are_passed_over() -> None:
    found = reading(hall=Stated(20.0, "gross"), den=Stated(9.2, "size-text"))
    assert [(row.kind, row.agree) for row in compared(found)] == [("gross", 1), ("size-text", 1)]
    assert compared(reading(hall=Stated(0.0, "net"), den=Stated(float("inf"), "net"))) == []
    assert compared(replace(found, scale_m_per_unit=None)) == []
