"""What a litre of each stain holds to be taken, by its sheet; sheets seen where nobody told."""

from __future__ import annotations

from farwall.acid.bases import Base
from farwall.acid.masses import HCL_G_MOL
from farwall.acid.neutralise import dose
from farwall.acid.salts_take import SaltsTaken, salts_taken
from farwall.evidence import Rank
from farwall.facts.job import Stain
from farwall.job.acid_day.neutralising.noun import StainDose
from farwall.nouns import dataclass

SHEETS_HCL_PERCENT = (5.0, 20.0)
"""% HCl on sheets seen: below 10 to 20 [stain-sheets]; taken where nobody told."""
SHEETS_KG_L = (1.05, 1.33)
"""Densities on sheets seen [stain-sheets], from memory; taken where nobody told."""
ROOM_C = 20.0


@dataclass(frozen=True)
class Strength:
    """mol/L of a stain as bought: acid low and high, salts, and what it rests on."""

    acid: tuple[float, float]
    salts: SaltsTaken
    told: bool
    rank: str
    source: str

    def mol_l(self) -> tuple[float, float]:
        """Moles that a litre takes of a base, low and high."""
        return (
            self.acid[0] + self.salts.low_mol_l,
            self.acid[1] + self.salts.high_mol_l,
        )


def strength_of_stain(stain: Stain) -> Strength:
    """From the sheet as told; an end that is missing is the other one."""
    low, high = stain.hcl_percent_low, stain.hcl_percent_high
    told = low is not None or high is not None
    percents = (
        low if low is not None else (high if high is not None else SHEETS_HCL_PERCENT[0]),
        high if high is not None else (low if low is not None else SHEETS_HCL_PERCENT[1]),
    )
    kg_l = SHEETS_KG_L if stain.density_kg_l is None else (stain.density_kg_l,) * 2
    acid = tuple(p * 10 * d / HCL_G_MOL for p, d in zip(percents, kg_l, strict=True))
    sure = told and stain.density_kg_l is not None
    return Strength(
        acid=(acid[0], acid[1]),
        salts=salts_taken(stain.contents, (kg_l[0], kg_l[1])),
        told=told,
        rank=(Rank.MEASURED if sure else Rank.MEMORY).value,
        source="told in the job" if sure else "stain-sheets",
    )


def stain_dose(stain: Stain, base: Base) -> StainDose:
    """For one litre, spilled."""
    strength = strength_of_stain(stain)
    low, high = (dose(base, mol, temperature_c=ROOM_C) for mol in strength.mol_l())
    return StainDose(
        stain=stain.id,
        name=stain.name or stain.id,
        acid_low=strength.acid[0],
        acid_high=strength.acid[1],
        salts_low=strength.salts.low_mol_l,
        salts_high=strength.salts.high_mol_l,
        kg_l_low=low.base_kg,
        kg_l_high=high.base_kg,
        co2_l_low=low.co2_l,
        co2_l_high=high.co2_l,
        contents_told=bool(stain.contents),
        not_counted=strength.salts.not_counted,
        rank=strength.rank,
        source=strength.source,
    )
