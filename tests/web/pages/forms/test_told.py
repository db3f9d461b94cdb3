"""What is typed is kept and comes back the same; what the form does not show is not touched."""

import copy
import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.web.pages.office import two_rooms

from farwall.facts.job import Survey
from farwall.floor.geojson import floor_collection
from farwall.readers.job_json import job_from
from farwall.readers.shape import keys_of
from farwall.web.pages.forms.asked import asked_of
from farwall.web.pages.forms.crew import CREW, FIRST
from farwall.web.pages.forms.measures import FEET
from farwall.web.pages.forms.samples import SAMPLES
from farwall.web.pages.forms.survey import SURVEY
from farwall.web.pages.forms.told import Wrong, changed_facts

FORMS = {"survey": SURVEY, "samples": SAMPLES, "crew": CREW, "first": FIRST}
WINDOW = {"line": [[0, 1], [0, 2]], "room": "front", "sill_m": 0.9}
FACTS = two_rooms(
    survey={"slab_f": 68, "moisture": [{"kind": "meter", "meter": "even"}], "drop_s": 9.5},
    samples=[{"id": "closet", "ft2_per_gal": 190, "sheen_loss_min": 9}],
    stains=[{"id": "light", "name": "light earth"}, {"id": "dark", "name": "dark earth"}],
    coats=[{"id": "first", "stain": "light", "cut": "1:1"},
           {"id": "second", "stain": "dark", "cut": "1:2"}],
    tools={"tank_gal": 2, "band_m": 1.1},
    prices={"containers": [{"size_gal": 1, "price": "60.00"}]},
    sealer={"type": "water acrylic"}, wishes={"notes": "mind the step", "order": ["back"]},
)  # fmt: skip
FACTS["floor"]["windows"] = [WINDOW]
SMALL = {"percent": "12", "ph": "9", "days": "40", "deg": "20"}


def facts_in(units):
    found = copy.deepcopy(FACTS)
    found["wishes"]["units"] = units
    return found


def typed_of(asked):
    return {one.name: asked.text(one) for one in asked.fields()}


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("name", FORMS)
def test_a_form_sent_as_it_stood_changes_nothing(name, units):
    facts = facts_in(units)
    asked = asked_of(FORMS[name], facts)
    assert changed_facts(asked, facts, typed_of(asked)) is None


def answers(draw, asked, field):
    """Something that may be typed into a blank."""
    hint = field.hint
    if field.blank.of:
        return draw(st.sampled_from([one for one, _ in asked.choices(field.blank.of)]))
    if hint.kind in {"choice", "yes-no"}:
        return {True: "yes", False: "no"}.get(value := draw(st.sampled_from(hint.choices)), value)
    if hint.kind == "moment":
        return "2026-06-09T07:30"
    key = str(field.path[-1])
    if hint.kind == "whole":
        return "2"
    if hint.kind == "number":
        if key.endswith("_high"):
            return "14"
        return SMALL.get(key.rpartition("_")[2]) or draw(st.sampled_from(["1", "1.5", "1.25"]))
    return {"cut": "1:3", "currency": "EUR", "price": "62.50", "time_zone": "UTC"}.get(
        key, draw(st.sampled_from(["a word", "two, words"]))
    )


def tried(asked, facts, typed):
    """The changed facts, or none and what is wrong."""
    try:
        return changed_facts(asked, facts, typed), ()
    except Wrong as error:
        return None, error.slips


