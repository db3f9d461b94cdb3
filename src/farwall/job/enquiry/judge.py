"""What a first call comes to: the rules of go or no-go on what was answered, and the phone's own.

A no of the slab that work can turn (a known film that strips, tile that a licensed inspector looks
at first) is worth a visit; one that nothing on this floor turns is declined. Pure.
"""

from __future__ import annotations

from collections.abc import Iterator

from farwall.evidence import Rank
from farwall.facts.go import Finding
from farwall.job.enquiry.as_job import job_of
from farwall.job.enquiry.by_phone import phone_rules
from farwall.job.enquiry.noun import Answer, Enquiry, Found, Verdict, Word
from farwall.job.enquiry.questions import PARTS, QUESTIONS, WISHES
from farwall.job.enquiry.rough import CRACKS, rough_of
from farwall.job.go import ground_rules, house_rules, slab_rules, waste_rules
from farwall.job.go.verdict import go_or_no_go

_OF_RULE = {
    "slab age": 1, "other finishes": 2, "cure and sealer": 3, "past acid": 3, "in the slab": 5,
    "pours": 6, "other trades": 7, "waste route": 10, "colour wished for": 0,
}  # fmt: skip
"""Question that each rule of go or no-go belongs to."""
_RULES = tuple(
    one
    for module in (slab_rules, ground_rules, house_rules, waste_rules)
    for one in module.RULES
    if one.id in _OF_RULE
)
_BY_WORD: dict[str, Word] = {"no": "decline", "go with": "visit", "go": "fine"}
_PRACTICE = Rank.PRACTICE.value
_WORK_TURNS_IT = frozenset({"cure and sealer", "other finishes"})
"""Rules whose no, on the phone, is a visit with the work priced."""
WORDS: dict[Verdict, str] = {
    "decline": "Decline, as it stands.",
    "visit": "Visit: look at it before any word on price.",
    "range": "A rough range may be said.",
}
WARNINGS = (
    (
        "A rough range is no quote: published prices of other firms, in one country. The price "
        "comes after a visit, a drop map and a signed, sealed sample on this slab."
    ),
    CRACKS,
    (
        "Local codes and licensed practice win; licensed people test for asbestos and lead before "
        "anybody sands or scrapes."
    ),
)


def answer(told: Enquiry) -> Answer:
    """Reasons in the order of the questions, the verdict, and the range where it may be said."""
    found = tuple(sorted(_found(told), key=lambda one: (one.question or 13, one.about)))
    declined = any(one.word == "decline" for one in found)
    rough = None if declined else rough_of(told)
    verdict: Verdict = "visit"
    if declined:
        verdict = "decline"
    elif rough is not None and not any(one.word in {"visit", "open"} for one in found):
        verdict = "range"
    return Answer(verdict, WORDS[verdict], found, rough, WARNINGS[: 1 if declined else None])


def _found(told: Enquiry) -> Iterator[Found]:
    by_phone = tuple(phone_rules(told))
    said = {one.about for one in by_phone}
    for one in go_or_no_go(job_of(told), rules=_RULES).findings:
        # An open question is told in the words of the call, not in those of the survey.
        if one.rule not in said and one.verdict != "ask":
            yield _of_finding(one, told)
    yield from by_phone
    yield from _open(told)


def _of_finding(one: Finding, told: Enquiry) -> Found:
    word = _BY_WORD[one.verdict]
    if word == "decline" and one.rule in _WORK_TURNS_IT:
        word = "visit"
    if word == "decline" and one.rule == "waste route" and told.waste != "no way":
        word = "visit"  # drums and a licensed hauler, priced
    return Found(_OF_RULE[one.rule], one.rule, word, one.reason, one.change, one.rank, one.source)


def _open(told: Enquiry) -> Iterator[Found]:
    """Questions without an answer, whole or the part of them that is missing."""
    for number, (words, keys) in [*enumerate(QUESTIONS, 1), *((0, one) for one in WISHES)]:
        missing = [key for key in keys if getattr(told, key) is None]
        if told.slab in {"old", "not poured"}:
            missing = [key for key in missing if key != "slab_age_days"]
        if told.slab_age_days is not None:
            missing = [key for key in missing if key != "slab"]
        asked = [words] if len(missing) == len(keys) else [PARTS[key] for key in missing]
        for one in asked:
            yield Found(number, "not asked yet", "open", one, "", _PRACTICE, "common-practice")
