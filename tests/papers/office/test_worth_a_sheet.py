"""A sheet is not begun for its last lines: blank rows give way first, then space."""

import pypdfium2
from tests.papers.office.grounds import ground

from farwall.papers.office.blocks import (
    Blanks,
    Head,
    Own,
    Page,
    Paper,
    Picture,
    Rows,
    Sign,
    Words,
)
from farwall.papers.office.setting import paper_pdf

GROUND = ground()
LAST = "passed by"


def told(*blocks):
    """The words of each page."""
    paper = Paper(title="A record", under="Kept with the job", blocks=blocks)
    document = pypdfium2.PdfDocument(paper_pdf(paper, GROUND))
    pages = [page.get_textpage().get_text_range() for page in document]
    document.close()
    return pages


def table(rows, blank=0, pen="no"):
    return Rows(
        ("what", "how much"), tuple((Own(f"line {n}"), Own("1")) for n in range(rows)), (2, 1),
        blank=blank, pen=pen,
    )  # fmt: skip


def rows_of_a_page():
    """How many lines of a table the first page holds."""
    first = told(table(60))[0]
    return first.count("line ")


def test_blank_rows_give_way_to_the_last_lines():
    filled = rows_of_a_page() - 14
    pages = told(table(filled, blank=12, pen="ruled"), Blanks((LAST, "date"), columns=2))
    assert len(pages) == 1
    assert LAST in pages[0]


def test_lines_stand_closer_where_there_are_no_blank_rows():
    pages = told(table(rows_of_a_page()), Head("And"), Words("The last words of it."))
    assert len(pages) == 1
    assert pages[0].count("line ") == rows_of_a_page()
    assert "The last words" in pages[0]


def test_what_fills_a_good_part_of_the_next_page_stays_as_it_is():
    most = rows_of_a_page()
    pages = told(table(most + most // 2))
    assert len(pages) == 2
    assert pages[0].count("line ") == most


def test_each_part_between_page_breaks_is_looked_at_alone():
    most = rows_of_a_page()
    pages = told(table(3), Page(), table(most), Words("The last words of it."))
    assert len(pages) == 2
    assert "The last words" in pages[1]


def test_where_only_three_blank_rows_are_left_lines_stand_closer_instead():
    pages = told(table(rows_of_a_page() - 3, blank=3, pen="ruled"), Words("The last words."))
    assert len(pages) == 1


DRAWING = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 1"><path d="M0 0h3"/></svg>'
"""Three times as wide as it is high: 180 pt at the width below, as a quarter of 720 pt."""


def test_a_picture_gives_way_where_closer_lines_are_not_enough_unless_it_is_never_scaled():
    scaled, fixed = Picture(DRAWING, 0.25), Picture(DRAWING, wide_pt=540.0)

    def fit(picture):
        pages = (told(picture, table(most + more), Words("The last words.")) for more in range(9))
        return [len(one) for one in pages].count(1)

    most = told(fixed, table(60))[0].count("line ")
    assert fit(scaled) > fit(fixed) > 0


def breaks(*blocks):
    """The pages of a paper that goes over the first by more than closer lines can save."""
    return told(*blocks, table(30))


def test_a_few_rows_are_not_parted():
    """Of four lines of *What is added* one once stood on the page before."""
    most = rows_of_a_page()
    few = Rows(("head of it", "much"), tuple((Own(f"few {n}"), Own("1")) for n in range(4)), (2, 1))
    for less in range(1, 7):
        pages = breaks(table(most - less), few)
        assert [page.count("few ") for page in pages if "few " in page] == [4], less


def test_a_sum_begins_no_page():
    """Twelve rooms stood on one page, and *In all* on the next."""
    most = rows_of_a_page()
    for more in range(3):
        rows = tuple((Own(f"line {n}"), Own("1")) for n in range(most - 1 + more))
        summed = Rows(("what", "how much"), (*rows, (Own("In all"), Own("9"))), (2, 1),
                      strong_last=True)  # fmt: skip
        pages = breaks(summed)
        (page,) = [one for one in pages if "In all" in one]
        assert f"line {most - 2 + more}" in page, more


def test_what_is_signed_stands_with_the_signature():
    """The last page of the scope once held two lines and a place to sign."""
    most = rows_of_a_page()
    signed = (Head("What you sign"), Words("First clause."), Words("Second clause."),
              Sign(("owner", "date"), "Read and agreed:"))  # fmt: skip
    for less in range(2, 10):
        (page,) = [one for one in breaks(table(most - less), *signed) if "agreed" in one]
        assert "What you sign" in page, less
        assert "owner" in page
    bare = (Blanks(("found on the visit",), columns=1, lines=2), Sign(("owner", "date")))
    for less in range(2, 10):
        (page,) = [one for one in breaks(table(most - less), *bare) if "owner" in one]
        assert "found on" in page, less
