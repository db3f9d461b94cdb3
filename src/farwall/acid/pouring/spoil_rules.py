"""Rules on what spoils the floor, the mix or the work where nothing need burn. They refuse."""

from __future__ import annotations

from functools import partial

from farwall.acid.pouring.making import a_rule

_refuses = partial(a_rule, "refused")

SPOILS = (
    _refuses("an acid neutralises no acid", "weak acid, unnamed acid", "stain, residue, rinse",
             what="Vinegar and acid cleaners are acids: they neutralise nothing, and take the "
                  "colour off.",
             instead="Bicarbonate or soda ash neutralises; a neutral cleaner scrubs.",
             source="common-practice"),
    _refuses("acid on a dried stain", "added acid, unnamed acid", "residue",
             what="Strong acid dissolves the colour, eats the surface and fumes.",
             instead="Too dark is final: another look at the sample, or a tinted sealer.",
             source="trade-press"),
    _refuses("another stain", "stain", "stain", unless_sampled=True,
             what="Two stains in one tub may react, fall out or turn, and no sheet covers them.",
             instead="Make a sample of this very mix on this slab and enter it, or lay one over "
                     "the other, dry.",
             source="common-practice"),
    _refuses("stain and dye", "stain", "dye", unless_sampled=True,
             what="Acid and metal salts turn or curdle a dye or pigment.",
             instead="The dye after the floor is rinsed and dry, on a sample first.",
             source="common-practice"),
    _refuses("stain and brine", "stain, added acid", "brine",
             what="Dissolved chloride drives acid out into the air, and salt stays in the floor.",
             instead="Nothing but water thins a stain.", source="from-memory"),
    _refuses("acid and emulsion", "strong acid, metal salt", "emulsion",
             what="Acid and metal salts curdle it: lumps in tub, sprayer and floor.",
             instead="Sealers, finishes and tints go on a floor that is rinsed, tested and dry.",
             source="common-practice"),
    _refuses("acid and silicate", "strong acid, spent acid, added acid", "silicate",
             what="A densifier sets to a gel in acid.",
             instead="Densifier goes on a floor that is rinsed, tested and dry.",
             source="epa-chart"),
    _refuses("finish on residue", "finish", "residue, stain, rinse",
             what="A film on residue peels within months.",
             instead="Scrub and rinse until pH and white rag pass, let it dry, then seal.",
             source="trade-press"),
    _refuses("solvent in water", "solvent-borne, thinner, chlorinated solvent", "water-borne",
             what="Water and solvent-borne things part, turn white or break.",
             instead="Thin each only with what its own sheet names.", source="common-practice"),
    _refuses("stain over neutraliser", "stain", "carbonate, lime, alkali, cleaner, ammonia",
             vessels=("floor",), in_turn=True, films_too=True,
             what="A neutraliser or cleaner left on the floor kills the colour where it lies.",
             instead="Rinse it off, let the floor dry, and try a drop of water and a sample again.",
             source="common-practice"),
    _refuses("acid in rinse water", "strong acid, added acid", "rinse",
             what="It foams with the bicarbonate in the drum, and makes the whole drum sour again.",
             instead="Neutralise what is left over in an open tub first.",
             source="common-practice"),
    _refuses("ammonia in rinse water", "ammonia", "rinse",
             what="Ammonia holds copper dissolved, so that no settling takes it out.",
             instead="Bicarbonate, soda ash or lime raises the pH of a drum.", source="epa-chart"),
    _refuses("wood on acid", "strong acid, residue", "combustible",
             what="Acid and metal salts char wood and cotton, and the heap stays wet and sour.",
             instead="Bicarbonate first, then clay or cement takes it up.",
             source="stain-sheets"),
)  # fmt: skip
