"""The clocks: laws that hold for every floor, and what the trade says, marked as such."""

from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from tests.strategies import air

from farwall.air.clocks import (
    DAY_MIN,
    REPEAT_HIGH,
    REPEAT_LOW,
    Timed,
    dry_to_recoat,
    edge_budget,
    open_time,
    within_a_day,
)
from farwall.air.conditions import Conditions
from farwall.air.evaporation import evaporation
from farwall.air.film import minutes_to_dry, wet_film_mm
from farwall.errors import Refused, Unanswerable
from farwall.evidence import Rank, Span
from farwall.units import c_from_f, m2_per_l_from_ft2_per_gal

HAIR = 1 + 1e-9
"""Room for the last bits of a float."""

ends = ("low", "likely", "high")
samples = st.builds(
    Timed,
    minutes=st.floats(0.5, 90.0),
    conditions=st.none() | air.conditions,
    m2_per_l=st.none() | air.m2_per_l,
    drop_s=st.none() | air.drop_s,
)


def no_longer(span: Span, than: Span) -> bool:
    """Whether every end of `span` comes no later than that of `than`; None is never."""
    never = float("inf")
    pairs = [(getattr(span, end), getattr(than, end)) for end in ends]
    return all((never if a is None else a) <= (never if b is None else b) * HAIR for a, b in pairs)


@given(air.conditions, air.m2_per_l, air.drop_s, st.none() | samples, air.air_speed_m_s)
def test_more_wind_never_lengthens_open_time(now, m2_per_l, drop_s, timed, more):
    assume(more > now.air_speed_m_s and (timed is None or timed.conditions is not None))
    calm = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed)
    windy = replace(now, air_speed_m_s=more)
    assert no_longer(open_time(windy, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed), calm)


@given(air.conditions, air.m2_per_l, air.drop_s, st.none() | samples, air.rh_percent)
def test_damper_air_never_shortens_open_time(now, m2_per_l, drop_s, timed, damper):
    assume(damper > now.rh_percent and (timed is None or timed.conditions is not None))
    dry = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed)
    damp = replace(now, rh_percent=damper)
    assert no_longer(dry, open_time(damp, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed))


@given(air.conditions, air.m2_per_l, air.drop_s, st.none() | samples, air.drop_s)
def test_more_suction_never_lengthens_open_time(now, m2_per_l, drop_s, timed, sooner):
    assume(sooner < drop_s and (timed is None or timed.drop_s is not None))
    tight = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed)
    assert no_longer(open_time(now, m2_per_l=m2_per_l, drop_s=sooner, timed=timed), tight)


@given(air.conditions, air.m2_per_l, air.drop_s, st.none() | samples, air.m2_per_l)
def test_a_thicker_film_is_never_gone_sooner(now, m2_per_l, drop_s, timed, thicker):
    assume(thicker < m2_per_l and (timed is None or timed.m2_per_l is not None))
    thin = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed)
    assert no_longer(thin, open_time(now, m2_per_l=thicker, drop_s=drop_s, timed=timed))


@given(air.conditions, air.m2_per_l, air.air_speed_m_s, air.rh_percent, air.m2_per_l)
def test_the_wait_for_the_next_coat_keeps_the_same_laws(now, m2_per_l, windier, damper, thicker):
    wait = dry_to_recoat(now, m2_per_l=m2_per_l)
    if windier > now.air_speed_m_s:
        assert no_longer(
            dry_to_recoat(replace(now, air_speed_m_s=windier), m2_per_l=m2_per_l), wait
        )
    if damper > now.rh_percent:
        assert no_longer(wait, dry_to_recoat(replace(now, rh_percent=damper), m2_per_l=m2_per_l))
    if thicker < m2_per_l:
        assert no_longer(wait, dry_to_recoat(now, m2_per_l=thicker))


@given(air.conditions, air.m2_per_l, air.drop_s)
def test_open_time_is_never_longer_than_evaporation_alone_would_take(now, m2_per_l, drop_s):
    """Suction caps evaporation: the film goes both ways."""
    alone = minutes_to_dry(
        wet_film_mm(m2_per_l=m2_per_l), evaporation(now, relation="uno").rate_kg_m2_h
    )
    span = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s)
    assert span.likely is not None
    assert alone is None or span.likely < alone


@given(air.conditions, air.m2_per_l, air.drop_s, st.none() | samples)
def test_low_likely_and_high_come_in_that_order(now, m2_per_l, drop_s, timed):
    for span in (
        open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed),
        dry_to_recoat(now, m2_per_l=m2_per_l, timed=timed),
    ):
        assert span.low > 0
        if span.likely is not None:
            assert span.low <= span.likely * HAIR
        if span.high is not None:
            assert span.likely is not None
            assert span.likely <= span.high * HAIR


