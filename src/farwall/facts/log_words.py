"""The words of the log: what may be entered, what each must carry and what it may.

A table, read by every door. The words are those of the trade.
"""

from __future__ import annotations

from farwall.facts.call_back_signs import CALL_BACK_CAUSES
from farwall.facts.log_colour import COLOUR_WORDS, OF_A_SAMPLE
from farwall.facts.log_money import MONEY_WORDS
from farwall.facts.log_word import Carried, Kind, Word

__all__ = ["SET_ASIDE", "TISSUE", "WASTE_WAYS", "WORDS", "Carried", "Kind", "Word"]

TISSUE = ("hangs straight", "stirs", "leans", "flutters", "streams")
"""What a strip of tissue held a hand over the floor does; `air.beside` has the air of each."""

SET_ASIDE = "set-aside"
"""The word by which a house leaves all lists; struck, it is back."""

WASTE_WAYS = ("kept in the drum", "sewer", "hauled", "treatment works")
"""Where the water of a drum is or goes; a storm drain, soil or a septic tank are no ways."""

_FIELD = Carried("field", "field", "the field")
_BAND = Carried("band", "band", "the band")
_COAT = Carried("coat", "coat", "the coat")
_ROOM = Carried("room", "room", "the room")
_LOT = Carried("lot", "text", "the maker's lot")
_LITRES = Carried("litres", "litres", "how much")
_WHY = Carried("why", "text", "the reason")
_NOTE = Carried("note", "text", "anything to add")
_SPRAYER = Carried("sprayer", "text", "which sprayer, by its name in the van")
_TUB = Carried("tub_l", "litres", "what stands in the tub afterwards")
_TANK = Carried("tank_l", "litres", "what the tank holds afterwards")
_AFTER = Carried("after_min", "minutes", "minutes since the coat went down there")
_SLAB = Carried("slab_c", "celsius", "the slab, by infrared")
_PERSON = Carried("person", "text", "who")
_WHERE = Carried("where", "text", "where on the floor, or beside it")

