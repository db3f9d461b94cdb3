"""The page for the utility and the log of the water, read back from the PDF."""

from dataclasses import replace
from datetime import datetime, time, timedelta, timezone

import pypdfium2
import pytest
from tests.job.acid_day.waste_house import STAIN, asked, ground
from tests.job.story.entries import Log

from farwall.facts.contents import Content
from farwall.facts.firm import Firm
from farwall.facts.job import Wishes
from farwall.facts.workers import Emergency
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.waste import waste_of
from farwall.papers.acid import waste_words
from farwall.papers.acid.waste_log import KEYS, log_rows
from farwall.papers.acid.waste_page import page_words, waste_page_pdf
from farwall.papers.run_sheet.in_language import template_words
from farwall.phrasebook import in_spanish

SPANISH = Wishes(language="es", units="metric")


def texts(told):
    document = pypdfium2.PdfDocument(waste_page_pdf(told, waste_of(told)))
    return [page.get_textpage().get_text_range().replace("\r\n", "\n") for page in document]


def entered(*more, wishes=None):
    told = ground() if wishes is None else ground(wishes=wishes)
    log = Log(told.plan)
    log("waste", 600.0, drum="1", litres=170.3, way="kept in the drum", ph_before=6.5, ph=8.4)
    log("waste", 3000.0, drum="1", litres=150.0, way="sewer", who="Ana Poole", manifest="M-7")
    log("note", 10.0, counted=0, text="rain")
    for word, about in more:
        log(word, 3100.0, **about)
    return Ground(told.job, told.plan, kept=tuple(log.kept))


def test_two_pages_with_range_and_room_for_an_answer():
    first, second = texts(ground())
    assert "May this water go to your sewer?" in first
    for word in ("copper", "manganese", "signature", "office", "valid until", "(guess)"):
        assert word in first
    assert "Where the water went" in second
    assert "Never into a storm drain" in second
    assert "manifest no." in second


@pytest.mark.parametrize("language", ["en", "es"])
def test_who_asks_is_written_where_the_firm_was_told_and_has_a_line_where_not(language):
    told = ground(wishes=Wishes(language=language))
    firm = Firm("The Office of Floors", phone="555 0142", email="a@b.example", contact="Ana Poole")
    known = Ground(replace(told.job, firm=firm), told.plan)
    first = texts(known)[0]
    assert "Ana Poole, The Office of Floors" in first
    assert "555 0142, a@b.example" in first
    assert len(texts(known)) == len(texts(told)) == 2


def test_metals_stand_as_reckoned():
    rows = {row["name"]: row for row in page_words(ground(), waste_of(ground()))["metals"]}
    assert rows["copper"]["found"].endswith(" mg/L")
    assert rows["chromium(VI)"]["found"] == "traces, from cement"
    none = ground(stains=(replace(STAIN, contents=()),))
    assert {row["found"] for row in page_words(none, waste_of(none))["metals"]} == {"?"}
    assert "not entered" in texts(none)[0]


def test_chromate_is_told_the_utility():
    told = ground(stains=(replace(STAIN, contents=(Content("potassium dichromate", 5),)),))
    assert "does not settle at any pH" in texts(told)[0]


def test_tests_that_were_made_are_told():
    assert "Tests are laid beside this page." in texts(asked())[0]
    assert "has been tested yet" in texts(ground())[0]


def test_the_address_stands_where_it_is_told():
    told = ground(emergency=Emergency(address="14 Alder Row"))
    assert "14 Alder Row" in texts(told)[0]


def test_expected_drums_are_numbered_until_something_is_entered():
    part = waste_of(ground())
    blank = log_rows(ground(), part, rows=6)
    assert [row[1] for row in blank] == ["1", "2", "", "", "", ""]
    assert {len(row) for row in blank} == {len(KEYS)}
    with_log = entered()
    told = log_rows(with_log, part, rows=6)
    assert told[0] == ["2027-05-04", "1", "45", "6.5", "8.4", "", "kept in the drum", ""]
    assert told[1] == ["2027-05-06", "1", "40", "", "", "Ana Poole", "sewer", "M-7"]
    assert [row[1] for row in told[2:]] == [""] * 4


def test_litres_in_metric():
    told = entered(wishes=Wishes(units="metric"))
    assert log_rows(told, waste_of(told), rows=1)[0][2] == "170"


def test_what_was_struck_is_not_printed():
    with_log = entered(("struck", {"entry": "phone-0001"}))
    rows = log_rows(with_log, waste_of(ground()), rows=3)
    assert [row[7] for row in rows] == ["M-7", "", ""]


def test_a_drum_told_by_two_phones_is_one_line_on_the_day_of_the_house():
    """By hand: a phone on the clock of another zone, two minutes after the other; 11 pm there."""
    told = ground()
    start = datetime.fromisoformat(told.plan.starts_at)
    late = datetime.combine(start.date(), time(23), start.tzinfo)
    logs = [Log(told.plan, name) for name in ("lead", "helper")]
    for n, log in enumerate(logs):
        at_min = (late - start).total_seconds() / 60 + 2 * n
        log("waste", at_min, drum="1", litres=170.0, way="hauled", manifest="M-8")
    first, second = (log.kept[0] for log in logs)
    abroad = datetime.fromisoformat(first.entry.at).astimezone(timezone(timedelta(hours=14)))
    assert abroad.date() != start.date()
    first = replace(first, entry=replace(first.entry, at=abroad.isoformat()))
    both = Ground(told.job, told.plan, kept=(first, second))
    rows = log_rows(both, waste_of(both), rows=3)
    assert [(row[0], row[1]) for row in rows] == [
        (start.date().isoformat(), "1"), ("", ""), ("", ""),
    ]  # fmt: skip


def test_more_entries_than_lines_go_on_to_another_page():
    more = [("waste", {"drum": str(n), "litres": 9.0, "way": "hauled"}) for n in range(40)]
    pages = texts(entered(*more))
    assert len(pages) > 2
    assert "39" in pages[-1]


def test_a_long_name_keeps_its_line():
    name = "Tarn Haulage, a very long name of an office with many rooms and desks"
    page = texts(entered(("waste", {"drum": "2", "litres": 9.0, "way": "hauled", "who": name})))[1]
    assert "desks" in page.replace("\n", " ")


def test_every_word_of_both_pages_has_its_spanish():
    first, second = texts(entered(wishes=SPANISH))
    both = first + second
    assert "¿Puede ir esta agua a su alcantarillado?" in both
    for word in ("sewer", "drum", "laid", "water", "guess", "stays", "hauled", "kept in"):
        assert word not in both


WHOLE = [
    one
    for name, one in vars(waste_words).items()
    if name.isupper() and isinstance(one, str) and "{" not in one
]


@pytest.mark.parametrize("sentence", WHOLE)
def test_a_sentence_of_the_page_is_held_by_the_phrasebook(sentence):
    assert in_spanish(sentence) is not None


def test_the_words_of_the_template_have_their_spanish():
    assert "Where the water went" in template_words()
    assert in_spanish("Where the water went")


def test_the_same_facts_give_the_same_bytes():
    assert waste_page_pdf(ground(), waste_of(ground())) == waste_page_pdf(
        ground(), waste_of(ground())
    )


def test_metric_paper_is_a4():
    told = ground(wishes=SPANISH)
    page = pypdfium2.PdfDocument(waste_page_pdf(told, waste_of(told)))[0]
    assert page.get_size() == pytest.approx((595.28, 841.89), abs=0.1)
