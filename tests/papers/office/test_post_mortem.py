"""The job looked back on: all of it on one page."""

import pytest
from tests.papers.acid.ground import pages_of
from tests.papers.office.grounds import ground

from farwall.papers.office.bundles import BY_FILE


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("units", ["us", "metric"])
def test_no_line_of_it_stands_alone_on_a_second_page(language: str, units: str):
    """One sentence, or four boxes for the pen, stood alone on a page of their own."""
    pages = pages_of(BY_FILE["post-mortem.pdf"].make(ground(language=language, units=units)))
    assert len(pages) == 1
    assert "farwall learn" in pages[0]