WORDS: dict[str, Word] = {
    word.name: word
    for word in (
        # the day
        Word("day-started", "the day on the slab is begun", (), (_COAT, _SPRAYER, _NOTE)),
        Word("reading", "slab and air were measured", (), (
            _SLAB, Carried("air_c", "celsius", "the air"),
            Carried("rh_percent", "percent", "humidity of the air"),
            Carried("air_speed_m_s", "m_s", "air moving over the floor, by a vane"),
            Carried("tissue", "choice", "or what a hanging strip of tissue does", TISSUE),
            Carried("tile_kg_m2_h", "kg_m2_h", "what a wetted tile lost, weighed twice"), _ROOM,
        )),
        Word("room-closed", "somebody stands in a room: no spraying there", (
            _ROOM,
        ), (Carried("until", "text", "until when, by the clock"), _WHY)),
        Word("room-free", "the room is free again", (_ROOM,)),
        # the mix
        Word("mixed", "a batch was mixed", (_COAT, _LITRES), (
            _LOT, Carried("cut", "text", "stain : water"),
            Carried("boxed", "yes", "poured together with what was left"), _TUB,
            Carried("added", "choice", "what else went in", (
                "water", "muriatic acid", "bleach", "ammonia", "another stain", "unknown",
            )),
        )),
        Word("filled", "a tank was filled or swapped", (), (_LITRES, _TANK, _SPRAYER, _TUB)),
        Word("tank-weighed", "tank or tub were looked at: what they hold", (), (
            _TANK, Carried("tub_l", "litres", "what the tub holds"), _SPRAYER,
        )),
        Word("tank-empty", "the tank ran empty", (), (_BAND, _SPRAYER)),
        # spraying
        Word("field-started", "a field was begun", (_FIELD,), (_SPRAYER,)),
        Word("band-done", "a band is sprayed, and all planned before it in its field", (
            _BAND,
        ), (_TANK, _SPRAYER)),
        Word("field-done", "a field is sprayed to its stop lines", (_FIELD,), (_TANK, _TUB)),
        Word("coat-done", "all fields of a coat are sprayed", (_COAT,), (
            _TANK, _TUB, Carried("left_over_l", "litres", "mix that is left"),
        )),
        Word("feathered", "an edge was feathered out dry", (), (_BAND, _FIELD, _WHERE)),
        Word("stopped", "spraying stopped", (
            Carried("because", "text", "the reason"),
        ), (_BAND, _FIELD)),
        Word("drip", "a drip or run", (), (
            _WHERE, _ROOM, Carried("wiped", "yes", "wiped within the minute"),
        )),
        Word("fizz", "whether it fizzed within two minutes", (
            Carried("seen", "yes", "whether it did"),
        ), (_ROOM, _COAT)),
        # waiting and judging
        Word("sheen-lost", "the wet gloss is gone", (), (_ROOM, _BAND, _AFTER, _COAT, _SLAB)),
        Word("still-damp", "looked at and still damp", (), (
            _ROOM, _AFTER, _COAT,
            Carried("clock", "choice", "which wait", ("recoat", "neutralise", "dry-down", "seal")),
        )),
        Word("dry", "looked at and dry", (), (
            _ROOM, _AFTER, _COAT,
            Carried("clock", "choice", "which wait", ("recoat", "neutralise", "dry-down", "seal")),
        )),
        Word("drop-tested", "a drop was set on the floor and timed, bare or over a dry coat", (
            Carried("drop_s", "seconds", "until it went in, the slowest place"),
        ), (_ROOM, _COAT, _WHERE)),
        Word("coat-judged", "the wet look was judged against the sample", (
            _COAT,
            Carried("look", "choice", "against the sample", ("lighter", "right", "darker")),
        ), (
            _ROOM, Carried("next", "choice", "what was decided", ("another", "enough", "wait")),
            Carried("steps", "count", "by how many steps of the sample scale"),
        )),
        # after
        Word("neutralised", "the floor was neutralised", (), (
            Carried("base", "text", "with what"), _LITRES, _ROOM,
        )),
        Word("rinsed", "the floor was rinsed", (), (
            Carried("ph", "ph", "of the rinse water"),
            Carried("rag", "choice", "the white rag", ("clean", "grey", "coloured")),
            Carried("round", "count", "which rinse"), _ROOM, _LITRES,
        )),
        Word("scrubbed", "the floor was scrubbed", (), (
            Carried("passes", "count", "how many times over all of it"), _ROOM, _LITRES,
        )),
        Word("vacuumed", "the water was taken up", (), (_ROOM, _LITRES)),
        Word("strip-read", "a pH strip was read", (
            Carried("of", "choice", "of what", ("rinse water", "tap", "unstained patch")),
            Carried("ph", "ph", "what it read"),
        ), (_ROOM, _WHERE)),
        Word("dry-swiped", "a dry dark glove was wiped over the dry floor", (
            Carried("powder", "yes", "whether powder came off"),
        ), (_ROOM,)),
        Word("waste", "where the waste water of a drum is, or where it went", (
            Carried("drum", "text", "which drum, by its number or name"), _LITRES,
            Carried("way", "choice", "where to", WASTE_WAYS),
        ), (
            Carried("ph_before", "ph", "pH before it was neutralised"),
            Carried("ph", "ph", "pH after"),
            Carried("who", "text", "who said yes: name and office"),
            Carried("manifest", "text", "number of the manifest or receipt"), _NOTE,
        )),
        Word("sealed", "a coat of sealer is down", (), (
            Carried("round", "count", "which coat of it"), _LITRES, _ROOM, _SLAB, _LOT,
            Carried("sealer", "text", "its name, where the job tells none or another"),
        )),
        # people: what they wear, who looks in, who stays out
        Word("respirator-on", "somebody put the respirator on", (_PERSON,), (_NOTE,)),
        Word("respirator-off", "somebody took the respirator off", (_PERSON,), (_NOTE,)),
        Word("cartridge-changed", "a new pair of cartridges is on", (_PERSON,), (
            Carried("kind", "text", "its marking"),
            Carried("change_after_min", "minutes", "minutes that the maker's schedule gives it"),
        )),
        Word("looked-in", "somebody looked in on who sprays", (
            Carried("person", "text", "on whom"),
        ), (
            Carried("by", "text", "who looked"),
            Carried("well", "yes", "whether all was well"),
        )),
        Word("eyewash-tried", "the eyewash was tried", (), (
            Carried("ran_min", "minutes", "for how long it ran"),
            Carried("reached_s", "seconds", "how long it takes to reach it"),
            Carried("flow_l_min", "l_min", "what it gives a minute"), _WHERE,
        )),
        Word("kept-out", "everybody else is out, and the ways in are shut and signed", (), (
            Carried("out", "choice", "who is out", ("everybody", "owner", "pets", "other trades")),
            Carried("until", "text", "until when, by the clock"), _NOTE,
        )),
        Word("let-in", "the house is free again: rinsed and aired", (), (
            Carried("aired_min", "minutes", "for how long it was aired after the last rinse"),
            _NOTE,
        )),
        # people and hours
        Word("hours", "hours of work on a task", (
            Carried("task", "choice", "which", (
                "protect", "clean", "mask", "coat", "judge", "neutralise", "rinse", "seal",
                "finish", "hand-over", "other",
            )), Carried("hours", "hours", "of all hands together"),
        ), (Carried("people", "count", "how many hands"),)),
        Word("hurt", "somebody was hurt", (Carried("what", "text", "what happened"),), (
            Carried("person", "text", "who"), Carried("done", "text", "what was done at once"),
        )),
        Word("near-miss", "somebody might have been hurt", (
            Carried("what", "text", "what happened"),
        ), (_WHERE,)),
        *COLOUR_WORDS,
        *MONEY_WORDS,
        # the book
        Word("note", "a note", (Carried("text", "text", "what it says"),), (_ROOM,)),
        Word("photo", "a photo", (Carried("file", "hash", "its file in the book"),), (
            _ROOM, _FIELD, *OF_A_SAMPLE, _NOTE,
        )),
        Word("struck", "an earlier entry was wrong; it stays to be read", (
            Carried("entry", "entry", "the entry that was wrong"),
        ), (_WHY,)),
        Word("handed-over", "the house was handed over; the job is closed", (), (_NOTE,)),
        Word(SET_ASIDE, "the house is set aside: out of lists, calendar and van, nothing erased", (
        ), (_WHY,)),
        Word("called-back", "the client called after hand-over", (
            Carried("what", "text", "what for"),
        ), (
            Carried("hours", "hours", "it took"), _ROOM,
            Carried("cause", "choice", "what it was found to be", CALL_BACK_CAUSES),
        )),
    )
}  # fmt: skip
