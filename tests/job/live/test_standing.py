"""What is left of the mix, worked out by hand on two fields of two bands each."""

from types import SimpleNamespace

import pytest

from farwall.job.live import standing as module
from farwall.job.live.standing import Standing
from farwall.job.story.noun import CoatStory, FieldStory, Level, Sprayed, Story

LITRES = {"c.1.1": 2.0, "c.1.2": 3.0, "c.2.1": 4.0, "c.2.2": 5.0}
BANDS = {
    name: SimpleNamespace(
        id=name, sprayer=1, litres=litres, start_min=10.0 * n, end_min=10.0 * n + 8
    )
    for n, (name, litres) in enumerate(LITRES.items())
}
FIELDS = [
    SimpleNamespace(
        id=name, coat="c", order=n, rooms=(), bands=[BANDS[f"{name}.1"], BANDS[f"{name}.2"]]
    )
    for n, name in enumerate(["c.1", "c.2"])
]
PLAN = SimpleNamespace(
    inputs=SimpleNamespace(
        coats=[SimpleNamespace(id="c")], tools=SimpleNamespace(tank_l=8.0)
    ),
    fields=FIELDS,
)  # fmt: skip


def sprayed(*bands):
    return tuple(Sprayed(name, BANDS[name].start_min, BANDS[name].end_min, True) for name in bands)


def day(done=(), **told):
    """A day on which these bands are done, of a slab that drinks a quarter more than planned."""
    fields = [
        FieldStory(field.id, "c", 0.0, None, mine, 0.0, 0.0)
        for field in FIELDS
        if (mine := sprayed(*[band.id for band in field.bands if band.id in done]))
    ]
    known = {"mixed_l": None, "filled_l": None, "tub_l": None, "tank_l": None, "levels": ()} | told
    coat = CoatStory("c", 0.0, None, tuple(fields), **known)
    standing = Standing(PLAN, Story("2026-01-01T08:00", coats=(coat,)), 100.0)
    standing.__dict__["belief"] = SimpleNamespace(factor=1.25)
    return standing


def level(bands, *, mixed_l, tub_l, tank_l=0.0, planned_l=0.0):
    return Level(0.0, mixed_l, tub_l, tank_l, bands, planned_l, 0.0)


def litres(standing):
    found = standing.litres
    return found.have_l, found.tub_l, found.tank_l, found.known


def test_what_was_mixed_less_what_a_thirsty_slab_took_by_hand():
    """By hand: 5 L planned and a quarter more are 6.25 L of 20; nobody looked, so none is known."""
    assert litres(day(["c.1.1", "c.1.2"], mixed_l=20.0)) == (13.75, None, None, False)
    assert litres(day(["c.1.1", "c.1.2"], mixed_l=4.0))[0] == 0.0


def test_since_the_last_look_by_hand():
    """By hand: 9 L in the tub and 4 in the tank after one band. Since then 3 L planned were
    sprayed, 3.75 as this slab drinks, and 2 L mixed: 13 + 2 - 3.75 = 11.25 L, of which a tub that
    still holds 9 L leaves 2.25 in the tank. Of two looks the last counts."""
    levels = (level(0, mixed_l=16.0, tub_l=1.0), level(1, mixed_l=16.0, tub_l=9.0, tank_l=4.0))
    done = ["c.1.1", "c.1.2"]
    assert litres(day(done, mixed_l=18.0, tub_l=9.0, levels=levels)) == (11.25, 9.0, 2.25, True)
    assert litres(day(done, mixed_l=18.0, levels=levels)) == (11.25, None, None, True)
    assert litres(day(done, levels=levels))[0] == 9.25
    assert litres(day(done, mixed_l=18.0, tub_l=9.0, tank_l=1.5, levels=levels))[2] == 1.5


@pytest.mark.parametrize(("tub_l", "tank_l"), [(1.0, 8.0), (3.25, 8.0), (11.25, 0.0), (12.0, 0.0)])
def test_a_tank_holds_no_more_than_it_can_and_never_less_than_nothing(tub_l, tank_l):
    """By hand: 11.25 L in all as above; the tank holds 8."""
    levels = (level(1, mixed_l=16.0, tub_l=9.0, tank_l=4.0),)
    found = litres(day(["c.1.1", "c.1.2"], mixed_l=18.0, tub_l=tub_l, levels=levels))
    assert found[2] == tank_l


