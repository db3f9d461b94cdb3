"""Help beside the thing: what a word of the trade means, in one to three sentences, with its rank.

`help('drop-test')` of `templates/macros.html` shows `help-drop-test`.
"""

from __future__ import annotations

WORDS = {
    "help-what": "What is this?",
    "help-drop-test": "A drop of water on clean, dust-free floor, timed until it has gone in; "
    "five drops in each room, the slowest counts. Under 5 s is open, to 20 s good, to 60 s tight "
    "(sand or screen first), beyond that no stain yet (common practice, no source; the minute is "
    "ASTM F3191’s).",
    "help-slab-age": "Days since the slab was poured. Texts say 14 to 42 days; the larger of the "
    "stain’s own sheet and 28 days is prudent, and the sample decides, never the date alone "
    "(stain sheets, common practice).",
    "help-pours": "How often concrete was placed. An addition or a trench takes the same stain "
    "differently: each is a field of its own with its own sample (trade press, stain sheets).",
    "help-film": "A film sprayed or rolled on fresh concrete. A drop that stands like a dome "
    "tells of one; stain does not react through it, so it must come off (common practice, trade "
    "press).",
    "help-covering": "Old glue, mastic or tile leaves ghosts. Black mastic and vinyl tile may "
    "hold asbestos: never sand or scrape before a licensed test (hazard notes of standards).",
    "help-acid": "An acid wash uses up the lime that the stain needs; a slab that had one stays "
    "pale. Never etch before staining (stain sheets).",
    "help-burnished": "Trowelled so hard that it is dark, glossy and closed: it rejects stain. "
    "Makers and finishers disagree on how to open it; whatever is chosen, open every square foot "
    "alike.",
    "help-sand": "Where paste is gone, sand and stone lie bare, and stone does not stain. More "
    "than about a tenth of the floor is another look (common practice, no source).",
    "help-cracks": "Every crack reads darker than the floor. The owner likes that or must know "
    "it, in writing (finishers’ contracts, common practice).",
    "help-hidden": "Tensioned cables, heating tubes or conduit in the slab. A saw or drill that "
    "meets a cable can kill: no cut and no hole before drawings, a stamp at the garage door or a "
    "scan rule them out.",
    "help-thick": "Only the depth of a moisture probe hangs on it: 40 % of a slab that dries "
    "from its top only (ASTM F2170).",
    "help-ash": "Fly ash and slag bind lime, and lime is what stain reacts with. Texts allow "
    "none, under 10 % or up to 15 % of the binder (stain sheets, finishers’ sheets for builders).",
    "help-ticket": "From the ready-mix ticket. About five sacks, 470 lb/yd³ (280 kg/m³), or more "
    "react stronger; calcium chloride in the mix gives dark blotches (trade press).",
    "help-plant": "Your own name for where it was mixed: slabs of one plant colour alike, and "
    "your closed jobs learn by it.",
    "help-slab-warm": "Read the slab itself, with an infrared gun at five spots, a sunny one "
    "too. 55 to 80 °F (13 to 27 °C) is good; below 50 °F (10 °C) or above 85 °F (29 °C) no stain "
    "(stain sheets, common practice).",
    "help-air-warm": "The air at knee height in the house, not outside. It dries the edge "
    "together with humidity and draught; the slab temperature weighs more (stain sheets).",
    "help-damp-air": "Relative humidity in the house. Dry air shortens the life of an edge; 30 "
    "to 70 % is usual (common practice, no source).",
    "help-moving": "Air over the floor while it is sprayed. A felt draught is about 50 ft/min "
    "(0.25 m/s, a guess) and dries the edge: fans blow out of a window, far from the floor.",
    "help-tile": "A wetted tile laid beside the floor, weighed twice half an hour apart: what it "
    "lost, by its area and the time, tells how thirsty the air is. It counts where a watched "
    "wait told its own tile too.",
    "help-frost": "Warm air over frozen ground dries the top of a slab and not the rest (trade "
    "press).",
    "help-fans": "Acid fumes must leave: fans blow out of a window, air comes in far away and "
    "slowly. In a shut room even a small share of the acid passes the legal ceiling of 5 ppm "
    "(OSHA): ventilation and respirator are not optional.",
    "help-heater": "A gas heater whose fumes stay in gives water, soot and carbon monoxide: it "
    "has no place here (trade press).",
    "help-patch": "Repair mortar, trenches and later pours never match the rest. Stain them "
    "along and disclose it, leave them dry for another colour, or grind and try drops again; "
    "have it signed (stain sheets, trade press).",
    "help-salts": "White salts are carried up by water. If they come back after brushing, damp "
    "is moving: find it before anything is sealed (common practice).",
    "help-slab-ph": "Fresh paste reads about 12.5, an aged surface 9 to 11 (from memory). Below "
    "9 little lime is left at the surface: expect pale, patchy colour (common practice).",
    "help-moisture": "The meter compares over a grid of 3 ft. Sheet, dish and probe leave marks: "
    "closets only. A dry sheet proves no dry slab. Dishes read pounds of vapour, 3 or 5 are "
    "usual limits; probes read humidity inside (ASTM D4263, F1869, F2170).",
    "help-north": "Where north lies on the plan: 0 is up, 90 is to the right. With it the sun "
    "patches are reckoned, and a sunny patch dries in about half the time (common practice).",
    "help-place": "Degrees of the house, such as 41.6 and −93.6, and its time zone, such as "
    "America/Chicago. A map tells them; a tenth of a degree is enough for the sun.",
    "help-window": "Sill and height give the patch of sun on the floor; the depth of the wall "
    "shades it. The main window is the one by which the floor is judged: stops are kept out of "
    "its low light.",
    "help-colour": "Stain is never even: like stone or old leather. An owner who wants one even "
    "colour, or the chart’s, should hear of another floor first (trade press).",
    "help-trades": "Others overhead drip, walk and open doors. The house is closed for four to "
    "five days, or rooms are locked by zones (common practice).",
    "help-waste": "Rinse water holds acid and metals. Sewer only with the utility’s written "
    "word; never a storm drain, street, soil or septic tank. Local rules win.",
    "help-sample": "A closet corner, 2 by 2 ft (0.6 m) or more, one for each pour, finish, "
    "colour and cut, with every step of the job. Chips and boards tell nothing of this slab "
    "(trade press).",
    "help-sheen-loss": "Minutes until the wet gloss is gone: that is how long an edge lives "
    "here. Four minutes’ work, and it replaces the widest guess of the plan. Coverage: floor "
    "over what it drank.",
    "help-sample-weather": "What it was like when the sample lost its sheen: with it the time is "
    "carried over to the day of the work.",
    "help-scrub": "Scrub the sample as hard as the floor will be. Colour that washes off sat on "
    "the surface: open the slab and sample again (trade press, stain sheets).",
    "help-signed": "The sealed sample on this slab is the standard of the job. Looked at by day "
    "and by lamp, photographed, signed (trade press).",
    "help-cut": "Parts of stain to parts of water by volume, stain first: 1:2 is one stain, two "
    "water. Water goes into the tub first, stain into water, never the other way. Usual: 1:1, "
    "then 1:2 (common practice).",
    "help-coat-from": "A coat that would go on past the evening, or past sunset where the place of "
    "the house is known, waits for the next morning: edges are judged by eye. Tell an hour here to "
    "wait longer; an hour without light is taken as it stands, so see to lamps that shine across "
    "the floor (common practice).",
    "help-added-acid": "Muriatic acid bites a hard slab, and the maker’s sheet no longer covers "
    "the mix; fumes rise. Never with a stain that names chromate or an oxidiser. Opening the slab "
    "evenly is the honest way (common practice).",
    "help-lot": "The maker’s filling, printed on the bottle. Lots differ: all for one coat are "
    "poured together (boxed) and stirred (common practice).",
    "help-stain-sheet": "From section 3 and 9 of this bottle’s safety sheet. Chromate changes "
    "the whole job: exposure, waste, what may be mixed (OSHA). Usual: under 10 to 20 % acid, "
    "density 1.3 (stain sheets).",
    "help-container": "What the shop sells and what it costs. Without it an invented price "
    "stands in.",
    "help-currency": "Three letters, such as USD.",
    "help-day": "The first stroke, by the clock of the house. Rooms that the sun reaches are "
    "sprayed before or after it.",
    "help-helper": "The helper fills and swaps tanks, watches edge and clock, and is there if "
    "something goes wrong. Two people at least is the rule of the trade (common practice, no "
    "source).",
    "help-second-adult": "Nobody works alone with acid, not even for one room.",
    "help-tank": "One fill of the sprayer, all plastic, no metal in wand or valve: 2 to 3.5 gal "
    "(7.6 to 13 L) is usual (common practice, no source).",
    "help-tip": "The one-minute test: water in the sprayer, the usual strokes of the pump, spray "
    "into a measuring jug for one minute, read the jug. 0.2 gal/min gives 40 ft²/min at 200 "
    "ft²/gal; 0.75 L/min gives 3.7 m²/min at 4.9 m²/L (reckoned).",
    "help-band": "The strip sprayed wall to wall before stepping back: 3 to 4 ft (0.9 to 1.2 m) "
    "(common practice, no source).",
    "help-rate": "Floor that one person sprays a minute: 20 to 45 ft² (1.9 to 4.2 m²) sprayed "
    "only, 8 to 22 ft² (0.7 to 2 m²) with scrubbing (common practice, no source). Mark off 100 ft² "
    "(10 m²), spray water, take the time.",
    "help-refill": "From the last stroke to the next one when the sprayer fills the tank "
    "himself. An edge that waits ages all that time (a guess until you time it).",
    "help-swap": "From the last stroke to the next one when a helper brings a full tank (a guess "
    "until you time it).",
    "help-overlap": "The new band reaches 4 to 12 in (10 to 30 cm) over the wet edge of the "
    "last, so that both melt into one (common practice, no source).",
    "help-reach": "How far a stroke gets from where one stands: it decides from where a corner "
    "can be reached (a guess).",
    "help-walk": "Carrying a full tank, without spraying (a guess).",
    "help-spare": "A second, identical sprayer, filled: it is swapped in, and it saves the day "
    "when a seal goes.",
    "help-language": "The papers may speak another language than this screen: that of whoever "
    "carries them to the slab.",
    "help-units": "What is shown and typed; what is kept stays the same. Among the settings: of "
    "new houses and of the pages of the firm, which follow the newest house until this is kept.",
    "help-sure": "How often, of a hundred such jobs, no field may run dry. 99 is our guess; more "
    "of it means more stain on site.",
    "help-bands": "The best bands follow the shape of the room and keep edges youngest; plain "
    "ones are easier to walk.",
    "help-notes": "Anything that must stand on the paper that goes to the slab.",
    "help-rooms": "Inner wall to inner wall, two lengths each. A room of another shape: take the "
    "nearest rectangle now and bring a drawing later.",
    "help-leads": "The door by which one leaves the room towards the way out. A door hides a "
    "seam under its leaf, a cased opening shows a little, a wide one hides nothing (common "
    "practice).",
}
