"""Whole seal days: the examples, replayed; crossed coats; what says no, and says which."""

from __future__ import annotations

import functools
import json
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from tests.job.go.jobs import GOOD, moist
from tests.strategies.houses import house

from farwall.facts.checks import Watch
from farwall.facts.job import Crew
from farwall.facts.sealer import Sealer, SealTools
from farwall.job.house_days import begun_before
from farwall.job.plan_days import Ask, plan_days
from farwall.job.seal_day import seal_day
from farwall.job.seal_day.direction import CROSSED_DEG
from farwall.papers.seal_files import seal_document
from farwall.readers.any_weather import read_weather
from farwall.readers.job_json import job_from, read_job
from farwall.spray.check import check_plan

EXAMPLES = Path(__file__).resolve().parents[3] / "examples"
NAMES = ("quince-street", "sorrel-rise", "thistle-end")
ACRYLIC = Sealer(type="water acrylic", wet_edge_min=8, m2_per_l=10, coats=2)
CLEAN = Watch(rinse_ph=7.5, rag="clean")
START = datetime(2026, 5, 14, 8, tzinfo=UTC)
ROOMS = replace(GOOD, starts_at=START.isoformat(), sealer=ACRYLIC, watch=CLEAN)


@functools.cache
def day_of(name, *, told):
    job = read_job(EXAMPLES / name / "job.json")
    return seal_day(replace(job, sealer=ACRYLIC) if told else job)


def faults(day):
    """What the checker finds, from the text of the file on."""
    return check_plan(json.loads(json.dumps(seal_document(day.plan, day.sealing))))


CASES = [*((name, True) for name in NAMES), ("quince-street", False)]


@pytest.mark.parametrize(("name", "told"), CASES)
def test_the_examples_are_sealed_and_the_replay_finds_no_fault(name, told):
    """No wet sealer trodden, each square metre once a coat, no dead edge, nobody shut in."""
    day = day_of(name, told=told)
    assert day.sealing.verdict == "go with"
    assert {field.coat for field in day.plan.fields} == {"seal-1", "seal-2"}
    assert faults(day) == []


@pytest.mark.parametrize(("name", "room"), [("sorrel-rise", "Hall"), ("thistle-end", "Great")])
def test_a_large_open_floor_is_refused_for_a_sealer_nobody_named_and_says_where(name, room):
    """Its edge is then taken as the shortest of all, three minutes on a mild day: what is wide and
    has to be laid in one go is too much for it."""
    day = day_of(name, told=False)
    assert day.sealing.verdict == "no"
    assert all(one.startswith(f"Edge: in {room}") for one in day.sealing.against)
    assert {fault.code for fault in faults(day)} == {"dead-edge"}


@pytest.mark.parametrize("name", NAMES)
def test_coats_cross_where_they_say_so_and_say_why_where_not(name):
    for crossing in day_of(name, told=True).sealing.coats[1].crossings:
        if crossing.crossed:
            assert crossing.apart_deg >= CROSSED_DEG
            assert crossing.why == ""
        else:
            assert "turn the applicator instead" in crossing.why


@pytest.mark.parametrize(("name", "least"), [("quince-street", 6), ("sorrel-rise", 6),
                                             ("thistle-end", 5)])  # fmt: skip
def test_recorded_how_many_fields_of_the_examples_cross(name, least):
    """Recorded: plain rooms cross; halls with rooms off them, and edges that would die, do not."""
    crossings = day_of(name, told=True).sealing.coats[1].crossings
    assert sum(one.crossed for one in crossings) >= least


def test_the_second_coat_waits_for_the_late_end_and_beats_the_deadline():
    for name in NAMES:
        first, second = day_of(name, told=True).sealing.coats
        ends = datetime.fromisoformat(first.ends_at)
        begins = datetime.fromisoformat(second.begins_at)
        assert begins >= ends + timedelta(minutes=first.recoat.high_min - 1)
        deadline = timedelta(minutes=first.abrade.low_min)
        assert begins <= datetime.fromisoformat(first.begins_at) + deadline
        assert second.recoat is None


def test_a_stranger_may_check_the_file_and_an_edited_one_is_caught():
    day = day_of("thistle-end", told=True)
    document = json.loads(json.dumps(seal_document(day.plan, day.sealing)))
    document["fields"][0]["bands"][0]["path"][0][2] -= 30
    assert check_plan(document)


