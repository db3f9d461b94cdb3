"""What is done, in order, and what is never done. Common practice where no source stands beside."""

from __future__ import annotations

from farwall.facts.job import Job, Stain
from farwall.job.acid_day.neutralising.noun import StainDose

SPILL = (
    "People and animals out of it; respirator, goggles and gloves on before anybody bends down.",
    "Dam it: no drain, no soil, no gap under a wall.",
    "Bicarbonate dry, from the edge inward, a handful at a time, until the fizz ends.",
    "Stir, wait for the gas, read the strip: below pH 6 some more, and wait again.",
    "Take it up with absorbent, into an open, labelled pail; a lid only when all is still.",
)
TUB = (
    "Ask first: neutralising left-over stain may count as treating waste; never one with chromate.",
    "A vessel four times the tub's litres, or in lots; open, moving air, two in respirators.",
    "Water in first, as much as the mix; then the mix into the water, slowly.",
    "The base little by little, each when the last fizz has ended; most of the dose, not all.",
    "Stir, leave it open overnight, read the strip: the gas that leaves raises it by itself.",
    "The rest of the base only up to pH 7 to 8.5. Metals settle; clear water is not clean water.",
)
FLOOR = (
    "Floor dry; loose powder off with a HEPA vacuum.",
    "Neutraliser on from the far end, wet for 5 to 10 minutes, until the fizz stops.",
    "Scrub, and take it up wet before it dries; then detergent, then the rinses.",
)
CLOSED = (
    "Never close acid and bicarbonate in a jug, drum or sprayer: a gallon of trade acid gives some "
    "900 L of gas. Vented lids, and only when it is still."
)
POISON = "Never ammonia into an acid tub, never ammonia or acid near bleach: smoke, and poison gas."
VINEGAR = "No vinegar: it is an acid itself, and the floor stays sour."
LIME = (
    "No lime and no lye on the floor: a little too much goes to pH 12.4 and more, which burns skin "
    "and eyes, and the slab keeps it."
)
SHEET = (
    "The sheet of the stain in hand, local codes and the utility's word win over every figure here."
)
GAS = (
    "The gas is heavier than air and takes its place: doors open, nobody in a closet, pit or "
    "cellar beside it. A headache or fast breath: out at once."
)
SKIN = "Never neutralise on skin or in eyes: water only, for 15 minutes."
NEVER = (SKIN, CLOSED, GAS, POISON, VINEGAR, LIME, SHEET)
STRIP = "Coloured water fools a strip: wet its edge only and wipe, or use a meter."
STILL_SOUR = (
    "At the equivalent dose the water reads below pH 5 until its gas has left. More bicarbonate "
    "does little then; stirring and waiting do."
)
AMMONIA_STAYS = (
    "Ammonia keeps copper dissolved in the rinse water, and fumes: cartridges marked for ammonia."
)
BASE_NOT_TOLD = "What the floor is neutralised with was not told: bicarbonate is taken."
CHROMATE = "No base takes hexavalent chromium out of the water: it stays poison at every pH."
CHROMATE_UNKNOWN = "Whether the stain holds chromate was not told: read its sheet."
AMMONIUM = "Its sheet lists ammonium chloride: lime, lye and soda ash drive ammonia out of it."
HEATS = "Lime heats the tub: slowly, with all the water that it holds."


def warnings_for(base: str, stains: tuple[Stain, ...]) -> tuple[str, ...]:
    """What can hurt, the most dangerous first."""
    substances = [content.substance for one in stains for content in one.contents]
    told = list(NEVER)
    if any(one.chromate for one in stains) or any("dichromate" in one for one in substances):
        told.insert(0, CHROMATE)
    if "ammonium chloride" in substances:
        told.append(AMMONIUM)
    told += {"ammonia water": [AMMONIA_STAYS], "lime": [HEATS]}.get(base, [])
    return tuple(told)


def notes_for(job: Job, stains: tuple[Stain, ...], doses: tuple[StainDose, ...]) -> tuple[str, ...]:
    """What misleads, and what was not told."""
    told = [STILL_SOUR, STRIP]
    if any(one.chromate is None for one in stains):
        told.append(CHROMATE_UNKNOWN)
    if job.washing.base is None:
        told.append(BASE_NOT_TOLD)
    return (*told, *(line for one in doses for line in asked(one)))


def asked(one: StainDose) -> tuple[str, ...]:
    """What the sheet of a stain was not asked, with what it means for the dose."""
    told = []
    if one.source == "stain-sheets":
        told.append(
            f"{one.name}: its acid or its density was not told; taken as on sheets seen. Read its "
            "sheet."
        )
    if not one.contents_told:
        told.append(
            f"{one.name}: its salts were not told, and are not counted. Iron and copper salts take "
            "as much base as the acid does, and more: keep three times the dose at hand, and let "
            "the strip say."
        )
    if one.not_counted:
        told.append(
            f"{one.name}: not counted, for its sheet gives no end: {'; '.join(one.not_counted)}."
        )
    return tuple(told)
