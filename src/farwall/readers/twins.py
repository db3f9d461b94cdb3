"""US twins of a job's keys: feet, gallons and degrees Fahrenheit, converted once, here.

A job may say `tank_gal` where the noun says `tank_l`. Both at once is a
mistake, for one of the two would be thrown away without a word.
"""

from __future__ import annotations

from collections.abc import Callable

from farwall import units
from farwall.air.slab_tests import UG_M2_S_PER_LB
from farwall.errors import Mistake
from farwall.facts.checks import Morning, Watch
from farwall.facts.discharge import WaterTest
from farwall.facts.job import Coat, Container, Sighting, Site, Stain, Survey, Tools
from farwall.facts.samples import Sample
from farwall.facts.sealer import Sealer, SealerContainer, SealTools
from farwall.facts.slab import Choices, MixTicket, MoistureTest
from farwall.facts.so_far import SoFar
from farwall.facts.supplies import Masking, MaskItem
from farwall.facts.van import Flow, VanSprayer
from farwall.facts.washing import Drums, Washing
from farwall.floor.nouns import Opening, Window
from farwall.nouns import dataclass
from farwall.readers.json_text import Place, place_text
from farwall.readers.shape import Entry

FL_OZ_PER_GAL_FROM_ML_PER_L = 0.128
"""128 fl oz are one gallon, so 1 mL/L is 0.128 fl oz/gal, exactly."""


@dataclass(frozen=True)
class Twin:
    """`other` may be written for `key`; the two functions go there and back."""

    other: str
    key: str
    to_key: Callable[[float], float]
    from_key: Callable[[float], float]


def _times(other: str, key: str, factor: float) -> Twin:
    return Twin(other, key, lambda value: value * factor, lambda value: value / factor)


def _f(other: str, key: str) -> Twin:
    return Twin(other, key, units.c_from_f, units.f_from_c)


_COVERAGE = Twin(
    "ft2_per_gal",
    "m2_per_l",
    units.m2_per_l_from_ft2_per_gal,
    units.ft2_per_gal_from_m2_per_l,
)
_VAPOUR = _times("vapour_lb_1000ft2_24h", "vapour_ug_m2_s", UG_M2_S_PER_LB)
_FT, _IN, _GAL = units.M_PER_FT, units.M_PER_IN, units.L_PER_US_GAL
_SLAB_AND_AIR = (
    _f("slab_f", "slab_c"),
    _f("air_f", "air_c"),
    _times("air_speed_mph", "air_speed_m_s", units.M_S_PER_MPH),
)
_BAND_AND_WALK = (
    _times("band_ft", "band_m", _FT),
    _times("walk_ft_min", "walk_m_min", _FT),
    _times("overlap_in", "overlap_m", _IN),
    _times("reach_ft", "reach_m", _FT),
)

