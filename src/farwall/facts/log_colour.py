"""The words of the log that tell of colour: a sample day, how floor and samples look, marks.

What is told of a sample bears its name; the first that names one begins it.
"""

from __future__ import annotations

from farwall.facts.log_word import Carried, Word
from farwall.facts.samples import STATES

MARKS = (
    "light patch", "missed crescent", "stripe", "lap line", "drip", "ring", "tape ghost",
    "footprint",
)  # fmt: skip
"""What is looked for on a mopped floor, by the names of the trade."""
UNKNOWN = "unknown"
"""A mark that a person sees and cannot name: nothing is sealed over it."""

_SAMPLE = Carried("sample", "text", "which sample, by its name")
_STATE = Carried("state", "choice", "how it stood", STATES)
_L = Carried("lightness", "lightness", "lightness, L of CIELAB")
_A = Carried("lab_a", "colour_axis", "a of CIELAB, green to red")
_B = Carried("lab_b", "colour_axis", "b of CIELAB, blue to yellow")
_ERROR = Carried("error_de", "de", "CIEDE2000 that the target was off after the correction")
_SPOTS = Carried("spots", "count", "over how many places it is the mean")
_SPREAD = Carried("spread_lightness", "lightness", "standard deviation of L between the places")
_LIGHT = Carried("light", "choice", "seen by", ("day", "lamp"))
_PHOTO = Carried("file", "hash", "its photo")
_AFTER = Carried("after_min", "minutes", "minutes since it was laid")
_ROOM = Carried("room", "room", "the room")
_COAT = Carried("coat", "coat", "the coat")
_NOTE = Carried("note", "text", "anything to add")

OF_A_SAMPLE = (_SAMPLE, _STATE, _LIGHT)
"""What a photo may carry besides: whose colour is to be read from it, and how that stood."""

COLOUR_WORDS = (
    # the sample day
    Word("sample-laid", "a coat is laid on a sample", (
        _SAMPLE, Carried("cut", "text", "stain : water"),
    ), (
        Carried("stain", "text", "which stain, by its id"), _COAT, _ROOM,
        Carried("over", "text", "the sample whose coat lies beneath"),
        Carried("area_m2", "spot_m2", "how large it is"),
        Carried("before_kg", "kg", "the sprayer before"),
        Carried("after_kg", "kg", "the sprayer after"),
        Carried("laid_ml", "ml", "or what was laid"),
        Carried("slab_c", "celsius", "the slab, by infrared"),
        Carried("air_c", "celsius", "the air"),
        Carried("rh_percent", "percent", "humidity of the air"),
        Carried("drop_s", "seconds", "until a drop went in"),
    )),
    Word("sample-sheen-lost", "the wet gloss of a sample is gone", (_SAMPLE, _AFTER)),
    Word("sample-dry", "a sample is dry", (_SAMPLE, _AFTER)),
    Word("sample-washed", "a sample was scrubbed and rinsed as the floor will be", (_SAMPLE,), (
        Carried("dwell_h", "hours", "from laying to the wash"),
        Carried("scrubs", "count", "how many scrubs"),
        Carried("ph_before", "ph", "pH before"), Carried("ph", "ph", "pH after"),
        Carried("rag", "choice", "the white rag", ("clean", "grey", "coloured")),
        Carried("held", "choice", "its colour", ("holds", "weak", "washes off")),
    )),
    Word("sample-sealed", "a sample is sealed", (_SAMPLE,), (
        Carried("sealer", "text", "with which sealer"),
    )),
    Word("sample-seen", "how a sample looks", (_SAMPLE, _STATE, _L, _A, _B), (
        _ERROR, _SPOTS, _SPREAD, _LIGHT, _PHOTO,
    )),
    Word("sample-judged", "a sample was judged against what is wished", (
        _SAMPLE, Carried("verdict", "choice", "it is", ("light", "right", "dark")),
    ), (_NOTE,)),
    Word("sample-approved", "a sample is the standard of the floor", (
        _SAMPLE, Carried("approved_by", "text", "who signed, by name"),
    ), (Carried("signed", "hash", "a photo of the signed card"), _NOTE)),
    # the floor
    Word("colour-seen", "how the floor looks", (_STATE, _L, _A, _B), (
        _COAT, _ROOM, _ERROR, _SPOTS, _SPREAD, _LIGHT, _PHOTO,
    )),
    Word("photo-placed", "a photo of the mopped floor was laid on the plan", (
        _PHOTO, _ROOM, Carried("points", "text", "points of it and of the plan: px,py=x,y;…"),
    ), (_NOTE,)),
    Word("mark-judged", "a person looked at a mark that a photo showed", (
        Carried("mark", "text", "which, by its name"),
        Carried("kind", "choice", "what it is", (*MARKS, UNKNOWN)),
        Carried("there", "yes", "whether it is there"),
    ), (
        _ROOM, Carried("x_m", "place_m", "where, x on the plan"),
        Carried("y_m", "place_m", "where, y on the plan"),
        Carried("length_m", "place_m", "how long it is"),
        Carried("width_m", "place_m", "how wide it is"), _PHOTO, _NOTE,
    )),
    Word("mark-mended", "a mark was mended", (
        Carried("mark", "text", "which, by its name"),
    ), (Carried("how", "text", "how"), _ROOM, _PHOTO)),
)  # fmt: skip
