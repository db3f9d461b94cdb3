"""The year's picture and document: whole, small, said in words, the same as the sums."""

import json
import xml.etree.ElementTree as ET

import numpy as np
import pytest
from tests.strategies.weather import epw_text

from farwall.job.year import year_of
from farwall.papers.year_document import year_document
from farwall.papers.year_picture import WIDTH, counts, year_svg
from farwall.readers.epw import parse_epw

SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module", params=[35, 32])
def year(request):
    return year_of(parse_epw(epw_text(fields=request.param), name="invented"))


@pytest.fixture(scope="module")
def drawn(year):
    return year_svg(year, name="Nowhere & beyond")


def test_the_picture_is_small_and_well_formed(drawn):
    assert len(drawn.encode()) < 150_000
    root = ET.fromstring(drawn)
    assert root.find(f"{SVG}title").text == "A year of floors"
    assert "January" in root.find(f"{SVG}desc").text


def test_months_and_their_days_stand_in_it(drawn, year):
    words = [one.text for one in ET.fromstring(drawn).iter(f"{SVG}text")]
    assert any("Nowhere & beyond" in one for one in words)
    for month in year.months:
        assert month.name in words
        at = words.index(month.name)
        assert words[at + 1 : at + 4] == [
            f"{month.stain} stain", f"{month.both_coats} both coats", f"{month.seal} seal",
        ]  # fmt: skip


def test_all_words_lie_inside_the_sheet(drawn):
    from farwall.papers.lettering import text_width

    root = ET.fromstring(drawn)
    for one in root.iter(f"{SVG}text"):
        wide = text_width(one.text, float(one.get("font-size")), bold=bool(one.get("font-weight")))
        share = {"middle": 0.5, "end": 1.0}.get(one.get("text-anchor"), 0.0)
        left = float(one.get("x")) - share * wide
        assert left >= 0
        assert left + wide <= WIDTH
        assert 0 < float(one.get("y")) < float(root.get("height"))


def test_the_sentence_adds_up(year):
    assert counts(year).startswith(f"{sum(one.stain for one in year.months)} days to stain, ")


def test_the_document_tells_each_hour_as_the_sums_have_it(year):
    told = json.loads(json.dumps(year_document(year, name="Nowhere")))
    assert told["version"] == 1
    assert len(told["days"]) == 365
    assert [one["stain"] for one in told["months"]] == [one.stain for one in year.months]
    for n, day in enumerate(told["days"]):
        fine = year.stain.fine[24 * n : 24 * n + 24]
        assert [one == "s" for one in day["stain"]] == list(fine)
        assert set(day["stain"]) <= set(told["stain_codes"])
        assert set(day["seal"]) <= set(told["seal_codes"])
        assert [one in "ga" for one in day["seal"]] == list(year.seal.fine[24 * n : 24 * n + 24])
        for hour, minutes in enumerate(day["recoat_min"]):
            true = year.stain.likely_min[24 * n + hour]
            assert (minutes is None) == bool(np.isnan(true))
            assert minutes is None or abs(minutes - true) <= 0.5
    assert told["days"][59]["day"] == "03-01"
