"""A call read from key=value: all slips at once, days into months, unknown left open."""

from __future__ import annotations

from datetime import date

import pytest

from farwall.errors import Refused
from farwall.job.call_back import Call, call_from

ROOMS = {"k": "Kitchen", "h": "Hall"}


def test_answers_by_their_words_and_a_room_by_id_or_name():
    told = ["look=haze", "room=Kitchen", "wet=unknown", "months=4"]
    assert call_from(told, ROOMS) == Call(look="haze", room="k", months=4.0)
    assert call_from(["room=h"], ROOMS).room == "h"
    assert call_from([], ROOMS) == Call()
    assert call_from(["look=other"], ROOMS).look == ""


def test_a_day_counts_from_hand_over_and_knows_its_winter():
    call = call_from(["when=2027-02-01"], ROOMS, handed_over=date(2026, 11, 1), north=True)
    assert call.months == pytest.approx(92 / 30.44)
    assert call.winter == "yes"
    assert call_from(["when=2027-02-01"], ROOMS, north=False).winter == "no"
    assert call_from(["when=2027-02-01"], ROOMS).winter == ""
    assert call_from(["when=2027-02-01"], ROOMS).months is None
    assert call_from(["when=3"], ROOMS).months == 3.0


@pytest.mark.parametrize("bad", [
    "hazy", "look=hazy", "room=Attic", "when=soon", "months=-1", "months=inf", "colour=red",
    "rug=persian", "wet=maybe",
])  # fmt: skip
def test_what_cannot_be_understood_is_refused_with_what_can(bad):
    with pytest.raises(Refused) as found:
        call_from([bad], ROOMS)
    assert len(found.value.mistakes) == 1
    assert found.value.mistakes[0].remedy


def test_all_slips_are_told_at_once():
    with pytest.raises(Refused) as found:
        call_from(["look=hazy", "rug=persian", "x", "wet=yes", "wet=no", "when=soon"], ROOMS)
    assert len(found.value.mistakes) == 5


def test_a_day_before_hand_over_is_refused():
    with pytest.raises(Refused):
        call_from(["when=2026-10-01"], ROOMS, handed_over=date(2026, 11, 1))
