"""How a house is masked, as a form: stage of the build, heights of film, what else stands there."""

from __future__ import annotations

from farwall.web.pages.forms.measures import INCHES
from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_HOUSE = Part("masking-house", (
    Sentence("s-mask-stage", (
        Blank("mask-stage", "supplies.masking.stage", pick="pick-mask-stage"),
    ), help="mask-stage"),
    Sentence("s-mask-film", (Blank("mask-film", "supplies.masking.film_m", INCHES),),
             help="mask-film"),
    Sentence("s-mask-gaps", (
        Blank("mask-gaps", "supplies.masking.gaps", pick="pick-mask-gaps"),
    ), help="mask-gaps"),
    Sentence("s-mask-not", (Blank("mask-not", "supplies.masking.not_masked", of="rooms"),)),
))  # fmt: skip

_ROOMS = Part("masking-rooms", (
    Sentence("s-mask-room", (Blank("mask-room-film", "", INCHES),)),
), each="rooms", way="supplies.masking.room_film_m", told=True)  # fmt: skip

_THINGS = Part("masking-things", (
    Sentence("s-mask-thing", (
        Blank("mask-count", "count", size=3),
        Blank("mask-kind", "kind", pick="pick-mask-kind", must=True),
        Blank("room", "room", of="rooms"), Blank("mask-out", "take_out", pick="pick-mask-out"),
    ), help="mask-thing"),
    Sentence("s-mask-size", (
        Blank("mask-long", "length_m"), Blank("mask-high", "height_m", INCHES),
    )),
    Sentence("s-mask-note", (Blank("mask-note", "note", size=40),)),
), each="rows", way="supplies.masking.items", told=True)  # fmt: skip

MASKING = Form("masking", (_HOUSE, _ROOMS, _THINGS))
