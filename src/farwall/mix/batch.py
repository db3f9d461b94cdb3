"""One batch: how much stain, water and, where a finisher insists, added acid.

Volumes are taken as adding up; the contraction on diluting a strong acid is
below the marks on a pail (from memory). Strengths are shares of mass.
"""

from __future__ import annotations

from farwall.errors import Mistake, Refused
from farwall.evidence import Known, Rank, Span
from farwall.facts.default_table import STAIN_DENSITY_KG_L as _DENSITY
from farwall.mix.cut import Cut
from farwall.nouns import dataclass

TRADE_ACID_PERCENT = Known(31.45, "% HCl by mass", Rank.PUBLISHED, "baume")
"""Trade-strength muriatic acid, 20 degrees Baumé [baume]."""

TRADE_ACID_KG_L = Known(1.16, "kg/L", Rank.PUBLISHED, "baume")
"""Its density: 145/(145 - 20) = 1.16 at 60 °F, water there being 0.999 kg/L [baume]."""

WATER_KG_L = 1.0
"""Within 0.3 % between 5 and 25 °C: far below how well a pail is read."""

STAIN_KG_L = Span(
    _DENSITY.low or 0.0, _DENSITY.usual, _DENSITY.high, _DENSITY.rank, _DENSITY.source
)
"""Taken when the sheet of the stain in hand is silent; sheets seen say 1.15 to 1.33."""

ORDER_OF_MIXING = (
    "Water in the tub first, then the stain, slowly, stirred with plastic, in moving air. "
    "Never water into acid."
)

ADDED_ACID_WARNINGS = (
    "The maker's sheet does not cover a mix with added acid; the sheet of the stain in hand wins.",
    "Make a sample with this very mix, on this slab, before any floor.",
    "Fumes rise with added acid: more air, acid-gas cartridges, goggles and a face shield.",
)

CHROMATE_UNKNOWN = (
    "Whether the stain holds chromate was not told. Read its sheet: with chromate no acid is "
    "added. Until its sheet was entered the gate refuses the pour."
)

OXIDISER_UNKNOWN = (
    "Whether the stain holds an oxidiser was not told. Read its sheet: with one, added acid gives "
    "off chlorine."
)


@dataclass(frozen=True)
class Batch:
    """What goes into one tub, litres; strength of the whole in % HCl by mass when known.

    `cut_mix_l` is stain and water, `total_l` all that stands in the tub.
    """

    cut: Cut
    stain_l: float
    water_l: float
    acid_l: float
    hcl_percent_low: float | None
    hcl_percent_high: float | None
    warnings: tuple[str, ...]

    @property
    def cut_mix_l(self) -> float:
        """Stain and water, litres."""
        return self.stain_l + self.water_l

    @property
    def total_l(self) -> float:
        """All that stands in the tub, litres."""
        return self.cut_mix_l + self.acid_l


def make_batch(
    *,
    cut: Cut,
    total_l: float | None = None,
    stain_l: float | None = None,
    acid_ml_per_l: float = 0.0,
    stain_hcl_percent: tuple[float, float] | None = None,
    stain_density_kg_l: float | None = None,
    chromate: bool | None = None,
    oxidiser: bool | None = None,
    where: str = "batch",
) -> Batch:
    """Stain, water and acid of one batch [L].

    Either `total_l` (the cut mix: stain and water, litres) or `stain_l` is
    given. `acid_ml_per_l` is millilitres of trade-strength muriatic acid a
    litre of cut mix, on top of it. `stain_hcl_percent` is the low and high
    share by mass that the stain's sheet states; without it the strength of
    the batch is not known and stays None.

    Raises Refused when both or neither amount is given, when an amount is
    not above 0, and for added acid where the sheet names chromate or another
    oxidiser.
    Added acid is common practice of some, with no source [common-practice].
    """
    if (total_l is None) == (stain_l is None):
        what = "Give either the total or the stain, one of the two."
        raise Refused(Mistake(where, what, "The cut gives the other one."))
    if acid_ml_per_l > 0 and (told := no_added_acid(where, chromate=chromate, oxidiser=oxidiser)):
        raise Refused(*told)
    given = total_l if total_l is not None else stain_l
    if given is None or not 0 < given < float("inf"):
        raise Refused(Mistake(where, f"{given} L is no amount to mix.", "Give more than 0."))
    stain = stain_l if stain_l is not None else given * cut.stain_share
    water = stain * cut.water / cut.stain
    acid = (stain + water) * acid_ml_per_l / 1000
    low, high = _strength(stain, water, acid, stain_hcl_percent, stain_density_kg_l)
    warnings = added_acid_warnings(chromate=chromate, oxidiser=oxidiser) if acid > 0 else ()
    return Batch(cut, stain, water, acid, low, high, warnings)


def added_acid_warnings(*, chromate: bool | None, oxidiser: bool | None) -> tuple[str, ...]:
    """The three that stand with every added acid, and what nobody told of the sheet."""
    unknown = ((CHROMATE_UNKNOWN, chromate), (OXIDISER_UNKNOWN, oxidiser))
    return (*ADDED_ACID_WARNINGS, *(words for words, told in unknown if told is None))


def no_added_acid(
    where: str, *, chromate: bool | None, oxidiser: bool | None
) -> tuple[Mistake, ...]:
    """Why no acid is added, every reason at once; empty where the sheet names neither."""
    told = ((no_acid_with_chromate, chromate), (no_acid_with_oxidiser, oxidiser))
    return tuple(mistake(where) for mistake, so in told if so)


def no_acid_with_chromate(where: str) -> Mistake:
    """The refusal of added acid to a stain with chromate."""
    return Mistake(
        where,
        "No acid is added to a stain whose sheet names chromate.",
        "Open the slab by sanding instead, on a sample first; the sheet of the stain wins.",
    )


def no_acid_with_oxidiser(where: str) -> Mistake:
    """The refusal of added acid to a stain with another oxidiser."""
    return Mistake(
        where,
        "No acid is added to a stain whose sheet names an oxidiser: together they give off "
        "chlorine.",
        "Open the slab by sanding instead, on a sample first; the sheet of the stain wins.",
    )


def fills(litres: float, tank_l: float) -> tuple[float, ...]:
    """How a batch goes into the sprayer: full tanks, then what is left, litres."""
    full = int(litres / tank_l + 1e-9)
    rest = litres - full * tank_l
    return (tank_l,) * full + ((rest,) if rest > 1e-6 * tank_l else ())


def _strength(
    stain_l: float,
    water_l: float,
    acid_l: float,
    percent: tuple[float, float] | None,
    density_kg_l: float | None,
) -> tuple[float | None, float | None]:
    """Low and high % HCl by mass, over both ends of the sheet and of the density."""
    if percent is None:
        return None, None
    ends = (STAIN_KG_L.low, STAIN_KG_L.high or STAIN_KG_L.low)
    densities = ends if density_kg_l is None else (density_kg_l,)
    acid_kg = acid_l * TRADE_ACID_KG_L.value
    shares = [
        (share * kg_l * stain_l + TRADE_ACID_PERCENT.value * acid_kg)
        / (kg_l * stain_l + WATER_KG_L * water_l + acid_kg)
        for share in percent
        for kg_l in densities
    ]
    return min(shares), max(shares)
