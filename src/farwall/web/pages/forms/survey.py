"""The survey as a form: slab, rooms, air, damp, windows, house and owner."""

from __future__ import annotations

from farwall.web.pages.forms.measures import INCHES
from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_SLAB = Part("slab", (
    Sentence("s-age", (
        Blank("age", "survey.slab_age_days"), Blank("sheet", "survey.sheet_slab_age_days"),
    ), help="slab-age", rule="slab age"),
    Sentence("s-pours", (Blank("pours", "survey.pours", size=3),), help="pours", rule="pours"),
    Sentence("s-film", (Blank("film", "survey.film"),), help="film", rule="cure and sealer"),
    Sentence("s-covering", (Blank("covering", "survey.covering"),), help="covering",
             rule="other finishes"),
    Sentence("s-acid", (Blank("acid", "survey.acid_before", pick="part"),), help="acid",
             rule="past acid"),
    Sentence("s-burnished", (
        Blank("burnished", "survey.burnished", pick="part"),
        Blank("opened", "choices.burnished", pick="opened"),
    ), help="burnished", rule="burnished slab"),
    Sentence("s-sand", (Blank("sand", "survey.bare_sand_percent"),), help="sand",
             rule="bare sand"),
    Sentence("s-cracks", (Blank("cracks", "survey.cracks_accepted"),), help="cracks",
             rule="cracks"),
    Sentence("s-hidden", (
        Blank("cables", "survey.hidden.post_tension", pick="hidden"),
        Blank("tubes", "survey.hidden.heating_tubes", pick="hidden"),
        Blank("conduit", "survey.hidden.conduit", pick="hidden"),
    ), help="hidden", rule="in the slab"),
    Sentence("s-thick", (Blank("thick", "survey.slab_thickness_m", INCHES),), help="thick"),
))  # fmt: skip

_TICKET = Part("ticket", (
    Sentence("s-ash", (
        Blank("ash", "survey.mix.fly_ash_percent"), Blank("slag", "survey.mix.slag_percent"),
    ), help="ash", rule="fly ash"),
    Sentence("s-cement", (
        Blank("cement", "survey.mix.cement_kg_m3"),
        Blank("chloride", "survey.mix.chloride_accelerator", pick="added"),
    ), help="ticket", rule="mix ticket"),
    Sentence("s-plant", (Blank("plant", "survey.mix.plant", size=18),), help="plant"),
))  # fmt: skip

_DROPS = Part("drops", (
    Sentence("s-drop", (
        Blank("drop", "survey.drop_s", timer=True), Blank("finish", "survey.finish"),
    ), help="drop-test", stands_in=("survey.drop_s",), rule="drop map"),
))  # fmt: skip

_ROOMS = Part("each-room", (
    Sentence("s-room", (
        Blank("drop", "drop_s", timer=True), Blank("finish", "finish", pick="pick-finish-room"),
        Blank("sun", "sun"), Blank("draught", "draught"),
    )),
), each="rooms", way="survey.rooms")  # fmt: skip

_AIR = Part("air", (
    Sentence("s-slab-warm", (Blank("slab-warm", "survey.slab_c"),), help="slab-warm",
             stands_in=("survey.slab_c",), rule="slab temperature"),
    Sentence("s-air-warm", (Blank("air-warm", "survey.air_c"),), help="air-warm",
             stands_in=("survey.air_c",)),
    Sentence("s-damp-air", (Blank("damp-air", "survey.rh_percent"),), help="damp-air",
             stands_in=("survey.rh_percent",)),
    Sentence("s-moving", (Blank("moving", "survey.air_speed_m_s"),), help="moving",
             stands_in=("survey.air_speed_m_s",)),
    Sentence("s-tile", (Blank("tile", "survey.tile_kg_m2_h"),), help="tile"),
    Sentence("s-frost", (Blank("frost", "survey.ground_frozen"),), help="frost",
             rule="frost below"),
    Sentence("s-house", (
        Blank("house", "site.house"), Blank("fans", "site.fans", size=3),
    ), help="fans"),
    Sentence("s-heater", (
        Blank("heater", "site.heater_kw"), Blank("vented", "site.heater_vented"),
    ), help="heater"),
))  # fmt: skip

_PATCHES = Part("patches", (
    Sentence("s-patch", (
        Blank("patch-kind", "kind"), Blank("id", "id", size=10), Blank("room", "room", of="rooms"),
        Blank("old", "age_days"), Blank("drop", "drop_s", timer=True),
        Blank("becomes", "decision"),
    ), help="patch"),
), each="rows", way="survey.patches", told=True, stem="patch")  # fmt: skip

_ANY_PATCHES = Part("any-patches", (
    Sentence("s-patched", (Blank("patched", "survey.patched"),), help="patch", rule="patches"),
))  # fmt: skip

_DAMP = Part("damp", (
    Sentence("s-salts", (Blank("salts", "survey.efflorescence"),), help="salts", rule="salts"),
    Sentence("s-ph", (Blank("ph", "survey.slab_ph"),), help="slab-ph", rule="slab pH"),
))  # fmt: skip

_TESTS = Part("tests", (
    Sentence("s-test", (
        Blank("test-kind", "kind", must=True), Blank("room", "room", of="rooms"),
    ), help="moisture"),
    Sentence("s-meter", (Blank("meter", "meter"),), only="kind=meter"),
    Sentence("s-sheet-test", (Blank("sheet-test", "sheet"),), only="kind=D4263"),
    Sentence("s-vapour", (Blank("vapour", "vapour_ug_m2_s"),), only="kind=F1869"),
    Sentence("s-probe", (Blank("probe", "slab_rh_percent"),), only="kind=F2170"),
), each="rows", way="survey.moisture", told=True)  # fmt: skip

_SUN = Part("sun", (
    Sentence("s-north", (Blank("north", "floor.north_deg"),), help="north"),
    Sentence("s-place", (
        Blank("latitude", "place.latitude_deg"), Blank("longitude", "place.longitude_deg"),
        Blank("zone", "place.time_zone", size=20),
    ), help="place"),
), told=True)  # fmt: skip

_WINDOWS = Part("windows", (
    Sentence("s-window", (
        Blank("sill", "sill_m"), Blank("height", "height_m"), Blank("reveal", "reveal_m", INCHES),
        Blank("covered", "covered"), Blank("main", "main"),
    ), help="window"),
), each="rows", way="floor.windows", fixed=True, told=True)  # fmt: skip

_OWNER = Part("owner", (
    Sentence("s-colour", (Blank("colour", "survey.colour_wanted"),), help="colour",
             rule="colour wished for"),
    Sentence("s-trades", (Blank("trades", "survey.trades"),), help="trades",
             rule="other trades"),
    Sentence("s-waste", (Blank("waste", "survey.waste"),), help="waste", rule="waste route"),
))  # fmt: skip

SURVEY = Form("survey", (
    _DROPS, _ROOMS, _AIR, _SLAB, _TICKET, _ANY_PATCHES, _PATCHES, _DAMP, _TESTS, _SUN, _WINDOWS,
    _OWNER,
))  # fmt: skip
