"""The part as a whole."""

from __future__ import annotations

from farwall.acid.bases import BASES
from farwall.facts.defaults import stains_and_coats
from farwall.facts.washing import Base as BaseWord
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.neutralising.curve import (
    curve_of,
    molal_drawn,
    readings_of,
    table_of,
)
from farwall.job.acid_day.neutralising.floor import floor_doses
from farwall.job.acid_day.neutralising.noun import Doses, Neutralising
from farwall.job.acid_day.neutralising.stains import stain_dose, strength_of_stain
from farwall.job.acid_day.neutralising.steps import FLOOR, SPILL, TUB, notes_for, warnings_for
from farwall.job.acid_day.neutralising.tubs import acid_mol_l, tub_doses
from farwall.units import KG_PER_LB, L_PER_US_GAL

FORMULAS: dict[BaseWord, str] = {
    "bicarbonate": "NaHCO3",
    "soda ash": "Na2CO3",
    "ammonia water": "NH3",
    "lime": "Ca(OH)2",
}
SAFE: BaseWord = "bicarbonate"
"""What spills and tubs are always reckoned with: it foams, but it cannot overshoot."""
DRAWN_WITHOUT_MIX = 0.1
PAIL_KG, PAIL_L = KG_PER_LB, 5 * L_PER_US_GAL
"""1 lb in 5 gal, open beside the tub: as on sheets seen [stain-sheets]."""


def doses_of(ground: Ground) -> Doses:
    """What floor, tubs and spills of a planned job take, without the pH on the way.

    Spills and tubs are reckoned with bicarbonate, the floor with what the job tells. All of it
    counts what the stain's sheet says, low and high.
    """
    job, plan = ground.job, ground.plan
    word = job.washing.base or SAFE
    safe = BASES[FORMULAS[SAFE]]
    stains, _ = stains_and_coats(job)
    by_stain = {one.id: strength_of_stain(one) for one in stains}
    by_coat = {coat.id: by_stain[coat.stain] for coat in plan.inputs.coats}
    tubs = tub_doses(plan.mixes, by_coat, safe)
    largest = max(tubs, key=lambda one: one.mol_high, default=None)
    return Doses(
        base=word,
        base_told=job.washing.base is not None,
        formula=FORMULAS[word],
        stains=tuple(stain_dose(one, safe) for one in stains),
        tubs=tubs,
        largest="" if largest is None else largest.mix,
        floor=floor_doses(
            plan, by_coat, BASES[FORMULAS[word]], {room.id: room for room in job.floor.rooms}
        ),
        standing_by_kg=PAIL_KG,
        standing_by_l=PAIL_L,
    )


def neutralising_of(ground: Ground) -> Neutralising:
    """Spill, tubs and floor of a planned job, with the pH on the way, see `doses_of`."""
    job, plan = ground.job, ground.plan
    doses = doses_of(ground)
    stains, _ = stains_and_coats(job)
    by_stain = {one.id: strength_of_stain(one) for one in stains}
    by_coat = {coat.id: by_stain[coat.stain] for coat in plan.inputs.coats}
    drawn = DRAWN_WITHOUT_MIX
    for mix in plan.mixes:
        if mix.id == doses.largest:
            drawn = acid_mol_l(mix, by_coat[mix.coat])[1]
    molal = molal_drawn(drawn)
    return Neutralising(
        **vars(doses),
        table=table_of(molal),
        curve=curve_of(molal),
        readings=readings_of(FORMULAS[SAFE]),
        spill_steps=SPILL,
        tub_steps=TUB,
        floor_steps=FLOOR,
        warnings=warnings_for(doses.base, stains),
        notes=notes_for(job, stains, doses.stains),
    )
