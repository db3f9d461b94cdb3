"""Why there are no days: the step that lacks hours, and on which days it has them."""

from dataclasses import replace

import pytest
from tests.days.shop import MONDAY, typical

from farwall.days.hours import mild
from farwall.days.nouns import MILD_HOUR, Ahead, Away, Wait
from farwall.days.practice import LONG_LOCK_DAYS, chain_of
from farwall.days.solve import settle
from farwall.days.why import Lack, NoDays, first_chain, lack_of, lack_words
from farwall.evidence import Rank, Span
from farwall.phrasebook import in_spanish

NO_SEAL = replace(MILD_HOUR, seal=False)
NO_COAT = replace(MILD_HOUR, coat=False)


def days(*kinds):
    return Ahead(MONDAY, tuple(one for one in kinds for _ in range(24)), Rank.GUESS, "a test")


def lack(ahead, **facts):
    question = typical(ahead)
    house = replace(question.houses[0], **facts)
    question = replace(question, houses=(house,))
    with pytest.raises(NoDays) as no:
        settle(question)
    assert no.value.lacks == (lack_of(question, house, 2),)
    return no.value.lacks[0], no.value


def test_where_no_day_allows_stain_the_first_coat_lacks_hours():
    found, no = lack(days(*[NO_COAT] * 28))
    assert (found.step.id, found.kind, found.work_days, found.best_min) == (
        "coat-1",
        "never",
        20,
        0,
    )
    assert "“coat 1”: it needs 1.25 h on end between 7:30 and 18:30" in no.reason
    assert "no one of 20 working days has so many" in no.reason


def test_days_for_sealer_that_all_come_too_early_are_named_by_hand():
    """Sealer on Monday and Tuesday only; the floor is not even stained by then."""
    found, no = lack(days(*[MILD_HOUR] * 2, *[NO_SEAL] * 26))
    assert (found.step.id, found.kind, found.days) == ("seal-1", "late", (0, 1))
    assert "2 of 20 working days have (Mon 1 Jan, Tue 2 Jan)" in no.reason
    assert "none of them after “judge, neutralise, scrub, rinse” and its waits" in no.reason


def test_a_second_coat_that_misses_the_window_of_the_first_is_told_by_hand():
    """Sealer each Thursday and no other day; a coat that may be recoated after 12 to 24 h."""
    week = [NO_SEAL] * 3 + [MILD_HOUR] + [NO_SEAL] * 3
    label = Span(720.0, 720.0, 720.0, Rank.MEASURED, "a label")
    waits = {"seal-2": (Wait("label", label, "clock", 1440.0),)}
    found, no = lack(days(*week * 4), waits=waits)
    assert (found.step.id, found.kind) == ("seal-2", "window")
    assert "within 24 h after “sealer, coat 1”" in no.reason


def test_every_reason_has_its_spanish():
    week = [NO_SEAL] * 3 + [MILD_HOUR] + [NO_SEAL] * 3
    label = Span(720.0, 720.0, 720.0, Rank.MEASURED, "a label")
    waits = {"seal-2": (Wait("label", label, "clock", 1440.0),)}
    question = typical(mild(MONDAY, 28))
    house = question.houses[0]
    reasons = [
        lack(days(*[NO_COAT] * 28))[1].reason,
        lack(days(*[MILD_HOUR] * 2, *[NO_SEAL] * 26))[1].reason,
        lack(days(*week * 4), waits=waits)[1].reason,
        lack(mild(MONDAY, 28), area_m2=2000.0)[1].reason,
        lack_words(question, Lack(house, chain_of(house)[0], None, "trade", 0.0, (), 0, 0.0, 0)),
        lack_words(question, Lack(house, chain_of(house)[0], None, "never", 9.0, (), 1, 270.0, 0)),
    ]
    for reason in reasons:
        assert in_spanish(reason, frozenset({house.name})) is not None, reason


def test_a_floor_too_large_for_a_day_is_to_be_cut_into_zones():
    found, no = lack(mild(MONDAY, 28), area_m2=2000.0)
    assert found.kind == "long"
    assert any("zones" in one for one in no.remedies)


def test_other_trades_in_the_way_are_told_as_such():
    question = typical(mild(MONDAY, 28))
    away = tuple(Away("house", "plumber", day) for day in range(0, 28, 3))
    with pytest.raises(NoDays, match="other trades") as no:
        settle(replace(question, away=away))
    assert no.value.lacks[0].kind in {"trade", "late", "window"}


def test_a_chain_that_waits_for_another_season_is_no_first_chain():
    """Forty days without sealer after the first: cleaning could begin at once, and does not."""
    question = typical(days(*[MILD_HOUR] * 2, *[NO_SEAL] * 40, *[MILD_HOUR] * 21))
    walked = first_chain(question, question.houses[0], 2)
    assert walked is not None
    assert walked[0].start >= (42 - LONG_LOCK_DAYS) * 96
    assert len(walked) == len(chain_of(question.houses[0]))
    assert first_chain(typical(days(*[NO_SEAL] * 60)), question.houses[0], 2) is None