WARM = {"slab_c": {"us": "68", "metric": "20.5"}, "air_c": {"us": "71.5", "metric": "21"}}


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_what_is_typed_and_kept_comes_back_the_same_and_the_rest_is_as_it_was(data):
    units = data.draw(st.sampled_from(["us", "metric"]))
    form = FORMS[data.draw(st.sampled_from(["survey", "samples", "crew"]))]
    facts = facts_in(units)
    asked = asked_of(form, facts)
    fields = [
        one for one in asked.fields()
        if "patches" not in one.name and one.path[-1] not in {"id", "kind", "patched", "units"}
        and not (one.path[0] in {"samples", "coats", "stains"} and one.path[1] > 0)
        and one.path[:2] not in {("survey", "moisture"), ("prices", "containers")}
    ]  # fmt: skip
    some = data.draw(st.lists(st.sampled_from(fields), min_size=1, max_size=6, unique=True))
    typed = {}
    for one in some:
        warm = WARM.get(str(one.path[-1]))
        typed[one.name] = warm[units] if warm else answers(data.draw, asked, one)
    if "place.latitude_deg" in typed or "place.longitude_deg" in typed:
        typed |= {"place.latitude_deg": "41.5", "place.longitude_deg": "-93"}
    if "place.time_zone" in typed:
        typed.pop("starts_at", None)
    before = copy.deepcopy(facts)
    changed, slips = tried(asked, facts, typed)
    assert facts == before
    # What two sentences of a row make together (acid into a chromate stain) is told at its name.
    assert all(slip.name in typed or slip.name.endswith(".id") for slip in slips)
    if slips:  # such as a band of 1.5 in
        return
    if changed is None:
        changed = facts
    again = asked_of(form, changed)
    shown = typed_of(again)
    measures = {one.name: one.measure for one in some}
    for name, text in typed.items():
        if measures.get(name) is FEET and text != shown[name]:  # by the marks of a tape
            assert FEET.si(shown[name], units) == pytest.approx(FEET.si(text, units))
        else:
            assert shown[name] == text
    told = set(typed)
    held = {name: text for name, text in typed_of(asked).items() if name not in told}
    assert {name: shown[name] for name in held if name in shown} == held
    assert changed["sealer"] == before["sealer"]
    assert changed["wishes"]["order"] == before["wishes"]["order"]
    assert changed["floor"]["rooms"] == before["floor"]["rooms"]


def test_a_twin_is_replaced_by_what_is_typed():
    asked = asked_of(CREW, FACTS)
    changed = changed_facts(asked, FACTS, {"tools.tank_l": "3"})
    assert "tank_gal" not in changed["tools"]
    assert changed["tools"]["tank_l"] == pytest.approx(11.356, abs=1e-3)
    assert FACTS["tools"]["tank_gal"] == 2


def test_an_emptied_blank_is_no_longer_told():
    asked = asked_of(SURVEY, FACTS)
    changed = changed_facts(asked, FACTS, {"survey.slab_c": "", "survey.drop_s": " "})
    assert not {"slab_c", "slab_f", "drop_s"} & set(changed["survey"])


def test_all_mistakes_come_at_once_each_with_its_blank():
    asked = asked_of(SURVEY, FACTS)
    with pytest.raises(Wrong) as wrong:
        changed_facts(asked, FACTS, {
            "survey.slab_c": "warm", "survey.rh_percent": "140", "survey.pours": "1.5",
            "survey.film": "butter", "survey.rooms.1.drop_s": "-3",
        })  # fmt: skip
    told = {slip.name: slip.what for slip in wrong.value.slips}
    assert set(told) == {
        "survey.slab_c", "survey.rh_percent", "survey.pours", "survey.film",
        "survey.rooms.1.drop_s",
    }  # fmt: skip
    assert "0 to 100 %" in told["survey.rh_percent"]
    assert "warm" in told["survey.slab_c"]


@pytest.mark.parametrize(
    ("form", "name", "typed", "said"),
    [
        ("crew", "crew.sprayers", "9", "“9” is out of range: 1 to 2."),
        ("crew", "tools.tank_l", "300", "“300” is out of range: 0.0264 to 52.83 gal."),
    ],
)
def test_a_figure_out_of_range_says_what_would_do(form, name, typed, said):
    asked = asked_of(FORMS[form], FACTS)
    _, slips = tried(asked, FACTS, {name: typed})
    told = [slip.what for slip in slips if slip.name == name]
    assert told == [f"{said} Check the figure and its unit."]


