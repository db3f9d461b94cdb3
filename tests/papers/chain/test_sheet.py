"""The page of a house: one page, the lock in words, its foot, both languages, the same bytes."""

import copy
from dataclasses import replace

import pypdfium2
import pytest
from tests.days.shop import shop, typical
from tests.papers.office import looked_at
from tests.shapes import TWO_ROOMS

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.facts.firm import Firm
from farwall.facts.job import Job, Wishes
from farwall.papers.chain.sheet import chain_data, chain_pdf, made_from, page_words
from farwall.papers.run_sheet.margins import MARGIN_PT
from farwall.phrasebook import said_whole, speaking
from farwall.web.pages.told import reads_english

TOLD = document(calendar(typical()))
HOUSE = TOLD["houses"][0]
JOB = Job(version=1, floor=TWO_ROOMS.floor, exits=TWO_ROOMS.exits, id=HOUSE["id"], revision=3)
HERE = "https://book.example/houses/7"
LONG = "Fruehstueckszimmernebenderaltenspeisekammerhinterdemgartenhaus"


def wishing(job=JOB, **wishes):
    return replace(job, wishes=replace(job.wishes, **wishes))


def pages(pdf):
    book = pypdfium2.PdfDocument(pdf)
    texts = [page.get_textpage().get_text_range() for page in book]
    return [text.replace("\u00a0", " ") for text in texts]  # a number is tied to its unit


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("coats", [2, 4])
@pytest.mark.parametrize("language", ["en", "es"])
def test_a_house_has_one_page(units, coats, language):
    question = typical()
    more = replace(question, houses=(replace(question.houses[0], coats=coats, due_day=1),))
    told = document(calendar(more))
    told["houses"][0]["lost_chance"] = 0.4
    job = wishing(units=units, language=language)
    assert len(pages(chain_pdf(told, told["houses"][0], job, screens=HERE))) == 1


def test_the_page_says_when_other_trades_stay_out_and_whom_they_ask():
    firm = Firm("Stonewright and Daughters", phone="555 0142")
    text = pages(chain_pdf(TOLD, HOUSE, replace(JOB, firm=firm)))[0]
    assert "All other trades stay out" in text
    assert "from Mon 1 Jan, 7:30 am until Sat 6 Jan, 1:00 pm" in text
    assert "Where drying is slow until" in text
    assert "Stonewright and Daughters · 555 0142" in text
    assert "Nobody works alone with acid" in text
    assert "licensed practice win" in text


def test_in_spanish_it_says_the_same():
    text = pages(chain_pdf(TOLD, HOUSE, JOB, language="es"))[0]
    assert "Los demás oficios se quedan fuera" in text
    assert "desde lun. 1 ene, 7:30 a. m. hasta sáb. 6 ene, 1:00 p. m." in text
    assert "Página 1 de 1" in text
    assert "datos 3 · entradas " in text


def strings(value, key=""):
    if isinstance(value, str):
        if key not in {"tape", "qr", "paper", "lang"}:
            yield value
    elif isinstance(value, dict):
        for name, one in value.items():
            yield from strings(one, name)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from strings(one)


@pytest.mark.parametrize("units", ["us", "metric"])
def test_no_sentence_of_it_is_left_in_english(units):
    house = {**copy.deepcopy(HOUSE), "due": "2024-01-03", "late_days": 1, "lost_chance": 0.4}
    house["steps"][-1]["ends_high_at"] = house["lock"]["ends_high_at"] = None
    data = chain_data(TOLD, house, wishing(units=units), language="es")
    said = {key: one for key, one in data.items() if key != "phrases"}
    own = [*strings(said), *data["phrases"].values(), *tape_words(data["tape"])]
    assert len(own) > 60
    assert [one for one in own if reads_english(one)] == []
    with speaking("es"):
        english = page_words(TOLD, house, units=units)
        assert [one for one in strings(english) if not said_whole(one)] == []


@pytest.mark.parametrize(
    ("rank", "source", "english", "spanish"),
    [
        ("common practice", "common-practice: a mild day",
         "Weather: common practice, a mild day.", "Clima: práctica común, un día templado."),
        ("guess", "weather file, house-guess",
         "Weather: guess, weather file.", "Clima: estimación, archivo de clima."),
        ("guess", "the survey's readings, taken to last for days",
         "Weather: guess, the survey's readings, taken to last for days.",
         "Clima: estimación, lecturas de la inspección, como si duraran días."),
    ],
)  # fmt: skip
def test_what_the_weather_rests_on_is_said_in_words(rank, source, english, spanish):
    told = {**TOLD, "rests_on": {"rank": rank, "source": source}}
    assert chain_data(told, HOUSE, JOB)["rests"][0] == english
    assert chain_data(told, HOUSE, JOB, language="es")["rests"][0] == spanish


def tape_words(tape):
    return [part.partition("<")[0] for part in tape.split(">") if part.partition("<")[0].strip()]


def test_every_step_and_milestone_stands_on_it():
    text = pages(chain_pdf(TOLD, HOUSE, JOB))[0].replace("\r\n", " ")
    for step in HOUSE["steps"]:
        assert step["name"] in text
    for one in HOUSE["milestones"]:
        assert one["what"] in text


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_same_calendar_and_job_give_the_same_bytes(language):
    job = wishing(language=language)
    assert chain_pdf(TOLD, HOUSE, job) == chain_pdf(copy.deepcopy(TOLD), HOUSE, replace(job))


def test_its_hash_is_of_the_job_and_its_own_part_of_the_calendar():
    known = made_from(TOLD, HOUSE, JOB)
    moved = {**copy.deepcopy(HOUSE), "crew": "crew 2"}
    assert made_from(TOLD, moved, JOB) != known
    assert made_from(TOLD, HOUSE, replace(JOB, name="Another")) != known
    other = {**TOLD, "houses": [HOUSE, moved]}
    assert made_from(other, HOUSE, JOB) == known
    assert known[:12] in pages(chain_pdf(TOLD, HOUSE, JOB))[0]


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("units", "paper"), [("us", "us-letter"), ("metric", "a4")])
def test_no_word_lies_on_another_or_beyond_a_margin_with_the_longest_names(language, units, paper):
    house = {**copy.deepcopy(HOUSE), "name": LONG}
    job = replace(JOB, wishes=Wishes(units=units, paper=paper, language=language),
                  firm=Firm(LONG, phone=LONG))  # fmt: skip
    for sheet in looked_at.sheets(chain_pdf(TOLD, house, job, screens=HERE)):
        assert looked_at.on_each_other(sheet) == []
        assert looked_at.beyond(sheet, MARGIN_PT) == []


def test_a_name_in_markup_is_a_name():
    house = copy.deepcopy(HOUSE)
    house["name"] = "#panic() *Lot* $9 <b>"
    told = {**TOLD, "houses": [house]}
    assert "#panic() *Lot* $9 <b>" in pages(chain_pdf(told, house, JOB))[0]


def test_a_wait_without_end_says_so():
    house = copy.deepcopy(document(calendar(shop(1)))["houses"][0])
    house["steps"][-1]["ends_high_at"] = None
    rows = page_words(TOLD, {**house, "id": HOUSE["id"]}, units="us")["steps"]
    assert "open end" in rows[-1]["ends"]
