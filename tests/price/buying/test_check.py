"""The re-adder finds what was put wrong in a sound purchase."""

from __future__ import annotations

import pytest

from farwall.price.buying.check import faults_of

WARES = [
    {"id": "a", "size": 4.0, "price": "60.00", "seller": "yard", "lot": "7", "in_stock": 3},
    {"id": "b", "size": 4.0, "price": "58.00", "seller": "mill", "lot": "8", "in_stock": None},
]
SELLERS = [{"id": "yard", "delivery": "15", "free_from": "180"}, {"id": "mill", "delivery": "20"}]
LINES = [
    {"material": "walnut", "ware": "a", "count": 2},
    {"material": "walnut", "ware": "b", "count": 1},
]
TOLD = {
    "goods": "178.00",
    "delivery": {"yard": "15", "mill": "20"},
    "total": "213.00",
    "fields": {"walnut": [7.5, 4.0]},
}


def test_a_sound_purchase_has_no_fault_by_hand():
    assert faults_of(LINES, {"walnut": 11.5}, WARES, SELLERS, TOLD) == ()


@pytest.mark.parametrize(
    ("needs", "told", "lines", "word"),
    [
        ({"walnut": 12.1}, {}, LINES, "is needed"),
        ({"walnut": 11.5}, {"goods": "177.99"}, LINES, "goods come to"),
        ({"walnut": 11.5}, {"delivery": {"yard": "15"}}, LINES, "Delivery of mill"),
        ({"walnut": 11.5}, {"total": "212.99"}, LINES, "The total"),
        ({"walnut": 11.5}, {"fields": {"walnut": [8.5, 3.0]}}, LINES, "two lots"),
        ({"walnut": 1.0}, {}, [{"material": "walnut", "ware": "a", "count": 4}], "there are 3"),
        ({"walnut": 1.0}, {}, [{"material": "walnut", "ware": "c", "count": 1}], "no ware c"),
        ({"walnut": 0.5}, {}, [{"material": "walnut", "ware": "a", "count": 0.5}], "cannot"),
    ],
)
def test_each_fault_is_found(needs, told, lines, word):
    assert any(word in one for one in faults_of(lines, needs, WARES, SELLERS, TOLD | told))


def test_boxed_stain_may_be_of_two_lots():
    told = TOLD | {"fields": {"walnut": [11.5]}, "boxed": ["walnut"]}
    assert faults_of(LINES, {"walnut": 11.5}, WARES, SELLERS, told) == ()
