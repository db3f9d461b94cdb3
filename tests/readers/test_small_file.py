"""A small file of one noun: every mistake at once, what no schema sees among them. Hand-worked."""

import pytest

from farwall.errors import Mistake, Refused
from farwall.facts.van import VAN_VERSION, Van
from farwall.readers.small_file import of_object
from farwall.readers.van_json import adapter


def read(data, sense=lambda _van: []):
    return of_object(data, Van, adapter(), newest=VAN_VERSION, about="No van:", sense=sense)


@pytest.mark.parametrize("data", [[], "van", 3, None])
def test_what_is_no_object_is_refused_and_shown(data):
    with pytest.raises(Refused, match="It is an object, not") as no:
        read(data)
    assert no.value.about == "No van:"


def test_what_no_schema_sees_is_told_beside_unknown_keys():
    with pytest.raises(Refused) as no:
        read({"version": VAN_VERSION, "sprayer": []}, lambda _van: [Mistake("van", "it is empty.")])
    told = str(no.value)
    assert "`sprayer`" in told
    assert "it is empty." in told


def test_a_sound_one_is_given_back():
    assert read({"version": VAN_VERSION}) == Van()
