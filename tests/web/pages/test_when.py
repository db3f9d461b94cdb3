"""Moments of the firm, in the reader's manner and with their zone."""

from __future__ import annotations

import pytest
from tests.web.pages.office import START, Office

from farwall.web.pages.when import zoned_told


@pytest.mark.parametrize(
    ("at", "units", "told"),
    [
        ("2026-06-08T15:05:00+00:00", "us", "Mon 8 Jun 2026, 3:05 pm UTC"),
        ("2026-06-08T15:05:00.125+00:00", "metric", "Mon 8 Jun 2026, 15:05 UTC"),
        ("2026-06-08T15:05:00-06:00", "us", "Mon 8 Jun 2026, 3:05 pm UTC-06:00"),
        ("2026-06-08T15:05:00", "us", "Mon 8 Jun 2026, 3:05 pm"),
        ("yesterday", "us", "yesterday"),
    ],
)
def test_a_moment_has_its_day_its_half_and_its_zone(at, units, told):
    assert zoned_told(at, units) == told


@pytest.mark.parametrize("path", ["/me", "/people", "/people/done"])
def test_no_page_of_the_firm_tells_a_moment_as_a_file_does(path, tmp_path):
    office = Office(tmp_path)
    office.enter_as("lead")
    for language, day in (
        ("en", "Mon 8 Jun 2026, 8:00 am UTC"),
        ("es", "lun 8 jun 2026, 8:00 a. m. UTC"),
    ):
        text = office.get(path, headers={"accept-language": language}).text
        assert day in text
        assert START.date().isoformat() not in text
    office.close()
