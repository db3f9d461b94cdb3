"""The square at a paper's foot leads to its screen: read by a camera's eye from the set page."""

import cv2
import numpy as np
import pypdfium2
import pytest
from tests.papers.office import houses

from farwall.papers.office.bundles import BY_FILE
from farwall.papers.square import square


@pytest.fixture(scope="module")
def ground():
    return houses.twelve().ground()


def addresses(pdf):
    page = pypdfium2.PdfDocument(pdf)[0].render(scale=4, grayscale=True).to_numpy()
    picture = np.ascontiguousarray(page.reshape(page.shape[:2]))
    return cv2.QRCodeDetector().detectAndDecode(picture)[0]


@pytest.mark.parametrize(
    ("file", "screen"),
    [
        ("run-sheet.pdf", "phone"),
        ("go.pdf", "survey"),
        ("wash-day.pdf", "acid/washing"),
        ("waste-page.pdf", "acid/waste"),
        ("survey.pdf", "survey"),
    ],
)
def test_a_camera_reads_the_screen_of_the_paper(ground, file, screen):
    assert addresses(BY_FILE[file].make(ground)) == f"{houses.HERE}/{screen}"


def test_a_house_without_a_book_has_no_square():
    assert addresses(BY_FILE["run-sheet.pdf"].make(houses.twelve().ground(screens=""))) == ""


def test_no_book_no_square():
    assert square("", "survey") == square("https://book.example/houses/7", "") == ""
