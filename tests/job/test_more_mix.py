"""More mix in mid-day: at a stop line or boxed, never two mixes seen side by side."""

import pytest
from tests.midday import after, bands_of, day_of

from farwall.facts.so_far import SoFar
from farwall.job.more_mix import LEAST_BOX_L, MIXING_MIN
from farwall.job.replan import replan

QUINCE = "quince-street"


def asked(name, **told):
    plan = day_of(QUINCE)
    return replan(plan, after(plan, name, **told)).more_mix


def test_as_planned_it_names_the_mix_that_the_morning_planned():
    """The plan has 2.36 L cut before the last field; the gate asks for no less."""
    plan = day_of(QUINCE)
    second = plan.mixes[1]
    found = asked("first.3.5")
    assert (found.before_field, found.how) == ("first.8", "boxed")
    assert found.litres >= second.stain_l + second.water_l


def test_once_that_is_mixed_nothing_more_is():
    assert asked("first.8.3").how == "nothing"


def test_a_thirstier_slab_is_learned_and_asks_for_more():
    likely, thirsty = asked("first.5.5"), asked("first.5.5", tub_l=15.0, tank_l=0.0)
    assert thirsty.litres > likely.litres + 1


def test_a_slab_that_drinks_less_asks_for_less():
    likely, lean = asked("first.5.5"), asked("first.5.5", tub_l=20.0, tank_l=7.0)
    assert lean.litres < likely.litres


def test_in_mid_field_it_is_boxed_while_enough_is_left_and_says_the_last_moment():
    found = asked("first.8.4", tub_l=5.0, tank_l=3.0)
    assert found.how == "boxed"
    assert found.before_band.startswith("first.8.")
    assert found.latest_at_l >= LEAST_BOX_L
    assert found.latest_at_l < found.have_l
    assert "pour all that is left" in found.why


def test_too_late_to_be_boxed_it_refuses_a_fresh_mix_with_the_reason():
    found = asked("first.8.4", tub_l=0.0, tank_l=1.0)
    assert found.how == "no"
    assert "fresh mix against the wet edge" in found.why
    assert "farwall stop" in found.why


def test_alone_nobody_mixes_longer_than_the_edge_lives():
    from dataclasses import replace

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
    assert "field first.7" in found.why


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


def test_when_all_is_sprayed_nobody_mixes():
    plan = day_of(QUINCE)
    assert replan(plan, SoFar(at_min=bands_of(plan)[-1].end_min + 1)).more_mix is None


@pytest.mark.parametrize("name", ["first.2.4", "first.5.5", "first.8.4"])
def test_litres_are_such_as_can_be_measured_out(name):
    found = asked(name, tub_l=4.0, tank_l=2.0)
    assert found.litres == pytest.approx(round(found.litres, 1))
