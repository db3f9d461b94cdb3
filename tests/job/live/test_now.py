"""What to do now: numbers move as they should, and back again when an entry is struck."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.story.entries import Log
from tests.midday import EXAMPLES, day_of

from farwall.facts.log_words import WORDS
from farwall.facts.plain import plain
from farwall.job.live import now
from farwall.job.live.again import so_far_of
from farwall.job.live.job_of_plan import job_of_plan
from farwall.job.live.now import chance_short, chances_of
from farwall.job.live.say import MOST_LINES, said_now
from farwall.job.replan import replan
from farwall.job.story import story
from farwall.readers.job_json import read_job

PLAN = day_of("quince-street")
JOB = read_job(EXAMPLES / "quince-street" / "job.json")


def at(log, minute, plan=PLAN, job=JOB):
    return now(job, plan, story(plan, log.kept), at_min=minute)


def morning(factor=1.0, fields=4):
    """The first fields as planned but for the thirst; tub and tank told at each stop line."""
    log = Log(PLAN)
    log("mixed", -10, coat="first", litres=34.5)
    left = 34.5
    for field in PLAN.fields[:fields]:
        left -= sum(band.litres for band in field.bands) * factor
        log("field-started", field.start_min, field=field.id)
        log("field-done", field.end_min, field=field.id, tub_l=round(left, 3), tank_l=0.0)
    return log


def test_as_planned_nothing_moves():
    found = at(morning(), 16.4)
    assert found.drunk.factor == pytest.approx(1.0, abs=0.005)
    assert (found.fields_done, found.fields_left, found.band) == (4, 4, "first.5.1")
    assert (found.more_mix.how, found.more_mix.before_field) == ("look", "first.8")


def test_more_drunk_than_planned_asks_for_more_and_less_for_less():
    lean, likely, thirsty = (at(morning(f), 16.4) for f in (0.85, 1.0, 1.25))
    assert lean.drunk.factor < 0.95
    assert 1.1 < thirsty.drunk.factor < 1.25
    assert lean.more_mix.litres == likely.more_mix.litres == 0 < thirsty.more_mix.litres - 5
    assert lean.more_mix.latest_at_l < likely.more_mix.latest_at_l
    assert thirsty.drunk.seen_factor == pytest.approx(1.25, abs=1e-3)


def test_a_struck_entry_is_as_if_it_had_never_been():
    log = morning()
    before = at(log, 16.4)
    log("tank-weighed", 16.35, tub_l=12.0, tank_l=0.0)
    thirsty = at(log, 16.4)
    assert thirsty.more_mix.litres > before.more_mix.litres + 3
    assert thirsty.drunk.factor > before.drunk.factor + 0.1
    log("struck", 16.38, entry=log.kept[-1].entry.id)
    after = at(log, 16.4)
    assert (after.more_mix, after.drunk, after.in_hand, after.start_if) == (
        before.more_mix, before.drunk, before.in_hand, before.start_if
    )  # fmt: skip


def test_a_tank_in_the_first_open_field_teaches_already():
    """Half of field 8 took a quarter more than planned: no field of it is done, and still."""
    log = Log(PLAN)
    log("mixed", -10, coat="first", litres=20.0)
    big = PLAN.fields[7]
    half = big.bands[:9]
    used = 1.25 * sum(band.litres for band in half)
    log("field-started", 0, field=big.id)
    log("band-done", 9, band=half[-1].id, tub_l=20.0 - used, tank_l=0.0)
    assert 1.05 < at(log, 9.1).drunk.factor < 1.25


def test_damp_at_three_hours_puts_the_clock_later_and_dry_early_puts_it_sooner():
    log = Log(PLAN)
    log("coat-done", 65, coat="first")
    before = at(log, 66).waits[0]
    assert not before.moved
    log("still-damp", 65 + 180, room="great-room")
    damp = at(log, 246).waits[0]
    assert damp.clock.low_min >= 180.0 > before.clock.low_min
    assert damp.clock.likely_min > before.clock.likely_min + 30
    assert damp.clock.rank == "learned"
    # what lies before the look is cut away: no end before it, and the ends stay in order
    assert 180 < damp.clock.low_min < damp.clock.likely_min < damp.clock.high_min
    early = Log(PLAN)
    early("coat-done", 65, coat="first")
    early("dry", 65 + 80, room="great-room")
    assert at(early, 146).waits[0].clock.likely_min < before.clock.likely_min - 30


def test_a_sheen_lost_soon_shortens_the_edge_and_a_long_one_never_lengthens_it():
    field = PLAN.fields[2]
    budgets = {}
    for minutes in (4.0, 30.0):
        log = morning(fields=3)
        log("sheen-lost", field.end_min + minutes, room="bed-3", after_min=minutes)
        budgets[minutes] = at(log, field.end_min + 31).open_low_min
    assert budgets[4.0] < field.open_time_min.low
    assert budgets[30.0] == field.open_time_min.low


@pytest.mark.parametrize(("number", "band"), [(7, 6), (7, 12), (5, 3), (6, 4)])
def test_the_edge_is_dead_when_the_replan_says_so_and_alive_just_before(number, band):
    """The quick figure against the whole re-plan, which ages every edge by true minutes."""
    log = morning(fields=number)
    field = PLAN.fields[number]
    last = field.bands[band - 1]
    log("field-started", field.start_min, field=field.id)
    log("band-done", last.end_min, band=last.id)
    edge = next(a for a in at(log, last.end_min + 0.1).alarms if a.kind == "edge")
    told = story(PLAN, log.kept)

    def verdict(minute):
        again = replan(PLAN, replace(so_far_of(PLAN, told, at_min=minute), tank_l=None,
                                     tub_l=None, mixed_l=None))  # fmt: skip
        return next(f for f in again.fields if f.id == field.id).verdict

    assert verdict(edge.at_min - 0.5) != "cannot"
    assert verdict(edge.at_min + 0.5) == "cannot"


def test_while_a_field_is_open_an_edge_is_always_named():
    """Also where the oldest edge of every band to come lies in that band, as in the bath."""
    for field in PLAN.fields[:8]:
        for band in field.bands[:-1]:
            log = Log(PLAN)
            log("band-done", band.end_min, band=band.id)
            alarms = [one for one in at(log, band.end_min).alarms if one.kind == "edge"]
            assert alarms, band.id
            assert alarms[0].at_min > band.end_min


def test_an_edge_left_too_long_stops_everything():
    log = morning(fields=7)
    last = PLAN.fields[7].bands[5]
    log("band-done", last.end_min, band=last.id)
    found = at(log, last.end_min + 15)
    assert found.stops[0].rule == "dead edge"
    assert said_now(PLAN, found).splitlines()[0].startswith("NOW 9:03 am: STOP. Stop and feather")


def test_an_edge_of_hours_ago_asks_for_what_is_missing_and_stops_nothing():
    log = morning(fields=7)
    last = PLAN.fields[7].bands[5]
    log("band-done", last.end_min, band=last.id)
    found = at(log, last.end_min + 120)
    assert found.stops == ()
    assert "enter what was sprayed since" in said_now(PLAN, found).splitlines()[0]


def test_the_tank_is_told_empty_where_the_bands_to_come_empty_it():
    log = morning(fields=4)
    field = PLAN.fields[4]
    log("filled", 16.5, litres=3.0, tank_l=3.0)
    log("field-started", 16.53, field=field.id)
    log("band-done", field.bands[0].end_min, band=field.bands[0].id, tank_l=1.0)
    tank = next(a for a in at(log, field.bands[0].end_min).alarms if a.kind == "tank")
    left, litres = field.bands[1:], 0.0
    dry = next(b for b in left if (litres := litres + b.litres) > 1.0)
    assert dry.start_min - 0.5 <= tank.at_min <= dry.end_min + 0.01


def test_a_closed_room_is_passed_over_and_told_when_it_is_the_only_one():
    log = morning()
    log("room-closed", 16.35, room="bed-2", until="8:50")
    found = at(log, 16.4)
    assert found.start_if.field == "first.6"
    assert ("room", 50.0) in [(a.kind, a.at_min) for a in found.alarms]
    for room in ("bed-1", "great-room"):
        log("room-closed", 16.36, room=room)
    found = at(log, 16.4)
    assert found.start_if.field == "first.5"
    assert not found.start_if.open


def test_the_gate_asks_for_more_than_the_likely_litres_and_shuts_when_less_is_there():
    shut = Log(PLAN)
    shut("mixed", -10, coat="first", litres=3.0)
    shut("field-done", 1.8, field="first.1", tub_l=2.0, tank_l=0.0)
    found = at(shut, 2)
    mix = next(c for c in found.start_if.conditions if c.what == "mix")
    assert mix.holds is False
    assert found.more_mix.before_field == "first.2"
    assert found.more_mix.litres > 1.0


def test_a_second_coat_waits_until_the_first_was_found_dry():
    log = Log(PLAN)
    log("coat-done", 65, coat="first")

    def below(minute):
        return next(c for c in at(log, minute).start_if.conditions if c.what == "coat below").holds

    assert below(66) is False
    assert below(350) is None
    log("still-damp", 351)
    assert below(352) is False
    log("dry", 380)
    assert below(381) is True


def test_a_room_of_the_second_sprayer_changes_nothing_of_the_quick_answer():
    two = [replace(b, sprayer=2) if n % 2 else b for n, b in enumerate(PLAN.fields[7].bands)]
    plan = replace(PLAN, fields=(*PLAN.fields[:7], replace(PLAN.fields[7], bands=tuple(two)),
                                 *PLAN.fields[8:]))  # fmt: skip
    log = morning()
    found = at(log, 16.4, plan=plan)
    assert found.start_if.field == "first.5"
    assert found.more_mix.have_l > 0


def test_a_plan_without_its_job_still_has_its_clocks():
    log = Log(PLAN)
    log("coat-done", 65, coat="first")
    log("still-damp", 65 + 180)
    with_job, without = at(log, 246), at(log, 246, job=job_of_plan(PLAN))
    assert without.waits[0].clock.likely_min == pytest.approx(
        with_job.waits[0].clock.likely_min, rel=0.02
    )


def test_all_of_it_is_plain_json():
    assert plain(at(morning(), 17))["start_if"]["field"] == "first.5"


BANDS = [b.id for f in PLAN.fields for b in f.bands]
_IDS = {
    "field": [f.id for f in PLAN.fields], "band": BANDS, "coat": ["first", "second"],
    "room": [r.id for r in PLAN.inputs.floor.rooms], "entry": [f"phone-{n:04d}" for n in range(9)],
}  # fmt: skip


@st.composite
def any_told(draw):
    word = WORDS[draw(st.sampled_from(sorted(WORDS)))]
    about = {}
    for one in [*word.must, *[each for each in word.may if draw(st.booleans())]]:
        if one.kind in _IDS:
            about[one.key] = draw(st.sampled_from(_IDS[one.kind]))
        elif one.kind in {"text", "hash", "choice"}:
            about[one.key] = draw(st.sampled_from(one.choices or ("8:40", "x")))
        elif one.kind == "yes":
            about[one.key] = draw(st.booleans())
        elif one.kind != "rooms":
            about[one.key] = draw(st.floats(0, 60).map(lambda x: round(x, 3)))
    return word.name, draw(st.floats(-60, 3000)), about


@settings(max_examples=60, deadline=None)
@given(st.lists(any_told(), max_size=14), st.floats(-60, 5000))
def test_whatever_is_entered_there_is_an_answer_of_at_most_ten_lines(told, minute):
    log = Log(PLAN)
    for word, when, about in told:
        log(word, when, counted=0, **about)
    found = at(log, minute)
    lines = said_now(PLAN, found, again="x").splitlines()
    assert 0 < len(lines) <= MOST_LINES
    assert lines[0].startswith("NOW ")


@pytest.mark.parametrize(
    ("units", "hour", "slab", "have"),
    [("us", "NOW 8:16 am:", "slab from 50 to 85 °F (10 to 29 °C); 6", " gal ("),
     ("metric", "NOW 8:16:", "slab from 10 to 29 °C (50 to 85 °F); 2", " L (")],
)  # fmt: skip
def test_hours_volumes_and_degrees_are_told_in_the_manner_of_the_job(units, hour, slab, have):
    job = replace(JOB, wishes=replace(JOB.wishes, units=units))
    found = at(morning(1.25), 16.4, job=job)
    told = said_now(PLAN, found)
    assert told.startswith(hour)
    texts = {one.what: one.text for one in found.start_if.conditions}
    assert texts["slab"].startswith(slab)
    assert have in texts["mix"].split(" in tub")[0]
    assert have in told.split("In tub and tank: ")[1].splitlines()[0]


def test_an_edge_that_must_be_met_names_its_bands_by_number():
    log = Log(PLAN)
    log("band-done", 1.0, band="first.1.1")
    found = at(log, 2.0)
    edge = next(one for one in found.alarms if one.kind == "edge")
    assert edge.what == "begin band 1.1.2 by then, or the edge that 1.1.2 meets is dead"


@pytest.mark.parametrize(
    ("verdict", "helper", "begins"),
    [("fits", False, True), ("helper", True, True), ("helper", False, False),
     ("two", True, False), ("stop-line", True, False), ("cannot", True, False)],
)  # fmt: skip
def test_a_field_that_must_be_planned_again_is_waited_with(verdict, helper, begins):
    """As its page on the run sheet, and the phone, say NO; once this said *begin*."""
    fields = tuple(
        replace(one, verdict=verdict) if one.id == "first.5" else one for one in PLAN.fields
    )
    crew = replace(PLAN.inputs.crew, helper=helper)
    plan = replace(PLAN, fields=fields, inputs=replace(PLAN.inputs, crew=crew))
    found = at(morning(), 17, plan=plan)
    assert found.start_if.field == "first.5"
    assert [one.what for one in found.start_if.conditions if one.holds is False] == (
        [] if begins else ["plan"]
    )
    said = said_now(plan, found)
    assert ("begin field 1.5" in said) is begins
    assert ("its page says NO" in said) is not begins


def test_each_field_has_the_chance_of_running_dry_that_its_gate_was_given_by_hand():
    """By hand: 1 % for two coats are 0.5 % for one; 99.8 % certain, 0.1 %."""
    assert chance_short(replace(PLAN, buying=None)) == pytest.approx(0.005)
    sure = replace(PLAN, buying={"certainty_percent": 99.8})
    assert chance_short(sure) == pytest.approx(0.001)
    gate = {"field": "first.2", "chance_dry": 0.0004}
    other = {"field": "second.2", "chance_dry": 0.5}
    found = chances_of(replace(PLAN, buying={"gates": [gate, other]}), "first")
    assert found["first.2"] == 0.0004
    assert set(found) == {field.id for field in PLAN.fields if field.coat == "first"}
    shared = chances_of(replace(PLAN, buying=None), "first")
    assert min(shared.values()) > 0
    assert sum(shared.values()) <= 0.005 + 1e-12


def test_the_first_batch_is_told_until_something_is_mixed_or_sprayed():
    made = next(one for one in PLAN.mixes if one.coat == "first")
    first = at(Log(PLAN), 0).first_batch
    assert first.litres == pytest.approx(made.stain_l + made.water_l + made.acid_l)
    mixed = Log(PLAN)
    mixed("mixed", -10, coat="first", litres=20.0)
    assert at(mixed, 0).first_batch is None
    begun = Log(PLAN)
    begun("field-started", 0.5, field="first.1")
    assert at(begun, 0.6).first_batch is None
