"""Words of the fumes on the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-fumes-none": "Nothing is sprayed in this plan, so no fumes were reckoned.",
    "acid-fumes-no-acid": (
        "The sheets as entered hold no hydrochloric acid, so no fumes of it were reckoned. Read "
        "the sheet of the bottle in hand again: a reactive stain without acid is rare."
    ),
    "acid-fumes-head": (
        "With the house {standing}, about {changes} air changes an hour, the air is worst in "
        "{room}: about {likely} ppm of hydrogen chloride at {at}, between {low} and {high}. All of "
        "it is a guess, and a wide one."
    ),
    "acid-fumes-stands-shut": "shut",
    "acid-fumes-stands-open": "open",
    "acid-fumes-at-once": (
        "It may reach {high} ppm. From 45 ppm on the air is dangerous at once to life or health "
        "(NIOSH 2025), and cartridges are not enough. Open the house and set fans before the first "
        "stroke, or do not begin."
    ),
    "acid-fumes-chromate": (
        "Chromate stands on the sheet. Its mist is the hazard: about {likely} µg/m³ of chromium VI "
        "where somebody sprays ({low} to {high}), {day} as a mean over 8 hours ({day_low} to "
        "{day_high}), against {limit} by law and {action} from which more must be done (29 CFR "
        "1926.1126). A licensed hygienist settles exposure, respirator and waste before anybody "
        "opens the bottle. No acid is added. Nobody else is in the house. Nobody ever sands this "
        "floor dry."
    ),
    "acid-fumes-chromate-guess": (
        "How much chromate the stain holds was not entered: 1 to 10 % was taken."
    ),
    "acid-fumes-picture": (
        "Parts of a million of hydrogen chloride in the worst room through the day, with the limits"
    ),
    "acid-fumes-legend": (
        "The worst room at each minute: the line is likely, the band is what it may be. Tenfold "
        "steps."
    ),
    "acid-fumes-spraying": "spraying",
    "acid-fumes-line-long-hcl-at-once": "45 ppm: dangerous at once (NIOSH 2025; 50 until then)",
    "acid-fumes-line-short-hcl-at-once": "45 ppm: dangerous at once",
    "acid-fumes-line-long-hcl-law": "5 ppm: legal ceiling (OSHA 1971)",
    "acid-fumes-line-short-hcl-law": "5 ppm: legal ceiling",
    "acid-fumes-line-long-hcl-hygienists": "2 ppm: hygienists' ceiling (ACGIH 2003)",
    "acid-fumes-line-short-hcl-hygienists": "2 ppm: hygienists' ceiling",
    "acid-fumes-line-long-hcl-smell": "0.77 ppm: can be smelt",
    "acid-fumes-line-short-hcl-smell": "0.77 ppm: can be smelt",
    "acid-fumes-room": (
        "{room}: about {likely} ppm at {at} ({low} to {high}), {mean} as the worst mean over 15 "
        "minutes."
    ),
    "acid-fumes-clear": "Below 2 ppm from {likely}, at the high end from {high}.",
    "acid-fumes-clear-once": "Below 2 ppm from {likely}, at the high end too.",
    "acid-fumes-clear-likely": "Below 2 ppm from {likely}; at the high end not within two days.",
    "acid-fumes-never-clear": "Not below 2 ppm within two days.",
    "acid-fumes-always-clear": "Below 2 ppm all day.",
    "acid-fumes-sprayer": (
        "Whoever sprays stands over the fresh film: about {likely} ppm as the worst mean over 15 "
        "minutes ({low} to {high}), {day} over 8 hours, for {minutes} minutes of spraying."
    ),
    "acid-fumes-out": "Who stays out, and until when",
    "acid-fumes-kept-out": (
        "After coat {coat}, sprayed by {ends}: the house is above 2 ppm until {likely}, at the "
        "high end until {high}. Nobody without a respirator goes in before, and then only after "
        "a reading."
    ),
    "acid-fumes-kept-out-once": (
        "After coat {coat}, sprayed by {ends}: the house is above 2 ppm until {likely}, at the "
        "high end too. Nobody without a respirator goes in before, and then only after a reading."
    ),
    "acid-fumes-others-out": (
        "Owner, pets and other trades stay out until the floor is rinsed and the house is aired, "
        "whatever the figure says."
    ),
    "acid-fumes-at-time": "{time}",
    "acid-fumes-at-day": "{time}",
    "acid-fumes-next-coat": "the next coat",
    "acid-fumes-two-days": "more than two days later",
    "acid-fumes-two-days-long": "more than two days",
    "acid-fumes-more-air": "What more air does",
    "acid-fumes-house": "House",
    "acid-fumes-changes": "Air changes an hour",
    "acid-fumes-peak": "Worst room",
    "acid-fumes-after": "Below 2 ppm after the last stroke, likely",
    "acid-fumes-way-shut": "Shut",
    "acid-fumes-way-open": "Doors and windows open",
    "acid-fumes-way-open-fan": "Open, 1 fan blowing out",
    "acid-fumes-way-open-fans": "Open, {fans} fans blowing out",
    "acid-fumes-way-shut-fan": "Shut, 1 fan blowing out",
    "acid-fumes-way-shut-fans": "Shut, {fans} fans blowing out",
    "acid-fumes-as-now": "(as it stands)",
    "acid-fumes-ppm": "{likely} ppm ({low} to {high})",
    "acid-fumes-minutes": "{n} min",
    "acid-fumes-hours": "{n} h",
    "acid-fumes-needed": (
        "To hold the whole house below 2 ppm takes about {likely} {unit} of air ({low} to {high}), "
        "some {changes} changes an hour, {mixing} times what a well-mixed house would need. That "
        "is about {fans} window fans. Blow out, never onto a wet edge."
    ),
    "acid-fumes-ammonia": (
        "Ammonia is among what is in hand. Over its wash water stand about {over} ppm; as the "
        "house stands the air may hold about {likely} ppm ({low} to {high}), against 25 (NIOSH) "
        "and 300, dangerous at once. Where it meets the vapour of the acid it makes a white "
        "smoke. Bicarbonate does the same work without a fume. Never into an "
        "acid tub, never with bleach."
    ),
    "acid-fumes-rest": "What it rests on, and what would change it",
    "acid-fumes-taken": (
        "Slab at {warm}; {acid} of hydrogen chloride laid, of which about {likely} % comes into "
        "the air ({low} to {high})."
    ),
    "acid-fumes-rests-strength": "Strength of the stain: {likely} % HCl ({low} to {high}).",
    "acid-fumes-rests-lime": (
        "Lime eats half of the acid in {likely} min ({low} to {high}): slow on a burnished slab."
    ),
    "acid-fumes-rests-salts": (
        "{likely} % of the metals' chloride presses acid out ({low} to {high})."
    ),
    "acid-fumes-rests-open-time": "The slab drinks the film in {likely} min ({low} to {high}).",
    "acid-fumes-rests-mist": (
        "{likely} % of what is sprayed hangs in the air as mist ({low} to {high}): a coarse fan "
        "and low pressure keep it low."
    ),
    "acid-fumes-rests-transfer": (
        "The film dries at {likely} % of what is reckoned ({low} to {high})."
    ),
    "acid-fumes-rests-air": "Air changes: {likely} an hour ({low} to {high}).",
    "acid-fumes-rests-doors": "Rooms differ by {likely} K ({low} to {high}), doors stand open.",
    "acid-fumes-moves": "Alone it moves the worst room from {low} to {high} ppm.",
    "acid-fumes-rank-told": "From the sheet.",
    "acid-fumes-rank-guess": "Guess.",
    "acid-fumes-rank-published": "Published.",
    "acid-fumes-rank-common-practice": "Common practice.",
    "acid-fumes-rank-from-memory": "From memory.",
    "acid-fumes-rank-measured-here": "Measured here.",
    "acid-fumes-rank-learned": "Learned.",
    "acid-fumes-limits": "The limits",
    "acid-fumes-limit-hcl-hygienists": (
        "2 ppm (3 mg/m³), ceiling of the hygienists: ACGIH, 2003 (year from memory). It asks for "
        "more than the law."
    ),
    "acid-fumes-limit-hcl-law": (
        "5 ppm (7 mg/m³), federal ceiling: OSHA, 1971 (year from memory); NIOSH advises the same. "
        "Not to be passed for a moment; where nothing reads that fast, a mean over 15 minutes."
    ),
    "acid-fumes-limit-hcl-california": (
        "0.3 ppm over 8 hours and a ceiling of 2 ppm in California (from memory: look it up in 8 "
        "CCR 5155, Table AC-1)."
    ),
    "acid-fumes-limit-hcl-at-once": (
        "45 ppm (67 mg/m³), dangerous at once to life or health: NIOSH, 2025."
    ),
    "acid-fumes-limit-hcl-at-once-1994": (
        "50 ppm, the same until then: NIOSH, 1994 (year from memory); many sheets still say it."
    ),
    "acid-fumes-limit-hcl-smell": (
        "0.77 ppm, can be smelt. Who smells it for long no longer does: the nose is no meter."
    ),
    "acid-fumes-caution-respirator": (
        "A figure replaces no respirator: fit-tested, with acid-gas and P100 cartridges, on from "
        "the first pour until the air was read."
    ),
    "acid-fumes-caution-reading": (
        "A figure replaces no reading: a colour tube or a meter says what the air holds. Read it "
        "at the breath of whoever sprays and in the last room."
    ),
    "acid-fumes-caution-open": (
        "The house is never shut to gain open time. Move the hour, the band or the stop line."
    ),
    "acid-fumes-caution-walls": (
        "Walls and wet floors take up a part of the vapour, which was not counted. Corners and the "
        "air over the film hold more than the mean of a room."
    ),
    "acid-fumes-caution-stricter": (
        "These limits are federal or advice. A state such as California may be stricter and wins; "
        "so does the sheet of the material in hand. A licensed hygienist settles air and "
        "respirator."
    ),
    "acid-fumes-tell": (
        "Better figures come from the strength on the stain's sheet, from how the house "
        "stands and its fans, and from a reading."
    ),
}
