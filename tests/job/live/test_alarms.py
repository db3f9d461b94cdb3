"""What must be looked at next, each alarm's minute worked out by hand on a field of three bands."""

from dataclasses import replace
from types import SimpleNamespace

import pytest
from tests.job.live.test_now import PLAN

from farwall.facts.job import Sighting
from farwall.facts.plan import Clock
from farwall.job.live.alarms import SOON_MIN, alarms, ends_min
from farwall.job.live.noun import LiveClock
from farwall.job.story.noun import CoatStory, FieldStory, Happened, Seen, Story

NOW = 100.0
BANDS = [
    SimpleNamespace(id="first.5.1", start_min=10.0, end_min=12.0, litres=2.0),
    SimpleNamespace(id="first.5.2", start_min=12.0, end_min=15.0, litres=3.0),
    SimpleNamespace(id="first.5.3", start_min=16.0, end_min=20.0, litres=4.0),
]
FIELD = SimpleNamespace(id="first.5", coat="first", bands=BANDS)
LOOK = SimpleNamespace(field="first.5", band="first.5.3", after="first.5.2")


def standing(*, tank_l=None, factor=1.0, in_hand=FIELD, following=None, done=(), closed=None,
             looks=(), story=None, at_min=NOW):  # fmt: skip
    """A day at `NOW` min, the field gone on with now: bands end after 2, 5 and 10 min."""
    return SimpleNamespace(
        at_min=at_min,
        plan=replace(PLAN, looks=tuple(looks)),
        litres=SimpleNamespace(tank_l=tank_l),
        belief=SimpleNamespace(factor=factor),
        in_hand=in_hand,
        next_field=following,
        closed=closed or {},
        left_of=lambda field: [band for band in reversed(field.bands) if band.id not in done],
        story=story or Story("2026-01-01T08:00"),
    )


def told(kind, *waits, **day):
    return [one.at_min for one in alarms(standing(**day), None, waits) if one.kind == kind]


@pytest.mark.parametrize(
    ("tank_l", "factor", "at_min"),
    [
        # 2 L to 102, 3 L to 105: of 4 L two thirds of the second band are sprayed
        (4.0, 1.0, 104.0),
        # a slab that drinks a quarter more: 2.5 L to 102, then 2.5 of 3.75 L: two thirds again
        (5.0, 1.25, 104.0),
        # 5 L are just enough for two bands: empty as the third begins
        (5.0, 1.0, 105.0),
        # 7 L: half of the third, whose walk begins at 105
        (7.0, 1.0, 107.5),
        (1.0, 1.0, 101.0),
        (0.0, 1.0, 100.0),
    ],
)
def test_the_minute_in_which_the_tank_is_empty_by_hand(tank_l, factor, at_min):
    assert told("tank", tank_l=tank_l, factor=factor) == [at_min]


def test_a_tank_that_lasts_or_is_not_known_raises_nothing():
    assert told("tank", tank_l=9.0) == []
    assert told("tank", tank_l=None) == []
    assert told("tank", tank_l=1.0, in_hand=None) == []


def test_a_tank_looked_at_in_the_field_is_reckoned_from_the_band_to_come():
    """By hand: the first band done, 3 L last until 103, and half of 4 L until 105.5."""
    assert told("tank", tank_l=5.0, done={"first.5.1"}) == [105.5]


def test_the_gate_is_where_the_field_ends_and_only_between_fields():
    following = SimpleNamespace(id="first.6")
    assert told("gate", following=following) == [110.0]
    assert told("gate", following=following, done={"first.5.1"}) == [108.0]
    assert told("gate", following=None) == []
    assert told("gate", following=following, in_hand=None) == []
    assert ends_min(standing(), SimpleNamespace(bands=[])) == NOW


def test_a_look_is_told_before_its_band_and_never_once_that_is_begun():
    """By hand: the third band is begun 6 min after the first, 4 after the second."""
    assert told("look", looks=[LOOK]) == [106.0]
    assert told("look", looks=[LOOK], done={"first.5.1"}) == [104.0]
    assert told("look", looks=[LOOK], done={"first.5.1", "first.5.2"}) == []
    assert told("look", looks=[SimpleNamespace(**vars(LOOK) | {"field": "first.6"})]) == []


