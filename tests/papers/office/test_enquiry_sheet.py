"""The sheet of the first call: its twelve questions with lines, no contradiction with the rules."""

from tests.papers.office.grounds import ground, texts

from farwall.job.enquiry.questions import QUESTIONS, WISHES
from farwall.job.enquiry.rough import BY_WORK
from farwall.papers.office.blocks import Blanks, Rows
from farwall.papers.office.enquiry import enquiry


def test_twelve_questions_and_two_wishes_have_lines():
    asked = [one for one in enquiry(ground("bare")).blocks if isinstance(one, Blanks)][1]
    assert len(QUESTIONS) == 12
    assert len(asked.names) == len(QUESTIONS) + len(WISHES)
    assert asked.names[0].startswith("1. ")
    assert asked.names[11].startswith("12. ")


def test_prices_are_those_of_the_range():
    rows = next(one for one in enquiry(ground("bare")).blocks if isinstance(one, Rows)).rows
    used = [one for part in BY_WORK.values() for one in part if one.used]
    assert [(row[1].text, row[2].text) for row in rows[:-1]] == [(o.low, o.high) for o in used]
    assert "no quote" not in " ".join(texts(rows))
    assert "Nothing said on the phone is a quote" in " ".join(texts(enquiry(ground("bare"))))
