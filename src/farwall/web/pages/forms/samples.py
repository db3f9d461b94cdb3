"""Samples, stains and coats, and what stain is sold in, as a form."""

from __future__ import annotations

from farwall import units
from farwall.web.pages.forms.measures import Measure, Scale
from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_SPOT = Measure(Scale("unit-ft2", units.M2_PER_FT2), Scale("unit-m2"))
_WEIGHT = Measure(Scale("unit-lb", units.KG_PER_LB), Scale("unit-kg"))
_ML = Measure(Scale("unit-ml"), Scale("unit-ml"))

_COATS = Part("coats-part", (
    Sentence("s-coat", (
        Blank("id", "id", size=8), Blank("stain", "stain", of="stains", must=True),
        Blank("cut", "cut", must=True, size=5), Blank("covers", "m2_per_l"),
    ), help="cut"),
    Sentence("s-coat-from", (Blank("coat-from", "not_before"),), help="coat-from"),
    Sentence("s-added", (Blank("added", "added_acid_fl_oz_per_gal"),), help="added-acid"),
), each="rows", way="coats", told=True, stem="coat", most=8)  # fmt: skip

_STAINS = Part("stains-part", (
    Sentence("s-stain", (
        Blank("id", "id", size=8), Blank("colour-name", "name", size=16),
        Blank("lots", "lots", size=16),
    ), help="lot"),
    Sentence("s-sheet", (
        Blank("hcl-low", "hcl_percent_low", size=4), Blank("hcl-high", "hcl_percent_high", size=4),
        Blank("density", "density_kg_l"), Blank("chromate", "chromate"),
    ), help="stain-sheet"),
), each="rows", way="stains", told=True, stem="stain", most=8)  # fmt: skip

_SAMPLES = Part("samples-part", (
    Sentence("s-sample", (
        Blank("id", "id", size=10), Blank("coat", "coat", of="coats"),
        Blank("room", "room", of="rooms"),
    ), help="sample"),
    Sentence("s-sample-mix", (
        Blank("own-cut", "cut", size=5), Blank("own-stain", "stain", of="stains", pick="own-stain"),
        Blank("over", "over", of="samples"),
    ), help="sample-over"),
    Sentence("s-sample-laid", (
        Blank("spot", "area_m2", _SPOT), Blank("laid", "laid_ml", _ML),
        Blank("sprayer-before", "sprayer_before_kg", _WEIGHT),
        Blank("sprayer-after", "sprayer_after_kg", _WEIGHT),
    ), help="sample-laid"),
    Sentence("s-drank", (
        Blank("covers", "m2_per_l"), Blank("sheen", "sheen_loss_min", timer=True),
        Blank("verdict", "verdict"),
    ), help="sheen-loss"),
    Sentence("s-then", (
        Blank("slab-warm", "slab_c"), Blank("air-warm", "air_c"), Blank("damp-air", "rh_percent"),
        Blank("moving", "air_speed_m_s"), Blank("drop", "drop_s", timer=True),
    ), help="sample-weather"),
    Sentence("s-sample-washed", (
        Blank("dried", "dry_min"), Blank("dwelt", "dwell_h"), Blank("scrubs", "scrubs", size=3),
        Blank("ph-before", "before_ph", size=4), Blank("ph-after", "after_ph", size=4),
        Blank("rag", "rag"),
    ), help="sample-washed"),
    Sentence("s-sample-signed", (
        Blank("sealed-with", "sealer", size=14), Blank("approved-by", "approved_by", size=16),
        Blank("approved-on", "approved_on", day=True),
    ), help="sample-signed"),
), each="rows", way="samples", told=True, stem="sample")  # fmt: skip

_HELD = Part("scrubbed", (
    Sentence("s-scrub", (Blank("scrub", "survey.sample_scrub"),), help="scrub", rule="sample"),
    Sentence("s-signed", (Blank("signed", "survey.sample_signed"),), help="signed",
             rule="signed sample"),
))  # fmt: skip

_SOLD = Part("sold", (
    Sentence("s-sold", (
        Blank("size", "size_l", must=True), Blank("price", "price", must=True, size=8),
        Blank("stain", "stain", of="stains"),
    ), help="container"),
), each="rows", way="prices.containers", told=True, most=20)  # fmt: skip

_CURRENCY = Part("currency-part", (
    Sentence("s-currency", (Blank("currency", "prices.currency", size=4),), help="currency"),
))  # fmt: skip

SAMPLES = Form("samples", (_SAMPLES, _HELD, _COATS, _STAINS, _SOLD, _CURRENCY))
