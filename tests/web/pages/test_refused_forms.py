"""A form with nothing or nonsense in it: told in words of the page's language, never by keys."""

from __future__ import annotations

import re
from html import unescape
from html.parser import HTMLParser

import pytest
from tests.web.pages.office import Office, faults_of_html

from farwall.web.words import words

KEYS = re.compile(r"`|\b[a-z]+_[a-z_]+\b")
ENGLISH = re.compile(r"\b(the|is|none|this|with|missing)\b", re.IGNORECASE)


@pytest.fixture(scope="module")
def office(tmp_path_factory):
    found = Office(tmp_path_factory.mktemp("office"))
    found.put_planned("Two rooms")
    found.app.state.live.replanning.tapped = lambda job: None
    found.enter_as("lead")
    yield found
    found.close()


class Blanks(HTMLParser):
    """Names of what a form lets be typed or chosen, with hidden ones as they stand."""

    def __init__(self, text, action):
        super().__init__()
        self.action, self.within, self.hidden, self.typed = action, False, {}, []
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        told = dict(attrs)
        if tag == "form":
            self.within = told.get("action") == self.action
        elif self.within and tag in {"input", "select", "textarea"} and "name" in told:
            if told.get("type") == "hidden":
                self.hidden[told["name"]] = told.get("value", "")
            elif told.get("type") not in {"file", "checkbox", "radio"}:
                self.typed.append(told["name"])


def words_of(text):
    """What a person reads of a page's refusal: its list and what stands beside the blanks."""
    found = re.findall(r'role="alert".*?</div>|<p class="wrong".*?</p>|<li>.*?</li>', text, re.S)
    return unescape(" ".join(re.sub(r"<[^>]+>", " ", one) for one in found))


@pytest.mark.parametrize("value", ["", "qqxx~7"])
@pytest.mark.parametrize(
    "path",
    ["/settings/firm", "/houses/two/samples", "/houses/two/survey", "/houses/two/crew",
     "/houses/two/terms", "/houses/two/supplies", "/houses/two/materials", "/enquiry"],
)  # fmt: skip
def test_a_form_with_nothing_or_nonsense_keeps_it_and_says_so_in_spanish(office, path, value):
    spanish = {"accept-language": "es"}
    page = office.get(path.removesuffix("/firm"), headers=spanish).text
    blanks = Blanks(page, path)
    assert blanks.typed
    sent = dict.fromkeys(blanks.typed, value) | blanks.hidden
    answer = office.post(path, data=sent, headers=spanish)
    assert answer.status_code in {200, 303, 422}
    if answer.status_code == 422:
        assert faults_of_html(answer.text) == []
        told = words_of(answer.text)
        assert told
        assert not KEYS.search(told), told
        assert not ENGLISH.search(told), told
        assert answer.text.count(value) >= len(blanks.typed) or not value


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_role_that_is_none_is_told_by_words(office, language):
    answer = office.post(
        "/people/invite", data={"role": "king"}, headers={"accept-language": language}
    )
    assert answer.status_code == 422
    assert words(language)["people-no-role"] in answer.text
    assert "king" not in answer.text


def test_what_is_no_drawing_is_told_in_spanish_and_begins_as_a_sentence(office):
    told = office.post("/houses/two/draw", data={}, headers={"accept-language": "es"}).text
    assert "Lo que se mandó no es un dibujo. Cargue la página otra vez." in told


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_such_house_says_no_more_than_that(office, language):
    """The command line's remedy has no place on a page."""
    answer = office.get("/houses/none", headers={"accept-language": language})
    assert answer.status_code == 404
    assert f"<h1>{words(language)['no-house']}</h1>" in answer.text
    assert "<ul>" not in answer.text
    assert "farwall" not in re.sub(r"<[^>]+>", "", answer.text.partition("<main")[2])


@pytest.mark.parametrize(
    ("language", "back"), [("en", "Back to this house"), ("es", "Volver a esta casa")]
)
def test_a_refusal_about_a_house_leads_back_to_it(office, language, back):
    wrong = {"picture": ("plan.png", b"no picture", "image/png")}
    answer = office.post(
        "/houses/two/draw/underlay", files=wrong, headers={"accept-language": language}
    )
    assert answer.status_code == 422
    assert f'<a href="/houses/two">{back}</a>' in answer.text
    none = office.get("/houses/none", headers={"accept-language": language})
    assert back not in none.text