def test_what_the_reader_of_jobs_has_against_the_whole_stands_beside_its_blank():
    asked = asked_of(SAMPLES, FACTS)
    with pytest.raises(Wrong) as wrong:
        changed_facts(asked, FACTS, {"coats.0.cut": "one to two", "stains.0.hcl_percent_low": "20",
                                     "stains.0.hcl_percent_high": "10"})  # fmt: skip
    names = {slip.name for slip in wrong.value.slips}
    assert "coats.0.cut" in names
    assert any(name.startswith("stains.0") for name in names)


def test_a_new_row_is_added_with_a_name_of_its_own_and_rows_are_taken_away():
    asked = asked_of(SAMPLES, FACTS)
    changed = changed_facts(asked, FACTS, {"samples.1.sheen_loss_min": "12", "samples.1.id": ""})
    assert changed["samples"][1] == {"sheen_loss_min": 12, "id": "sample-1"}
    asked = asked_of(SAMPLES, changed)
    less = changed_facts(asked, changed, {"samples.0.away": "yes"})
    assert [one["id"] for one in less["samples"]] == ["sample-1"]


def test_an_empty_new_row_is_no_row_and_one_without_what_it_must_have_is_refused():
    asked = asked_of(SAMPLES, FACTS)
    assert changed_facts(asked, FACTS, {"prices.containers.1.size_l": " "}) is None
    with pytest.raises(Wrong) as wrong:
        changed_facts(asked, FACTS, {"prices.containers.1.size_l": "5",
                                     "prices.containers.1.price": ""})  # fmt: skip
    assert [slip.name for slip in wrong.value.slips] == ["prices.containers.1.price"]


@pytest.mark.parametrize(("typed", "kept"), [("$1,250.00", "1250.00"), ("62,5", "62.5")])
def test_a_price_is_kept_as_text(typed, kept):
    asked = asked_of(SAMPLES, FACTS)
    changed = changed_facts(asked, FACTS, {"prices.containers.0.price": typed})
    assert changed["prices"]["containers"][0]["price"] == kept


def test_a_start_takes_the_offset_of_the_zone_of_the_house():
    facts = two_rooms(place={"time_zone": "America/Chicago"})
    del facts["starts_at"]
    changed = changed_facts(asked_of(CREW, facts), facts, {"starts_at": "2026-07-01T08:00"})
    assert changed["starts_at"] == "2026-07-01T08:00:00-05:00"


def test_windows_of_a_collection_of_features_are_told_too():
    job = job_from(FACTS, "the facts")
    collection = json.loads(json.dumps(floor_collection(job.floor, job.exits)))
    facts = {**FACTS, "floor": collection}
    changed = changed_facts(asked_of(SURVEY, facts), facts, {"floor.windows.0.height_m": "4"})
    again = job_from(changed, "the changed facts")
    assert again.floor.windows[0].height_m == pytest.approx(1.2192)
    assert again.floor.rooms == job.floor.rooms
    assert again.exits == job.exits


def test_every_key_of_the_survey_has_its_blank():
    facts = copy.deepcopy(FACTS)
    facts["survey"]["patches"] = [{"id": "p", "room": "front"}]
    named = {
        one.path[1]
        for form in (SURVEY, SAMPLES)
        for one in asked_of(form, facts).fields()
        if one.path[0] == "survey"
    }
    assert named == set(keys_of(Survey))


def test_lines_of_a_note_are_kept_as_lines_whatever_the_browser_ends_them_by():
    facts = facts_in("us")
    asked = asked_of(CREW, facts)
    typed = typed_of(asked) | {"wishes.notes": "mind the step\r\nkey under the mat\r\n"}
    changed = changed_facts(asked, facts, typed)
    assert changed["wishes"]["notes"] == "mind the step\nkey under the mat"
