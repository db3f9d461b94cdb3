"""A page is not begun for its last line: lines stand closer where one would go past the foot."""

import pypdfium2
import pytest
from tests.midday import day_of

from farwall.papers.run_sheet import run_sheet_pdf

LEAST = 80
"""Words of a page that is worth a sheet; some thirty of them stand at its foot."""


@pytest.mark.parametrize("language", ["en", "es"])
def test_no_page_of_a_full_sheet_holds_but_a_sentence(language):
    plan = day_of("quince-street")
    made = run_sheet_pdf(plan, job_name="Quince Street, lot 9", language=language)
    document = pypdfium2.PdfDocument(made)
    words = [len(page.get_textpage().get_text_range().split()) for page in document]
    document.close()
    assert len(words) > 15
    assert [n + 1 for n, count in enumerate(words) if count < LEAST] == []
