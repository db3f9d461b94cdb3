"""Samples told by facts and log together: what wins, what is struck, what follows."""

import math
import random
from dataclasses import replace

import pytest
from tests.spray.hand_floors import job, row

from farwall.facts.job import Coat, Sealer, Stain
from farwall.facts.log import Entry, Kept
from farwall.facts.samples import Look, Sample
from farwall.job.colour.told import (
    beneath,
    samples_of,
    scrub_told,
    signed_told,
    survey_told,
    with_told,
)
from farwall.job.go import go_or_no_go

START = "2026-05-04T08:00:00-06:00"
COATS = (Coat("first", "dark", "1:1"), Coat("second", "dark", "1:3"))


def house(**facts):
    told = {"coats": COATS, "stains": (Stain("dark", density_kg_l=1.2),), "starts_at": START}
    return replace(job(row(3, 3), samples=()), **{**told, **facts})


def log(*entries, day="2026-04-20"):
    """Entries a minute apart unless a time of day stands first: (time, word, about)."""
    kept = []
    for n, (at, word, about) in enumerate(entries, 1):
        moment = f"{day}T{at}:00-06:00"
        kept.append(Kept(Entry(f"id-{n:03}", "j", word, moment, device="d", number=n, about=about),
                         n, moment, 0.0))  # fmt: skip
    return kept


DAY = log(
    ("09:00", "sample-laid", {"sample": "A", "cut": "1:2", "coat": "first", "room": "a",
                              "area_m2": 0.5, "before_kg": 3.0 + 0.5 / 5 * 3.2 / 3, "after_kg": 3.0,
                              "slab_c": 18.0, "drop_s": 9.0}),
    ("09:14", "sample-sheen-lost", {"sample": "A", "after_min": 14.0}),
    ("10:10", "sample-dry", {"sample": "A", "after_min": 70.0}),
    ("13:00", "sample-washed", {"sample": "A", "scrubs": 3, "ph_before": 5.0, "ph": 8.0,
                                "rag": "grey", "held": "weak"}),
    ("13:20", "sample-seen", {"sample": "A", "state": "clean wet", "lightness": 41.0, "lab_a": 9.0,
                              "lab_b": 20.0, "error_de": 1.2, "spots": 5, "file": "ff"}),
    ("14:00", "sample-laid", {"sample": "B", "cut": "1:3", "coat": "second", "over": "A"}),
    ("16:00", "sample-sealed", {"sample": "B", "sealer": "acrylic"}),
    ("16:30", "sample-judged", {"sample": "B", "verdict": "light"}),
    ("16:40", "sample-judged", {"sample": "B", "verdict": "right"}),
    ("17:00", "sample-approved", {"sample": "B", "approved_by": "Owner"}),
)  # fmt: skip


def test_a_sample_day_by_hand():
    """Mix 1:2 of 1.2 kg/L weighs 3.2/3 kg/L: 100 mL on half a square metre are 5 m²/L."""
    first, second = samples_of(house(), DAY)
    assert (first.id, first.cut, first.room, first.slab_c, first.drop_s) == (
        "A", "1:2", "a", 18.0, 9.0,
    )  # fmt: skip
    assert math.isclose(first.m2_per_l, 5.0)
    assert (first.sheen_loss_min, first.dry_min, first.dwell_h) == (14.0, 70.0, 4.0)
    assert (first.scrubs, first.before_ph, first.after_ph, first.rag) == (3, 5.0, 8.0, "grey")
    assert first.looks == (
        Look("clean wet", (41.0, 9.0, 20.0), error_de=1.2, photo="ff", spots=5),
    )  # fmt: skip
    assert (second.over, second.sealer, second.verdict) == ("A", "acrylic", "right")
    assert (second.approved_by, second.approved_on) == ("Owner", "2026-04-20")


def test_an_empty_log_leaves_the_facts_as_they_are():
    facts = (Sample("A", coat="first", m2_per_l=4.0), Sample("B"))
    assert samples_of(house(samples=facts), ()) == facts


