"""The next coat of a house, from its facts and log: what may never happen, and what is refused."""

from dataclasses import replace

import pytest
from tests.job.colour.fennel import asked, first_coat, job, plan, with_samples
from tests.job.story.entries import Log

from farwall.colour.next_coat import CLOSED, MOST_TOO_DARK
from farwall.errors import Refused, Unanswerable
from farwall.job.colour.document import next_document
from farwall.job.colour.next_coat import DARK_RANGE, colour_next
from farwall.job.colour.ways import ACCENT_PARTS, MIST_M2_PER_L
from farwall.mix.need import need

LOOKED = (("great-room", 44.7, {}), ("bath", 43.0, {}))


@pytest.fixture(scope="module")
def after_first():
    return colour_next(asked(first_coat(*LOOKED)))


def test_what_is_laid_keeps_the_bound_in_every_room(after_first):
    assert after_first.verdict == "lay"
    assert after_first.coat == "second"
    assert max(one.chosen.too_dark for one in after_first.alike) <= MOST_TOO_DARK
    assert after_first.chosen.too_dark == max(one.chosen.too_dark for one in after_first.alike)


def test_it_moves_the_floor_towards_the_sample_and_not_past_it(after_first):
    assert 0 < after_first.chosen.gap < after_first.stop.gap
    assert after_first.chosen.gap_low < after_first.chosen.gap < after_first.chosen.gap_high


def test_no_safe_way_of_the_grid_leaves_less_unless_it_closes_the_gap(after_first):
    found = colour_next(asked(first_coat(*LOOKED)))
    if found.chosen.gap > CLOSED:
        assert found.strong is None or found.strong.too_dark > MOST_TOO_DARK
    assert found.chosen == after_first.chosen  # the same question has the same answer


def test_the_litres_are_those_of_the_gate(after_first):
    told = after_first.litres
    way = after_first.chosen.way
    assert told.likely_l == pytest.approx(sum(one.likely_l for one in told.fields))
    alone = need(
        area_m2=1.0, m2_per_l=1 / told.likely_l, spread_percent=told.spread_percent,
        certainty_percent=told.certainty_percent,
    )  # fmt: skip
    # Several fields are surer together than one of their size.
    assert told.likely_l < told.ready_l <= alone.mix_l * 1.001
    assert told.water_l / told.stain_l == pytest.approx(way.water_parts)
    assert told.area_m2 == pytest.approx(51.45, abs=0.2)


def test_a_floor_at_the_tone_of_the_sample_is_left_alone():
    kept = first_coat(("great-room", 39.9, {}), ("bath", 39.7, {}))
    found = colour_next(asked(kept))
    assert found.verdict == "stop"
    assert found.litres is None
    assert found.would == "stop"


def test_a_floor_darker_than_the_sample_is_never_coated():
    found = colour_next(asked(first_coat(("great-room", 34.0, {}), ("bath", 33.5, {}))))
    assert found.verdict == "stop"
    assert found.stop.gap < -DARK_RANGE


def test_one_dark_room_holds_back_the_whole_and_the_others_are_told_by_themselves():
    found = colour_next(asked(first_coat(("great-room", 45.5, {}), ("bath", 37.5, {}))))
    bath = next(one for one in found.alike if "bath" in one.alike.rooms)
    great = next(one for one in found.alike if "great-room" in one.alike.rooms)
    assert found.verdict == "stop"
    assert (bath.verdict, great.verdict) == ("stop", "lay")
    alone = colour_next(asked(first_coat(("great-room", 45.5, {}), ("bath", 37.5, {})),
                              room="great-room"))  # fmt: skip
    assert alone.verdict == "lay"
    assert {room for one in alone.litres.fields for room in one.rooms} == {"great-room"}


def test_without_a_look_at_the_coated_floor_it_waits():
    found = colour_next(asked(first_coat()))
    assert found.verdict == "wait"
    assert [one.code for one in found.limits if one.holds is False] == ["looked"]


def test_looked_at_before_the_dwell_is_over_it_waits():
    kept = first_coat(("great-room", 44.7, {}), laid=True)
    early = [replace(one, entry=replace(one.entry, at=one.entry.at.replace("T13", "T09")))
             for one in kept]  # fmt: skip
    found = colour_next(asked(early))
    assert found.verdict == "wait"
    assert "dwell" in [one.code for one in found.limits if one.holds is False]


def test_a_drop_that_stands_lets_no_coat_go_on():
    survey = job().survey
    slow = replace(survey.rooms["bath"], drop_s=75.0)
    of = replace(job(), survey=replace(survey, rooms={**survey.rooms, "bath": slow}))
    found = colour_next(asked(first_coat(*LOOKED), of=of))
    assert found.verdict == "wait"
    assert "drop" in [one.code for one in found.limits if one.holds is False]


def drop_limit(*entries, of=None):
    """The drop test of the whole floor after one coat and these entries: minute, words."""
    log = Log(plan(), device="office")
    for minute, about in entries:
        log("drop-tested", minute, **about)
    found = colour_next(asked((*first_coat(*LOOKED), *log.kept), of=of))
    return next(one.holds for one in found.limits if one.code == "drop")


