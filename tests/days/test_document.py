"""The document of a calendar: plain, dated, whole."""

import json
from datetime import date, datetime

from tests.days.shop import shop

from farwall.days.calendar import calendar
from farwall.days.document import document, milestone_date


def test_the_document_is_plain_json_with_moments_that_carry_an_offset():
    told = document(calendar(shop(2)))
    assert json.loads(json.dumps(told)) == told
    for house in told["houses"]:
        for step in house["steps"]:
            assert datetime.fromisoformat(step["starts_at"]).utcoffset() is not None


def test_milestones_fall_on_working_days_by_hand():
    """Three days before Monday the 8th is Friday the 5th; thirty before is Saturday, so the 8th."""
    assert milestone_date(date(2026, 6, 8), -3) == date(2026, 6, 5)
    assert milestone_date(date(2026, 6, 8), -30) == date(2026, 5, 8)
