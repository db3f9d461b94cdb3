"""What a room asks for after its rinses."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.acid.rinse_belief import Round
from farwall.acid.rinsing import Wanted, next_step

TAP = Wanted(tap_ph=7.5)


def room(*rounds):
    return tuple(Round(1.2, rag, phs) for rag, phs in rounds)


def step(*rounds, wanted=TAP, **more):
    return next_step(room(*rounds), wanted=wanted, l_per_m2=1.2, **more)


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("rounds", "verdict", "code"),
    [
        ([("clean", (7.5,))], "enough", "clean"),
        ([("coloured", (7.5,))], "scrub", "coloured-rag"),
        ([("grey", (7.5,))], "rinse", "grey-rag-early"),
        ([("grey", (7.5,))] * 3, "scrub", "grey-rag"),
        ([("clean", (6.0,))], "scrub", "acid"),
        ([("clean", (7.5, 6.0))], "scrub", "acid"),
        ([("clean", (6.6,))], "rinse", "low"),
        ([("clean", ())], "read", "no-pH"),
        ([("", (7.5,))], "read", "no-rag"),
        ([("", ())], "read", "nothing-read"),
        ([], "read", "not-rinsed"),
    ],
)
def test_rag_and_ph_decide(rounds, verdict, code):
    """No source but trade press: low pH or a dirty rag asks for a scrub, not only a rinse."""
    found = step(*rounds)
    assert (found.verdict, found.code) == (verdict, code)


def test_high_ph_with_a_clean_rag_is_not_rinsed_for_ever():
    high = ("clean", (9.5,))
    assert step(high).code == "alkaline"
    assert step(high, high).verdict == "new concrete"
    falling = [("clean", (11.5 - 0.5 * n,)) for n in range(5)]
    assert step(*falling[:2]).code == "alkaline"
    assert step(*falling).verdict == "new concrete"


@pytest.mark.parametrize(("most", "borne"), [(None, None), (10.0, True), (9.0, False)])
def test_the_unstained_patch_and_the_sealers_sheet_decide_what_high_ph_is(most, borne):
    wanted = Wanted(7.5, unstained_ph=9.5, sealer_most_ph=most)
    found = step(("clean", (9.5,)), wanted=wanted)
    assert (found.code, found.sealer) == ("new-concrete", borne)
    assert step(("clean", (11.0,)), wanted=wanted).code == "alkaline"
    assert step(("grey", (9.5,)), wanted=wanted).verdict == "rinse"


def test_powder_next_morning_asks_for_another_rinse():
    swiped = (Round(1.2, "clean", (7.5,), powder=True),)
    assert next_step(swiped, wanted=TAP, l_per_m2=1.2).code == "powder"
    swiped = (Round(1.2, "clean", (7.5,), powder=False),)
    assert next_step(swiped, wanted=TAP, l_per_m2=1.2).code == "dry-swipe-passed"


def test_a_large_room_wants_as_many_readings_as_d4262_says():
    assert step(("clean", (7.5,)), readings=2).code == "few-readings"
    assert step(("clean", (7.5, 8.0)), readings=2).verdict == "enough"


@pytest.mark.parametrize(
    ("wanted", "window"),
    [
        (Wanted(), (7.0, 9.0)),
        (Wanted(7.5), (7.0, 8.5)),
        (Wanted(8.6), (7.6, 9.0)),
        (Wanted(9.4), (8.4, 10.4)),
        (Wanted(6.6), (5.6, 7.6)),
        (Wanted(7.5, sealer_least_ph=7.2, sealer_most_ph=8.0), (7.2, 8.0)),
    ],
)
def test_what_passes(wanted, window):
    assert wanted.window == pytest.approx(window)


@settings(max_examples=25)
@given(
    st.lists(
        st.builds(
            Round, st.floats(0.2, 5), st.sampled_from(["", "clean", "grey", "coloured"]),
            st.lists(st.floats(0, 14), max_size=2).map(tuple), st.booleans(),
            st.sampled_from([None, True, False]),
        ),
        max_size=6,
    ),
    st.floats(5, 10) | st.none(),
)  # fmt: skip
def test_never_enough_on_a_dirty_rag_or_a_sour_floor(rounds, tap):
    found = next_step(rounds, wanted=Wanted(tap), l_per_m2=1.2)
    if found.verdict == "enough":
        assert rounds[-1].rag == "clean"
        assert min(rounds[-1].phs) >= 6.5
        assert not rounds[-1].powder
    if found.verdict in {"rinse", "scrub"}:
        assert found.more is not None
        assert 1 <= found.more.low <= found.more.likely <= found.more.high