@given(st.floats(0.5, 60.0), air.conditions, air.m2_per_l, air.drop_s)
def test_a_sample_timed_in_the_same_conditions_is_believed(minutes, now, m2_per_l, drop_s):
    timed = Timed(minutes, now, m2_per_l, drop_s)
    span = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=timed)
    assert span.likely == pytest.approx(minutes)
    assert span.rank is Rank.MEASURED


def test_a_sample_is_scaled_to_a_drier_windier_day_and_says_that_it_was():
    timed = Timed(9.0, Conditions())
    windy = open_time(Conditions(rh_percent=15, air_speed_m_s=2.0, air_c=35), timed=timed)
    assert windy.likely is not None
    assert windy.likely < 7.5
    assert windy.rank is Rank.GUESS


@given(st.floats(1, 40), st.none() | st.floats(1, 40), st.booleans(), st.booleans())
def test_the_budget_is_never_more_than_the_low_end_or_half_the_sample(low, sample, sun, draught):
    span = Span(low, low * 1.5, low * 2, Rank.PRACTICE, "common-practice")
    budget = edge_budget(span, sample_min=sample, sun=sun, draught=draught)
    assert 0 < budget.value <= low
    if sample is not None:
        assert budget.value <= sample / 2
    plain = edge_budget(span, sample_min=sample)
    assert budget.value < plain.value if sun or draught else budget.value == plain.value


def test_half_of_a_timed_sample_by_hand():
    """9 min timed on a normal day: half is 4.5, below the low end of 9 × 0.8 = 7.2."""
    span = open_time(Conditions(), timed=Timed(9.0, Conditions()))
    assert span.low == pytest.approx(7.2)
    assert edge_budget(span, sample_min=9.0).value == pytest.approx(4.5)


@pytest.mark.parametrize(
    ("sample_min", "learned", "budget_min"),
    [
        (None, None, 10.0),
        (30.0, None, 8.0),  # half of what the sample foretells for now, 16 min
        (14.0, None, 7.0),  # half of the sample as measured
        (None, (5.0, 14.0), 5.0),
        (None, (12.0, 14.0), 7.0),  # half of what the sightings foretell
        (None, (12.0, 30.0), 12.0),  # what was seen stands in for the 10 min
        (None, (12.0, None), 12.0),
    ],
)
def test_the_smallest_of_what_bounds_an_edge_by_hand(sample_min, learned, budget_min):
    """An open time of 10 min, 16 likely; learned: low and likely of what was seen on the floor."""
    span = Span(10.0, 16.0, 40.0, Rank.PRACTICE, "")
    seen = None if learned is None else Span(*learned, 60.0, Rank.LEARNED, "")
    found = edge_budget(span, sample_min=sample_min, learned=seen)
    assert found.value == pytest.approx(budget_min)


@pytest.mark.parametrize(
    ("ends_min", "within"),
    [
        ((1000, 1440, 1440), (1000, 1440, 1440)),
        ((1000, 1441, 1500), (1000, None, None)),
        ((1000, 1440, 1441), (1000, 1440, None)),
        ((1500, 2000, None), (1440, None, None)),
    ],
)
def test_a_wait_of_more_than_a_day_has_no_end(ends_min, within):
    found = within_a_day(Span(*ends_min, Rank.PRACTICE, ""))
    assert (found.low, found.likely, found.high) == within


def test_a_samples_ends_span_relations_that_do_not_agree_about_the_change():
    """On a cold slab one says much less, in hot air one says more than the likely change."""
    timed = Timed(9.0, Conditions(), drop_s=10.0)
    cold = open_time(Conditions(surface_c=12, air_c=15, rh_percent=70), timed=timed)
    hot = open_time(Conditions(surface_c=26, air_c=40, rh_percent=45), timed=timed)
    assert cold.likely is not None
    assert cold.low < 0.9 * REPEAT_LOW * cold.likely
    assert hot.likely is not None
    assert hot.high is not None
    assert hot.high > 1.05 * REPEAT_HIGH * hot.likely


@pytest.mark.parametrize("slab_f", [49.9, 85.1, 32, 110])
def test_a_slab_too_hot_or_too_cold_has_no_clock_at_all(slab_f):
    now = Conditions(surface_c=c_from_f(slab_f))
    for clock in (open_time, dry_to_recoat):
        with pytest.raises(Unanswerable) as no:
            clock(now)
        assert "°F" in no.value.reason
        assert no.value.remedies


@pytest.mark.parametrize("slab_f", [50, 85])
def test_the_limits_themselves_are_still_a_yes(slab_f):
    assert open_time(Conditions(surface_c=c_from_f(slab_f))).low > 0


