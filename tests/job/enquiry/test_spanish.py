"""The first call in Spanish: every sentence of it, whatever was answered."""

import itertools

from farwall.job.enquiry import Enquiry, answer
from farwall.job.enquiry.questions import ASKED, PARTS, enquiry_of
from farwall.phrasebook import in_spanish


def test_every_question_and_every_answer_has_its_spanish():
    calls = [{one.key: choice} for one in ASKED.arguments for choice in one.choices]
    numbers = {"slab_age_days": "10", "pours": "3", "circuits": "1", "area_m2": "20"}
    calls += [
        numbers | {"needed_in_days": days, "work": "one colour", "slab": slab, "least": least}
        for days, slab, least in itertools.product(
            ("2", "9", "60"), ("not poured", "new"), ("1", "9000")
        )
    ]
    found = [answer(Enquiry()), *(answer(enquiry_of(one)) for one in calls)]
    said = set(PARTS.values())
    for one in found:
        said |= {one.words, *one.warnings}
        said |= {text for each in one.found for text in (each.reason, each.change)}
        if one.rough is not None:
            said |= {one.rough.floor, *(part.what for part in one.rough.parts)}
    assert [one for one in sorted(said) if one and in_spanish(one) is None] == []
