"""The waste water of a planned job: litres, drums, metals, limits, words, tests, what to ask."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.acid.chromium import CHANGES, SILICA
from farwall.acid.metals import (
    WASHED_OFF,
    WASHED_RANK,
    Grams,
    StainLaid,
    grams_laid,
    grams_washed_off,
    mg_l_in,
)
from farwall.acid.rinse_water import DRUM_EMPTY_KG, DRUM_FILL, DRUM_L, drums_for, rinse_water
from farwall.acid.settling import holds_mg_l, sludge_l
from farwall.acid.waste_limits import FEDERAL, LOCAL, METALS, Metal
from farwall.evidence import Rank, Span
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job, Stain
from farwall.facts.plan import Plan
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.waste import sentences
from farwall.job.acid_day.waste.asked import asks_of, day_of, tests_read, words_said
from farwall.job.acid_day.waste.figures import figure
from farwall.job.acid_day.waste.noun import MetalIn, Waste
from farwall.mix.cut import parse_cut

SETTLE_PH = (8.0, 9.0)
"""To which rinse water is raised to settle: common practice, no source."""
AMMONIA_MOL_L = 0.1
"""Ammonia in rinse water where it is what neutralises, at the high end: a guess, from household
ammonia of 5 to 10 % used 1:16 to 1:40."""
_MEASURED_TIMES = (0.5, 2.0)
"""One measured share holds for another floor within half to double: a guess."""


def waste_of(ground: Ground) -> Waste:
    """What the facts and the plan say of the waste water; nothing missing is guessed away."""
    job, plan = ground.job, ground.plan
    stains = _laid(job, plan)
    water = rinse_water(area_of(plan), l_per_m2=job.washing.water_l_per_m2)
    laid = _all_laid([one for _, one in stains])
    day = day_of(plan.starts_at)
    share, share_rank = _share([stain for stain, _ in stains])
    metals = _metals(laid, [one for _, one in stains], water.all_l, job)
    drums = drums_for(
        water.all_l.likely or 0.0,
        size_l=job.washing.drums.size_l or DRUM_L,
        fill=(job.washing.drums.fill_percent or 100 * DRUM_FILL) / 100,
        empty_kg=job.washing.drums.empty_kg or DRUM_EMPTY_KG,
    )
    low_l, high_l = sludge_l(grams_washed_off(one for _, one in stains))
    chromate = tuple(stain.name or stain.id for stain, _ in stains if stain.names_chromate)
    kg = (water.all_l.likely or 0.0) * 1.0
    return Waste(
        area_m2=area_of(plan),
        water_low_l=water.all_l.low,
        water_likely_l=water.all_l.likely or 0.0,
        water_high_l=water.all_l.high or 0.0,
        water_rank=water.all_l.rank.value,
        drums_full=drums.full,
        drums_spare=drums.spares,
        drum_holds_l=drums.holds_l,
        drum_full_kg=drums.full_kg,
        water_kg=kg,
        washed_off_low_percent=100 * share[0],
        washed_off_high_percent=100 * share[1],
        washed_off_rank=share_rank.value,
        metals=metals,
        sludge_low_l=low_l,
        sludge_high_l=high_l,
        unread=tuple(stain.name or stain.id for stain, _ in stains if not stain.contents),
        route=job.survey.waste or "",
        refusal=sentences.REFUSED.get(job.survey.waste or "", ""),
        words=words_said(job.discharge, day),
        tests=tests_read(job.discharge, laid, day),
        chromate=chromate,
        chromium=tuple(one.says for one in CHANGES) if chromate else (),
        dust=SILICA,
        clear=_clear(chromate=bool(chromate)),
        steps=sentences.STEPS,
        asks=asks_of(job, day, share_is_guess=share_rank is Rank.GUESS),
        warnings=_warnings(stains, kg),
    )


def area_of(plan: Plan) -> float:
    """Floor that is stained and so washed, m²: that of its first coat."""
    first = plan.inputs.coats[0].id if plan.inputs.coats else ""
    return sum(one.area_m2 for one in plan.fields if one.coat == first)


def _laid(job: Job, plan: Plan) -> list[tuple[Stain, StainLaid]]:
    """Each stain of the job with the litres, as sold, that all its coats lay by the plan."""
    stains, _ = stains_and_coats(job)
    litres: dict[str, float] = {}
    for coat in plan.inputs.coats:
        area = sum(one.area_m2 for one in plan.fields if one.coat == coat.id)
        share = parse_cut(coat.cut).stain_share
        laid = area * plan.inputs.l_per_m2.get(coat.id, 0.0) * share
        litres[coat.stain] = litres.get(coat.stain, 0.0) + laid
    return [
        (one, StainLaid(litres[one.id], one.contents, one.density_kg_l, _washed_off(one)))
        for one in stains
        if one.id in litres
    ]


def _washed_off(stain: Stain) -> tuple[float, float]:
    if stain.washed_off_percent is None:
        return WASHED_OFF
    low, high = (stain.washed_off_percent / 100 * times for times in _MEASURED_TIMES)
    return low, min(1.0, high)


def _share(stains: Sequence[Stain]) -> tuple[tuple[float, float], Rank]:
    """The widest share of all stains; measured only where every one was."""
    each = [_washed_off(one) for one in stains] or [WASHED_OFF]
    told = bool(stains) and all(one.washed_off_percent is not None for one in stains)
    widest = (min(low for low, _ in each), max(high for _, high in each))
    return widest, Rank.MEASURED if told else WASHED_RANK


def _all_laid(stains: Sequence[StainLaid]) -> dict[Metal, Grams]:
    found: dict[Metal, Grams] = {}
    for one in stains:
        for metal, grams in grams_laid(one).items():
            found[metal] = found[metal].plus(grams) if metal in found else grams
    return {metal: found[metal] for metal in METALS if metal in found}


def _metals(
    laid: Mapping[Metal, Grams], stains: Sequence[StainLaid], water: Span, job: Job
) -> tuple[MetalIn, ...]:
    if water.low <= 0 or water.high is None:
        return ()
    off = grams_washed_off(stains)
    return tuple(
        _metal(
            metal,
            laid[metal],
            mg_l_in(off[metal], (water.low, water.high)),
            _settles(metal, job),
        )
        for metal in laid
    )


def _metal(metal: Metal, laid: Grams, mg_l: tuple[float, float | None], settles: str) -> MetalIn:
    local, (low, high) = LOCAL[metal], mg_l
    most = low if high is None else high
    against = (
        "above"
        if low > local.high
        else "may be above"
        if (high is None or most > local.low)
        else "below"
    )
    return MetalIn(
        metal, laid.low_g, laid.high_g, low, high, local.low, local.high,
        settles, against,
    )  # fmt: skip


def _settles(metal: Metal, job: Job) -> str:
    """What becomes of it at pH 8 to 9, by the sum alone."""
    if metal in {"chromium", "chromium(VI)"}:
        six = any(stain.names_chromate for stain in job.stains)
        return "stays" if metal == "chromium(VI)" or six else "falls out"
    held = most_held_mg_l(metal, ammonia=job.washing.base == "ammonia water")
    return "much stays" if held > LOCAL[metal].low else "falls out"


def most_held_mg_l(metal: Metal, *, ammonia: bool) -> float:
    """The most that stays over its hydroxide at any pH from 8 to 9, mg/L."""
    least, most = SETTLE_PH
    steps = [least + (most - least) * n / 10 for n in range(11)]
    given = AMMONIA_MOL_L if ammonia else 0.0
    held = [holds_mg_l(metal, ph, ammonia_mol_l=given) for ph in steps]
    return max(one for one in held if one is not None)


def _clear(*, chromate: bool) -> tuple[str, ...]:
    """Why clear water is not clean water, of what this job holds."""
    held = holds_mg_l("manganese", SETTLE_PH[1]) or 0.0
    found = [sentences.CLEAR]
    found.append(sentences.CLEAR_CHROMIUM if chromate else sentences.CLEAR_CEMENT)
    found.append(sentences.CLEAR_MANGANESE.format(low=figure(held)))
    copper = most_held_mg_l("copper", ammonia=True)
    found.append(sentences.CLEAR_AMMONIA.format(high=figure(copper)))
    found.append(sentences.CLEAR_IRON)
    return tuple(found)


def _warnings(stains: Sequence[tuple[Stain, StainLaid]], kg: float) -> tuple[str, ...]:
    found = [sentences.DEFERS, sentences.NEVER]
    unread = [stain.name or stain.id for stain, _ in stains if not stain.contents]
    if unread:
        found.append(sentences.UNREAD.format(stain=" and ".join(unread)))
    if kg > FEDERAL["small-generator-kg"].value:
        found.append(sentences.SMALL_GENERATOR.format(kg=figure(kg)))
    return tuple(found)
