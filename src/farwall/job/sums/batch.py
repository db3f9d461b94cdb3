"""One batch at a cut: stain, water, and added acid where a finisher insists."""

from __future__ import annotations

from itertools import chain

from farwall.acid.mixing import MOST_PERCENT
from farwall.evidence import Rank
from farwall.job.acid_day.strength.noun import Ends
from farwall.job.acid_day.strength.tub import Tub, figures_of
from farwall.job.sums.arguments import ADDED, COVERAGE, DENSITY, TEMPERATURE, VOLUME
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum, refuse
from farwall.mix.batch import ORDER_OF_MIXING, STAIN_KG_L, Batch, make_batch
from farwall.mix.cut import parse_cut
from farwall.units import L_PER_US_FL_OZ, f_from_c, gal_from_l

MOST_L = 1e6
USUAL_C = 20.0


def reckon(given: Given) -> Result:
    """Amounts of a batch, and its strength where the stain's is known (null otherwise).

    `total_gal` is stain and water, as it is when it is given; `tub_gal` counts
    added acid as well. Warnings say in what order to pour and, with added
    acid, that the maker's sheet does not cover the mix. Moles and warmth go by
    mass and heat (`farwall.acid.mixing`), all liquids at `temperature_c`, 20 °C
    where none is given; mol_per_m2 only where a coverage is given.
    """
    percent = _percent(given)
    batch = make_batch(
        cut=parse_cut(given.text("cut") or ""),
        total_l=given.maybe("total_l"),
        stain_l=given.maybe("stain_l"),
        acid_ml_per_l=given.usual("acid_ml_per_l", 0.0),
        stain_hcl_percent=percent,
        stain_density_kg_l=given.maybe("stain_density_kg_l"),
        chromate=_told(given, "chromate"),
        oxidiser=_told(given, "oxidiser"),
    )
    rank, source = _rank(given, percent)
    return {
        "stain_gal": gal_from_l(batch.stain_l),
        "stain_l": batch.stain_l,
        "water_gal": gal_from_l(batch.water_l),
        "water_l": batch.water_l,
        "acid_fl_oz": batch.acid_l / L_PER_US_FL_OZ,
        "acid_l": batch.acid_l,
        "total_gal": gal_from_l(batch.cut_mix_l),
        "total_l": batch.cut_mix_l,
        "tub_gal": gal_from_l(batch.total_l),
        "tub_l": batch.total_l,
        "hcl_percent_low": batch.hcl_percent_low,
        "hcl_percent_high": batch.hcl_percent_high,
        **_figures(given, batch, percent),
        "rank": rank.value,
        "source": source,
        "warnings": [ORDER_OF_MIXING, *batch.warnings, *_wanting(given, percent)],
    }


def _wanting(given: Given, percent: tuple[float, float] | None) -> tuple[str, ...]:
    """What was not told, and which figures stay out for it."""
    if percent is None:
        return (SHARE_UNTOLD,)
    return () if "m2_per_l" in given or percent[1] > MOST_PERCENT else (COVERAGE_UNTOLD,)


SHARE_UNTOLD = (
    "The stain's share of hydrochloric acid was not told (stain_hcl_percent_low and _high, from "
    "its safety sheet): how strong the tub is, how warm it gets and what added acid does are not "
    "reckoned."
)
COVERAGE_UNTOLD = (
    "How far a litre or a gallon goes was not told (m2_per_l or ft2_per_gal): acid on each m² is "
    "not reckoned."
)
_ASKED = ("mol_per_l", "mol_per_m2", "times_by_acid")


def _figures(given: Given, batch: Batch, percent: tuple[float, float] | None) -> Result:
    """What the acid science makes of the tub; null where the stain's share was not told."""
    keys = [f"{key}_{end}" for key in _ASKED for end in ("low", "high")]
    if percent is None or percent[1] > MOST_PERCENT:
        return dict.fromkeys((*keys, "tub_c_high", "tub_f_high"))
    celsius = given.usual("temperature_c", USUAL_C)
    tub = Tub(
        water_l=batch.water_l,
        stain_l=batch.stain_l,
        acid_l=batch.acid_l,
        percent=Ends(*percent),
        density_kg_l=given.maybe("stain_density_kg_l"),
        start_c=celsius,
        salts={},
    )
    m2_per_l = given.maybe("m2_per_l")
    told = figures_of(tub, l_per_m2=1 / (m2_per_l or 1.0))
    ends = (told.mol_per_l, told.mol_per_m2 if m2_per_l else None, told.times_by_acid)
    pairs = [(one.low, one.high) if one else (None, None) for one in ends]
    found: Result = dict(zip(keys, chain.from_iterable(pairs), strict=True))
    warm = told.tub_c.high
    return found | {"tub_c_high": warm, "tub_f_high": f_from_c(warm)}


def _told(given: Given, key: str) -> bool | None:
    said = given.text(key)
    return None if said is None else said == "yes"


def _percent(given: Given) -> tuple[float, float] | None:
    low, high = given.maybe("stain_hcl_percent_low"), given.maybe("stain_hcl_percent_high")
    if low is None and high is None:
        return None
    low, high = (high if low is None else low), (low if high is None else high)
    assert low is not None
    assert high is not None
    if low > high:
        raise refuse("stain_hcl_percent_low", "It is above stain_hcl_percent_high.", "Swap them.")
    return low, high


def _rank(given: Given, percent: tuple[float, float] | None) -> tuple[Rank, str]:
    """The weakest thing the figures lean on."""
    if percent is not None and "stain_density_kg_l" not in given:
        return STAIN_KG_L.rank, f"arithmetic; density of the stain from {STAIN_KG_L.source}"
    if given.usual("acid_ml_per_l", 0.0) > 0:
        return Rank.PRACTICE, "arithmetic; adding acid is common-practice"
    return Rank.PUBLISHED, "arithmetic"


SUM = Sum(
    name="batch",
    what="stain, water and acid of a batch at a cut",
    arguments=(
        Argument("cut", needed=True),
        Argument("total", VOLUME, Bounds(0.0, MOST_L, above=True)),
        Argument("stain", VOLUME, Bounds(0.0, MOST_L, above=True)),
        Argument("acid", ADDED, Bounds(0.0, 1000.0)),
        Argument("stain_hcl_percent_low", bounds=Bounds(0.0, 40.0)),
        Argument("stain_hcl_percent_high", bounds=Bounds(0.0, 40.0)),
        Argument("stain_density", DENSITY, Bounds(0.9, 2.0)),
        Argument("", COVERAGE, Bounds(0.0, 1e5, above=True)),
        Argument("temperature", TEMPERATURE, Bounds(0.0, 45.0)),
        Argument("chromate", choices=("yes", "no")),
        Argument("oxidiser", choices=("yes", "no")),
    ),
    one_of=(("total_l", "stain_l"),),
    reckon=reckon,
)