def test_where_nothing_was_told_the_plans_mix_less_what_it_had_for_what_is_done(monkeypatch):
    """By hand: 20 L mixed by the plan; two bands of 2 and 3 L are done."""
    monkeypatch.setattr(module, "planned_mixed_l", lambda *_: 20.0)
    assert litres(day(["c.1.1", "c.1.2"])) == (15.0, None, None, False)
    assert litres(Standing(PLAN, Story("2026-01-01T08:00"), 0.0)) == (20.0, None, None, False)
    monkeypatch.setattr(module, "planned_mixed_l", lambda *_: 3.0)
    assert litres(day(["c.1.1", "c.1.2"]))[0] == 0.0


def in_the_last(monkeypatch, start, last):
    """What the last field, of which one band is done, is asked with; None where it is not."""
    asked = []
    monkeypatch.setattr(module, "belief_of", lambda *_, bands: bands)
    monkeypatch.setattr(module, "inside", lambda at, **took: asked.append((at, took)) or "inside")
    standing = day(["c.1.1", "c.1.2", "c.2.1"], mixed_l=22.0, levels=(start, last))
    found = standing.mix_belief
    assert (found == "inside") == bool(asked)
    return asked[0] if asked else None


def test_more_is_mixed_by_what_the_rest_of_the_last_field_drinks_by_hand(monkeypatch):
    """By hand: from 13 L at its stop line to 8 L a band later, 2 L mixed between: 7 L used where
    4 were planned."""
    start = level(2, mixed_l=20.0, tub_l=10.0, tank_l=3.0, planned_l=5.0)
    last = level(3, mixed_l=22.0, tub_l=8.0, planned_l=9.0)
    assert in_the_last(monkeypatch, start, last) == (2, {"done_l": 4.0, "used_l": 7.0})


def test_a_look_at_the_stop_line_alone_or_one_that_nothing_was_used_by_tells_nothing_of_the_rest(
    monkeypatch,
):
    start = level(2, mixed_l=20.0, tub_l=10.0, planned_l=5.0)
    assert in_the_last(monkeypatch, start, level(2, mixed_l=20.0, tub_l=9.0, planned_l=5.0)) is None
    full = level(3, mixed_l=20.0, tub_l=10.0, planned_l=9.0)
    assert in_the_last(monkeypatch, start, full) is None
    elsewhere = level(1, mixed_l=20.0, tub_l=10.0, planned_l=2.0)
    last = level(3, mixed_l=20.0, tub_l=5.0, planned_l=9.0)
    assert in_the_last(monkeypatch, elsewhere, last) is None


def test_while_fields_are_to_come_or_none_is_in_hand_more_is_mixed_by_the_belief_of_the_coat():
    looked = (level(0, mixed_l=22.0, tub_l=22.0), level(1, mixed_l=22.0, tub_l=10.0, planned_l=2.0))
    first = day(["c.1.1"], mixed_l=22.0, levels=looked)  # the second field is to come
    assert first.in_hand.id == "c.1"
    assert first.mix_belief is first.belief
    between = day(["c.1.1", "c.1.2"], mixed_l=22.0, levels=looked)
    assert between.in_hand is None
    assert between.mix_belief is between.belief
    assert between.next_band.id == "c.2.1"
    assert first.next_band.id == "c.1.2"


def test_a_tub_told_alone_is_what_it_was_told_to_hold_by_hand():
    """By hand: 9 L in the tub and 4 in the tank after one band. After the second, 3.75 L drunk, the
    tub is told to hold 0.5: the tank takes 8 at most, so 8.5 are left, not 9.25. Told to hold 12 it
    holds 12, and none is known to be in the tank. Two more mixed then are there too."""
    levels = (level(1, mixed_l=16.0, tub_l=9.0, tank_l=4.0),)
    told = {"levels": levels, "mixed_l": 16.0}
    done = ["c.1.1", "c.1.2"]
    low, high = (level(2, mixed_l=16.0, tub_l=one) for one in (0.5, 12.0))
    assert litres(day(done, **told, tub_l=0.5, tub_look=low)) == (8.5, 0.5, 8.0, True)
    assert litres(day(done, **told, tub_l=12.0, tub_look=high)) == (12.0, 12.0, 0.0, True)
    told["mixed_l"] = 18.0
    assert litres(day(done, **told, tub_l=14.0, tub_look=high)) == (14.0, 14.0, 0.0, True)
    third = [*done, "c.2.1"]
    assert litres(day(third, **told, tub_l=14.0, tub_look=high))[0] == 9.0  # 5 L drunk since


def test_a_tub_told_alone_where_no_tank_was_ever_told_by_hand():
    """By hand: 20 L mixed, 6.25 drunk: 13.75; the tub holds 3, the tank 8 at most: 11 are left."""
    done = ["c.1.1", "c.1.2"]
    look = level(2, mixed_l=20.0, tub_l=3.0)
    assert litres(day(done, mixed_l=20.0, tub_l=3.0, tub_look=look)) == (11.0, 3.0, None, False)
