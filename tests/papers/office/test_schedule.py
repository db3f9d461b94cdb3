"""The schedule: the lock, the days, who comes back; from the calendar or the house's own chain."""

from dataclasses import replace
from datetime import datetime, timedelta

from tests.papers.office.grounds import ground, own_texts, texts

from farwall.air.weather import Forecast
from farwall.facts.sealer import Sealer
from farwall.job.plan_days import Ask, plan_days
from farwall.papers.office.blocks import Own, Rows
from farwall.papers.office.schedule import schedule


def rows_of(paper):
    return [one for one in paper.blocks if isinstance(one, Rows)]


def plain(row):
    return [cell.text if isinstance(cell, Own) else cell for cell in row]


def test_the_lock_stands_first_with_its_day_and_hour():
    first = schedule(ground()).blocks[0]
    assert first.tone == "strong"
    assert first.text.startswith("All other trades, owner and pets stay out from ")


def test_the_first_coat_falls_on_the_day_of_the_plan():
    days, back = rows_of(schedule(ground()))
    coat = next(plain(row) for row in days.rows if row[2] == "coat 1")
    assert coat[0] == "Thu 14 May"
    assert [row[2] for row in days.rows][-1] == "unmask, punch list, hand over"
    assert next(row[0] for row in back.rows) == "trades, owner, pets"


def test_its_coats_begin_at_the_hours_of_the_run_sheet():
    """To the quarter of an hour; the first at the first stroke that the run sheet's head tells."""
    made = ground(units="metric")
    rows = [plain(row) for row in rows_of(schedule(made))[0].rows]
    coats = [row for row in rows if row[2].startswith("coat ")]
    start = datetime.fromisoformat(made.plan.starts_at)
    assert len(coats) == 2
    for row, coat in zip(coats, ("first", "second"), strict=True):
        at = min(one.start_min for one in made.plan.fields if one.coat == coat)
        by_plan = start + timedelta(minutes=at if coat != "first" else 0)
        hour, minute = map(int, row[1].split(" to ")[0].split(":"))
        off = by_plan - by_plan.replace(hour=hour, minute=minute)
        assert timedelta(0) <= off < timedelta(minutes=15), (row, by_plan)


def test_the_firms_calendar_wins_where_the_house_stands_in_it():
    facts = ground().job
    document = plan_days([facts], Ask(begins=__import__("datetime").date(2026, 6, 8))).document
    paper = schedule(ground(calendar=document))
    days = rows_of(paper)[0]
    assert plain(days.rows[0])[0] == "Mon 8 Jun"
    words = " ".join(texts(paper))
    assert "From the firm's calendar." in words
    assert "does not fall on the day of the run sheet" in words


def test_a_calendar_without_this_house_is_no_calendar_of_it():
    other = replace(ground().job, id="elsewhere")
    document = plan_days([other], Ask()).document
    words = " ".join(texts(schedule(ground(calendar=document))))
    assert "Reckoned for this house alone." in words


def test_waits_after_the_sealer_are_those_of_its_label():
    slow = Sealer(type="water acrylic", walk_h=9, furniture_h=240)
    back = rows_of(schedule(ground(sealer=slow)))[1]
    told = {row[0]: row[1] for row in back.rows}
    assert told["socks"] == "9 h after the last coat of sealer"
    assert told["furniture on felt"] == "10 days after it"


def test_without_a_day_days_are_counted():
    paper = schedule(ground("bare", starts_at=None))
    days = rows_of(paper)[0]
    assert plain(days.rows[0])[0] == "day 1"
    assert "No day was told" in " ".join(texts(paper))
    assert plain(rows_of(schedule(ground("bare", language="es", starts_at=None)))[0].rows[0])[
        0
    ] == ("día 1")


def test_days_are_said_in_the_papers_language():
    assert "jue 14 may" in list(own_texts(schedule(ground(language="es"))))
    assert any("8:00 to 9:15" in one for one in own_texts(schedule(ground(units="metric"))))


def test_a_forecast_tells_the_days_of_the_house_as_it_tells_its_plan():
    """Damp still air slows each wait: the lock ends later than in mild days without weather."""
    facts = ground()
    start = datetime.fromisoformat(facts.job.starts_at)
    hours = 24 * 20
    damp = Forecast(start - timedelta(days=4), (16.0,) * hours, (74.0,) * hours, (0.5,) * hours)
    told = replace(facts, ground=replace(facts.ground, weather=damp))
    assert schedule(told).blocks[0].text != schedule(facts).blocks[0].text


def test_a_house_that_finds_no_days_gets_a_paper_that_says_so():
    frozen = replace(ground().job.survey, slab_c=2.0)
    paper = schedule(ground(survey=frozen))
    assert "No days were found" in paper.blocks[0].text
    assert rows_of(paper)[0].blank == 8
