"""The care sheet: the sealer's own waits, days where the log tells the last coat, lots, names."""

from dataclasses import replace
from types import MappingProxyType

from tests.papers.office.grounds import ground, own_texts, texts

from farwall.facts.sealer import Sealer
from farwall.job.story.noun import Happened, Story
from farwall.papers.office.blocks import Own, Rows
from farwall.papers.office.care import care


def waits_of(paper):
    rows = next(one for one in paper.blocks if isinstance(one, Rows))
    return {row[0]: (row[1], row[2].text if isinstance(row[2], Own) else row[2])
            for row in rows.rows}  # fmt: skip


def story(*happened):
    return Story("2026-05-14T08:00:00-06:00", happened)


def test_waits_are_those_of_the_type_and_said_to_be_so():
    paper = care(ground())
    waits = waits_of(paper)
    assert waits["nobody on it, no pets"][0] == "4 h"  # water acrylic
    assert waits["socks only; no water"][0] == "24 h"
    assert waits["no furniture; then carried in, on felt"][0] == "7 days"
    assert waits["no rugs, no mats; then only such as breathe"][0] == "30 days"
    assert "usual waits of its type" in " ".join(texts(paper))


def test_a_label_that_was_told_wins():
    label = Sealer(type="water acrylic", walk_h=30, furniture_h=96)
    paper = care(ground(sealer=label))
    waits = waits_of(paper)
    assert waits["nobody on it, no pets"][0] == "30 h"
    assert waits["socks only; no water"][0] == "30 h"  # never shorter than the walk
    assert waits["no furniture; then carried in, on felt"][0] == "4 days"
    assert "as the sealer's label has them" in " ".join(texts(paper))


def test_days_run_from_the_last_coat_in_the_log_by_hand():
    """Sealed at minute 6,000 from Thu 14 May 8:00: Mon 18 May 12:00; 4 h later 4 pm; 7 days later
    Mon 25 May; 30 days later Wed 17 June; a year later 18 May 2027."""
    told = story(
        Happened("a", "sealed", 3000.0, MappingProxyType({})),
        Happened("b", "sealed", 6000.0, MappingProxyType({})),
    )
    paper = care(ground(story=told))
    waits = waits_of(paper)
    assert waits["nobody on it, no pets"][1] == "Mon 18 May, 4:00 pm"
    assert waits["no furniture; then carried in, on felt"][1] == "Mon 25 May, 12:00 pm"
    assert waits["no rugs, no mats; then only such as breathe"][1] == "Wed 17 Jun, 12:00 pm"
    assert "Tuesday, May 18, 2027" in list(own_texts(paper))
    assert {one for _, one in waits_of(care(ground())).values()} == {""}


def test_lots_are_those_that_were_mixed_else_those_of_the_job():
    mixed = story(
        Happened("a", "mixed", 1.0, MappingProxyType({"coat": "first", "lot": "L-9"})),
        Happened("b", "mixed", 2.0, MappingProxyType({"coat": "first", "lot": "L-9"})),
        Happened("c", "mixed", 3.0, MappingProxyType({"coat": "first", "lot": "L-10"})),
    )
    assert "light earth · 1:1 · L-9, L-10" in list(own_texts(care(ground(story=mixed))))
    assert "light earth · 1:1 · L-114" in list(own_texts(care(ground())))


def test_what_hurts_the_floor_and_whom_to_call():
    words = " ".join(texts(care(ground())))
    for one in ("ammonia", "bleach", "vinegar", "pine", "solvent", "Felt", "pH-neutral", "quart"):
        assert one in words
    assert "555 0142" in list(own_texts(care(ground())))


def test_a_leap_day_has_its_year():
    from datetime import datetime

    from farwall.papers.office.care import _recoat

    day = datetime.fromisoformat("2028-02-29T12:00:00-06:00")
    assert _recoat(day, ground()).text == "Wednesday, February 28, 2029"


def test_a_sealer_that_nobody_told_has_lines():
    bare = care(ground(sealer=replace(Sealer())))
    assert sum(set(one) == {"_"} for one in own_texts(bare)) >= 3


def test_name_and_lots_of_the_sealer_are_those_that_were_entered():
    def laid(**about):
        return Happened("a", "sealed", 3000.0, MappingProxyType(about))

    clear = Sealer(type="water acrylic", name="Clear One")
    told = story(laid(lot="S-1"), laid(lot="S-1"), laid(lot="S-2"))
    assert "Clear One · S-1, S-2" in list(own_texts(care(ground(sealer=clear, story=told))))
    other = story(laid(lot="S-1"), laid(lot="T-9", sealer="Clear Two"))
    both = list(own_texts(care(ground(sealer=clear, story=other))))
    assert "Clear One, Clear Two · S-1, T-9" in both
    line = "Clear One · ________________"
    assert line in list(own_texts(care(ground(sealer=clear, story=story(laid())))))
    assert line in list(own_texts(care(ground(sealer=clear))))
