from farwall.cli.shown import sum_in_words


def test_the_same_thing_in_two_units_stands_on_one_line():
    words = sum_in_words(
        "demo", {"dew_point_c": 10.0, "dew_point_f": 50.0, "rank": "guess", "source": "us"}
    )
    assert words.splitlines() == [
        "demo", "  dew point  10 °C · 50 °F", "  rank: guess · source: us",
    ]  # fmt: skip


def test_a_range_carries_the_unit_of_the_first_figure_and_nothing_is_a_dash():
    words = sum_in_words(
        "demo",
        {"minutes": None, "low": 3.25, "likely": None, "high": None, "rank": "guess",
         "source": "us", "warnings": ["wet"]},
    )  # fmt: skip
    assert "  low      3.25 min" in words
    assert "  high     - min" in words
    assert "likely" not in words
    assert words.endswith("Mind: wet")


def test_what_was_not_reckoned_stands_on_one_line_and_not_as_dashes():
    words = sum_in_words(
        "demo",
        {"tub_l": 19.0, "mol_per_l_low": None, "mol_per_l_high": None, "acid": None,
         "rank": "guess", "source": "us"},
    )  # fmt: skip
    assert words.splitlines()[1:3] == ["  tub  19 L", "  not reckoned: mol per l, acid"]


def test_large_figures_are_shown_whole():
    assert "101325 Pa" in sum_in_words(
        "demo", {"standard_pressure_pa": 101325.04, "rank": "published", "source": "us"}
    )
