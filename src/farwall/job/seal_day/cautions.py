"""The cautions of a seal day: those of every sealer, of solvent, of hardeners, of what nobody told.

Common practice of the trade and general knowledge of hazards, no source; the sheet of the
material in hand, local codes and licensed practice win over all of them.
"""

from __future__ import annotations

from farwall.facts.sealer import Sealer
from farwall.job.seal_day.films import AMINE, ISOCYANATE, film_of, has_solvent

ALWAYS = (
    "The sealer's sheet, local codes and licensed practice win over every figure here.",
    (
        "No unvented heater, ever, also over a water-based sealer: it gives off moisture, soot, "
        "carbon dioxide and carbon monoxide, clouds the film and can kill."
    ),
    "Nobody works alone: a second adult stays within call, outside the vapour.",
    (
        "Gloves and goggles as the sheet says. Air moves out of the house, "
        "without a jet on the wet "
        "edge."
    ),
    "Open time is never gained by shutting out the air.",
    "Nobody steps on wet sealer, pets and children neither: every way in is barred first.",
)
SOLVENT = (
    (
        "Solvent vapour is heavier than air: it lies on the floor and runs to "
        "pits, drains, cellars "
        "and flames that are far away."
    ),
    (
        "All flames out before the can is opened: pilot lights, burners, water heater, furnace, "
        "fireplace, stove. Gas off and on again is for licensed trades. No smoking."
    ),
    (
        "Switches, plugs and power tools are not operated from the first litre until the vapour is "
        "gone: a spark is enough. Lights that must burn burn before."
    ),
    (
        "A fan whose motor is not ignition-proof stands out of the air stream: "
        "it blows clean air in, "
        "never vapour out through itself."
    ),
    (
        "Respirator with organic vapour cartridges, fit-tested, new for the "
        "day. Dizzy or headache: "
        "out at once."
    ),
    "Rags and rollers with solvent go into a closed metal can, outside: they can take fire alone.",
    "The air district may limit solvent in sealers: the can's label and the district decide.",
)
SENSITISERS = {
    ISOCYANATE: (
        "Isocyanates{maybe}: they sensitise lungs and skin for good; then a trace is too much. "
        "No skin touches it; the sheet may ask for supplied air. Who has asthma stays away."
    ),
    AMINE: (
        "Epoxy amines{maybe}: they sensitise and burn the skin for good. Gloves, sleeves, "
        "goggles; what touches skin is washed off with soap and water at once, never with solvent."
    ),
}
_MAYBE = " may be in this type until its sheet says otherwise"
UNKNOWN = (
    "Which sealer is not told: it is taken as if it held solvent and hardeners. Read its sheet."
)
TOO_MUCH = (
    "Two thin coats, no puddles in joints (milky): too thick bubbles, turns white and peels. "
    "Never thinned with water or solvent unless the sheet says so."
)


def cautions_for_sealer(sealer: Sealer) -> tuple[str, ...]:
    """Every caution for this sealer: the standing ones, solvent, hardeners."""
    found = list(ALWAYS)
    if sealer.type is None and sealer.solvent is None:
        found.insert(1, UNKNOWN)
    if has_solvent(sealer):
        found.extend(SOLVENT)
    for kind, told in ((ISOCYANATE, sealer.isocyanate), (AMINE, sealer.epoxy_amine)):
        maybe = kind in film_of(sealer).sensitisers
        if told or (told is None and maybe):
            found.append(SENSITISERS[kind].format(maybe="" if told else _MAYBE))
    found.append(TOO_MUCH)
    return tuple(found)
