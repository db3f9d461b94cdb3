"""Crew, sprayer and wishes as a form; the few of them that a first plan hangs on; a firm's own."""

from __future__ import annotations

from farwall.web.pages.forms.measures import INCHES
from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence
from farwall.web.pages.forms.workers import CALLS, LOOKS, SPILL

_DAY = Sentence("s-day", (Blank("day", "starts_at"),), help="day")
_PEOPLE = Sentence("s-people", (
    Blank("sprayers", "crew.sprayers", size=3), Blank("helper", "crew.helper"),
), help="helper", effect="effect-helper")  # fmt: skip
_ALONE = Sentence("s-second", (Blank("second", "crew.second_adult"),), help="second-adult")
_TANK = Sentence("s-tank", (Blank("tank", "tools.tank_l"),), help="tank",
                 stands_in=("tools.tank_l",), effect="effect-tank")  # fmt: skip
_TIP = Sentence("s-tip", (Blank("tip", "tools.tip_l_min"),), help="tip", effect="effect-tip")
_BAND = Sentence("s-band", (Blank("band", "tools.band_m", INCHES),), help="band",
                 stands_in=("tools.band_m",), effect="effect-band")  # fmt: skip
_RATE = Sentence("s-rate", (Blank("rate", "tools.spray_m2_min"),), help="rate",
                 stands_in=("tools.spray_m2_min",), effect="effect-rate")  # fmt: skip

_SPRAYER = Part("sprayer", (
    _TANK, _TIP, _BAND, _RATE,
    Sentence("s-refill", (Blank("refill", "tools.refill_min"),), help="refill",
             stands_in=("tools.refill_min",)),
    Sentence("s-swap", (Blank("swap", "tools.swap_min"),), help="swap",
             stands_in=("tools.swap_min",)),
    Sentence("s-overlap", (Blank("overlap", "tools.overlap_m", INCHES),), help="overlap",
             stands_in=("tools.overlap_m",)),
    Sentence("s-reach", (Blank("reach", "tools.reach_m"),), help="reach",
             stands_in=("tools.reach_m",)),
    Sentence("s-walk", (Blank("walk", "tools.walk_m_min"),), help="walk",
             stands_in=("tools.walk_m_min",)),
    Sentence("s-spare", (Blank("spare", "tools.spare_sprayer"),), help="spare"),
))  # fmt: skip

_UNITS = Sentence("s-units", (Blank("units", "wishes.units"),), help="units")
_WISHES = Part("wishes", (
    _UNITS,
    Sentence("s-language", (Blank("language", "wishes.language"),), help="language"),
    Sentence("s-sure", (Blank("sure", "wishes.certainty_percent"),), help="sure",
             stands_in=("wishes.certainty_percent",)),
    Sentence("s-bands", (Blank("bands", "wishes.bands"),), help="bands"),
    Sentence("s-notes", (Blank("notes", "wishes.notes", size=48, lines=4),), help="notes"),
))  # fmt: skip

CREW = Form("crew", (Part("crew-people", (_DAY, _PEOPLE, _ALONE)), _SPRAYER, _WISHES))

_TWO_STAINS = Part("first-stains", (
    Sentence("s-first-stain", (
        Blank("colour-name", "stains.0.name", size=16), Blank("cut", "coats.0.cut", size=5),
    ), help="cut"),
    Sentence("s-second-stain", (
        Blank("colour-name", "stains.1.name", size=16), Blank("cut", "coats.1.cut", size=5),
    )),
), told=True)  # fmt: skip
FIRST = Form("first", (Part("first-day", (_DAY, _PEOPLE, _TANK)), _TWO_STAINS))
"""The few questions that a first plan hangs on most; all have a safe answer in place."""

FIRM = Form("firm", (
    Part("crew-people", (_PEOPLE, _ALONE)), _SPRAYER, _TWO_STAINS,
    Part("firm-emergency", (CALLS, SPILL, LOOKS), told=True), Part("firm-units", (_UNITS,)),
))  # fmt: skip
"""What a firm takes for each new house until the house says otherwise."""
