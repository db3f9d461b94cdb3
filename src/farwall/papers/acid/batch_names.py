"""What a batch is called on cards and labels."""

from __future__ import annotations

from farwall.facts.numbered import stain_named
from farwall.facts.plan import Mix, Plan
from farwall.papers.acid.cards.card import Said
from farwall.papers.run_sheet.names import coat_ids
from farwall.papers.words import whole_names_in
from farwall.phrasebook import in_spanish


def batch_name(plan: Plan, mix: Mix) -> Said:
    """`Coat 1, mix 2`: the coat by its place, the mix by its place among those of the coat."""
    coats = coat_ids(plan)
    coat = coats.index(mix.coat) + 1 if mix.coat in coats else 1
    place = [one.id for one in plan.mixes if one.coat == mix.coat].index(mix.id) + 1
    return Said(f"Coat {coat}, mix {place}", f"Mano {coat}, mezcla {place}")


def stain_said(plan: Plan, name: str) -> Said:
    """What the job calls a stain: the same in both languages, but for names that Farwall gave."""
    return Said(name, in_spanish(name, whole_names_in(plan)) or name)


def stain_of(plan: Plan, mix: Mix) -> str:
    """What the job calls the stain of a mix; empty where no coat tells."""
    coat = next((one for one in plan.inputs.coats if one.id == mix.coat), None)
    return stain_named(plan, coat.stain) if coat else ""
