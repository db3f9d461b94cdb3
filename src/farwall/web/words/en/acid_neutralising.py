"""Words of neutralising on the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-neutralising-spill": "A spill of stain",
    "acid-neutralising-stain": "Stain",
    "acid-neutralising-per-us": "Bicarbonate for each gallon",
    "acid-neutralising-per-metric": "Bicarbonate for each litre",
    "acid-neutralising-gas": "Gas from it",
    "acid-neutralising-told": "by its sheet as told",
    "acid-neutralising-sheets": "sheet not told: as on sheets seen, from memory",
    "acid-neutralising-to": "{low} to {high}",
    "acid-neutralising-left": "A left-over tub",
    "acid-neutralising-tub": (
        "The largest of the day, {litres} at {cut}, takes {base} of bicarbonate when none of it is "
        "used. Up to {gas} of gas comes of it, in an open vessel of {vessel} or more, or in "
        "lots; thinned with as much water first, it cools by up to {cools}. "
        "Outdoors: indoors it takes {air} of fresh air to keep that gas below 0.5 %."
    ),
    "acid-neutralising-by-bicarbonate": "The floor, with bicarbonate",
    "acid-neutralising-by-soda-ash": "The floor, with soda ash",
    "acid-neutralising-by-ammonia-water": "The floor, with household ammonia water",
    "acid-neutralising-by-lime": "The floor, with lime: read the cautions first",
    "acid-neutralising-rooms": "Rooms",
    "acid-neutralising-area": "Floor",
    "acid-neutralising-water": "Water",
    "acid-neutralising-base": "Base",
    "acid-neutralising-all": "All of it",
    "acid-neutralising-span": (
        "Strengths in use ask for {low} to {high} in all; at most {gas} of gas."
    ),
    "acid-neutralising-lime": (
        "The slab's own lime takes nearly all of the acid: {depth} of young concrete holds enough "
        "for all that is laid, where the wash could take {share} of it."
    ),
    "acid-neutralising-pail": (
        "Open beside the mixing tub from the first pour: {base} of bicarbonate in {water} of water."
    ),
    "acid-neutralising-sour-head": "Why it stays sour, and rises by itself",
    "acid-neutralising-picture": (
        "pH against bicarbonate added to acid of {molal} mol/kg. Shut in and in fresh fizz it "
        "stays near 4 at the equivalent dose and rises slowly; in open air it jumps past 8 there."
    ),
    "acid-neutralising-caption": (
        "pH as bicarbonate goes into acid of {molal} mol in a kilogram of water, at 25 °C."
    ),
    "acid-neutralising-along": "times the equivalent dose of bicarbonate",
    "acid-neutralising-good": "7 to 8.5",
    "acid-neutralising-way-rested": "open air",
    "acid-neutralising-way-fresh": "fresh fizz",
    "acid-neutralising-way-closed": "shut in",
    "acid-neutralising-sour": (
        "At the equivalent dose the acid is gone, but its gas stays in the water as carbonic acid: "
        "pH {fresh} in fresh fizz, {rested} when all of the gas has left."
    ),
    "acid-neutralising-fresh": (
        "In fresh fizz pH 7 would take {times} times that dose, and pH 8 more bicarbonate than "
        "dissolves."
    ),
    "acid-neutralising-fresh-none": "In fresh fizz pH 7 takes more bicarbonate than dissolves.",
    "acid-neutralising-rested": (
        "With the gas gone pH 8 takes {more} % more than the dose: stir and wait, then read again."
    ),
    "acid-neutralising-shut": (
        "Shut in, with no room over it, the gas of that dose would press {atm} atmospheres: no "
        "jug, drum or sprayer holds that."
    ),
    "acid-neutralising-rise": (
        "A twentieth too much, while the gas leaves: "
        "still water a foot deep, stirring is far quicker"
    ),
    "acid-neutralising-rise-gas": "gas left",
    "acid-neutralising-rise-days": "days",
    "acid-neutralising-never": "at last",
    "acid-neutralising-rise-ph": "pH",
    "acid-neutralising-bases": "pH, base beside base",
    "acid-neutralising-at-once": "dose, at once",
    "acid-neutralising-at-rest": "dose, at rest",
    "acid-neutralising-tenth": "a tenth more",
    "acid-neutralising-twice": "twice",
    "acid-neutralising-base-bicarbonate": "bicarbonate",
    "acid-neutralising-base-soda-ash": "soda ash",
    "acid-neutralising-base-ammonia-water": "ammonia",
    "acid-neutralising-base-ground-limestone": "limestone",
    "acid-neutralising-base-lime": "lime",
    "acid-neutralising-tell": "Tell what the sheet of the stain says",
    "acid-neutralising-reads": "Sour water in a pail or drum, by what the strip reads",
    "acid-neutralising-reads-ph": "pH",
    "acid-neutralising-reads-pail-us": "bicarbonate for 5 gal",
    "acid-neutralising-reads-drum-us": "for 55 gal",
    "acid-neutralising-reads-pail-metric": "bicarbonate for 20 L",
    "acid-neutralising-reads-drum-metric": "for 200 L",
    "acid-neutralising-reads-least": (
        "The least: metals hide acid behind the same reading. Half of it, stir, wait, read again."
    ),
    "acid-neutralising-tell-base": "Tell what the floor is neutralised with",
    "acid-neutralising-under-oz": "under 0.1 oz",
    "acid-neutralising-rank": (
        "Doses are stoichiometry. pH: published relations, partly from memory, within 0.1 of "
        "a second opinion (0.2 in strong water). Strengths for the floor: common practice, no "
        "source. A strip decides, not this table."
    ),
}
