"""More mix in mid-day: at a stop line or boxed, never two mixes seen side by side."""

import re
from dataclasses import replace

import pytest
from tests.midday import after, bands_of, day_of

from farwall.facts.so_far import SoFar
from farwall.job.more_mix import LEAST_BOX_L, MIXING_MIN
from farwall.job.replan import replan
from farwall.phrasebook import in_spanish

QUINCE = "quince-street"


def asked(name, **told):
    plan = day_of(QUINCE)
    return replan(plan, after(plan, name, **told)).more_mix


def test_as_planned_it_names_the_mix_that_the_morning_planned():
    """The plan has 10.35 L cut before the seventh field; the gate asks for no less."""
    plan = day_of(QUINCE)
    second = plan.mixes[1]
    found = asked("first.3.5")
    assert (found.before_field, found.how) == (second.fields[0], "boxed")
    assert found.litres == pytest.approx(second.stain_l + second.water_l, abs=0.1)


def test_in_the_last_field_it_names_the_next_look_and_what_does_to_go_on():
    plan = day_of(QUINCE)
    found = asked("first.8.3")
    assert (found.how, found.before_band) == ("look", plan.looks[0].band)
    assert 0 < found.latest_at_l < found.have_l


def test_once_enough_is_mixed_nothing_more_is():
    assert asked("first.8.14", tub_l=6.0, tank_l=3.0).how in {"look", "nothing"}
    assert asked("first.8.17", tub_l=3.0, tank_l=3.0).how == "nothing"


def test_a_thirstier_slab_is_learned_and_asks_for_more():
    likely, thirsty = asked("first.5.5"), asked("first.5.5", tub_l=6.0, tank_l=0.0)
    assert thirsty.litres > likely.litres + 1


def test_a_slab_that_drinks_less_asks_for_less():
    likely, lean = asked("first.5.5"), asked("first.5.5", tub_l=10.0, tank_l=2.0)
    assert lean.litres < likely.litres


def test_at_a_look_with_little_left_it_is_boxed_and_with_less_left_more_is():
    much, little = (asked("first.8.12", tub_l=tub, tank_l=1.0) for tub in (3.0, 2.5))
    assert (much.how, much.before_band) == ("boxed", "first.8.13")
    assert LEAST_BOX_L <= much.latest_at_l < much.have_l
    assert little.litres > much.litres
    assert "all that is left is poured into it" in much.why


def test_at_stop_lines_only_it_is_boxed_while_enough_is_left_and_says_the_last_moment():
    plan = replace(day_of(QUINCE), ways=())
    found = replan(plan, after(plan, "first.8.4", tub_l=5.0, tank_l=3.0)).more_mix
    assert found.how == "boxed"
    assert found.before_band.startswith("first.8.")
    assert found.latest_at_l >= LEAST_BOX_L
    assert found.latest_at_l < found.have_l
    assert "pour all that is left" in found.why


def test_at_a_look_with_too_little_left_to_box_it_says_no():
    found = asked("first.8.9", tub_l=1.0, tank_l=2.0)
    assert found.how == "no"
    assert "gone before a new one is mixed and boxed" in found.why


def test_too_late_to_be_boxed_it_refuses_a_fresh_mix_with_the_reason():
    found = asked("first.8.4", tub_l=0.0, tank_l=1.0)
    assert found.how == "no"
    assert "fresh mix against the wet edge" in found.why
    assert "the next line that hides a seam" in found.why


def test_alone_nobody_mixes_longer_than_the_edge_lives():
    plan = day_of(QUINCE)
    alone = replace(plan, inputs=replace(plan.inputs, crew=replace(plan.inputs.crew, helper=False)))
    fields = tuple(
        replace(f, open_time_min=replace(f.open_time_min, low=MIXING_MIN), open_times=())
        for f in alone.fields
    )
    alone = replace(alone, fields=fields)
    found = replan(alone, after(alone, "first.8.4", tub_l=5.0, tank_l=3.0)).more_mix
    assert found.how == "no"
    assert "outlive" in found.why


def test_two_mixes_are_never_seen_side_by_side():
    """Field 8 meets field 7 at a saw cut: with nothing left there is no new mix beside it."""
    found = asked("first.7.8", tub_l=0.0, tank_l=0.2)
    assert found.how == "no"
    assert "field 1.7" in found.why


def test_behind_a_closed_leaf_a_fresh_mix_may_do():
    found = asked("first.4.5", tub_l=0.0, tank_l=0.1)
    assert (found.how, found.before_field) == ("fresh", "first.5")


def test_before_a_field_that_is_seen_beside_it_is_mixed_while_some_is_left():
    """Enough for the field between and nothing after it: mixed before that, not beside field 7."""
    plan = day_of(QUINCE)
    need_l = sum(b.litres for b in bands_of(plan) if b.id.startswith("first.7."))
    found = asked("first.6.7", tub_l=1.35 * need_l - 1.0, tank_l=1.0)
    assert found.how == "boxed"
    assert found.latest_at_l >= LEAST_BOX_L


@pytest.mark.parametrize(
    ("band", "litres"),
    [("first.8.4", 1.0), ("first.8.9", 3.0), ("first.7.8", 0.2), ("first.4.5", 0.1),
     ("first.6.7", 20.0), ("first.1.2", 60.0)],
)  # fmt: skip
def test_whatever_is_told_has_its_spanish_and_gallons_beside_litres(band, litres):
    why = asked(band, tub_l=litres - 0.1, tank_l=0.1).why
    assert in_spanish(why) is not None, why
    assert len(re.findall(r"\d L\b", why)) == len(re.findall(r"gal \(\d+\.\d L\)", why))


def test_when_all_is_sprayed_nobody_mixes():
    plan = day_of(QUINCE)
    assert replan(plan, SoFar(at_min=bands_of(plan)[-1].end_min + 1)).more_mix is None


@pytest.mark.parametrize("name", ["first.2.4", "first.5.5", "first.8.4"])
def test_litres_are_such_as_can_be_measured_out(name):
    found = asked(name, tub_l=4.0, tank_l=2.0)
    assert found.litres == pytest.approx(round(found.litres, 1))
