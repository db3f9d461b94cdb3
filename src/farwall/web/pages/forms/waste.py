"""What was asked and tested about waste water, as a form."""

from __future__ import annotations

from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_METALS = (
    Blank("copper", "copper_mg_l", size=5), Blank("chromium", "chromium_mg_l", size=5),
    Blank("chromium-vi", "chromium_vi_mg_l", size=5), Blank("manganese", "manganese_mg_l", size=5),
    Blank("iron", "iron_mg_l", size=5), Blank("zinc", "zinc_mg_l", size=5),
    Blank("solids", "solids_mg_l", size=5),
)  # fmt: skip
_LIMITS = tuple(Blank(one.name, f"limits.{one.way}", size=one.size) for one in _METALS)

_WORDS = Part("waste-words", (
    Sentence("s-waste-word", (
        Blank("waste-way", "way", pick="pick-waste-way", must=True),
        Blank("waste-who", "who", must=True, size=18),
        Blank("waste-office", "office", must=True, size=24),
        Blank("waste-on", "on", must=True, size=10), Blank("waste-writing", "in_writing"),
        Blank("waste-until", "until", size=10),
    ), help="waste-word", rule="sewer word"),
    Sentence("s-waste-said", (Blank("waste-said", "said", size=48),)),
    Sentence("s-waste-limits", (
        Blank("least-ph", "limits.least_ph", size=4), Blank("most-ph", "limits.most_ph", size=4),
        *_LIMITS,
    ), help="waste-limits"),
), each="rows", way="discharge.words", told=True, most=12)  # fmt: skip

_TESTS = Part("waste-tests", (
    Sentence("s-waste-test", (
        Blank("waste-drum", "drum", size=8), Blank("waste-tested-on", "on", size=10),
        Blank("waste-by", "by", size=18), Blank("waste-water", "water_l"),
    ), help="waste-test"),
    Sentence("s-waste-found", (Blank("found-ph", "found_ph", size=4), *_METALS)),
), each="rows", way="discharge.tests", told=True, most=40)  # fmt: skip

_SHARES = Part("waste-shares", (
    Sentence("s-waste-share", (Blank("washed-off", "washed_off_percent", size=5),),
             help="waste-share"),
), each="rows", way="stains", fixed=True, told=True)  # fmt: skip

WASTE = Form("waste", (_WORDS, _TESTS, _SHARES))
