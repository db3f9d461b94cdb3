"""In which language a page answers."""

import pytest
from starlette.requests import Request

from farwall.web.pages.tongue import TONGUE, language_of


def asked(header="", cookie=""):
    headers = [(b"accept-language", header.encode()), (b"cookie", f"{TONGUE}={cookie}".encode())]
    return Request({"type": "http", "headers": headers})


@pytest.mark.parametrize(
    ("header", "language"),
    [
        ("", "en"),
        ("es-MX,es;q=0.9,en;q=0.8", "es"),
        ("en-US,en;q=0.9,es;q=0.8", "en"),
        ("fr;q=0.9,es;q=0.5", "es"),
        ("de", "en"),
        ("en;q=0.2, es;q=0.7", "es"),
        ("es;q=0", "en"),
        ("es;q=x,,;;", "en"),
    ],
)
def test_it_is_what_the_browser_likes_best_of_ours(header, language):
    assert language_of(asked(header)) == language


def test_what_was_chosen_here_comes_first():
    assert language_of(asked("en", "es")) == "es"


def test_a_choice_that_is_none_is_passed_over():
    assert language_of(asked("es", "xx")) == "es"