def test_a_drop_that_the_log_has_since_the_coat_is_the_drop_test():
    every = [(400, {"room": room.id, "drop_s": 20.0}) for room in job().floor.rooms]
    assert drop_limit() is None
    assert drop_limit(*every) is True
    assert drop_limit((400, {"drop_s": 20.0})) is True  # named no room: the floor as one
    assert drop_limit(*every[1:]) is None
    assert drop_limit(*every, (410, {"room": "bath", "drop_s": 75.0})) is False
    assert drop_limit(*every, (410, {"room": "bath", "drop_s": 75.0}), every[0],
                      (420, {"room": "bath", "drop_s": 15.0})) is True  # fmt: skip


def test_a_drop_on_the_bare_floor_is_none_of_the_coat_and_a_new_one_wins_over_the_survey():
    before = [(-60, {"room": room.id, "drop_s": 20.0}) for room in job().floor.rooms]
    assert drop_limit(*before) is None
    survey = job().survey
    slow = replace(survey.rooms["bath"], drop_s=75.0)
    of = replace(job(), survey=replace(survey, rooms={**survey.rooms, "bath": slow}))
    assert drop_limit(of=of) is False
    assert drop_limit((400, {"drop_s": 20.0}), of=of) is True


def test_a_floor_that_was_neutralised_gets_no_coat_before_it_is_rinsed():
    log = Log(plan(), device="office")
    log("neutralised", 400)
    kept = (*first_coat(*LOOKED), *log.kept)
    assert colour_next(asked(kept)).verdict == "wait"
    elsewhere = Log(plan(), device="office")
    elsewhere("neutralised", 400, room="bed")
    kept = (*first_coat(*LOOKED), *elsewhere.kept)
    assert colour_next(asked(kept, room="bath")).verdict == "lay"


def test_after_two_coats_only_an_accent_is_weighed():
    found = colour_next(asked(first_coat(("great-room", 47.0, {"coat": "second"}))))
    assert found.coat == ""
    assert len(found.coats) == 2
    way = found.chosen.way
    assert way is None or way.water_parts in ACCENT_PARTS
    assert way is None or way.l_per_m2 <= 1 / MIST_M2_PER_L + 1e-9
    assert "third-coat" in [one.code for one in found.limits]


def test_without_samples_it_refuses_and_says_what_to_measure():
    with pytest.raises(Unanswerable, match="no sample of this slab") as told:
        colour_next(asked(of=with_samples()))
    assert any("Approve a sample" in one for one in told.value.remedies)


def test_without_a_standard_it_refuses():
    bare = tuple(replace(one, verdict=None, approved_by="") for one in job().samples)
    with pytest.raises(Unanswerable, match="held against"):
        colour_next(asked(of=with_samples(*bare)))


def test_a_standard_seen_sealed_alone_is_reckoned_back_and_said():
    def sealed_only(one):
        looks = tuple(each for each in one.looks if each.state == "sealed")
        return replace(one, looks=looks)

    samples = [sealed_only(one) if one.id == "c-4" else one for one in job().samples]
    found = colour_next(asked(first_coat(*LOOKED), of=with_samples(*samples)))
    assert found.standard.seen == "sealed"
    assert found.standard.lab[0] == pytest.approx(39.8, abs=0.6)
    assert found.dark_range < DARK_RANGE
    assert "standard-wet" in [one.code for one in found.asks]


def test_a_stain_without_a_sample_is_not_weighed():
    samples = [one for one in job().samples if one.stain != "moss"]
    with pytest.raises(Unanswerable, match="no sample of its stain") as told:
        colour_next(asked(first_coat(*LOOKED), of=with_samples(*samples), stain="moss"))
    assert any("moss" in one for one in told.value.remedies)


def test_names_that_are_not_there_are_refused_all_at_once():
    with pytest.raises(Refused) as told:
        colour_next(asked(room="attic", coat="ninth", stain="pink"))
    assert [one.where for one in told.value.mistakes] == ["--room", "--coat", "--stain"]


def test_a_thirstier_room_is_judged_darker_than_one_like_the_samples():
    found = colour_next(asked(first_coat(("great-room", 44.7, {}))))
    by_room = {one.alike.rooms: one for one in found.alike}
    bath = next(one for rooms, one in by_room.items() if "bath" in rooms)
    bed = next(one for rooms, one in by_room.items() if "bed" in rooms)
    assert bath.alike.factor > 1 == bed.alike.factor
    assert bath.chosen.too_dark > bed.chosen.too_dark


def test_the_document_has_si_and_us_and_four_digits(after_first):
    document = next_document(job(), after_first)
    chosen, litres = document["chosen"], document["litres"]
    assert chosen["ft2_per_gal"] == pytest.approx(chosen["m2_per_l"] * 40.746, rel=1e-3)
    assert litres["ready_gal"] == pytest.approx(litres["ready_l"] / 3.785412, rel=1e-3)
    assert document["chance_too_dark"]["rank"] == "guess"
    assert document["habit"]["cut"] == "1:2"
    assert set(document["said"]) >= {"now", "why", "habit", "rests"}


def test_a_standard_whose_photo_had_no_target_makes_every_coat_riskier(after_first):
    unsure = tuple(
        replace(one, looks=tuple(replace(look, error_de=None) for look in one.looks))
        if one.id == after_first.standard.sample
        else one
        for one in job().samples
    )
    found = colour_next(asked(first_coat(*LOOKED), of=with_samples(*unsure)))
    assert found.standard.blur > after_first.standard.blur
    assert found.stop.too_dark > after_first.stop.too_dark
    assert laid(found) < laid(after_first)  # here it stops


def laid(found):
    """Litres of stain that the chosen coat lays on a square metre; 0 where it stops."""
    return found.chosen.way.laid.l_per_m2 if found.chosen.way else 0.0
