"""The ladder on its page: three states apart, every deed an entry of the log, mistakes at once."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from tests.job.colour.ladders import COATS, whole
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.facts.job import Stain
from farwall.facts.plain import plain
from farwall.facts.samples import Look

PNG = b"\x89PNG\r\n\x1a\n" + b"invented" * 4
AT = "/houses/two/colour/ladder"
LONG = "a sample with a name of sixty letters, which nobody should cut"


def facts(*samples):
    told = [plain(replace(one, room="front"), omit_empty=True) for one in samples]
    stains = [plain(Stain("dark", "walnut hull", density_kg_l=1.2), omit_empty=True)]
    coats = [plain(one, omit_empty=True) for one in COATS]
    return two_rooms(samples=told, stains=stains, coats=coats)


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


def tell(office, word, *, files=None, **told):
    return office.post(AT, data={"word": word} | told, files=files or {"x": ("", b"")})


def entries(office):
    return [one.entry for one in office.book.entries("two")]


def section(text, key):
    """The part of the page that shows a state."""
    return re.split(r'<section class="ladder-state"', text.split(f'id="state-{key}"')[1])[0]


def test_three_states_stand_apart_with_their_swatches(office):
    dry = replace(whole()[0], looks=(*whole()[0].looks, Look("dry", (70.0, 2.0, 8.0))))
    office.put(facts(dry, *whole()[1:]), name="Two rooms")
    text = office.get(AT).text
    assert faults_of_html(text) == []
    wet, sealed, powder = (section(text, key) for key in ("clean-wet", "sealed", "dry"))
    assert "L 52.0 · a 8.0 · b 18.0" in wet
    assert "L 52.0" not in sealed
    assert "L 49.0 · a 9.0 · b 20.0" in sealed
    assert powder.count("L 70.0") == 1
    assert "From light to dark: W, P (7.0 L darker), P2 (4.0 L darker), S (3.0 L darker)" in wet
    assert "The coat P2 over P made it 4.0 L darker" in wet
    assert "A screen is not a floor" in text
    assert " of walnut hull" in text
    assert " of dark" not in text


def test_every_swatch_says_its_colour_in_words_and_figures_too(office):
    office.put(facts(*whole()))
    text = office.get(AT).text
    filled = text.count('fill="#')
    assert filled == 8
    assert text.count("CIEDE2000)</p>") == filled
    assert text.count("dark brown") + text.count("medium brown") == filled


def test_a_house_without_samples_is_told_what_to_do(office):
    office.put(facts())
    text = office.get(AT).text
    assert faults_of_html(text) == []
    assert "Lay three cuts side by side" in text
    assert 'name="word" value="sample-seen"' in text
    assert "sample-approved" not in text


def test_a_look_that_was_typed_is_an_entry_and_a_rung(office):
    office.put(facts(*whole()[:1]))
    answer = tell(office, "sample-seen", sample="N", state="sealed", lightness="30", lab_a="7",
                  lab_b="12", error_de="2.5")  # fmt: skip
    assert answer.status_code == 303
    (one,) = entries(office)
    assert one.about == {"sample": "N", "state": "sealed", "lightness": 30.0, "lab_a": 7.0,
                         "lab_b": 12.0, "error_de": 2.5}  # fmt: skip
    assert "L 30.0 · a 7.0 · b 12.0" in section(office.get(AT).text, "sealed")


def test_judged_and_signed_by_the_log(office):
    office.put(facts(*whole()[:3]))
    assert tell(office, "sample-judged", sample="P", verdict="right").status_code == 303
    assert tell(office, "sample-approved", sample="P", approved_by="Ann").status_code == 303
    text = office.get(AT).text
    assert "Judged right." in text
    assert "Signed by Ann, 8 Jun 2026." in text
    assert "the standard" in section(text, "sealed")


def test_a_photo_is_kept_beside_a_colour_that_was_typed(office):
    office.put(facts(*whole()[:1]))
    tell(office, "sample-seen", sample="S", state="dry", lightness="60", lab_a="1", lab_b="2",
         files={"file": ("s.png", PNG)})  # fmt: skip
    (one,) = entries(office)
    assert office.book.file(one.about["file"]) == PNG
    text = office.get(AT).text
    assert f"/houses/two/photo/{one.about['file']}" in section(text, "dry")


def test_a_photo_alone_tells_the_colour(office, monkeypatch):
    told = {"lightness": "44.00", "lab_a": "8.00", "lab_b": "19.00", "error_de": "0.90",
            "spread_lightness": "2.14"}  # fmt: skip
    monkeypatch.setattr("farwall.web.pages.colour.ladder.look_told", lambda *_: told)
    office.put(facts(*whole()[:1]))
    tell(office, "sample-seen", sample="S", state="clean wet", files={"file": ("s.png", PNG)})
    (one,) = entries(office)
    assert (one.about["lightness"], one.about["error_de"]) == (44.0, 0.9)
    assert "the target was off by 0.9 (CIEDE2000) · L varies by 2.1" in section(
        office.get(AT).text, "clean-wet"
    )


def test_what_is_wrong_comes_back_with_what_was_typed(office):
    office.put(facts(*whole()[:1]))
    answer = tell(office, "sample-seen", sample=LONG, state="sealed", lightness="130", lab_a="7")
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    assert 'role="alert"' in answer.text
    assert LONG in answer.text
    assert entries(office) == []


def test_only_words_of_samples_are_told_here(office):
    office.put(facts())
    assert tell(office, "mixed", coat="first", litres="3").status_code == 422
    assert entries(office) == []


def test_an_owner_looks_and_does_not_tell(office):
    office.put(facts(*whole()))
    office.enter_as("owner")
    text = office.get(AT).text
    assert "From light to dark" in text
    assert '<form method="post" action="/houses/two/colour/ladder"' not in text
    assert tell(office, "sample-judged", sample="P", verdict="right").status_code == 403


def test_it_is_whole_in_spanish(office):
    spoilt = tuple(replace(one, scrubs=None, approved_by="") for one in whole())
    office.put(facts(*spoilt))
    text = office.get(AT, headers={"accept-language": "es"}).text
    assert faults_of_html(text) == []
    assert "Limpio y mojado" in text
    assert "Una pantalla no es un piso" in text
    assert '<span lang="en">' not in text


def test_names_are_text_and_nothing_else(office):
    bad = replace(whole()[0], id="<script>x</script>", approved_by="<b>Ann</b>")
    office.put(facts(bad))
    text = office.get(AT).text
    assert "<script>x" not in text
    assert "<b>Ann" not in text


LAID = {"sample": "N", "cut": "1:2", "coat": "first", "area_ft2": "4", "laid_ml": "80"}


def test_what_the_log_tells_goes_into_the_facts_and_is_planned(office):
    office.put(facts(*whole()[:1]))
    office.post("/houses/two/log", data={"word": "sample-laid", **LAID}, files={"x": ("", b"")})
    tell(office, "sample-approved", sample="N", approved_by="Ann")
    assert "The log tells more of N" in office.get(AT).text
    assert tell(office, "into-facts").status_code == 303
    newest = office.book.versions("two")[-1]
    kept = office.book.facts("two", newest.version)
    assert kept["samples"][1]["laid_ml"] == 80
    assert "m2_per_l" not in kept["samples"][1]
    assert kept["survey"]["sample_signed"] is True
    assert "The log tells more" not in office.get(AT).text
    plan = office.book.document("plan", "two")
    (ground,) = [one for one in plan["grounds"] if one["name"] == "coats.first.m2_per_l"]
    # 4 ft² are 0.3716 m²; by 0.08 L that is 4.645 m²/L, in the mean with 5 m²/L of S.
    assert float(ground["value"]) == pytest.approx((4.6452 * 5.0) ** 0.5, rel=1e-4)
    assert (ground["rank"], ground["source"]) == ("measured here", "sample S, N")


def test_what_the_log_tells_that_makes_no_sound_job_is_refused_with_its_reason(office):
    office.put(facts(*whole()[:1]))
    told = LAID | {"cut": "strong"}
    office.post("/houses/two/log", data={"word": "sample-laid", **told}, files={"x": ("", b"")})
    answer = tell(office, "into-facts")
    assert answer.status_code == 422
    assert "is not a cut" in answer.text.replace("&#34;", '"')
    assert len(office.book.versions("two")) == 1


def test_who_may_not_change_facts_does_not(office):
    office.put(facts(*whole()[:1]))
    office.enter_as("helper")
    tell(office, "sample-judged", sample="S", verdict="right")
    assert "Take it into the facts" not in office.get(AT).text
    assert tell(office, "into-facts").status_code == 403
