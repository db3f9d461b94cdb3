"""Broken job files, one for each way in which people break them, and the calm answer to each.

The files lie in tests/broken_jobs. Each must be answered with these mistakes, at these places,
and no others.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from farwall.errors import Refused
from farwall.readers.job_json import read_job

FOLDER = Path(__file__).parents[1] / "broken_jobs"

DEEP = ("", "[0][0][0]")
"""Where nesting is told: Python 3.11's own reader stops before ours can say where it begins."""

EXPECTED = {
    "empty-file": [
        ("line 1, column 1", "Not JSON"),
    ],
    "cut-off-in-the-middle": [
        ("line 36, column 1", "Not JSON"),
    ],
    "a-comma-too-many": [
        ("line 2, column 15", "Not JSON"),
    ],
    "a-picture-instead": [
        ("", "This is a picture, not a job."),
    ],
    "a-list-instead": [
        ("", "A job is an object"),
    ],
    "nested-without-end": [
        (DEEP, "Nested too deeply"),
    ],
    "nothing-in-it": [
        ("", "`version` is missing"),
        ("", "`floor` is missing"),
        ("", "`exits` is missing"),
    ],
    "made-by-a-later-farwall": [
        ("version", "a later Farwall"),
    ],
    "the-same-key-twice": [
        ("tools", "`tank_gal` is there twice"),
    ],
    "not-a-number": [
        ("tools.tank_gal", "not finite"),
    ],
    "a-number-beyond-all-numbers": [
        ("tools.tank_gal", "too large"),
    ],
    "a-tank-like-a-swimming-pool": [
        ("tools.tank_gal", "at most 52.83 gal"),
    ],
    "a-number-in-quotes": [
        ("tools.tank_gal", "A number is expected"),
    ],
    "an-unknown-key": [
        ("", "`surveys` is not a key"),
        ("tools", "`tank_litres` is not a key"),
    ],
    "litres-and-gallons-at-once": [
        ("tools", "`tank_l` and `tank_gal` are both given"),
    ],
    "no-way-out": [
        ("exits", "needs a way out"),
    ],
    "an-exit-through-a-wall": [
        ("exits[0].opening", 'no opening "frnt"'),
    ],
    "an-exit-into-the-bath": [
        ("exits[0].opening", "lies between rooms"),
    ],
    "a-door-to-nowhere": [
        ("floor.openings[1].rooms[1]", 'no room "bth"'),
    ],
    "a-door-with-one-side": [
        ("floor.openings[0].rooms", "names 1"),
    ],
    "two-rooms-of-one-name": [
        ("floor.rooms[3].id", "already taken by floor.rooms[0]"),
    ],
    "a-bow-tie-room": [
        ("floor.rooms[0].polygon", "crosses or touches itself near (2.00, 1.50)"),
    ],
    "a-room-without-area": [
        ("floor.rooms[0].polygon", "at least three corners"),
    ],
    "a-room-in-millimetres": [
        ("floor.rooms[0].polygon", "from the origin"),
    ],
    "points-with-heights": [
        ("floor.rooms[0].polygon", "5 of its points"),
    ],
    "a-cut-in-words": [
        ("coats[1].cut", "is not a cut"),
    ],
    "a-cut-with-no-stain": [
        ("coats[1].cut", "no stain in it"),
    ],
    "a-coat-of-an-unlisted-stain": [
        ("coats[1].stain", 'no stain "brak"'),
    ],
    "a-start-without-an-offset": [
        ("starts_at", "offset from UTC"),
    ],
    "a-sample-of-a-room-that-is-not-there": [
        ("samples[0].m2_per_l", "more than 0 m²/L"),
        ("samples[0].coat", 'no coat "third"'),
        ("samples[0].room", 'no room "closet"'),
    ],
    "samples-against-each-other": [
        ("samples[0].stain", 'its coat "first" is of "sand"'),
        ("samples[0].cut", "is not a cut"),
        ("samples[0].over", "over itself"),
        ("samples[1].over", "in a ring"),
        ("samples[1].sprayer_after_kg", "weighs 2.5 kg after it"),
        ("samples[2].over", "in a ring"),
        ("samples[2].area_ft2", "at most 215.3 ft²"),
        ("samples[2].approved_on", "is not a day"),
        ("samples[3].over", 'no sample "s9"'),
        ("samples[3].laid_ml", "covered 4.91 m²/L, by laid_ml 2.50"),
        ("samples[4].rag", '"red"'),
        ("samples[4].looks[0].state", '"wet"'),
        ("samples[4].looks[0].lab", "is missing"),
    ],
    "a-survey-of-another-house": [
        ("survey.rooms.kitchen", 'no room "kitchen"'),
        ("survey.slab_f", "at most 158 °F"),
    ],
    "an-order-with-strangers": [
        ("wishes.order[1]", "there twice"),
        ("wishes.order[2]", 'no room "halll"'),
    ],
    "prices-in-words": [
        ("prices.currency", "not a currency"),
        ("prices.containers[0].price", "not an amount"),
        ("prices.containers[1].price", "Text is expected"),
        ("sealer.containers[0].price", "not an amount"),
    ],
    "the-sheet-upside-down": [
        ("stains[0]", "above the high one"),
    ],
    "a-bell-in-a-name": [
        ("name", "cannot be printed"),
    ],
    "a-door-that-is-a-point": [
        ("floor.openings[0].line", "same point"),
    ],
    "acid-added-to-chromate": [
        ("coats[1]", "No acid is added to a stain whose sheet names chromate")
    ],
    "a-sheet-against-itself": [
        ("stains[0].oxidiser", "hydrogen peroxide is listed"),
        ("stains[0]", "104 %"),
        ("stains[0].sheet_read", "is not a day"),
        ("stains[0].chromate", "names a dichromate"),
        ("stains[0].contents[1].mass_percent_low", "above mass_percent_high"),
        ("coats[0]", "names chromate"),
        ("coats[0]", "give off chlorine"),
    ],
    "nine-mistakes-at-once": [
        ("version", "A number is expected"),
        ("floor.openings[0].kind", '"dor"'),
        ("exits[0].opening", "gate"),
        ("crew.sprayers", "at most 2"),
        ("crew.helper", "true or false"),
        ("tools.tank_gal", "more than 0 gal"),
        ("tools", "`bandm`"),
        ("coats[0].cut", "not a cut"),
        ("wishes.units", "imperial"),
    ],
}