@pytest.mark.parametrize("minutes", [0.0, -3.0, float("nan")])
def test_a_sample_of_no_time_is_refused(minutes):
    for clock in (open_time, dry_to_recoat):
        with pytest.raises(Refused):
            clock(Conditions(), timed=Timed(minutes))


def test_where_water_condenses_nothing_dries_and_the_clock_says_so():
    sweating = Conditions(surface_c=15, air_c=30, rh_percent=90)
    wait = dry_to_recoat(sweating)
    assert (wait.low, wait.likely, wait.high) == (DAY_MIN, None, None)
    assert open_time(sweating).likely is not None  # the slab still drinks


@pytest.mark.common_practice
def test_open_time_on_a_normal_trowel_at_70_f_is_5_to_15_minutes():
    """Common practice, no source: a planning default of 5-15 min, 10 likely; 4-20 said at most."""
    span = open_time(Conditions(surface_c=c_from_f(70), air_c=c_from_f(70), rh_percent=45))
    assert span.low == pytest.approx(5, rel=0.05)
    assert span.likely == pytest.approx(10, rel=0.05)
    assert span.high == pytest.approx(15, rel=0.05)
    assert span.rank is Rank.PRACTICE


@pytest.mark.common_practice
def test_open_time_on_a_hot_open_windy_slab_is_2_to_5_minutes():
    """Common practice, no source."""
    hot = Conditions(surface_c=c_from_f(84), air_c=c_from_f(95), rh_percent=25, air_speed_m_s=1.0)
    span = open_time(hot, drop_s=4)
    assert span.likely is not None
    assert 2 <= span.likely <= 5


@pytest.mark.common_practice
def test_open_time_on_a_cool_tight_slab_is_15_to_30_minutes():
    """Common practice, no source. Tight: a drop takes 20-60 s."""
    span = open_time(
        Conditions(surface_c=c_from_f(55), air_c=c_from_f(58), rh_percent=60), drop_s=25
    )
    assert span.likely is not None
    assert 15 <= span.likely <= 30


@pytest.mark.common_practice
@pytest.mark.parametrize("ft2_per_gal", [120, 200, 300, 450])
def test_open_time_of_every_usual_coverage_stays_within_4_to_20_minutes(ft2_per_gal):
    """Common practice, no source: one figure, 4-20 min, is given for coats of all coverages."""
    span = open_time(Conditions(), m2_per_l=m2_per_l_from_ft2_per_gal(ft2_per_gal))
    assert span.likely is not None
    assert 4 <= span.likely <= 20


@pytest.mark.common_practice
def test_the_next_coat_waits_about_2_h_on_a_mild_day():
    """Common practice, no source: about 2 h, 1-4 h said elsewhere."""
    for slab_f, air_f, rh_percent in ((70, 70, 45), (70, 72, 45), (68, 70, 40), (72, 72, 50)):
        span = dry_to_recoat(
            Conditions(surface_c=c_from_f(slab_f), air_c=c_from_f(air_f), rh_percent=rh_percent)
        )
        assert span.likely is not None
        assert 90 <= span.likely <= 180
        assert span.high is not None
        assert span.low >= 45


@pytest.mark.common_practice
@pytest.mark.parametrize("rh_percent", [35, 50, 65])
def test_at_50_f_a_coat_is_not_dry_after_3_h(rh_percent):
    """Common practice, no source: more than 3 h and still not dry."""
    span = dry_to_recoat(
        Conditions(surface_c=c_from_f(50), air_c=c_from_f(50), rh_percent=rh_percent)
    )
    assert span.likely is None or span.likely > 180


@pytest.mark.common_practice
def test_in_air_of_100_f_a_coat_dries_far_quicker():
    """Common practice, no source. The slab itself may not be above 85 F."""
    hot = Conditions(surface_c=c_from_f(84), air_c=c_from_f(100), rh_percent=20, air_speed_m_s=0.3)
    mild, quick = dry_to_recoat(Conditions()), dry_to_recoat(hot)
    assert mild.likely is not None
    assert quick.likely is not None
    assert quick.likely < mild.likely / 2


@pytest.mark.common_practice
@given(air.conditions, air.m2_per_l, air.drop_s)
def test_no_edge_is_trusted_beyond_half_an_hour_until_a_sample_is_timed(now, m2_per_l, drop_s):
    """Common practice, no source: 15-30 min on a cool tight slab is the longest anybody says."""
    span = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s)
    assert span.high is not None
    assert span.high <= 30
    timed = open_time(now, m2_per_l=m2_per_l, drop_s=drop_s, timed=Timed(50, now, m2_per_l, drop_s))
    assert timed.likely == pytest.approx(50)
