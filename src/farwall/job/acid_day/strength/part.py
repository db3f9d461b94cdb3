"""The strength of every coat and tub of a plan."""

from __future__ import annotations

from farwall.acid.mixing import MOST_PERCENT
from farwall.evidence import Known, Rank, weakest
from farwall.facts.contents import Content
from farwall.facts.defaults import settle
from farwall.facts.job import Stain
from farwall.facts.plan import Mix
from farwall.facts.settled import SettledCoat
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.strength.noun import (
    CoatStrength,
    Ends,
    MixFigures,
    Sheet,
    Strength,
    TubPour,
)
from farwall.job.acid_day.strength.tub import Tub, figures_of
from farwall.job.acid_day.strength.words import (
    NO_DAY,
    NO_DENSITY,
    NO_SHARE,
    OWN_HEAT,
    SALTS,
    TOO_STRONG,
    WARM_TUB,
)
from farwall.mix.batch import ORDER_OF_MIXING, STAIN_KG_L, added_acid_warnings
from farwall.mix.cut import parse_cut

WARM = Known(40.0, "°C", Rank.GUESS, "house-guess")
"""From here on a tub is told to be warm: it fumes the more, and is no thing for a sprayer."""
COLDEST_C, WARMEST_C = 0.0, 45.0
"""Water, stain and acid are taken as warm as the air, within these."""
FL_OZ_PER_GAL = 128


def strength_of(ground: Ground) -> Strength:
    """What each stain's sheet says, how strong each coat's mix is, and each tub of the plan."""
    settled = settle(ground.job)
    start_c = min(max(settled.survey.air_c, COLDEST_C), WARMEST_C)
    stains = {coat.stain.id: coat.stain for coat in settled.coats}
    coats = {coat.id: _coat(coat, start_c) for coat in settled.coats}
    return Strength(
        sheets=tuple(map(_sheet, stains.values())),
        coats=tuple(coats.values()),
        tubs=tuple(_tub(mix, coats[mix.coat].figures)
                   for mix in ground.plan.mixes if mix.coat in coats),
        order=ORDER_OF_MIXING,
        warm_c=WARM.value,
        warnings=(OWN_HEAT,) if any(coat.figures for coat in coats.values()) else (),
    )  # fmt: skip


def share_of(stain: Stain) -> Ends | None:
    """% HCl of the neat stain; one end told stands for both; None where neither was."""
    told = (stain.hcl_percent_low, stain.hcl_percent_high)
    ends = [end for end in told if end is not None]
    return Ends(min(ends), max(ends)) if ends else None


def _sheet(stain: Stain) -> Sheet:
    return Sheet(
        stain=stain.id,
        name=stain.name or stain.id,
        hcl_percent=share_of(stain),
        density_kg_l=stain.density_kg_l,
        chromate=stain.names_chromate,
        oxidiser=stain.names_oxidiser,
        contents=stain.contents,
        sheet_read=stain.sheet_read,
    )


def _coat(coat: SettledCoat, start_c: float) -> CoatStrength:
    stain = coat.stain
    added = coat.coat.added_acid_fl_oz_per_gal or 0.0
    figures = _figures(coat, added, start_c)
    rank = Rank.PUBLISHED if stain.density_kg_l is not None else STAIN_KG_L.rank
    return CoatStrength(
        coat=coat.id,
        stain=stain.id,
        stain_name=stain.name or stain.id,
        cut=coat.cut,
        added_acid_fl_oz_per_gal=added,
        l_per_m2=coat.l_per_m2,
        neat_percent=share_of(stain),
        start_c=start_c,
        figures=figures,
        rank=weakest(rank, Rank.PRACTICE if added > 0 else rank).value,
        source="parker-1965, laliberte-2004, hcl-20c, stain-sheets",
        warnings=(*_added(coat, added), *_sheet_asks(coat), *_warm(coat, figures)),
    )


def _figures(coat: SettledCoat, added_fl_oz_per_gal: float, start_c: float) -> MixFigures | None:
    """Reckoned on a litre of cut mix."""
    share, cut = share_of(coat.stain), parse_cut(coat.cut)
    if share is None or share.high > MOST_PERCENT:
        return None
    tub = Tub(
        water_l=1 - cut.stain_share,
        stain_l=cut.stain_share,
        acid_l=added_fl_oz_per_gal / FL_OZ_PER_GAL,
        percent=share,
        density_kg_l=coat.stain.density_kg_l,
        start_c=start_c,
        salts={one.substance: _ends(one) for one in coat.stain.contents},
    )
    return figures_of(tub, l_per_m2=coat.l_per_m2)


def _ends(content: Content) -> Ends:
    """Both ends of a share; a low end that the sheet leaves out is 0, a high one the low."""
    low = content.mass_percent_low or 0.0
    return Ends(low, low if content.mass_percent_high is None else content.mass_percent_high)


def _added(coat: SettledCoat, added_fl_oz_per_gal: float) -> tuple[str, ...]:
    if added_fl_oz_per_gal <= 0:
        return ()
    stain = coat.stain
    return added_acid_warnings(chromate=stain.names_chromate, oxidiser=stain.names_oxidiser)


def _sheet_asks(coat: SettledCoat) -> list[str]:
    stain, share = coat.stain, share_of(coat.stain)
    name = stain.name or stain.id
    told = []
    if share is None:
        told.append(NO_SHARE.format(stain=name, coat=coat.id))
    elif share.high > MOST_PERCENT:
        told.append(TOO_STRONG.format(stain=name, percent=f"{share.high:g}"))
    else:
        if stain.density_kg_l is None:
            told.append(NO_DENSITY.format(
                stain=name, low=f"{STAIN_KG_L.low:g}", high=f"{STAIN_KG_L.high:g}"
            ))  # fmt: skip
        if not stain.contents:
            told.append(SALTS.format(stain=name))
    if not stain.sheet_read:
        told.append(NO_DAY.format(stain=name))
    return told


def _warm(coat: SettledCoat, figures: MixFigures | None) -> list[str]:
    if figures is None or figures.tub_c.high < WARM.value:
        return []
    return [WARM_TUB.format(coat=coat.id, celsius=f"{figures.tub_c.high:.0f}")]


def _tub(mix: Mix, figures: MixFigures | None) -> TubPour:
    total = mix.water_l + mix.stain_l + mix.acid_l
    heat = None
    if figures is not None:
        by_l = figures.heat_kj_per_l
        heat = Ends(by_l.low * total, by_l.high * total)
    return TubPour(
        mix=mix.id, coat=mix.coat, fields=mix.fields, water_l=mix.water_l,
        stain_l=mix.stain_l, acid_l=mix.acid_l, total_l=total, heat_kj=heat,
    )  # fmt: skip
