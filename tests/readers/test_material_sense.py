"""Materials agree with the rest of the job, and are called what they are."""

import pytest

from farwall.readers.material_sense import material_mistakes

STAINS = ["sand"]


def places(*materials):
    return [one.where for one in material_mistakes({"materials": list(materials)}, STAINS)]


def test_materials_that_agree_have_no_mistakes():
    assert places({"id": "jug", "kind": "stain", "stain": "sand", "name": "the old jug"}) == []
    assert places({"id": "bleach", "kind": "bleach"}, {"id": "pail", "kind": "water"}) == []


@pytest.mark.parametrize(
    ("material", "where"),
    [
        ({"id": "jug", "kind": "stain", "stain": "snad"}, "materials[0].stain"),
        ({"id": "jug", "kind": "bleach", "stain": "sand"}, "materials[0].stain"),
        ({"id": "water", "kind": "bleach"}, "materials[0].id"),
        ({"id": "rinse-water", "kind": "lye"}, "materials[0].id"),
        ({"id": "jug", "kind": "lye", "name": "Bicarbonate"}, "materials[0].name"),
        ({"id": "into", "kind": "water"}, "materials[0].id"),
    ],
)
def test_each_disagreement_is_told_where_it_stands(material, where):
    assert places(material) == [where]


@pytest.mark.parametrize("raw", [{}, {"materials": 3}, {"materials": ["x", None, {"id": 4}]}])
def test_what_is_no_list_of_materials_is_left_to_others(raw):
    assert list(material_mistakes(raw, STAINS)) == []
