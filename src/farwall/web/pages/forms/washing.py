"""Water, pH, machines and drums of the wash day, as a form."""

from __future__ import annotations

from farwall import units
from farwall.web.pages.forms.measures import Measure, Scale
from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_WATER = Measure(
    Scale("unit-gal-100ft2", units.L_PER_US_GAL / (100 * units.M2_PER_FT2)), Scale("unit-l-m2")
)
_WEIGHT = Measure(Scale("unit-lb", units.KG_PER_LB), Scale("unit-kg"))
_LOAD = Measure(Scale("unit-lb-ft2", units.KG_M2_PER_LB_FT2), Scale("unit-kg-m2"))

WASHING = Form("washing", (
    Part("washing-water", (
        Sentence("s-wash-from", (Blank("water-from", "washing.water_from", size=20),)),
        Sentence("s-wash-base", (Blank("base", "washing.base"),), help="wash-base"),
        Sentence("s-wash-tap", (Blank("tap-ph", "washing.tap_ph"),), help="wash-tap"),
        Sentence("s-wash-bare", (Blank("bare-ph", "washing.unstained_ph"),), help="wash-bare"),
        Sentence("s-wash-water", (
            Blank("wash-water", "washing.water_l_per_m2", _WATER),
            Blank("wash-rinses", "washing.rinses", size=3),
        ), help="wash-water"),
    )),
    Part("washing-machines", (
        Sentence("s-wash-vacuum", (Blank("wash-vacuum", "washing.vacuum_m2_min"),)),
        Sentence("s-wash-scrub", (Blank("wash-scrub", "washing.scrub_m2_min"),)),
        Sentence("s-wash-fault", (Blank("ground-fault", "washing.ground_fault"),),
                 help="wash-fault"),
    )),
    Part("washing-drums", (
        Sentence("s-wash-drum", (
            Blank("drum-count", "washing.drums.count", size=3),
            Blank("drum-size", "washing.drums.size_l"),
            Blank("drum-empty", "washing.drums.empty_kg", _WEIGHT),
            Blank("drum-fill", "washing.drums.fill_percent", size=4),
        ), help="wash-drum"),
        Sentence("s-wash-at", (Blank("drum-at", "washing.drums.at", size=24),)),
        Sentence("s-wash-floor", (
            Blank("upstairs", "washing.upstairs"),
            Blank("floor-load", "washing.floor_load_kg_m2", _LOAD),
        ), help="wash-floor"),
        Sentence("s-wash-van", (Blank("van-load", "washing.van_load_kg", _WEIGHT),)),
    )),
))  # fmt: skip
"""Facts of the wash day of a house."""
