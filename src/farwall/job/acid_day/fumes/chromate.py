"""Mist of a stain with chromate, where somebody sprays: chromium VI against its limits.

The vapour of the acid is not the hazard here, nor does chromate fly off: the mist of the spraying
is, and the dust of sanding later. One grain of it counts: 5 µg/m³ [osha-chromium].
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.acid.limits import DAY_H, LIMITS
from farwall.acid.masses import ATOMIC_WEIGHT, molar_mass_g_mol
from farwall.evidence import Rank
from farwall.facts.job import Stain
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.job.acid_day.fumes.cases import BY_PERSON, MIST
from farwall.job.acid_day.fumes.ground_air import DayAir
from farwall.job.acid_day.fumes.laid import Patch
from farwall.job.acid_day.fumes.noun import Chromate, Range
from farwall.mix.batch import STAIN_KG_L
from farwall.mix.cut import parse_cut

CR_SHARE = {
    "sodium dichromate": 2 * ATOMIC_WEIGHT["Cr"] / molar_mass_g_mol(Na=2, Cr=2, O=7),
    "potassium dichromate": 2 * ATOMIC_WEIGHT["Cr"] / molar_mass_g_mol(K=2, Cr=2, O=7),
}
UNTOLD_PERCENT = (1.0, 5.0, 10.0)
"""Dichromate where the sheet's share was not entered: one sheet seen said above 5 % [stain-sheets],
the ends are a guess."""


def chromate_of(settled: SettledJob, patches: Sequence[Patch], air: DayAir) -> Chromate | None:
    """Mist over who sprays such a coat, from its near air alone; None without chromate.

    The room's own air comes on top of it. Mist: the share that stays in the air, a guess.
    """
    coats = {c.id: c for c in settled.coats if holds_chromate(c.stain)}
    own = [one for one in patches if one.coat in coats]
    if not own:
        return None
    minutes = sum(one.spray_min for one in own)
    told = all(_percent(coat.stain)[1] for coat in coats.values())
    spraying = []
    for n, mist in enumerate((MIST.low, MIST.likely, MIST.high)):
        mg = sum(one.litres * _mg_in_litre(coats[one.coat], n) for one in own) * mist
        passing = air.by_person_m3_min * (BY_PERSON.high, 1.0, BY_PERSON.low)[n]
        spraying.append(mg / minutes / passing * 1000)
    day = [one * minutes / (DAY_H * 60) for one in spraying]
    return Chromate(
        tuple(coats), told, _range(spraying), _range(day),
        LIMITS["chromium-law"].mg_m3 * 1000, LIMITS["chromium-action"].mg_m3 * 1000,
        Rank.GUESS.value,
    )  # fmt: skip


def holds_chromate(stain: Stain) -> bool:
    """Whether the sheet names chromate, by its own word or among its contents."""
    return bool(stain.chromate) or any(one.substance in CR_SHARE for one in stain.contents)


def _percent(stain: Stain) -> tuple[tuple[float, float, float], bool]:
    """Chromium VI, % by mass of the stain, low, likely, high; whether it was told."""
    low = high = 0.0
    for one in stain.contents:
        if one.substance in CR_SHARE:
            ends = [x for x in (one.mass_percent_low, one.mass_percent_high) if x is not None]
            if ends:
                low += ends[0] * CR_SHARE[one.substance]
                high += ends[-1] * CR_SHARE[one.substance]
    if high > 0:
        return (low, (low + high) / 2, high), True
    first, likely, last = (one * CR_SHARE["sodium dichromate"] for one in UNTOLD_PERCENT)
    return (first, likely, last), False


def _mg_in_litre(coat: SettledCoat, end: int) -> float:
    density = coat.stain.density_kg_l or STAIN_KG_L.likely or STAIN_KG_L.low
    percent, _ = _percent(coat.stain)
    return parse_cut(coat.cut).stain_share * density * 1e6 * percent[end] / 100


def _range(found: Sequence[float]) -> Range:
    return Range(*(float(f"{one:.2g}") for one in found))
