"""The cautions that stand on every plan, and those that this job's stain adds.

Common practice and the standards named in docs/sources.md; the sheet of the
material in hand, local codes and licensed practice win over all of them.
"""

from __future__ import annotations

from farwall.acid.chromium import CHANGES
from farwall.facts.settled import SettledJob

ALWAYS = (
    "The sheet of the material in hand, local codes and licensed practice win over this plan.",
    (
        "Acid into water, never water into acid. Never with bleach; ammonia only aired and never "
        "into an acid tub."
    ),
    (
        "Goggles and face shield, chemical gloves, sleeves, boots; a fit-tested respirator with "
        "acid-gas and P100 cartridges. Air moves out of the house, without a jet on the wet edge."
    ),
    "Eyewash within 10 seconds, 15 minutes of water at 0.4 gpm (1.5 L/min) or more.",
    "Nobody works alone: a second adult stays within call.",
    "Open time is never gained by shutting out the air.",
    (
        "Rinse water is waste: never to a storm drain, soil or septic tank; to a sewer only with "
        "the utility's written word."
    ),
)
CHROMATE = (
    "The stain's sheet names chromate: hexavalent chromium changes the whole job. No acid is "
    "added, nobody sands this floor later without controls, and exposure, waste and respirators "
    "are for a licensed hygienist to settle first."
)
CHROMATE_DAY = tuple(one.says for one in CHANGES if one.key in {"hygiene", "vacuum", "waste"})
"""What of it the day on the slab needs beside; all of it stands in go or no-go."""
UNKNOWN_SHEET = (
    "Nothing was entered from the sheet of {stain}: read it before mixing, above all for "
    "chromate, strength and what it must not meet."
)
OXIDISER = (
    "The stain's sheet names an oxidiser: no acid is added, for together they give off chlorine; "
    "nothing that its sheet does not name may meet it."
)
ADDED_ACID = (
    "Acid is added to the mix of {coat}: the maker's sheet does not cover it, sample it first, "
    "fumes rise."
)

SPARE = (
    "Both sprayers are full before the first stroke of a coat. Should one fail inside a field, go "
    "on with the other from the same place at once: an edge that waits is lost."
)
NO_SPARE = (
    "There is no spare sprayer: one that fails inside a field costs its live edge. Keep a second "
    "one full at the way out."
)


def cautions_for(settled: SettledJob) -> tuple[str, ...]:
    """Every caution for this job, the standing ones first."""
    found = [*ALWAYS, SPARE if settled.job.tools.spare_sprayer else NO_SPARE]
    unread = [
        stain.name or stain.id
        for stain in settled.stains
        if stain.names_chromate is None and stain.hcl_percent_high is None
    ]
    if any(stain.names_chromate for stain in settled.stains):
        found += [CHROMATE, *CHROMATE_DAY]
    if any(stain.names_oxidiser for stain in settled.stains):
        found.append(OXIDISER)
    if unread:
        found.append(UNKNOWN_SHEET.format(stain=" and ".join(unread)))
    found.extend(
        ADDED_ACID.format(coat=coat.id)
        for coat in settled.coats
        if coat.coat.added_acid_fl_oz_per_gal
    )
    return tuple(dict.fromkeys(found))
