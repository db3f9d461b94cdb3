"""The materials of a job: what is on its list, and what its other facts imply."""

from dataclasses import replace

from tests.job.go.jobs import GOOD

from farwall.facts.job import Coat, Stain
from farwall.facts.materials import Material
from farwall.facts.sealer import Sealer
from farwall.facts.washing import Washing
from farwall.job.pouring.listed import materials_of

SAND = replace(
    GOOD,
    stains=(Stain("sand", name="sand"),),
    coats=(Coat("one", "sand", "1:1"),),
    materials=(),
    washing=Washing(),
    sealer=Sealer(),
)


def kinds(job):
    return [one.material.kind for one in materials_of(job)]


def test_water_stain_bicarbonate_and_rinse_water_are_there_without_being_entered():
    found = materials_of(SAND)
    assert kinds(SAND) == [
        "water", "stain", "mixed stain", "dried stain", "bicarbonate", "rinse water",
        "neutralised rinse water",
    ]  # fmt: skip
    assert all(one.implied for one in found)
    assert [one.name for one in found][1:4] == ["sand", "mix of sand", "sand dried on the floor"]


def test_added_acid_base_and_sealer_follow_from_the_facts_that_name_them():
    acid = replace(SAND, coats=(Coat("one", "sand", "1:1", added_acid_fl_oz_per_gal=8),))
    assert "muriatic acid" in kinds(acid)
    assert "ammonia water" in kinds(replace(SAND, washing=Washing(base="ammonia water")))
    assert kinds(SAND).count("bicarbonate") == 1
    told = replace(SAND, washing=Washing(base="bicarbonate"))
    assert kinds(told).count("bicarbonate") == 1
    epoxy = replace(SAND, sealer=Sealer(type="epoxy"))
    assert {"epoxy part A", "epoxy part B"} <= set(kinds(epoxy))


def test_what_is_on_the_list_is_not_implied_again_and_no_id_is_there_twice():
    bag = Material("water", "bicarbonate", "the big bag", sheet_read=True)
    found = materials_of(replace(SAND, materials=(bag,)))
    assert [one.material.kind for one in found].count("bicarbonate") == 1
    ids = [one.material.id for one in found]
    assert len(set(ids)) == len(ids)
    assert not found[0].implied


def test_a_second_stain_is_implied_beside_one_that_is_on_the_list():
    job = replace(
        SAND,
        stains=(Stain("sand"), Stain("bark")),
        coats=(Coat("one", "sand", "1:1"), Coat("two", "bark", "1:2")),
        materials=(Material("jug", "stain", stain="sand"),),
    )
    stains = [one.material.stain for one in materials_of(job) if one.material.kind == "stain"]
    assert stains == ["sand", "bark"]
