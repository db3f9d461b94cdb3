"""The sealing record: slab, air, lot and hands of each coat, as the log has them."""

from __future__ import annotations

import pytest
from tests.job.story.entries import Log
from tests.papers.office import houses
from tests.papers.office.grounds import english_left
from tests.papers.office.houses import House

from farwall.facts.log_words import WORDS
from farwall.papers.office.blocks import Own, Rows, Words
from farwall.papers.office.bundles import written
from farwall.papers.office.seal_record import seal_record


def rows_of(**parts):
    paper = seal_record(houses.twelve().ground(**parts))
    table = next(one for one in paper.blocks if isinstance(one, Rows))
    return table.heads, [
        {head: cell.text if isinstance(cell, Own) else cell
         for head, cell in zip(table.heads, row, strict=True)}
        for row in table.rows
    ]  # fmt: skip


@pytest.mark.parametrize("units", ["us", "metric"])
def test_each_coat_has_its_lot_and_the_sealer_where_it_was_another(units):
    heads, rows = rows_of(units=units)
    assert [one["lot"] for one in rows] == ["S-4410", "Clear Two · S-4411"]
    assert heads.index("lot") < heads.index("by")


def test_margins_by_hand():
    """First coat: slab 18, air 22 at 45 %: dew point 9.5 °C; second: 17, 23 at 66 %: 16.3 °C."""
    _, rows = rows_of(units="metric")
    assert [one["margin"] for one in rows] == ["8.5 °C", "0.7 °C"]


def test_a_coat_of_sealer_needs_no_lot_and_may_carry_one():
    sealed = WORDS["sealed"]
    assert sealed.must == ()
    assert {"lot", "sealer"} <= {one.key for one in sealed.may}
    assert next(one.what for one in sealed.may if one.key == "lot") == next(
        one.what for one in WORDS["mixed"].may if one.key == "lot"
    )


@pytest.mark.parametrize(("language", "words"), [("en", "8 Oct, 8:50"), ("es", "8 oct, 8:50")])
def test_a_coat_of_another_day_bears_its_date(language, words):
    """A floor is sealed a week after it was stained: *Tue 9:30 am* said neither which Tuesday."""
    _, rows = rows_of(units="metric", language=language)
    assert rows[0]["when"].endswith(words)


@pytest.mark.parametrize("number", [{}, {"round": 1}])
def test_a_coat_near_the_dew_point_is_told_in_spanish_whatever_its_number(number):
    """By hand: a slab of 17 °C in air of 23 °C and 66 % (16.3 °C) has 0.7 K, less than 3."""
    house = houses.twelve()
    log = Log(house.plan)
    log("reading", 3000, slab_c=17.0, air_c=23.0, rh_percent=66.0)
    log("sealed", 3010, room=house.job.floor.rooms[0].id, **number)
    ground = House(house.job, house.plan, tuple(log.kept)).ground(language="es", units="metric")
    paper = written(seal_record, ground)
    (near,) = [one for one in paper.blocks if isinstance(one, Words) and one.tone == "danger"]
    assert near.text.startswith("Coat 1, ") == bool(number)
    assert "?" not in near.text
    assert english_left(paper, ground) == []
