"""What the days' page says of a calendar: hours in the units of the firm."""

import re
from datetime import UTC, datetime

from tests.days.shop import shop

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.web.pages.days_words import next_steps

LONG_AGO = datetime(2000, 1, 1, tzinfo=UTC)


def test_what_is_next_tells_its_hour_as_the_firm_does():
    told = document(calendar(shop(2, crews=1)))
    us, metric = (next_steps(told, LONG_AGO, units) for units in ("us", "metric"))
    assert len(us) == len(metric) > 1
    assert all(re.search(r"\d:\d\d [ap]m: ", one) for one in us)
    assert all(re.search(r"\d:\d\d: ", one) for one in metric)
