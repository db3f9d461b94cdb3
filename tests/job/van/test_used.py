"""What a job took from the van, by its log."""

from __future__ import annotations

import pytest
from tests.job.story.entries import Log
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.van import Van, VanSprayer
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.job.van.used import used_up


@pytest.fixture(scope="module")
def plan():
    return plan_job(job(TWO_ROOMS))


VAN = Van((VanSprayer("blue", "acid-proof", 7.6), VanSprayer("green", "acid-proof", 7.6)))


def test_stain_of_every_batch_by_its_cut_and_lot_by_hand(plan):
    """By hand: 8 L at 1:1 hold 4 L; 9 L at 1:2 hold 3 L; 2 L more of the lot at 1:1 make 5 L."""
    log, coat = Log(plan), plan.inputs.coats[0]
    log("mixed", 0.0, coat=coat.id, litres=8.0, cut="1:1", lot="7")
    log("mixed", 10.0, coat=coat.id, litres=9.0, cut="1:2", lot="8")
    log("mixed", 20.0, coat=coat.id, litres=2.0, cut="1:1", lot="7")
    used = used_up(plan, story(plan, log.kept), VAN)
    assert used.stains == ((coat.stain, "7", 5.0), (coat.stain, "8", 3.0))


def test_sprayers_are_those_named_while_spraying_once_each(plan):
    log, bands = Log(plan), plan.fields[0].bands
    log("filled", 0.0, sprayer="blue")
    log("band-done", 3.0, band=bands[0].id, sprayer="blue")
    log("band-done", 5.0, band=bands[1].id, sprayer="a borrowed one")
    used = used_up(plan, story(plan, log.kept), VAN)
    assert used.sprayers == ("blue",)
    assert used.on == plan.starts_at[:10]


def test_without_a_cut_the_plans_own_share_holds(plan):
    log, coat = Log(plan), plan.inputs.coats[0]
    mixes = [mix for mix in plan.mixes if mix.coat == coat.id]
    whole = sum(mix.stain_l + mix.water_l + mix.acid_l for mix in mixes)
    log("mixed", 0.0, coat=coat.id, litres=whole)
    ((_, lot, litres),) = used_up(plan, story(plan, log.kept), VAN).stains
    assert lot == ""
    assert litres == pytest.approx(sum(mix.stain_l for mix in mixes), abs=0.002)
