"""Every pair of colours that the page's style puts together can be read in the sun: 7:1 or more."""

from __future__ import annotations

import re

import pytest
from tests.web.slab.colours import contrast
from tests.web.slab.node import WEB

STYLE = (WEB / "src" / "slab.css").read_text()
PICTURE = (WEB / "src" / "picture.ts").read_text()
LEAST = 7.0


def test_contrast_by_hand():
    """By hand: black on white is 21:1; the ink of the page on white is 14.7:1."""
    assert contrast("rgb(0, 0, 0)", "#fff") == pytest.approx(21)
    assert contrast("#1f2a30", "rgb(255, 255, 255)") == pytest.approx(14.7, abs=0.05)


def named(block):
    return dict(re.findall(r"--(\w+): (#[0-9a-f]{3,6})", block))


def styles():
    """The colours as they are, and as they are in the sun: ground, ink and edge of each."""
    plain = named(re.search(r":root \{([^}]*)\}", STYLE)[1])
    sun = named(re.search(r"\.sun \{([^}]*)\}", STYLE)[1])
    asked = named(re.search(r"prefers-contrast: more\) \{ :root \{([^}]*)\}", STYLE)[1])
    return {"plain": plain, "sun": {**plain, **sun}, "asked": {**plain, **asked}}


@pytest.mark.parametrize("name", ["plain", "sun", "asked"])
def test_words_on_white_on_a_pressed_key_and_white_on_ink(name):
    found = styles()[name]
    for word in ("ink", "edge"):
        assert contrast(found[word], "#fff") >= LEAST
    assert contrast(found["ink"], found["wet"]) >= LEAST
    assert contrast("#fff", found["ink"]) >= LEAST


def test_in_the_sun_it_is_stronger():
    found = styles()
    for word in ("ink", "edge"):
        assert contrast(found["sun"][word], "#fff") > contrast(found["plain"][word], "#fff")


def test_words_on_the_picture_stand_on_a_white_casing():
    """The ramp of wet floor is dark at its new end: no word may stand on it bare."""
    inks = dict(re.findall(r'const (INK|EDGE) = "(#[0-9a-f]{6})"', PICTURE))
    assert all(contrast(one, "#fff") >= LEAST for one in inks.values())
    texts = re.findall(r"<text [^>]*", PICTURE)
    assert texts
    assert all("${cased(" in one for one in texts)
    assert 'stroke="#fff"' in re.search(r"const cased[^;]*;", PICTURE, re.DOTALL)[0]


def test_no_colour_is_written_that_these_tests_do_not_know():
    known = {"#fff", "#000", *(c for one in styles().values() for c in one.values()), "#1f6170"}
    found = set(re.findall(r"#[0-9a-f]{3,6}\b", STYLE))
    assert found - known == set()


def test_nothing_is_smaller_than_sixteen_pixels():
    sizes = [float(one) for one in re.findall(r"font(?:-size)?:[^;}]*?(\d+(?:\.\d+)?)px", STYLE)]
    assert min(sizes) >= 16