def test_litres_are_area_over_coverage_and_nothing_is_cut_with_water():
    """By hand: two rooms of 12 m² at 10 m²/L, 2.4 L and the overlap; all of it sealer."""
    day = seal_day(ROOMS)
    for coat in day.sealing.coats:
        assert 2.4 <= coat.likely_l <= 2.4 * 1.2
        assert coat.likely_l < coat.open_l <= coat.ready_l
        held = sum(one["size_l"] * one["count"] for one in coat.open_containers)
        assert held > 0 or coat.coat != "seal-1"
    assert all(mix.water_l == 0 and mix.acid_l == 0 for mix in day.plan.mixes)
    assert {coat.cut for coat in day.plan.inputs.coats} == {"neat"}


def test_clean_and_dry_is_a_go():
    day = seal_day(ROOMS)
    assert day.sealing.verdict == "go"
    assert day.sealing.reasons == ()


@pytest.mark.parametrize(
    ("watch", "code"),
    [
        (Watch(rinse_ph=5.5, rag="clean"), "not neutralised"),
        (Watch(rinse_ph=10.5, rag="clean"), "pH"),
        (Watch(rinse_ph=7.5, rag="dirty"), "residue"),
    ],
)
def test_stain_that_is_not_neutralised_or_clean_is_never_sealed(watch, code):
    day = seal_day(replace(ROOMS, watch=watch))
    assert day.sealing.verdict == "no"
    assert day.sealing.reasons[0].code == code
    assert {field.verdict for field in day.plan.fields} == {"cannot"}
    assert day.sealing.reasons[0].what in day.plan.fields[0].remedies[0].what
    assert faults(day) == []


def test_the_sealers_own_sheet_moves_the_limit_of_ph():
    told = replace(ACRYLIC, least_ph=5.0, most_ph=11.0)
    low = seal_day(replace(ROOMS, sealer=told, watch=Watch(rinse_ph=5.5, rag="clean")))
    assert low.sealing.verdict == "go"


@pytest.mark.parametrize(("kind", "read"), [("meter", {"meter": "wet"}),
                                            ("F2170", {"slab_rh_percent": 95})])  # fmt: skip
def test_a_damp_slab_is_not_sealed(kind, read):
    job = replace(moist(kind, **read), starts_at=START.isoformat(), sealer=ACRYLIC, watch=CLEAN)
    assert seal_day(job).sealing.verdict == "no"


def test_a_recoat_window_that_is_too_short_says_no_and_which():
    job = replace(ROOMS, sealer=replace(ACRYLIC, recoat_from_h=6, recoat_to_h=6.5))
    day = seal_day(job)
    assert day.sealing.verdict == "no"
    assert "Recoat window too short" in day.sealing.against[0]
    assert {field.verdict for field in day.plan.fields} == {"cannot"}


def test_an_edge_that_nobody_can_meet_says_no_and_where():
    slow = replace(ACRYLIC, wet_edge_min=0.3, tools=SealTools(lay_m2_min=0.5))
    day = seal_day(replace(ROOMS, sealer=slow, crew=Crew(1, helper=True)))
    assert day.sealing.verdict == "no"
    assert "it lives 0.3" in day.sealing.against[0]


def forecast(tmp_path, rh_at, *, air_c=21.0, days=13):
    rows = ["time,air_c,rh_percent,wind_m_s"]
    for n in range(-24, 24 * days):
        moment = START + timedelta(hours=n)
        rows.append(f"{moment.isoformat()},{air_c},{rh_at(moment)},2")
    path = tmp_path / "forecast.csv"
    path.write_text("\n".join(rows) + "\n")
    return read_weather(path)


def test_weather_that_sweats_says_no_and_says_dew(tmp_path):
    day = seal_day(ROOMS, weather=forecast(tmp_path, lambda _: 95))
    assert day.sealing.verdict == "no"
    assert any("dew" in one or "damp air" in one for one in day.sealing.against)


def test_good_weather_is_sealed_after_the_late_end_of_the_dry_down(tmp_path):
    day = seal_day(ROOMS, weather=forecast(tmp_path, lambda _: 45))
    dried = day.sealing.dried_down
    begins = datetime.fromisoformat(day.sealing.coats[0].begins_at)
    assert begins >= datetime.fromisoformat(dried.at_high) - timedelta(minutes=1)
    assert day.sealing.verdict == "go"
    assert faults(day) == []


