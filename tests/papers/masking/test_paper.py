"""The paper of masking: rows with two boxes, what is taken out, the ghost rule, in two tongues."""

from __future__ import annotations

import io
from dataclasses import replace

import pypdf
import pytest
from tests.papers.invented_plan import big_house, small_house
from tests.papers.masking.test_drawing import job_of, things

from farwall.evidence import rank_words
from farwall.job.office import OfficeGround
from farwall.job.office.masking import masked_of
from farwall.papers.masking.paper import masking_paper
from farwall.papers.masking.words import DEEDS, SAME_DAY, TAKING_DOWN, hanging
from farwall.papers.office.blocks import Own, Picture, Rows
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import paper_data, paper_pdf
from farwall.phrasebook import said_whole, speaking


def ground(plan, language="en", **masking):
    job = job_of(plan, **{"stage": "after paint", "items": things(plan)} | masking)
    return PaperGround(OfficeGround(job, plan), language)


def rows_of(paper):
    return [one for one in paper.blocks if isinstance(one, Rows)]


def test_each_room_has_a_row_with_a_box_to_hang_and_one_to_take_down():
    made = ground(small_house())
    rooms, items = rows_of(masking_paper(made))
    assert (rooms.tick, rooms.tick_head, rooms.tick_end) == (True, "hung", "down")
    masked = masked_of(made.ground)
    assert [row[0] for row in rooms.rows if isinstance(row[0], Own)] == [
        Own(f"{one.number}  {one.name}") for one in masked.rooms
    ]
    assert len(items.rows) == len(masked.items)


@pytest.mark.parametrize("things_told", [True, False])
def test_what_is_masked_adds_up_to_what_is_masked_in_all(things_told):
    """Posts and kicks were in the sum and in no row: 28 rooms came to 1,219 ft, in all 1,237."""
    made = ground(small_house(), **({} if things_told else {"items": ()}))
    made = replace(made, ground=replace(made.ground, job=replace(
        made.job, wishes=replace(made.job.wishes, units="metric"))))  # fmt: skip
    rooms = rows_of(masking_paper(made))[0]
    *parts, whole = [float(row[2].text.removesuffix(" m")) for row in rooms.rows]
    assert abs(sum(parts) - whole) <= 0.05 * len(rooms.rows)
    assert ("things listed below" in [row[0] for row in rooms.rows]) is things_told


def test_the_drawing_comes_first():
    assert isinstance(masking_paper(ground(small_house())).blocks[0], Picture)


def test_the_ghost_rule_and_the_look_for_mist_of_the_same_day_are_told():
    told = str(masking_paper(ground(small_house())).blocks)
    assert "No tape on the slab" in told
    assert "The same day" in told
    assert "bicarbonate water" in told


def test_every_word_is_said_in_spanish():
    made = ground(small_house(), "es")
    data = paper_data(masking_paper(made), made)
    english = {*hanging("tape"), *hanging("foam"), SAME_DAY, *TAKING_DOWN}
    assert not [one for one in english if one in str(data)]
    with speaking("es"):
        assert [one for one in english if not said_whole(one)] == []
        for kind, deed in DEEDS.items():
            named = "thing" if kind == "other" else kind
            for count in ("", "2 × "):
                assert said_whole(f"a {count}{named}: {deed}"), (kind, count)
                assert said_whole(f"a {count}{named}: take it out, bag its screws")


@pytest.mark.parametrize("stage", [None, "before board", "before mud"])
def test_stage_and_warnings_are_said_in_spanish(stage):
    made = ground(small_house(), "es", stage=stage)
    with speaking("es", {room.name for room in masked_of(made.ground).rooms}):
        assert [one for one in masked_of(made.ground).warnings if not said_whole(one)] == []


def test_things_without_a_place_or_a_length_are_asked_for_in_spanish():
    from farwall.facts.supplies import MaskItem

    plan = small_house()
    room = plan.inputs.floor.rooms[0]
    items = tuple(MaskItem(kind, room.id) for kind in ("metal", "appliance", "kick", "stair"))
    bare = tuple(MaskItem(kind) for kind in ("metal", "appliance", "kick", "stair"))
    made = ground(plan, "es", items=(*items, *bare))
    assert len(masked_of(made.ground).warnings) == 8
    with speaking("es", {room.label}):
        assert [one for one in masked_of(made.ground).warnings if not said_whole(one)] == []


@pytest.mark.parametrize("language", ["en", "es"])
def test_fourteen_rooms_are_two_pages_and_the_same_bytes_again(language):
    made = ground(big_house(), language)
    pdf = paper_pdf(masking_paper(made), made)
    pages = pypdf.PdfReader(io.BytesIO(pdf)).pages
    assert len(pages) <= 2
    again = ground(big_house(), language)
    assert paper_pdf(masking_paper(again), again) == pdf


@pytest.mark.parametrize("film_m", [None, 0.3])
def test_every_rule_and_rank_is_said_in_spanish(film_m):
    figures = masked_of(ground(small_house(), film_m=film_m).ground).figures
    with speaking("es"):
        for one in figures:
            assert said_whole(one.rule), one.rule
            assert said_whole(rank_words(one.rank, one.source)), one.source
