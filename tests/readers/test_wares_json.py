"""A price list in JSON: every mistake at once."""

from __future__ import annotations

import pytest

from farwall.errors import Refused
from farwall.facts.plain import plain
from farwall.facts.wares import PriceList, Seller, Ware
from farwall.readers.wares_json import wares_from

GOOD = PriceList(
    sellers=(Seller("yard", "25.00", "400"),),
    wares=(Ware("a", "stain", 3.8, "l", "60.00", "yard", "walnut"),),
)


def test_what_was_written_is_read_back():
    assert wares_from(plain(GOOD)) == GOOD


def test_all_mistakes_are_told_at_once():
    data = plain(GOOD)
    data["wares"] += [dict(data["wares"][0], price="dear"), dict(data["wares"][0], of="", id="b")]
    data["sellers"][0]["delivery"] = "1.23456"
    with pytest.raises(Refused) as refused:
        wares_from(data)
    said = str(refused.value)
    for word in ("have this id", "dear is no amount", "which stain", "four decimals"):
        assert word in said