def test_a_closed_room_is_asked_for_when_it_should_be_free():
    assert told("room", closed={"bath": 120.0, "hall": None}) == [120.0]


def wait(name="dry to recoat", coat="first", begins_min=100.0, ends=(60.0, 120.0, 240.0)):
    clock = Clock(coat, name, *ends, "practice")
    return LiveClock(clock, clock, begins_min, 0)


@pytest.mark.parametrize(
    ("at_min", "due"),
    [
        (100.0, [160.0]),
        (160.0 - 2 * SOON_MIN, [160.0]),
        (160.0, [220.0]),
        (219.0, [220.0]),
        (220.0, [340.0]),
        (339.0, [340.0]),
        (340.0, []),
    ],
)
def test_a_wait_is_told_early_likely_and_late_one_after_the_other(at_min, due):
    assert told("dry to recoat", wait(), at_min=at_min) == due


def test_a_wait_that_has_not_begun_or_does_not_end_is_not_told():
    assert told("dry to recoat", wait(begins_min=None)) == []
    assert told("dry to recoat", wait(ends=(60.0, None, None)), at_min=170.0) == []


def looked(*looks, **more):
    seen = (
        Seen(at, Sighting(clock, 1.0, ended=ended, coat=coat, room=room))
        for at, clock, coat, room, ended in looks
    )
    return Story("2026-01-01T08:00", sightings=tuple(seen), **more)


def test_a_coat_found_dry_does_not_silence_the_next_one():
    """Three coats have two such waits: what was seen of one tells nothing of the other."""
    story = looked((150.0, "dry to recoat", "first", "bath", True))
    assert told("dry to recoat", wait(), story=story) == []
    second = wait(coat="second", begins_min=200.0)
    assert told("dry to recoat", second, story=story, at_min=210.0) == [260.0]


def test_a_dry_hall_does_not_silence_a_damp_kitchen():
    damp = (140.0, "dry to recoat", "first", "study", False)
    dry = (150.0, "dry to recoat", "first", "hall", True)
    assert told("dry to recoat", wait(), story=looked(damp, dry)) == [160.0]


@pytest.mark.parametrize("name", ["dry-down before sealing", "next coat of sealer"])
def test_rinsed_or_sealed_again_an_older_look_silences_nothing(name):
    story = looked((90.0, name, "second", "hall", True))
    assert told(name, wait(name, "second", begins_min=80.0), story=story) == []
    assert told(name, wait(name, "second", begins_min=95.0), story=story) == [155.0]


@pytest.mark.parametrize(
    ("name", "word"),
    [
        ("dry to neutralise", "neutralised"),
        ("dry to neutralise", "rinsed"),
        ("dwell", "neutralised"),
        ("dwell", "rinsed"),
        ("dry-down before sealing", "sealed"),
        ("next coat of sealer", "handed-over"),
        ("traffic in shoes", "handed-over"),
    ],
)
def test_a_wait_is_over_once_what_follows_it_is_entered(name, word):
    def story(entered):
        return Story("2026-01-01T08:00", happened=(Happened("a", entered, 105.0, {}),))

    assert told(name, wait(name, "second"), story=story("note")) == [160.0]
    assert told(name, wait(name, "second"), story=story(word)) == []


def test_drying_is_over_once_the_next_coat_is_begun_and_not_by_its_own_coat():
    def story(coat):
        field = FieldStory(f"{coat}.1", coat, 150.0, None, (), 0.0, 0.0)
        return Story(
            "2026-01-01T08:00",
            coats=(CoatStory(coat, 150.0, None, (field,), None, None, None, None, ()),),
        )

    assert told("dry to recoat", wait(), story=story("first")) == [160.0]
    assert told("dry to recoat", wait(), story=story("second")) == []
