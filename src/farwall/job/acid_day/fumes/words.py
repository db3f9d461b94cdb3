"""What is always said of fumes, and what this job adds. English; the screens have their own."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.acid.limits import LIMITS, STRICTER
from farwall.facts.settled import SettledJob
from farwall.job.acid_day.fumes.chromate import holds_chromate
from farwall.job.acid_day.fumes.laid import Patch, strength_told
from farwall.job.acid_day.fumes.noun import RoomFumes
from farwall.job.acid_day.ground import Ground

NOTHING_SPRAYED = "Nothing is sprayed in this plan: no fumes were reckoned."
NO_ACID = (
    "The sheets as entered hold no hydrochloric acid, so no fumes of it were reckoned. Read the "
    "sheet of the bottle in hand again: a reactive stain without acid is rare."
)
STANDING = (
    (
        "A figure replaces neither a fit-tested respirator with acid-gas and P100 cartridges nor a "
        "measurement: read the air with a colour tube or a meter before anybody takes one off."
    ),
    "The house is never shut to gain open time.",
    STRICTER,
)
CHROMATE = (
    (
        "Chromate stands on the sheet: exposure is measured or shown by objective data first, by a "
        "licensed hygienist, who also settles respirator and waste (29 CFR 1926.1126). No acid is "
        "added. The mist is the hazard: nobody else in the house, nobody sands this floor dry."
    ),
)
NO_SHEET = (
    "The strength of {stains} was not entered: 5 to 20 % HCl was taken. Read the sheet of the "
    "bottle in hand and enter it."
)
ADDED = "Acid is added to {coats}: fumes rise, and the maker's sheet no longer covers the mix."
UNSAID = "How the house stands was not told: shut was taken."
AT_ONCE = (
    "At the high end a room passes 45 ppm, dangerous at once to life or health: cartridges are "
    "not enough there. Open the house and set fans before the first stroke, or do not begin."
)


def warnings_of(
    settled: SettledJob, ground: Ground, patches: Sequence[Patch], rooms: Sequence[RoomFumes]
) -> tuple[str, ...]:
    """The job's own warnings, then the standing ones."""
    sprayed = {one.coat for one in patches}
    coats = [coat for coat in settled.coats if coat.id in sprayed]
    found: list[str] = []
    if max(one.peak_ppm.high for one in rooms) > (LIMITS["hcl-at-once"].ppm or 0.0):
        found.append(AT_ONCE)
    if any(holds_chromate(coat.stain) for coat in coats):
        found.extend(CHROMATE)
    silent = dict.fromkeys(
        coat.stain.name or coat.stain.id for coat in coats if not strength_told(coat.stain)
    )
    if silent:
        found.append(NO_SHEET.format(stains=" and ".join(silent)))
    added = [coat.id for coat in coats if coat.coat.added_acid_fl_oz_per_gal]
    if added:
        found.append(ADDED.format(coats=" and ".join(added)))
    if ground.job.site.house is None:
        found.append(UNSAID)
    return (*found, *STANDING)
