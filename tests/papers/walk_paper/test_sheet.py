import pytest

from farwall.papers.walk_paper.sheet import MOST_ROOMS, walk_sheet_pdf
from farwall.papers.walk_paper.words import WORDS


def text_of(pdf):
    import pypdfium2

    pages = pypdfium2.PdfDocument(pdf)
    return [page.get_textpage().get_text_range() for page in pages]


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_page_for_each_room_in_its_language(language):
    pages = text_of(walk_sheet_pdf(2, language=language))
    assert len(pages) == 2
    for key in ("title", "walls", "ways", "checks", "room"):
        assert WORDS[language][key] in pages[1]
    assert " ".join(pages[0].split()).count(WORDS[language]["left"]) >= 12


def test_the_same_words_give_the_same_bytes():
    assert walk_sheet_pdf(1) == walk_sheet_pdf(1)


@pytest.mark.parametrize("units", ["us", "metric"])
def test_a_room_never_takes_two_pages(units):
    assert len(text_of(walk_sheet_pdf(1, language="es", units=units))) == 1


@pytest.mark.parametrize("rooms", [0, MOST_ROOMS + 1])
def test_no_sheets_and_too_many_are_refused(rooms):
    with pytest.raises(ValueError, match="1 to 60"):
        walk_sheet_pdf(rooms)


def test_both_languages_have_the_same_words():
    assert WORDS["en"].keys() == WORDS["es"].keys()
