"""A plan in a few calm lines."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from tests.shapes import PLAIN_ROOM, TWO_ROOMS
from tests.spray.hand_floors import ROOMY_TANK, hall, job

from farwall.facts.job import Coat, Crew, Stain, Survey
from farwall.facts.plan import OpenTime, Remedy
from farwall.facts.samples import Sample
from farwall.job.plan_job import plan_job
from farwall.job.say import said

ONE_ROOM = plan_job(job(PLAIN_ROOM, name="Quince Street", starts_at="2027-05-04T08:00:00-06:00"))
FITS = ONE_ROOM.fields[0]


def lines(plan, faults=(), folder="out", *, us=True):
    return said(plan, faults, folder=folder, us=us).splitlines()


def with_field(**changes):
    return replace(ONE_ROOM, fields=(replace(FITS, **changes),))


def test_the_first_line_is_the_job_by_hand():
    """By hand: 4 x 3 m are 12 m² or 129 ft²."""
    assert lines(ONE_ROOM)[0] == "Quince Street: 1 room, 129 ft² (12.0 m²) to stain."


def test_a_metric_job_has_metres_litres_and_hours_of_its_own_first():
    told = lines(ONE_ROOM, us=False)
    assert told[0] == "Quince Street: 1 room, 12.0 m² (129 ft²) to stain."
    assert re.search(r"1 field, \d\.\d L \(0\.\d gal\) likely, 8:0\d to 8:\d\d\.$", told[1])


def test_a_job_without_a_name_is_the_job():
    assert lines(replace(ONE_ROOM, job=""))[0].startswith("The job: 1 room,")


def test_rooms_are_counted_in_english():
    assert "2 rooms" in lines(plan_job(job(TWO_ROOMS)))[0]


def test_each_coat_says_stain_cut_litres_and_hours_by_hand():
    """By hand: 12 m² at 5 m² a litre are 2.4 L; four bands overlap by 0.2 m on three fronts of
    5 m at most: up to 0.6 L more."""
    line = lines(ONE_ROOM)[1]
    assert line.startswith("Coat 1 (sand at 1:1): 1 field, 0.")
    litres = float(line.split("(")[2].split()[0])
    assert 2.4 <= litres <= 2.4 + 0.6
    assert ", 8:0" in line


def test_each_field_says_its_verdict_age_budget_and_way_out():
    line = lines(ONE_ROOM)[2]
    assert "1.1 Room: fits; oldest edge" in line
    assert f"of {FITS.open_time_min.low:.1f} min, out by the outside door of Room" in line


@pytest.mark.parametrize(
    ("verdict", "words"),
    [
        ("two", "needs two sprayers"),
        ("stop-line", "needs one more stop line"),
        ("cannot", "CANNOT be done like this"),
        ("helper", "needs a helper"),
    ],
)
def test_a_late_edge_is_said_with_what_would_help_and_how_old_it_then_is(verdict, words):
    offer = Remedy(verdict, "Something that helps.", 1.25)
    plan = with_field(
        verdict=verdict, peak_age_min=6.0, open_time_min=OpenTime(2.0, 4.0, 8.0), remedies=(offer,)
    )
    line, under = lines(plan)[2:4]
    assert words in line
    assert "oldest edge 6.0 of 2.0 min" in line
    assert under == "         Something that helps: oldest edge then 1.2 min"


@pytest.mark.parametrize(
    ("margin_min", "told"),
    [(0.75, "1.2 min, 0.8 min to spare"), (-0.5, "1.2 min, 0.5 min too old")],
)
def test_what_is_left_to_the_edge_then_is_said_with_it(margin_min, told):
    offer = Remedy("two", "Two.", 1.25, margin_min=margin_min)
    plan = with_field(
        verdict="two", peak_age_min=6.0, open_time_min=OpenTime(2, 4, 8), remedies=(offer,)
    )
    assert lines(plan)[3].endswith(f"Two: oldest edge then {told}")


def test_only_two_remedies_are_said():
    offers = tuple(Remedy("two", f"Offer {n}.", None) for n in range(4))
    plan = with_field(
        verdict="two", peak_age_min=6.0, open_time_min=OpenTime(2, 4, 8), remedies=offers
    )
    assert [line.strip() for line in lines(plan)[3:5]] == ["Offer 0.", "Offer 1."]
    assert not any("Offer 2." in line for line in lines(plan))


def test_what_the_verdict_asks_for_is_said_first():
    offers = (Remedy("weaker", "A weaker cut."), Remedy("hour", "Later."), Remedy("two", "Two."))
    plan = with_field(
        verdict="two", peak_age_min=6.0, open_time_min=OpenTime(2, 4, 8), remedies=offers
    )
    assert [line.strip() for line in lines(plan)[3:5]] == ["Two.", "A weaker cut."]


def test_what_is_not_enough_is_said_last():
    offers = (Remedy("weaker", "A weaker cut.", works=False), Remedy("hour", "Later.", works=True))
    plan = with_field(
        verdict="cannot", peak_age_min=6.0, open_time_min=OpenTime(2, 4, 8), remedies=offers
    )
    assert [line.strip() for line in lines(plan)[3:5]] == ["Later.", "A weaker cut."]


def test_edges_that_die_as_told_above_are_counted_and_all_else_is_listed():
    late = with_field(verdict="helper", peak_age_min=6.0, open_time_min=OpenTime(2, 4, 8))
    dead = [f"dead-edge: At 8:05 am, in Room, band 1.1.{n} meets the edge" for n in (2, 3)]
    told = lines(late, dead)
    counted = "Replayed on the floor: edges die in 1.1 (2), as told above, and nothing else;"
    assert any(line.startswith(counted) for line in told)
    assert not any("dead-edge" in line for line in told)
    told = lines(late, [*dead, "trodden: place 1"])
    assert "  trodden: place 1" in told
    assert any("edges die in 1.1 (2), as told above; `farwall check`" in line for line in told)
    # A field that is said to fit has none: whatever is found there is news.
    assert sum("dead-edge" in line for line in lines(ONE_ROOM, dead)) == 2


def test_a_field_that_fits_with_its_helper_says_so():
    plan = plan_job(
        job(
            hall(8, 2),
            tools=replace(ROOMY_TANK, tank_l=3.0),
            samples=(Sample("board", coat="one", sheen_loss_min=3.0),),
            crew=Crew(helper=True),
        )
    )
    assert any("fits with a helper" in line for line in lines(plan))


def test_a_slab_that_says_no_is_said_once_for_all_fields():
    plan = plan_job(job(TWO_ROOMS, survey=Survey(slab_c=32.2, air_c=30.0)))
    told = lines(plan)
    assert sum("above 85 °F (29.4 °C)" in line for line in told) == 1
    assert any(line.strip().startswith("NO:") for line in told)
    assert "So nothing here may be sprayed as it stands." in told


def test_a_plan_that_stands_says_what_was_looked_at():
    assert any(line.startswith("Replayed on the floor:") for line in lines(ONE_ROOM))


def test_faults_are_listed_and_the_rest_counted():
    told = lines(ONE_ROOM, [f"trodden: place {n}" for n in range(20)])
    assert sum("trodden" in line for line in told) == 12
    assert any("and 8 more; `farwall check` lists all" in line for line in told)
    assert not any(line.startswith("Replayed") for line in told)


def test_it_says_what_to_open_and_that_the_sheet_in_hand_wins():
    told = lines(ONE_ROOM, folder="my plan")
    assert any("Open my plan/run-sheet.pdf" in line for line in told)
    assert "win over this plan" in told[-1]


def test_warnings_are_passed_on():
    assert "Mind: Boil the kettle." in lines(replace(ONE_ROOM, warnings=("Boil the kettle.",)))


def test_the_next_day_is_named():
    """A coat that is not sure to dry today begins at the same hour tomorrow."""
    two = (Coat("one", "sand", "1:1", m2_per_l=5.0), Coat("two", "sand", "1:2", m2_per_l=5.0))
    damp = Survey(slab_c=13.0, air_c=13.0, rh_percent=88.0, air_speed_m_s=0.05)
    plan = plan_job(job(PLAIN_ROOM, coats=two, survey=damp, starts_at="2027-05-04T08:00:00-06:00"))
    second = next(line for line in lines(plan) if line.startswith("Coat 2 ("))
    assert "(day 2)" in second


def test_hours_are_told_in_the_manner_of_the_job_by_hand():
    """Mixed from 12:00 on, the first field is begun 3 min past noon: 12:03 pm, not 12:03 am."""
    plan = replace(ONE_ROOM, starts_at="2027-05-04T12:00:00-06:00")
    coat, field = lines(plan)[1:3]
    assert ", 12:03 pm to 12:" in coat
    assert field.startswith("  12:03 pm 1.1 Room")
    assert all(" am" not in line for line in (coat, field))
    coat, field = lines(replace(plan, starts_at="2027-05-04T13:00:00-06:00"), us=False)[1:3]
    assert ", 13:03 to 13:" in coat
    assert field.startswith("  13:03 1.1 Room")


def test_the_next_day_is_named_behind_am_and_pm():
    """By hand: 3 min after 11:55 pm is the same day, and 8 min after it the next one."""
    plan = replace(ONE_ROOM, starts_at="2027-05-04T23:55:00-06:00")
    assert re.search(r", 11:58 pm to 12:0\d am \(day 2\)\.$", lines(plan)[1])


def test_no_line_is_empty():
    assert all(line.strip() for line in lines(ONE_ROOM))


def test_a_stain_is_called_by_its_name_where_the_job_has_one():
    named = job(PLAIN_ROOM, stains=(Stain("sand", name="warm sand"),))
    assert lines(plan_job(named))[1].startswith("Coat 1 (warm sand at 1:1): ")
