"""Who works with the acid, and the firm's own numbers for an emergency, as a form."""

from __future__ import annotations

from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

CALLS = Sentence("s-calls", (
    Blank("number", "emergency.number", size=18),
    Blank("poison", "emergency.poison_centre", size=18),
), help="calls")  # fmt: skip
SPILL = Sentence(
    "s-spill", (Blank("spill-line", "emergency.spill_line", size=16),), help="spill-line"
)
LOOKS = Sentence("s-looks", (Blank("look-in", "emergency.look_in_min"),), help="look-in",
                 effect="effect-look-in")  # fmt: skip

_PEOPLE = Part("workers-part", (
    Sentence("s-worker", (
        Blank("worker", "name", must=True, size=16), Blank("duties", "duties"),
    ), help="duties"),
    Sentence("s-respirator", (
        Blank("respirator", "respirator"), Blank("fit-tested", "fit_tested", day=True),
        Blank("cleared", "cleared", day=True), Blank("shaven", "clean_shaven"),
    ), help="respirator"),
    Sentence("s-cartridge", (
        Blank("marking", "cartridge.kind", size=14),
        Blank("acid-gas", "cartridge.acid_gas", pick="marked"),
        Blank("p100", "cartridge.p100", pick="marked"),
        Blank("ammonia", "cartridge.ammonia", pick="marked"),
    ), help="cartridge"),
    Sentence("s-change", (
        Blank("bag-opened", "cartridge.opened", day=True),
        Blank("change-after", "cartridge.change_after_min"), Blank("used", "cartridge.used_min"),
    ), help="change-after"),
    Sentence("s-worn", (
        Blank("gloves", "gloves", size=18), Blank("goggles", "goggles", pick="there"),
        Blank("apron", "apron", pick="there"), Blank("boots", "boots", pick="there"),
    ), help="worn"),
    Sentence("s-trained", (Blank("trained", "trained", day=True),), help="trained"),
    Sentence("s-settled", (Blank("settled", "exposure_settled", day=True),), help="settled"),
), each="rows", way="workers", told=True, stem="person", most=12)  # fmt: skip

_EMERGENCY = Part("emergency-part", (
    CALLS, SPILL,
    Sentence("s-hospital", (Blank("hospital", "emergency.hospital", size=30),)),
    Sentence("s-address", (Blank("address", "emergency.address", size=30),), help="address"),
    Sentence(
        "s-eyewash-at", (Blank("eyewash-at", "emergency.eyewash_at", size=30),), help="eyewash"
    ),
    LOOKS,
), told=True)  # fmt: skip

WORKERS = Form("workers", (_PEOPLE, _EMERGENCY))
"""People and emergency of a house."""
