"""Each sum by itself: keys as promised, twins that agree, refusals. Printed values: see
tests/published."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.job.sums.sums import reckon

from farwall.errors import Refused, Unanswerable
from farwall.job.sums.registry import SUMS, find

MILD = {"surface_c": 21, "air_c": 21, "rh_percent": 45, "air_speed_m_s": 0.1}

PROMISED = {
    "convert": ({"value": 1, "from": "ft", "to": "m"}, "value"),
    "coverage": ({"ft2_per_gal": 200}, "ft2_per_gal m2_per_l wet_film_mm wet_film_mil"),
    "batch": (
        {"cut": "1:2", "total_gal": 9},
        "stain_gal water_gal acid_fl_oz total_gal hcl_percent_low hcl_percent_high stain_l",
    ),
    "need": (
        {"area_ft2": 800, "ft2_per_gal": 200, "spread_percent": 20, "certainty_percent": 99},
        "likely_gal reserve_gal mix_gal likely_l",
    ),
    "pack": (
        {"need_gal": 4.4, "sizes_gal": "1,5", "prices": "60,270", "spare_percent": 20},
        "containers cost left_over_gal left_over_l bought_l counts",
    ),
    "air": (
        {"air_c": 21, "rh_percent": 50},
        "dew_point_c wet_bulb_c vapour_pressure_pa humidity_ratio dew_point_f",
    ),
    "saturation": (
        {"air_c": 21},
        "saturation_pressure_pa saturation_humidity_ratio saturation_enthalpy_j_per_kg",
    ),
    "evaporation": (
        {"concrete_c": 21, "air_c": 21, "rh_percent": 50, "wind_m_s": 1},
        "rate_kg_m2_h rate_lb_ft2_h low high relation",
    ),
    "film-drying": ({**MILD, "film_mm": 0.2}, "minutes low high"),
    "slab-tests": ({"area_ft2": 1180}, "f1869_tests f2170_tests d4262_readings"),
    "vapour-rate": ({"gain_g": 2, "hours": 66}, "lb_1000ft2_24h ug_m2_s"),
    "colour-difference": ({"lab1": [50, 2, 3], "lab2": [51, 2, 4]}, "de2000"),
    "film-colour": ({"k": 0.2, "s": 0.1, "thickness": 1, "r_backing": 0.8}, "r t r_on_backing"),
    "purge": ({"air_changes_per_h": 6, "removal_percent": 99}, "minutes"),
    "room-air": (
        {"volume_m3": 60, "release_g_min": 0.02, "air_changes_per_h": 4, "stop_at_mg_m3": 1},
        "mg_m3 ppm steady_mg_m3 minutes_to_stop_at",
    ),
    "air-changes": (
        {"volume_m3": 60, "release_g_min": 0.02, "limit_ppm": 2},
        "air_changes_per_h",
    ),
    "acid-solution": (
        {"hcl_percent": 31.45, "temperature_c": 20},
        "density_kg_l molarity molality hcl_percent baume heat_of_dilution_kj_mol",
    ),
    "acid-vapour": (
        {"hcl_percent": 22, "temperature_c": 30},
        "hcl_pressure_pa ppm_over_liquid low likely high",
    ),
    "neutraliser": (
        {"base": "NaHCO3", "acid_gal": 1, "baume": 20},
        "base_kg base_lb co2_kg equivalent_mass_g_per_mol",
    ),
    "ph": ({"hcl_molal": 0.1, "base": "NaHCO3", "base_molal": 0.1, "co2": "1atm"}, "ph"),
    "sum": (
        {"lines": ["100.00"], "tax": ["100.00@8.25"]},
        "sum_of_lines total_without_tax tax_amounts total_with_tax payable",
    ),
    "open-time": ({**MILD, "ft2_per_gal": 200, "drop_s": 12}, "low likely high rank"),
}


@pytest.mark.parametrize("name", PROMISED)
def test_the_promised_keys_are_there(name):
    raw, keys = PROMISED[name]
    found = reckon(name, **raw)
    assert set(keys.split()) | {"rank", "source", "warnings"} <= set(found)


def test_every_sum_is_tried_here():
    assert set(SUMS) == {*PROMISED, "weather"}


@pytest.mark.parametrize("name", SUMS)
def test_the_list_says_what_the_sum_says(name):
    assert find(name).name == name
    assert find(name).what == SUMS[name]


def test_an_unknown_sum_names_the_nearest():
    with pytest.raises(Refused, match="Did you mean film-drying"):
        find("film_dying")


@given(st.floats(20, 2000))
def test_coverage_goes_round(ft2_per_gal):
    there = reckon("coverage", ft2_per_gal=ft2_per_gal)
    back = reckon("coverage", wet_film_mil=there["wet_film_mil"])
    assert back["ft2_per_gal"] == pytest.approx(ft2_per_gal)
    assert there["m2_per_l"] * there["wet_film_mm"] == pytest.approx(1)


@pytest.mark.common_practice
def test_two_gallons_of_stain_with_two_of_water_make_the_first_four():
    """Common practice, no source."""
    found = reckon("batch", cut="1:1", stain_gal=2)
    assert found["water_gal"] == pytest.approx(2)
    assert found["total_gal"] == pytest.approx(4)


@pytest.mark.common_practice
def test_four_gallons_of_stain_at_one_to_one_are_eight_mixed():
    """Common practice, no source."""
    assert reckon("batch", cut="1:1", stain_gal=4)["total_gal"] == pytest.approx(8)


@given(st.floats(0.1, 100), st.floats(0, 20), st.floats(0.01, 64))
def test_a_batch_adds_up_in_both_units(total_gal, water, acid):
    found = reckon("batch", cut=f"1:{water:.3f}", total_gal=total_gal, acid_fl_oz_per_gal=acid)
    assert found["total_gal"] == pytest.approx(total_gal)
    assert found["stain_gal"] + found["water_gal"] == pytest.approx(total_gal)
    assert found["acid_fl_oz"] == pytest.approx(acid * total_gal)
    assert found["tub_gal"] == pytest.approx(total_gal + acid * total_gal / 128)
    assert found["total_l"] == pytest.approx(total_gal * 3.785411784)


def test_the_strength_of_a_batch_by_hand():
    """1 L of stain of 1.2 kg/L and 10 % with 1 L of water: 0.12 kg in 2.2 kg is 5.45 %."""
    found = reckon("batch", cut="1:1", stain_l=1, stain_hcl_percent_low=10, stain_density_kg_l=1.2)
    assert found["hcl_percent_low"] == pytest.approx(100 * 0.12 / 2.2)
    assert found["hcl_percent_high"] == found["hcl_percent_low"]


def test_a_batch_tells_what_it_lays_and_how_warm_it_gets():
    """By hand: 1 L of 10 % at 1.2 kg/L is 3.291 mol, in 2 L 1.646 mol/L; at 5 m²/L 0.329 mol/m²."""
    told = {"cut": "1:1", "stain_l": 1, "stain_hcl_percent_low": 10, "stain_density_kg_l": 1.2}
    found = reckon("batch", **told, m2_per_l=5, temperature_c=20)
    assert found["mol_per_l_low"] == pytest.approx(1.646, abs=0.001)
    assert found["mol_per_m2_high"] == pytest.approx(0.3291, abs=0.0005)
    assert 20.5 < found["tub_c_high"] < 21  # 4.3 kJ over 2.2 kg, and a third on top
    assert found["times_by_acid_low"] is None
    stronger = reckon("batch", **told, acid_fl_oz_per_gal=8, temperature_f=68)
    assert 1.5 < stronger["times_by_acid_low"] < 4
    assert stronger["mol_per_m2_low"] is None
    assert reckon("batch", cut="1:1", stain_l=1)["mol_per_l_low"] is None


def test_added_acid_comes_with_its_warnings_and_never_with_chromate():
    found = reckon("batch", cut="1:1", stain_gal=2, acid_fl_oz_per_gal=8)
    text = " ".join(found["warnings"])
    for part in ("does not cover", "sample", "Fumes", "Never water into acid"):
        assert part in text
    with pytest.raises(Refused, match="chromate"):
        reckon("batch", cut="1:1", stain_gal=2, acid_fl_oz_per_gal=8, chromate="yes")
    with pytest.raises(Refused, match="chlorine"):
        reckon("batch", cut="1:1", stain_gal=2, acid_fl_oz_per_gal=8, oxidiser="yes")


@pytest.mark.parametrize(
    "raw",
    [
        {"cut": "1:1"},
        {"cut": "1:1", "stain_gal": 1, "total_l": 2},
        {"cut": "half", "stain_gal": 1},
        {"cut": "1:1", "stain_gal": 1, "stain_hcl_percent_low": 12, "stain_hcl_percent_high": 3},
    ],
)
def test_a_batch_that_cannot_be_is_refused(raw):
    with pytest.raises(Refused):
        reckon("batch", **raw)


def test_a_batch_says_what_it_wants_for_the_figures_that_stay_out():
    bare = reckon("batch", cut="1:2", total_gal=5)["warnings"]
    assert any("stain_hcl_percent_low" in one for one in bare)
    strong = {"cut": "1:2", "total_gal": 5, "stain_hcl_percent_high": 10}
    assert any("m2_per_l or ft2_per_gal" in one for one in reckon("batch", **strong)["warnings"])
    whole = reckon("batch", **strong, ft2_per_gal=200)["warnings"]
    assert not any("not told" in one for one in whole)


def test_need_by_hand():
    """800 ft² at 200: 4 gal. cv 0.2: σ = √ln 1.04 = 0.198042; z(99 %) = 2.326348; e^0.460714."""
    found = reckon("need", area_ft2=800, ft2_per_gal=200, spread_percent=20, certainty_percent=99)
    assert found["likely_gal"] == pytest.approx(4)
    assert found["mix_gal"] == pytest.approx(4 * 1.585205, rel=1e-5)
    assert found["reserve_gal"] == pytest.approx(found["mix_gal"] - 4)


def test_need_says_what_it_took_when_not_told():
    found = reckon("need", area_m2=50, m2_per_l=5)
    assert len(found["warnings"]) == 2
    assert found["likely_l"] == pytest.approx(10)


def test_pack_by_hand():
    """4.4 gal and 20 % are 5.28: a pail of five at 270 and a gallon at 60; six gallons are 360.
    Left over is counted from the need without the spare."""
    found = reckon("pack", need_gal=4.4, sizes_gal=[1, 5], prices=["60", 270], spare_percent=20)
    assert (found["counts"], found["cost"]) == ([1, 1], "330.00")
    assert found["left_over_gal"] == pytest.approx(1.6)
    least = reckon("pack", need_gal=4.4, sizes_gal="1,5", prices="60,250", aim="left-over")
    assert (least["counts"], least["cost"]) == ([0, 1], "250.00")


def test_pack_tells_all_that_is_wrong_at_once():
    with pytest.raises(Refused) as refused:
        reckon("pack", need_gal=4.4, sizes_gal="1,5", prices="60,x,9.99999")
    said = str(refused.value)
    assert "2 sizes and 3 prices" in said
    assert '"x" is not a price' in said
    with pytest.raises(Refused, match=r"(?s)x.*y"):
        reckon("pack", need_gal=4.4, sizes_gal="1,x,y", prices="60,1,1")


def test_pack_in_litres_and_in_gallons_is_the_same():
    in_gal = reckon("pack", need_gal=7, sizes_gal="1,5", prices="60,270")
    in_l = reckon("pack", need_l=7 * 3.785411784, sizes_l="3.785411784,18.92705892",
                  prices="60,270")  # fmt: skip
    assert in_gal["counts"] == in_l["counts"]
    assert in_gal["left_over_l"] == pytest.approx(in_l["left_over_l"])


def test_saturation_above_boiling_tells_only_the_pressure():
    found = reckon("saturation", air_c=150)
    assert found["saturation_pressure_pa"] > 101325
    assert found["saturation_humidity_ratio"] is None
    assert found["warnings"]


def test_the_standard_pressure_is_asked_by_altitude_alone():
    assert reckon("saturation", altitude_ft=0)["standard_pressure_pa"] == pytest.approx(101325)
    for raw in ({"altitude_m": 1, "air_c": 1}, {"altitude_m": 1, "pressure_pa": 90000}, {}):
        with pytest.raises(Refused):
            reckon("saturation", **raw)


def test_evaporation_names_what_its_relation_was_made_for():
    found = reckon("evaporation", concrete_c=21, air_c=21, rh_percent=50, wind_m_s=1)
    assert "fresh concrete" in found["made_for"]
    assert "extrapolation" in found["made_for"]
    assert found["low"] <= found["rate_kg_m2_h"] <= found["high"]


def test_outside_the_range_of_a_relation_the_answer_warns():
    calm = {"concrete_c": 21, "air_c": 21, "rh_percent": 50, "relation": "shah_quiet_air"}
    assert not reckon("evaporation", **calm, wind_m_s=0.1)["warnings"]
    assert "air speed" in reckon("evaporation", **calm, wind_m_s=3)["warnings"][0]


def test_a_film_in_damp_air_over_a_cold_slab_does_not_dry():
    found = reckon("film-drying", **(MILD | {"surface_c": 12, "rh_percent": 95}), film_mm=0.2)
    assert found["minutes"] is None
    assert found["high"] is None
    assert any("condenses" in one for one in found["warnings"])


def test_film_drying_says_that_it_is_no_open_time():
    found = reckon("film-drying", **MILD, film_mm=0.2)
    assert any("not an open time" in one for one in found["warnings"])
    assert reckon("open-time", **MILD)["high"] < found["minutes"] / 4


def test_open_time_alone_is_the_mild_day_of_practice():
    found = reckon("open-time")
    assert (found["low"], found["likely"], found["high"]) == pytest.approx((5, 10, 15))
    assert found["rank"] == "common practice"
    assert any("sample" in one for one in found["warnings"])


def test_open_time_in_both_units_agrees():
    si = reckon("open-time", surface_c=25, air_c=30, rh_percent=30, air_speed_m_s=0.44704, drop_s=9,
                m2_per_l=4.908)  # fmt: skip
    us = reckon("open-time", surface_f=77, air_f=86, rh_percent=30, air_speed_mph=1, drop_s=9,
                ft2_per_gal=4.908 * 3.785411784 / 0.09290304)  # fmt: skip
    assert si["likely"] == pytest.approx(us["likely"])


def test_a_timed_sample_is_believed_and_halved_for_the_edge():
    found = reckon("open-time", **MILD, sample_min=9, sample_surface_c=21)
    assert found["likely"] == pytest.approx(9)
    assert found["edge_budget_min"] == pytest.approx(4.5)
    assert found["rank"] == "measured here"
    hot = reckon("open-time", **(MILD | {"surface_c": 29}), sample_min=9, sample_surface_c=21)
    assert hot["likely"] < 9


def test_sun_and_draught_shorten_the_budget():
    plain = reckon("open-time")["edge_budget_min"]
    sun = reckon("open-time", sun="yes")["edge_budget_min"]
    both = reckon("open-time", sun=True, draught="yes")["edge_budget_min"]
    assert both < sun < plain


@pytest.mark.parametrize("surface_f", [49, 86])
def test_a_slab_too_cold_or_too_hot_is_a_no(surface_f):
    with pytest.raises(Unanswerable, match="The slab is"):
        reckon("open-time", surface_f=surface_f)


def test_a_drop_that_stands_is_told():
    assert any("more than a minute" in one for one in reckon("open-time", drop_s=90)["warnings"])


def test_a_sample_without_its_minutes_is_refused():
    with pytest.raises(Refused, match="sample_min"):
        reckon("open-time", sample_surface_c=21)


@pytest.mark.parametrize(
    "raw",
    [
        {"from": "stone", "to": "kg"},
        {"from": "kg", "to": "ft"},
        {"from": "gal", "to": "L"},
        {"from": "C", "to": "K", "value": -300},
    ],
)
def test_a_conversion_that_cannot_be_is_refused(raw):
    with pytest.raises(Refused):
        reckon("convert", **({"value": 1} | raw))


def test_both_unknown_units_are_named_at_once():
    with pytest.raises(Refused) as refused:
        reckon("convert", value=1, **{"from": "stone", "to": "hogshead"})
    assert [one.where for one in refused.value.mistakes] == ["from", "to"]


def test_a_temperature_is_converted_with_its_zero():
    assert reckon("convert", value=85, **{"from": "F", "to": "C"})["value"] == pytest.approx(
        29.444444444444443
    )
