"""Words of the form of people with acid, and of the numbers for an emergency."""

from __future__ import annotations

WORDS = {
    "workers": "People with acid",
    "workers-told": "Who does what, and what each was fitted, cleared and gloved for. Nothing is "
    "taken for granted: what stays empty is asked, and what is told to be missing stops it.",
    "workers-part": "People",
    "workers-part-told": "One row for each. Fit tester, doctor and licensed hygienist say who may "
    "wear what; here stands only what they said.",
    "emergency-part": "Emergency",
    "emergency-part-told": "Your own numbers. None is filled in here: a wrong one on a card is "
    "worse than an empty line.",
    "firm-emergency": "Emergency numbers",
    "firm-emergency-told": "Your own; each new house begins with them. None is filled in here.",
    "s-worker": "{worker} does this: {duties}",
    "s-respirator": "Respirator: {respirator}, fit-tested with it on {fit-tested}, medical word "
    "of {cleared}; its edge {shaven}.",
    "s-cartridge": "Cartridges {marking}: acid gas {acid-gas}, P100 {p100}, ammonia {ammonia}.",
    "s-change": "Their bag was opened on {bag-opened}; changed after {change-after} of use, {used} "
    "of it before this job.",
    "s-worn": "Gloves: {gloves}. Goggles and face shield {goggles}, acid-proof apron {apron}, "
    "rubber boots {boots}.",
    "s-trained": "Went through sheet, cards and eyewash on {trained}.",
    "s-settled": "Where a sheet names chromate: a licensed hygienist settled exposure on "
    "{settled}.",
    "s-calls": "In an emergency call {number}; the poison centre is {poison}.",
    "s-spill": "About a spill call {spill-line}.",
    "s-hospital": "Nearest emergency room: {hospital}.",
    "s-address": "Tell whoever comes: {address}.",
    "s-eyewash-at": "The eyewash stands here: {eyewash-at}.",
    "s-looks": "Who sprays is looked in on every {look-in}.",
    "effect-look-in": "Where it stays empty every 15 minutes are taken: our guess.",
    "name-worker": "Name",
    "name-duties": "What the person does",
    "name-respirator": "Respirator",
    "name-fit-tested": "Day of the fit test",
    "name-cleared": "Day of the medical word",
    "name-shaven": "Edge on skin",
    "name-marking": "Marking of the cartridges",
    "name-acid-gas": "Marked for acid gas",
    "name-p100": "P100",
    "name-ammonia": "Marked for ammonia",
    "name-bag-opened": "Day on which the bag was opened",
    "name-change-after": "Use until they are changed",
    "name-used": "Used before",
    "name-gloves": "Gloves",
    "name-goggles": "Goggles and face shield",
    "name-apron": "Acid-proof apron",
    "name-boots": "Rubber boots",
    "name-trained": "Day of training",
    "name-settled": "Day of the hygienist's word",
    "name-number": "Emergency number",
    "name-poison": "Poison centre",
    "name-spill-line": "Number for a spill",
    "name-hospital": "Nearest emergency room",
    "name-address": "Address of the house",
    "name-eyewash-at": "Where the eyewash stands",
    "name-look-in": "Time between two looks",
    "pick-duties-mixes": "mixes",
    "pick-duties-sprays": "sprays",
    "pick-duties-helps": "helps",
    "pick-duties-scrubs": "scrubs",
    "pick-duties-seals": "seals",
    "pick-duties-stands-by": "stands by",
    "pick-respirator-half-face": "half face",
    "pick-respirator-full-face": "full face",
    "pick-respirator-powered": "powered, tight",
    "pick-respirator-powered-hood": "powered, loose hood",
    "pick-clean_shaven-yes": "lies on shaven skin",
    "pick-clean_shaven-no": "lies on hair",
    "marked-yes": "yes",
    "marked-no": "no",
    "there-yes": "there",
    "there-no": "not there",
    "help-duties": "Who mixes, sprays or hands tanks breathes the vapour and is asked for a "
    "respirator; who scrubs, where ammonia neutralises or a sheet names chromate. Who stands by "
    "stays outside within call, looks in, and goes in to nobody without all of it.",
    "help-respirator": "A tight one is fit-tested within twelve months with that very model, after "
    "a medical word, and its edge lies on shaven skin (29 CFR 1910.134). A loose hood with a "
    "blower asks for neither fit test nor razor. A filter for dust alone holds back no acid.",
    "help-cartridge": "For acid gas, with P100 for the mist: both are printed on them. Where "
    "ammonia neutralises, who scrubs needs cartridges marked for ammonia.",
    "help-change-after": "By the maker's own schedule for this vapour (29 CFR "
    "1910.134(d)(3)(iii)), never by the smell. Minutes of this job are counted in the log, from "
    "respirator on to respirator off, and a new pair is called for before the end.",
    "help-worn": "As the stain's sheet asks: material and thickness of the gloves, such as "
    "nitrile 0.4 mm. A full face or a hood covers the eyes too.",
    "help-trained": "Before the first jug is opened: the sheet of this very stain, the cards, "
    "where the eyewash is and how it runs (29 CFR 1910.1200(h)).",
    "help-settled": "Hexavalent chromium changes the whole job (29 CFR 1926.1126): exposure is "
    "determined first, and respirator and clothing follow from it.",
    "help-calls": "They stand on cards, on the door and under first aid. Try them once from the "
    "house: not every phone has a signal there.",
    "help-spill-line": "Whom you call when stain or rinse water runs where it may not: the "
    "utility, the state agency, your hauler.",
    "help-address": "Street, number, and how one gets in: a house that is being built is hard to "
    "find.",
    "help-eyewash": "Within ten seconds' walk of where acid is poured and sprayed, 15 minutes of "
    "water, 0.4 gal (1.5 L) a minute or more; tried before a jug is opened.",
    "help-look-in": "Somebody outside looks at whoever sprays, and asks. How often stands in no "
    "text that we found.",
}
