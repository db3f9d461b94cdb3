"""The part of a planned job: spill, tubs, floor, pH, warnings."""

from dataclasses import replace
from math import fsum

import pytest
from tests.job.acid_day.neutralising.grounds import EARTH, ground, planned

from farwall.facts.contents import Content
from farwall.facts.job import Stain
from farwall.facts.plain import plain
from farwall.facts.washing import Washing
from farwall.job.acid_day.neutralising import neutralising_of, neutralising_said, steps


def test_tubs_hold_what_the_plan_mixes():
    """A cut of 1:1 halves the stain's 3.154 mol/L, 1:2 makes a third of it."""
    _, plan = planned()
    found = neutralising_of(ground())
    for mix, tub in zip(plan.mixes, found.tubs, strict=True):
        assert tub.litres == pytest.approx(mix.stain_l + mix.water_l)
        assert tub.mol_high == pytest.approx(mix.stain_l * 3.1543, rel=1e-3)
        assert tub.base_kg_high == pytest.approx(tub.mol_high * 0.084006)
        assert tub.air_m3 == pytest.approx(tub.co2_l_high / 1000 / 0.005)
        assert tub.vessel_l == pytest.approx(4 * tub.litres)
        cools = tub.mol_high * 31.13 / (4.18 * 2 * tub.litres)
        assert tub.warming_k == pytest.approx(-cools, rel=1e-3)
    assert found.largest == max(found.tubs, key=lambda one: one.mol_high).mix


def test_the_floor_is_neutralised_once_whatever_the_coats():
    _, plan = planned()
    area = fsum(one.area_m2 for one in plan.fields if one.coat == "first")
    floor = neutralising_of(ground()).floor
    assert fsum(one.area_m2 for one in floor.fields) == pytest.approx(area)
    assert floor.water_l == pytest.approx(area * 0.5)
    assert floor.base == pytest.approx(area * 0.5 * 0.015)
    assert floor.base_low < floor.base < floor.base_high


def test_acid_laid_and_the_lime_that_takes_it_by_hand():
    """Laid: the coverage of each coat times its mol/L. The leaner concrete has 0.2·0.25·2.24 =
    0.112 g/cm³ of lime, 1.51 mol under a square metre in a millimetre, for two acid each."""
    _, plan = planned()
    floor = neutralising_of(ground()).floor
    rate = plan.inputs.l_per_m2
    laid = rate["first"] * 3.1543 / 2 + rate["second"] * 3.1543 / 3
    assert floor.acid_mol_m2_high == pytest.approx(laid, rel=1e-3)
    assert floor.lime_mm == pytest.approx(laid / 2 / 1.512, rel=2e-3)
    assert floor.lime_mm < 1
    assert floor.wash_share == pytest.approx(0.5 * 15 / 84.006 / laid, rel=1e-3)


def test_salts_are_not_counted_against_the_floor():
    """They stay in it as colour; in a spill and a tub they are."""
    rusty = replace(EARTH, contents=(Content("iron(III) chloride", 20, 30),))
    plain_one, rich = neutralising_of(ground()), neutralising_of(ground(stain=rusty))
    assert rich.floor == plain_one.floor
    assert rich.tubs[0].base_kg_high > 2 * plain_one.tubs[0].base_kg_high


def test_soda_ash_takes_five_eighths_and_ammonia_is_counted_in_litres():
    soda, ash, ammonia = (
        neutralising_of(ground(washing=Washing(base=one))).floor
        for one in ("bicarbonate", "soda ash", "ammonia water")
    )
    assert ash.base == pytest.approx(soda.base * 52.994 / 84.006)
    assert ammonia.in_litres
    assert ammonia.base == pytest.approx(soda.water_l / 30)


def test_spills_and_tubs_stay_with_bicarbonate():
    lime = neutralising_of(ground(washing=Washing(base="lime")))
    assert lime.tubs == neutralising_of(ground()).tubs
    assert steps.HEATS in lime.warnings


def test_ph_on_the_way():
    curve = neutralising_of(ground()).curve
    at_dose = curve.shares.index(1.0)
    assert curve.closed[at_dose] <= curve.fresh[at_dose] < 5 < curve.rested[at_dose]
    assert curve.fresh_eight is None
    # 1.5 mol/kg over 0.034 mol/kg/atm, salted out by 10^0.15 at that strength: by hand 62 atm
    assert curve.shut_atm == pytest.approx(62, abs=2)
    assert curve.rested_eight == pytest.approx(1.001, abs=0.002)
    pressures, reads, hours = zip(*curve.rise, strict=True)
    assert list(pressures) == sorted(pressures, reverse=True)
    assert list(reads) == sorted(reads)
    assert hours[0] == 0
    assert list(hours[:-1]) == sorted(hours[:-1])
    assert hours[-1] is None


def test_lime_of_the_table_overshoots():
    rows = {one.base: one for one in neutralising_of(ground()).table}
    assert rows["Ca(OH)2"].tenth_more > 11.5
    assert rows["NH3"].twice < 10
    assert rows["CaCO3"].twice < 6


@pytest.mark.parametrize(
    ("stain", "line"),
    [
        (replace(EARTH, chromate=True), steps.CHROMATE),
        (replace(EARTH, contents=(Content("sodium dichromate", 5, None),)), steps.CHROMATE),
        (replace(EARTH, chromate=None), steps.CHROMATE_UNKNOWN),
        (replace(EARTH, contents=(Content("ammonium chloride", 1, 2),)), steps.AMMONIUM),
        (EARTH, steps.BASE_NOT_TOLD),
    ],
)
def test_what_can_hurt_is_told(stain, line):
    found = neutralising_of(ground(stain=stain))
    assert line in found.warnings + found.notes


def test_the_worst_always_stands_there():
    """Closed vessels, bleach, vinegar, lime, and that the sheet wins."""
    found = neutralising_of(ground(washing=Washing(base="bicarbonate")))
    assert set(steps.NEVER) <= set(found.warnings)
    assert steps.BASE_NOT_TOLD not in found.notes


def test_what_was_not_told_is_asked_for():
    told = " ".join(neutralising_of(ground(stain=Stain(id="earth"))).notes)
    assert "was not told; taken as on sheets seen" in told
    assert "its salts were not told" in told


def test_the_part_is_plain_and_said():
    found = neutralising_of(ground())
    assert plain(found)
    told = neutralising_said(found)
    assert "2.2 to 2.2 lb a gallon" in told[0]
    assert any("fresh fizz" in line for line in told)


def test_sour_water_takes_ten_times_less_for_each_step_of_the_strip():
    found = [one.kg_l for one in neutralising_of(ground()).readings]
    assert found == sorted(found, reverse=True)
    assert found[1] / found[2] == pytest.approx(10, rel=0.1)
    assert found[1] == pytest.approx(0.0109 * 0.084006, rel=0.01)
