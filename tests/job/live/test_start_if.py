"""What the next field waits for, each figure worked out by hand."""

from types import SimpleNamespace

import pytest
from tests.job.live.test_now import PLAN

from farwall.facts.plan import Clock
from farwall.job.live import start_if as module
from farwall.job.live.noun import LiveClock
from farwall.job.live.start_if import _below, _edge_age, _lean, _mix, _time
from farwall.job.story.noun import CoatStory, Story
from farwall.mix.look import LEAST_BOX_L

NEXT = SimpleNamespace(
    id="first.6",
    bands=[SimpleNamespace(litres=4.0), SimpleNamespace(litres=5.0)],
    start_min=40.0,
    end_min=60.0,
    peak_age_min=4.0,
)
HAND = SimpleNamespace(
    id="first.5", bands=[SimpleNamespace(litres=2.0, start_min=10.0, end_min=22.0)]
)
CHANCES = {"first.6": 0.01}


def standing(*, have_l=20.0, known=True, in_hand=None, at_min=100.0, story=None, coat="first"):
    """A slab that drinks a quarter more; half as much again covers a field at any chance."""
    return SimpleNamespace(
        plan=PLAN,
        coat=coat,
        at_min=at_min,
        us=True,
        in_hand=in_hand,
        left_of=lambda field: field.bands,
        litres=SimpleNamespace(have_l=have_l, known=known),
        belief=SimpleNamespace(factor=1.25, enough_l=lambda litres, chance_dry: 1.5 * litres),
        story=story or Story("2026-01-01T08:00"),
        clock=lambda minute: f"at {minute:g}",
    )


@pytest.fixture
def by_the_gate(monkeypatch):
    monkeypatch.setattr(module, "_places", lambda *_: ())


@pytest.mark.usefixtures("by_the_gate")
@pytest.mark.parametrize(
    ("have_l", "in_hand", "holds"),
    [(13.5, None, True), (13.49, None, False), (16.0, HAND, True), (15.99, HAND, False)],
)
def test_the_mix_is_there_when_it_covers_the_field_and_the_rest_of_that_in_hand(
    have_l, in_hand, holds
):
    """By hand: 9 L at the sure end are 13.5; the rest of the field in hand takes 2.5 L before."""
    assert _mix(standing(have_l=have_l, in_hand=in_hand), NEXT, CHANCES).holds is holds


@pytest.mark.usefixtures("by_the_gate")
def test_mix_that_nobody_looked_at_is_neither_there_nor_lacking():
    assert _mix(standing(known=False), NEXT, CHANCES).holds is None


@pytest.mark.parametrize(("have_l", "begin_l"), [(5.0, 11.25), (14.0, 14.0)])
def test_a_lean_start_by_hand(monkeypatch, have_l, begin_l):
    """By hand: 9 L as this slab drinks are 11.25. Before the band looked at 6 - 2 = 4 L planned are
    sprayed until a batch is boxed, 5 as this slab drinks, and the least to box with beside it."""
    place = SimpleNamespace(band="first.6.2", done_l=2.0, until_ready_l=6.0)
    monkeypatch.setattr(module, "_places", lambda *_: (place,))
    lean = _lean(standing(have_l=have_l), NEXT, CHANCES)
    assert (lean.begin_l, lean.look_band, lean.keep_l) == (begin_l, "first.6.2", 5 + LEAST_BOX_L)


@pytest.mark.parametrize(
    ("in_hand", "light_until_min", "holds"),
    [
        (None, 120.0, True),
        (None, 119.9, False),
        (HAND, 132.0, True),
        (HAND, 131.9, False),
        (None, None, None),
    ],
)
def test_there_is_light_to_the_end_of_the_next_field_by_hand(in_hand, light_until_min, holds):
    """By hand: it takes 20 min, and begins now, or when the field in hand is done, in 12 min."""
    assert _time(standing(in_hand=in_hand), NEXT, light_until_min).holds is holds


@pytest.mark.parametrize(("open_low_min", "holds"), [(4.0, True), (3.99, False)])
def test_an_edge_older_than_edges_live_keeps_the_field_shut(open_low_min, holds):
    assert _edge_age(NEXT, open_low_min).holds is holds


def below(at_min, *, end_min=65.0, coat="first"):
    clock = Clock("first", "dry to recoat", 60.0, 120.0, 240.0, "practice")
    other = Clock("second", "dry to recoat", 1.0, 2.0, 3.0, "practice")
    waits = [LiveClock(one, one, end_min, 0) for one in (other, clock)]
    told = CoatStory(coat, 0.0, end_min, (), None, None, None, None, ())
    day = standing(at_min=at_min, coat="second", story=Story("2026-01-01T08:00", coats=(told,)))
    (found,) = _below(day, waits)
    return found.holds, found.text


@pytest.mark.parametrize(("at_min", "holds"), [(66.0, False), (124.9, False), (125.0, None)])
def test_a_coat_is_not_dry_before_its_early_end_and_not_known_to_be_after_it(at_min, holds):
    """By hand: done at 65 min, dry at 125 at the earliest, at 305 at the latest."""
    found, text = below(at_min)
    assert found is holds
    assert text.endswith("likely from at 125 to at 305")


def test_a_coat_below_that_is_not_done_is_waited_for():
    assert below(1000.0, end_min=None)[0] is False
    assert below(1000.0, coat="another")[0] is False


def test_the_first_coat_waits_for_none():
    assert list(_below(standing(), [])) == []
