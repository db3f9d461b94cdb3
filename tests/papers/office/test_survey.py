"""The survey: written where told, blank where not; the map; tests and photos."""

from dataclasses import replace

from tests.papers.office.grounds import ground, own_texts, texts

from farwall.facts.job import RoomSurvey
from farwall.facts.slab import MoistureTest, Patch
from farwall.job.room_areas import areas_of
from farwall.papers.office.blocks import Blanks, Facts, Own, Picture, Rows, Ticks
from farwall.papers.office.bundles import written
from farwall.papers.office.survey import PHOTOS, survey
from farwall.papers.words import area


def of_kind(paper, kind):
    return [one for one in paper.blocks if isinstance(one, kind)]


def test_every_room_has_a_row_with_its_area():
    paper = survey(ground())
    (rooms,) = of_kind(paper, Rows)
    assert [row[0].text for row in rooms.rows] == [room.label for room in ground().job.floor.rooms]
    assert "ft²" in rooms.rows[0][1].text
    assert "m²" in of_kind(survey(ground(units="metric")), Rows)[0].rows[0][1].text


def test_what_was_found_in_a_room_stands_in_its_row_and_the_rest_is_left_to_the_pen():
    one = ground()
    told = replace(
        one.job.survey,
        rooms={"study": RoomSurvey(drop_s=33, finish="float", sun=True, draught=True)},
        moisture=(MoistureTest("F1869", "study", vapour_ug_m2_s=56.5 * 3),),
        patches=(Patch("north", "study"), Patch("sink", "study")),
    )
    (rooms,) = of_kind(survey(ground(survey=told)), Rows)
    study = next(row for row in rooms.rows if row[0].text == "Study")
    plain = [cell.text if isinstance(cell, Own) else cell for cell in study]
    assert plain[2:] == ["float", "33", "sun, draught", "F1869 3.0 lb", "", "north, sink"]
    hall = next(row for row in rooms.rows if row[0].text == "Hall")
    assert [cell.text if isinstance(cell, Own) else cell for cell in hall][2:] == [""] * 6


def test_facts_of_the_slab_are_written_or_asked():
    told, bare = survey(ground()), survey(ground("bare"))
    written = [name for block in of_kind(told, Facts) for name, _ in block.pairs]
    asked = [name for block in of_kind(told, Blanks) for name in block.names]
    assert {"Age of the slab", "Pours", "Film on it"} <= set(written)
    assert {"pH of the wetted slab", "Fly ash"} <= set(asked)
    assert not set(written) & set(asked)
    none = [name for block in of_kind(bare, Blanks) for name in block.names]
    assert set(written) | set(asked) == set(none)


def test_the_map_has_each_room_its_seconds_and_a_line_where_nobody_tried():
    (picture,) = of_kind(survey(ground()), Picture)
    assert "14 s" in picture.svg  # the great room, as told
    assert "____ s" in picture.svg
    assert "Great room" in picture.svg
    assert "Cross-hatched" in picture.words


def test_tight_and_shut_rooms_are_hatched_and_others_are_not():
    def hatches(seconds):
        rooms = {"study": RoomSurvey(drop_s=seconds)}
        told = replace(ground().job.survey, rooms=rooms)
        (picture,) = of_kind(survey(ground(survey=told)), Picture)
        return picture.svg.count("url(#drops0-tight)"), picture.svg.count("url(#drops0-shut)")

    assert hatches(12) == (0, 0)
    assert hatches(20) == (0, 0)
    assert hatches(45) == (1, 0)
    assert hatches(61) == (0, 1)


def test_tests_to_do_are_those_that_go_counts_and_photos_are_listed():
    paper = survey(ground())
    words = " ".join(texts(paper))
    assert "3 × D4263" in words  # 1,493 ft²: one for 500 ft² or part of it
    assert "nothing taped to the open floor" in words
    assert any(one.items == PHOTOS for one in of_kind(paper, Ticks))


def test_the_map_in_spanish_says_so():
    (picture,) = of_kind(written(survey, ground(language="es")), Picture)
    assert "salida" in picture.svg
    assert "way out" not in picture.svg


def test_own_words_are_never_told():
    assert "Great room" in list(own_texts(survey(ground(language="es"))))


def test_the_floor_of_a_room_is_what_is_stained_as_on_the_wash_record():
    one = ground()
    (rooms,) = of_kind(survey(one), Rows)
    floor_m2 = areas_of(one.plan)
    told = {row[0].text: row[1].text for row in rooms.rows}
    for room in one.job.floor.rooms:
        assert told[room.label] == area(floor_m2[room.id], "us")
    drawn = {room.label: area(room.polygon.shape.area, "us") for room in one.job.floor.rooms}
    assert told != drawn  # tub and island are kept dry