TWINS: dict[type, tuple[Twin, ...]] = {
    VanSprayer: (_times("tank_gal", "tank_l", _GAL),),
    Flow: (_times("gal_min", "l_min", _GAL),),
    Survey: (*_SLAB_AND_AIR, _times("slab_thickness_in", "slab_thickness_m", _IN)),
    MixTicket: (_times("cement_lb_per_yd3", "cement_kg_m3", units.KG_PER_LB / (3 * _FT) ** 3),),
    MoistureTest: (_VAPOUR,),
    Choices: (
        _f("good_most_slab_f", "good_most_slab_c"),
        _times("most_vapour_lb_1000ft2_24h", "most_vapour_ug_m2_s", UG_M2_S_PER_LB),
    ),
    Morning: (
        _times("tip_gal_min", "tip_l_min", _GAL),
        _f("slab_low_f", "slab_low_c"),
        _f("slab_high_f", "slab_high_c"),
    ),
    Watch: (
        _times("left_gal", "left_l", _GAL),
        _times("left_ft2", "left_m2", units.M2_PER_FT2),
    ),
    Sealer: (
        _f("least_slab_f", "least_slab_c"),
        _f("most_slab_f", "most_slab_c"),
        _times("least_margin_f", "least_margin_k", 1 / 1.8),
        _COVERAGE,
    ),
    SealerContainer: (_times("size_gal", "size_l", _GAL),),
    SealTools: (
        *_BAND_AND_WALK,
        _times("tray_gal", "tray_l", _GAL),
        _times("lay_ft2_min", "lay_m2_min", units.M2_PER_FT2),
    ),
    Sample: (
        *_SLAB_AND_AIR,
        _COVERAGE,
        _times("area_ft2", "area_m2", units.M2_PER_FT2),
        _times("laid_fl_oz", "laid_ml", 1000 * _GAL / 128),
        _times("sprayer_before_lb", "sprayer_before_kg", units.KG_PER_LB),
        _times("sprayer_after_lb", "sprayer_after_kg", units.KG_PER_LB),
    ),
    Sighting: _SLAB_AND_AIR,
    Site: (_f("ground_f", "ground_c"),),
    Stain: (_times("density_lb_per_gal", "density_kg_l", units.KG_PER_LB / _GAL),),
    Coat: (
        _COVERAGE,
        _times("added_acid_ml_per_l", "added_acid_fl_oz_per_gal", FL_OZ_PER_GAL_FROM_ML_PER_L),
    ),
    Tools: (
        *_BAND_AND_WALK,
        _times("tank_gal", "tank_l", _GAL),
        _times("spray_ft2_min", "spray_m2_min", units.M2_PER_FT2),
        _times("tip_gal_min", "tip_l_min", _GAL),
    ),
    Container: (_times("size_gal", "size_l", _GAL),),
    Opening: (_times("width_ft", "width_m", _FT), _times("width_in", "width_m", _IN)),
    Drums: (
        _times("size_gal", "size_l", _GAL),
        _times("empty_lb", "empty_kg", units.KG_PER_LB),
    ),
    Masking: (_times("film_ft", "film_m", _FT),),
    MaskItem: (_times("length_ft", "length_m", _FT), _times("height_ft", "height_m", _FT)),
    WaterTest: (_times("water_gal", "water_l", _GAL),),
    Washing: (
        _times("water_gal_ft2", "water_l_per_m2", _GAL / units.M2_PER_FT2),
        _times("vacuum_ft2_min", "vacuum_m2_min", units.M2_PER_FT2),
        _times("scrub_ft2_min", "scrub_m2_min", units.M2_PER_FT2),
        _times("van_load_lb", "van_load_kg", units.KG_PER_LB),
        _times("floor_load_lb_ft2", "floor_load_kg_m2", units.KG_PER_LB / units.M2_PER_FT2),
    ),
    SoFar: (
        _times("tank_gal", "tank_l", _GAL),
        _times("tub_gal", "tub_l", _GAL),
        _times("mixed_gal", "mixed_l", _GAL),
        _times("tank_2_gal", "tank_2_l", _GAL),
    ),
    Window: (
        _times("sill_ft", "sill_m", _FT),
        _times("height_ft", "height_m", _FT),
        _times("reveal_in", "reveal_m", _IN),
    ),
}


def convert(entry: Entry) -> tuple[list[Mistake], dict[Place, tuple[Place, Twin]]]:
    """Put a noun's twins into its own units, in place.

    Returns the mistakes, and for each converted place where it was written
    and with which twin, so that a later mistake can speak the user's unit.
    """
    mistakes: list[Mistake] = []
    written: dict[Place, tuple[Place, Twin]] = {}
    for twin in TWINS.get(entry.noun, ()):
        if twin.other not in entry.values:
            continue
        value = entry.values.pop(twin.other)
        place = (*entry.place, twin.key)
        if twin.key in entry.values:
            first = written[place][1].other if place in written else twin.key
            mistakes.append(
                Mistake(
                    place_text(entry.place),
                    f"`{first}` and `{twin.other}` are both given.",
                    "Keep one of the two.",
                )
            )
            continue
        number = isinstance(value, int | float) and not isinstance(value, bool)
        entry.values[twin.key] = tidy(twin.to_key(value)) if number else value  # type: ignore[arg-type]
        written[place] = ((*entry.place, twin.other), twin)
    return mistakes, written


def tidy(value: float) -> float:
    """Without the last digits of a float, which are noise of the conversion and litter a file."""
    return float(f"{value:.12g}")
