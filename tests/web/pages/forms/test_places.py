"""Where facts lie: types and bounds come from the nouns, what is put is there and nothing else."""

import pytest

from farwall.web.pages.forms.places import hint_at, put, value_at


@pytest.mark.parametrize(
    ("path", "kind", "low", "high", "empty"),
    [
        (("survey", "slab_c"), "number", -17, 70, True),
        (("survey", "pours"), "whole", 1, 50, True),
        (("survey", "rooms", "any", "drop_s"), "number", 0.01, 86_400, True),
        (("tools", "band_m"), "number", 0.3, 3, True),
        (("crew", "sprayers"), "whole", 1, 2, False),
        (("survey", "film"), "choice", None, None, True),
        (("crew", "helper"), "yes-no", None, None, False),
        (("samples", 3, "m2_per_l"), "number", 0.2, 200, True),
        (("stains", 0, "lots"), "list", None, None, True),
        (("prices", "containers", 0, "price"), "text", None, None, False),
        (("wishes", "notes"), "text", None, None, True),
        (("starts_at",), "moment", None, None, True),
        (("coats", 1, "not_before"), "moment", None, None, True),
    ],
)
def test_a_place_is_known_by_its_noun(path, kind, low, high, empty):
    hint = hint_at(path)
    assert (hint.kind, hint.low, hint.high, hint.may_be_empty) == (kind, low, high, empty)


def test_a_way_that_leads_nowhere_is_an_error():
    with pytest.raises(KeyError):
        hint_at(("survey", "colour_of_the_sky"))


def test_put_makes_what_is_on_the_way_and_takes_away():
    raw = {"tools": {"tank_gal": 2}}
    put(raw, ("survey", "rooms", "bath", "drop_s"), 9)
    put(raw, ("samples", 0, "id"), "one")
    put(raw, ("tools", "tank_l"), 8.0)
    assert raw == {
        "tools": {"tank_l": 8.0}, "survey": {"rooms": {"bath": {"drop_s": 9}}},
        "samples": [{"id": "one"}],
    }  # fmt: skip
    put(raw, ("tools", "tank_l"), None)
    assert raw["tools"] == {}


def test_value_at_is_none_where_nothing_is():
    assert value_at({"a": [{"b": 1}]}, ("a", 0, "b")) == 1
    assert value_at({"a": [{"b": 1}]}, ("a", 1, "b")) is None
    assert value_at({"a": 2}, ("a", "b")) is None
