"""Names of classes: what lays out a page of its own is no name for a line on another."""

import re
from pathlib import Path

import farwall.web

TEMPLATES = Path(farwall.web.__file__).parent / "templates"


def test_a_line_is_not_laid_out_as_a_page_that_stands_alone():
    """`.alone` is the narrow column of the door, 18vh from the top."""
    found = [
        (path.name, tag)
        for path in TEMPLATES.glob("*.html")
        for tag in re.findall(r'<(\w+)[^>]*class="alone[" ]', path.read_text(encoding="utf-8"))
    ]
    assert found
    assert {tag for _, tag in found} == {"section"}
