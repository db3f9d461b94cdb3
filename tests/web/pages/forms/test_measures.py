"""Units of the blanks: there and back without a digit lost; what people write is read."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.web.pages.forms.measures import (
    FEET,
    INCHES,
    Measure,
    NoNumber,
    measure_of,
    plain_number,
)

KEYS = (
    "tank_l", "band_m", "spray_m2_min", "m2_per_l", "slab_c", "vapour_ug_m2_s", "cement_kg_m3",
    "density_kg_l", "tip_l_min", "walk_m_min", "air_speed_m_s", "rh_percent", "drop_s",
    "slab_age_days", "added_acid_fl_oz_per_gal", "sheen_loss_min", "north_deg", "heater_kw",
)  # fmt: skip
WRITTEN = st.decimals(
    min_value=0, max_value=9999, places=2, allow_nan=False, allow_infinity=False
).map(lambda number: f"{number.normalize():f}")


@given(st.sampled_from([*map(measure_of, KEYS), FEET, INCHES]), st.sampled_from(["us", "metric"]),
       WRITTEN)  # fmt: skip
def test_what_is_typed_comes_back_the_same(measure: Measure, system, text):
    value = measure.si(text, system)
    again = measure.text(value, system)
    # A length may come back by the marks of a tape; it is the same length.
    assert again == text or measure.si(again, system) == pytest.approx(value, rel=1e-11)
    assert measure.text(measure.si(again, system), system) == again


@pytest.mark.parametrize(
    ("key", "value", "shown"),
    [("m2_per_l", 4.908, "200"), ("m2_per_l", 7.363, "300"), ("tank_l", 7.571, "2"),
     ("spray_m2_min", 2.787, "30"), ("tank_l", 5.0, "1.321")],
)  # fmt: skip
def test_a_rounded_value_shows_no_more_digits_than_it_has(key, value, shown):
    """200 ft²/gal is 4.9085 m²/L: kept in four digits, it is 200 again and not 199.98."""
    assert measure_of(key).text(value, "us") == shown


def test_by_hand():
    """70 °F = 21.11 °C; 2 gal = 7.5708 L; 200 ft²/gal = 4.9085 m²/L; 3 lb = 169.53 µg/(m²·s)."""
    assert measure_of("slab_c").si("70", "us") == pytest.approx(190 / 9)
    assert measure_of("tank_l").si("2", "us") == pytest.approx(7.570823568)
    assert measure_of("m2_per_l").si("200", "us") == pytest.approx(4.9085, abs=5e-5)
    assert measure_of("vapour_ug_m2_s").si("3", "us") == pytest.approx(169.53, abs=5e-3)
    assert measure_of("cement_kg_m3").si("470", "us") == pytest.approx(278.8, abs=0.1)
    assert measure_of("air_speed_m_s").si("50", "us") == pytest.approx(0.254)
    assert INCHES.si("43", "us") == pytest.approx(1.0922)


@pytest.mark.parametrize(
    ("text", "metres"),
    [("12", 3.6576), ("12.5", 3.81), ("12' 6\"", 3.81), ("12'6 1/2\"", 3.8227), ("3.81 m", 3.81)],
)
def test_a_tape_is_read(text, metres):
    assert FEET.si(text, "us") == pytest.approx(metres)


@pytest.mark.parametrize(
    ("key", "system", "text", "si"),
    [("band_m", "us", "12 ft", 3.6576), ("band_m", "us", "1,500 ft", 457.2),
     ("band_m", "us", "381 cm", 3.81), ("band_m", "metric", "12' 6\"", 3.81),
     ("tank_l", "us", "2.5 gal", 9.4635), ("tank_l", "us", "9,46 L", 9.46),
     ("tank_l", "metric", "2 gallons", 7.5708), ("tip_l_min", "us", "0.5 gpm", 1.8927),
     ("spray_m2_min", "us", " 30 sq ft/min ", 2.7871), ("slab_c", "us", "67F", 175 / 9),
     ("slab_c", "us", "20 °C", 20.0), ("rh_percent", "us", "45%", 45.0),
     ("refill_min", "us", "3 min", 3.0), ("drop_s", "us", "12 sec", 12.0)],
)  # fmt: skip
def test_a_unit_behind_the_number_is_read(key, system, text, si):
    assert measure_of(key).si(text, system) == pytest.approx(si, abs=5e-5)


@pytest.mark.parametrize("text", ["8 in", '8"', "0.67 ft", "20.3 cm", "8 pulgadas"])
def test_a_blank_in_inches_reads_other_lengths(text):
    assert INCHES.si(text, "us") == pytest.approx(0.203, abs=2e-3)


@pytest.mark.parametrize(
    ("key", "text"),
    [("refill_min", "3m"), ("tank_l", "2 ft"), ("slab_c", "67 %"), ("band_m", "12 m2"),
     ("band_m", "1,500 m"), ("tank_l", "six gal")],
)  # fmt: skip
def test_a_unit_that_is_not_of_the_blank_is_refused(key, text):
    with pytest.raises(NoNumber):
        measure_of(key).si(text, "us")


@pytest.mark.parametrize(
    ("metres", "text"), [(3.81, "12.5"), (0.3048 * 12 + 0.0254 * 4, "12' 4\""), (1.1, "3.61")]
)
def test_a_length_is_shown_as_a_tape_says_it(metres, text):
    assert FEET.text(metres, "us") == text


@pytest.mark.parametrize("text", ["", "x", "1.2.3", "nan", "inf", "1_000", "1,2,3", "--4", "12 m2"])
def test_what_is_no_number_is_none(text):
    with pytest.raises(NoNumber):
        plain_number(text)


def test_a_comma_is_thousands_beside_gallons_and_never_guessed_beside_litres():
    assert plain_number("1,500") == 1500
    assert plain_number("1,5") == 1.5
    assert plain_number("1,5", "metric") == 1.5
    with pytest.raises(NoNumber):
        plain_number("1,500", "metric")
