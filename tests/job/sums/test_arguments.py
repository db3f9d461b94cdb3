import pytest
from hypothesis import given as drawn
from hypothesis import strategies as st

from farwall.errors import Refused, Unanswerable
from farwall.job.sums.arguments import given
from farwall.job.sums.noun import Sum
from farwall.job.sums.registry import SUMS, find

FILM = find("film-drying")
WHOLE = {
    "surface_c": "21",
    "air_c": 21,
    "rh_percent": 50.0,
    "air_speed_m_s": "0.1",
    "film_mm": ".2",
}


def refusal(asked: Sum, raw: dict) -> list[str]:
    with pytest.raises(Refused) as refused:
        given(asked, raw)
    return [str(one) for one in refused.value.mistakes]


def without(*keys: str, **more) -> dict:
    return {key: value for key, value in WHOLE.items() if key not in keys} | more


def test_texts_and_numbers_are_taken_alike():
    found = given(FILM, WHOLE)
    assert found.number("surface_c") == 21.0
    assert found.number("film_mm") == 0.2
    assert found.maybe("pressure_pa") is None


@pytest.mark.parametrize(
    ("told", "key", "value"),
    [
        ({"surface_f": 70}, "surface_c", 21.11111111111111),
        ({"surface_k": "294.15"}, "surface_c", 21.0),
        ({"air_speed_mph": 1}, "air_speed_m_s", 0.44704),
        ({"air_speed_km_h": 3.6}, "air_speed_m_s", 1.0),
        ({"air_speed_ft_min": 60}, "air_speed_m_s", 0.3048),
        ({"film_mil": 10}, "film_mm", 0.254),
        ({"film_in": 0.01}, "film_mm", 0.254),
        ({"film_um": 200}, "film_mm", 0.2),
    ],
)
def test_the_twin_of_a_unit_is_accepted_and_brought_to_si(told, key, value):
    ours = {one for one in WHOLE if one.startswith(key.split("_")[0])}
    if key.startswith("air_speed"):
        ours = {"air_speed_m_s"}
    assert given(FILM, without(*ours, **told)).number(key) == pytest.approx(value, rel=1e-15)


def test_all_mistakes_come_at_once():
    told = refusal(
        FILM,
        {
            "surfce_c": 21,
            "air_c": "warm",
            "air_f": 70,
            "rh_percent": 500,
            "film_mm": 0,
            "cheese": 1,
        },
    )
    text = "\n".join(told)
    for part in (
        "surfce_c: This sum knows no such argument. Did you mean surface_c?",
        'air_c: "warm" is not a number.',
        "air_f: air_c says the same thing.",
        "rh_percent: It must be at least 0 and at most 100 %",
        "film_mm: It must be above 0",
        "cheese: This sum knows no such argument. It knows surface_c",
        "air_speed_m_s: This is needed. Give air_speed_m_s or air_speed_km_h",
    ):
        assert part in text
    assert sum(line.startswith("surface_c: This is needed") for line in told) == 1


@pytest.mark.parametrize(
    "value",
    ["", " ", "21,5", "1e400", "nan", "inf", "-inf", "0x10", "21 c", "two", "9" * 61, None, True,
     [], {}, [21], float("nan"), float("inf"), 10**400],
)  # fmt: skip
def test_what_is_no_number_is_refused(value):
    told = refusal(FILM, without("surface_c", surface_c=value))
    assert len(told) == 1
    assert told[0].startswith("surface_c:")


def test_a_range_is_told_in_the_unit_that_was_used():
    (told,) = refusal(FILM, without("surface_c", surface_f=400))
    assert "at most 158 F" in told


def test_a_choice_is_one_of_those_listed():
    (told,) = refusal(FILM, {**WHOLE, "relation": "uncle"})
    assert "uno, uno_ip, menzel, carrier, shah_quiet_air" in told


def test_one_of_several_starts_is_needed_and_only_one():
    asked = find("coverage")
    (none,) = refusal(asked, {})
    assert "Give one of m2_per_l, ft2_per_gal, wet_film_mm" in none
    (two,) = refusal(asked, {"ft2_per_gal": 200, "wet_film_mil": 4})
    assert two.startswith("ft2_per_gal and wet_film_mil: Only one")


values = (
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text(max_size=8)
    | st.sampled_from(["1:2", "21", "-4e2", "uno", "US gal", "yes"])
    | st.lists(st.integers(), max_size=2)
)


@pytest.mark.parametrize("name", SUMS)
@drawn(st.data())
def test_any_arguments_give_a_result_or_calm_mistakes(name, data):
    """Whatever is written, a sum answers, says no, or names the mistakes."""
    asked = find(name)
    keys = [key for one in asked.arguments for key in one.keys if not one.loaded]
    raw = data.draw(
        st.dictionaries(st.sampled_from(keys) | st.text(max_size=5), values, max_size=8)
    )
    result, told = None, ""
    try:
        result = asked.reckon(given(asked, raw))
    except (Refused, Unanswerable) as trouble:
        told = str(trouble)
    assert told or (result is not None and {"rank", "source", "warnings"} <= set(result))


def test_a_number_too_small_to_matter_is_nothing_and_costs_nothing():
    assert given(FILM, {**WHOLE, "air_c": "1e-999999999"}).number("air_c") == 0
