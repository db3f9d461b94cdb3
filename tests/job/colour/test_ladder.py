"""The ladder: rows by cuts, rungs by coats, differences inside one state only."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.job.colour.ladders import house, made, sealed, wet, whole

from farwall.colour.difference import de2000
from farwall.facts.samples import STATES, Look, Sample
from farwall.job.colour.ladder import ladder_of


def names(ladder):
    return [[rung.name for rung in row.rungs] for row in ladder.rows]


def test_squares_from_weak_to_strong_and_each_from_its_first_coat_up():
    ladder = ladder_of(house(), whole())
    assert names(ladder) == [["W"], ["P", "P2"], ["S"]]
    assert (ladder.most_coats, ladder.standard) == (2, "P2")
    assert ladder.rung("P2").cuts == ("1:2", "1:4")


def test_the_dose_of_a_rung_is_that_of_all_its_coats_by_hand():
    """100 mL on 0.5 m² are 0.2 L/m²: a third of it at 1:2 and a fifth at 1:4."""
    ladder = ladder_of(house(), whole())
    assert math.isclose(ladder.rung("P").stain_l_per_m2, 0.2 / 3)
    assert math.isclose(ladder.rung("P2").stain_l_per_m2, 0.2 / 3 + 0.2 / 5)
    unknown = ladder_of(house(), (made("A", "1:2", laid_ml=None), made("B", "1:4", over="A")))
    assert unknown.rung("B").stain_l_per_m2 is None
    assert math.isclose(unknown.rung("B").drank.m2_per_l, 5.0)


def test_neighbours_are_compared_up_a_square_and_across_and_never_across_states():
    ladder = ladder_of(house(), whole())
    told = {(one.by, one.one, one.other, one.state) for one in ladder.apart}
    pairs = {("coat", "P", "P2"), ("cut", "W", "P"), ("cut", "P", "S")}
    assert told == {(*pair, state) for pair in pairs for state in ("clean wet", "sealed")}
    up = next(one for one in ladder.apart if one.by == "coat" and one.state == "clean wet")
    assert math.isclose(up.darker, 4.0)
    assert math.isclose(up.de, float(de2000((45, 8, 18), (41, 8, 18))))
    assert math.isclose(up.blur_de, math.sqrt(2))
    assert up.clear is True


def test_the_scale_of_a_state_goes_from_light_to_dark_in_steps():
    scale = ladder_of(house(), whole()).scales["clean wet"]
    assert [(one.name, one.lightness, one.darker) for one in scale] == [
        ("W", 52.0, None), ("P", 45.0, 7.0), ("P2", 41.0, 4.0), ("S", 38.0, 3.0),
    ]  # fmt: skip
    assert ladder_of(house(), whole()).scales["dry"] == ()


def test_a_look_with_a_target_goes_before_a_guess_and_the_last_before_the_first():
    looks = (wet(50.0), wet(48.0), wet(30.0, error_de=None))
    (rung,) = ladder_of(house(), (made("A", "1:2", *looks),)).rungs
    assert rung.look("clean wet").lab[0] == 48.0
    assert rung.look("sealed") is None
    (guess,) = ladder_of(house(), (made("A", "1:2", wet(30.0, error_de=None)),)).rungs
    assert guess.look("clean wet").lab[0] == 30.0


def test_a_guess_leaves_open_whether_a_difference_is_clear():
    two = (made("A", "1:4", wet(50.0)), made("B", "1:2", wet(40.0, error_de=None)))
    (apart,) = ladder_of(house(), two).apart
    assert (apart.blur_de, apart.clear) == (None, None)
    near = (made("A", "1:4", wet(50.0, error_de=3.0)), made("B", "1:2", wet(49.0)))
    assert ladder_of(house(), near).apart[0].clear is False


def test_squares_of_two_stains_are_not_compared():
    two = (made("A", "1:4", wet(50.0)), Sample("B", stain="light", cut="1:2", looks=(wet(40.0),)))
    assert ladder_of(house(), two).apart == ()


@pytest.mark.parametrize("over", ["gone", "B"])
def test_what_lies_on_the_unknown_stands_beside_the_ladder(over):
    ladder = ladder_of(house(), (made("A", "1:4"), made("B", "1:2", over=over)))
    assert names(ladder) == [["A"]]
    assert [one.name for one in ladder.loose] == ["B"]
    assert ladder.rung("B").stain_l_per_m2 is None


def test_a_square_that_was_parted_stands_in_two_rows_with_one_foot():
    parted = (made("A", "1:4", wet(50.0)), made("B", "1:4", wet(45.0), over="A"),
              made("C", "1:2", wet(40.0), over="A"))  # fmt: skip
    ladder = ladder_of(house(), parted)
    assert names(ladder) == [["A", "B"], ["A", "C"]]
    assert [one.name for one in ladder.rungs] == ["A", "B", "C"]
    pairs = [(one.by, one.one, one.other) for one in ladder.apart]
    assert pairs == [("coat", "A", "B"), ("coat", "A", "C"), ("cut", "B", "C")]


def test_the_last_signed_is_the_standard():
    early = made("A", "1:4", approved_by="Owner", approved_on="2026-04-02")
    late = made("B", "1:2", approved_by="Owner", approved_on="2026-04-09")
    assert ladder_of(house(), (late, early)).standard == "B"
    assert ladder_of(house(), ()).standard is None


looks = st.builds(
    Look, state=st.sampled_from(STATES),
    lab=st.tuples(st.floats(10, 90), st.floats(-20, 40), st.floats(-20, 60)),
    error_de=st.none() | st.floats(0, 6),
)  # fmt: skip


@given(
    st.lists(
        st.tuples(st.sampled_from(["1:1", "1:2", "1:9", ""]), st.integers(-1, 5),
                  st.lists(looks, max_size=4)),
        max_size=6,
    )
)  # fmt: skip
def test_laws_of_every_ladder(told):
    """Whatever lies over whatever: each rung is there once, and no difference crosses a state."""
    samples = tuple(
        Sample(f"s{n}", coat="first", cut=cut or None, looks=tuple(seen),
               over=None if under < 0 else f"s{under}")
        for n, (cut, under, seen) in enumerate(told)
    )  # fmt: skip
    ladder = ladder_of(house(), samples)
    assert sorted(one.name for one in ladder.rungs) == sorted(one.id for one in samples)
    by_id = {one.id: one for one in samples}
    for one in ladder.apart:
        pair = [[look.lab for look in by_id[name].looks if look.state == one.state]
                for name in (one.one, one.other)]  # fmt: skip
        assert all(pair)
        assert any(
            math.isclose(float(de2000(a, b)), one.de, abs_tol=1e-9)
            for a in pair[0] for b in pair[1]
        )  # fmt: skip
    for scale in ladder.scales.values():
        assert [one.lightness for one in scale] == sorted(
            (one.lightness for one in scale), reverse=True
        )
        assert all(one.darker is None or one.darker >= 0 for one in scale)


def test_sealed_and_wet_of_one_rung_are_no_difference():
    one = made("A", "1:2", wet(45.0), sealed(30.0))
    assert ladder_of(house(), (one,)).apart == ()