def test_figures_of_the_facts_stand_and_a_later_judgement_goes_before_them():
    facts = (Sample("A", coat="first", cut="1:4", sheen_loss_min=11.0, verdict="light",
                    looks=(Look("dry", (60.0, 3.0, 9.0)),)),)  # fmt: skip
    more = log(("18:00", "sample-judged", {"sample": "a ", "verdict": "dark"}), day="2026-04-21")
    (first, _) = samples_of(house(samples=facts), [*DAY, *(
        replace(one, entry=replace(one.entry, id="later", number=99)) for one in more
    )])  # fmt: skip
    assert (first.cut, first.sheen_loss_min, first.verdict) == ("1:4", 11.0, "dark")
    assert [one.state for one in first.looks] == ["dry", "clean wet"]
    assert first.dry_min == 70.0


def test_a_struck_entry_is_out():
    strikes = Kept(Entry("z", "j", "struck", "2026-04-20T18:00:00-06:00", device="d", number=50,
                         about={"entry": "id-010"}), 50, "", 0.0)  # fmt: skip
    signed = with_told(house(), DAY)
    unsigned = with_told(house(), [*DAY, strikes])
    assert (signed.survey.sample_signed, unsigned.survey.sample_signed) == (True, None)
    assert unsigned.samples[1].approved_by == ""


def test_the_same_entries_in_any_order_and_doubled_tell_the_same():
    shuffled = [*DAY, *DAY[:4]]
    random.Random(7).shuffle(shuffled)
    assert samples_of(house(), shuffled) == samples_of(house(), DAY)


def test_what_go_asks_is_answered_by_the_log_where_the_facts_are_silent():
    assert (scrub_told(DAY, house()), signed_told(DAY, house())) == ("weak", True)
    assert with_told(house(), DAY).survey.sample_scrub == "weak"
    told = house()
    told = replace(told, survey=replace(told.survey, sample_scrub="holds", sample_signed=False))
    kept = with_told(told, DAY).survey
    assert (kept.sample_scrub, kept.sample_signed) == ("holds", False)


def test_go_hears_what_the_log_tells_of_the_sample():
    def verdicts(facts):
        return {one.rule: one.verdict for one in go_or_no_go(facts).findings}

    before, after = verdicts(house()), verdicts(survey_told(house(), DAY))
    assert (after["sample"], after["signed sample"]) == ("go with", "go")
    assert before.get("sample") != "go with"
    assert survey_told(house(), DAY[:3]) == house()


def test_a_dwell_that_was_told_goes_before_the_one_that_follows():
    washed = log(
        ("09:00", "sample-laid", {"sample": "A", "cut": "1:2"}),
        ("13:00", "sample-washed", {"sample": "A", "dwell_h": 3.5}),
    )
    assert samples_of(house(), washed)[0].dwell_h == 3.5
    unlaid = log(("13:00", "sample-washed", {"sample": "A"}))
    assert samples_of(house(), unlaid)[0].dwell_h is None


def test_sealed_without_a_name_is_the_sealer_of_the_job():
    sealed = log(("16:00", "sample-sealed", {"sample": "A"}))
    job_ = house(sealer=Sealer(name="house sealer"))
    assert samples_of(job_, sealed)[0].sealer == "house sealer"


@pytest.mark.parametrize(
    ("over", "chain"),
    [
        ({"A": None, "B": "A", "C": "B"}, ["A", "B", "C"]),
        ({"A": None, "B": None, "C": None}, ["C"]),
        ({"A": None, "B": "gone", "C": "B"}, None),
        ({"A": "C", "B": "A", "C": "B"}, None),
        ({"A": None, "B": None, "C": "C"}, None),
    ],
)
def test_what_lies_beneath_from_the_lowest_up(over, chain):
    found = beneath([Sample(name, over=under) for name, under in over.items()], "C")
    assert (found and [one.id for one in found]) == chain