def mistakes_of(path: Path) -> list[tuple[str, str, str]]:
    with pytest.raises(Refused) as refusal:
        read_job(path)
    assert path.name in refusal.value.about
    return [(one.where, one.what, one.remedy) for one in refusal.value.mistakes]


@pytest.mark.parametrize("name", EXPECTED)
def test_a_broken_job_is_answered_with_each_of_its_mistakes(name):
    (path,) = FOLDER.glob(f"[0-9][0-9]-{name}.json")
    found = mistakes_of(path)
    for where, what in EXPECTED[name]:
        places = where if isinstance(where, tuple) else (where,)
        assert [one for one in found if one[0] in places and what in one[1]], (where, what, found)
    assert len(found) == len(EXPECTED[name]), found


def test_there_are_thirty_files_or_more_and_each_has_its_expectation():
    names = {path.stem[3:] for path in FOLDER.glob("*.json")}
    assert names == set(EXPECTED)
    assert len(names) >= 30


@pytest.mark.parametrize("path", sorted(FOLDER.glob("*.json")), ids=lambda path: path.stem)
def test_every_mistake_is_a_sentence_with_a_next_step(path):
    for _, what, remedy in mistakes_of(path):
        assert what.endswith(".")
        assert remedy
        assert remedy[-1] in ".?!"
        assert len(what) < 200
