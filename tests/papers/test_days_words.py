"""Days and times in words."""

from datetime import datetime

import pytest

from farwall.papers.days_words import moment_words, time_words


@pytest.mark.parametrize(
    ("hour", "us", "metric"), [(0, "12:05 am", "0:05"), (12, "12:05 pm", "12:05"),
                               (7, "7:05 am", "7:05"), (17, "5:05 pm", "17:05")]
)  # fmt: skip
def test_times_in_both_manners(hour, us, metric):
    at = datetime.fromisoformat(f"2026-05-14T{hour:02d}:05:00+00:00")
    assert time_words(at, "us") == us
    assert time_words(at, "metric") == metric
    assert moment_words(at, "us") == f"Thu 14 May, {us}"
