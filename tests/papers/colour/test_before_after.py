"""Before and after: pairs out of the log or given, said to be corrected or a guess."""

import io
from dataclasses import replace

import pypdfium2
import pytest
from PIL import Image
from tests.papers.office.grounds import english_left, ground

from farwall.errors import Refused
from farwall.facts.photo_shown import PhotoShown
from farwall.papers.colour.before_after import NOT_ALIKE, before_after, before_after_lacks
from farwall.papers.office.bundles import BY_FILE, office_files


def photo(colour, error=None, size=(120, 90)):
    into = io.BytesIO()
    Image.new("RGB", size, colour).save(into, "JPEG")
    return PhotoShown(into.getvalue(), *size, error, "2026-05-14T10:20:30")


def given(**how):
    pair = (photo((150, 150, 150)), photo((120, 80, 50), 0.8))
    return replace(ground(**how), pair=pair)


@pytest.mark.parametrize(("language", "units"), [("en", "us"), ("es", "metric")])
def test_two_given_photos_stand_on_one_page(language, units):
    document = pypdfium2.PdfDocument(
        BY_FILE["before-after.pdf"].make(given(language=language, units=units))
    )
    assert len(document) == 1
    images = [one for one in document[0].get_objects() if one.type == 3]
    assert len(images) == 2
    edges = sorted(
        (one.get_pos() if hasattr(one, "get_pos") else one.get_bounds()) for one in images
    )
    assert edges[0][2] < edges[1][0]  # side by side
    assert edges[0][1] == pytest.approx(edges[1][1], abs=1)


def test_it_says_which_is_corrected_and_that_a_photo_is_no_floor():
    document = pypdfium2.PdfDocument(BY_FILE["before-after.pdf"].make(given()))
    text = " ".join(document[0].get_textpage().get_text_bounded().split())
    assert "as the camera made it: its colours are a guess" in text
    assert "about 0.8 off" in text
    assert "A photo and a screen are not the floor" in text


def test_every_sentence_has_its_spanish():
    one = given(language="es")
    assert english_left(before_after(one), one) == []
    assert english_left(NOT_ALIKE, one) == []


def test_without_two_photos_it_lacks_and_says_how_to_get_them():
    assert before_after_lacks(ground())
    assert "before-after.pdf" not in office_files(ground(), ["hand-over"])
    with pytest.raises(Refused):
        office_files(ground(), ["before-after.pdf"])