def test_a_floor_told_as_dry_is_sealed_from_then_on_and_says_what_its_clock_said(tmp_path):
    weather = forecast(tmp_path, lambda _: 45)
    told = START + timedelta(hours=6)
    day = seal_day(ROOMS, weather=weather, from_at=told)
    begins = datetime.fromisoformat(day.sealing.coats[0].begins_at)
    assert told <= begins < told + timedelta(hours=24)
    assert day.sealing.dried_down.asked_from
    assert any("before the late end of its clock" in one for one in day.plan.warnings)


@pytest.mark.parametrize(
    "name",
    ["USA_AZ_Davis-Monthan.AFB.722745_TMY3.epw", "USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw",
     "USA_TX_Houston.722430_TMY2_32field.epw"],
)  # fmt: skip
def test_real_weather_keeps_to_its_windows(shared, name):
    """Whatever it says: a go lies in hours that are not refused, a no names its reason."""
    weather = read_weather(shared(f"data/weather/{name}"))
    job = replace(ROOMS, starts_at="2026-05-14T08:00:00-06:00")
    day = seal_day(job, weather=weather)
    if day.sealing.verdict == "no":
        assert day.sealing.against
    else:
        assert all(one.word != "no" for one in day.sealing.coats)
        assert faults(day) == []
    assert {one.word for one in day.sealing.windows} <= {"go", "care", "no"}


def _days(day):
    return [datetime.fromisoformat(one.begins_at).strftime("%a") for one in day.sealing.coats]


def test_a_floor_dry_on_a_saturday_is_sealed_on_monday_as_the_calendar_has_it():
    """Before, the seal sheet said Saturday and Sunday, and the schedule Monday and Tuesday."""
    told = replace(
        ROOMS, starts_at="2026-05-12T08:00:00-06:00", sealer=replace(ACRYLIC, recoat_from_h=12)
    )
    day = seal_day(told)
    assert datetime.fromisoformat(day.sealing.dried_down.not_before).strftime("%a") == "Sat"
    assert _days(day) == ["Mon", "Tue"]
    assert faults(day) == []


@pytest.mark.parametrize("day", range(3, 8))
def test_the_day_of_the_seal_sheet_lies_within_the_span_of_the_calendar(day):
    """The calendar counts on the likely end of drying, the seal sheet on the late one: whatever
    weekday the coats are laid on, the sheet's day is one that the calendar has told."""
    job = read_job(EXAMPLES / "quince-street" / "job.json")
    told = replace(job, starts_at=f"2027-05-0{day}T07:30:00-06:00", sealer=ACRYLIC)
    answer = plan_days([told], begun_before(told, Ask()))
    step = next(one for one in answer.document["houses"][0]["steps"] if one["id"] == "seal-1")
    coat = seal_day(told).sealing.coats[0]
    assert step["ends_low_at"][:10] <= coat.ends_at[:10] <= step["ends_high_at"][:10]


def test_who_names_a_saturday_works_on_it():
    day = seal_day(ROOMS, from_at=datetime.fromisoformat("2026-05-16T07:30:00-06:00"))
    assert _days(day)[0] == "Sat"


@pytest.mark.parametrize("seed", [1, 5])
def test_generated_houses_are_replayed_without_a_trodden_coat(seed):
    """A law for every house: whatever does not fit is said; nobody steps on wet sealer."""
    day = seal_day(replace(job_from(house(seed), about="house"), sealer=ACRYLIC))
    codes = {fault.code for fault in faults(day)}
    assert not codes & {"trodden", "missed", "twice", "shut-in", "not-dry", "wall", "edited"}
    if codes:
        assert day.sealing.verdict == "no"


def test_narrower_bands_are_told_in_the_units_of_the_job():
    """Sorrel Rise wishes for feet: its seal sheet said 0.64 m (2' 1")."""
    job = read_job(EXAMPLES / "sorrel-rise" / "job.json")
    for units, own in (("us", "bands of 2' 1\" (0.64 m)"), ("metric", "bands of 0.64 m (2' 1\")")):
        day = seal_day(replace(job, wishes=replace(job.wishes, units=units)))
        told = [one.what for field in day.plan.fields for one in field.remedies]
        assert any(own in one for one in told), (units, told)
